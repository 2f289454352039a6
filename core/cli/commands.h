// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <ostream>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "cli/arguments.h"
#include "cli/cli.h"
#include "exporting/film_advice.h"

namespace plumbmark::cli {

struct Streams {
    std::ostream& out;
    std::ostream& err;
};

/// One command of the program: its row in the help and what it does.
struct Command {
    CommandForm form;
    base::Result<int> (*run)(const Arguments& args, const Services& services, Streams streams);
};

[[nodiscard]] std::span<const Command> commands();

base::Result<int> runMeasure(const Arguments& args, const Services& services, Streams streams);
base::Result<int> runCompare(const Arguments& args, const Services& services, Streams streams);
base::Result<int> runPractise(const Arguments& args, const Services& services, Streams streams);
[[nodiscard]] std::vector<Option> practiseOptions();
base::Result<int> runExplain(const Arguments& args, const Services& services, Streams streams);
base::Result<int> runPlan(const Arguments& args, const Services& services, Streams streams);
base::Result<int> runDemo(const Arguments& args, const Services& services, Streams streams);
base::Result<int> runPlay(const Arguments& args, const Services& services, Streams streams);
base::Result<int> runLessonAdd(const Arguments& args, const Services& services, Streams streams);
base::Result<int> runLessonList(const Arguments& args, const Services& services, Streams streams);
base::Result<int> runLessonShow(const Arguments& args, const Services& services, Streams streams);
base::Result<int> runLessonCover(const Arguments& args, const Services& services, Streams streams);
base::Result<int> runLessonExport(const Arguments& args, const Services& services, Streams streams);
base::Result<int> runLessonImport(const Arguments& args, const Services& services, Streams streams);
base::Result<int> runLessonMerge(const Arguments& args, const Services& services, Streams streams);
base::Result<int> runLessonVerify(const Arguments& args, const Services& services, Streams streams);

/// "review ...": what a lesson gives to take home. Rows of the table like all others, kept beside their work.
[[nodiscard]] std::vector<Command> reviewCommands();
[[nodiscard]] std::vector<Command>
keepingCommands(); ///< consent, backup, restore, check, sync, send, receive

/// Options that tell about a swing; shared by "measure" and "lesson add".
[[nodiscard]] std::vector<Option> swingOptions();
/// Everything that can be checked without the clip. Errors (input): "arguments.*".
base::Result<analysis::Request> readSwing(const Arguments& args);
/// What needs the clip: the plumb edge must lie in its picture, hand marks are placed on its frames.
base::Result<void> completeRequest(const Arguments& args, video::Clip& clip, analysis::Request& request,
                                   Streams streams);

/// --json and --sheet of a measurement, looked at before the long work.
class Outputs {
  public:
    /// Errors (input): "output.*"; also where an output would overwrite the clip or the marks file.
    static base::Result<Outputs> check(const Arguments& args, const Services& services,
                                       const std::filesystem::path& clip);
    /// Makes everything first and only then writes.
    base::Result<void> write(video::Clip& clip, const analysis::Outcome& outcome,
                             std::span<const exporting::Advice> advice, const Services& services,
                             Streams streams) const;
    [[nodiscard]] bool jsonToTerminal() const { return json_ == "-"; }
    void setHeading(std::string heading) { heading_ = std::move(heading); } ///< of the sheet: player, day

  private:
    std::optional<std::filesystem::path> json_, sheet_;
    bool landmarks_ = false;
    std::string heading_;
};

/// The pose network, or nothing: the analysis then warns in its answer and goes on without.
base::Result<analysis::NetworkBytes> fetchNetwork(const Services& services);

struct AnalysedClip {
    std::unique_ptr<video::Clip> clip;
    analysis::Outcome outcome;
};
/// Opens and analyses a clip with a line of progress. `told`: the arguments that complete the request;
/// nothing where it is complete. Errors: those of video::Clip::open, completeRequest, fetchNetwork and
/// analysis::analyse; stopped(). `swing`: the clip is looked through first where it may hold several swings,
/// and one of them is measured (0: the usual one); without it the clip is one swing.
base::Result<AnalysedClip> analyseClip(const std::filesystem::path& path, analysis::Request request,
                                       const Arguments* told, const Services& services, Streams streams,
                                       std::optional<int> swing = std::nullopt);
/// --swing N; 0 where it is not told. Errors (input): "arguments.number".
base::Result<int> readSwingNumber(const Arguments& args);

/// A progress line on a terminal; silent elsewhere. Clears the line when it goes.
class ProgressLine {
  public:
    ProgressLine(const Services& services, std::ostream& err);
    ~ProgressLine();
    ProgressLine(const ProgressLine&) = delete;
    ProgressLine& operator=(const ProgressLine&) = delete;
    [[nodiscard]] const base::Progress& progress() const { return progress_; }

  private:
    struct State;
    std::shared_ptr<State> state_;
    base::Progress progress_;
};

/// What would make the next film tell more (exporting/film_advice.h), from the numbers and one picture.
/// Errors: those of video::Clip::frame.
base::Result<std::vector<exporting::Advice>> adviceFor(video::Clip& clip, const analysis::Outcome& outcome);

/// Checkpoints with sign, word, value and range, good first; then cautions, warnings and advice.
void printOutcome(std::ostream& out, const analysis::Outcome& outcome,
                  std::span<const exporting::Advice> advice, bool unicode);

/// A file's text. Errors (input): "file.missing", "file.is_folder", "file.unreadable", "file.too_large".
base::Result<std::string> readText(const std::filesystem::path& path, std::size_t most);

[[nodiscard]] base::Error stopped(); ///< the user pressed Ctrl-C

} // namespace plumbmark::cli
