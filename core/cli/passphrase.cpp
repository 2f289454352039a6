// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "cli/passphrase.h"

#include <cstdlib>

#include <fcntl.h>
#include <termios.h>
#include <unistd.h>

namespace plumbmark::cli {
namespace {

/// From the terminal itself, so that pipes stay free; what is typed is not shown.
std::string ask() {
    const int terminal = ::open("/dev/tty", O_RDWR | O_CLOEXEC);
    if (terminal < 0) {
        return {};
    }
    termios before{};
    const bool hide = ::tcgetattr(terminal, &before) == 0;
    if (hide) {
        termios hidden = before;
        hidden.c_lflag &= ~static_cast<tcflag_t>(ECHO);
        ::tcsetattr(terminal, TCSAFLUSH, &hidden);
    }
    constexpr std::string_view question = "Passphrase: ";
    (void)!::write(terminal, question.data(), question.size());
    std::string typed;
    for (char c = 0; typed.size() < 1000 && ::read(terminal, &c, 1) == 1 && c != '\n' && c != '\r';) {
        typed += c;
    }
    if (hide) {
        ::tcsetattr(terminal, TCSAFLUSH, &before);
    }
    (void)!::write(terminal, "\n", 1);
    ::close(terminal);
    return typed;
}

} // namespace

base::Result<std::string> readPassphrase(const Arguments& args, bool mayAsk) {
    if (const auto file = args.value("--passphrase-file")) {
        auto text = readText(*file, 4096);
        if (!text) {
            return text.error();
        }
        text->resize(std::min(text->size(), text->find_first_of("\r\n")));
        if (text->empty()) {
            return base::inputError("seal.passphrase_short",
                                    "The file for the passphrase is empty; write the "
                                    "passphrase into its first line.");
        }
        return *text;
    }
    if (const char* told = std::getenv("PLUMBMARK_PASSPHRASE"); told != nullptr && *told != '\0') {
        return std::string(told);
    }
    return mayAsk ? ask() : std::string();
}

} // namespace plumbmark::cli
