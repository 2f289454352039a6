// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// What differs and by how much; which other swing; what makes a position the same.
Rectangle {
    id: panel
    required property CompareModel compare
    property bool edgeOnTop: false
    property int tab: 0
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
            labels: [qsTr("Differences"), qsTr("Swings"), qsTr("Match")]
            current: panel.tab
            onChosen: (index) => panel.tab = index
        }
        ListView {
            id: rows
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: panel.tab === 0
            clip: true
            model: panel.compare.rows
            boundsBehavior: Flickable.StopAtBounds
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Differences")
            // The heading grows after the list is there: until a finger has moved the list, it stays at its beginning.
            property bool moved: false
            onMovementStarted: moved = true
            onModelChanged: moved = false
            onOriginYChanged: if (!moved) Qt.callLater(rows.positionViewAtBeginning)
            header: Column {
                width: rows.width
                topPadding: Theme.mm(1)
                bottomPadding: Theme.mm(1)
                spacing: Theme.mm(1)
                BodyText {
                    x: Theme.pad
                    width: parent.width - 2 * Theme.pad
                    visible: panel.compare.matched
                    font.bold: true
                    text: qsTr("Differences beyond doubt: %1").arg(panel.compare.beyondDoubt)
                }
                BodyText {
                    x: Theme.pad
                    width: parent.width - 2 * Theme.pad
                    visible: panel.compare.matched
                    font.pixelSize: Theme.smallSize
                    text: qsTr("This swing against %1").arg(panel.compare.otherLabel)
                }
                Repeater {
                    model: panel.compare.warnings
                    BodyText {
                        required property string modelData
                        x: Theme.pad
                        width: rows.width - 2 * Theme.pad
                        font.pixelSize: Theme.smallSize
                        color: Theme.danger
                        text: modelData
                    }
                }
            }
            delegate: DifferenceDelegate {
                width: rows.width
                onShowMoment: (frame) => panel.compare.goTo(frame)
            }
            SlimScrollBar {
                anchors.right: parent.right
                anchors.top: parent.top
                anchors.bottom: parent.bottom
                orientation: Qt.Vertical
                size: rows.visibleArea.heightRatio
                position: rows.visibleArea.yPosition
            }
        }
        ListView {
            id: swings
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: panel.tab === 1
            clip: true
            model: panel.compare.references
            spacing: Theme.gap
            topMargin: Theme.mm(1)
            bottomMargin: Theme.gap
            boundsBehavior: Flickable.StopAtBounds
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Swings to compare with")
            delegate: ActionButton {
                required property var modelData
                x: Theme.gap
                width: swings.width - 2 * Theme.gap
                primary: modelData.chosen
                text: modelData.label + "\n" + modelData.why + " \u00b7 " + modelData.checks
                Accessible.name: qsTr("Compare with %1, %2, %3").arg(modelData.label).arg(modelData.why).arg(modelData.checks)
                onClicked: panel.compare.choose(modelData.clip)
            }
            BodyText {
                anchors.centerIn: parent
                width: parent.width - 2 * Theme.pad
                visible: swings.count === 0
                horizontalAlignment: Text.AlignHCenter
                text: qsTr("There is no other swing of this view and kind of shot yet.")
            }
        }
        Flickable {
            id: match
            Layout.fillWidth: true
            Layout.fillHeight: true
            visible: panel.tab === 2
            clip: true
            contentHeight: matchColumn.implicitHeight + 2 * Theme.pad
            boundsBehavior: Flickable.StopAtBounds
            Column {
                id: matchColumn
                x: Theme.pad
                y: Theme.mm(1)
                width: match.width - 2 * Theme.pad
                spacing: Theme.pad
                ChoiceRow {
                    width: parent.width
                    question: qsTr("Same position means the same")
                    choices: panel.compare.features
                    value: panel.compare.matchedBy
                    onChosen: (value) => panel.compare.matchBy(value)
                }
                BodyText {
                    width: parent.width
                    font.pixelSize: Theme.smallSize
                    text: qsTr("Address, top, impact and finish are put together. What the swings are matched by is left out of the table: there they are the same by choice.")
                }
            }
        }
        BodyText {
            Layout.fillWidth: true
            Layout.margins: Theme.mm(1.2)
            Layout.leftMargin: Theme.pad
            visible: panel.compare.problem !== "" && panel.compare.second.ready
            text: panel.compare.problem
            font.bold: true
            color: Theme.danger
        }
    }
}
