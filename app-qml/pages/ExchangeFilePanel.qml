// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls

// A lesson out to a file, and one in from a file: checked first, then taken in.
Column {
    id: panel
    required property ExchangeModel exchange
    spacing: Theme.pad * 1.5

    BodyText {
        width: parent.width
        text: qsTr("Save a lesson to a file")
        font.pixelSize: Theme.titleSize
        font.bold: true
        Accessible.role: Accessible.Heading
    }
    ExchangeTravelPanel {
        width: parent.width
        exchange: panel.exchange
    }
    ChoiceRow {
        width: parent.width
        question: qsTr("Folder")
        choices: panel.exchange.places
        value: panel.exchange.folder
        onChosen: (value) => panel.exchange.openFolder(value)
    }
    TextEntry {
        width: parent.width
        question: qsTr("Passphrase (seals the file; leave it empty for none)")
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
        text: panel.exchange.passphrase
        onEdited: (text) => panel.exchange.passphrase = text
    }
    ActionButton {
        primary: true
        enabled: !panel.exchange.busy && panel.exchange.lesson !== ""
        text: qsTr("Save the lesson file")
        onClicked: panel.exchange.saveFile()
    }
    Rectangle {
        width: parent.width
        height: Theme.hair
        color: Theme.edge
    }
    BodyText {
        width: parent.width
        text: qsTr("Open a lesson file")
        font.pixelSize: Theme.titleSize
        font.bold: true
        Accessible.role: Accessible.Heading
    }
    BodyText {
        width: parent.width
        visible: panel.exchange.files.length === 0
        text: qsTr("There is no lesson file in this folder; choose another one above.")
    }
    Repeater {
        model: panel.exchange.files
        Column {
            id: entry
            required property var modelData
            readonly property bool chosen: panel.exchange.file === modelData.path
            width: panel.width
            spacing: Theme.mm(1.2)
            ActionButton {
                width: parent.width
                enabled: !panel.exchange.busy
                text: entry.modelData.name
                Accessible.name: qsTr("Check lesson file %1").arg(entry.modelData.name)
                onClicked: panel.exchange.checkFile(entry.modelData.path)
            }
            BodyText {
                width: parent.width
                text: entry.chosen && panel.exchange.fileTold !== "" ? panel.exchange.fileTold : entry.modelData.detail
                font.pixelSize: Theme.smallSize
            }
            ActionButton {
                visible: entry.chosen && panel.exchange.canImport
                primary: true
                enabled: !panel.exchange.busy
                text: qsTr("Take the lesson in")
                onClicked: panel.exchange.importFile()
            }
        }
    }
}
