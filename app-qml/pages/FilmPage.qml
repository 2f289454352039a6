// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// The camera: what the coach knows first, then the live picture with the armed recorder, or a student's practice.
FocusScope {
    id: page
    required property FilmModel film
    required property BringInModel bringIn
    required property GroupModel group
    readonly property bool wide: width >= Theme.mm(130)
    signal back()
    signal bringInInstead()
    signal bodyCard(string player)
    signal openSwing(string clip, string title)

    function goBack(): void {
        if (film.live)
            film.stop()
        else
            back()
    }
    Keys.onEscapePressed: goBack()
    Keys.onBackPressed: goBack()
    // The keys of a keyboard, a presenter's remote control and a camera's release.
    Keys.onPressed: (event) => {
        const release = [Qt.Key_Space, Qt.Key_PageDown, Qt.Key_VolumeUp, Qt.Key_Camera]
        if (film.live && release.includes(event.key)) {
            film.cutNow()
            event.accepted = true
        }
    }
    Component.onDestruction: film.stop()

    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        PageHeader {
            Layout.fillWidth: true
            title: page.film.practising ? qsTr("Practice") : qsTr("Film")
            subtitle: page.film.live ? page.film.practising ? page.film.checkpoint : page.film.cameraName : ""
            onBack: page.goBack()
        }
        GroupStrip {
            Layout.fillWidth: true
            visible: page.group.active
            group: page.group
        }
        FilmSetupPanel {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: !page.film.live
            film: page.film
            bringIn: page.bringIn
            onBringInInstead: page.bringInInstead()
            onBodyCard: (player) => page.bodyCard(player)
            onOpenSwing: (clip, title) => page.openSwing(clip, title)
        }
        GridLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: page.film.live
            columns: page.wide ? 2 : 1
            columnSpacing: 0
            rowSpacing: 0
            LivePicturePanel {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 2
                Layout.preferredHeight: 3
                film: page.film
            }
            PracticeSignPanel {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 2
                Layout.preferredHeight: 4
                visible: page.film.practising
                film: page.film
            }
            TakesPanel {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                Layout.preferredHeight: 2
                visible: !page.film.practising
                film: page.film
                onOpenSwing: (clip, title) => page.openSwing(clip, title)
            }
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            visible: page.film.live
            spacing: Theme.gap
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            ChoiceChip {
                visible: !page.film.practising
                text: qsTr("Armed")
                checkable: false
                checked: page.film.armed
                Accessible.name: page.film.armed ? qsTr("Armed: swings are cut out by themselves")
                                                 : qsTr("Not armed: only the button cuts")
                onClicked: page.film.armed = !page.film.armed
            }
            Item { Layout.fillWidth: true }
            IconButton {
                glyph: "close"
                label: qsTr("Stop")
                onClicked: page.film.stop()
            }
            ActionButton {
                primary: true
                focus: true
                text: qsTr("Cut now")
                glyph: page.wide ? "tick" : ""
                Accessible.description: qsTr("Keeps the last seconds as a swing, with or without a hit")
                onClicked: page.film.cutNow()
            }
        }
    }
}
