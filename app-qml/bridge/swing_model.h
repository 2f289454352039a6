// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QElapsedTimer>
#include <QTimer>
#include <QVariantList>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <vector>

#include "bridge/advice_worker.h"
#include "bridge/desk_thread.h"
#include "bridge/film_reader.h"
#include "bridge/findings_models.h"
#include "bridge/moments_model.h"
#include "bridge/shot_record_model.h"
#include "measure/ghost.h"
#include "stage/stage_content.h"

namespace plumbmark::bridge {

/// The swing page. What is told about "the frame" (label, slider, marks, numbers of the point) belongs to the
/// frame whose picture stands on the stage, never to one that is still being read.
class SwingModel : public stage::StageSource {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the app")
    Q_PROPERTY(QString title READ title NOTIFY outcomeChanged)
    Q_PROPERTY(QString subtitle READ subtitle NOTIFY outcomeChanged)
    /// A picture stands on the stage.
    Q_PROPERTY(bool ready READ ready NOTIFY readyChanged)
    /// Marks and numbers are there; the film can be stepped through before.
    Q_PROPERTY(bool told READ told NOTIFY outcomeChanged)
    Q_PROPERTY(double progressShare READ progressShare NOTIFY progressChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged)
    Q_PROPERTY(QString notice READ notice NOTIFY noticeChanged)
    Q_PROPERTY(int frame READ frame NOTIFY stageChanged)
    Q_PROPERTY(int frames READ frames NOTIFY outcomeChanged)
    Q_PROPERTY(QString frameText READ frameText NOTIFY stageChanged)
    Q_PROPERTY(QString timeText READ timeText NOTIFY stageChanged)
    Q_PROPERTY(bool playing READ playing WRITE setPlaying NOTIFY playingChanged)
    /// Of real speed: 0.125, 0.25, 0.5 or 1.
    Q_PROPERTY(double playSpeed READ playSpeed WRITE setPlaySpeed NOTIFY loopChanged)
    /// Playing goes round between these two moments (rows of `moments`); -1: as far as the film goes.
    Q_PROPERTY(int loopFrom READ loopFrom NOTIFY loopChanged)
    Q_PROPERTY(int loopTo READ loopTo NOTIFY loopChanged)
    /// A strip of moments takes the stage's place.
    Q_PROPERTY(bool stripShown READ stripShown WRITE setStripShown NOTIFY stripChanged)
    /// What may be chosen for it: [{row, label, chosen}]; and what it shows: [{row, label, time}].
    Q_PROPERTY(QVariantList stripChoices READ stripChoices NOTIFY stripChanged)
    Q_PROPERTY(QVariantList strip READ strip NOTIFY stripChanged)
    /// Body lines of address that can be copied over the whole swing: [{id, label}].
    Q_PROPERTY(QVariantList addressLines READ addressLines NOTIFY outcomeChanged)
    /// The picture also shows where the open check would be at the near edge of its range.
    Q_PROPERTY(bool ghostShown READ ghostShown NOTIFY openCheckChanged)
    Q_PROPERTY(plumbmark::bridge::MomentsModel* moments READ moments CONSTANT)
    Q_PROPERTY(plumbmark::bridge::ChecksModel* checks READ checks CONSTANT)
    Q_PROPERTY(plumbmark::bridge::NumbersModel* numbers READ numbers CONSTANT)
    Q_PROPERTY(plumbmark::bridge::ShotRecordModel* shotRecord READ shotRecord CONSTANT)
    Q_PROPERTY(QVariantList cautions READ cautions NOTIFY outcomeChanged)
    Q_PROPERTY(QStringList warnings READ warnings NOTIFY outcomeChanged)
    /// Nobody knows at which rate the film was filmed: no times, no tempo until somebody says it.
    Q_PROPERTY(bool rateUnknown READ rateUnknown NOTIFY outcomeChanged)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY outcomeChanged)
    Q_PROPERTY(bool canRedo READ canRedo NOTIFY outcomeChanged)
    Q_PROPERTY(bool hasSelection READ hasSelection NOTIFY selectionChanged)
    Q_PROPERTY(QString selectedName READ selectedName NOTIFY selectionChanged)
    Q_PROPERTY(QString selectedText READ selectedText NOTIFY stageChanged)
    Q_PROPERTY(bool selectedByHand READ selectedByHand NOTIFY stageChanged)
    Q_PROPERTY(bool selectedHere READ selectedHere NOTIFY stageChanged)
    /// The next tap on the picture tells where the selected point is.
    Q_PROPERTY(bool placing READ placing WRITE setPlacing NOTIFY selectionChanged)
    /// Points that nobody has marked in the frame on show: [{id, name}].
    Q_PROPERTY(QVariantList unmarked READ unmarked NOTIFY stageChanged)
    /// All key moments, found or not: [{id, label, where, frame, byHand}].
    Q_PROPERTY(QVariantList allMoments READ allMoments NOTIFY outcomeChanged)
    /// The one or two marks that would sharpen the answer most: [{text, why}].
    Q_PROPERTY(QVariantList advice READ advice NOTIFY adviceChanged)
    /// What a finger on the picture draws ("": nothing), what a drawing keeps to, and the word that is set.
    Q_PROPERTY(QString drawShape MEMBER drawShape_ NOTIFY drawingChanged)
    Q_PROPERTY(QString drawTie MEMBER drawTie_ NOTIFY drawingChanged)
    Q_PROPERTY(QString drawWord MEMBER drawWord_ NOTIFY drawingChanged)
    /// The clip's drawings in the order they were made: [{name, label}].
    Q_PROPERTY(QVariantList drawings READ drawings NOTIFY outcomeChanged)
    /// The checkpoint whose construction is shown; empty: none.
    Q_PROPERTY(QString openCheck READ openCheck NOTIFY openCheckChanged)

  public:
    SwingModel(store::Library& library, analysis::NetworkBytes network, QObject* parent = nullptr);
    ~SwingModel() override;

    /// Shows a clip of the library; with `known`, the analysis just made of it, at once.
    void open(const base::Id& clip, const QString& title, std::optional<analysis::Analysed> known);

    /// Before open(): the key moment to stand at first; address where it is not there.
    void beginAt(marks::MomentId moment) { beginAt_ = moment; }

    [[nodiscard]] const stage::StageContent& stageContent() const override { return content_; }
    [[nodiscard]] const base::Id& clip() const { return clip_; }
    [[nodiscard]] QString title() const { return title_; }
    [[nodiscard]] QString subtitle() const;
    [[nodiscard]] bool ready() const { return content_.frame >= 0; }
    [[nodiscard]] bool told() const { return state_ != nullptr; }
    [[nodiscard]] double progressShare() const { return progressShare_; }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] QString notice() const { return notice_; }
    [[nodiscard]] int frame() const { return content_.frame; }
    [[nodiscard]] int frames() const;
    [[nodiscard]] QString frameText() const;
    [[nodiscard]] QString timeText() const;
    [[nodiscard]] bool playing() const { return play_.isActive(); }
    void setPlaying(bool playing);
    [[nodiscard]] double playSpeed() const { return playSpeed_; }
    void setPlaySpeed(double speed);
    [[nodiscard]] int loopFrom() const { return loopFrom_; }
    [[nodiscard]] int loopTo() const { return loopTo_; }
    [[nodiscard]] bool stripShown() const { return stripShown_; }
    void setStripShown(bool shown);
    [[nodiscard]] QVariantList stripChoices() const;
    [[nodiscard]] QVariantList strip() const;
    [[nodiscard]] QVariantList addressLines() const;
    [[nodiscard]] bool ghostShown() const { return ghost_.has_value(); }
    [[nodiscard]] MomentsModel* moments() { return &moments_; }
    [[nodiscard]] ChecksModel* checks() { return &checks_; }
    [[nodiscard]] NumbersModel* numbers() { return &numbers_; }
    [[nodiscard]] ShotRecordModel* shotRecord() { return &shotRecord_; }
    [[nodiscard]] QVariantList cautions() const;
    [[nodiscard]] QStringList warnings() const;
    [[nodiscard]] bool rateUnknown() const { return state_ && !state_->outcome->timeScale.known; }
    [[nodiscard]] bool canUndo() const { return state_ && state_->canUndo; }
    [[nodiscard]] bool canRedo() const { return state_ && state_->canRedo; }
    [[nodiscard]] bool hasSelection() const { return content_.selected.has_value(); }
    [[nodiscard]] QString selectedName() const;
    [[nodiscard]] QString selectedText() const;
    [[nodiscard]] bool selectedByHand() const;
    [[nodiscard]] bool selectedHere() const;

    [[nodiscard]] bool placing() const { return placing_; }
    void setPlacing(bool placing);
    [[nodiscard]] QVariantList unmarked() const;
    [[nodiscard]] QVariantList allMoments() const;
    [[nodiscard]] QVariantList advice() const;
    [[nodiscard]] QString openCheck() const { return openCheck_; }

    [[nodiscard]] QVariantList drawings() const;

    /// Plays round from one moment to another, in either order; the same one or -1: no loop.
    Q_INVOKABLE void setLoop(int fromRow, int toRow);
    Q_INVOKABLE void toggleInStrip(int momentRow);
    /// One picture of the strip with the drawings as they lie in it; black until it has been read.
    Q_INVOKABLE [[nodiscard]] QImage stripPicture(int momentRow) const;
    /// Draws the line as it is at address, kept to the ground: one tap, one drawing.
    Q_INVOKABLE void copyFromAddress(const QString& line);
    /// Keeps a drawing made on the frame on show; x and y in turn, picture px.
    Q_INVOKABLE void addDrawing(const QVariantList& points);
    Q_INVOKABLE void wipeDrawing(const QString& name);
    /// The moment is in the frame on show.
    Q_INVOKABLE void fixMoment(int moment);
    Q_INVOKABLE void freeMoment(int moment);
    /// Takes the point up, to be placed by the next tap where it is not marked.
    Q_INVOKABLE void takeUp(int landmark);
    Q_INVOKABLE void placeAt(double x, double y);
    /// Goes where the advice is about and takes its mark up.
    Q_INVOKABLE void followAdvice(int row);
    /// Opens a checkpoint: its moment, and what it is measured from. The open one closes.
    Q_INVOKABLE void toggleCheck(const QString& key);

    Q_INVOKABLE void goTo(int frame);
    Q_INVOKABLE void step(int frames);
    Q_INVOKABLE void jumpTo(int momentRow);
    Q_INVOKABLE void select(int landmark);
    Q_INVOKABLE void deselect();
    Q_INVOKABLE void grab(int landmark);
    Q_INVOKABLE void moveGrabbed(double x, double y);
    Q_INVOKABLE void drop();
    Q_INVOKABLE void giveBack();
    /// Moves the selected mark by picture pixels: a whole gesture.
    Q_INVOKABLE void nudge(double dx, double dy);
    /// "This point cannot be seen in this frame."
    Q_INVOKABLE void hideSelected();
    /// Takes the hand mark away; the software decides again.
    Q_INVOKABLE void freeSelected();
    /// Frames of real time a second; the swing is read again with it.
    Q_INVOKABLE void tellRate(double framesPerSecond);
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();

  signals:
    void outcomeChanged();
    void readyChanged();
    void progressChanged();
    void problemChanged();
    void noticeChanged();
    void playingChanged();
    void selectionChanged();
    void adviceChanged();
    void openCheckChanged();
    void drawingChanged();
    void loopChanged();
    void stripChanged();
    void savedToDisk();
    /// The clip's rate is known now: open it again.
    void rateTold(const QString& clip, const QString& title);
    /// The coach wants another swing beside this one.
    void compareAsked();

  private:
    void takeState(const std::shared_ptr<const DeskState>& state);
    void takePicture(int frame, double seconds, const QImage& picture);
    void fillFrame();
    void fillDrawings(const analysis::Outcome& outcome);
    [[nodiscard]] std::vector<stage::StageDrawing> drawingsIn(int frame,
                                                              const marks::FrameMarks& marks) const;
    void findGhost();
    void askForStrip();
    void fillConstruction(const analysis::Outcome& outcome);
    void askForStills();
    void setProblem(const QString& sentence);
    void setNotice(const QString& sentence);
    void playOn();
    void startPlayAt(int frame);

    MomentsModel moments_;
    ChecksModel checks_;
    NumbersModel numbers_;
    ShotRecordModel shotRecord_;
    QString title_;
    std::optional<base::Id> clipId_;
    store::Library* library_;
    base::Id clip_{base::Id::Bytes{}};
    marks::MomentId beginAt_ = marks::MomentId::address;
    int storedFrames_ = 0; ///< of the film, known before the swing has been read
    double progressShare_ = 0.0;
    QString problem_;
    QString notice_;
    std::shared_ptr<const DeskState> state_;
    stage::StageContent content_;
    int wanted_ = 0; ///< the frame asked for last
    bool filmOpen_ = false;
    bool first_ = true; ///< no state of this swing has arrived yet
    std::set<int> stillsAsked_;
    bool placing_ = false;
    QString drawShape_;
    QString drawTie_ = QStringLiteral("ground");
    QString drawWord_;
    QString openCheck_;
    Advices advice_;
    std::optional<marks::Landmark> grabbed_;
    std::optional<base::Vec2> grabbedAt_; ///< where the finger has it, ahead of the desk
    QTimer play_;
    QElapsedTimer playClock_;
    double playFrom_ = 0.0;
    double playSpeed_ = 0.125;
    int loopFrom_ = -1, loopTo_ = -1; ///< rows of moments_
    bool stripShown_ = false;
    std::set<marks::MomentId> inStrip_{marks::MomentId::address, marks::MomentId::top,
                                       marks::MomentId::impact, marks::MomentId::finish};
    std::map<int, QImage> stripPictures_; ///< by frame, without drawings
    std::optional<measure::Ghost> ghost_; ///< of the open check
    // Threads last: they are stopped before anything they answer to goes away.
    std::unique_ptr<AdviceWorker> adviser_;
    std::unique_ptr<FilmReader> film_;
    std::unique_ptr<DeskThread> desk_;
};

} // namespace plumbmark::bridge
