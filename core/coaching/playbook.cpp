// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "coaching/playbook.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <fstream>
#include <iterator>
#include <map>
#include <memory>
#include <set>
#include <sstream>
#include <variant>

#include <nlohmann/json.hpp>

#include "coaching/detail/default_playbook.h"

namespace plumbmark::coaching {
namespace {

constexpr int kVersion = 2; // 2: nodes, tendencies, drills, remedies
constexpr std::size_t kDeepest = 16;

struct GroupName {
    ClubGroup group;
    std::string_view name;
};
constexpr std::array<GroupName, 9> kGroups{{{ClubGroup::any, "any"},
                                            {ClubGroup::driver, "driver"},
                                            {ClubGroup::wood, "wood"},
                                            {ClubGroup::hybrid, "hybrid"},
                                            {ClubGroup::long_iron, "long_iron"},
                                            {ClubGroup::mid_iron, "mid_iron"},
                                            {ClubGroup::short_iron, "short_iron"},
                                            {ClubGroup::wedge, "wedge"},
                                            {ClubGroup::putter, "putter"}}};

/// A JSON value that remembers the line it began on, so that a refusal can name it.
struct Json {
    using Members = std::vector<std::pair<std::string, Json>>;
    using Items = std::vector<Json>;
    int line = 0;
    std::variant<std::monostate, bool, double, std::string, std::shared_ptr<Items>, std::shared_ptr<Members>>
        value;

    [[nodiscard]] const Members* object() const {
        const auto* p = std::get_if<std::shared_ptr<Members>>(&value);
        return p ? p->get() : nullptr;
    }
    [[nodiscard]] const Items* array() const {
        const auto* p = std::get_if<std::shared_ptr<Items>>(&value);
        return p ? p->get() : nullptr;
    }
    [[nodiscard]] const std::string* text() const { return std::get_if<std::string>(&value); }
    [[nodiscard]] const double* number() const { return std::get_if<double>(&value); }
    [[nodiscard]] bool null() const { return std::holds_alternative<std::monostate>(value); }
    [[nodiscard]] const Json* member(std::string_view name) const {
        if (const auto* o = object()) {
            for (const auto& [key, node] : *o) {
                if (key == name) {
                    return &node;
                }
            }
        }
        return nullptr;
    }
};

/// Counts lines while the parser pulls characters. A token that needs one character of look-ahead (a number)
/// may have pulled the line end behind it; that character is told apart by `last`.
struct Counter {
    const char* at = nullptr;
    int line = 1;
    char last = 0;
};
class CountingIterator {
  public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;
    CountingIterator(const char* p, Counter* counter) : p_(p), counter_(counter) {}
    const char& operator*() const { return *p_; }
    CountingIterator& operator++() {
        counter_->last = *p_;
        counter_->line += *p_ == '\n';
        ++p_;
        return *this;
    }
    CountingIterator operator++(int) {
        auto old = *this;
        ++*this;
        return old;
    }
    friend bool operator==(const CountingIterator& a, const CountingIterator& b) { return a.p_ == b.p_; }
    friend bool operator!=(const CountingIterator& a, const CountingIterator& b) { return a.p_ != b.p_; }

  private:
    const char* p_;
    Counter* counter_;
};

class Builder : public nlohmann::json_sax<nlohmann::json> {
  public:
    explicit Builder(const Counter& counter) : counter_(counter) {}
    Json root;
    int errorLine = 0;
    std::string errorReason;

    bool null() override { return put({line(), std::monostate{}}); }
    bool boolean(bool v) override { return put({line(), v}); }
    bool number_integer(number_integer_t v) override { return put({line(), static_cast<double>(v)}); }
    bool number_unsigned(number_unsigned_t v) override { return put({line(), static_cast<double>(v)}); }
    bool number_float(number_float_t v, const string_t&) override { return put({line(), v}); }
    bool string(string_t& v) override { return put({line(), v}); }
    bool binary(binary_t&) override { return false; }
    bool start_object(std::size_t) override { return open({line(), std::make_shared<Json::Members>()}); }
    bool key(string_t& v) override {
        auto& members = *std::get<std::shared_ptr<Json::Members>>(stack_.back()->value);
        if (std::any_of(members.begin(), members.end(), [&](const auto& m) { return m.first == v; })) {
            errorLine = counter_.line;
            errorReason = "\"" + v + "\" is given twice";
            return false;
        }
        key_ = v;
        return true;
    }
    bool end_object() override { return close(); }
    bool start_array(std::size_t) override { return open({line(), std::make_shared<Json::Items>()}); }
    bool end_array() override { return close(); }
    bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception&) override {
        errorLine = line();
        errorReason = "the text is not well-formed JSON here";
        return false;
    }

  private:
    [[nodiscard]] int line() const { return counter_.line - (counter_.last == '\n' ? 1 : 0); }
    Json* place(Json node) {
        if (stack_.empty()) {
            root = std::move(node);
            return &root;
        }
        if (auto* members = std::get_if<std::shared_ptr<Json::Members>>(&stack_.back()->value)) {
            (*members)->emplace_back(key_, std::move(node));
            return &(*members)->back().second;
        }
        auto& items = *std::get<std::shared_ptr<Json::Items>>(stack_.back()->value);
        items.push_back(std::move(node));
        return &items.back();
    }
    bool put(Json node) {
        place(std::move(node));
        return true;
    }
    bool open(Json node) {
        if (stack_.size() >= kDeepest) {
            errorLine = line();
            errorReason = "the text is nested too deep";
            return false;
        }
        // The parent's list only grows at its end while this child is open, and never while a grandchild is.
        stack_.push_back(place(std::move(node)));
        return true;
    }
    bool close() {
        stack_.pop_back();
        return true;
    }

    const Counter& counter_;
    std::vector<Json*> stack_;
    std::string key_;
};

/// Thrown nowhere outside this file: the reader unwinds to parse(), which turns it into an Error.
struct Refusal {
    int line;
    std::string reason;
};

const Json& need(const Json& row, std::string_view name) {
    const Json* n = row.member(name);
    if (!n) {
        throw Refusal{row.line, "\"" + std::string(name) + "\" is missing"};
    }
    return *n;
}

std::string needText(const Json& row, std::string_view name) {
    const Json& n = need(row, name);
    if (!n.text() || n.text()->empty()) {
        throw Refusal{n.line, "\"" + std::string(name) + "\" must be a text that is not empty"};
    }
    return *n.text();
}

std::optional<double> edge(const Json* n, std::string_view name) {
    if (!n || n->null()) {
        return std::nullopt;
    }
    if (!n->number() || !std::isfinite(*n->number())) {
        throw Refusal{n->line, "\"" + std::string(name) + "\" must be a number or null"};
    }
    return *n->number();
}

std::vector<std::string> texts(const Json& n, std::string_view name) {
    if (!n.array()) {
        throw Refusal{n.line, "\"" + std::string(name) + "\" must be a list of texts"};
    }
    std::vector<std::string> out;
    for (const auto& item : *n.array()) {
        if (!item.text()) {
            throw Refusal{item.line, "\"" + std::string(name) + "\" must be a list of texts"};
        }
        out.push_back(*item.text());
    }
    return out;
}

void only(const Json& row, std::initializer_list<std::string_view> names) {
    for (const auto& [key, node] : *row.object()) {
        if (std::find(names.begin(), names.end(), key) == names.end()) {
            throw Refusal{node.line, "\"" + key + "\" is not a word this playbook knows"};
        }
    }
}

Range readRange(const Json& n) {
    if (!n.object()) {
        throw Refusal{n.line, "each of \"ranges\" must be an object"};
    }
    only(n, {"clubs", "good", "work_below", "work_above", "source"});
    Range r;
    if (const Json* clubs = n.member("clubs")) {
        for (const auto& text : texts(*clubs, "clubs")) {
            const auto it =
                std::find_if(kGroups.begin(), kGroups.end(), [&](const auto& g) { return g.name == text; });
            if (it == kGroups.end()) {
                throw Refusal{clubs->line, "\"" + text + "\" is not a group of clubs"};
            }
            if (it->group == ClubGroup::any) {
                throw Refusal{clubs->line, "leave \"clubs\" out where a range fits every club"};
            }
            r.clubs.push_back(it->group);
        }
    }
    const Json& good = need(n, "good");
    if (!good.array() || good.array()->size() != 2) {
        throw Refusal{good.line, "\"good\" must be [low, high], with null for an open end"};
    }
    r.goodLow = edge(&(*good.array())[0], "good");
    r.goodHigh = edge(&(*good.array())[1], "good");
    r.workBelow = edge(n.member("work_below"), "work_below");
    r.workAbove = edge(n.member("work_above"), "work_above");
    if (!r.goodLow && !r.goodHigh) {
        throw Refusal{good.line, "a range that is open at both ends judges nothing"};
    }
    if (r.goodLow && r.goodHigh && !(*r.goodLow < *r.goodHigh)) {
        throw Refusal{good.line, "the low end of \"good\" must lie below its high end"};
    }
    if (r.workBelow && (!r.goodLow || !(*r.workBelow < *r.goodLow))) {
        throw Refusal{n.member("work_below")->line, "\"work_below\" must lie below the low end of \"good\""};
    }
    if (r.workAbove && (!r.goodHigh || !(*r.workAbove > *r.goodHigh))) {
        throw Refusal{n.member("work_above")->line, "\"work_above\" must lie above the high end of \"good\""};
    }
    r.source = needText(n, "source");
    return r;
}

Checkpoint readCheckpoint(const Json& n) {
    if (!n.object()) {
        throw Refusal{n.line, "each of \"checkpoints\" must be an object"};
    }
    only(n,
         {"id", "label", "view", "measurement", "moment", "shots", "joints", "at_most", "advice", "ranges"});
    Checkpoint c;
    c.id = needText(n, "id");
    c.label = needText(n, "label");
    c.measurement = needText(n, "measurement");
    const auto view = marks::viewFromName(needText(n, "view"));
    if (!view) {
        throw Refusal{need(n, "view").line, "\"view\" must be \"face-on\" or \"down-the-line\""};
    }
    c.view = *view;
    if (n.member("moment")) {
        c.moment = marks::momentFromName(needText(n, "moment"));
        if (!c.moment) {
            throw Refusal{need(n, "moment").line, "\"" + needText(n, "moment") + "\" is not a key moment"};
        }
    }
    for (const auto& text : texts(need(n, "shots"), "shots")) {
        const auto kind = marks::shotKindFromName(text);
        if (!kind) {
            throw Refusal{need(n, "shots").line, "\"" + text + "\" is not a kind of shot"};
        }
        c.shots.push_back(*kind);
    }
    if (c.shots.empty()) {
        throw Refusal{need(n, "shots").line, "\"shots\" must name at least one kind of shot"};
    }
    if (const Json* joints = n.member("joints")) {
        c.joints = texts(*joints, "joints");
    }
    if (n.member("at_most")) {
        if (needText(n, "at_most") != "watch") {
            throw Refusal{need(n, "at_most").line, "\"at_most\" can only be \"watch\""};
        }
        c.atMostWatch = true;
    }
    const Json& advice = need(n, "advice");
    if (!advice.object()) {
        throw Refusal{advice.line, "\"advice\" must hold \"good\", \"low\", \"high\" and \"unknown\""};
    }
    only(advice, {"good", "low", "high", "unknown"});
    const auto say = [&](std::string_view name) {
        const Json& t = need(advice, name);
        if (!t.text()) {
            throw Refusal{t.line, "\"" + std::string(name) + "\" must be a text"};
        }
        return *t.text();
    };
    c.whenGood = say("good");
    c.whenLow = say("low");
    c.whenHigh = say("high");
    c.whenUnknown = say("unknown");
    const Json& ranges = need(n, "ranges");
    if (!ranges.array() || ranges.array()->empty()) {
        throw Refusal{ranges.line, "\"ranges\" must be a list with at least one range"};
    }
    for (const auto& r : *ranges.array()) {
        Range range = readRange(r);
        if (range.goodLow && c.whenLow.empty()) {
            throw Refusal{advice.line, "advice for \"low\" is empty, but the range has a low end"};
        }
        if (range.goodHigh && c.whenHigh.empty()) {
            throw Refusal{advice.line, "advice for \"high\" is empty, but the range has a high end"};
        }
        c.ranges.push_back(std::move(range));
    }
    return c;
}

constexpr std::array<std::string_view, 11> kStages{"set-up",  "face",       "takeaway",   "backswing",
                                                   "top",     "start-down", "delivery",   "impact",
                                                   "through", "finish",     "ball-flight"};
constexpr std::array<std::string_view, 3> kGrades{"several schools", "one school", "disputed"};
constexpr std::array<std::string_view, 3> kSides{"low", "high", "either"};
constexpr std::array<std::string_view, 3> kTrains{"position", "range", "speed"};
/// Words of the shot record (docs/lesson-file.md).
const std::map<std::string, std::set<std::string>> kBall{
    {"start", {"lead", "straight", "trail"}},
    {"curve", {"lead", "straight", "trail"}},
    {"height", {"low", "normal", "high"}},
    {"contact", {"solid", "heavy", "thin", "topped", "heel", "toe", "shank", "missed"}},
    {"place", {"forward", "middle", "back"}}};

template <std::size_t N>
std::size_t oneOf(const Json& row, std::string_view name, const std::array<std::string_view, N>& words) {
    const std::string text = needText(row, name);
    const auto it = std::find(words.begin(), words.end(), text);
    if (it == words.end()) {
        std::string known;
        for (const auto w : words) {
            known += (known.empty() ? "\"" : ", \"") + std::string(w) + "\"";
        }
        throw Refusal{need(row, name).line, "\"" + std::string(name) + "\" must be one of " + known};
    }
    return static_cast<std::size_t>(it - words.begin());
}

std::string mayText(const Json& row, std::string_view name) {
    return row.member(name) ? needText(row, name) : std::string();
}

bool mayFlag(const Json& row, std::string_view name, bool otherwise) {
    const Json* n = row.member(name);
    if (!n) {
        return otherwise;
    }
    const bool* flag = std::get_if<bool>(&n->value);
    if (!flag) {
        throw Refusal{n->line, "\"" + std::string(name) + "\" must be true or false"};
    }
    return *flag;
}

int mayCount(const Json& row, std::string_view name, int most) {
    const Json* n = row.member(name);
    if (!n) {
        return 0;
    }
    if (!n->number() || *n->number() != std::floor(*n->number()) || *n->number() < 0 || *n->number() > most) {
        throw Refusal{n->line, "\"" + std::string(name) + "\" must be a whole number from 0 to " +
                                   std::to_string(most)};
    }
    return static_cast<int>(*n->number());
}

void object(const Json& row, std::string_view list) {
    if (!row.object()) {
        throw Refusal{row.line, "each of \"" + std::string(list) + "\" must be an object"};
    }
}

Evidence readEvidence(const Json& row, const Playbook& book) {
    object(row, "evidence");
    only(row, {"checkpoint", "side", "ball", "is"});
    Evidence e;
    if (row.member("checkpoint")) {
        e.checkpoint = needText(row, "checkpoint");
        e.side = static_cast<Side>(oneOf(row, "side", kSides));
        if (!book.find(e.checkpoint)) {
            throw Refusal{need(row, "checkpoint").line, "there is no checkpoint \"" + e.checkpoint + "\""};
        }
        return e;
    }
    e.ball = needText(row, "ball");
    e.is = needText(row, "is");
    const auto known = kBall.find(e.ball);
    if (known == kBall.end()) {
        throw Refusal{need(row, "ball").line, "\"" + e.ball + "\" is nothing the shot record tells"};
    }
    if (!known->second.contains(e.is)) {
        throw Refusal{need(row, "is").line, "\"" + e.is + "\" is no word for \"" + e.ball + "\""};
    }
    return e;
}

Node readNode(const Json& row, const Playbook& book) {
    object(row, "nodes");
    only(row, {"id", "label", "stage", "fault", "needs", "evidence", "words"});
    Node n;
    n.id = needText(row, "id");
    n.label = needText(row, "label");
    n.stage = static_cast<Stage>(oneOf(row, "stage", kStages));
    n.fault = mayFlag(row, "fault", true);
    if (row.member("needs")) {
        n.all = oneOf(row, "needs", std::array<std::string_view, 2>{"any", "all"}) == 1;
    }
    const Json& evidence = need(row, "evidence");
    if (!evidence.array()) {
        throw Refusal{evidence.line, "\"evidence\" must be a list"};
    }
    for (const auto& e : *evidence.array()) {
        n.evidence.push_back(readEvidence(e, book));
    }
    if (row.member("words")) {
        n.words = texts(need(row, "words"), "words");
    }
    return n;
}

Drill readDrill(const Json& row) {
    object(row, "drills");
    only(row, {"id", "label", "how", "trains", "loads", "rehearsal_sets", "ball_sets", "hold_seconds"});
    Drill d;
    d.id = needText(row, "id");
    d.label = needText(row, "label");
    d.how = needText(row, "how");
    d.trains = kTrains[oneOf(row, "trains", kTrains)];
    if (row.member("loads")) {
        d.loads = texts(need(row, "loads"), "loads");
    }
    d.rehearsalSets = mayCount(row, "rehearsal_sets", 10);
    d.ballSets = mayCount(row, "ball_sets", 10);
    d.holdSeconds = mayCount(row, "hold_seconds", 60);
    if (d.rehearsalSets + d.ballSets == 0) {
        throw Refusal{row.line, "a drill needs \"rehearsal_sets\" or \"ball_sets\""};
    }
    return d;
}

/// A list of rows with ids that may be left out; calls `take` for each.
template <class Take> void rows(const Json& root, std::string_view name, const Take& take) {
    const Json* list = root.member(name);
    if (!list) {
        return;
    }
    if (!list->array()) {
        throw Refusal{list->line, "\"" + std::string(name) + "\" must be a list"};
    }
    for (const auto& row : *list->array()) {
        take(row);
    }
}

/// Whether `to` is reached from `from` along the tendencies.
bool reaches(const std::vector<Tendency>& all, const std::string& from, const std::string& to) {
    std::vector<std::string> open{from};
    std::set<std::string> seen{from};
    while (!open.empty()) {
        const std::string at = open.back();
        open.pop_back();
        if (at == to) {
            return true;
        }
        for (const auto& t : all) {
            if (t.from == at && seen.insert(t.to).second) {
                open.push_back(t.to);
            }
        }
    }
    return false;
}

} // namespace

std::string_view stageName(Stage stage) {
    return kStages.at(static_cast<std::size_t>(stage));
}
std::string_view gradeName(Grade grade) {
    return kGrades.at(static_cast<std::size_t>(grade));
}

std::string_view clubGroupName(ClubGroup group) {
    return std::find_if(kGroups.begin(), kGroups.end(), [group](const auto& g) { return g.group == group; })
        ->name;
}

ClubGroup clubGroupOf(const std::optional<marks::Club>& club) {
    if (!club) {
        return ClubGroup::mid_iron;
    }
    switch (club->kind) {
    case marks::ClubKind::driver:
        return ClubGroup::driver;
    case marks::ClubKind::wood:
        return ClubGroup::wood;
    case marks::ClubKind::hybrid:
        return ClubGroup::hybrid;
    case marks::ClubKind::wedge:
        return ClubGroup::wedge;
    case marks::ClubKind::putter:
        return ClubGroup::putter;
    case marks::ClubKind::iron:
        break;
    }
    const int number = club->number.value_or(6);
    return number <= 4 ? ClubGroup::long_iron : number <= 7 ? ClubGroup::mid_iron : ClubGroup::short_iron;
}

const Playbook& Playbook::standard() {
    // A test reads the file that comes with the program; should it be broken all the same, nothing is judged.
    static const Playbook playbook = [] {
        auto read = parse(detail::defaultPlaybookText());
        return read ? std::move(read).value() : Playbook{};
    }();
    return playbook;
}

base::Result<Playbook> Playbook::parse(std::string_view json) {
    const auto refuse = [](std::string key, int line, const std::string& reason) {
        return base::inputError(std::move(key), "The playbook was not taken: line " + std::to_string(line) +
                                                    ", " + reason +
                                                    ". Correct that line, or go on with the playbook that "
                                                    "comes with the program.");
    };
    Counter counter;
    Builder builder(counter);
    const char* begin = json.data();
    try {
        const bool ok = nlohmann::json::sax_parse(CountingIterator(begin, &counter),
                                                  CountingIterator(begin + json.size(), &counter), &builder);
        if (!ok) {
            return refuse("playbook.syntax", builder.errorLine,
                          builder.errorReason.empty() ? "the text is not well-formed JSON here"
                                                      : builder.errorReason);
        }
        const Json& root = builder.root;
        if (!root.object()) {
            throw Refusal{root.line, "a playbook is an object with \"version\" and \"checkpoints\""};
        }
        only(root, {"version", "checkpoints", "nodes", "tendencies", "drills", "remedies"});
        const Json& version = need(root, "version");
        if (!version.number() || *version.number() != std::floor(*version.number()) ||
            *version.number() < 1) {
            throw Refusal{version.line, "\"version\" must be a whole number"};
        }
        if (*version.number() > kVersion) {
            throw Refusal{version.line,
                          "this playbook is of a newer kind than the program knows; update the program"};
        }
        const Json& list = need(root, "checkpoints");
        if (!list.array()) {
            throw Refusal{list.line, "\"checkpoints\" must be a list"};
        }
        Playbook book;
        book.version_ = static_cast<int>(*version.number());
        std::set<std::string> ids;
        for (const auto& row : *list.array()) {
            Checkpoint c = readCheckpoint(row);
            if (!ids.insert(c.id).second) {
                throw Refusal{need(row, "id").line, "the checkpoint \"" + c.id + "\" is there twice"};
            }
            book.checkpoints_.push_back(std::move(c));
        }
        rows(root, "nodes", [&](const Json& row) {
            Node n = readNode(row, book);
            if (book.node(n.id)) {
                throw Refusal{need(row, "id").line, "the node \"" + n.id + "\" is there twice"};
            }
            book.nodes_.push_back(std::move(n));
        });
        rows(root, "tendencies", [&](const Json& row) {
            object(row, "tendencies");
            only(row, {"from", "to", "grade", "source"});
            Tendency t{needText(row, "from"), needText(row, "to"),
                       static_cast<Grade>(oneOf(row, "grade", kGrades)), needText(row, "source")};
            for (const auto name : {"from", "to"}) {
                if (!book.node(needText(row, name))) {
                    throw Refusal{need(row, name).line, "there is no node \"" + needText(row, name) + "\""};
                }
            }
            if (reaches(book.tendencies_, t.to, t.from)) {
                throw Refusal{row.line, "this tendency closes a circle: \"" + t.to +
                                            "\" already tends to cause \"" + t.from + "\""};
            }
            book.tendencies_.push_back(std::move(t));
        });
        rows(root, "drills", [&](const Json& row) {
            Drill d = readDrill(row);
            if (book.drill(d.id)) {
                throw Refusal{need(row, "id").line, "the drill \"" + d.id + "\" is there twice"};
            }
            book.drills_.push_back(std::move(d));
        });
        rows(root, "remedies", [&](const Json& row) {
            object(row, "remedies");
            only(row, {"node", "feel", "drill", "checkpoint", "guard", "conflict"});
            Remedy r{needText(row, "node"),       needText(row, "feel"), needText(row, "drill"),
                     needText(row, "checkpoint"), mayText(row, "guard"), mayText(row, "conflict")};
            if (!book.node(r.node)) {
                throw Refusal{need(row, "node").line, "there is no node \"" + r.node + "\""};
            }
            if (!book.drill(r.drill)) {
                throw Refusal{need(row, "drill").line, "there is no drill \"" + r.drill + "\""};
            }
            for (const auto name : {"checkpoint", "guard"}) {
                if (row.member(name) && !book.find(needText(row, name))) {
                    throw Refusal{need(row, name).line,
                                  "there is no checkpoint \"" + needText(row, name) + "\""};
                }
            }
            book.remedies_.push_back(std::move(r));
        });
        return book;
    } catch (const Refusal& r) {
        return refuse("playbook.row", r.line, r.reason);
    } catch (const std::exception&) {
        return refuse("playbook.syntax", counter.line, "the text cannot be read");
    }
}

base::Result<Playbook> Playbook::read(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    if (!file || !(text << file.rdbuf())) {
        return base::inputError("playbook.unreadable",
                                "The playbook " + path.string() +
                                    " could not be read. Check the name and that it is a "
                                    "readable file.");
    }
    return parse(text.str());
}

const Checkpoint* Playbook::find(std::string_view id) const {
    const auto it =
        std::find_if(checkpoints_.begin(), checkpoints_.end(), [&](const auto& c) { return c.id == id; });
    return it == checkpoints_.end() ? nullptr : &*it;
}

const Node* Playbook::node(std::string_view id) const {
    const auto it = std::find_if(nodes_.begin(), nodes_.end(), [&](const auto& n) { return n.id == id; });
    return it == nodes_.end() ? nullptr : &*it;
}

const Drill* Playbook::drill(std::string_view id) const {
    const auto it = std::find_if(drills_.begin(), drills_.end(), [&](const auto& d) { return d.id == id; });
    return it == drills_.end() ? nullptr : &*it;
}

} // namespace plumbmark::coaching
