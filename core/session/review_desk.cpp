// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "session/review_desk.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <memory>
#include <set>

#include "coaching/caution.h"
#include "coaching/judge.h"
#include "coaching/playbook.h"
#include "comparison/match.h"
#include "exporting/head_cover.h"
#include "exporting/key_position_sheet.h"
#include "exporting/lesson_sheet.h"
#include "exporting/output_file.h"
#include "exporting/review_film.h"
#include "exporting/words.h"
#include "records/consent.h"
#include "records/film_copy.h"
#include "records/merge.h"
#include "records/review_edit.h"
#include "session/clip_intake.h"
#include "session/demonstration.h"
#include "session/detail/no_such_thing.h"
#include "session/lesson_book.h"
#include "session/lesson_exchange.h"
#include "session/swing_desk.h"
#include "video/clip.h"
#include "video/voice.h"

namespace plumbmark::session {
namespace {

/// What the coach saw and perhaps accepted goes before what was computed a moment ago: key moments, numbers
/// and the states of checkpoints. Words and ranges stay those of the playbook.
void tellStanding(const records::Findings& standing, analysis::Outcome& outcome) {
    outcome.moments = standing.moments;
    outcome.measurements = standing.measurements;
    for (coaching::CheckpointResult& checkpoint : outcome.checkpoints) {
        const auto it =
            std::find_if(standing.checkpoints.begin(), standing.checkpoints.end(), [&](const auto& c) {
                return c.id == checkpoint.id && c.moment == checkpoint.moment;
            });
        if (it == standing.checkpoints.end()) {
            continue;
        }
        checkpoint.state = coaching::stateFromName(it->state);
        checkpoint.good = it->good;
        checkpoint.watch = it->watch;
        checkpoint.work = it->work;
        const auto* m = measure::find(standing.measurements, checkpoint.measurement, checkpoint.moment);
        checkpoint.value = m != nullptr ? m->value : std::nullopt;
    }
}

/// In a review's body: which one an undo brought back.
constexpr std::string_view kRestores = "restores";

base::Error noReview() {
    return base::inputError("review.none",
                            "The lesson has no spoken review yet; \"plumbmark review record\" keeps one.");
}

double secondsOf(const video::Sound& sound) {
    return sound.start.value() + static_cast<double>(sound.samples.size()) / sound.rate;
}

/// A stretch of a voice into its place; both ends fade, since two voices that meet in the middle of a tone
/// would click.
void addPiece(const video::Sound& sound, const records::VoicePiece& piece, std::vector<float>& into) {
    const auto place = [&](std::int64_t ms) {
        return static_cast<std::size_t>(std::llround(static_cast<double>(ms) * sound.rate / 1000.0));
    };
    const auto samples = video::fitted(sound, static_cast<double>(piece.toMs) / 1000.0);
    const std::size_t from = std::min(place(piece.fromMs), samples.size());
    const std::size_t count = samples.size() - from;
    const std::size_t at = place(piece.atMs);
    into.resize(std::max(into.size(), at + count), 0.0F);
    const double fade = 0.004 * sound.rate;
    for (std::size_t i = 0; i < count; ++i) {
        const double in = piece.fromMs == 0 ? 1.0 : static_cast<double>(i) / fade;
        const double out = static_cast<double>(count - i) / fade;
        into[at + i] = samples[from + i] * static_cast<float>(std::min({1.0, in, out}));
    }
}

/// Whether the film at hand is a copy in which the head is covered already.
base::Result<bool> comesCovered(store::Library& library, const store::ClipRow& clip) {
    const auto facts = library.factsOf(clip.id, records::kind::filmCopy);
    if (!facts) {
        return facts.error();
    }
    return std::any_of(facts->begin(), facts->end(), [&](const records::Fact& fact) {
        const auto copy = records::filmCopyOf(fact.body);
        return copy && copy->headCovered && copy->sha256 == clip.film;
    });
}

/// Stills from the finished film: evenly spread, and those that show a frame in which the head was uncertain.
base::Result<std::vector<HeadCovering::Still>> stripOf(const std::filesystem::path& film,
                                                       const exporting::FilmScript& script,
                                                       std::span<const exporting::FilmSource> sources,
                                                       const std::vector<std::vector<int>>& doubtful) {
    constexpr int kEven = 24, kMost = 96, kSide = 480;
    auto clip = video::Clip::open(film);
    if (!clip) {
        return clip.error();
    }
    const video::ClipInfo& info = (*clip)->info();
    std::map<int, bool> chosen; // frame of the film, and whether the head was uncertain there
    std::vector<std::set<int>> seen(sources.size());
    std::vector<int> unsure;
    for (int k = 0; k < info.frames; ++k) {
        const double seconds = (k + 0.5) / info.playbackFps;
        for (const auto& shown : exporting::shownAt(script, sources, seconds, info.width, info.height)) {
            const auto& list = doubtful[shown.source];
            const int frame = static_cast<int>(shown.frame);
            if (std::binary_search(list.begin(), list.end(), frame) &&
                seen[shown.source].insert(frame).second) {
                unsure.push_back(k);
            }
        }
    }
    for (int i = 0; i < kEven; ++i) {
        chosen.emplace(i * (info.frames - 1) / (kEven - 1), false);
    }
    const std::size_t step = unsure.size() / static_cast<std::size_t>(kMost - kEven) + 1;
    for (std::size_t i = 0; i < unsure.size(); i += step) {
        chosen[unsure[i]] = true;
    }
    std::vector<HeadCovering::Still> strip;
    for (const auto& [frame, unclear] : chosen) {
        const auto picture = (*clip)->frame(frame);
        if (!picture) {
            return picture.error();
        }
        strip.push_back({frame, unclear, smaller(picture->rgb(), kSide)});
    }
    return strip;
}

/// An opaque box over the head in every still; stills without a known head go.
void coverStills(const analysis::Outcome& outcome, const video::ClipInfo& info,
                 std::vector<exporting::Still>& stills) {
    const auto cover = exporting::headCover(outcome.track, info.width, info.height);
    std::erase_if(stills, [&](const exporting::Still& still) { return still.frame >= cover.size(); });
    for (exporting::Still& still : stills) {
        video::RgbImage picture = *still.picture;
        base::Box box = cover[still.frame];
        box.x -= still.corner.x;
        box.y -= still.corner.y;
        exporting::coverWith(picture, box);
        still.picture = std::make_shared<const video::RgbImage>(std::move(picture));
    }
}

} // namespace

base::Result<bool> ReviewDesk::coversHeads(const base::Id& lesson) {
    const auto entity = library_->entity(lesson);
    if (!entity) {
        return entity.error();
    }
    if (!*entity || (*entity)->kind != records::kind::lesson || (*entity)->path.empty()) {
        return detail::noSuchThing();
    }
    const auto may = LessonExchange(*library_).mayShowFace((*entity)->path.front());
    if (!may) {
        return may.error();
    }
    return !*may;
}

base::Result<std::vector<exporting::TableRow>> ReviewDesk::numbers(std::optional<base::Id> player,
                                                                   std::optional<base::Id> lesson) {
    LessonBook book(*library_);
    auto lessons = book.lessons({}, player);
    if (!lessons) {
        return lessons.error();
    }
    std::stable_sort(lessons->begin(), lessons->end(),
                     [](const auto& a, const auto& b) { return a.day < b.day; });
    std::vector<exporting::TableRow> rows;
    for (const store::LessonRow& row : *lessons) {
        if (lesson && row.id != *lesson) {
            continue;
        }
        const auto shots = book.shots(row.id);
        if (!shots) {
            return shots.error();
        }
        for (const store::ShotRow& shot : *shots) {
            const auto clips = book.clips(shot.id);
            if (!clips) {
                return clips.error();
            }
            for (const store::ClipRow& clip : *clips) {
                const auto findings = book.findings(clip.id);
                const auto request = requestFor(*library_, clip.id);
                if (!findings || !request) {
                    return findings ? request.error() : findings.error();
                }
                if (!*findings) {
                    continue;
                }
                for (const auto& measurement : (*findings)->measurements) {
                    rows.push_back({row.playerName, row.day, row.title, row.id.hex(), clip.id.hex(),
                                    shot.number, request->context, measurement});
                }
            }
        }
    }
    return rows;
}

base::Result<std::vector<ReviewDesk::Choice>> ReviewDesk::clips(const base::Id& lesson) {
    LessonBook book(*library_);
    const auto shots = book.shots(lesson);
    if (!shots) {
        return shots.error();
    }
    std::vector<Choice> choices;
    for (const store::ShotRow& shot : *shots) {
        const auto clips = book.clips(shot.id);
        const auto shown = isDemonstration(*library_, shot.id);
        if (!clips || !shown) {
            return clips ? shown.error() : clips.error();
        }
        for (const store::ClipRow& clip : *clips) {
            choices.push_back({shot.number, clip.id, clip.clip.view, clip.filmHere, *shown});
        }
    }
    return choices;
}

base::Result<std::optional<analysis::Outcome>> ReviewDesk::measured(const base::Id& clip,
                                                                    const base::Progress& progress) {
    SwingDesk desk(*library_, network_);
    const auto opened = desk.open(clip, progress);
    if (!opened) {
        return opened.error();
    }
    if (!*opened) {
        return std::optional<analysis::Outcome>();
    }
    analysis::Outcome outcome = desk.outcome();
    LessonBook book(*library_);
    const auto findings = book.findings(clip);
    if (!findings) {
        return findings.error();
    }
    if (*findings) {
        tellStanding(**findings, outcome);
    }
    return std::optional(std::move(outcome));
}

/// An outcome as far as records tell it: no pixel is read, the only marks are those of a hand.
base::Result<analysis::Outcome> ReviewDesk::fromRecords(const store::ClipRow& clip) {
    LessonBook book(*library_);
    const auto request = requestFor(*library_, clip.id);
    const auto findings = book.findings(clip.id);
    if (!request || !findings) {
        return request ? findings.error() : request.error();
    }
    analysis::Outcome outcome;
    outcome.context = request->context;
    outcome.clip.width = clip.clip.width;
    outcome.clip.height = clip.clip.height;
    outcome.clip.frames = clip.clip.frames;
    outcome.clip.duration = base::Seconds{clip.clip.durationSeconds};
    outcome.clip.playbackFps = clip.clip.playbackFps;
    outcome.clip.captureFps = clip.clip.captureFps;
    const auto capture = clip.clip.captureFpsTold ? clip.clip.captureFpsTold : clip.clip.captureFps;
    outcome.timeScale.known = capture && *capture > 0.0;
    if (outcome.timeScale.known) {
        outcome.timeScale.realPerShown = clip.clip.playbackFps / *capture;
    }
    outcome.scene.vertical = request->rollDegrees ? scene::fromRoll(base::Degrees{*request->rollDegrees})
                             : request->plumbEdge
                                 ? scene::fromPlumbEdge(request->plumbEdge->first, request->plumbEdge->second)
                                 : scene::assumedVertical();
    outcome.scene.width = clip.clip.width;
    outcome.scene.height = clip.clip.height;
    for (const marks::HandMark& mark : request->handMarks) {
        if (mark.frame < 0 || mark.frame >= clip.clip.frames || clip.clip.frames > 100'000) {
            continue;
        }
        outcome.track.resize(static_cast<std::size_t>(clip.clip.frames));
        if (mark.at) {
            outcome.track[static_cast<std::size_t>(mark.frame)][mark.landmark] =
                marks::Mark{*mark.at, mark.sigma, base::Origin::hand};
        }
    }
    if (*findings) {
        const std::vector<coaching::SwingNumbers> swings{{(*findings)->measurements}};
        outcome.checkpoints = coaching::judge(coaching::Playbook::standard(), (*findings)->measurements,
                                              outcome.context, coaching::BodyCard{});
        outcome.cautions = coaching::cautions(swings, coaching::BodyCard{});
        tellStanding(**findings, outcome);
    }
    return outcome;
}

base::Result<std::optional<exporting::LessonStory>>
ReviewDesk::story(const base::Id& lessonId, const StoryOptions& options, const base::Progress& progress) {
    using Story = exporting::LessonStory;
    LessonBook book(*library_);
    const auto lesson = book.lesson(lessonId);
    const auto entity = library_->entity(lessonId);
    if (!lesson || !entity) {
        return lesson ? entity.error() : lesson.error();
    }
    Story story;
    story.title = lesson->title;
    story.day = lesson->day;
    story.wish = lesson->wish;
    story.belief = lesson->belief;
    story.note = lesson->note;
    if (*entity && !(*entity)->path.empty()) {
        const auto player = book.player((*entity)->path.front());
        if (player) {
            story.player = player->name;
        }
    }
    const auto plans = library_->factsOf(lessonId, records::kind::plan);
    if (!plans) {
        return plans.error();
    }
    if (const auto standing = records::heads(*plans);
        !standing.empty() && (options.withHealth || !records::tellsHealth(standing.back()))) {
        story.plan = records::planOf(standing.back().body);
    }
    const auto spoken = review(lessonId);
    if (!spoken) {
        return spoken.error();
    }
    if (*spoken) {
        story.saw = (*spoken)->saw;
        story.said = (*spoken)->said;
        story.next = (*spoken)->next;
    }
    auto choices = clips(lessonId);
    if (!choices) {
        return choices.error();
    }
    std::erase_if(*choices, [](const Choice& choice) { return choice.demonstration; });
    // The newest swings are those that the lesson ended with.
    const std::size_t told =
        std::min(choices->size(), static_cast<std::size_t>(std::max(0, options.mostSwings)));
    story.moreSwings = static_cast<int>(choices->size() - told);
    for (std::size_t i = choices->size() - told; i < choices->size(); ++i) {
        const Choice& choice = (*choices)[i];
        const double done = static_cast<double>(i - (choices->size() - told)) / static_cast<double>(told);
        const base::Progress part{[&](double share, std::string_view stage) {
                                      progress.tell(done + share / static_cast<double>(told), stage);
                                  },
                                  progress.cancel};
        const auto row = library_->clip(choice.clip);
        if (!row) {
            return row.error();
        }
        if (!*row) {
            continue;
        }
        exporting::LessonSwing swing;
        swing.shotNumber = choice.shotNumber;
        if (options.measureAgain && choice.filmHere) {
            auto outcome = measured(choice.clip, part);
            if (!outcome) {
                return outcome.error();
            }
            if (!*outcome) {
                return std::optional<Story>();
            }
            swing.outcome = std::make_shared<const analysis::Outcome>(std::move(**outcome));
        } else {
            auto outcome = fromRecords(**row);
            if (!outcome) {
                return outcome.error();
            }
            swing.outcome = std::make_shared<const analysis::Outcome>(std::move(*outcome));
        }
        if (progress.cancelled()) {
            return std::optional<Story>();
        }
        if (choice.filmHere) {
            if (auto film = video::Clip::open((*row)->file)) {
                if (auto stills = exporting::takeStills(**film, *swing.outcome)) {
                    swing.stills = std::move(*stills);
                }
                if (options.coverHeads) {
                    const auto covered = comesCovered(*library_, **row);
                    if (!covered) {
                        return covered.error();
                    }
                    if (!*covered) {
                        coverStills(*swing.outcome, (*film)->info(), swing.stills);
                    }
                }
                // From records alone nothing is known about size and place in the picture.
                if (options.measureAgain) {
                    const auto quality = exporting::lookAtPictures(**film, *swing.outcome);
                    swing.advice = exporting::filmAdvice(*swing.outcome,
                                                         quality ? *quality : exporting::PictureQuality{});
                }
            }
        }
        while (swing.stills.size() > options.mostStills) { // address, top, impact and finish stay longest
            static constexpr std::array kept{marks::MomentId::address, marks::MomentId::top,
                                             marks::MomentId::impact, marks::MomentId::finish};
            const auto other =
                std::find_if(swing.stills.rbegin(), swing.stills.rend(), [](const auto& still) {
                    return std::find(kept.begin(), kept.end(), still.moment) == kept.end();
                });
            swing.stills.erase(other == swing.stills.rend() ? swing.stills.end() - 1
                                                            : std::next(other).base());
        }
        progress.tell(done + 1.0 / static_cast<double>(told), "Taking the pictures");
        story.swings.push_back(std::move(swing));
    }
    return std::optional(std::move(story));
}

base::Result<base::Id> ReviewDesk::keep(const base::Id& lesson, records::Review review,
                                        const std::optional<std::filesystem::path>& voice) {
    std::optional<video::Sound> sound;
    if (voice) {
        auto loaded = video::loadSound(*voice);
        if (!loaded) {
            return loaded.error();
        }
        sound = std::move(*loaded);
    }
    return keepHeard(lesson, std::move(review), sound);
}

base::Result<records::Fact> ReviewDesk::voiceFact(const base::Id& lesson, const video::Sound& sound) {
    const auto entity = library_->entity(lesson);
    if (!entity) {
        return entity.error();
    }
    if (!*entity || (*entity)->kind != records::kind::lesson) {
        return detail::noSuchThing();
    }
    auto bytes = video::encodeVoice(sound);
    if (!bytes) {
        return bytes.error();
    }
    if (bytes->size() > records::kMostVoiceBytes) {
        return base::inputError("review.voice_long",
                                "The voice lasts longer than ten minutes; cut it or make two reviews.");
    }
    std::vector<base::Id> path = (*entity)->path;
    path.push_back(lesson);
    const records::Voice kept{"m4a", std::llround(secondsOf(sound) * 1000.0), std::move(*bytes)};
    return library_->make(records::kind::voice, path, bodyOf(kept));
}

base::Result<base::Id> ReviewDesk::put(const base::Id& lesson, const records::Review& review,
                                       std::vector<records::Fact> with, std::optional<base::Id> restores) {
    const auto entity = library_->entity(lesson);
    const auto choices = clips(lesson);
    const auto before = library_->factsOf(lesson, records::kind::review);
    if (!entity || !choices || !before) {
        return !entity ? entity.error() : !choices ? choices.error() : before.error();
    }
    if (!*entity || (*entity)->kind != records::kind::lesson) {
        return detail::noSuchThing();
    }
    if (auto good = check(review); !good) {
        return good.error();
    }
    for (const records::ReviewAct& act : review.acts) {
        if (act.clip && std::none_of(choices->begin(), choices->end(),
                                     [&](const Choice& c) { return c.clip == *act.clip; })) {
            return base::inputError("review.no_clip",
                                    "The review names a clip that this lesson does not hold; "
                                    "\"plumbmark lesson show\" lists them.");
        }
    }
    std::vector<base::Id> path = (*entity)->path;
    path.push_back(lesson);
    std::vector<base::Id> replaces;
    for (const records::Fact& fact : records::heads(*before)) {
        replaces.push_back(fact.id);
    }
    std::sort(replaces.begin(), replaces.end());
    records::Object body = bodyOf(review);
    if (restores) {
        body.emplace(std::string(kRestores), restores->hex());
    }
    with.push_back(library_->make(records::kind::review, path, std::move(body), replaces));
    if (auto added = library_->add(with); !added) {
        return added.error();
    }
    return with.back().id;
}

base::Result<base::Id> ReviewDesk::keepHeard(const base::Id& lesson, records::Review review,
                                             const std::optional<video::Sound>& sound) {
    std::vector<records::Fact> facts;
    if (!sound && records::spoken(review)) {
        const auto old = this->review(lesson);
        if (!old) {
            return old.error();
        }
        review.voice = *old ? (*old)->voice : std::nullopt;
        review.pieces = *old && !review.voice ? (*old)->pieces : std::vector<records::VoicePiece>();
        std::erase_if(review.pieces, [&](const records::VoicePiece& piece) {
            return piece.atMs + piece.toMs - piece.fromMs > review.lengthMs;
        });
    }
    if (sound && !sound->samples.empty()) {
        auto voice = voiceFact(lesson, *sound);
        if (!voice) {
            return voice.error();
        }
        review.voice = voice->id;
        review.pieces.clear();
        review.lengthMs =
            std::max(review.lengthMs, std::min<std::int64_t>(std::llround(secondsOf(*sound) * 1000.0),
                                                             records::kMostReviewMs));
        facts.push_back(std::move(*voice));
    }
    return put(lesson, review, std::move(facts), std::nullopt);
}

base::Result<std::optional<video::Sound>> ReviewDesk::voice(const records::Review& review) {
    std::vector<records::VoicePiece> pieces = review.pieces;
    if (review.voice) {
        pieces = {{*review.voice, 0, 0, records::kMostReviewMs}};
    }
    std::map<base::Id, std::optional<video::Sound>> heard;
    video::Sound all;
    for (const records::VoicePiece& piece : pieces) {
        if (heard.contains(piece.voice)) {
            continue;
        }
        const auto fact = library_->fact(piece.voice);
        if (!fact) {
            return fact.error();
        }
        const auto kept = *fact ? records::voiceOf((*fact)->body) : std::nullopt;
        std::optional<video::Sound> sound;
        if (kept) {
            auto loaded = video::loadSound(video::fromBytes(kept->bytes));
            if (!loaded) {
                return loaded.error();
            }
            sound = std::move(*loaded);
        }
        heard.emplace(piece.voice, std::move(sound));
    }
    if (review.voice) {
        return std::move(heard.begin()->second);
    }
    for (const records::VoicePiece& piece : pieces) {
        const auto& sound = heard.at(piece.voice);
        if (!sound || (all.rate > 0.0 && all.rate != sound->rate)) {
            continue; // every voice is kept at one rate; another one is of no version that we know
        }
        all.rate = sound->rate;
        addPiece(*sound, piece, all.samples);
    }
    return all.rate > 0.0 ? std::optional(std::move(all)) : std::nullopt;
}

base::Result<base::Id> ReviewDesk::edit(const base::Id& lesson, const Edit& how) {
    const auto standing = review(lesson);
    if (!standing) {
        return standing.error();
    }
    if (!*standing) {
        return noReview();
    }
    const auto edited = how(**standing);
    if (!edited) {
        return edited.error();
    }
    return put(lesson, *edited, {}, std::nullopt);
}

base::Result<base::Id> ReviewDesk::recordAgain(const base::Id& lesson, std::int64_t fromMs, std::int64_t toMs,
                                               const records::Review& again,
                                               const std::optional<video::Sound>& sound) {
    const auto standing = review(lesson);
    if (!standing) {
        return standing.error();
    }
    if (!*standing) {
        return noReview();
    }
    records::Review stretch = again;
    stretch.voice.reset();
    stretch.pieces.clear();
    std::vector<records::Fact> facts;
    if (sound && !sound->samples.empty()) {
        auto voice = voiceFact(lesson, *sound);
        if (!voice) {
            return voice.error();
        }
        stretch.voice = voice->id;
        stretch.lengthMs = std::max<std::int64_t>(stretch.lengthMs, std::llround(secondsOf(*sound) * 1000.0));
        facts.push_back(std::move(*voice));
    }
    const auto edited = records::recordedAgain(**standing, fromMs, toMs, stretch);
    if (!edited) {
        return edited.error();
    }
    return put(lesson, *edited, std::move(facts), std::nullopt);
}

/// The fact whose review stood before the one that stands.
base::Result<std::optional<records::Fact>> ReviewDesk::before(const base::Id& lesson) {
    const auto facts = library_->factsOf(lesson, records::kind::review);
    if (!facts) {
        return facts.error();
    }
    const auto find = [&](const std::optional<base::Id>& id) {
        const auto it =
            std::find_if(facts->begin(), facts->end(), [&](const records::Fact& f) { return f.id == id; });
        return it == facts->end() ? nullptr : &*it;
    };
    // A fact that restored an older one stands for that one.
    const auto meant = [&](const records::Fact* fact) {
        const auto of = fact == nullptr ? std::nullopt : records::textMember(fact->body, kRestores);
        const records::Fact* older = of ? find(base::Id::fromHex(*of)) : nullptr;
        return older != nullptr ? older : fact;
    };
    const auto standing = records::heads(*facts);
    const records::Fact* now = standing.empty() ? nullptr : meant(find(standing.back().id));
    const records::Fact* last = nullptr;
    for (const base::Id& id : now == nullptr ? std::vector<base::Id>() : now->replaces) {
        const records::Fact* fact = find(id);
        if (fact != nullptr && (last == nullptr || records::earlier(last->at, fact->at))) {
            last = fact;
        }
    }
    last = meant(last);
    return last == nullptr ? std::nullopt : std::optional(*last);
}

base::Result<bool> ReviewDesk::canUndo(const base::Id& lesson) {
    const auto earlier = before(lesson);
    if (!earlier) {
        return earlier.error();
    }
    return earlier->has_value();
}

base::Result<base::Id> ReviewDesk::undo(const base::Id& lesson) {
    const auto earlier = before(lesson);
    if (!earlier) {
        return earlier.error();
    }
    const auto review = *earlier ? records::reviewOf((*earlier)->body) : std::nullopt;
    if (!review) {
        return base::inputError("review.nothing_before", "There is nothing before this to go back to.");
    }
    return put(lesson, *review, {}, (*earlier)->id);
}

base::Result<std::vector<records::LitCheck>> ReviewDesk::checks(const base::Id& clip) {
    const auto row = library_->clip(clip);
    if (!row) {
        return row.error();
    }
    if (!*row) {
        return detail::noSuchThing();
    }
    const auto outcome = fromRecords(**row);
    if (!outcome) {
        return outcome.error();
    }
    std::vector<records::LitCheck> list;
    for (const coaching::CheckpointResult& check : outcome->checkpoints) {
        if (!check.value) {
            continue;
        }
        std::string id = check.id;
        if (check.moment) {
            id += "@" + std::string(marks::momentName(*check.moment));
        }
        list.push_back(
            {id, std::string(coaching::stateName(check.state)),
             check.label + " " +
                 exporting::valueText(check.measurement, *check.value, outcome->context.statureMetres)});
    }
    return list;
}

base::Result<void> ReviewDesk::star(const base::Id& clip, base::Seconds time, bool on) {
    const auto row = library_->clip(clip);
    const auto entity = library_->entity(clip);
    const auto facts = library_->factsOf(clip, records::kind::starred);
    if (!row || !entity || !facts) {
        return !row ? row.error() : !entity ? entity.error() : facts.error();
    }
    if (!*row || !*entity) {
        return detail::noSuchThing();
    }
    const records::Clip& film = (*row)->clip;
    if (!(time.value() >= 0.0 && time.value() <= film.durationSeconds + 1e-3)) {
        return base::inputError("record.bad_value", "That time lies outside the film; check it.");
    }
    const double half = film.playbackFps > 0.0 ? 0.5 / film.playbackFps : 0.005;
    std::vector<base::Id> same;
    bool is = false;
    for (const records::Fact& fact : records::heads(*facts)) {
        const auto starred = records::starredOf(fact.body);
        if (starred && std::abs((starred->time - time).value()) <= half) {
            same.push_back(fact.id);
            is = is || starred->on;
        }
    }
    if (is == on) {
        return {};
    }
    std::sort(same.begin(), same.end());
    std::vector<base::Id> path = (*entity)->path;
    path.push_back(clip);
    return library_->add(
        {library_->make(records::kind::starred, path, bodyOf(records::Starred{time, on}), same)});
}

base::Result<std::vector<ReviewDesk::Star>> ReviewDesk::stars(const base::Id& lesson) {
    const auto choices = clips(lesson);
    if (!choices) {
        return choices.error();
    }
    LessonBook book(*library_);
    std::vector<Star> all;
    for (const Choice& choice : *choices) {
        const auto facts = library_->factsOf(choice.clip, records::kind::starred);
        const auto row = library_->clip(choice.clip);
        const auto findings = book.findings(choice.clip);
        if (!facts || !row || !findings) {
            return !facts ? facts.error() : !row ? row.error() : findings.error();
        }
        const double fps = *row ? (*row)->clip.playbackFps : 0.0;
        std::vector<Star> here;
        for (const records::Fact& fact : records::heads(*facts)) {
            const auto starred = records::starredOf(fact.body);
            if (!starred || !starred->on) {
                continue;
            }
            Star star{choice.clip, choice.shotNumber, starred->time, std::nullopt};
            for (const marks::Moment& moment :
                 *findings ? (*findings)->moments : std::vector<marks::Moment>()) {
                if (fps > 0.0 && std::abs((moment.time - star.time).value()) <= 0.5 / fps + 1e-6) {
                    star.moment = moment.id;
                }
            }
            here.push_back(star);
        }
        std::sort(here.begin(), here.end(), [](const Star& a, const Star& b) { return a.time < b.time; });
        all.insert(all.end(), here.begin(), here.end());
    }
    return all;
}

base::Result<base::Id> ReviewDesk::lessonSoFar(const base::Id& lesson) {
    constexpr std::int64_t kEach = 3000;
    const auto starred = stars(lesson);
    const auto standing = review(lesson);
    if (!starred || !standing) {
        return starred ? standing.error() : starred.error();
    }
    if (starred->empty()) {
        return base::inputError("review.no_stars", "No instant of this lesson has a star yet; star what you "
                                                   "want to show.");
    }
    records::Review made;
    if (*standing) {
        made.saw = (*standing)->saw;
        made.said = (*standing)->said;
        made.next = (*standing)->next;
    }
    for (const Star& star : *starred) {
        records::ReviewAct go;
        go.act = records::Act::go;
        go.atMs = made.lengthMs;
        go.clip = star.clip;
        go.time = star.time;
        made.acts.push_back(go);
        if (made.lengthMs == 0) {
            records::ReviewAct marks;
            marks.act = records::Act::marks;
            made.acts.push_back(marks);
        }
        std::string words = "Swing " + std::to_string(star.shotNumber);
        if (star.moment) {
            words += ": " + std::string(exporting::momentLabel(*star.moment));
        }
        made.captions.push_back({made.lengthMs, made.lengthMs + kEach, words});
        made.lengthMs += kEach;
    }
    return put(lesson, made, {}, std::nullopt);
}

base::Result<void> ReviewDesk::forgetCutWords(const base::Id& lesson) {
    const auto standing = review(lesson);
    if (!standing) {
        return standing.error();
    }
    if (!*standing || !records::hasVoice(**standing)) {
        return {};
    }
    if ((*standing)->voice) {
        const auto fact = library_->fact(*(*standing)->voice);
        if (!fact) {
            return fact.error();
        }
        const auto kept = *fact ? records::voiceOf((*fact)->body) : std::nullopt;
        // A coder's block more is nothing that was cut.
        if (!kept || kept->lengthMs <= (*standing)->lengthMs + 50) {
            return {};
        }
    }
    const auto heard = voice(**standing);
    if (!heard) {
        return heard.error();
    }
    if (!*heard) {
        return {};
    }
    records::Review whole = **standing;
    video::Sound sound{
        (*heard)->rate, {}, video::fitted(**heard, static_cast<double>(whole.lengthMs) / 1000)};
    if (auto done = keepHeard(lesson, std::move(whole), sound); !done) {
        return done.error();
    }
    return {};
}

base::Result<bool> ReviewDesk::sheet(const base::Id& lesson, const exporting::Painter& painter,
                                     const std::filesystem::path& target, const base::Progress& progress) {
    if (auto writable = exporting::checkWritable(target); !writable) {
        return writable.error();
    }
    const auto cover = coversHeads(lesson);
    if (!cover) {
        return cover.error();
    }
    const auto told = story(lesson, {.measureAgain = true, .coverHeads = *cover}, progress);
    if (!told) {
        return told.error();
    }
    if (!*told) {
        return false;
    }
    const auto pages = exporting::lessonSheet(**told, painter);
    const auto drawn = painter.pdf(pages);
    if (!drawn) {
        return drawn.error();
    }
    if (auto written = exporting::writeWhole(target, std::span<const std::byte>(*drawn)); !written) {
        return written.error();
    }
    return true;
}

base::Result<std::optional<records::Review>> ReviewDesk::review(const base::Id& lesson) {
    const auto facts = library_->factsOf(lesson, records::kind::review);
    if (!facts) {
        return facts.error();
    }
    const auto standing = records::heads(*facts);
    for (auto it = standing.rbegin(); it != standing.rend(); ++it) {
        auto review = records::reviewOf(it->body);
        // What came from another device is looked at like what is typed here.
        if (review && check(*review)) {
            return review;
        }
    }
    return std::optional<records::Review>();
}

base::Result<std::optional<ReviewDesk::FilmMade>>
ReviewDesk::film(const base::Id& lesson, const FilmRequest& request, const exporting::Painter& painter,
                 const std::filesystem::path& target, const base::Progress& progress) {
    std::optional<records::Review> spoken;
    std::vector<base::Id> ids;
    bool marks = true;
    if (request.clip) {
        ids.push_back(*request.clip);
        if (request.beside) {
            ids.push_back(*request.beside);
        }
    } else {
        auto standing = review(lesson);
        if (!standing) {
            return standing.error();
        }
        if (!*standing) {
            return noReview();
        }
        spoken = std::move(*standing);
        marks = false;
        // Whatever clips the acts name, also beside.
        for (const records::ReviewAct& act : spoken->acts) {
            if (act.clip && std::find(ids.begin(), ids.end(), *act.clip) == ids.end()) {
                ids.push_back(*act.clip);
            }
            marks = marks || (act.act == records::Act::marks && act.on);
        }
    }
    bool cover = request.coverHeads;
    if (!cover) {
        const auto asked = coversHeads(lesson);
        if (!asked) {
            return asked.error();
        }
        cover = *asked;
    }
    marks = marks || cover; // the head must be known
    struct Opened {
        std::unique_ptr<video::Clip> clip;
        analysis::Outcome outcome;
        std::vector<base::Box> cover;
        std::vector<int> doubtful;
    };
    std::vector<Opened> opened;
    const double looking = marks ? 0.5 : 0.0; // share of the wait that goes to measuring
    for (std::size_t i = 0; i < ids.size(); ++i) {
        const auto row = library_->clip(ids[i]);
        if (!row) {
            return row.error();
        }
        if (!*row || !(*row)->filmHere) {
            return base::inputError("film.missing",
                                    "The film did not travel with this lesson; import a lesson "
                                    "file that holds it.");
        }
        Opened one;
        if (marks) {
            const auto from = looking * static_cast<double>(i) / static_cast<double>(ids.size());
            const base::Progress part{
                [&](double share, std::string_view stage) {
                    progress.tell(from + looking * share / static_cast<double>(ids.size()), stage);
                },
                progress.cancel};
            auto outcome = measured(ids[i], part);
            if (!outcome) {
                return outcome.error();
            }
            if (!*outcome) {
                return std::optional<FilmMade>();
            }
            one.outcome = std::move(**outcome);
        } else {
            auto outcome = fromRecords(**row);
            if (!outcome) {
                return outcome.error();
            }
            one.outcome = std::move(*outcome);
        }
        auto clip = video::Clip::open((*row)->file);
        if (!clip) {
            return clip.error();
        }
        one.clip = std::move(*clip);
        const auto covered = cover ? comesCovered(*library_, **row) : base::Result(true);
        if (!covered) {
            return covered.error();
        }
        if (cover && !*covered) {
            const video::ClipInfo& info = one.clip->info();
            one.cover = exporting::headCover(one.outcome.track, info.width, info.height);
            one.doubtful = exporting::doubtfulFrames(one.outcome.track);
            if (one.cover.size() != static_cast<std::size_t>(info.frames)) {
                return base::inputError(
                    "cover.no_head", "The player's head was not found in one of the films, so it cannot be "
                                     "covered; place the head by hand in a few frames.");
            }
        }
        opened.push_back(std::move(one));
    }
    std::vector<exporting::FilmSource> sources;
    std::map<base::Id, std::size_t> places;
    for (std::size_t i = 0; i < opened.size(); ++i) {
        sources.push_back(
            {opened[i].clip.get(), &opened[i].outcome, opened[i].cover.empty() ? nullptr : &opened[i].cover});
        places.emplace(ids[i], i);
    }
    exporting::FilmScript script;
    std::optional<video::Sound> voice;
    if (spoken) {
        script = exporting::spokenScript(*spoken, places, sources);
        if (records::hasVoice(*spoken)) {
            auto heard = this->voice(*spoken);
            if (!heard) {
                return heard.error();
            }
            if (!*heard) {
                return base::inputError("review.voice_missing",
                                        "The voice of this review is not in the library; record it again.");
            }
            voice = std::move(**heard);
        }
    } else if (sources.size() == 2) {
        const auto side = [&](std::size_t i) {
            const analysis::Outcome& o = opened[i].outcome;
            return comparison::Side{o.track, o.moments, o.shaft, o.scene, o.context, o.timeScale};
        };
        const auto match = comparison::matchSwings(side(0), side(1), comparison::Feature::hands);
        if (!match) {
            return match.error();
        }
        script = exporting::swingTour(
            opened[0].outcome, [map = *match](base::Seconds time) { return map.inSecond(time); },
            &opened[1].outcome);
    } else {
        script = exporting::swingTour(opened[0].outcome);
    }
    LessonBook book(*library_);
    const auto told = book.lesson(lesson);
    const auto entity = library_->entity(lesson);
    if (!told || !entity) {
        return told ? entity.error() : told.error();
    }
    script.title = told->title.empty() ? "Lesson" : told->title;
    if (*entity && !(*entity)->path.empty()) {
        if (const auto player = book.player((*entity)->path.front())) {
            script.subtitle = player->name + ", ";
        }
    }
    script.subtitle += told->day;
    if (!opened.empty()) {
        script.subtitle += "\n" + exporting::contextLine(opened.front().outcome.context);
    }
    const base::Progress rest{[&](double share, std::string_view stage) {
                                  progress.tell(looking + (1.0 - looking) * share, stage);
                              },
                              progress.cancel};
    const auto made =
        exporting::renderFilm(script, sources, voice ? &*voice : nullptr, painter, {}, target, rest);
    if (!made) {
        return made.error();
    }
    if (!*made) {
        return std::optional<FilmMade>();
    }
    FilmMade result{script.seconds, script.captions, cover, {}};
    if (cover) {
        std::vector<std::vector<int>> doubtful;
        for (Opened& one : opened) {
            doubtful.push_back(std::move(one.doubtful));
        }
        auto strip = stripOf(target, script, sources, doubtful);
        if (!strip) {
            return strip.error();
        }
        result.strip = std::move(*strip);
    }
    return std::optional(std::move(result));
}

base::Result<std::optional<std::string>> ReviewDesk::filmAgainWords(const base::Id& lesson,
                                                                    const base::Progress& progress) {
    const auto told = story(lesson, {.measureAgain = true}, progress);
    if (!told) {
        return told.error();
    }
    if (!*told) {
        return std::optional<std::string>();
    }
    return std::optional(exporting::filmAgainWords(exporting::filmAdvice(**told)));
}

base::Result<void> writeRequestCard(const exporting::RequestCard& card, const exporting::Painter* painter,
                                    const std::filesystem::path& target) {
    for (const std::string* text : {&card.player, &card.coach, &card.due, &card.question}) {
        if (text->size() > 500 || !records::isUtf8(*text)) {
            return base::inputError("record.bad_value",
                                    "A text for the card is too long or cannot be read; keep "
                                    "it under 500 characters.");
        }
    }
    if (target.extension() != ".pdf") {
        return exporting::writeWhole(target, exporting::requestCardHtml(card));
    }
    if (painter == nullptr) {
        return base::inputError("output.no_painter",
                                "This build has no painter, so it can't draw a PDF; give "
                                "a name that ends in .html.");
    }
    const exporting::Page page = exporting::requestCardPage(card, *painter);
    const auto drawn = painter->pdf(std::span(&page, 1));
    if (!drawn) {
        return drawn.error();
    }
    return exporting::writeWhole(target, std::span<const std::byte>(*drawn));
}

} // namespace plumbmark::session
