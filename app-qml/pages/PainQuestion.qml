// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls

// Pain now: where, then how much on the scale of 0 to 10 that clinics use.
Column {
    id: question
    required property BodyCardModel card
    property string region: ""
    readonly property string regionName: card.regions.find((r) => r.value === region)?.text ?? ""
    spacing: Theme.mm(1.6)
    Accessible.role: Accessible.Grouping
    Accessible.name: qsTr("Pain now")
    BodyText {
        width: parent.width
        font.bold: true
        text: qsTr("Pain now: where?")
    }
    Repeater {
        model: question.card.pains
        BodyText {
            required property var modelData
            width: question.width
            text: modelData.text
        }
    }
    Flow {
        width: parent.width
        spacing: Theme.gap
        Repeater {
            model: question.card.regions
            ChoiceChip {
                required property var modelData
                text: modelData.text
                checkable: false
                checked: question.region === modelData.value
                // The scale belongs right under the region that was chosen.
                visible: question.region === "" || checked
                Accessible.name: qsTr("Pain: %1").arg(text)
                onClicked: question.region = checked ? "" : modelData.value
            }
        }
    }
    BodyText {
        width: parent.width
        visible: question.region !== ""
        font.bold: true
        text: qsTr("%1: how much, from 0 (none) to 10 (the worst there is)?").arg(question.regionName)
    }
    Flow {
        width: parent.width
        visible: question.region !== ""
        spacing: Theme.gap
        Repeater {
            model: 11
            ChoiceChip {
                required property int index
                text: String(index)
                checkable: false
                Accessible.name: qsTr("%1: %2 of 10").arg(question.regionName).arg(index)
                onClicked: {
                    question.card.tellPain(question.region, index)
                    question.region = ""
                }
            }
        }
    }
}
