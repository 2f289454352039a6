// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Templates as T
import Plumbmark.Controls

// A drawing to tap; `label` is its name for readers and for those who cannot see it.
T.AbstractButton {
    id: control
    required property string glyph
    required property string label
    property bool outlined: true
    property bool strong: false
    implicitWidth: Theme.target
    implicitHeight: Theme.target
    focusPolicy: Qt.StrongFocus
    opacity: enabled ? 1 : 0.45
    text: label
    Accessible.role: Accessible.Button
    Accessible.name: label
    background: Rectangle {
        radius: Theme.radius
        color: control.strong ? Theme.accent : control.down ? Theme.pressed : control.outlined ? Theme.card : "transparent"
        border.color: control.visualFocus ? Theme.accent : Theme.edge
        border.width: control.visualFocus ? Theme.line * 1.5 : control.outlined && !control.strong ? Theme.line : 0
    }
    contentItem: Item {
        Glyph {
            anchors.centerIn: parent
            width: Math.min(Theme.mm(5.6), parent.width, parent.height)
            height: width
            name: control.glyph
            rightToLeft: control.mirrored
            color: control.strong ? Theme.accentInk : Theme.ink
        }
    }
}
