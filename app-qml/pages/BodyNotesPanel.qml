// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// Body cautions, apart from the checks and without their colours; below them what is said about the clip.
Flickable {
    id: panel
    required property SwingModel swing
    clip: true
    contentHeight: column.implicitHeight + 2 * Theme.pad
    boundsBehavior: Flickable.StopAtBounds
    ColumnLayout {
        id: column
        x: Theme.pad
        y: Theme.pad
        width: panel.width - 2 * Theme.pad
        spacing: Theme.pad
        Repeater {
            model: panel.swing.cautions
            Rectangle {
                id: card
                required property var modelData
                Layout.fillWidth: true
                implicitHeight: texts.implicitHeight + 2 * Theme.pad
                radius: Theme.radius
                color: Theme.caution
                border.color: Theme.cautionEdge
                border.width: Theme.line
                ColumnLayout {
                    id: texts
                    anchors.left: parent.left
                    anchors.right: parent.right
                    anchors.top: parent.top
                    anchors.margins: Theme.pad
                    spacing: Theme.mm(1.4)
                    RowLayout {
                        Layout.fillWidth: true
                        spacing: Theme.mm(1.6)
                        Glyph {
                            Layout.preferredWidth: Theme.mm(6)
                            Layout.preferredHeight: Theme.mm(6)
                            name: "body"
                            color: Theme.ink
                        }
                        BodyText {
                            Layout.fillWidth: true
                            font.bold: true
                            text: qsTr("For the body")
                        }
                    }
                    BodyText {
                        Layout.fillWidth: true
                        text: card.modelData.seen
                    }
                    BodyText {
                        Layout.fillWidth: true
                        visible: text !== ""
                        text: card.modelData.ease
                    }
                    BodyText {
                        Layout.fillWidth: true
                        text: card.modelData.words
                    }
                    BodyText {
                        Layout.fillWidth: true
                        font.pixelSize: Theme.smallSize
                        text: qsTr("Grounds: %1").arg(card.modelData.grade)
                    }
                }
            }
        }
        BodyText {
            Layout.fillWidth: true
            text: qsTr("Film shows posture, not load. No caution here is not a clean bill of health: with pain, numbness or doubt, stop and see a physician or licensed physiotherapist.")
        }
        BodyText {
            Layout.fillWidth: true
            visible: panel.swing.warnings.length > 0
            font.bold: true
            text: qsTr("About this clip")
        }
        Repeater {
            model: panel.swing.warnings
            BodyText {
                required property string modelData
                Layout.fillWidth: true
                text: modelData
            }
        }
    }
    SlimScrollBar {
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        orientation: Qt.Vertical
        size: panel.visibleArea.heightRatio
        position: panel.visibleArea.yPosition
    }
}
