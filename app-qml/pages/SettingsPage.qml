// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// How this person likes the app on this device: letters, hand, colours, language.
FocusScope {
    id: page
    required property SettingsModel settings
    signal back()
    Keys.onEscapePressed: back()
    Keys.onBackPressed: back()

    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        PageHeader {
            Layout.fillWidth: true
            title: qsTr("Settings")
            onBack: page.back()
        }
        Flickable {
            id: flick
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            contentHeight: column.implicitHeight + 2 * Theme.pad
            boundsBehavior: Flickable.StopAtBounds
            ColumnLayout {
                id: column
                width: Math.min(flick.width - 2 * Theme.pad, Theme.mm(130))
                x: (flick.width - width) / 2
                y: Theme.pad
                spacing: Theme.mm(4)
                ChoiceRow {
                    Layout.fillWidth: true
                    question: qsTr("Size of the letters")
                    choices: [1, 1.25, 1.5, 2].map(scale => ({ value: String(scale), text: qsTr("%1 %").arg(Math.round(100 * scale)) }))
                    value: String(page.settings.textScale)
                    onChosen: (value) => page.settings.textScale = Number(value)
                }
                ChoiceRow {
                    Layout.fillWidth: true
                    question: qsTr("The hand that works the app")
                    choices: [{ value: "right", text: qsTr("Right") }, { value: "left", text: qsTr("Left") }]
                    value: page.settings.leftHanded ? "left" : "right"
                    onChosen: (value) => page.settings.leftHanded = value === "left"
                }
                ChoiceRow {
                    Layout.fillWidth: true
                    question: qsTr("Colours")
                    choices: [{ value: "sun", text: qsTr("Light, for the sun") }, { value: "dark", text: qsTr("Dark, for indoors") }]
                    value: page.settings.dark ? "dark" : "sun"
                    onChosen: (value) => page.settings.dark = value === "dark"
                }
                ChoiceRow {
                    Layout.fillWidth: true
                    question: qsTr("Language")
                    choices: page.settings.languageChoices
                    value: page.settings.language
                    onChosen: (value) => page.settings.language = value
                }
                BodyText {
                    Layout.fillWidth: true
                    text: qsTr("The hand is yours, not the player's. Settings stay on this device.")
                    font.pixelSize: Theme.smallSize
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
    }
}
