// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Plumbmark.Bridge
import Plumbmark.Controls
import Plumbmark.Stage

// What the camera sees, with the outline of where the player should stand, a level and a plumb line.
Rectangle {
    id: panel
    required property FilmModel film
    readonly property real scaleToFit: Math.min(width / film.aspect, height)
    readonly property rect seen: Qt.rect((width - scaleToFit * film.aspect) / 2, (height - scaleToFit) / 2,
                                         scaleToFit * film.aspect, scaleToFit)
    color: Theme.stage
    clip: true

    StillItem {
        anchors.fill: parent
        image: panel.film.picture
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Live picture of the camera")
        Accessible.description: words.text
    }
    // Every line has a dark and a light edge: it must be seen on grass and on sky.
    component Line: Rectangle {
        color: Theme.plateInk
        border.color: Theme.plate
        border.width: Theme.hair
    }
    Line { // plumb
        x: panel.seen.x + panel.seen.width / 2 - width / 2
        y: panel.seen.y
        width: Theme.line + 2 * Theme.hair
        height: panel.seen.height
        opacity: 0.7
    }
    Line { // the feet's line, level
        x: panel.seen.x
        y: panel.seen.y + (panel.film.standHere.y + panel.film.standHere.height) * panel.seen.height
        width: panel.seen.width
        height: Theme.line + 2 * Theme.hair
        opacity: 0.7
    }
    Rectangle {
        x: panel.seen.x + panel.film.standHere.x * panel.seen.width
        y: panel.seen.y + panel.film.standHere.y * panel.seen.height
        width: panel.film.standHere.width * panel.seen.width
        height: panel.film.standHere.height * panel.seen.height
        radius: width / 2
        color: "transparent"
        border.color: Theme.plate
        border.width: 2 * Theme.line
        visible: !panel.film.framingGood || panel.film.framing !== ""
        Rectangle {
            anchors.fill: parent
            anchors.margins: Theme.line / 2
            radius: width / 2
            color: "transparent"
            border.color: Theme.plateInk
            border.width: Theme.line
        }
    }
    Rectangle {
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        anchors.margins: Theme.mm(1)
        radius: Theme.radius
        color: Theme.plate
        implicitHeight: words.implicitHeight + 2 * Theme.mm(1.2)
        height: implicitHeight
        Text {
            id: words
            anchors.fill: parent
            anchors.margins: Theme.mm(1.2)
            color: Theme.plateInk
            font.pixelSize: Theme.bodySize
            font.bold: true
            wrapMode: Text.Wrap
            textFormat: Text.PlainText
            text: [panel.film.writing ? qsTr("Keeping a swing.") : "",
                   panel.film.framing !== "" ? panel.film.framing
                                             : panel.film.framingGood ? qsTr("The picture is right.") : "",
                   panel.film.rates,
                   panel.film.hasSound ? "" : qsTr("No microphone: swings are told by their motion alone.")]
                .filter(t => t !== "").join("\n")
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
    }
}
