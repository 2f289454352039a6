// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Controls

// A column of things to read that scrolls; on wide screens no wider than a page of a book.
Flickable {
    id: scroll
    default property alias content: column.data
    property real widest: Theme.mm(150)
    property alias spacing: column.spacing
    readonly property real columnWidth: column.width
    clip: true
    contentHeight: column.implicitHeight + 2 * Theme.pad
    boundsBehavior: Flickable.StopAtBounds
    Column {
        id: column
        x: (scroll.width - width) / 2
        y: Theme.pad
        width: Math.min(scroll.width - 2 * Theme.pad, scroll.widest)
        spacing: Theme.pad
    }
    SlimScrollBar {
        parent: scroll
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        orientation: Qt.Vertical
        size: scroll.visibleArea.heightRatio
        position: scroll.visibleArea.yPosition
    }
}
