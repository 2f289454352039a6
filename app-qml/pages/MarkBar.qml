// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// The mark in hand: what it is, where, who says so; and everything a finger does to it, by taps.
Rectangle {
    id: bar
    required property SwingModel swing
    property bool fine: false
    readonly property real stepBy: fine ? 0.25 : 1
    color: Theme.paper
    implicitHeight: column.implicitHeight + Theme.gap

    ColumnLayout {
        id: column
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.topMargin: Theme.gap
        spacing: Theme.gap
        RowLayout {
            Layout.fillWidth: true
            Layout.leftMargin: Theme.gap
            Layout.rightMargin: Theme.gap
            spacing: Theme.gap
            ColumnLayout {
                Layout.fillWidth: true
                spacing: 0
                BodyText {
                    Layout.fillWidth: true
                    text: bar.swing.selectedName
                    font.bold: true
                }
                BodyText {
                    Layout.fillWidth: true
                    text: bar.swing.selectedText
                    font.pixelSize: Theme.smallSize
                    color: Theme.quiet
                }
            }
            IconButton {
                visible: !bar.swing.selectedHere
                glyph: "target"
                label: qsTr("Place it by a tap on the picture")
                strong: bar.swing.placing
                onClicked: bar.swing.placing = !bar.swing.placing
            }
            IconButton {
                visible: bar.swing.selectedHere
                glyph: "eye-off"
                label: qsTr("Not visible here")
                enabled: bar.swing.selectedHere
                onClicked: bar.swing.hideSelected()
            }
            IconButton {
                glyph: "tick"
                label: qsTr("Done with this mark")
                strong: true
                onClicked: bar.swing.deselect()
            }
        }
        Row {
            Layout.alignment: Qt.AlignHCenter
            spacing: Theme.gap
            LayoutMirroring.enabled: false
            LayoutMirroring.childrenInherit: true
            IconButton {
                glyph: "left"
                label: qsTr("Mark to the left")
                autoRepeat: true
                enabled: bar.swing.selectedHere
                onClicked: bar.swing.nudge(-bar.stepBy, 0)
            }
            IconButton {
                glyph: "arrow-up"
                label: qsTr("Mark up")
                autoRepeat: true
                enabled: bar.swing.selectedHere
                onClicked: bar.swing.nudge(0, -bar.stepBy)
            }
            IconButton {
                glyph: "arrow-down"
                label: qsTr("Mark down")
                autoRepeat: true
                enabled: bar.swing.selectedHere
                onClicked: bar.swing.nudge(0, bar.stepBy)
            }
            IconButton {
                glyph: "right"
                label: qsTr("Mark to the right")
                autoRepeat: true
                enabled: bar.swing.selectedHere
                onClicked: bar.swing.nudge(bar.stepBy, 0)
            }
            IconButton {
                glyph: "undo"
                label: qsTr("Take my mark away here")
                enabled: bar.swing.selectedByHand
                onClicked: bar.swing.freeSelected()
            }
        }
    }
}
