// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// How fast the swing plays, and between which two moments it goes round.
Flickable {
    id: flick
    required property SwingModel swing
    property int from: swing.loopFrom
    clip: true
    contentHeight: column.implicitHeight + 2 * Theme.pad
    boundsBehavior: Flickable.StopAtBounds
    ColumnLayout {
        id: column
        x: Theme.pad
        width: flick.width - 2 * Theme.pad
        spacing: Theme.pad
        ActionButton {
            Layout.fillWidth: true
            primary: true
            glyph: flick.swing.playing ? "pause" : "play"
            text: flick.swing.playing ? qsTr("Pause") : qsTr("Play")
            onClicked: flick.swing.playing = !flick.swing.playing
        }
        ChoiceRow {
            Layout.fillWidth: true
            question: qsTr("Speed")
            choices: [{ value: "0.125", text: qsTr("An eighth") }, { value: "0.25", text: qsTr("A quarter") },
                { value: "0.5", text: qsTr("Half") }, { value: "1", text: qsTr("Full") }]
            value: String(flick.swing.playSpeed)
            onChosen: (value) => flick.swing.playSpeed = Number(value)
        }
        ChoiceRow {
            Layout.fillWidth: true
            question: qsTr("Round and round from")
            choices: [{ value: "-1", text: qsTr("No loop") }].concat(
                flick.swing.stripChoices.map(m => ({ value: String(m.row), text: m.label })))
            value: String(flick.from)
            onChosen: (value) => {
                flick.from = Number(value)
                if (flick.from < 0)
                    flick.swing.setLoop(-1, -1)
            }
        }
        ChoiceRow {
            Layout.fillWidth: true
            visible: flick.from >= 0
            question: qsTr("to")
            choices: flick.swing.stripChoices.filter(m => m.row !== flick.from).map(m => ({ value: String(m.row), text: m.label }))
            value: String(flick.swing.loopTo === flick.from ? flick.swing.loopFrom : flick.swing.loopTo)
            onChosen: (value) => flick.swing.setLoop(flick.from, Number(value))
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
