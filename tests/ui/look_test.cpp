// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
//
// Colours, sizes and the geometry of the stage.
#include <QGuiApplication>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QTest>
#include <cmath>
#include <memory>

#include "controls/contrast.h"
#include "stage/stage_painter.h"
#include "stage/stage_view.h"

using namespace plumbmark;
using controls::contrastRatio;

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
