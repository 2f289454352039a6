// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Window
import Plumbmark.Bridge
import Plumbmark.Controls

Window {
    id: root
    required property AppModel app
    // Logical pixels per millimetre where the screen does not tell the truth about its size; 0: ask the screen.
    property real pixelsPerMm: 0
    property string page: "lessons"
    // Where the way back from a swing leads.
    property string swingFrom: "lessons"
    property int playerTab: 0
    property string bodyFrom: "player"

    width: 1280
    height: 800
    minimumWidth: 320
    minimumHeight: 480
    visible: true
    title: qsTr("Plumbmark")
    color: Theme.paper

    Binding {
        target: Theme
        property: "pixelsPerMm"
        // Projectors and virtual screens tell fantastic sizes; between these two lie all real ones.
        value: root.pixelsPerMm > 0 ? root.pixelsPerMm : Math.min(8, Math.max(3.2, root.Screen.pixelDensity))
    }
    Binding { target: Theme; property: "dark"; value: root.app.settings.dark }
    Binding { target: Theme; property: "leftHanded"; value: root.app.settings.leftHanded }
    Binding { target: Theme; property: "textScale"; value: root.app.settings.textScale }
    Binding { target: Theme; property: "rightToLeft"; value: root.app.rightToLeft }
    LayoutMirroring.enabled: root.app.rightToLeft
    LayoutMirroring.childrenInherit: true

    Connections {
        target: root.app
        function onSwingOpened() { root.page = "swing" }
        function onCompareOpened() { root.page = "compare" }
        function onTeachOpened() { root.page = "teach" }
        function onReviewOpened() { root.page = "review" }
        function onInboxOpened() { root.page = "inbox" }
    }

    LessonsPage {
        id: lessonsPage
        anchors.fill: parent
        visible: root.page === "lessons"
        enabled: visible && !working.visible
        focus: visible
        app: root.app
        onBringIn: root.page = "bringIn"
        onFilm: root.page = "film"
        onPlayers: root.page = "players"
        onExchange: root.page = "exchange"
        onSettings: root.page = "settings"
        onOpenSwing: (clip, title) => root.app.openSwing(clip, title)
        onTeach: (lesson, title) => root.app.openTeach(lesson, title)
        onReview: (lesson, title) => root.app.openReview(lesson, title)
        onInbox: root.app.openInbox()
    }
    Loader {
        anchors.fill: parent
        active: root.page === "bringIn"
        enabled: !working.visible
        focus: active
        sourceComponent: BringInPage {
            bringIn: root.app.bringIn
            focus: true
            onBack: root.page = root.app.group.active ? "group" : "lessons"
        }
    }
    Loader {
        anchors.fill: parent
        active: root.page === "film" && root.app.film !== null
        enabled: !working.visible
        focus: active
        sourceComponent: FilmPage {
            film: root.app.film
            group: root.app.group
            bringIn: root.app.bringIn
            focus: true
            onBack: root.page = root.app.group.active ? "group" : "lessons"
            onBringInInstead: root.page = "bringIn"
            onBodyCard: (player) => {
                root.app.openBodyCard(player)
                root.bodyFrom = "film"
                root.page = "bodyCard"
            }
            onOpenSwing: (clip, title) => root.app.openSwing(clip, title)
        }
    }
    Loader {
        anchors.fill: parent
        active: root.page === "exchange"
        focus: active
        sourceComponent: ExchangePage {
            exchange: root.app.exchange
            focus: true
            onBack: root.page = "lessons"
        }
    }
    Loader {
        anchors.fill: parent
        active: root.page === "swing" && root.app.swing !== null
        focus: active
        sourceComponent: SwingPage {
            swing: root.app.swing
            focus: true
            onBack: {
                root.page = root.swingFrom === "lessons" && root.app.group.active ? "group" : root.swingFrom
                root.swingFrom = "lessons"
                root.app.closeSwing()
            }
        }
    }
    Loader {
        anchors.fill: parent
        active: root.page === "compare" && root.app.compare !== null
        focus: active
        sourceComponent: ComparePage {
            compare: root.app.compare
            focus: true
            onBack: {
                root.page = "swing"
                root.app.closeCompare()
            }
        }
    }
    Loader {
        anchors.fill: parent
        active: root.page === "players"
        focus: active
        sourceComponent: PlayersPage {
            players: root.app.players
            focus: true
            onBack: root.page = "lessons"
            onGroupLesson: {
                root.app.startGroup()
                root.page = "group"
            }
            onOpenPlayer: (player) => {
                root.app.openPlayer(player)
                root.playerTab = 0
                root.page = "player"
            }
        }
    }
    Loader {
        anchors.fill: parent
        active: root.page === "teach" && root.app.coach !== null
        focus: active
        sourceComponent: TeachPage {
            coach: root.app.coach
            focus: true
            onOpenSwing: (clip, moment) => {
                root.swingFrom = "teach"
                root.app.openSwing(clip, root.app.coach.title, moment)
            }
            onBack: {
                root.page = "lessons"
                root.app.closeTeach()
            }
        }
    }
    Loader {
        anchors.fill: parent
        active: root.page === "player"
        focus: active
        sourceComponent: PlayerPage {
            player: root.app.player
            focus: true
            onBack: root.page = root.app.group.active ? "group" : "players"
            onBodyCard: {
                root.app.openBodyCard(root.app.player.playerId)
                root.bodyFrom = "player"
                root.page = "bodyCard"
            }
            onOpenSwing: (clip, title) => {
                root.swingFrom = "player"
                root.app.openSwing(clip, title)
            }
            Component.onCompleted: tab = root.playerTab
            Component.onDestruction: root.playerTab = tab
        }
    }
    Loader {
        anchors.fill: parent
        active: root.page === "bodyCard"
        focus: active
        sourceComponent: BodyCardPage {
            card: root.app.bodyCard
            focus: true
            onBack: {
                if (root.bodyFrom === "player")
                    root.app.player.refresh()
                root.page = root.bodyFrom
            }
        }
    }
    Loader {
        anchors.fill: parent
        active: root.page === "review" && root.app.review !== null
        focus: active
        sourceComponent: ReviewPage {
            review: root.app.review
            focus: true
            onBack: {
                root.page = root.app.inbox !== null ? "inbox" : "lessons"
                root.app.closeReview()
            }
        }
    }
    Loader {
        anchors.fill: parent
        active: root.page === "group"
        focus: active
        sourceComponent: GroupPage {
            group: root.app.group
            canFilm: root.app.film !== null
            focus: true
            onBack: root.page = "players"
            onFilm: root.page = "film"
            onBringIn: root.page = "bringIn"
            onOpenPlayer: (player) => {
                root.app.openPlayer(player)
                root.playerTab = 0
                root.page = "player"
            }
        }
    }
    Loader {
        anchors.fill: parent
        active: root.page === "settings"
        focus: active
        sourceComponent: SettingsPage {
            settings: root.app.settings
            focus: true
            onBack: root.page = "lessons"
        }
    }
    Loader {
        anchors.fill: parent
        active: root.page === "inbox" && root.app.inbox !== null
        focus: active
        sourceComponent: InboxPage {
            inbox: root.app.inbox
            focus: true
            onOpenLesson: (lesson, title) => root.app.openReview(lesson, title)
            onBack: {
                root.page = "lessons"
                root.app.closeInbox()
            }
        }
    }
    WorkingOverlay {
        id: working
        anchors.fill: parent
        visible: root.app.bringIn.busy
        bringIn: root.app.bringIn
    }
}
