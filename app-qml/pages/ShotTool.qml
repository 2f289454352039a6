// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// What the ball did: one tap in the grid of start line and curve; the rest where it is worth a tap.
Flickable {
    id: flick
    required property ShotRecordModel shot
    clip: true
    contentHeight: column.implicitHeight + 2 * Theme.pad
    boundsBehavior: Flickable.StopAtBounds
    ColumnLayout {
        id: column
        x: Theme.pad
        width: flick.width - 2 * Theme.pad
        spacing: Theme.mm(3)
        BodyText {
            Layout.fillWidth: true
            visible: text !== ""
            text: flick.shot.problem
            font.bold: true
            color: Theme.danger
        }
        GridLayout {
            Layout.fillWidth: true
            columns: 3
            columnSpacing: Theme.gap
            rowSpacing: Theme.gap
            // The grid is ground seen from behind the ball, not text: it is never mirrored with the language.
            LayoutMirroring.enabled: false
            Repeater {
                model: flick.shot.flights
                FlightButton {
                    required property var modelData
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    Layout.preferredWidth: 1
                    glyph: modelData.glyph
                    text: modelData.text
                    chosen: flick.shot.answers.flight === modelData.value
                    onClicked: flick.shot.chooseFlight(modelData.value)
                }
            }
        }
        BodyText {
            Layout.fillWidth: true
            font.pixelSize: Theme.smallSize
            text: qsTr("Columns: where it started, seen from behind the ball. Rows: which way it bent. A second tap takes an answer back.")
        }
        Repeater {
            model: flick.shot.questions
            ChoiceRow {
                required property var modelData
                Layout.fillWidth: true
                question: modelData.question
                choices: modelData.choices
                value: flick.shot.answers[modelData.field]
                onChosen: (value) => flick.shot.choose(modelData.field, value)
            }
        }
        ActionButton {
            Layout.fillWidth: true
            glyph: flick.shot.star ? "star-full" : "star"
            text: flick.shot.star ? qsTr("Starred: take the star away") : qsTr("Star this shot")
            onClicked: flick.shot.toggleStar()
        }
        TextEntry {
            Layout.fillWidth: true
            question: qsTr("Tags")
            hint: qsTr("words with commas between")
            text: flick.shot.tags
            onFinished: (text) => flick.shot.fileUnder(text)
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
