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

/// Where in a swing a departure shows first; causes are looked for from the first stage on.
enum class Stage {
    set_up,
    face,
    takeaway,
    backswing,
    top,
    start_down,
    delivery,
    impact,
    through,
    finish,
    ball_flight
};
[[nodiscard]] std::string_view stageName(Stage stage); ///< "set-up", "face", ...

enum class Side { low, high, either };

/// One way to see a node: a checkpoint missed to one side, or what the ball did.
struct Evidence {
    std::string checkpoint; ///< id; empty for the ball
    Side side = Side::either;
    std::string ball,
        is; ///< field of the shot record ("start", "curve", "height", "contact", "place"), its word
};

/// A departure, a movement or a flight of the ball that causes are told with.
struct Node {
    std::string id, label; ///< label as a short clause: "narrow stance"
    Stage stage = Stage::set_up;
    bool fault = true; ///< false: no fault by itself; may stand in a chain, is never proposed as a cause
    bool all = false;  ///< true: every evidence must be there; false: any one tells
    std::vector<Evidence> evidence; ///< empty: the program has no measurement for it yet
    std::vector<std::string> words; ///< what students say when they mean it, lower case
};

enum class Grade { several_schools, one_school, disputed };
[[nodiscard]] std::string_view gradeName(Grade grade); ///< "several schools", ...

/// "From tends to cause to": a tendency, not proof.
struct Tendency {
    std::string from, to;
    Grade grade = Grade::one_school;
    std::string source;
};

/// Something to practise, in generic words or the coach's own.
struct Drill {
    std::string id, label, how;
    std::string trains;                  ///< "position", "range", "speed"
    std::vector<std::string> loads;      ///< body regions it works; see BodyCard
    int rehearsalSets = 0, ballSets = 0; ///< sets of about ten: slow without a ball, then with one
    int holdSeconds = 0;                 ///< held position, 0: none
};

/// What to give a student with a departure.
struct Remedy {
    std::string node, feel, drill;
    std::string checkpoint; ///< decides whether it worked
    std::string guard;      ///< checkpoint that must not get worse meanwhile; may be empty
    std::string conflict;   ///< what it may cost, a sentence; may be empty
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
    /// Empty where the file holds no causes. Every id named anywhere exists; the tendencies hold no circle.
    [[nodiscard]] const std::vector<Node>& nodes() const { return nodes_; }
    [[nodiscard]] const std::vector<Tendency>& tendencies() const { return tendencies_; }
    [[nodiscard]] const std::vector<Drill>& drills() const { return drills_; }
    [[nodiscard]] const std::vector<Remedy>& remedies() const { return remedies_; }
    [[nodiscard]] const Node* node(std::string_view id) const;
    [[nodiscard]] const Drill* drill(std::string_view id) const;

  private:
    int version_ = 0;
    std::vector<Checkpoint> checkpoints_;
    std::vector<Node> nodes_;
    std::vector<Tendency> tendencies_;
    std::vector<Drill> drills_;
    std::vector<Remedy> remedies_;
};

} // namespace plumbmark::coaching
