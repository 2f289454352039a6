// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Controls

// Shape + word + colour: none of the three alone.
Row {
    id: badge
    required property int level
    required property string word
    property real shapeSize: Theme.mm(6)
    property bool showWord: true
    spacing: Theme.mm(1.4)
    StatusShape {
        anchors.verticalCenter: parent.verticalCenter
        width: badge.shapeSize
        height: badge.shapeSize
        level: badge.level
        fill: Theme.statusFill(badge.level)
        ink: Theme.ink
        sign: Theme.statusSign(badge.level)
    }
    Text {
        visible: badge.showWord
        anchors.verticalCenter: parent.verticalCenter
        text: badge.word
        color: Theme.ink
        font.pixelSize: Theme.bodySize
        font.bold: true
        textFormat: Text.PlainText
    }
}
