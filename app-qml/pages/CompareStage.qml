// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls
import Plumbmark.Stage

// Both pictures, side by side or the other one laid over the first: feet on feet, equally tall, plumb on plumb.
Rectangle {
    id: panel
    required property CompareModel compare
    property bool showMarks: true
    // Room for all buttons on the picture; else the page has them in its heading.
    property bool roomy: true
    color: Theme.stage
    clip: true
    LayoutMirroring.enabled: false // pictures have their own left and right
    LayoutMirroring.childrenInherit: true

    StageItem {
        id: first
        width: panel.compare.overlaid ? parent.width : (parent.width - Theme.line) / 2
        height: parent.height
        source: panel.compare.first
        pixelsPerMm: Theme.pixelsPerMm
        editable: false
        showMarks: panel.showMarks
        visible: panel.compare.first.ready
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("This swing, %1").arg(panel.compare.first.frameText)
        onScrubbed: (frames) => panel.compare.step(frames)
    }
    Item {
        anchors.fill: first
        visible: panel.compare.overlaid
        clip: true
        StillItem {
            id: other
            // Item pixels a pixel of the first and of the other picture.
            readonly property real k: first.pictureRect.width / Math.max(1, panel.compare.first.pictureSize.width)
            readonly property real own: k * panel.compare.overlayScale
            readonly property point feet: Qt.point(panel.compare.secondFeet.x * own, panel.compare.secondFeet.y * own)
            image: panel.compare.second.picture
            width: panel.compare.second.pictureSize.width * own
            height: panel.compare.second.pictureSize.height * own
            x: first.pictureRect.x + panel.compare.firstFeet.x * k - feet.x
            y: first.pictureRect.y + panel.compare.firstFeet.y * k - feet.y
            opacity: share.value / 100
            transform: [
                Scale { origin.x: other.feet.x; xScale: panel.compare.overlayMirrored ? -1 : 1 },
                Rotation { origin.x: other.feet.x; origin.y: other.feet.y; angle: panel.compare.overlayTurn }
            ]
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("Other swing laid over, %1 %").arg(share.value)
        }
    }
    StageItem {
        id: second
        x: first.width + Theme.line
        width: parent.width - x
        height: parent.height
        source: panel.compare.second
        pixelsPerMm: Theme.pixelsPerMm
        editable: false
        showMarks: panel.showMarks
        visible: !panel.compare.overlaid && panel.compare.second.ready
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Other swing, %1").arg(panel.compare.second.frameText)
        onScrubbed: (frames) => panel.compare.step(frames)
    }
    Badge {
        anchors.left: parent.left
        anchors.top: parent.top
        anchors.margins: Theme.mm(1.2)
        maximumWidth: parent.width / 2 - Theme.mm(2.4)
        visible: panel.compare.first.ready
        text: qsTr("This swing") + (panel.compare.first.timeText === "" ? "" : "  \u00b7  " + panel.compare.first.timeText)
    }
    Badge {
        x: panel.compare.overlaid ? parent.width - width - Theme.mm(1.2) : second.x + Theme.mm(1.2)
        anchors.top: parent.top
        anchors.topMargin: Theme.mm(1.2)
        maximumWidth: parent.width / 2 - Theme.mm(2.4)
        visible: panel.compare.second.ready
        text: panel.compare.outside ? (panel.roomy || Theme.textScale <= 1.3 ? qsTr("Other swing: does not show this position") : qsTr("Not shown"))
                                    : qsTr("Other swing") + (panel.compare.second.timeText === "" ? "" : "  \u00b7  " + panel.compare.second.timeText)
    }
    Column {
        visible: !panel.compare.second.ready
        anchors.verticalCenter: parent.verticalCenter
        x: panel.width / 2 + Theme.pad
        width: panel.width / 2 - 2 * Theme.pad
        spacing: Theme.mm(3)
        Text {
            width: parent.width
            text: panel.compare.problem !== "" ? panel.compare.problem
                : panel.compare.busy ? qsTr("Opening the swing")
                : panel.compare.told && panel.compare.references.length === 0
                  ? qsTr("There is no other swing of this view and kind of shot yet. Bring one in, then compare.")
                  : ""
            color: Theme.plateInk
            font.pixelSize: Theme.bodySize
            font.bold: true
            wrapMode: Text.Wrap
            textFormat: Text.PlainText
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        ProgressLine {
            width: parent.width
            visible: panel.compare.busy && panel.compare.problem === ""
            share: panel.compare.progressShare
            label: qsTr("Opening the swing, %1 per cent").arg(Math.round(100 * share))
        }
    }
    Rectangle {
        visible: panel.compare.overlaid
        anchors.left: Theme.leftHanded ? buttons.right : parent.left
        anchors.right: Theme.leftHanded ? parent.right : buttons.left
        anchors.bottom: parent.bottom
        anchors.margins: Theme.mm(1.2)
        height: Theme.target
        radius: Theme.radius
        color: Theme.paper
        border.color: Theme.edge
        border.width: Theme.line
        ScrubSlider {
            id: share
            anchors.fill: parent
            anchors.leftMargin: Theme.mm(1)
            anchors.rightMargin: Theme.mm(1)
            label: qsTr("How much of the other swing")
            from: 0
            to: 100
            stepSize: 5
            value: 50
        }
    }
    Column {
        id: buttons
        anchors.right: Theme.leftHanded ? undefined : parent.right
        anchors.left: Theme.leftHanded ? parent.left : undefined
        anchors.bottom: parent.bottom
        anchors.margins: Theme.mm(1.2)
        spacing: Theme.gap
        visible: panel.compare.first.ready
        IconButton {
            visible: panel.roomy && (panel.compare.canOverlay || panel.compare.overlaid)
            glyph: panel.compare.overlaid ? "beside" : "over"
            label: panel.compare.overlaid ? qsTr("Side by side") : qsTr("Lay one over the other")
            onClicked: panel.compare.overlaid = !panel.compare.overlaid
        }
        IconButton {
            glyph: first.magnified ? "whole" : "near"
            label: first.magnified ? qsTr("Show the whole pictures") : qsTr("Show the players larger")
            onClicked: {
                const whole = first.magnified
                for (const stage of [first, second])
                    whole ? stage.showWhole() : stage.showPlayer()
            }
        }
        IconButton {
            visible: panel.roomy
            glyph: "body"
            label: panel.showMarks ? qsTr("Hide the marks") : qsTr("Show the marks")
            strong: panel.showMarks
            onClicked: panel.showMarks = !panel.showMarks
        }
    }
}
