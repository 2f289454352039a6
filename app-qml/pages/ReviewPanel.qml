// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls

// Which swing, three lines to remember, and what goes home.
Rectangle {
    id: panel
    required property ReviewModel review
    color: Theme.paper

    PanelScroll {
        id: scroll
        anchors.fill: parent
        BodyText {
            width: parent.width
            visible: text !== ""
            text: panel.review.problem
            font.bold: true
            color: Theme.danger
        }
        Flow {
            width: parent.width
            spacing: Theme.gap
            Repeater {
                model: panel.review.swings
                ChoiceChip {
                    required property var modelData
                    text: modelData.label
                    checkable: false
                    checked: modelData.chosen
                    Accessible.name: qsTr("Show swing %1").arg(modelData.label)
                    onClicked: panel.review.showSwing(modelData.clip)
                }
            }
        }
        TextEntry {
            id: saw
            width: parent.width
            question: qsTr("What you saw")
            text: panel.review.saw
        }
        TextEntry {
            id: said
            width: parent.width
            question: qsTr("What you said")
            text: panel.review.said
        }
        TextEntry {
            id: next
            width: parent.width
            question: qsTr("What comes next")
            text: panel.review.next
        }
        ActionButton {
            readonly property bool same: saw.text.trim() === panel.review.saw && said.text.trim() === panel.review.said && next.text.trim() === panel.review.next
            width: parent.width
            glyph: same && panel.review.noteKept ? "tick" : ""
            text: same && panel.review.noteKept ? qsTr("Three lines kept") : qsTr("Keep the three lines")
            enabled: !same && !panel.review.busy
            onClicked: panel.review.keepNote(saw.text, said.text, next.text)
        }
        Column {
            visible: panel.review.canExport
            width: parent.width
            spacing: Theme.gap
            ActionButton {
                width: parent.width
                visible: !panel.review.busy
                glyph: "clip"
                text: qsTr("Make a film of the review")
                enabled: panel.review.hasReview && panel.review.doing === ""
                onClicked: panel.review.makeFilm()
            }
            ActionButton {
                width: parent.width
                visible: !panel.review.busy
                glyph: "note"
                text: qsTr("Make the lesson sheet (PDF)")
                enabled: panel.review.doing === "" && panel.review.swings.length > 0
                onClicked: panel.review.makeSheet()
            }
            ProgressLine {
                width: parent.width
                visible: panel.review.busy
                share: panel.review.progressShare
                label: qsTr("Writing, %1 per cent").arg(Math.round(100 * share))
            }
            ActionButton {
                width: parent.width
                visible: panel.review.busy
                glyph: "close"
                text: qsTr("Cancel")
                onClicked: panel.review.cancelMaking()
            }
            BodyText {
                width: parent.width
                visible: text !== ""
                text: panel.review.made
                font.bold: true
            }
        }
    }
}
