// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <QString>
#include <atomic>
#include <condition_variable>
#include <deque>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

#include "session/swing_desk.h"

namespace plumbmark::bridge {

/// What the desk looked like after a command.
struct DeskState {
    std::shared_ptr<const analysis::Outcome> outcome;
    marks::HandMarks handMarks;
    marks::Moments momentFixes;
    std::vector<records::Drawing> drawings;
    std::filesystem::path film;
    bool canUndo = false;
    bool canRedo = false;
    bool saved = false; ///< this command put something on the disk
    QString error;      ///< plain sentence where the command failed
};

/// A swing desk living on its own thread, so that no finger waits for arithmetic or for the disk. Commands
/// are done in order; of several drag moves waiting only the newest is done.
class DeskThread : public QObject {
    Q_OBJECT

  public:
    DeskThread(store::Library& library, analysis::NetworkBytes network, QObject* parent = nullptr);
    ~DeskThread() override;

    void open(const base::Id& clip, std::optional<analysis::Analysed> known);
    void beginDrag(int frame, marks::Landmark landmark);
    void moveDrag(base::Vec2 to);
    void finishDrag();
    void cancelDrag();
    void place(int frame, marks::Landmark landmark, base::Vec2 at); ///< a whole gesture: begin, move, finish
    void hide(int frame, marks::Landmark landmark);
    void giveBack(int frame, marks::Landmark landmark);
    void fixMoment(marks::MomentId moment, int frame);
    void freeMoment(marks::MomentId moment);
    void draw(const records::Drawing& drawing);
    void wipe(const std::string& name);
    void undo();
    void redo();

  signals:
    void progress(double share, const QString& stage);
    void openFailed(const QString& sentence);
    void changed(const std::shared_ptr<const plumbmark::bridge::DeskState>& state);

  private:
    /// Returns whether something was stored.
    using Command = std::function<base::Result<bool>(session::SwingDesk&)>;
    void post(Command command);
    void postGesture(std::function<base::Result<void>(session::SwingDesk&)> gesture);
    void run(store::Library& library, analysis::NetworkBytes network);

    std::mutex mutex_;
    std::condition_variable wake_;
    bool stop_ = false;
    std::atomic<bool> cancelOpen_ = false;
    std::deque<Command> commands_;
    std::optional<base::Vec2> moveTo_; ///< the newest drag move; done before the next command
    std::thread thread_;
};

} // namespace plumbmark::bridge

Q_DECLARE_METATYPE(std::shared_ptr<const plumbmark::bridge::DeskState>)
