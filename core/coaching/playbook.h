// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "marks/moment.h"
#include "marks/player.h"

namespace plumbmark::coaching {

/// Which clubs share a range. "any" fits every club, told or not.
enum class ClubGroup { any, driver, wood, hybrid, long_iron, mid_iron, short_iron, wedge, putter };
[[nodiscard]] std::string_view clubGroupName(ClubGroup group);
/// iron without a number counts as a mid-iron; no club at all as well.
[[nodiscard]] ClubGroup clubGroupOf(const std::optional<marks::Club>& club);

/// One row: where good ends and where "work on it" begins, in the measurement's unit. An absent edge is open.
struct Range {
    std::vector<ClubGroup> clubs; ///< empty: every club
    std::optional<double> goodLow, goodHigh;
    std::optional<double> workBelow, workAbove;
    std::string source; ///< "common practice, no source" or the named source
};

struct Checkpoint {
    std::string id, label, measurement;
    std::optional<marks::MomentId> moment;
    marks::View view = marks::View::faceOn;
    std::vector<marks::ShotKind> shots; ///< kinds of shot it belongs to; never empty
    std::vector<std::string> joints;    ///< joints whose limits take the adult range away
    bool atMostWatch = false;           ///< a school's view: never "work on it"
    /// Advice: {amount} is replaced by how far to the near edge of the good range, in hand units.
    std::string whenGood, whenLow, whenHigh, whenUnknown;
    std::vector<Range> ranges; ///< first that fits the club is used; none fits: checkpoint is left out
};

/// The coach's ranges and words as data: validated when read, so that judging cannot fail.
class Playbook {
  public:
    /// The playbook that comes with the program.
    [[nodiscard]] static const Playbook& standard();
    /// Errors (input): "playbook.syntax", "playbook.row"; the sentence names line and reason.
    [[nodiscard]] static base::Result<Playbook> parse(std::string_view json);
    /// Adds "playbook.unreadable".
    [[nodiscard]] static base::Result<Playbook> read(const std::filesystem::path& path);

    [[nodiscard]] const std::vector<Checkpoint>& checkpoints() const { return checkpoints_; }
    [[nodiscard]] const Checkpoint* find(std::string_view id) const;
    [[nodiscard]] int version() const { return version_; }

  private:
    int version_ = 0;
    std::vector<Checkpoint> checkpoints_;
};

} // namespace plumbmark::coaching
