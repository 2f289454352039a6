// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Templates as T
import Plumbmark.Controls

// One of the nine ways a ball flies, drawn as the player sees it.
T.AbstractButton {
    id: button
    required property string glyph
    required property bool chosen
    implicitHeight: Math.max(Theme.target * 1.5, Theme.mm(8) + word.implicitHeight + Theme.mm(2))
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.RadioButton
    Accessible.name: qsTr("Ball flight: %1").arg(text)
    Accessible.checkable: true
    Accessible.checked: chosen
    background: Rectangle {
        radius: Theme.radius
        color: button.chosen ? Theme.accent : button.down ? Theme.pressed : Theme.card
        border.color: button.visualFocus ? Theme.accent : Theme.edge
        border.width: button.visualFocus ? Theme.line * 1.5 : Theme.line
    }
    contentItem: Item {
        Glyph {
            anchors.horizontalCenter: parent.horizontalCenter
            anchors.top: parent.top
            anchors.topMargin: Theme.mm(1)
            anchors.bottom: word.top
            width: height
            name: button.glyph
            color: button.chosen ? Theme.accentInk : Theme.ink
            // Left and right are those of the ground, in every language.
            LayoutMirroring.enabled: false
        }
        Text {
            id: word
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.mm(0.8)
            width: parent.width
            text: button.text
            color: button.chosen ? Theme.accentInk : Theme.ink
            font.pixelSize: Theme.smallSize
            font.bold: button.chosen
            horizontalAlignment: Text.AlignHCenter
            wrapMode: Text.Wrap
            textFormat: Text.PlainText
        }
    }
}
