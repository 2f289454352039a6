// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// Lines and words to explain something: choose a shape, draw it on the picture with a finger.
Flickable {
    id: flick
    required property SwingModel swing
    clip: true
    contentHeight: column.implicitHeight + 2 * Theme.pad
    boundsBehavior: Flickable.StopAtBounds
    Component.onCompleted: if (swing.drawShape === "") swing.drawShape = "line"
    Component.onDestruction: if (swing) swing.drawShape = ""
    ColumnLayout {
        id: column
        x: Theme.pad
        width: flick.width - 2 * Theme.pad
        spacing: Theme.pad
        ChoiceRow {
            Layout.fillWidth: true
            question: qsTr("Shape")
            choices: [{ value: "plumb", text: qsTr("Plumb line") }, { value: "line", text: qsTr("Line") },
                { value: "angle", text: qsTr("Angle") }, { value: "arrow", text: qsTr("Arrow") },
                { value: "ellipse", text: qsTr("Ellipse") }, { value: "freehand", text: qsTr("Freehand") },
                { value: "text", text: qsTr("Word") }]
            value: flick.swing.drawShape
            onChosen: (value) => flick.swing.drawShape = value
        }
        BodyText {
            Layout.fillWidth: true
            font.pixelSize: Theme.smallSize
            text: flick.swing.drawShape === "angle" ? qsTr("Tap three times: end, corner, end.")
                : flick.swing.drawShape === "plumb" ? qsTr("Tap the place on the ground; or draw from it upward.")
                : flick.swing.drawShape === "text" ? qsTr("Type the word, then tap the picture.")
                                                   : qsTr("Draw with one finger on the picture.")
        }
        TextEntry {
            Layout.fillWidth: true
            visible: flick.swing.drawShape === "text"
            question: qsTr("Word")
            text: flick.swing.drawWord
            onEdited: (text) => flick.swing.drawWord = text
        }
        ChoiceRow {
            Layout.fillWidth: true
            question: qsTr("Keeps to")
            choices: [{ value: "ground", text: qsTr("The ground") }, { value: "body", text: qsTr("The nearest point") },
                { value: "picture", text: qsTr("The picture") }]
            value: flick.swing.drawTie
            onChosen: (value) => flick.swing.drawTie = value
        }
        CopyLines {
            Layout.fillWidth: true
            swing: flick.swing
        }
        Repeater {
            model: flick.swing.drawings
            RowLayout {
                id: row
                required property var modelData
                Layout.fillWidth: true
                BodyText {
                    Layout.fillWidth: true
                    text: row.modelData.label
                }
                IconButton {
                    glyph: "bin"
                    label: qsTr("Wipe away %1").arg(row.modelData.label)
                    onClicked: flick.swing.wipeDrawing(row.modelData.name)
                }
            }
        }
    }
    SlimScrollBar {
        anchors.right: parent.right
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        orientation: Qt.Vertical
        size: flick.visibleArea.heightRatio
        position: flick.visibleArea.yPosition
    }
}
