// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Layouts
import Plumbmark.Bridge
import Plumbmark.Controls

// The answer to the last swing, to be read from the ball: one shape and one word, as large as they fit.
Item {
    id: panel
    required property FilmModel film
    readonly property int level: film.verdict === "holds" ? 0 : film.verdict === "does-not-hold" ? 2 : 3
    readonly property string word: film.verdict === "holds" ? qsTr("Holds")
                                 : film.verdict === "does-not-hold" ? qsTr("Does not hold")
                                 : film.verdict === "cannot-tell" ? qsTr("Cannot tell") : qsTr("Watching")
    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.pad
        spacing: Theme.mm(1)
        StatusShape {
            readonly property real side: Math.min(panel.width - 2 * Theme.pad, panel.height * 0.4)
            Layout.alignment: Qt.AlignHCenter
            Layout.preferredWidth: side
            Layout.preferredHeight: side
            visible: panel.film.verdict !== ""
            level: panel.level
            fill: Theme.statusFill(panel.level)
            ink: Theme.ink
            sign: Theme.statusSign(panel.level)
        }
        Text {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: Theme.mm(10)
            text: panel.word
            color: Theme.ink
            font.bold: true
            font.pixelSize: Theme.mm(40)
            fontSizeMode: Text.Fit
            minimumPixelSize: Theme.bodySize
            wrapMode: Text.WordWrap
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            textFormat: Text.PlainText
            Accessible.role: Accessible.AlertMessage
            Accessible.name: qsTr("Answer: %1").arg(text)
        }
        BodyText {
            Layout.fillWidth: true
            visible: text !== ""
            // What holds needs no words.
            text: panel.film.verdict === "holds" ? "" : panel.film.why
            maximumLineCount: 3
            elide: Text.ElideRight
            horizontalAlignment: Text.AlignHCenter
        }
        BodyText {
            Layout.fillWidth: true
            visible: text !== ""
            text: panel.film.counts
            horizontalAlignment: Text.AlignHCenter
        }
        BodyText {
            Layout.fillWidth: true
            visible: panel.film.enough
            text: qsTr("Enough for today. Rest, and come back tomorrow. Stop at once at a sharp or sudden pain; what still hurts tomorrow is for a physician or licensed physiotherapist.")
            font.bold: true
            horizontalAlignment: Text.AlignHCenter
        }
    }
}
