// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

FocusScope {
    id: page
    required property AppModel app
    signal bringIn()
    signal film()
    signal players()
    signal exchange()
    signal settings()
    signal openSwing(string clip, string title)
    readonly property string notice: app.lessons.problem || app.bringIn.problem || app.notice
    signal teach(string lesson, string title)
    signal review(string lesson, string title)
    signal inbox()
    readonly property bool empty: app.lessons.count === 0 && app.lessons.search === ""

    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        PageHeader {
            Layout.fillWidth: true
            title: qsTr("Lessons")
            canGoBack: false
            actions: [
                IconButton {
                    visible: page.app.film !== null
                    glyph: "camera"
                    label: qsTr("Film")
                    outlined: false
                    onClicked: page.film()
                },
                IconButton {
                    glyph: "exchange"
                    label: qsTr("Exchange and keep")
                    outlined: false
                    onClicked: page.exchange()
                },
                IconButton {
                    glyph: "settings"
                    label: qsTr("Settings")
                    outlined: false
                    onClicked: page.settings()
                },
                IconButton {
                    visible: page.width >= Theme.mm(90) // else under Settings: the heading needs its room
                    glyph: Theme.dark ? "sun" : "moon"
                    label: Theme.dark ? qsTr("Light colours for the sun") : qsTr("Dark colours for indoors")
                    outlined: false
                    onClicked: page.app.settings.dark = !page.app.settings.dark
                }
            ]
        }
        BodyText {
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            Layout.bottomMargin: 0
            visible: text !== "" && page.empty
            text: page.notice
            font.bold: page.app.lessons.problem !== "" || page.app.bringIn.problem !== ""
        }
        TextEntry {
            Layout.fillWidth: true
            Layout.maximumWidth: Theme.mm(130)
            Layout.margins: Theme.pad
            Layout.bottomMargin: 0
            visible: page.app.lessons.count > 4 || page.app.lessons.search !== ""
            question: qsTr("Find a lesson")
            hint: qsTr("player, title, wish")
            text: page.app.lessons.search
            onEdited: (text) => page.app.lessons.search = text
        }
        EmptyLessonsPanel {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: page.empty
            canMakeDemo: page.app.bringIn.canMakeDemo
            onBringIn: page.bringIn()
            onDemo: page.app.bringIn.startDemo()
        }
        ListView {
            id: list
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: !page.empty
            clip: true
            model: page.app.lessons
            spacing: Theme.pad
            topMargin: Theme.pad
            bottomMargin: Theme.pad
            boundsBehavior: Flickable.StopAtBounds
            // Scrolls away: with large letters it would leave the list no room.
            header: Column {
                onHeightChanged: Qt.callLater(list.positionViewAtBeginning)
                x: Theme.pad
                width: list.width - 2 * Theme.pad
                bottomPadding: Theme.pad
                spacing: Theme.pad
                BodyText {
                    width: parent.width
                    visible: page.notice !== ""
                    text: page.notice
                    font.bold: page.app.lessons.problem !== "" || page.app.bringIn.problem !== ""
                }
                ActionButton {
                    glyph: "folder"
                    text: qsTr("Sent in")
                    onClicked: page.inbox()
                }
            }
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Lessons")
            delegate: LessonDelegate {
                width: Math.min(list.width - 2 * Theme.pad, Theme.mm(190))
                x: (list.width - width) / 2
                onOpenSwing: (clip, title) => page.openSwing(clip, title)
                onTeach: page.teach(lesson, player)
                onReview: page.review(lesson, player)
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
        Rectangle {
            Layout.fillWidth: true
            implicitHeight: Theme.hair
            color: Theme.edge
        }
        GridLayout {
            id: bar
            // Large letters on a phone: one above the other, for half the width would break words.
            columns: Theme.textScale > 1.4 && page.width < Theme.mm(90) ? 1 : 2
            readonly property real room: page.width - 2 * Theme.pad
            readonly property real share: columns === 1 ? room : Math.min((room - Theme.gap) / 2, Theme.mm(80))
            Layout.fillWidth: true
            Layout.fillHeight: false
            Layout.margins: Theme.pad
            columnSpacing: Theme.gap
            rowSpacing: Theme.gap
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            ActionButton {
                Layout.preferredWidth: bar.share
                Layout.fillHeight: true
                Layout.alignment: Theme.leftHanded ? Qt.AlignRight : Qt.AlignLeft
                glyph: "person"
                text: qsTr("Players")
                onClicked: page.players()
            }
            ActionButton {
                Layout.preferredWidth: bar.share
                Layout.fillHeight: true
                Layout.alignment: Theme.leftHanded ? Qt.AlignLeft : Qt.AlignRight
                visible: !page.empty
                primary: true
                glyph: "plus"
                text: qsTr("Bring in a clip")
                onClicked: page.bringIn()
            }
        }
    }
}
