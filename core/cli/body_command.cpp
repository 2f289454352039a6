// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <array>
#include <sstream>

#include "cli/body_command.h"
#include "cli/library_access.h"
#include "records/coaching_kinds.h"
#include "session/body_book.h"

namespace plumbmark::cli {
namespace {

using Regions = std::vector<std::string> records::BodyCard::*;
constexpr std::array<std::pair<std::string_view, Regions>, 4> kLists{
    {{"--pain-before", &records::BodyCard::painBefore},
     {"--limited", &records::BodyCard::limitedJoints},
     {"--replaced", &records::BodyCard::replacedJoints},
     {"--surgery", &records::BodyCard::surgery}}};
using YesNo = std::optional<bool> records::BodyCard::*;
constexpr std::array<std::pair<std::string_view, YesNo>, 4> kAnswers{
    {{"--pregnant", &records::BodyCard::pregnant},
     {"--bone-or-heart", &records::BodyCard::boneOrHeart},
     {"--cleared", &records::BodyCard::cleared},
     {"--guardian", &records::BodyCard::guardianConsent}}};

std::vector<std::string> words(const std::string& typed) {
    std::vector<std::string> list;
    std::istringstream in(typed);
    for (std::string word; std::getline(in, word, ',');) {
        if (!word.empty() && word != "none") {
            list.push_back(word);
        }
    }
    return list;
}

void print(std::ostream& out, const records::BodyCard& card) {
    const auto list = [&](const char* name, const std::vector<std::string>& regions) {
        for (std::size_t i = 0; i < regions.size(); ++i) {
            out << (i == 0 ? name : ", ") << shown(regions[i], 40) << (i + 1 == regions.size() ? "\n" : "");
        }
    };
    const auto answer = [&](const char* name, const std::optional<bool>& value) {
        if (value) {
            out << name << (*value ? "yes" : "no") << "\n";
        }
    };
    out << "Body card of " << (card.day.empty() ? "no day" : shown(card.day, 20)) << "\n";
    if (card.birthYear) {
        out << "Born in: " << *card.birthYear << "\n";
    }
    list("Pain before: ", card.painBefore);
    list("Limited joints: ", card.limitedJoints);
    list("Replaced joints: ", card.replacedJoints);
    list("Surgery: ", card.surgery);
    answer("Pregnant: ", card.pregnant);
    answer("Bone or heart condition: ", card.boneOrHeart);
    answer("Cleared by a clinician for full swings: ", card.cleared);
    answer("Guardian agrees: ", card.guardianConsent);
    if (!card.clearedDay.empty()) {
        out << "Cleared on: " << shown(card.clearedDay, 20) << "\n";
    }
    if (card.mostBalls) {
        out << "Most balls a day: " << *card.mostBalls << "\n";
    }
    if (!card.warmUpDay.empty()) {
        out << "Warmed up last on: " << shown(card.warmUpDay, 20) << "\n";
    }
    if (!card.note.empty()) {
        out << "Note: " << shown(card.note, 2000) << "\n";
    }
    out << "No caution is not a clean bill; with pain or doubt see a physician or licensed "
           "physiotherapist.\n";
}

base::Result<int> runBody(const Arguments& args, const Services& services, Streams streams) {
    const auto born = args.number("--born", 1900, 2100, "(a year)");
    const auto balls = args.number("--most-balls", 0, 10000, "balls");
    if (!born || !balls) {
        return born ? balls.error() : born.error();
    }
    auto library = openLibrary(args, services, streams);
    if (!library) {
        return library.error();
    }
    const auto player = findPlayer(**library, *args.operand(0));
    if (!player) {
        return player.error();
    }
    session::BodyBook book(**library, *services.clock);
    auto card = book.card(*player);
    if (!card) {
        return card.error();
    }
    const records::Object before = bodyOf(*card);
    for (const auto& [option, list] : kLists) {
        if (const auto typed = args.value(option)) {
            (*card).*list = words(*typed);
        }
    }
    for (const auto& [option, answer] : kAnswers) {
        if (const auto typed = args.value(option)) {
            if (*typed != "yes" && *typed != "no") {
                return base::inputError("arguments.word", std::string(option) + " knows yes and no, not \"" +
                                                              shown(*typed, 40) + "\".");
            }
            (*card).*answer = *typed == "yes";
        }
    }
    if (*born) {
        card->birthYear = static_cast<int>(**born);
    }
    if (*balls) {
        card->mostBalls = static_cast<int>(**balls);
    }
    card->clearedDay = args.value("--cleared-day").value_or(card->clearedDay);
    card->note = args.value("--note").value_or(card->note);
    const std::string today = base::isoDate(services.clock->now());
    if (args.has("--warmed-up")) {
        card->warmUpDay = today;
    }
    if (!(bodyOf(*card) == before)) {
        card->day = today;
        if (auto kept = book.keep(*player, *card); !kept) {
            return kept.error();
        }
    } else if (card->day.empty()) {
        streams.out << "No body card yet; \"plumbmark help body\" tells what can be filled in.\n";
        return kDone;
    }
    print(streams.out, *card);
    return kDone;
}

} // namespace

std::vector<Command> bodyCommands() {
    return {
        {{"body",
          "Shows a player's body card, or fills it in. It never leaves with a lesson unless you choose so.",
          {"PLAYER"},
          {{"--born", "YEAR", "year of birth; under 18 no adult ranges are used"},
           {"--pain-before", "REGIONS", "earlier trouble: lead_hip,lower_back ..., or none"},
           {"--limited", "REGIONS", "stiff joints"},
           {"--replaced", "REGIONS", "replaced joints"},
           {"--surgery", "REGIONS", "operated joints"},
           {"--pregnant", "yes|no", ""},
           {"--bone-or-heart", "yes|no", "a bone or heart condition"},
           {"--cleared", "yes|no", "cleared by a clinician for full swings"},
           {"--cleared-day", "DAY", "on which day"},
           {"--most-balls", "N", "a day, as a clinician limited it"},
           {"--guardian", "yes|no", "the guardian of a minor agrees to the lessons"},
           {"--warmed-up", "", "warmed up for ten minutes today"},
           {"--note", "TEXT", ""},
           kLibrary},
          {"plumbmark body \"Demo player\" --born 1964 --pain-before lower_back --limited lead_hip",
           "plumbmark body \"Demo player\""}},
         runBody}};
}

} // namespace plumbmark::cli
