// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "records/review.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/base64.h"
#include "records/detail/body_fields.h"

namespace plumbmark::records {
namespace {

constexpr std::array<std::pair<Act, std::string_view>, 9> kActs{{{Act::go, "go"},
                                                                 {Act::play, "play"},
                                                                 {Act::freeze, "freeze"},
                                                                 {Act::zoom, "zoom"},
                                                                 {Act::draw, "draw"},
                                                                 {Act::clear, "clear"},
                                                                 {Act::marks, "marks"},
                                                                 {Act::beside, "beside"},
                                                                 {Act::light, "light"}}};
constexpr std::string_view kDigits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
constexpr std::size_t kMostActs = 20'000;
constexpr std::size_t kMostPoints = 500;
constexpr std::size_t kMostPositions = 200;
constexpr std::size_t kMostPieces = 1000;

/// RFC 4648, section 4; nothing for anything else.
std::optional<std::vector<std::uint8_t>> fromBase64(std::string_view text) {
    if (text.size() % 4 != 0) {
        return std::nullopt;
    }
    std::vector<std::uint8_t> bytes;
    bytes.reserve(text.size() / 4 * 3);
    for (std::size_t i = 0; i < text.size(); i += 4) {
        std::uint32_t block = 0;
        std::size_t n = 0;
        for (std::size_t k = 0; k < 4; ++k) {
            const char c = text[i + k];
            const std::size_t digit = kDigits.find(c);
            if (digit != std::string_view::npos && n == k) {
                ++n;
                block = block << 6 | static_cast<std::uint32_t>(digit);
            } else if (c == '=' && i + 4 == text.size() && k >= 2) {
                block <<= 6;
            } else {
                return std::nullopt;
            }
        }
        for (std::size_t k = 0; k + 1 < n; ++k) {
            bytes.push_back(static_cast<std::uint8_t>(block >> (16 - 8 * k) & 255));
        }
    }
    return bytes;
}

std::optional<ReviewAct> actOf(const Object& body) {
    const std::string name = textMember(body, "act").value_or("");
    const auto known =
        std::find_if(kActs.begin(), kActs.end(), [&](const auto& a) { return a.second == name; });
    const auto at = integerMember(body, "at_ms");
    if (known == kActs.end() || !at) {
        return std::nullopt;
    }
    ReviewAct result;
    result.atMs = *at;
    result.act = known->first;
    switch (result.act) {
    case Act::go:
        if (const auto clip = textMember(body, "clip")) {
            result.clip = base::Id::fromHex(*clip);
            if (!result.clip) {
                return std::nullopt;
            }
        }
        result.time = base::Seconds{numberMember(body, "time_s").value_or(0.0)};
        break;
    case Act::play:
        result.speed = numberMember(body, "speed").value_or(1.0);
        break;
    case Act::zoom:
        if (const Value* box = member(body, "box"); box != nullptr && box->array() != nullptr) {
            std::array<double, 4> n{};
            if (box->array()->size() != 4) {
                return std::nullopt;
            }
            for (std::size_t i = 0; i < 4; ++i) {
                const auto number = (*box->array())[i].number();
                if (!number) {
                    return std::nullopt;
                }
                n[i] = *number;
            }
            result.zoom = base::Box{n[0], n[1], n[2], n[3]};
        }
        break;
    case Act::draw:
        if (const Value* points = member(body, "points"); points != nullptr && points->array() != nullptr) {
            for (const Value& value : *points->array()) {
                const auto point = detail::pointOf(&value);
                if (!point) {
                    return std::nullopt;
                }
                result.points.push_back(*point);
            }
        }
        break;
    case Act::marks:
        result.on = booleanMember(body, "on").value_or(true);
        break;
    case Act::beside:
        if (const auto clip = textMember(body, "clip")) {
            result.clip = base::Id::fromHex(*clip);
            if (!result.clip) {
                return std::nullopt;
            }
        }
        if (const Value* same = member(body, "same"); same != nullptr && same->array() != nullptr) {
            for (const Value& value : *same->array()) {
                const auto pair = detail::pointOf(&value);
                if (!pair) {
                    return std::nullopt;
                }
                result.same.push_back({base::Seconds{pair->x}, base::Seconds{pair->y}});
            }
        }
        break;
    case Act::light:
        result.on = booleanMember(body, "on").value_or(true);
        result.lit.check = textMember(body, "check").value_or("");
        result.lit.state = textMember(body, "state").value_or("unknown");
        result.lit.words = textMember(body, "words").value_or("");
        break;
    case Act::freeze:
    case Act::clear:
        break;
    }
    return result;
}

base::Error badValue(std::string sentence) {
    return base::inputError("record.bad_value", std::move(sentence));
}

bool finite(base::Vec2 p) {
    return std::isfinite(p.x) && std::isfinite(p.y) && std::abs(p.x) < 1e5 && std::abs(p.y) < 1e5;
}

base::Result<void> checkNote(const Review& value) {
    for (const std::string* text : {&value.saw, &value.said, &value.next}) {
        if (text->size() > 10'000 || !isUtf8(*text)) {
            return badValue("A line of the note is too long or cannot be read; keep it under 10,000 "
                            "characters.");
        }
    }
    return {};
}

base::Result<void> checkBesideAndLight(const ReviewAct& act, const std::string& which) {
    if (act.act == Act::beside && act.clip) {
        const bool count = !act.same.empty() && act.same.size() <= kMostPositions;
        bool rising = true;
        for (std::size_t i = 0; i < act.same.size(); ++i) {
            const auto [here, there] = act.same[i];
            rising = rising && finite({here.value(), there.value()}) && here.value() >= 0.0 &&
                     there.value() >= 0.0 &&
                     (i == 0 || (act.same[i - 1].here < here && act.same[i - 1].there <= there));
        }
        if (!count || !rising) {
            return badValue(which +
                            "needs 1 to 200 rising pairs of film seconds that show the same position.");
        }
    }
    if (act.act == Act::light) {
        if (act.on && act.lit.check.empty()) {
            return badValue(which + "needs the id of a checkpoint.");
        }
        for (const std::string* text : {&act.lit.check, &act.lit.state, &act.lit.words}) {
            if (text->size() > 500 || !isUtf8(*text)) {
                return badValue(which + "has a text that is too long or cannot be read; keep it under 500 "
                                        "characters.");
            }
        }
    }
    return {};
}

/// Straight between the pairs, held outside them.
base::Seconds thereAt(const std::vector<SamePosition>& same, base::Seconds here) {
    if (same.empty()) {
        return base::Seconds{0.0};
    }
    const auto after = std::find_if(same.begin(), same.end(), [&](const auto& p) { return p.here > here; });
    if (after == same.begin()) {
        return same.front().there;
    }
    if (after == same.end()) {
        return same.back().there;
    }
    const SamePosition& a = *std::prev(after);
    const double share = (here - a.here).value() / (after->here - a.here).value();
    return a.there + (after->there - a.there) * share;
}

} // namespace

std::string_view actName(Act act) {
    return kActs.at(static_cast<std::size_t>(act)).second;
}

std::optional<Act> actFromName(std::string_view name) {
    const auto it = std::find_if(kActs.begin(), kActs.end(), [&](const auto& a) { return a.second == name; });
    return it == kActs.end() ? std::nullopt : std::optional(it->first);
}

Object bodyOf(const Review& value) {
    Array acts;
    for (const ReviewAct& act : value.acts) {
        Object item{{"at_ms", act.atMs}, {"act", actName(act.act)}};
        switch (act.act) {
        case Act::go:
            if (act.clip) {
                item.emplace("clip", act.clip->hex());
            }
            item.emplace("time_s", act.time.value());
            break;
        case Act::play:
            item.emplace("speed", act.speed);
            break;
        case Act::zoom:
            if (act.zoom) {
                item.emplace("box", Array{act.zoom->x, act.zoom->y, act.zoom->width, act.zoom->height});
            }
            break;
        case Act::draw: {
            Array points;
            for (const base::Vec2 p : act.points) {
                points.push_back(detail::point(p));
            }
            item.emplace("points", std::move(points));
            break;
        }
        case Act::marks:
            item.emplace("on", act.on);
            break;
        case Act::beside: {
            if (act.clip) {
                item.emplace("clip", act.clip->hex());
                Array same;
                for (const SamePosition& position : act.same) {
                    same.push_back(detail::point({position.here.value(), position.there.value()}));
                }
                item.emplace("same", std::move(same));
            }
            break;
        }
        case Act::light:
            item.emplace("on", act.on);
            for (const auto& [key, text] :
                 {std::pair{"check", &act.lit.check}, {"state", &act.lit.state}, {"words", &act.lit.words}}) {
                if (!text->empty() && (act.on || text == &act.lit.check)) {
                    item.emplace(key, *text);
                }
            }
            break;
        case Act::freeze:
        case Act::clear:
            break;
        }
        acts.emplace_back(std::move(item));
    }
    Array captions;
    for (const ReviewCaption& caption : value.captions) {
        captions.emplace_back(
            Object{{"from_ms", caption.fromMs}, {"to_ms", caption.toMs}, {"text", caption.text}});
    }
    Object body{{"length_ms", value.lengthMs}, {"acts", std::move(acts)}};
    if (!captions.empty()) {
        body.emplace("captions", std::move(captions));
    }
    if (value.voice) {
        body.emplace("voice", value.voice->hex());
    }
    Array pieces;
    for (const VoicePiece& piece : value.pieces) {
        pieces.emplace_back(Object{{"voice", piece.voice.hex()},
                                   {"at_ms", piece.atMs},
                                   {"from_ms", piece.fromMs},
                                   {"to_ms", piece.toMs}});
    }
    if (!pieces.empty()) {
        body.emplace("pieces", std::move(pieces));
    }
    for (const auto& [key, text] :
         {std::pair{"saw", &value.saw}, {"said", &value.said}, {"next", &value.next}}) {
        if (!text->empty()) {
            body.emplace(key, *text);
        }
    }
    return body;
}

std::optional<Review> reviewOf(const Object& body) {
    const auto length = integerMember(body, "length_ms");
    if (!length) {
        return std::nullopt;
    }
    Review review;
    review.lengthMs = *length;
    if (const auto voice = textMember(body, "voice")) {
        review.voice = base::Id::fromHex(*voice);
    }
    if (const Value* pieces = member(body, "pieces"); pieces != nullptr && pieces->array() != nullptr) {
        for (const Value& value : *pieces->array()) {
            const Object empty;
            const Object& item = value.object() != nullptr ? *value.object() : empty;
            const auto of = base::Id::fromHex(textMember(item, "voice").value_or(""));
            const auto at = integerMember(item, "at_ms");
            const auto from = integerMember(item, "from_ms");
            const auto to = integerMember(item, "to_ms");
            if (of && at && from && to) {
                review.pieces.push_back({*of, *at, *from, *to});
            }
        }
    }
    if (const Value* acts = member(body, "acts"); acts != nullptr && acts->array() != nullptr) {
        for (const Value& value : *acts->array()) {
            if (const auto act = value.object() == nullptr ? std::nullopt : actOf(*value.object())) {
                review.acts.push_back(*act);
            }
        }
    }
    if (const Value* captions = member(body, "captions");
        captions != nullptr && captions->array() != nullptr) {
        for (const Value& value : *captions->array()) {
            if (const Object* item = value.object()) {
                const auto from = integerMember(*item, "from_ms");
                const auto to = integerMember(*item, "to_ms");
                if (from && to) {
                    review.captions.push_back({*from, *to, textMember(*item, "text").value_or("")});
                }
            }
        }
    }
    review.saw = textMember(body, "saw").value_or("");
    review.said = textMember(body, "said").value_or("");
    review.next = textMember(body, "next").value_or("");
    return review;
}

Object bodyOf(const Voice& value) {
    return {{"format", value.format}, {"length_ms", value.lengthMs}, {"data", base::base64(value.bytes)}};
}

std::optional<Voice> voiceOf(const Object& body) {
    const auto format = textMember(body, "format");
    const auto length = integerMember(body, "length_ms");
    const auto data = textMember(body, "data");
    if (!format || !length || !data) {
        return std::nullopt;
    }
    auto bytes = fromBase64(*data);
    if (!bytes) {
        return std::nullopt;
    }
    return Voice{*format, *length, std::move(*bytes)};
}

Object bodyOf(const Starred& value) {
    return {{"time_s", value.time.value()}, {"on", value.on}};
}

std::optional<Starred> starredOf(const Object& body) {
    const auto time = numberMember(body, "time_s");
    if (!time || !(*time >= 0.0 && *time < 1e6)) {
        return std::nullopt;
    }
    return Starred{base::Seconds{*time}, booleanMember(body, "on").value_or(true)};
}

base::Result<void> check(const Review& value) {
    const bool noteOnly =
        value.acts.empty() && value.lengthMs == 0 && !hasVoice(value) && value.captions.empty();
    if (noteOnly && value.saw.empty() && value.said.empty() && value.next.empty()) {
        return badValue("The note is empty; tell what you saw, what you said or what comes next.");
    }
    if (auto good = checkNote(value); !good || noteOnly) {
        return good;
    }
    if (value.lengthMs <= 0 || value.lengthMs > kMostReviewMs) {
        return badValue("A review lasts more than nothing and up to 30 minutes; check length_ms.");
    }
    if (value.acts.empty() || value.acts.size() > kMostActs) {
        return badValue("A review needs at least one act (and at most 20,000).");
    }
    if (value.acts.front().act != Act::go || !value.acts.front().clip || value.acts.front().atMs != 0) {
        return badValue("A review begins with a go at 0 ms that names a clip; put it first.");
    }
    std::int64_t before = 0;
    for (std::size_t i = 0; i < value.acts.size(); ++i) {
        const ReviewAct& act = value.acts[i];
        const std::string which =
            "Act " + std::to_string(i + 1) + " (" + std::string(actName(act.act)) + ") ";
        if (act.atMs < before || act.atMs > value.lengthMs) {
            return badValue(which + "is out of order or after the end; sort the acts by at_ms.");
        }
        before = act.atMs;
        if (!std::isfinite(act.time.value()) || act.time.value() < 0.0 || act.time.value() > 1e6) {
            return badValue(which + "has no possible time in a film; check time_s.");
        }
        if (!(act.speed >= 0.01 && act.speed <= 8.0)) {
            return badValue(which + "has a speed outside 0.01 to 8 film seconds a second.");
        }
        if (act.zoom && !(finite({act.zoom->x, act.zoom->y}) && act.zoom->width >= 8.0 &&
                          act.zoom->height >= 8.0 && act.zoom->width < 1e5 && act.zoom->height < 1e5)) {
            return badValue(which + "needs a box of at least 8 x 8 pixels, or none for the whole picture.");
        }
        if (act.act == Act::draw && (act.points.size() < 2 || act.points.size() > kMostPoints ||
                                     !std::all_of(act.points.begin(), act.points.end(), finite))) {
            return badValue(which + "needs 2 to 500 points in picture pixels.");
        }
        if (auto good = checkBesideAndLight(act, which); !good) {
            return good;
        }
    }
    before = 0;
    if (value.pieces.size() > kMostPieces || (value.voice && !value.pieces.empty())) {
        return badValue("A review has one voice or up to 1,000 pieces of voices, not both.");
    }
    for (const VoicePiece& piece : value.pieces) {
        if (piece.fromMs < 0 || piece.toMs <= piece.fromMs || piece.atMs < before ||
            piece.toMs > kMostReviewMs || piece.atMs + piece.toMs - piece.fromMs > value.lengthMs) {
            return badValue("Pieces of the voice must follow each other and end with the review.");
        }
        before = piece.atMs + piece.toMs - piece.fromMs;
    }
    before = 0;
    for (const ReviewCaption& caption : value.captions) {
        if (caption.fromMs < before || caption.toMs <= caption.fromMs || caption.toMs > value.lengthMs) {
            return badValue("Captions must follow each other and end with the review; check from_ms and "
                            "to_ms.");
        }
        before = caption.toMs;
        if (caption.text.size() > 1000 || !isUtf8(caption.text)) {
            return badValue("A caption is too long or cannot be read; keep it under 1,000 characters.");
        }
    }
    return {};
}

ReviewStanding standingAt(const Review& review, double milliseconds) {
    ReviewView view;
    double speed = 0.0; // film seconds a second
    double since = 0.0; // ms at which `view.time` was true
    const std::vector<SamePosition>* same = nullptr;
    for (const ReviewAct& act : review.acts) {
        const auto at = static_cast<double>(act.atMs);
        if (at > milliseconds) {
            break;
        }
        if (speed != 0.0) {
            view.time += base::Seconds{speed * (at - since) / 1000.0};
        }
        since = at;
        switch (act.act) {
        case Act::go:
            if (act.clip && act.clip != view.clip) {
                // Another picture: what was put over the first one does not belong to it.
                view.clip = act.clip;
                view.strokes.clear();
                view.lights.clear();
                view.zoom.reset();
                view.beside.reset();
            }
            view.time = act.time;
            break;
        case Act::play:
            speed = act.speed;
            break;
        case Act::freeze:
            speed = 0.0;
            break;
        case Act::zoom:
            view.zoom = act.zoom;
            break;
        case Act::draw:
            view.strokes.push_back(act.points);
            break;
        case Act::clear:
            view.strokes.clear();
            break;
        case Act::marks:
            view.marks = act.on;
            break;
        case Act::beside:
            view.beside = act.clip;
            same = &act.same;
            break;
        case Act::light:
            std::erase_if(view.lights, [&](const LitCheck& lit) {
                return (!act.on && act.lit.check.empty()) || lit.check == act.lit.check;
            });
            if (act.on) {
                view.lights.push_back(act.lit);
            }
            break;
        }
    }
    if (speed != 0.0) {
        view.time += base::Seconds{speed * std::max(0.0, milliseconds - since) / 1000.0};
    }
    if (view.beside && same != nullptr) {
        view.besideTime = thereAt(*same, view.time);
    }
    return {std::move(view), speed, same != nullptr && !same->empty() ? *same : std::vector<SamePosition>()};
}

ReviewView viewAt(const Review& review, double milliseconds) {
    return standingAt(review, milliseconds).view;
}

} // namespace plumbmark::records
