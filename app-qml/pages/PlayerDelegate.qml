// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Plumbmark.Controls

T.AbstractButton {
    id: row
    required property string playerId
    required property string name
    required property string detail
    required property string lastDay
    height: Math.max(Theme.target * 1.2, texts.implicitHeight + 2 * Theme.mm(1.4))
    focusPolicy: Qt.StrongFocus
    text: name
    Accessible.role: Accessible.Button
    Accessible.name: qsTr("Player %1, %2").arg(name).arg(detail)
    background: Rectangle {
        color: row.down ? Theme.pressed : "transparent"
        border.color: Theme.accent
        border.width: row.visualFocus ? Theme.line * 1.5 : 0
        Rectangle {
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            height: Theme.hair
            color: Theme.edge
        }
    }
    contentItem: Item {
        RowLayout {
            anchors.fill: parent
            anchors.leftMargin: Theme.pad
            anchors.rightMargin: Theme.pad
            spacing: Theme.gap
            Glyph {
                Layout.preferredWidth: Theme.mm(6)
                Layout.preferredHeight: Theme.mm(6)
                name: "person"
                color: Theme.ink
            }
            ColumnLayout {
                id: texts
                Layout.fillWidth: true
                spacing: 0
                Text {
                    Layout.fillWidth: true
                    text: row.name
                    color: Theme.ink
                    font.pixelSize: Theme.bodySize
                    font.bold: true
                    wrapMode: Text.Wrap
                    textFormat: Text.PlainText
                }
                Text {
                    Layout.fillWidth: true
                    text: row.detail
                    color: Theme.quiet
                    font.pixelSize: Theme.smallSize
                    wrapMode: Text.Wrap
                    textFormat: Text.PlainText
                }
            }
            Text {
                text: row.lastDay
                color: Theme.quiet
                font.pixelSize: Theme.smallSize
                textFormat: Text.PlainText
            }
        }
    }
}
