// Copyright 2026 The Plumbmark authors
// SPDX-License-Identifier: Apache-2.0
pragma Singleton
import QtQuick

// Every colour, size and duration of the app. Sizes are millimetres on the glass: a thumb and an eye in the sun do
// not scale with the screen's resolution. Two themes: "sun" (light, black on white, no greys) and "dark" (indoors).
QtObject {
    id: theme

    property bool dark: false
    // Logical pixels per millimetre of the screen; set once by the window from the screen it is on.
    property real pixelsPerMm: 3.78
    // 1 to 2: the reader's own text size.
    property real textScale: 1
    // The operator's hand: which side panels and thumbs' controls stand on. Never the player's handedness.
    property bool leftHanded: false

    // The language in use reads from right to left: pages are mirrored, pictures and the way of time never.
    property bool rightToLeft: false

    function mm(millimetres: real): real { return Math.round(millimetres * pixelsPerMm) }

    // -- colours -----------------------------------------------------------------------------------------------
    readonly property color paper: dark ? "#0d1418" : "#ffffff"
    readonly property color card: dark ? "#182329" : "#ffffff"
    readonly property color ink: dark ? "#ffffff" : "#000000"
    readonly property color quiet: dark ? "#d3dde2" : "#1d2b33"
    readonly property color edge: dark ? "#8fa3ae" : "#1d2b33"
    readonly property color accent: dark ? "#ffd166" : "#00304a"
    readonly property color accentInk: dark ? "#000000" : "#ffffff"
    readonly property color pressed: dark ? "#33444e" : "#e6f0f5"
    readonly property color danger: dark ? "#ffb4a2" : "#5c0f00"
    // Behind the picture, and the plate under words that lie on it.
    readonly property color stage: dark ? "#000000" : "#10191e"
    readonly property color plate: "#e6000000"
    readonly property color plateInk: "#ffffff"
    // Body cautions: a colour of their own, never one of the status colours.
    readonly property color caution: dark ? "#2b2440" : "#efe9fb"
    readonly property color cautionEdge: dark ? "#b9a6f2" : "#33186b"

    // Status fills from the Okabe-Ito set (vermillion darkened in the sun theme): told apart by the three
    // dichromacies. In the sun the signs must keep 1.4 : 1 at 40,000 lx, which black on blue or vermillion does not.
    readonly property color statusGood: dark ? "#56b4e9" : "#0072b2"
    readonly property color statusWatch: "#f0e442"
    readonly property color statusWork: dark ? "#d55e00" : "#b84e00"
    readonly property color signGood: dark ? "#000000" : "#ffffff"
    readonly property color signWatch: "#000000"
    readonly property color signWork: dark ? "#000000" : "#ffffff"
    function statusFill(level: int): color {
        return level === 0 ? statusGood : level === 1 ? statusWatch : level === 2 ? statusWork : card
    }
    function statusSign(level: int): color {
        return level === 0 ? signGood : level === 1 ? signWatch : level === 2 ? signWork : ink
    }

    // -- sizes -------------------------------------------------------------------------------------------------
    readonly property real target: Math.ceil(9.6 * pixelsPerMm)
    readonly property real gap: Math.max(2, Math.ceil(2 * pixelsPerMm))
    readonly property real pad: mm(2.4)
    readonly property real hair: Math.max(1, Math.round(0.25 * pixelsPerMm))
    readonly property real line: Math.max(2, Math.round(0.5 * pixelsPerMm))
    readonly property real radius: mm(1.6)

    // Letter sizes: body 3.2 mm and more; never under 15 px, for far desktop screens.
    readonly property real bodySize: Math.round(Math.max(3.2 * pixelsPerMm, 15) * textScale)
    readonly property real smallSize: Math.round(Math.max(2.7 * pixelsPerMm, 13) * textScale)
    readonly property real titleSize: Math.round(Math.max(4.0 * pixelsPerMm, 19) * textScale)
    readonly property real numberSize: Math.round(Math.max(4.6 * pixelsPerMm, 22) * textScale)

    // -- durations, ms -----------------------------------------------------------------------------------------
    readonly property int quick: 120
    readonly property int loupeAfter: 250
}
