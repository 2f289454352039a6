// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls

// One tap draws a body line of address over every moment, to see what has moved away from it.
Column {
    id: column
    required property SwingModel swing
    spacing: Theme.mm(1.2)
    visible: swing.addressLines.length > 0
    BodyText {
        width: parent.width
        font.bold: true
        text: qsTr("Line of address over the whole swing")
    }
    Flow {
        width: parent.width
        spacing: Theme.gap
        Repeater {
            model: column.swing.addressLines
            ChoiceChip {
                required property var modelData
                maximumWidth: column.width
                text: modelData.label
                checkable: false
                Accessible.role: Accessible.Button
                Accessible.name: qsTr("Copy from address: %1").arg(text)
                onClicked: column.swing.copyFromAddress(modelData.id)
            }
        }
    }
}
