// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/inbox.h"

#include <algorithm>

#include "records/kinds.h"
#include "records/merge.h"
#include "session/detail/no_such_thing.h"

namespace plumbmark::session {
namespace {

constexpr base::UnixMs kDay = 24LL * 60 * 60 * 1000;

int daysBetween(const std::string& from, const std::string& to) {
    const auto a = base::fromIso(from);
    const auto b = base::fromIso(to);
    return a && b ? static_cast<int>((*b - *a) / kDay) : 0;
}

} // namespace

base::Result<void> InboxDesk::put(const base::Id& lesson, records::InboxState state, const std::string& due,
                                  const std::string& because) {
    const auto entity = library_->entity(lesson);
    const auto facts = library_->factsOf(lesson, records::kind::inbox);
    if (!entity || !facts) {
        return entity ? facts.error() : entity.error();
    }
    if (!*entity || (*entity)->kind != records::kind::lesson) {
        return detail::noSuchThing();
    }
    records::Inbox inbox{state, base::isoDate(clock_->now()), due, because};
    std::vector<base::Id> replaces;
    for (const records::Fact& fact : records::heads(*facts)) {
        replaces.push_back(fact.id);
        const auto before = records::inboxOf(fact.body);
        if (before && due.empty() && state != records::InboxState::answered) {
            inbox.due = before->due;
        }
    }
    std::sort(replaces.begin(), replaces.end());
    if (auto good = check(inbox); !good) {
        return good;
    }
    std::vector<base::Id> path = (*entity)->path;
    path.push_back(lesson);
    return library_->add({library_->make(records::kind::inbox, path, bodyOf(inbox), replaces)});
}

base::Result<void> InboxDesk::wait(const base::Id& lesson, const std::string& due) {
    return put(lesson, records::InboxState::waiting, due, "");
}
base::Result<void> InboxDesk::filmAgain(const base::Id& lesson, const std::string& because) {
    return put(lesson, records::InboxState::film_again, "", because);
}
base::Result<void> InboxDesk::answered(const base::Id& lesson) {
    return put(lesson, records::InboxState::answered, "", "");
}

base::Result<bool> InboxDesk::noteOpened(const base::Id& lesson) {
    const auto facts = library_->factsOf(lesson, records::kind::inbox);
    const auto seen = library_->factsOf(lesson, records::kind::opened);
    const auto entity = library_->entity(lesson);
    if (!facts || !seen || !entity) {
        return !facts ? facts.error() : !seen ? seen.error() : entity.error();
    }
    const auto standing = records::heads(*facts);
    const auto inbox = standing.empty() ? std::nullopt : records::inboxOf(standing.back().body);
    if (library_->readOnly() || !*entity || !inbox || inbox->state != records::InboxState::answered ||
        standing.back().at.device == library_->device()) {
        return false;
    }
    const std::string answer = standing.back().id.hex();
    for (const records::Fact& fact : *seen) {
        if (const auto opened = records::openedOf(fact.body); opened && opened->answer == answer) {
            return false;
        }
    }
    std::vector<base::Id> path = (*entity)->path;
    path.push_back(lesson);
    if (auto added = library_->add({library_->make(
            records::kind::opened, path, bodyOf(records::Opened{answer, base::isoDate(clock_->now())}))});
        !added) {
        return added.error();
    }
    return true;
}

base::Result<std::vector<InboxDesk::Answer>> InboxDesk::answers() {
    const auto lessons = library_->lessons();
    if (!lessons) {
        return lessons.error();
    }
    std::vector<Answer> answers;
    for (const store::LessonRow& lesson : *lessons) {
        const auto facts = library_->factsOf(lesson.id, records::kind::inbox);
        const auto seen = library_->factsOf(lesson.id, records::kind::opened);
        if (!facts || !seen) {
            return facts ? seen.error() : facts.error();
        }
        const auto standing = records::heads(*facts);
        const auto inbox = standing.empty() ? std::nullopt : records::inboxOf(standing.back().body);
        if (!inbox || inbox->state != records::InboxState::answered ||
            standing.back().at.device != library_->device()) {
            continue;
        }
        Answer answer{lesson, inbox->since, std::nullopt};
        for (const records::Fact& fact : *seen) {
            const auto opened = records::openedOf(fact.body);
            if (opened && opened->answer == standing.back().id.hex() &&
                (!answer.opened || opened->day < *answer.opened)) {
                answer.opened = opened->day;
            }
        }
        answers.push_back(std::move(answer));
    }
    std::stable_sort(answers.begin(), answers.end(),
                     [](const Answer& a, const Answer& b) { return a.day > b.day; });
    return answers;
}

base::Result<std::vector<InboxDesk::Row>> InboxDesk::open() {
    const auto lessons = library_->lessons();
    if (!lessons) {
        return lessons.error();
    }
    const std::string today = base::isoDate(clock_->now());
    std::vector<Row> rows;
    for (const store::LessonRow& lesson : *lessons) {
        const auto facts = library_->factsOf(lesson.id, records::kind::inbox);
        if (!facts) {
            return facts.error();
        }
        const auto standing = records::heads(*facts);
        const auto inbox = standing.empty() ? std::nullopt : records::inboxOf(standing.back().body);
        if (!inbox || inbox->state == records::InboxState::answered) {
            continue;
        }
        Row row{lesson, *inbox, std::max(0, daysBetween(inbox->since, today)), std::nullopt};
        if (!inbox->due.empty()) {
            row.daysLeft = daysBetween(today, inbox->due);
        }
        rows.push_back(std::move(row));
    }
    std::stable_sort(rows.begin(), rows.end(), [](const Row& a, const Row& b) {
        if (a.daysLeft.has_value() != b.daysLeft.has_value()) {
            return a.daysLeft.has_value();
        }
        return a.daysLeft != b.daysLeft ? a.daysLeft < b.daysLeft : a.days > b.days;
    });
    return rows;
}

} // namespace plumbmark::session
