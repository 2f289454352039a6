// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Everything that reads bytes from outside, one function each, for a fuzzer that is guided by coverage and
// for the corpus it left behind.
//
// With clang's libFuzzer (see reliability.py, section "guided"): PLUMBMARK_FUZZ=TARGET guided CORPUS...
// Else, built with PLUMBMARK_REPLAY, in every test run: guided CORPUS_FOLDER reads CORPUS_FOLDER/TARGET/*
// once.
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include <sys/mman.h>
#include <unistd.h>

#include "base/hash.h"
#include "base/ids.h"
#include "coaching/playbook.h"
#include "lessonfile/detail/zip.h"
#include "lessonfile/lessonfile.h"
#include "lessonfile/seal.h"
#include "records/coaching_kinds.h"
#include "records/consent.h"
#include "records/fact.h"
#include "records/film_copy.h"
#include "records/inbox.h"
#include "records/kinds.h"
#include "records/merge.h"
#include "records/review.h"
#include "transfer/direct.h"
#include "video/byte_source.h"
#include "video/clip.h"

using namespace plumbmark;

namespace {

void must(bool true_, const char* what) {
    if (!true_) {
        std::fprintf(stderr, "%s\n", what);
        std::abort();
    }
}

/// A file in memory, seen through /proc.
class MemoryFile {
  public:
    explicit MemoryFile(std::string_view bytes) : fd_(::memfd_create("fuzz", 0)) {
        must(fd_ >= 0 && ::write(fd_, bytes.data(), bytes.size()) == static_cast<ssize_t>(bytes.size()),
             "no memory for the input");
    }
    MemoryFile(const MemoryFile&) = delete;
    MemoryFile& operator=(const MemoryFile&) = delete;
    ~MemoryFile() { ::close(fd_); }
    [[nodiscard]] std::string path() const { return "/proc/self/fd/" + std::to_string(fd_); }

  private:
    int fd_;
};

/// A record is taken with exactly the bytes it has, or not at all.
void readRecord(std::string_view text) {
    const auto record = records::recordFromText(text);
    if (record && record->fact) {
        const auto back = toText(*record->fact);
        must(back && *back == text, "a record was read as something else");
    } else if (record) {
        must(toText(*record->tombstone) == text, "a tombstone was read as something else");
    }
}

/// A row of the library as its readers see it: the body of every known kind.
void readRow(std::string_view text) {
    const auto record = records::recordFromText(text);
    if (!record || !record->fact) {
        return;
    }
    const records::Fact& fact = *record->fact;
    const records::Object& body = fact.body;
    // What is read can be written and read again to the same.
    const auto again = [](const auto& value) { return bodyOf(value); };
    (void)again(records::playerOf(body));
    (void)again(records::lessonOf(body));
    (void)again(records::shotOf(body));
    (void)again(records::findingsOf(body));
    (void)again(records::planOf(body));
    (void)again(records::consentOf(body));
    (void)again(records::bodyCardOf(body));
    (void)again(records::explanationOf(body));
    const auto maybe = [&](const auto& value) {
        if (value) {
            (void)again(*value);
        }
    };
    maybe(records::clipOf(body));
    maybe(records::markOf(body));
    maybe(records::momentOf(body));
    maybe(records::drawingOf(body));
    maybe(records::practiceOf(body));
    maybe(records::painOf(body));
    maybe(records::inboxOf(body));
    maybe(records::voiceOf(body));
    maybe(records::filmCopyOf(body));
    maybe(records::coachWordOf(body));
    maybe(records::trialOf(body));
    if (const auto review = records::reviewOf(body)) {
        (void)again(*review);
        (void)check(*review).ok();
        (void)records::viewAt(*review, 500.0);
    }
    (void)check(records::playerOf(body)).ok();
    (void)check(records::lessonOf(body)).ok();
    (void)check(records::shotOf(body)).ok();
    (void)check(records::consentOf(body)).ok();
    records::Fact maker = fact;
    maker.kind = records::kind::player;
    (void)records::foldEntity(maker, {fact, fact});
    (void)records::allows({fact}, records::scope::share, "2026-11-25").ok();
    (void)records::mayShowFace({fact}, "2026-11-25", 2010);
}

void readTicket(std::string_view text) {
    if (const auto ticket = transfer::Ticket::fromText(text)) {
        must(transfer::Ticket::fromText(ticket->text()).has_value(), "a ticket cannot be read again");
    }
}

void readPlaybook(std::string_view text) {
    (void)coaching::Playbook::parse(text).ok();
}

/// The head of a clip, its index and its first frame.
void readClip(std::string_view text) {
    video::ClipOptions options;
    options.cacheBytes = 1 << 20;
    options.decoderThreads = 1;
    auto clip = video::Clip::open(
        video::fromBytes({reinterpret_cast<const std::uint8_t*>(text.data()), text.size()}), options);
    if (clip) {
        must((*clip)->info().frames == static_cast<int>((*clip)->times().size()), "frames without times");
        (void)(*clip)->frame((*clip)->info().frames - 1).ok();
    }
}

/// The bytes of a whole lesson file.
void readLessonFile(std::string_view text) {
    const MemoryFile file(text);
    (void)lessonfile::verify(file.path()).ok();
}

/// Manifest and records (a zero byte between them) in an archive whose sizes and hashes fit, so that the
/// readers behind the hashes are reached.
void readInside(std::string_view text) {
    using lessonfile::detail::ZipEntry;
    const std::size_t cut = text.find('\0');
    const std::string manifest(text.substr(0, cut));
    const std::string records(cut == std::string_view::npos ? std::string_view() : text.substr(cut + 1));
    const std::vector<std::pair<std::string, std::string>> parts{
        {"PLUMBMARK-LESSON", "A golf lesson; see manifest.json\n"},
        {"manifest.json", manifest},
        {"manifest.sha256", base::sha256OfText(manifest) + "  manifest.json\n"},
        {"records.jsonl", records}};
    std::string all, directory;
    for (const auto& [name, content] : parts) {
        lessonfile::detail::Crc32 crc;
        crc.add({reinterpret_cast<const std::uint8_t*>(content.data()), content.size()});
        const ZipEntry entry{name, static_cast<std::uint32_t>(content.size()), crc.value(),
                             static_cast<std::uint32_t>(all.size())};
        all += localHeader(entry) + content;
        directory += centralHeader(entry);
    }
    const auto at = static_cast<std::uint32_t>(all.size());
    all += directory +
           lessonfile::detail::endRecord(parts.size(), static_cast<std::uint32_t>(directory.size()), at);
    readLessonFile(all);
}

const std::map<std::string, void (*)(std::string_view)>& targets() {
    static const std::map<std::string, void (*)(std::string_view)> all{
        {"record", readRecord}, {"row", readRow},         {"ticket", readTicket}, {"playbook", readPlaybook},
        {"clip", readClip},     {"file", readLessonFile}, {"inside", readInside}};
    return all;
}

} // namespace

#ifdef PLUMBMARK_REPLAY
int main(int argc, char** argv) {
    int read = 0;
    for (const auto& [name, target] : targets()) {
        std::error_code error;
        for (std::filesystem::directory_iterator
                 it(std::filesystem::path(argc > 1 ? argv[1] : ".") / name, error),
             end;
             !error && it != end; it.increment(error)) {
            std::ifstream in(it->path(), std::ios::binary);
            const std::string text{std::istreambuf_iterator<char>(in), {}};
            target(text);
            ++read;
        }
    }
    std::printf("%d inputs of the corpus read\n", read);
    return read > 0 ? 0 : 1;
}
#else
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static void (*const target)(std::string_view) = [] {
        const char* name = std::getenv("PLUMBMARK_FUZZ");
        const auto found = targets().find(name == nullptr ? "" : name);
        must(found != targets().end(), "say with PLUMBMARK_FUZZ what to fuzz");
        return found->second;
    }();
    target({reinterpret_cast<const char*>(data), size});
    return 0;
}
#endif
