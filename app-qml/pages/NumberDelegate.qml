// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Plumbmark.Controls

// One number with its uncertainty, or why it cannot be told. A tap goes to its moment.
T.AbstractButton {
    id: row
    required property string label
    required property string moment
    required property bool told
    required property string value
    required property string sigma
    required property string unit
    required property string reason
    required property string origin
    required property int frame
    required property string spoken
    signal showMoment(int frame)

    implicitHeight: Math.max(Theme.target, body.implicitHeight + 2 * Theme.mm(1.4))
    focusPolicy: Qt.StrongFocus
    text: label
    Accessible.role: Accessible.Button
    Accessible.name: spoken
    onClicked: if (frame >= 0) showMoment(frame)
    background: Rectangle {
        color: row.down ? Theme.pressed : "transparent"
        border.color: Theme.accent
        border.width: row.visualFocus ? Theme.line : 0
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
            id: body
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            anchors.leftMargin: Theme.pad
            anchors.rightMargin: Theme.pad
            spacing: Theme.gap
            ColumnLayout {
                Layout.fillWidth: true
                spacing: 0
                Text {
                    Layout.fillWidth: true
                    text: row.label
                    color: Theme.ink
                    font.pixelSize: Theme.bodySize
                    font.bold: true
                    wrapMode: Text.Wrap
                    textFormat: Text.PlainText
                }
                Text {
                    Layout.fillWidth: true
                    visible: text !== ""
                    text: row.told ? (row.moment === "" ? row.origin : row.moment + " \u00b7 " + row.origin)
                                   : row.moment
                    color: Theme.quiet
                    font.pixelSize: Theme.smallSize
                    wrapMode: Text.Wrap
                    textFormat: Text.PlainText
                }
                Text {
                    Layout.fillWidth: true
                    visible: !row.told
                    text: row.reason
                    color: Theme.ink
                    font.pixelSize: Theme.smallSize
                    wrapMode: Text.Wrap
                    textFormat: Text.PlainText
                }
            }
            Column {
                visible: row.told
                Text {
                    anchors.right: parent.right
                    text: row.value + (row.unit === "\u00b0" ? row.unit : "")
                    color: Theme.ink
                    font.pixelSize: Theme.numberSize
                    font.bold: true
                    textFormat: Text.PlainText
                }
                Text {
                    anchors.right: parent.right
                    width: Math.min(implicitWidth, Theme.mm(24))
                    horizontalAlignment: Text.AlignRight
                    wrapMode: Text.Wrap
                    text: "\u00b1 " + row.sigma + (row.unit === "\u00b0" ? "" : " ") + row.unit
                    color: Theme.quiet
                    font.pixelSize: Theme.smallSize
                    textFormat: Text.PlainText
                }
            }
        }
    }
}
