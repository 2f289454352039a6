// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Written from the published "APPNOTE.TXT - .ZIP File Format Specification" (sections 4.3 and 4.4).
#include "lessonfile/detail/zip.h"

#include <algorithm>
#include <array>
#include <set>

namespace plumbmark::lessonfile::detail {
namespace {

constexpr std::uint32_t kLocalSignature = 0x04034b50, kCentralSignature = 0x02014b50,
                        kEndSignature = 0x06054b50;
constexpr std::uint16_t kVersionNeeded = 10;          // 1.0: stored files only
constexpr std::uint16_t kVersionMadeBy = 3 << 8 | 10; // Unix, so that the mode below counts
constexpr std::uint16_t kDate = 1 << 5 | 1;           // 1980-01-01: the first day there is
constexpr std::uint32_t kMode = 0100644U << 16;       // a regular file

void put16(std::string& out, std::uint32_t value) {
    out += static_cast<char>(value & 0xFF);
    out += static_cast<char>((value >> 8) & 0xFF);
}
void put32(std::string& out, std::uint32_t value) {
    put16(out, value & 0xFFFF);
    put16(out, value >> 16);
}
std::uint32_t get16(const std::uint8_t* at) {
    return at[0] | static_cast<std::uint32_t>(at[1]) << 8;
}
std::uint32_t get32(const std::uint8_t* at) {
    return get16(at) | get16(at + 2) << 16;
}

/// Tables for eight bytes at a time ("slicing"): table[k][b] is the CRC of byte b followed by k zero bytes.
using Tables = std::array<std::array<std::uint32_t, 256>, 8>;
constexpr Tables makeTables() {
    Tables tables{};
    for (std::uint32_t b = 0; b < 256; ++b) {
        std::uint32_t crc = b;
        for (int bit = 0; bit < 8; ++bit) {
            crc = (crc >> 1) ^ ((crc & 1U) != 0 ? 0xEDB88320U : 0U);
        }
        tables[0][b] = crc;
    }
    for (std::size_t k = 1; k < 8; ++k) {
        for (std::size_t b = 0; b < 256; ++b) {
            tables[k][b] = (tables[k - 1][b] >> 8) ^ tables[0][tables[k - 1][b] & 0xFF];
        }
    }
    return tables;
}
constexpr Tables kTables = makeTables();

bool nameIsOurs(std::string_view name) {
    if (name.empty() || name.size() > 200 || name.front() == '/' || name.front() == '.' ||
        name.back() == '/') {
        return false;
    }
    bool slash = false;
    for (const char c : name) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
                           c == '-' || c == '_' || c == '.';
        if (c == '/') {
            if (slash) {
                return false; // one folder deep at most
            }
            slash = true;
        } else if (!plain) {
            return false;
        }
    }
    return name.find("..") == std::string_view::npos && name.find("/.") == std::string_view::npos;
}

std::string lowered(std::string name) {
    std::transform(name.begin(), name.end(), name.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
    return name;
}

} // namespace

void Crc32::add(std::span<const std::uint8_t> bytes) {
    std::uint32_t crc = state_;
    const std::uint8_t* at = bytes.data();
    std::size_t left = bytes.size();
    for (; left >= 8; left -= 8, at += 8) {
        const std::uint32_t a = crc ^ get32(at);
        const std::uint32_t b = get32(at + 4);
        crc = kTables[7][a & 0xFF] ^ kTables[6][(a >> 8) & 0xFF] ^ kTables[5][(a >> 16) & 0xFF] ^
              kTables[4][a >> 24] ^ kTables[3][b & 0xFF] ^ kTables[2][(b >> 8) & 0xFF] ^
              kTables[1][(b >> 16) & 0xFF] ^ kTables[0][b >> 24];
    }
    for (; left > 0; --left, ++at) {
        crc = (crc >> 8) ^ kTables[0][(crc ^ *at) & 0xFF];
    }
    state_ = crc;
}

std::string localHeader(const ZipEntry& entry) {
    std::string out;
    put32(out, kLocalSignature);
    put16(out, kVersionNeeded);
    put16(out, 0); // flags
    put16(out, 0); // stored
    put16(out, 0); // time
    put16(out, kDate);
    put32(out, entry.crc);
    put32(out, entry.size);
    put32(out, entry.size);
    put16(out, static_cast<std::uint32_t>(entry.name.size()));
    put16(out, 0); // extra
    return out + entry.name;
}

std::string centralHeader(const ZipEntry& entry) {
    std::string out;
    put32(out, kCentralSignature);
    put16(out, kVersionMadeBy);
    put16(out, kVersionNeeded);
    put16(out, 0);
    put16(out, 0);
    put16(out, 0);
    put16(out, kDate);
    put32(out, entry.crc);
    put32(out, entry.size);
    put32(out, entry.size);
    put16(out, static_cast<std::uint32_t>(entry.name.size()));
    put16(out, 0); // extra
    put16(out, 0); // comment
    put16(out, 0); // disk
    put16(out, 0); // internal attributes
    put32(out, kMode);
    put32(out, entry.offset);
    return out + entry.name;
}

std::string endRecord(std::size_t entries, std::uint32_t directorySize, std::uint32_t directoryOffset) {
    std::string out;
    put32(out, kEndSignature);
    put16(out, 0);
    put16(out, 0);
    put16(out, static_cast<std::uint32_t>(entries));
    put16(out, static_cast<std::uint32_t>(entries));
    put32(out, directorySize);
    put32(out, directoryOffset);
    put16(out, 0); // comment
    return out;
}

ZipDirectory readDirectory(std::int64_t fileSize, const ReadAt& read, std::int64_t mostEntries) {
    const auto unsafe = [](std::string what) {
        return ZipDirectory{ZipTrouble::unsafe, std::move(what), {}};
    };
    std::array<std::uint8_t, 4> start{};
    if (fileSize < 4) {
        return {ZipTrouble::notZip, {}, {}};
    }
    if (!read(0, start)) {
        return {ZipTrouble::unreadable, {}, {}};
    }
    if (get32(start.data()) != kLocalSignature) {
        return {ZipTrouble::notZip, {}, {}};
    }
    std::array<std::uint8_t, kEnd> end{};
    if (fileSize < kEnd) {
        return {ZipTrouble::truncated, {}, {}};
    }
    if (!read(fileSize - kEnd, end)) {
        return {ZipTrouble::unreadable, {}, {}};
    }
    if (get32(end.data()) != kEndSignature) {
        return {ZipTrouble::truncated, {}, {}};
    }
    const std::uint32_t count = get16(&end[10]);
    const std::uint32_t directorySize = get32(&end[12]);
    const std::uint32_t directoryOffset = get32(&end[16]);
    if (std::int64_t{directoryOffset} + directorySize + kEnd != fileSize) {
        return unsafe("its directory does not lie where it should");
    }
    if (count > mostEntries ||
        directorySize > static_cast<std::uint64_t>(mostEntries) * (kCentralHeader + 200)) {
        return unsafe("it holds more parts than a lesson file may");
    }
    const std::string expectedEnd = endRecord(count, directorySize, directoryOffset);
    if (!std::equal(end.begin(), end.end(), expectedEnd.begin(),
                    [](std::uint8_t a, char b) { return a == static_cast<std::uint8_t>(b); })) {
        return unsafe("its end is not as this program writes it");
    }
    std::vector<std::uint8_t> directory(directorySize);
    if (!read(directoryOffset, directory)) {
        return {ZipTrouble::unreadable, {}, {}};
    }
    ZipDirectory result;
    std::set<std::string> names;
    std::size_t at = 0;
    std::int64_t place = 0; // where the next local header must lie
    for (std::uint32_t i = 0; i < count; ++i) {
        if (directory.size() - at < static_cast<std::size_t>(kCentralHeader)) {
            return unsafe("its directory is too short");
        }
        const std::uint8_t* header = &directory[at];
        if (get32(header) != kCentralSignature) {
            return unsafe("its directory is not readable");
        }
        const std::uint32_t nameSize = get16(header + 28);
        if (directory.size() - at - kCentralHeader < nameSize) {
            return unsafe("its directory is too short");
        }
        ZipEntry entry;
        entry.crc = get32(header + 16);
        entry.size = get32(header + 24);
        entry.offset = get32(header + 42);
        entry.name.assign(reinterpret_cast<const char*>(header + kCentralHeader), nameSize);
        // What people should be told by name comes before the comparison that catches everything.
        if ((get16(header + 8) & 1U) != 0) {
            return unsafe("a part is encrypted by ZIP");
        }
        if (get16(header + 10) != 0) {
            return unsafe("a part is compressed");
        }
        if (((get32(header + 38) >> 16) & 0170000U) == 0120000U) {
            return unsafe("a part is a link");
        }
        if (!nameIsOurs(entry.name)) {
            return unsafe("a part has a name that no lesson file uses");
        }
        if (!names.insert(lowered(entry.name)).second) {
            return unsafe("two parts have the same name");
        }
        if (entry.offset != place) {
            return unsafe("parts overlap or leave gaps");
        }
        const std::string expected = centralHeader(entry);
        if (!std::equal(expected.begin(), expected.end(), header,
                        [](char a, std::uint8_t b) { return static_cast<std::uint8_t>(a) == b; })) {
            return unsafe("its directory is not as this program writes it");
        }
        place += kLocalHeader + nameSize + std::int64_t{entry.size};
        if (place > directoryOffset) {
            return unsafe("parts overlap or leave gaps");
        }
        const std::string expectedLocal = localHeader(entry);
        std::vector<std::uint8_t> local(expectedLocal.size());
        if (!read(entry.offset, local)) {
            return {ZipTrouble::unreadable, {}, {}};
        }
        if (!std::equal(local.begin(), local.end(), expectedLocal.begin(),
                        [](std::uint8_t a, char b) { return a == static_cast<std::uint8_t>(b); })) {
            return unsafe("a part's own header differs from the directory");
        }
        at += kCentralHeader + nameSize;
        result.entries.push_back(std::move(entry));
    }
    if (at != directory.size() || place != directoryOffset) {
        return unsafe("it holds data that belongs to no part");
    }
    return result;
}

} // namespace plumbmark::lessonfile::detail
