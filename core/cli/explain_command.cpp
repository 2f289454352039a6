// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>
#include <filesystem>
#include <sstream>

#include <nlohmann/json.hpp>

#include "cli/commands.h"
#include "cli/library_access.h"
#include "cli/text.h"
#include "coaching/caution.h"
#include "coaching/judge.h"
#include "exporting/output_file.h"
#include "exporting/words.h"
#include "reasoning/explain.h"
#include "session/coach_desk.h"
#include "session/demonstration.h"
#include "video/clip.h"

namespace plumbmark::cli {
namespace fs = std::filesystem;
namespace {
using Json = nlohmann::ordered_json;
using reasoning::Explanation;

base::Result<coaching::Playbook> playbookOf(const Arguments& args) {
    if (const auto file = args.value("--playbook")) {
        return coaching::Playbook::read(*file);
    }
    return coaching::Playbook::standard();
}

std::string percent(double share) {
    return std::to_string(std::lround(100.0 * share)) + " %";
}

std::vector<std::string> commaList(const std::string& text) {
    std::vector<std::string> out;
    std::istringstream in(text);
    std::string one;
    while (std::getline(in, one, ',')) {
        if (!one.empty()) {
            out.push_back(one);
        }
    }
    return out;
}

/// "at the top: Head to trail ankle 0.30 +- 0.14 stance widths outside".
std::string seenText(const reasoning::NodeState& n, const std::optional<double>& stature,
                     exporting::Writing writing) {
    if (!n.ball.empty()) {
        return "the ball's " + n.ball + ", as told";
    }
    if (!n.value) {
        return "";
    }
    return (n.moment ? std::string(exporting::momentLabel(*n.moment)) + ", " : "") +
           exporting::measurementLabel(n.measurement) + " " +
           exporting::valueText(n.measurement, *n.value, stature, writing);
}

void printExplanation(std::ostream& out, const coaching::Playbook& playbook, const Explanation& e,
                      const std::optional<double>& stature, bool unicode) {
    const exporting::Writing writing{unicode};
    const auto label = [&](const std::string& id) { return playbook.node(id)->label; };
    out << "What comes first\n";
    if (!e.first) {
        out << (e.verdict == reasoning::Verdict::nothing_found
                    ? "  No departure was found in what these clips show.\n"
                    : "  Cannot tell from these clips.\n");
    } else {
        for (std::size_t i = 0; i < e.first->chain.size(); ++i) {
            const auto& link = e.first->chain[i];
            const auto& n = *e.node(link.node);
            out << "  " << (i == 0 ? "" : "tends to cause: ") << n.label << " (" << percent(*n.probability)
                << ")\n";
            wrapped(out, seenText(n, stature, writing), 6);
            if (link.grade) {
                wrapped(out, "(" + std::string(coaching::gradeName(*link.grade)) + "; " + link.source + ")",
                        6);
            }
        }
        out << "  Share among the explanations: " << percent(e.first->share)
            << ". The earliest departure is a good first guess, not proof.\n";
    }
    if (!e.rivals.empty()) {
        out << "\nRival explanations\n";
        for (const auto& r : e.rivals) {
            const auto& n = *e.node(r.node);
            out << "  " << padded(n.label, 44) << " " << padded(percent(*n.probability), 6) << " "
                << (n.presence == reasoning::Presence::unclear ? "unclear, " : "") << "share "
                << percent(r.share) << "\n";
            wrapped(out, seenText(n, stature, writing), 6);
        }
    }
    const auto list = [&](const std::vector<std::string>& ids) {
        std::string text;
        for (const auto& id : ids) {
            text += (text.empty() ? "" : ", ") + label(id);
        }
        return text;
    };
    if (!e.open.empty()) {
        out << "\nCould lie before it and could not be told\n";
        wrapped(out, list(e.open), 2);
    }
    std::vector<std::string> not_yet;
    for (const auto& n : e.nodes) {
        if (!n.measurable) {
            not_yet.push_back(n.id);
        }
    }
    if (!not_yet.empty()) {
        out << "\nNot measured yet\n";
        wrapped(out, list(not_yet), 2);
    }
}

Json explanationJson(const coaching::Playbook& playbook, const Explanation& e,
                     const std::optional<reasoning::BeliefAnswer>& answer) {
    const auto rounded = [](double v) { return std::round(v * 1e6) / 1e6; };
    const auto cause = [&](const reasoning::Cause& c) {
        Json chain = Json::array();
        for (const auto& link : c.chain) {
            chain.push_back({{"node", link.node},
                             {"grade", link.grade ? Json(coaching::gradeName(*link.grade)) : Json(nullptr)},
                             {"source", link.grade ? Json(link.source) : Json(nullptr)}});
        }
        return Json{
            {"node", c.node}, {"weight", rounded(c.weight)}, {"share", rounded(c.share)}, {"chain", chain}};
    };
    Json json{{"verdict", reasoning::verdictName(e.verdict)},
              {"first", e.first ? cause(*e.first) : Json(nullptr)},
              {"rivals", Json::array()},
              {"open", e.open},
              {"belief", nullptr},
              {"nodes", Json::array()},
              {"playbook_version", playbook.version()}};
    for (const auto& r : e.rivals) {
        json["rivals"].push_back(cause(r));
    }
    if (answer) {
        json["belief"] = {{"answer", reasoning::answerName(answer->answer)},
                          {"node", answer->node.empty() ? Json(nullptr) : Json(answer->node)},
                          {"sentence", answer->sentence}};
    }
    for (const auto& n : e.nodes) {
        json["nodes"].push_back(
            {{"id", n.id},
             {"label", n.label},
             {"stage", coaching::stageName(n.stage)},
             {"fault", n.fault},
             {"presence", reasoning::presenceName(n.presence)},
             {"probability", n.probability ? Json(rounded(*n.probability)) : Json(nullptr)},
             {"measurable", n.measurable},
             {"checkpoint", n.checkpoint.empty() ? Json(nullptr) : Json(n.checkpoint)},
             {"measurement", n.measurement.empty() ? Json(nullptr) : Json(n.measurement)},
             {"moment", n.moment ? Json(marks::momentName(*n.moment)) : Json(nullptr)},
             {"value", n.value ? Json(rounded(n.value->value)) : Json(nullptr)},
             {"sigma", n.value ? Json(rounded(n.value->sigma)) : Json(nullptr)},
             {"ball", n.ball.empty() ? Json(nullptr) : Json(n.ball)}});
    }
    return json;
}

base::Result<bool> writeJson(const Arguments& args, const Json& json, Streams streams) {
    const auto target = args.value("--json");
    if (!target) {
        return false;
    }
    const std::string text = json.dump(1) + "\n";
    if (*target == "-") {
        streams.out << text;
        return true;
    }
    if (auto written = exporting::writeWhole(*target, text); !written) {
        return written.error();
    }
    return false;
}

void printBelief(std::ostream& out, const std::string& belief,
                 const std::optional<reasoning::BeliefAnswer>& answer) {
    if (answer) {
        out << "\nThe student's explanation: \"" << shown(belief) << "\"\n";
        wrapped(out, answer->sentence, 2);
    }
}

void printCautions(std::ostream& out, const std::vector<coaching::Caution>& cautions) {
    out << "\nBody cautions\n";
    for (const auto& c : cautions) {
        wrapped(out, c.seen + " " + c.ease + " (" + c.grade + ")", 2);
        wrapped(out, c.words, 2);
    }
    wrapped(out, std::string(coaching::cautionsFooter()), 2);
}

void printFollowUp(std::ostream& out, const session::FollowUp& f, const coaching::Playbook& playbook,
                   bool unicode) {
    if (!f.plan) {
        return;
    }
    const exporting::Writing writing{unicode};
    out << "Since the plan of " << f.planDay << "\n";
    for (const auto& item : f.plan->items) {
        const auto* node = playbook.node(item.node);
        out << "  The plan: " << shown(node ? node->label : item.node) << "\n";
        wrapped(out, shown(item.feel, 500) + " " + shown(item.drill, 500), 4);
        if (const auto* c = playbook.find(item.checkpoint)) {
            out << "    decides: " << c->label << "\n";
        }
    }
    out << "  Practised: " << plural(f.rehearsals, "rehearsal", "rehearsals") << ", "
        << plural(f.balls, "ball", "balls") << ", " << plural(f.rounds, "round", "rounds") << "\n";
    const auto rows = [&](const char* heading, const std::vector<comparison::SetRow>& list, bool all) {
        out << "  " << heading << "\n";
        int shownRows = 0;
        for (const auto& row : list) {
            const bool decides =
                std::any_of(f.plan->items.begin(), f.plan->items.end(), [&](const auto& item) {
                    for (const auto& id : {item.checkpoint, item.guard}) {
                        const auto* c = playbook.find(id);
                        if (c != nullptr && c->measurement == row.id && c->moment == row.moment) {
                            return true;
                        }
                    }
                    return false;
                });
            if (!all && !decides) {
                continue;
            }
            ++shownRows;
            out << "    " << (row.moment ? std::string(exporting::momentLabel(*row.moment)) + ", " : "")
                << exporting::measurementLabel(row.id);
            if (row.change) {
                out << ": "
                    << exporting::valueText(
                           "", {row.change->difference, row.change->sigma, row.unit, base::Origin::network},
                           std::nullopt, writing);
            } else {
                out << ": needs three swings on each side";
            }
            out << "\n";
        }
        if (shownRows == 0) {
            out << "    nothing\n";
        }
    };
    if (f.kind) {
        rows("Changed beyond doubt", f.changed, true);
        rows("Not proven, of what decides and guards", f.notChanged, false);
    } else {
        out << "  No swings of one view, kind and club in both lessons: nothing can be compared.\n";
    }
    out << "  Hurts: ";
    for (std::size_t i = 0; i < f.pains.size(); ++i) {
        std::string region = f.pains[i].region;
        std::replace(region.begin(), region.end(), '_', ' ');
        out << (i == 0 ? "" : ", ") << shown(region) << " " << f.pains[i].level << " of 10 on "
            << shown(f.pains[i].day);
    }
    out << (f.pains.empty() ? "nothing logged" : "") << "\n\n";
}

/// "1,2,3"; empty where the option is absent.
base::Result<std::vector<int>> shotNumbers(const Arguments& args, std::string_view option) {
    std::vector<int> out;
    for (const auto& one : commaList(args.value(option).value_or(""))) {
        const auto n = readNumber(one);
        if (!n || *n != std::floor(*n) || *n < 1 || *n > 10000) {
            return base::inputError("arguments.word", std::string(option) +
                                                          " needs numbers of shots with commas between, "
                                                          "such as 1,2,3.");
        }
        out.push_back(static_cast<int>(*n));
    }
    return out;
}

base::Result<int> tryInLesson(const Arguments& args, session::CoachDesk& desk, const base::Id& lesson,
                              Streams streams) {
    const auto before = shotNumbers(args, "--before"), tried = shotNumbers(args, "--tried"),
               after = shotNumbers(args, "--after");
    for (const auto* list : {&before, &tried, &after}) {
        if (!*list) {
            return list->error();
        }
    }
    if (before->empty() || tried->empty()) {
        return base::inputError("arguments.missing",
                                "--try needs --before and --tried: the shots before it and those with the "
                                "one change.");
    }
    const auto result = desk.tryIt(lesson, *args.value("--try"), *before, *tried, *after);
    if (!result) {
        return result.error();
    }
    wrapped(streams.out, result->sentence, 0);
    streams.out << (result->guardHeld ? "The guard held.\n" : "The guard got worse beyond doubt.\n");
    std::string moved;
    for (const auto& id : result->moved) {
        const std::string label = exporting::measurementLabel(id);
        if (moved.find(label) == std::string::npos) {
            moved += (moved.empty() ? "" : ", ") + label;
        }
    }
    wrapped(streams.out, moved.empty() ? "No number moved beyond doubt." : "Moved beyond doubt: " + moved, 0);
    return kDone;
}

base::Result<int> explainLesson(const Arguments& args, const coaching::Playbook& playbook,
                                const Services& services, Streams streams) {
    auto open = openLesson(args, *args.value("--lesson"), services, streams);
    if (!open) {
        return open.error();
    }
    session::CoachDesk desk(*open->library, playbook, *services.clock);
    if (args.has("--try")) {
        return tryInLesson(args, desk, open->lesson.id, streams);
    }
    auto reasoned = desk.reason(open->lesson.id);
    if (!reasoned) {
        return reasoned.error();
    }
    for (const auto& [option, word] :
         {std::pair{"--accept", "accept"}, {"--reorder", "reorder"}, {"--overrule", "overrule"}}) {
        if (!args.has(option)) {
            continue;
        }
        const auto nodes = commaList(args.value(option).value_or(""));
        if (auto said = desk.say(*reasoned, word, nodes, args.value("--note").value_or("")); !said) {
            return said.error();
        }
        reasoned = desk.reason(open->lesson.id);
        if (!reasoned) {
            return reasoned.error();
        }
    }
    if (const auto done =
            writeJson(args, explanationJson(playbook, reasoned->explanation, reasoned->answer), streams);
        !done || *done) {
        return done ? base::Result<int>(kDone) : base::Result<int>(done.error());
    }
    const auto follow = desk.followUp(open->lesson.id);
    if (!follow) {
        return follow.error();
    }
    std::ostream& out = streams.out;
    out << shown(open->lesson.playerName) << ", " << open->lesson.day << ": "
        << plural(static_cast<int>(reasoned->swings.size()), "swing", "swings") << " together\n\n";
    printFollowUp(out, *follow, playbook, services.unicode);
    if (reasoned->word) {
        out << "The coach's word: " << reasoned->word->word;
        for (std::size_t i = 0; i < reasoned->order.size(); ++i) {
            const auto* node = playbook.node(reasoned->order[i]);
            out << (i == 0 ? ": " : ", ") << (node ? node->label : shown(reasoned->order[i]));
        }
        out << "\n";
        wrapped(out, shown(reasoned->word->note, 1000), 2);
        out << "\nThe program's own proposal, for the record\n\n";
    }
    printExplanation(out, playbook, reasoned->explanation, reasoned->card.statureMetres, services.unicode);
    printBelief(out, reasoned->belief, reasoned->answer);
    printCautions(out, reasoned->cautions);
    return kDone;
}

} // namespace

base::Result<int> runExplain(const Arguments& args, const Services& services, Streams streams) {
    const auto playbook = playbookOf(args);
    if (!playbook) {
        return playbook.error();
    }
    if (args.has("--all")) {
        for (const auto& node : playbook->nodes()) {
            streams.out << padded(node.id, 22) << padded(std::string(coaching::stageName(node.stage)), 12)
                        << node.label << (node.evidence.empty() ? "  (not measured yet)" : "")
                        << (node.fault ? "" : "  (no fault by itself)") << "\n";
        }
        return kDone;
    }
    if (const auto json = args.value("--json"); json && *json != "-") {
        if (auto writable = exporting::checkWritable(*json); !writable) {
            return writable.error();
        }
    }
    if (args.has("--lesson")) {
        if (args.operand(0)) {
            return base::inputError("arguments.extra", "Give a clip or --lesson, not both.");
        }
        return explainLesson(args, *playbook, services, streams);
    }
    if (!args.operand(0)) {
        return base::inputError("arguments.missing",
                                "Say what to explain: a clip, or a lesson with --lesson LESSON.");
    }
    auto request = readSwing(args);
    if (!request) {
        return request.error();
    }
    const auto swing = readSwingNumber(args);
    if (!swing) {
        return swing.error();
    }
    const auto analysed = analyseClip(*args.operand(0), *request, &args, services, streams, *swing);
    if (!analysed) {
        return analysed.error();
    }
    const analysis::Outcome& outcome = analysed->outcome;
    const auto checkpoints = coaching::judge(*playbook, outcome.measurements, outcome.context, request->card);
    const auto explanation = reasoning::explain(*playbook, checkpoints, {});
    std::optional<reasoning::BeliefAnswer> answer;
    const std::string belief = args.value("--belief").value_or("");
    if (!belief.empty()) {
        answer = reasoning::answerBelief(*playbook, explanation, belief);
    }
    if (const auto done = writeJson(args, explanationJson(*playbook, explanation, answer), streams);
        !done || *done) {
        return done ? base::Result<int>(kDone) : base::Result<int>(done.error());
    }
    streams.out << exporting::contextLine(outcome.context) << "\n\n";
    printExplanation(streams.out, *playbook, explanation, outcome.context.statureMetres, services.unicode);
    printBelief(streams.out, belief, answer);
    printCautions(streams.out, outcome.cautions);
    return kDone;
}

namespace {

base::Result<int> demonstrate(const Arguments& args, const OpenLesson& open, const Services& services,
                              Streams streams) {
    const auto number = args.number("--demonstrate", 1, 20, "(a priority's number)");
    if (!number) {
        return number.error();
    }
    const auto priority = static_cast<std::size_t>(**number) - 1;
    session::Demonstrations desk(*open.library, *services.clock);
    const auto typed = args.value("--film");
    if (!typed) {
        if (auto away = desk.takeAway(open.lesson.id, priority); !away) {
            return away.error();
        }
        streams.out << "The priority is shown without a film.\n";
        return kDone;
    }
    session::Demonstrations::Film film{*typed};
    if (const auto view = args.value("--view")) {
        const auto known = marks::viewFromName(*view);
        if (!known) {
            return base::inputError("arguments.word", "--view knows face-on and down-the-line, not \"" +
                                                          shown(*view, 40) + "\".");
        }
        film.view = *known;
    }
    if (const auto hand = args.value("--hand")) {
        if (*hand != "left" && *hand != "right") {
            return base::inputError("arguments.word",
                                    "--hand knows left and right, not \"" + shown(*hand, 40) + "\".");
        }
        film.hand = *hand == "left" ? marks::Hand::left : marks::Hand::right;
    }
    std::error_code ignored;
    std::optional<store::ClipRow> clip;
    if (!std::filesystem::exists(film.file, ignored) && looksLikeId(*typed)) {
        session::LessonBook book(*open.library);
        auto found = findClip(book, *typed);
        if (!found) {
            return found.error();
        }
        clip = std::move(*found);
    }
    base::Result<std::optional<base::Id>> made = std::optional<base::Id>();
    {
        const ProgressLine line(services, streams.err);
        made = clip ? desk.attach(open.lesson.id, priority, clip->id, line.progress())
                    : desk.attach(open.lesson.id, priority, film, line.progress());
    }
    if (!made) {
        return made.error();
    }
    if (!*made) {
        return stopped();
    }
    streams.out << "Attached; it travels with the lesson.\n";
    return kDone;
}

} // namespace

base::Result<int> runPlan(const Arguments& args, const Services& services, Streams streams) {
    const auto playbook = playbookOf(args);
    if (!playbook) {
        return playbook.error();
    }
    auto open = openLesson(args, *args.operand(0), services, streams);
    if (!open) {
        return open.error();
    }
    session::CoachDesk desk(*open->library, *playbook, *services.clock);
    if (args.has("--demonstrate")) {
        return demonstrate(args, *open, services, streams);
    }
    if (args.has("--film") || args.has("--view") || args.has("--hand")) {
        return base::inputError("arguments.missing", "--film, --view and --hand belong to --demonstrate.");
    }
    const std::string today = base::isoDate(services.clock->now());
    bool logged = false;
    if (const auto pain = args.value("--log-pain")) {
        const auto equals = pain->find('=');
        const auto level = equals == std::string::npos ? std::nullopt : readNumber(pain->substr(equals + 1));
        if (!level || *level != std::floor(*level) || std::abs(*level) > 100) {
            return base::inputError("arguments.word", "--log-pain needs REGION=LEVEL, such as lower_back=3.");
        }
        if (auto kept =
                desk.body().log(open->lesson.player, records::Pain{today, pain->substr(0, equals),
                                                                   static_cast<std::int64_t>(*level), ""});
            !kept) {
            return kept.error();
        }
        logged = true;
    }
    for (const auto& [option, what] : {std::pair{"--log-rehearsals", "rehearsals"},
                                       {"--log-balls", "balls"},
                                       {"--log-rounds", "rounds"}}) {
        const auto n = args.number(option, 0, 100000, "");
        if (!n) {
            return n.error();
        }
        if (!*n) {
            continue;
        }
        if (auto kept = desk.body().log(
                open->lesson.player, records::Practice{today, static_cast<std::int64_t>(**n), "", "", what});
            !kept) {
            return kept.error();
        }
        logged = true;
    }
    std::ostream& out = streams.out;
    if (logged) {
        const auto week = desk.body().week(open->lesson.player);
        if (!week) {
            return week.error();
        }
        out << "Logged. Seven days from " << week->day << ": "
            << plural(week->rehearsals, "rehearsal", "rehearsals") << ", "
            << plural(week->balls, "ball", "balls") << ", " << plural(week->rounds, "round", "rounds")
            << ".\n";
        return kDone;
    }
    const auto reasoned = desk.reason(open->lesson.id);
    if (!reasoned) {
        return reasoned.error();
    }
    if (args.has("--keep")) {
        if (auto kept = desk.keepPlan(*reasoned); !kept) {
            return kept.error();
        }
    }
    Json json{{"priorities", Json::array()},
              {"notes", reasoned->plan.notes},
              {"look_again_days", reasoned->plan.lookAgainDays},
              {"by_the_coach", reasoned->word.has_value()}};
    for (const auto& p : reasoned->plan.priorities) {
        json["priorities"].push_back({{"node", p.node},
                                      {"label", p.label},
                                      {"feel", p.feel},
                                      {"drill", p.drill},
                                      {"how", p.how},
                                      {"dose", p.dose},
                                      {"rehearsal_sets", p.rehearsalSets},
                                      {"ball_sets", p.ballSets},
                                      {"trains", p.trains},
                                      {"checkpoint", p.checkpoint},
                                      {"guard", p.guard.empty() ? Json(nullptr) : Json(p.guard)},
                                      {"amount", p.amount.empty() ? Json(nullptr) : Json(p.amount)},
                                      {"conflict", p.conflict.empty() ? Json(nullptr) : Json(p.conflict)}});
    }
    if (const auto done = writeJson(args, json, streams); !done || *done) {
        return done ? base::Result<int>(kDone) : base::Result<int>(done.error());
    }
    out << "Plan for " << shown(open->lesson.playerName)
        << (reasoned->word ? ", by the coach's word" : ", as the program proposes") << "\n";
    if (reasoned->plan.priorities.empty() && reasoned->plan.notes.empty()) {
        out << "  Nothing was found that asks for work; keep what is good.\n";
    }
    int number = 0;
    for (const auto& p : reasoned->plan.priorities) {
        out << "\n" << ++number << ". " << p.label << " (trains " << p.trains << ")\n";
        for (const auto& [what, text] :
             {std::pair<std::string, std::string>{"Feel: ", p.feel},
              {"Drill: ", p.drill + ". " + p.how},
              {"How much: ", p.amount},
              {"Dose: ", p.dose},
              {"Decides: ", playbook->find(p.checkpoint)->label},
              {"Guard: ", p.guard.empty() ? "" : playbook->find(p.guard)->label + " must not get worse"},
              {"Mind: ", p.conflict}}) {
            if (!text.empty()) {
                wrapped(out, what + text, 3);
            }
        }
    }
    if (!reasoned->plan.notes.empty()) {
        out << "\n";
        for (const auto& note : reasoned->plan.notes) {
            wrapped(out, note, 0);
        }
    }
    if (!reasoned->plan.priorities.empty()) {
        out << "\nLook again in " << reasoned->plan.lookAgainDays << " days."
            << (args.has("--keep") ? " Kept in the lesson." : " \"--keep\" keeps this plan in the lesson.")
            << "\n";
    }
    printCautions(out, reasoned->cautions);
    return kDone;
}

} // namespace plumbmark::cli
