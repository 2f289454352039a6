// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// One swing: the picture with its marks, the way through its frames, and what was found.
FocusScope {
    id: page
    required property SwingModel swing
    readonly property bool wide: width > height && width >= Theme.mm(120)
    // The mark's bar comes when the finger is up: the picture must not change its size under a moving finger.
    property bool marking: false
    signal back()

    function updateMarking(): void {
        if (!stagePanel.dragging)
            marking = swing.hasSelection
    }
    Connections {
        target: page.swing
        function onSelectionChanged() { Qt.callLater(page.updateMarking) }
    }
    Connections {
        target: stagePanel
        function onDraggingChanged() { Qt.callLater(page.updateMarking) }
    }

    function step(frames: int): void { swing.step(frames) }

    Keys.onPressed: (event) => {
        const nudging = page.swing.hasSelection && (event.modifiers & Qt.AltModifier)
        const by = event.modifiers & Qt.ShiftModifier ? 0.25 : 1
        event.accepted = true
        switch (event.key) {
        case Qt.Key_Left: nudging ? page.swing.nudge(-by, 0) : page.step(-1); break
        case Qt.Key_Right: nudging ? page.swing.nudge(by, 0) : page.step(1); break
        case Qt.Key_Up: nudging ? page.swing.nudge(0, -by) : event.accepted = false; break
        case Qt.Key_Down: nudging ? page.swing.nudge(0, by) : event.accepted = false; break
        case Qt.Key_Comma: page.step(-1); break
        case Qt.Key_Period: page.step(1); break
        case Qt.Key_PageUp: page.step(-10); break
        case Qt.Key_PageDown: page.step(10); break
        case Qt.Key_Home: page.swing.goTo(0); break
        case Qt.Key_End: page.swing.goTo(page.swing.frames - 1); break
        case Qt.Key_Space: page.swing.playing = !page.swing.playing; break
        case Qt.Key_Z:
            if (event.modifiers & Qt.ControlModifier)
                event.modifiers & Qt.ShiftModifier ? page.swing.redo() : page.swing.undo()
            else
                event.accepted = false
            break
        case Qt.Key_Escape:
        case Qt.Key_Back:
            if (!stagePanel.cancelGesture()) {
                if (page.swing.hasSelection)
                    page.swing.deselect()
                else if (page.swing.openCheck !== "")
                    page.swing.toggleCheck(page.swing.openCheck)
                else
                    page.back()
            }
            break
        default: event.accepted = false
        }
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        PageHeader {
            Layout.fillWidth: true
            title: page.swing.title
            subtitle: page.swing.subtitle
            onBack: page.back()
            actions: [
                IconButton {
                    glyph: "ball"
                    label: qsTr("Record the ball")
                    outlined: false
                    onClicked: findings.openTool("shot")
                },
                IconButton {
                    glyph: "undo"
                    label: qsTr("Undo")
                    outlined: false
                    visible: page.wide || page.swing.canUndo
                    enabled: page.swing.canUndo
                    onClicked: page.swing.undo()
                },
                IconButton {
                    glyph: "redo"
                    label: qsTr("Redo")
                    outlined: false
                    visible: page.wide || page.swing.canRedo
                    enabled: page.swing.canRedo
                    onClicked: page.swing.redo()
                }
            ]
        }
        GridLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            columns: page.wide ? 2 : 1
            rowSpacing: 0
            columnSpacing: 0
            // The side of the operator's hand is the same in every language.
            LayoutMirroring.enabled: false
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            ColumnLayout {
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredHeight: page.wide ? -1 : page.height * (page.marking ? 0.7 : findings.busy ? 0.38 : 0.62)
                spacing: 0
                StripPanel {
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    visible: page.swing.stripShown
                    swing: page.swing
                }
                StagePanel {
                    id: stagePanel
                    visible: !page.swing.stripShown
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    swing: page.swing
                    showPlay: !page.wide
                    roomy: page.wide || !(page.marking || findings.busy)
                }
                MarkBar {
                    Layout.fillWidth: true
                    visible: page.marking
                    swing: page.swing
                    fine: stagePanel.magnified
                }
                MomentStrip {
                    Layout.fillWidth: true
                    Layout.topMargin: Theme.gap
                    visible: page.wide || !(page.marking || findings.busy || page.swing.stripShown)
                    swing: page.swing
                    withStills: page.wide && page.height >= Theme.mm(page.marking ? 200 : 135)
                }
                TransportBar {
                    Layout.fillWidth: true
                    Layout.topMargin: Theme.gap
                    Layout.bottomMargin: Theme.gap
                    swing: page.swing
                    showPlay: page.wide
                }
            }
            FindingsPanel {
                id: findings
                Layout.fillHeight: true
                Layout.fillWidth: !page.wide
                Layout.preferredHeight: page.wide ? -1 : page.height * (page.marking ? 0.22 : findings.busy ? 0.52 : 0.38)
                // Tabs and a row of the list, however large the letters are.
                Layout.minimumHeight: page.wide || page.marking ? 0 : page.height * 0.32
                Layout.preferredWidth: page.wide ? Math.min(Theme.mm(115), Math.max(Theme.mm(70), page.width * 0.36)) : -1
                swing: page.swing
                edgeOnTop: !page.wide
                listOnly: !page.wide && page.marking
            }
        }
    }
}
