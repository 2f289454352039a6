// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// Record and stop; and the way through the film, or, in a replay, through the review.
ColumnLayout {
    id: bar
    required property ReviewModel review
    readonly property bool replaying: review.doing === "replaying"
    readonly property bool recording: review.doing === "recording"
    spacing: Theme.gap

    RowLayout {
        Layout.fillWidth: true
        Layout.leftMargin: Theme.gap
        Layout.rightMargin: Theme.gap
        spacing: Theme.gap
        LayoutMirroring.enabled: false
        IconButton {
            glyph: bar.replaying ? (bar.review.replayPaused ? "play" : "pause") : bar.review.running ? "pause" : "play"
            label: bar.replaying ? (bar.review.replayPaused ? qsTr("Go on") : qsTr("Pause"))
                                 : bar.review.running ? qsTr("Stop the film") : qsTr("Play the film slowly")
            enabled: bar.review.ready
            onClicked: {
                if (bar.replaying)
                    bar.review.replayPaused ? bar.review.replay() : bar.review.pauseReplay()
                else
                    bar.review.running ? bar.review.freeze() : bar.review.run(0.125)
            }
        }
        ScrubSlider {
            id: slider
            Layout.fillWidth: true
            label: bar.replaying ? qsTr("Place in the review") : qsTr("Place in the film")
            from: 0
            to: Math.max(1, bar.replaying ? bar.review.lengthMs : bar.review.frames - 1)
            stepSize: bar.replaying ? 100 : 1
            enabled: bar.review.ready
            onMoved: bar.replaying ? bar.review.seek(value) : bar.review.goTo(value)
            Binding {
                target: slider
                property: "value"
                value: bar.replaying ? bar.review.atMs : Math.max(0, bar.review.frame)
                when: !slider.pressed
            }
        }
        IconButton {
            visible: !bar.replaying
            glyph: "step-back"
            label: qsTr("One frame back")
            autoRepeat: true
            enabled: bar.review.ready
            onClicked: bar.review.step(-1)
        }
        IconButton {
            visible: !bar.replaying
            glyph: "step-on"
            label: qsTr("One frame on")
            autoRepeat: true
            enabled: bar.review.ready
            onClicked: bar.review.step(1)
        }
    }
    RowLayout {
        Layout.fillWidth: true
        Layout.leftMargin: Theme.gap
        Layout.rightMargin: Theme.gap
        spacing: Theme.gap
        ActionButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            primary: true
            glyph: bar.recording || bar.replaying ? "stop" : "record"
            text: bar.recording ? qsTr("Stop and keep") : bar.replaying ? qsTr("Leave the replay")
                : bar.review.hasReview ? qsTr("Record again") : qsTr("Record and talk")
            enabled: bar.review.ready && !bar.review.busy
            onClicked: bar.recording || bar.replaying ? bar.review.stop() : bar.review.record()
        }
        ActionButton {
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            visible: !bar.recording && !bar.replaying && bar.review.hasReview
            glyph: "play"
            text: bar.review.hasVoice ? qsTr("Play the review") : qsTr("Play the review (silent)")
            enabled: bar.review.ready && !bar.review.busy
            onClicked: bar.review.replay()
        }
    }
}
