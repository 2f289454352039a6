// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// Lessons out, lessons in, and keeping them safe. One panel at a time; what the last work did stands above it.
FocusScope {
    id: page
    required property ExchangeModel exchange
    property int panel: 0
    signal back()
    Keys.onEscapePressed: back()
    Keys.onBackPressed: back()
    Component.onCompleted: exchange.refresh()

    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        PageHeader {
            Layout.fillWidth: true
            title: qsTr("Exchange and keep")
            onBack: page.back()
        }
        SegmentRow {
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            Layout.bottomMargin: 0
            labels: [qsTr("Files"), qsTr("Devices"), qsTr("Consent"), qsTr("Backups"),
                     page.exchange.disagreements.length > 0 ? qsTr("Settle (%1)").arg(page.exchange.disagreements.length)
                                                            : qsTr("Settle")]
            current: page.panel
            onChosen: (index) => {
                page.panel = index
                page.exchange.forgetTold()
            }
        }
        // One work at a time: how far it is, and a way to stop it.
        RowLayout {
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            Layout.bottomMargin: 0
            visible: page.exchange.busy
            spacing: Theme.pad
            ColumnLayout {
                Layout.fillWidth: true
                BodyText {
                    Layout.fillWidth: true
                    text: page.exchange.doing
                    font.bold: true
                }
                ProgressLine {
                    Layout.fillWidth: true
                    share: page.exchange.share
                }
            }
            ActionButton {
                text: qsTr("Stop")
                onClicked: page.exchange.cancel()
            }
        }
        BodyText {
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            Layout.bottomMargin: 0
            visible: text !== "" && !page.exchange.busy
            text: page.exchange.problem || page.exchange.outcome
            color: page.exchange.problem !== "" ? Theme.danger : Theme.ink
            font.bold: true
        }
        Flickable {
            id: flick
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            contentWidth: width
            contentHeight: body.implicitHeight + 2 * Theme.pad
            boundsBehavior: Flickable.StopAtBounds
            Loader {
                id: body
                x: (flick.width - width) / 2
                y: Theme.pad
                width: Math.min(flick.width - 2 * Theme.pad, Theme.mm(190))
                sourceComponent: [files, devices, consent, backups, settle][page.panel]
                onSourceComponentChanged: flick.contentY = 0
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
    Component { id: files; ExchangeFilePanel { exchange: page.exchange } }
    Component { id: devices; ExchangeDevicesPanel { exchange: page.exchange } }
    Component { id: consent; ConsentPanel { exchange: page.exchange } }
    Component { id: backups; BackupsPanel { exchange: page.exchange } }
    Component { id: settle; SettlePanel { exchange: page.exchange } }
}
