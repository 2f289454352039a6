// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// What was found: checkpoints (good first), every number, and what concerns the body and the clip.
Rectangle {
    id: panel
    required property SwingModel swing
    property bool edgeOnTop: false
    // No room for the tabs: only the list that is on show.
    property bool listOnly: false
    property int tab: 0
    // A tool that is worked by the hand needs more room than a list that is read.
    readonly property bool busy: tab === 3 && tools.tool === "shot"
    function openTool(name: string): void {
        tab = 3
        tools.open(name)
    }
    color: Theme.paper

    Rectangle {
        width: panel.edgeOnTop ? parent.width : Theme.hair
        height: panel.edgeOnTop ? Theme.hair : parent.height
        anchors.right: !panel.edgeOnTop && Theme.leftHanded ? parent.right : undefined
        color: Theme.edge
    }
    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        SegmentRow {
            Layout.fillWidth: true
            Layout.margins: Theme.gap
            Layout.bottomMargin: Theme.mm(1)
            // Where room is short an open tool takes it all; it has its own way back.
            visible: !panel.listOnly && !(panel.edgeOnTop && panel.tab === 3 && tools.tool !== "")
            labels: [qsTr("Checks"), qsTr("Numbers"), qsTr("Notes"), qsTr("Tools")]
            current: panel.tab
            onChosen: (index) => {
                panel.tab = index
                tools.close()
            }
        }
        ChoiceRow {
            Layout.fillWidth: true
            Layout.leftMargin: Theme.pad
            Layout.rightMargin: Theme.pad
            Layout.bottomMargin: Theme.mm(1)
            visible: panel.swing.rateUnknown && panel.tab < 2 && !panel.listOnly
            question: qsTr("Times and tempo wait: at how many frames a second was it filmed?")
            choices: [30, 60, 120, 240].map((rate) => ({value: String(rate), text: String(rate)}))
            onChosen: (value) => panel.swing.tellRate(parseInt(value))
        }
        AdviceButton {
            Layout.fillWidth: true
            Layout.leftMargin: Theme.gap
            Layout.rightMargin: Theme.gap
            Layout.bottomMargin: Theme.mm(1)
            visible: panel.tab === 0 && !panel.listOnly && panel.swing.advice.length > 0
            swing: panel.swing
        }
        ListView {
            id: checks
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: panel.tab === 0
            clip: true
            model: panel.swing.checks
            boundsBehavior: Flickable.StopAtBounds
            Connections {
                target: panel.swing.checks
                // While a mark is moved, bring the first light it moves into sight, once.
                function onTouched(row) { checks.positionViewAtIndex(row, ListView.Contain) }
            }
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Checkpoints")
            section.property: "group"
            section.delegate: Rectangle {
                id: heading
                required property string section
                width: checks.width
                implicitHeight: headingText.implicitHeight + Theme.mm(1.4)
                color: Theme.pressed
                BodyText {
                    id: headingText
                    anchors.verticalCenter: parent.verticalCenter
                    x: Theme.pad
                    width: parent.width - 2 * Theme.pad
                    font.pixelSize: Theme.smallSize
                    font.bold: true
                    text: [qsTr("Good: keep it"), qsTr("Watch"), qsTr("Work on it"), qsTr("Cannot tell yet")][parseInt(heading.section)]
                }
            }
            delegate: CheckDelegate {
                width: checks.width
                open: key === panel.swing.openCheck
                ghost: open && panel.swing.ghostShown
                onToggled: panel.swing.toggleCheck(key)
            }
            BodyText {
                anchors.centerIn: parent
                width: parent.width - 2 * Theme.pad
                visible: panel.swing.told && checks.count === 0
                horizontalAlignment: Text.AlignHCenter
                text: qsTr("No checkpoint fits this view and shot.")
            }
            SlimScrollBar {
                anchors.right: parent.right
                anchors.top: parent.top
                anchors.bottom: parent.bottom
                orientation: Qt.Vertical
                size: checks.visibleArea.heightRatio
                position: checks.visibleArea.yPosition
            }
        }
        ListView {
            id: numbers
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: panel.tab === 1
            clip: true
            // Rows nobody sees are not laid out while numbers come and go.
            model: panel.tab === 1 ? panel.swing.numbers : null
            boundsBehavior: Flickable.StopAtBounds
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Numbers")
            delegate: NumberDelegate {
                width: numbers.width
                onShowMoment: (frame) => panel.swing.goTo(frame)
            }
            SlimScrollBar {
                anchors.right: parent.right
                anchors.top: parent.top
                anchors.bottom: parent.bottom
                orientation: Qt.Vertical
                size: numbers.visibleArea.heightRatio
                position: numbers.visibleArea.yPosition
            }
        }
        ToolsPanel {
            id: tools
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: panel.tab === 3
            swing: panel.swing
        }
        BodyNotesPanel {
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: panel.tab === 2
            swing: panel.swing
        }
        BodyText {
            Layout.fillWidth: true
            Layout.margins: Theme.mm(1.2)
            Layout.leftMargin: Theme.pad
            visible: text !== "" && panel.swing.notice !== qsTr("Saved")
            text: panel.swing.notice
            font.bold: true
            color: Theme.danger
        }
    }
}
