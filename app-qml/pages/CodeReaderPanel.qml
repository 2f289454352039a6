// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls
import Plumbmark.Stage

// The code on the other device's screen, read by this one's camera.
Column {
    id: panel
    required property CodeReader reader
    required property bool busy
    spacing: Theme.pad

    Component.onDestruction: reader.stop()

    Rectangle {
        width: Math.min(parent.width, Theme.mm(100))
        height: width * 0.75
        visible: panel.reader.active
        color: Theme.stage
        StillItem {
            anchors.fill: parent
            image: panel.reader.picture
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("What the camera sees")
        }
    }
    BodyText {
        width: parent.width
        visible: text !== ""
        text: panel.reader.active ? qsTr("Hold the camera so that the code fills a third of the picture.")
                                  : panel.reader.problem
    }
    ActionButton {
        enabled: !panel.busy
        text: panel.reader.active ? qsTr("Stop the camera") : qsTr("Read the code with the camera")
        onClicked: panel.reader.active ? panel.reader.stop() : panel.reader.start()
    }
}
