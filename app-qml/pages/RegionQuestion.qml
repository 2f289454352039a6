// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Controls

// A question whose answer is regions of the body; closed it tells the answer, open it takes it.
Column {
    id: question
    required property var entry
    required property var regions
    property bool open: false
    signal toggled(string region)
    spacing: Theme.mm(1.6)
    ActionButton {
        width: parent.width
        glyph: question.open ? "up" : "down"
        text: qsTr("%1: %2").arg(question.entry.question).arg(question.entry.told)
        onClicked: question.open = !question.open
    }
    Flow {
        width: parent.width
        visible: question.open
        spacing: Theme.gap
        Repeater {
            model: question.open ? question.regions : []
            ChoiceChip {
                required property var modelData
                text: modelData.text
                checkable: false
                checked: question.entry.chosen.includes(modelData.value)
                Accessible.role: Accessible.CheckBox
                Accessible.name: qsTr("%1: %2").arg(question.entry.question).arg(text)
                onClicked: question.toggled(modelData.value)
            }
        }
    }
}
