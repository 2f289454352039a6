// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QObject>
#include <condition_variable>
#include <memory>
#include <mutex>
#include <thread>
#include <vector>

#include "analysis/advice.h"

namespace plumbmark::bridge {

using Advices = std::vector<analysis::MarkAdvice>;

/// Finds out on its own thread which marks would help most. A mailbox of one: only the newest outcome counts.
class AdviceWorker : public QObject {
    Q_OBJECT

  public:
    explicit AdviceWorker(QObject* parent = nullptr);
    ~AdviceWorker() override;
    void ask(std::shared_ptr<const analysis::Outcome> outcome);
    /// What has been asked is of no interest any more.
    void forget();

  signals:
    void advised(const plumbmark::bridge::Advices& advice);

  private:
    void run();
    std::mutex mutex_;
    std::condition_variable wake_;
    bool stop_ = false;
    std::shared_ptr<const analysis::Outcome> asked_;
    std::thread thread_;
};

} // namespace plumbmark::bridge

Q_DECLARE_METATYPE(plumbmark::bridge::Advices)
