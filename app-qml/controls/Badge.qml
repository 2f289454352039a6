// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick

// A few words on a dark plate, readable on any picture.
Rectangle {
    id: badge
    property alias text: label.text
    property real maximumWidth: 10000
    implicitWidth: label.width + Theme.mm(2.4)
    implicitHeight: label.implicitHeight + Theme.mm(1)
    radius: Theme.mm(1)
    color: Theme.plate
    Text {
        id: label
        anchors.centerIn: parent
        width: Math.min(implicitWidth, badge.maximumWidth - Theme.mm(2.4))
        color: Theme.plateInk
        font.pixelSize: Theme.smallSize
        font.bold: true
        wrapMode: Text.Wrap
        textFormat: Text.PlainText
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
}
