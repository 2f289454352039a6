// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// What a lesson opens with: the wish, the student's own explanation, and how it went since the plan.
Flickable {
    id: flick
    required property PlayerModel player
    signal bodyCard()
    clip: true
    contentHeight: column.implicitHeight + 2 * Theme.pad
    boundsBehavior: Flickable.StopAtBounds
    ColumnLayout {
        id: column
        x: Math.max(Theme.pad, (flick.width - width) / 2)
        y: Theme.pad
        width: Math.min(flick.width - 2 * Theme.pad, Theme.mm(150))
        spacing: Theme.mm(4)
        ActionButton {
            Layout.fillWidth: true
            glyph: "body"
            text: flick.player.bodyAsked === "" ? qsTr("Body card: ask before the first full swing")
                                                : qsTr("Body card of %1").arg(flick.player.bodyAsked)
            onClicked: flick.bodyCard()
        }
        Repeater {
            model: flick.player.opener
            ColumnLayout {
                id: section
                required property var modelData
                Layout.fillWidth: true
                spacing: Theme.mm(1)
                BodyText {
                    Layout.fillWidth: true
                    font.bold: true
                    text: section.modelData.title
                }
                Repeater {
                    model: section.modelData.lines
                    BodyText {
                        required property string modelData
                        Layout.fillWidth: true
                        text: modelData
                    }
                }
            }
        }
        BodyText {
            Layout.fillWidth: true
            visible: flick.player.opener.length === 0
            text: qsTr("No plan was made in an earlier lesson: nothing to look back on yet.")
        }
        Rectangle {
            Layout.fillWidth: true
            implicitHeight: Theme.hair
            color: Theme.edge
        }
        TextEntry {
            Layout.fillWidth: true
            question: qsTr("What does the student want?")
            hint: qsTr("in the student's own words")
            text: flick.player.wish
            onFinished: (text) => flick.player.tellWish(text)
        }
        BodyText {
            Layout.fillWidth: true
            visible: flick.player.wish === "" && flick.player.lastWish !== ""
            font.pixelSize: Theme.smallSize
            text: qsTr("Wanted before: %1").arg(flick.player.lastWish)
        }
        TextEntry {
            Layout.fillWidth: true
            question: qsTr("What does the student think causes it?")
            hint: qsTr("in the student's own words")
            text: flick.player.belief
            onFinished: (text) => flick.player.tellBelief(text)
        }
        ActionButton {
            Layout.fillWidth: true
            visible: !flick.player.lessonToday
            glyph: "plus"
            text: qsTr("Start today's lesson")
            onClicked: flick.player.startLesson()
        }
        BodyText {
            Layout.fillWidth: true
            font.pixelSize: Theme.smallSize
            text: flick.player.lessonToday ? qsTr("Kept in today's lesson.")
                                           : qsTr("A word in one of the fields starts today's lesson as well.")
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
