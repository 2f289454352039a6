// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/progress.h"
#include "base/result.h"

/// One file from one device to another beside it, over the local network, without anything between. The
/// sender shows a ticket (address, port, a 256-bit key that is used for this one sending); the receiver reads
/// it. Nothing is announced on the network; the port is open only while the ticket is shown.
///
/// Both sides make a fresh X25519 key and prove with a keyed BLAKE2b hash that they know the ticket's key;
/// the keys of the two streams (libsodium's secretstream) come from both secrets. So a recorded sending stays
/// closed even to somebody who finds the ticket later, and without the ticket nothing is learned but the
/// amount of data.
namespace plumbmark::transfer {

inline constexpr std::string_view kTicketBeginning = "plumbmark:";

struct Ticket {
    std::vector<std::string> addresses; ///< IPv4, tried in turn
    std::uint16_t port = 0;
    std::array<std::uint8_t, 32> key{};
    /// plumbmark:10.0.0.5,192.168.1.7:40123:<key>
    [[nodiscard]] std::string text() const;
    static std::optional<Ticket> fromText(std::string_view text);
};

/// This device's IPv4 addresses on networks, without the loopback one.
[[nodiscard]] std::vector<std::string> ownAddresses();

struct SendOptions {
    std::string address;                      ///< listen here only; empty: on every network of this device
    int patienceSeconds = 120;                ///< without a receiver, or with one that went away
    int mostWrongKeys = 3;                    ///< then the ticket is void
    int mostBytesASecond = 0;                 ///< 0: as fast as it goes (tests slow it down)
    std::function<void(const Ticket&)> ready; ///< called when the port is open
};
struct SendReceipt {
    std::int64_t bytes = 0;
    int connections = 0; ///< 1 without a cut
    int wrongKeys = 0;
};
/// Blocks until the receiver has said that all of it is there. Errors (input): "file.missing",
/// "transfer.address"; (failure): "transfer.nobody", "transfer.wrong_keys" (the ticket is void),
/// "transfer.network", "cancelled".
base::Result<SendReceipt> sendFile(const std::filesystem::path& file, const SendOptions& options,
                                   const base::Progress& progress = {});

struct ReceiveOptions {
    std::filesystem::path folder; ///< private; unfinished files stay here to be gone on with
    int patienceSeconds = 60;     ///< without getting anything further
    std::int64_t mostBytes = 4'294'967'295LL;
};
struct ReceiveReceipt {
    std::filesystem::path file; ///< in `folder`; whole, its SHA-256 fits
    std::int64_t bytes = 0;     ///< of the file
    std::int64_t received = 0;  ///< over the network, all connections together
    int connections = 0;
};
/// Errors (input): "transfer.ticket", "transfer.refused" (the key is not that of the sender),
/// "transfer.too_large"; (failure): "transfer.nobody", "transfer.changed", "disk.full" and others of writing,
/// "cancelled".
base::Result<ReceiveReceipt> receiveFile(const Ticket& ticket, const ReceiveOptions& options,
                                         const base::Progress& progress = {});

} // namespace plumbmark::transfer
