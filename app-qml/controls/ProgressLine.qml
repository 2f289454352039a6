// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick

Item {
    id: line
    property real share: 0
    property string label: ""
    implicitHeight: Theme.mm(3)
    Accessible.role: Accessible.ProgressBar
    Accessible.name: label
    Rectangle {
        anchors.fill: parent
        radius: height / 2
        color: Theme.card
        border.color: Theme.edge
        border.width: Theme.line
    }
    Rectangle {
        anchors.left: parent.left
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        anchors.margins: Theme.line
        width: Math.max(height, (parent.width - 2 * Theme.line) * Math.min(1, Math.max(0, line.share)))
        radius: height / 2
        color: Theme.accent
    }
}
