// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <chrono>
#include <csignal>
#include <random>

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include "store_support.h"

using namespace plumbmark;
using namespace plumbmark::testing_support;

namespace {

/// Works like a busy lesson and writes the id of every fact to `acknowledged` once add() has said it is
/// saved. Never returns.
[[noreturn]] void work(const fs::path& folder, int acknowledged, unsigned seed) {
    store::LibraryOptions options;
    options.folder = folder;
    auto library = store::Library::open(options);
    if (!library) {
        ::_exit(3);
    }
    std::mt19937 random(seed);
    const auto save = [&](const std::vector<records::Fact>& facts) {
        if (!(*library)->add(facts)) {
            ::_exit(4);
        }
        for (const auto& fact : facts) {
            const std::string line = fact.id.hex() + "\n";
            if (::write(acknowledged, line.data(), line.size()) != static_cast<ssize_t>(line.size())) {
                ::_exit(5);
            }
        }
    };
    for (;;) {
        const auto player = (*library)->make(records::kind::player, {}, {{"name", "p"}});
        const auto lesson =
            (*library)->make(records::kind::lesson, {player.id}, {{"title", "t"}, {"day", "2026-11-25"}});
        const auto shot = (*library)->make(records::kind::shot, {player.id, lesson.id}, {{"shot", "full"}});
        save({player});
        save({lesson, shot});
        const fs::path film = folder / ("film-" + std::to_string(::getpid()));
        put(film, std::string(20'000 + random() % 100'000, static_cast<char>(random())));
        const auto added = (*library)->addFilm(film);
        if (!added) {
            ::_exit(6);
        }
        const auto clip = (*library)->make(
            records::kind::clip, {player.id, lesson.id, shot.id},
            {{"sha256", added->sha256}, {"view", "face-on"}, {"hand", "right"}, {"bytes", added->bytes}});
        save({clip});
        std::vector<base::Id> before;
        for (int i = 0; i < 5; ++i) {
            const auto mark =
                (*library)->make(records::kind::mark, {player.id, lesson.id, shot.id, clip.id},
                                 {{"frame", 1}, {"landmark", "nose"}, {"hidden", true}}, before);
            save({mark});
            before = {mark.id};
        }
    }
}

} // namespace

// The short version: SIGKILL at random moments of real work. The number can be raised for long runs.
TEST(Kill, NoAcknowledgedFactIsLostAndNothingIsHalfWritten) {
    const char* wanted = std::getenv("PLUMBMARK_KILLS");
    const int kills = wanted != nullptr ? std::atoi(wanted) : 40;
    const auto stage = tempFolder();
    const fs::path folder = stage.path() / "library";
    const fs::path log = stage.path() / "acknowledged";
    std::mt19937 random(11);
    std::size_t checked = 0;
    for (int k = 0; k < kills; ++k) {
        const int fd = ::open(log.c_str(), O_CREAT | O_WRONLY | O_APPEND, 0600);
        ASSERT_GE(fd, 0);
        const pid_t child = ::fork();
        ASSERT_GE(child, 0);
        if (child == 0) {
            work(folder, fd, static_cast<unsigned>(k));
        }
        ::usleep(1000 + random() % 60'000);
        ASSERT_EQ(::kill(child, SIGKILL), 0);
        int status = 0;
        ASSERT_EQ(::waitpid(child, &status, 0), child);
        ASSERT_TRUE(WIFSIGNALED(status)) << "the worker gave up by itself: " << WEXITSTATUS(status);
        ::close(fd);

        const auto library = openLibrary(folder);
        ASSERT_NE(library, nullptr);
        ASSERT_EQ(*library->check(k % 10 == 0), std::vector<std::string>()) << "kill " << k;
        const std::string text = contentOf(log);
        for (std::size_t at = 0; at + 33 <= text.size(); at += 33) {
            const auto id = base::Id::fromHex(text.substr(at, 32));
            ASSERT_TRUE(id);
            const auto fact = library->fact(*id);
            ASSERT_TRUE(fact && *fact) << "an acknowledged record is lost";
            ++checked;
        }
        // Every clip's film is there, whole; no film is there without a clip.
        if (fs::exists(folder / "media")) {
            for (const auto& entry : fs::recursive_directory_iterator(folder / "media")) {
                if (entry.is_regular_file()) {
                    ASSERT_GE(library->clipsOfFilm(entry.path().filename().string())->size(), 1U);
                }
            }
        }
        const auto lessons = library->lessons();
        ASSERT_TRUE(lessons);
        for (const auto& lesson : *lessons) {
            const auto shots = library->shots(lesson.id);
            ASSERT_TRUE(shots);
            for (const auto& shot : *shots) {
                const auto clips = library->clips(shot.id);
                ASSERT_TRUE(clips);
                for (const auto& clip : *clips) {
                    ASSERT_TRUE(clip.filmHere);
                }
            }
        }
    }
    EXPECT_GT(checked, static_cast<std::size_t>(kills)) << "the worker never got to work";
}
