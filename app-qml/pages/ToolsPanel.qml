// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// What else can be done with this swing; each tool opens in the same place, below or beside the picture.
Item {
    id: panel
    required property SwingModel swing
    property string tool: ""
    function close(): void { tool = "" }
    function open(name: string): void { tool = name }

    Flickable {
        id: list
        anchors.fill: parent
        visible: panel.tool === ""
        clip: true
        contentHeight: buttons.implicitHeight + 2 * Theme.pad
        boundsBehavior: Flickable.StopAtBounds
        GridLayout {
            id: buttons
            x: Theme.pad
            y: Theme.pad
            width: list.width - 2 * Theme.pad
            columns: width >= Theme.mm(48) * Theme.textScale ? 2 : 1
            columnSpacing: Theme.gap
            rowSpacing: Theme.gap
            ActionButton {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                glyph: "ball"
                text: qsTr("What the ball did")
                onClicked: panel.tool = "shot"
            }
            ActionButton {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                glyph: "flag"
                text: qsTr("Set a key moment")
                onClicked: panel.tool = "moments"
            }
            ActionButton {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                glyph: "target"
                text: qsTr("Place a point")
                onClicked: panel.tool = "points"
            }
            ActionButton {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                glyph: "pencil"
                text: qsTr("Draw on the picture")
                onClicked: panel.tool = "draw"
            }
            ActionButton {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                glyph: "loop"
                text: qsTr("Play and loop")
                onClicked: panel.tool = "play"
            }
            ActionButton {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                glyph: "strip"
                text: qsTr("Strip of moments")
                onClicked: panel.tool = "strip"
            }
            ActionButton {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                glyph: "over"
                text: qsTr("Compare with another swing")
                enabled: panel.swing.told
                onClicked: panel.swing.compareAsked()
            }
        }
    }
    ColumnLayout {
        anchors.fill: parent
        visible: panel.tool !== ""
        spacing: 0
        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.mm(0.6)
            IconButton {
                glyph: "back"
                label: qsTr("All tools")
                outlined: false
                onClicked: panel.close()
            }
            BodyText {
                Layout.fillWidth: true
                font.bold: true
                text: panel.tool === "moments" ? qsTr("Set a key moment") : panel.tool === "points" ? qsTr("Place a point")
                    : panel.tool === "draw" ? qsTr("Draw on the picture") : panel.tool === "play" ? qsTr("Play and loop")
                    : panel.tool === "strip" ? qsTr("Strip of moments")
                    : panel.tool === "shot" ? qsTr("What the ball did") : ""
            }
        }
        Loader {
            Layout.fillWidth: true
            Layout.fillHeight: true
            active: panel.tool !== "" && panel.visible
            sourceComponent: panel.tool === "moments" ? momentsTool : panel.tool === "points" ? pointsTool
                           : panel.tool === "draw" ? drawTool : panel.tool === "play" ? playTool
                           : panel.tool === "strip" ? stripTool : panel.tool === "shot" ? shotTool : null
        }
    }
    Component { id: momentsTool; MomentsTool { swing: panel.swing } }
    Component { id: playTool; PlayTool { swing: panel.swing } }
    Component { id: stripTool; StripTool { swing: panel.swing } }
    Component { id: shotTool; ShotTool { shot: panel.swing.shotRecord } }
    Component { id: drawTool; DrawTool { swing: panel.swing } }
    Component { id: pointsTool; PointsTool { swing: panel.swing } }
}
