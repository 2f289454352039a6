// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <array>
#include <cerrno>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <functional>
#include <random>

#include <sys/wait.h>
#include <zip.h>

#include "base/hash.h"
#include "base/ids.h"
#include "lessonfile/detail/zip.h"
#include "lessonfile/lessonfile.h"
#include "records/fact.h"

using namespace plumbmark;
namespace fs = std::filesystem;
using lessonfile::detail::ZipEntry;

namespace {

std::string contentOf(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}
void put(const fs::path& path, const std::string& content) {
    std::ofstream(path, std::ios::binary) << content;
}

std::string run(const std::string& command, int& code) {
    std::FILE* pipe = ::popen((command + " 2>&1").c_str(), "r");
    std::string text;
    char buffer[4096];
    for (std::size_t got = 0; (got = std::fread(buffer, 1, sizeof buffer, pipe)) > 0;) {
        text.append(buffer, got);
    }
    const int status = ::pclose(pipe);
    code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return text;
}

std::size_t entriesIn(const fs::path& folder) {
    return static_cast<std::size_t>(
        std::distance(fs::recursive_directory_iterator(folder), fs::recursive_directory_iterator()));
}

std::vector<std::string> sampleRecords(int count) {
    base::SeededIds ids(9);
    std::vector<std::string> lines;
    for (int i = 0; i < count; ++i) {
        records::Fact fact;
        fact.id = ids.next();
        fact.kind = "player";
        fact.at = {1'700'000'000'000 + i, 0, ids.next(), false};
        fact.body = {{"name", "Zoë " + std::to_string(i)}};
        lines.push_back(*toText(fact));
    }
    lines.push_back(toText(records::Tombstone{ids.next(), "2026-11-25"}));
    std::sort(lines.begin(), lines.end());
    return lines;
}

class LessonFile : public testing::Test {
  protected:
    LessonFile()
        : stage_(*base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test")),
          dir_(stage_.path()) {
        // Starts like an MP4, then noise.
        std::mt19937 random(3);
        std::string film = std::string("\0\0\0\x18", 4) + "ftypisom";
        for (int i = 0; i < 5000; ++i) {
            film += static_cast<char>(random());
        }
        put(dir_ / "film", film);
        put(dir_ / "sheet.png", "\x89PNG not really");
        contents_.title = "First lesson";
        contents_.records = sampleRecords(3);
        contents_.films = {{base::sha256OfText(film), dir_ / "film"}};
        contents_.sheet = dir_ / "sheet.png";
        options_.clock = &clock_;
    }

    fs::path written() {
        const fs::path target = dir_ / "lesson.plumbmark";
        const auto summary = lessonfile::write(target, contents_, options_);
        EXPECT_TRUE(summary) << summary.error().sentence;
        return target;
    }
    /// Key of the error that a file of this content gives, both when verified and when read; empty when it is
    /// good.
    std::string keyOf(const std::string& content) {
        const fs::path file = dir_ / "candidate";
        put(file, content);
        const auto verified = lessonfile::verify(file, limits_);
        const auto stage = base::StagingFolder::create(dir_ / "in");
        const auto read = lessonfile::readInto(file, stage->path(), limits_);
        EXPECT_EQ(verified.ok(), read.ok());
        if (!verified) {
            EXPECT_EQ(verified.error().kind, base::ErrorKind::input);
            EXPECT_FALSE(verified.error().sentence.empty());
            return verified.error().key;
        }
        return {};
    }

    base::StagingFolder stage_;
    fs::path dir_;
    base::FixedClock clock_{1'795'600'000'000};
    lessonfile::Contents contents_;
    lessonfile::WriteOptions options_;
    lessonfile::Limits limits_{2000, 4 << 20, 32 << 20, 4'294'967'295LL, 0};
};

/// A ZIP with the given entries, in our own narrow form unless `bend` changes the pieces.
struct Piece {
    std::string name, data;
};
std::string
zipOf(const std::vector<Piece>& pieces,
      const std::function<void(std::string& local, std::string& central, std::size_t i)>& bend = {}) {
    std::string out, directory;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        lessonfile::detail::Crc32 crc;
        crc.add({reinterpret_cast<const std::uint8_t*>(pieces[i].data.data()), pieces[i].data.size()});
        const ZipEntry entry{pieces[i].name, static_cast<std::uint32_t>(pieces[i].data.size()), crc.value(),
                             static_cast<std::uint32_t>(out.size())};
        std::string local = localHeader(entry);
        std::string central = centralHeader(entry);
        if (bend) {
            bend(local, central, i);
        }
        out += local + pieces[i].data;
        directory += central;
    }
    const auto offset = static_cast<std::uint32_t>(out.size());
    return out + directory +
           lessonfile::detail::endRecord(pieces.size(), static_cast<std::uint32_t>(directory.size()), offset);
}

/// The pieces of a good file, to be changed by tests; hashes and manifest are made by `seal`.
struct Parts {
    std::string title = "t", format = "plumbmark-lesson";
    int version = 1, readableFrom = 1;
    struct P {
        std::string path, role, data;
    };
    std::vector<P> parts;
    std::string lines;
    int records = 0;

    std::vector<Piece> seal() const {
        std::string list;
        std::vector<Piece> pieces{
            {"PLUMBMARK-LESSON", "A golf lesson; see manifest.json\n"}, {"", ""}, {"", ""}};
        for (const P& p : parts) {
            list += (list.empty() ? "" : ",") + std::string(R"({"path":")") + p.path + R"(","role":")" +
                    p.role + R"(","sha256":")" + base::sha256OfText(p.data) + R"(","size":)" +
                    std::to_string(p.data.size()) + "}";
            pieces.push_back({p.path, p.data});
        }
        const std::string manifest = R"({"created":"2026-11-25T00:00:00.000Z","format":")" + format +
                                     R"(","future":{"x":[1]},"made_by":"x","parts":[)" + list +
                                     R"(],"readable_from":)" + std::to_string(readableFrom) +
                                     R"(,"records":)" + std::to_string(records) + R"(,"title":")" + title +
                                     R"(","version":)" + std::to_string(version) + "}\n";
        pieces[1] = {"manifest.json", manifest};
        pieces[2] = {"manifest.sha256", base::sha256OfText(manifest) + "  manifest.json\n"};
        return pieces;
    }
};
Parts goodParts() {
    Parts parts;
    for (const auto& line : sampleRecords(2)) {
        parts.lines += line + "\n";
        ++parts.records;
    }
    parts.parts.push_back({"records.jsonl", "records", parts.lines});
    return parts;
}

} // namespace

TEST_F(LessonFile, ReadsBackWhatWasWritten) {
    const fs::path file = written();
    const auto summary = lessonfile::verify(file);
    ASSERT_TRUE(summary) << summary.error().sentence;
    EXPECT_EQ(summary->title, "First lesson");
    EXPECT_EQ(summary->version, lessonfile::kFormatVersion);
    EXPECT_EQ(summary->created, base::isoTime(clock_.now()));
    EXPECT_EQ(summary->records, 4);
    EXPECT_EQ(summary->bytes, static_cast<std::int64_t>(fs::file_size(file)));
    ASSERT_EQ(summary->parts.size(), 3U);
    EXPECT_EQ(summary->parts[1].path, "films/" + contents_.films[0].sha256 + ".mp4");

    const auto stage = base::StagingFolder::create(dir_ / "in");
    const auto staged = lessonfile::readInto(file, stage->path(), limits_);
    ASSERT_TRUE(staged) << staged.error().sentence;
    EXPECT_EQ(staged->records, contents_.records);
    ASSERT_EQ(staged->films.size(), 1U);
    EXPECT_EQ(staged->films[0].file, stage->path() / contents_.films[0].sha256);
    EXPECT_EQ(contentOf(staged->films[0].file), contentOf(dir_ / "film"));
    EXPECT_EQ(contentOf(*staged->sheet), contentOf(dir_ / "sheet.png"));
    EXPECT_EQ(entriesIn(stage->path()), 2U);
}

TEST_F(LessonFile, TheSameLessonGivesTheSameBytes) {
    const std::string first = contentOf(written());
    EXPECT_EQ(contentOf(written()), first);
}

// Outside checks: Info-ZIP's unzip, Python's zipfile, libzip with ZIP_CHECKCONS (Debian packages unzip,
// python3, libzip4) and coreutils' sha256sum on what unzip unpacked.
TEST_F(LessonFile, OtherToolsOpenIt) {
    const std::string file = "'" + written().string() + "'";
    int code = -1;
    std::string text = run("unzip -t " + file, code);
    EXPECT_EQ(code, 0) << text;
    EXPECT_NE(text.find("No errors detected"), std::string::npos) << text;
    text = run("cd '" + dir_.string() + "' && mkdir out && cd out && unzip -q " + file +
                   " && sha256sum -c manifest.sha256",
               code);
    EXPECT_EQ(code, 0) << text;
    EXPECT_EQ(contentOf(dir_ / "out" / "films" / (contents_.films[0].sha256 + ".mp4")),
              contentOf(dir_ / "film"));
    text = run("python3 -c \"import zipfile,sys; z=zipfile.ZipFile(sys.argv[1]); assert z.testzip() is None; "
               "print(z.namelist()[0], all(i.compress_type==0 for i in z.infolist()))\" " +
                   file,
               code);
    EXPECT_EQ(code, 0) << text;
    EXPECT_EQ(text, "PLUMBMARK-LESSON True\n");

    int error = 0;
    zip_t* zip = zip_open((dir_ / "lesson.plumbmark").c_str(), ZIP_RDONLY | ZIP_CHECKCONS, &error);
    ASSERT_NE(zip, nullptr) << error;
    EXPECT_EQ(zip_get_num_entries(zip, 0), 6);
    zip_discard(zip);
}

// The independent verifier: Python, standard library only.
TEST_F(LessonFile, TheIndependentVerifierAgrees) {
    const std::string script = "python3 '" + std::string(PLUMBMARK_SOURCE_DIR) + "/tests/verify_lesson.py' ";
    const fs::path file = written();
    int code = -1;
    std::string text = run(script + "'" + file.string() + "'", code);
    EXPECT_EQ(code, 0) << text;
    EXPECT_NE(text.find("whole"), std::string::npos) << text;
    // It must be able to say no.
    const std::string good = contentOf(file);
    for (const std::size_t at : {std::size_t{50}, good.size() / 2, good.size() - 30}) {
        std::string bad = good;
        bad[at] = static_cast<char>(bad[at] ^ 4);
        put(dir_ / "bad", bad);
        text = run(script + "'" + (dir_ / "bad").string() + "'", code);
        EXPECT_EQ(code, 1) << at << ": " << text;
    }
    put(dir_ / "bad", good.substr(0, good.size() - 100));
    run(script + "'" + (dir_ / "bad").string() + "'", code);
    EXPECT_EQ(code, 1);
}

TEST_F(LessonFile, EverySingleChangedBitIsFound) {
    contents_.records = sampleRecords(1);
    contents_.sheet.reset(); // small, because every bit of it costs a run
    const fs::path film = dir_ / "small";
    put(film, "a short film");
    contents_.films = {{base::sha256OfText("a short film"), film}};
    const std::string good = contentOf(written());
    ASSERT_TRUE(keyOf(good).empty());
    const fs::path file = dir_ / "candidate";
    for (std::size_t i = 0; i < good.size(); ++i) {
        for (int bit = 0; bit < 8; ++bit) {
            std::string bad = good;
            bad[i] = static_cast<char>(bad[i] ^ (1 << bit));
            put(file, bad);
            ASSERT_FALSE(lessonfile::verify(file)) << "byte " << i << " bit " << bit;
        }
    }
}

TEST_F(LessonFile, EveryTruncationAndEveryAdditionIsFound) {
    const std::string good = contentOf(written());
    int truncated = 0;
    for (std::size_t length = 0; length < good.size(); length += 7) {
        const std::string key = keyOf(good.substr(0, length));
        ASSERT_FALSE(key.empty()) << length;
        truncated += key == "lessonfile.truncated" ? 1 : 0;
    }
    EXPECT_GT(truncated, 100); // and it is mostly called by its name
    EXPECT_EQ(keyOf(""), "lessonfile.empty");
    EXPECT_FALSE(keyOf(good + "x").empty());
    EXPECT_FALSE(keyOf("x" + good).empty());
    EXPECT_FALSE(keyOf(good + good).empty());
    EXPECT_FALSE(keyOf(good.substr(0, 1000) + std::string(10, '\0') + good.substr(1000)).empty());
}

TEST_F(LessonFile, TheBuilderOfTricksMakesGoodFilesToo) {
    EXPECT_EQ(keyOf(zipOf(goodParts().seal())), "");
    // Unknown fields, unknown roles and newer versions that say they can be read are no trouble.
    Parts newer = goodParts();
    newer.version = 7;
    newer.parts.push_back({"voice.opus", "voice", "sound"});
    put(dir_ / "newer", zipOf(newer.seal()));
    const auto stage = base::StagingFolder::create(dir_ / "in");
    const auto staged = lessonfile::readInto(dir_ / "newer", stage->path(), limits_);
    ASSERT_TRUE(staged) << staged.error().sentence;
    // Kept for passing on, under its hash, never under a name from the archive.
    ASSERT_EQ(staged->carried.size(), 1U);
    EXPECT_EQ(staged->carried[0].part.path, "voice.opus");
    EXPECT_EQ(contentOf(staged->carried[0].file), "sound");
    EXPECT_EQ(entriesIn(stage->path()), 1U);
}

TEST_F(LessonFile, TricksAreRefusedAndNothingIsWritten) {
    using Bend = std::function<void(std::string&, std::string&, std::size_t)>;
    const auto set16 = [](std::string& s, std::size_t at, unsigned value) {
        s[at] = static_cast<char>(value & 255);
        s[at + 1] = static_cast<char>(value >> 8);
    };
    const auto both16 = [&](std::size_t localAt, std::size_t centralAt, unsigned value) -> Bend {
        return [=](std::string& local, std::string& central, std::size_t i) {
            if (i == 3) {
                set16(local, localAt, value);
                set16(central, centralAt, value);
            }
        };
    };
    const auto bent = [&](const Bend& bend) { return zipOf(goodParts().seal(), bend); };
    const auto with = [&](const std::string& path, const std::string& role, const std::string& data) {
        Parts parts = goodParts();
        parts.parts.push_back({path, role, data});
        return zipOf(parts.seal());
    };
    const std::string film = "film";
    const std::string filmName = "films/" + base::sha256OfText(film) + ".mp4";

    std::vector<std::pair<std::string, std::string>> tricks;
    for (const char* path : {"../evil", "/etc/passwd", "a/../../evil", "..", "films/../../evil", "C:\\\\evil",
                             "a\\\\b", "films//x", "films/.hidden", ".ssh", "dir/", "nul\\u0000l", "a:b",
                             "a*b", "Zo\\u00eb", "a/b/c", ""}) {
        tricks.emplace_back(std::string("path ") + path, with(path, "voice", "x"));
    }
    tricks.emplace_back("path over 200 bytes", with(std::string(201, 'a'), "voice", "x"));
    tricks.emplace_back("film under a foreign name",
                        with("films/" + std::string(64, 'a') + ".mp4", "film", film));
    tricks.emplace_back("film outside its folder", with(base::sha256OfText(film) + ".mp4", "film", film));
    tricks.emplace_back("records twice", with("more.jsonl", "records", goodParts().lines));
    {
        Parts parts = goodParts();
        parts.parts.push_back({"a.png", "sheet", "x"});
        parts.parts.push_back({"b.png", "sheet", "x"});
        tricks.emplace_back("two sheets", zipOf(parts.seal()));
    }
    {
        Parts parts = goodParts();
        parts.parts.push_back({filmName, "film", film});
        parts.parts.push_back({filmName, "film", film});
        tricks.emplace_back("same name twice", zipOf(parts.seal()));
        parts.parts.pop_back();
        parts.parts.push_back({"FILMS" + filmName.substr(5), "voice", film});
        tricks.emplace_back("same name in other case", zipOf(parts.seal()));
    }
    tricks.emplace_back("encrypted", bent(both16(6, 8, 1)));
    tricks.emplace_back("compressed", bent(both16(8, 10, 8)));
    tricks.emplace_back("data descriptor", bent(both16(6, 8, 8)));
    tricks.emplace_back("foreign date", bent(both16(12, 14, 0x5a21)));
    tricks.emplace_back("link", bent([&](std::string&, std::string& central, std::size_t i) {
                            if (i == 3) {
                                set16(central, 40, 0120777);
                            }
                        }));
    tricks.emplace_back("folder bit", bent([&](std::string&, std::string& central, std::size_t i) {
                            if (i == 3) {
                                set16(central, 38, 0x10);
                            }
                        }));
    tricks.emplace_back("other name in the local header",
                        bent([](std::string& local, std::string&, std::size_t i) {
                            if (i == 3) {
                                local[30] = 'R';
                            }
                        }));
    tricks.emplace_back("overlap", bent([&](std::string&, std::string& central, std::size_t i) {
                            if (i == 3) {
                                set16(central, 42, 0);
                                set16(central, 44, 0);
                            }
                        }));
    tricks.emplace_back("lying size", bent([&](std::string& local, std::string& central, std::size_t i) {
                            if (i == 3) {
                                set16(local, 18, 60000);
                                set16(local, 22, 60000);
                                set16(central, 20, 60000);
                                set16(central, 24, 60000);
                            }
                        }));
    tricks.emplace_back("size of four gigabytes",
                        bent([&](std::string& local, std::string& central, std::size_t i) {
                            if (i == 3) {
                                for (const std::size_t at : {18U, 20U, 22U, 24U}) {
                                    set16(local, at, 0xffff);
                                }
                                for (const std::size_t at : {20U, 22U, 24U, 26U}) {
                                    set16(central, at, 0xffff);
                                }
                            }
                        }));
    {
        auto pieces = goodParts().seal();
        pieces.push_back({"extra.txt", "not in the manifest"});
        tricks.emplace_back("unlisted part", zipOf(pieces));
        pieces.pop_back();
        pieces.pop_back();
        tricks.emplace_back("missing part", zipOf(pieces));
        pieces = goodParts().seal();
        pieces[3].data += "\n";
        tricks.emplace_back("part longer than listed", zipOf(pieces));
        pieces = goodParts().seal();
        pieces[3].data[10] = static_cast<char>(pieces[3].data[10] ^ 1);
        tricks.emplace_back("wrong hash with a right CRC", zipOf(pieces));
        pieces = goodParts().seal();
        pieces.erase(pieces.begin() + 1);
        tricks.emplace_back("no manifest", zipOf(pieces));
        pieces = goodParts().seal();
        pieces.erase(pieces.begin() + 2);
        tricks.emplace_back("no hash of the manifest", zipOf(pieces));
        pieces = goodParts().seal();
        pieces[2].data[0] = pieces[2].data[0] == 'a' ? 'b' : 'a';
        tricks.emplace_back("wrong hash of the manifest", zipOf(pieces));
        pieces = goodParts().seal();
        std::swap(pieces[0], pieces[1]);
        tricks.emplace_back("marker not first", zipOf(pieces));
        pieces = goodParts().seal();
        pieces[0].data = "An evil lesson; see manifest.json";
        tricks.emplace_back("other marker", zipOf(pieces));
        std::vector<Piece> many = goodParts().seal();
        for (int i = 0; i < 2100; ++i) {
            many.push_back({"p" + std::to_string(i), ""});
        }
        tricks.emplace_back("too many parts", zipOf(many));
    }
    for (const auto& [what, lines, records] : std::vector<std::tuple<std::string, std::string, int>>{
             {"records not JSON", "{\n", 1},
             {"record not canonical", "{ \"a\":1}\n", 1},
             {"record without a line end", sampleRecords(0)[0], 1},
             {"wrong count of records", goodParts().lines, 99},
             {"the same record twice", sampleRecords(0)[0] + "\n" + sampleRecords(0)[0] + "\n", 2},
             {"deep JSON", std::string(100'000, '[') + "\n", 1}}) {
        Parts parts = goodParts();
        parts.parts[0].data = lines;
        parts.records = records;
        tricks.emplace_back(what, zipOf(parts.seal()));
    }
    {
        Parts parts = goodParts();
        parts.parts.clear();
        tricks.emplace_back("no records", zipOf(parts.seal()));
        parts = goodParts();
        parts.format = "something";
        tricks.emplace_back("other format", zipOf(parts.seal()));
        parts = goodParts();
        parts.readableFrom = 2;
        parts.version = 2;
        tricks.emplace_back("from the future", zipOf(parts.seal()));
        EXPECT_EQ(keyOf(tricks.back().second), "lessonfile.newer");
        parts.version = 0;
        tricks.emplace_back("version nonsense", zipOf(parts.seal()));
    }
    // A nested archive travels only under a role we ignore, so it is never opened; as records it is no JSON.
    {
        Parts parts = goodParts();
        parts.parts[0].data = zipOf(goodParts().seal());
        tricks.emplace_back("archive in the place of records", zipOf(parts.seal()));
    }
    EXPECT_GE(tricks.size(), 50U);
    for (const auto& [what, content] : tricks) {
        const std::string key = keyOf(content);
        EXPECT_EQ(key.rfind("lessonfile.", 0), 0U) << what << ": " << key;
        EXPECT_EQ(fs::exists(dir_ / "evil") || fs::exists(dir_.parent_path() / "evil"), false);
    }
    EXPECT_TRUE(!fs::exists(dir_ / "in") || fs::is_empty(dir_ / "in")) << "staging was left behind";
}

TEST_F(LessonFile, OtherZipsAndOtherFilesAreNotLessons) {
    int code = 0;
    put(dir_ / "a.txt", "text");
    run("cd '" + dir_.string() +
            "' && python3 -c \"import zipfile; z=zipfile.ZipFile('o.zip','w'); z.write('a.txt')\"",
        code);
    EXPECT_FALSE(keyOf(contentOf(dir_ / "o.zip")).empty());
    EXPECT_EQ(keyOf("just a text, long enough to hold an end record"), "lessonfile.not_ours");
    EXPECT_EQ(keyOf("PK"), "lessonfile.not_ours");
    const auto missing = lessonfile::verify(dir_ / "none");
    ASSERT_FALSE(missing);
    EXPECT_EQ(missing.error().key, "lessonfile.missing");
    EXPECT_FALSE(lessonfile::verify(dir_));
    EXPECT_FALSE(lessonfile::verify("/dev/zero"));
}

TEST_F(LessonFile, LimitsAreKept) {
    limits_.mostRecordBytes = 100;
    EXPECT_EQ(keyOf(contentOf(written())), "lessonfile.unsafe");
    limits_ = {2000, 100, 32 << 20, 4'294'967'295LL, 0};
    EXPECT_EQ(keyOf(contentOf(written())), "lessonfile.unsafe");
    limits_ = {5, 4 << 20, 32 << 20, 4'294'967'295LL, 0};
    EXPECT_EQ(keyOf(contentOf(written())), "lessonfile.unsafe");
    limits_ = {2000, 4 << 20, 32 << 20, 1000, 0};
    EXPECT_EQ(keyOf(contentOf(written())), "lessonfile.unsafe");
    const auto stage = base::StagingFolder::create(dir_ / "in");
    const auto full = lessonfile::readInto(written(), stage->path(),
                                           {2000, 4 << 20, 32 << 20, 4'294'967'295LL, INT64_MAX / 2});
    ASSERT_FALSE(full);
    EXPECT_EQ(full.error().key, "disk.full");
}

TEST_F(LessonFile, AFilmThatIsNotWhatItsNameSaysIsNotExported) {
    contents_.films[0].sha256 = std::string(64, 'a');
    const auto refused = lessonfile::write(dir_ / "x.plumbmark", contents_, options_);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().key, "film.changed");
    EXPECT_FALSE(fs::exists(dir_ / "x.plumbmark"));
    contents_.films[0].file = dir_ / "none";
    EXPECT_FALSE(lessonfile::write(dir_ / "x.plumbmark", contents_, options_));
}

TEST_F(LessonFile, AnyFailingCallLeavesTheOldFileOrTheNewOne) {
    class Failing final : public base::FileCalls {
      public:
        int left = 0;
        bool failed = false;
        int openNew(const fs::path& p) override { return fail() ? -ENOSPC : FileCalls::openNew(p); }
        int openForSync(const fs::path& p) override { return fail() ? -EIO : FileCalls::openForSync(p); }
        std::int64_t write(int fd, std::span<const std::uint8_t> b) override {
            return fail() ? -ENOSPC : FileCalls::write(fd, b);
        }
        int sync(int fd) override { return fail() ? -EIO : FileCalls::sync(fd); }
        int close(int fd) override {
            const int done = FileCalls::close(fd);
            return fail() ? -EIO : done;
        }
        int rename(const fs::path& a, const fs::path& b) override {
            return fail() ? -EIO : FileCalls::rename(a, b);
        }

      private:
        bool fail() {
            failed = failed || --left == 0;
            return left == 0;
        }
    };
    const fs::path target = written();
    const std::string old = contentOf(target);
    const std::size_t before = entriesIn(dir_);
    contents_.title = "Second lesson";
    int failures = 0;
    for (int n = 1;; ++n) {
        put(target, old);
        Failing calls;
        calls.left = n;
        options_.calls = &calls;
        const auto result = lessonfile::write(target, contents_, options_);
        ASSERT_EQ(entriesIn(dir_), before) << "call " << n;
        const auto now = lessonfile::verify(target);
        ASSERT_TRUE(now) << "call " << n;
        if (!calls.failed) {
            ASSERT_TRUE(result);
            EXPECT_EQ(now->title, "Second lesson");
            break;
        }
        ASSERT_FALSE(result) << "call " << n;
        ++failures;
    }
    EXPECT_GT(failures, 15);
    options_.calls = &base::systemFileCalls();

    // Reading: nothing but the staging folder is ever touched.
    for (int n = 1;; ++n) {
        Failing calls;
        calls.left = n;
        auto stage = base::StagingFolder::create(dir_ / "in");
        const auto read = lessonfile::readInto(target, stage->path(), limits_, {}, calls);
        ASSERT_EQ(read.ok(), !calls.failed) << "call " << n;
        if (read) {
            break;
        }
    }
}

TEST_F(LessonFile, StopsOnRequestAndLeavesNothing) {
    std::atomic<bool> stop{true};
    const auto cancelled =
        lessonfile::write(dir_ / "x.plumbmark", contents_, options_, base::Progress{{}, &stop});
    ASSERT_FALSE(cancelled);
    EXPECT_EQ(cancelled.error().key, "cancelled");
    EXPECT_FALSE(fs::exists(dir_ / "x.plumbmark"));
    const auto verified = lessonfile::verify(written(), {}, base::Progress{{}, &stop});
    ASSERT_FALSE(verified);
    EXPECT_EQ(verified.error().key, "cancelled");
}

// The check value of CRC-32 as used by ZIP, Ethernet and PNG: 0xCBF43926 for "123456789" (published in the
// catalogue of parametrised CRC algorithms; from memory).
TEST(Crc32, AgreesWithThePublishedCheckValueInAnyPieces) {
    const std::string text = "123456789";
    for (std::size_t cut = 0; cut <= text.size(); ++cut) {
        lessonfile::detail::Crc32 crc;
        const auto bytes = std::span(reinterpret_cast<const std::uint8_t*>(text.data()), text.size());
        crc.add(bytes.first(cut));
        crc.add(bytes.subspan(cut));
        EXPECT_EQ(crc.value(), 0xCBF43926U);
    }
}
