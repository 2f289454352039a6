// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Real people, from photographs inside Debian packages read where they are installed (opencv-doc, darknet).
#include <gtest/gtest.h>

#include <opencv2/objdetect.hpp>

#include "body/observer.h"
#include "fixtures.h"

using namespace plumbmark;
using namespace plumbmark::body;

namespace {

const std::string kPerson = "/usr/share/darknet/data/person.jpg";
const std::string kKites = "/usr/share/darknet/data/kite.jpg";
const std::string kExamples = "/usr/share/doc/opencv-doc/examples/data/";

class RealPeople : public ::testing::Test {
  protected:
    void SetUp() override {
        const auto bytes = test::network();
        if (!bytes) {
            GTEST_SKIP() << "the pose network is not there: bash platform/linux/fetch-network.sh";
        }
        auto made = Observer::create(bytes);
        ASSERT_TRUE(made.ok()) << made.error().sentence;
        observer = std::move(*made);
    }
    std::optional<Observation> see(const cv::Mat& picture) {
        observer->restart();
        auto seen = observer->observe(test::frameOf(picture));
        EXPECT_TRUE(seen.ok());
        return seen.ok() ? *seen : std::nullopt;
    }
    std::unique_ptr<Observer> observer;
};

#define LOAD(name, path)                                                                                     \
    const cv::Mat name = test::photograph(path);                                                             \
    if (name.empty()) {                                                                                      \
        GTEST_SKIP() << "not installed: " << (path);                                                         \
    }

double middleX(const Observation& o, Point a, Point b) {
    return (o[a].peak.x + o[b].peak.x) / 2;
}
double middleY(const Observation& o, Point a, Point b) {
    return (o[a].peak.y + o[b].peak.y) / 2;
}

/// Head over shoulders over hips over knees over ankles.
void expectStanding(const Observation& o) {
    const double shoulder = middleY(o, Point::left_shoulder, Point::right_shoulder);
    const double hip = middleY(o, Point::left_hip, Point::right_hip);
    const double knee = middleY(o, Point::left_knee, Point::right_knee);
    const double ankle = middleY(o, Point::left_ankle, Point::right_ankle);
    EXPECT_LT(o[Point::nose].direct.y, shoulder);
    EXPECT_LT(shoulder, hip);
    EXPECT_LT(hip, knee);
    EXPECT_LT(knee, ankle);
}

TEST_F(RealPeople, OneStandingPersonSeenFromBehind) {
    LOAD(picture, kPerson)
    const auto o = see(picture);
    ASSERT_TRUE(o);
    EXPECT_GT(o->presence, 0.95);
    expectStanding(*o);
    // Seen from behind, left is left.
    EXPECT_LT(o->operator[](Point::left_shoulder).peak.x, o->operator[](Point::right_shoulder).peak.x);
    // Source: OpenCV's own people detector (Dalal and Triggs 2005, histograms of oriented gradients) on the
    // same picture: one box, whose person stands some 275 px tall in it.
    cv::HOGDescriptor hog;
    hog.setSVMDetector(cv::HOGDescriptor::getDefaultPeopleDetector());
    std::vector<cv::Rect> boxes;
    hog.detectMultiScale(picture, boxes, 0, cv::Size(8, 8), cv::Size(), 1.05);
    ASSERT_EQ(boxes.size(), 1U);
    EXPECT_NEAR(o->box.x + o->box.width / 2, boxes[0].x + boxes[0].width / 2.0, 25);
    EXPECT_NEAR(o->box.y + o->box.height / 2, boxes[0].y + boxes[0].height / 2.0, 25);
    EXPECT_NEAR(o->box.height, 275, 20);
}

TEST_F(RealPeople, ThePlayerInMotionSeenFromTheFront) {
    LOAD(picture, kExamples + "messi5.jpg")
    const auto o = see(picture);
    ASSERT_TRUE(o);
    EXPECT_GT(o->presence, 0.95);
    EXPECT_GT(o->operator[](Point::left_shoulder).peak.x, o->operator[](Point::right_shoulder).peak.x)
        << "seen from the front, left is on the right";
    // By eye on the picture (+-8 px): standing knee and nose.
    EXPECT_NEAR(o->operator[](Point::nose).direct.x, 243, 10);
    EXPECT_NEAR(o->operator[](Point::nose).direct.y, 115, 10);
}

TEST_F(RealPeople, AMirroredPictureGivesMirroredSides) {
    LOAD(picture, kExamples + "messi5.jpg")
    cv::Mat flipped;
    cv::flip(picture, flipped, 1);
    const auto a = see(picture);
    const auto b = see(flipped);
    ASSERT_TRUE(a);
    ASSERT_TRUE(b);
    const double width = picture.cols;
    // Source: standard deviation between human annotators of the COCO key points (0.107 hip, 0.079 shoulder,
    // 0.087 knee, times the root of the person's area, here (0.41 x 330 px)^2): the network may differ from
    // its own mirror image by no more than three quarters of what people differ by.
    const double scale = 0.41 * 330;
    for (const auto& [left, right, sigma] : {std::tuple{Point::left_shoulder, Point::right_shoulder, 0.079},
                                             std::tuple{Point::left_hip, Point::right_hip, 0.107},
                                             std::tuple{Point::left_knee, Point::right_knee, 0.087}}) {
        EXPECT_NEAR((*a)[left].peak.x, width - (*b)[right].peak.x, 0.75 * sigma * scale);
        EXPECT_NEAR((*a)[right].peak.y, (*b)[left].peak.y, 0.75 * sigma * scale);
    }
}

TEST_F(RealPeople, ATiltedPictureTiltsTheMarks) {
    LOAD(picture, kPerson)
    const auto upright = see(picture);
    ASSERT_TRUE(upright);
    const cv::Mat turn = cv::getRotationMatrix2D({picture.cols / 2.0F, picture.rows / 2.0F}, 15, 1.0);
    cv::Mat tilted;
    cv::warpAffine(picture, tilted, turn, picture.size(), cv::INTER_LINEAR, cv::BORDER_REPLICATE);
    const auto o = see(tilted);
    ASSERT_TRUE(o);
    for (const Point p : {Point::left_shoulder, Point::right_shoulder, Point::left_hip, Point::right_hip,
                          Point::left_ankle}) {
        const base::Vec2 was = (*upright)[p].peak;
        const double x =
            turn.at<double>(0, 0) * was.x + turn.at<double>(0, 1) * was.y + turn.at<double>(0, 2);
        const double y =
            turn.at<double>(1, 0) * was.x + turn.at<double>(1, 1) * was.y + turn.at<double>(1, 2);
        EXPECT_NEAR((*o)[p].peak.x, x, 9);
        EXPECT_NEAR((*o)[p].peak.y, y, 9);
    }
}

TEST_F(RealPeople, JointsLieInsideTheSilhouette) {
    LOAD(picture, kPerson)
    const auto o = see(picture);
    ASSERT_TRUE(o);
    for (const Point p : {Point::nose, Point::left_shoulder, Point::right_shoulder, Point::left_hip,
                          Point::right_hip, Point::left_knee, Point::right_knee}) {
        EXPECT_TRUE(o->silhouette.contains(o->region.toCrop((*o)[p].peak))) << static_cast<int>(p);
    }
    EXPECT_FALSE(o->silhouette.contains({0.02, 0.02}));
}

TEST_F(RealPeople, SmallAndOffTheMiddleIsFound) {
    LOAD(picture, kPerson)
    // A street of grey with the person a third of the picture high, near the right border.
    cv::Mat small;
    cv::resize(picture(cv::Rect(60, 20, 320, 390)), small, cv::Size(), 0.9, 0.9, cv::INTER_AREA);
    cv::Mat wide(720, 1280, CV_8UC3, cv::mean(picture));
    small.copyTo(wide(cv::Rect(950, 300, small.cols, small.rows)));
    const auto o = see(wide);
    ASSERT_TRUE(o);
    EXPECT_NEAR(middleX(*o, Point::left_hip, Point::right_hip), 950 + 0.9 * (235 - 60), 15);
    expectStanding(*o);
}

TEST_F(RealPeople, OfSeveralTheClearAndLargeOneIsChosen) {
    LOAD(picture, kExamples + "basketball1.png")
    // One man whole, one hidden to the hips: the whole one (left) can be measured.
    const auto o = see(picture);
    ASSERT_TRUE(o);
    EXPECT_LT(o->operator[](Point::nose).direct.x, 200);
    expectStanding(*o);
}

/// The standing person of kPerson, `height` pixels from head to shoes, the hips at x.
void putPerson(cv::Mat& street, const cv::Mat& picture, double height, double x, double bottom) {
    const cv::Mat person = picture(cv::Rect(150, 90, 150, 310)); // 300 of its rows are the person
    const double scale = height / 300.0;
    cv::Mat scaled;
    cv::resize(person, scaled, cv::Size(), scale, scale, scale < 1 ? cv::INTER_AREA : cv::INTER_LINEAR);
    const cv::Rect place(static_cast<int>(x - scaled.cols / 2.0), static_cast<int>(bottom - scaled.rows),
                         scaled.cols, scaled.rows);
    scaled.copyTo(street(place));
}

TEST_F(RealPeople, SomebodySmallerBehindThePlayerIsNotMeasuredWhateverThePicturesSize) {
    LOAD(picture, kPerson)
    for (const int lines : {180, 240, 360, 480, 720}) {
        const int across = lines * 16 / 9;
        cv::Mat street(lines, across, CV_8UC3, cv::mean(picture));
        putPerson(street, picture, 0.60 * lines, 0.51 * across, 0.84 * lines);
        putPerson(street, picture, 0.25 * lines, 0.34 * across, 0.62 * lines);
        const auto o = see(street);
        ASSERT_TRUE(o) << lines;
        EXPECT_NEAR(middleX(*o, Point::left_hip, Point::right_hip), 0.51 * across, 0.06 * lines) << lines;
        expectStanding(*o);
        EXPECT_TRUE(observer->others().empty()) << lines;
    }
}

TEST_F(RealPeople, TwoOfOneSizeAreTold) {
    LOAD(picture, kPerson)
    cv::Mat street(480, 854, CV_8UC3, cv::mean(picture));
    putPerson(street, picture, 300, 260, 420);
    putPerson(street, picture, 280, 560, 410);
    ASSERT_TRUE(see(street));
    ASSERT_EQ(observer->others().size(), 1U);
    EXPECT_FALSE(observer->upsideDown());
}

TEST_F(RealPeople, APictureOnItsHeadIsNotMeasured) {
    LOAD(picture, kPerson)
    cv::Mat turned;
    cv::rotate(picture, turned, cv::ROTATE_180);
    EXPECT_FALSE(see(turned));
    EXPECT_TRUE(observer->upsideDown());
    EXPECT_TRUE(see(picture));
    EXPECT_FALSE(observer->upsideDown());
}

TEST_F(RealPeople, KitesAreNotPeople) {
    LOAD(picture, kKites)
    // Source: OpenCV's people detector finds the two walkers at the lower left.
    cv::HOGDescriptor hog;
    hog.setSVMDetector(cv::HOGDescriptor::getDefaultPeopleDetector());
    std::vector<cv::Rect> boxes;
    hog.detectMultiScale(picture, boxes, 0, cv::Size(8, 8), cv::Size(), 1.05);
    ASSERT_FALSE(boxes.empty());
    const auto o = see(picture);
    ASSERT_TRUE(o);
    const cv::Point hip(static_cast<int>(middleX(*o, Point::left_hip, Point::right_hip)),
                        static_cast<int>(middleY(*o, Point::left_hip, Point::right_hip)));
    EXPECT_TRUE(std::any_of(boxes.begin(), boxes.end(), [&](const cv::Rect& b) { return b.contains(hip); }));
}

TEST_F(RealPeople, NobodyIsNobody) {
    LOAD(picture, kExamples + "fruits.jpg")
    EXPECT_FALSE(see(picture));
    EXPECT_FALSE(see(cv::Mat(480, 640, CV_8UC3, cv::Scalar(0, 0, 0))));
    EXPECT_FALSE(see(cv::Mat(4, 4, CV_8UC3, cv::Scalar(9, 9, 9))));
}

TEST_F(RealPeople, LossIsNoticedAndRecovered) {
    LOAD(picture, kPerson)
    const cv::Mat empty(picture.size(), picture.type(), cv::mean(picture));
    const auto first = observer->observe(test::frameOf(picture, 0, 0.0));
    ASSERT_TRUE(first.ok() && first.value());
    const auto lost = observer->observe(test::frameOf(empty, 1, 0.03));
    ASSERT_TRUE(lost.ok());
    EXPECT_FALSE(lost.value());
    cv::Mat moved;
    cv::warpAffine(picture, moved, cv::Mat(cv::Matx23d(1, 0, 60, 0, 1, 10)), picture.size());
    const auto again = observer->observe(test::frameOf(moved, 2, 0.06));
    ASSERT_TRUE(again.ok() && again.value());
    EXPECT_NEAR((*again.value())[Point::left_hip].peak.x - (*first.value())[Point::left_hip].peak.x, 60, 6);
}

} // namespace
