// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// Through the frames: the way as a whole, and one frame at a time under the thumb of the operator's hand.
Item {
    id: bar
    required property SwingModel swing
    property bool showPlay: true
    implicitHeight: Theme.target

    RowLayout {
        anchors.fill: parent
        anchors.leftMargin: Theme.gap
        anchors.rightMargin: Theme.gap
        spacing: Theme.gap
        LayoutMirroring.enabled: false
        LayoutMirroring.childrenInherit: true
        layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
        IconButton {
            visible: bar.showPlay
            glyph: bar.swing.playing ? "pause" : "play"
            label: bar.swing.playing ? qsTr("Pause") : qsTr("Play slowly")
            onClicked: bar.swing.playing = !bar.swing.playing
        }
        ScrubSlider {
            id: slider
            Layout.fillWidth: true
            label: qsTr("Place in the clip")
            ticks: bar.swing.moments.shares
            from: 0
            to: Math.max(1, bar.swing.frames - 1)
            enabled: bar.swing.ready
            onMoved: bar.swing.goTo(value)
            Binding {
                target: slider
                property: "value"
                value: Math.max(0, bar.swing.frame)
                when: !slider.pressed
            }
        }
        // In the order of time in every language and for either hand.
        Row {
            spacing: Theme.gap
            IconButton {
                width: Theme.target * (bar.showPlay ? 1.5 : 1.15)
                glyph: "step-back"
                label: qsTr("One frame back")
                autoRepeat: true
                enabled: bar.swing.ready
                onClicked: bar.swing.step(-1)
            }
            IconButton {
                width: Theme.target * (bar.showPlay ? 1.5 : 1.15)
                glyph: "step-on"
                label: qsTr("One frame on")
                autoRepeat: true
                enabled: bar.swing.ready
                onClicked: bar.swing.step(1)
            }
        }
    }
}
