// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls
import Plumbmark.Stage

// The picture, and the few buttons that lie on it on the side of the operator's hand.
Rectangle {
    id: panel
    required property SwingModel swing
    property bool showPlay: false
    property bool roomy: true
    readonly property alias magnified: stage.magnified
    readonly property alias dragging: stage.dragging
    color: Theme.stage
    // Sides of the hand, not of the language.
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true

    function cancelGesture(): bool { return stage.cancelGesture() }

    StageItem {
        id: stage
        anchors.fill: parent
        source: panel.swing
        pixelsPerMm: Theme.pixelsPerMm
        visible: panel.swing.ready
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Picture of the swing, %1").arg(panel.swing.frameText)
        Accessible.description: panel.swing.hasSelection ? panel.swing.selectedName + ": " + panel.swing.selectedText : ""
        onMarkTapped: (landmark) => panel.swing.select(landmark)
        placing: panel.swing.placing
        drawShape: panel.swing.drawShape
        onDrawn: (points) => panel.swing.addDrawing(points)
        onEmptyTapped: (x, y) => panel.swing.placing ? panel.swing.placeAt(x, y) : panel.swing.deselect()
        onMarkGrabbed: (landmark) => panel.swing.grab(landmark)
        onMarkMoved: (x, y) => panel.swing.moveGrabbed(x, y)
        onMarkReleased: panel.swing.drop()
        onMarkGivenBack: panel.swing.giveBack()
        onScrubbed: (frames) => panel.swing.step(frames)
    }
    Badge {
        anchors.left: Theme.leftHanded ? undefined : parent.left
        anchors.right: Theme.leftHanded ? parent.right : undefined
        anchors.top: parent.top
        anchors.margins: Theme.mm(1.2)
        visible: panel.swing.ready && !stage.dragging
        maximumWidth: parent.width - Theme.target - 4 * Theme.mm(1.2) // beside the buttons
        text: panel.swing.frameText + "  \u00b7  " + panel.swing.timeText
    }
    Column {
        anchors.right: Theme.leftHanded ? undefined : parent.right
        anchors.left: Theme.leftHanded ? parent.left : undefined
        anchors.bottom: parent.bottom
        anchors.margins: Theme.mm(1.2)
        spacing: Theme.gap
        visible: panel.swing.ready && !stage.dragging
        IconButton {
            glyph: stage.magnified ? "whole" : "near"
            label: stage.magnified ? qsTr("Show the whole picture") : qsTr("Show the player larger")
            onClicked: stage.magnified ? stage.showWhole() : stage.showPlayer()
        }
        IconButton {
            visible: panel.roomy
            glyph: "body"
            label: stage.showMarks ? qsTr("Hide the marks") : qsTr("Show the marks")
            strong: stage.showMarks
            onClicked: {
                stage.showMarks = !stage.showMarks
                if (!stage.showMarks)
                    panel.swing.deselect()
            }
        }
        IconButton {
            visible: panel.showPlay && panel.roomy
            glyph: panel.swing.playing ? "pause" : "play"
            label: panel.swing.playing ? qsTr("Pause") : qsTr("Play slowly")
            onClicked: panel.swing.playing = !panel.swing.playing
        }
    }
    Badge {
        anchors.bottom: parent.bottom
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.margins: Theme.mm(1.2)
        visible: panel.swing.ready && !panel.swing.told && panel.swing.problem === ""
        maximumWidth: parent.width - 2 * Theme.mm(1.2)
        text: qsTr("Reading the swing, %1 %").arg(Math.round(100 * panel.swing.progressShare))
    }
    Badge {
        anchors.bottom: parent.bottom
        anchors.left: parent.left
        anchors.margins: Theme.mm(1.2)
        maximumWidth: parent.width - 2 * Theme.mm(1.2)
        visible: panel.swing.ready && panel.swing.problem !== ""
        text: panel.swing.problem
    }
    Column {
        anchors.centerIn: parent
        width: parent.width * 0.7
        spacing: Theme.mm(3)
        visible: !panel.swing.ready
        Text {
            width: parent.width
            text: panel.swing.problem !== "" ? panel.swing.problem : qsTr("Opening the swing")
            color: Theme.plateInk
            font.pixelSize: Theme.bodySize
            font.bold: true
            horizontalAlignment: Text.AlignHCenter
            wrapMode: Text.Wrap
            textFormat: Text.PlainText
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        ProgressLine {
            width: parent.width
            visible: panel.swing.problem === ""
            share: panel.swing.progressShare
            label: qsTr("Opening the swing, %1 per cent").arg(Math.round(100 * share))
        }
    }
}
