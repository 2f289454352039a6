// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <filesystem>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "analysis/analysis.h"
#include "base/geometry.h"
#include "base/ids.h"
#include "base/progress.h"
#include "base/result.h"
#include "marks/landmark.h"
#include "records/fact.h"
#include "records/kinds.h"
#include "store/library.h"

namespace plumbmark::session {

namespace detail {
/// What a finished gesture changes: one place of one kind of fact about a clip. A place is a frame's
/// landmark, a key moment, or a drawing.
struct Place {
    std::string kind; ///< records::kind::mark, moment or drawing
    std::string name; ///< "74/lead_hip", "top", a drawing's own name
    friend auto operator<=>(const Place&, const Place&) = default;
};
} // namespace detail

/// One swing on the desk: the film, what the software found, and the coach's marks on top.
/// Not thread-safe: one desk per thread; open() may run on a worker before the desk is handed over.
class SwingDesk {
  public:
    SwingDesk(store::Library& library, analysis::NetworkBytes network)
        : library_(&library), network_(std::move(network)) {}

    /// Shows the clip with its stored hand marks, moments and drawings. Takes a moment where the analysis is
    /// known: told in `known` (just made by ClipIntake), or its evidence kept beside the library by this
    /// version of the program. Else the film is read (blocks; run it on a worker). false: cancelled, the desk
    /// is as before. Errors: (input) "book.no_such_thing", "film.missing" (the film did not travel with the
    /// lesson), and those of video::Clip::open.
    base::Result<bool> open(const base::Id& clip, const base::Progress& progress,
                            std::optional<analysis::Analysed> known = std::nullopt);

    [[nodiscard]] bool isOpen() const { return clip_.has_value(); }
    [[nodiscard]] const std::optional<store::ClipRow>& clip() const { return clip_; }
    [[nodiscard]] std::filesystem::path film() const;
    /// Never empty while open; follows the finger during a drag.
    [[nodiscard]] const analysis::Outcome& outcome() const { return outcome_; }
    /// Marks placed by hand that stand now (the one being dragged included).
    [[nodiscard]] const marks::HandMarks& handMarks() const { return marks_; }
    /// Marks that two devices placed differently: frame and landmark. The newest one is used.
    [[nodiscard]] const std::vector<std::pair<int, marks::Landmark>>& disputedMarks() const {
        return disputed_;
    }

    // A drag: begin, move as often as the finger does, then finish (one fact, on the disk) or cancel (as if
    // nothing had been touched). No pixel is read. Calls out of order change nothing.
    void beginDrag(int frame, marks::Landmark landmark);
    const analysis::Outcome& moveDrag(base::Vec2 to, double sigmaPixels = 2.0);
    base::Result<void> finishDrag();
    void cancelDrag();
    [[nodiscard]] bool dragging() const { return drag_.has_value(); }

    /// "This point cannot be seen here": one fact.
    base::Result<void> hide(int frame, marks::Landmark landmark);
    /// Gives the point back to the software: one fact. Does nothing where no hand mark stands.
    base::Result<void> release(int frame, marks::Landmark landmark);

    /// A key moment is where the person says: in this frame (one fact; sigma half a frame). Software never
    /// moves it.
    base::Result<void> fixMoment(marks::MomentId moment, int frame);
    /// Gives the moment back to the software: one fact. Does nothing where none is fixed.
    base::Result<void> freeMoment(marks::MomentId moment);
    [[nodiscard]] const marks::Moments& momentFixes() const { return fixes_; }

    /// A drawing with a new name is added, one with a known name replaced: one fact. Errors (input):
    /// "record.bad_value".
    base::Result<void> draw(const records::Drawing& drawing);
    /// Takes a drawing away: one fact. Does nothing where none has that name.
    base::Result<void> wipe(const std::string& name);
    /// In the order they were made.
    [[nodiscard]] const std::vector<records::Drawing>& drawings() const { return drawings_; }

    /// Steps back over gestures made on this device at this clip, also before a restart; each undo is a new
    /// fact that restores what the gesture replaced. Another device's gestures are not taken back.
    [[nodiscard]] bool canUndo() const { return !undo_.empty(); }
    [[nodiscard]] bool canRedo() const { return !redo_.empty(); }
    base::Result<void> undo();
    base::Result<void> redo();

    /// Keeps the numbers as they stand (one fact); does nothing when they are the stored ones already.
    base::Result<void> saveFindings();
    /// Keeps them and marks them as accepted by the coach: from now on frozen.
    base::Result<void> acceptFindings();

  private:
    struct Gesture {
        detail::Place place;
        std::optional<records::Object> before, after; ///< nothing: nobody says anything there
    };
    struct Drag {
        int frame = 0;
        marks::Landmark landmark = marks::Landmark::nose;
        std::optional<records::MarkFact> now;
        marks::HandMarks marksBefore;
        analysis::Outcome outcomeBefore;
    };
    base::Result<std::optional<base::Id>> keepFindings(bool accept);
    void recompute();
    void readFacts(const std::vector<records::Fact>& facts);
    void put(const detail::Place& place, const std::optional<records::Object>& body);
    base::Result<void> store(const detail::Place& place, const std::optional<records::Object>& body,
                             std::string_view step);
    base::Result<void> gesture(const detail::Place& place, std::optional<records::Object> after);
    [[nodiscard]] std::optional<records::Object> standing(const detail::Place& place) const;

    store::Library* library_;
    analysis::NetworkBytes network_;
    std::optional<store::ClipRow> clip_;
    std::vector<base::Id> path_; ///< player, lesson, shot, clip
    std::shared_ptr<const analysis::Evidence> evidence_;
    analysis::Outcome outcome_;
    marks::HandMarks marks_;
    marks::Moments fixes_;
    std::vector<records::Drawing> drawings_;
    std::vector<std::pair<int, marks::Landmark>> disputed_;
    std::map<detail::Place, records::Object> bodies_; ///< what stands, by place
    std::optional<Drag> drag_;
    std::vector<Gesture> undo_, redo_;
};

} // namespace plumbmark::session
