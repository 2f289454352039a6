// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// What is asked of the body before the first full swing. It holds what the student says; it never diagnoses.
FocusScope {
    id: page
    required property BodyCardModel card
    readonly property bool wide: width >= Theme.mm(150)
    readonly property var yesNo: [{value: "yes", text: qsTr("Yes")}, {value: "no", text: qsTr("No")}]
    signal back()
    Keys.onEscapePressed: back()
    Keys.onBackPressed: back()

    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        PageHeader {
            Layout.fillWidth: true
            title: qsTr("Body card")
            subtitle: page.card.day === "" ? page.card.name : qsTr("%1, asked on %2").arg(page.card.name).arg(page.card.day)
            onBack: page.back()
        }
        Flickable {
            id: flick
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            contentHeight: column.implicitHeight + 2 * Theme.pad
            boundsBehavior: Flickable.StopAtBounds
            ColumnLayout {
                id: column
                x: Math.max(Theme.pad, (flick.width - width) / 2)
                y: Theme.pad
                width: Math.min(flick.width - 2 * Theme.pad, Theme.mm(170))
                spacing: Theme.mm(4)
                BodyText {
                    Layout.fillWidth: true
                    visible: text !== ""
                    text: page.card.problem
                    font.bold: true
                    color: Theme.danger
                }
                Rectangle {
                    Layout.fillWidth: true
                    implicitHeight: says.implicitHeight + 2 * Theme.pad
                    radius: Theme.radius
                    color: Theme.caution
                    border.color: Theme.cautionEdge
                    border.width: page.card.hold ? Theme.line * 1.5 : Theme.line
                    ColumnLayout {
                        id: says
                        anchors.left: parent.left
                        anchors.right: parent.right
                        anchors.top: parent.top
                        anchors.margins: Theme.pad
                        spacing: Theme.mm(1.4)
                        RowLayout {
                            Layout.fillWidth: true
                            spacing: Theme.mm(1.6)
                            Glyph {
                                Layout.preferredWidth: Theme.mm(6)
                                Layout.preferredHeight: Theme.mm(6)
                                name: "body"
                                color: Theme.ink
                            }
                            BodyText {
                                Layout.fillWidth: true
                                font.bold: true
                                text: page.card.hold ? qsTr("Today: wait with full swings") : qsTr("Today")
                            }
                        }
                        Repeater {
                            model: page.card.today
                            BodyText {
                                required property string modelData
                                Layout.fillWidth: true
                                text: modelData
                            }
                        }
                    }
                }
                PainQuestion {
                    Layout.fillWidth: true
                    card: page.card
                }
                Repeater {
                    model: page.card.questions.length
                    ChoiceRow {
                        required property int index
                        readonly property var entry: page.card.questions[index]
                        Layout.fillWidth: true
                        question: entry?.question ?? ""
                        choices: page.yesNo
                        value: entry?.value ?? ""
                        onChosen: (value) => page.card.answer(entry.field, value)
                    }
                }
                Repeater {
                    model: page.card.regionQuestions.length
                    RegionQuestion {
                        required property int index
                        Layout.fillWidth: true
                        entry: page.card.regionQuestions[index]
                        regions: page.card.regions
                        onToggled: (region) => page.card.toggleRegion(entry.field, region)
                    }
                }
                TextEntry {
                    Layout.fillWidth: true
                    question: qsTr("Year of birth")
                    hint: qsTr("for example 1974")
                    inputMethodHints: Qt.ImhDigitsOnly
                    text: page.card.birthYear
                    onFinished: (text) => page.card.tellBirthYear(text)
                }
                TextEntry {
                    Layout.fillWidth: true
                    question: qsTr("Most balls a day, where a clinician set a limit")
                    inputMethodHints: Qt.ImhDigitsOnly
                    text: page.card.mostBalls
                    onFinished: (text) => page.card.tellMostBalls(text)
                }
                BodyText {
                    Layout.fillWidth: true
                    text: qsTr("Stop at once with sharp or sudden pain, numbness, weakness, pain running down a limb, locking, swelling, chest pain or dizziness; night pain counts too. Still there tomorrow: lighter, and see a physician or licensed physiotherapist.")
                }
                BodyText {
                    Layout.fillWidth: true
                    font.pixelSize: Theme.smallSize
                    text: qsTr("Look around before every swing, stand away from the ball's line, and leave the range in lightning. The card stays on this device; it does not travel with a lesson. It is never a diagnosis.")
                }
            }
            SlimScrollBar {
                anchors.right: parent.right
                anchors.top: parent.top
                anchors.bottom: parent.bottom
                orientation: Qt.Vertical
                size: flick.visibleArea.heightRatio
                position: flick.visibleArea.yPosition
            }
        }
    }
}
