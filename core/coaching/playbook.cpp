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

constexpr int kVersion = 1;
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
struct Node {
    using Members = std::vector<std::pair<std::string, Node>>;
    using Items = std::vector<Node>;
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
    [[nodiscard]] const Node* member(std::string_view name) const {
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
    Node root;
    int errorLine = 0;
    std::string errorReason;

    bool null() override { return put({line(), std::monostate{}}); }
    bool boolean(bool v) override { return put({line(), v}); }
    bool number_integer(number_integer_t v) override { return put({line(), static_cast<double>(v)}); }
    bool number_unsigned(number_unsigned_t v) override { return put({line(), static_cast<double>(v)}); }
    bool number_float(number_float_t v, const string_t&) override { return put({line(), v}); }
    bool string(string_t& v) override { return put({line(), v}); }
    bool binary(binary_t&) override { return false; }
    bool start_object(std::size_t) override { return open({line(), std::make_shared<Node::Members>()}); }
    bool key(string_t& v) override {
        auto& members = *std::get<std::shared_ptr<Node::Members>>(stack_.back()->value);
        if (std::any_of(members.begin(), members.end(), [&](const auto& m) { return m.first == v; })) {
            errorLine = counter_.line;
            errorReason = "\"" + v + "\" is given twice";
            return false;
        }
        key_ = v;
        return true;
    }
    bool end_object() override { return close(); }
    bool start_array(std::size_t) override { return open({line(), std::make_shared<Node::Items>()}); }
    bool end_array() override { return close(); }
    bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception&) override {
        errorLine = line();
        errorReason = "the text is not well-formed JSON here";
        return false;
    }

  private:
    [[nodiscard]] int line() const { return counter_.line - (counter_.last == '\n' ? 1 : 0); }
    Node* place(Node node) {
        if (stack_.empty()) {
            root = std::move(node);
            return &root;
        }
        if (auto* members = std::get_if<std::shared_ptr<Node::Members>>(&stack_.back()->value)) {
            (*members)->emplace_back(key_, std::move(node));
            return &(*members)->back().second;
        }
        auto& items = *std::get<std::shared_ptr<Node::Items>>(stack_.back()->value);
        items.push_back(std::move(node));
        return &items.back();
    }
    bool put(Node node) {
        place(std::move(node));
        return true;
    }
    bool open(Node node) {
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
    std::vector<Node*> stack_;
    std::string key_;
};

/// Thrown nowhere outside this file: the reader unwinds to parse(), which turns it into an Error.
struct Refusal {
    int line;
    std::string reason;
};

const Node& need(const Node& row, std::string_view name) {
    const Node* n = row.member(name);
    if (!n) {
        throw Refusal{row.line, "\"" + std::string(name) + "\" is missing"};
    }
    return *n;
}

std::string needText(const Node& row, std::string_view name) {
    const Node& n = need(row, name);
    if (!n.text() || n.text()->empty()) {
        throw Refusal{n.line, "\"" + std::string(name) + "\" must be a text that is not empty"};
    }
    return *n.text();
}

std::optional<double> edge(const Node* n, std::string_view name) {
    if (!n || n->null()) {
        return std::nullopt;
    }
    if (!n->number() || !std::isfinite(*n->number())) {
        throw Refusal{n->line, "\"" + std::string(name) + "\" must be a number or null"};
    }
    return *n->number();
}

std::vector<std::string> texts(const Node& n, std::string_view name) {
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

void only(const Node& row, std::initializer_list<std::string_view> names) {
    for (const auto& [key, node] : *row.object()) {
        if (std::find(names.begin(), names.end(), key) == names.end()) {
            throw Refusal{node.line, "\"" + key + "\" is not a word this playbook knows"};
        }
    }
}

Range readRange(const Node& n) {
    if (!n.object()) {
        throw Refusal{n.line, "each of \"ranges\" must be an object"};
    }
    only(n, {"clubs", "good", "work_below", "work_above", "source"});
    Range r;
    if (const Node* clubs = n.member("clubs")) {
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
    const Node& good = need(n, "good");
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

Checkpoint readCheckpoint(const Node& n) {
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
    if (const Node* joints = n.member("joints")) {
        c.joints = texts(*joints, "joints");
    }
    if (n.member("at_most")) {
        if (needText(n, "at_most") != "watch") {
            throw Refusal{need(n, "at_most").line, "\"at_most\" can only be \"watch\""};
        }
        c.atMostWatch = true;
    }
    const Node& advice = need(n, "advice");
    if (!advice.object()) {
        throw Refusal{advice.line, "\"advice\" must hold \"good\", \"low\", \"high\" and \"unknown\""};
    }
    only(advice, {"good", "low", "high", "unknown"});
    const auto say = [&](std::string_view name) {
        const Node& t = need(advice, name);
        if (!t.text()) {
            throw Refusal{t.line, "\"" + std::string(name) + "\" must be a text"};
        }
        return *t.text();
    };
    c.whenGood = say("good");
    c.whenLow = say("low");
    c.whenHigh = say("high");
    c.whenUnknown = say("unknown");
    const Node& ranges = need(n, "ranges");
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

} // namespace

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
        const Node& root = builder.root;
        if (!root.object()) {
            throw Refusal{root.line, "a playbook is an object with \"version\" and \"checkpoints\""};
        }
        only(root, {"version", "checkpoints"});
        const Node& version = need(root, "version");
        if (!version.number() || *version.number() != std::floor(*version.number()) ||
            *version.number() < 1) {
            throw Refusal{version.line, "\"version\" must be a whole number"};
        }
        if (*version.number() > kVersion) {
            throw Refusal{version.line,
                          "this playbook is of a newer kind than the program knows; update the program"};
        }
        const Node& list = need(root, "checkpoints");
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

} // namespace plumbmark::coaching
