// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Controls

Item {
    id: panel
    property bool canMakeDemo: false
    signal bringIn()
    signal demo()
    ColumnLayout {
        anchors.centerIn: parent
        width: Math.min(parent.width - 2 * Theme.mm(4), Theme.mm(100))
        spacing: Theme.mm(4)
        Glyph {
            Layout.alignment: Qt.AlignHCenter
            Layout.preferredWidth: Theme.mm(18)
            Layout.preferredHeight: Theme.mm(18)
            name: "plumb"
            color: Theme.accent
        }
        BodyText {
            Layout.fillWidth: true
            horizontalAlignment: Text.AlignHCenter
            font.pixelSize: Theme.titleSize
            font.bold: true
            text: qsTr("No lessons yet")
        }
        BodyText {
            Layout.fillWidth: true
            horizontalAlignment: Text.AlignHCenter
            text: qsTr("Bring in a clip of a swing: it is marked, measured and judged here, on this device.")
        }
        ActionButton {
            Layout.fillWidth: true
            primary: true
            glyph: "plus"
            text: qsTr("Bring in a clip")
            onClicked: panel.bringIn()
        }
        ActionButton {
            Layout.fillWidth: true
            visible: panel.canMakeDemo
            glyph: "swing"
            text: qsTr("Try a demo swing")
            onClicked: panel.demo()
        }
    }
}
