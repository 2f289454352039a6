// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls

// What two devices put differently: a person says which version holds.
Column {
    id: panel
    required property ExchangeModel exchange
    spacing: Theme.pad * 1.5

    BodyText {
        width: parent.width
        text: panel.exchange.disagreements.length === 0
              ? qsTr("Nothing to settle: all devices agree.")
              : qsTr("Two devices put this differently without having seen each other. Both versions are kept; tap the one that holds.")
        font.bold: true
    }
    Repeater {
        model: panel.exchange.disagreements
        Column {
            id: entry
            required property var modelData
            width: panel.width
            spacing: Theme.mm(1.2)
            Rectangle {
                width: parent.width
                height: Theme.hair
                color: Theme.edge
            }
            BodyText {
                width: parent.width
                text: entry.modelData.where + ": " + entry.modelData.what
                font.bold: true
            }
            Repeater {
                model: entry.modelData.versions
                Column {
                    id: version
                    required property var modelData
                    width: entry.width
                    spacing: 0
                    ActionButton {
                        width: parent.width
                        enabled: !panel.exchange.busy
                        text: version.modelData.text
                        Accessible.name: qsTr("%1 holds: %2").arg(entry.modelData.what).arg(version.modelData.text)
                        onClicked: panel.exchange.settle(version.modelData.id)
                    }
                    BodyText {
                        width: parent.width
                        font.pixelSize: Theme.smallSize
                        text: version.modelData.when
                    }
                }
            }
        }
    }
}
