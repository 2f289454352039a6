// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// One player: today, the lessons in time, the swings filed, a number over the lessons. A new player is a form first.
FocusScope {
    id: page
    required property PlayerModel player
    property bool editing: player.isNew
    property alias tab: tabs.current
    signal back()
    signal bodyCard()
    signal openSwing(string clip, string title)

    function goBack(): void {
        if (editing && !player.isNew)
            editing = false
        else
            back()
    }
    Keys.onEscapePressed: goBack()
    Keys.onBackPressed: goBack()
    Connections {
        target: page.player
        function onSaved() { page.editing = false }
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        PageHeader {
            Layout.fillWidth: true
            title: page.player.isNew ? qsTr("New player") : page.player.name
            subtitle: page.player.about
            onBack: page.goBack()
            actions: [
                IconButton {
                    visible: !page.editing
                    glyph: "pencil"
                    label: qsTr("Change the player's details")
                    outlined: false
                    onClicked: page.editing = true
                }
            ]
        }
        BodyText {
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            visible: text !== ""
            text: page.player.problem
            font.bold: true
            color: Theme.danger
        }
        Loader {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: active
            active: page.editing
            sourceComponent: PlayerFormPanel { player: page.player }
        }
        SegmentRow {
            id: tabs
            Layout.fillWidth: true
            Layout.margins: Theme.gap
            visible: !page.editing
            labels: [qsTr("Today"), qsTr("Lessons"), qsTr("Swings"), qsTr("Trend")]
            onChosen: (index) => current = index
        }
        Loader {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: active
            active: !page.editing
            sourceComponent: [todayPanel, lessonsPanel, swingsPanel, trendPanel][tabs.current]
        }
    }
    Component {
        id: todayPanel
        PlayerTodayPanel {
            player: page.player
            onBodyCard: page.bodyCard()
        }
    }
    Component {
        id: lessonsPanel
        PlayerLessonsPanel {
            player: page.player
            onOpenSwing: (clip, title) => page.openSwing(clip, title)
        }
    }
    Component {
        id: swingsPanel
        PlayerSwingsPanel {
            player: page.player
            onOpenSwing: (clip) => page.openSwing(clip, page.player.name)
        }
    }
    Component {
        id: trendPanel
        TrendPanel { player: page.player }
    }
}
