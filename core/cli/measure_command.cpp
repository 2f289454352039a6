// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cctype>
#include <cmath>
#include <memory>
#include <mutex>

#include "analysis/swings_in_clip.h"
#include "cli/commands.h"
#include "exporting/key_position_sheet.h"
#include "exporting/measure_json.h"
#include "exporting/output_file.h"
#include "video/clip.h"

namespace plumbmark::cli {
namespace fs = std::filesystem;
namespace {

constexpr double kSheetDotsPerMm = 8.0; // about 200 dots an inch: sharp on paper, 2376 dots wide on a screen

std::string lowerExtension(const fs::path& path) {
    std::string extension = path.extension().string();
    std::transform(extension.begin(), extension.end(), extension.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return extension;
}

bool sameFile(const fs::path& a, const fs::path& b) {
    std::error_code error;
    if (fs::equivalent(a, b, error)) {
        return true;
    }
    return fs::weakly_canonical(a, error) == fs::weakly_canonical(b, error);
}

} // namespace

struct ProgressLine::State {
    std::mutex mutex;
    std::ostream* err = nullptr;
    int percent = -1;
    std::string stage;
};

ProgressLine::ProgressLine(const Services& services, std::ostream& err) : state_(std::make_shared<State>()) {
    progress_.cancel = services.cancel;
    state_->err = &err;
    if (services.showProgress) {
        progress_.report = [state = state_](double share, std::string_view stage) {
            const std::lock_guard lock(state->mutex);
            const int percent = std::clamp(static_cast<int>(share * 100.0), 0, 100);
            if (percent != state->percent || stage != state->stage) {
                state->percent = percent;
                state->stage = stage;
                *state->err << "\r\x1b[K" << percent << " % " << stage << std::flush;
            }
        };
    }
}

ProgressLine::~ProgressLine() {
    if (progress_.report && state_->percent >= 0) {
        *state_->err << "\r\x1b[K" << std::flush;
    }
}

base::Result<Outputs> Outputs::check(const Arguments& args, const Services& services, const fs::path& clip) {
    Outputs outputs;
    outputs.landmarks_ = args.has("--landmarks");
    if (const auto json = args.value("--json")) {
        outputs.json_ = *json;
    } else if (outputs.landmarks_) {
        return base::inputError("arguments.missing",
                                "--landmarks goes into the JSON; say where with --json FILE or --json -.");
    }
    if (const auto sheet = args.value("--sheet")) {
        outputs.sheet_ = *sheet;
        const std::string extension = lowerExtension(*sheet);
        if (extension != ".png" && extension != ".pdf") {
            return base::inputError("output.kind",
                                    "--sheet draws a picture or a PDF; give a name that ends in .png or "
                                    ".pdf.");
        }
        if (services.painter == nullptr) {
            return base::inputError(
                "output.no_painter",
                "This build has no painter, so it can't draw --sheet; use the build with Qt.");
        }
    }
    std::vector<std::pair<std::string, fs::path>> inputs{{"the clip itself", clip}};
    if (const auto marks = args.value("--marks")) {
        inputs.emplace_back("the marks file", *marks);
    }
    for (const auto& [option, path] : {std::pair{"--json", outputs.json_}, {"--sheet", outputs.sheet_}}) {
        if (!path || *path == "-") {
            continue;
        }
        for (const auto& [what, input] : inputs) {
            if (sameFile(*path, input)) {
                return base::inputError("output.is_input", std::string(option) + " would overwrite " + what +
                                                               "; choose another name.");
            }
        }
        if (auto writable = exporting::checkWritable(*path); !writable) {
            return writable.error();
        }
    }
    if (outputs.json_ && outputs.sheet_ && sameFile(*outputs.json_, *outputs.sheet_)) {
        return base::inputError("output.twice", "--json and --sheet name the same file; choose two names.");
    }
    return outputs;
}

base::Result<std::vector<exporting::Advice>> adviceFor(video::Clip& clip, const analysis::Outcome& outcome) {
    const auto quality = exporting::lookAtPictures(clip, outcome);
    if (!quality) {
        return quality.error();
    }
    return exporting::filmAdvice(outcome, *quality);
}

base::Result<void> Outputs::write(video::Clip& clip, const analysis::Outcome& outcome,
                                  std::span<const exporting::Advice> advice, const Services& services,
                                  Streams streams) const {
    std::vector<std::byte> drawing;
    if (sheet_) {
        const auto stills = exporting::takeStills(clip, outcome);
        if (!stills) {
            return stills.error();
        }
        const exporting::Page page =
            exporting::keyPositionSheet(outcome, *stills, *services.painter, {.heading = heading_});
        auto drawn = lowerExtension(*sheet_) == ".pdf" ? services.painter->pdf(std::span(&page, 1))
                                                       : services.painter->png(page, kSheetDotsPerMm);
        if (!drawn) {
            return drawn.error();
        }
        drawing = std::move(*drawn);
    }
    if (json_) {
        const std::string text = exporting::measureJson(outcome, {.landmarks = landmarks_, .advice = advice});
        if (jsonToTerminal()) {
            streams.out << text;
        } else if (auto written = exporting::writeWhole(*json_, text); !written) {
            return written;
        }
    }
    if (sheet_) {
        return exporting::writeWhole(*sheet_, drawing);
    }
    return {};
}

base::Result<analysis::NetworkBytes> fetchNetwork(const Services& services) {
    if (!services.poseNetwork) {
        return analysis::NetworkBytes{};
    }
    return services.poseNetwork();
}

base::Result<AnalysedClip> analyseClip(const fs::path& path, analysis::Request request, const Arguments* told,
                                       const Services& services, Streams streams, std::optional<int> swing) {
    auto clip = video::Clip::open(path);
    if (!clip) {
        return clip.error();
    }
    if (told != nullptr) {
        if (auto complete = completeRequest(*told, **clip, request, streams); !complete) {
            return complete.error();
        }
    }
    const auto network = fetchNetwork(services);
    if (!network) {
        return network.error();
    }
    const ProgressLine line(services, streams.err);
    std::optional<analysis::SwingTaken> taken;
    if (swing) {
        auto took = analysis::takeSwing(std::move(*clip), request,
                                        *swing > 0 ? std::optional(*swing) : std::nullopt, line.progress());
        if (!took) {
            return took.error();
        }
        if (!*took) {
            return stopped();
        }
        taken = std::move(*took);
        *clip = std::move(taken->clip);
        request = analysis::requestForPart(std::move(request), taken->firstFrame, (*clip)->info().frames);
    }
    auto analysed = analysis::analyse(**clip, *network, request, line.progress());
    if (!analysed) {
        return analysed.error();
    }
    if (!*analysed) {
        return stopped();
    }
    AnalysedClip done{std::move(*clip), std::move((*analysed)->outcome)};
    if (taken) {
        analysis::noteSwings(done.outcome, *taken);
    }
    return done;
}

base::Result<int> readSwingNumber(const Arguments& args) {
    const auto number = args.number("--swing", 1, 10000, "the swing's number");
    if (!number) {
        return number.error();
    }
    if (!*number) {
        return 0;
    }
    if (**number != std::floor(**number)) {
        return base::inputError("arguments.number", "--swing needs a whole number from 1 on.");
    }
    return static_cast<int>(**number);
}

base::Result<int> runMeasure(const Arguments& args, const Services& services, Streams streams) {
    const fs::path path = *args.operand(0);
    auto request = readSwing(args);
    if (!request) {
        return request.error();
    }
    const auto outputs = Outputs::check(args, services, path);
    if (!outputs) {
        return outputs.error();
    }
    const auto swing = readSwingNumber(args);
    if (!swing) {
        return swing.error();
    }
    auto analysed = analyseClip(path, std::move(*request), &args, services, streams, *swing);
    if (!analysed) {
        return analysed.error();
    }
    const analysis::Outcome& outcome = analysed->outcome;
    const auto advice = adviceFor(*analysed->clip, outcome);
    if (!advice) {
        return advice.error();
    }
    if (auto written = outputs->write(*analysed->clip, outcome, *advice, services, streams); !written) {
        return written.error();
    }
    if (!outputs->jsonToTerminal()) {
        printOutcome(streams.out, outcome, *advice, services.unicode);
    }
    return kDone;
}

} // namespace plumbmark::cli
