// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/exchange_model.h"

#include <QBuffer>
#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QImage>
#include <QLocale>
#include <algorithm>

#include "base/files.h"
#include "bridge/in_language.h"
#include "bridge/phrases.h"
#include "lessonfile/seal.h"
#include "lessonfile/signature.h"
#include "records/consent.h"
#include "session/folder_sync.h"
#include "session/retention.h"
#include "store/pending_restore.h"
#include "transfer/direct.h"
#include "transfer/qr.h"
#include "video/still.h"

namespace plumbmark::bridge {

namespace fs = std::filesystem;
using session::LessonExchange;

namespace {

constexpr int kMostChoices = 40;
constexpr int kSyncEveryMs = 60'000;

/// What the core says, in the language in use; names and paths come through as they are.
QString text(const std::string& plain) {
    return inLanguage(QString::fromStdString(plain));
}
QVariantMap choice(const QString& value, const QString& words) {
    return {{QStringLiteral("value"), value}, {QStringLiteral("text"), words}};
}
QString lessonEnding() {
    return QString::fromUtf8(lessonfile::kExtension.data(),
                             static_cast<qsizetype>(lessonfile::kExtension.size()));
}
QString dataUrl(const char* type, const QByteArray& bytes) {
    return QStringLiteral("data:image/%1;base64,").arg(QLatin1String(type)) +
           QString::fromLatin1(bytes.toBase64());
}
QString today() {
    return text(base::isoDate(base::systemClock().now()));
}
QString whyOf(store::BackupKind kind) {
    switch (kind) {
    case store::BackupKind::daily:
        return ExchangeModel::tr("made by itself");
    case store::BackupKind::byHand:
        return ExchangeModel::tr("made by hand");
    case store::BackupKind::beforeStep:
        return ExchangeModel::tr("before an update");
    case store::BackupKind::afterErasing:
        return ExchangeModel::tr("after erasing");
    case store::BackupKind::beforeRestore:
        return ExchangeModel::tr("before a restore");
    }
    return {};
}

/// What an import did, as people say it.
QString told(const LessonExchange::Receipt& receipt) {
    QString sentence = receipt.sender == session::Sender::known
                           ? ExchangeModel::tr("Whole, from %1.").arg(text(receipt.senderName))
                           : ExchangeModel::tr("Whole, sender unknown.");
    sentence += QStringLiteral(" ") + ExchangeModel::tr("%n new", "records", receipt.records.added) +
                QStringLiteral(", ") + ExchangeModel::tr("%n the same", "records", receipt.records.same);
    if (receipt.records.erased > 0) {
        sentence += QStringLiteral(", ") + ExchangeModel::tr("%n erased", "records", receipt.records.erased);
    }
    if (receipt.records.refused > 0) {
        sentence += QStringLiteral(", ") +
                    ExchangeModel::tr("%n not taken, erased here", "records", receipt.records.refused);
    }
    sentence += QStringLiteral(", ") + ExchangeModel::tr("%n need you", "records", receipt.records.needsYou);
    return sentence + QStringLiteral(". ") + ExchangeModel::tr("%n new clips.", "clips", receipt.filmsNew);
}

} // namespace

ExchangeModel::ExchangeModel(store::Library& library, analysis::NetworkBytes network,
                             const ports::Places& places, SettingsModel& settings, ports::Camera* camera,
                             QObject* parent)
    : QObject(parent), library_(&library), network_(std::move(network)), placesPort_(&places),
      settings_(&settings) {
    if (const auto list = places.filmPlaces(); !list.empty()) {
        folder_ = text(list.front().folder.string());
        for (const auto& place : list) {
            if (place.kind == ports::Places::Kind::downloads) {
                folder_ = text(place.folder.string());
            }
        }
    }
    if (camera != nullptr) {
        codeReader_ = std::make_unique<CodeReader>(*camera);
        connect(codeReader_.get(), &CodeReader::found, this, &ExchangeModel::receive);
    }
    syncTimer_.setInterval(kSyncEveryMs);
    connect(&syncTimer_, &QTimer::timeout, this, [this] {
        if (!busy_) {
            syncNow();
        }
    });
    connect(this, &ExchangeModel::travelChanged, this, [this] { readLessons(); });
    if (!sharedFolder().isEmpty()) {
        sharedState_ = tr("Not looked at yet.");
        syncTimer_.start();
    }
    readLessons();
}

ExchangeModel::~ExchangeModel() {
    cancel_ = true;
    if (worker_.joinable()) {
        worker_.join();
    }
}

void ExchangeModel::refresh() {
    readLessons();
    readFolder();
    readBackups();
    readPlayers();
    readDisagreements();
    readCovers();
}

// Long work
// --------------------------------------------------------------------------------------------------

void ExchangeModel::begin(const QString& doing, std::function<Told(const base::Progress&)> work) {
    if (busy_) {
        return;
    }
    if (worker_.joinable()) {
        worker_.join();
    }
    busy_ = true;
    doing_ = doing;
    share_ = 0.0;
    outcome_.clear();
    problem_.clear();
    cancel_ = false;
    emit busyChanged();
    emit progressChanged();
    emit toldChanged();
    worker_ = std::thread([this, work = std::move(work)] {
        const base::Progress progress{[this](double share, std::string_view) {
                                          QMetaObject::invokeMethod(
                                              this,
                                              [this, share] {
                                                  share_ = share;
                                                  emit progressChanged();
                                              },
                                              Qt::QueuedConnection);
                                      },
                                      &cancel_};
        Told finish = work(progress);
        QMetaObject::invokeMethod(
            this,
            [this, finish = std::move(finish)] {
                busy_ = false;
                showTicket({});
                finish();
                emit busyChanged();
            },
            Qt::QueuedConnection);
    });
}

void ExchangeModel::cancel() {
    cancel_ = true;
}

void ExchangeModel::tell(const QString& outcome) {
    outcome_ = outcome;
    problem_.clear();
    emit toldChanged();
}

void ExchangeModel::complain(const base::Error& error) {
    outcome_.clear();
    problem_ = error.key == "cancelled" ? tr("Stopped.") : text(error.sentence);
    emit toldChanged();
}

// The lesson
// -------------------------------------------------------------------------------------------------

std::optional<base::Id> ExchangeModel::lessonId() const {
    return base::Id::fromHex(lesson_.toStdString());
}

void ExchangeModel::readLessons() {
    lessonChoices_.clear();
    const auto lessons = library_->lessons();
    bool there = false;
    if (lessons.ok()) {
        for (const store::LessonRow& row : *lessons) {
            const QString id = text(row.id.hex());
            there = there || id == lesson_;
            if (lessonChoices_.size() < kMostChoices) {
                lessonChoices_.append(
                    choice(id, text(row.playerName) + QStringLiteral(", ") + dayText(row.day)));
            }
        }
    }
    if (!there) {
        lesson_ = lessonChoices_.isEmpty()
                      ? QString()
                      : lessonChoices_.first().toMap().value(QStringLiteral("value")).toString();
    }
    sharingAnswer_.clear();
    if (const auto id = lessonId()) {
        const auto entity = library_->entity(*id);
        if (entity.ok() && *entity && !(*entity)->path.empty() && audience_ != QLatin1String("own")) {
            LessonExchange exchange(*library_);
            const base::Id player = (*entity)->path.front();
            const auto may = exchange.mayShare(player);
            const auto face = exchange.mayShowFace(player);
            sharingAnswer_ = !may.ok()             ? text(may.error().sentence)
                             : face.ok() && !*face ? tr("May be shared; clips only with the head covered.")
                                                   : tr("May be shared.");
        }
    }
    emit lessonsChanged();
}

void ExchangeModel::setLesson(const QString& id) {
    lesson_ = id;
    strip_.clear();
    readLessons();
    readCovers();
}

QString ExchangeModel::lessonTitle() const {
    for (const QVariant& one : lessonChoices_) {
        if (one.toMap().value(QStringLiteral("value")).toString() == lesson_) {
            return one.toMap().value(QStringLiteral("text")).toString();
        }
    }
    return {};
}

LessonExchange::ExportOptions ExchangeModel::options() const {
    LessonExchange::ExportOptions options;
    options.audience =
        audience_ == QLatin1String("own") ? session::Audience::ownDevice : session::Audience::someoneElse;
    options.withFilms = withClips_;
    options.withHealth = withHealth_;
    options.coverHeads = coverHeads_;
    return options;
}

// Covered heads
// ----------------------------------------------------------------------------------------------

namespace {

std::vector<store::ClipRow> clipsOf(store::Library& library, const base::Id& lesson) {
    std::vector<store::ClipRow> all;
    if (const auto shots = library.shots(lesson); shots.ok()) {
        for (const store::ShotRow& shot : *shots) {
            if (const auto clips = library.clips(shot.id); clips.ok()) {
                std::copy_if(clips->begin(), clips->end(), std::back_inserter(all),
                             [](const store::ClipRow& clip) { return clip.filmHere; });
            }
        }
    }
    return all;
}

} // namespace

void ExchangeModel::readCovers() {
    using State = session::HeadCovering::State;
    cover_ = State::none;
    if (const auto id = lessonId()) {
        const auto clips = clipsOf(*library_, *id);
        session::HeadCovering covering(*library_, network_);
        State least = State::released;
        for (const store::ClipRow& clip : clips) {
            const auto state = covering.state(clip.id);
            least = std::min(least, state.ok() ? *state : State::none);
        }
        cover_ = clips.empty() ? State::none : least;
    }
    emit stripChanged();
}

QString ExchangeModel::coverState() const {
    using State = session::HeadCovering::State;
    return cover_ == State::released                    ? QStringLiteral("released")
           : cover_ == State::made && !strip_.isEmpty() ? QStringLiteral("made")
                                                        : QStringLiteral("none");
}

void ExchangeModel::makeCovers() {
    const auto id = lessonId();
    if (!id) {
        return;
    }
    strip_.clear();
    emit stripChanged();
    begin(tr("Covering the head in every frame"), [this, id](const base::Progress& progress) -> Told {
        QVariantList strip;
        int doubtful = 0;
        session::HeadCovering covering(*library_, network_);
        const auto clips = clipsOf(*library_, *id);
        for (std::size_t i = 0; i < clips.size(); ++i) {
            const base::Progress part{[&](double share, std::string_view stage) {
                                          progress.tell((static_cast<double>(i) + share) /
                                                            static_cast<double>(clips.size()),
                                                        stage);
                                      },
                                      progress.cancel};
            auto made = covering.make(clips[i].id, part);
            if (!made.ok() || !*made) {
                const base::Error error = made.ok() ? base::failure("cancelled", "Stopped.") : made.error();
                return [this, error] {
                    complain(error);
                    readCovers();
                };
            }
            doubtful += (*made)->doubtful;
            for (const auto& still : (*made)->stills) {
                const auto jpeg = video::encodeJpeg(still.picture);
                if (jpeg.ok()) {
                    strip.append(
                        QVariantMap{{QStringLiteral("source"),
                                     dataUrl("jpeg", QByteArray(reinterpret_cast<const char*>(jpeg->data()),
                                                                static_cast<qsizetype>(jpeg->size())))},
                                    {QStringLiteral("frame"), still.frame + 1},
                                    {QStringLiteral("doubtful"), still.doubtful}});
                }
            }
        }
        return [this, strip, doubtful] {
            strip_ = strip;
            readCovers();
            tell(tr(
                "Look at every picture: other people are not covered. The head was uncertain in %n frame(s).",
                "", doubtful));
        };
    });
}

void ExchangeModel::releaseCovers() {
    const auto id = lessonId();
    if (!id || strip_.isEmpty() || busy_) {
        return; // only what was looked at
    }
    session::HeadCovering covering(*library_, network_);
    for (const store::ClipRow& clip : clipsOf(*library_, *id)) {
        if (auto done = covering.release(clip.id); !done.ok()) {
            complain(done.error());
            readCovers();
            return;
        }
    }
    strip_.clear();
    coverHeads_ = true;
    emit travelChanged();
    readCovers();
    tell(tr("Released: these clips may travel with the head covered."));
}

// Files
// ------------------------------------------------------------------------------------------------------

QVariantList ExchangeModel::places() const {
    QVariantList list;
    for (const ports::Places::Place& place : placesPort_->filmPlaces()) {
        const QString path = text(place.folder.string());
        list.append(choice(path, place.kind == ports::Places::Kind::removable ? QFileInfo(path).fileName()
                                                                              : placeLabel(place.kind)));
    }
    return list;
}

void ExchangeModel::openFolder(const QString& path) {
    folder_ = QDir::cleanPath(path);
    readFolder();
}

void ExchangeModel::readFolder() {
    files_.clear();
    const QString ending = lessonEnding();
    for (const QFileInfo& info : QDir(folder_).entryInfoList({QStringLiteral("*") + ending},
                                                             QDir::Files | QDir::Readable, QDir::Time)) {
        files_.append(QVariantMap{
            {QStringLiteral("path"), info.filePath()},
            {QStringLiteral("name"), info.fileName()},
            {QStringLiteral("detail"),
             QLocale().toString(info.lastModified(), QLocale::ShortFormat) + QStringLiteral(" \u00b7 ") +
                 QLocale().formattedDataSize(info.size(), 1, QLocale::DataSizeSIFormat)}});
    }
    emit folderChanged();
}

void ExchangeModel::saveFile() {
    const auto id = lessonId();
    if (!id) {
        return;
    }
    // A name that tells nobody whose lesson it is.
    QString target;
    for (int i = 1; target.isEmpty() || QFileInfo::exists(target); ++i) {
        target = QDir(folder_).filePath(
            QStringLiteral("lesson-%1-%2%3")
                .arg(today(), lesson_.left(8), i == 1 ? QString() : QStringLiteral("-%1").arg(i)) +
            lessonEnding());
    }
    auto what = options();
    what.passphrase = passphrase_.toStdString();
    begin(tr("Writing the lesson file"), [this, id, what, target](const base::Progress& progress) -> Told {
        const auto written =
            LessonExchange(*library_).exportLesson(*id, target.toStdString(), what, progress);
        if (!written.ok()) {
            return [this, error = written.error()] { complain(error); };
        }
        return [this, target, bytes = written->bytes] {
            readFolder();
            tell(tr("Saved as %1 (%2).")
                     .arg(QFileInfo(target).fileName(),
                          QLocale().formattedDataSize(bytes, 1, QLocale::DataSizeSIFormat)));
        };
    });
}

void ExchangeModel::checkFile(const QString& path) {
    file_ = path;
    fileTold_.clear();
    canImport_ = false;
    emit fileChanged();
    begin(tr("Checking every byte"),
          [this, path, passphrase = passphrase_.toStdString()](const base::Progress& progress) -> Told {
              const auto summary = LessonExchange(*library_).verify(path.toStdString(), progress, passphrase);
              if (!summary.ok()) {
                  return [this, error = summary.error()] { complain(error); };
              }
              const auto sender = LessonExchange(*library_).senderOf(summary->signedBy);
              return [this, summary = *summary, sender] {
                  const auto films = std::count_if(summary.parts.begin(), summary.parts.end(),
                                                   [](const auto& part) { return part.role == "film"; });
                  fileTold_ =
                      (sender ? tr("Whole, from %1.").arg(text(*sender))
                       : summary.signedBy.empty()
                           ? tr("Whole, sender unknown (not signed).")
                           : tr("Whole, sender unknown (key %1).")
                                 .arg(text(lessonfile::keyForPeople(summary.signedBy)))) +
                      QStringLiteral("\n") +
                      tr("\u201c%1\u201d, %n record(s)", "", summary.records).arg(text(summary.title)) +
                      QStringLiteral(", ") + tr("%n clip(s)", "", static_cast<int>(films)) +
                      QStringLiteral(", ") +
                      QLocale().formattedDataSize(summary.bytes, 1, QLocale::DataSizeSIFormat);
                  canImport_ = true;
                  emit fileChanged();
              };
          });
}

void ExchangeModel::importFile() {
    if (!canImport_) {
        return;
    }
    begin(
        tr("Taking the lesson in"),
        [this, path = file_, passphrase = passphrase_.toStdString()](const base::Progress& progress) -> Told {
            const auto receipt = LessonExchange(*library_).import(path.toStdString(), progress, passphrase);
            if (!receipt.ok()) {
                return [this, error = receipt.error()] { complain(error); };
            }
            return [this, receipt = *receipt] {
                file_.clear();
                fileTold_.clear();
                canImport_ = false;
                emit fileChanged();
                refresh();
                tell(told(receipt));
                emit libraryChanged();
            };
        });
}

// A shared folder
// --------------------------------------------------------------------------------------------

QString ExchangeModel::sharedFolder() const {
    return settings_->sharedFolder();
}

void ExchangeModel::chooseSharedFolder(const QString& path) {
    settings_->setSharedFolder(path);
    sharedState_.clear();
    emit sharedChanged();
    if (path.isEmpty()) {
        syncTimer_.stop();
    } else {
        syncTimer_.start();
        syncNow();
    }
}

void ExchangeModel::syncNow() {
    if (sharedFolder().isEmpty()) {
        return;
    }
    begin(tr("Exchanging through the folder"),
          [this, folder = sharedFolder().toStdString(),
           passphrase = passphrase_.toStdString()](const base::Progress& progress) -> Told {
              session::FolderSync::Options what;
              what.folder = folder;
              what.passphrase = passphrase;
              const auto receipt = session::FolderSync(*library_).run(what, progress);
              if (!receipt.ok()) {
                  return [this, error = receipt.error()] {
                      sharedState_ = tr("It did not work; nothing is lost, and it is tried again.");
                      emit sharedChanged();
                      complain(error);
                  };
              }
              return [this, receipt = *receipt] {
                  if (receipt.away) {
                      sharedState_ =
                          tr("Waiting: the folder is not there now. What it misses is caught up with.");
                  } else {
                      const QString time = QLocale().toString(QTime::currentTime(), QLocale::ShortFormat);
                      sharedState_ = tr("Caught up at %1.").arg(time) + QStringLiteral(" ") +
                                     tr("%n file(s) taken in", "", receipt.filesTaken) +
                                     QStringLiteral(", ") + tr("%n sent.", "files", receipt.filesSent);
                      if (receipt.needsYou > 0) {
                          sharedState_ += QStringLiteral(" ") + tr("%n to settle.", "", receipt.needsYou);
                      }
                      for (const std::string& note : receipt.notes) {
                          sharedState_ += QStringLiteral("\n") + text(note);
                      }
                  }
                  emit sharedChanged();
                  if (receipt.recordsNew > 0) {
                      refresh();
                      emit libraryChanged();
                  }
              };
          });
}

// Side by side
// -----------------------------------------------------------------------------------------------

void ExchangeModel::showTicket(const QString& ticket) {
    if (ticket == ticket_) {
        return;
    }
    ticket_ = ticket;
    qrSource_.clear();
    if (const auto code = transfer::qrCode(ticket.toStdString()); !ticket.isEmpty() && code) {
        constexpr int quiet = 4;
        QImage image(code->width + 2 * quiet, code->width + 2 * quiet, QImage::Format_Grayscale8);
        image.fill(255);
        for (int y = 0; y < code->width; ++y) {
            for (int x = 0; x < code->width; ++x) {
                if (code->at(x, y)) {
                    image.scanLine(y + quiet)[x + quiet] = 0;
                }
            }
        }
        QByteArray png;
        QBuffer buffer(&png);
        image.save(&buffer, "PNG");
        qrSource_ = dataUrl("png", png);
    }
    emit ticketChanged();
}

void ExchangeModel::startSending() {
    const auto id = lessonId();
    if (!id) {
        return;
    }
    begin(tr("Sending"), [this, id, what = options()](const base::Progress& progress) -> Told {
        auto stage = library_->staging();
        if (!stage.ok()) {
            return [this, error = stage.error()] { complain(error); };
        }
        const fs::path file = stage->path() / "lesson";
        const auto written = LessonExchange(*library_).exportLesson(*id, file, what, progress);
        if (!written.ok()) {
            return [this, error = written.error()] { complain(error); };
        }
        transfer::SendOptions send;
        send.ready = [this](const transfer::Ticket& ticket) {
            QMetaObject::invokeMethod(
                this, [this, text = text(ticket.text())] { showTicket(text); }, Qt::QueuedConnection);
        };
        const auto receipt = transfer::sendFile(file, send, progress);
        if (!receipt.ok()) {
            return [this, error = receipt.error()] { complain(error); };
        }
        return [this] { tell(tr("Sent, and the other device has all of it.")); };
    });
}

void ExchangeModel::receive(const QString& typed) {
    const auto ticket = transfer::Ticket::fromText(typed.trimmed().toStdString());
    if (!ticket) {
        complain(
            base::inputError("transfer.ticket", tr("This is no ticket of a sending; copy all of it, from "
                                                   "plumbmark: to its end.")
                                                    .toStdString()));
        return;
    }
    begin(tr("Receiving"), [this, ticket](const base::Progress& progress) -> Told {
        transfer::ReceiveOptions options;
        options.folder = library_->folder() / "receiving";
        if (auto made = base::makeFolders(options.folder); !made.ok()) {
            return [this, error = made.error()] { complain(error); };
        }
        const auto received = transfer::receiveFile(*ticket, options, progress);
        if (!received.ok()) {
            return [this, error = received.error()] { complain(error); };
        }
        const auto receipt = LessonExchange(*library_).import(received->file, progress);
        std::error_code ignored;
        fs::remove(received->file, ignored);
        if (!receipt.ok()) {
            return [this, error = receipt.error()] { complain(error); };
        }
        return [this, receipt = *receipt] {
            refresh();
            tell(told(receipt));
            emit libraryChanged();
        };
    });
}

// Backups
// ----------------------------------------------------------------------------------------------------

void ExchangeModel::readBackups() {
    backups_.clear();
    for (const store::Backup& backup : store::listBackups(library_->folder())) {
        backups_.append(QVariantMap{{QStringLiteral("name"), text(backup.name)},
                                    {QStringLiteral("day"), dayText(backup.day)},
                                    {QStringLiteral("why"), whyOf(backup.kind)}});
    }
    emit backupsChanged();
}

QString ExchangeModel::pendingRestore() const {
    const auto noted = store::notedRestore(library_->folder());
    return noted ? text(noted->filename().string()) : QString();
}

void ExchangeModel::backupNow() {
    begin(tr("Making a backup and opening it to check"), [this](const base::Progress& progress) -> Told {
        const auto backup = library_->backup(store::BackupKind::byHand, progress);
        const auto state = backup.ok() ? store::checkBackup(backup->folder, false, progress)
                                       : base::Result<store::BackupState>(backup.error());
        if (!state.ok()) {
            return [this, error = state.error()] { complain(error); };
        }
        return [this, state = *state] {
            readBackups();
            tell(tr("Backup made and checked: %n lesson(s)", "", state.lessons) + QStringLiteral(", ") +
                 tr("%n clip(s).", "", state.films));
        };
    });
}

void ExchangeModel::planRestore(const QString& name) {
    for (const store::Backup& backup : store::listBackups(library_->folder())) {
        if (text(backup.name) != name) {
            continue;
        }
        begin(tr("Checking the backup"), [this, backup](const base::Progress& progress) -> Told {
            const auto state = store::noteRestore(library_->folder(), backup, progress);
            if (!state.ok()) {
                return [this, error = state.error()] { complain(error); };
            }
            return [this, state = *state, day = dayText(backup.day)] {
                readBackups();
                tell(tr("The backup of %1 is whole: %n lesson(s).", "", state.lessons).arg(day) +
                     QStringLiteral(" ") +
                     tr("Close the app and open it again: then it is put in place, and what is here now is "
                        "kept "
                        "among the backups."));
            };
        });
        return;
    }
}

void ExchangeModel::forgetRestore() {
    store::forgetRestore(library_->folder());
    readBackups();
    tell(tr("The library stays as it is."));
}

// Consent
// ----------------------------------------------------------------------------------------------------

QVariantList ExchangeModel::scopeChoices() const {
    return {choice(QStringLiteral("film"), tr("being filmed")),
            choice(QStringLiteral("analyse"), tr("being measured")),
            choice(QStringLiteral("keep"), tr("being kept here")),
            choice(QStringLiteral("share"), tr("lessons going to others")),
            choice(QStringLiteral("teach"), tr("being shown to other students")),
            choice(QStringLiteral("face"), tr("the face being seen (asked of minors)"))};
}

void ExchangeModel::readPlayers() {
    playerChoices_.clear();
    const auto players = library_->players();
    bool there = false;
    if (players.ok()) {
        for (const store::PlayerRow& row : *players) {
            there = there || text(row.id.hex()) == player_;
            if (playerChoices_.size() < kMostChoices) {
                playerChoices_.append(choice(text(row.id.hex()), text(row.name)));
            }
        }
    }
    if (!there) {
        player_ = playerChoices_.isEmpty()
                      ? QString()
                      : playerChoices_.first().toMap().value(QStringLiteral("value")).toString();
    }
    readConsent();
}

void ExchangeModel::setPlayer(const QString& id) {
    player_ = id;
    readConsent();
}

void ExchangeModel::readConsent() {
    standing_ = tr("No consent on record: nothing of this player goes to others.");
    scopes_.clear();
    guardian_.clear();
    minor_ = false;
    until_ = text(base::isoDate(base::systemClock().now() + 365LL * 24 * 3600 * 1000));
    if (const auto id = base::Id::fromHex(player_.toStdString())) {
        LessonExchange exchange(*library_);
        const auto facts = exchange.consents(*id);
        if (facts.ok() && !facts->empty()) {
            const records::Consent consent = records::consentOf(facts->back().body);
            minor_ = consent.minor;
            guardian_ = text(consent.guardian);
            for (const std::string& scope : consent.scopes) {
                scopes_ << text(scope);
            }
            standing_ =
                consent.withdrawn
                    ? tr("Withdrawn on %1.").arg(dayText(consent.day))
                    : tr("Given on %1, holds until %2.").arg(dayText(consent.day), dayText(consent.until));
            if (!consent.withdrawn) {
                until_ = text(consent.until);
            }
            const auto may = exchange.mayShare(*id);
            standing_ +=
                QStringLiteral(" ") + (may.ok() ? tr("Lessons may be shared.") : text(may.error().sentence));
        }
    }
    overdue_.clear();
    if (const auto overdue = session::Retention(*library_).overdue(); overdue.ok()) {
        for (const session::Overdue& one : *overdue) {
            overdue_.append(QVariantMap{
                {QStringLiteral("id"), text(one.clip.hex())},
                {QStringLiteral("text"), (one.minor ? tr("%1 (minor), lesson of %2") : tr("%1, lesson of %2"))
                                             .arg(text(one.playerName), dayText(one.day))}});
        }
    }
    emit consentChanged();
}

void ExchangeModel::eraseOverdue(const QString& clip) {
    // Only what the review proposes can be erased here.
    for (const QVariant& one : overdue_) {
        const auto id = base::Id::fromHex(clip.toStdString());
        if (id && one.toMap().value(QStringLiteral("id")).toString() == clip) {
            if (auto erased = library_->erase(*id); !erased.ok()) {
                complain(erased.error());
            } else {
                tell(tr("Erased with marks and numbers, here and at the next exchange elsewhere."));
            }
            refresh();
            emit libraryChanged();
            return;
        }
    }
}

void ExchangeModel::setMinor(bool minor) {
    minor_ = minor;
    emit consentChanged();
}

void ExchangeModel::toggleScope(const QString& scope) {
    if (!scopes_.removeOne(scope)) {
        scopes_ << scope;
    }
    emit consentChanged();
}

void ExchangeModel::noteConsent() {
    noteThis(false);
}

void ExchangeModel::withdrawConsent() {
    noteThis(true);
}

void ExchangeModel::noteThis(bool withdrawn) {
    const auto id = base::Id::fromHex(player_.toStdString());
    if (!id) {
        return;
    }
    records::Consent consent;
    for (const QString& scope : scopes_) {
        consent.scopes.insert(scope.toStdString());
    }
    consent.day = today().toStdString();
    consent.until = withdrawn ? consent.day : until_.trimmed().toStdString();
    consent.minor = minor_;
    consent.guardian = minor_ ? guardian_.trimmed().toStdString() : std::string();
    consent.withdrawn = withdrawn;
    if (auto noted = LessonExchange(*library_).noteConsent(*id, consent); !noted.ok()) {
        complain(noted.error());
        return;
    }
    tell(withdrawn ? tr("Noted: nothing of this player goes to others from now on.") : tr("Noted."));
    readConsent();
    readLessons();
    readDisagreements();
}

// Two versions
// -----------------------------------------------------------------------------------------------

void ExchangeModel::readDisagreements() {
    disagreements_.clear();
    const auto all = session::Disagreements(*library_).all();
    if (all.ok()) {
        for (const session::Disagreement& one : *all) {
            QVariantList versions;
            for (const auto& version : one.versions) {
                const QString day = dayText(base::isoDate(version.made));
                versions.append(QVariantMap{
                    {QStringLiteral("id"), text(version.fact.hex())},
                    {QStringLiteral("text"), text(version.text)},
                    {QStringLiteral("when"), version.here ? tr("on this device, %1").arg(day)
                                                          : tr("on another device, %1").arg(day)}});
            }
            const QString what = one.kind == "consent" ? tr("consent") : text(one.what);
            disagreements_.append(QVariantMap{
                {QStringLiteral("where"),
                 text(one.playerName) +
                     (one.lessonTitle.empty() ? QString() : QStringLiteral(", ") + text(one.lessonTitle))},
                {QStringLiteral("what"), what},
                {QStringLiteral("versions"), versions}});
        }
    }
    emit disagreementsChanged();
}

void ExchangeModel::settle(const QString& version) {
    const auto id = base::Id::fromHex(version.toStdString());
    if (!id) {
        return;
    }
    if (auto done = session::Disagreements(*library_).settle(*id); !done.ok()) {
        complain(done.error());
    } else {
        tell(tr("Settled; the other versions stay in the history."));
    }
    readDisagreements();
    emit libraryChanged();
}

} // namespace plumbmark::bridge
