// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Templates as T
import QtQuick.Window

T.AbstractButton {
    id: chip
    // Words that have no room on one line take more lines.
    property real maximumWidth: Window.width > 0 ? Window.width - 2 * Theme.pad : 10000
    implicitHeight: Math.max(Theme.target, word.implicitHeight + Theme.mm(2))
    implicitWidth: Math.max(Theme.target, Math.min(maximumWidth, advance.advanceWidth + 4 + Theme.mm(5)))
    leftPadding: Theme.mm(2.4)
    rightPadding: Theme.mm(2.4)
    checkable: true
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.RadioButton
    Accessible.name: text
    Accessible.checkable: true
    Accessible.checked: checked
    background: Rectangle {
        radius: Math.min(height, Theme.target) / 2
        color: chip.checked ? Theme.accent : chip.down ? Theme.pressed : Theme.card
        border.color: chip.visualFocus ? Theme.accent : Theme.edge
        border.width: chip.visualFocus ? Theme.line * 1.5 : Theme.line
    }
    TextMetrics {
        id: advance
        text: chip.text
        font.pixelSize: Theme.bodySize
        font.bold: true
    }
    contentItem: Text {
        id: word
        text: chip.text
        color: chip.checked ? Theme.accentInk : Theme.ink
        font.pixelSize: Theme.bodySize
        font.bold: chip.checked
        horizontalAlignment: Text.AlignHCenter
        wrapMode: Text.Wrap
        verticalAlignment: Text.AlignVCenter
        textFormat: Text.PlainText
    }
}
