// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls

// Side by side over the local network, and through a folder that several devices reach.
Column {
    id: panel
    required property ExchangeModel exchange
    spacing: Theme.pad * 1.5

    BodyText {
        width: parent.width
        text: qsTr("Send to a device beside this one")
        font.pixelSize: Theme.titleSize
        font.bold: true
        Accessible.role: Accessible.Heading
    }
    Column {
        width: parent.width
        spacing: Theme.pad
        visible: panel.exchange.ticket !== ""
        BodyText {
            width: parent.width
            text: qsTr("Read this code with the other device, or type the ticket there. The way is open while it is shown, for one sending.")
        }
        Rectangle {
            // A code is read dark on light, whatever the theme.
            color: "#ffffff"
            width: Math.min(parent.width, Theme.mm(70))
            height: width
            Image {
                anchors.fill: parent
                source: panel.exchange.qrSource
                smooth: false
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("Code of the ticket")
            }
        }
        TextEdit {
            width: parent.width
            text: panel.exchange.ticket
            readOnly: true
            selectByMouse: true
            color: Theme.ink
            font.pixelSize: Theme.smallSize
            wrapMode: TextEdit.WrapAnywhere
            textFormat: TextEdit.PlainText
            Accessible.role: Accessible.StaticText
            Accessible.name: qsTr("Ticket %1").arg(text)
        }
    }
    ExchangeTravelPanel {
        width: parent.width
        visible: panel.exchange.ticket === ""
        exchange: panel.exchange
    }
    ActionButton {
        visible: panel.exchange.ticket === ""
        primary: true
        enabled: !panel.exchange.busy && panel.exchange.lesson !== ""
        text: qsTr("Send this lesson")
        onClicked: panel.exchange.startSending()
    }
    Rectangle {
        width: parent.width
        height: Theme.hair
        color: Theme.edge
    }
    BodyText {
        width: parent.width
        text: qsTr("Receive")
        font.pixelSize: Theme.titleSize
        font.bold: true
        Accessible.role: Accessible.Heading
    }
    Loader {
        width: parent.width
        active: panel.exchange.codeReader !== null
        visible: active
        sourceComponent: CodeReaderPanel {
            reader: panel.exchange.codeReader
            busy: panel.exchange.busy
        }
    }
    TextEntry {
        id: ticket
        width: parent.width
        question: qsTr("Ticket of the other device")
        hint: qsTr("plumbmark: and what follows")
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
    }
    ActionButton {
        enabled: !panel.exchange.busy && ticket.text !== ""
        text: qsTr("Receive the lesson")
        onClicked: panel.exchange.receive(ticket.text)
    }
    Rectangle {
        width: parent.width
        height: Theme.hair
        color: Theme.edge
    }
    BodyText {
        width: parent.width
        text: qsTr("Shared folder")
        font.pixelSize: Theme.titleSize
        font.bold: true
        Accessible.role: Accessible.Heading
    }
    BodyText {
        width: parent.width
        text: qsTr("A stick, a network drive, or a folder that another program carries around. Everything here goes to your own devices that reach it; what is missed is caught up with.")
    }
    ChoiceRow {
        width: parent.width
        question: qsTr("Folder to exchange through")
        choices: [{value: "", text: qsTr("none")}].concat(panel.exchange.places)
        value: panel.exchange.sharedFolder
        onChosen: (value) => panel.exchange.chooseSharedFolder(value)
    }
    TextEntry {
        id: other
        width: parent.width
        question: qsTr("Or another folder")
        hint: panel.exchange.sharedFolder
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
    }
    Flow {
        width: parent.width
        spacing: Theme.gap
        ActionButton {
            visible: other.text !== ""
            enabled: !panel.exchange.busy
            text: qsTr("Use this folder")
            onClicked: {
                panel.exchange.chooseSharedFolder(other.text)
                other.text = ""
            }
        }
        ActionButton {
            enabled: !panel.exchange.busy && panel.exchange.sharedFolder !== ""
            text: qsTr("Exchange now")
            onClicked: panel.exchange.syncNow()
        }
    }
    BodyText {
        width: parent.width
        visible: text !== ""
        text: panel.exchange.sharedState
    }
}
