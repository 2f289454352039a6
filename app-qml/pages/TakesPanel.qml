// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls
import Plumbmark.Stage

// Swings kept since the page was opened, newest first, each with its impact picture.
Item {
    id: panel
    required property FilmModel film
    signal openSwing(string clip, string title)
    BodyText {
        anchors.centerIn: parent
        width: parent.width - 2 * Theme.pad
        visible: list.count === 0
        horizontalAlignment: Text.AlignHCenter
        text: qsTr("No swing yet. The last 8 seconds are kept all the time: a swing is cut out of them by itself, or with the button.")
    }
    ListView {
        id: list
        anchors.fill: parent
        clip: true
        model: panel.film.takes
        spacing: Theme.gap
        boundsBehavior: Flickable.StopAtBounds
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Takes")
        delegate: RowLayout {
            id: take
            required property var modelData
            width: list.width
            spacing: Theme.gap
            Rectangle {
                Layout.preferredWidth: Math.min(Theme.mm(30), list.width * 0.3)
                Layout.preferredHeight: width * 2 / 3
                Layout.margins: Theme.mm(1)
                color: Theme.stage
                StillItem {
                    anchors.fill: parent
                    image: panel.film.stillOf(take.modelData.number, take.modelData.still)
                    Accessible.role: Accessible.Graphic
                    Accessible.name: qsTr("Impact picture of take %1").arg(take.modelData.number)
                }
            }
            ColumnLayout {
                Layout.fillWidth: true
                spacing: 0
                BodyText {
                    Layout.fillWidth: true
                    text: qsTr("Take %1. %2").arg(take.modelData.number).arg(take.modelData.doing)
                    font.bold: true
                }
                BodyText {
                    Layout.fillWidth: true
                    visible: text !== ""
                    text: take.modelData.text
                    font.pixelSize: Theme.smallSize
                }
            }
            IconButton {
                Layout.rightMargin: Theme.pad
                visible: take.modelData.clip !== ""
                glyph: "forward"
                label: qsTr("Look at take %1").arg(take.modelData.number)
                onClicked: panel.openSwing(take.modelData.clip, take.modelData.player)
            }
        }
    }
}
