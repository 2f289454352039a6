// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <system_error>
#include <unistd.h>

#include "base/files.h"
#include "capture/file_feed.h"
#include "cli/commands.h"
#include "cli/library_access.h"
#include "cli/text.h"
#include "exporting/output_file.h"
#include "session/practice_session.h"

namespace plumbmark::cli {
namespace fs = std::filesystem;
namespace {

using Json = nlohmann::ordered_json;

/// Memory of this process that lies in the machine's own, MB; nothing where the system does not tell.
std::optional<double> memoryMegabytes() {
    std::ifstream statm("/proc/self/statm");
    double whole = 0, resident = 0;
    if (!(statm >> whole >> resident)) {
        return std::nullopt;
    }
    return resident * static_cast<double>(::sysconf(_SC_PAGESIZE)) / 1e6;
}

double rounded(double v, double unit) {
    return std::round(v / unit) * unit;
}

Json valueJson(const std::optional<base::Measured>& value) {
    if (!value) {
        return nullptr;
    }
    return {{"value", rounded(value->value, 1e-6)},
            {"sigma", rounded(value->sigma, 1e-6)},
            {"unit", base::unitName(value->unit)}};
}

Json swingJson(const session::PracticeSwing& s) {
    return {{"number", s.number},
            {"hit_s", rounded(s.hit.value(), 1e-4)},
            {"noticed_by", capture::howName(s.how)},
            {"verdict", session::verdictName(s.verdict)},
            {"measured", valueJson(s.value)},
            {"probabilities",
             {{"good", rounded(s.good, 1e-6)},
              {"watch", rounded(s.watch, 1e-6)},
              {"work", rounded(s.work, 1e-6)}}},
            {"why", s.why},
            {"shown", s.shown},
            {"seconds_to_verdict", rounded(s.seconds, 1e-3)},
            {"frames", s.frames},
            {"frames_missing", s.dropped}};
}

/// Films that nobody asked to keep lie in a private folder that goes away.
struct Films {
    std::optional<base::StagingFolder> staging;
    fs::path folder;
};

base::Result<Films> placeForFilms(const Arguments& args) {
    Films films;
    if (const auto keep = args.value("--keep")) {
        std::error_code error;
        fs::create_directories(*keep, error);
        if (!fs::is_directory(*keep, error)) {
            return base::inputError("output.no_folder",
                                    "\"" + *keep + "\" can't be used as a folder; choose another.");
        }
        films.folder = *keep;
        return films;
    }
    std::error_code error;
    auto made = base::StagingFolder::create(fs::temp_directory_path(error));
    if (!made) {
        return made.error();
    }
    films.staging.emplace(std::move(*made));
    films.folder = films.staging->path();
    return films;
}

struct Log {
    LibraryPointer library;
    base::Id player{base::Id::Bytes{}};
};

base::Result<std::optional<Log>> whereToLog(const Arguments& args, const Services& services,
                                            Streams streams) {
    const auto name = args.value("--player");
    if (!name) {
        return std::optional<Log>{};
    }
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    const auto player = findPlayer(**library, *name);
    if (!player) {
        return player.error();
    }
    return std::optional<Log>(Log{std::move(*library), *player});
}

} // namespace

std::vector<Option> practiseOptions() {
    auto options = swingOptions();
    // What describes one stored clip, not a camera.
    std::erase_if(options, [](const Option& o) {
        return o.name == "--marks" || o.name == "--capture-fps" || o.name == "--plumb";
    });
    options.insert(
        options.end(),
        {{"--checkpoint", "ID", "what decides; without it head_inside_trail_ankle"},
         {"--feedback", "WHEN", "third (each third swing), outside (only when it does not hold) or every"},
         {"--dose", "N", "swings and rehearsals for today, 1 to 1000; without it 30"},
         {"--pace", "PACE", "fast (as fast as can be, without it) or camera (frames at their own times)"},
         {"--keep", "FOLDER", "keep the films of the best and the worst swing there"},
         {"--player", "NAME", "write what was practised into this player's log"},
         {"--library", "FOLDER", "the library, where it is not the usual one"},
         {"--json", "OUT", "write everything as JSON; \"-\" writes it to the terminal"}});
    return options;
}

base::Result<int> runPractise(const Arguments& args, const Services& services, Streams streams) {
    const auto request = readSwing(args);
    if (!request) {
        return request.error();
    }
    session::PracticeOptions options;
    options.context = request->context;
    options.rollDegrees = request->rollDegrees;
    options.checkpoint = args.value("--checkpoint").value_or(options.checkpoint);
    if (const auto text = args.value("--feedback")) {
        const auto feedback = session::feedbackFromName(*text);
        if (!feedback) {
            return base::inputError("arguments.word", "--feedback knows third, outside or every, not \"" +
                                                          shown(*text, 40) + "\".");
        }
        options.feedback = *feedback;
    }
    const auto dose = args.number("--dose", 1, 1000, "swings");
    if (!dose) {
        return dose.error();
    }
    options.dose = static_cast<int>(dose->value_or(options.dose));
    const std::string pace = args.value("--pace").value_or("fast");
    if (pace != "fast" && pace != "camera") {
        return base::inputError("arguments.word",
                                "--pace knows fast or camera, not \"" + shown(pace, 40) + "\".");
    }
    options.background = pace == "camera";
    const auto json = args.value("--json");
    std::vector<fs::path> clips;
    for (std::size_t i = 0; i < args.operands(); ++i) {
        clips.emplace_back(*args.operand(i));
    }
    if (json && *json != "-") {
        for (const auto& clip : clips) {
            std::error_code error;
            if (fs::equivalent(*json, clip, error)) {
                return base::inputError("output.is_input",
                                        "--json would overwrite a clip; choose another name.");
            }
        }
        if (auto writable = exporting::checkWritable(*json); !writable) {
            return writable.error();
        }
    }
    auto log = whereToLog(args, services, streams);
    if (!log) {
        return log.error();
    }
    auto feed = capture::FileFeed::open(clips);
    if (!feed) {
        return feed.error();
    }
    auto films = placeForFilms(args);
    if (!films) {
        return films.error();
    }
    options.folder = films->folder;
    options.soundRate = feed->soundRate();
    options.askedFps = std::clamp(feed->info().playbackFps, 5.0, 1000.0);
    const auto network = fetchNetwork(services);
    if (!network) {
        return network.error();
    }
    auto made = session::PracticeSession::create(options, *network);
    if (!made) {
        return made.error();
    }
    session::PracticeSession& practice = **made;

    Json swings = Json::array(), rehearsals = Json::array(), framing = Json::array(), memory = Json::array();
    std::string framingBefore = "?";
    const auto tell = [&](base::Seconds now) {
        auto news = practice.news();
        for (const auto& s : news.swings) {
            swings.push_back(swingJson(s));
            if (json != "-") {
                char line[160];
                std::snprintf(line, sizeof line, "%8.2f s  swing %d: ", s.hit.value(), s.number);
                streams.out << line
                            << (s.verdict == session::PracticeVerdict::holds         ? "holds. "
                                : s.verdict == session::PracticeVerdict::doesNotHold ? "does not hold. "
                                                                                     : "cannot tell. ")
                            << s.why << "\n"
                            << std::flush;
            }
        }
        for (const auto& r : news.rehearsals) {
            rehearsals.push_back({{"from_s", rounded(r.from.value(), 1e-3)},
                                  {"to_s", rounded(r.to.value(), 1e-3)},
                                  {"verdict", session::verdictName(r.verdict)},
                                  {"measured", valueJson(r.value)},
                                  {"counted", r.counted}});
            if (json != "-") {
                char line[160];
                std::snprintf(line, sizeof line, "%8.2f s  rehearsal held %.1f s: %s\n", r.from.value(),
                              (r.to - r.from).value(), r.counted ? "counts" : "does not count");
                streams.out << line << std::flush;
            }
        }
        if (news.framing) {
            std::string faults;
            for (const auto fault : news.framing->faults) {
                faults += (faults.empty() ? "" : " ") + std::string(session::framingFaultName(fault));
            }
            if (faults != framingBefore && framing.size() < 200) {
                Json list = Json::array();
                for (const auto fault : news.framing->faults) {
                    list.push_back(session::framingFaultName(fault));
                }
                framing.push_back({{"time_s", rounded(now.value(), 1e-3)}, {"faults", list}});
                framingBefore = faults;
            }
        }
    };

    std::optional<base::Error> broken;
    bool cancelled = false;
    double nextMemory = 0;
    base::Result<capture::FileFeed::Counts> played = capture::FileFeed::Counts{};
    {
        const ProgressLine line(services, streams.err);
        played = feed->play(options.background ? capture::FileFeed::Pace::camera
                                               : capture::FileFeed::Pace::asFastAsCan,
                            {[&](const video::Frame& frame) {
                                 if (line.progress().cancelled()) {
                                     cancelled = true;
                                     return false;
                                 }
                                 if (auto fed = practice.frame(frame); !fed) {
                                     broken = fed.error();
                                     return false;
                                 }
                                 if (frame.time().value() >= nextMemory) {
                                     nextMemory += 10;
                                     if (const auto mb = memoryMegabytes()) {
                                         memory.push_back({{"time_s", rounded(frame.time().value(), 1e-3)},
                                                           {"resident_mb", rounded(*mb, 0.1)}});
                                     }
                                 }
                                 if (frame.index() % 8 == 0) {
                                     tell(frame.time());
                                 }
                                 return true;
                             },
                             [&](std::span<const float> mono, base::Seconds time) {
                                 if (auto fed = practice.sound(mono, time); !fed && !broken) {
                                     broken = fed.error();
                                 }
                             }});
    }
    if (broken) {
        return *broken;
    }
    if (!played) {
        return played.error();
    }
    if (cancelled) {
        return stopped();
    }
    if (auto finished = practice.finish(); !finished) {
        return finished.error();
    }
    tell(played->seconds);

    const auto summary = practice.summary();
    if (*log) {
        const auto day = base::isoDate(services.clock->now());
        if (auto logged = session::logPractice(*(*log)->library, (*log)->player, summary,
                                               practice.checkpointLabel(), day);
            !logged) {
            return logged.error();
        }
    }
    if (json) {
        Json answer;
        answer["film"] = {{"seconds", rounded(played->seconds.value(), 1e-4)},
                          {"frames", played->frames},
                          {"pace", pace},
                          {"frames_late", played->late}};
        answer["checkpoint"] = {{"id", options.checkpoint}, {"label", practice.checkpointLabel()}};
        answer["swings"] = swings;
        answer["rehearsals"] = rehearsals;
        answer["framing"] = framing;
        const auto number = [](const std::optional<session::PracticeSwing>& s) {
            return s ? Json(s->number) : Json();
        };
        answer["summary"] = {{"swings", summary.swings},
                             {"holds", summary.holds},
                             {"does_not_hold", summary.doesNotHold},
                             {"cannot_tell", summary.cannotTell},
                             {"noticed_but_no_swing", summary.noSwings},
                             {"rehearsals_counted", summary.rehearsals},
                             {"rehearsals_outside", summary.rehearsalsOutside},
                             {"dose", options.dose},
                             {"enough_for_today", summary.enough},
                             {"best_swing", number(summary.best)},
                             {"worst_swing", number(summary.worst)}};
        answer["memory"] = memory;
        const std::string text = answer.dump(1) + "\n";
        if (*json == "-") {
            streams.out << text;
        } else if (auto written = exporting::writeWhole(*json, text); !written) {
            return written.error();
        }
    }
    if (json != "-") {
        streams.out << plural(summary.swings, "swing", "swings") << ": " << summary.holds << " hold, "
                    << summary.doesNotHold << " do not, " << summary.cannotTell << " can't be told; "
                    << plural(summary.rehearsals, "rehearsal counts", "rehearsals count") << ".\n";
        if (summary.enough) {
            streams.out << "Enough for today.\n";
        }
    }
    return kDone;
}

} // namespace plumbmark::cli
