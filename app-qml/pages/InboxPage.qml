// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// Who sent swings in and waits, what to ask for again, and the card that tells students how to film.
FocusScope {
    id: page
    required property InboxModel inbox
    signal back()
    signal openLesson(string lesson, string title)

    Keys.onPressed: (event) => {
        if (event.key === Qt.Key_Escape || event.key === Qt.Key_Back) {
            event.accepted = true
            page.back()
        }
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        PageHeader {
            Layout.fillWidth: true
            title: qsTr("Sent in")
            onBack: page.back()
        }
        PanelScroll {
            id: scroll
            Layout.fillWidth: true
            Layout.fillHeight: true
            BodyText {
                width: parent.width
                visible: text !== ""
                text: page.inbox.problem
                font.bold: true
                color: Theme.danger
            }
            BodyText {
                width: parent.width
                visible: page.inbox.rows.length === 0
                text: qsTr("Nobody is waiting.")
            }
            Repeater {
                model: page.inbox.rows
                InboxDelegate {
                    width: scroll.columnWidth
                    busy: page.inbox.busy
                    onOpenLesson: page.openLesson(modelData.lesson, modelData.player)
                    onFilmAgain: (because) => page.inbox.filmAgain(modelData.lesson, because)
                    onAnswered: page.inbox.answered(modelData.lesson)
                }
            }
            ProgressLine {
                width: parent.width
                visible: page.inbox.busy
                share: page.inbox.progressShare
                label: qsTr("Looking at the clips, %1 per cent").arg(Math.round(100 * share))
            }
            ActionButton {
                width: parent.width
                visible: page.inbox.busy
                glyph: "close"
                text: qsTr("Cancel")
                onClicked: page.inbox.cancel()
            }
            BodyText {
                width: parent.width
                visible: page.inbox.words !== ""
                text: qsTr("For the student:\n%1").arg(page.inbox.words)
            }
            Column {
                visible: page.inbox.others.length > 0
                width: parent.width
                spacing: Theme.gap
                BodyText {
                    width: parent.width
                    text: qsTr("Another lesson waits (an answer within three days)")
                    font.bold: true
                    Accessible.role: Accessible.Heading
                }
                Flow {
                    width: parent.width
                    spacing: Theme.gap
                    Repeater {
                        model: page.inbox.others
                        ChoiceChip {
                            required property var modelData
                            text: modelData.label
                            checkable: false
                            Accessible.name: qsTr("Waits for you: %1").arg(modelData.label)
                            onClicked: page.inbox.wait(modelData.lesson, 3)
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
                text: qsTr("A card for students: how to film and what to write")
                font.bold: true
                Accessible.role: Accessible.Heading
            }
            TextEntry {
                id: player
                width: parent.width
                question: qsTr("For whom (may stay empty)")
            }
            TextEntry {
                id: coach
                width: parent.width
                question: qsTr("Your name (may stay empty)")
            }
            TextEntry {
                id: due
                width: parent.width
                question: qsTr("By when (may stay empty)")
            }
            TextEntry {
                id: question
                width: parent.width
                question: qsTr("What you want to see (may stay empty)")
            }
            ActionButton {
                width: parent.width
                glyph: "note"
                text: qsTr("Make the card")
                onClicked: page.inbox.makeCard(player.text, coach.text, due.text, question.text)
            }
            BodyText {
                width: parent.width
                visible: text !== ""
                text: page.inbox.made
                font.bold: true
            }
        }
    }
}
