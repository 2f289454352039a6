// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls

// What the last plan was, what was practised, what changed beyond doubt, what did not, and what hurts.
PanelScroll {
    id: panel
    required property CoachModel coach
    Repeater {
        model: panel.coach.followUp
        Column {
            id: part
            required property var modelData
            width: panel.columnWidth
            spacing: Theme.mm(1)
            BodyText {
                width: parent.width
                text: part.modelData.heading
                font.bold: true
                Accessible.role: Accessible.Heading
            }
            Repeater {
                model: part.modelData.lines
                BodyText {
                    required property string modelData
                    width: part.width
                    text: modelData
                }
            }
        }
    }
}
