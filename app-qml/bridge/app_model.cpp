// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/app_model.h"

#include <QQmlEngine>
#include <QTimer>

#include "bridge/in_language.h"

namespace plumbmark::bridge {

AppModel::AppModel(const Parts& parts, QObject* parent)
    : QObject(parent), library_(&parts.library), network_(parts.network), parts_(parts),
      book_(parts.library) {
    settings_ = std::make_unique<SettingsModel>(QString::fromStdString(parts.places.settingsFile().string()));
    language_ = std::make_unique<Language>(settings_->language());
    connect(settings_.get(), &SettingsModel::languageChanged, this, [this] {
        language_.reset(); // one at a time
        language_ = std::make_unique<Language>(settings_->language());
        lessons_->load();
        emit languageChanged();
    });
    lessons_ = std::make_unique<LessonsModel>(book_);
    players_ = std::make_unique<PlayersModel>(book_);
    player_ = std::make_unique<PlayerModel>(*library_, book_);
    group_ = std::make_unique<GroupModel>();
    bodyCard_ = std::make_unique<BodyCardModel>(*library_, book_);
    bringIn_ =
        std::make_unique<BringInModel>(*library_, book_, network_, parts.places, *settings_, parts.demo);
    if (parts.camera != nullptr) {
        film_ = std::make_unique<FilmModel>(*library_, book_, network_, *parts.camera, *bringIn_);
        QQmlEngine::setObjectOwnership(film_.get(), QQmlEngine::CppOwnership);
        connect(film_.get(), &FilmModel::takeStored, this, [this] { lessons_->load(); });
    }
    exchange_ = std::make_unique<ExchangeModel>(*library_, network_, parts.places, *settings_, parts.camera);
    connect(exchange_.get(), &ExchangeModel::libraryChanged, this, [this] { lessons_->load(); });
    for (QObject* model : {static_cast<QObject*>(settings_.get()), static_cast<QObject*>(lessons_.get()),
                           static_cast<QObject*>(players_.get()), static_cast<QObject*>(player_.get()),
                           static_cast<QObject*>(exchange_.get()), static_cast<QObject*>(bodyCard_.get()),
                           static_cast<QObject*>(group_.get()), static_cast<QObject*>(bringIn_.get())}) {
        QQmlEngine::setObjectOwnership(model, QQmlEngine::CppOwnership);
    }
    restored_ = parts.restored;
    lessons_->load();
    connect(group_.get(), &GroupModel::turnChanged, this, [this] {
        if (const store::PlayerRow* now = group_->current()) {
            bringIn_->takePlayer(*now);
            if (film_) {
                film_->changePlayer();
            }
        }
    });
    connect(bringIn_.get(), &BringInModel::broughtIn, this,
            [this](const QString& clip, const QString& player) {
                lessons_->load();
                openSwing(clip, player);
            });
}

AppModel::~AppModel() = default;

QString AppModel::notice() const {
    if (!library_->notice().empty()) {
        return inLanguage(library_->notice());
    }
    if (!restored_.empty()) {
        return inLanguage(restored_);
    }
    return network_ ? QString()
                    : tr("The pose network is not on this device: body marks must be placed by hand.");
}

void AppModel::letGo(std::unique_ptr<QObject> model) {
    if (model) {
        leaving_.push_back(std::move(model));
        QTimer::singleShot(200, this, [this] { leaving_.clear(); });
    }
}

void AppModel::openSwing(const QString& clip, const QString& title, int moment) {
    const auto id = base::Id::fromHex(clip.toStdString());
    if (!id) {
        return;
    }
    // The page on show still looks at the old one until it is told: hand over first, then let go.
    auto old = std::move(swing_);
    swing_ = std::make_unique<SwingModel>(*library_, network_);
    QQmlEngine::setObjectOwnership(swing_.get(), QQmlEngine::CppOwnership);
    connect(swing_.get(), &SwingModel::compareAsked, this, &AppModel::openCompare);
    // This very model goes when the swing is opened again.
    connect(
        swing_.get(), &SwingModel::rateTold, this,
        [this](const QString& again, const QString& name) { openSwing(again, name); }, Qt::QueuedConnection);
    if (moment >= 0 && moment < marks::kMomentCount) {
        swing_->beginAt(static_cast<marks::MomentId>(moment));
    }
    swing_->open(*id, title, bringIn_->takeAnalysed());
    emit swingChanged();
    emit swingOpened();
}

void AppModel::openPlayer(const QString& player) {
    player_->open(base::Id::fromHex(player.toStdString()));
}

void AppModel::startGroup() {
    group_->start(players_->rows());
}

void AppModel::openBodyCard(const QString& player) {
    if (const auto id = base::Id::fromHex(player.toStdString())) {
        bodyCard_->open(*id);
    }
}

void AppModel::closeSwing() {
    letGo(std::move(swing_));
    emit swingChanged();
    lessons_->load();
    if (player_->id()) { // the shot may have been filed otherwise
        player_->refresh();
    }
}

void AppModel::openCompare() {
    if (!swing_) {
        return;
    }
    auto old = std::move(compare_);
    compare_ = std::make_unique<CompareModel>(*library_, network_);
    QQmlEngine::setObjectOwnership(compare_.get(), QQmlEngine::CppOwnership);
    compare_->open(swing_->clip(), swing_->title());
    emit compareChanged();
    emit compareOpened();
}

void AppModel::closeCompare() {
    letGo(std::move(compare_));
    emit compareChanged();
}

void AppModel::openTeach(const QString& lesson, const QString& title) {
    const auto id = base::Id::fromHex(lesson.toStdString());
    if (!id) {
        return;
    }
    auto old = std::move(coach_);
    coach_ = std::make_unique<CoachModel>(*library_, *id, title);
    QQmlEngine::setObjectOwnership(coach_.get(), QQmlEngine::CppOwnership);
    emit coachChanged();
    emit teachOpened();
}

void AppModel::closeTeach() {
    letGo(std::move(coach_));
    emit coachChanged();
}

void AppModel::openReview(const QString& lesson, const QString& title) {
    const auto id = base::Id::fromHex(lesson.toStdString());
    if (!id) {
        return;
    }
    auto old = std::move(review_);
    review_ =
        std::make_unique<ReviewModel>(ReviewModel::Parts{*library_, network_, parts_.places, parts_.painter,
                                                         parts_.microphone, parts_.speaker},
                                      *id, title);
    QQmlEngine::setObjectOwnership(review_.get(), QQmlEngine::CppOwnership);
    emit reviewChanged();
    emit reviewOpened();
}

void AppModel::closeReview() {
    letGo(std::move(review_));
    emit reviewChanged();
}

void AppModel::openInbox() {
    auto old = std::move(inbox_);
    inbox_ = std::make_unique<InboxModel>(*library_, network_, parts_.places, parts_.painter);
    QQmlEngine::setObjectOwnership(inbox_.get(), QQmlEngine::CppOwnership);
    emit inboxChanged();
    emit inboxOpened();
}

void AppModel::closeInbox() {
    letGo(std::move(inbox_));
    emit inboxChanged();
}

} // namespace plumbmark::bridge
