// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "transfer/qr.h"

#include <memory>

// The name of the text's type in this release and all that follow.
#define ZX_USE_UTF8 1
#include <ReadBarcode.h>
#include <qrencode.h>

#include "base/guarded.h"

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

namespace {

base::Result<std::optional<std::string>> textIn(const GreyPicture& picture, std::string_view beginning) {
    const ZXing::ImageView view(picture.data, picture.width, picture.height, ZXing::ImageFormat::Lum,
                                static_cast<int>(picture.stride));
    const auto hints = ZXing::DecodeHints().setFormats(ZXing::BarcodeFormat::QRCode).setTryHarder(true);
    for (const ZXing::Result& found : ZXing::ReadBarcodes(view, hints)) {
        if (found.isValid() && found.text().starts_with(beginning)) {
            return std::optional(found.text());
        }
    }
    return std::optional<std::string>();
}

} // namespace

std::optional<std::string> textInQrCode(const GreyPicture& picture, std::string_view beginning) {
    if (picture.data == nullptr || picture.width < 21 ||
        picture.height < 21) { // modules of the smallest code
        return std::nullopt;
    }
    const auto text = base::guarded([&] { return textIn(picture, beginning); });
    return text ? *text : std::nullopt;
}

} // namespace plumbmark::transfer
