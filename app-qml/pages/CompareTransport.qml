// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// Through both swings at once: the slider is the way through this swing, the other follows at the same position.
Item {
    id: bar
    required property CompareModel compare
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
            glyph: bar.compare.playing ? "pause" : "play"
            label: bar.compare.playing ? qsTr("Pause") : qsTr("Play both slowly")
            enabled: bar.compare.first.ready
            onClicked: bar.compare.playing = !bar.compare.playing
        }
        ScrubSlider {
            id: slider
            Layout.fillWidth: true
            label: qsTr("Place in this swing")
            ticks: bar.compare.moments.shares
            from: 0
            to: Math.max(1, bar.compare.frames - 1)
            enabled: bar.compare.first.ready
            onMoved: {
                bar.compare.playing = false
                bar.compare.goTo(value)
            }
            Binding {
                target: slider
                property: "value"
                value: Math.max(0, bar.compare.frame)
                when: !slider.pressed
            }
        }
        Row {
            spacing: Theme.gap
            IconButton {
                glyph: "step-back"
                label: qsTr("One frame back")
                autoRepeat: true
                enabled: bar.compare.first.ready
                onClicked: bar.compare.step(-1)
            }
            IconButton {
                glyph: "step-on"
                label: qsTr("One frame on")
                autoRepeat: true
                enabled: bar.compare.first.ready
                onClicked: bar.compare.step(1)
            }
        }
    }
}
