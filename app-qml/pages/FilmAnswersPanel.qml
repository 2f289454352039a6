// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// What the coach knows about the clip: asked once, the answers are the first offer next time.
Item {
    id: panel
    required property BringInModel bringIn
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
                x: Theme.pad
                y: Theme.pad
                width: flick.width - 2 * Theme.pad
                spacing: Theme.mm(4)
                Repeater {
                    model: panel.bringIn.filmSays
                    BodyText {
                        required property string modelData
                        Layout.fillWidth: true
                        text: modelData
                    }
                }
                ChoiceRow {
                    Layout.fillWidth: true
                    visible: panel.bringIn.rateUnknown
                    question: qsTr("Filmed at, frames a second")
                    choices: panel.bringIn.captureRateChoices
                    value: panel.bringIn.captureRate
                    onChosen: (value) => panel.bringIn.captureRate = value
                }
                TextEntry {
                    Layout.fillWidth: true
                    question: qsTr("Player")
                    hint: qsTr("Name")
                    text: panel.bringIn.player
                    onEdited: (text) => panel.bringIn.player = text
                }
                BodyText {
                    Layout.fillWidth: true
                    visible: panel.bringIn.remembered
                    font.pixelSize: Theme.smallSize
                    text: qsTr("Answered as for this player's last swing; change what is different today.")
                }
                ChoiceRow {
                    Layout.fillWidth: true
                    question: qsTr("View")
                    choices: panel.bringIn.viewChoices
                    value: panel.bringIn.view
                    onChosen: (value) => panel.bringIn.view = value
                }
                ChoiceRow {
                    Layout.fillWidth: true
                    question: qsTr("Player's hand")
                    choices: panel.bringIn.handChoices
                    value: panel.bringIn.hand
                    onChosen: (value) => panel.bringIn.hand = value
                }
                ChoiceRow {
                    Layout.fillWidth: true
                    question: qsTr("Club")
                    choices: panel.bringIn.clubChoices
                    value: panel.bringIn.club
                    onChosen: (value) => panel.bringIn.club = value
                }
                ChoiceRow {
                    Layout.fillWidth: true
                    visible: choices.length > 0
                    question: panel.bringIn.club === "wedge" ? qsTr("Loft") : qsTr("Number")
                    choices: panel.bringIn.clubNumberChoices
                    value: panel.bringIn.clubNumber
                    onChosen: (value) => panel.bringIn.clubNumber = value
                }
                ChoiceRow {
                    Layout.fillWidth: true
                    question: qsTr("Shot")
                    choices: panel.bringIn.shotChoices
                    value: panel.bringIn.shot
                    onChosen: (value) => panel.bringIn.shot = value
                }
                ChoiceRow {
                    Layout.fillWidth: true
                    visible: !panel.bringIn.rateUnknown
                    question: qsTr("Filmed at, frames a second")
                    choices: panel.bringIn.captureRateChoices
                    value: panel.bringIn.captureRate
                    onChosen: (value) => panel.bringIn.captureRate = value
                }
                ChoiceRow {
                    Layout.fillWidth: true
                    question: qsTr("Mirrored")
                    choices: panel.bringIn.mirroredChoices
                    value: panel.bringIn.mirrored
                    onChosen: (value) => panel.bringIn.mirrored = value
                }
                TextEntry {
                    Layout.fillWidth: true
                    question: qsTr("Height in cm, if known")
                    hint: qsTr("for example 178")
                    inputMethodHints: Qt.ImhFormattedNumbersOnly
                    text: panel.bringIn.stature
                    onEdited: (text) => panel.bringIn.stature = text
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
        BodyText {
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            Layout.bottomMargin: 0
            visible: text !== ""
            text: panel.bringIn.problem !== "" ? panel.bringIn.problem
                                               : panel.bringIn.file === "" ? qsTr("Choose a film first.") : ""
            font.bold: true
            color: panel.bringIn.problem !== "" ? Theme.danger : Theme.ink
        }
        ActionButton {
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            primary: true
            glyph: "tick"
            text: qsTr("Read the swing")
            enabled: panel.bringIn.file !== ""
            onClicked: panel.bringIn.start()
        }
    }
}
