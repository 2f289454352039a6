// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Colours, sizes and the geometry of the stage.
#include <QGuiApplication>
#include <QPainter>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QTest>
#include <algorithm>
#include <array>
#include <cmath>
#include <memory>

#include "controls/contrast.h"
#include "controls/status_shape.h"
#include "stage/stage_painter.h"
#include "stage/stage_view.h"

using namespace plumbmark;
using controls::contrastRatio;

namespace {

/// What one kind of eye makes of linear RGB.
struct Eye {
    const char* name;
    double m[3][3];
};

// Machado, Oliveira & Fernandes 2009, "A physiologically-based model for simulation of color vision
// deficiency", severity 1.0, for linear RGB; grey by the luminance weights of IEC 61966-2-1 (sRGB).
constexpr Eye kEyes[] = {
    {"usual eye", {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}},
    {"protanope",
     {{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}},
    {"deuteranope",
     {{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}},
    {"tritanope",
     {{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}},
    {"grey", {{0.2126, 0.7152, 0.0722}, {0.2126, 0.7152, 0.0722}, {0.2126, 0.7152, 0.0722}}}};
constexpr int kGrey = 4;

double toLinear(double c) {
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}
double fromLinear(double c) {
    c = std::clamp(c, 0.0, 1.0);
    return c <= 0.0031308 ? 12.92 * c : 1.055 * std::pow(c, 1 / 2.4) - 0.055;
}

QColor throughEye(const QColor& colour, const Eye& eye) {
    const double in[3] = {toLinear(colour.redF()), toLinear(colour.greenF()), toLinear(colour.blueF())};
    double out[3] = {0, 0, 0};
    for (int row = 0; row < 3; ++row) {
        for (int column = 0; column < 3; ++column) {
            out[row] += eye.m[row][column] * in[column];
        }
    }
    return QColor::fromRgbF(float(fromLinear(out[0])), float(fromLinear(out[1])), float(fromLinear(out[2])));
}

/// CIE 1976 colour difference; sRGB to XYZ after IEC 61966-2-1, white D65.
double labDistance(const QColor& a, const QColor& b) {
    const auto lab = [](const QColor& colour) {
        const double r = toLinear(colour.redF()), g = toLinear(colour.greenF()),
                     bl = toLinear(colour.blueF());
        const auto f = [](double t) {
            return t > 216.0 / 24389 ? std::cbrt(t) : (24389.0 / 27 * t + 16) / 116;
        };
        const double x = f((0.4124 * r + 0.3576 * g + 0.1805 * bl) / 0.9505);
        const double y = f(0.2126 * r + 0.7152 * g + 0.0722 * bl);
        const double z = f((0.0193 * r + 0.1192 * g + 0.9505 * bl) / 1.089);
        return std::array{116 * y - 16, 500 * (x - y), 200 * (y - z)};
    };
    const auto p = lab(a), q = lab(b);
    return std::hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
}

} // namespace

class LookTest : public QObject {
    Q_OBJECT

  private slots:
    void initTestCase() {
        engine_.addImportPath(QStringLiteral("qrc:/qt/qml"));
        QQmlComponent user(&engine_);
        user.setData("import QtQuick\nimport Plumbmark.Controls\nQtObject { property QtObject theme: Theme }",
                     {});
        user_.reset(user.create());
        QVERIFY2(user_ != nullptr, qPrintable(user.errorString()));
        theme_ = user_->property("theme").value<QObject*>();
        QVERIFY(theme_ != nullptr);
    }

    // Web Content Accessibility Guidelines 2.x, "contrast ratio" and "relative luminance"; the values are
    // computed from that formula and known from the contrast checkers in use.
    void contrastFormula_data() {
        QTest::addColumn<QColor>("a");
        QTest::addColumn<QColor>("b");
        QTest::addColumn<double>("ratio");
        QTest::newRow("black white") << QColor("#000000") << QColor("#ffffff") << 21.0;
        QTest::newRow("#777777 white") << QColor("#777777") << QColor("#ffffff") << 4.478;
        QTest::newRow("#767676 white") << QColor("#767676") << QColor("#ffffff") << 4.542;
        QTest::newRow("#949494 white") << QColor("#949494") << QColor("#ffffff") << 3.033;
        QTest::newRow("#595959 white") << QColor("#595959") << QColor("#ffffff") << 7.005;
        QTest::newRow("red black") << QColor("#ff0000") << QColor("#000000") << 5.252;
        QTest::newRow("blue white") << QColor("#0000ff") << QColor("#ffffff") << 8.592;
        QTest::newRow("yellow black") << QColor("#ffff00") << QColor("#000000") << 19.556;
        QTest::newRow("#D55E00 black") << QColor("#d55e00") << QColor("#000000") << 5.430;
        QTest::newRow("#56B4E9 black") << QColor("#56b4e9") << QColor("#000000") << 9.101;
        QTest::newRow("#F0E442 black") << QColor("#f0e442") << QColor("#000000") << 15.881;
    }
    void contrastFormula() {
        QFETCH(QColor, a);
        QFETCH(QColor, b);
        QFETCH(double, ratio);
        QVERIFY2(std::abs(contrastRatio(a, b) - ratio) < 0.0006,
                 qPrintable(QString::number(contrastRatio(a, b))));
        QCOMPARE(contrastRatio(a, b), contrastRatio(b, a));
    }

    // Text at least 7:1, in the sun theme 12:1 and 1.55:1 left over at 40,000 lx; signs and edges at
    // least 4.5:1 and 1.4:1 (own goals, above the guidelines' 4.5:1 and 3:1).
    void themeColours_data() {
        QTest::addColumn<bool>("dark");
        QTest::newRow("sun") << false;
        QTest::newRow("dark") << true;
    }
    void themeColours() {
        QFETCH(bool, dark);
        theme_->setProperty("dark", dark);
        const auto c = [this](const char* name) {
            const QColor colour = theme_->property(name).value<QColor>();
            if (!colour.isValid()) {
                qFatal("no colour %s", name);
            }
            return colour;
        };
        const std::pair<const char*, const char*> texts[] = {
            {"ink", "paper"},   {"ink", "card"},         {"quiet", "paper"},
            {"quiet", "card"},  {"accentInk", "accent"}, {"ink", "caution"},
            {"ink", "pressed"}, {"quiet", "pressed"},    {"danger", "paper"}};
        for (const auto& [text, ground] : texts) {
            const double ratio = contrastRatio(c(text), c(ground));
            QVERIFY2(ratio >= (dark ? 7.0 : 12.0),
                     qPrintable(QString("%1 on %2: %3").arg(text, ground).arg(ratio)));
            if (!dark) {
                QVERIFY2(controls::contrastInDaylight(c(text), c(ground), 40000) >= 1.55, text);
            }
        }
        const std::pair<const char*, const char*> signs[] = {
            {"edge", "paper"},          {"edge", "card"},           {"accent", "paper"},
            {"cautionEdge", "caution"}, {"signGood", "statusGood"}, {"signWatch", "statusWatch"},
            {"signWork", "statusWork"}};
        for (const auto& [sign, ground] : signs) {
            const double ratio = contrastRatio(c(sign), c(ground));
            QVERIFY2(ratio >= 4.5, qPrintable(QString("%1 on %2: %3").arg(sign, ground).arg(ratio)));
            QVERIFY2(dark || controls::contrastInDaylight(c(sign), c(ground), 40000) >= 1.4, sign);
        }
        QVERIFY(contrastRatio(theme_->property("plateInk").value<QColor>(), QColor(Qt::black)) >= 12);
    }

    // The four statuses are told apart by everybody: in grey and by the three kinds of dichromat, each as a
    // picture (outline, fill and sign) and, of those that are filled, by colour alone where there is any.
    void statusesAreToldApart_data() {
        QTest::addColumn<bool>("dark");
        QTest::addColumn<int>("eye");
        for (const bool dark : {false, true}) {
            for (int eye = 0; eye < static_cast<int>(std::size(kEyes)); ++eye) {
                QTest::addRow("%s, %s", dark ? "dark" : "sun", kEyes[eye].name) << dark << eye;
            }
        }
    }
    void statusesAreToldApart() {
        QFETCH(bool, dark);
        QFETCH(int, eye);
        theme_->setProperty("dark", dark);
        const auto c = [this](const char* name) { return theme_->property(name).value<QColor>(); };
        const QColor fills[] = {c("statusGood"), c("statusWatch"), c("statusWork"), c("card")};
        const QColor signs[] = {c("signGood"), c("signWatch"), c("signWork"), c("ink")};
        std::vector<QImage> seen;
        for (int level = 0; level < 4; ++level) {
            controls::StatusShape shape;
            shape.setSize({48, 48});
            shape.setLevel(level);
            shape.setFill(fills[level]);
            shape.setSign(signs[level]);
            shape.setInk(c("ink"));
            QImage picture(48, 48, QImage::Format_RGB32);
            picture.fill(c("paper"));
            QPainter painter(&picture);
            painter.setRenderHint(QPainter::Antialiasing);
            shape.paint(&painter);
            for (int y = 0; y < 48; ++y) {
                for (int x = 0; x < 48; ++x) {
                    picture.setPixelColor(x, y, throughEye(picture.pixelColor(x, y), kEyes[eye]));
                }
            }
            seen.push_back(picture);
        }
        for (std::size_t a = 0; a < 4; ++a) {
            for (std::size_t b = a + 1; b < 4; ++b) {
                // Own goal: a fifth of the picture differs clearly (20 CIELAB units; about 2 are just
                // noticeable, Mokrzycki & Tatol 2011).
                int clear = 0;
                for (int y = 0; y < 48; ++y) {
                    for (int x = 0; x < 48; ++x) {
                        clear +=
                            labDistance(seen[a].pixelColor(x, y), seen[b].pixelColor(x, y)) >= 20 ? 1 : 0;
                    }
                }
                QVERIFY2(clear >= 48 * 48 / 5, qPrintable(QString("%1 and %2: %3").arg(a).arg(b).arg(clear)));
                if (b < 3 && eye != kGrey) {
                    const double apart =
                        labDistance(throughEye(fills[a], kEyes[eye]), throughEye(fills[b], kEyes[eye]));
                    QVERIFY2(apart >= 20,
                             qPrintable(QString("fills %1 and %2: %3").arg(a).arg(b).arg(apart)));
                }
            }
        }
    }
    // What the simulations do to colours whose look is known: a protanope takes red for a dark yellow, a
    // deuteranope and a protanope cannot tell the pair red and green of like lightness by hue, greys stay
    // greys.
    void simulatedEyesAreWhatTheyShouldBe() {
        for (const Eye& eye : kEyes) {
            const QColor grey = throughEye(QColor(128, 128, 128), eye);
            QVERIFY2(std::abs(grey.red() - 128) <= 2 && std::abs(grey.green() - 128) <= 2 &&
                         std::abs(grey.blue() - 128) <= 2,
                     eye.name);
        }
        const auto hueGap = [](const QColor& c) { return std::abs(c.red() - c.green()); };
        QVERIFY(hueGap(throughEye(QColor(0, 160, 0), kEyes[2])) < 40);
        QVERIFY(controls::relativeLuminance(throughEye(Qt::red, kEyes[1])) <
                0.7 * controls::relativeLuminance(Qt::red));
    }

    void sizesAreMillimetres_data() {
        QTest::addColumn<double>("pixelsPerMm");
        for (const double density : {3.2, 3.78, 5.2, 6.3, 8.0}) {
            QTest::newRow(qPrintable(QString::number(density))) << density;
        }
    }
    void sizesAreMillimetres() {
        QFETCH(double, pixelsPerMm);
        theme_->setProperty("pixelsPerMm", pixelsPerMm);
        QVERIFY(theme_->property("target").toDouble() >= 9.6 * pixelsPerMm);
        QVERIFY(theme_->property("gap").toDouble() >= 2.0 * pixelsPerMm);
        QVERIFY(theme_->property("bodySize").toDouble() >= 3.2 * pixelsPerMm - 0.5);
    }

    void viewMapsBothWays() {
        stage::StageView view;
        view.setItemSize({360, 300});
        view.setPictureSize({1080, 1920});
        QCOMPARE(view.pictureRect().height(), 300.0);
        view.zoomAbout({100, 120}, 3.0);
        for (const base::Vec2 p : {base::Vec2{0.5, 0.5}, base::Vec2{540, 960}, base::Vec2{1079.5, 1919.5}}) {
            const base::Vec2 back = view.toPicture(view.toItem(p));
            QVERIFY(std::abs(back.x - p.x) < 1e-9 && std::abs(back.y - p.y) < 1e-9);
        }
    }

    void pinchKeepsThePointUnderTheFingers() {
        stage::StageView view;
        view.setItemSize({800, 600});
        view.setPictureSize({1600, 1200});
        view.zoomAbout({400, 300}, 2.0);
        const base::Vec2 under = view.toPicture({400, 300});
        view.pinch({350, 300}, {450, 300}, {330, 310}, {470, 310});
        const QPointF now = view.toItem(under);
        QVERIFY(std::abs(now.x() - 400) < 1e-6 && std::abs(now.y() - 310) < 1e-6);
        QVERIFY(std::abs(view.zoom() - 2.8) < 1e-9);
    }

    void handlesAreCaughtWithinTheirReachOnly() {
        stage::StageView view;
        view.setItemSize({1000, 1000});
        view.setPictureSize({1000, 1000});
        stage::StageContent content;
        content.frame = 0;
        content.marks[marks::Landmark::lead_hip] = marks::Mark{{500, 500}, 2, base::Origin::network};
        content.marks[marks::Landmark::trail_hip] = marks::Mark{{440, 500}, 2, base::Origin::network};
        QCOMPARE(stage::handleAt(content, view, {520, 500}, 30), std::optional(marks::Landmark::lead_hip));
        QCOMPARE(stage::handleAt(content, view, {462, 500}, 30), std::optional(marks::Landmark::trail_hip));
        QVERIFY(!stage::handleAt(content, view, {500, 540}, 30));
        content.selected = marks::Landmark::lead_hip; // the mark in hand reaches twice as far
        QCOMPARE(stage::handleAt(content, view, {500, 540}, 30), std::optional(marks::Landmark::lead_hip));
        content.marks[marks::Landmark::nose] = marks::Mark{{500, 100}, 2, base::Origin::network};
        QVERIFY(!stage::handleAt(content, view, {500, 100}, 30)); // fine marks only when magnified
    }

  private:
    QQmlEngine engine_;
    std::unique_ptr<QObject> user_;
    QObject* theme_ = nullptr;
};

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("DISPLAY") && qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QGuiApplication application(argc, argv);
    LookTest test;
    return QTest::qExec(&test, argc, argv);
}

#include "look_test.moc"
