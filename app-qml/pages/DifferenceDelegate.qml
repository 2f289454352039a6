// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Plumbmark.Controls

// One number in both swings. Certain differences carry a filled sign and the word, never colour alone.
T.AbstractButton {
    id: row
    required property var modelData
    signal showMoment(int frame)

    implicitHeight: Math.max(Theme.target, body.implicitHeight + 2 * Theme.mm(1.4))
    focusPolicy: Qt.StrongFocus
    text: modelData.label
    Accessible.role: Accessible.Button
    Accessible.name: modelData.spoken
    onClicked: if (modelData.frame >= 0) showMoment(modelData.frame)
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
                spacing: Theme.mm(0.4)
                Text {
                    Layout.fillWidth: true
                    text: row.modelData.moment === "" ? row.modelData.label : row.modelData.label + ", " + row.modelData.moment.toLowerCase()
                    color: Theme.ink
                    font.pixelSize: Theme.bodySize
                    font.bold: true
                    wrapMode: Text.Wrap
                    textFormat: Text.PlainText
                }
                Text {
                    Layout.fillWidth: true
                    text: qsTr("%1 against %2").arg(row.modelData.first).arg(row.modelData.second)
                    color: Theme.quiet
                    font.pixelSize: Theme.smallSize
                    wrapMode: Text.Wrap
                    textFormat: Text.PlainText
                }
                Row {
                    spacing: Theme.mm(1)
                    Rectangle {
                        anchors.verticalCenter: parent.verticalCenter
                        width: Theme.mm(2.4)
                        height: width
                        radius: width / 2
                        color: row.modelData.beyond ? Theme.ink : "transparent"
                        border.color: Theme.ink
                        border.width: Theme.line
                    }
                    Text {
                        text: row.modelData.word
                        color: Theme.ink
                        font.pixelSize: Theme.smallSize
                        font.bold: row.modelData.beyond
                        textFormat: Text.PlainText
                    }
                }
            }
            Column {
                Text {
                    anchors.right: parent.right
                    text: row.modelData.difference + (row.modelData.unit === "\u00b0" ? row.modelData.unit : "")
                    color: Theme.ink
                    font.pixelSize: Theme.numberSize
                    font.bold: row.modelData.beyond
                    textFormat: Text.PlainText
                }
                Text {
                    anchors.right: parent.right
                    width: Math.min(implicitWidth, Theme.mm(22))
                    horizontalAlignment: Text.AlignRight
                    wrapMode: Text.Wrap
                    text: "\u00b1 " + row.modelData.sigma + (row.modelData.unit === "\u00b0" ? "" : " ") + row.modelData.unit
                    color: Theme.quiet
                    font.pixelSize: Theme.smallSize
                    textFormat: Text.PlainText
                }
            }
        }
    }
}
