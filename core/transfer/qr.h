// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace plumbmark::transfer {

/// A QR code (ISO/IEC 18004) as square modules, row by row, without the quiet zone; true is dark.
struct QrCode {
    int width = 0;
    std::vector<bool> dark; ///< width * width
    [[nodiscard]] bool at(int x, int y) const {
        return x >= 0 && y >= 0 && x < width && y < width && dark[static_cast<std::size_t>(y * width + x)];
    }
};
/// Nothing when the text is too long for a code.
[[nodiscard]] std::optional<QrCode> qrCode(std::string_view text);

/// Lines for a terminal that shows UTF-8: two modules a character, dark on light whatever the terminal's
/// colours, with the quiet zone of four modules.
[[nodiscard]] std::vector<std::string> qrLines(const QrCode& code);

/// Grey values of a picture, borrowed for a call.
struct GreyPicture {
    const std::uint8_t* data = nullptr;
    int width = 0, height = 0;
    std::ptrdiff_t stride = 0; ///< bytes from row to row
};
/// The text of the QR code in a picture, turned, tilted or small as it may be; nothing where none can be
/// read. Where there are several, the first found that begins with `beginning`. Takes some 10 to 100 ms for
/// 1280 x 720: not for the camera's own thread.
[[nodiscard]] std::optional<std::string> textInQrCode(const GreyPicture& picture,
                                                      std::string_view beginning = {});

} // namespace plumbmark::transfer
