// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Templates as T
import Plumbmark.Controls

// Something that is chosen or not, by itself. The truth is `on`; a tap asks for the other and never turns it by itself.
T.AbstractButton {
    id: chip
    required property bool on
    implicitHeight: Math.max(Theme.target, word.implicitHeight + Theme.mm(2))
    implicitWidth: Math.max(Theme.target, words.advanceWidth + 4 + Theme.mm(11))
    // Longer words than the page is wide go on a second line.
    width: parent ? Math.min(implicitWidth, parent.width) : implicitWidth
    TextMetrics {
        id: words
        text: chip.text
        font.pixelSize: Theme.bodySize
        font.bold: true
    }
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.CheckBox
    Accessible.name: text
    Accessible.checkable: true
    Accessible.checked: on
    background: Rectangle {
        radius: Theme.radius
        color: chip.down ? Theme.pressed : Theme.card
        border.color: chip.visualFocus || chip.on ? Theme.accent : Theme.edge
        border.width: chip.visualFocus || chip.on ? Theme.line * 1.5 : Theme.line
    }
    contentItem: Item {
        Rectangle {
            id: box
            anchors.verticalCenter: parent.verticalCenter
            x: Theme.mm(2.2)
            width: Theme.mm(4.4)
            height: width
            radius: Theme.mm(0.8)
            color: chip.on ? Theme.accent : "transparent"
            border.color: chip.on ? Theme.accent : Theme.edge
            border.width: Theme.line
            Glyph {
                anchors.centerIn: parent
                width: Theme.mm(3.6)
                height: width
                visible: chip.on
                name: "tick"
                color: Theme.accentInk
            }
        }
        Text {
            id: word
            anchors.verticalCenter: parent.verticalCenter
            anchors.left: box.right
            anchors.leftMargin: Theme.mm(2)
            anchors.right: parent.right
            anchors.rightMargin: Theme.mm(1.6)
            wrapMode: Text.Wrap
            text: chip.text
            color: Theme.ink
            font.pixelSize: Theme.bodySize
            font.bold: chip.on
            textFormat: Text.PlainText
        }
    }
}
