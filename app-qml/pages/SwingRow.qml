// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Plumbmark.Controls

// A swing in a lesson: club and view, and how its checkpoints stand.
T.AbstractButton {
    id: row
    required property int number
    required property string title
    required property int good
    required property int watch
    required property int work
    required property int unknown
    implicitHeight: Math.max(Theme.target * 1.2, content.implicitHeight + 2 * Theme.mm(1.6))
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.Button
    Accessible.name: qsTr("Swing %1, %2: %3 good, %4 to watch, %5 to work on, %6 cannot be told")
        .arg(number).arg(title).arg(good).arg(watch).arg(work).arg(unknown)
    background: Rectangle {
        color: row.down ? Theme.pressed : "transparent"
        border.color: Theme.accent
        border.width: row.visualFocus ? Theme.line * 1.5 : 0
        Rectangle {
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.top: parent.top
            height: Theme.hair
            color: Theme.edge
        }
    }
    contentItem: Item {
        RowLayout {
            id: content
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            anchors.leftMargin: Theme.pad
            anchors.rightMargin: Theme.mm(1.2)
            spacing: Theme.gap
            ColumnLayout {
                Layout.fillWidth: true
                spacing: Theme.mm(1)
                Text {
                    Layout.fillWidth: true
                    text: qsTr("%1. %2").arg(row.number).arg(row.title)
                    color: Theme.ink
                    font.pixelSize: Theme.bodySize
                    font.bold: true
                    wrapMode: Text.Wrap
                    textFormat: Text.PlainText
                }
                Text {
                    Layout.fillWidth: true
                    visible: !row.enabled
                    text: qsTr("The film is not on this device.")
                    color: Theme.quiet
                    font.pixelSize: Theme.smallSize
                    wrapMode: Text.Wrap
                    textFormat: Text.PlainText
                }
                Row {
                    spacing: Theme.mm(2.4)
                    Repeater {
                        model: [row.good, row.watch, row.work, row.unknown]
                        Row {
                            required property int index
                            required property int modelData
                            visible: modelData > 0
                            spacing: Theme.mm(0.8)
                            StatusBadge {
                                anchors.verticalCenter: parent.verticalCenter
                                level: parent.index
                                word: ""
                                showWord: false
                                shapeSize: Theme.mm(4.6)
                            }
                            Text {
                                anchors.verticalCenter: parent.verticalCenter
                                text: parent.modelData
                                color: Theme.ink
                                font.pixelSize: Theme.bodySize
                                textFormat: Text.PlainText
                            }
                        }
                    }
                }
            }
            Glyph {
                Layout.preferredWidth: Theme.mm(5)
                Layout.preferredHeight: Theme.mm(5)
                name: "forward"
                rightToLeft: Theme.rightToLeft
                color: Theme.ink
            }
        }
    }
}
