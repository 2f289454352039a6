#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""Fails when a text of the app has no German or Spanish words, when a translation has lost or invented a place for a
value or a form of its plural, or when QML shows words that nobody can translate.

  check_translations.py ROOT LUPDATE

What the core says is held against core_sentences.h: every sentence listed there must be translated. Sentences that came
into the core since are named without failing (they are shown in English until collect.py has been run).
"""
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET

LANGUAGES = {"de": 2, "es": 2, "en": 2}  # and how many forms a plural has


def places(text):
    return set(re.findall(r"%L?\d", text.replace("%L", "%")))


def check_language(path, language, problems):
    for context in ET.parse(path).getroot().iter("context"):
        name = context.findtext("name")
        for message in context.iter("message"):
            source, translation = message.findtext("source"), message.find("translation")
            where = f"{language}, {name}: \"{source}\""
            forms = [f.text or "" for f in translation.findall("numerusform")]
            plural = message.get("numerus") == "yes"
            texts = forms if plural else [translation.text or ""]
            if translation.get("type") or not all(t.strip() or not source.strip() for t in texts):
                problems.append(f"{where} is not translated")
                continue
            if plural and len(forms) != LANGUAGES[language]:
                problems.append(f"{where} has {len(forms)} forms, not {LANGUAGES[language]}")
            for text in texts:
                if places(text) != places(source):
                    problems.append(f"{where} has other places for values: \"{text}\"")


# Words put straight into a property that is shown or read out.
PLAIN = re.compile(r'^\s*(?:text|title|subtitle|label|question|hint|placeholderText|Accessible\.(?:name|description)):[^/\n]*?"([^"\n]*)"', re.M)


def check_qml(root, problems):
    for path in sorted((root / "app-qml").rglob("*.qml")):
        for number, line in enumerate(path.read_text().splitlines(), 1):
            found = PLAIN.match(line)
            if not found:
                continue
            # What is compared with, looked up or handed to qsTr is not shown as it stands.
            rest = re.sub(r'qsTr\("(?:[^"\\]|\\.)*"(?:, *"(?:[^"\\]|\\.)*")?', "", line)
            rest = re.sub(r'(?:===|!==) *"[^"]*"|\["[^"]*"\]', "", rest)
            for words in re.findall(r'"([^"]*)"', rest):
                if re.search(r"[A-Za-z]{2}", re.sub(r"\\u[0-9a-f]{4}", "", words)):
                    problems.append(f"{path.relative_to(root)}:{number} shows \"{words}\" in every language")


def main():
    root, lupdate = pathlib.Path(sys.argv[1]), sys.argv[2]
    problems = []
    with tempfile.TemporaryDirectory() as folder:
        fresh = {}
        for language in LANGUAGES:
            # Beside a copy of the sources' root, for the file keeps relative paths.
            fresh[language] = pathlib.Path(folder) / f"plumbmark_{language}.ts"
            shutil.copy(root / "app-qml" / "translations" / f"plumbmark_{language}.ts", fresh[language])
        common = [lupdate, str(root / "app-qml"), str(root / "platform"), "-locations", "none", "-no-obsolete"]
        subprocess.run([*common, "-ts", str(fresh["de"]), str(fresh["es"])], check=True, capture_output=True)
        subprocess.run([*common, "-pluralonly", "-ts", str(fresh["en"])], check=True, capture_output=True)
        for language, path in fresh.items():
            check_language(path, language, problems)
    check_qml(root, problems)
    sys.path.insert(0, str(root / "app-qml" / "translations"))
    import collect
    listed = (root / "app-qml" / "translations" / "core_sentences.h").read_text()
    for sentence in collect.sentences():
        if f'"{collect.escaped(sentence)}"' not in listed:
            print(f'not listed yet: "{sentence}"')
    for problem in problems:
        print(problem)
    return 1 if problems else 0


if __name__ == "__main__":
    sys.exit(main())
