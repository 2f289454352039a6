// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// One or two priorities for home, what speaks against them, and when to look again.
PanelScroll {
    id: panel
    required property CoachModel coach

    BodyText {
        width: parent.width
        visible: panel.coach.priorities.length === 0
        text: qsTr("There is nothing to prescribe: say what comes first, or film more.")
        font.bold: true
    }
    Repeater {
        model: panel.coach.priorities
        PriorityCard {
            width: panel.columnWidth
            onSetSets: (rehearsals, balls) => panel.coach.setSets(index, rehearsals, balls)
        }
    }
    Repeater {
        model: panel.coach.planNotes
        BodyText {
            required property string modelData
            width: panel.columnWidth
            text: modelData
            font.bold: true
        }
    }
    RowLayout {
        width: parent.width
        visible: panel.coach.priorities.length > 0
        spacing: Theme.gap
        BodyText {
            Layout.fillWidth: true
            text: qsTr("Days until the next look: %1").arg(panel.coach.lookAgainDays)
        }
        IconButton {
            glyph: "down"
            label: qsTr("Look again sooner")
            onClicked: panel.coach.setLookAgain(panel.coach.lookAgainDays - 1)
        }
        IconButton {
            glyph: "up"
            label: qsTr("Look again later")
            onClicked: panel.coach.setLookAgain(panel.coach.lookAgainDays + 1)
        }
    }
    ActionButton {
        width: parent.width
        visible: panel.coach.priorities.length > 0
        primary: !panel.coach.planKept
        glyph: panel.coach.planKept ? "tick" : ""
        text: panel.coach.planKept ? qsTr("Kept. Look again: %1").arg(panel.coach.keptUntil) : qsTr("Keep this plan")
        enabled: !panel.coach.busy && !panel.coach.planKept
        onClicked: panel.coach.keepPlan()
    }
    Rectangle {
        width: parent.width
        implicitHeight: body.implicitHeight + 2 * Theme.pad
        radius: Theme.radius
        color: Theme.caution
        border.color: Theme.cautionEdge
        border.width: Theme.line
        Column {
            id: body
            x: Theme.pad
            y: Theme.pad
            width: parent.width - 2 * Theme.pad
            spacing: Theme.mm(1.2)
            BodyText {
                width: parent.width
                text: qsTr("The body")
                font.bold: true
                Accessible.role: Accessible.Heading
            }
            Repeater {
                model: panel.coach.cautions
                BodyText {
                    required property var modelData
                    width: body.width
                    text: qsTr("%1 %2 (%3)\n%4").arg(modelData.seen).arg(modelData.ease).arg(modelData.grade).arg(modelData.words)
                }
            }
            BodyText {
                width: parent.width
                font.pixelSize: Theme.smallSize
                text: panel.coach.cautionsFooter
            }
        }
    }
}
