// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Templates as T

Column {
    id: entry
    required property string question
    property alias text: field.text
    property string hint: ""
    property alias inputMethodHints: field.inputMethodHints
    signal edited(string text)
    // The person is done: return, or another field is worked on.
    signal finished(string text)
    spacing: Theme.mm(1.2)
    BodyText {
        width: parent.width
        text: entry.question
        font.bold: true
    }
    T.TextField {
        id: field
        width: parent.width
        height: Math.max(Theme.target, contentHeight + Theme.mm(3))
        leftPadding: Theme.pad
        rightPadding: Theme.pad
        verticalAlignment: TextInput.AlignVCenter
        color: Theme.ink
        selectionColor: Theme.accent
        selectedTextColor: Theme.accentInk
        font.pixelSize: Theme.bodySize
        Accessible.role: Accessible.EditableText
        Accessible.name: entry.question
        onTextEdited: entry.edited(text)
        onEditingFinished: entry.finished(text)
        background: Rectangle {
            radius: Theme.radius
            color: Theme.card
            border.color: field.activeFocus ? Theme.accent : Theme.edge
            border.width: field.activeFocus ? Theme.line * 1.5 : Theme.line
        }
        Text {
            id: hintText
            anchors.fill: parent
            anchors.leftMargin: field.leftPadding
            anchors.rightMargin: field.rightPadding
            visible: field.text === "" && field.preeditText === ""
            text: entry.hint
            color: Theme.quiet
            font: field.font
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.Wrap
            fontSizeMode: Text.Fit
            minimumPixelSize: Math.round(Theme.smallSize * 0.6 / Theme.textScale)
            textFormat: Text.PlainText
        }
    }
}
