// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "bridge/advice_worker.h"

namespace plumbmark::bridge {

AdviceWorker::AdviceWorker(QObject* parent) : QObject(parent) {
    qRegisterMetaType<Advices>();
    thread_ = std::thread([this] { run(); });
}

AdviceWorker::~AdviceWorker() {
    {
        const std::lock_guard lock(mutex_);
        stop_ = true;
    }
    wake_.notify_one();
    thread_.join();
}

void AdviceWorker::ask(std::shared_ptr<const analysis::Outcome> outcome) {
    const std::lock_guard lock(mutex_);
    asked_ = std::move(outcome);
    wake_.notify_one();
}

void AdviceWorker::forget() {
    const std::lock_guard lock(mutex_);
    asked_.reset();
}

void AdviceWorker::run() {
    std::unique_lock lock(mutex_);
    for (;;) {
        wake_.wait(lock, [this] { return stop_ || asked_; });
        if (stop_) {
            return;
        }
        const auto outcome = std::exchange(asked_, nullptr);
        lock.unlock();
        const Advices advice = analysis::adviseMarks(*outcome);
        lock.lock();
        if (!asked_) {
            emit advised(advice);
        }
    }
}

} // namespace plumbmark::bridge
