// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <condition_variable>
#include <cstdint>
#include <deque>
#include <filesystem>
#include <memory>
#include <mutex>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <thread>
#include <vector>

#include "analysis/analysis.h"
#include "base/ids.h"
#include "base/measured.h"
#include "base/result.h"
#include "body/observer.h"
#include "capture/armed_recorder.h"
#include "session/framing.h"
#include "session/hold_watch.h"
#include "store/library.h"

/// Practice at home: the phone on a stand watches for swings, and after each says whether the one thing that
/// the plan is about holds.
namespace plumbmark::session {

enum class PracticeVerdict { holds, doesNotHold, cannotTell };
[[nodiscard]] std::string_view
verdictName(PracticeVerdict verdict); ///< "holds", "does-not-hold", "cannot-tell"

/// When an answer is given: not after every swing, so that the player learns to feel it.
enum class Feedback { everyThird, onlyOutside, every };
[[nodiscard]] std::string_view feedbackName(Feedback feedback); ///< "third", "outside", "every"
[[nodiscard]] std::optional<Feedback> feedbackFromName(std::string_view name);

struct PracticeOptions {
    marks::ShotContext context;
    std::optional<double> rollDegrees;                  ///< the device's tilt, clockwise seen from behind it
    std::string checkpoint = "head_inside_trail_ankle"; ///< of the standard playbook
    Feedback feedback = Feedback::everyThird;
    int dose = 30;                ///< swings and rehearsals after which it is enough for today
    std::filesystem::path folder; ///< takes go here; at most best, worst and the one being looked at stay
    double soundRate = 0.0;
    double askedFps = 60.0;
    /// true: looks and verdicts on a worker, for a camera's pace. false: all in the caller, the same on every
    /// run, for files as fast as they can be read.
    bool background = true;
};

struct PracticeSwing {
    int number = 0;    ///< from 1
    base::Seconds hit; ///< camera time
    capture::How how = capture::How::motion;
    PracticeVerdict verdict = PracticeVerdict::cannotTell;
    std::optional<base::Measured> value;
    double good = 0.0, watch = 0.0, work = 0.0; ///< shares of the checkpoint's states
    std::string why;            ///< one plain sentence: advice, or why it can't be told and what to move
    bool shown = false;         ///< by the feedback schedule
    double seconds = 0.0;       ///< from the hit to the verdict, real seconds
    std::filesystem::path film; ///< empty once it is no longer kept
    int frames = 0, dropped = 0;
};

struct PracticeRehearsal {
    base::Seconds from, to;
    PracticeVerdict verdict = PracticeVerdict::cannotTell;
    std::optional<base::Measured> value;
    bool counted = false; ///< only in range
};

struct PracticeSummary {
    int swings = 0, holds = 0, doesNotHold = 0, cannotTell = 0;
    int noSwings = 0; ///< noticed, but no swing was in the take: not counted
    int rehearsals = 0, rehearsalsOutside = 0;
    int framesLeftOut = 0;
    bool enough = false; ///< the dose is reached
    std::optional<PracticeSwing> best, worst;
};

class PracticeSession {
  public:
    /// Errors (input): "practice.checkpoint" (not in the playbook, or of another view), "network.missing" and
    /// the like: practice needs the pose network.
    static base::Result<std::unique_ptr<PracticeSession>> create(const PracticeOptions& options,
                                                                 const analysis::NetworkBytes& network);
    ~PracticeSession(); ///< stops the threads; takes that are not best or worst go away
    PracticeSession(const PracticeSession&) = delete;
    PracticeSession& operator=(const PracticeSession&) = delete;

    /// One thread feeds it. Errors: those of capture::ArmedRecorder.
    base::Result<void> frame(const video::Frame& frame);
    base::Result<void> sound(std::span<const float> mono, base::Seconds time);
    void cut() { recorder_.cut(); }
    /// No more comes: decides what is open and waits for the last verdict.
    base::Result<void> finish();

    /// What happened since the last call, oldest first. Any thread.
    struct News {
        std::vector<PracticeSwing> swings;
        std::vector<PracticeRehearsal> rehearsals;
        std::optional<Framing> framing; ///< newest look
    };
    [[nodiscard]] News news();
    [[nodiscard]] PracticeSummary summary() const;
    [[nodiscard]] const std::string& checkpointLabel() const { return label_; }
    /// Whether the picture was right once: before that nothing is counted.
    [[nodiscard]] bool framed() const;

  private:
    PracticeSession(const PracticeOptions& options, std::unique_ptr<body::Observer> observer,
                    std::unique_ptr<body::Observer> judge);
    void lookOn();  ///< thread: follows the running picture
    void judgeOn(); ///< thread: looks at takes, so that a verdict does not make the other one blind
    void noteHit(base::Seconds time);
    void countRehearsals(std::optional<base::Seconds> now); ///< with the mutex held
    void look(const video::Frame& frame);
    void judgeTake(const capture::Take& take, std::int64_t finishedAt);
    [[nodiscard]] bool keepFilm(const PracticeSwing& swing);
    [[nodiscard]] std::pair<PracticeVerdict, const coaching::CheckpointResult*>
    verdictOf(const analysis::Outcome& outcome) const;

    PracticeOptions options_;
    std::string label_;
    capture::ArmedRecorder recorder_;
    std::unique_ptr<body::Observer> observer_; ///< follows the running picture
    std::unique_ptr<body::Observer> judge_;    ///< looks at takes
    HoldWatch holds_;
    std::optional<base::Seconds> looked_;

    mutable std::mutex mutex_;
    std::condition_variable wake_, idle_;
    std::optional<video::Frame> nextLook_;
    std::deque<std::pair<capture::Take, std::int64_t>> jobs_;
    News news_;
    PracticeSummary summary_;
    HoldSorter sorter_;
    std::optional<body::Region> standsIn_; ///< the player at the last look
    bool looking_ = false, judging_ = false, stop_ = false;
    int goodLooks_ = 0;
    bool framed_ = false;
    std::thread looker_, judger_;
};

/// Writes what was practised into the plan's log: one fact for the swings, one for the rehearsals. Errors:
/// those of store::Library.
base::Result<void> logPractice(store::Library& library, const base::Id& player,
                               const PracticeSummary& summary, std::string_view checkpointLabel,
                               std::string_view day);

} // namespace plumbmark::session
