// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/lesson_today.h"

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

} // namespace plumbmark::session
