// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// Two swings at the same position: pictures, the way through both, and what differs.
FocusScope {
    id: page
    required property CompareModel compare
    readonly property bool wide: width > height && width >= Theme.mm(120)
    signal back()

    Keys.onPressed: (event) => {
        event.accepted = true
        switch (event.key) {
        case Qt.Key_Left:
        case Qt.Key_Comma: page.compare.step(-1); break
        case Qt.Key_Right:
        case Qt.Key_Period: page.compare.step(1); break
        case Qt.Key_PageUp: page.compare.step(-10); break
        case Qt.Key_PageDown: page.compare.step(10); break
        case Qt.Key_Home: page.compare.goTo(0); break
        case Qt.Key_End: page.compare.goTo(page.compare.frames - 1); break
        case Qt.Key_Space: page.compare.playing = !page.compare.playing; break
        case Qt.Key_Escape:
        case Qt.Key_Back: page.back(); break
        default: event.accepted = false
        }
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        PageHeader {
            Layout.fillWidth: true
            title: qsTr("Compare")
            subtitle: page.compare.matched ? qsTr("%1, same position by: %2").arg(page.compare.title).arg(page.compare.matchedByWords)
                                           : page.compare.title
            onBack: page.back()
            actions: [
                IconButton {
                    visible: !page.wide && (page.compare.canOverlay || page.compare.overlaid)
                    glyph: page.compare.overlaid ? "beside" : "over"
                    label: page.compare.overlaid ? qsTr("Side by side") : qsTr("Lay one over the other")
                    outlined: false
                    onClicked: page.compare.overlaid = !page.compare.overlaid
                },
                IconButton {
                    visible: !page.wide
                    glyph: "body"
                    label: stage.showMarks ? qsTr("Hide the marks") : qsTr("Show the marks")
                    outlined: false
                    strong: stage.showMarks
                    onClicked: stage.showMarks = !stage.showMarks
                }
            ]
        }
        GridLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            columns: page.wide ? 2 : 1
            rowSpacing: 0
            columnSpacing: 0
            LayoutMirroring.enabled: false // the hand's side, in every language
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            ColumnLayout {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredHeight: page.wide ? -1 : page.height * 0.62
                spacing: 0
                CompareStage {
                    id: stage
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    compare: page.compare
                    roomy: page.wide
                }
                MomentStrip {
                    Layout.fillWidth: true
                    Layout.topMargin: Theme.gap
                    swing: page.compare
                }
                CompareTransport {
                    Layout.fillWidth: true
                    Layout.topMargin: Theme.gap
                    Layout.bottomMargin: Theme.gap
                    compare: page.compare
                }
            }
            ComparePanel {
                Layout.fillHeight: true
                Layout.fillWidth: !page.wide
                Layout.preferredHeight: page.wide ? -1 : page.height * 0.38
                Layout.preferredWidth: page.wide ? Math.min(Theme.mm(115), Math.max(Theme.mm(70), page.width * 0.36)) : -1
                compare: page.compare
                edgeOnTop: !page.wide
            }
        }
    }
}
