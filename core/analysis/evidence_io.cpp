// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "analysis/evidence_io.h"

#include <array>
#include <bit>
#include <concepts>
#include <cstring>
#include <type_traits>

#include "analysis/detail/evidence.h"
#include "analysis/detail/recipe.h"
#include "base/hash.h"

namespace plumbmark::analysis {
namespace {

// One list of fields per struct serves both directions. The structured bindings fail to compile when a struct
// gains or loses a member: then add it to the list below, or say why it is left out.

class Writer {
  public:
    static constexpr bool reading = false;
    std::vector<std::uint8_t> bytes;
    template <class T> void raw(const T& value) {
        const auto* p = reinterpret_cast<const std::uint8_t*>(&value);
        bytes.insert(bytes.end(), p, p + sizeof(T));
    }
    [[nodiscard]] bool good() const { return true; }
};

class Reader {
  public:
    static constexpr bool reading = true;
    explicit Reader(std::span<const std::uint8_t> bytes) : bytes_(bytes) {}
    template <class T> void raw(T& value) {
        if (bytes_.size() < sizeof(T)) {
            bytes_ = {};
            good_ = false;
            return;
        }
        std::memcpy(&value, bytes_.data(), sizeof(T));
        bytes_ = bytes_.subspan(sizeof(T));
    }
    [[nodiscard]] bool good() const { return good_; }
    void fail() { good_ = false; }
    [[nodiscard]] std::size_t left() const { return bytes_.size(); }

  private:
    std::span<const std::uint8_t> bytes_;
    bool good_ = true;
};

template <class A, class T> void field(A& a, T& value);
template <class A, class... T> void fields(A& a, T&... values) {
    (field(a, values), ...);
}

template <class A, class T>
requires std::is_arithmetic_v<std::remove_const_t<T>>
void each(A& a, T& value) {
    if constexpr (std::is_same_v<std::remove_const_t<T>, bool>) {
        std::uint8_t byte = value ? 1 : 0;
        a.raw(byte);
        if constexpr (A::reading) {
            value = byte == 1;
        }
    } else {
        a.raw(value);
    }
}
template <class A, class T>
requires std::is_enum_v<std::remove_const_t<T>>
void each(A& a, T& value) {
    auto number = static_cast<std::int32_t>(value);
    a.raw(number);
    if constexpr (A::reading) {
        value = static_cast<T>(number);
    }
}
template <class A, class U> void each(A& a, base::Quantity<U>& value) {
    double number = value.value();
    a.raw(number);
    if constexpr (A::reading) {
        value = base::Quantity<U>{number};
    }
}
template <class A, class U> void each(A& a, const base::Quantity<U>& value) {
    const double number = value.value();
    a.raw(number);
}
/// Length of a list; a reader refuses one that cannot be there.
template <class A> std::size_t count(A& a, std::size_t size) {
    auto number = static_cast<std::uint64_t>(size);
    a.raw(number);
    if constexpr (A::reading) {
        if (number > a.left()) {
            a.fail();
            return 0;
        }
    }
    return static_cast<std::size_t>(number);
}
template <class A, class T> void list(A& a, T& values) {
    const std::size_t size = count(a, values.size());
    if constexpr (A::reading) {
        values.clear();
        for (std::size_t i = 0; i < size && a.good(); ++i) {
            field(a, values.emplace_back());
        }
    } else {
        for (const auto& value : values) {
            field(a, value);
        }
    }
}
template <class A, class T> void each(A& a, std::vector<T>& values) {
    list(a, values);
}
template <class A, class T> void each(A& a, const std::vector<T>& values) {
    list(a, values);
}
template <class A, class T> void text(A& a, T& value) {
    const std::size_t size = count(a, value.size());
    if constexpr (A::reading) {
        value.resize(size);
    }
    for (auto& letter : value) {
        a.raw(letter);
    }
}
template <class A> void each(A& a, std::string& value) {
    text(a, value);
}
template <class A> void each(A& a, const std::string& value) {
    text(a, value);
}
template <class A, class T> void maybe(A& a, T& value) {
    bool there = value.has_value();
    field(a, there);
    if constexpr (A::reading) {
        if (there) {
            value.emplace();
        } else {
            value.reset();
        }
    }
    if (there && a.good()) {
        field(a, *value);
    }
}
template <class A, class T> void each(A& a, std::optional<T>& value) {
    maybe(a, value);
}
template <class A, class T> void each(A& a, const std::optional<T>& value) {
    maybe(a, value);
}
template <class A, class T, std::size_t N> void each(A& a, std::array<T, N>& values) {
    for (auto& value : values) {
        field(a, value);
    }
}
template <class A, class T, std::size_t N> void each(A& a, const std::array<T, N>& values) {
    for (const auto& value : values) {
        field(a, value);
    }
}

/// T or const T.
template <class T, class S>
concept Is = std::same_as<std::remove_const_t<T>, S>;

template <class A, Is<base::Vec2> T> void each(A& a, T& v) {
    auto& [x, y] = v;
    fields(a, x, y);
}
template <class A, Is<base::Box> T> void each(A& a, T& v) {
    auto& [x, y, width, height] = v;
    fields(a, x, y, width, height);
}
template <class A, Is<marks::Mark> T> void each(A& a, T& v) {
    auto& [at, sigma, origin] = v;
    fields(a, at, sigma, origin);
}
template <class A, Is<marks::FrameMarks> T> void each(A& a, T& v) {
    auto& [time, points] = v;
    fields(a, time, points);
}
template <class A, Is<marks::TimeScale> T> void each(A& a, T& v) {
    auto& [realPerShown, known, source] = v;
    fields(a, realPerShown, known, source);
}
template <class A, Is<video::ClipInfo> T> void each(A& a, T& v) {
    auto& [width, height, frames, duration, rotation, mirrored, playbackFps, captureFps, captureSource,
           uneven, hasSound, codec, warnings] = v;
    fields(a, width, height, frames, duration, rotation, mirrored, playbackFps, captureFps, captureSource,
           uneven, hasSound, codec, warnings);
}
template <class A, Is<scene::Vertical> T> void each(A& a, T& v) {
    auto& [angle, sigma, source] = v;
    fields(a, angle, sigma, source);
}
template <class A, Is<scene::GroundMotion::Step> T> void each(A& a, T& v) {
    auto& [k, b, tx, ty] = v;
    fields(a, k, b, tx, ty);
}
template <class A, Is<scene::GroundMotion> T> void each(A& a, T& v) {
    std::vector<scene::GroundMotion::Step> steps = v.steps();
    double sigma = v.sigmaPixels();
    fields(a, steps, sigma);
    if constexpr (A::reading) {
        v = scene::GroundMotion(std::move(steps), sigma);
    }
}
template <class A, Is<body::TrunkLine> T> void each(A& a, T& v) {
    auto& [time, low, high, sigma] = v;
    fields(a, time, low, high, sigma);
}
template <class A, Is<body::StatureEstimate> T> void each(A& a, T& v) {
    auto& [pixels, sigma] = v;
    fields(a, pixels, sigma);
}
template <class A, Is<body::AutoTrack> T> void each(A& a, T& v) {
    auto& [track, trunk, boxes, stature, still, warnings] = v;
    fields(a, track, trunk, boxes, stature, still, warnings);
}
template <class A, Is<club::Hands> T> void each(A& a, T& v) {
    auto& [grip, leadWrist, trailWrist, leadElbow, trailElbow, stature, sigma] = v;
    fields(a, grip, leadWrist, trailWrist, leadElbow, trailElbow, stature, sigma);
}
template <class A, Is<club::LineCandidate> T> void each(A& a, T& v) {
    auto& [angle, sigma, throughX, throughY, near, reach, sigmaPixels, bend, score] = v;
    fields(a, angle, sigma, throughX, throughY, near, reach, sigmaPixels, bend, score);
}
template <class A, Is<club::Evidence> T> void each(A& a, T& v) {
    auto& [frame, time, hands, score, offset, reach, lines] = v;
    fields(a, frame, time, hands, score, offset, reach, lines);
}
template <class A, Is<club::ShaftSample> T> void each(A& a, T& v) {
    auto& [time, angle, sigma, through, butt, head, headSigma, origin] = v;
    fields(a, time, angle, sigma, through, butt, head, headSigma, origin);
}
template <class A, Is<club::Ball> T> void each(A& a, T& v) {
    auto& [centre, radius, sigma, lastSeen, firstGone] = v;
    fields(a, centre, radius, sigma, lastSeen, firstGone);
}
template <class A, Is<swing::Hit> T> void each(A& a, T& v) {
    auto& [time, strength] = v;
    fields(a, time, strength);
}
/// Left out: the request (told anew), and what the network saw frame by frame (nothing after the pass asks).
template <class A, Is<Evidence> T> void each(A& a, T& v) {
    fields(a, v.clip, v.times, v.timeScale, v.body, v.shaftEvidence, v.shaft, v.ball, v.ground, v.hits,
           v.vertical, v.warnings);
}

template <class A, class T> void field(A& a, T& value) {
    if (a.good()) {
        each(a, value);
    }
}

constexpr std::size_t kHash = 64;

} // namespace

std::string evidenceName(std::string_view filmSha256, const NetworkBytes& network, const Request& request) {
    Writer w;
    const std::string film(filmSha256);
    const std::string recipe(detail::kRecipe);
    const std::string net = network ? base::sha256Hex(*network) : "";
    const auto& c = request.context;
    const std::string club = c.club ? marks::clubName(*c.club) : "";
    fields(w, film, recipe, net, c.view, c.hand, c.shot, club, c.mirrored, request.rollDegrees,
           request.captureFps);
    if (request.plumbEdge) {
        fields(w, request.plumbEdge->first, request.plumbEdge->second);
    }
    if (!network) { // then the marks tell the club's search where the hands are
        for (const marks::HandMark& mark : request.handMarks) {
            fields(w, mark.frame, mark.landmark, mark.at, mark.sigma);
        }
    }
    return base::sha256Hex(w.bytes);
}

std::vector<std::uint8_t> packEvidence(const Evidence& evidence) {
    Writer w;
    field(w, evidence);
    const std::string hash = base::sha256Hex(w.bytes);
    w.bytes.insert(w.bytes.end(), hash.begin(), hash.end());
    return std::move(w.bytes);
}

std::shared_ptr<const Evidence> unpackEvidence(std::span<const std::uint8_t> bytes, const Request& request) {
    if (bytes.size() < kHash) {
        return nullptr;
    }
    const auto body = bytes.first(bytes.size() - kHash);
    const auto told = bytes.last(kHash);
    const std::string hash = base::sha256Hex(body);
    if (!std::equal(told.begin(), told.end(), hash.begin())) {
        return nullptr;
    }
    auto evidence = std::make_shared<Evidence>();
    Reader reader(body);
    field(reader, *evidence);
    if (!reader.good() || reader.left() != 0) {
        return nullptr;
    }
    evidence->request = request;
    return evidence;
}

} // namespace plumbmark::analysis
