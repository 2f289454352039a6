// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

FocusScope {
    id: page
    required property BringInModel bringIn
    readonly property bool wide: width >= Theme.mm(130)
    readonly property bool chosen: bringIn.file !== ""
    signal back()

    function goBack(): void {
        if (chosen && !wide)
            bringIn.forgetFile()
        else
            back()
    }
    Keys.onEscapePressed: goBack()
    Keys.onBackPressed: goBack()

    DropArea {
        anchors.fill: parent
        onDropped: (drop) => { if (drop.hasUrls) page.bringIn.chooseDropped(drop.urls[0]) }
    }
    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        PageHeader {
            Layout.fillWidth: true
            title: qsTr("Bring in a clip")
            subtitle: page.chosen ? page.bringIn.fileName : ""
            onBack: page.goBack()
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            spacing: 0
            FilmPickPanel {
                visible: page.wide || !page.chosen
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                bringIn: page.bringIn
            }
            Rectangle {
                visible: page.wide
                Layout.fillHeight: true
                implicitWidth: Theme.hair
                color: Theme.edge
            }
            FilmAnswersPanel {
                visible: page.wide || page.chosen
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: 1
                bringIn: page.bringIn
            }
        }
    }
}
