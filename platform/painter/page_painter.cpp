// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
#include "painter/page_painter.h"

#include <algorithm>
#include <cmath>

#include <QBuffer>
#include <QFont>
#include <QGuiApplication>
#include <QImage>
#include <QPageSize>
#include <QPainter>
#include <QPainterPath>
#include <QPdfWriter>
#include <QTextLayout>

namespace plumbmark::platform {
namespace {
using namespace plumbmark::exporting;

/// Everything is laid out in hundredths of a millimetre, whatever it is drawn on: the same lines break at the
/// same words in the PNG and in the PDF.
constexpr double kUnitsPerMm = 100.0;
constexpr double kMmPerPoint = 25.4 / 72.0;
constexpr double kSmallest = 0.6; ///< share of its size down to which text is set smaller to fit
constexpr double kMostDots = 120e6;
constexpr int kMostSide = 30000;

void ensureApplication() {
    if (QCoreApplication::instance() != nullptr) {
        return;
    }
    // Qt keeps references to both for as long as it lives.
    static int argc = 3;
    static char name[] = "plumbmark";
    static char option[] = "-platform";
    static char value[] = "offscreen";
    static char* argv[] = {name, option, value, nullptr};
    // Qt talks about the desktop session (no runtime folder, ...), which means nothing to someone who asked
    // for a file.
    const auto usual = qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
    new QGuiApplication(argc, argv); // never deleted: Qt must outlive whatever still holds fonts at exit
    qInstallMessageHandler(usual);
}

QColor colour(Ink ink) {
    return {ink.red, ink.green, ink.blue};
}

/// What people typed, made fit for one block of text: no control characters, and none of the marks that
/// reorder text beyond what its own letters ask for.
QString harmless(const std::string& utf8) {
    const QString text = QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
    QString safe;
    safe.reserve(text.size());
    for (const QChar c : text) {
        const char16_t u = c.unicode();
        const bool reorders = (u >= 0x202a && u <= 0x202e) || (u >= 0x2066 && u <= 0x2069);
        if (u == '\n') {
            safe += QChar(QChar::LineSeparator);
        } else if (u == '\t') {
            safe += QLatin1Char(' ');
        } else if (u >= 0x20 && u != 0x7f && !(u >= 0x80 && u < 0xa0) && !reorders && u != 0xfeff) {
            safe += c;
        }
    }
    return safe;
}

QFont fontFor(const TextStyle& style, double scale) {
    QFont font;
    font.setFamilies({QStringLiteral("Noto Sans"), QStringLiteral("DejaVu Sans")});
    font.setStyleHint(QFont::SansSerif);
    font.setPixelSize(
        std::max(1, static_cast<int>(std::lround(style.points * kMmPerPoint * kUnitsPerMm * scale))));
    font.setWeight(style.weight == Weight::bold ? QFont::Bold : QFont::Normal);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setKerning(true);
    // Any spacing switches ligatures off, so that "off" and "first" can be found and copied in a PDF.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.1);
    return font;
}

/// One block of wrapped text. Units: hundredths of a millimetre.
class Block {
  public:
    Block(const QString& text, const TextStyle& style, double width, double scale)
        : layout_(text, fontFor(style, scale)) {
        QTextOption option;
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        const bool rightToLeft = text.isRightToLeft();
        option.setTextDirection(rightToLeft ? Qt::RightToLeft : Qt::LeftToRight);
        const bool atRight = (style.align == Align::end) != rightToLeft;
        option.setAlignment(Qt::AlignAbsolute | (style.align == Align::centre ? Qt::AlignHCenter
                                                 : atRight                    ? Qt::AlignRight
                                                                              : Qt::AlignLeft));
        option.setUseDesignMetrics(true);
        layout_.setTextOption(option);
        layout_.setCacheEnabled(true);
        layout_.beginLayout();
        for (QTextLine line = layout_.createLine(); line.isValid(); line = layout_.createLine()) {
            line.setLineWidth(width);
            line.setPosition(QPointF(0, height_));
            height_ += line.height();
            if (layout_.lineCount() > 2000) {
                break;
            }
        }
        layout_.endLayout();
    }
    [[nodiscard]] double height() const { return height_; }
    [[nodiscard]] QTextLayout& layout() { return layout_; }
    [[nodiscard]] int linesWithin(double height) const {
        int lines = 0;
        while (lines < layout_.lineCount() && layout_.lineAt(lines).rect().bottom() <= height + 1.0) {
            ++lines;
        }
        return lines;
    }

  private:
    QTextLayout layout_;
    double height_ = 0.0;
};

QRectF units(const PageBox& box) {
    return {box.x * kUnitsPerMm, box.y * kUnitsPerMm, box.width * kUnitsPerMm, box.height * kUnitsPerMm};
}
QPointF units(PagePoint p) {
    return {p.x * kUnitsPerMm, p.y * kUnitsPerMm};
}

/// Draws items on a painter whose unit is a hundredth of a millimetre.
class Drawing {
  public:
    explicit Drawing(QPainter& painter) : painter_(painter) {
        painter_.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing |
                                QPainter::SmoothPixmapTransform);
    }

    void operator()(const Rectangle& item) {
        painter_.setBrush(item.fill ? QBrush(colour(*item.fill)) : QBrush(Qt::NoBrush));
        painter_.setPen(item.outline ? QPen(colour(*item.outline), item.outlineWidth * kUnitsPerMm,
                                            Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin)
                                     : QPen(Qt::NoPen));
        const double radius = item.cornerRadius * kUnitsPerMm;
        painter_.drawRoundedRect(units(item.box), radius, radius);
    }

    void operator()(const Picture& item) {
        if (!item.image || item.image->width <= 0 || item.image->height <= 0) {
            return;
        }
        const auto& rgb = *item.image;
        const std::size_t needed =
            std::size_t{3} * static_cast<std::size_t>(rgb.width) * static_cast<std::size_t>(rgb.height);
        if (rgb.pixels.size() < needed) {
            return;
        }
        QImage image(rgb.pixels.data(), rgb.width, rgb.height, qsizetype{3} * rgb.width,
                     QImage::Format_RGB888);
        const QRectF target = units(item.box);
        // Smooth drawing mixes four pixels only; a picture that gets much smaller is made smaller properly
        // first.
        const QRectF onDevice = painter_.combinedTransform().mapRect(target);
        const QSize dots(std::max(1, static_cast<int>(std::ceil(onDevice.width()))),
                         std::max(1, static_cast<int>(std::ceil(onDevice.height()))));
        if (image.width() > dots.width() * 3 / 2) {
            image = image.scaled(dots, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
        }
        painter_.drawImage(target, image);
    }

    void operator()(const Line& item) {
        const auto draw = [&](Ink ink, double width) {
            QPen pen(colour(ink), width * kUnitsPerMm, Qt::SolidLine,
                     item.dashed ? Qt::FlatCap : Qt::RoundCap);
            if (item.dashed) { // lengths in pen widths; edge and ink break at the same places
                const double mm = item.width / width;
                pen.setDashPattern({5.0 * mm, 3.0 * mm});
            }
            painter_.setPen(pen);
            painter_.drawLine(units(item.from), units(item.to));
        };
        if (item.edgeWidth > 0.0) {
            draw(item.edge, item.width + 2.0 * item.edgeWidth);
        }
        draw(item.ink, item.width);
    }

    void operator()(const Shape& item) {
        painter_.save();
        painter_.translate(units(item.centre));
        const double scale = item.size * kUnitsPerMm / 24.0; // signs are drawn on a 24 x 24 grid
        painter_.scale(scale, scale);
        painter_.translate(-12, -12);
        drawSign(item.sign);
        painter_.restore();
    }

    void operator()(const Text& item) {
        const QString text = harmless(item.text);
        const QRectF box = units(item.box);
        if (text.isEmpty() || box.width() <= 0 || box.height() <= 0) {
            return;
        }
        painter_.setPen(colour(item.style.ink));
        double scale = 1.0;
        for (; scale > kSmallest; scale -= 0.05) {
            Block block(text, item.style, box.width(), scale);
            if (block.height() <= box.height() + 1.0) {
                block.layout().draw(&painter_, box.topLeft());
                return;
            }
        }
        Block block(text, item.style, box.width(), kSmallest);
        const int lines = std::max(1, block.linesWithin(box.height()));
        QString cut = text;
        if (lines < block.layout().lineCount()) {
            const QTextLine last = block.layout().lineAt(lines - 1);
            const QString line = text.mid(last.textStart(), last.textLength()).trimmed();
            const QFontMetricsF metrics(fontFor(item.style, kSmallest));
            cut = text.left(last.textStart()) +
                  metrics.elidedText(line + QStringLiteral(" \u2026"), Qt::ElideRight, box.width());
        }
        Block shorter(cut, item.style, box.width(), kSmallest);
        shorter.layout().draw(&painter_, box.topLeft());
    }

  private:
    void drawSign(Sign sign) {
        const QColor ink(0x10, 0x18, 0x1e);
        const QPen outline(ink, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
        const QPen mark(ink, 3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
        QPainterPath path;
        // Fills from the Okabe-Ito set, which the three dichromacies tell apart (Okabe and Ito, "Color
        // Universal Design", 2008); outline and inner stroke tell them apart without any colour.
        switch (sign) {
        case Sign::good:
            path.addEllipse(QPointF(12, 12), 10.5, 10.5);
            painter_.fillPath(path, QColor(0x56, 0xb4, 0xe9));
            painter_.strokePath(path, outline);
            painter_.setPen(mark);
            painter_.setBrush(Qt::NoBrush);
            painter_.drawPolyline(QPolygonF({{6.8, 12.4}, {10.6, 16.2}, {17.2, 8.2}}));
            break;
        case Sign::watch:
            path.addPolygon(QPolygonF({{12, 1.8}, {22.8, 21.6}, {1.2, 21.6}}));
            path.closeSubpath();
            painter_.fillPath(path, QColor(0xf0, 0xe4, 0x42));
            painter_.strokePath(path, outline);
            painter_.setPen(mark);
            painter_.drawLine(QPointF(12, 9), QPointF(12, 14));
            painter_.drawPoint(QPointF(12, 18.2));
            break;
        case Sign::work:
            path.addPolygon(QPolygonF({{12, 0.9}, {23.1, 12}, {12, 23.1}, {0.9, 12}}));
            path.closeSubpath();
            painter_.fillPath(path, QColor(0xd5, 0x5e, 0x00));
            painter_.strokePath(path, outline);
            painter_.setPen(mark);
            painter_.drawLine(QPointF(8.6, 8.6), QPointF(15.4, 15.4));
            painter_.drawLine(QPointF(15.4, 8.6), QPointF(8.6, 15.4));
            break;
        case Sign::unknown: {
            path.addEllipse(QPointF(12, 12), 10.5, 10.5);
            painter_.fillPath(path, Qt::white);
            QPen dashed = outline;
            dashed.setCapStyle(Qt::FlatCap);
            dashed.setDashPattern({2.1, 1.2});
            painter_.strokePath(path, dashed);
            QPainterPath question;
            question.moveTo(8.8, 9.2);
            question.cubicTo(QPointF(8.8, 4.6), QPointF(15.6, 4.9), QPointF(15.2, 9.2));
            question.cubicTo(QPointF(15, 11.6), QPointF(12, 11.4), QPointF(12, 14.2));
            painter_.strokePath(question, QPen(ink, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
            painter_.setPen(QPen(ink, 2.8, Qt::SolidLine, Qt::RoundCap));
            painter_.drawPoint(QPointF(12, 18.2));
            break;
        }
        case Sign::mark:
            for (const auto& [pen, width] : {std::pair{QColor(Qt::black), 7.0}, {QColor(Qt::white), 3.0}}) {
                painter_.setPen(QPen(pen, width, Qt::SolidLine, Qt::FlatCap));
                painter_.drawLine(QPointF(12, 0), QPointF(12, 24));
                painter_.drawLine(QPointF(0, 12), QPointF(24, 12));
            }
            break;
        }
    }

    QPainter& painter_;
};

void drawPage(QPainter& painter, const Page& page) {
    Drawing drawing(painter);
    for (const Item& item : page.items) {
        std::visit(drawing, item);
    }
}

std::vector<std::byte> bytesOf(const QByteArray& array) {
    const auto* data = reinterpret_cast<const std::byte*>(array.constData());
    return {data, data + array.size()};
}

bool sane(const Page& page) {
    return std::isfinite(page.width) && std::isfinite(page.height) && page.width >= 1.0 &&
           page.height >= 1.0 && page.width <= 5000.0 && page.height <= 5000.0;
}

base::Error tooLarge() {
    return base::failure("painter.too_large", "The page is too large to be drawn; leave something out.");
}

} // namespace

double PagePainter::textHeight(const std::string& text, const TextStyle& style, double width) const {
    ensureApplication();
    const QString safe = harmless(text);
    return safe.isEmpty() || width <= 0.0
               ? 0.0
               : Block(safe, style, width * kUnitsPerMm, 1.0).height() / kUnitsPerMm;
}

base::Result<std::vector<std::byte>> PagePainter::png(const Page& page, double dotsPerMm) const {
    ensureApplication();
    const double width = std::round(page.width * dotsPerMm);
    const double height = std::round(page.height * dotsPerMm);
    if (!sane(page) || !(dotsPerMm > 0.0) || width > kMostSide || height > kMostSide ||
        width * height > kMostDots) {
        return tooLarge();
    }
    QImage image(static_cast<int>(width), static_cast<int>(height), QImage::Format_RGB32);
    if (image.isNull()) {
        return tooLarge();
    }
    image.fill(Qt::white);
    image.setDotsPerMeterX(static_cast<int>(std::lround(dotsPerMm * 1000.0)));
    image.setDotsPerMeterY(static_cast<int>(std::lround(dotsPerMm * 1000.0)));
    {
        QPainter painter(&image);
        painter.scale(dotsPerMm / kUnitsPerMm, dotsPerMm / kUnitsPerMm);
        drawPage(painter, page);
    }
    QByteArray array;
    QBuffer buffer(&array);
    if (!buffer.open(QIODevice::WriteOnly) ||
        !image.convertToFormat(QImage::Format_RGB888).save(&buffer, "PNG")) {
        return base::failure("painter.failed",
                             "The picture could not be made; there may not be enough memory.");
    }
    return bytesOf(array);
}

base::Result<video::RgbImage> PagePainter::raster(const Page& page, int width, int height) const {
    ensureApplication();
    if (!sane(page) || width < 1 || height < 1 || width > kMostSide || height > kMostSide ||
        static_cast<double>(width) * height > kMostDots) {
        return tooLarge();
    }
    QImage image(width, height, QImage::Format_RGB32);
    if (image.isNull()) {
        return tooLarge();
    }
    image.fill(Qt::white);
    {
        QPainter painter(&image);
        painter.scale(width / (page.width * kUnitsPerMm), height / (page.height * kUnitsPerMm));
        drawPage(painter, page);
    }
    video::RgbImage picture;
    picture.width = width;
    picture.height = height;
    picture.pixels.resize(std::size_t{3} * static_cast<std::size_t>(width) *
                          static_cast<std::size_t>(height));
    std::uint8_t* to = picture.pixels.data();
    for (int y = 0; y < height; ++y) {
        const auto* from = reinterpret_cast<const QRgb*>(image.constScanLine(y));
        for (int x = 0; x < width; ++x, to += 3) {
            to[0] = static_cast<std::uint8_t>(qRed(from[x]));
            to[1] = static_cast<std::uint8_t>(qGreen(from[x]));
            to[2] = static_cast<std::uint8_t>(qBlue(from[x]));
        }
    }
    return picture;
}

base::Result<std::vector<std::byte>> PagePainter::pdf(std::span<const Page> pages) const {
    ensureApplication();
    if (pages.empty() || !std::all_of(pages.begin(), pages.end(), sane)) {
        return tooLarge();
    }
    QByteArray array;
    QBuffer buffer(&array);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(static_cast<int>(std::lround(kUnitsPerMm * 25.4)));
        writer.setTitle(harmless(pages.front().title));
        writer.setCreator(QStringLiteral("Plumbmark"));
        const auto setSize = [&writer](const Page& page) {
            writer.setPageSize(QPageSize(QSizeF(page.width, page.height), QPageSize::Millimeter, QString(),
                                         QPageSize::ExactMatch));
            writer.setPageMargins(QMarginsF());
        };
        setSize(pages.front());
        QPainter painter(&writer);
        if (!painter.isActive()) {
            return base::failure("painter.failed",
                                 "The PDF could not be made; there may not be enough memory.");
        }
        for (std::size_t i = 0; i < pages.size(); ++i) {
            if (i > 0) {
                setSize(pages[i]);
                writer.newPage();
            }
            drawPage(painter, pages[i]);
        }
    }
    return bytesOf(array);
}

} // namespace plumbmark::platform
