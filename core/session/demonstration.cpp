// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/demonstration.h"

#include <algorithm>

#include "records/consent.h"
#include "records/demonstration.h"
#include "records/kinds.h"
#include "records/merge.h"
#include "session/detail/clip_facts.h"
#include "session/detail/no_such_thing.h"
#include "video/clip.h"

namespace plumbmark::session {
namespace {

constexpr std::string_view kOf = "of"; ///< the player who is shown; not there: the coach

base::Error noPlan() {
    return base::inputError("demonstration.no_plan",
                            "The lesson's plan has no such priority; keep a plan first, then give 1 or 2.");
}

struct Standing {
    records::Plan plan;
    std::vector<base::Id> facts;
    records::Object body;
};
base::Result<std::optional<Standing>> planOf(store::Library& library, const base::Id& lesson) {
    const auto facts = library.factsOf(lesson, records::kind::plan);
    if (!facts) {
        return facts.error();
    }
    const auto heads = records::heads(*facts);
    if (heads.empty()) {
        return std::optional<Standing>();
    }
    Standing standing{records::planOf(heads.back().body), {}, heads.back().body};
    for (const records::Fact& fact : heads) {
        standing.facts.push_back(fact.id);
    }
    std::sort(standing.facts.begin(), standing.facts.end());
    return std::optional(std::move(standing));
}

} // namespace

base::Result<void> Demonstrations::name(const base::Id& lesson, std::size_t priority,
                                        const std::string& clip) {
    auto standing = planOf(*library_, lesson);
    const auto entity = library_->entity(lesson);
    if (!standing || !entity) {
        return standing ? entity.error() : standing.error();
    }
    if (!*standing || !*entity || priority >= (*standing)->plan.items.size()) {
        return noPlan();
    }
    (*standing)->plan.items[priority].demonstration = clip;
    records::Object body = bodyOf((*standing)->plan);
    for (const auto& [key, value] : (*standing)->body) { // what other versions or uses wrote stays
        body.emplace(key, value);
    }
    std::vector<base::Id> path = (*entity)->path;
    path.push_back(lesson);
    return library_->add({library_->make(records::kind::plan, path, std::move(body), (*standing)->facts)});
}

base::Result<std::optional<base::Id>> Demonstrations::add(const base::Id& lesson, std::size_t priority,
                                                          const Film& film, std::optional<base::Id> of,
                                                          const base::Progress& progress) {
    const auto standing = planOf(*library_, lesson);
    const auto entity = library_->entity(lesson);
    if (!standing || !entity) {
        return standing ? entity.error() : standing.error();
    }
    if (!*entity || (*entity)->kind != records::kind::lesson) {
        return detail::noSuchThing();
    }
    if (!*standing || priority >= (*standing)->plan.items.size()) {
        return noPlan();
    }
    auto clip = video::Clip::open(film.file);
    if (!clip) {
        return clip.error();
    }
    const video::ClipInfo info = (*clip)->info();
    const auto kept = library_->addFilm(film.file, progress);
    if (!kept) {
        if (kept.error().key == "cancelled") {
            return std::optional<base::Id>();
        }
        return kept.error();
    }
    std::vector<base::Id> path = (*entity)->path;
    path.push_back(lesson);
    records::Shot shot;
    shot.kind = marks::ShotKind::practice;
    std::vector<records::Fact> facts{library_->make(records::kind::shot, path, bodyOf(shot))};
    path.push_back(facts.front().id);
    records::Object mark;
    if (of) {
        mark.emplace(std::string(kOf), of->hex());
    }
    facts.push_back(library_->make(records::kind::demonstration, path, std::move(mark)));
    const records::Clip record = detail::clipOf(*kept, info, film.view, film.hand, film.mirrored);
    if (auto good = check(record); !good) {
        return good.error();
    }
    facts.push_back(library_->make(records::kind::clip, path, bodyOf(record)));
    const base::Id made = facts.back().id;
    if (auto added = library_->add(facts); !added) {
        return added.error();
    }
    if (auto named = name(lesson, priority, made.hex()); !named) {
        return named.error();
    }
    return std::optional(made);
}

base::Result<std::optional<base::Id>> Demonstrations::attach(const base::Id& lesson, std::size_t priority,
                                                             const Film& film,
                                                             const base::Progress& progress) {
    return add(lesson, priority, film, std::nullopt, progress);
}

base::Result<std::optional<base::Id>> Demonstrations::attach(const base::Id& lesson, std::size_t priority,
                                                             const base::Id& clip,
                                                             const base::Progress& progress) {
    const auto row = library_->clip(clip);
    const auto entity = library_->entity(clip);
    const auto target = library_->entity(lesson);
    if (!row || !entity || !target) {
        return !row ? row.error() : !entity ? entity.error() : target.error();
    }
    if (!*row || !*entity || !*target || (*entity)->path.empty() || (*target)->path.empty()) {
        return detail::noSuchThing();
    }
    if (!(*row)->filmHere) {
        return base::inputError("film.missing",
                                "The film of that clip is not here; import a lesson file that "
                                "holds it.");
    }
    const base::Id of = (*entity)->path.front();
    std::optional<base::Id> shown;
    if (of != (*target)->path.front()) {
        const auto consents = library_->factsOf(of, records::kind::consent);
        if (!consents) {
            return consents.error();
        }
        if (auto may = records::allows(records::heads(*consents), records::scope::teach,
                                       base::isoDate(clock_->now()));
            !may) {
            return may.error();
        }
        shown = of;
    }
    const records::Clip& c = (*row)->clip;
    return add(lesson, priority, {(*row)->file, c.view, c.hand, c.mirrored}, shown, progress);
}

base::Result<void> Demonstrations::takeAway(const base::Id& lesson, std::size_t priority) {
    return name(lesson, priority, "");
}

base::Result<std::vector<Demonstrations::Row>> Demonstrations::list(const base::Id& lesson) {
    const auto standing = planOf(*library_, lesson);
    if (!standing) {
        return standing.error();
    }
    std::vector<Row> rows;
    for (std::size_t i = 0; *standing && i < (*standing)->plan.items.size(); ++i) {
        const auto id = base::Id::fromHex((*standing)->plan.items[i].demonstration);
        const auto row = id ? library_->clip(*id) : base::Result(std::optional<store::ClipRow>());
        if (!row) {
            return row.error();
        }
        if (*row) {
            rows.push_back({i, *id, (*row)->file, (*row)->filmHere});
        }
    }
    return rows;
}

base::Result<void> Demonstrations::mayGoOut(const base::Id& lesson) {
    const auto shots = library_->shots(lesson);
    if (!shots) {
        return shots.error();
    }
    for (const store::ShotRow& shot : *shots) {
        const auto marks = library_->factsOf(shot.id, records::kind::demonstration);
        if (!marks) {
            return marks.error();
        }
        for (const records::Fact& mark : *marks) {
            const auto of = base::Id::fromHex(records::textMember(mark.body, kOf).value_or(""));
            // On a device that does not know the player, the one who sent the lesson asked.
            const auto player = of ? library_->entity(*of) : base::Result(std::optional<records::Entity>());
            if (!player) {
                return player.error();
            }
            if (!*player) {
                continue;
            }
            const auto consents = library_->factsOf(*of, records::kind::consent);
            if (!consents) {
                return consents.error();
            }
            if (auto may = records::allows(records::heads(*consents), records::scope::teach,
                                           base::isoDate(clock_->now()));
                !may) {
                return may;
            }
        }
    }
    return {};
}

base::Result<bool> isDemonstration(store::Library& library, const base::Id& shot) {
    const auto marks = library.factsOf(shot, records::kind::demonstration);
    if (!marks) {
        return marks.error();
    }
    return !marks->empty();
}

} // namespace plumbmark::session
