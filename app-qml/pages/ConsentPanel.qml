// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls

// What a player agreed to, until when, and who agreed for a minor.
Column {
    id: panel
    required property ExchangeModel exchange
    spacing: Theme.pad * 1.5

    ChoiceRow {
        width: parent.width
        question: qsTr("Player")
        choices: panel.exchange.playerChoices
        value: panel.exchange.player
        onChosen: (value) => panel.exchange.player = value
    }
    BodyText {
        width: parent.width
        text: panel.exchange.player === "" ? qsTr("There is no player yet.") : panel.exchange.standing
        font.bold: true
    }
    Column {
        width: parent.width
        spacing: Theme.mm(1.2)
        Accessible.role: Accessible.Grouping
        Accessible.name: qsTr("Agreed to")
        BodyText {
            width: parent.width
            text: qsTr("Agreed to")
            font.bold: true
        }
        Flow {
            width: parent.width
            spacing: Theme.gap
            Repeater {
                model: panel.exchange.scopeChoices
                SwitchChip {
                    required property var modelData
                    text: modelData.text
                    on: panel.exchange.scopes.indexOf(modelData.value) >= 0
                    onClicked: panel.exchange.toggleScope(modelData.value)
                }
            }
        }
    }
    SwitchChip {
        text: qsTr("A minor: a guardian agrees")
        on: panel.exchange.minor
        onClicked: panel.exchange.minor = !panel.exchange.minor
    }
    TextEntry {
        width: parent.width
        visible: panel.exchange.minor
        question: qsTr("Guardian")
        text: panel.exchange.guardian
        onEdited: (text) => panel.exchange.guardian = text
    }
    TextEntry {
        width: parent.width
        question: qsTr("Last day (a minor's consent: one year at most)")
        hint: "2027-06-30"
        text: panel.exchange.until
        onEdited: (text) => panel.exchange.until = text
    }
    Flow {
        width: parent.width
        spacing: Theme.gap
        ActionButton {
            primary: true
            enabled: panel.exchange.player !== "" && !panel.exchange.busy
            text: qsTr("Note the consent")
            onClicked: panel.exchange.noteConsent()
        }
        ActionButton {
            enabled: panel.exchange.player !== "" && !panel.exchange.busy
            text: qsTr("Consent was withdrawn")
            onClicked: panel.exchange.withdrawConsent()
        }
    }
    Column {
        width: parent.width
        spacing: Theme.pad
        visible: panel.exchange.overdue.length > 0
        BodyText {
            width: parent.width
            text: qsTr("Kept past its time (90 days for minors, a year for others)")
            font.bold: true
        }
        Repeater {
            model: panel.exchange.overdue
            Column {
                id: overdue
                required property var modelData
                property bool asked: false
                width: panel.width
                spacing: Theme.mm(1.2)
                BodyText {
                    width: parent.width
                    text: overdue.modelData.text
                }
                Flow {
                    width: parent.width
                    spacing: Theme.gap
                    ActionButton {
                        enabled: !panel.exchange.busy
                        text: overdue.asked ? qsTr("Keep it") : qsTr("Erase the clip")
                        onClicked: overdue.asked = !overdue.asked
                    }
                    ActionButton {
                        visible: overdue.asked
                        enabled: !panel.exchange.busy
                        primary: true
                        text: qsTr("Erase it for good")
                        onClicked: panel.exchange.eraseOverdue(overdue.modelData.id)
                    }
                }
            }
        }
    }
    BodyText {
        width: parent.width
        font.pixelSize: Theme.smallSize
        text: qsTr("This is a note of what was agreed, not legal advice.")
    }
}
