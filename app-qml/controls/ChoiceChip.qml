// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Templates as T

T.AbstractButton {
    id: chip
    implicitHeight: Math.max(Theme.target, word.implicitHeight + Theme.mm(2))
    implicitWidth: Math.max(Theme.target, word.implicitWidth + Theme.mm(5))
    checkable: true
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.RadioButton
    Accessible.name: text
    Accessible.checkable: true
    Accessible.checked: checked
    background: Rectangle {
        radius: height / 2
        color: chip.checked ? Theme.accent : chip.down ? Theme.pressed : Theme.card
        border.color: chip.visualFocus ? Theme.accent : Theme.edge
        border.width: chip.visualFocus ? Theme.line * 1.5 : Theme.line
    }
    contentItem: Text {
        id: word
        text: chip.text
        color: chip.checked ? Theme.accentInk : Theme.ink
        font.pixelSize: Theme.bodySize
        font.bold: chip.checked
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        textFormat: Text.PlainText
    }
}
