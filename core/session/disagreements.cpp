// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/disagreements.h"

#include <algorithm>
#include <cstdio>
#include <map>

#include "records/consent.h"
#include "records/fact.h"
#include "records/kinds.h"
#include "records/merge.h"
#include "session/detail/clip_facts.h"
#include "session/detail/fields.h"

namespace plumbmark::session {
namespace {

using Subject = Disagreement::Subject;

std::string decimal(double value, int places) {
    char text[40];
    std::snprintf(text, sizeof text, "%.*f", places, value);
    return text;
}

std::string textOf(const records::Value& value) {
    if (value.isNull()) {
        return "(nothing)";
    }
    if (value.text() != nullptr) {
        return *value.text();
    }
    return records::canonicalText(value).ok() ? *records::canonicalText(value) : std::string();
}

std::string textOf(const std::string& kind, const records::Object& body) {
    if (detail::isTakenBack(body)) {
        return "(taken back)";
    }
    if (kind == records::kind::mark) {
        const auto mark = records::markOf(body);
        return mark && mark->at ? decimal(mark->at->x, 1) + ", " + decimal(mark->at->y, 1)
                                : "(not to be seen)";
    }
    if (kind == records::kind::moment) {
        const auto moment = records::momentOf(body);
        return moment ? decimal(moment->time.value(), 3) + " s" : std::string();
    }
    if (kind == records::kind::drawing) {
        const auto drawing = records::drawingOf(body);
        return drawing
                   ? std::string(name(drawing->shape)) + (drawing->text.empty() ? "" : ": " + drawing->text)
                   : std::string();
    }
    const records::Consent consent = records::consentOf(body);
    if (consent.withdrawn) {
        return "withdrawn on " + consent.day;
    }
    std::string scopes;
    for (const std::string& word : consent.scopes) {
        scopes += (scopes.empty() ? "" : ", ") + word;
    }
    return scopes + " until " + consent.until + (consent.guardian.empty() ? "" : ", by " + consent.guardian);
}

/// What is disputed about one thing, told into `all`.
class Teller {
  public:
    Teller(store::Library& library, std::vector<Disagreement>& all) : library_(library), all_(all) {}

    base::Result<void> fields(const base::Id& id, Disagreement about) {
        const auto entity = library_.entity(id);
        if (!entity) {
            return entity.error();
        }
        if (!*entity) {
            return {};
        }
        about.about = id;
        about.kind = records::kind::set;
        for (const auto& [field, versions] : (*entity)->disputed) {
            Disagreement one = about;
            one.what = field;
            for (const records::Version& version : versions) {
                one.versions.push_back({version.fact, textOf(version.value), version.at.ms,
                                        version.at.device == library_.device()});
            }
            all_.push_back(std::move(one));
        }
        return {};
    }

    /// Of facts of one kind: the heads that stand at one place, where they say different things.
    base::Result<void> facts(const base::Id& id, Disagreement about, std::string_view kind) {
        const auto found = library_.factsOf(id, kind);
        if (!found) {
            return found.error();
        }
        about.about = id;
        about.kind = kind;
        std::map<std::string, std::vector<records::Fact>> byPlace;
        for (const records::Fact& fact : records::heads(*found)) {
            if (kind == records::kind::consent) {
                byPlace[""].push_back(fact);
            } else if (const auto place = detail::placeOf(kind, fact.body)) {
                byPlace[place->name].push_back(fact);
            }
        }
        for (const auto& [place, heads] : byPlace) {
            const auto said = detail::withoutStep(heads.front().body);
            if (std::all_of(heads.begin(), heads.end(), [&](const records::Fact& fact) {
                    return detail::withoutStep(fact.body) == said;
                })) {
                continue;
            }
            Disagreement one = about;
            one.what = place;
            for (auto fact = heads.rbegin(); fact != heads.rend(); ++fact) {
                one.versions.push_back({fact->id, textOf(one.kind, fact->body), fact->at.ms,
                                        fact->at.device == library_.device()});
            }
            all_.push_back(std::move(one));
        }
        return {};
    }

  private:
    store::Library& library_;
    std::vector<Disagreement>& all_;
};

Disagreement in(Subject subject, const std::string& player, const std::string& lesson) {
    Disagreement about;
    about.subject = subject;
    about.playerName = player;
    about.lessonTitle = lesson;
    return about;
}

} // namespace

base::Result<std::vector<Disagreement>> Disagreements::all() {
    std::vector<Disagreement> found;
    Teller teller(*library_, found);
    const auto players = library_->players();
    const auto lessons = library_->lessons();
    if (!players || !lessons) {
        return !players ? players.error() : lessons.error();
    }
    for (const store::PlayerRow& player : *players) {
        if (!player.needsYou) {
            continue;
        }
        const Disagreement about = in(Subject::player, player.name, "");
        if (auto told = teller.fields(player.id, about); !told) {
            return told.error();
        }
        if (auto told = teller.facts(player.id, about, records::kind::consent); !told) {
            return told.error();
        }
    }
    for (const store::LessonRow& lesson : *lessons) {
        if (!lesson.needsYou) {
            continue;
        }
        if (auto told = teller.fields(lesson.id, in(Subject::lesson, lesson.playerName, lesson.title));
            !told) {
            return told.error();
        }
        const auto shots = library_->shots(lesson.id);
        if (!shots) {
            return shots.error();
        }
        for (const store::ShotRow& shot : *shots) {
            if (!shot.needsYou) {
                continue;
            }
            if (auto told = teller.fields(shot.id, in(Subject::shot, lesson.playerName, lesson.title));
                !told) {
                return told.error();
            }
            const auto clips = library_->clips(shot.id);
            if (!clips) {
                return clips.error();
            }
            for (const store::ClipRow& clip : *clips) {
                if (!clip.needsYou) {
                    continue;
                }
                const Disagreement about = in(Subject::clip, lesson.playerName, lesson.title);
                if (auto told = teller.fields(clip.id, about); !told) {
                    return told.error();
                }
                for (const std::string_view kind :
                     {records::kind::mark, records::kind::moment, records::kind::drawing}) {
                    if (auto told = teller.facts(clip.id, about, kind); !told) {
                        return told.error();
                    }
                }
            }
        }
    }
    return found;
}

base::Result<void> Disagreements::settle(const base::Id& version) {
    const auto found = all();
    if (!found) {
        return found.error();
    }
    for (const Disagreement& one : *found) {
        if (std::none_of(one.versions.begin(), one.versions.end(),
                         [&](const Disagreement::Version& v) { return v.fact == version; })) {
            continue;
        }
        const auto fact = library_->fact(version);
        const auto maker = library_->entity(one.about);
        if (!fact || !maker) {
            return !fact ? fact.error() : maker.error();
        }
        if (!*fact || !*maker) {
            break;
        }
        if (one.kind == records::kind::set) {
            const records::Value* value = records::member((*fact)->body, "value");
            return library_->add({detail::setField(*library_, **maker, one.what,
                                                   value == nullptr ? records::Value() : *value)});
        }
        std::vector<base::Id> replaces;
        for (const Disagreement::Version& v : one.versions) {
            replaces.push_back(v.fact);
        }
        return library_->add({library_->make(one.kind, detail::pathBelow(**maker), (*fact)->body, replaces)});
    }
    return base::inputError("settle.none",
                            "There is no such version to choose (any more); look at the list again.");
}

} // namespace plumbmark::session
