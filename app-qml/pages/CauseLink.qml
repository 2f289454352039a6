// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Plumbmark.Controls
import Plumbmark.Stage

// One link of a chain: what is seen, where, how sure, and why it is said to follow. A tap goes to the picture.
T.AbstractButton {
    id: link
    required property int index
    required property var modelData
    property var still: undefined // its picture, when it has been read
    readonly property bool hasStill: modelData.clip !== ""
    implicitHeight: body.implicitHeight + 2 * Theme.pad
    focusPolicy: Qt.StrongFocus
    enabled: hasStill
    Accessible.role: Accessible.Button
    Accessible.name: modelData.spoken
    Accessible.description: [modelData.number, modelData.how, modelData.grade].filter(t => t !== "").join("; ")
    background: Rectangle {
        radius: Theme.radius
        color: link.down ? Theme.pressed : Theme.card
        border.color: link.visualFocus ? Theme.accent : Theme.edge
        border.width: link.index === 0 ? Theme.line * 1.5 : Theme.line
    }
    contentItem: Item {
        RowLayout {
            id: body
            x: Theme.pad
            y: Theme.pad
            width: parent.width - 2 * Theme.pad
            spacing: Theme.pad
            ColumnLayout {
                Layout.fillWidth: true
                Layout.alignment: Qt.AlignTop
                spacing: Theme.mm(0.8)
                Text {
                    Layout.fillWidth: true
                    visible: link.index > 0
                    text: qsTr("tends to cause")
                    color: Theme.quiet
                    font.pixelSize: Theme.smallSize
                    textFormat: Text.PlainText
                }
                Text {
                    Layout.fillWidth: true
                    text: link.modelData.label
                    color: Theme.ink
                    font.pixelSize: link.index === 0 ? Theme.titleSize : Theme.bodySize
                    font.bold: true
                    wrapMode: Text.Wrap
                    textFormat: Text.PlainText
                }
                Text {
                    Layout.fillWidth: true
                    visible: text !== ""
                    text: link.modelData.number
                    color: Theme.ink
                    font.pixelSize: Theme.bodySize
                    wrapMode: Text.Wrap
                    textFormat: Text.PlainText
                }
                Text {
                    Layout.fillWidth: true
                    visible: text !== ""
                    text: [link.modelData.how, link.modelData.grade].filter(t => t !== "").join(" \u00b7 ")
                    color: Theme.quiet
                    font.pixelSize: Theme.smallSize
                    wrapMode: Text.Wrap
                    textFormat: Text.PlainText
                }
            }
            ColumnLayout {
                visible: link.hasStill
                Layout.alignment: Qt.AlignTop
                spacing: Theme.mm(0.6)
                Rectangle {
                    Layout.preferredWidth: Math.min(Theme.mm(36), link.width * 0.36)
                    Layout.preferredHeight: Layout.preferredWidth * 0.66
                    color: Theme.stage
                    Loader {
                        anchors.fill: parent
                        active: link.still !== undefined
                        sourceComponent: StillItem { image: link.still }
                    }
                }
                Text {
                    Layout.alignment: Qt.AlignRight
                    text: link.modelData.swing
                    color: Theme.quiet
                    font.pixelSize: Theme.smallSize
                    textFormat: Text.PlainText
                }
            }
        }
    }
}
