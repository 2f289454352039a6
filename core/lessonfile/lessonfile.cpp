// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "lessonfile/lessonfile.h"

#include <algorithm>
#include <limits>
#include <map>
#include <set>

#include "base/guarded.h"
#include "base/hash.h"
#include "lessonfile/detail/input.h"
#include "lessonfile/detail/zip.h"
#include "lessonfile/signature.h"
#include "records/fact.h"
#include "records/value.h"

namespace plumbmark::lessonfile {
namespace {

namespace fs = std::filesystem;
using detail::Input;
using detail::ZipEntry;
using records::Array;
using records::Object;
using records::Value;

constexpr std::string_view kMarkerName = "PLUMBMARK-LESSON";
constexpr std::string_view kMarker = "A golf lesson; see manifest.json\n";
constexpr std::string_view kManifestName = "manifest.json";
constexpr std::string_view kManifestHashName = "manifest.sha256";
constexpr std::string_view kFormat = "plumbmark-lesson";
constexpr std::size_t kBuffer = 1 << 20;

std::span<const std::uint8_t> bytesOf(std::string_view text) {
    return {reinterpret_cast<const std::uint8_t*>(text.data()), text.size()};
}

base::Error cancelled() {
    return base::failure("cancelled", "Stopped on request.");
}

/// What films are called inside, so that someone who unpacks the file by hand can play them.
std::string filmEnding(std::span<const std::uint8_t> start) {
    const std::string_view head(reinterpret_cast<const char*>(start.data()), start.size());
    if (head.size() >= 12 && head.substr(4, 4) == "ftyp") {
        return head.substr(8, 2) == "qt" ? ".mov" : ".mp4";
    }
    if (head.size() >= 4 && head.substr(0, 4) == "\x1A\x45\xDF\xA3") {
        return ".mkv";
    }
    if (head.size() >= 12 && head.substr(0, 4) == "RIFF" && head.substr(8, 4) == "AVI ") {
        return ".avi";
    }
    return ".film";
}

/// One part to be written: from memory or from a file.
struct Source {
    Part part;
    std::string text;
    std::optional<fs::path> file;
    std::uint32_t crc = 0;
};

base::Result<Source> sourceOfFile(const fs::path& path, std::string_view role,
                                  const base::Progress& progress) {
    auto input = Input::open(path, "file.missing", "a file");
    if (!input) {
        return input.error();
    }
    Source source;
    source.file = path;
    source.part.role = role;
    source.part.size = input->size();
    if (source.part.size > Limits{}.mostFileBytes) {
        return base::inputError("lessonfile.too_large", "A lesson file holds up to 4 GB; leave films out.");
    }
    base::Sha256 hash;
    detail::Crc32 crc;
    std::vector<std::uint8_t> buffer(kBuffer);
    std::string ending;
    for (std::int64_t at = 0; at < input->size();) {
        const auto piece = std::span(buffer).first(
            static_cast<std::size_t>(std::min<std::int64_t>(kBuffer, input->size() - at)));
        if (!input->readAt(at, piece)) {
            return base::failure("file.unreadable", "Reading \"" + path.filename().string() +
                                                        "\" failed; check the disk and try again.");
        }
        if (at == 0) {
            ending = filmEnding(piece);
        }
        hash.add(piece);
        crc.add(piece);
        at += static_cast<std::int64_t>(piece.size());
        if (progress.cancelled()) {
            return cancelled();
        }
    }
    source.part.sha256 = hash.finishHex();
    source.crc = crc.value();
    source.part.path = role == "film" ? "films/" + source.part.sha256 + ending : "sheet.png";
    return source;
}

Source sourceOfText(std::string_view path, std::string_view role, std::string text) {
    Source source;
    source.part = {std::string(path), std::string(role), static_cast<std::int64_t>(text.size()),
                   base::sha256OfText(text)};
    detail::Crc32 crc;
    crc.add(bytesOf(text));
    source.crc = crc.value();
    source.text = std::move(text);
    return source;
}

std::string manifestText(const Summary& summary) {
    Array parts;
    for (const Part& part : summary.parts) {
        parts.emplace_back(
            Object{{"path", part.path}, {"role", part.role}, {"size", part.size}, {"sha256", part.sha256}});
    }
    const Object manifest{{"format", std::string(kFormat)},
                          {"version", summary.version},
                          {"readable_from", summary.readableFrom},
                          {"created", summary.created},
                          {"made_by", summary.madeBy},
                          {"title", summary.title},
                          {"records", summary.records},
                          {"parts", std::move(parts)}};
    const auto text = records::canonicalText(Value(manifest));
    return text ? *text + "\n" : std::string();
}

constexpr std::string_view kSignatureName = "signature.json";
constexpr std::int64_t kMostSignature = 1000;

/// What a signature is made of: the manifest without the signature's own part.
std::optional<std::string> signedText(std::string_view manifest) {
    auto value = records::parseJson(manifest);
    Object* object = value ? value->object() : nullptr;
    const Value* parts = object == nullptr ? nullptr : member(*object, "parts");
    if (parts == nullptr || parts->array() == nullptr) {
        return std::nullopt;
    }
    Array others;
    for (const Value& part : *parts->array()) {
        if (part.object() == nullptr || textMember(*part.object(), "role") != "signature") {
            others.push_back(part);
        }
    }
    object->insert_or_assign("parts", Value(std::move(others)));
    const auto text = records::canonicalText(*value);
    return text ? std::optional(*text + "\n") : std::nullopt;
}

base::Error damaged(std::string_view what) {
    return base::inputError("lessonfile.damaged", "The lesson file is damaged or was changed (" +
                                                      std::string(what) +
                                                      "); nothing was imported. Ask for it again.");
}
base::Error unsafe(std::string_view what) {
    return base::inputError("lessonfile.unsafe",
                            "This is not a lesson file as the program writes it: " + std::string(what) +
                                ". Nothing was imported; ask for the file again.");
}

/// The manifest's own account of the archive.
base::Result<Summary> summaryFrom(std::string_view text) {
    if (text.empty() || text.back() != '\n') {
        return damaged("manifest.json");
    }
    const auto value = records::parseJson(text.substr(0, text.size() - 1));
    const Object* manifest = value ? value->object() : nullptr;
    if (manifest == nullptr || textMember(*manifest, "format") != kFormat) {
        return damaged("manifest.json");
    }
    const auto version = integerMember(*manifest, "version");
    const auto readableFrom = integerMember(*manifest, "readable_from");
    if (!version || !readableFrom || *readableFrom < 1 || *version < *readableFrom || *version > 1'000'000) {
        return damaged("manifest.json");
    }
    if (*readableFrom > kFormatVersion) {
        return base::inputError("lessonfile.newer",
                                "This lesson file was made by a newer version of the program; "
                                "update the program to read it.");
    }
    Summary summary;
    summary.version = static_cast<int>(*version);
    summary.readableFrom = static_cast<int>(*readableFrom);
    summary.title = textMember(*manifest, "title").value_or("");
    summary.created = textMember(*manifest, "created").value_or("");
    summary.madeBy = textMember(*manifest, "made_by").value_or("");
    const Value* parts = member(*manifest, "parts");
    const auto records = integerMember(*manifest, "records");
    if (parts == nullptr || parts->array() == nullptr || !records || *records < 0 || *records > 100'000'000) {
        return damaged("manifest.json");
    }
    summary.records = static_cast<int>(*records);
    for (const Value& entry : *parts->array()) {
        const Object* part = entry.object();
        const auto path = part == nullptr ? std::nullopt : textMember(*part, "path");
        const auto role = part == nullptr ? std::nullopt : textMember(*part, "role");
        const auto size = part == nullptr ? std::nullopt : integerMember(*part, "size");
        const auto sha256 = part == nullptr ? std::nullopt : textMember(*part, "sha256");
        if (!path || !role || !size || !sha256 || !base::isSha256Hex(*sha256)) {
            return damaged("manifest.json");
        }
        summary.parts.push_back({*path, *role, *size, *sha256});
    }
    return summary;
}

/// Checks everything; with a staging folder also puts films and the sheet there.
class Reader {
  public:
    Reader(Input input, const Limits& limits, const base::Progress& progress, const fs::path* staging,
           base::FileCalls& calls)
        : input_(std::move(input)), limits_(limits), progress_(progress), staging_(staging), calls_(calls) {}

    base::Result<Staged> read();

  private:
    base::Result<std::string> smallText(const ZipEntry& entry, std::int64_t most);
    base::Result<void> records(const ZipEntry& entry, const Part& part);
    base::Result<void> stream(const ZipEntry& entry, const Part& part, base::AtomicFile* out);
    base::Result<void> signature(const ZipEntry& entry, const Part& part, const std::string& manifest);
    [[nodiscard]] static std::int64_t dataOffset(const ZipEntry& entry) {
        return std::int64_t{entry.offset} + detail::kLocalHeader +
               static_cast<std::int64_t>(entry.name.size());
    }
    void advance(std::size_t bytes) {
        done_ += static_cast<std::int64_t>(bytes);
        progress_.tell(std::min(1.0, static_cast<double>(done_) / static_cast<double>(input_.size())),
                       "Checking the lesson file");
    }

    Input input_;
    const Limits& limits_;
    const base::Progress& progress_;
    const fs::path* staging_;
    base::FileCalls& calls_;
    std::int64_t done_ = 0;
    Staged staged_;
};

base::Result<std::string> Reader::smallText(const ZipEntry& entry, std::int64_t most) {
    if (entry.size > most) {
        return unsafe(entry.name + " is too large");
    }
    std::string text(entry.size, '\0');
    if (!input_.readAt(dataOffset(entry), {reinterpret_cast<std::uint8_t*>(text.data()), text.size()})) {
        return damaged("it cannot be read to its end");
    }
    detail::Crc32 crc;
    crc.add(bytesOf(text));
    if (crc.value() != entry.crc) {
        return damaged(entry.name);
    }
    advance(text.size());
    return text;
}

base::Result<void> Reader::records(const ZipEntry& entry, const Part& part) {
    auto text = smallText(entry, limits_.mostRecordBytes);
    if (!text) {
        return text.error();
    }
    if (base::sha256OfText(*text) != part.sha256 || (!text->empty() && text->back() != '\n')) {
        return damaged(entry.name);
    }
    std::set<std::string, std::less<>> ids;
    for (std::size_t at = 0; at < text->size();) {
        const std::size_t end = text->find('\n', at);
        std::string line = text->substr(at, end - at);
        at = end + 1;
        const auto record = records::recordFromText(line);
        if (!record) {
            return damaged(entry.name + ": " + record.error().sentence);
        }
        if (!staged_.records.empty() && !(staged_.records.back() < line)) {
            return damaged(entry.name + ": its lines are out of order");
        }
        const base::Id& id = record->fact ? record->fact->id : record->tombstone->id;
        if (!ids.insert(id.hex()).second) {
            return damaged(entry.name + ": two records have one name");
        }
        staged_.records.push_back(std::move(line));
        if (progress_.cancelled()) {
            return cancelled();
        }
    }
    return {};
}

base::Result<void> Reader::stream(const ZipEntry& entry, const Part& part, base::AtomicFile* out) {
    base::Sha256 hash;
    detail::Crc32 crc;
    std::vector<std::uint8_t> buffer(std::min<std::size_t>(kBuffer, std::max<std::size_t>(entry.size, 1)));
    for (std::int64_t at = 0; at < entry.size;) {
        const auto piece = std::span(buffer).first(static_cast<std::size_t>(
            std::min<std::int64_t>(static_cast<std::int64_t>(buffer.size()), entry.size - at)));
        if (!input_.readAt(dataOffset(entry) + at, piece)) {
            return damaged("it cannot be read to its end");
        }
        hash.add(piece);
        crc.add(piece);
        if (out != nullptr) {
            if (auto written = out->write(piece); !written) {
                return written;
            }
        }
        at += static_cast<std::int64_t>(piece.size());
        advance(piece.size());
        if (progress_.cancelled()) {
            return cancelled();
        }
    }
    if (crc.value() != entry.crc || hash.finishHex() != part.sha256) {
        return damaged(entry.name);
    }
    return {};
}

base::Result<void> Reader::signature(const ZipEntry& entry, const Part& part, const std::string& manifest) {
    if (!staged_.summary.signedBy.empty()) {
        return unsafe("it is signed twice");
    }
    const auto text = smallText(entry, kMostSignature);
    if (!text) {
        return text.error();
    }
    const auto value = records::parseJson(*text);
    const Object* object = value ? value->object() : nullptr;
    const auto what = signedText(std::string_view(manifest).substr(0, manifest.size() - 1));
    const std::string key = object == nullptr ? "" : textMember(*object, "key").value_or("");
    if (base::sha256OfText(*text) != part.sha256 || !what || object == nullptr ||
        !signatureFits(*what, key, textMember(*object, "signature").value_or(""))) {
        return damaged("its signature does not fit");
    }
    staged_.summary.signedBy = key;
    return {};
}

base::Result<Staged> Reader::read() {
    if (input_.size() == 0) {
        return base::inputError("lessonfile.empty", "The lesson file is empty; ask for it again.");
    }
    if (input_.size() > limits_.mostFileBytes) {
        return unsafe("it is larger than a lesson file may be");
    }
    detail::ZipDirectory directory = detail::readDirectory(
        input_.size(),
        [this](std::int64_t at, std::span<std::uint8_t> into) { return input_.readAt(at, into); },
        limits_.mostEntries);
    switch (directory.trouble) {
    case detail::ZipTrouble::none:
        break;
    case detail::ZipTrouble::unreadable:
        return damaged("it cannot be read to its end");
    case detail::ZipTrouble::notZip:
        return base::inputError("lessonfile.not_ours",
                                "This is not a lesson file; choose a file that ends in " +
                                    std::string(kExtension) + ".");
    case detail::ZipTrouble::truncated:
        return base::inputError("lessonfile.truncated",
                                "The lesson file is cut off: its end is missing; nothing was "
                                "imported. Copy it again.");
    case detail::ZipTrouble::unsafe:
        return unsafe(directory.what);
    }
    const auto& entries = directory.entries;
    if (entries.empty() || entries[0].name != kMarkerName) {
        return base::inputError("lessonfile.not_ours",
                                "This ZIP file is not a lesson file; choose a file that ends "
                                "in " +
                                    std::string(kExtension) + ".");
    }
    const auto marker = smallText(entries[0], static_cast<std::int64_t>(kMarker.size()));
    if (!marker) {
        return marker.error();
    }
    if (*marker != kMarker) {
        return damaged(kMarkerName);
    }
    if (entries.size() < 3 || entries[1].name != kManifestName || entries[2].name != kManifestHashName) {
        return unsafe("its manifest is missing");
    }
    const auto manifest = smallText(entries[1], limits_.mostManifestBytes);
    if (!manifest) {
        return manifest.error();
    }
    const auto manifestHash = smallText(entries[2], 200);
    if (!manifestHash) {
        return manifestHash.error();
    }
    if (*manifestHash != base::sha256OfText(*manifest) + "  " + std::string(kManifestName) + "\n") {
        return damaged(kManifestName);
    }
    auto summary = summaryFrom(*manifest);
    if (!summary) {
        return summary.error();
    }
    if (summary->parts.size() != entries.size() - 3) {
        return unsafe("its parts are not those of its manifest");
    }
    summary->bytes = input_.size();
    staged_.summary = std::move(*summary);
    std::int64_t toStage = 0;
    for (std::size_t i = 0; i < staged_.summary.parts.size(); ++i) {
        const Part& part = staged_.summary.parts[i];
        const ZipEntry& entry = entries[i + 3];
        if (part.path != entry.name || part.size != entry.size) {
            return unsafe("its parts are not those of its manifest");
        }
        if (part.role == "film" || (part.role != "records" && part.role != "sheet" && part.role != "page")) {
            toStage += part.size;
        }
        if (part.role == "film") {
            // films/<sha256>.<ending>
            if (part.path.rfind("films/" + part.sha256 + ".", 0) != 0) {
                return unsafe("a film has a name that is not its own");
            }
        }
    }
    if (staging_ != nullptr) {
        std::error_code error;
        const auto space = fs::space(*staging_, error);
        if (!error && static_cast<std::int64_t>(std::min<std::uintmax_t>(
                          space.available, std::numeric_limits<std::int64_t>::max())) <
                          toStage + limits_.keepFreeBytes) {
            return base::failure("disk.full",
                                 "There is not enough free space on the disk for the films in this lesson "
                                 "file; free some and try again.");
        }
    }
    bool haveRecords = false;
    for (std::size_t i = 0; i < staged_.summary.parts.size(); ++i) {
        const Part& part = staged_.summary.parts[i];
        const ZipEntry& entry = entries[i + 3];
        if (part.role == "records") {
            if (haveRecords) {
                return unsafe("it holds records twice");
            }
            haveRecords = true;
            if (auto done = records(entry, part); !done) {
                return done.error();
            }
            if (static_cast<int>(staged_.records.size()) != staged_.summary.records) {
                return damaged(entry.name);
            }
            continue;
        }
        if (part.role == "signature") {
            if (auto done = signature(entry, part, *manifest); !done) {
                return done.error();
            }
            continue;
        }
        const bool film = part.role == "film";
        const bool sheet = part.role == "sheet";
        if (sheet && staged_.sheet) {
            return unsafe("it holds two sheets");
        }
        // The page is for people who open the file by hand; what it says stands in the records.
        const bool page = part.role == "page";
        const bool unknown = !film && !sheet && !page;
        if (staging_ == nullptr || page) {
            if (auto done = stream(entry, part, nullptr); !done) {
                return done.error();
            }
            if (sheet) {
                staged_.sheet = fs::path();
            }
            continue;
        }
        const fs::path target = *staging_ / (sheet ? std::string("sheet.png") : part.sha256);
        auto out = base::AtomicFile::create(target, calls_);
        if (!out) {
            return out.error();
        }
        if (auto done = stream(entry, part, &*out); !done) {
            return done.error();
        }
        if (auto done = out->commit(); !done) {
            return done.error();
        }
        if (film) {
            staged_.films.push_back({part.sha256, target});
        } else if (unknown) {
            staged_.carried.push_back({part, target});
        } else {
            staged_.sheet = target;
        }
    }
    if (!haveRecords) {
        return unsafe("it holds no records");
    }
    return std::move(staged_);
}

base::Result<Summary> written(const fs::path& target, const Contents& contents, const WriteOptions& options,
                              const base::Progress& progress) {
    Summary summary;
    summary.version = kFormatVersion;
    summary.readableFrom = kReadableFrom;
    summary.title = contents.title;
    summary.madeBy = options.madeBy;
    summary.created = base::isoTime(options.clock->now());
    summary.records = static_cast<int>(contents.records.size());
    std::string lines;
    for (const std::string& line : contents.records) {
        lines += line;
        lines += '\n';
    }
    const Limits limits;
    if (static_cast<std::int64_t>(lines.size()) > limits.mostRecordBytes) {
        return base::inputError(
            "lessonfile.too_large",
            "There are too many records for one lesson file; send fewer lessons at once.");
    }

    std::vector<Source> sources;
    sources.push_back(sourceOfText("records.jsonl", "records", std::move(lines)));
    std::set<std::string> films;
    for (const Film& film : contents.films) {
        if (!films.insert(film.sha256).second) {
            continue;
        }
        auto source = sourceOfFile(film.file, "film", progress);
        if (!source) {
            return source.error();
        }
        if (source->part.sha256 != film.sha256) {
            return base::failure("film.changed",
                                 "A film in the library is damaged, so the lesson was not exported; "
                                 "bring the film in again.");
        }
        sources.push_back(std::move(*source));
        progress.tell(0.4 * static_cast<double>(films.size()) / static_cast<double>(contents.films.size()),
                      "Reading the films");
    }
    if (contents.sheet) {
        auto source = sourceOfFile(*contents.sheet, "sheet", progress);
        if (!source) {
            return source.error();
        }
        sources.push_back(std::move(*source));
    }
    if (!contents.page.empty()) {
        sources.push_back(sourceOfText("lesson.html", "page", contents.page));
    }
    for (const Carried& carried : contents.carried) {
        const bool taken = std::any_of(sources.begin(), sources.end(), [&](const Source& source) {
            return source.part.path == carried.part.path;
        });
        if (taken) {
            continue;
        }
        auto source = sourceOfFile(carried.file, carried.part.role, progress);
        if (!source) {
            return source.error();
        }
        source->part.path = carried.part.path;
        sources.push_back(std::move(*source));
    }
    for (const Source& source : sources) {
        summary.parts.push_back(source.part);
    }
    if (options.key != nullptr) {
        const std::string what = manifestText(summary);
        const auto text = records::canonicalText(
            Value(Object{{"key", options.key->publicKey()}, {"signature", options.key->sign(what)}}));
        if (!text) {
            return text.error();
        }
        sources.push_back(sourceOfText(kSignatureName, "signature", *text + "\n"));
        summary.parts.push_back(sources.back().part);
        summary.signedBy = options.key->publicKey();
    }
    std::string manifest = manifestText(summary);
    if (manifest.empty()) {
        return base::inputError("record.bad_value", "The title cannot be written; type it again.");
    }
    std::string manifestHash = base::sha256OfText(manifest) + "  " + std::string(kManifestName) + "\n";
    std::vector<Source> all;
    all.push_back(sourceOfText(kMarkerName, "", std::string(kMarker)));
    all.push_back(sourceOfText(kManifestName, "", std::move(manifest)));
    all.push_back(sourceOfText(kManifestHashName, "", std::move(manifestHash)));
    std::move(sources.begin(), sources.end(), std::back_inserter(all));
    sources.clear();
    if (static_cast<std::int64_t>(all.size()) > limits.mostEntries) {
        return base::inputError("lessonfile.too_large",
                                "There are too many films for one lesson file; send fewer lessons at once.");
    }

    std::int64_t offset = 0;
    std::vector<ZipEntry> entries;
    for (const Source& source : all) {
        ZipEntry entry{source.part.path, 0, source.crc, 0};
        const std::int64_t next =
            offset + detail::kLocalHeader + static_cast<std::int64_t>(entry.name.size()) + source.part.size;
        if (next > limits.mostFileBytes) {
            return base::inputError("lessonfile.too_large",
                                    "A lesson file holds up to 4 GB; leave films out.");
        }
        entry.size = static_cast<std::uint32_t>(source.part.size);
        entry.offset = static_cast<std::uint32_t>(offset);
        entries.push_back(std::move(entry));
        offset = next;
    }
    std::string tail;
    for (const ZipEntry& entry : entries) {
        tail += detail::centralHeader(entry);
    }
    const auto directorySize = static_cast<std::uint32_t>(tail.size());
    tail += detail::endRecord(entries.size(), directorySize, static_cast<std::uint32_t>(offset));
    summary.bytes = offset + static_cast<std::int64_t>(tail.size());
    if (summary.bytes > limits.mostFileBytes) {
        return base::inputError("lessonfile.too_large", "A lesson file holds up to 4 GB; leave films out.");
    }

    auto out = base::AtomicFile::create(target, *options.calls);
    if (!out) {
        return out.error();
    }
    std::vector<std::uint8_t> buffer(kBuffer);
    for (std::size_t i = 0; i < all.size(); ++i) {
        const Source& source = all[i];
        if (auto done = out->write(detail::localHeader(entries[i])); !done) {
            return done.error();
        }
        if (!source.file) {
            if (auto done = out->write(source.text); !done) {
                return done.error();
            }
            continue;
        }
        auto input = Input::open(*source.file, "file.missing", "a file");
        if (!input) {
            return input.error();
        }
        base::Sha256 hash;
        for (std::int64_t at = 0; at < source.part.size;) {
            const auto piece = std::span(buffer).first(
                static_cast<std::size_t>(std::min<std::int64_t>(kBuffer, source.part.size - at)));
            if (!input->readAt(at, piece)) {
                return base::failure("film.changed",
                                     "A film changed while it was read; export the lesson again.");
            }
            hash.add(piece);
            if (auto done = out->write(piece); !done) {
                return done.error();
            }
            at += static_cast<std::int64_t>(piece.size());
            progress.tell(0.4 + 0.6 * static_cast<double>(entries[i].offset + at) /
                                    static_cast<double>(summary.bytes),
                          "Writing the lesson file");
            if (progress.cancelled()) {
                return cancelled();
            }
        }
        if (hash.finishHex() != source.part.sha256) {
            return base::failure("film.changed",
                                 "A film changed while it was read; export the lesson again.");
        }
    }
    if (auto done = out->write(tail); !done) {
        return done.error();
    }
    if (auto done = out->commit(); !done) {
        return done.error();
    }
    return summary;
}

} // namespace

base::Result<Summary> write(const fs::path& target, const Contents& contents, const WriteOptions& options,
                            const base::Progress& progress) {
    return base::guarded([&] { return written(target, contents, options, progress); });
}

base::Result<Summary> verify(const fs::path& file, const Limits& limits, const base::Progress& progress) {
    return base::guarded([&]() -> base::Result<Summary> {
        auto input = Input::open(file, "lessonfile.missing", "a lesson file");
        if (!input) {
            return input.error();
        }
        auto staged = Reader(std::move(*input), limits, progress, nullptr, base::systemFileCalls()).read();
        if (!staged) {
            return staged.error();
        }
        return std::move(staged->summary);
    });
}

base::Result<Staged> readInto(const fs::path& file, const fs::path& staging, const Limits& limits,
                              const base::Progress& progress, base::FileCalls& calls) {
    return base::guarded([&]() -> base::Result<Staged> {
        auto input = Input::open(file, "lessonfile.missing", "a lesson file");
        if (!input) {
            return input.error();
        }
        return Reader(std::move(*input), limits, progress, &staging, calls).read();
    });
}

} // namespace plumbmark::lessonfile
