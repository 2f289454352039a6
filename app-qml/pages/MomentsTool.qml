// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// Every key moment, where it is and who says so. The flag puts it on the frame on show; the arrow gives it back.
ListView {
    id: list
    required property SwingModel swing
    clip: true
    model: swing.allMoments
    boundsBehavior: Flickable.StopAtBounds
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Key moments to set")
    header: BodyText {
        x: Theme.pad
        width: list.width - 2 * Theme.pad
        bottomPadding: Theme.mm(1.4)
        font.pixelSize: Theme.smallSize
        text: qsTr("Go to the frame, then tap the moment's flag. The picture shows: %1.").arg(list.swing.frameText)
    }
    delegate: RowLayout {
        id: row
        required property var modelData
        width: list.width
        height: Math.max(Theme.target + Theme.gap, words.implicitHeight + Theme.gap)
        spacing: Theme.gap
        ColumnLayout {
            id: words
            Layout.fillWidth: true
            Layout.leftMargin: Theme.pad
            spacing: 0
            BodyText {
                Layout.fillWidth: true
                font.bold: true
                text: row.modelData.label
            }
            BodyText {
                Layout.fillWidth: true
                font.pixelSize: Theme.smallSize
                color: Theme.quiet
                text: row.modelData.where
                Accessible.name: row.modelData.label + ": " + text
            }
        }
        IconButton {
            visible: row.modelData.byHand
            glyph: "undo"
            label: qsTr("Give \u201c%1\u201d back to the software").arg(row.modelData.label)
            onClicked: list.swing.freeMoment(row.modelData.id)
        }
        IconButton {
            Layout.rightMargin: Theme.pad
            glyph: "flag"
            label: qsTr("Set \u201c%1\u201d here").arg(row.modelData.label)
            strong: row.modelData.byHand
            enabled: list.swing.ready
            onClicked: list.swing.fixMoment(row.modelData.id)
        }
    }
    SlimScrollBar {
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        orientation: Qt.Vertical
        size: list.visibleArea.heightRatio
        position: list.visibleArea.yPosition
    }
}
