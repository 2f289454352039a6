// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/clip_intake.h"

#include <algorithm>
#include <map>

#include "session/body_book.h"
#include "session/detail/clip_facts.h"
#include "session/detail/clip_marks.h"
#include "session/detail/evidence_cache.h"
#include "session/detail/fields.h"
#include "session/detail/no_such_thing.h"
#include "video/clip.h"

namespace plumbmark::session {
namespace {

records::Clip clipFrom(const store::Library::Film& film, const analysis::Request& request,
                       const video::ClipInfo& info) {
    const marks::ShotContext& context = request.context;
    records::Clip clip = detail::clipOf(film, info, context.view, context.hand, context.mirrored);
    clip.captureFpsTold = request.captureFps;
    clip.statureMetres = request.context.statureMetres;
    clip.cameraDistanceMetres = request.context.cameraDistanceMetres;
    clip.rollDegrees = request.rollDegrees;
    clip.plumbEdge = request.plumbEdge;
    return clip;
}

} // namespace

records::Findings findingsOf(const analysis::Outcome& outcome) {
    records::Findings findings;
    findings.moments = outcome.moments;
    findings.measurements = outcome.measurements;
    for (const coaching::CheckpointResult& c : outcome.checkpoints) {
        findings.checkpoints.push_back(
            {c.id, c.moment, std::string(stateName(c.state)), c.good, c.watch, c.work});
    }
    return findings;
}

base::Result<analysis::Request> requestFor(store::Library& library, const base::Id& id) {
    const auto clip = library.clip(id);
    if (!clip) {
        return clip.error();
    }
    if (!*clip) {
        return detail::noSuchThing();
    }
    const records::Clip& c = (*clip)->clip;
    analysis::Request request;
    request.context.view = c.view;
    request.context.hand = c.hand;
    request.context.mirrored = c.mirrored;
    request.context.statureMetres = c.statureMetres;
    request.context.cameraDistanceMetres = c.cameraDistanceMetres;
    request.rollDegrees = c.rollDegrees;
    request.plumbEdge = c.plumbEdge;
    request.captureFps = c.captureFpsTold;

    const auto shot = library.entity((*clip)->shot);
    if (!shot) {
        return shot.error();
    }
    if (*shot) {
        const records::Shot s = records::shotOf((*shot)->fields);
        request.context.shot = s.kind;
        request.context.club = s.club;
        if (!request.context.statureMetres && !(*shot)->path.empty()) {
            const auto player = library.entity((*shot)->path.front());
            if (!player) {
                return player.error();
            }
            if (*player && (*player)->kind == records::kind::player) {
                request.context.statureMetres = records::playerOf((*player)->fields).statureMetres;
            }
        }
    }
    if (*shot && !(*shot)->path.empty()) {
        auto card = BodyBook(library).forCoaching((*shot)->path.front());
        if (!card) {
            return card.error();
        }
        request.card = std::move(*card);
    }
    const auto marks = library.factsOf(id, records::kind::mark);
    if (!marks) {
        return marks.error();
    }
    request.handMarks = detail::standingMarks(*marks).marks;
    const auto moments = library.factsOf(id, records::kind::moment);
    if (!moments) {
        return moments.error();
    }
    request.momentFixes = detail::momentsOf(detail::standing(records::kind::moment, *moments));
    return request;
}

base::Result<std::optional<ClipIntake::Receipt>> ClipIntake::bringIn(const base::Id& shotId,
                                                                     const std::filesystem::path& file,
                                                                     const analysis::Request& request,
                                                                     const base::Progress& progress) {
    const auto shot = library_->entity(shotId);
    if (!shot) {
        return shot.error();
    }
    if (!*shot || (*shot)->kind != records::kind::shot) {
        return detail::noSuchThing();
    }
    // Looked at before it is copied: what is no clip never comes in.
    if (const auto probe = video::Clip::open(file); !probe) {
        return probe.error();
    }
    constexpr double copying = 0.1; // share of the wait
    const base::Progress first{
        [&](double share, std::string_view stage) { progress.tell(share * copying, stage); },
        progress.cancel};
    const base::Progress second{[&](double share, std::string_view stage) {
                                    progress.tell(copying + share * (1.0 - copying), stage);
                                },
                                progress.cancel};
    const auto film = library_->addFilm(file, first);
    if (!film) {
        if (film.error().key == "cancelled") {
            return std::optional<Receipt>();
        }
        return film.error();
    }
    // A film that no clip names in the end goes with the next start alone on the library.
    auto clip = video::Clip::open(library_->filmPath(film->sha256));
    if (!clip) {
        return clip.error();
    }
    // The same film in the same shot and view is the same clip, looked at again.
    std::optional<base::Id> again;
    std::vector<base::Id> sameFilm;
    const auto others = library_->clipsOfFilm(film->sha256);
    if (!others) {
        return others.error();
    }
    for (const store::ClipRow& row : *others) {
        if (row.shot == shotId && row.clip.view == request.context.view) {
            again = row.id;
        } else {
            sameFilm.push_back(row.id);
        }
    }
    analysis::Request full = request;
    if (!(*shot)->path.empty()) {
        auto card = BodyBook(*library_).forCoaching((*shot)->path.front());
        if (!card) {
            return card.error();
        }
        full.card = std::move(*card);
    }
    detail::StandingMarks standing;
    detail::Standing moments;
    std::vector<base::Id> findingsBefore;
    std::optional<records::Entity> clipBefore;
    if (again) {
        const auto findings = library_->factsOf(*again, records::kind::findings);
        const auto marks = library_->factsOf(*again, records::kind::mark);
        const auto momentFacts = library_->factsOf(*again, records::kind::moment);
        auto entity = library_->entity(*again);
        if (!findings || !marks || !momentFacts || !entity) {
            return !findings      ? findings.error()
                   : !marks       ? marks.error()
                   : !momentFacts ? momentFacts.error()
                                  : entity.error();
        }
        moments = detail::standing(records::kind::moment, *momentFacts);
        for (const marks::Moment& fix : detail::momentsOf(moments)) {
            if (marks::find(full.momentFixes, fix.id) == nullptr) {
                full.momentFixes.push_back(fix);
            }
        }
        for (const records::Fact& fact : records::heads(*findings)) {
            findingsBefore.push_back(fact.id);
        }
        clipBefore = std::move(*entity);
        standing = detail::standingMarks(*marks);
        for (const marks::HandMark& mark : standing.marks) {
            const bool newer = std::any_of(
                request.handMarks.begin(), request.handMarks.end(), [&](const marks::HandMark& other) {
                    return other.frame == mark.frame && other.landmark == mark.landmark;
                });
            if (!newer) {
                full.handMarks.push_back(mark);
            }
        }
    }
    auto analysed = analysis::analyse(**clip, network_, full, second);
    if (!analysed) {
        return analysed.error();
    }
    if (!*analysed) {
        return std::optional<Receipt>();
    }

    detail::keepEvidence(*library_, film->sha256, network_, full, *(*analysed)->evidence);

    const records::Clip record = clipFrom(*film, request, (*clip)->info());
    if (auto good = check(record); !good) {
        return good.error();
    }
    std::vector<base::Id> path = (*shot)->path;
    path.push_back(shotId);
    std::vector<records::Fact> facts;
    if (clipBefore) {
        const auto old = records::clipOf(clipBefore->fields);
        facts = detail::changedFields(*library_, *clipBefore, old ? bodyOf(*old) : records::Object{},
                                      bodyOf(record));
    } else {
        facts.push_back(library_->make(records::kind::clip, path, bodyOf(record)));
    }
    const base::Id clipId = clipBefore ? clipBefore->id : facts.front().id;
    path.push_back(clipId);
    for (const marks::HandMark& mark : request.handMarks) {
        const records::MarkFact fact{mark.frame, mark.landmark, mark.at, mark.sigma, false};
        const auto seen = standing.facts.find({mark.frame, mark.landmark});
        facts.push_back(
            library_->make(records::kind::mark, path, bodyOf(fact),
                           seen == standing.facts.end() ? std::vector<base::Id>() : seen->second));
    }
    for (const marks::Moment& fix : request.momentFixes) {
        const auto body = bodyOf(records::MomentFact{fix.id, fix.time, fix.sigma, false});
        const auto place = detail::placeOf(records::kind::moment, body);
        const auto seen = moments.facts.find(*place);
        facts.push_back(library_->make(records::kind::moment, path, body,
                                       seen == moments.facts.end() ? std::vector<base::Id>() : seen->second));
    }
    facts.push_back(library_->make(records::kind::findings, path, bodyOf(findingsOf((*analysed)->outcome)),
                                   findingsBefore));
    if (auto added = library_->add(facts); !added) {
        return added.error();
    }
    Receipt receipt{clipId, film->wasHere, std::move(sameFilm), std::move(**analysed)};
    return std::optional(std::move(receipt));
}

} // namespace plumbmark::session
