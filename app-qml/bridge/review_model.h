// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QElapsedTimer>
#include <QRectF>
#include <QTimer>
#include <QVariantList>
#include <map>
#include <memory>
#include <mutex>
#include <optional>

#include "analysis/analysis.h"
#include "bridge/film_reader.h"
#include "bridge/worker.h"
#include "exporting/page.h"
#include "ports/places.h"
#include "ports/voice.h"
#include "session/review_desk.h"
#include "stage/stage_content.h"

namespace plumbmark::bridge {

/// The spoken review of a lesson: recording what the coach does and says, playing it back, three lines, and
/// what goes home as a film or a sheet.
class ReviewModel : public stage::StageSource {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the app")
    Q_PROPERTY(QString title READ title CONSTANT)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(bool ready READ ready NOTIFY stageChanged)
    /// [{clip, label, chosen}]: swings whose film is here
    Q_PROPERTY(QVariantList swings READ swings NOTIFY changed)
    Q_PROPERTY(QString frameText READ frameText NOTIFY stageChanged)
    Q_PROPERTY(int frame READ frame NOTIFY stageChanged)
    Q_PROPERTY(int frames READ frames NOTIFY changed)
    /// "", "recording", "replaying"
    Q_PROPERTY(QString doing READ doing NOTIFY changed)
    /// The film runs, in a recording or while looking.
    Q_PROPERTY(bool running READ running NOTIFY changed)
    Q_PROPERTY(bool marks READ marks WRITE setMarks NOTIFY changed)
    Q_PROPERTY(bool drawing READ drawing WRITE setDrawing NOTIFY changed)
    Q_PROPERTY(bool hasStrokes READ hasStrokes NOTIFY stageChanged)
    /// Milliseconds of the review on show, and how long it is.
    Q_PROPERTY(int atMs READ atMs NOTIFY clockChanged)
    Q_PROPERTY(QString clock READ clock NOTIFY clockChanged)
    Q_PROPERTY(int lengthMs READ lengthMs NOTIFY changed)
    Q_PROPERTY(bool hasReview READ hasReview NOTIFY changed)
    Q_PROPERTY(bool hasVoice READ hasVoice NOTIFY changed)
    Q_PROPERTY(bool replayPaused READ replayPaused NOTIFY changed)
    Q_PROPERTY(QString saw READ saw NOTIFY noteChanged)
    Q_PROPERTY(QString said READ said NOTIFY noteChanged)
    Q_PROPERTY(QString next READ next NOTIFY noteChanged)
    Q_PROPERTY(bool noteKept READ noteKept NOTIFY changed)
    /// Something is being written: 0..1; and what came of it.
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(double progressShare READ progressShare NOTIFY progressChanged)
    Q_PROPERTY(QString made READ made NOTIFY changed)
    Q_PROPERTY(bool canExport READ canExport CONSTANT)

  public:
    struct Parts {
        store::Library& library;
        analysis::NetworkBytes network;
        const ports::Places& places;
        const exporting::Painter* painter = nullptr; ///< nothing: no film, no sheet
        ports::Microphone* microphone = nullptr;     ///< nothing: reviews without a voice
        ports::Speaker* speaker = nullptr;
    };
    ReviewModel(const Parts& parts, const base::Id& lesson, const QString& title, QObject* parent = nullptr);
    ~ReviewModel() override;

    [[nodiscard]] const stage::StageContent& stageContent() const override { return content_; }
    [[nodiscard]] QString title() const { return title_; }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] bool ready() const { return content_.frame >= 0; }
    [[nodiscard]] QVariantList swings() const;
    [[nodiscard]] QString frameText() const;
    [[nodiscard]] int frame() const { return content_.frame; }
    [[nodiscard]] int frames() const;
    [[nodiscard]] QString doing() const;
    [[nodiscard]] bool running() const { return running_; }
    [[nodiscard]] bool marks() const { return marks_; }
    void setMarks(bool on);
    [[nodiscard]] bool drawing() const { return drawing_; }
    void setDrawing(bool on);
    [[nodiscard]] bool hasStrokes() const { return !strokes_.empty(); }
    [[nodiscard]] int atMs() const { return static_cast<int>(atMs_); }
    [[nodiscard]] QString clock() const;
    [[nodiscard]] int lengthMs() const { return static_cast<int>(review_.lengthMs); }
    [[nodiscard]] bool hasReview() const { return records::spoken(review_); }
    [[nodiscard]] bool hasVoice() const { return records::hasVoice(review_); }
    [[nodiscard]] bool replayPaused() const { return mode_ == Mode::replaying && !tick_.isActive(); }
    [[nodiscard]] QString saw() const { return QString::fromStdString(review_.saw); }
    [[nodiscard]] QString said() const { return QString::fromStdString(review_.said); }
    [[nodiscard]] QString next() const { return QString::fromStdString(review_.next); }
    [[nodiscard]] bool noteKept() const { return noteKept_; }
    [[nodiscard]] bool busy() const { return busy_; }
    [[nodiscard]] double progressShare() const { return progressShare_; }
    [[nodiscard]] QString made() const { return made_; }
    [[nodiscard]] bool canExport() const { return parts_.painter != nullptr; }

    Q_INVOKABLE void showSwing(const QString& clip);
    Q_INVOKABLE void goTo(int frame);
    Q_INVOKABLE void step(int frames);
    /// Lets the film run (film seconds a second), or stops it.
    Q_INVOKABLE void run(double speed);
    Q_INVOKABLE void freeze();
    /// The coach magnified or moved the picture; an empty part: all of it is seen.
    Q_INVOKABLE void zoomed(const QRectF& part);
    Q_INVOKABLE void draw(const QVariantList& points);
    Q_INVOKABLE void clearStrokes();

    Q_INVOKABLE void record();
    Q_INVOKABLE void stop(); ///< ends a recording (and keeps it) or a replay
    Q_INVOKABLE void replay();
    Q_INVOKABLE void pauseReplay();
    Q_INVOKABLE void seek(int milliseconds);

    Q_INVOKABLE void keepNote(const QString& saw, const QString& said, const QString& next);
    Q_INVOKABLE void makeFilm();
    Q_INVOKABLE void makeSheet();
    Q_INVOKABLE void cancelMaking() { cancelMaking_ = true; }

  signals:
    void changed();
    void noteChanged(); ///< only when it was kept or read: nothing overwrites what is being typed
    void clockChanged();
    void progressChanged();
    /// A replay shows this part of the picture from now on; empty: all of it.
    void showPart(const QRectF& part);

  private:
    enum class Mode { looking, recording, replaying };
    struct Swing {
        base::Id clip;
        QString label;
        std::filesystem::path film;
        int frames = 0;
        double realPerShown = 1.0;
    };
    void load();
    void reload(const QString& problem);
    void open(const base::Id& clip, double seconds);
    void add(records::ReviewAct act);
    [[nodiscard]] std::int64_t now() const;
    void tick();
    void takePicture(int frame, double seconds, const QImage& picture);
    void fill();
    void showView(const records::ReviewView& view, bool all);
    void readMarks();
    [[nodiscard]] std::filesystem::path target(const QString& ending) const;
    void make(const QString& ending,
              std::function<base::Result<bool>(session::ReviewDesk&, const std::filesystem::path&,
                                               const base::Progress&)>
                  how);

    Parts parts_;
    base::Id lesson_;
    QString title_, problem_, made_, day_;
    std::vector<Swing> swings_;
    const Swing* shown_ = nullptr;
    stage::StageContent content_;
    std::vector<std::vector<base::Vec2>> strokes_;
    std::optional<QRectF> zoom_;
    std::map<base::Id, std::shared_ptr<const analysis::Outcome>> outcomes_;
    records::Review review_;    ///< what stands
    records::Review recording_; ///< what is being made
    Mode mode_ = Mode::looking;
    bool running_ = false, marks_ = false, drawing_ = false, noteKept_ = false, busy_ = false;
    double speed_ = 1.0, runFrom_ = 0.0;
    std::int64_t runSince_ = 0;
    std::int64_t atMs_ = 0, replayFrom_ = 0;
    records::ReviewView view_; ///< what a replay shows
    double progressShare_ = 0.0;
    QTimer tick_;
    QElapsedTimer clock_;
    std::optional<video::Sound> voice_; ///< of the review that stands
    // What the microphone hears comes on its own thread.
    std::mutex heardMutex_;
    video::Sound heard_;
    std::atomic<bool> cancelMaking_ = false;
    std::unique_ptr<FilmReader> film_;
    Worker worker_; ///< last: it ends before anything it tells goes away
};

} // namespace plumbmark::bridge
