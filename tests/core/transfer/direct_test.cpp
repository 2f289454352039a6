// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "transfer/direct.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <mutex>
#include <random>
#include <thread>

#include <arpa/inet.h>
#include <poll.h>
#include <sys/socket.h>
#include <unistd.h>

#include <zbar.h>

#include "base/files.h"
#include "transfer/qr.h"

using namespace plumbmark;
using namespace plumbmark::transfer;
namespace fs = std::filesystem;

namespace {

std::string contentOf(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// Stands between the two: passes bytes on, keeps them, and cuts or changes the line where it is told to.
class Wiretap {
  public:
    explicit Wiretap(std::uint16_t to) : to_(to) {
        listener_ = ::socket(AF_INET, SOCK_STREAM, 0);
        sockaddr_in address{};
        address.sin_family = AF_INET;
        address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
        socklen_t length = sizeof address;
        EXPECT_EQ(::bind(listener_, reinterpret_cast<sockaddr*>(&address), length), 0);
        EXPECT_EQ(::listen(listener_, 8), 0);
        ::getsockname(listener_, reinterpret_cast<sockaddr*>(&address), &length);
        port = ntohs(address.sin_port);
        thread_ = std::thread([this] { run(); });
    }
    ~Wiretap() {
        stop_ = true;
        thread_.join();
        ::close(listener_);
    }
    std::uint16_t port = 0;
    std::vector<std::int64_t> cutAfter; ///< bytes of each connection in turn; none left: no cut
    std::int64_t changeAt = -1;         ///< byte to change in the first connection, sender to receiver
    std::string seen;                   ///< everything that passed

  private:
    void run() {
        std::size_t turn = 0;
        while (!stop_) {
            pollfd wait{listener_, POLLIN, 0};
            if (::poll(&wait, 1, 20) <= 0) {
                continue;
            }
            const int a = ::accept(listener_, nullptr, nullptr);
            const int b = ::socket(AF_INET, SOCK_STREAM, 0);
            sockaddr_in address{};
            address.sin_family = AF_INET;
            address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
            address.sin_port = htons(to_);
            if (::connect(b, reinterpret_cast<sockaddr*>(&address), sizeof address) == 0) {
                pass(a, b, turn < cutAfter.size() ? cutAfter[turn] : -1, turn == 0 ? changeAt : -1);
            }
            ++turn;
            ::close(a);
            ::close(b);
        }
    }
    void pass(int a, int b, std::int64_t cut, std::int64_t change) {
        std::int64_t total = 0, down = 0;
        char buffer[8192];
        while (!stop_) {
            pollfd waits[2]{{a, POLLIN, 0}, {b, POLLIN, 0}};
            if (::poll(waits, 2, 20) <= 0) {
                continue;
            }
            for (int i = 0; i < 2; ++i) {
                if (waits[i].revents == 0) {
                    continue;
                }
                std::size_t want = sizeof buffer;
                if (cut >= 0) {
                    want = std::min<std::size_t>(want, static_cast<std::size_t>(cut - total));
                }
                const ssize_t got = want == 0 ? 0 : ::recv(i == 0 ? a : b, buffer, want, 0);
                if (got <= 0) {
                    return;
                }
                if (i == 1 && change >= down && change < down + got) {
                    buffer[change - down] = static_cast<char>(buffer[change - down] ^ 1);
                }
                down += i == 1 ? got : 0;
                total += got;
                seen.append(buffer, static_cast<std::size_t>(got));
                for (ssize_t at = 0; at < got;) {
                    const ssize_t sent =
                        ::send(i == 0 ? b : a, buffer + at, static_cast<std::size_t>(got - at), MSG_NOSIGNAL);
                    if (sent <= 0) {
                        return;
                    }
                    at += sent;
                }
            }
        }
    }
    std::uint16_t to_;
    int listener_ = -1;
    std::atomic<bool> stop_{false};
    std::thread thread_;
};

class Direct : public ::testing::Test {
  protected:
    void SetUp() override {
        std::string text;
        std::mt19937 random(5);
        for (int i = 0; i < 40000; ++i) {
            text += "canary-" + std::to_string(random()) + "\n";
        }
        std::ofstream(dir_ / "file", std::ios::binary) << text;
        content_ = text;
        fs::create_directories(dir_ / "in");
    }
    /// Runs a sending in the background and hands its ticket on.
    template <class Then> base::Result<SendReceipt> whileSending(Then&& then, int patience = 20) {
        std::mutex mutex;
        std::optional<Ticket> ticket;
        SendOptions options;
        options.address = "127.0.0.1";
        options.patienceSeconds = patience;
        options.ready = [&](const Ticket& t) {
            const std::lock_guard guard(mutex);
            ticket = t;
        };
        base::Result<SendReceipt> result = base::failure("", "");
        std::atomic<bool> cancel{false};
        base::Progress progress;
        progress.cancel = &cancel;
        std::thread sender([&] { result = sendFile(dir_ / "file", options, progress); });
        for (;;) {
            {
                const std::lock_guard guard(mutex);
                if (ticket) {
                    break;
                }
            }
            std::this_thread::sleep_for(std::chrono::milliseconds(5));
        }
        then(*ticket);
        sender.join();
        return result;
    }
    base::Result<ReceiveReceipt> receive(const Ticket& ticket) {
        ReceiveOptions options;
        options.folder = dir_ / "in";
        options.patienceSeconds = 10;
        return receiveFile(ticket, options);
    }
    base::StagingFolder stage_ = *base::StagingFolder::create(fs::temp_directory_path() / "plumbmark-test");
    fs::path dir_ = stage_.path();
    std::string content_;
};

} // namespace

TEST_F(Direct, AFileArrivesWholeAndTheListenerLearnsNothing) {
    const auto sent = whileSending([&](const Ticket& ticket) {
        Wiretap tap(ticket.port);
        Ticket through = ticket;
        through.port = tap.port;
        const auto got = receive(through);
        ASSERT_TRUE(got) << got.error().sentence;
        EXPECT_EQ(contentOf(got->file), content_);
        EXPECT_GT(tap.seen.size(), content_.size());
        EXPECT_EQ(tap.seen.find("canary"), std::string::npos);
        EXPECT_EQ(tap.seen.find(std::string(ticket.key.begin(), ticket.key.end())), std::string::npos);
    });
    ASSERT_TRUE(sent) << sent.error().sentence;
    EXPECT_EQ(sent->connections, 1);
    EXPECT_EQ(sent->wrongKeys, 0);
}

TEST_F(Direct, AfterCutsItGoesOnWhereItStopped) {
    const auto sent = whileSending([&](const Ticket& ticket) {
        Wiretap tap(ticket.port);
        tap.cutAfter = {60, 200, 150'000, 100'000, 131'072, 300'000};
        Ticket through = ticket;
        through.port = tap.port;
        const auto got = receive(through);
        ASSERT_TRUE(got) << got.error().sentence;
        EXPECT_EQ(contentOf(got->file), content_);
        EXPECT_EQ(got->received, got->bytes) << "nothing that was kept is sent twice";
        EXPECT_GE(got->connections, 4);
    });
    ASSERT_TRUE(sent) << sent.error().sentence;
}

TEST_F(Direct, AChangedByteOnTheWayIsNoticedAndTheRestStillArrives) {
    for (const std::int64_t at :
         {std::int64_t{5}, std::int64_t{70}, std::int64_t{200}, std::int64_t{100'000}}) {
        fs::remove_all(dir_ / "in");
        fs::create_directories(dir_ / "in");
        const auto sent = whileSending([&](const Ticket& ticket) {
            Wiretap tap(ticket.port);
            tap.changeAt = at;
            Ticket through = ticket;
            through.port = tap.port;
            const auto got = receive(through);
            ASSERT_TRUE(got) << got.error().sentence;
            EXPECT_EQ(contentOf(got->file), content_);
        });
        ASSERT_TRUE(sent) << at << sent.error().sentence;
    }
}

TEST_F(Direct, ThreeWrongKeysEndIt) {
    const auto sent = whileSending([&](const Ticket& ticket) {
        Ticket wrong = ticket;
        wrong.key[0] ^= 1;
        const auto first = receive(wrong); // tries twice before it believes it
        ASSERT_FALSE(first);
        EXPECT_EQ(first.error().key, "transfer.refused");
        EXPECT_TRUE(fs::is_empty(dir_ / "in"));
        (void)receive(wrong);
        // Now the right one comes too late.
        ReceiveOptions options;
        options.folder = dir_ / "in";
        options.patienceSeconds = 1;
        EXPECT_FALSE(receiveFile(ticket, options));
    });
    ASSERT_FALSE(sent);
    EXPECT_EQ(sent.error().key, "transfer.wrong_keys");
}

TEST_F(Direct, NobodyComesAndThePortIsClosedAgain) {
    std::uint16_t port = 0;
    const auto sent = whileSending([&](const Ticket& ticket) { port = ticket.port; }, 1);
    ASSERT_FALSE(sent);
    EXPECT_EQ(sent.error().key, "transfer.nobody");
    const int probe = ::socket(AF_INET, SOCK_STREAM, 0);
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    address.sin_port = htons(port);
    EXPECT_NE(::connect(probe, reinterpret_cast<sockaddr*>(&address), sizeof address), 0);
    ::close(probe);
}

TEST(TicketText, GoesThereAndBackAndWhatIsNoneIsRefused) {
    Ticket ticket;
    ticket.addresses = {"10.0.0.5", "192.168.1.7"};
    ticket.port = 40123;
    ticket.key.fill(0xAB);
    const auto back = Ticket::fromText(ticket.text());
    ASSERT_TRUE(back);
    EXPECT_EQ(back->addresses, ticket.addresses);
    EXPECT_EQ(back->port, ticket.port);
    EXPECT_EQ(back->key, ticket.key);
    const std::string good = ticket.text();
    for (const std::string& bad :
         {std::string(), std::string("plumbmark:"), good.substr(1), good.substr(0, good.size() - 1),
          good + "A", std::string("plumbmark:10.0.0.5:0:") + std::string(43, 'A'),
          std::string("plumbmark:10.0.0:5:") + std::string(43, 'A'),
          std::string("plumbmark::5:") + std::string(43, 'A'),
          std::string("plumbmark:10.0.0.5:99999:") + std::string(43, 'A')}) {
        EXPECT_FALSE(Ticket::fromText(bad)) << bad;
    }
}

namespace {

/// A camera's picture of a screen with the code: turned, tilted, unequally lit, out of focus, noisy.
struct View {
    double module = 6.0;  ///< px of the picture
    double degrees = 0.0; ///< turned
    double tilt = 0.0;    ///< how much narrower the far edge is than the near one, as a share
    double blur = 0.0;    ///< width of the blur, px
    int dark = 20, light = 235;
    double fall = 0.0; ///< light lost from left to right, as a share
};
std::vector<unsigned char> photo(const transfer::QrCode& code, const View& view, int width, int height) {
    constexpr double kPi = 3.14159265358979323846;
    const double c = std::cos(view.degrees * kPi / 180.0), s = std::sin(view.degrees * kPi / 180.0);
    const double half = code.width / 2.0;
    const auto screen = [&](double px, double py) {
        const double x = (px - width / 2.0) / view.module, y = (py - height / 2.0) / view.module;
        const double u = c * x + s * y, v = -s * x + c * y;
        const double narrower = 1.0 - view.tilt * (v / half + 1.0) / 2.0;
        const double mx = u / narrower + half, my = v / narrower + half;
        if (mx < -4 || my < -4 || mx >= code.width + 4 || my >= code.width + 4) {
            return 90.0; // what lies around the screen
        }
        const bool dark = code.at(static_cast<int>(std::floor(mx)), static_cast<int>(std::floor(my)));
        return static_cast<double>(dark ? view.dark : view.light);
    };
    std::vector<unsigned char> picture;
    std::mt19937 random(7);
    std::normal_distribution<double> noise(0.0, 3.0);
    const int taps = 2 + static_cast<int>(std::ceil(view.blur));
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            double sum = 0.0;
            for (int j = 0; j < taps; ++j) {
                for (int i = 0; i < taps; ++i) {
                    const double w = 1.0 + view.blur;
                    sum += screen(x + 0.5 + w * ((i + 0.5) / taps - 0.5),
                                  y + 0.5 + w * ((j + 0.5) / taps - 0.5));
                }
            }
            const double lit = sum / (taps * taps) * (1.0 - view.fall * x / width) + noise(random);
            picture.push_back(static_cast<unsigned char>(std::clamp(lit, 0.0, 255.0)));
        }
    }
    return picture;
}

} // namespace

TEST(Qr, TheCameraReadsTheTicketTurnedTiltedSmallAndBlurred) {
    Ticket ticket;
    ticket.addresses = {"192.168.1.7", "10.0.0.5"};
    ticket.port = 40123;
    for (std::size_t i = 0; i < ticket.key.size(); ++i) {
        ticket.key[i] = static_cast<std::uint8_t>(37 * i + 11);
    }
    const auto code = qrCode(ticket.text());
    ASSERT_TRUE(code);
    constexpr int kWidth = 480, kHeight = 400;
    const auto read = [&](const View& view) {
        const auto picture = photo(*code, view, kWidth, kHeight);
        return textInQrCode({picture.data(), kWidth, kHeight, kWidth}, kTicketBeginning);
    };
    for (const View& view : std::vector<View>{{.module = 7.0},
                                              {.module = 3.0},
                                              {.module = 5.0, .degrees = 17.0},
                                              {.module = 5.0, .degrees = 45.0},
                                              {.module = 6.0, .degrees = 180.0},
                                              {.module = 6.0, .degrees = -80.0, .blur = 2.0},
                                              {.module = 6.0, .tilt = 0.2},
                                              {.module = 6.0, .degrees = 8.0, .tilt = 0.15, .blur = 2.0},
                                              {.module = 6.0, .blur = 4.0},
                                              {.module = 6.0, .dark = 70, .light = 130},
                                              {.module = 6.0, .degrees = 5.0, .fall = 0.6}}) {
        EXPECT_EQ(read(view).value_or("nothing"), ticket.text())
            << view.module << " px, turned " << view.degrees << ", tilted " << view.tilt << ", blur "
            << view.blur;
    }
    // Another code in the picture is none of ours; no code is nothing; nor is half of one.
    const auto other = qrCode("https://example.org/");
    auto picture = photo(*other, {}, kWidth, kHeight);
    EXPECT_FALSE(textInQrCode({picture.data(), kWidth, kHeight, kWidth}, kTicketBeginning));
    EXPECT_EQ(textInQrCode({picture.data(), kWidth, kHeight, kWidth}), "https://example.org/");
    picture = photo(*code, {}, kWidth, kHeight);
    EXPECT_FALSE(textInQrCode({picture.data(), kWidth, kHeight / 2, kWidth}));
    std::fill(picture.begin(), picture.end(), std::uint8_t{128});
    EXPECT_FALSE(textInQrCode({picture.data(), kWidth, kHeight, kWidth}));
    EXPECT_FALSE(textInQrCode({}));
}

// Outside check: zbar reads the code.
TEST(Qr, AnotherReaderReadsTheTicket) {
    Ticket ticket;
    ticket.addresses = {"192.168.1.7"};
    ticket.port = 40123;
    ticket.key.fill(0x5C);
    const auto code = qrCode(ticket.text());
    ASSERT_TRUE(code);
    const int quiet = 4, module = 6, size = (code->width + 2 * quiet) * module;
    std::vector<unsigned char> picture(static_cast<std::size_t>(size * size), 255);
    for (int y = 0; y < size; ++y) {
        for (int x = 0; x < size; ++x) {
            if (code->at(x / module - quiet, y / module - quiet)) {
                picture[static_cast<std::size_t>(y * size + x)] = 0;
            }
        }
    }
    zbar::Image image(static_cast<unsigned>(size), static_cast<unsigned>(size), "Y800", picture.data(),
                      picture.size());
    zbar::ImageScanner scanner;
    scanner.set_config(zbar::ZBAR_NONE, zbar::ZBAR_CFG_ENABLE, 0);
    scanner.set_config(zbar::ZBAR_QRCODE, zbar::ZBAR_CFG_ENABLE, 1);
    ASSERT_EQ(scanner.scan(image), 1);
    EXPECT_EQ(image.symbol_begin()->get_data(), ticket.text());
    const auto lines = qrLines(*code);
    EXPECT_EQ(lines.size(), static_cast<std::size_t>((code->width + 2 * quiet + 1) / 2));
    EXPECT_FALSE(qrCode(std::string(10'000, 'x')));
}
