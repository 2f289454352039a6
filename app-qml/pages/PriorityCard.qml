// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Controls

// One priority of a plan as the student reads it, and its dose under the coach's fingers.
Rectangle {
    id: card
    required property int index
    required property var modelData
    signal setSets(int rehearsals, int balls)
    implicitHeight: body.implicitHeight + 2 * Theme.pad
    radius: Theme.radius
    color: Theme.card
    border.color: Theme.edge
    border.width: Theme.line

    component Line: BodyText {
        property string what
        property string told
        width: parent.width
        visible: told !== ""
        text: qsTr("%1: %2").arg(what).arg(told)
    }
    component Sets: RowLayout {
        id: sets
        required property string what
        required property int number
        signal asked(int number)
        width: parent.width
        spacing: Theme.gap
        BodyText {
            Layout.fillWidth: true
            text: sets.what
        }
        IconButton {
            glyph: "down"
            label: qsTr("Fewer: %1").arg(sets.what)
            onClicked: sets.asked(sets.number - 1)
        }
        BodyText {
            Layout.preferredWidth: Theme.mm(7)
            text: sets.number
            font.pixelSize: Theme.numberSize
            font.bold: true
            horizontalAlignment: Text.AlignHCenter
            Accessible.name: sets.what + ": " + sets.number
        }
        IconButton {
            glyph: "up"
            label: qsTr("More: %1").arg(sets.what)
            onClicked: sets.asked(sets.number + 1)
        }
    }

    Column {
        id: body
        x: Theme.pad
        y: Theme.pad
        width: parent.width - 2 * Theme.pad
        spacing: Theme.mm(1.2)
        BodyText {
            width: parent.width
            text: qsTr("%1. %2").arg(card.index + 1).arg(card.modelData.label)
            font.pixelSize: Theme.titleSize
            font.bold: true
            Accessible.role: Accessible.Heading
        }
        Line { what: qsTr("Feel"); told: card.modelData.feel; font.bold: true }
        Line { what: qsTr("How much"); told: card.modelData.amount }
        Line { what: card.modelData.drill; told: card.modelData.how }
        Line { what: qsTr("Dose"); told: card.modelData.dose }
        Sets {
            what: qsTr("Sets of 10 slow rehearsals")
            number: card.modelData.rehearsals
            onAsked: (number) => card.setSets(number, card.modelData.balls)
        }
        Sets {
            what: qsTr("Sets of 10 balls")
            number: card.modelData.balls
            onAsked: (number) => card.setSets(card.modelData.rehearsals, number)
        }
        Line { what: qsTr("Trains"); told: card.modelData.trains }
        Line { what: qsTr("Decides"); told: card.modelData.decides }
        Line { what: qsTr("Must not get worse"); told: card.modelData.guard }
        Line { what: qsTr("What it may cost"); told: card.modelData.conflict }
    }
}
