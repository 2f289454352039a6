// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/bring_in_model.h"

#include <QDate>
#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QPointer>
#include <QUrl>
#include <algorithm>

#include "bridge/in_language.h"
#include "bridge/phrases.h"
#include "session/body_book.h"
#include "session/lesson_today.h"
#include "video/clip.h"

namespace plumbmark::bridge {

namespace fs = std::filesystem;

namespace {

QVariantMap choice(std::string_view value, const QString& text) {
    return {{QStringLiteral("value"), QString::fromUtf8(value.data(), static_cast<qsizetype>(value.size()))},
            {QStringLiteral("text"), text}};
}

QVariantMap choice(const QString& value, const QString& text) {
    return {{QStringLiteral("value"), value}, {QStringLiteral("text"), text}};
}

const QStringList kFilmEndings{"*.mp4", "*.mov", "*.m4v", "*.mkv", "*.avi", "*.webm", "*.3gp", "*.mts"};

/// Stages come from the core as short English words; unknown ones are shown as they are.
QString stageText(std::string_view stage) {
    return QString::fromUtf8(stage.data(), static_cast<qsizetype>(stage.size()));
}

std::string plain(const QString& text) {
    return text.toStdString();
}

} // namespace

BringInModel::BringInModel(store::Library& library, session::LessonBook& book, analysis::NetworkBytes network,
                           const ports::Places& places, SettingsModel& settings, DemoFilm demo,
                           QObject* parent)
    : QObject(parent), library_(&library), book_(&book), network_(std::move(network)), placesPort_(&places),
      settings_(&settings), demo_(std::move(demo)) {
    player_ = settings.lastAnswer("player", QString());
    view_ = settings.lastAnswer("view", "face-on");
    hand_ = settings.lastAnswer("hand", "right");
    shot_ = settings.lastAnswer("shot", "full");
    club_ = settings.lastAnswer("club", "iron");
    clubNumber_ = settings.lastAnswer("clubNumber", "7");
    captureRate_ = "told";
    mirrored_ = "no";
    if (const auto list = places.filmPlaces(); !list.empty()) {
        folder_ = QString::fromStdString(list.front().folder.string());
        readFolder();
    }
}

BringInModel::~BringInModel() {
    cancel_ = true;
    if (worker_.joinable()) {
        worker_.join();
    }
    if (looker_.joinable()) {
        looker_.join();
    }
}

/// Looks at the film on a thread; a film chosen meanwhile has its turn afterwards.
void BringInModel::lookAtFilm() {
    filmSays_.clear();
    rateUnknown_ = false;
    emit filmSaysChanged();
    if (file_.isEmpty() || looking_) {
        return;
    }
    if (looker_.joinable()) {
        looker_.join();
    }
    looking_ = true;
    looker_ = std::thread([this, file = file_] {
        auto clip = std::make_shared<base::Result<std::unique_ptr<video::Clip>>>(
            video::Clip::open(fs::path(plain(file))));
        QMetaObject::invokeMethod(this, [this, file, clip] {
            looking_ = false;
            if (file_ != file) {
                lookAtFilm();
                return;
            }
            if (!clip->ok()) {
                setProblem(inLanguage(QString::fromStdString(clip->error().sentence)));
                return;
            }
            const video::ClipInfo& info = (**clip)->info();
            filmSays_ << tr("%1 \u00d7 %2 pixels, %3 s, %4 frames a second as it plays.")
                             .arg(QLocale().toString(info.width), QLocale().toString(info.height),
                                  decimal(info.duration.value(), 1), decimal(info.playbackFps, 0));
            rateUnknown_ = !info.captureFps.has_value();
            if (rateUnknown_) {
                filmSays_ << tr(
                    "The film does not tell at which rate it was filmed. Say it below: without it "
                    "positions and angles are told, but no times and no tempo.");
            } else if (*info.captureFps > info.playbackFps * 1.5) {
                filmSays_
                    << tr("Slow motion: filmed at %1 frames a second.").arg(decimal(*info.captureFps, 0));
            }
            const double rate = info.captureFps.value_or(0);
            if (rate > 0 && rate < 55) {
                filmSays_ << tr(
                    "At this rate the club turns some 80 degrees from frame to frame at the ball: "
                    "positions are told, tempo is not judged.");
            }
            if (std::min(info.width, info.height) < 700) {
                filmSays_ << tr("A small picture: numbers come with wider uncertainty.");
            }
            if (!info.hasSound) {
                filmSays_ << tr("No sound: the hit is found in the picture alone.");
            }
            for (const std::string& warning : info.warnings) {
                filmSays_ << inLanguage(QString::fromStdString(warning));
            }
            if (info.mirrored && mirrored_ == u"no") {
                mirrored_ = QStringLiteral("yes");
                emit answersChanged();
            }
            emit filmSaysChanged();
        });
    });
}

void BringInModel::setPlayer(const QString& player) {
    if (player_ == player) {
        return;
    }
    player_ = player;
    remembered_ = false;
    const std::string name = plain(player.simplified());
    if (const auto known = book_->players(name); !name.empty() && known.ok()) {
        const auto it =
            std::find_if(known->begin(), known->end(), [&](const auto& row) { return row.name == name; });
        if (it != known->end()) {
            recall(*it);
        }
    }
    lookAtBody();
}

void BringInModel::lookAtBody() {
    askBody_.clear();
    const std::string name = plain(player_.simplified());
    if (const auto known = book_->players(name); !name.empty() && known.ok()) {
        for (const store::PlayerRow& row : *known) {
            if (row.name == name) {
                const auto card = session::BodyBook(*library_).card(row.id);
                if (card.ok() && card->day.empty()) {
                    askBody_ = QString::fromStdString(row.id.hex());
                }
            }
        }
    }
    emit answersChanged();
}

/// The player's own hand and height, and how the last swing was filmed.
void BringInModel::recall(const store::PlayerRow& player) {
    const auto word = [](std::string_view text) {
        return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
    };
    if (player.hand) {
        hand_ = word(marks::handName(*player.hand));
    }
    stature_ = player.statureMetres
                   ? QLocale().toString(*player.statureMetres * 100, 'f', QLocale::FloatingPointShortest)
                   : QString();
    const auto last = session::lastSwingOf(*library_, player.id);
    if (!last.ok() || !*last) {
        return;
    }
    const marks::ShotContext& context = **last;
    view_ = word(marks::viewName(context.view));
    hand_ = word(marks::handName(context.hand));
    shot_ = word(marks::shotKindName(context.shot));
    mirrored_ = context.mirrored ? QStringLiteral("yes") : QStringLiteral("no");
    if (context.club) {
        const QStringList club =
            QString::fromStdString(marks::clubName(*context.club)).split(QLatin1Char('-'));
        club_ = club.value(0);
        clubNumber_ = club.value(1);
    }
    remembered_ = true;
}

QVariantList BringInModel::places() const {
    QVariantList list;
    for (const ports::Places::Place& place : placesPort_->filmPlaces()) {
        const QString path = QString::fromStdString(place.folder.string());
        const bool card = place.kind == ports::Places::Kind::removable;
        list.append(QVariantMap{
            {QStringLiteral("path"), path},
            {QStringLiteral("name"), card ? QFileInfo(path).fileName() : placeLabel(place.kind)}});
    }
    return list;
}

QString BringInModel::folderName() const {
    const QString name = QDir(folder_).dirName();
    return name.isEmpty() ? QDir::toNativeSeparators(folder_) : name;
}

bool BringInModel::canGoUp() const {
    return !QDir(folder_).isRoot();
}

void BringInModel::openFolder(const QString& path) {
    folder_ = QDir::cleanPath(path);
    readFolder();
}

void BringInModel::goUp() {
    QDir dir(folder_);
    if (dir.cdUp()) {
        openFolder(dir.path());
    }
}

void BringInModel::readFolder() {
    entries_.clear();
    const QDir dir(folder_);
    for (const QFileInfo& info : dir.entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot | QDir::Readable,
                                                   QDir::Name | QDir::IgnoreCase)) {
        entries_.append(QVariantMap{{QStringLiteral("name"), info.fileName()},
                                    {QStringLiteral("path"), info.filePath()},
                                    {QStringLiteral("isFolder"), true},
                                    {QStringLiteral("detail"), QString()}});
    }
    for (const QFileInfo& info : dir.entryInfoList(kFilmEndings, QDir::Files | QDir::Readable, QDir::Time)) {
        entries_.append(QVariantMap{
            {QStringLiteral("name"), info.fileName()},
            {QStringLiteral("path"), info.filePath()},
            {QStringLiteral("isFolder"), false},
            {QStringLiteral("detail"),
             QLocale().toString(info.lastModified(), QLocale::ShortFormat) + QStringLiteral(" \u00b7 ") +
                 QLocale().formattedDataSize(info.size(), 1, QLocale::DataSizeSIFormat)}});
    }
    emit folderChanged();
}

QString BringInModel::fileName() const {
    return QFileInfo(file_).fileName();
}

void BringInModel::chooseFile(const QString& path) {
    file_ = path;
    setProblem({});
    emit fileChanged();
    lookAtFilm();
}

void BringInModel::chooseDropped(const QUrl& url) {
    if (url.isLocalFile()) {
        chooseFile(url.toLocalFile());
    } else {
        setProblem(tr("Only files on this device can be brought in; save the clip here first."));
    }
}

void BringInModel::forgetFile() {
    file_.clear();
    setProblem({});
    emit fileChanged();
}

void BringInModel::takePlayer(const store::PlayerRow& player) {
    player_ = QString::fromStdString(player.name);
    remembered_ = false;
    recall(player);
    lookAtBody();
}

void BringInModel::setClub(const QString& club) {
    club_ = club;
    // A number that the new kind does not have is forgotten.
    bool known = false;
    for (const QVariant& entry : clubNumberChoices()) {
        known = known || entry.toMap().value(QStringLiteral("value")) == clubNumber_;
    }
    if (!known) {
        clubNumber_.clear();
    }
    emit answersChanged();
}

QVariantList BringInModel::viewChoices() const {
    return {choice(marks::viewName(marks::View::faceOn), viewLabel(marks::View::faceOn)),
            choice(marks::viewName(marks::View::downTheLine), viewLabel(marks::View::downTheLine))};
}

QVariantList BringInModel::handChoices() const {
    return {choice(marks::handName(marks::Hand::right), tr("Right")),
            choice(marks::handName(marks::Hand::left), tr("Left"))};
}

QVariantList BringInModel::shotChoices() const {
    QVariantList list;
    for (const auto kind :
         {marks::ShotKind::full, marks::ShotKind::half, marks::ShotKind::pitch, marks::ShotKind::chip,
          marks::ShotKind::bunker, marks::ShotKind::putt, marks::ShotKind::practice}) {
        list.append(choice(marks::shotKindName(kind), shotLabel(kind)));
    }
    return list;
}

QVariantList BringInModel::clubChoices() const {
    QVariantList list;
    for (const auto kind : {marks::ClubKind::driver, marks::ClubKind::wood, marks::ClubKind::hybrid,
                            marks::ClubKind::iron, marks::ClubKind::wedge, marks::ClubKind::putter}) {
        list.append(choice(marks::clubName({kind, std::nullopt}), clubKindLabel(kind)));
    }
    return list;
}

QVariantList BringInModel::clubNumberChoices() const {
    QVariantList list;
    const auto add = [&list](std::initializer_list<int> numbers, const QString& behind) {
        for (const int number : numbers) {
            list.append(choice(QString::number(number), QLocale().toString(number) + behind));
        }
    };
    if (club_ == u"wood") {
        add({3, 5, 7}, {});
    } else if (club_ == u"hybrid") {
        add({2, 3, 4, 5}, {});
    } else if (club_ == u"iron") {
        add({3, 4, 5, 6, 7, 8, 9}, {});
    } else if (club_ == u"wedge") {
        add({46, 50, 52, 54, 56, 58, 60}, QStringLiteral("\u00b0"));
    }
    return list;
}

QVariantList BringInModel::captureRateChoices() const {
    return {choice(QStringLiteral("told"), tr("as the clip says")),
            choice(QStringLiteral("60"), QLocale().toString(60)),
            choice(QStringLiteral("120"), QLocale().toString(120)),
            choice(QStringLiteral("240"), QLocale().toString(240))};
}

QVariantList BringInModel::mirroredChoices() const {
    return {choice(QStringLiteral("no"), tr("No")), choice(QStringLiteral("yes"), tr("Yes, front camera"))};
}

void BringInModel::start() {
    if (busy_) {
        return;
    }
    const QString name = player_.simplified();
    if (name.isEmpty()) {
        setProblem(tr("Whose swing is it? Type the player's name."));
        return;
    }
    Job job;
    job.file = fs::path(plain(file_));
    job.player = plain(name);
    marks::ShotContext& context = job.request.context;
    context.view = marks::viewFromName(plain(view_)).value_or(marks::View::faceOn);
    context.hand = marks::handFromName(plain(hand_)).value_or(marks::Hand::right);
    context.shot = marks::shotKindFromName(plain(shot_)).value_or(marks::ShotKind::full);
    context.club =
        marks::clubFromName(plain(clubNumber_.isEmpty() ? club_ : club_ + QLatin1Char('-') + clubNumber_));
    context.mirrored = mirrored_ == u"yes";
    if (const QString text = stature_.trimmed(); !text.isEmpty()) {
        bool ok = false;
        const double centimetres = QLocale().toDouble(text, &ok);
        if (!ok || centimetres < 50 || centimetres > 250) {
            setProblem(tr("The height must be a number of centimetres from 50 to 250, such as 178; or leave "
                          "it empty."));
            return;
        }
        context.statureMetres = centimetres / 100;
    }
    if (captureRate_ != u"told") {
        job.request.captureFps = captureRate_.toDouble();
    }
    settings_->remember("player", name);
    settings_->remember("view", view_);
    settings_->remember("hand", hand_);
    settings_->remember("shot", shot_);
    settings_->remember("club", club_);
    settings_->remember("clubNumber", clubNumber_);
    begin(std::move(job));
}

void BringInModel::startDemo() {
    if (busy_ || !demo_) {
        return;
    }
    Job job;
    job.player = plain(tr("Demo player"));
    job.request.context.club = marks::Club{marks::ClubKind::iron, 7};
    begin(std::move(job));
}

void BringInModel::begin(Job job) {
    if (worker_.joinable()) {
        worker_.join();
    }
    cancel_ = false;
    busy_ = true;
    share_ = 0;
    doing_ = tr("Starting");
    setProblem({});
    emit busyChanged();
    emit progressChanged();
    worker_ = std::thread([this, job = std::move(job)] {
        auto done = std::make_shared<Done>(work(job));
        QMetaObject::invokeMethod(this, [this, done, player = QString::fromStdString(job.player)] {
            finish(std::move(*done), player);
        });
    });
}

void BringInModel::cancel() {
    cancel_ = true;
    doing_ = tr("Stopping");
    emit progressChanged();
}

void BringInModel::report(double share, std::string_view stage) {
    QMetaObject::invokeMethod(this, [this, share, text = stageText(stage)] {
        if (!cancel_) {
            share_ = share;
            doing_ = text;
            emit progressChanged();
        }
    });
}

BringInModel::Done BringInModel::work(const Job& job) {
    Done done;
    base::Progress progress;
    progress.cancel = &cancel_;

    fs::path file;
    std::optional<base::StagingFolder> demoFolder; // goes with everything in it when the work is done
    const double demoShare = job.file ? 0.0 : 0.5;
    if (job.file) {
        file = *job.file;
    } else {
        auto staging = library_->staging();
        if (!staging.ok()) {
            done.problem = inLanguage(staging.error().sentence);
            return done;
        }
        demoFolder.emplace(std::move(*staging));
        progress.report = [this, demoShare](double share, std::string_view) {
            report(share * demoShare, plain(tr("Drawing a demo swing")));
        };
        auto made = demo_(demoFolder->path(), progress);
        if (!made.ok() || !*made) {
            done.problem = made.ok() ? QString() : inLanguage(made.error().sentence);
            return done;
        }
        file = **made;
    }

    // What is made on the way is taken back when the clip does not come in.
    const std::string today = plain(QDate::currentDate().toString(Qt::ISODate));
    auto shot = session::addShotToday(*book_, job.player, today, plain(tr("Lesson")), job.request.context);
    if (!shot.ok()) {
        done.problem = inLanguage(shot.error().sentence);
        return done;
    }
    const auto takeBack = [&](const QString& problem) {
        done.problem = problem;
        if (shot->made) {
            if (auto erased = book_->erase(*shot->made); !erased.ok() && done.problem.isEmpty()) {
                done.problem = inLanguage(erased.error().sentence);
            }
        }
        return done;
    };

    progress.report = [this, demoShare](double share, std::string_view stage) {
        report(demoShare + share * (1 - demoShare), stage);
    };
    session::ClipIntake intake(*library_, network_);
    auto receipt = intake.bringIn(shot->shot, file, job.request, progress);
    if (!receipt.ok()) {
        return takeBack(inLanguage(receipt.error().sentence));
    }
    if (!*receipt) {
        return takeBack({}); // cancelled
    }
    done.clip = (*receipt)->clip;
    done.analysed = std::move((*receipt)->analysed);
    return done;
}

void BringInModel::finish(Done done, const QString& player) {
    worker_.join();
    busy_ = false;
    emit busyChanged();
    if (done.clip) {
        analysed_ = std::move(done.analysed);
        file_.clear();
        emit fileChanged();
        emit broughtIn(QString::fromStdString(done.clip->hex()), player);
    } else {
        setProblem(done.problem);
        emit stopped();
    }
}

void BringInModel::setProblem(const QString& sentence) {
    problem_ = sentence;
    emit problemChanged();
}

} // namespace plumbmark::bridge
