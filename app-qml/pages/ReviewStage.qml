// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls
import Plumbmark.Stage

// The picture while a review is made or played: fingers magnify, step and draw; a replay moves by itself.
Rectangle {
    id: panel
    required property ReviewModel review
    color: Theme.stage

    StageItem {
        id: stage
        anchors.fill: parent
        source: panel.review
        pixelsPerMm: Theme.pixelsPerMm
        editable: false
        enabled: panel.review.doing !== "replaying"
        showMarks: panel.review.marks
        drawShape: panel.review.drawing ? "freehand" : ""
        visible: panel.review.ready
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Picture of the review, %1").arg(panel.review.frameText)
        onScrubbed: (frames) => panel.review.step(frames)
        onDrawn: (points) => panel.review.draw(points)
        onViewChanged: panel.review.zoomed(stage.shownPart)
        Connections {
            target: panel.review
            function onShowPart(part) {
                if (part.width > 0)
                    stage.showPart(part)
                else
                    stage.showWhole()
            }
        }
    }
    Badge {
        anchors.left: parent.left
        anchors.top: parent.top
        anchors.margins: Theme.mm(1.2)
        visible: panel.review.ready
        text: panel.review.doing === "recording" ? qsTr("Recording %1").arg(panel.review.clock)
            : panel.review.doing === "replaying" ? panel.review.clock
            : panel.review.frameText
    }
    Column {
        anchors.right: Theme.leftHanded ? undefined : parent.right
        anchors.left: Theme.leftHanded ? parent.left : undefined
        anchors.bottom: parent.bottom
        anchors.margins: Theme.mm(1.2)
        spacing: Theme.gap
        visible: panel.review.ready && panel.review.doing !== "replaying"
        IconButton {
            visible: panel.review.hasStrokes
            glyph: "bin"
            label: qsTr("Wipe the drawing away")
            onClicked: panel.review.clearStrokes()
        }
        IconButton {
            glyph: "pencil"
            label: panel.review.drawing ? qsTr("Stop drawing") : qsTr("Draw")
            strong: panel.review.drawing
            onClicked: panel.review.drawing = !panel.review.drawing
        }
        IconButton {
            glyph: "body"
            label: panel.review.marks ? qsTr("Hide the marks") : qsTr("Show the marks")
            strong: panel.review.marks
            onClicked: panel.review.marks = !panel.review.marks
        }
    }
    Text {
        anchors.centerIn: parent
        width: parent.width * 0.8
        visible: !panel.review.ready
        text: panel.review.problem !== "" ? panel.review.problem
            : panel.review.swings.length === 0 ? qsTr("No film of this lesson is on this device.") : qsTr("Opening the film")
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
