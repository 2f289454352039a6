// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "capture/armed_recorder.h"

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <functional>
#include <string>

#include "base/files.h"
#include "made_figure.h"
#include "swing/hits.h"
#include "video/clip.h"

namespace plumbmark::capture {
namespace {

namespace fs = std::filesystem;

class Folder {
  public:
    Folder()
        : path_(fs::temp_directory_path() /
                ("plumbmark-takes-" + std::to_string(::getpid()) + "-" + std::to_string(number()++))) {
        fs::create_directories(path_);
    }
    ~Folder() { fs::remove_all(path_); }
    [[nodiscard]] const fs::path& path() const { return path_; }

  private:
    static int& number() {
        static int n = 0;
        return n;
    }
    fs::path path_;
};

struct Scene {
    std::function<made::Pose(double)> pose;
    double seconds = 8;
    std::vector<double> clicks;
    bool sound = true;
    double fps = 60;
    std::function<bool(int)> lost = [](int) { return false; }; ///< frames the camera never gave
    double from = 100.0;                                       ///< a camera's clock does not begin at 0
};

constexpr double kRate = 48000;

void feed(ArmedRecorder& recorder, const Scene& scene, const std::function<void(double)>& each = {}) {
    double heard = 0;
    for (int i = 0; i / scene.fps < scene.seconds; ++i) {
        const double t = i / scene.fps;
        while (scene.sound && heard + 0.02 <= t + 1e-9) {
            ASSERT_TRUE(recorder.sound(made::hissWithClicks(heard, 0.02, kRate, scene.clicks),
                                       base::Seconds{scene.from + heard}));
            heard += 0.02;
        }
        if (!scene.lost(i)) {
            ASSERT_TRUE(recorder.frame(made::frameOf(scene.pose(t), i, scene.from + t)));
        }
        if (each) {
            each(t);
        }
    }
}

RecorderOptions optionsFor(const Folder& folder, const Scene& scene) {
    RecorderOptions o;
    o.folder = folder.path();
    o.soundRate = scene.sound ? kRate : 0;
    o.askedFps = scene.fps;
    return o;
}

TEST(ArmedRecorder, CutsAHeardSwingOutWithItsOwnTimes) {
    const Folder folder;
    const Scene scene{[](double t) { return made::swingPose(t, 5.0); }, 7.5, {5.012}};
    ArmedRecorder recorder(optionsFor(folder, scene));
    feed(recorder, scene);
    const auto takes = recorder.takes();
    ASSERT_EQ(takes.size(), 1U);
    const Take& take = takes[0];
    EXPECT_EQ(take.how, How::soundAndMotion);
    EXPECT_NEAR(take.hit.value() - scene.from, 5.012, 0.002);
    EXPECT_LE(take.begin.value() - scene.from, 2.52);
    EXPECT_GE(take.begin.value() - scene.from, 1.9);
    EXPECT_NEAR(take.measuredFps, 60, 0.1);
    EXPECT_EQ(take.dropped, 0);
    EXPECT_FALSE(take.uneven);
    EXPECT_FALSE(fs::exists(take.file.string() + ".part"));

    auto clip = video::Clip::open(take.file);
    ASSERT_TRUE(clip) << clip.error().sentence;
    ASSERT_EQ((*clip)->info().frames, take.frames);
    const auto& times = (*clip)->times();
    EXPECT_NEAR(times.back().value() + take.begin.value() - scene.from, 6.5, 0.03);
    for (std::size_t i = 1; i < times.size(); ++i) {
        EXPECT_NEAR((times[i] - times[i - 1]).value(), 1 / 60.0, 1.1 / 90000);
    }
    // Sound in step with the pictures: the click is where the camera heard it.
    auto sound = (*clip)->sound();
    ASSERT_TRUE(sound);
    const auto hits = swing::findHits(*sound);
    ASSERT_FALSE(hits.empty());
    EXPECT_NEAR(hits[0].time.value() + take.begin.value() - scene.from, 5.012, 0.003);
}

// Outside reference: ffprobe of FFmpeg reads the presentation times of the file.
TEST(ArmedRecorder, FfprobeReadsTheSameTimes) {
    if (std::system("ffprobe -version > /dev/null 2>&1") != 0) {
        GTEST_SKIP() << "ffprobe is not installed";
    }
    const Folder folder;
    Scene scene{[](double t) { return made::swingPose(t, 3.5); }, 5.5, {3.5}};
    scene.lost = [](int i) { return i == 200 || i == 201; };
    ArmedRecorder recorder(optionsFor(folder, scene));
    feed(recorder, scene);
    const auto takes = recorder.takes();
    ASSERT_EQ(takes.size(), 1U);
    const std::string command =
        "ffprobe -v error -select_streams v -show_entries packet=pts_time -of csv=p=0 \"" +
        takes[0].file.string() + "\"";
    FILE* pipe = ::popen(command.c_str(), "r");
    ASSERT_NE(pipe, nullptr);
    std::array<char, 128> line{};
    std::vector<double> times;
    while (std::fgets(line.data(), line.size(), pipe) != nullptr) {
        times.push_back(std::atof(line.data()));
    }
    ::pclose(pipe);
    ASSERT_EQ(static_cast<int>(times.size()), takes[0].frames);
    // The camera's own instants i / 60, without those it lost.
    std::vector<double> expected;
    const int first = static_cast<int>(std::lround((takes[0].begin.value() - scene.from) * 60));
    for (int i = first; expected.size() < times.size(); ++i) {
        if (!scene.lost(i)) {
            expected.push_back((i - first) / 60.0);
        }
    }
    for (std::size_t i = 0; i < times.size(); ++i) {
        EXPECT_NEAR(times[i] - times[0], expected[i], 2.5e-5) << i;
    }
    EXPECT_EQ(takes[0].dropped, 2);
    EXPECT_TRUE(takes[0].uneven);
    EXPECT_NEAR(takes[0].longestGap.value(), 3 / 60.0, 1e-4);
    EXPECT_FALSE(takes[0].warnings.empty());
}

TEST(ArmedRecorder, NoticesASilentSwingByItsMotion) {
    const Folder folder;
    Scene scene{[](double t) { return made::swingPose(t, 4.0); }, 6.0, {}, false};
    ArmedRecorder recorder(optionsFor(folder, scene));
    feed(recorder, scene);
    const auto takes = recorder.takes();
    ASSERT_EQ(takes.size(), 1U);
    EXPECT_EQ(takes[0].how, How::motion);
    EXPECT_FALSE(takes[0].hasSound);
    EXPECT_NEAR(takes[0].hit.value() - scene.from, 4.0, 0.25);
}

TEST(ArmedRecorder, WalkingWagglingAndNeighboursAreNoSwings) {
    const Folder folder;
    const auto pose = [](double t) {
        made::Pose p;
        if (t < 4) {
            p.x = 40 + 152 * made::ease(t / 3.5); // walks in
        } else if (t < 7) {
            p.angle = 12 * std::sin(5 * t) * std::sin((t - 4) / 3 * std::numbers::pi); // waggles
        } else if (t > 9) {
            p.x = 192 + 200 * made::ease((t - 9) / 3); // walks out
        }
        return p;
    };
    const Scene scene{pose, 13, {1.0, 2.6, 5.1, 5.9, 8.0, 10.2}};
    ArmedRecorder recorder(optionsFor(folder, scene));
    feed(recorder, scene);
    ASSERT_TRUE(recorder.close());
    EXPECT_TRUE(recorder.takes().empty());
    EXPECT_TRUE(fs::is_empty(folder.path())) << "a take that was none must leave nothing behind";
}

TEST(ArmedRecorder, SlowRehearsalIsNoSwing) {
    const Folder folder;
    const auto pose = [](double t) {
        made::Pose p;
        p.angle = -180 * (made::ease((t - 1) / 2.3) - made::ease((t - 5) / 2.3));
        return p;
    };
    const Scene scene{pose, 9, {6.2}};
    ArmedRecorder recorder(optionsFor(folder, scene));
    feed(recorder, scene);
    ASSERT_TRUE(recorder.close());
    EXPECT_TRUE(recorder.takes().empty());
}

TEST(ArmedRecorder, AKeyCutsWithoutAnySwing) {
    const Folder folder;
    Scene scene{[](double) { return made::Pose{}; }, 6.0, {}};
    ArmedRecorder recorder(optionsFor(folder, scene));
    bool pressed = false;
    feed(recorder, scene, [&](double t) {
        if (t >= 4.0 && !pressed) {
            pressed = true;
            recorder.cut();
        }
    });
    const auto takes = recorder.takes();
    ASSERT_EQ(takes.size(), 1U);
    EXPECT_EQ(takes[0].how, How::byHand);
    EXPECT_NEAR(takes[0].hit.value() - scene.from, 4.0, 0.03);
    auto clip = video::Clip::open(takes[0].file);
    ASSERT_TRUE(clip);
    EXPECT_GE((*clip)->info().duration.value(), 3.9);
}

TEST(ArmedRecorder, ThePastIsBoundedInTimeAndBytes) {
    const Folder folder;
    Scene scene{[](double t) {
                    return made::Pose{192 + 60 * std::sin(3 * t), 90 * std::sin(2 * t)};
                },
                25,
                {}};
    scene.fps = 30;
    auto options = optionsFor(folder, scene);
    options.watch = false;
    options.keepBytes = std::size_t{300} << 10;
    ArmedRecorder recorder(options);
    std::size_t most = 0;
    double longest = 0;
    feed(recorder, scene, [&](double) {
        most = std::max(most, recorder.keptBytes());
        longest = std::max(longest, recorder.keptSeconds().value());
    });
    EXPECT_LT(longest, 8.6);
    const std::size_t sound = static_cast<std::size_t>(8.6 * kRate) * sizeof(float);
    EXPECT_LT(most, options.keepBytes + sound + (std::size_t{100} << 10)); // a group more than the bound
    EXPECT_GT(most, std::size_t{50} << 10);
}

TEST(ArmedRecorder, AKilledProcessLeavesTheTake) {
    const Folder folder;
    const Scene scene{[](double t) { return made::swingPose(t, 4.0); }, 8, {4.0}};
    const pid_t child = ::fork();
    ASSERT_GE(child, 0);
    if (child == 0) {
        ArmedRecorder recorder(optionsFor(folder, scene));
        feed(recorder, scene, [](double t) {
            if (t > 5.0) {
                ::kill(::getpid(), SIGKILL); // a second after the hit, half a second before the take ends
            }
        });
        ::_exit(0);
    }
    int status = 0;
    ASSERT_EQ(::waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFSIGNALED(status));
    const auto found = video::recoverTakes(folder.path());
    ASSERT_TRUE(found) << found.error().sentence;
    ASSERT_EQ(found->size(), 1U);
    auto clip = video::Clip::open(found->front());
    ASSERT_TRUE(clip) << clip.error().sentence;
    // Begins 2.5 to 3 s before the hit, ends within 0.1 s of the kill.
    EXPECT_GE((*clip)->info().duration.value(), 3.4);
    EXPECT_TRUE((*clip)->info().hasSound);
    EXPECT_FALSE(fs::exists(found->front().string() + ".part"));
    const auto again = video::recoverTakes(folder.path());
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->empty());
}

TEST(ArmedRecorder, APartCutAnywhereIsRecoveredOrGoesAway) {
    const Folder folder;
    const Scene scene{[](double t) { return made::swingPose(t, 3.0); }, 3.6, {3.0}};
    {
        ArmedRecorder recorder(optionsFor(folder, scene));
        feed(recorder, scene);
        ASSERT_TRUE(recorder.writing());
    } // ends without close(), as a crash would
    const fs::path part = folder.path() / "take-1.mp4.part";
    ASSERT_TRUE(fs::exists(part));
    const auto size = fs::file_size(part);
    const fs::path kept = folder.path() / "whole";
    fs::copy_file(part, kept);
    int before = 0;
    for (const double share : {0.0, 0.001, 0.2, 0.5, 0.77, 0.9999, 1.0}) {
        fs::copy_file(kept, part, fs::copy_options::overwrite_existing);
        fs::resize_file(part, static_cast<std::uintmax_t>(share * static_cast<double>(size)));
        const auto made = video::recoverTakes(folder.path());
        ASSERT_TRUE(made) << share;
        EXPECT_FALSE(fs::exists(part));
        int frames = 0;
        if (!made->empty()) {
            auto clip = video::Clip::open(made->front());
            ASSERT_TRUE(clip) << share << clip.error().sentence;
            frames = (*clip)->info().frames;
            fs::remove(made->front());
        }
        EXPECT_GE(frames, before) << share;
        EXPECT_TRUE(share < 0.2 || frames > 10) << share;
        before = frames;
    }
}

TEST(ArmedRecorder, AFolderThatIsGoneIsOneSentence) {
    RecorderOptions options;
    options.folder = "/nonexistent/folder";
    options.watch = false;
    ArmedRecorder recorder(options);
    ASSERT_TRUE(recorder.frame(made::frameOf({}, 0, 0)));
    recorder.cut();
    EXPECT_FALSE(recorder.writing());
    const auto problem = recorder.problem();
    ASSERT_TRUE(problem);
    EXPECT_EQ(problem->key, "writer.folder");
}

} // namespace
} // namespace plumbmark::capture
