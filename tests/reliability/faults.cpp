// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// reliability_faults fail|kill|memory [--every N] [--from N] [--times N] [--minutes M] [--only WORK] [--json]
//
// Does real work (save, import, export, migrate, merge, backup, erase, restore) on a copy of a library, and
// at the n-th system call that changes the disk either makes it fail (EIO, ENOSPC; once or from then on) or
// kills the process. Then looks at what is left: a library that opens, checks clean, holds everything that
// was acknowledged, and is either as before or as after. Each n in turn, until the work ends before the n-th
// call. `memory` does the same with the n-th allocation, and with all from the n-th on: that must come out as
// an error that says so, never as damage, and never end the process.
#include <algorithm>
#include <atomic>
#include <cerrno>
#include <chrono>
#include <cstdarg>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <functional>
#include <map>
#include <new>
#include <optional>
#include <string>
#include <vector>

#include <csignal>
#include <fcntl.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/wait.h>
#include <unistd.h>

#include "base/files.h"
#include "lessonfile/lessonfile.h"
#include "session/lesson_exchange.h"
#include "store/backup.h"
#include "store/library.h"

// The calls
// ------------------------------------------------------------------------------------------------------

namespace {

enum class Fault { none, count, fail, kill, memory };
std::atomic<Fault> g_fault{Fault::none};
std::atomic<long> g_seen{0};
long g_at = 0;
int g_errno = EIO;
bool g_forever = false;

/// True when this very call must fail.
bool strike() {
    const Fault fault = g_fault.load();
    if (fault == Fault::none || fault == Fault::memory) {
        return false;
    }
    const long now = ++g_seen;
    if (fault == Fault::kill && now == g_at) {
        ::kill(::getpid(), SIGKILL);
    }
    return fault == Fault::fail && (now == g_at || (g_forever && now > g_at));
}
template <class R> R failed() {
    errno = g_errno;
    return static_cast<R>(-1);
}
bool changes(int flags) {
    return (flags & (O_CREAT | O_WRONLY | O_RDWR)) != 0;
}

} // namespace

extern "C" {
ssize_t write(int fd, const void* data, size_t size) {
    if (strike()) {
        return failed<ssize_t>();
    }
    return ::syscall(SYS_write, fd, data, size);
}
ssize_t pwrite(int fd, const void* data, size_t size, off_t at) {
    if (strike()) {
        return failed<ssize_t>();
    }
    return ::syscall(SYS_pwrite64, fd, data, size, at);
}
ssize_t pwrite64(int fd, const void* data, size_t size, off_t at) {
    return pwrite(fd, data, size, at);
}
int fsync(int fd) {
    return strike() ? failed<int>() : static_cast<int>(::syscall(SYS_fsync, fd));
}
int fdatasync(int fd) {
    return strike() ? failed<int>() : static_cast<int>(::syscall(SYS_fdatasync, fd));
}
int rename(const char* from, const char* to) noexcept {
    return strike() ? failed<int>() : static_cast<int>(::syscall(SYS_renameat, AT_FDCWD, from, AT_FDCWD, to));
}
int unlink(const char* path) noexcept {
    return strike() ? failed<int>() : static_cast<int>(::syscall(SYS_unlinkat, AT_FDCWD, path, 0));
}
int link(const char* from, const char* to) noexcept {
    return strike() ? failed<int>()
                    : static_cast<int>(::syscall(SYS_linkat, AT_FDCWD, from, AT_FDCWD, to, 0));
}
int mkdir(const char* path, mode_t mode) noexcept {
    return strike() ? failed<int>() : static_cast<int>(::syscall(SYS_mkdirat, AT_FDCWD, path, mode));
}
int ftruncate(int fd, off_t size) noexcept {
    return strike() ? failed<int>() : static_cast<int>(::syscall(SYS_ftruncate, fd, size));
}
int ftruncate64(int fd, off_t size) noexcept {
    return ftruncate(fd, size);
}
int open(const char* path, int flags, ...) {
    va_list more;
    va_start(more, flags);
    const int mode = (flags & O_CREAT) != 0 ? va_arg(more, int) : 0;
    va_end(more);
    if (changes(flags) && strike()) {
        return failed<int>();
    }
    return static_cast<int>(::syscall(SYS_openat, AT_FDCWD, path, flags, mode));
}
int open64(const char* path, int flags, ...) {
    va_list more;
    va_start(more, flags);
    const int mode = (flags & O_CREAT) != 0 ? va_arg(more, int) : 0;
    va_end(more);
    return open(path, flags, mode);
}

#if !defined(__SANITIZE_ADDRESS__)
void* __libc_malloc(size_t size);
void* __libc_realloc(void* old, size_t size);
static bool noMemory() {
    if (g_fault.load(std::memory_order_relaxed) != Fault::memory) {
        return false;
    }
    const long now = ++g_seen;
    if (now != g_at && !(g_forever && now > g_at)) {
        return false;
    }
    errno = ENOMEM;
    return true;
}
void* malloc(size_t size) {
    return noMemory() ? nullptr : __libc_malloc(size);
}
void* realloc(void* old, size_t size) {
    return noMemory() ? nullptr : __libc_realloc(old, size);
}
#endif
}

// The work
// -------------------------------------------------------------------------------------------------------

namespace {

using namespace plumbmark;
namespace fs = std::filesystem;

const std::string kCanary = "CANARY-e41";

/// Where no fault is about.
std::unique_ptr<store::Library> openLibrary(const fs::path& folder) {
    store::LibraryOptions options;
    options.folder = folder;
    options.dailyBackup = false;
    auto library = store::Library::open(options);
    return library ? std::move(*library) : nullptr;
}

std::vector<records::Fact> makeLesson(store::Library& library, const std::string& name,
                                      const std::string& sha256) {
    const auto player = library.make(records::kind::player, {}, {{"name", name}});
    const auto lesson =
        library.make(records::kind::lesson, {player.id}, {{"title", "of " + name}, {"day", "2026-11-25"}});
    const auto shot = library.make(records::kind::shot, {player.id, lesson.id}, {{"shot", "full"}});
    const auto clip =
        library.make(records::kind::clip, {player.id, lesson.id, shot.id},
                     {{"sha256", sha256}, {"view", "face-on"}, {"hand", "right"}, {"bytes", 20000}});
    return {player, lesson, shot, clip};
}
std::string bringFilm(store::Library& library, const std::string& text) {
    const fs::path file = library.folder() / "bring";
    std::ofstream(file, std::ios::binary) << text;
    const auto film = library.addFilm(file);
    fs::remove(file);
    return film ? film->sha256 : "";
}

bool holds(const fs::path& folder, const std::string& text) {
    for (const auto& entry : fs::recursive_directory_iterator(folder)) {
        if (!entry.is_regular_file()) {
            continue;
        }
        std::ifstream in(entry.path(), std::ios::binary);
        const std::string content{std::istreambuf_iterator<char>(in), {}};
        if (content.find(text) != std::string::npos) {
            return true;
        }
    }
    return false;
}

std::string g_backupName;

/// Everything the works name is made before the faults begin, so that each fault hits the core.
class World {
  public:
    explicit World(const fs::path& folder) : at(folder) {
        options.folder = library;
        options.dailyBackup = false;
        oldOptions.folder = old;
    }
    fs::path at;
    fs::path library = at / "library", old = at / "old";
    fs::path file = at / "lesson.plumbmark", out = at / "out" / "out.plumbmark", film = at / "film";
    fs::path acknowledged = at / "acknowledged", backup = library / "backups" / g_backupName;
    store::LibraryOptions options, oldOptions;
};

// What the child tells its parent; taking it down needs no memory.
struct Told {
    long calls = 0;
    bool threw = false;  ///< memory gave out and no border caught it
    bool making = false; ///< it was a record being made, which is no operation that could tell an error
    char key[32] = {};   ///< of the error; empty when all was done
};
Told g_told;
bool tell(const base::Error& error) {
    error.key.copy(g_told.key, sizeof g_told.key - 1);
    return false;
}
template <class T> bool only(const base::Result<T>& result) {
    return result ? true : tell(result.error());
}

/// Only after the call before it has said that it is on the disk. Past the counted calls.
void acknowledge(const World& world, const std::string& line) {
    const int fd = static_cast<int>(
        ::syscall(SYS_openat, AT_FDCWD, world.acknowledged.c_str(), O_CREAT | O_WRONLY | O_APPEND, 0600));
    (void)!::syscall(SYS_write, fd, line.data(), line.size());
    ::close(fd);
}

struct Work {
    const char* name;
    std::function<bool(const World&)> run;                    ///< true: all of it was done and acknowledged
    std::function<std::string(const World&, bool done)> look; ///< what is wrong afterwards, or empty
};

std::vector<std::string> g_before, g_lessonLines;
std::vector<records::Record> g_merge; ///< of g_lessonLines, without those that need a film
std::optional<base::Id> g_erase, g_lesson;

/// Outside the library, where nobody sweeps.
bool hasLeftovers(const World& world) {
    for (const auto& entry : fs::directory_iterator(world.at / "out")) {
        if (entry.path() != world.out) {
            return true;
        }
    }
    return false;
}

std::string sound(const World& world, std::vector<std::string>& lines) {
    const auto library = openLibrary(world.library);
    if (library == nullptr) {
        return "the library does not open";
    }
    const auto troubles = library->check(true);
    if (!troubles || !troubles->empty()) {
        return "the check finds: " + (troubles ? troubles->front() : troubles.error().sentence);
    }
    const auto all = library->allLines();
    if (!all) {
        return "the records cannot be read";
    }
    lines = *all;
    for (const std::string& line : lines) {
        const auto record = records::recordFromText(line);
        if (record && record->fact && record->fact->kind == records::kind::clip &&
            !fs::exists(library->filmPath(*records::textMember(record->fact->body, "sha256")))) {
            return "a film is missing";
        }
    }
    return {};
}
/// All or nothing.
std::string either(const World& world, bool done, const std::vector<std::string>& after) {
    std::vector<std::string> lines;
    if (auto wrong = sound(world, lines); !wrong.empty()) {
        return wrong;
    }
    if (lines == after) {
        return {};
    }
    return lines == g_before && !done ? ""
           : done                     ? "what was acknowledged is not there"
                                      : "neither before nor after";
}
std::vector<std::string> sum(std::vector<std::string> a, const std::vector<std::string>& b) {
    a.insert(a.end(), b.begin(), b.end());
    std::sort(a.begin(), a.end());
    a.erase(std::unique(a.begin(), a.end()), a.end());
    return a;
}

const std::vector<Work>& works() {
    static const std::vector<Work> all{
        {"save",
         [](const World& world) {
             const auto library = store::Library::open(world.options);
             if (!library) {
                 return tell(library.error());
             }
             const auto film = (*library)->addFilm(world.film);
             if (!film) {
                 return tell(film.error());
             }
             g_told.making = true;
             for (const auto& fact : makeLesson(**library, "Saved", film->sha256)) {
                 const std::vector<records::Fact> one{fact};
                 const std::string line = fact.id.hex() + "\n";
                 g_told.making = false;
                 if (const auto added = (*library)->add(one); !added) {
                     return tell(added.error());
                 }
                 acknowledge(world, line);
                 g_told.making = true;
             }
             g_told.making = false;
             return true;
         },
         [](const World& world, bool done) -> std::string {
             std::vector<std::string> lines;
             if (auto wrong = sound(world, lines); !wrong.empty()) {
                 return wrong;
             }
             const auto library = openLibrary(world.library);
             std::ifstream in(world.acknowledged);
             int count = 0;
             for (std::string id; std::getline(in, id); ++count) {
                 const auto fact = library->fact(*base::Id::fromHex(id));
                 if (!fact || !*fact) {
                     return "an acknowledged record is lost";
                 }
             }
             return done && count < 4 ? "not all was acknowledged" : "";
         }},
        {"import",
         [](const World& world) {
             const auto library = store::Library::open(world.options);
             if (!library) {
                 return tell(library.error());
             }
             return only(session::LessonExchange(**library).import(world.file, {}));
         },
         [](const World& world, bool done) { return either(world, done, sum(g_before, g_lessonLines)); }},
        {"export",
         [](const World& world) {
             const auto library = store::Library::open(world.options);
             if (!library) {
                 return tell(library.error());
             }
             return only(session::LessonExchange(**library).exportLesson(
                 *g_lesson, world.out, {.audience = session::Audience::ownDevice, .withPage = false}, {}));
         },
         [](const World& world, bool done) -> std::string {
             if (fs::exists(world.out) && !lessonfile::verify(world.out)) {
                 return "half a lesson file has its name";
             }
             if (done && !fs::exists(world.out)) {
                 return "the lesson file is not there";
             }
             return either(world, true, g_before);
         }},
        {"migrate", [](const World& world) { return only(store::Library::open(world.oldOptions)); },
         [](const World& world, bool) -> std::string {
             const auto library = openLibrary(world.old);
             if (library == nullptr) {
                 return "the old library does not open any more";
             }
             const auto troubles = library->check();
             if (!troubles || !troubles->empty() || library->allLines()->size() != 5) {
                 return "the old library lost something";
             }
             return {};
         }},
        {"merge",
         [](const World& world) {
             const auto library = store::Library::open(world.options);
             if (!library) {
                 return tell(library.error());
             }
             return only((*library)->merge(g_merge));
         },
         [](const World& world, bool done) {
             std::vector<std::string> some;
             for (const records::Record& record : g_merge) {
                 some.push_back(*toText(*record.fact));
             }
             return either(world, done, sum(g_before, some));
         }},
        {"backup",
         [](const World& world) {
             const auto library = store::Library::open(world.options);
             if (!library) {
                 return tell(library.error());
             }
             return only((*library)->backup());
         },
         [](const World& world, bool done) -> std::string {
             const auto backups = store::listBackups(world.library);
             for (const auto& backup : backups) {
                 const auto state = store::checkBackup(backup.folder, true);
                 if (!state || state->filmsMissing > 0) {
                     return "half a backup has a name";
                 }
             }
             if (backups.size() < (done ? 2U : 1U)) {
                 return "a backup is missing";
             }
             return either(world, true, g_before);
         }},
        {"erase",
         [](const World& world) {
             const auto library = store::Library::open(world.options);
             if (!library) {
                 return tell(library.error());
             }
             return only((*library)->erase(*g_erase));
         },
         [](const World& world, bool done) -> std::string {
             std::vector<std::string> lines;
             if (auto wrong = sound(world, lines); !wrong.empty()) {
                 return wrong;
             }
             const bool gone = openLibrary(world.library)->players(kCanary)->empty();
             if (done && !gone) {
                 return "what was erased is still there";
             }
             return gone && holds(world.library, kCanary) ? "a trace of what was erased" : "";
         }},
        {"restore",
         [](const World& world) { return only(store::restoreBackup(world.options, world.backup)); },
         [](const World& world, bool done) -> std::string {
             if (!fs::exists(world.library / "library.db")) {
                 if (done) {
                     return "the restored library is not there";
                 }
                 if (!store::restoreBackup(world.options, world.backup)) {
                     return "the backup cannot be restored any more";
                 }
             }
             return either(world, true, g_before);
         }},
    };
    return all;
}

bool prepare(const World& world) {
    fs::create_directories(world.at / "out");
    std::vector<records::Fact> facts;
    {
        const auto other = openLibrary(world.at / "other");
        const auto film = bringFilm(*other, std::string(20000, 'o'));
        facts = makeLesson(*other, "Other", film);
        if (!other->add(facts) ||
            !session::LessonExchange(*other).exportLesson(
                facts[1].id, world.file, {.audience = session::Audience::ownDevice, .withPage = false}, {})) {
            return false;
        }
        g_lessonLines = *other->allLines();
        for (const std::string& line : g_lessonLines) {
            auto record = records::recordFromText(line);
            if (record->fact && record->fact->kind != records::kind::clip) {
                g_merge.push_back(std::move(*record));
            }
        }
        std::ofstream(world.film, std::ios::binary) << std::string(20000, 's');
    }
    fs::remove_all(world.at / "other");
    {
        const auto library = openLibrary(world.library);
        const auto film = bringFilm(*library, std::string(20000, 'k'));
        const auto kept = makeLesson(*library, "Kept", film);
        const auto film2 = bringFilm(*library, kCanary + std::string(20000, 'c'));
        const auto erased = makeLesson(*library, kCanary, film2);
        if (!library->add(kept) || !library->add(erased)) {
            return false;
        }
        const auto backup = library->backup();
        if (!backup) {
            return false;
        }
        g_backupName = backup->name;
        g_lesson = kept[1].id;
        g_erase = erased[0].id;
        g_before = *library->allLines();
    }
    // A library as version 1 wrote it, from the committed dump.
    fs::create_directories(world.old);
    const std::string command = "sqlite3 '" + (world.at / "old" / "library.db").string() +
                                "' < '" PLUMBMARK_SOURCE_DIR "/tests/core/store/library-version-1.sql'";
    return std::system(command.c_str()) == 0;
}

// The loop
// -------------------------------------------------------------------------------------------------------

struct Outcome {
    bool done = false, reached = false, killed = false;
    int crashed = 0; ///< signal, when it ended by itself in a way it must not
    Told told;
};

Outcome attempt(const Work& work, const World& world, Fault fault, long at, int error, bool forever) {
    int pipe[2];
    if (::pipe(pipe) != 0) {
        std::abort();
    }
    const pid_t child = ::fork();
    if (child == 0) {
        g_at = at;
        g_errno = error;
        g_forever = forever;
        bool done = false;
        g_fault = fault;
        try {
            done = work.run(world);
        } catch (const std::bad_alloc&) {
            g_told.threw = true;
        }
        g_fault = Fault::none;
        g_told.calls = g_seen;
        (void)!::syscall(SYS_write, pipe[1], &g_told, sizeof g_told);
        ::_exit(done ? 0 : 1);
    }
    ::close(pipe[1]);
    Outcome outcome;
    int status = 0;
    ::waitpid(child, &status, 0);
    const bool told = ::read(pipe[0], &outcome.told, sizeof outcome.told) == sizeof outcome.told;
    ::close(pipe[0]);
    outcome.done = WIFEXITED(status) && WEXITSTATUS(status) == 0;
    outcome.killed = WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
    outcome.crashed = WIFSIGNALED(status) && !outcome.killed ? WTERMSIG(status) : 0;
    outcome.reached = outcome.killed || outcome.crashed != 0 || (told && outcome.told.calls >= at);
    return outcome;
}

} // namespace

int main(int argc, char** argv) {
    const std::string mode = argc > 1 ? argv[1] : "";
    long every = 1, from = 1, times = 1;
    double minutes = 0.0; ///< then it stops and tells what was done; 0: no limit
    bool json = false;
    std::string only;
    for (int i = 2; i < argc; ++i) {
        const std::string option = argv[i];
        if (option == "--json") {
            json = true;
        } else if (i + 1 < argc && option == "--every") {
            every = std::atol(argv[++i]);
        } else if (i + 1 < argc && option == "--from") {
            from = std::atol(argv[++i]);
        } else if (i + 1 < argc && option == "--times") {
            times = std::atol(argv[++i]);
        } else if (i + 1 < argc && option == "--minutes") {
            minutes = std::atof(argv[++i]);
        } else if (i + 1 < argc && option == "--only") {
            only = argv[++i];
        }
    }
    if ((mode != "fail" && mode != "kill" && mode != "memory") || every < 1 || from < 1) {
        std::fprintf(stderr,
                     "reliability_faults fail|kill|memory [--every N] [--from N] [--times N] [--minutes M] "
                     "[--only WORK] [--json]\n");
        return 2;
    }
#if defined(__SANITIZE_ADDRESS__)
    if (mode == "memory") {
        std::fprintf(stderr, "allocations cannot be made to fail under the address sanitizer\n");
        return 2;
    }
#endif
    const auto stage = base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test");
    const World origin(stage->path() / "origin");
    if (!prepare(origin)) {
        std::fprintf(stderr, "the library to work on could not be made\n");
        return 1;
    }
    struct Way {
        int error;
        bool forever;
    };
    const std::vector<Way> ways =
        mode == "kill"     ? std::vector<Way>(static_cast<std::size_t>(times), Way{0, false})
        : mode == "memory" ? std::vector<Way>{{0, false}, {0, true}}
                           : std::vector<Way>{{EIO, false}, {EIO, true}, {ENOSPC, false}, {ENOSPC, true}};
    const Fault fault = mode == "kill" ? Fault::kill : mode == "memory" ? Fault::memory : Fault::fail;
    int wrongs = 0;
    std::vector<const Work*> chosen;
    for (const Work& work : works()) {
        if (only.empty() || only == work.name) {
            chosen.push_back(&work);
        }
    }
    struct Row {
        long steps = 0, runs = 0, reported = 0, crashes = 0;
        int rounds = 0; ///< how often each step was struck
    };
    std::vector<Row> rows(chosen.size());
    const auto began = std::chrono::steady_clock::now();
    const auto over = [&] {
        return minutes > 0.0 &&
               std::chrono::steady_clock::now() - began > std::chrono::duration<double>(minutes * 60.0);
    };
    // All kinds of work in each round, so that a run that ends early has struck every step about as often.
    for (const Way& way : ways) {
        for (std::size_t w = 0; w < chosen.size(); ++w) {
            const Work& work = *chosen[w];
            Row& row = rows[w];
            for (long at = from; !over(); at += every) {
                const World world(stage->path() / "world");
                fs::remove_all(world.at);
                fs::copy(origin.at, world.at, fs::copy_options::recursive);
                const Outcome outcome = attempt(work, world, fault, at, way.error, way.forever);
                if (!outcome.reached) {
                    if (!outcome.done) {
                        ++wrongs;
                        std::fprintf(stderr, "%s fails without a fault\n", work.name);
                    }
                    row.steps = std::max(row.steps, outcome.told.calls);
                    ++row.rounds;
                    break;
                }
                ++row.runs;
                row.reported += !outcome.done && !outcome.killed ? 1 : 0;
                row.crashes += outcome.crashed != 0 ? 1 : 0;
                const std::string key = outcome.told.key;
                std::string wrong;
                if (outcome.crashed != 0) {
                    wrong = "it ended by signal " + std::to_string(outcome.crashed);
                } else if (outcome.told.threw && !outcome.told.making) {
                    wrong = "it threw instead of telling an error";
                } else if (fault == Fault::memory && key.find("damaged") != std::string::npos) {
                    wrong = "want of memory was taken for damage: " + key;
                } else {
                    wrong = work.look(world, outcome.done);
                    if (wrong.empty() && fault == Fault::memory && hasLeftovers(world)) {
                        wrong = "something unfinished was left behind";
                    }
                }
                // And the same work again, without a fault, goes through.
                if (wrong.empty() && !outcome.done && std::string(work.name) != "restore") {
                    const Outcome again = attempt(work, world, Fault::count, 0, 0, false);
                    wrong = !again.done ? "trying again fails" : work.look(world, true);
                }
                if (!wrong.empty()) {
                    ++wrongs;
                    std::fprintf(stderr, "%s, %s at call %ld (error %d%s): %s\n", work.name, mode.c_str(), at,
                                 way.error, way.forever ? ", from then on" : "", wrong.c_str());
                }
            }
        }
    }
    std::string told;
    for (std::size_t w = 0; w < chosen.size(); ++w) {
        const Row& row = rows[w];
        char text[300];
        std::snprintf(
            text, sizeof text,
            "%s{\"work\":\"%s\",\"calls\":%ld,\"runs\":%ld,\"rounds\":%d,\"reported\":%ld,\"crashes\":%ld}",
            told.empty() ? "" : ",", chosen[w]->name, row.steps, row.runs, row.rounds, row.reported,
            row.crashes);
        told += text;
        if (!json) {
            std::printf("%-8s %5ld calls, %6ld runs, %6ld ended with an error told\n", chosen[w]->name,
                        row.steps, row.runs, row.reported);
        }
    }
    if (json) {
        std::printf("{\"mode\":\"%s\",\"every\":%ld,\"wrong\":%d,\"works\":[%s]}\n", mode.c_str(), every,
                    wrongs, told.c_str());
    }
    return wrongs == 0 ? 0 : 1;
}
