// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls

// Whole copies of the library: the last one, one more now, and putting one back.
Column {
    id: panel
    required property ExchangeModel exchange
    property string asked: ""
    spacing: Theme.pad * 1.5

    BodyText {
        width: parent.width
        text: panel.exchange.backups.length > 0
              ? qsTr("Last backup: %1, %2.").arg(panel.exchange.backups[0].day).arg(panel.exchange.backups[0].why)
              : qsTr("There is no backup yet.")
        font.bold: true
    }
    BodyText {
        width: parent.width
        text: qsTr("One is made at the first start of a day; the last 7 days and 4 weeks stay. They lie on this device: they guard against a mistake, not against a lost device. For that, exchange through a folder or make one on a stick.")
    }
    ActionButton {
        primary: true
        enabled: !panel.exchange.busy
        text: qsTr("Make a backup now")
        onClicked: panel.exchange.backupNow()
    }
    Column {
        width: parent.width
        spacing: Theme.pad
        visible: panel.exchange.pendingRestore !== ""
        BodyText {
            width: parent.width
            text: qsTr("At the next start a backup is put in the library's place.")
            color: Theme.danger
            font.bold: true
        }
        Flow {
            width: parent.width
            spacing: Theme.gap
            ActionButton {
                text: qsTr("Close the app now")
                onClicked: Qt.quit()
            }
            ActionButton {
                text: qsTr("Rather not: keep the library")
                onClicked: panel.exchange.forgetRestore()
            }
        }
    }
    Repeater {
        model: panel.exchange.pendingRestore === "" ? panel.exchange.backups : []
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
                text: entry.modelData.day + ", " + entry.modelData.why
            }
            Flow {
                width: parent.width
                spacing: Theme.gap
                ActionButton {
                    enabled: !panel.exchange.busy
                    text: panel.asked === entry.modelData.name ? qsTr("Rather not") : qsTr("Put this one back")
                    Accessible.name: text + ", " + entry.modelData.day
                    onClicked: panel.asked = panel.asked === entry.modelData.name ? "" : entry.modelData.name
                }
                ActionButton {
                    visible: panel.asked === entry.modelData.name
                    primary: true
                    enabled: !panel.exchange.busy
                    text: qsTr("Check it and put it back at the next start")
                    onClicked: {
                        panel.asked = ""
                        panel.exchange.planRestore(entry.modelData.name)
                    }
                }
            }
            BodyText {
                width: parent.width
                visible: panel.asked === entry.modelData.name
                text: qsTr("Lessons made since then are not in it. What is here now is kept among the backups, and what was erased stays erased.")
            }
        }
    }
}
