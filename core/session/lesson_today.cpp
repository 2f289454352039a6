// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/lesson_today.h"

#include "records/merge.h"
#include "session/detail/fields.h"
#include "session/detail/no_such_thing.h"

namespace plumbmark::session {

base::Result<ShotToday> addShotToday(LessonBook& book, std::string_view playerName, std::string_view day,
                                     std::string_view lessonTitle, const marks::ShotContext& context) {
    ShotToday today;
    const auto takeBack = [&](const base::Error& error) {
        if (today.made) {
            static_cast<void>(book.erase(*today.made)); // what failed first is what the person must know
        }
        return error;
    };
    auto players = book.players(playerName);
    if (!players) {
        return players.error();
    }
    bool known = false;
    for (const auto& row : *players) {
        if (row.name == playerName) {
            today.player = row.id;
            known = true;
            break;
        }
    }
    if (!known) {
        records::Player fresh;
        fresh.name = playerName;
        fresh.hand = context.hand;
        fresh.statureMetres = context.statureMetres;
        auto added = book.addPlayer(fresh);
        if (!added) {
            return added.error();
        }
        today.player = *added;
        today.made = *added;
    }
    auto lessons = book.lessons({}, today.player);
    if (!lessons) {
        return takeBack(lessons.error());
    }
    bool taught = false;
    for (const auto& row : *lessons) {
        if (row.day == day) {
            today.lesson = row.id;
            taught = true;
            break;
        }
    }
    if (!taught) {
        records::Lesson fresh;
        fresh.day = day;
        fresh.title = lessonTitle;
        auto added = book.addLesson(today.player, fresh);
        if (!added) {
            return takeBack(added.error());
        }
        today.lesson = *added;
        today.made = today.made ? today.made : std::optional(*added);
    }
    records::Shot shot;
    shot.kind = context.shot;
    shot.club = context.club;
    auto added = book.addShot(today.lesson, shot);
    if (!added) {
        return takeBack(added.error());
    }
    today.shot = *added;
    today.made = today.made ? today.made : std::optional(*added);
    return today;
}

base::Result<std::optional<marks::ShotContext>> lastSwingOf(store::Library& library, const base::Id& player) {
    const auto lessons = library.lessons({}, player); // newest first
    if (!lessons) {
        return lessons.error();
    }
    for (const store::LessonRow& lesson : *lessons) {
        if (lesson.clips == 0) {
            continue;
        }
        const auto shots = library.shots(lesson.id);
        if (!shots) {
            return shots.error();
        }
        for (auto shot = shots->rbegin(); shot != shots->rend(); ++shot) {
            const auto clips = library.clips(shot->id);
            if (!clips) {
                return clips.error();
            }
            if (!clips->empty()) {
                const records::Clip& clip = clips->back().clip;
                marks::ShotContext context;
                context.view = clip.view;
                context.hand = clip.hand;
                context.mirrored = clip.mirrored;
                context.shot = shot->shot.kind;
                context.club = shot->shot.club;
                return std::optional(context);
            }
        }
    }
    return std::optional<marks::ShotContext>();
}

base::Result<void> tellCaptureRate(store::Library& library, const base::Id& clip, double framesPerSecond) {
    if (!(framesPerSecond >= 1 && framesPerSecond <= 10000)) {
        return base::inputError("record.bad_value",
                                "The rate must lie between 1 and 10,000 frames a second; check the number.");
    }
    const auto entity = library.entity(clip);
    if (!entity) {
        return entity.error();
    }
    auto known = *entity && (*entity)->kind == records::kind::clip ? records::clipOf((*entity)->fields)
                                                                   : std::optional<records::Clip>();
    if (!known) {
        return detail::noSuchThing();
    }
    const records::Object before = bodyOf(*known);
    known->captureFpsTold = framesPerSecond;
    return detail::saveFields(library, **entity, before, bodyOf(*known));
}

} // namespace plumbmark::session
