// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls

// The player's lessons, newest first.
ListView {
    id: list
    required property PlayerModel player
    signal openSwing(string clip, string title)
    clip: true
    model: player.lessons
    spacing: Theme.pad
    topMargin: Theme.pad
    bottomMargin: Theme.pad
    boundsBehavior: Flickable.StopAtBounds
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Lessons of %1").arg(player.name)
    delegate: LessonDelegate {
        width: Math.min(list.width - 2 * Theme.pad, Theme.mm(190))
        x: (list.width - width) / 2
        onOpenSwing: (clip, title) => list.openSwing(clip, title)
    }
    BodyText {
        anchors.centerIn: parent
        width: parent.width - 2 * Theme.pad
        visible: list.count === 0
        horizontalAlignment: Text.AlignHCenter
        text: qsTr("No lesson yet. Bring in or film a swing of this player, or start a lesson under Today.")
    }
    SlimScrollBar {
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        orientation: Qt.Vertical
        size: list.visibleArea.heightRatio
        position: list.visibleArea.yPosition
    }
}
