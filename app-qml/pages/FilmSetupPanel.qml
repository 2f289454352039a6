// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// Before the camera runs: whose swing, from where, and how to stand the phone.
Item {
    id: panel
    required property FilmModel film
    required property BringInModel bringIn
    signal bringInInstead()
    signal bodyCard(string player)
    Component.onCompleted: bringIn.lookAtBody()
    signal openSwing(string clip, string title)
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
                width: Math.min(flick.width - 2 * Theme.pad, Theme.mm(150))
                spacing: Theme.mm(4)
                BodyText {
                    Layout.fillWidth: true
                    visible: text !== ""
                    text: panel.film.problem
                    font.bold: true
                    color: Theme.danger
                }
                ActionButton {
                    visible: panel.film.problem !== ""
                    glyph: "clip"
                    text: qsTr("Bring in a clip instead")
                    onClicked: panel.bringInInstead()
                }
                TextEntry {
                    Layout.fillWidth: true
                    question: qsTr("Player")
                    hint: qsTr("Name")
                    text: panel.bringIn.player
                    onEdited: (text) => panel.bringIn.player = text
                }
                ActionButton {
                    Layout.fillWidth: true
                    visible: panel.bringIn.askBody !== ""
                    glyph: "body"
                    text: qsTr("Body card: ask before the first full swing")
                    onClicked: panel.bodyCard(panel.bringIn.askBody)
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
                BodyText {
                    Layout.fillWidth: true
                    text: panel.bringIn.view === "down-the-line"
                          ? qsTr("Behind the player on the line of the hands, lens at hand height, 4 to 5 metres away, the middle of the picture on the hands. A stick on the target line in view, the sun behind the camera. Never stand on the ball's line.")
                          : qsTr("Square to the player's chest, lens at hand height, 4 to 5 metres away, the middle of the picture on the ball. The main lens, not the ultra-wide one; a stick on the target line in view, the sun behind the camera.")
                }
                TakesPanel {
                    Layout.fillWidth: true
                    Layout.preferredHeight: Theme.mm(46)
                    visible: panel.film.takes.length > 0
                    film: panel.film
                    onOpenSwing: (clip, title) => panel.openSwing(clip, title)
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
        Flow {
            id: startRow
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            spacing: Theme.gap
            layoutDirection: Theme.leftHanded ? Qt.LeftToRight : Qt.RightToLeft
            ActionButton {
                width: Math.min(implicitWidth, startRow.width)
                primary: true
                glyph: "play"
                text: qsTr("Start the camera")
                onClicked: panel.film.startFilming()
            }
            ActionButton {
                width: Math.min(implicitWidth, startRow.width)
                visible: panel.film.canPractise
                glyph: "body"
                text: qsTr("Practise at home")
                Accessible.description: qsTr("The phone on a stand says after a swing whether the checkpoint holds")
                onClicked: panel.film.startPractising()
            }
        }
    }
}
