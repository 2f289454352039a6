// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "bridge/worker.h"
#include "exporting/page.h"
#include "ports/places.h"
#include "session/inbox.h"
#include "session/review_desk.h"

namespace plumbmark::bridge {

/// The desk for swings that were sent in: who waits and for how long, what to ask for again, and the card
/// that tells students how to film.
class InboxModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("comes with the app")
    /// [{lesson, player, title, state, waits, due, overdue, because, waiting}]
    Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
    /// Lessons that can be put into the inbox: [{lesson, label}], the newest ten.
    Q_PROPERTY(QVariantList others READ others NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(double progressShare READ progressShare NOTIFY progressChanged)
    /// What to send to the student, just made; empty: nothing.
    Q_PROPERTY(QString words READ words NOTIFY changed)
    Q_PROPERTY(QString made READ made NOTIFY changed)

  public:
    InboxModel(store::Library& library, analysis::NetworkBytes network, const ports::Places& places,
               const exporting::Painter* painter, QObject* parent = nullptr);
    ~InboxModel() override;

    [[nodiscard]] QVariantList rows() const;
    [[nodiscard]] QVariantList others() const;
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] bool busy() const { return busy_; }
    [[nodiscard]] double progressShare() const { return progressShare_; }
    [[nodiscard]] QString words() const { return words_; }
    [[nodiscard]] QString made() const { return made_; }

    Q_INVOKABLE void load();
    /// The student waits from today on; an answer is promised in so many days (0: none promised).
    Q_INVOKABLE void wait(const QString& lesson, int days);
    Q_INVOKABLE void answered(const QString& lesson);
    /// `because` empty: what limited the clips (reads them: takes its time).
    Q_INVOKABLE void filmAgain(const QString& lesson, const QString& because);
    Q_INVOKABLE void cancel() { cancel_ = true; }
    Q_INVOKABLE void makeCard(const QString& player, const QString& coach, const QString& due,
                              const QString& question);

  signals:
    void changed();
    void progressChanged();

  private:
    void after(const base::Result<void>& done);

    store::Library* library_;
    analysis::NetworkBytes network_;
    const ports::Places* places_;
    const exporting::Painter* painter_;
    std::vector<session::InboxDesk::Row> rows_;
    std::vector<store::LessonRow> lessons_;
    QString problem_, words_, made_;
    bool busy_ = false;
    double progressShare_ = 0.0;
    std::atomic<bool> cancel_ = false;
    Worker worker_; ///< last: it ends before anything it tells goes away
};

} // namespace plumbmark::bridge
