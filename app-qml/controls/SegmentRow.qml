// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Templates as T

// One of a few panels: equal segments side by side; as wide as their words where room is short; on two lines where the
// words have no room on one.
Grid {
    id: row
    property var labels: []
    property int current: 0
    signal chosen(int index)
    readonly property var advances: {
        let list = []
        for (let i = 0; i < words.count; ++i)
            list.push(words.itemAt(i) ? words.itemAt(i).advance + Theme.mm(1.6) : 0)
        return list
    }
    readonly property real needed: advances.reduce((sum, advance) => sum + advance, 0)
    readonly property bool oneLine: needed <= width || labels.length < 3
    readonly property bool equal: Math.max(...advances, 0) * labels.length <= width
    columns: oneLine ? labels.length : Math.ceil(labels.length / 2)
    spacing: -Theme.line
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Panels")
    Repeater {
        id: words
        model: row.labels
        T.AbstractButton {
            id: segment
            required property int index
            required property string modelData
            readonly property bool isCurrent: row.current === index
            readonly property real advance: metrics.advanceWidth
            width: row.oneLine && !row.equal && row.needed <= row.width
                   ? (row.advances[index] ?? 0) + (row.width + (row.columns - 1) * Theme.line - row.needed) / row.columns
                   : (row.width + (row.columns - 1) * Theme.line) / row.columns
            height: Math.max(Theme.target, word.implicitHeight + Theme.mm(2))
            focusPolicy: Qt.StrongFocus
            text: modelData
            Accessible.role: Accessible.PageTab
            Accessible.name: modelData
            Accessible.selectable: true
            Accessible.selected: isCurrent
            onClicked: row.chosen(index)
            TextMetrics {
                id: metrics
                text: segment.text
                font: word.font
            }
            background: Rectangle {
                color: segment.isCurrent ? Theme.accent : segment.down ? Theme.pressed : Theme.card
                border.color: Theme.edge
                border.width: Theme.line
                Rectangle {
                    anchors.fill: parent
                    anchors.margins: Theme.line * 2
                    visible: segment.visualFocus
                    color: "transparent"
                    border.color: segment.isCurrent ? Theme.accentInk : Theme.accent
                    border.width: Theme.line
                }
            }
            contentItem: Text {
                id: word
                text: segment.text
                color: segment.isCurrent ? Theme.accentInk : Theme.ink
                font.pixelSize: Theme.bodySize
                font.bold: true
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: Math.round(Theme.smallSize / Theme.textScale)
                elide: Text.ElideRight
                textFormat: Text.PlainText
            }
        }
    }
}
