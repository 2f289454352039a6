// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// A class on the tee: one name after the other. No numbers here: children are never compared.
FocusScope {
    id: page
    required property GroupModel group
    property bool canFilm: false
    signal back()
    signal film()
    signal bringIn()
    signal openPlayer(string player)
    Keys.onEscapePressed: back()
    Keys.onBackPressed: back()
    // The keys of a presenter's remote control.
    Keys.onPressed: (event) => {
        if (event.key === Qt.Key_PageDown || event.key === Qt.Key_Space) {
            group.next()
            event.accepted = true
        }
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        PageHeader {
            Layout.fillWidth: true
            title: qsTr("Group lesson")
            onBack: page.back()
            actions: [
                IconButton {
                    glyph: "close"
                    label: qsTr("End the group lesson")
                    outlined: false
                    onClicked: {
                        page.group.end()
                        page.back()
                    }
                }
            ]
        }
        GroupStrip {
            Layout.fillWidth: true
            group: page.group
        }
        GridLayout {
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            columns: page.width >= Theme.mm(100) ? 3 : 1
            columnSpacing: Theme.gap
            rowSpacing: Theme.gap
            ActionButton {
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                visible: page.canFilm
                glyph: "camera"
                text: qsTr("Film this player")
                onClicked: page.film()
            }
            ActionButton {
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                glyph: "plus"
                text: qsTr("Bring in a clip")
                onClicked: page.bringIn()
            }
            ActionButton {
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                glyph: "person"
                text: qsTr("This player's page")
                onClicked: page.openPlayer(page.group.currentId)
            }
        }
        BodyText {
            Layout.fillWidth: true
            Layout.leftMargin: Theme.pad
            Layout.rightMargin: Theme.pad
            font.pixelSize: Theme.smallSize
            text: qsTr("Look around before every swing; everybody else stands behind the line.")
        }
        Flickable {
            id: flick
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.margins: Theme.pad
            clip: true
            contentHeight: names.implicitHeight
            boundsBehavior: Flickable.StopAtBounds
            Flow {
                id: names
                width: flick.width
                spacing: Theme.gap
                Repeater {
                    model: page.group.players
                    ChoiceChip {
                        required property var modelData
                        required property int index
                        text: modelData.name
                        checkable: false
                        checked: modelData.current
                        Accessible.name: qsTr("Give the turn to %1").arg(text)
                        onClicked: page.group.turn(index)
                    }
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
    }
}
