// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/inbox_model.h"

#include <QDateTime>
#include <QLocale>
#include <algorithm>

#include "bridge/in_language.h"
#include "bridge/phrases.h"

namespace plumbmark::bridge {

namespace {

QString daysText(int days) {
    return InboxModel::tr("%n day(s)", nullptr, days);
}

} // namespace

InboxModel::InboxModel(store::Library& library, analysis::NetworkBytes network, const ports::Places& places,
                       const exporting::Painter* painter, QObject* parent)
    : QObject(parent), library_(&library), network_(std::move(network)), places_(&places), painter_(painter) {
    load();
}

InboxModel::~InboxModel() {
    cancel_ = true;
}

void InboxModel::load() {
    session::InboxDesk desk(*library_);
    auto rows = desk.open();
    auto lessons = library_->lessons();
    if (rows.ok() && lessons.ok()) {
        rows_ = std::move(*rows);
        lessons_ = std::move(*lessons);
    } else {
        problem_ = inLanguage(QString::fromStdString((rows.ok() ? lessons.error() : rows.error()).sentence));
    }
    emit changed();
}

QVariantList InboxModel::rows() const {
    QVariantList list;
    for (const auto& row : rows_) {
        const bool waiting = row.inbox.state == records::InboxState::waiting;
        QString due;
        if (row.daysLeft) {
            due = *row.daysLeft < 0    ? tr("overdue by %1").arg(daysText(-*row.daysLeft))
                  : *row.daysLeft == 0 ? tr("due today")
                                       : tr("due in %1").arg(daysText(*row.daysLeft));
        }
        const QString waits = waiting ? tr("waits for you since %1").arg(daysText(row.days))
                                      : tr("films again since %1").arg(daysText(row.days));
        list.append(QVariantMap{
            {QStringLiteral("lesson"), QString::fromStdString(row.lesson.id.hex())},
            {QStringLiteral("player"), QString::fromStdString(row.lesson.playerName)},
            {QStringLiteral("title"), QString::fromStdString(row.lesson.title)},
            {QStringLiteral("waits"), waits},
            {QStringLiteral("due"), due},
            {QStringLiteral("overdue"), row.daysLeft && *row.daysLeft < 0},
            {QStringLiteral("because"), inLanguage(QString::fromStdString(row.inbox.because))},
            {QStringLiteral("waiting"), waiting},
        });
    }
    return list;
}

QVariantList InboxModel::others() const {
    QVariantList list;
    for (const auto& lesson : lessons_) {
        const bool here = std::any_of(rows_.begin(), rows_.end(),
                                      [&](const auto& row) { return row.lesson.id == lesson.id; });
        if (!here && list.size() < 10) {
            list.append(QVariantMap{
                {QStringLiteral("lesson"), QString::fromStdString(lesson.id.hex())},
                {QStringLiteral("label"),
                 tr("%1, %2").arg(QString::fromStdString(lesson.playerName), dayText(lesson.day))}});
        }
    }
    return list;
}

void InboxModel::after(const base::Result<void>& done) {
    problem_ = done.ok() ? QString() : inLanguage(QString::fromStdString(done.error().sentence));
    load();
}

void InboxModel::wait(const QString& lesson, int days) {
    if (const auto id = base::Id::fromHex(lesson.toStdString())) {
        const QString due =
            days > 0 ? QDateTime::currentDateTimeUtc().date().addDays(days).toString(Qt::ISODate) : QString();
        after(session::InboxDesk(*library_).wait(*id, due.toStdString()));
    }
}

void InboxModel::answered(const QString& lesson) {
    if (const auto id = base::Id::fromHex(lesson.toStdString())) {
        after(session::InboxDesk(*library_).answered(*id));
    }
}

void InboxModel::filmAgain(const QString& lesson, const QString& because) {
    const auto id = base::Id::fromHex(lesson.toStdString());
    if (!id || busy_) {
        return;
    }
    words_.clear();
    if (!because.trimmed().isEmpty()) {
        const auto done = session::InboxDesk(*library_).filmAgain(*id, because.trimmed().toStdString());
        words_ = done.ok() ? because.trimmed() : QString();
        after(done);
        return;
    }
    busy_ = true;
    cancel_ = false;
    progressShare_ = 0.0;
    emit changed();
    worker_.post([this, lesson = *id] {
        base::Progress progress;
        progress.cancel = &cancel_;
        progress.report = [this](double share, std::string_view) {
            Worker::tell(this, [this, share] {
                progressShare_ = share;
                emit progressChanged();
            });
        };
        const auto words = session::ReviewDesk(*library_, network_).filmAgainWords(lesson, progress);
        Worker::tell(this, [this, lesson, words] {
            busy_ = false;
            if (!words.ok()) {
                problem_ = inLanguage(QString::fromStdString(words.error().sentence));
            } else if (*words && (*words)->empty()) {
                problem_ = tr("These clips were filmed as they should be; type the reason first.");
            } else if (*words) {
                words_ = inLanguage(QString::fromStdString(**words));
                after(session::InboxDesk(*library_).filmAgain(lesson, **words));
                return;
            }
            emit changed();
        });
    });
}

void InboxModel::makeCard(const QString& player, const QString& coach, const QString& due,
                          const QString& question) {
    const exporting::RequestCard card{player.trimmed().toStdString(), coach.trimmed().toStdString(),
                                      due.trimmed().toStdString(), question.trimmed().toStdString()};
    const auto places = places_->filmPlaces();
    const std::filesystem::path folder = places.empty() ? std::filesystem::path(".") : places.front().folder;
    const std::string ending = painter_ == nullptr ? ".html" : ".pdf";
    std::filesystem::path target = folder / ("how to film" + ending);
    std::error_code error;
    for (int i = 2; i < 1000 && std::filesystem::exists(target, error); ++i) {
        target = folder / ("how to film " + std::to_string(i) + ending);
    }
    const auto done = session::writeRequestCard(card, painter_, target);
    problem_ = done.ok() ? QString() : inLanguage(QString::fromStdString(done.error().sentence));
    made_ = done.ok() ? tr("Written: %1").arg(QString::fromStdString(target.string())) : QString();
    emit changed();
}

} // namespace plumbmark::bridge
