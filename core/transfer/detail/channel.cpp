// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "transfer/detail/channel.h"

#include <algorithm>
#include <cerrno>
#include <cstring>

#include <poll.h>
#include <sys/socket.h>
#include <unistd.h>

namespace plumbmark::transfer::detail {
namespace {

constexpr std::string_view kMagic = "PLMBDIR1";
constexpr std::size_t kPublic = crypto_scalarmult_BYTES;
constexpr std::size_t kProof = 32;
constexpr std::size_t kExtra = crypto_secretstream_xchacha20poly1305_ABYTES;
using Bytes32 = std::array<std::uint8_t, 32>;

struct Pair {
    Bytes32 secret{}, open{};
    Pair() {
        randombytes_buf(secret.data(), secret.size());
        crypto_scalarmult_base(open.data(), secret.data());
    }
    ~Pair() { sodium_memzero(secret.data(), secret.size()); }
};

/// Keyed with the ticket's key, so only who has the ticket can make it.
Bytes32 proof(const Bytes32& key, std::string_view who, std::span<const std::uint8_t> first,
              std::span<const std::uint8_t> second = {}) {
    std::vector<std::uint8_t> text(who.begin(), who.end());
    text.insert(text.end(), first.begin(), first.end());
    text.insert(text.end(), second.begin(), second.end());
    Bytes32 tag{};
    crypto_generichash(tag.data(), tag.size(), text.data(), text.size(), key.data(), key.size());
    return tag;
}

/// Two keys: server to client, client to server. False for a degenerate public key.
bool streamKeys(const Bytes32& key, const Pair& mine, const Bytes32& theirs, const Bytes32& client,
                const Bytes32& server, std::array<std::uint8_t, 64>& keys) {
    std::array<std::uint8_t, 96> text{};
    if (crypto_scalarmult(text.data(), mine.secret.data(), theirs.data()) != 0) {
        return false;
    }
    std::copy(client.begin(), client.end(), text.begin() + 32);
    std::copy(server.begin(), server.end(), text.begin() + 64);
    crypto_generichash(keys.data(), keys.size(), text.data(), text.size(), key.data(), key.size());
    sodium_memzero(text.data(), text.size());
    return true;
}

} // namespace

Descriptor::~Descriptor() {
    if (fd_ >= 0) {
        ::close(fd_);
    }
}

Wire Channel::put(std::span<const std::uint8_t> bytes) {
    int silent = 0;
    while (!bytes.empty()) {
        if (progress_->cancelled()) {
            return Wire::cancelled;
        }
        pollfd wait{socket_.get(), POLLOUT, 0};
        if (::poll(&wait, 1, 100) == 0) {
            if ((silent += 100) >= kSilenceMs) {
                return Wire::closed;
            }
            continue;
        }
        const ssize_t done = ::send(socket_.get(), bytes.data(), bytes.size(), MSG_NOSIGNAL | MSG_DONTWAIT);
        if (done < 0 && (errno == EINTR || errno == EAGAIN || errno == EWOULDBLOCK)) {
            continue;
        }
        if (done <= 0) {
            return Wire::closed;
        }
        silent = 0;
        bytes = bytes.subspan(static_cast<std::size_t>(done));
    }
    return Wire::fine;
}

Wire Channel::get(std::span<std::uint8_t> bytes) {
    int silent = 0;
    while (!bytes.empty()) {
        if (progress_->cancelled()) {
            return Wire::cancelled;
        }
        pollfd wait{socket_.get(), POLLIN, 0};
        if (::poll(&wait, 1, 100) == 0) {
            if ((silent += 100) >= kSilenceMs) {
                return Wire::closed;
            }
            continue;
        }
        const ssize_t got = ::recv(socket_.get(), bytes.data(), bytes.size(), MSG_DONTWAIT);
        if (got < 0 && (errno == EINTR || errno == EAGAIN || errno == EWOULDBLOCK)) {
            continue;
        }
        if (got <= 0) {
            return Wire::closed;
        }
        silent = 0;
        bytes = bytes.subspan(static_cast<std::size_t>(got));
    }
    return Wire::fine;
}

Wire Channel::begin(std::span<const std::uint8_t> sendKey, std::span<const std::uint8_t> receiveKey) {
    std::array<std::uint8_t, crypto_secretstream_xchacha20poly1305_HEADERBYTES> mine{}, theirs{};
    crypto_secretstream_xchacha20poly1305_init_push(&out_, mine.data(), sendKey.data());
    if (const Wire sent = put(mine); sent != Wire::fine) {
        return sent;
    }
    if (const Wire got = get(theirs); got != Wire::fine) {
        return got;
    }
    return crypto_secretstream_xchacha20poly1305_init_pull(&in_, theirs.data(), receiveKey.data()) == 0
               ? Wire::fine
               : Wire::closed;
}

Wire Channel::shakeHandsAsServer(const Bytes32& key) {
    std::array<std::uint8_t, 8 + kPublic + kProof> hello{};
    if (const Wire got = get(hello); got != Wire::fine) {
        return got;
    }
    Bytes32 theirs{};
    std::copy_n(hello.begin() + 8, 32, theirs.begin());
    const Bytes32 expected = proof(key, "client", theirs);
    if (std::memcmp(hello.data(), kMagic.data(), 8) != 0 ||
        sodium_memcmp(expected.data(), hello.data() + 8 + kPublic, kProof) != 0) {
        return Wire::wrongKey;
    }
    const Pair mine;
    const Bytes32 tag = proof(key, "server", theirs, mine.open);
    std::array<std::uint8_t, kPublic + kProof> answer{};
    std::copy(mine.open.begin(), mine.open.end(), answer.begin());
    std::copy(tag.begin(), tag.end(), answer.begin() + kPublic);
    if (const Wire sent = put(answer); sent != Wire::fine) {
        return sent;
    }
    std::array<std::uint8_t, 64> keys{};
    if (!streamKeys(key, mine, theirs, theirs, mine.open, keys)) {
        return Wire::closed;
    }
    const Wire begun = begin(std::span(keys).first(32), std::span(keys).subspan(32));
    sodium_memzero(keys.data(), keys.size());
    return begun;
}

Wire Channel::shakeHandsAsClient(const Bytes32& key) {
    const Pair mine;
    const Bytes32 tag = proof(key, "client", mine.open);
    std::array<std::uint8_t, 8 + kPublic + kProof> hello{};
    std::copy(kMagic.begin(), kMagic.end(), hello.begin());
    std::copy(mine.open.begin(), mine.open.end(), hello.begin() + 8);
    std::copy(tag.begin(), tag.end(), hello.begin() + 8 + kPublic);
    if (const Wire sent = put(hello); sent != Wire::fine) {
        return sent;
    }
    std::array<std::uint8_t, kPublic + kProof> answer{};
    if (const Wire got = get(answer); got != Wire::fine) {
        return got == Wire::closed ? Wire::wrongKey : got; // a sender that does not know us hangs up
    }
    Bytes32 theirs{};
    std::copy_n(answer.begin(), 32, theirs.begin());
    const Bytes32 expected = proof(key, "server", mine.open, theirs);
    if (sodium_memcmp(expected.data(), answer.data() + kPublic, kProof) != 0) {
        return Wire::wrongKey;
    }
    std::array<std::uint8_t, 64> keys{};
    if (!streamKeys(key, mine, theirs, mine.open, theirs, keys)) {
        return Wire::closed;
    }
    const Wire begun = begin(std::span(keys).subspan(32), std::span(keys).first(32));
    sodium_memzero(keys.data(), keys.size());
    return begun;
}

Wire Channel::send(std::span<const std::uint8_t> message, bool last) {
    std::vector<std::uint8_t> coded(4 + message.size() + kExtra);
    const auto size = static_cast<std::uint32_t>(message.size() + kExtra);
    for (int i = 0; i < 4; ++i) {
        coded[static_cast<std::size_t>(i)] = static_cast<std::uint8_t>(size >> (8 * i));
    }
    crypto_secretstream_xchacha20poly1305_push(&out_, coded.data() + 4, nullptr, message.data(),
                                               message.size(), coded.data(), 4,
                                               last ? crypto_secretstream_xchacha20poly1305_TAG_FINAL : 0);
    return put(coded);
}

Wire Channel::receive(std::vector<std::uint8_t>& message, bool& last) {
    std::array<std::uint8_t, 4> head{};
    if (const Wire got = get(head); got != Wire::fine) {
        return got;
    }
    const std::size_t size =
        head[0] | (std::size_t{head[1]} << 8) | (std::size_t{head[2]} << 16) | (std::size_t{head[3]} << 24);
    if (size < kExtra || size > kChunk + kExtra) {
        return Wire::closed;
    }
    std::vector<std::uint8_t> coded(size);
    if (const Wire got = get(coded); got != Wire::fine) {
        return got;
    }
    message.resize(size - kExtra);
    unsigned char tag = 0;
    if (crypto_secretstream_xchacha20poly1305_pull(&in_, message.data(), nullptr, &tag, coded.data(), size,
                                                   head.data(), 4) != 0) {
        message.clear();
        return Wire::closed; // somebody meddled: as good as a cut, and gone on with after a new handshake
    }
    last = tag == crypto_secretstream_xchacha20poly1305_TAG_FINAL;
    return Wire::fine;
}

} // namespace plumbmark::transfer::detail
