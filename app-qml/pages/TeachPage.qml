// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// What the coach makes of a lesson: what changed since the last plan, what comes first, what to try, what to practise.
FocusScope {
    id: page
    required property CoachModel coach
    property string tab: ""
    readonly property bool hasLast: coach.followUp.length > 0
    readonly property var tabs: (hasLast ? [{ key: "last", label: qsTr("Last plan") }] : [])
        .concat([{ key: "cause", label: qsTr("Cause") }, { key: "try", label: qsTr("Try it") }, { key: "plan", label: qsTr("Plan") }])
    readonly property string shown: tab !== "" ? tab : hasLast ? "last" : "cause"
    signal back()
    signal openSwing(string clip, int moment)

    Keys.onPressed: (event) => {
        if (event.key === Qt.Key_Escape || event.key === Qt.Key_Back) {
            event.accepted = true
            page.back()
        }
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        PageHeader {
            Layout.fillWidth: true
            title: page.coach.title
            subtitle: page.coach.subtitle
            onBack: page.back()
        }
        SegmentRow {
            Layout.fillWidth: true
            Layout.maximumWidth: Theme.mm(150)
            Layout.alignment: Qt.AlignHCenter
            Layout.margins: Theme.gap
            Layout.bottomMargin: 0
            visible: page.coach.ready
            labels: page.tabs.map(t => t.label)
            current: page.tabs.findIndex(t => t.key === page.shown)
            onChosen: (index) => page.tab = page.tabs[index].key
        }
        BodyText {
            Layout.fillWidth: true
            Layout.margins: Theme.pad
            Layout.bottomMargin: 0
            visible: text !== ""
            text: page.coach.problem
            font.bold: true
            color: Theme.danger
        }
        Item {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Loader {
                anchors.fill: parent
                active: page.coach.ready
                sourceComponent: page.shown === "last" ? last : page.shown === "try" ? trial : page.shown === "plan" ? plan : cause
            }
        }
    }
    Component {
        id: cause
        CausePanel {
            coach: page.coach
            onOpenSwing: (clip, moment) => page.openSwing(clip, moment)
        }
    }
    Component { id: last; LastPlanPanel { coach: page.coach } }
    Component { id: trial; TrialPanel { coach: page.coach } }
    Component { id: plan; PlanPanel { coach: page.coach } }
}
