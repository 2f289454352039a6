// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// What comes first and why, what else could, what the student thinks, and the coach's own word.
PanelScroll {
    id: panel
    required property CoachModel coach
    property bool choosing: false
    signal openSwing(string clip, int moment)

    Rectangle {
        visible: panel.coach.word !== ""
        width: parent.width
        implicitHeight: said.implicitHeight + 2 * Theme.pad
        radius: Theme.radius
        color: Theme.accent
        Column {
            id: said
            x: Theme.pad
            y: Theme.pad
            width: parent.width - 2 * Theme.pad
            spacing: Theme.mm(0.8)
            BodyText {
                width: parent.width
                text: panel.coach.word
                font.bold: true
                color: Theme.accentInk
            }
            BodyText {
                width: parent.width
                visible: text !== ""
                text: panel.coach.wordNote
                color: Theme.accentInk
            }
            BodyText {
                width: parent.width
                text: qsTr("What the program proposed stays on record below.")
                font.pixelSize: Theme.smallSize
                color: Theme.accentInk
            }
        }
    }
    BodyText {
        width: parent.width
        text: panel.coach.verdict
        font.bold: true
    }
    Repeater {
        model: panel.coach.chain
        CauseLink {
            width: panel.columnWidth
            still: panel.coach.stills[modelData.node]
            onClicked: panel.openSwing(modelData.clip, modelData.moment)
        }
    }
    Column {
        visible: panel.coach.belief !== ""
        width: parent.width
        spacing: Theme.mm(1)
        BodyText {
            width: parent.width
            text: qsTr("The student thinks: \u201c%1\u201d").arg(panel.coach.belief)
        }
        StatusBadge {
            level: panel.coach.beliefLevel
            word: panel.coach.beliefWord
            Accessible.role: Accessible.StaticText
            Accessible.name: qsTr("Answer to the student: %1").arg(panel.coach.beliefWord)
        }
        BodyText {
            width: parent.width
            text: panel.coach.beliefSentence
        }
    }
    Column {
        visible: panel.coach.rivals.length > 0
        width: parent.width
        spacing: Theme.mm(1)
        BodyText {
            width: parent.width
            text: qsTr("Could come first instead")
            font.bold: true
            Accessible.role: Accessible.Heading
        }
        Repeater {
            model: panel.coach.rivals
            Column {
                id: rival
                required property var modelData
                width: panel.columnWidth
                BodyText {
                    width: parent.width
                    text: rival.modelData.unclear ? qsTr("%1 (unclear)").arg(rival.modelData.label) : rival.modelData.label
                }
                BodyText {
                    width: parent.width
                    font.pixelSize: Theme.smallSize
                    color: Theme.quiet
                    text: [rival.modelData.number, rival.modelData.share].filter(t => t !== "").join(" \u00b7 ")
                }
            }
        }
    }
    Column {
        visible: panel.coach.missing.length > 0
        width: parent.width
        spacing: Theme.mm(1)
        BodyText {
            width: parent.width
            text: qsTr("Could lie before it and cannot be told yet")
            font.bold: true
            Accessible.role: Accessible.Heading
        }
        Repeater {
            model: panel.coach.missing
            Column {
                id: gap
                required property var modelData
                width: panel.columnWidth
                BodyText {
                    width: parent.width
                    text: gap.modelData.label
                }
                BodyText {
                    width: parent.width
                    visible: text !== ""
                    font.pixelSize: Theme.smallSize
                    color: Theme.quiet
                    text: gap.modelData.help
                }
            }
        }
    }
    Rectangle {
        width: parent.width
        height: Theme.hair
        color: Theme.edge
    }
    BodyText {
        width: parent.width
        text: qsTr("What do you say?")
        font.bold: true
        Accessible.role: Accessible.Heading
    }
    TextEntry {
        id: note
        width: parent.width
        question: qsTr("Why (may stay empty)")
    }
    Flow {
        width: parent.width
        spacing: Theme.gap
        ActionButton {
            visible: panel.coach.chain.length > 0
            glyph: "tick"
            text: qsTr("I agree")
            primary: true
            enabled: !panel.coach.busy
            onClicked: panel.coach.accept(note.text)
        }
        Repeater {
            model: panel.coach.order
            ActionButton {
                required property int index
                required property var modelData
                visible: index > 0
                glyph: "arrow-up"
                text: qsTr("First: %1").arg(modelData.label)
                width: Math.min(implicitWidth, panel.width - 2 * Theme.pad)
                enabled: !panel.coach.busy
                onClicked: panel.coach.putFirst(index)
            }
        }
        ActionButton {
            text: panel.choosing ? qsTr("Keep it as it is") : qsTr("Something else comes first")
            enabled: !panel.coach.busy
            onClicked: panel.choosing = !panel.choosing
        }
    }
    Flow {
        visible: panel.choosing
        width: parent.width
        spacing: Theme.gap
        Repeater {
            model: panel.choosing ? panel.coach.departures : []
            ChoiceChip {
                required property var modelData
                text: modelData.label
                checkable: false
                checked: modelData.chosen
                Accessible.name: qsTr("Comes first: %1, %2").arg(modelData.label).arg(modelData.presence)
                onClicked: {
                    const here = panel // this chip is gone after the first line
                    here.coach.overrule(modelData.node, note.text)
                    here.choosing = false
                }
            }
        }
    }
}
