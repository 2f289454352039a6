// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QImage>
#include <QObject>
#include <QRectF>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>
#include <atomic>
#include <condition_variable>
#include <deque>
#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

#include "bridge/bring_in_model.h"
#include "capture/armed_recorder.h"
#include "ports/camera.h"
#include "session/lesson_book.h"
#include "session/practice_session.h"

namespace plumbmark::bridge {

/// The camera of this device: live picture, help with the picture, armed recording straight into today's
/// lesson
/// ("film"), or watching a student's practice ("practise").
class FilmModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the app")
    Q_PROPERTY(bool live READ live NOTIFY stateChanged)
    Q_PROPERTY(bool practising READ practising NOTIFY stateChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY stateChanged)
    Q_PROPERTY(QString cameraName READ cameraName NOTIFY stateChanged)
    Q_PROPERTY(bool hasSound READ hasSound NOTIFY stateChanged)
    Q_PROPERTY(bool armed READ armed WRITE setArmed NOTIFY stateChanged)
    Q_PROPERTY(bool writing READ writing NOTIFY pictureChanged)
    Q_PROPERTY(QImage picture READ picture NOTIFY pictureChanged)
    Q_PROPERTY(QString rates READ rates NOTIFY ratesChanged)
    /// Where the player should stand, shares of the picture.
    Q_PROPERTY(QRectF standHere READ standHere NOTIFY ratesChanged)
    Q_PROPERTY(double aspect READ aspect NOTIFY ratesChanged)      ///< picture's width / height
    Q_PROPERTY(QString framing READ framing NOTIFY framingChanged) ///< what to put right, or empty
    Q_PROPERTY(bool framingGood READ framingGood NOTIFY framingChanged)
    Q_PROPERTY(QVariantList takes READ takes NOTIFY takesChanged)
    Q_PROPERTY(
        QString verdict READ verdict NOTIFY practiceChanged) ///< "", "holds", "does-not-hold", "cannot-tell"
    Q_PROPERTY(QString why READ why NOTIFY practiceChanged)
    Q_PROPERTY(QString checkpoint READ checkpoint NOTIFY practiceChanged)
    Q_PROPERTY(QString counts READ counts NOTIFY practiceChanged)
    Q_PROPERTY(bool enough READ enough NOTIFY practiceChanged)
    Q_PROPERTY(bool canPractise READ canPractise CONSTANT)

  public:
    FilmModel(store::Library& library, session::LessonBook& book, analysis::NetworkBytes network,
              ports::Camera& camera, BringInModel& answers, QObject* parent = nullptr);
    ~FilmModel() override;

    [[nodiscard]] bool live() const { return live_; }
    [[nodiscard]] bool practising() const { return practising_; }
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] QString cameraName() const { return cameraName_; }
    [[nodiscard]] bool hasSound() const { return soundRate_ > 0; }
    [[nodiscard]] bool armed() const { return armed_; }
    void setArmed(bool armed);
    [[nodiscard]] bool writing() const { return writing_; }
    [[nodiscard]] QImage picture() const { return picture_; }
    [[nodiscard]] QString rates() const { return rates_; }
    [[nodiscard]] QRectF standHere() const;
    [[nodiscard]] double aspect() const { return aspect_; }
    [[nodiscard]] QString framing() const { return framing_; }
    [[nodiscard]] bool framingGood() const { return framingGood_; }
    [[nodiscard]] QVariantList takes() const { return takes_; }
    [[nodiscard]] QString verdict() const { return verdict_; }
    [[nodiscard]] QString why() const { return why_; }
    [[nodiscard]] QString checkpoint() const { return checkpoint_; }
    [[nodiscard]] QString counts() const { return counts_; }
    [[nodiscard]] bool enough() const { return enough_; }
    [[nodiscard]] bool canPractise() const { return bool(network_); }

    /// The next takes are the player's who is answered for now; the camera runs on.
    void changePlayer();
    Q_INVOKABLE void startFilming();
    Q_INVOKABLE void startPractising();
    /// Ends filming or practising; what was practised is written into the player's log.
    Q_INVOKABLE void stop();
    Q_INVOKABLE void cutNow();
    /// Picture of a take; `version` only makes the page ask again.
    Q_INVOKABLE QImage stillOf(int take, int version) const;

  signals:
    void stateChanged();
    void pictureChanged();
    void ratesChanged();
    void framingChanged();
    void takesChanged();
    void practiceChanged();
    void takeStored(const QString& clip);

  private:
    struct Intake {
        int number = 0;
        std::filesystem::path file;
        std::optional<base::Seconds> hit; ///< in the clip
        std::string player;
        marks::ShotContext context;
    };
    void start(bool practise);
    void fromCamera(const video::Frame& frame);
    void fail(const QString& sentence);
    void showFrame(const video::Frame& frame);
    void showNews(session::PracticeSession::News news, const session::PracticeSummary& summary);
    void addTake(const std::filesystem::path& file, std::optional<base::Seconds> hit, const QString& text);
    void updateTake(int number, const QVariantMap& fields);
    void setStill(int number, const QImage& still);
    void takeIn();
    void look();
    [[nodiscard]] marks::ShotContext context() const;
    template <class Work> void inWindow(Work work);

    store::Library* library_;
    session::LessonBook* book_;
    analysis::NetworkBytes network_;
    ports::Camera* camera_;
    BringInModel* answers_;
    std::filesystem::path folder_;

    // the window's thread
    bool live_ = false, practising_ = false, armed_ = true, writing_ = false, framingGood_ = false,
         enough_ = false;
    QString problem_, cameraName_, rates_, framing_, verdict_, why_, checkpoint_, counts_;
    QImage picture_;
    QVariantList takes_;
    std::map<int, QImage> stills_;
    double soundRate_ = 0, askedFps_ = 0, aspect_ = 16.0 / 9;
    int number_ = 0;
    std::string player_;
    marks::ShotContext context_;

    // shared with the camera's threads
    std::mutex feeding_;
    std::unique_ptr<capture::ArmedRecorder> recorder_;
    std::unique_ptr<session::PracticeSession> practice_;
    std::atomic<bool> watch_ = true, cut_ = false, showing_ = false;
    std::optional<base::Seconds> shown_, looked_, told_;

    // workers: takes into the library, looks for the framing
    std::mutex work_;
    std::condition_variable wake_;
    std::deque<Intake> intakes_;
    std::optional<video::Frame> nextLook_;
    bool end_ = false;
    std::atomic<bool> cancel_ = false;
    std::thread intake_, looker_;
};

} // namespace plumbmark::bridge
