// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Templates as T
import Plumbmark.Bridge
import Plumbmark.Controls
import Plumbmark.Stage

// Chosen moments side by side in the order of time, each with the same drawings through it. A tap goes there.
Rectangle {
    id: panel
    required property SwingModel swing
    color: Theme.stage
    LayoutMirroring.enabled: false // time runs to the right in every language
    LayoutMirroring.childrenInherit: true
    readonly property int shown: Math.max(1, grid.count)
    // As many columns as give the largest pictures; a picture of a standing player is about twice as high as wide.
    readonly property int columns: {
        let best = 1, size = 0
        for (let n = 1; n <= shown; ++n) {
            const rows = Math.ceil(shown / n)
            const s = Math.min(width / n * 2, height / rows - words)
            if (s > size) {
                size = s
                best = n
            }
        }
        return best
    }
    readonly property int rows: Math.ceil(shown / columns)
    readonly property real words: Theme.bodySize + Theme.smallSize + Theme.mm(2)
    GridView {
        id: grid
        anchors.fill: parent
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        cellWidth: Math.floor(panel.width / panel.columns)
        cellHeight: Math.max(Theme.target * 2, Math.floor(panel.height / panel.rows))
        model: panel.swing.strip
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Strip of moments")
        delegate: T.AbstractButton {
            id: cell
            required property var modelData
            width: grid.cellWidth
            height: grid.cellHeight
            focusPolicy: Qt.StrongFocus
            text: modelData.label
            Accessible.role: Accessible.Button
            Accessible.name: qsTr("Go to %1, %2").arg(modelData.label).arg(modelData.time)
            onClicked: {
                panel.swing.jumpTo(modelData.row)
                panel.swing.stripShown = false
            }
            background: Rectangle {
                color: cell.down ? Theme.plate : "transparent"
                border.color: cell.visualFocus ? Theme.plateInk : "transparent"
                border.width: Theme.line
            }
            contentItem: Item {
                StillItem {
                    anchors.left: parent.left
                    anchors.right: parent.right
                    anchors.top: parent.top
                    anchors.bottom: title.top
                    anchors.margins: Theme.mm(0.6)
                    // The list tells when a picture or a drawing in it has changed.
                    image: panel.swing.strip.length > 0 ? panel.swing.stripPicture(cell.modelData.row) : panel.swing.stripPicture(-1)
                }
                Column {
                    id: title
                    anchors.left: parent.left
                    anchors.right: parent.right
                    anchors.bottom: parent.bottom
                    anchors.margins: Theme.mm(0.6)
                    Text {
                        width: parent.width
                        text: cell.modelData.label
                        color: Theme.plateInk
                        font.pixelSize: Theme.bodySize
                        font.bold: true
                        fontSizeMode: Text.HorizontalFit
                        minimumPixelSize: Math.round(Theme.smallSize / Theme.textScale)
                        horizontalAlignment: Text.AlignHCenter
                        wrapMode: Text.Wrap
                        textFormat: Text.PlainText
                    }
                    Text {
                        width: parent.width
                        text: cell.modelData.time
                        color: Theme.plateInk
                        font.pixelSize: Theme.smallSize
                        horizontalAlignment: Text.AlignHCenter
                        textFormat: Text.PlainText
                    }
                }
            }
        }
    }
    Text {
        anchors.fill: parent
        anchors.margins: Theme.pad
        verticalAlignment: Text.AlignVCenter
        fontSizeMode: Text.Fit
        minimumPixelSize: Math.round(Theme.smallSize / Theme.textScale)
        visible: grid.count === 0
        text: panel.swing.stripChoices.length === 0 ? qsTr("No key moment could be told in this clip; set one by hand first.")
                                                    : qsTr("Choose the moments to stand side by side.")
        color: Theme.plateInk
        font.pixelSize: Theme.bodySize
        font.bold: true
        horizontalAlignment: Text.AlignHCenter
        wrapMode: Text.Wrap
        textFormat: Text.PlainText
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
}
