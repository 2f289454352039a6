// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "transfer/direct.h"

#include <algorithm>
#include <cerrno>
#include <charconv>
#include <chrono>
#include <thread>

#include <arpa/inet.h>
#include <fcntl.h>
#include <ifaddrs.h>
#include <net/if.h>
#include <netinet/in.h>
#include <poll.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <unistd.h>

#include "base/guarded.h"
#include "base/hash.h"
#include "transfer/detail/channel.h"

namespace plumbmark::transfer {
namespace {

namespace fs = std::filesystem;
using detail::Channel;
using detail::Descriptor;
using detail::Wire;
using Clock = std::chrono::steady_clock;

base::Error cancelled() {
    return base::failure("cancelled", "Stopped on request.");
}
base::Error network() {
    return base::failure("transfer.network", "The network cannot be used; check that this device is on one.");
}

/// What is sent, told before it: 8 bytes of size, 64 hex digits.
std::vector<std::uint8_t> offerOf(std::int64_t size, const std::string& sha256) {
    std::vector<std::uint8_t> offer;
    for (int i = 0; i < 8; ++i) {
        offer.push_back(static_cast<std::uint8_t>(size >> (8 * i)));
    }
    offer.insert(offer.end(), sha256.begin(), sha256.end());
    return offer;
}
std::int64_t numberFrom(std::span<const std::uint8_t> bytes) {
    std::uint64_t value = 0;
    for (std::size_t i = 0; i < 8; ++i) {
        value |= std::uint64_t{bytes[i]} << (8 * i);
    }
    return static_cast<std::int64_t>(value);
}

sockaddr_in addressOf(const std::string& text, std::uint16_t port, bool& good) {
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_port = htons(port);
    good = text.empty() || ::inet_pton(AF_INET, text.c_str(), &address.sin_addr) == 1;
    if (text.empty()) {
        address.sin_addr.s_addr = htonl(INADDR_ANY);
    }
    return address;
}

/// One connection of a sending: everything from the offer to the receiver's word that it is there.
Wire serve(Channel& channel, int file, std::int64_t size, const std::string& sha256,
           const SendOptions& options, const base::Progress& progress, bool& done) {
    if (const Wire sent = channel.send(offerOf(size, sha256)); sent != Wire::fine) {
        return sent;
    }
    std::vector<std::uint8_t> message;
    bool last = false;
    if (const Wire got = channel.receive(message, last); got != Wire::fine) {
        return got;
    }
    if (message.size() != 8) {
        return Wire::closed;
    }
    std::int64_t at = numberFrom(message);
    if (at < 0 || at > size) {
        return Wire::closed;
    }
    std::vector<std::uint8_t> piece(detail::kChunk);
    const auto began = Clock::now();
    std::int64_t sent = 0;
    do {
        const auto want = static_cast<std::size_t>(std::min<std::int64_t>(detail::kChunk, size - at));
        const ssize_t got = want == 0 ? 0 : ::pread(file, piece.data(), want, at);
        if (got < 0 || static_cast<std::size_t>(got) != want) {
            return Wire::closed; // the file changed under us
        }
        at += got;
        if (const Wire gone = channel.send(std::span(piece).first(want), at == size); gone != Wire::fine) {
            return gone;
        }
        sent += got;
        progress.tell(static_cast<double>(at) / static_cast<double>(std::max<std::int64_t>(1, size)),
                      "Sending");
        if (options.mostBytesASecond > 0) {
            std::this_thread::sleep_until(began +
                                          std::chrono::milliseconds(sent * 1000 / options.mostBytesASecond));
        }
    } while (at < size);
    if (const Wire got = channel.receive(message, last); got != Wire::fine) {
        return got;
    }
    done = message == std::vector<std::uint8_t>{'d', 'o', 'n', 'e'};
    return Wire::fine;
}

/// One connection of a receiving. `path`: where the file grows; told once the offer is known.
struct Received {
    std::optional<fs::path> path;
    std::int64_t bytes = 0, now = 0;
    bool whole = false;
    std::optional<base::Error> stop; ///< no further try helps
};
Wire fetch(Channel& channel, const ReceiveOptions& options, const base::Progress& progress,
           Received& received) {
    std::vector<std::uint8_t> message;
    bool last = false;
    if (const Wire got = channel.receive(message, last); got != Wire::fine) {
        return got;
    }
    const std::string sha256 = message.size() == 72 ? std::string(message.begin() + 8, message.end()) : "";
    if (!base::isSha256Hex(sha256)) {
        return Wire::closed;
    }
    const std::int64_t size = numberFrom(message);
    if (size < 0 || size > options.mostBytes) {
        received.stop =
            base::inputError("transfer.too_large", "What is sent is larger than a lesson file may be; it "
                                                   "was not taken.");
        return Wire::closed;
    }
    const fs::path path = options.folder / (sha256 + ".part");
    received.path = path;
    received.bytes = size;
    const Descriptor file(::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0600));
    struct stat info {};
    if (!file || ::fstat(file.get(), &info) != 0) {
        received.stop = base::failure("file.unwritable", "What comes in cannot be kept; check the disk.");
        return Wire::closed;
    }
    std::int64_t at = std::min<std::int64_t>(info.st_size, size);
    std::vector<std::uint8_t> from;
    for (int i = 0; i < 8; ++i) {
        from.push_back(static_cast<std::uint8_t>(at >> (8 * i)));
    }
    if (const Wire sent = channel.send(from); sent != Wire::fine) {
        return sent;
    }
    last = false;
    while (!last) {
        if (const Wire got = channel.receive(message, last); got != Wire::fine) {
            return got;
        }
        if (at + static_cast<std::int64_t>(message.size()) > size) {
            return Wire::closed;
        }
        for (std::size_t done = 0; done < message.size();) {
            const ssize_t wrote = ::pwrite(file.get(), message.data() + done, message.size() - done,
                                           at + static_cast<std::int64_t>(done));
            if (wrote <= 0) {
                received.stop =
                    base::failure("disk.full", "The disk is full, so nothing was received; free some "
                                               "space and try again.");
                return Wire::closed;
            }
            done += static_cast<std::size_t>(wrote);
        }
        at += static_cast<std::int64_t>(message.size());
        received.now += static_cast<std::int64_t>(message.size());
        progress.tell(static_cast<double>(at) / static_cast<double>(std::max<std::int64_t>(1, size)),
                      "Receiving");
    }
    const auto hash = base::sha256OfFile(path, progress);
    if (!hash) {
        return Wire::cancelled;
    }
    if (at != size || hash->sha256 != sha256 || hash->size != size) {
        std::error_code ignored;
        fs::remove(path, ignored);
        received.stop =
            base::failure("transfer.changed", "What arrived is not what was sent; nothing was kept. Try "
                                              "again.");
        return Wire::closed;
    }
    if (::fsync(file.get()) != 0) {
        received.stop = base::failure("file.unwritable", "What came in could not be kept; check the disk.");
        return Wire::closed;
    }
    received.whole = true;
    const std::array<std::uint8_t, 4> word{'d', 'o', 'n', 'e'};
    (void)channel.send(word, true); // lost: the sender waits in vain, nothing else
    return Wire::fine;
}

} // namespace

std::string Ticket::text() const {
    std::string list;
    for (const std::string& address : addresses) {
        list += (list.empty() ? "" : ",") + address;
    }
    std::string coded(sodium_base64_ENCODED_LEN(32, sodium_base64_VARIANT_URLSAFE_NO_PADDING), '\0');
    sodium_bin2base64(coded.data(), coded.size(), key.data(), key.size(),
                      sodium_base64_VARIANT_URLSAFE_NO_PADDING);
    coded.pop_back();
    return std::string(kTicketBeginning) + list + ":" + std::to_string(port) + ":" + coded;
}

std::optional<Ticket> Ticket::fromText(std::string_view text) {
    if (!text.starts_with(kTicketBeginning) || text.size() > 500) {
        return std::nullopt;
    }
    text.remove_prefix(kTicketBeginning.size());
    const std::size_t first = text.find(':');
    const std::size_t second = first == std::string_view::npos ? first : text.find(':', first + 1);
    if (second == std::string_view::npos) {
        return std::nullopt;
    }
    Ticket ticket;
    for (std::string_view list = text.substr(0, first);;) {
        const std::size_t comma = list.find(',');
        const std::string address(list.substr(0, comma));
        bool good = false;
        (void)addressOf(address, 1, good);
        if (address.empty() || !good) {
            return std::nullopt;
        }
        ticket.addresses.push_back(address);
        if (comma == std::string_view::npos) {
            break;
        }
        list.remove_prefix(comma + 1);
    }
    const std::string_view port = text.substr(first + 1, second - first - 1);
    const auto read = std::from_chars(port.data(), port.data() + port.size(), ticket.port);
    if (read.ec != std::errc() || read.ptr != port.data() + port.size() || ticket.port == 0) {
        return std::nullopt;
    }
    const std::string coded(text.substr(second + 1));
    std::size_t got = 0;
    if (sodium_base642bin(ticket.key.data(), ticket.key.size(), coded.data(), coded.size(), nullptr, &got,
                          nullptr, sodium_base64_VARIANT_URLSAFE_NO_PADDING) != 0 ||
        got != ticket.key.size()) {
        return std::nullopt;
    }
    return ticket;
}

std::vector<std::string> ownAddresses() {
    std::vector<std::string> addresses;
    ifaddrs* list = nullptr;
    if (::getifaddrs(&list) != 0) {
        return addresses;
    }
    for (const ifaddrs* at = list; at != nullptr; at = at->ifa_next) {
        if (at->ifa_addr == nullptr || at->ifa_addr->sa_family != AF_INET ||
            (at->ifa_flags & IFF_LOOPBACK) != 0 || (at->ifa_flags & IFF_UP) == 0) {
            continue;
        }
        std::array<char, INET_ADDRSTRLEN> text{};
        const auto* address = reinterpret_cast<const sockaddr_in*>(at->ifa_addr);
        if (::inet_ntop(AF_INET, &address->sin_addr, text.data(), text.size()) != nullptr) {
            addresses.emplace_back(text.data());
        }
    }
    ::freeifaddrs(list);
    return addresses;
}

namespace {

base::Result<SendReceipt> sent(const fs::path& path, const SendOptions& options,
                               const base::Progress& progress) {
    const auto hash = base::sha256OfFile(path, progress);
    if (!hash) {
        return hash.error();
    }
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (!file || sodium_init() < 0) {
        return base::inputError("file.missing", "The file to send cannot be read; check that it is there.");
    }
    bool good = false;
    sockaddr_in address = addressOf(options.address, 0, good);
    if (!good) {
        return base::inputError("transfer.address",
                                "\"" + options.address + "\" is no address as 192.168.1.7.");
    }
    const Descriptor listener(::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC | SOCK_NONBLOCK, 0));
    socklen_t length = sizeof address;
    if (!listener || ::bind(listener.get(), reinterpret_cast<sockaddr*>(&address), sizeof address) != 0 ||
        ::listen(listener.get(), 4) != 0 ||
        ::getsockname(listener.get(), reinterpret_cast<sockaddr*>(&address), &length) != 0) {
        return network();
    }
    Ticket ticket;
    ticket.port = ntohs(address.sin_port);
    ticket.addresses = options.address.empty() ? ownAddresses() : std::vector<std::string>{options.address};
    if (ticket.addresses.empty()) {
        return network();
    }
    randombytes_buf(ticket.key.data(), ticket.key.size());
    if (options.ready) {
        options.ready(ticket);
    }
    SendReceipt receipt;
    receipt.bytes = hash->size;
    auto lastSeen = Clock::now();
    while (Clock::now() - lastSeen < std::chrono::seconds(options.patienceSeconds)) {
        if (progress.cancelled()) {
            return cancelled();
        }
        pollfd wait{listener.get(), POLLIN, 0};
        if (::poll(&wait, 1, 100) <= 0) {
            continue;
        }
        Descriptor socket(::accept4(listener.get(), nullptr, nullptr, SOCK_CLOEXEC | SOCK_NONBLOCK));
        if (!socket) {
            continue;
        }
        Channel channel(std::move(socket), progress);
        Wire wire = channel.shakeHandsAsServer(ticket.key);
        if (wire == Wire::wrongKey) {
            if (++receipt.wrongKeys >= options.mostWrongKeys) {
                return base::failure("transfer.wrong_keys",
                                     "Somebody tried a wrong key too often, so the sending was "
                                     "ended. Start it again; a new key is made.");
            }
            continue; // a stranger does not lengthen the wait
        }
        if (wire == Wire::fine) {
            ++receipt.connections;
            bool done = false;
            wire = serve(channel, file.get(), hash->size, hash->sha256, options, progress, done);
            if (done) {
                return receipt;
            }
            lastSeen = Clock::now();
        }
        if (wire == Wire::cancelled) {
            return cancelled();
        }
    }
    return base::failure(
        "transfer.nobody",
        receipt.connections == 0
            ? "Nobody came for it; start the sending again when the other device is ready."
            : "The other device went away before all was sent; start again, it goes on where it "
              "stopped.");
}

base::Result<ReceiveReceipt> received(const Ticket& ticket, const ReceiveOptions& options,
                                      const base::Progress& progress) {
    if (ticket.addresses.empty() || ticket.port == 0 || sodium_init() < 0) {
        return base::inputError("transfer.ticket", "This is no ticket of a sending; copy all of it.");
    }
    ReceiveReceipt receipt;
    auto lastSeen = Clock::now();
    int refused = 0;
    for (std::size_t turn = 0; Clock::now() - lastSeen < std::chrono::seconds(options.patienceSeconds);
         ++turn) {
        if (progress.cancelled()) {
            return cancelled();
        }
        bool good = false;
        const sockaddr_in address =
            addressOf(ticket.addresses[turn % ticket.addresses.size()], ticket.port, good);
        Descriptor socket(::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC | SOCK_NONBLOCK, 0));
        if (!socket) {
            return network();
        }
        bool connected =
            ::connect(socket.get(), reinterpret_cast<const sockaddr*>(&address), sizeof address) == 0;
        if (!connected && errno == EINPROGRESS) {
            pollfd wait{socket.get(), POLLOUT, 0};
            int error = 0;
            socklen_t length = sizeof error;
            connected = ::poll(&wait, 1, 2000) == 1 &&
                        ::getsockopt(socket.get(), SOL_SOCKET, SO_ERROR, &error, &length) == 0 && error == 0;
        }
        if (!connected) {
            std::this_thread::sleep_for(std::chrono::milliseconds(200));
            continue;
        }
        Channel channel(std::move(socket), progress);
        Wire wire = channel.shakeHandsAsClient(ticket.key);
        if (wire == Wire::wrongKey) {
            // Also when the line was cut at this very moment: once is no proof.
            if (++refused >= 2) {
                return base::inputError("transfer.refused",
                                        "The sender does not know this ticket; take the one it shows now.");
            }
            continue;
        }
        if (wire == Wire::fine) {
            ++receipt.connections;
            refused = 0;
            Received part;
            wire = fetch(channel, options, progress, part);
            receipt.received += part.now;
            if (part.stop) {
                return *part.stop;
            }
            if (part.whole) {
                receipt.file = *part.path;
                receipt.bytes = part.bytes;
                return receipt;
            }
            if (part.now > 0) {
                lastSeen = Clock::now();
            }
        }
        if (wire == Wire::cancelled) {
            return cancelled();
        }
        std::this_thread::sleep_for(std::chrono::milliseconds(100));
    }
    return base::failure("transfer.nobody",
                         "The sender cannot be reached; check that both are on one network and "
                         "that it still shows its ticket. What came already is kept.");
}

} // namespace

base::Result<SendReceipt> sendFile(const fs::path& path, const SendOptions& options,
                                   const base::Progress& progress) {
    return base::guarded([&] { return sent(path, options, progress); });
}

base::Result<ReceiveReceipt> receiveFile(const Ticket& ticket, const ReceiveOptions& options,
                                         const base::Progress& progress) {
    return base::guarded([&] { return received(ticket, options, progress); });
}

} // namespace plumbmark::transfer
