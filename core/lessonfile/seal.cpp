// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "lessonfile/seal.h"

#include <array>
#include <optional>
#include <vector>

#include <sodium.h>

#include "base/guarded.h"
#include "lessonfile/detail/input.h"
#include "records/value.h"

namespace plumbmark::lessonfile {
namespace {

namespace fs = std::filesystem;
using records::Object;
using records::Value;

constexpr std::string_view kFormat = "plumbmark-sealed";
constexpr std::string_view kBeginning =
    "{\"chunk\":65536,\"format\":\"plumbmark-sealed\","; // canonical: keys sorted
constexpr std::size_t kChunk = 65536;
constexpr std::size_t kMostHeader = 1000;
constexpr std::size_t kExtra = crypto_secretstream_xchacha20poly1305_ABYTES;

/// Wiped when it goes.
struct Key {
    std::array<unsigned char, crypto_secretstream_xchacha20poly1305_KEYBYTES> bytes{};
    ~Key() { sodium_memzero(bytes.data(), bytes.size()); }
};

std::string hexOf(std::span<const unsigned char> bytes) {
    std::string text(bytes.size() * 2 + 1, '\0');
    sodium_bin2hex(text.data(), text.size(), bytes.data(), bytes.size());
    text.pop_back();
    return text;
}

template <std::size_t N> std::optional<std::array<unsigned char, N>> bytesFromHex(const std::string& hex) {
    std::array<unsigned char, N> bytes{};
    std::size_t got = 0;
    if (hex.size() != 2 * N ||
        sodium_hex2bin(bytes.data(), N, hex.data(), hex.size(), nullptr, &got, nullptr) != 0 || got != N) {
        return std::nullopt;
    }
    return bytes;
}

base::Result<void> makeKey(Key& key, std::string_view passphrase, std::span<const unsigned char> salt,
                           const SealStrength& strength) {
    if (sodium_init() < 0 ||
        crypto_pwhash(key.bytes.data(), key.bytes.size(), passphrase.data(), passphrase.size(), salt.data(),
                      strength.passes, static_cast<std::size_t>(strength.memoryBytes),
                      crypto_pwhash_ALG_ARGON2ID13) != 0) {
        return base::failure("seal.memory",
                             "There is not enough memory to make the key; close other programs and "
                             "try again.");
    }
    return {};
}

base::Error damaged() {
    return base::inputError(
        "seal.damaged", "The sealed file is damaged or was changed; nothing was imported. Ask for it again.");
}

bool beginsSealed(const fs::path& file) {
    const auto input = detail::Input::open(file, "file.missing", "a file");
    std::string head(kBeginning.size(), '\0');
    return input && input->size() >= static_cast<std::int64_t>(head.size()) &&
           input->readAt(0, {reinterpret_cast<std::uint8_t*>(head.data()), head.size()}) &&
           head == kBeginning;
}

base::Result<void> sealInto(const fs::path& plain, const fs::path& sealed, std::string_view passphrase,
                            const SealStrength& strength, const base::Progress& progress,
                            base::FileCalls& calls) {
    if (passphrase.size() < 8) {
        return base::inputError(
            "seal.passphrase_short",
            "The passphrase is too short; take at least eight characters, better six words.");
    }
    const auto input = detail::Input::open(plain, "file.missing", "a file");
    if (!input) {
        return input.error();
    }
    std::array<unsigned char, crypto_pwhash_SALTBYTES> salt{};
    if (sodium_init() < 0) {
        return base::failure("seal.failed", "The encryption library cannot start; restart the program.");
    }
    randombytes_buf(salt.data(), salt.size());
    Key key;
    if (auto made = makeKey(key, passphrase, salt, strength); !made) {
        return made;
    }
    crypto_secretstream_xchacha20poly1305_state state;
    std::array<unsigned char, crypto_secretstream_xchacha20poly1305_HEADERBYTES> stream{};
    crypto_secretstream_xchacha20poly1305_init_push(&state, stream.data(), key.bytes.data());
    const auto header =
        records::canonicalText(Value(Object{{"format", std::string(kFormat)},
                                            {"version", 1},
                                            {"chunk", static_cast<std::int64_t>(kChunk)},
                                            {"kdf", "argon2id13"},
                                            {"memory", static_cast<std::int64_t>(strength.memoryBytes)},
                                            {"passes", static_cast<std::int64_t>(strength.passes)},
                                            {"salt", hexOf(salt)},
                                            {"stream", hexOf(stream)}}));
    if (!header) {
        return header.error();
    }
    const std::string line = *header + "\n";
    auto out = base::AtomicFile::create(sealed, calls);
    if (!out) {
        return out.error();
    }
    if (auto done = out->write(line); !done) {
        return done;
    }
    std::vector<unsigned char> text(kChunk), coded(kChunk + kExtra);
    for (std::int64_t at = 0;;) {
        const auto size = static_cast<std::size_t>(std::min<std::int64_t>(kChunk, input->size() - at));
        if (!input->readAt(at, {text.data(), size})) {
            return base::failure("file.unreadable", "Reading the file failed; check the disk and try again.");
        }
        at += static_cast<std::int64_t>(size);
        const bool last = at == input->size();
        // The header is bound to every chunk, so that nobody can weaken it.
        crypto_secretstream_xchacha20poly1305_push(
            &state, coded.data(), nullptr, text.data(), size,
            reinterpret_cast<const unsigned char*>(line.data()), line.size(),
            last ? crypto_secretstream_xchacha20poly1305_TAG_FINAL : 0);
        if (auto done = out->write(std::span(coded.data(), size + kExtra)); !done) {
            return done;
        }
        progress.tell(static_cast<double>(at) / static_cast<double>(std::max<std::int64_t>(1, input->size())),
                      "Sealing the lesson file");
        if (progress.cancelled()) {
            return base::failure("cancelled", "Stopped on request.");
        }
        if (last) {
            break;
        }
    }
    return out->commit();
}

base::Result<void> unsealInto(const fs::path& sealed, const fs::path& plain, std::string_view passphrase,
                              const base::Progress& progress, base::FileCalls& calls) {
    if (!beginsSealed(sealed)) {
        return base::inputError("seal.not_sealed", "This file is not sealed with a passphrase.");
    }
    const auto input = detail::Input::open(sealed, "file.missing", "a file");
    if (!input) {
        return input.error();
    }
    std::string line(static_cast<std::size_t>(std::min<std::int64_t>(kMostHeader, input->size())), '\0');
    if (!input->readAt(0, {reinterpret_cast<std::uint8_t*>(line.data()), line.size()})) {
        return damaged();
    }
    const std::size_t end = line.find('\n');
    if (end == std::string::npos) {
        return damaged();
    }
    line.resize(end + 1);
    const auto value = records::parseJson(std::string_view(line).substr(0, end));
    const Object* header = value ? value->object() : nullptr;
    if (header == nullptr) {
        return damaged();
    }
    const auto version = integerMember(*header, "version");
    if (!version || *version != 1 || textMember(*header, "kdf") != "argon2id13") {
        return base::inputError("seal.newer",
                                "This file was sealed by a newer version of the program, or it is "
                                "damaged; update the program, or ask for the file again.");
    }
    const auto memory = integerMember(*header, "memory");
    const auto passes = integerMember(*header, "passes");
    const auto salt = bytesFromHex<crypto_pwhash_SALTBYTES>(textMember(*header, "salt").value_or(""));
    const auto stream = bytesFromHex<crypto_secretstream_xchacha20poly1305_HEADERBYTES>(
        textMember(*header, "stream").value_or(""));
    if (!memory || !passes || !salt || !stream ||
        *memory < static_cast<std::int64_t>(crypto_pwhash_MEMLIMIT_MIN) ||
        *memory > static_cast<std::int64_t>(kMostSealMemory) || *passes < 1 ||
        *passes > static_cast<std::int64_t>(kMostSealPasses)) {
        return damaged();
    }
    Key key;
    if (auto made = makeKey(key, passphrase, *salt,
                            {static_cast<std::uint64_t>(*memory), static_cast<std::uint64_t>(*passes)});
        !made) {
        return made;
    }
    crypto_secretstream_xchacha20poly1305_state state;
    if (crypto_secretstream_xchacha20poly1305_init_pull(&state, stream->data(), key.bytes.data()) != 0) {
        return damaged();
    }
    auto out = base::AtomicFile::create(plain, calls);
    if (!out) {
        return out.error();
    }
    std::vector<unsigned char> text(kChunk), coded(kChunk + kExtra);
    bool first = true;
    for (auto at = static_cast<std::int64_t>(line.size());;) {
        const auto size = static_cast<std::size_t>(
            std::min<std::int64_t>(static_cast<std::int64_t>(coded.size()), input->size() - at));
        if (size < kExtra) {
            return base::inputError("seal.truncated",
                                    "The sealed file is cut off: its end is missing; nothing was "
                                    "imported. Copy it again.");
        }
        if (!input->readAt(at, {coded.data(), size})) {
            return damaged();
        }
        at += static_cast<std::int64_t>(size);
        unsigned char tag = 0;
        if (crypto_secretstream_xchacha20poly1305_pull(&state, text.data(), nullptr, &tag, coded.data(), size,
                                                       reinterpret_cast<const unsigned char*>(line.data()),
                                                       line.size()) != 0) {
            if (first) {
                return base::inputError("seal.wrong",
                                        "The passphrase is not the one this file was sealed with (or the "
                                        "file is damaged); try again.");
            }
            return damaged();
        }
        first = false;
        if (auto done = out->write(std::span(text.data(), size - kExtra)); !done) {
            return done;
        }
        const bool last = tag == crypto_secretstream_xchacha20poly1305_TAG_FINAL;
        if (last != (at == input->size())) {
            return last ? damaged()
                        : base::inputError("seal.truncated",
                                           "The sealed file is cut off: its end is missing; nothing "
                                           "was imported. Copy it again.");
        }
        progress.tell(static_cast<double>(at) / static_cast<double>(input->size()),
                      "Opening the sealed file");
        if (progress.cancelled()) {
            return base::failure("cancelled", "Stopped on request.");
        }
        if (last) {
            break;
        }
    }
    return out->commit();
}

} // namespace

bool isSealed(const fs::path& file) {
    return beginsSealed(file);
}

base::Result<void> seal(const fs::path& plain, const fs::path& sealed, std::string_view passphrase,
                        const SealStrength& strength, const base::Progress& progress,
                        base::FileCalls& calls) {
    return base::guarded([&] { return sealInto(plain, sealed, passphrase, strength, progress, calls); });
}

base::Result<void> unseal(const fs::path& sealed, const fs::path& plain, std::string_view passphrase,
                          const base::Progress& progress, base::FileCalls& calls) {
    return base::guarded([&] { return unsealInto(sealed, plain, passphrase, progress, calls); });
}

std::string suggestPassphrase() {
    constexpr std::string_view consonants = "bdfghjklmnprstvz"; // 16
    constexpr std::string_view vowels = "aeiou";
    std::string phrase;
    for (int word = 0; word < 6; ++word) {
        phrase += word == 0 ? "" : " ";
        for (int syllable = 0; syllable < 2; ++syllable) { // 2 x log2(80) = 12.6 bits a word
            phrase += consonants[randombytes_uniform(consonants.size())];
            phrase += vowels[randombytes_uniform(vowels.size())];
        }
    }
    return phrase;
}

} // namespace plumbmark::lessonfile
