// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QElapsedTimer>
#include <QImage>
#include <QPointF>
#include <QSize>
#include <QTimer>
#include <QVariantList>
#include <memory>
#include <optional>
#include <vector>

#include "analysis/analysis.h"
#include "bridge/film_reader.h"
#include "bridge/moments_model.h"
#include "bridge/worker.h"
#include "session/references.h"
#include "session/swing_comparison.h"
#include "stage/stage_content.h"

namespace plumbmark::bridge {

/// One of the two swings on the stage.
class CompareSide : public stage::StageSource {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with a comparison")
    Q_PROPERTY(QImage picture READ picture NOTIFY stageChanged)
    Q_PROPERTY(QSize pictureSize READ pictureSize NOTIFY stageChanged)
    Q_PROPERTY(bool ready READ ready NOTIFY stageChanged)
    /// "Frame 12 of 40", and the real time from impact.
    Q_PROPERTY(QString frameText READ frameText NOTIFY stageChanged)
    Q_PROPERTY(QString timeText READ timeText NOTIFY stageChanged)

  public:
    explicit CompareSide(QObject* parent);

    [[nodiscard]] const stage::StageContent& stageContent() const override { return content_; }
    [[nodiscard]] QImage picture() const { return content_.picture; }
    [[nodiscard]] QSize pictureSize() const { return content_.picture.size(); }
    [[nodiscard]] bool ready() const { return content_.frame >= 0; }
    [[nodiscard]] QString frameText() const;
    [[nodiscard]] QString timeText() const;

    void open(const std::filesystem::path& film, std::shared_ptr<const analysis::Outcome> outcome);
    void close();
    void request(int frame);
    /// Lines of the other swing, laid on this picture.
    void setOtherLines(std::vector<stage::StageLine> lines);
    [[nodiscard]] const std::shared_ptr<const analysis::Outcome>& outcome() const { return outcome_; }
    [[nodiscard]] int wanted() const { return wanted_; }

  signals:
    void pictureTaken();
    void failed(const QString& sentence);

  private:
    void take(int frame, double seconds, const QImage& picture);
    void fillLines();

    std::shared_ptr<const analysis::Outcome> outcome_;
    stage::StageContent content_;
    std::vector<stage::StageLine> otherLines_;
    int wanted_ = 0;
    std::unique_ptr<FilmReader> film_;
};

/// The page that lays two swings beside each other or over each other at the same position. The first swing
/// leads: whatever is asked for is a frame of it, and the other shows its own frame of that position.
class CompareModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the app")
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    /// Something is being read; 0..1.
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(double progressShare READ progressShare NOTIFY progressChanged)
    /// The first swing is known.
    Q_PROPERTY(bool told READ told NOTIFY changed)
    /// Both are, and they could be matched.
    Q_PROPERTY(bool matched READ matched NOTIFY changed)
    Q_PROPERTY(plumbmark::bridge::CompareSide* first READ first CONSTANT)
    Q_PROPERTY(plumbmark::bridge::CompareSide* second READ second CONSTANT)
    Q_PROPERTY(QString otherLabel READ otherLabel NOTIFY changed)
    /// [{clip, label, why, checks, chosen}]
    Q_PROPERTY(QVariantList references READ references NOTIFY changed)
    /// "hands", "shaft", "time-from-impact", "body"
    Q_PROPERTY(QString matchedBy READ matchedBy NOTIFY changed)
    Q_PROPERTY(QString matchedByWords READ matchedByWords NOTIFY changed)
    Q_PROPERTY(QVariantList features READ features CONSTANT)
    /// [{label, moment, first, second, difference, sigma, unit, beyond, word, frame, spoken}]
    Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
    Q_PROPERTY(int beyondDoubt READ beyondDoubt NOTIFY changed)
    Q_PROPERTY(QStringList warnings READ warnings NOTIFY changed)
    Q_PROPERTY(plumbmark::bridge::MomentsModel* moments READ moments CONSTANT)
    Q_PROPERTY(int frame READ frame NOTIFY frameChanged)
    Q_PROPERTY(int frames READ frames NOTIFY changed)
    /// The other swing does not show this position: it stands at the nearest one.
    Q_PROPERTY(bool outside READ outside NOTIFY frameChanged)
    Q_PROPERTY(bool playing READ playing WRITE setPlaying NOTIFY playingChanged)
    /// How the other picture lies on the first one: what falls together (px of each picture), px of the first
    /// a px of the other, turn in degrees, left and right changed.
    Q_PROPERTY(bool canOverlay READ canOverlay NOTIFY frameChanged)
    Q_PROPERTY(bool overlaid READ overlaid WRITE setOverlaid NOTIFY frameChanged)
    Q_PROPERTY(QPointF firstFeet READ firstFeet NOTIFY frameChanged)
    Q_PROPERTY(QPointF secondFeet READ secondFeet NOTIFY frameChanged)
    Q_PROPERTY(double overlayScale READ overlayScale NOTIFY frameChanged)
    Q_PROPERTY(double overlayTurn READ overlayTurn NOTIFY frameChanged)
    Q_PROPERTY(bool overlayMirrored READ overlayMirrored NOTIFY frameChanged)

  public:
    CompareModel(store::Library& library, analysis::NetworkBytes network, QObject* parent = nullptr);
    ~CompareModel() override;

    void open(const base::Id& clip, const QString& title);

    [[nodiscard]] QString title() const { return title_; }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] bool busy() const { return busy_; }
    [[nodiscard]] double progressShare() const { return progressShare_; }
    [[nodiscard]] bool told() const { return first_->outcome() != nullptr; }
    [[nodiscard]] bool matched() const { return comparison_ != nullptr; }
    [[nodiscard]] CompareSide* first() { return first_; }
    [[nodiscard]] CompareSide* second() { return second_; }
    [[nodiscard]] QString otherLabel() const;
    [[nodiscard]] QVariantList references() const;
    [[nodiscard]] QString matchedBy() const;
    [[nodiscard]] QString matchedByWords() const;
    [[nodiscard]] QVariantList features() const;
    [[nodiscard]] QVariantList rows() const;
    [[nodiscard]] int beyondDoubt() const;
    [[nodiscard]] QStringList warnings() const;
    [[nodiscard]] MomentsModel* moments() { return &moments_; }
    [[nodiscard]] int frame() const { return first_->stageContent().frame; }
    [[nodiscard]] int frames() const;
    [[nodiscard]] bool outside() const { return outside_; }
    [[nodiscard]] bool playing() const { return play_.isActive(); }
    void setPlaying(bool playing);
    [[nodiscard]] bool canOverlay() const { return overlay_.has_value(); }
    [[nodiscard]] bool overlaid() const { return overlaid_ && overlay_; }
    void setOverlaid(bool overlaid);
    [[nodiscard]] QPointF firstFeet() const;
    [[nodiscard]] QPointF secondFeet() const;
    [[nodiscard]] double overlayScale() const { return overlay_ ? overlay_->scale : 1.0; }
    [[nodiscard]] double overlayTurn() const { return overlay_ ? overlay_->turnDegrees : 0.0; }
    [[nodiscard]] bool overlayMirrored() const { return overlay_ && overlay_->mirrored; }

    Q_INVOKABLE void choose(const QString& clip);
    Q_INVOKABLE void matchBy(const QString& feature);
    Q_INVOKABLE void goTo(int frame);
    Q_INVOKABLE void step(int frames);
    Q_INVOKABLE void jumpTo(int momentRow);

  signals:
    void changed();
    void progressChanged();
    void frameChanged();
    void playingChanged();

  private:
    struct Opened {
        std::shared_ptr<const analysis::Outcome> outcome; ///< nothing: `problem` says why
        std::filesystem::path film;
        QString problem;
    };
    Opened read(const base::Id& clip); ///< on the worker
    void takeFirst(const Opened& opened, const std::vector<session::Reference>& references);
    void takeSecond(const Opened& opened);
    void match(std::optional<comparison::Feature> only);
    void takeComparison(std::shared_ptr<const session::SwingComparison> comparison, const QString& problem);
    void pictureTaken();
    void playOn();

    store::Library* library_;
    analysis::NetworkBytes network_;
    QString title_, problem_;
    bool busy_ = false;
    double progressShare_ = 0.0;
    CompareSide* first_;
    CompareSide* second_;
    MomentsModel moments_;
    std::vector<session::Reference> references_;
    std::optional<base::Id> other_;
    std::shared_ptr<const session::SwingComparison> comparison_;
    std::optional<comparison::Overlay> overlay_;
    bool overlaid_ = false;
    bool outside_ = false;
    int asked_ = 0; ///< answers to older questions are dropped
    QTimer play_;
    QElapsedTimer playClock_;
    double playFrom_ = 0.0;
    Worker worker_; ///< last: it ends before anything it tells goes away
};

} // namespace plumbmark::bridge
