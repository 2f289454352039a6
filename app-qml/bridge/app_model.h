// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QPointer>
#include <QtQml/qqmlregistration.h>
#include <memory>
#include <vector>

#include "bridge/body_card_model.h"
#include "bridge/bring_in_model.h"
#include "bridge/coach_model.h"
#include "bridge/compare_model.h"
#include "bridge/exchange_model.h"
#include "bridge/film_model.h"
#include "bridge/group_model.h"
#include "bridge/language.h"
#include "bridge/inbox_model.h"
#include "bridge/lessons_model.h"
#include "bridge/player_model.h"
#include "bridge/players_model.h"
#include "bridge/review_model.h"
#include "bridge/settings_model.h"
#include "bridge/swing_model.h"

namespace plumbmark::bridge {

/// The app's root for its pages: hands each page its view model.
class AppModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made where the program is put together")
    Q_PROPERTY(plumbmark::bridge::LessonsModel* lessons READ lessons CONSTANT)
    Q_PROPERTY(plumbmark::bridge::BringInModel* bringIn READ bringIn CONSTANT)
    /// Null where this build has no camera.
    Q_PROPERTY(plumbmark::bridge::FilmModel* film READ film CONSTANT)
    Q_PROPERTY(plumbmark::bridge::PlayersModel* players READ players CONSTANT)
    Q_PROPERTY(plumbmark::bridge::PlayerModel* player READ player CONSTANT)
    Q_PROPERTY(plumbmark::bridge::ExchangeModel* exchange READ exchange CONSTANT)
    Q_PROPERTY(plumbmark::bridge::BodyCardModel* bodyCard READ bodyCard CONSTANT)
    Q_PROPERTY(plumbmark::bridge::GroupModel* group READ group CONSTANT)
    Q_PROPERTY(plumbmark::bridge::SettingsModel* settings READ settings CONSTANT)
    Q_PROPERTY(plumbmark::bridge::SwingModel* swing READ swing NOTIFY swingChanged)
    Q_PROPERTY(plumbmark::bridge::CompareModel* compare READ compare NOTIFY compareChanged)
    Q_PROPERTY(plumbmark::bridge::CoachModel* coach READ coach NOTIFY coachChanged)
    Q_PROPERTY(plumbmark::bridge::ReviewModel* review READ review NOTIFY reviewChanged)
    Q_PROPERTY(plumbmark::bridge::InboxModel* inbox READ inbox NOTIFY inboxChanged)
    /// What the person must know about this library or device; empty: nothing.
    Q_PROPERTY(QString notice READ notice NOTIFY languageChanged)
    /// The language in use reads from right to left.
    Q_PROPERTY(bool rightToLeft READ rightToLeft NOTIFY languageChanged)

  public:
    struct Parts {
        store::Library& library;
        analysis::NetworkBytes network;
        const ports::Places& places;
        DemoFilm demo;                   ///< empty: this build has no demo
        ports::Camera* camera = nullptr; ///< nothing: no filming
        std::string restored = {};       ///< what the start has to tell about a backup put in place
        const exporting::Painter* painter = nullptr; ///< nothing: no films, no sheets
        ports::Microphone* microphone = nullptr;     ///< nothing: reviews without a voice
        ports::Speaker* speaker = nullptr;
    };
    explicit AppModel(const Parts& parts, QObject* parent = nullptr);
    ~AppModel() override;

    [[nodiscard]] LessonsModel* lessons() { return lessons_.get(); }
    [[nodiscard]] BringInModel* bringIn() { return bringIn_.get(); }
    [[nodiscard]] FilmModel* film() { return film_.get(); }
    [[nodiscard]] PlayersModel* players() { return players_.get(); }
    [[nodiscard]] PlayerModel* player() { return player_.get(); }
    [[nodiscard]] ExchangeModel* exchange() { return exchange_.get(); }
    [[nodiscard]] BodyCardModel* bodyCard() { return bodyCard_.get(); }
    [[nodiscard]] GroupModel* group() { return group_.get(); }
    [[nodiscard]] SettingsModel* settings() { return settings_.get(); }
    [[nodiscard]] SwingModel* swing() { return swing_.get(); }
    [[nodiscard]] CoachModel* coach() { return coach_.get(); }
    [[nodiscard]] ReviewModel* review() { return review_.get(); }
    [[nodiscard]] InboxModel* inbox() { return inbox_.get(); }
    [[nodiscard]] CompareModel* compare() { return compare_.get(); }
    [[nodiscard]] QString notice() const;
    [[nodiscard]] bool rightToLeft() const { return language_->rightToLeft(); }

    /// `moment`: the key moment to begin with; without it address.
    Q_INVOKABLE void openSwing(const QString& clip, const QString& title, int moment = -1);
    Q_INVOKABLE void closeSwing();
    /// Lays another swing beside the one that is open.
    Q_INVOKABLE void openCompare();
    Q_INVOKABLE void closeCompare();
    /// The player's page; empty: a form for a new player.
    Q_INVOKABLE void openPlayer(const QString& player);
    /// The players listed now are taught together.
    Q_INVOKABLE void startGroup();
    Q_INVOKABLE void openBodyCard(const QString& player);
    /// What the coach makes of a lesson.
    Q_INVOKABLE void openTeach(const QString& lesson, const QString& title);
    Q_INVOKABLE void closeTeach();
    /// The spoken review of a lesson.
    Q_INVOKABLE void openReview(const QString& lesson, const QString& title);
    Q_INVOKABLE void closeReview();
    /// Swings that were sent in.
    Q_INVOKABLE void openInbox();
    Q_INVOKABLE void closeInbox();

  signals:
    void swingChanged();
    void swingOpened();
    void compareChanged();
    void coachChanged();
    void teachOpened();
    void reviewChanged();
    void reviewOpened();
    void inboxChanged();
    void inboxOpened();
    void compareOpened();
    void languageChanged(); ///< every text must be asked for again

  private:
    /// A page that is being left still looks at its model until it is gone itself.
    void letGo(std::unique_ptr<QObject> model);

    store::Library* library_;
    analysis::NetworkBytes network_;
    Parts parts_;
    session::LessonBook book_;
    std::unique_ptr<SettingsModel> settings_;
    std::string restored_;
    std::unique_ptr<Language> language_;
    std::unique_ptr<LessonsModel> lessons_;
    std::unique_ptr<PlayersModel> players_;
    std::unique_ptr<PlayerModel> player_;
    std::unique_ptr<GroupModel> group_;
    std::unique_ptr<BodyCardModel> bodyCard_;
    std::unique_ptr<BringInModel> bringIn_;
    std::unique_ptr<ExchangeModel> exchange_;
    std::unique_ptr<FilmModel> film_;
    std::unique_ptr<SwingModel> swing_;
    std::unique_ptr<CompareModel> compare_;
    std::unique_ptr<CoachModel> coach_;
    std::unique_ptr<ReviewModel> review_;
    std::unique_ptr<InboxModel> inbox_;
    std::vector<std::unique_ptr<QObject>> leaving_;
};

} // namespace plumbmark::bridge
