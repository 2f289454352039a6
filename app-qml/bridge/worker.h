// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <atomic>
#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <thread>

#include "base/progress.h"

namespace plumbmark::bridge {

/// One thread that does tasks in the order they were given, for pages whose work takes longer than a frame.
/// Make it the last member: its end waits for the task at hand (asked to stop through `progress()`) and drops
/// the rest.
class Worker {
  public:
    Worker() : thread_([this] { run(); }) {}
    ~Worker() {
        stop_ = true;
        {
            const std::lock_guard lock(mutex_);
            tasks_.clear();
        }
        wake_.notify_one();
        thread_.join();
    }
    Worker(const Worker&) = delete;
    Worker& operator=(const Worker&) = delete;

    void post(std::function<void()> task) {
        const std::lock_guard lock(mutex_);
        tasks_.push_back(std::move(task));
        wake_.notify_one();
    }
    /// Cancelled when the worker ends.
    [[nodiscard]] base::Progress progress(std::function<void(double, std::string_view)> report = {}) const {
        base::Progress p;
        p.report = std::move(report);
        p.cancel = &stop_;
        return p;
    }
    /// From a task: lets `done` run on the receiver's own thread; never after the receiver is gone.
    template <class Done> static void tell(QObject* receiver, Done done) {
        QMetaObject::invokeMethod(receiver, std::move(done), Qt::QueuedConnection);
    }

  private:
    void run() {
        std::unique_lock lock(mutex_);
        for (;;) {
            wake_.wait(lock, [this] { return stop_ || !tasks_.empty(); });
            if (stop_) {
                return;
            }
            const std::function<void()> task = std::move(tasks_.front());
            tasks_.pop_front();
            lock.unlock();
            task();
            lock.lock();
        }
    }

    std::mutex mutex_;
    std::condition_variable wake_;
    std::atomic<bool> stop_ = false;
    std::deque<std::function<void()>> tasks_;
    std::thread thread_;
};

} // namespace plumbmark::bridge
