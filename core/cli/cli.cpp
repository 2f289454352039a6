// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "cli/cli.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <exception>
#include <iterator>
#include <new>

#include "cli/body_command.h"
#include "cli/commands.h"
#include "cli/library_access.h"

namespace plumbmark::cli {
namespace {

std::vector<Option> with(std::vector<Option> options, std::initializer_list<Option> more) {
    options.insert(options.end(), more);
    return options;
}

/// The swing options of "compare": they tell about the first clip and, where not told otherwise, the second.
std::vector<Option> comparedOptions() {
    std::vector<Option> options = swingOptions();
    for (const auto& [name, value] : {std::pair{"--other-hand", "right|left"},
                                      {"--other-club", "CLUB"},
                                      {"--other-stature", "CM"},
                                      {"--other-distance", "M"},
                                      {"--other-roll", "DEG"},
                                      {"--other-plumb", "X0,Y0,X1,Y1"},
                                      {"--other-capture-fps", "N"},
                                      {"--other-mirrored", ""},
                                      {"--other-swing", "N"},
                                      {"--other-marks", "FILE"}}) {
        options.push_back({name, value, "the same for the second clip"});
    }
    return options;
}

constexpr Option kSwingNumber{"--swing", "N",
                              "of several swings the Nth; without it the last that hit a ball"};

constexpr Option kPassphrase{
    "--passphrase-file", "FILE",
    "its first line is the passphrase; else $PLUMBMARK_PASSPHRASE, else it is asked for"};

const std::vector<Command>& table() {
    static const std::vector<Command> commands{
        {{"measure",
          "Measures one swing: key moments, numbers with their uncertainty, checkpoints.",
          {"CLIP"},
          with(swingOptions(),
               {kSwingNumber,
                {"--json", "OUT", "write everything as JSON; \"-\" writes it to the terminal"},
                {"--sheet", "OUT.png", "draw the key-position sheet (.png or .pdf)"},
                {"--landmarks", "", "put every landmark of every frame into the JSON"}}),
          {"plumbmark measure swing.mp4 --view face-on --hand right --club iron-7",
           "plumbmark measure swing.mp4 --view face-on --hand left --club driver --stature 182 --sheet "
           "swing.png",
           "plumbmark measure slow.mov --view down-the-line --hand right --capture-fps 240 --json - "
           "--landmarks"}},
         runMeasure},
        {{"compare",
          "Compares two swings at the same positions, or the swings of two lessons.",
          {"FIRST", "SECOND"},
          with(comparedOptions(),
               {kSwingNumber,
                {"--by", "hands|shaft|time|body", "what makes a position the same; without it hands"},
                {"--at", "SECONDS", "find this position of the first clip in the second"},
                {"--lessons", "", "FIRST and SECOND are lessons: compares their swings of one kind and club"},
                {"--json", "OUT", "write everything as JSON; \"-\" writes it to the terminal"},
                kLibrary}),
          {"plumbmark compare before.mp4 after.mp4 --view face-on --hand right --club iron-7",
           "plumbmark compare mine.mp4 model.mp4 --view face-on --hand left --other-hand right --by shaft",
           "plumbmark compare 3f2a91c0 88b0d2e4 --lessons"}},
         runCompare},
        {{"practise",
          "Watches a film of practice as a camera would: finds swings, says what holds.",
          {"CLIP", "[CLIP...]"},
          practiseOptions(),
          {"plumbmark practise session.mp4 --view face-on --hand right --club iron-7",
           "plumbmark practise session.mp4 --view face-on --hand right --pace camera --json -"}},
         runPractise},
        {{"explain",
          "Tells which departure comes first and explains others, with rivals.",
          {"[CLIP]"},
          with(swingOptions(),
               {kSwingNumber,
                {"--lesson", "LESSON", "instead of a clip: all measured swings of a lesson together"},
                {"--belief", "TEXT", "the student's own explanation, to be answered"},
                {"--playbook", "FILE", "a playbook of your own"},
                {"--accept", "", "with --lesson: keep the proposal as the coach's word"},
                {"--reorder", "NODES", "with --lesson: the coach's order, names with commas between"},
                {"--overrule", "NODES", "with --lesson: what the coach says instead"},
                {"--note", "TEXT", "why, beside the coach's word"},
                {"--try", "NODE", "with --lesson: judge a try of this departure, and keep what came of it"},
                {"--before", "SHOTS", "with --try: numbers of the shots before it, such as 1,2,3"},
                {"--tried", "SHOTS", "with --try: the shots with the one change"},
                {"--after", "SHOTS", "with --try: the shots after it, where there were some"},
                {"--all", "", "list every departure of the playbook"},
                {"--json", "OUT", "write everything as JSON; \"-\" writes it to the terminal"},
                kLibrary}),
          {"plumbmark explain swing.mp4 --view face-on --hand right --belief \"I lift my head\"",
           "plumbmark explain --lesson latest --overrule ball_forward --note \"seen on the tee\"",
           "plumbmark explain --lesson latest --try narrow_stance --before 1,2,3 --tried 4,5,6"}},
         runExplain},
        {{"plan",
          "Drafts a lesson's plan: one or two priorities with feel, drill, dose, guard.",
          {"LESSON"},
          {{"--keep", "", "keep the plan in the lesson"},
           {"--playbook", "FILE", "a playbook of your own"},
           {"--log-rehearsals", "N", "instead: log slow rehearsals of today"},
           {"--log-balls", "N", "instead: log balls hit today"},
           {"--log-rounds", "N", "instead: log rounds played today"},
           {"--log-pain", "REGION=LEVEL", "instead: log pain now, 0 to 10, such as lower_back=3"},
           {"--demonstrate", "N", "instead: attach your own film to the kept plan's priority N"},
           {"--film", "FILE",
            "with --demonstrate: the film, or the beginning of a clip's id; none: take it away"},
           {"--view", "face-on|down-the-line", "with --film FILE: which view it is; without it face-on"},
           {"--hand", "right|left", "with --film FILE: whose hand; without it right"},
           {"--json", "OUT", "write the plan as JSON; \"-\" writes it to the terminal"},
           kLibrary},
          {"plumbmark plan latest --keep", "plumbmark plan latest --log-balls 40",
           "plumbmark plan latest --demonstrate 1 --film my-drill.mp4"}},
         runPlan},
        {{"demo",
          "Renders a demo swing with its exact truth into a folder.",
          {"FOLDER"},
          {{"--case", "NAME", "which swing; without it the sound one"}},
          {"plumbmark demo /tmp/demo", "plumbmark demo /tmp/demo --case narrow-drift"}},
         runDemo},
        {{"lesson add",
          "Brings a clip into the library: measured, judged and kept.",
          {"CLIP"},
          with(swingOptions(),
               {{"--player", "NAME",
                 "whose swing it is; made where there is none of that name; without it a player without a "
                 "name"},
                {"--lesson", "ID", "the lesson it belongs to, or latest; without it a new one of today"},
                {"--title", "TEXT", "title of the new lesson"},
                {"--json", "OUT", "write everything as JSON; \"-\" writes it to the terminal"},
                {"--sheet", "OUT.png", "draw the key-position sheet (.png or .pdf)"},
                {"--landmarks", "", "put every landmark of every frame into the JSON"},
                kLibrary}),
          {"plumbmark lesson add swing.mp4 --player \"Demo player\" --view face-on --hand right --club "
           "iron-7"}},
         runLessonAdd},
        {{"lesson list",
          "Lists the lessons of the library, newest first.",
          {"[WORDS]"},
          {kLibrary},
          {"plumbmark lesson list", "plumbmark lesson list \"demo player\""}},
         runLessonList},
        {{"lesson show",
          "Shows one lesson: its shots, clips and what was found.",
          {"LESSON"},
          {kLibrary},
          {"plumbmark lesson show 3f2a91c0", "plumbmark lesson show latest"}},
         runLessonShow},
        {{"lesson export",
          "Writes a lesson to a file that travels: a ZIP that any unzip tool opens.",
          {"LESSON", "FILE"},
          {{"--sheet", "PNG", "a key-position sheet to put in"},
           {"--without-films", "", "leave the clips out"},
           {"--with-health", "", "pain and body notes too"},
           {"--cover-heads", "", "clips with the head covered (see \"lesson cover\"), pages without stills"},
           {"--own-device", "", "it goes to a device of yours: no consent to share is needed"},
           {"--seal", "", "behind a passphrase, which is asked for"},
           kPassphrase,
           kLibrary},
          {"plumbmark lesson export 3f2a91c0 lesson.plumbmark --sheet swing.png",
           "plumbmark lesson export latest lesson.plumbmark --seal"}},
         runLessonExport},
        {{"lesson cover",
          "Makes copies of a lesson's clips with the head covered; you look at the strip, then release them.",
          {"LESSON"},
          {{"--strip", "PNG", "makes the copies and writes stills from them: look at every one"},
           {"--release", "", "you have looked: the copies may travel"},
           kLibrary},
          {"plumbmark lesson cover latest --strip strip.png", "plumbmark lesson cover latest --release",
           "plumbmark lesson export latest lesson.plumbmark --cover-heads"}},
         runLessonCover},
        {{"lesson import",
          "Takes a lesson file into the library; the same file again changes nothing.",
          {"FILE"},
          {{"--remember", "NAME", "whose device signed it: its lessons are then told as \"from NAME\""},
           kPassphrase,
           kLibrary},
          {"plumbmark lesson import lesson.plumbmark"}},
         runLessonImport},
        {{"lesson merge",
          "Merges lesson files, in any order, with what is here; says what needs a person.",
          {"FILE", "[FILE...]"},
          {kPassphrase, kLibrary},
          {"plumbmark lesson merge tablet.plumbmark phone.plumbmark"}},
         runLessonMerge},
        {{"lesson verify",
          "Checks every byte of a lesson file and changes nothing.",
          {"FILE"},
          {kPassphrase},
          {"plumbmark lesson verify lesson.plumbmark"}},
         runLessonVerify},
        {{"play", "Opens the app.", {}, {kLibrary}, {"plumbmark play"}}, runPlay},
    };
    static const std::vector<Command> all = [] {
        std::vector<Command> joined = commands;
        for (auto more : {keepingCommands(), bodyCommands(), reviewCommands()}) {
            std::move(more.begin(), more.end(), std::back_inserter(joined));
        }
        return joined;
    }();
    return all;
}

void printOptionRows(std::ostream& out, const std::vector<Option>& options) {
    for (const Option& option : options) {
        std::string left(option.name);
        if (!option.value.empty()) {
            left += " " + std::string(option.value);
        }
        if (left.size() > 26) {
            out << "  " << left << "\n  " << std::string(26, ' ') << "  " << option.help << "\n";
        } else {
            out << "  " << left << std::string(26 - left.size(), ' ') << "  " << option.help << "\n";
        }
    }
}

void printHelp(std::ostream& out, const CommandForm& form) {
    out << form.summary << "\n\nplumbmark " << form.name;
    for (const auto operand : form.operands) {
        out << " " << operand;
    }
    if (!form.options.empty()) {
        out << " [options]\n\n";
        printOptionRows(out, form.options);
    } else {
        out << "\n";
    }
    out << "\nExamples\n";
    for (const auto example : form.examples) {
        out << "  " << example << "\n";
    }
}

void printGeneralHelp(std::ostream& out, std::string_view only = {}) {
    if (only.empty()) {
        out << "Plumbmark measures golf swings on film, judges them against a coach's checkpoints and keeps "
               "lessons.\n"
               "Everything stays on this machine.\n\n";
    }
    out << "Commands\n";
    for (const Command& command : table()) {
        if (command.form.name.starts_with(only)) {
            out << "  " << command.form.name << std::string(15 - command.form.name.size(), ' ')
                << command.form.summary << "\n";
        }
    }
    out << "\n\"plumbmark COMMAND --help\" explains a command. \"plumbmark --version\" tells the "
           "version.\n\nExamples\n";
    for (const Command& command : table()) {
        if (command.form.name.starts_with(only)) {
            out << "  " << command.form.examples.front() << "\n";
        }
    }
    out << "\nExit codes: 0 done, 1 a failure here, 2 something in what was given can't be used.\n";
}

int tell(const base::Error& error, std::ostream& err) {
    // One line, whatever a file name in it holds.
    err << "plumbmark: " << shown(error.sentence, 2000) << "\n";
    return error.kind == base::ErrorKind::input ? kInputError : kFailed;
}

bool asksHelp(std::span<const std::string> args) {
    for (const std::string& arg : args) {
        if (arg == "--") {
            return false;
        }
        if (arg == "--help" || arg == "-h") {
            return true;
        }
    }
    return false;
}

int dispatch(std::span<const std::string> args, const Services& services, Streams streams) {
    if (args.empty()) {
        printGeneralHelp(streams.err);
        return kInputError;
    }
    if (args[0] == "--help" || args[0] == "-h" || args[0] == "help") {
        // "help measure" reads like "measure --help".
        std::vector<std::string> turned(args.begin() + 1, args.end());
        if (args[0] == "help" && !turned.empty()) {
            turned.emplace_back("--help");
            return dispatch(turned, services, streams);
        }
        printGeneralHelp(streams.out);
        return kDone;
    }
    if (args[0] == "--version") {
        streams.out << "plumbmark " << services.version << "\n";
        return kDone;
    }
    for (const Command& command : table()) {
        const std::string_view name = command.form.name;
        const std::size_t space = name.find(' ');
        const std::size_t words = space == std::string_view::npos ? 1 : 2;
        if (args.size() < words || args[0] != name.substr(0, space) ||
            (words == 2 && args[1] != name.substr(space + 1))) {
            continue;
        }
        const auto rest = args.subspan(words);
        if (asksHelp(rest)) {
            printHelp(streams.out, command.form);
            return kDone;
        }
        const auto read = Arguments::read(command.form, rest);
        if (!read) {
            return tell(read.error(), streams.err);
        }
        const auto result = command.run(*read, services, streams);
        return result ? *result : tell(result.error(), streams.err);
    }
    if (args[0] == "review") {
        if (asksHelp(args.subspan(1))) {
            printGeneralHelp(streams.out, "review");
            return kDone;
        }
        std::string known;
        for (const Command& command : reviewCommands()) {
            known += (known.empty() ? "" : ", ") + ("plumbmark " + std::string(command.form.name));
        }
        return tell(base::inputError("arguments.unknown", "Say what to take home: " + known + "."),
                    streams.err);
    }
    if (args[0] == "lesson") {
        if (asksHelp(args.subspan(1))) {
            printGeneralHelp(streams.out, "lesson");
            return kDone;
        }
        return tell(base::inputError("arguments.unknown",
                                     "Say what to do with lessons: plumbmark lesson add, list, show, export, "
                                     "cover, import or verify."),
                    streams.err);
    }
    return tell(
        base::inputError("arguments.unknown", "\"" + shown(args[0], 60) +
                                                  "\" is no command of plumbmark. See \"plumbmark --help\"."),
        streams.err);
}

} // namespace

std::span<const Command> commands() {
    return table();
}

base::Error stopped() {
    return base::failure("stopped", "Stopped before the end; nothing was written.");
}

int run(std::span<const std::string> args, const Services& services, std::ostream& out, std::ostream& err) {
    try {
        const int code = dispatch(args, services, {out, err});
        out.flush();
        if (!out) {
            return tell(base::failure("output.write",
                                      "The answer could not be written to the output (is the disk full, "
                                      "or was the pipe closed?)."),
                        err);
        }
        return code;
    } catch (const std::bad_alloc&) {
        err << "plumbmark: There is not enough memory for this; close other programs or use a smaller "
               "clip.\n";
    } catch (const std::exception&) {
        // Nothing in the core throws across a module's border; what still comes here is a bug of ours.
        err << "plumbmark: Something went wrong inside the program; nothing was written. Please report how "
               "to repeat "
               "it.\n";
    }
    return kFailed;
}

} // namespace plumbmark::cli
