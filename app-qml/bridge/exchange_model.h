// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QTimer>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>
#include <atomic>
#include <functional>
#include <optional>
#include <thread>

#include "bridge/code_reader.h"
#include "bridge/settings_model.h"
#include "ports/camera.h"
#include "ports/places.h"
#include "session/disagreements.h"
#include "session/film_sharing.h"
#include "session/lesson_exchange.h"
#include "store/backup.h"

namespace plumbmark::bridge {

/// Exchanging and keeping lessons: files, devices side by side, a shared folder, consents, backups and what
/// two devices put differently. One long work at a time, on a thread of its own; its outcome is a sentence.
class ExchangeModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the app")
    // Long work.
    Q_PROPERTY(bool busy READ busy NOTIFY busyChanged)
    Q_PROPERTY(double share READ share NOTIFY progressChanged)
    Q_PROPERTY(QString doing READ doing NOTIFY busyChanged)
    Q_PROPERTY(QString outcome READ outcome NOTIFY toldChanged) ///< what the last work did
    Q_PROPERTY(QString problem READ problem NOTIFY toldChanged) ///< or why it did not
    // Which lesson, and what of it travels.
    Q_PROPERTY(QVariantList lessonChoices READ lessonChoices NOTIFY lessonsChanged)
    Q_PROPERTY(QString lesson READ lesson WRITE setLesson NOTIFY lessonsChanged)
    Q_PROPERTY(QString lessonTitle READ lessonTitle NOTIFY lessonsChanged)
    Q_PROPERTY(QString audience MEMBER audience_ NOTIFY travelChanged) ///< "somebody", "own"
    Q_PROPERTY(bool withClips MEMBER withClips_ NOTIFY travelChanged)
    Q_PROPERTY(bool withHealth MEMBER withHealth_ NOTIFY travelChanged)
    Q_PROPERTY(bool coverHeads MEMBER coverHeads_ NOTIFY travelChanged)
    Q_PROPERTY(QString passphrase MEMBER passphrase_ NOTIFY passphraseChanged)
    Q_PROPERTY(QString sharingAnswer READ sharingAnswer NOTIFY lessonsChanged) ///< may it be shared, in words
    // Covered heads.
    Q_PROPERTY(QVariantList strip READ strip NOTIFY stripChanged) ///< [{source, frame, doubtful}]
    Q_PROPERTY(QString coverState READ coverState NOTIFY stripChanged)
    // Files.
    Q_PROPERTY(QVariantList places READ places CONSTANT)
    Q_PROPERTY(QString folder READ folder NOTIFY folderChanged)
    Q_PROPERTY(QVariantList files READ files NOTIFY folderChanged) ///< lesson files in the folder
    Q_PROPERTY(QString file READ file NOTIFY fileChanged)
    Q_PROPERTY(QString fileTold READ fileTold NOTIFY fileChanged) ///< what the checked file holds
    Q_PROPERTY(bool canImport READ canImport NOTIFY fileChanged)
    // A shared folder.
    Q_PROPERTY(QString sharedFolder READ sharedFolder NOTIFY sharedChanged)
    Q_PROPERTY(QString sharedState READ sharedState NOTIFY sharedChanged)
    // Side by side.
    Q_PROPERTY(QString ticket READ ticket NOTIFY ticketChanged) ///< while the port is open; else empty
    Q_PROPERTY(QString qrSource READ qrSource NOTIFY ticketChanged)
    // Backups.
    Q_PROPERTY(QVariantList backups READ backups NOTIFY backupsChanged) ///< [{name, day, why}], newest first
    Q_PROPERTY(QString pendingRestore READ pendingRestore NOTIFY backupsChanged)
    // Consent.
    Q_PROPERTY(QVariantList playerChoices READ playerChoices NOTIFY consentChanged)
    Q_PROPERTY(QString player READ player WRITE setPlayer NOTIFY consentChanged)
    Q_PROPERTY(QStringList scopes READ scopes NOTIFY consentChanged)
    Q_PROPERTY(QString guardian MEMBER guardian_ NOTIFY consentChanged)
    Q_PROPERTY(bool minor READ minor WRITE setMinor NOTIFY consentChanged)
    Q_PROPERTY(QString until MEMBER until_ NOTIFY consentChanged)
    Q_PROPERTY(QString standing READ standing NOTIFY consentChanged) ///< what is on record, in words
    Q_PROPERTY(QVariantList scopeChoices READ scopeChoices CONSTANT)
    // Kept past its time.
    Q_PROPERTY(QVariantList overdue READ overdue NOTIFY consentChanged) ///< [{id, text}], minors' first
    /// Reads a ticket's code; null where this build has no camera.
    Q_PROPERTY(plumbmark::bridge::CodeReader* codeReader READ codeReader CONSTANT)
    // Two versions.
    Q_PROPERTY(QVariantList disagreements READ disagreements NOTIFY disagreementsChanged)

  public:
    ExchangeModel(store::Library& library, analysis::NetworkBytes network, const ports::Places& places,
                  SettingsModel& settings, ports::Camera* camera, QObject* parent = nullptr);
    ~ExchangeModel() override;

    [[nodiscard]] bool busy() const { return busy_; }
    [[nodiscard]] double share() const { return share_; }
    [[nodiscard]] QString doing() const { return doing_; }
    [[nodiscard]] QString outcome() const { return outcome_; }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] QVariantList lessonChoices() const { return lessonChoices_; }
    [[nodiscard]] QString lesson() const { return lesson_; }
    void setLesson(const QString& id);
    [[nodiscard]] QString lessonTitle() const;
    [[nodiscard]] QString sharingAnswer() const { return sharingAnswer_; }
    [[nodiscard]] QVariantList strip() const { return strip_; }
    [[nodiscard]] QString coverState() const;
    [[nodiscard]] QVariantList places() const;
    [[nodiscard]] QString folder() const { return folder_; }
    [[nodiscard]] QVariantList files() const { return files_; }
    [[nodiscard]] QString file() const { return file_; }
    [[nodiscard]] QString fileTold() const { return fileTold_; }
    [[nodiscard]] bool canImport() const { return canImport_; }
    [[nodiscard]] QString sharedFolder() const;
    [[nodiscard]] QString sharedState() const { return sharedState_; }
    [[nodiscard]] QString ticket() const { return ticket_; }
    [[nodiscard]] QString qrSource() const { return qrSource_; }
    [[nodiscard]] CodeReader* codeReader() const { return codeReader_.get(); }
    [[nodiscard]] QVariantList backups() const { return backups_; }
    [[nodiscard]] QString pendingRestore() const;
    [[nodiscard]] QVariantList playerChoices() const { return playerChoices_; }
    [[nodiscard]] QString player() const { return player_; }
    void setPlayer(const QString& id);
    [[nodiscard]] QStringList scopes() const { return scopes_; }
    [[nodiscard]] bool minor() const { return minor_; }
    void setMinor(bool minor);
    [[nodiscard]] QString standing() const { return standing_; }
    [[nodiscard]] QVariantList scopeChoices() const;
    [[nodiscard]] QVariantList overdue() const { return overdue_; }
    [[nodiscard]] QVariantList disagreements() const { return disagreements_; }

    /// Reads everything that is shown anew; also what another page has changed.
    Q_INVOKABLE void refresh();
    Q_INVOKABLE void cancel();
    /// The person has turned to something else: what the last work did is old news.
    Q_INVOKABLE void forgetTold() { tell({}); }
    Q_INVOKABLE void makeCovers();
    Q_INVOKABLE void releaseCovers();
    Q_INVOKABLE void openFolder(const QString& path);
    Q_INVOKABLE void saveFile();
    Q_INVOKABLE void checkFile(const QString& path);
    Q_INVOKABLE void importFile();
    Q_INVOKABLE void chooseSharedFolder(const QString& path);
    Q_INVOKABLE void syncNow();
    Q_INVOKABLE void startSending();
    Q_INVOKABLE void receive(const QString& ticket);
    Q_INVOKABLE void backupNow();
    Q_INVOKABLE void planRestore(const QString& name);
    Q_INVOKABLE void forgetRestore();
    Q_INVOKABLE void toggleScope(const QString& scope);
    Q_INVOKABLE void noteConsent();
    Q_INVOKABLE void withdrawConsent();
    Q_INVOKABLE void eraseOverdue(const QString& clip);
    Q_INVOKABLE void settle(const QString& version);

  signals:
    void busyChanged();
    void progressChanged();
    void toldChanged();
    void lessonsChanged();
    void travelChanged();
    void passphraseChanged();
    void stripChanged();
    void folderChanged();
    void fileChanged();
    void sharedChanged();
    void ticketChanged();
    void backupsChanged();
    void consentChanged();
    void disagreementsChanged();
    /// Something came in: lists elsewhere are old.
    void libraryChanged();

  private:
    /// Runs on the worker; gives what is told, on the thread of the pages, once it is done.
    using Told = std::function<void()>;
    void begin(const QString& doing, std::function<Told(const base::Progress&)> work);
    void tell(const QString& outcome);
    void complain(const base::Error& error);
    [[nodiscard]] session::LessonExchange::ExportOptions options() const;
    [[nodiscard]] std::optional<base::Id> lessonId() const;
    void readLessons();
    void readFolder();
    void readBackups();
    void readPlayers();
    void readConsent();
    void readDisagreements();
    void readCovers();
    void noteThis(bool withdrawn);
    void showTicket(const QString& text);

    store::Library* library_;
    analysis::NetworkBytes network_;
    const ports::Places* placesPort_;
    SettingsModel* settings_;
    bool busy_ = false;
    double share_ = 0.0;
    QString doing_, outcome_, problem_;
    QVariantList lessonChoices_;
    QString lesson_, audience_ = "somebody", passphrase_, sharingAnswer_;
    bool withClips_ = true, withHealth_ = false, coverHeads_ = false;
    QVariantList strip_;
    session::HeadCovering::State cover_ = session::HeadCovering::State::none;
    QString folder_, file_, fileTold_;
    QVariantList files_;
    bool canImport_ = false;
    QString sharedState_;
    QTimer syncTimer_;
    QString ticket_, qrSource_;
    std::unique_ptr<CodeReader> codeReader_;
    QVariantList backups_;
    QVariantList playerChoices_;
    QString player_, guardian_, until_, standing_;
    QStringList scopes_;
    bool minor_ = false;
    QVariantList disagreements_;
    QVariantList overdue_;
    std::atomic<bool> cancel_ = false;
    std::thread worker_;
};

} // namespace plumbmark::bridge
