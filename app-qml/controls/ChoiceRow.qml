// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick

// A question with a few answers, one of them chosen. `choices`: [{value, text}].
Column {
    id: row
    property string question
    property var choices: []
    property string value
    signal chosen(string value)
    spacing: Theme.mm(1.2)
    Accessible.role: Accessible.Grouping
    Accessible.name: question
    BodyText {
        width: parent.width
        text: row.question
        font.bold: true
    }
    Flow {
        width: parent.width
        spacing: Theme.gap
        Repeater {
            model: row.choices
            ChoiceChip {
                required property var modelData
                maximumWidth: row.width
                text: modelData.text
                checked: row.value === modelData.value
                autoExclusive: false
                // The truth is in `value`; a tap asks for it and never toggles the chip by itself.
                checkable: false
                Accessible.name: row.question + ": " + text
                onClicked: row.chosen(modelData.value)
            }
        }
    }
}
