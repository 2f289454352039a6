// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls

// Change one thing, hit a few, and look: each swing is put before, in or after the try by taps.
PanelScroll {
    id: panel
    required property CoachModel coach

    BodyText {
        width: parent.width
        text: qsTr("Change one thing and hit three to five. Tap each swing until it says what it was: before, try or after.")
    }
    ChoiceRow {
        width: parent.width
        visible: panel.coach.order.length > 0
        question: qsTr("What is tried")
        choices: panel.coach.order.map(o => ({ text: o.label, value: o.node }))
        value: panel.coach.trialNode
        onChosen: (value) => panel.coach.tryNode(value)
    }
    BodyText {
        width: parent.width
        visible: panel.coach.order.length === 0
        text: qsTr("Nothing comes first yet: name a departure under \u201cCause\u201d.")
        font.bold: true
    }
    Flow {
        width: parent.width
        spacing: Theme.gap
        Repeater {
            model: panel.coach.shots
            ActionButton {
                required property var modelData
                text: modelData.label + "\n" + modelData.words
                primary: modelData.set !== ""
                glyph: modelData.set === "before" ? "back" : modelData.set === "try" ? "target" : modelData.set === "after" ? "forward" : ""
                width: Math.max(implicitWidth, Theme.mm(30))
                Accessible.name: modelData.label + ": " + modelData.words
                onClicked: panel.coach.tagShot(modelData.number)
            }
        }
    }
    ActionButton {
        width: parent.width
        primary: true
        text: qsTr("Did it help?")
        enabled: panel.coach.canJudge
        onClicked: panel.coach.judgeTrial()
    }
    Column {
        width: parent.width
        visible: panel.coach.trialSentence !== ""
        spacing: Theme.mm(1)
        BodyText {
            width: parent.width
            text: panel.coach.trialSentence
            font.bold: true
        }
        BodyText {
            width: parent.width
            text: panel.coach.trialGuard
        }
        BodyText {
            width: parent.width
            text: panel.coach.trialMoved.length === 0 ? qsTr("No number moved beyond doubt.")
                                                      : qsTr("Moved beyond doubt: %1").arg(panel.coach.trialMoved.join(", "))
        }
    }
}
