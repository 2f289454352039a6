// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Plumbmark.Controls

// One checkpoint: shape + word + colour, number with its uncertainty. A tap tells the rest.
T.AbstractButton {
    id: row
    required property string label
    required property string moment
    required property int level
    required property string word
    required property string share
    required property string value
    required property string sigma
    required property string unit
    required property string range
    required property string source
    required property string help
    required property int frame
    required property string spoken
    required property string key
    required property string marks
    required property bool open
    property bool ghost: false
    signal toggled()

    implicitHeight: Math.max(Theme.target, body.implicitHeight + 2 * Theme.mm(1.6))
    focusPolicy: Qt.StrongFocus
    text: label
    Accessible.role: Accessible.Button
    Accessible.name: spoken
    Accessible.description: open ? [help, rangeText.text, shareText.text, marks].filter(t => t !== "").join("\n") : ""
    onClicked: toggled()
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
        ColumnLayout {
            id: body
            anchors.left: parent.left
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            anchors.leftMargin: Theme.pad
            anchors.rightMargin: Theme.pad
            spacing: Theme.mm(1.2)
            RowLayout {
                Layout.fillWidth: true
                spacing: Theme.gap
                StatusBadge {
                    level: row.level
                    word: row.word
                    showWord: false
                    shapeSize: Theme.mm(7)
                }
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
                        text: row.moment === "" ? row.word : row.word + " \u00b7 " + row.moment
                        color: Theme.quiet
                        font.pixelSize: Theme.smallSize
                        wrapMode: Text.Wrap
                        textFormat: Text.PlainText
                    }
                }
                Column {
                    visible: row.value !== ""
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
            BodyText {
                Layout.fillWidth: true
                visible: row.open && row.help !== ""
                text: row.help
            }
            BodyText {
                id: rangeText
                Layout.fillWidth: true
                visible: row.open && row.range !== ""
                text: row.source !== "" ? qsTr("Good: %1 (%2)").arg(row.range).arg(row.source) : qsTr("Good: %1").arg(row.range)
                font.pixelSize: Theme.smallSize
            }
            BodyText {
                Layout.fillWidth: true
                visible: row.open && row.ghost
                text: qsTr("Dotted green: where it would be at the near edge of the range.")
                font.pixelSize: Theme.smallSize
            }
            BodyText {
                id: shareText
                Layout.fillWidth: true
                visible: row.open && row.share !== ""
                text: qsTr("How sure of \u201c%1\u201d: %2").arg(row.word).arg(row.share)
                font.pixelSize: Theme.smallSize
            }
            BodyText {
                Layout.fillWidth: true
                visible: row.open && row.marks !== ""
                text: qsTr("Measured from:") + "\n" + row.marks
                font.pixelSize: Theme.smallSize
            }
        }
    }
}
