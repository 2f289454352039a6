// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Plumbmark.Bridge
import Plumbmark.Controls

// All measured swings of a player, found by club, view, kind of shot, star, tag and day.
ColumnLayout {
    id: panel
    required property PlayerModel player
    property bool choosing: false
    readonly property int chosen: Object.keys(player.filterAnswers).length
    signal openSwing(string clip)
    spacing: 0
    ActionButton {
        Layout.fillWidth: true
        Layout.margins: Theme.gap
        visible: panel.player.filters.length > 0
        glyph: panel.choosing ? "up" : "down"
        text: panel.choosing ? qsTr("Show the swings")
                             : panel.chosen > 0 ? qsTr("Answers that the swings below fit: %1").arg(panel.chosen) : qsTr("Find by club, view, day \u2026")
        onClicked: panel.choosing = !panel.choosing
    }
    Flickable {
        id: flick
        Layout.fillWidth: true
        Layout.fillHeight: true
        visible: panel.choosing
        clip: true
        contentHeight: questions.implicitHeight + 2 * Theme.pad
        boundsBehavior: Flickable.StopAtBounds
        ColumnLayout {
            id: questions
            x: Theme.pad
            width: flick.width - 2 * Theme.pad
            spacing: Theme.mm(3)
            Repeater {
                model: panel.player.filters
                ChoiceRow {
                    required property var modelData
                    Layout.fillWidth: true
                    question: modelData.question
                    choices: modelData.choices
                    value: panel.player.filterAnswers[modelData.field] ?? ""
                    onChosen: (value) => panel.player.filter(modelData.field, value)
                }
            }
        }
    }
    BodyText {
        Layout.fillWidth: true
        Layout.margins: Theme.pad
        visible: !panel.choosing && panel.player.swings.length === 0
        text: panel.player.reading ? qsTr("Reading the swings \u2026")
            : panel.chosen > 0 ? qsTr("No swing fits all the answers; take one back.")
                               : qsTr("No measured swing yet. Bring one in, or film one.")
    }
    ListView {
        id: list
        Layout.fillWidth: true
        Layout.fillHeight: true
        visible: !panel.choosing
        clip: true
        model: panel.player.swings
        boundsBehavior: Flickable.StopAtBounds
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Swings")
        delegate: T.AbstractButton {
            id: row
            required property var modelData
            width: list.width
            height: Math.max(Theme.target * 1.2, texts.implicitHeight + 2 * Theme.mm(1.4))
            focusPolicy: Qt.StrongFocus
            text: modelData.title
            Accessible.role: Accessible.Button
            Accessible.name: modelData.star ? qsTr("Swing %1, %2, with a star").arg(text).arg(modelData.detail)
                                            : qsTr("Swing %1, %2").arg(text).arg(modelData.detail)
            onClicked: panel.openSwing(modelData.clip)
            background: Rectangle {
                color: row.down ? Theme.pressed : "transparent"
                border.color: Theme.accent
                border.width: row.visualFocus ? Theme.line * 1.5 : 0
                Rectangle {
                    anchors.left: parent.left
                    anchors.right: parent.right
                    anchors.bottom: parent.bottom
                    height: Theme.hair
                    color: Theme.edge
                }
            }
            contentItem: Item {
                RowLayout {
                    anchors.fill: parent
                    anchors.leftMargin: Theme.pad
                    anchors.rightMargin: Theme.pad
                    spacing: Theme.gap
                    ColumnLayout {
                        id: texts
                        Layout.fillWidth: true
                        spacing: 0
                        Text {
                            Layout.fillWidth: true
                            text: row.text
                            color: Theme.ink
                            font.pixelSize: Theme.bodySize
                            font.bold: true
                            wrapMode: Text.Wrap
                            textFormat: Text.PlainText
                        }
                        Text {
                            Layout.fillWidth: true
                            text: row.modelData.detail
                            color: Theme.quiet
                            font.pixelSize: Theme.smallSize
                            wrapMode: Text.Wrap
                            textFormat: Text.PlainText
                        }
                    }
                    Glyph {
                        visible: row.modelData.star
                        Layout.preferredWidth: Theme.mm(5)
                        Layout.preferredHeight: Theme.mm(5)
                        name: "star-full"
                        color: Theme.ink
                    }
                    Glyph {
                        Layout.preferredWidth: Theme.mm(5)
                        Layout.preferredHeight: Theme.mm(5)
                        name: "forward"
                        color: Theme.ink
                    }
                }
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
}
