// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/coach_desk.h"

#include <algorithm>

#include "coaching/caution.h"
#include "coaching/judge.h"
#include "records/merge.h"
#include "session/detail/fields.h"
#include "session/detail/no_such_thing.h"
#include "session/lesson_book.h"

namespace plumbmark::session {
namespace {

base::Error noSwings() {
    return base::inputError("explain.no_swings",
                            "There is no measured swing here yet; bring clips in with \"plumbmark "
                            "lesson add\" first.");
}

base::Result<records::Entity> lessonEntity(store::Library& library, const base::Id& lesson) {
    auto entity = library.entity(lesson);
    if (!entity) {
        return entity.error();
    }
    if (!*entity || (*entity)->kind != records::kind::lesson || (*entity)->path.empty()) {
        return detail::noSuchThing();
    }
    return std::move(**entity);
}

template <class E> void told(std::optional<std::string>& out, const std::optional<E>& value) {
    if (value) {
        out = std::string(records::name(*value));
    }
}

/// The newest word for each field counts.
reasoning::BallSeen ballOf(const std::vector<StoredSwing>& swings) {
    reasoning::BallSeen ball;
    for (const auto& s : swings) {
        told(ball.start, s.ball.start);
        told(ball.curve, s.ball.curve);
        told(ball.height, s.ball.height);
        told(ball.contact, s.ball.contact);
        told(ball.place, s.ball.ballPlace);
    }
    return ball;
}

std::vector<base::Id> idsOf(const std::vector<records::Fact>& facts) {
    std::vector<base::Id> ids;
    for (const auto& fact : records::heads(facts)) {
        ids.push_back(fact.id);
    }
    return ids;
}

constexpr int kMostSets = 10; ///< of a dose

std::vector<std::string> clipsOf(const std::vector<StoredSwing>& swings) {
    std::vector<std::string> ids;
    for (const auto& s : swings) {
        ids.push_back(s.clip.hex());
    }
    return ids;
}

} // namespace

base::Result<Reasoned> CoachDesk::reason(const base::Id& lesson) {
    const auto entity = lessonEntity(*library_, lesson);
    if (!entity) {
        return entity.error();
    }
    Reasoned out;
    out.lesson = lesson;
    out.player = entity->path.front();
    const records::Lesson told = records::lessonOf(entity->fields);
    out.wish = told.wish;
    out.belief = told.belief;
    const auto all = storedSwings(*library_, lesson);
    if (!all) {
        return all.error();
    }
    const auto kind = commonKind(*all, *all);
    if (!kind) {
        return noSwings();
    }
    out.kind = *kind;
    auto card = body_.forCoaching(out.player);
    if (!card) {
        return card.error();
    }
    out.card = std::move(*card);
    // Face-on and down-the-line clips of the same kind of shot and club speak together.
    for (const auto view : {marks::View::faceOn, marks::View::downTheLine}) {
        SwingKind one = *kind;
        one.view = view;
        const auto swings = ofKind(*all, one);
        if (swings.empty()) {
            continue;
        }
        const auto judged = coaching::judge(*playbook_, reasoning::together(numbersOf(swings)),
                                            swings.back().context, out.card);
        out.checkpoints.insert(out.checkpoints.end(), judged.begin(), judged.end());
        out.swings.insert(out.swings.end(), swings.begin(), swings.end());
        std::vector<coaching::SwingNumbers> numbers;
        for (const auto& s : swings) {
            numbers.push_back({s.measurements});
        }
        for (auto& caution : coaching::cautions(numbers, out.card)) {
            if (std::none_of(out.cautions.begin(), out.cautions.end(),
                             [&](const auto& c) { return c.id == caution.id && c.seen == caution.seen; })) {
                out.cautions.push_back(std::move(caution));
            }
        }
    }
    const auto own = weights(out.player);
    if (!own) {
        return own.error();
    }
    out.explanation = reasoning::explain(*playbook_, out.checkpoints, ballOf(out.swings), *own);
    if (!out.belief.empty()) {
        out.answer = reasoning::answerBelief(*playbook_, out.explanation, out.belief);
    }
    const auto words = library_->factsOf(lesson, records::kind::coach_word);
    if (!words) {
        return words.error();
    }
    const auto standing = records::heads(*words);
    if (!standing.empty()) {
        out.word = records::coachWordOf(standing.back().body);
    }
    out.order =
        out.word && !out.word->nodes.empty() ? out.word->nodes : reasoning::proposedOrder(out.explanation);
    out.plan = reasoning::draftPlan(*playbook_, out.order, out.checkpoints, out.cautions, out.card);
    return out;
}

base::Result<base::Id> CoachDesk::keepProposal(const Reasoned& r) {
    records::ExplanationFact fact;
    fact.verdict = reasoning::verdictName(r.explanation.verdict);
    fact.playbook = playbook_->version();
    fact.clips = clipsOf(r.swings);
    const auto add = [&](const reasoning::Cause& c) {
        fact.rivals.push_back({c.node, r.explanation.node(c.node)->probability.value_or(0.0), c.share});
    };
    if (r.explanation.first) {
        for (const auto& link : r.explanation.first->chain) {
            fact.chain.push_back(link.node);
        }
        add(*r.explanation.first);
    }
    for (const auto& rival : r.explanation.rivals) {
        add(rival);
    }
    const auto before = library_->factsOf(r.lesson, records::kind::explanation);
    if (!before) {
        return before.error();
    }
    const records::Object body = bodyOf(fact);
    const auto standing = records::heads(*before);
    if (!standing.empty() && standing.back().body == body) {
        return standing.back().id; // said already
    }
    const auto made = library_->make(records::kind::explanation, {r.player, r.lesson}, body, idsOf(*before));
    if (auto added = library_->add({made}); !added) {
        return added.error();
    }
    return made.id;
}

base::Result<void> CoachDesk::say(const Reasoned& r, const std::string& word,
                                  const std::vector<std::string>& nodes, const std::string& note) {
    for (const auto& node : nodes) {
        if (playbook_->node(node) == nullptr) {
            return base::inputError("playbook.no_such_node", "The playbook knows no departure \"" + node +
                                                                 "\"; \"plumbmark explain --all\" "
                                                                 "lists them.");
        }
    }
    const auto proposal = keepProposal(r);
    if (!proposal) {
        return proposal.error();
    }
    const auto before = library_->factsOf(r.lesson, records::kind::coach_word);
    if (!before) {
        return before.error();
    }
    const records::CoachWord said{word, proposal->hex(),
                                  word == "accept" ? reasoning::proposedOrder(r.explanation) : nodes, note};
    return library_->add(
        {library_->make(records::kind::coach_word, {r.player, r.lesson}, bodyOf(said), idsOf(*before))});
}

base::Result<reasoning::PlayerWeights> CoachDesk::weights(const base::Id& player) {
    reasoning::PlayerWeights out;
    const auto lessons = library_->lessons({}, player);
    if (!lessons) {
        return lessons.error();
    }
    for (const auto& lesson : *lessons) {
        const auto facts = library_->factsOf(lesson.id, records::kind::trial);
        if (!facts) {
            return facts.error();
        }
        for (const auto& fact : records::heads(*facts)) {
            const auto trial = records::trialOf(fact.body);
            if (!trial) {
                continue;
            }
            double& weight = out.emplace(trial->node, 1.0).first->second;
            for (const auto result :
                 {reasoning::TrialResult::Result::strengthened, reasoning::TrialResult::Result::dropped}) {
                if (trial->result == reasoning::resultName(result)) {
                    weight = reasoning::weightAfter(weight, result);
                }
            }
        }
    }
    return out;
}

base::Result<reasoning::TrialResult> CoachDesk::tryIt(const base::Id& lesson, const std::string& node,
                                                      const std::vector<int>& before,
                                                      const std::vector<int>& tried,
                                                      const std::vector<int>& after) {
    if (playbook_->node(node) == nullptr) {
        return base::inputError("playbook.no_such_node", "The playbook knows no departure \"" + node +
                                                             "\"; \"plumbmark "
                                                             "explain --all\" lists them.");
    }
    const auto entity = lessonEntity(*library_, lesson);
    if (!entity) {
        return entity.error();
    }
    const auto all = storedSwings(*library_, lesson);
    const auto card = body_.forCoaching(entity->path.front());
    if (!all || !card) {
        return all ? card.error() : all.error();
    }
    const auto pick = [&](const std::vector<int>& numbers) {
        std::vector<StoredSwing> out;
        std::copy_if(all->begin(), all->end(), std::back_inserter(out), [&](const auto& s) {
            return std::find(numbers.begin(), numbers.end(), s.number) != numbers.end();
        });
        return out;
    };
    const auto first = pick(before), second = pick(tried), third = pick(after);
    const auto kind = commonKind(first, second);
    if (!kind) {
        return noSwings();
    }
    const auto a = ofKind(first, *kind), b = ofKind(second, *kind);
    auto result =
        reasoning::judgeTrial(*playbook_, node, a.back().context, numbersOf(a), numbersOf(b), *card);
    const records::Trial fact{node,
                              std::string(reasoning::resultName(result.result)),
                              result.guardHeld,
                              clipsOf(a),
                              clipsOf(b),
                              clipsOf(ofKind(third, *kind)),
                              result.moved};
    if (auto added =
            library_->add({library_->make(records::kind::trial, detail::pathBelow(*entity), bodyOf(fact))});
        !added) {
        return added.error();
    }
    return result;
}

base::Result<std::optional<Sight>> CoachDesk::sight(const Reasoned& r, const reasoning::NodeState& node) {
    const coaching::Checkpoint* check = playbook_->find(node.checkpoint);
    if (check == nullptr) {
        return std::optional<Sight>();
    }
    LessonBook book(*library_);
    for (auto it = r.swings.rbegin(); it != r.swings.rend(); ++it) {
        if (it->context.view != check->view) {
            continue;
        }
        const auto* number = measure::find(it->measurements, node.measurement, node.moment);
        const auto row = library_->clip(it->clip);
        const auto findings = book.findings(it->clip);
        if (!row || !findings) {
            return row ? findings.error() : row.error();
        }
        if (number == nullptr || !number->value || !*row || !(*row)->filmHere || !*findings) {
            continue;
        }
        Sight sight;
        sight.clip = it->clip;
        sight.number = it->number;
        sight.film = (*row)->file;
        if (node.moment) {
            const auto* moment = marks::find((*findings)->moments, *node.moment);
            if (moment == nullptr) {
                continue;
            }
            sight.moment = node.moment;
            sight.time = moment->time;
        }
        return std::optional(std::move(sight));
    }
    return std::optional<Sight>();
}

base::Result<void> CoachDesk::setDose(Reasoned& r, std::size_t index, int rehearsals, int balls) {
    if (index >= r.plan.priorities.size() || rehearsals < 0 || balls < 0 || rehearsals > kMostSets ||
        balls > kMostSets || rehearsals + balls == 0) {
        return base::inputError("plan.dose", "A dose is one to ten sets; choose a number in between.");
    }
    reasoning::Priority& p = r.plan.priorities[index];
    const auto remedy = std::find_if(playbook_->remedies().begin(), playbook_->remedies().end(),
                                     [&](const auto& one) { return one.node == p.node; });
    const coaching::Drill* drill =
        remedy == playbook_->remedies().end() ? nullptr : playbook_->drill(remedy->drill);
    if (drill == nullptr) {
        return base::inputError("plan.dose",
                                "The playbook holds no drill for it any more; make the plan anew.");
    }
    const auto draft = reasoning::draftPlan(*playbook_, r.order, r.checkpoints, r.cautions, r.card);
    int allBalls = balls;
    for (std::size_t i = 0; i < r.plan.priorities.size(); ++i) {
        allBalls += i == index ? 0 : r.plan.priorities[i].ballSets;
    }
    bool guarded = r.card.mostBalls && balls > p.ballSets && 10 * allBalls > *r.card.mostBalls;
    for (const auto& drafted : draft.priorities) {
        guarded = guarded ||
                  (drafted.node == p.node &&
                   ((drafted.rehearsalSets < drill->rehearsalSets && rehearsals > drafted.rehearsalSets) ||
                    (drafted.ballSets < drill->ballSets && balls > drafted.ballSets)));
    }
    if (guarded) {
        return base::inputError("plan.protected", "The body card or a caution keeps this dose small; change "
                                                  "the body card first if it is no longer true.");
    }
    p.rehearsalSets = rehearsals;
    p.ballSets = balls;
    p.dose = reasoning::doseText(*drill, rehearsals, balls);
    return {};
}

void CoachDesk::takeDoses(Reasoned& r, const records::Plan& kept) {
    for (reasoning::Priority& p : r.plan.priorities) {
        const auto item = std::find_if(kept.items.begin(), kept.items.end(),
                                       [&](const auto& one) { return one.node == p.node; });
        const auto remedy = std::find_if(playbook_->remedies().begin(), playbook_->remedies().end(),
                                         [&](const auto& one) { return one.node == p.node; });
        const coaching::Drill* drill =
            remedy == playbook_->remedies().end() ? nullptr : playbook_->drill(remedy->drill);
        if (item == kept.items.end() || drill == nullptr) {
            continue;
        }
        // A record holds the words only; the same words mean the same numbers.
        for (int rehearsals = 0; rehearsals <= kMostSets; ++rehearsals) {
            for (int balls = 0; balls <= kMostSets; ++balls) {
                if (reasoning::doseText(*drill, rehearsals, balls) == item->dose) {
                    p.rehearsalSets = rehearsals;
                    p.ballSets = balls;
                    p.dose = item->dose;
                }
            }
        }
    }
}

base::Result<void> CoachDesk::keepPlan(const Reasoned& r) {
    records::Plan plan;
    const std::string lookAgain =
        base::isoDate(clock_->now() + base::UnixMs{24LL * 3600 * 1000} * r.plan.lookAgainDays);
    for (const auto& p : r.plan.priorities) {
        records::PlanItem item;
        item.feel = p.feel;
        item.drill = p.drill + ": " + p.how;
        item.dose = p.dose;
        item.checkpoint = p.checkpoint;
        item.guard = p.guard;
        item.trains = p.trains;
        item.node = p.node;
        item.amount = p.amount;
        item.conflict = p.conflict;
        item.lookAgain = lookAgain;
        plan.items.push_back(std::move(item));
    }
    const auto before = library_->factsOf(r.lesson, records::kind::plan);
    if (!before) {
        return before.error();
    }
    // What was shown for a departure is shown for it in the new plan, too.
    if (const auto standing = records::heads(*before); !standing.empty()) {
        for (const records::PlanItem& old : records::planOf(standing.back().body).items) {
            for (records::PlanItem& item : plan.items) {
                if (!old.node.empty() && item.node == old.node) {
                    item.demonstration = old.demonstration;
                }
            }
        }
    }
    return library_->add(
        {library_->make(records::kind::plan, {r.player, r.lesson}, bodyOf(plan), idsOf(*before))});
}

base::Result<std::optional<records::Plan>> CoachDesk::plan(const base::Id& lesson) {
    const auto facts = library_->factsOf(lesson, records::kind::plan);
    if (!facts) {
        return facts.error();
    }
    const auto standing = records::heads(*facts);
    return standing.empty() ? std::optional<records::Plan>()
                            : std::optional(records::planOf(standing.back().body));
}

base::Result<void> CoachDesk::addSince(const base::Id& player, FollowUp& story) {
    const auto practices = body_.practices(player);
    const auto pains = body_.pains(player);
    if (!practices || !pains) {
        return practices ? pains.error() : practices.error();
    }
    for (const auto& p : *practices) {
        if (p.day.substr(0, 10) >= story.planDay) {
            const int n = static_cast<int>(std::min<std::int64_t>(p.repetitions, 1'000'000));
            (p.what == "balls" ? story.balls : p.what == "rounds" ? story.rounds : story.rehearsals) += n;
        }
    }
    std::copy_if(pains->begin(), pains->end(), std::back_inserter(story.pains),
                 [&](const auto& p) { return p.day.substr(0, 10) >= story.planDay && p.level > 0; });
    return {};
}

base::Result<FollowUp> CoachDesk::followUp(const base::Id& lesson) {
    const auto entity = lessonEntity(*library_, lesson);
    if (!entity) {
        return entity.error();
    }
    const base::Id player = entity->path.front();
    const auto lessons = library_->lessons({}, player); // newest first
    if (!lessons) {
        return lessons.error();
    }
    FollowUp out;
    auto it = std::find_if(lessons->begin(), lessons->end(), [&](const auto& l) { return l.id == lesson; });
    for (it = it == lessons->end() ? it : it + 1; it != lessons->end(); ++it) {
        auto before = plan(it->id);
        if (!before) {
            return before.error();
        }
        if (*before) {
            out.plan = std::move(**before);
            out.planDay = it->day;
            break;
        }
    }
    if (!out.plan) {
        return out;
    }
    if (auto added = addSince(player, out); !added) {
        return added.error();
    }
    const auto then = storedSwings(*library_, it->id), now = storedSwings(*library_, lesson);
    if (!then || !now) {
        return !then ? then.error() : now.error();
    }
    out.kind = commonKind(*then, *now);
    if (out.kind) {
        for (auto& row : comparison::compareSets(numbersOf(ofKind(*then, *out.kind)),
                                                 numbersOf(ofKind(*now, *out.kind)))) {
            if (row.second) {
                (row.change && row.change->beyondDoubt ? out.changed : out.notChanged)
                    .push_back(std::move(row));
            }
        }
    }
    return out;
}

} // namespace plumbmark::session
