// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Plumbmark.Bridge
import Plumbmark.Controls

// The one or two marks that would sharpen the answer most; a tap goes there and takes the first one up.
ColumnLayout {
    id: column
    required property SwingModel swing
    spacing: Theme.mm(1)
    Repeater {
        model: column.swing.advice
        T.AbstractButton {
            id: button
            required property int index
            required property var modelData
            Layout.fillWidth: true
            implicitHeight: Math.max(Theme.target, words.implicitHeight + Theme.mm(1.6))
            focusPolicy: Qt.StrongFocus
            Accessible.role: Accessible.Button
            Accessible.name: qsTr("Mark by hand: %1").arg(modelData.text)
            Accessible.description: modelData.why
            onClicked: column.swing.followAdvice(index)
            background: Rectangle {
                radius: Theme.radius
                color: button.down ? Theme.pressed : Theme.card
                border.color: button.visualFocus ? Theme.accent : Theme.edge
                border.width: button.visualFocus ? Theme.line * 1.5 : Theme.line
            }
            contentItem: Item {
                Glyph {
                    id: sign
                    x: Theme.mm(1.6)
                    anchors.verticalCenter: parent.verticalCenter
                    width: Theme.mm(5)
                    height: width
                    name: "target"
                    color: Theme.ink
                }
                Column {
                    id: words
                    anchors.left: sign.right
                    anchors.right: parent.right
                    anchors.verticalCenter: parent.verticalCenter
                    anchors.leftMargin: Theme.mm(1.6)
                    anchors.rightMargin: Theme.mm(1.6)
                    Text {
                        width: parent.width
                        text: button.modelData.text
                        color: Theme.ink
                        font.pixelSize: Theme.bodySize
                        font.bold: true
                        wrapMode: Text.Wrap
                        textFormat: Text.PlainText
                    }
                    Text {
                        width: parent.width
                        text: button.modelData.why
                        color: Theme.quiet
                        font.pixelSize: Theme.smallSize
                        wrapMode: Text.Wrap
                        textFormat: Text.PlainText
                    }
                }
            }
        }
    }
}
