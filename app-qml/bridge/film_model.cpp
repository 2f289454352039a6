// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/film_model.h"

#include "bridge/in_language.h"

#include <QDate>
#include <QLocale>
#include <QPointer>
#include <algorithm>
#include <cmath>
#include <system_error>

#include "base/files.h"
#include "body/observer.h"
#include "session/clip_intake.h"
#include "session/framing.h"
#include "session/lesson_today.h"
#include "video/clip.h"
#include "video/live.h"

namespace plumbmark::bridge {
namespace fs = std::filesystem;
namespace {

constexpr int kPreviewWidth = 640;

/// A frame as a small picture: every n-th pixel is enough to look through.
QImage preview(const video::Frame& frame, int width) {
    const int step = std::max(1, frame.width() / width);
    const int w = frame.width() / step, h = frame.height() / step;
    video::RgbImage full;
    QImage image(w, h, QImage::Format_RGB888);
    // The colour of a thinned picture: planes are thinned first, then turned into RGB once.
    struct Thin {
        std::vector<std::uint8_t> luma, cb, cr;
    };
    const auto thin = std::make_shared<Thin>();
    const int cw = (w + 1) / 2, ch = (h + 1) / 2;
    thin->luma.resize(static_cast<std::size_t>(w) * static_cast<std::size_t>(h));
    thin->cb.resize(static_cast<std::size_t>(cw) * static_cast<std::size_t>(ch));
    thin->cr.resize(thin->cb.size());
    const auto luma = frame.luma(), cb = frame.cb(), cr = frame.cr();
    for (int y = 0; y < h; ++y) {
        for (int x = 0; x < w; ++x) {
            thin->luma[static_cast<std::size_t>(y * w + x)] = luma.data[y * step * luma.stride + x * step];
        }
    }
    for (int y = 0; y < ch; ++y) {
        for (int x = 0; x < cw; ++x) {
            const auto at = static_cast<std::size_t>(y * cw + x);
            const int sx = std::min(x * step, cb.width - 1), sy = std::min(y * step, cb.height - 1);
            thin->cb[at] = cb.data[sy * cb.stride + sx];
            thin->cr[at] = cr.data[sy * cr.stride + sx];
        }
    }
    const video::Frame small(0, frame.time(), {thin->luma.data(), w, h, w}, {thin->cb.data(), cw, ch, cw},
                             {thin->cr.data(), cw, ch, cw}, frame.colour(), thin);
    full = small.rgb();
    for (int y = 0; y < h; ++y) {
        std::copy_n(full.pixels.data() + static_cast<std::ptrdiff_t>(3) * w * y, 3 * w, image.scanLine(y));
    }
    return image;
}

std::string today() {
    return QDate::currentDate().toString(Qt::ISODate).toStdString();
}

QString text(std::string_view words) {
    return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

} // namespace

template <class Work> void FilmModel::inWindow(Work work) {
    QMetaObject::invokeMethod(this, std::move(work), Qt::QueuedConnection);
}

FilmModel::FilmModel(store::Library& library, session::LessonBook& book, analysis::NetworkBytes network,
                     ports::Camera& camera, BringInModel& answers, QObject* parent)
    : QObject(parent), library_(&library), book_(&book), network_(std::move(network)), camera_(&camera),
      answers_(&answers), folder_(library.folder() / "takes") {
    intake_ = std::thread([this] { takeIn(); });
    looker_ = std::thread([this] { look(); });
}

FilmModel::~FilmModel() {
    camera_->stop();
    {
        const std::lock_guard lock(work_);
        end_ = true;
    }
    cancel_ = true;
    wake_.notify_all();
    intake_.join();
    looker_.join();
}

marks::ShotContext FilmModel::context() const {
    const auto answer = [this](const char* question) {
        return answers_->property(question).toString().toStdString();
    };
    marks::ShotContext context;
    context.view = marks::viewFromName(answer("view")).value_or(marks::View::faceOn);
    context.hand = marks::handFromName(answer("hand")).value_or(marks::Hand::right);
    context.shot = marks::shotKindFromName(answer("shot")).value_or(marks::ShotKind::full);
    const std::string number = answer("clubNumber");
    context.club = marks::clubFromName(number.empty() ? answer("club") : answer("club") + "-" + number);
    return context;
}

void FilmModel::changePlayer() {
    if (live_ && !practising_) {
        player_ = answers_->property("player").toString().simplified().toStdString();
        context_.hand = context().hand; // the view stays: the camera stands where it stood
        emit stateChanged();
    }
}

void FilmModel::startFilming() {
    start(false);
}

void FilmModel::startPractising() {
    start(true);
}

void FilmModel::start(bool practise) {
    stop();
    problem_.clear();
    player_ = answers_->property("player").toString().simplified().toStdString();
    if (player_.empty()) {
        fail(tr("Whose swing is it? Type the player's name."));
        return;
    }
    context_ = context();
    if (practise) {
        context_.shot = marks::ShotKind::full;
    }
    if (auto made = base::makeFolders(folder_); !made.ok()) {
        fail(inLanguage(made.error().sentence));
        return;
    }
    // Takes of a run that ended before it could: they belong to this player's day as far as anybody can tell.
    if (auto found = video::recoverTakes(folder_); found.ok()) {
        for (const auto& file : *found) {
            addTake(file, std::nullopt, tr("Kept from an interrupted recording"));
        }
    }
    const auto devices = camera_->devices();
    if (!devices.ok()) {
        fail(inLanguage(devices.error().sentence));
        return;
    }
    const auto format = ports::fastestUseful(devices->front().formats);
    ports::Camera::Sink sink;
    sink.frame = [this](const video::Frame& frame) { fromCamera(frame); };
    sink.sound = [this](std::span<const float> mono, base::Seconds time) {
        const std::lock_guard lock(feeding_);
        if (practice_) {
            static_cast<void>(practice_->sound(mono, time));
        } else if (recorder_) {
            static_cast<void>(recorder_->sound(mono, time));
        }
    };
    sink.problem = [this](const base::Error& error) {
        const QString sentence = inLanguage(error.sentence);
        inWindow([this, sentence] {
            stop();
            fail(sentence);
        });
    };
    sink.ended = [this] { inWindow([this] { stop(); }); };
    askedFps_ = format ? format->fps : 30.0;
    watch_ = armed_;
    shown_.reset();
    looked_.reset();
    told_.reset();
    // The feed waits until the recorder knows the microphone's rate.
    std::unique_lock lock(feeding_);
    auto running = camera_->start(devices->front().id, format, std::move(sink));
    if (!running.ok()) {
        lock.unlock();
        fail(inLanguage(running.error().sentence));
        return;
    }
    soundRate_ = running->soundRate;
    cameraName_ = QString::fromStdString(running->deviceName);
    if (running->asked.height > 0) {
        aspect_ = static_cast<double>(running->asked.width) / running->asked.height;
    }
    if (practise) {
        session::PracticeOptions options;
        options.context = context_;
        options.folder = folder_;
        options.soundRate = soundRate_;
        options.askedFps = askedFps_;
        auto made = session::PracticeSession::create(options, network_);
        if (!made.ok()) {
            lock.unlock();
            camera_->stop();
            fail(inLanguage(made.error().sentence));
            return;
        }
        practice_ = std::move(*made);
        checkpoint_ = inLanguage(practice_->checkpointLabel());
    } else {
        capture::RecorderOptions options;
        options.folder = folder_;
        options.stem =
            "swing-" +
            QDateTime::currentDateTimeUtc().toString(QStringLiteral("yyyyMMdd-HHmmss")).toStdString();
        options.soundRate = soundRate_;
        options.askedFps = askedFps_;
        recorder_ = std::make_unique<capture::ArmedRecorder>(options);
    }
    live_ = true;
    practising_ = practise;
    verdict_.clear();
    why_.clear();
    counts_.clear();
    enough_ = false;
    emit stateChanged();
    emit ratesChanged();
    emit practiceChanged();
}

void FilmModel::stop() {
    camera_->stop();
    std::unique_lock lock(feeding_);
    auto recorder = std::move(recorder_);
    auto practice = std::move(practice_);
    lock.unlock();
    if (recorder) {
        if (auto closed = recorder->close(); !closed.ok()) {
            problem_ = inLanguage(closed.error().sentence);
        }
        for (const auto& take : recorder->takes()) {
            addTake(take.file, take.hit - take.begin, {});
        }
    }
    if (practice) {
        static_cast<void>(practice->finish());
        auto news = practice->news();
        const auto summary = practice->summary();
        showNews(std::move(news), summary);
        if (const auto players = book_->players(player_);
            players.ok() && (summary.swings + summary.rehearsals) > 0) {
            for (const auto& row : *players) {
                if (row.name == player_) {
                    if (auto logged = session::logPractice(*library_, row.id, summary,
                                                           practice->checkpointLabel(), today());
                        !logged.ok()) {
                        problem_ = inLanguage(logged.error().sentence);
                    }
                    break;
                }
            }
        }
    }
    if (live_) {
        live_ = false;
        practising_ = false;
        writing_ = false;
        emit stateChanged();
        emit pictureChanged();
    }
}

void FilmModel::setArmed(bool armed) {
    armed_ = armed;
    watch_ = armed;
    emit stateChanged();
}

void FilmModel::cutNow() {
    cut_ = true;
}

void FilmModel::fail(const QString& sentence) {
    problem_ = sentence;
    emit stateChanged();
}

void FilmModel::fromCamera(const video::Frame& frame) {
    std::vector<capture::Take> takes;
    std::optional<base::Error> broken;
    double measured = 0;
    bool writing = false;
    {
        const std::lock_guard lock(feeding_);
        if (recorder_) {
            recorder_->setWatching(watch_);
            if (cut_.exchange(false)) {
                recorder_->cut();
                broken = recorder_->problem();
            }
            if (auto fed = recorder_->frame(frame); !fed.ok()) {
                broken = fed.error();
            }
            takes = recorder_->takes();
            measured = recorder_->measuredFps();
            writing = recorder_->writing();
        } else if (practice_) {
            if (cut_.exchange(false)) {
                practice_->cut();
            }
            if (auto fed = practice_->frame(frame); !fed.ok()) {
                broken = fed.error();
            }
            if (!told_ || (frame.time() - *told_).value() > 0.1) {
                told_ = frame.time();
                auto news = practice_->news();
                const auto summary = practice_->summary();
                if (!news.swings.empty() || !news.rehearsals.empty() || news.framing) {
                    inWindow([this, news = std::move(news), summary]() mutable {
                        showNews(std::move(news), summary);
                    });
                }
            }
        } else {
            return;
        }
    }
    for (const auto& take : takes) {
        QString words = tr("%1 frames a second").arg(QLocale().toString(take.measuredFps, 'f', 1));
        for (const auto& warning : take.warnings) {
            words += QLatin1Char(' ') + inLanguage(warning);
        }
        inWindow([this, file = take.file, hit = take.hit - take.begin, words] { addTake(file, hit, words); });
    }
    if (broken) {
        const QString sentence = inLanguage(broken->sentence);
        inWindow([this, sentence] { fail(sentence); });
    }
    // The window gets a picture when it has shown the last one: a slow window never holds the camera up.
    if ((!shown_ || (frame.time() - *shown_).value() > 0.03) && !showing_.exchange(true)) {
        shown_ = frame.time();
        inWindow([this, image = preview(frame, kPreviewWidth), measured, writing] {
            picture_ = image;
            writing_ = writing;
            showing_ = false;
            emit pictureChanged();
            if (measured > 0) {
                rates_ =
                    tr("asked %1, measured %2 frames a second")
                        .arg(QLocale().toString(askedFps_, 'f', 0), QLocale().toString(measured, 'f', 1));
                emit ratesChanged();
            }
        });
    }
    if (recorder_ && network_ && (!looked_ || (frame.time() - *looked_).value() > 0.7)) {
        looked_ = frame.time();
        const std::lock_guard lock(work_);
        nextLook_ = frame;
        wake_.notify_all();
    }
}

void FilmModel::look() {
    std::unique_ptr<body::Observer> observer;
    std::optional<marks::View> view;
    for (;;) {
        std::optional<video::Frame> frame;
        {
            std::unique_lock lock(work_);
            wake_.wait(lock, [this] { return end_ || nextLook_; });
            if (end_) {
                return;
            }
            frame = std::exchange(nextLook_, std::nullopt);
        }
        const auto wanted = context_.view;
        if (!observer || view != wanted) {
            auto made = body::Observer::create(network_, wanted);
            if (!made.ok()) {
                continue; // the notice about the network is on the first page
            }
            observer = std::move(*made);
            view = wanted;
        }
        observer->restart(); // seconds lie between two looks
        const auto seen = observer->observe(*frame);
        if (!seen.ok()) {
            continue;
        }
        const auto framing = session::judgeFraming(*seen, frame->width(), frame->height(), wanted);
        const QString advice =
            framing.good() ? QString() : text(session::framingAdvice(framing.faults.front()));
        inWindow([this, advice] {
            framing_ = advice;
            framingGood_ = advice.isEmpty();
            emit framingChanged();
        });
    }
}

QRectF FilmModel::standHere() const {
    const auto box = session::standHere(static_cast<int>(std::lround(1000 * aspect_)), 1000, context().view);
    return {box.x, box.y, box.width, box.height};
}

void FilmModel::showNews(session::PracticeSession::News news, const session::PracticeSummary& summary) {
    if (news.framing) {
        framing_ =
            news.framing->good() ? QString() : text(session::framingAdvice(news.framing->faults.front()));
        framingGood_ = news.framing->good();
        emit framingChanged();
    }
    for (const auto& swing : news.swings) {
        if (!swing.shown) {
            // By the schedule: first feel it, the answer comes later.
            verdict_.clear();
            why_ = tr("Swing %1 seen. How did it feel?").arg(swing.number);
            continue;
        }
        verdict_ = text(session::verdictName(swing.verdict));
        why_ = inLanguage(swing.why);
    }
    for (const auto& rehearsal : news.rehearsals) {
        verdict_ = text(session::verdictName(rehearsal.verdict));
        why_ = rehearsal.counted ? tr("Held in range: it counts.")
                                 : tr("Held, but not in range: it does not count.");
    }
    if (!news.swings.empty() || !news.rehearsals.empty()) {
        enough_ = summary.enough;
        counts_ = tr("Swings %1: %2 hold, %3 do not, %4 can't be told. Rehearsals %5.")
                      .arg(summary.swings)
                      .arg(summary.holds)
                      .arg(summary.doesNotHold)
                      .arg(summary.cannotTell)
                      .arg(summary.rehearsals);
        emit practiceChanged();
    }
}

void FilmModel::addTake(const fs::path& file, std::optional<base::Seconds> hit, const QString& words) {
    const int number = ++number_;
    takes_.prepend(QVariantMap{{QStringLiteral("number"), number},
                               {QStringLiteral("still"), 0},
                               {QStringLiteral("text"), words},
                               {QStringLiteral("doing"), tr("Kept. Measuring it.")},
                               {QStringLiteral("clip"), QString()},
                               {QStringLiteral("player"), QString::fromStdString(player_)}});
    emit takesChanged();
    {
        const std::lock_guard lock(work_);
        intakes_.push_back({number, file, hit, player_, context_});
    }
    wake_.notify_all();
}

QImage FilmModel::stillOf(int take, int) const {
    const auto it = stills_.find(take);
    return it == stills_.end() ? QImage() : it->second;
}

void FilmModel::setStill(int number, const QImage& still) {
    stills_[number] = still;
    while (stills_.size() > 60) { // an afternoon on the range must not fill the memory
        stills_.erase(stills_.begin());
    }
    for (const QVariant& entry : std::as_const(takes_)) {
        const QVariantMap map = entry.toMap();
        if (map.value(QStringLiteral("number")).toInt() == number) {
            updateTake(number, {{QStringLiteral("still"), map.value(QStringLiteral("still")).toInt() + 1}});
            return;
        }
    }
}

void FilmModel::updateTake(int number, const QVariantMap& fields) {
    for (QVariant& entry : takes_) {
        QVariantMap map = entry.toMap();
        if (map.value(QStringLiteral("number")).toInt() == number) {
            for (auto it = fields.begin(); it != fields.end(); ++it) {
                map.insert(it.key(), it.value());
            }
            entry = map;
            emit takesChanged();
            return;
        }
    }
}

void FilmModel::takeIn() {
    for (;;) {
        Intake job;
        {
            std::unique_lock lock(work_);
            wake_.wait(lock, [this] { return end_ || !intakes_.empty(); });
            if (end_) {
                return; // takes that wait stay in the folder and are found at the next start
            }
            job = std::move(intakes_.front());
            intakes_.pop_front();
        }
        const auto say = [&](const QVariantMap& fields) {
            inWindow([this, number = job.number, fields] { updateTake(number, fields); });
        };
        const auto stillAt = [&](base::Seconds time) {
            if (auto clip = video::Clip::open(job.file); clip.ok()) {
                const auto& times = (*clip)->times();
                const auto it = std::lower_bound(times.begin(), times.end(), time);
                const int index = std::min(static_cast<int>(it - times.begin()), (*clip)->info().frames - 1);
                if (auto frame = (*clip)->frame(index); frame.ok()) {
                    inWindow([this, number = job.number, still = preview(*frame, kPreviewWidth)] {
                        setStill(number, still);
                    });
                }
            }
        };
        // A first picture at once: the hit by sound or by the fastest motion.
        stillAt(job.hit.value_or(base::Seconds{2.5}));
        analysis::Request request;
        request.context = job.context;
        auto shot =
            session::addShotToday(*book_, job.player, today(), tr("Lesson").toStdString(), job.context);
        if (!shot.ok()) {
            say({{QStringLiteral("doing"), inLanguage(shot.error().sentence)}});
            continue;
        }
        base::Progress progress;
        progress.cancel = &cancel_;
        session::ClipIntake intake(*library_, network_);
        auto receipt = intake.bringIn(shot->shot, job.file, request, progress);
        if (!receipt.ok() || !*receipt) {
            if (shot->made) {
                static_cast<void>(book_->erase(*shot->made));
            }
            say({{QStringLiteral("doing"), receipt.ok() ? tr("Stopped; the take is kept for the next start.")
                                                        : inLanguage(receipt.error().sentence)}});
            continue;
        }
        const auto& outcome = (*receipt)->analysed.outcome;
        if (const auto* impact = marks::find(outcome.moments, marks::MomentId::impact)) {
            stillAt(impact->time);
        }
        std::error_code ignored;
        fs::remove(job.file, ignored); // the library holds it now
        const QString clip = QString::fromStdString((*receipt)->clip.hex());
        say({{QStringLiteral("clip"), clip}, {QStringLiteral("doing"), tr("In today's lesson")}});
        inWindow([this, clip] { emit takeStored(clip); });
    }
}

} // namespace plumbmark::bridge
