// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// While a clip is brought in: what is being done, how far, and a way out.
Rectangle {
    id: overlay
    required property BringInModel bringIn
    color: Theme.paper
    MouseArea { anchors.fill: parent }
    ColumnLayout {
        anchors.centerIn: parent
        width: Math.min(parent.width - 2 * Theme.mm(5), Theme.mm(110))
        spacing: Theme.mm(4)
        BodyText {
            Layout.fillWidth: true
            font.pixelSize: Theme.titleSize
            font.bold: true
            text: qsTr("Reading the swing")
        }
        ProgressLine {
            Layout.fillWidth: true
            Layout.preferredHeight: Theme.mm(4)
            share: overlay.bringIn.share
            label: qsTr("Progress, %1 per cent").arg(Math.round(100 * overlay.bringIn.share))
        }
        BodyText {
            Layout.fillWidth: true
            text: overlay.bringIn.doing
        }
        ActionButton {
            Layout.fillWidth: true
            glyph: "close"
            text: qsTr("Cancel")
            onClicked: overlay.bringIn.cancel()
        }
    }
}
