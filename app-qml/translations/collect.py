#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""Writes core_sentences.h: what the core says to people, so that it can be translated.

  app-qml/translations/collect.py            # write it again after a change in core/
  lupdate app-qml platform -locations none -no-obsolete -ts app-qml/translations/plumbmark_de.ts app-qml/translations/plumbmark_es.ts
  lupdate app-qml platform -locations none -no-obsolete -pluralonly -ts app-qml/translations/plumbmark_en.ts

The core knows no Qt. Its texts are the playbook's and the plain sentences in its sources; where a value is put in, the
place is %1, %2, ... in order.
"""
import json
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
SPOKEN = {"label", "good", "low", "high", "unknown", "source", "feel", "how", "dose", "grade", "text", "cause", "effect", "name", "guard", "why"}
SOURCES = ["core/coaching/caution.cpp", "core/coaching/judge.cpp", "core/measure", "core/analysis", "core/swing", "core/body/track.cpp",
           "core/reasoning", "core/comparison", "core/capture", "core/session", "core/scene", "core/club", "core/store", "core/lessonfile",
           "core/transfer", "core/records", "core/exporting/film_advice.cpp", "core/base", "core/video"]
# Put together from pieces in the core: amounts in hand units, and what is added to a sentence.
PUT_TOGETHER = ["%1 cm (a finger's breadth)", "%1 cm (two fingers)", "%1 cm (about half a shoe's width)", "%1 cm (about a shoe's width)",
                "%1 cm (about half a shoe's length)", "%1 cm (about a shoe's length)", "%1 degrees", "%1 pixels",
                "This clip cannot tell good from not good here. %1", "%1 The range was widened to what this clip can tell.",
                "set for this player"]
LITERAL = re.compile(r'"((?:[^"\\\n]|\\.)*)"')


def from_playbook(node, key, out):
    if isinstance(node, dict):
        for k, v in node.items():
            from_playbook(v, k, out)
    elif isinstance(node, list):
        for v in node:
            from_playbook(v, key, out)
    elif isinstance(node, str) and key in SPOKEN and re.search(r"[a-z]{2}", node) and not re.fullmatch(r"[a-z_0-9]+", node):
        out.append(re.sub(r"\{\w+\}", "%1", node))


def without_comments(text):
    return re.sub(r'("(?:[^"\\\n]|\\.)*")|//[^\n]*|/\*.*?\*/', lambda m: m.group(1) or " ", text, flags=re.S)


def from_source(text):
    """Literals next to each other are one; `"a" + x + "b"` is "a%1b"."""
    text = without_comments(text)
    at = 0
    while (m := LITERAL.search(text, at)) is not None:
        line = text[text.rfind("\n", 0, m.start()) + 1:m.start()]
        if line.lstrip().startswith("#"):
            at = m.end()
            continue
        sentence, places, at = m.group(1), 0, m.end()
        while True:
            if (more := re.compile(r'\s*' + LITERAL.pattern).match(text, at)) is not None:
                sentence, at = sentence + more.group(1), more.end()
                continue
            plus = re.compile(r"\s*\+\s*").match(text, at)
            if plus is None:
                break
            i, depth = plus.end(), 0
            while i < len(text):  # the expression up to the next + or the end
                if text[i] == '"':
                    if depth == 0:
                        break
                    i = LITERAL.match(text, i).end()
                    continue
                if text[i] in "([{":
                    depth += 1
                elif text[i] in ")]}":
                    if depth == 0:
                        break
                    depth -= 1
                elif depth == 0 and text[i] in "+;,:?":
                    if text[i:i + 2] == "::":
                        i += 2
                        continue
                    break
                i += 1
            if text[plus.end():i].strip():
                places += 1
                sentence += f"%{places}"
            at = i
        yield sentence.replace('\\"', '"').replace("\\n", "\n")


def sentences():
    out = []
    from_playbook(json.loads((ROOT / "core/coaching/playbook/default.json").read_text()), "", out)
    for place in SOURCES:
        path = ROOT / place
        for file in sorted(path.glob("*.cpp")) if path.is_dir() else [path]:
            for sentence in from_source(file.read_text()):
                words = re.sub(r"%\d", "", sentence)
                whole = re.match(r'[A-Z"]', sentence) and sentence.rstrip().endswith((".", "?")) and words.count(" ") >= 2
                part = place == "core/coaching/caution.cpp" and words.count(" ") >= 1 and not words.startswith("\n")
                if whole or part:
                    out.append(sentence)
    out += PUT_TOGETHER
    return list(dict.fromkeys(s for s in out if not re.fullmatch(r"(?:[\s.,;:()+-]|%\d|no |full swings)*", s)))


def escaped(sentence):
    return sentence.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n")


def main():
    unique = sentences()
    lines = ["// Copyright 2026 The Plumbmark authors", "// SPDX-License-Identifier: Apache-2.0", "//",
             "// What the core says to people. Written by app-qml/translations/collect.py; not edited by hand.", "// clang-format off",
             "#pragma once", "", "#include <QtGlobal>", "", "namespace plumbmark::bridge {", "", "inline constexpr const char* kCoreSentences[] = {"]
    for s in unique:
        lines.append(f'    QT_TRANSLATE_NOOP("Core", "{escaped(s)}"),')
    lines += ["};", "", "} // namespace plumbmark::bridge"]
    target = pathlib.Path(__file__).with_name("core_sentences.h")
    target.write_text("\n".join(lines) + "\n")
    print(f"{target.name}: {len(unique)} sentences")
    return 0


if __name__ == "__main__":
    sys.exit(main())
