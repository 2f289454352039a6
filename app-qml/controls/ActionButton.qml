// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Templates as T
import Plumbmark.Controls

// A button with a word, and a drawing before it where one helps.
T.Button {
    id: control
    property string glyph: ""
    property bool primary: false
    readonly property real glyphRoom: glyph === "" ? 0 : Theme.bodySize * 1.3 + Theme.mm(1.6)
    implicitHeight: Math.max(Theme.target, label.implicitHeight + Theme.pad)
    implicitWidth: Math.max(Theme.target, words.advanceWidth + 4 + glyphRoom + 2 * Theme.mm(3))
    focusPolicy: Qt.StrongFocus
    opacity: enabled ? 1 : 0.45
    Accessible.role: Accessible.Button
    Accessible.name: text

    background: Rectangle {
        radius: Theme.radius
        color: control.primary ? Theme.accent : control.down ? Theme.pressed : Theme.card
        border.color: control.visualFocus ? Theme.accent : Theme.edge
        border.width: control.visualFocus ? Theme.line * 1.5 : control.primary ? 0 : Theme.line
        Rectangle {
            anchors.fill: parent
            anchors.margins: Theme.line
            visible: control.visualFocus && control.primary
            radius: Theme.radius - Theme.line
            color: "transparent"
            border.color: Theme.accentInk
            border.width: Theme.line
        }
    }
    TextMetrics {
        id: words
        text: control.text
        font.pixelSize: Theme.bodySize
        font.bold: true
    }
    contentItem: Item {
        Row {
            id: row
            anchors.centerIn: parent
            spacing: Theme.mm(1.6)
            Glyph {
                visible: control.glyph !== ""
                anchors.verticalCenter: parent.verticalCenter
                width: Theme.bodySize * 1.3
                height: width
                name: control.glyph
                color: label.color
            }
            Text {
                id: label
                anchors.verticalCenter: parent.verticalCenter
                width: Math.min(words.advanceWidth + 4, control.width - Theme.mm(4) - control.glyphRoom)
                text: control.text
                color: control.primary ? Theme.accentInk : Theme.ink
                font.pixelSize: Theme.bodySize
                font.bold: true
                wrapMode: Text.Wrap
                horizontalAlignment: Text.AlignHCenter
                textFormat: Text.PlainText
            }
        }
    }
}
