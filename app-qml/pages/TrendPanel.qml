// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// Any number over the player's lessons; which one is chosen below the chart.
Flickable {
    id: flick
    required property PlayerModel player
    readonly property bool wide: width >= Theme.mm(150)
    clip: true
    contentHeight: column.implicitHeight + 2 * Theme.pad
    boundsBehavior: Flickable.StopAtBounds
    ColumnLayout {
        id: column
        x: Theme.pad
        y: Theme.pad
        width: flick.width - 2 * Theme.pad
        spacing: Theme.mm(3)
        BodyText {
            Layout.fillWidth: true
            visible: flick.player.points.length === 0
            text: flick.player.reading ? qsTr("Reading the swings \u2026")
                                       : qsTr("No measured swing yet: a trend needs numbers from two lessons.")
        }
        BodyText {
            Layout.fillWidth: true
            visible: flick.player.points.length > 0
            font.bold: true
            text: flick.player.numberChoices.length > 0 ? flick.player.numberChoices[flick.player.number].text : ""
        }
        TrendChart {
            Layout.fillWidth: true
            Layout.preferredHeight: Math.min(Theme.mm(80), Math.max(Theme.mm(44), flick.height * 0.5))
            visible: flick.player.points.length > 0
            player: flick.player
        }
        BodyText {
            Layout.fillWidth: true
            visible: text !== ""
            text: flick.player.trendText
        }
        BodyText {
            Layout.fillWidth: true
            visible: flick.player.points.length > 0
            font.pixelSize: Theme.smallSize
            text: flick.player.bandText + (flick.player.bandText !== "" ? "\n" : "")
                  + qsTr("Dot: median of the lesson's swings. Bar: two sigma, swing-to-swing spread and measuring error together.")
        }
        ChoiceRow {
            Layout.fillWidth: true
            visible: choices.length > 1
            question: qsTr("Swings")
            choices: flick.player.kindChoices
            value: String(flick.player.kind)
            onChosen: (value) => flick.player.kind = parseInt(value)
        }
        ChoiceRow {
            Layout.fillWidth: true
            visible: choices.length > 0
            question: qsTr("Number")
            choices: flick.player.numberChoices
            value: String(flick.player.number)
            onChosen: (value) => flick.player.number = parseInt(value)
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
