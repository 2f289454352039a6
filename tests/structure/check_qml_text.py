#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""What people type is shown as plain text: every Text of the app says so.

Usage: check_qml_text.py SOURCE_DIR

Qt's Text guesses by itself whether a text is markup (Text.AutoText) unless it is told; then a player's name could
load a picture. Every object of type Text in app-qml must hold `textFormat: Text.PlainText` itself. Fields that are
typed into (TextField, TextInput, TextEdit) know plain text only by default; RichText and MarkdownText are refused.
"""
import pathlib
import re
import sys


def blocks(text, name):
    """Own lines of every object of that type: what stands between its braces, without inner objects."""
    for start in re.finditer(rf"(?<![\w.]){name}\s*\{{", text):
        depth, own = 1, []
        for at in range(start.end(), len(text)):
            depth += {"{": 1, "}": -1}.get(text[at], 0)
            if depth == 0:
                break
            if depth == 1:
                own.append(text[at])
        yield text.count("\n", 0, start.start()) + 1, "".join(own)


def faults(path):
    text = re.sub(r"//[^\n]*", "", path.read_text())
    found = [f"{path}:{line}: a Text without textFormat: Text.PlainText" for line, own in blocks(text, "Text")
             if "textFormat: Text.PlainText" not in own]
    return found + [f"{path}: {word}" for word in ("RichText", "MarkdownText", "StyledText", "AutoText") if word in text]


def main():
    files = sorted(pathlib.Path(sys.argv[1], "app-qml").rglob("*.qml"))
    # The check itself: a Text that says nothing is found, one that says so is not.
    bad = "Item {\n Text {\n  text: name\n }\n Text {\n  text: 'x'\n  textFormat: Text.PlainText\n }\n}\n"
    assert [line for line, own in blocks(bad, "Text") if "PlainText" not in own] == [2]
    found = [fault for path in files for fault in faults(path)]
    print("\n".join(found) or f"{len(files)} files: every text is plain.")
    return 1 if found or not files else 0


if __name__ == "__main__":
    sys.exit(main())
