// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Templates as T
import Plumbmark.Controls
import Plumbmark.Stage

// Key moments in the order of time; a tap goes there. Time runs to the right in every language.
Item {
    id: strip
    // Whoever has key moments: `moments`, `told`, `jumpTo(row)`.
    required property QtObject swing
    property bool withStills: false
    readonly property real stillHeight: withStills ? Theme.mm(17) : 0
    implicitHeight: Math.max(Theme.target, Theme.bodySize + Theme.smallSize + Theme.mm(4)) + stillHeight

    ListView {
        id: list
        anchors.fill: parent
        LayoutMirroring.enabled: false
        orientation: ListView.Horizontal
        clip: true
        spacing: Theme.gap
        leftMargin: Theme.gap
        rightMargin: Theme.gap
        boundsBehavior: Flickable.StopAtBounds
        keyNavigationEnabled: false // the arrow keys step through frames, also after a tap here
        model: strip.swing.moments
        currentIndex: strip.swing.moments.current
        highlightMoveDuration: Theme.quick
        highlightFollowsCurrentItem: true
        preferredHighlightBegin: width * 0.2
        preferredHighlightEnd: width * 0.8
        highlightRangeMode: ListView.ApplyRange
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Key moments")
        delegate: T.AbstractButton {
            id: chip
            required property int index
            required property string label
            required property string time
            required property string how
            required property var still
            required property bool byHand
            readonly property bool isCurrent: strip.swing.moments.current === index
            width: Math.max(Theme.target * 1.3, words.implicitWidth + Theme.mm(4), strip.withStills ? Theme.mm(19) : 0)
            height: list.height
            focusPolicy: Qt.StrongFocus
            text: label
            Accessible.role: Accessible.Button
            Accessible.name: label + ", " + time
            Accessible.description: qsTr("found by %1").arg(how)
            onClicked: strip.swing.jumpTo(index)
            background: Rectangle {
                radius: Theme.radius
                color: chip.isCurrent ? Theme.accent : chip.down ? Theme.pressed : Theme.card
                border.color: chip.visualFocus ? Theme.accent : Theme.edge
                border.width: chip.visualFocus ? Theme.line * 1.5 : Theme.line
            }
            contentItem: Item {
                Rectangle {
                    visible: strip.withStills
                    x: Theme.line
                    y: Theme.line
                    width: parent.width - 2 * Theme.line
                    height: strip.stillHeight
                    color: Theme.stage
                }
                StillItem {
                    visible: strip.withStills
                    x: Theme.line
                    y: Theme.line
                    width: parent.width - 2 * Theme.line
                    height: strip.stillHeight
                    image: chip.still
                }
                Column {
                    id: words
                    anchors.horizontalCenter: parent.horizontalCenter
                    y: strip.stillHeight + (parent.height - strip.stillHeight - height) / 2
                    Row {
                        anchors.horizontalCenter: parent.horizontalCenter
                        spacing: Theme.mm(0.8)
                        Glyph {
                            visible: chip.byHand
                            width: Theme.bodySize
                            height: width
                            name: "flag"
                            color: chip.isCurrent ? Theme.accentInk : Theme.ink
                        }
                        Text {
                            text: chip.label
                            color: chip.isCurrent ? Theme.accentInk : Theme.ink
                            font.pixelSize: Theme.bodySize
                            font.bold: true
                            textFormat: Text.PlainText
                        }
                    }
                    Text {
                        anchors.horizontalCenter: parent.horizontalCenter
                        text: chip.time
                        color: chip.isCurrent ? Theme.accentInk : Theme.quiet
                        font.pixelSize: Theme.smallSize
                        textFormat: Text.PlainText
                    }
                }
            }
        }
    }
    BodyText {
        anchors.fill: parent
        anchors.leftMargin: Theme.pad
        anchors.rightMargin: Theme.pad
        verticalAlignment: Text.AlignVCenter
        fontSizeMode: Text.Fit
        minimumPixelSize: Math.round(Theme.smallSize / Theme.textScale)
        visible: strip.swing.told && strip.swing.moments.count === 0
        horizontalAlignment: Text.AlignHCenter
        font.pixelSize: Theme.smallSize
        text: qsTr("No key moment could be told in this clip.")
    }
}
