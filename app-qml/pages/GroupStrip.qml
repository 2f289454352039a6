// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// Whose turn it is, readable across the tee; one tap gives the turn to the next.
Rectangle {
    id: strip
    required property GroupModel group
    implicitHeight: row.implicitHeight + 2 * Theme.mm(1.6)
    color: Theme.pressed
    GridLayout {
        id: row
        // Long names have the whole width of a phone.
        columns: strip.width >= Theme.mm(90) ? 2 : 1
        columnSpacing: Theme.gap
        rowSpacing: Theme.mm(1)
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        anchors.leftMargin: Theme.pad
        anchors.rightMargin: Theme.pad
        layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
        Text {
            Layout.fillWidth: true
            Layout.preferredWidth: 3
            text: strip.group.currentName
            color: Theme.ink
            font.pixelSize: Theme.numberSize * 1.7
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Theme.bodySize
            font.bold: true
            elide: Text.ElideRight
            maximumLineCount: 1
            textFormat: Text.PlainText
            Accessible.role: Accessible.StaticText
            Accessible.name: qsTr("Turn of %1").arg(text)
        }
        ActionButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 2
            Layout.maximumWidth: row.columns === 2 ? Theme.mm(60) : Number.POSITIVE_INFINITY
            Layout.minimumHeight: Theme.target * 1.2
            visible: strip.group.nextName !== ""
            primary: true
            glyph: "forward"
            text: qsTr("Next: %1").arg(strip.group.nextName)
            onClicked: strip.group.next()
        }
    }
}
