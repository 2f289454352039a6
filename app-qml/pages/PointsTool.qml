// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls

// Points that nobody has marked in the frame on show: choose one, then tap the picture where it is.
Flickable {
    id: flick
    required property SwingModel swing
    clip: true
    contentHeight: column.implicitHeight + 2 * Theme.pad
    boundsBehavior: Flickable.StopAtBounds
    Column {
        id: column
        x: Theme.pad
        width: flick.width - 2 * Theme.pad
        spacing: Theme.gap
        BodyText {
            width: parent.width
            font.pixelSize: Theme.smallSize
            text: flick.swing.unmarked.length > 0 ? qsTr("Choose a point, then tap the picture where it is.")
                                                  : qsTr("Every point is marked in this frame.")
        }
        Flow {
            width: parent.width
            spacing: Theme.gap
            Repeater {
                model: flick.swing.unmarked
                ChoiceChip {
                    required property var modelData
                    maximumWidth: column.width
                    text: modelData.name
                    checkable: false
                    Accessible.role: Accessible.Button
                    Accessible.name: qsTr("Place: %1").arg(text)
                    onClicked: flick.swing.takeUp(modelData.id)
                }
            }
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
