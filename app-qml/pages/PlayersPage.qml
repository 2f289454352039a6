// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// Everybody who is taught here.
FocusScope {
    id: page
    required property PlayersModel players
    signal back()
    signal groupLesson()
    signal openPlayer(string player)
    readonly property bool empty: players.count === 0 && players.search === ""
    Component.onCompleted: players.load()
    Keys.onEscapePressed: back()
    Keys.onBackPressed: back()

    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        PageHeader {
            Layout.fillWidth: true
            title: qsTr("Players")
            subtitle: page.empty ? "" : String(page.players.count)
            onBack: page.back()
        }
        BodyText {
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            Layout.bottomMargin: 0
            visible: text !== ""
            text: page.players.problem
            font.bold: true
            color: Theme.danger
        }
        TextEntry {
            Layout.fillWidth: true
            Layout.maximumWidth: Theme.mm(130)
            Layout.margins: Theme.pad
            visible: !page.empty
            question: qsTr("Find a player")
            hint: qsTr("name or group")
            onEdited: (text) => page.players.search = text
            Component.onCompleted: text = page.players.search
        }
        BodyText {
            Layout.fillWidth: true
            Layout.margins: Theme.mm(4)
            visible: page.players.count === 0
            horizontalAlignment: Text.AlignHCenter
            text: page.empty ? qsTr("No players yet. Add one, or bring in a clip: its player is added by name.")
                             : qsTr("Nobody of that name or group.")
        }
        ListView {
            id: list
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            model: page.players
            boundsBehavior: Flickable.StopAtBounds
            reuseItems: true
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Players")
            delegate: PlayerDelegate {
                width: Math.min(list.width, Theme.mm(190))
                x: (list.width - width) / 2
                onClicked: page.openPlayer(playerId)
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
        Rectangle {
            Layout.fillWidth: true
            implicitHeight: Theme.hair
            color: Theme.edge
        }
        GridLayout {
            id: bar
            readonly property bool both: page.players.count > 1
            // Large letters on a phone: one above the other, for half the width would break words.
            columns: both && page.width < Theme.mm(90) * Theme.textScale / 1.4 ? 1 : 2
            readonly property real room: page.width - 2 * Theme.pad
            readonly property real share: Math.min(columns === 1 || !both ? room : (room - Theme.gap) / 2,
                                                   columns === 1 ? room : Theme.mm(80) * Math.max(1, Theme.textScale / 1.4))
            Layout.fillWidth: true
            Layout.fillHeight: false
            Layout.margins: Theme.pad
            columnSpacing: Theme.gap
            rowSpacing: Theme.gap
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            ActionButton {
                Layout.preferredWidth: bar.share
                Layout.fillHeight: true
                visible: bar.both
                enabled: page.players.count <= 40
                glyph: "people"
                text: qsTr("Group lesson: %1").arg(page.players.count)
                Accessible.description: qsTr("The players listed here are taught together, one after the other; at most 40")
                onClicked: page.groupLesson()
            }
            ActionButton {
                Layout.preferredWidth: bar.share
                Layout.fillHeight: true
                Layout.alignment: Theme.leftHanded ? Qt.AlignLeft : Qt.AlignRight
                primary: true
                glyph: "plus"
                text: qsTr("Add a player")
                onClicked: page.openPlayer("")
            }
        }
    }
}
