// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "transfer/qr.h"

#include <memory>

#include <qrencode.h>

namespace plumbmark::transfer {

std::optional<QrCode> qrCode(std::string_view text) {
    const std::unique_ptr<QRcode, void (*)(QRcode*)> made(
        QRcode_encodeString8bit(std::string(text).c_str(), 0, QR_ECLEVEL_M), QRcode_free);
    if (made == nullptr) {
        return std::nullopt;
    }
    QrCode code;
    code.width = made->width;
    for (int i = 0; i < code.width * code.width; ++i) {
        code.dark.push_back((made->data[i] & 1) != 0);
    }
    return code;
}

std::vector<std::string> qrLines(const QrCode& code) {
    constexpr int kQuiet = 4;
    std::vector<std::string> lines;
    for (int y = -kQuiet; y < code.width + kQuiet; y += 2) {
        std::string line = "\x1b[30;107m"; // black on white
        for (int x = -kQuiet; x < code.width + kQuiet; ++x) {
            const bool upper = code.at(x, y), lower = code.at(x, y + 1);
            line += upper && lower ? "\u2588" : upper ? "\u2580" : lower ? "\u2584" : " ";
        }
        lines.push_back(line + "\x1b[0m");
    }
    return lines;
}

} // namespace plumbmark::transfer
