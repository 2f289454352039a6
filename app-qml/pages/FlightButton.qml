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
    implicitHeight: Math.max(Theme.target, Theme.smallSize * 3)
    // Start line and bend are what counts: the word stands beside the drawing and may take two lines.
    readonly property real drawing: Math.min(Theme.target - Theme.mm(2), width * 0.3)
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
            anchors.left: parent.left
            anchors.leftMargin: Theme.mm(0.8)
            anchors.verticalCenter: parent.verticalCenter
            width: button.drawing
            height: width
            name: button.glyph
            color: button.chosen ? Theme.accentInk : Theme.ink
            // Left and right are those of the ground, in every language.
            LayoutMirroring.enabled: false
        }
        Text {
            id: word
            anchors.left: parent.left
            anchors.leftMargin: button.drawing + Theme.mm(1.6)
            anchors.right: parent.right
            anchors.rightMargin: Theme.mm(0.6)
            anchors.top: parent.top
            anchors.bottom: parent.bottom
            verticalAlignment: Text.AlignVCenter
            text: button.text
            color: button.chosen ? Theme.accentInk : Theme.ink
            font.pixelSize: Theme.smallSize
            font.bold: button.chosen
            wrapMode: Text.WordWrap
            fontSizeMode: Text.Fit
            minimumPixelSize: Math.round(Theme.smallSize * 0.6 / Theme.textScale)
            textFormat: Text.PlainText
        }
    }
}
