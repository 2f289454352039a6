// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
import QtQuick
import QtQuick.Templates as T

// Shows where one is in a list; lists are moved by finger or wheel, so this takes no input.
T.ScrollBar {
    id: bar
    implicitWidth: Theme.mm(1)
    implicitHeight: Theme.mm(1)
    interactive: false
    visible: size < 0.999
    minimumSize: 0.08
    contentItem: Rectangle {
        implicitWidth: Theme.mm(0.8)
        radius: width / 2
        color: Theme.edge
    }
}
