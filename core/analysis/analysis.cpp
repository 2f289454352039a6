// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "analysis/analysis.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <numbers>
#include <span>

#include "analysis/detail/evidence.h"
#include "analysis/detail/pass.h"
#include "analysis/detail/steady.h"
#include "analysis/detail/time_scale.h"
#include "body/observer.h"
#include "coaching/caution.h"
#include "coaching/judge.h"
#include "measure/equipment.h"
#include "scene/estimates.h"
#include "swing/moments.h"

namespace plumbmark::analysis {
namespace {

using marks::Landmark;

/// A clip that does not say how fast it was captured: when its fastest shaft turns far slower than any full
/// swing's, the windows of the moment finder must stretch. A working guess only: `known` stays false.
double guessRealPerShown(const club::ShaftTrack& shaft) {
    std::vector<double> speeds;
    for (std::size_t i = 1; i < shaft.size(); ++i) {
        if (shaft[i] && shaft[i - 1]) {
            const double dt = (shaft[i]->time - shaft[i - 1]->time).value();
            if (dt > 0 && dt < 0.1) {
                speeds.push_back(std::abs(shaft[i]->angleDegrees - shaft[i - 1]->angleDegrees) / dt);
            }
        }
    }
    if (speeds.size() < 20) {
        return 1.0;
    }
    std::sort(speeds.begin(), speeds.end());
    const double fast = speeds[speeds.size() * 98 / 100];
    double best = 1.0, misfit = 1e9;
    for (const double r : {1.0, 0.5, 0.25, 0.125}) {
        // Published mean peak shaft speed of professionals: 2413 +- 442 degrees a second (Zheng et al. 2008);
        // club players are slower, so the middle of the range is taken lower.
        const double m = std::abs(std::log(fast / r / 1600.0));
        if (m < misfit) {
            misfit = m, best = r;
        }
    }
    return best;
}

/// When the hands are fastest, over a tenth of a second.
std::optional<base::Seconds> fastestHands(const marks::Track& track, double realPerShown) {
    std::optional<base::Seconds> at;
    double fastest = 0.0;
    for (std::size_t i = 0, k = 0; i < track.size(); ++i) {
        while ((track[i].time - track[k].time).value() * realPerShown > 0.1) {
            ++k;
        }
        const auto &a = track[k][Landmark::grip], &b = track[i][Landmark::grip];
        const double dt = (track[i].time - track[k].time).value() * realPerShown;
        if (!a || !b || dt < 0.05) {
            continue;
        }
        if (const double speed = base::length(b->at - a->at) / dt; speed > fastest) {
            fastest = speed;
            at = track[k].time + (track[i].time - track[k].time) * 0.5;
        }
    }
    return at;
}

marks::Track emptyTrack(const std::vector<base::Seconds>& times) {
    marks::Track track(times.size());
    for (std::size_t i = 0; i < times.size(); ++i) {
        track[i].time = times[i];
    }
    return track;
}

club::FitContext fitContext(const Evidence& e) {
    return {e.request.context, e.timeScale, e.clip.height};
}

/// Shaft and ball as landmarks, except where a hand mark holds the place.
void addClub(marks::Track& track, const club::ShaftTrack& shaft, const std::optional<club::Ball>& ball,
             const scene::GroundMotion& ground) {
    for (std::size_t i = 0; i < track.size(); ++i) {
        auto put = [&](Landmark l, base::Vec2 at, double sigma, base::Origin origin) {
            if (!track[i][l] || track[i][l]->origin != base::Origin::hand) {
                track[i][l] = marks::Mark{at, sigma, origin};
            }
        };
        if (i < shaft.size() && shaft[i]) {
            const auto& s = *shaft[i];
            const double sigma = std::max(s.headSigma, 1.0);
            if (s.butt) {
                put(Landmark::club_butt, *s.butt, sigma, s.origin);
            }
            if (s.head) {
                put(Landmark::club_head, *s.head, sigma, s.origin);
            }
        }
        if (ball && (!ball->lastSeen || track[i].time <= *ball->lastSeen)) {
            put(Landmark::ball, ground.fromReference(static_cast<int>(i), ball->centre), ball->sigma,
                base::Origin::tracked);
        }
    }
}

/// Moments set by hand, as the finder takes them.
marks::Moments fixed(marks::Moments fixes) {
    for (marks::Moment& fix : fixes) {
        fix.foundBy = "hand mark";
    }
    return fixes;
}

Outcome conclude(const Evidence& e, const marks::HandMarks& handMarks, const marks::Moments& momentFixes) {
    Outcome out;
    out.clip = e.clip;
    out.context = e.request.context;
    out.timeScale = e.timeScale;
    out.warnings = e.warnings;

    body::Timing timing{e.timeScale.realPerShown, std::nullopt};
    marks::Track automatic = e.body.track.empty() ? emptyTrack(e.times) : e.body.track;
    out.track = body::applyHandMarks(automatic, handMarks, timing);

    const auto clubMark = [](const marks::HandMark& m) {
        return m.landmark == Landmark::club_butt || m.landmark == Landmark::club_head ||
               m.landmark == Landmark::grip;
    };
    out.shaft = std::any_of(handMarks.begin(), handMarks.end(), clubMark)
                    ? club::applyHandMarks(e.shaft, e.shaftEvidence, fitContext(e), handMarks)
                    : e.shaft;
    out.ball = e.ball;
    for (const auto& mark : handMarks) {
        if (mark.landmark != Landmark::ball || !mark.at) {
            continue;
        }
        club::Ball ball = out.ball.value_or(club::Ball{});
        ball.centre = e.ground.toReference(mark.frame, *mark.at);
        ball.sigma = mark.sigma;
        out.ball = ball;
    }

    // Scene.
    out.scene.width = e.clip.width;
    out.scene.height = e.clip.height;
    out.scene.vertical = e.vertical;
    out.scene.ground = e.ground;
    out.scene.distanceMetres = e.request.context.cameraDistanceMetres;
    if (e.body.stature) {
        out.scene.scale = {e.body.stature->pixels, e.body.stature->sigma / e.body.stature->pixels,
                           std::nullopt, "body"};
    } else {
        for (const auto& frame : out.track) {
            if (const auto scale = scene::scaleFromBody(frame, e.request.context.view, e.vertical)) {
                out.scene.scale = *scale;
                break;
            }
        }
    }
    if (e.request.context.statureMetres && out.scene.scale.pixelsPerStature > 0) {
        out.scene.scale = scene::withStature(out.scene.scale, *e.request.context.statureMetres);
    }

    // A stick marked on the target line settles the camera's turn.
    for (const auto& frame : out.track) {
        const auto& a = frame[Landmark::stick_near];
        const auto& b = frame[Landmark::stick_far];
        if (a && b) {
            if (const auto yaw = scene::yawFromStick(*a, *b, out.context.view, out.scene);
                yaw && yaw->sigmaDegrees < out.scene.yawSigmaDegrees) {
                out.scene.yawDegrees = yaw->degrees;
                out.scene.yawSigmaDegrees = yaw->sigmaDegrees;
            }
            break;
        }
    }

    std::optional<swing::HeadPassesBall> passes;
    if (out.ball) {
        // Shaft and ball in one picture: where the ball lies as it goes, also for a camera that has moved
        // since the reference.
        club::Ball lying = *out.ball;
        if (lying.lastSeen && !out.track.empty()) {
            const auto frame = static_cast<int>(marks::frameAt(out.track, *lying.lastSeen));
            lying.centre = e.ground.fromReference(frame, lying.centre);
        }
        if (const auto hit = club::fitHit(e.shaftEvidence, out.shaft, lying, fitContext(e))) {
            passes = swing::HeadPassesBall{hit->time, hit->sigma};
            out.hit = hit;
        }
    }
    // Impact set by hand and the club's own fit may differ by what both leave open; where they contradict
    // each other the hand holds.
    if (const auto* impact = marks::find(momentFixes, marks::MomentId::impact); impact && out.hit) {
        const double apart = std::abs((impact->time - out.hit->time).value());
        if (apart > 3.0 * std::hypot(impact->sigma.value(), out.hit->sigma.value())) {
            out.hit.reset();
            passes.reset();
        }
    }
    auto found = swing::findMoments({out.track, out.shaft, out.ball, out.scene, out.context, out.timeScale,
                                     e.hits, passes, fixed(momentFixes)});
    out.moments = std::move(found.moments);
    if (const auto* address = marks::find(out.moments, marks::MomentId::address)) {
        steadyAddress(automatic, address->time, e.timeScale.realPerShown, out.scene.scale.pixelsPerStature,
                      e.ground);
        out.track = body::applyHandMarks(automatic, handMarks, timing);
    }
    out.warnings.insert(out.warnings.end(), found.missing.begin(), found.missing.end());
    addClub(out.track, out.shaft, out.ball, e.ground);

    out.measurements = measure::measureAll(
        {out.track, out.moments, out.shaft, out.ball, out.scene, out.context, out.timeScale, out.hit});
    const auto gates = measure::scaleWarnings(
        {out.track, out.moments, out.shaft, out.ball, out.scene, out.context, out.timeScale, out.hit},
        out.measurements);
    out.warnings.insert(out.warnings.end(), gates.begin(), gates.end());
    out.checkpoints =
        coaching::judge(coaching::Playbook::standard(), out.measurements, out.context, e.request.card);
    const std::array<coaching::SwingNumbers, 1> swings{coaching::SwingNumbers{out.measurements}};
    out.cautions = coaching::cautions(swings, e.request.card);
    return out;
}

/// Degrees clockwise by which the picture must be turned before a player stands in it; 0: as it should be.
/// However a golfer bends, the shoulders are above the ankles, not beside them.
int turnNeeded(const body::Observer& observer, std::span<const body::Observation> observations) {
    if (observer.upsideDown() || observations.empty()) {
        return observer.upsideDown() ? 180 : 0;
    }
    std::array<int, 4> quarters{};
    for (const body::Observation& o : observations.first(std::min<std::size_t>(observations.size(), 9))) {
        using body::Point;
        const base::Vec2 up =
            base::midpoint(o[Point::left_shoulder].direct, o[Point::right_shoulder].direct) -
            base::midpoint(o[Point::left_ankle].direct, o[Point::right_ankle].direct);
        const double clockwise = std::atan2(up.x, -up.y);
        ++quarters[std::abs(clockwise) < std::numbers::pi / 3
                       ? 0
                       : static_cast<std::size_t>(std::lround(clockwise / (std::numbers::pi / 2)) + 4) % 4];
    }
    const auto most = std::max_element(quarters.begin(), quarters.end()) - quarters.begin();
    return most == 0 ? 0 : 360 - 90 * static_cast<int>(most);
}

std::string whoWasMeasured(const body::Region& player, std::span<const body::Region> others) {
    const auto onThatSide = [&](auto side) {
        return std::all_of(others.begin(), others.end(),
                           [&](const body::Region& r) { return side(r.centre.x, player.centre.x); });
    };
    const std::string where = onThatSide(std::greater()) ? "on the left"
                              : onThatSide(std::less())  ? "on the right"
                                                         : "in the middle";
    return "Somebody else of about the same size is in the picture; the player " + where +
           " was measured. If that is the wrong one, cut the picture to the player or film alone.";
}

} // namespace

base::Result<std::optional<Analysed>> analyse(video::Clip& clip, const NetworkBytes& network,
                                              const Request& request, const base::Progress& progress) {
    auto e = std::make_shared<Evidence>();
    e->clip = clip.info();
    e->times = clip.times();
    e->request = request;
    e->timeScale = detail::timeScaleOf(e->clip, request.captureFps);
    e->warnings = e->clip.warnings;
    if (!e->timeScale.known) {
        e->warnings.push_back(
            "This clip does not say how fast it was filmed, so no times are given. Tell the capture "
            "rate (frames a second) to get them.");
    }

    std::unique_ptr<body::Observer> observer;
    if (auto made = body::Observer::create(network, request.context.view)) {
        observer = std::move(made).value();
    } else if (network) {
        return made.error();
    } else {
        e->warnings.push_back(
            "The pose network is not installed, so only hand marks and what follows from them are "
            "used. Run platform/linux/fetch-network.sh to install it.");
    }
    const marks::Track byHand = body::applyHandMarks(emptyTrack(e->times), request.handMarks, {});

    progress.tell(0.0, "Reading the clip");
    if (auto sound = clip.sound()) {
        e->hits = swing::findHits(*sound);
    } // a clip whose sound cannot be read is a clip without sound

    if (request.plumbEdge) {
        e->vertical = scene::fromPlumbEdge(request.plumbEdge->first, request.plumbEdge->second);
    } else if (request.rollDegrees) {
        e->vertical = scene::fromRoll(base::Degrees{*request.rollDegrees});
    }

    club::BallEvidence ballEvidence;
    {
        Pass pass(*e, observer.get(), byHand, progress);
        const auto streamed = clip.stream(0, e->clip.frames - 1, [&](const video::Frame& frame) {
            if (frame.index() % 16 == 0) {
                progress.tell(0.95 * frame.index() / std::max(1, e->clip.frames), "Following body and club");
            }
            return !progress.cancelled() && pass.add(frame);
        });
        if (progress.cancelled()) {
            return std::optional<Analysed>{};
        }
        if (auto passed = pass.finish(); !passed) {
            return passed.error();
        }
        if (progress.cancelled()) {
            return std::optional<Analysed>{};
        }
        if (!streamed) {
            return streamed.error();
        }
        ballEvidence = pass.ballEvidence();
    }
    if (const int turn = observer ? turnNeeded(*observer, e->observations) : 0; turn != 0) {
        e->observations.clear();
        e->shaftEvidence.clear();
        ballEvidence = {};
        e->warnings.push_back("The player " +
                              std::string(turn == 180 ? "hangs upside down" : "lies on their side") +
                              " in this clip: turn it by " + std::to_string(turn) +
                              " degrees clockwise, then measure it again.");
    } else if (observer && e->observations.empty()) {
        e->warnings.push_back(
            "No player was found in this clip: the whole body should be in the picture, upright and "
            "not too small.");
    }
    if (observer && !e->observations.empty()) {
        if (const auto others = observer->others(); !others.empty()) {
            e->warnings.push_back(whoWasMeasured(e->observations.front().region, others));
        }
    }

    progress.tell(0.96, "Finding the key moments");
    if (!e->observations.empty()) {
        e->body = body::autoTrack(e->observations, e->times, request.context,
                                  {e->timeScale.realPerShown, std::nullopt});
        e->warnings.insert(e->warnings.end(), e->body.warnings.begin(), e->body.warnings.end());
    }
    e->shaft = club::fitShaft(e->shaftEvidence, fitContext(*e), request.handMarks);
    if (progress.cancelled()) {
        return std::optional<Analysed>{};
    }
    if (!e->timeScale.known) {
        e->timeScale.realPerShown = guessRealPerShown(e->shaft);
    }
    e->ball = club::findBall(ballEvidence, e->shaft, fitContext(*e),
                             fastestHands(e->body.track, e->timeScale.realPerShown));

    Analysed analysed{conclude(*e, request.handMarks, request.momentFixes), e};
    // The jolt of the hit must not be smoothed: once impact is known, the body's track is made again around
    // it.
    if (const auto* impact = marks::find(analysed.outcome.moments, marks::MomentId::impact);
        impact && !e->observations.empty()) {
        e->body = body::autoTrack(e->observations, e->times, request.context,
                                  {e->timeScale.realPerShown, impact->time});
        analysed.outcome = conclude(*e, request.handMarks, request.momentFixes);
    }
    if (progress.cancelled()) {
        return std::optional<Analysed>{};
    }
    progress.tell(1.0, "Done");
    return std::optional<Analysed>{std::move(analysed)};
}

Outcome recompute(const Evidence& evidence, const marks::HandMarks& handMarks) {
    return conclude(evidence, handMarks, evidence.request.momentFixes);
}

Outcome recompute(const Evidence& evidence, const marks::HandMarks& handMarks,
                  const marks::Moments& momentFixes) {
    return conclude(evidence, handMarks, momentFixes);
}

} // namespace plumbmark::analysis
