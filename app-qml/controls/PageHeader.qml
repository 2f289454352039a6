// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Controls

// Title line of a page: way back on the reading side, actions on the other.
Item {
    id: header
    property string title
    property string subtitle: ""
    property bool canGoBack: true
    property alias actions: actionRow.data
    signal back()
    implicitHeight: Math.max(Theme.target, titles.implicitHeight) + Theme.mm(2)

    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: header.canGoBack ? Theme.mm(0.6) : Theme.pad
        anchors.rightMargin: Theme.mm(0.6)
        spacing: header.canGoBack ? Theme.mm(0.6) : Theme.pad
        IconButton {
            visible: header.canGoBack
            glyph: "back"
            label: qsTr("Back")
            outlined: false
            onClicked: header.back()
        }
        Glyph {
            visible: !header.canGoBack && header.width - actionRow.width >= Theme.mm(30) * Theme.textScale
            name: "plumb"
            color: Theme.accent
            Layout.preferredWidth: Theme.mm(7)
            Layout.preferredHeight: Theme.mm(7)
        }
        ColumnLayout {
            id: titles
            spacing: 0
            Layout.fillWidth: true
            Text {
                Layout.fillWidth: true
                text: header.title
                color: Theme.ink
                font.pixelSize: Theme.titleSize
                font.bold: true
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: Math.round(Theme.smallSize / Theme.textScale)
                elide: Text.ElideRight
                maximumLineCount: 1
                verticalAlignment: Text.AlignVCenter
                textFormat: Text.PlainText
                Accessible.role: Accessible.Heading
                Accessible.name: text
                Accessible.description: header.subtitle
            }
            Text {
                // Large letters beside many actions: one word a line would take the page its room.
                visible: text !== "" && (Theme.textScale <= 1.3 || header.width - actionRow.width - Theme.mm(14) >= 6 * Theme.smallSize)
                Layout.fillWidth: true
                text: header.subtitle
                color: Theme.quiet
                font.pixelSize: Theme.smallSize
                wrapMode: Text.Wrap
                textFormat: Text.PlainText
                Accessible.role: Accessible.StaticText
                Accessible.name: text
            }
        }
        Row {
            id: actionRow
            spacing: Theme.gap
        }
    }
    Rectangle {
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        height: Theme.hair
        color: Theme.edge
    }
}
