// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/lesson_book.h"

#include <algorithm>

#include "session/detail/fields.h"
#include "session/detail/no_such_thing.h"

namespace plumbmark::session {
namespace {

using detail::pathBelow;
using detail::saveFields;
using detail::setField;
using records::Fact;
using records::Object;

base::Result<records::Entity> entityOf(store::Library& library, const Id& id, std::string_view kind) {
    auto entity = library.entity(id);
    if (!entity) {
        return entity.error();
    }
    if (!*entity || (*entity)->kind != kind) {
        return detail::noSuchThing();
    }
    return std::move(**entity);
}

base::Result<Id> addThing(store::Library& library, std::string_view kind, std::vector<Id> path, Object body) {
    const Fact fact = library.make(kind, std::move(path), std::move(body));
    if (auto added = library.add({fact}); !added) {
        return added.error();
    }
    return fact.id;
}

} // namespace

base::Result<std::vector<store::PlayerRow>> LessonBook::players(std::string_view search) {
    return library_->players(search);
}
base::Result<std::vector<store::LessonRow>> LessonBook::lessons(std::string_view search,
                                                                std::optional<Id> player) {
    return library_->lessons(search, player);
}
base::Result<std::vector<store::ShotRow>> LessonBook::shots(const Id& lesson) {
    return library_->shots(lesson);
}
base::Result<std::vector<store::ClipRow>> LessonBook::clips(const Id& shot) {
    return library_->clips(shot);
}

base::Result<Id> LessonBook::addPlayer(const records::Player& player) {
    if (auto good = check(player); !good) {
        return good.error();
    }
    return addThing(*library_, records::kind::player, {}, bodyOf(player));
}

base::Result<Id> LessonBook::addLesson(const Id& player, const records::Lesson& lesson) {
    if (auto good = check(lesson); !good) {
        return good.error();
    }
    const auto owner = entityOf(*library_, player, records::kind::player);
    if (!owner) {
        return owner.error();
    }
    return addThing(*library_, records::kind::lesson, pathBelow(*owner), bodyOf(lesson));
}

base::Result<Id> LessonBook::addShot(const Id& lesson, const records::Shot& shot) {
    if (auto good = check(shot); !good) {
        return good.error();
    }
    const auto owner = entityOf(*library_, lesson, records::kind::lesson);
    if (!owner) {
        return owner.error();
    }
    return addThing(*library_, records::kind::shot, pathBelow(*owner), bodyOf(shot));
}

base::Result<records::Player> LessonBook::player(const Id& id) {
    const auto entity = entityOf(*library_, id, records::kind::player);
    if (!entity) {
        return entity.error();
    }
    return records::playerOf(entity->fields);
}

base::Result<records::Lesson> LessonBook::lesson(const Id& id) {
    const auto entity = entityOf(*library_, id, records::kind::lesson);
    if (!entity) {
        return entity.error();
    }
    return records::lessonOf(entity->fields);
}

base::Result<records::Shot> LessonBook::shot(const Id& id) {
    const auto entity = entityOf(*library_, id, records::kind::shot);
    if (!entity) {
        return entity.error();
    }
    return records::shotOf(entity->fields);
}

// What is compared is what this version understands of the fields: an unknown word of a newer version stays
// unless the person gives the field a value this version knows.
base::Result<void> LessonBook::edit(const Id& id, const records::Player& player) {
    if (auto good = check(player); !good) {
        return good;
    }
    const auto entity = entityOf(*library_, id, records::kind::player);
    if (!entity) {
        return entity.error();
    }
    return saveFields(*library_, *entity, bodyOf(records::playerOf(entity->fields)), bodyOf(player));
}

base::Result<void> LessonBook::edit(const Id& id, const records::Lesson& lesson) {
    if (auto good = check(lesson); !good) {
        return good;
    }
    const auto entity = entityOf(*library_, id, records::kind::lesson);
    if (!entity) {
        return entity.error();
    }
    return saveFields(*library_, *entity, bodyOf(records::lessonOf(entity->fields)), bodyOf(lesson));
}

base::Result<void> LessonBook::edit(const Id& id, const records::Shot& shot) {
    if (auto good = check(shot); !good) {
        return good;
    }
    const auto entity = entityOf(*library_, id, records::kind::shot);
    if (!entity) {
        return entity.error();
    }
    return saveFields(*library_, *entity, bodyOf(records::shotOf(entity->fields)), bodyOf(shot));
}

base::Result<std::map<std::string, std::vector<records::Version>, std::less<>>>
LessonBook::disputed(const Id& id) {
    auto entity = library_->entity(id);
    if (!entity) {
        return entity.error();
    }
    if (!*entity) {
        return detail::noSuchThing();
    }
    return std::move((*entity)->disputed);
}

base::Result<void> LessonBook::settle(const Id& id, std::string_view field, const Id& version) {
    const auto entity = library_->entity(id);
    if (!entity) {
        return entity.error();
    }
    if (!*entity) {
        return detail::noSuchThing();
    }
    const auto versions = (*entity)->disputed.find(field);
    if (versions == (*entity)->disputed.end()) {
        return {}; // settled already, here or on another device
    }
    const auto chosen = std::find_if(versions->second.begin(), versions->second.end(),
                                     [&](const records::Version& v) { return v.fact == version; });
    if (chosen == versions->second.end()) {
        return base::inputError("book.no_such_version",
                                "This version has changed meanwhile; look again and choose.");
    }
    return library_->add({setField(*library_, **entity, std::string(field), chosen->value)});
}

base::Result<std::optional<records::Findings>> LessonBook::findings(const Id& clip) {
    const auto all = library_->factsOf(clip, records::kind::findings);
    const auto accepted = library_->factsOf(clip, records::kind::accept);
    if (!all || !accepted) {
        return all ? accepted.error() : all.error();
    }
    // Accepted numbers stay as the coach saw them, whatever was computed since.
    const auto standing = records::heads(*accepted);
    for (auto it = standing.rbegin(); it != standing.rend(); ++it) {
        const auto named = records::textMember(it->body, "findings");
        for (const Fact& fact : *all) {
            if (named && fact.id.hex() == *named) {
                return std::optional(records::findingsOf(fact.body));
            }
        }
    }
    const auto newest = records::heads(*all);
    if (newest.empty()) {
        return std::optional<records::Findings>();
    }
    return std::optional(records::findingsOf(newest.back().body));
}

base::Result<void> LessonBook::erase(const Id& id) {
    return library_->erase(id);
}

} // namespace plumbmark::session
