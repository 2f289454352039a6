// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Controls

// One lesson with its swings.
Rectangle {
    id: delegate
    required property string player
    required property string day
    required property string title
    required property var swings
    signal openSwing(string clip, string title)
    implicitHeight: column.implicitHeight + 2 * Theme.pad
    radius: Theme.radius
    color: Theme.card
    border.color: Theme.edge
    border.width: Theme.line

    ColumnLayout {
        id: column
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.margins: Theme.pad
        spacing: Theme.gap
        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap
            BodyText {
                Layout.fillWidth: true
                text: delegate.player
                font.pixelSize: Theme.titleSize
                font.bold: true
            }
            BodyText {
                text: delegate.day
                color: Theme.quiet
                wrapMode: Text.NoWrap
            }
        }
        Repeater {
            model: delegate.swings
            SwingRow {
                required property var modelData
                Layout.fillWidth: true
                number: modelData.number
                title: modelData.title
                good: modelData.good
                watch: modelData.watch
                work: modelData.work
                unknown: modelData.unknown
                enabled: modelData.film
                onClicked: delegate.openSwing(modelData.clip, delegate.player)
            }
        }
        BodyText {
            Layout.fillWidth: true
            visible: delegate.swings.length === 0
            text: qsTr("No swing in this lesson yet.")
        }
    }
}
