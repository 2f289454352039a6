// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls

// Which lesson goes, to whom, and what of it travels; covering heads with the strip that is looked through first.
Column {
    id: panel
    required property ExchangeModel exchange
    spacing: Theme.pad * 1.5
    readonly property bool own: exchange.audience === "own"

    ChoiceRow {
        width: parent.width
        question: qsTr("Lesson")
        choices: panel.exchange.lessonChoices
        value: panel.exchange.lesson
        onChosen: (value) => panel.exchange.lesson = value
    }
    BodyText {
        width: parent.width
        visible: panel.exchange.lesson === ""
        text: qsTr("There is no lesson to send yet.")
    }
    ChoiceRow {
        width: parent.width
        question: qsTr("It goes to")
        choices: [{value: "somebody", text: qsTr("somebody else")}, {value: "own", text: qsTr("a device of mine")}]
        value: panel.exchange.audience
        onChosen: (value) => panel.exchange.audience = value
    }
    BodyText {
        width: parent.width
        text: panel.own ? qsTr("Clips go as they were filmed.")
                        : qsTr("Clips go without place, device and dates.") + " " + panel.exchange.sharingAnswer
    }
    Column {
        width: parent.width
        spacing: Theme.mm(1.2)
        Accessible.role: Accessible.Grouping
        Accessible.name: qsTr("What travels")
        BodyText {
            width: parent.width
            text: qsTr("What travels")
            font.bold: true
        }
        Flow {
            width: parent.width
            spacing: Theme.gap
            SwitchChip {
                text: qsTr("Clips")
                on: panel.exchange.withClips
                onClicked: panel.exchange.withClips = !panel.exchange.withClips
            }
            SwitchChip {
                text: qsTr("Health notes")
                on: panel.exchange.withHealth
                onClicked: panel.exchange.withHealth = !panel.exchange.withHealth
            }
            SwitchChip {
                text: qsTr("Heads covered")
                on: panel.exchange.coverHeads
                onClicked: panel.exchange.coverHeads = !panel.exchange.coverHeads
            }
        }
    }
    Column {
        width: parent.width
        spacing: Theme.pad
        visible: panel.exchange.coverHeads && panel.exchange.withClips && panel.exchange.lesson !== ""
        BodyText {
            width: parent.width
            text: panel.exchange.coverState === "released"
                  ? qsTr("Covered copies of this lesson's clips were looked through and released.")
                  : panel.exchange.coverState === "made"
                    ? qsTr("Look at every picture below. Is nobody to be recognised?")
                    : qsTr("Covered copies are made first; you look them through before they may travel.")
        }
        Flow {
            width: parent.width
            spacing: Theme.gap
            ActionButton {
                enabled: !panel.exchange.busy
                text: panel.exchange.coverState === "none" ? qsTr("Cover the heads") : qsTr("Cover the heads again")
                onClicked: panel.exchange.makeCovers()
            }
            ActionButton {
                visible: panel.exchange.coverState === "made"
                primary: true
                text: qsTr("I have looked: release")
                onClicked: panel.exchange.releaseCovers()
            }
        }
        Flow {
            width: parent.width
            spacing: Theme.gap
            Repeater {
                model: panel.exchange.strip
                Image {
                    required property var modelData
                    source: modelData.source
                    width: Math.min(Theme.mm(42), (panel.width - 2 * Theme.gap) / 2)
                    fillMode: Image.PreserveAspectFit
                    Accessible.role: Accessible.Graphic
                    Accessible.name: qsTr("Covered picture %1").arg(modelData.frame)
                    Badge {
                        x: Theme.mm(1)
                        y: Theme.mm(1)
                        text: modelData.doubtful ? qsTr("%1: look closely").arg(modelData.frame) : modelData.frame
                        maximumWidth: parent.width - Theme.mm(2)
                    }
                }
            }
        }
    }
}
