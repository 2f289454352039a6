// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// How sure a mark is comes from the picture at hand: a real person (darknet's photograph, read where the
// Debian package put it) made smaller, blurred, half hidden.
#include <gtest/gtest.h>

#include <vector>

#include "body/observer.h"
#include "body/track.h"
#include "fixtures.h"

using namespace plumbmark;
using namespace plumbmark::body;
using marks::Landmark;

namespace {

class SigmaFromTheClip : public ::testing::Test {
  protected:
    void SetUp() override {
        const auto bytes = test::network();
        if (!bytes) {
            GTEST_SKIP() << "the pose network is not there: bash platform/linux/fetch-network.sh";
        }
        picture = test::photograph("/usr/share/darknet/data/person.jpg");
        if (picture.empty()) {
            GTEST_SKIP() << "not installed: darknet";
        }
        // The person with some room around: a shorter search.
        picture = picture(cv::Rect(90, 40, 290, 380)).clone();
        auto made = Observer::create(bytes);
        ASSERT_TRUE(made.ok()) << made.error().sentence;
        observer = std::move(*made);
    }

    /// Sigmas of the landmarks in shares of the person's size; one look repeated, as of somebody standing
    /// still.
    std::vector<double> sigmas(const cv::Mat& shown, const std::vector<Landmark>& of) {
        observer->restart();
        const auto seen = observer->observe(test::frameOf(shown));
        EXPECT_TRUE(seen.ok() && *seen) << "the person must still be found";
        std::vector<double> out;
        if (!seen.ok() || !*seen) {
            return out;
        }
        std::vector<Observation> looks;
        std::vector<base::Seconds> times;
        for (int i = 0; i < 6; ++i) {
            looks.push_back(**seen);
            looks.back().frame = i;
            looks.back().time = base::Seconds{i / 30.0};
            times.push_back(looks.back().time);
        }
        const auto made = autoTrack(looks, times, {});
        for (const Landmark l : of) {
            EXPECT_TRUE(made.track[3][l]);
            out.push_back(made.track[3][l] ? made.track[3][l]->sigma / (*seen)->region.size : 0.0);
        }
        return out;
    }
    static double mean(const std::vector<double>& v) {
        double sum = 0.0;
        for (const double x : v) {
            sum += x / static_cast<double>(v.size());
        }
        return sum;
    }

    cv::Mat picture;
    std::unique_ptr<Observer> observer;
    const std::vector<Landmark> body{Landmark::lead_shoulder, Landmark::trail_shoulder, Landmark::lead_hip,
                                     Landmark::trail_hip,     Landmark::lead_knee,      Landmark::trail_knee,
                                     Landmark::lead_ankle,    Landmark::trail_ankle};
    const std::vector<Landmark> legs{Landmark::lead_knee, Landmark::trail_knee, Landmark::lead_ankle,
                                     Landmark::trail_ankle};
};

TEST_F(SigmaFromTheClip, AHalvedPictureWidensIt) {
    cv::Mat half, quarter;
    cv::resize(picture, half, {}, 0.5, 0.5, cv::INTER_AREA);
    cv::resize(picture, quarter, {}, 0.25, 0.25, cv::INTER_AREA);
    const double full = mean(sigmas(picture, body));
    const double halved = mean(sigmas(half, body));
    EXPECT_GT(halved, full);
    EXPECT_GT(mean(sigmas(quarter, body)), halved);
}

TEST_F(SigmaFromTheClip, ABlurredPictureWidensIt) {
    cv::Mat blurred;
    cv::GaussianBlur(picture, blurred, {}, 6.0);
    EXPECT_GT(mean(sigmas(blurred, body)), 1.05 * mean(sigmas(picture, body)));
}

TEST_F(SigmaFromTheClip, HiddenLegsWidenTheirs) {
    const auto before = sigmas(picture, legs);
    observer->restart();
    const auto seen = observer->observe(test::frameOf(picture));
    ASSERT_TRUE(seen.ok() && *seen);
    const auto& box = (*seen)->box;
    cv::Mat hidden = picture.clone(); // a wall up to the thighs
    cv::rectangle(hidden, cv::Rect(0, static_cast<int>(box.y + 0.62 * box.height), hidden.cols, hidden.rows),
                  cv::Scalar(90, 100, 95), cv::FILLED);
    const auto after = sigmas(hidden, legs);
    ASSERT_EQ(after.size(), before.size());
    for (std::size_t i = 0; i < legs.size(); ++i) {
        EXPECT_GT(after[i], 1.3 * before[i]) << marks::landmarkName(legs[i]);
    }
}

} // namespace
