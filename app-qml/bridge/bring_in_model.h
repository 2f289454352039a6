// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>
#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <thread>

#include "bridge/settings_model.h"
#include "ports/places.h"
#include "session/clip_intake.h"
#include "session/lesson_book.h"

namespace plumbmark::bridge {

/// Makes a demo film in a folder that exists; nothing when cancelled.
using DemoFilm = std::function<base::Result<std::optional<std::filesystem::path>>(
    const std::filesystem::path& folder, const base::Progress& progress)>;

/// Brings a clip in: which file, what the coach knows about it, then the work with progress and cancel.
class BringInModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the app")
    Q_PROPERTY(QVariantList places READ places CONSTANT)
    Q_PROPERTY(QString folder READ folder NOTIFY folderChanged)
    Q_PROPERTY(QString folderName READ folderName NOTIFY folderChanged)
    Q_PROPERTY(bool canGoUp READ canGoUp NOTIFY folderChanged)
    Q_PROPERTY(QVariantList entries READ entries NOTIFY folderChanged)
    Q_PROPERTY(QString file READ file NOTIFY fileChanged)
    Q_PROPERTY(QString fileName READ fileName NOTIFY fileChanged)
    /// What can be said of the chosen film before it is read, one sentence each; empty while it is looked at.
    Q_PROPERTY(QStringList filmSays READ filmSays NOTIFY filmSaysChanged)
    /// The film does not tell at which rate it was filmed: times stay unknown until somebody does.
    Q_PROPERTY(bool rateUnknown READ rateUnknown NOTIFY filmSaysChanged)
    Q_PROPERTY(QString player READ player WRITE setPlayer NOTIFY answersChanged)
    /// A known player who was never asked about the body; empty: nobody is.
    Q_PROPERTY(QString askBody READ askBody NOTIFY answersChanged)
    /// Answers of this player's last swing stand in the form.
    Q_PROPERTY(bool remembered READ remembered NOTIFY answersChanged)
    Q_PROPERTY(QString view MEMBER view_ NOTIFY answersChanged)
    Q_PROPERTY(QString hand MEMBER hand_ NOTIFY answersChanged)
    Q_PROPERTY(QString shot MEMBER shot_ NOTIFY answersChanged)
    Q_PROPERTY(QString club READ club WRITE setClub NOTIFY answersChanged)
    Q_PROPERTY(QString clubNumber MEMBER clubNumber_ NOTIFY answersChanged)
    Q_PROPERTY(QString captureRate MEMBER captureRate_ NOTIFY answersChanged)
    Q_PROPERTY(QString mirrored MEMBER mirrored_ NOTIFY answersChanged)
    Q_PROPERTY(QString stature MEMBER stature_ NOTIFY answersChanged)
    Q_PROPERTY(QVariantList viewChoices READ viewChoices CONSTANT)
    Q_PROPERTY(QVariantList handChoices READ handChoices CONSTANT)
    Q_PROPERTY(QVariantList shotChoices READ shotChoices CONSTANT)
    Q_PROPERTY(QVariantList clubChoices READ clubChoices CONSTANT)
    Q_PROPERTY(QVariantList clubNumberChoices READ clubNumberChoices NOTIFY answersChanged)
    Q_PROPERTY(QVariantList captureRateChoices READ captureRateChoices CONSTANT)
    Q_PROPERTY(QVariantList mirroredChoices READ mirroredChoices CONSTANT)
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged)
    Q_PROPERTY(double share READ share NOTIFY progressChanged)
    Q_PROPERTY(QString doing READ doing NOTIFY progressChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged)
    Q_PROPERTY(bool canMakeDemo READ canMakeDemo CONSTANT)

  public:
    BringInModel(store::Library& library, session::LessonBook& book, analysis::NetworkBytes network,
                 const ports::Places& places, SettingsModel& settings, DemoFilm demo,
                 QObject* parent = nullptr);
    ~BringInModel() override;

    [[nodiscard]] QVariantList places() const;
    [[nodiscard]] QString folder() const { return folder_; }
    [[nodiscard]] QString folderName() const;
    [[nodiscard]] bool canGoUp() const;
    [[nodiscard]] QVariantList entries() const { return entries_; }
    [[nodiscard]] QString file() const { return file_; }
    [[nodiscard]] QString fileName() const;
    [[nodiscard]] QStringList filmSays() const { return filmSays_; }
    [[nodiscard]] bool rateUnknown() const { return rateUnknown_; }
    [[nodiscard]] QString player() const { return player_; }
    /// A name the library knows brings view, hand, club and mirroring of that player's last swing.
    void setPlayer(const QString& player);
    [[nodiscard]] QString askBody() const { return askBody_; }
    [[nodiscard]] bool remembered() const { return remembered_; }
    [[nodiscard]] QString club() const { return club_; }
    void setClub(const QString& club);
    [[nodiscard]] QVariantList viewChoices() const;
    [[nodiscard]] QVariantList handChoices() const;
    [[nodiscard]] QVariantList shotChoices() const;
    [[nodiscard]] QVariantList clubChoices() const;
    [[nodiscard]] QVariantList clubNumberChoices() const;
    [[nodiscard]] QVariantList captureRateChoices() const;
    [[nodiscard]] QVariantList mirroredChoices() const;
    [[nodiscard]] bool busy() const { return busy_; }
    [[nodiscard]] double share() const { return share_; }
    [[nodiscard]] QString doing() const { return doing_; }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] bool canMakeDemo() const { return bool(demo_); }

    /// Whose swing comes next, as the library knows the player.
    void takePlayer(const store::PlayerRow& player);
    /// Again, after the card may have been filled in.
    Q_INVOKABLE void lookAtBody();
    Q_INVOKABLE void openFolder(const QString& path);
    Q_INVOKABLE void goUp();
    Q_INVOKABLE void chooseFile(const QString& path);
    Q_INVOKABLE void chooseDropped(const QUrl& url);
    Q_INVOKABLE void forgetFile();
    Q_INVOKABLE void start();
    /// One tap: renders a demo swing and brings it in like any film.
    Q_INVOKABLE void startDemo();
    Q_INVOKABLE void cancel();

    /// The analysis made by the last work, once.
    [[nodiscard]] std::optional<analysis::Analysed> takeAnalysed() {
        return std::exchange(analysed_, std::nullopt);
    }

  signals:
    void folderChanged();
    void fileChanged();
    void filmSaysChanged();
    void answersChanged();
    void busyChanged();
    void progressChanged();
    void problemChanged();
    void broughtIn(const QString& clip, const QString& player);
    void stopped();

  private:
    struct Job {
        std::optional<std::filesystem::path> file; ///< nothing: make the demo film first
        std::string player;
        analysis::Request request;
        marks::ShotKind shot = marks::ShotKind::full;
    };
    struct Done {
        std::optional<base::Id> clip;
        std::optional<analysis::Analysed> analysed;
        QString problem;
    };
    [[nodiscard]] Done work(const Job& job);
    void begin(Job job);
    void finish(Done done, const QString& player);
    void setProblem(const QString& sentence);
    void report(double share, std::string_view stage);
    void readFolder();
    void lookAtFilm();
    void recall(const store::PlayerRow& player);

    store::Library* library_;
    session::LessonBook* book_;
    analysis::NetworkBytes network_;
    const ports::Places* placesPort_;
    SettingsModel* settings_;
    DemoFilm demo_;

    QString folder_;
    QVariantList entries_;
    QString file_;
    QString player_, view_, hand_, shot_, club_, clubNumber_, captureRate_, mirrored_, stature_;
    QStringList filmSays_;
    bool rateUnknown_ = false;
    bool remembered_ = false;
    QString askBody_;
    bool busy_ = false;
    double share_ = 0.0;
    QString doing_;
    QString problem_;
    std::optional<analysis::Analysed> analysed_;
    std::atomic<bool> cancel_ = false;
    std::thread worker_;
    std::thread looker_;
    bool looking_ = false; ///< of looker_: it answers in this thread
};

} // namespace plumbmark::bridge
