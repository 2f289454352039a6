// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/desk_thread.h"

#include "bridge/in_language.h"

namespace plumbmark::bridge {

DeskThread::DeskThread(store::Library& library, analysis::NetworkBytes network, QObject* parent)
    : QObject(parent) {
    qRegisterMetaType<std::shared_ptr<const DeskState>>();
    thread_ = std::thread(
        [this, &library, network = std::move(network)]() mutable { run(library, std::move(network)); });
}

DeskThread::~DeskThread() {
    cancelOpen_ = true;
    {
        const std::lock_guard lock(mutex_);
        stop_ = true;
    }
    wake_.notify_one();
    thread_.join();
}

void DeskThread::post(Command command) {
    const std::lock_guard lock(mutex_);
    if (moveTo_) { // keeps its place in the order
        commands_.push_back(
            [to = *std::exchange(moveTo_, std::nullopt)](session::SwingDesk& desk) -> base::Result<bool> {
                desk.moveDrag(to);
                return false;
            });
    }
    commands_.push_back(std::move(command));
    wake_.notify_one();
}

void DeskThread::open(const base::Id& clip, std::optional<analysis::Analysed> known) {
    post([this, clip, known = std::move(known)](session::SwingDesk& desk) mutable -> base::Result<bool> {
        base::Progress report;
        report.cancel = &cancelOpen_;
        report.report = [this](double share, std::string_view stage) {
            emit progress(share, QString::fromUtf8(stage.data(), static_cast<qsizetype>(stage.size())));
        };
        auto result = desk.open(clip, report, std::move(known));
        if (!result.ok()) {
            emit openFailed(inLanguage(result.error().sentence));
        }
        return false;
    });
}

void DeskThread::beginDrag(int frame, marks::Landmark landmark) {
    post([=](session::SwingDesk& desk) -> base::Result<bool> {
        desk.beginDrag(frame, landmark);
        return false;
    });
}

void DeskThread::moveDrag(base::Vec2 to) {
    const std::lock_guard lock(mutex_);
    moveTo_ = to;
    wake_.notify_one();
}

void DeskThread::postGesture(std::function<base::Result<void>(session::SwingDesk&)> gesture) {
    post([gesture = std::move(gesture)](session::SwingDesk& desk) -> base::Result<bool> {
        if (auto result = gesture(desk); !result.ok()) {
            return result.error();
        }
        return true;
    });
}

void DeskThread::finishDrag() {
    postGesture([](session::SwingDesk& desk) { return desk.finishDrag(); });
}

void DeskThread::cancelDrag() {
    {
        const std::lock_guard lock(mutex_);
        moveTo_.reset();
    }
    post([](session::SwingDesk& desk) -> base::Result<bool> {
        desk.cancelDrag();
        return false;
    });
}

void DeskThread::place(int frame, marks::Landmark landmark, base::Vec2 at) {
    postGesture([=](session::SwingDesk& desk) {
        desk.beginDrag(frame, landmark);
        desk.moveDrag(at);
        return desk.finishDrag();
    });
}

void DeskThread::hide(int frame, marks::Landmark landmark) {
    postGesture([=](session::SwingDesk& desk) { return desk.hide(frame, landmark); });
}

void DeskThread::giveBack(int frame, marks::Landmark landmark) {
    postGesture([=](session::SwingDesk& desk) { return desk.release(frame, landmark); });
}

void DeskThread::fixMoment(marks::MomentId moment, int frame) {
    postGesture([=](session::SwingDesk& desk) { return desk.fixMoment(moment, frame); });
}

void DeskThread::freeMoment(marks::MomentId moment) {
    postGesture([=](session::SwingDesk& desk) { return desk.freeMoment(moment); });
}

void DeskThread::draw(const records::Drawing& drawing) {
    postGesture([=](session::SwingDesk& desk) { return desk.draw(drawing); });
}

void DeskThread::wipe(const std::string& name) {
    postGesture([=](session::SwingDesk& desk) { return desk.wipe(name); });
}

void DeskThread::undo() {
    postGesture([](session::SwingDesk& desk) { return desk.undo(); });
}

void DeskThread::redo() {
    postGesture([](session::SwingDesk& desk) { return desk.redo(); });
}

void DeskThread::run(store::Library& library, analysis::NetworkBytes network) {
    session::SwingDesk desk(library, std::move(network));
    bool numbersMoved = false;
    std::unique_lock lock(mutex_);
    for (;;) {
        wake_.wait(lock, [this] { return stop_ || moveTo_ || !commands_.empty(); });
        // Gestures that were finished before closing are still stored.
        if (stop_ && commands_.empty()) {
            if (numbersMoved) { // the lessons list tells the lights as they were left
                desk.cancelDrag();
                (void)desk.saveFindings();
            }
            return;
        }
        Command command;
        if (!commands_.empty()) {
            command = std::move(commands_.front());
            commands_.pop_front();
        } else {
            command =
                [to = *std::exchange(moveTo_, std::nullopt)](session::SwingDesk& d) -> base::Result<bool> {
                d.moveDrag(to);
                return false;
            };
        }
        lock.unlock();
        const base::Result<bool> done = command(desk);
        if (desk.isOpen()) {
            auto state = std::make_shared<DeskState>();
            state->outcome = std::make_shared<const analysis::Outcome>(desk.outcome());
            state->handMarks = desk.handMarks();
            state->momentFixes = desk.momentFixes();
            state->drawings = desk.drawings();
            state->film = desk.film();
            state->canUndo = desk.canUndo();
            state->canRedo = desk.canRedo();
            if (done.ok()) {
                state->saved = *done;
                numbersMoved = numbersMoved || *done;
            } else {
                state->error = inLanguage(done.error().sentence);
            }
            emit changed(state);
        }
        lock.lock();
    }
}

} // namespace plumbmark::bridge
