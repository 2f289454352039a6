// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// reliability_fuzz SECONDS [SEED]: changes good input at random and gives it to every reader of foreign
// bytes: lesson files, records, sealed files, tickets. Whatever comes out must be a value or an error;
// sanitizers watch. A changed lesson file must be refused, never read as something else. Prints how many
// inputs there were.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <string>
#include <vector>

#include "base/files.h"
#include "base/hash.h"
#include "base/ids.h"
#include "lessonfile/lessonfile.h"
#include "lessonfile/seal.h"
#include "records/fact.h"
#include "transfer/direct.h"

using namespace plumbmark;
namespace fs = std::filesystem;

namespace {

std::string contentOf(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}
void put(const fs::path& path, const std::string& text) {
    std::ofstream(path, std::ios::binary | std::ios::trunc) << text;
}

std::string changed(std::string text, std::mt19937_64& random) {
    const int edits = 1 + static_cast<int>(random() % 4);
    for (int i = 0; i < edits; ++i) {
        const std::size_t at = text.empty() ? 0 : random() % text.size();
        const std::size_t length = 1 + random() % 16;
        switch (random() % 7) {
        case 0:
            if (!text.empty()) {
                text[at] = static_cast<char>(text[at] ^ (1 << (random() % 8)));
            }
            break;
        case 1:
            if (!text.empty()) {
                text[at] = static_cast<char>(random());
            }
            break;
        case 2:
            text.erase(at, length);
            break;
        case 3:
            text.insert(at, text.substr(text.empty() ? 0 : random() % text.size(), length));
            break;
        case 4:
            text.resize(at);
            break;
        case 5:
            text.insert(at, std::string(length, static_cast<char>(random())));
            break;
        default: {
            static const std::vector<std::string> words{
                "\\u0000",  "1e999",      "-0",         "[[[[",       "{\"",  "../",
                "\xff\xfe", "4294967295", "PK\x01\x02", "PK\x05\x06", "null", "9223372036854775808"};
            const std::string& word = words[random() % words.size()];
            text.replace(at, std::min(word.size(), text.size() - at), word);
        }
        }
    }
    return text;
}

} // namespace

int main(int argc, char** argv) {
    const double seconds = argc > 1 ? std::atof(argv[1]) : 1;
    std::mt19937_64 random(argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 1);
    const auto stage = base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test");
    const fs::path dir = stage->path();
    base::SeededIds ids(4);
    std::vector<std::string> lines;
    for (int i = 0; i < 12; ++i) {
        records::Fact fact;
        fact.id = ids.next();
        fact.kind = i % 2 == 0 ? "set" : "findings";
        fact.path = {ids.next(), ids.next()};
        fact.body = {{"field", "name"}, {"value", records::Array{1.5, "text", nullptr, true}}, {"n", i}};
        lines.push_back(*toText(fact));
    }
    std::sort(lines.begin(), lines.end());
    put(dir / "film", std::string(3000, 'f'));
    lessonfile::Contents contents;
    contents.title = "Lesson";
    contents.records = lines;
    contents.films = {{base::sha256OfFile(dir / "film")->sha256, dir / "film"}};
    if (!lessonfile::write(dir / "good", contents) ||
        !lessonfile::seal(dir / "good", dir / "sealed", "six words are better", {1 << 16, 1})) {
        return 1;
    }
    const std::string good = contentOf(dir / "good"), sealed = contentOf(dir / "sealed");
    transfer::Ticket ticket;
    ticket.addresses = {"10.0.0.5"};
    ticket.port = 40123;
    long inputs[4] = {0, 0, 0, 0};
    int wrong = 0;
    const auto end = std::chrono::steady_clock::now() + std::chrono::duration<double>(seconds);
    for (long turn = 0; std::chrono::steady_clock::now() < end; ++turn) {
        for (int i = 0; i < 40; ++i) {
            const std::string line = changed(lines[random() % lines.size()], random);
            if (const auto record = records::recordFromText(line); record && record->fact) {
                // What is taken must be written again with the very same bytes.
                wrong += *toText(*record->fact) == line ? 0 : 1;
            }
            ++inputs[0];
            (void)transfer::Ticket::fromText(changed(ticket.text(), random));
            ++inputs[1];
        }
        const std::string file = changed(good, random);
        put(dir / "in", file);
        const auto read = lessonfile::readInto(dir / "in", dir, {});
        wrong += read && file != good ? 1 : 0;
        ++inputs[2];
        if (turn % 8 == 0) {
            // The numbers that say how much memory to take stay: they are tried in a test of their own.
            std::string bad = sealed;
            const std::size_t head = bad.find('\n');
            bad = bad.substr(0, head) + changed(bad.substr(head), random);
            put(dir / "in2", bad);
            wrong += lessonfile::unseal(dir / "in2", dir / "opened", "six words are better") && bad != sealed
                         ? 1
                         : 0;
            ++inputs[3];
        }
    }
    std::printf("{\"records\":%ld,\"tickets\":%ld,\"lesson_files\":%ld,\"sealed_files\":%ld,\"wrong\":%d}\n",
                inputs[0], inputs[1], inputs[2], inputs[3], wrong);
    return wrong == 0 ? 0 : 1;
}
