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
    required property string lesson
    signal openSwing(string clip, string title)
    signal teach()
    signal review()
    implicitHeight: column.implicitHeight + Theme.pad + 2 * Theme.line
    radius: Theme.radius
    color: Theme.card
    border.color: Theme.edge
    border.width: Theme.line

    ColumnLayout {
        id: column
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.margins: Theme.line
        anchors.topMargin: Theme.pad
        spacing: 0
        RowLayout {
            Layout.fillWidth: true
            Layout.leftMargin: Theme.pad
            Layout.rightMargin: Theme.pad
            Layout.bottomMargin: Theme.mm(1.6)
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
        Flow {
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            Layout.bottomMargin: 0
            visible: delegate.swings.length > 0
            spacing: Theme.gap
            ActionButton {
                glyph: "note"
                text: qsTr("Cause and plan")
                Accessible.name: qsTr("Cause and plan of %1, %2").arg(delegate.player).arg(delegate.day)
                onClicked: delegate.teach()
            }
            ActionButton {
                glyph: "play"
                text: qsTr("Review")
                Accessible.name: qsTr("Review of %1, %2").arg(delegate.player).arg(delegate.day)
                onClicked: delegate.review()
            }
        }
        BodyText {
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            visible: delegate.swings.length === 0
            text: qsTr("No swing in this lesson yet.")
        }
    }
}
