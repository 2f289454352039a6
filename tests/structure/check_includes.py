#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""Holds the module table of core/CMakeLists.txt against the #include lines of core/.

A header-only leak compiles and links, so only reading the lines catches it. Fails when
 - a file includes a module its own module does not declare,
 - the table has a cycle or names an unknown module,
 - a public header (not under detail/) includes a third-party or Qt header,
 - core/ includes Qt anywhere.
The rules are tried on made-up offenders first: a check that cannot fail proves nothing.
"""
import pathlib
import re
import sys

INCLUDE = re.compile(r'^\s*#\s*include\s*([<"])([^>"]+)[>"]', re.M)
THIRD_PARTY = re.compile(r"^(opencv2/|libav|libsw|sqlite3|nlohmann/|zip\.h|sodium|qrencode)")
QT = re.compile(r"^(Qt[A-Z]\w*/|Q[A-Z]\w*$|q(?!rencode\.)\w+\.h$)")


def read_table(text):
    table = {}
    for row in text.strip().split(";"):
        name, _, depends = row.strip().partition(":")
        table[name] = [d for d in depends.split(",") if d]
    return table


def table_faults(table):
    faults = []
    for name, depends in table.items():
        faults += [f"{name}: unknown module {d}" for d in depends if d not in table]
    seen, path = set(), []

    def visit(name):
        if name in path:
            faults.append("cycle: " + " -> ".join(path[path.index(name):] + [name]))
            return
        if name in seen or name not in table:
            return
        seen.add(name)
        path.append(name)
        for d in table[name]:
            visit(d)
        path.pop()

    for name in table:
        visit(name)
    return faults


def file_faults(table, module, relative, text):
    allowed = {module, *table[module]}
    public = relative.endswith(".h") and "/detail/" not in relative
    faults = []
    for mark, path in INCLUDE.findall(text):
        head = path.split("/")[0]
        if mark == '"' and head in table and head not in allowed:
            faults.append(f"{relative}: includes {path}, but core_module({module}) does not depend on {head}")
        if QT.match(path):
            faults.append(f"{relative}: includes {path}; the core builds without Qt")
        if public and THIRD_PARTY.match(path):
            faults.append(f"{relative}: public header includes {path}; move it to a .cpp file or detail/")
    return faults


def try_the_rules():
    table = {"base": [], "video": ["base"], "club": ["video"]}
    assert not table_faults(table)
    assert table_faults({"a": ["b"], "b": ["a"]}) and table_faults({"a": ["x"]})
    good = file_faults(table, "club", "core/club/a.cpp", '#include "video/clip.h"\n#include <opencv2/core.hpp>\n')
    assert not good, good
    assert file_faults(table, "club", "core/club/a.h", '#include "base/result.h"\n'), "undeclared module"
    assert file_faults(table, "video", "core/video/a.h", "#include <libavutil/frame.h>\n"), "third-party leak"
    assert file_faults(table, "video", "core/video/a.cpp", "#include <QString>\n"), "Qt in the core"
    assert not file_faults(table, "video", "core/video/detail/a.h", "#include <libavutil/frame.h>\n")


def main():
    root = pathlib.Path(sys.argv[1])
    table = read_table(pathlib.Path(sys.argv[2]).read_text())
    try_the_rules()
    faults = table_faults(table)
    files = 0
    for path in sorted((root / "core").rglob("*")):
        if path.suffix not in (".h", ".cpp"):
            continue
        relative = path.relative_to(root).as_posix()
        module = relative.split("/")[1]
        if module not in table:
            faults.append(f"{relative}: folder {module} is not in the module table")
            continue
        files += 1
        faults += file_faults(table, module, relative, path.read_text())
    print("\n".join(faults) or f"{files} files keep to the module table of {len(table)} modules")
    return 1 if faults or files == 0 else 0


if __name__ == "__main__":
    sys.exit(main())
