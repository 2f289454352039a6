// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "body/observer.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "body/detail/crop.h"
#include "body/network.h"

namespace plumbmark::body {
namespace {

constexpr double kKeepPresence =
    0.5; ///< below: the player is lost (good crops give 1.00, empty ones under 0.1)
constexpr double kHopePresence = 0.3; ///< a search crop worth a second look
/// Mean height of the big joints' heat-map peaks. Whole people in photographs gave 0.66 to 0.83, a horse
/// 0.42, a person cut at the thighs 0.46, a kite and a half-hidden person 0.30.
constexpr double kConvincing = 0.55;
constexpr double kHopeSure = 0.38;
constexpr int kFirstBudget = 200;      ///< network runs of the first search: the whole plan
constexpr int kNextBudget = 12;        ///< and of each later one, so that an empty stretch stays cheap
constexpr double kRegionMargin = 1.25; ///< side of the next region over the body circle's diameter
constexpr double kLargestTurn = 75.0 * std::numbers::pi / 180.0;

double probability(double logOdds) {
    return 1.0 / (1.0 + std::exp(-logOdds));
}

/// What one network run says about the next region.
struct Look {
    PoseOutput output;
    Region region;
    [[nodiscard]] base::Vec2 crop(int point) const {
        const auto at = static_cast<std::size_t>(point) * 5;
        return {output.landmarks[at] / PoseOutput::kSide, output.landmarks[at + 1] / PoseOutput::kSide};
    }
    [[nodiscard]] base::Vec2 picture(int point) const { return region.toPicture(crop(point)); }
    [[nodiscard]] base::Vec2 picture(Point point) const { return picture(static_cast<int>(point)); }
    [[nodiscard]] base::Vec2 middle(Point a, Point b) const { return base::midpoint(picture(a), picture(b)); }
};

double sure(const PoseOutput& out) {
    constexpr std::array joints{Point::nose,       Point::left_shoulder, Point::right_shoulder,
                                Point::left_hip,   Point::right_hip,     Point::left_knee,
                                Point::right_knee, Point::left_ankle,    Point::right_ankle};
    constexpr std::ptrdiff_t cells =
        static_cast<std::ptrdiff_t>(PoseOutput::kHeatSide) * PoseOutput::kHeatSide;
    double sum = 0.0;
    for (const Point joint : joints) {
        const float* heat = out.heat.data() + static_cast<std::ptrdiff_t>(joint) * cells;
        sum += probability(*std::max_element(heat, heat + cells));
    }
    return sum / joints.size();
}

/// Somebody is there. The presence answer alone falls where a hat hides the face or the body curls up, while
/// the joints still stand out clearly.
bool holds(const PoseOutput& out) {
    return out.presence >= kKeepPresence || (out.presence >= 0.1 && sure(out) >= 0.5);
}

/// Clockwise turn that stands the line low -> high upright; y is down.
double turnOf(base::Vec2 low, base::Vec2 high) {
    return std::atan2(high.x - low.x, low.y - high.y);
}

/// Centroid of the heat around its peak near the direct answer. A cell stands for its upper left corner: read
/// by cells' middles, every point of a picture and of its mirror image lie a whole cell apart.
void readHeat(const float* heat, base::Vec2 directCrop, const Region& region, PosePoint& point) {
    constexpr int n = PoseOutput::kHeatSide;
    constexpr int search = 9; // cells around the direct answer
    constexpr float costPerCell =
        0.12F;               // of two like peaks (left and right are mixed up at times) the nearer counts
    constexpr int reach = 3; // cells around the peak
    const int cx = std::clamp(static_cast<int>(directCrop.x * n), 0, n - 1);
    const int cy = std::clamp(static_cast<int>(directCrop.y * n), 0, n - 1);
    int px = cx;
    int py = cy;
    float best = -1e9F;
    for (int y = std::max(0, cy - search); y <= std::min(n - 1, cy + search); ++y) {
        for (int x = std::max(0, cx - search); x <= std::min(n - 1, cx + search); ++x) {
            const float value = heat[y * n + x] - costPerCell * std::hypot(static_cast<float>(x - cx),
                                                                           static_cast<float>(y - cy));
            if (value > best) {
                best = value;
                px = x;
                py = y;
            }
        }
    }
    const double cell = region.size / n;
    const double top = probability(heat[py * n + px]);
    double sum = 0.0;
    double mx = 0.0;
    double my = 0.0;
    double m2 = 0.0;
    for (int y = std::max(0, py - reach); y <= std::min(n - 1, py + reach); ++y) {
        for (int x = std::max(0, px - reach); x <= std::min(n - 1, px + reach); ++x) {
            const double w = std::max(0.0, probability(heat[y * n + x]) - 0.1 * top);
            sum += w;
            mx += w * x;
            my += w * y;
            m2 += w * ((x - px) * (x - px) + (y - py) * (y - py));
        }
    }
    if (top < 0.3 || sum <= 0) { // no peak worth the name
        point.peak = point.direct;
        point.spread = 2.5 * cell;
        return;
    }
    point.peak = region.toPicture({mx / sum / n, my / sum / n});
    const double ox = mx / sum - px;
    const double oy = my / sum - py;
    point.spread = cell * std::sqrt(std::max(0.1, (m2 / sum - ox * ox - oy * oy) / 2));
}

base::Box boxAround(const Observation& o) {
    double left = 1e9;
    double top = 1e9;
    double right = -1e9;
    double bottom = -1e9;
    const auto take = [&](base::Vec2 p) {
        left = std::min(left, p.x);
        right = std::max(right, p.x);
        top = std::min(top, p.y);
        bottom = std::max(bottom, p.y);
    };
    for (const PosePoint& p : o.points) {
        take(p.direct);
    }
    for (int row = 0; row < Silhouette::kRows && !o.silhouette.empty(); row += 2) {
        for (const auto* s = o.silhouette.begin(row); s != o.silhouette.end(row); ++s) {
            const double y = (row + 0.5) / Silhouette::kRows;
            take(o.region.toPicture({s->from / Silhouette::kRows, y}));
            take(o.region.toPicture({s->to / Silhouette::kRows, y}));
        }
    }
    return {left, top, right - left, bottom - top};
}

class NetworkObserver final : public Observer {
  public:
    NetworkObserver(std::unique_ptr<PoseNetwork> network, marks::View view)
        : network_(std::move(network)), view_(view) {}

    [[nodiscard]] std::vector<Region> others() const override { return others_; }
    [[nodiscard]] bool upsideDown() const override { return upsideDown_; }

    void stopWhen(std::function<bool()> stop) override { stop_ = std::move(stop); }

    void restart() override {
        next_.reset();
        last_.reset();
        searched_ = 0;
        searchedOnce_ = false;
        others_.clear();
        upsideDown_ = false;
    }

    void restartNear(const Region& region) override {
        restart();
        last_ = region; // a search begins where somebody was last
    }

    base::Result<std::optional<Observation>> observe(const video::Frame& frame) override {
        if (frame.empty() || frame.width() < 16 || frame.height() < 16) {
            next_.reset();
            return std::optional<Observation>{}; // too small to show anybody
        }
        if (upsideDown_) {
            return std::optional<Observation>{};
        }
        bool fresh = false;
        std::optional<Look> look;
        if (next_) {
            auto answer = see(frame, *next_);
            if (!answer) {
                return answer.error();
            }
            if (holds(answer->output)) {
                look = std::move(*answer);
            }
        }
        if (!look && next_ && last_) { // most often the crop's turn went astray: once more upright and wider
            auto answer = see(frame, Region{last_->centre, last_->size * 1.1, 0.0});
            if (!answer) {
                return answer.error();
            }
            if (holds(answer->output)) {
                look = std::move(*answer);
            }
        }
        if (!look) {
            next_.reset();
            fresh = true;
            auto found = search(frame, searchedOnce_ ? kNextBudget : kFirstBudget);
            if (!found) {
                return found.error();
            }
            searchedOnce_ = true;
            if (!*found || upsideDown_) {
                return std::optional<Observation>{};
            }
            auto answer = see(frame, **found);
            if (!answer) {
                return answer.error();
            }
            if (!holds(answer->output)) {
                return std::optional<Observation>{};
            }
            look = std::move(*answer);
        }
        // The turn of the crop feeds back on the answer: repeat until it has settled. From frame to frame one
        // run is enough, because the last frame's answer is a good start.
        for (int i = 0; i < (fresh ? 4 : 2); ++i) {
            const Region better = regionAfter(*look, fresh);
            if (std::abs(better.turn - look->region.turn) < (fresh ? 0.03 : 0.14)) {
                break;
            }
            auto again = see(frame, better);
            if (!again) {
                return again.error();
            }
            if (!holds(again->output)) {
                break;
            }
            look = std::move(*again);
        }
        next_ = regionAfter(*look, fresh);
        last_ = next_;
        return std::optional<Observation>{keep(frame, *look)};
    }

  private:
    base::Result<Look> see(const video::Frame& frame, const Region& region) {
        auto output = network_->run(detail::cropRgb(frame, region, PoseOutput::kSide));
        if (!output) {
            return output.error();
        }
        return Look{std::move(*output), region};
    }

    /// Centre and size from the network's two circle points; the turn stands the trunk upright.
    [[nodiscard]] Region regionAfter(const Look& look, bool fresh) const {
        const base::Vec2 centre = look.picture(33);
        const double size = 2 * kRegionMargin * base::length(look.picture(34) - centre);
        Region next;
        next.centre = centre;
        // The body's size hardly changes within a clip; its circle breathes with the pose.
        next.size = fresh ? size : std::clamp(size, look.region.size * 0.97, look.region.size * 1.03);
        const base::Vec2 hips = look.middle(Point::left_hip, Point::right_hip);
        const base::Vec2 shoulders = look.middle(Point::left_shoulder, Point::right_shoulder);
        const base::Vec2 hands = look.middle(Point::left_wrist, Point::right_wrist);
        const base::Vec2 up = shoulders - hips;
        const bool handsHigh = base::dot(hands - shoulders, up) > 0;
        if (view_ == marks::View::downTheLine || !handsHigh) {
            next.turn = std::clamp(turnOf(hips, shoulders), -kLargestTurn, kLargestTurn);
        } else {
            next.turn = 0.0;
        }
        return next;
    }

    /// One person found by the search.
    struct Person {
        Region region;
        double score = 0.0;
        bool convincing = false;
    };

    /// Squares to look into, large to small (a standing player needs about 1.3 times their height), each size
    /// from the middle outward. The network copes with a person off the square's middle by a quarter of its
    /// side, so they lie half a side apart; one lies in the middle, where players are.
    static std::vector<Region> searchPlan(double width, double height) {
        std::vector<Region> plan;
        for (const double share : {1.15, 0.8, 0.55, 0.38, 0.26}) {
            const double side = share * height;
            const auto places = [side](double length) {
                const int n = std::max(0, static_cast<int>(length / side - 0.1)); // beside the middle
                std::vector<double> at;
                for (int i = -n; i <= n; ++i) {
                    at.push_back(length / 2 + i * 0.5 * side);
                }
                return at;
            };
            const std::size_t start = plan.size();
            for (const double y : places(height)) {
                for (const double x : places(width)) {
                    plan.push_back({{x, y}, side, 0.0});
                }
            }
            std::stable_sort(plan.begin() + static_cast<std::ptrdiff_t>(start), plan.end(),
                             [&](const Region& a, const Region& b) {
                                 const base::Vec2 middle{width / 2, height / 2};
                                 return base::length(a.centre - middle) < base::length(b.centre - middle);
                             });
        }
        return plan;
    }

    /// Looks until somebody convincing is found and the next squares would only show smaller people, or until
    /// `budget` network runs are spent; the next search goes on from there.
    base::Result<std::optional<Region>> search(const video::Frame& frame, int budget) {
        std::vector<Person> people;
        const auto bestOf = [&people]() -> const Person* {
            const auto it =
                std::max_element(people.begin(), people.end(),
                                 [](const Person& a, const Person& b) { return a.score < b.score; });
            return it == people.end() ? nullptr : &*it;
        };
        int runs = 0;
        if (last_) { // lost a moment ago: most likely still about there
            for (const double grow : {1.0, 1.25}) {
                auto person = refine(frame, Region{last_->centre, last_->size * grow, 0.0}, runs);
                if (!person) {
                    return person.error();
                }
                if (*person && (*person)->convincing) {
                    return std::optional{(*person)->region};
                }
            }
        }
        const std::vector<Region> plan = searchPlan(frame.width(), frame.height());
        for (std::size_t i = 0; i < plan.size() && runs < budget && !stopped(); ++i) {
            const Region& square = plan[searched_ % plan.size()];
            if (const Person* best = bestOf();
                best != nullptr && best->convincing && square.size < best->region.size * 0.8) {
                break;
            }
            ++searched_;
            const bool known = std::any_of(people.begin(), people.end(), [&](const Person& p) {
                return std::abs(p.region.centre.x - square.centre.x) < 0.2 * square.size &&
                       std::abs(p.region.centre.y - square.centre.y) < 0.3 * square.size;
            });
            if (known) {
                continue;
            }
            auto person = refine(frame, square, runs);
            if (!person) {
                return person.error();
            }
            if (*person) {
                add(people, **person);
            }
        }
        const Person* best = bestOf();
        if (!searchedOnce_ && (best == nullptr || !best->convincing)) {
            if (auto looked = lookUpsideDown(frame); !looked) {
                return looked.error();
            }
        }
        if (best == nullptr) {
            return std::optional<Region>{};
        }
        if (!searchedOnce_) {
            for (const Person& p : people) {
                if (&p != best && p.convincing && p.region.size > 0.7 * best->region.size &&
                    base::length(p.region.centre - best->region.centre) > 0.3 * best->region.size) {
                    others_.push_back(p.region);
                }
            }
        }
        searched_ = 0;
        return std::optional{best->region};
    }

    /// Nobody stands clearly in the picture as it is: does somebody when it is turned by half? Only whole,
    /// large people count.
    base::Result<void> lookUpsideDown(const video::Frame& frame) {
        for (Region square : searchPlan(frame.width(), frame.height())) {
            if (square.size < 0.6 * std::min(frame.width(), frame.height()) || stopped() || upsideDown_) {
                break;
            }
            square.turn = std::numbers::pi;
            auto look = see(frame, square);
            if (!look) {
                return look.error();
            }
            upsideDown_ = look->output.presence > 0.9F && sure(look->output) > kConvincing;
        }
        return {};
    }

    base::Result<std::optional<Person>> refine(const video::Frame& frame, Region region, int& runs) {
        for (int i = 0; i < 4 && !stopped(); ++i) {
            ++runs;
            auto look = see(frame, region);
            if (!look) {
                return look.error();
            }
            if (i == 0 ? look->output.presence < kHopePresence : !holds(look->output)) {
                return std::optional<Person>{};
            }
            const Region next = regionAfter(*look, true);
            const bool inside = next.centre.x > 0 && next.centre.y > 0 && next.centre.x < frame.width() &&
                                next.centre.y < frame.height();
            if (!inside || next.size < 0.1 * frame.height() || next.size > 3.0 * frame.height()) {
                return std::optional<Person>{};
            }
            const bool settled = base::length(next.centre - region.centre) < 0.05 * region.size &&
                                 std::abs(next.size / region.size - 1) < 0.1 &&
                                 std::abs(next.turn - region.turn) < 0.2;
            if (settled || i == 3) {
                const double sureness = sure(look->output);
                if (sureness < kHopeSure) {
                    return std::optional<Person>{};
                }
                Person p;
                p.region = next;
                p.convincing = look->output.presence > 0.9F && sureness > kConvincing;
                // Large, central, clearly a body, and both hands together as a player holds a club; after a
                // loss rather the same person as before.
                const double off = (next.centre.x - frame.width() / 2.0) / frame.width();
                const double apart =
                    base::length(look->picture(Point::left_wrist) - look->picture(Point::right_wrist));
                p.score = std::log(next.size) - 6.0 * off * off + (apart < 0.10 * next.size ? 0.35 : 0.0) +
                          2.0 * std::log(sureness);
                if (last_) {
                    p.score -= 2.0 * std::min(1.0, base::length(last_->centre - next.centre) / last_->size) +
                               std::abs(std::log(next.size / last_->size));
                }
                return std::optional{p};
            }
            region = next;
        }
        return std::optional<Person>{};
    }

    static void add(std::vector<Person>& people, const Person& person) {
        for (Person& p : people) {
            if (base::length(p.region.centre - person.region.centre) <
                0.15 * std::min(p.region.size, person.region.size)) {
                if (person.score > p.score) {
                    p = person;
                }
                return;
            }
        }
        people.push_back(person);
    }

    static Observation keep(const video::Frame& frame, const Look& look) {
        Observation o;
        o.frame = frame.index();
        o.time = frame.time();
        o.presence = look.output.presence;
        o.region = look.region;
        o.silhouette = Silhouette(look.output.mask.data());
        for (int i = 0; i < static_cast<int>(kPointCount); ++i) {
            PosePoint& p = o.points[static_cast<std::size_t>(i)];
            const float* l = look.output.landmarks.data() + static_cast<std::ptrdiff_t>(i) * 5;
            const float* m = look.output.metric.data() + static_cast<std::ptrdiff_t>(i) * 3;
            p.direct = look.picture(i);
            p.depth = l[2] / PoseOutput::kSide * look.region.size;
            p.visibility = probability(l[3]);
            p.metric = {m[0], m[1], m[2]};
            readHeat(look.output.heat.data() +
                         static_cast<std::ptrdiff_t>(i) * PoseOutput::kHeatSide * PoseOutput::kHeatSide,
                     look.crop(i), look.region, p);
        }
        o.box = boxAround(o);
        return o;
    }

    [[nodiscard]] bool stopped() const { return stop_ && stop_(); }

    std::unique_ptr<PoseNetwork> network_;
    std::function<bool()> stop_;
    marks::View view_;
    std::optional<Region> next_; ///< where to look in the next frame; nothing: search
    std::optional<Region> last_; ///< where the player was last seen, even if lost since
    std::size_t searched_ = 0;   ///< place in the search plan
    bool searchedOnce_ = false;
    std::vector<Region> others_;
    bool upsideDown_ = false;
};

} // namespace

base::Result<std::unique_ptr<Observer>> Observer::create(const NetworkBytes& bytes, marks::View view) {
    auto network = PoseNetwork::create(bytes ? std::span<const unsigned char>(*bytes)
                                             : std::span<const unsigned char>{});
    if (!network) {
        return network.error();
    }
    return std::unique_ptr<Observer>(new NetworkObserver(std::move(*network), view));
}

bool Cadence::due(base::Seconds time) const {
    if (!last_) {
        return true;
    }
    const double gap = (time - *last_).value() * realPerShown_;
    // Nobody there at the last look: a search costs many looks, so wait longer.
    const double wanted = !hands_ ? 0.1 : fast_ ? 0.012 : 0.033;
    return gap >= wanted - 1e-4 || gap < 0;
}

void Cadence::seen(base::Seconds time, const std::optional<Observation>& observation) {
    if (observation) {
        const base::Vec2 hands = base::midpoint((*observation)[Point::left_wrist].direct,
                                                (*observation)[Point::right_wrist].direct);
        if (last_ && hands_) {
            const double gap = (time - *last_).value() * realPerShown_;
            // The region's side is about 1.3 statures; hands reach about 2 statures a second going back and 4
            // to 6 coming down (from memory).
            const double speed =
                base::length(hands - *hands_) / observation->region.size / std::max(gap, 1e-3);
            fast_ = speed > 1.6;
        }
        hands_ = hands;
    } else {
        hands_.reset();
        fast_ = false;
    }
    last_ = time;
}

} // namespace plumbmark::body
