// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/practice_session.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <system_error>

#include "analysis/quick_look.h"
#include "coaching/playbook.h"
#include "records/fact.h"
#include "records/kinds.h"
#include "video/clip.h"

namespace plumbmark::session {
namespace {

using body::Point;

constexpr double kLookSeconds = 0.1;
/// Below this many picture lines the marks' own sigma has proven too small to stand by: no verdict, not a
/// wrong one. 720 lines are what the numbers are made for.
constexpr int kLeastLines = 720;
bool coarse(int width, int height) {
    return std::min(width, height) < kLeastLines;
}
/// Share of "good" from which it holds; 1 - kSure: does not hold. The 15 % that make a checkpoint "cannot
/// tell".
constexpr double kSure = 0.85;
constexpr std::size_t kMostJobs = 3;
/// Top to hit, seconds: downswings take 0.2 to 0.45; the rest is for slow swings and for the hit and a top
/// told by the hands, each off by up to 0.2.
constexpr double kLongestDown = 1.0;

std::int64_t nowMs() {
    return std::chrono::duration_cast<std::chrono::milliseconds>(
               std::chrono::steady_clock::now().time_since_epoch())
        .count();
}

const coaching::Checkpoint* rowOf(const PracticeOptions& options) {
    const auto* row = coaching::Playbook::standard().find(options.checkpoint);
    return row != nullptr && row->view == options.context.view ? row : nullptr;
}

void removeFilm(const std::filesystem::path& film) {
    std::error_code ignored;
    std::filesystem::remove(film, ignored);
}

/// A full swing takes the hands up to a top less than a second before the hit, down past the hips at the hit,
/// and up again; what was only a waggle or a rehearsal does not. Smaller shots are told by their top alone.
/// `hit`: presentation time, to a quarter second.
bool showsSwing(const analysis::QuickLook& look, const marks::ShotContext& context, base::Seconds hit) {
    const auto* top = marks::find(look.outcome.moments, marks::MomentId::top);
    if (top == nullptr) {
        return false;
    }
    if (context.shot != marks::ShotKind::full && context.shot != marks::ShotKind::practice) {
        return true;
    }
    const double down = (hit - top->time).value();
    if (down < 0.0 || down > kLongestDown) {
        return false;
    }
    double before = 1e9, at = -1e9, after = 1e9; // height of the hands: 0 at the shoulders, 1 at the hips
    for (const auto& o : look.observations) {
        const auto hands = base::midpoint(o[Point::left_wrist].direct, o[Point::right_wrist].direct);
        const auto shoulders =
            base::midpoint(o[Point::left_shoulder].direct, o[Point::right_shoulder].direct);
        const auto hips = base::midpoint(o[Point::left_hip].direct, o[Point::right_hip].direct);
        const double height = (hands.y - shoulders.y) / std::max(1.0, base::length(shoulders - hips));
        const double t = (o.time - hit).value();
        if (t > -1.1 && t < 0.0) {
            before = std::min(before, height);
        }
        if (t > -0.4 && t < 0.3) {
            at = std::max(at, height);
        }
        if (t > 0.0) {
            after = std::min(after, height);
        }
    }
    return before < 0.55 && at > 0.6 && after < 0.55;
}

} // namespace

std::string_view verdictName(PracticeVerdict verdict) {
    return verdict == PracticeVerdict::holds         ? "holds"
           : verdict == PracticeVerdict::doesNotHold ? "does-not-hold"
                                                     : "cannot-tell";
}

std::string_view feedbackName(Feedback feedback) {
    return feedback == Feedback::everyThird    ? "third"
           : feedback == Feedback::onlyOutside ? "outside"
                                               : "every";
}

std::optional<Feedback> feedbackFromName(std::string_view name) {
    for (const auto f : {Feedback::everyThird, Feedback::onlyOutside, Feedback::every}) {
        if (feedbackName(f) == name) {
            return f;
        }
    }
    return std::nullopt;
}

base::Result<std::unique_ptr<PracticeSession>>
PracticeSession::create(const PracticeOptions& options, const analysis::NetworkBytes& network) {
    if (rowOf(options) == nullptr) {
        return base::inputError(
            "practice.checkpoint",
            "\"" + options.checkpoint +
                "\" is no checkpoint of this view; choose one that the playbook has for it.");
    }
    auto observer = body::Observer::create(network, options.context.view);
    if (!observer) {
        return observer.error();
    }
    auto judge = body::Observer::create(network, options.context.view);
    if (!judge) {
        return judge.error();
    }
    return std::unique_ptr<PracticeSession>(
        new PracticeSession(options, std::move(*observer), std::move(*judge)));
}

PracticeSession::PracticeSession(const PracticeOptions& options, std::unique_ptr<body::Observer> observer,
                                 std::unique_ptr<body::Observer> judge)
    : options_(options), label_(rowOf(options)->label), recorder_([&] {
          capture::RecorderOptions r;
          r.folder = options.folder;
          r.stem = "practice";
          r.soundRate = options.soundRate;
          r.askedFps = options.askedFps;
          return r;
      }()),
      observer_(std::move(observer)), judge_(std::move(judge)), holds_(options.context, options.rollDegrees) {
    if (options_.background) {
        looker_ = std::thread([this] { lookOn(); });
        judger_ = std::thread([this] { judgeOn(); });
    }
}

PracticeSession::~PracticeSession() {
    {
        const std::lock_guard lock(mutex_);
        stop_ = true;
    }
    wake_.notify_all();
    for (std::thread* thread : {&looker_, &judger_}) {
        if (thread->joinable()) {
            thread->join();
        }
    }
    for (const auto& [take, at] : jobs_) {
        removeFilm(take.file);
    }
}

bool PracticeSession::framed() const {
    const std::lock_guard lock(mutex_);
    return framed_;
}

PracticeSession::News PracticeSession::news() {
    const std::lock_guard lock(mutex_);
    return std::exchange(news_, {});
}

PracticeSummary PracticeSession::summary() const {
    const std::lock_guard lock(mutex_);
    return summary_;
}

base::Result<void> PracticeSession::frame(const video::Frame& frame) {
    if (auto fed = recorder_.frame(frame); !fed) {
        return fed;
    }
    for (auto& take : recorder_.takes()) {
        noteHit(take.hit);
        if (!options_.background) {
            judgeTake(take, nowMs());
            continue;
        }
        const std::lock_guard lock(mutex_);
        if (jobs_.size() >= kMostJobs) {
            // Rather no verdict than a late one; the swing still counts.
            sorter_.judged(take.hit, true);
            PracticeSwing swing;
            swing.number = ++summary_.swings;
            ++summary_.cannotTell;
            swing.hit = take.hit;
            swing.how = take.how;
            swing.why = "This device could not keep up; choose a smaller picture or a lower rate.";
            news_.swings.push_back(std::move(swing));
            removeFilm(take.file);
            continue;
        }
        jobs_.emplace_back(std::move(take), nowMs());
        wake_.notify_all();
    }
    if (!looked_ || (frame.time() - *looked_).value() >= kLookSeconds - 1e-4) {
        looked_ = frame.time();
        {
            const std::lock_guard lock(mutex_);
            summary_.framesLeftOut = recorder_.framesLeftOut();
        }
        if (!options_.background) {
            look(frame);
        } else {
            const std::lock_guard lock(mutex_);
            nextLook_ = frame; // newest wins
            wake_.notify_all();
        }
    }
    return {};
}

base::Result<void> PracticeSession::sound(std::span<const float> mono, base::Seconds time) {
    return recorder_.sound(mono, time);
}

base::Result<void> PracticeSession::finish() {
    auto closed = recorder_.close();
    for (auto& take : recorder_.takes()) {
        noteHit(take.hit);
        if (!options_.background) {
            judgeTake(take, nowMs());
        } else {
            const std::lock_guard lock(mutex_);
            jobs_.emplace_back(std::move(take), nowMs());
            wake_.notify_all();
        }
    }
    if (options_.background) {
        std::unique_lock lock(mutex_);
        idle_.wait(lock, [this] { return jobs_.empty() && !nextLook_ && !judging_ && !looking_; });
    }
    const std::lock_guard lock(mutex_);
    countRehearsals(std::nullopt);
    return closed;
}

void PracticeSession::lookOn() {
    std::unique_lock lock(mutex_);
    for (;;) {
        wake_.wait(lock, [this] { return stop_ || nextLook_; });
        if (stop_) {
            return;
        }
        const video::Frame frame = std::move(*nextLook_);
        nextLook_.reset();
        looking_ = true;
        lock.unlock();
        look(frame);
        lock.lock();
        looking_ = false;
        idle_.notify_all();
    }
}

void PracticeSession::judgeOn() {
    std::unique_lock lock(mutex_);
    for (;;) {
        wake_.wait(lock, [this] { return stop_ || !jobs_.empty(); });
        if (stop_) {
            return;
        }
        auto [take, at] = std::move(jobs_.front());
        jobs_.pop_front();
        judging_ = true;
        lock.unlock();
        judgeTake(take, at);
        lock.lock();
        judging_ = false;
        idle_.notify_all();
    }
}

void PracticeSession::noteHit(base::Seconds time) {
    const std::lock_guard lock(mutex_);
    sorter_.hit(time);
}

void PracticeSession::countRehearsals(std::optional<base::Seconds> now) {
    for (const Hold& hold : sorter_.rehearsals(now)) {
        auto [verdict, result] = verdictOf(hold.outcome);
        if (coarse(hold.outcome.scene.width, hold.outcome.scene.height)) {
            verdict = PracticeVerdict::cannotTell;
        }
        const bool counted = verdict == PracticeVerdict::holds;
        ++(counted ? summary_.rehearsals : summary_.rehearsalsOutside);
        summary_.enough = summary_.swings + summary_.rehearsals >= options_.dose;
        news_.rehearsals.push_back(
            {hold.from, hold.to, verdict, result ? result->value : std::nullopt, counted});
    }
}

void PracticeSession::look(const video::Frame& frame) {
    auto seen = observer_->observe(frame);
    if (!seen) {
        return; // the next look may do better; verdicts do not depend on it
    }
    auto framing = judgeFraming(*seen, frame.width(), frame.height(), options_.context.view);
    std::optional<Hold> hold;
    if (*seen) {
        hold = holds_.push(**seen, frame.width(), frame.height());
    }
    const std::lock_guard lock(mutex_);
    if (*seen) {
        standsIn_ = (*seen)->region;
    }
    // Three good looks in a row: the player stands there, and did not only pass by.
    goodLooks_ = framing.good() ? goodLooks_ + 1 : 0;
    framed_ = framed_ || goodLooks_ >= 3;
    news_.framing = std::move(framing);
    if (hold && framed_) {
        sorter_.held(std::move(*hold));
    }
    countRehearsals(frame.time());
}

std::pair<PracticeVerdict, const coaching::CheckpointResult*>
PracticeSession::verdictOf(const analysis::Outcome& outcome) const {
    for (const auto& c : outcome.checkpoints) {
        if (c.id != options_.checkpoint) {
            continue;
        }
        if (!c.value || c.good + c.watch + c.work < 0.5) {
            return {PracticeVerdict::cannotTell, &c};
        }
        return {c.good >= kSure       ? PracticeVerdict::holds
                : c.good <= 1 - kSure ? PracticeVerdict::doesNotHold
                                      : PracticeVerdict::cannotTell,
                &c};
    }
    return {PracticeVerdict::cannotTell, nullptr};
}

void PracticeSession::judgeTake(const capture::Take& take, std::int64_t finishedAt) {
    PracticeSwing swing;
    swing.hit = take.hit;
    swing.how = take.how;
    swing.film = take.file;
    swing.frames = take.frames;
    swing.dropped = take.dropped;
    analysis::Request request;
    request.context = options_.context;
    request.rollDegrees = options_.rollDegrees;
    const base::Seconds hit = take.hit - take.begin;
    bool isSwing = true;
    auto clip = video::Clip::open(take.file);
    if (!clip) {
        swing.why = clip.error().sentence;
    } else {
        // The way back, the top and the way down are what body checkpoints are about; a finish too when asked
        // for.
        const auto* row = rowOf(options_);
        const bool late = row->moment && *row->moment > marks::MomentId::impact;
        analysis::QuickOptions quick;
        quick.from = base::Seconds{std::max(0.0, hit.value() - 2.2)};
        if (!late) {
            quick.to = hit + base::Seconds{0.5};
        }
        {
            const std::lock_guard lock(mutex_);
            quick.near = standsIn_;
        }
        auto looked = analysis::quickLook(**clip, *judge_, request, quick, {});
        if (!looked || !*looked) {
            swing.why = looked ? "Stopped." : looked.error().sentence;
        } else {
            const analysis::QuickLook& quickLook = **looked;
            isSwing = quickLook.observations.empty() || showsSwing(quickLook, options_.context, hit);
            const bool tooCoarse = coarse((*clip)->info().width, (*clip)->info().height);
            auto [verdict, result] = verdictOf(quickLook.outcome);
            if (tooCoarse) {
                verdict = PracticeVerdict::cannotTell;
            }
            swing.verdict = verdict;
            if (result != nullptr) {
                swing.value = result->value;
                swing.good = result->good;
                swing.watch = result->watch;
                swing.work = result->work;
                swing.why = result->help;
            }
            if (verdict == PracticeVerdict::cannotTell) {
                const std::optional<body::Observation> at =
                    quickLook.address ? std::optional(quickLook.observations[*quickLook.address])
                    : quickLook.observations.empty() ? std::nullopt
                                                     : std::optional(quickLook.observations.front());
                const auto framing =
                    judgeFraming(at, (*clip)->info().width, (*clip)->info().height, options_.context.view);
                if (tooCoarse) {
                    swing.why =
                        "The picture is too coarse for a verdict; set the camera to 720 lines or more.";
                } else if (!framing.good()) {
                    swing.why = framingAdvice(framing.faults.front());
                } else if (swing.value) {
                    swing.why = "Too near the edge of the range to tell from this picture.";
                } else {
                    const auto* m =
                        measure::find(quickLook.outcome.measurements, row->measurement, row->moment);
                    swing.why = m != nullptr ? m->reason : "This film does not show it.";
                }
            }
        }
    }
    swing.seconds =
        static_cast<double>(nowMs() - finishedAt) / 1000.0 +
        std::max(
            0.0,
            (take.begin + base::Seconds{take.frames / std::max(1.0, take.measuredFps)} - take.hit).value());

    const std::lock_guard lock(mutex_);
    sorter_.judged(take.hit, isSwing);
    if (!isSwing) {
        ++summary_.noSwings;
        removeFilm(take.file);
        return;
    }
    swing.number = ++summary_.swings;
    ++(swing.verdict == PracticeVerdict::holds         ? summary_.holds
       : swing.verdict == PracticeVerdict::doesNotHold ? summary_.doesNotHold
                                                       : summary_.cannotTell);
    summary_.enough = summary_.swings + summary_.rehearsals >= options_.dose;
    // Something to put right at the phone is told at once, whatever the schedule.
    swing.shown =
        options_.feedback == Feedback::every ||
        (options_.feedback == Feedback::everyThird && swing.number % 3 == 0) ||
        (options_.feedback == Feedback::onlyOutside && swing.verdict == PracticeVerdict::doesNotHold) ||
        (swing.verdict == PracticeVerdict::cannotTell && !swing.value);
    if (!keepFilm(swing)) {
        removeFilm(swing.film);
        swing.film.clear();
    }
    news_.swings.push_back(std::move(swing));
}

bool PracticeSession::keepFilm(const PracticeSwing& swing) {
    if (swing.verdict == PracticeVerdict::cannotTell || !swing.value) {
        return false;
    }
    const auto rank = [](const PracticeSwing& s) { return s.good - s.work; };
    bool keep = false;
    const auto replace = [&](std::optional<PracticeSwing>& slot, const std::optional<PracticeSwing>& other) {
        if (slot && (!other || other->film != slot->film)) {
            removeFilm(slot->film);
        }
        slot = swing;
        keep = true;
    };
    if (!summary_.best || rank(swing) > rank(*summary_.best)) {
        replace(summary_.best, summary_.worst);
    }
    if (!summary_.worst || rank(swing) < rank(*summary_.worst)) {
        replace(summary_.worst, summary_.best);
    }
    return keep;
}

base::Result<void> logPractice(store::Library& library, const base::Id& player,
                               const PracticeSummary& summary, std::string_view checkpointLabel,
                               std::string_view day) {
    std::vector<records::Fact> facts;
    const auto add = [&](int count, const std::string& note) {
        records::Practice practice;
        practice.day = day;
        practice.repetitions = count;
        practice.drill = checkpointLabel;
        practice.note = note;
        facts.push_back(library.make(records::kind::practice, {player}, records::bodyOf(practice)));
    };
    if (summary.swings > 0) {
        add(summary.swings, "swings: " + std::to_string(summary.holds) + " hold, " +
                                std::to_string(summary.doesNotHold) + " do not, " +
                                std::to_string(summary.cannotTell) + " could not be told");
    }
    if (summary.rehearsals > 0) {
        add(summary.rehearsals,
            "rehearsals held in range; " + std::to_string(summary.rehearsalsOutside) + " outside");
    }
    return facts.empty() ? base::Result<void>() : library.add(facts);
}

} // namespace plumbmark::session
