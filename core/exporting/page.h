// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <variant>
#include <vector>

#include "base/geometry.h"
#include "base/result.h"
#include "video/frame.h"

/// A page as a list of things to draw, without any toolkit. A painter (see Painter) turns it into a picture
/// or a PDF; shaping of text, fonts and reading direction are the painter's.
namespace plumbmark::exporting {

/// Millimetres on the page: x to the right, y down, origin at the page's top left corner.
using PagePoint = base::Vec2;
using PageBox = base::Box;

struct Ink {
    std::uint8_t red = 0, green = 0, blue = 0;
    friend bool operator==(Ink, Ink) = default;
};

enum class Weight { regular, bold };
enum class Align { start, centre, end }; ///< of the reading direction

struct TextStyle {
    double points = 9.0; ///< type size; 1 point = 1/72 inch
    Weight weight = Weight::regular;
    Align align = Align::start;
    Ink ink{0x1b, 0x22, 0x2a};
};

/// Plain text (never markup), wrapped at the box's width. What does not fit the box's height is set smaller,
/// down to 60 %, and then cut with "...".
struct Text {
    PageBox box;
    std::string text; ///< UTF-8
    TextStyle style;
};

/// A straight line. With an edge it is drawn twice, the edge wider below the ink, so that it reads on dark
/// and on light parts of a picture alike.
struct Line {
    PagePoint from, to;
    double width = 0.3;     ///< mm
    double edgeWidth = 0.0; ///< mm on each side; 0 = no edge
    Ink ink;
    Ink edge{255, 255, 255};
    bool dashed = false;
};

struct Rectangle {
    PageBox box;
    double cornerRadius = 0.0; ///< mm
    std::optional<Ink> fill;
    std::optional<Ink> outline;
    double outlineWidth = 0.25; ///< mm
};

/// Small signs that are told apart by shape alone, also in grey print.
enum class Sign {
    good,    ///< full disc with a tick
    watch,   ///< full triangle with a stroke
    work,    ///< full square on its corner with a bar
    unknown, ///< empty ring with a question mark's dot
    mark,    ///< cross-hair of a landmark in a picture
};
struct Shape {
    Sign sign = Sign::unknown;
    PagePoint centre;
    double size = 3.0; ///< mm across
};

struct Picture {
    PageBox box; ///< the whole picture is fitted to it exactly
    std::shared_ptr<const video::RgbImage> image;
};

using Item = std::variant<Rectangle, Picture, Line, Shape, Text>;

void moveDown(Item& item, double by); ///< mm

struct Page {
    double width = 297.0;    ///< mm
    double height = 210.0;   ///< mm
    std::vector<Item> items; ///< drawn in this order
    std::string title;       ///< for the file's own title
};

/// Several pages under each other as one, for a picture.
[[nodiscard]] Page stacked(std::vector<Page> pages);

/// Turns pages into files. Implemented under platform/; the core has none.
class Painter {
  public:
    virtual ~Painter() = default;
    /// Height in mm that the text needs at this width (mm); the layout asks before it places anything.
    [[nodiscard]] virtual double textHeight(const std::string& text, const TextStyle& style,
                                            double width) const = 0;
    /// One page as PNG; `dotsPerMm` 8 is about 200 dots an inch. Error (failure): "painter.too_large".
    [[nodiscard]] virtual base::Result<std::vector<std::byte>> png(const Page& page,
                                                                   double dotsPerMm) const = 0;
    /// The page stretched over a picture of exactly this size (px), for films. Error (failure):
    /// "painter.too_large".
    [[nodiscard]] virtual base::Result<video::RgbImage> raster(const Page& page, int width,
                                                               int height) const = 0;
    /// All pages as one PDF with selectable text.
    [[nodiscard]] virtual base::Result<std::vector<std::byte>> pdf(std::span<const Page> pages) const = 0;
};

} // namespace plumbmark::exporting
