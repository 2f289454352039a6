// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Templates as T

// A fat slider over whole steps. Content has a direction of its own: time runs to the right in every language.
T.Slider {
    id: control
    required property string label
    // Places worth finding again, as shares 0..1 of the way.
    property var ticks: []
    implicitHeight: Theme.target
    implicitWidth: Theme.target * 4
    leftPadding: Theme.mm(3)
    rightPadding: Theme.mm(3)
    LayoutMirroring.enabled: false
    stepSize: 1
    snapMode: T.Slider.SnapAlways
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.Slider
    Accessible.name: label
    background: Item {
        Rectangle {
            x: control.leftPadding
            y: (parent.height - height) / 2
            width: control.availableWidth
            height: Theme.mm(1.4)
            radius: height / 2
            color: Theme.card
            border.color: Theme.edge
            border.width: Theme.line
        }
        Repeater {
            model: control.ticks
            Rectangle {
                required property real modelData
                x: control.leftPadding + modelData * control.availableWidth - width / 2
                y: (parent.height - height) / 2
                width: Theme.hair
                height: Theme.mm(4)
                color: Theme.edge
            }
        }
    }
    handle: Rectangle {
        x: control.leftPadding + control.visualPosition * control.availableWidth - width / 2
        y: (control.height - height) / 2
        width: Theme.mm(5)
        height: Theme.mm(7.4)
        radius: Theme.radius
        color: Theme.accent
        border.color: control.visualFocus ? Theme.ink : Theme.paper
        border.width: Theme.line
        Rectangle {
            anchors.centerIn: parent
            width: Theme.line
            height: parent.height * 0.5
            color: Theme.accentInk
        }
    }
}
