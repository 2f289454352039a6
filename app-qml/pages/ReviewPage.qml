// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// The spoken review: the coach talks while stepping, magnifying and drawing; what is kept plays back the same.
FocusScope {
    id: page
    required property ReviewModel review
    readonly property bool wide: width > height && width >= Theme.mm(120)
    readonly property bool busyWithFilm: review.doing !== ""
    signal back()

    Keys.onPressed: (event) => {
        event.accepted = true
        switch (event.key) {
        case Qt.Key_Left:
        case Qt.Key_Comma: page.review.step(-1); break
        case Qt.Key_Right:
        case Qt.Key_Period: page.review.step(1); break
        case Qt.Key_Space:
            if (page.review.doing === "replaying")
                page.review.replayPaused ? page.review.replay() : page.review.pauseReplay()
            else
                page.review.running ? page.review.freeze() : page.review.run(0.125)
            break
        case Qt.Key_Escape:
        case Qt.Key_Back: page.busyWithFilm ? page.review.stop() : page.back(); break
        default: event.accepted = false
        }
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        PageHeader {
            Layout.fillWidth: true
            title: qsTr("Review")
            subtitle: page.review.title
            onBack: page.busyWithFilm ? page.review.stop() : page.back()
        }
        GridLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            columns: page.wide ? 2 : 1
            rowSpacing: 0
            columnSpacing: 0
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            ColumnLayout {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredHeight: page.wide ? -1 : page.height * 0.58
                spacing: 0
                ReviewStage {
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    review: page.review
                }
                ReviewTransport {
                    Layout.fillWidth: true
                    Layout.topMargin: Theme.gap
                    Layout.bottomMargin: Theme.gap
                    review: page.review
                }
            }
            ReviewPanel {
                visible: page.wide || !page.busyWithFilm
                Layout.fillHeight: true
                Layout.fillWidth: !page.wide
                Layout.preferredHeight: page.wide ? -1 : page.height * 0.42
                Layout.preferredWidth: page.wide ? Math.min(Theme.mm(105), Math.max(Theme.mm(68), page.width * 0.34)) : -1
                review: page.review
            }
        }
    }
}
