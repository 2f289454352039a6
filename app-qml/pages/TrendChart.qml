// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls

// One number over the lessons: a dot at each lesson's median, bars of two sigma, the good band behind. Time runs to the
// right in every language.
Item {
    id: chart
    required property PlayerModel player
    readonly property real leftRoom: tickWidth.advanceWidth + Theme.mm(2)
    readonly property real bottomRoom: days.implicitHeight + Theme.mm(1)
    LayoutMirroring.enabled: false
    LayoutMirroring.childrenInherit: true

    TextMetrics {
        id: tickWidth
        font.pixelSize: Theme.smallSize
        // Figures are equally wide: the longest text is the widest.
        text: chart.player.ticks.reduce((longest, t) => t.text.length > longest.length ? t.text : longest, "")
    }
    Item {
        id: plot
        anchors.fill: parent
        anchors.leftMargin: chart.leftRoom
        anchors.rightMargin: Theme.mm(3)
        anchors.topMargin: Theme.mm(2)
        anchors.bottomMargin: chart.bottomRoom
        function at(share: real): real { return inset + share * (width - 2 * inset) }
        readonly property real inset: Theme.mm(4)

        Rectangle {
            visible: chart.player.hasBand
            y: chart.player.bandTop * plot.height
            width: parent.width
            height: (chart.player.bandBottom - chart.player.bandTop) * plot.height
            color: Theme.pressed
            border.color: Theme.statusGood
            border.width: Theme.hair
        }
        Repeater {
            model: chart.player.ticks
            Item {
                id: tick
                required property var modelData
                y: modelData.y * plot.height
                width: plot.width
                Rectangle {
                    width: parent.width
                    height: Theme.hair
                    color: Theme.edge
                    opacity: 0.35
                }
                Text {
                    anchors.right: parent.left
                    anchors.rightMargin: Theme.mm(1)
                    anchors.verticalCenter: parent.top
                    text: tick.modelData.text
                    color: Theme.ink
                    font.pixelSize: Theme.smallSize
                    textFormat: Text.PlainText
                }
            }
        }
        Repeater {
            model: chart.player.points
            Item {
                id: point
                required property var modelData
                x: plot.at(modelData.x)
                y: modelData.high * plot.height
                height: (modelData.low - modelData.high) * plot.height
                Accessible.role: Accessible.StaticText
                Accessible.name: modelData.text
                Rectangle { // the bar with its ends
                    x: -width / 2
                    width: Theme.line
                    height: parent.height
                    color: Theme.ink
                }
                Repeater {
                    model: [0, point.height]
                    Rectangle {
                        required property real modelData
                        x: -width / 2
                        y: modelData - height / 2
                        width: Theme.mm(2.4)
                        height: Theme.line
                        color: Theme.ink
                    }
                }
                Rectangle {
                    x: -width / 2
                    y: (point.modelData.y - point.modelData.high) * plot.height - height / 2
                    width: Theme.mm(3)
                    height: width
                    radius: width / 2
                    color: Theme.accent
                    border.color: Theme.paper
                    border.width: Theme.hair
                }
            }
        }
        Rectangle {
            width: Theme.hair
            height: parent.height
            color: Theme.edge
        }
        Rectangle {
            y: parent.height
            width: parent.width
            height: Theme.hair
            color: Theme.edge
        }
    }
    Text {
        id: days
        anchors.left: plot.left
        anchors.bottom: parent.bottom
        text: chart.player.firstDay
        color: Theme.ink
        font.pixelSize: Theme.smallSize
        textFormat: Text.PlainText
    }
    Text {
        anchors.right: plot.right
        anchors.bottom: parent.bottom
        visible: chart.player.points.length > 1
        text: chart.player.lastDay
        color: Theme.ink
        font.pixelSize: Theme.smallSize
        textFormat: Text.PlainText
    }
}
