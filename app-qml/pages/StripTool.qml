// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// Which moments stand side by side in the strip, and which lines of address go through all of them.
Flickable {
    id: flick
    required property SwingModel swing
    clip: true
    contentHeight: column.implicitHeight + 2 * Theme.pad
    boundsBehavior: Flickable.StopAtBounds
    Component.onCompleted: swing.stripShown = true
    Component.onDestruction: if (swing) swing.stripShown = false
    ColumnLayout {
        id: column
        x: Theme.pad
        width: flick.width - 2 * Theme.pad
        spacing: Theme.pad
        ActionButton {
            Layout.fillWidth: true
            glyph: flick.swing.stripShown ? "swing" : "strip"
            text: flick.swing.stripShown ? qsTr("Show one picture") : qsTr("Show the strip")
            onClicked: flick.swing.stripShown = !flick.swing.stripShown
        }
        BodyText {
            Layout.fillWidth: true
            font.bold: true
            text: qsTr("Moments in the strip")
        }
        Flow {
            Layout.fillWidth: true
            spacing: Theme.gap
            Repeater {
                model: flick.swing.stripChoices
                ChoiceChip {
                    required property var modelData
                    maximumWidth: column.width
                    text: modelData.label
                    checked: modelData.chosen
                    checkable: false
                    Accessible.role: Accessible.CheckBox
                    Accessible.name: qsTr("In the strip: %1").arg(text)
                    onClicked: flick.swing.toggleInStrip(modelData.row)
                }
            }
        }
        CopyLines {
            Layout.fillWidth: true
            swing: flick.swing
        }
    }
    SlimScrollBar {
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        orientation: Qt.Vertical
        size: flick.visibleArea.heightRatio
        position: flick.visibleArea.yPosition
    }
}
