// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Plumbmark.Bridge
import Plumbmark.Controls

// Folders and films of this device, in rows for fingers.
Item {
    id: panel
    required property BringInModel bringIn
    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        Flow {
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            spacing: Theme.gap
            Repeater {
                model: panel.bringIn.places
                ChoiceChip {
                    required property var modelData
                    text: modelData.name
                    checkable: false
                    checked: panel.bringIn.folder === modelData.path
                    Accessible.name: qsTr("Folder %1").arg(text)
                    onClicked: panel.bringIn.openFolder(modelData.path)
                }
            }
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.leftMargin: Theme.pad
            Layout.rightMargin: Theme.pad
            Layout.bottomMargin: Theme.mm(1)
            spacing: Theme.gap
            IconButton {
                glyph: "up"
                label: qsTr("Folder above")
                enabled: panel.bringIn.canGoUp
                onClicked: panel.bringIn.goUp()
            }
            BodyText {
                Layout.fillWidth: true
                text: panel.bringIn.folderName
                font.bold: true
            }
        }
        BodyText {
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            visible: panel.bringIn.entries.length === 0
            text: qsTr("No films and no folders here. Choose another folder above, or drop a film on this window.")
        }
        ListView {
            id: list
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            model: panel.bringIn.entries
            boundsBehavior: Flickable.StopAtBounds
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Films in this folder")
            delegate: T.AbstractButton {
                id: entry
                required property var modelData
                readonly property bool isChosen: panel.bringIn.file === modelData.path
                width: list.width
                height: Math.max(Theme.target * 1.15, texts.implicitHeight + 2 * Theme.mm(1.4))
                focusPolicy: Qt.StrongFocus
                text: modelData.name
                Accessible.role: Accessible.Button
                Accessible.name: modelData.isFolder ? qsTr("Folder %1").arg(modelData.name)
                                                    : qsTr("Film %1").arg(modelData.name)
                onClicked: modelData.isFolder ? panel.bringIn.openFolder(modelData.path)
                                              : panel.bringIn.chooseFile(modelData.path)
                background: Rectangle {
                    color: entry.isChosen || entry.down ? Theme.pressed : "transparent"
                    border.color: Theme.accent
                    border.width: entry.visualFocus || entry.isChosen ? Theme.line : 0
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
                            name: entry.modelData.isFolder ? "folder" : "clip"
                            color: Theme.ink
                        }
                        ColumnLayout {
                            id: texts
                            Layout.fillWidth: true
                            spacing: 0
                            Text {
                                Layout.fillWidth: true
                                text: entry.modelData.name
                                color: Theme.ink
                                font.pixelSize: Theme.bodySize
                                font.bold: !entry.modelData.isFolder
                                wrapMode: Text.Wrap // names of devices are long, and their end tells them apart
                                textFormat: Text.PlainText
                            }
                            Text {
                                Layout.fillWidth: true
                                visible: text !== ""
                                text: entry.modelData.detail
                                color: Theme.quiet
                                font.pixelSize: Theme.smallSize
                                wrapMode: Text.Wrap
                                textFormat: Text.PlainText
                            }
                        }
                    }
                }
            }
            SlimScrollBar {
                anchors.right: parent.right
                anchors.top: parent.top
                anchors.bottom: parent.bottom
                orientation: Qt.Vertical
                size: list.visibleArea.heightRatio
                position: list.visibleArea.yPosition
            }
        }
    }
}
