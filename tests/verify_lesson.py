#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""Verifies and lists a lesson file without any of the program's code (Python's standard library only).

    verify_lesson.py FILE     exit code 0: whole; 1: damaged or changed; 2: wrong use

Written from docs/lesson-file.md alone. Parses the ZIP by hand, because general readers forgive what a lesson file
never has.
"""
import hashlib
import json
import re
import struct
import sys
import zlib

LOCAL = struct.Struct("<IHHHHHIIIHH")
CENTRAL = struct.Struct("<IHHHHHHIIIHHHHHII")
END = struct.Struct("<IHHHHIIH")


class Bad(Exception):
    pass


def need(condition, what):
    if not condition:
        raise Bad(what)


def entries(data):
    """(name, bytes) of every entry, after checking every field of every header."""
    need(len(data) >= END.size, "too short")
    sig, d0, d1, n0, n1, dir_size, dir_at, comment = END.unpack(data[-END.size:])
    need(sig == 0x06054B50, "the end is missing")
    need((d0, d1, comment) == (0, 0, 0) and n0 == n1 and n0 <= 2000, "end record")
    need(dir_at + dir_size + END.size == len(data), "the directory is not where it should be")
    at, place, found, seen = dir_at, 0, [], set()
    for _ in range(n0):
        need(at + CENTRAL.size <= len(data) - END.size, "the directory is too short")
        (sig, made, needed, flags, method, time, date, crc, packed, size, name_len, extra, note, disk, internal, mode,
         offset) = CENTRAL.unpack(data[at:at + CENTRAL.size])
        raw = data[at + CENTRAL.size:at + CENTRAL.size + name_len]
        at += CENTRAL.size + name_len
        need((sig, made, needed, flags, method, time, date) == (0x02014B50, 0x030A, 10, 0, 0, 0, 0x21), "directory")
        need(packed == size and (extra, note, disk, internal, mode) == (0, 0, 0, 0, 0o100644 << 16), "directory")
        name = raw.decode("ascii", "replace")
        need(re.fullmatch(r"[A-Za-z0-9_-][A-Za-z0-9._-]*(/[A-Za-z0-9_-][A-Za-z0-9._-]*)?", name) and ".." not in name
             and len(name) <= 200, "name " + repr(name))
        need(name.lower() not in seen, "two parts are called " + name)
        seen.add(name.lower())
        need(offset == place, name + " is not where it should be")
        local = LOCAL.pack(0x04034B50, 10, 0, 0, 0, 0x21, crc, size, size, name_len, 0) + raw
        need(data[place:place + len(local)] == local, name + ": local header")
        start = place + len(local)
        content = data[start:start + size]
        need(len(content) == size and zlib.crc32(content) == crc, name + ": CRC")
        place = start + size
        found.append((name, content))
    need(at == len(data) - END.size and place == dir_at, "data that belongs to no part")
    return found


def verify(data):
    found = entries(data)
    need([name for name, _ in found[:3]] == ["PLUMBMARK-LESSON", "manifest.json", "manifest.sha256"], "first parts")
    need(found[0][1] == b"A golf lesson; see manifest.json\n", "marker")
    text = found[1][1]
    need(found[2][1] == hashlib.sha256(text).hexdigest().encode() + b"  manifest.json\n", "manifest.sha256")
    manifest = json.loads(text.decode("utf-8"))
    need(manifest["format"] == "plumbmark-lesson", "format")
    need(manifest["readable_from"] <= 1, "made by a newer version")
    need([p["path"] for p in manifest["parts"]] == [name for name, _ in found[3:]], "parts")
    ids = set()
    records = 0
    for part, (name, content) in zip(manifest["parts"], found[3:]):
        need(part["size"] == len(content), name + ": size")
        need(part["sha256"] == hashlib.sha256(content).hexdigest(), name + ": SHA-256")
        if part["role"] == "film":
            need(re.fullmatch("films/" + part["sha256"] + r"\.[a-z0-9]+", name), name + ": name")
        if part["role"] == "records":
            need(content == b"" or content.endswith(b"\n"), name + ": last line")
            lines = content.decode("utf-8").split("\n")[:-1]
            need(lines == sorted(lines, key=lambda line: line.encode("utf-8")), name + ": order")
            for line in lines:
                record = json.loads(line)
                need(re.fullmatch("[0-9a-f]{32}", record["id"]) and record["id"] not in ids, name + ": id")
                need("kind" in record or set(record) == {"id", "erased"}, name + ": record")
                ids.add(record["id"])
                records += 1
    need(records == manifest["records"], "number of records")
    return manifest, records


def main():
    if len(sys.argv) != 2:
        print(__doc__)
        return 2
    try:
        with open(sys.argv[1], "rb") as file:
            manifest, records = verify(file.read())
    except (Bad, OSError, ValueError, KeyError, TypeError) as error:
        print("damaged or changed:", error)
        return 1
    print("whole: %r, %d records, made %s by %s" % (manifest["title"], records, manifest["created"],
                                                     manifest["made_by"]))
    for part in manifest["parts"]:
        print("  %-8s %12d  %s" % (part["role"], part["size"], part["path"]))
    return 0


if __name__ == "__main__":
    sys.exit(main())
