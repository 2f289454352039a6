// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// plumbmark-library-bench FOLDER [LESSONS]: how long lists, searching, merging and taking in need, as JSON.
// Two libraries of LESSONS lessons each (a player for every 20, a shot, a clip and findings of 12 numbers)
// are made in FOLDER; the second is merged into the first. A lesson file with one film of 300 MB is taken in
// and held against `cp` plus `sha256sum` of the same file. Wall seconds and the process's own CPU seconds: on
// a busy machine the second tells more.
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <random>
#include <string>
#include <vector>

#include <sys/resource.h>

#include "base/ids.h"
#include "records/kinds.h"
#include "session/lesson_exchange.h"
#include "store/library.h"

using namespace plumbmark;
namespace fs = std::filesystem;

namespace {

double cpuSeconds(int who) {
    rusage usage{};
    ::getrusage(who, &usage);
    const auto seconds = [](const timeval& t) { return static_cast<double>(t.tv_sec) + t.tv_usec / 1e6; };
    return seconds(usage.ru_utime) + seconds(usage.ru_stime);
}
struct Took {
    double wall = 0.0, cpu = 0.0;
};
Took timed(const std::function<void()>& work, int who = RUSAGE_SELF) {
    const auto began = std::chrono::steady_clock::now();
    const double before = cpuSeconds(who);
    work();
    return {std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count(),
            cpuSeconds(who) - before};
}
void must(bool good, const char* what) {
    if (!good) {
        std::fprintf(stderr, "%s\n", what);
        std::exit(1);
    }
}

std::unique_ptr<store::Library> openLibrary(const fs::path& folder) {
    store::LibraryOptions options;
    options.folder = folder;
    options.dailyBackup = false;
    auto library = store::Library::open(options);
    must(library.ok(), "the library does not open");
    return std::move(*library);
}

/// Facts as another device tells them; the films stay at home.
std::vector<records::Record> lessonsOf(store::Library& library, int lessons, const std::string& who) {
    std::vector<records::Record> all;
    const auto take = [&](records::Fact fact) { all.push_back({std::move(fact), std::nullopt}); };
    std::mt19937_64 random(7);
    base::Id player{base::Id::Bytes{}};
    for (int i = 0; i < lessons; ++i) {
        if (i % 20 == 0) {
            auto fact = library.make(records::kind::player, {}, {{"name", who + std::to_string(i / 20)}});
            player = fact.id;
            take(std::move(fact));
        }
        const auto lesson = library.make(
            records::kind::lesson, {player},
            {{"title", "Lesson " + std::to_string(i)},
             {"day", "2026-" + std::string(i % 12 < 9 ? "0" : "") + std::to_string(i % 12 + 1) + "-15"},
             {"wish", "a straighter ball and less effort"}});
        const auto shot = library.make(records::kind::shot, {player, lesson.id}, {{"shot", "full"}});
        records::Clip clip;
        for (int k = 0; k < 64; ++k) {
            clip.sha256 += "0123456789abcdef"[random() % 16];
        }
        clip.bytes = 20'000'000;
        clip.width = 1920;
        clip.height = 1080;
        clip.frames = 480;
        clip.durationSeconds = 2;
        clip.playbackFps = 240;
        const auto film =
            library.make(records::kind::clip, {player, lesson.id, shot.id}, records::bodyOf(clip));
        records::Findings findings;
        for (int k = 0; k < 12; ++k) {
            measure::Measurement m;
            m.id = "spine_tilt";
            m.moment = marks::MomentId::address;
            m.value = base::Measured{4.5 + k, 1.5, base::Unit::degrees, base::Origin::network};
            findings.measurements.push_back(m);
        }
        take(lesson);
        take(shot);
        take(library.make(records::kind::findings, {player, lesson.id, shot.id, film.id},
                          records::bodyOf(findings)));
        take(film);
    }
    return all;
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 2) {
        std::fprintf(stderr, "plumbmark-library-bench FOLDER [LESSONS]\n");
        return 2;
    }
    const fs::path folder = argv[1];
    const int lessons = argc > 2 ? std::atoi(argv[2]) : 10'000;
    fs::create_directories(folder);
    must(fs::is_empty(folder), "the folder is not empty");
    const auto a = openLibrary(folder / "a"), b = openLibrary(folder / "b");
    const Took fill = timed([&] { must(a->merge(lessonsOf(*a, lessons, "Alex ")).ok(), "merge"); });
    const auto other = lessonsOf(*b, lessons, "Kim ");
    Took merge = timed([&] { must(a->merge(other).ok(), "merge"); });
    Took again = timed([&] { must(a->merge(other).ok(), "merge"); });
    double list = 1e9, search = 1e9;
    for (int i = 0; i < 5; ++i) {
        list = std::min(list, timed([&] {
                                  must(a->lessons()->size() == static_cast<std::size_t>(2 * lessons), "list");
                              }).wall);
        search = std::min(search, timed([&] { must(!a->lessons("kim 3")->empty(), "search"); }).wall);
    }

    // One lesson with a large film, as a file.
    const fs::path film = folder / "film";
    {
        std::ofstream out(film, std::ios::binary);
        std::mt19937_64 random(1);
        std::vector<std::uint64_t> block(1 << 17);
        for (int i = 0; i < 300; ++i) {
            for (auto& word : block) {
                word = random();
            }
            out.write(reinterpret_cast<const char*>(block.data()), 1 << 20);
        }
    }
    const auto stored = b->addFilm(film);
    must(stored.ok(), "film");
    const auto player = b->make(records::kind::player, {}, {{"name", "Big"}});
    const auto lesson =
        b->make(records::kind::lesson, {player.id}, {{"title", "Big"}, {"day", "2026-11-25"}});
    const auto shot = b->make(records::kind::shot, {player.id, lesson.id}, {{"shot", "full"}});
    records::Clip clip;
    clip.sha256 = stored->sha256;
    clip.bytes = stored->bytes;
    const auto fact = b->make(records::kind::clip, {player.id, lesson.id, shot.id}, records::bodyOf(clip));
    must(b->add({player, lesson, shot, fact}).ok(), "add");
    const fs::path file = folder / "big.plumbmark";
    must(session::LessonExchange(*b)
             .exportLesson(lesson.id, file, {.audience = session::Audience::ownDevice, .withPage = false}, {})
             .ok(),
         "export");
    Took best{1e9, 1e9}, plain{1e9, 1e9};
    for (int i = 0; i < 3; ++i) { // in turn, so that a busy machine disturbs both
        const auto c = openLibrary(folder / ("c" + std::to_string(i)));
        const Took in = timed([&] { must(session::LessonExchange(*c).import(file, {}).ok(), "import"); });
        best = {std::min(best.wall, in.wall), std::min(best.cpu, in.cpu)};
        const std::string command = "cp '" + file.string() + "' '" + (folder / "copy").string() +
                                    "' && sync '" + (folder / "copy").string() + "' && sha256sum '" +
                                    (folder / "copy").string() + "' > /dev/null";
        const Took cp = timed([&] { must(std::system(command.c_str()) == 0, "cp"); }, RUSAGE_CHILDREN);
        plain = {std::min(plain.wall, cp.wall), std::min(plain.cpu, cp.cpu)};
    }
    std::printf(
        "{\"lessons\":%d,\"fill_s\":%.2f,\"fill_cpu_s\":%.2f,\"merge_s\":%.2f,\"merge_cpu_s\":%.2f,"
        "\"merge_again_s\":%.2f,\"merge_again_cpu_s\":%.2f,\"list_ms\":%.1f,\"search_ms\":%.1f,"
        "\"import_s\":%.2f,\"import_cpu_s\":%.2f,\"cp_sha256sum_s\":%.2f,\"cp_sha256sum_cpu_s\":%.2f}\n",
        lessons, fill.wall, fill.cpu, merge.wall, merge.cpu, again.wall, again.cpu, list * 1e3, search * 1e3,
        best.wall, best.cpu, plain.wall, plain.cpu);
    return 0;
}
