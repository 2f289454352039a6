// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// Who the player is. Nothing is kept before the button below.
Item {
    id: panel
    required property PlayerModel player
    property string hand: player.hand
    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        Flickable {
            id: flick
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            contentHeight: form.implicitHeight + 2 * Theme.pad
            boundsBehavior: Flickable.StopAtBounds
            ColumnLayout {
                id: form
                x: Math.max(Theme.pad, (flick.width - width) / 2)
                y: Theme.pad
                width: Math.min(flick.width - 2 * Theme.pad, Theme.mm(130))
                spacing: Theme.mm(4)
                TextEntry {
                    id: name
                    Layout.fillWidth: true
                    question: qsTr("Name")
                    text: panel.player.name
                }
                ChoiceRow {
                    Layout.fillWidth: true
                    question: qsTr("Player's hand")
                    choices: panel.player.handChoices
                    value: panel.hand
                    onChosen: (value) => panel.hand = value
                }
                TextEntry {
                    id: stature
                    Layout.fillWidth: true
                    question: qsTr("Height in cm, if known")
                    hint: qsTr("for example 178")
                    inputMethodHints: Qt.ImhFormattedNumbersOnly
                    text: panel.player.stature
                }
                TextEntry {
                    id: group
                    Layout.fillWidth: true
                    question: qsTr("Group")
                    hint: qsTr("taught together with, for example Juniors")
                    text: panel.player.group
                }
                TextEntry {
                    id: note
                    Layout.fillWidth: true
                    question: qsTr("Note")
                    text: panel.player.note
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
        Rectangle {
            Layout.fillWidth: true
            implicitHeight: Theme.hair
            color: Theme.edge
        }
        ActionButton {
            Layout.fillWidth: true
            Layout.maximumWidth: Theme.mm(80)
            Layout.alignment: Theme.leftHanded ? Qt.AlignLeft : Qt.AlignRight
            Layout.margins: Theme.pad
            primary: true
            glyph: "tick"
            text: panel.player.isNew ? qsTr("Add this player") : qsTr("Keep the changes")
            onClicked: panel.player.save(name.text, panel.hand, stature.text, group.text, note.text)
        }
    }
}
