// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Controls

// One sent-in lesson: who waits, for how long, and the three things to do about it.
Rectangle {
    id: card
    required property var modelData
    property bool busy: false
    property bool asking: false
    signal openLesson()
    signal filmAgain(string because)
    signal answered()
    implicitHeight: body.implicitHeight + 2 * Theme.pad
    radius: Theme.radius
    color: Theme.card
    border.color: modelData.overdue ? Theme.danger : Theme.edge
    border.width: modelData.overdue ? Theme.line * 1.5 : Theme.line

    Column {
        id: body
        x: Theme.pad
        y: Theme.pad
        width: parent.width - 2 * Theme.pad
        spacing: Theme.mm(1.2)
        BodyText {
            width: parent.width
            text: card.modelData.player
            font.pixelSize: Theme.titleSize
            font.bold: true
        }
        BodyText {
            width: parent.width
            text: [card.modelData.waits, card.modelData.due].filter(t => t !== "").join(", ")
            font.bold: card.modelData.overdue
            Accessible.name: card.modelData.player + ": " + text
        }
        BodyText {
            width: parent.width
            visible: text !== ""
            text: card.modelData.because
            font.pixelSize: Theme.smallSize
            color: Theme.quiet
        }
        Flow {
            width: parent.width
            spacing: Theme.gap
            ActionButton {
                text: qsTr("Open")
                glyph: "forward"
                Accessible.name: qsTr("Open the lesson of %1").arg(card.modelData.player)
                onClicked: card.openLesson()
            }
            ActionButton {
                visible: card.modelData.waiting
                text: qsTr("Please film again")
                glyph: "camera"
                enabled: !card.busy
                Accessible.name: qsTr("Please film again: %1").arg(card.modelData.player)
                onClicked: card.asking = !card.asking
            }
            ActionButton {
                text: qsTr("Answered")
                glyph: "tick"
                Accessible.name: qsTr("Answered: %1").arg(card.modelData.player)
                onClicked: card.answered()
            }
        }
        TextEntry {
            id: because
            visible: card.asking
            width: parent.width
            question: qsTr("Because (empty: what limited the clips)")
        }
        ActionButton {
            visible: card.asking
            width: parent.width
            primary: true
            enabled: !card.busy
            text: because.text.trim() === "" ? qsTr("Look at the clips and ask") : qsTr("Ask with this reason")
            onClicked: {
                card.asking = false
                card.filmAgain(because.text)
            }
        }
    }
}
