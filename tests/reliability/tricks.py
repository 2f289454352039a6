#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""Archive bombs and path tricks given to the program as a person would: tricks.py PLUMBMARK [--json]

Each is imported into a fresh library under a limit of 1 GB of address space. It must be refused with a sentence, leave
nothing outside the library and nothing in its staging folder; time and most memory are told. The archives are made here
with Python's zipfile and by hand, not with the program's own writer. What they try is common knowledge; the overlap of
entries is D. Fifield's "A better zip bomb" (WOOT 2019)."""
import hashlib
import io
import json
import os
import pathlib
import resource
import struct
import subprocess
import sys
import tempfile
import time
import zipfile
import zlib

MARKER = b"A golf lesson; see manifest.json\n"


def lesson(parts, method=zipfile.ZIP_STORED, readable=1, listed=None, flags=0):
    """A lesson file as its page describes it, with whatever parts: [(path, role, bytes)]."""
    listed = listed if listed is not None else [(p, r, len(d), hashlib.sha256(d).hexdigest()) for p, r, d in parts]
    manifest = json.dumps({"created": "2026-11-25T09:30:00.000Z", "format": "plumbmark-lesson", "made_by": "tricks",
                           "parts": [{"path": p, "role": r, "sha256": h, "size": s} for p, r, s, h in listed],
                           "readable_from": readable, "records": 0, "title": "T", "version": readable},
                          separators=(",", ":"), sort_keys=True).encode() + b"\n"
    check = hashlib.sha256(manifest).hexdigest().encode() + b"  manifest.json\n"
    entries = [("PLUMBMARK-LESSON", MARKER, zipfile.ZIP_STORED), ("manifest.json", manifest, zipfile.ZIP_STORED),
               ("manifest.sha256", check, zipfile.ZIP_STORED), *((p, d, method) for p, _, d in parts)]
    body, directory = b"", b""
    for name, data, how in entries:
        packed = data
        if how == zipfile.ZIP_DEFLATED:
            coder = zlib.compressobj(9, zlib.DEFLATED, -15)
            packed = coder.compress(data) + coder.flush()
        crc, path = zlib.crc32(data), name.encode()
        local = struct.pack("<IHHHHHIIIHH", 0x04034b50, 10, flags, how, 0, 0x21, crc, len(packed), len(data), len(path), 0) + path
        directory += struct.pack("<IHHHHHHIIIHHHHHII", 0x02014b50, 0x030a, 10, flags, how, 0, 0x21, crc, len(packed), len(data),
                                 len(path), 0, 0, 0, 0, 0o100644 << 16, len(body)) + path
        body += local + packed
    return body + directory + struct.pack("<IHHHHIIH", 0x06054b50, 0, 0, len(entries), len(entries), len(directory), len(body), 0)


def overlapping(size, names):
    """Many names for the same bytes."""
    data = b"\0" * size
    path = b"films/x"
    local = struct.pack("<IHHHHHIIIHH", 0x04034b50, 10, 0, 0, 0, 0x21, zlib.crc32(data), size, size, len(path), 0) + path + data
    directory = b"".join(
        struct.pack("<IHHHHHHIIIHHHHHII", 0x02014b50, 0x030a, 10, 0, 0, 0, 0x21, zlib.crc32(data), size, size, len(n), 0, 0, 0, 0,
                    0o100644 << 16, 0) + n for n in (f"films/{i}".encode() for i in range(names)))
    return local + directory + struct.pack("<IHHHHIIH", 0x06054b50, 0, 0, min(names, 65535), min(names, 65535), len(directory), len(local), 0)


def packed(files, method=zipfile.ZIP_DEFLATED):
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", method, compresslevel=9) as archive:
        for name, data in files:
            archive.writestr(name, data)
    return out.getvalue()


def tricks():
    zeros = b"\0" * (256 << 20)
    records = ("records.jsonl", "records", b"")
    inner = packed([("0", zeros)])
    yield "256 MB of zeros, compressed, under any name", packed([("PLUMBMARK-LESSON", MARKER), ("bomb", zeros)])
    yield "compressed records", lesson([("records.jsonl", "records", zeros)], zipfile.ZIP_DEFLATED)
    yield "a compressed film", lesson([records, ("films/" + hashlib.sha256(zeros).hexdigest() + ".mp4", "film", zeros)], zipfile.ZIP_DEFLATED)
    yield "a compressed part of an unknown role", lesson([records, ("x", "voice", zeros)], zipfile.ZIP_DEFLATED)
    yield "archive in an archive", packed([(f"{i}.zip", inner) for i in range(16)])
    yield "archive in the place of records", lesson([("records.jsonl", "records", inner)])
    yield "10,000 names for the same bytes", overlapping(1 << 20, 10_000)
    yield "65,535 empty entries", packed([(f"{i}", b"") for i in range(65_535)], zipfile.ZIP_STORED)
    yield "5,000 parts", lesson([records, *((f"p{i}", "voice", b"") for i in range(5000))])
    yield "64 MB of records", lesson([("records.jsonl", "records", b"x" * (64 << 20))])
    yield "64 MB of brackets", lesson([("records.jsonl", "records", b"[" * (30 << 20) + b"\n")])
    yield "a manifest of brackets", packed([("PLUMBMARK-LESSON", MARKER), ("manifest.json", b"[" * (8 << 20)), ("manifest.sha256", b"")],
                                           zipfile.ZIP_STORED)
    good = lesson([records, ("x", "voice", b"x" * 1000)])
    yield "a part said to be 4 GB long", lesson([records, ("x", "voice", b"x")], listed=[("records.jsonl", "records", 0, hashlib.sha256(b"").hexdigest()),
                                                ("x", "voice", 4_294_967_295, hashlib.sha256(b"x").hexdigest())])
    yield "a size below zero", lesson([records], listed=[("records.jsonl", "records", -1, hashlib.sha256(b"").hexdigest())])
    yield "a size of 2^70", lesson([records], listed=[("records.jsonl", "records", 2**70, hashlib.sha256(b"").hexdigest())])
    yield "encrypted", lesson([records], flags=1)
    yield "sizes after the data", lesson([records], flags=8)
    yield "something before it", b"MZ" + good
    yield "something after it", good + b"x"
    yield "two directories", good + good
    yield "cut in the middle", good[:len(good) // 2]
    yield "of a newer version", lesson([records], readable=99)
    for path in ("../evil", "/tmp/plumbmark-evil", "..\\evil", "a/../../evil", "C:\\evil", "films/../../evil", "evil\0.mp4", ".bashrc", "a//b",
                 "a/b/c", "CON:", "x" * 5000, "films/", "e\u0301vil", "%2e%2e/evil", "~/evil", "library.db", "device.key"):
        name = "".join(c if c.isprintable() else "?" for c in path)[:40]
        content = b"evil"
        if path in ("library.db", "device.key"):
            # Allowed names, yet only names: nothing in the library may come from them.
            yield f"a film named {name}", lesson([records, (path, "film", content)])
        else:
            yield f"a part named {name}", lesson([records, (path, "voice", content)])
    linked = bytearray(lesson([records, ("link", "voice", b"/etc/passwd")]))
    at = linked.rfind(b"PK\x01\x02")
    struct.pack_into("<I", linked, at + 38, 0o120777 << 16)
    yield "a link", bytes(linked)


def make(folder):
    names = []
    for name, content in tricks():
        box = folder / str(len(names))
        box.mkdir()
        (box / "trick.plumbmark").write_bytes(content)
        names.append(name)
    (folder / "names").write_text("\n".join(names))


def main():
    if sys.argv[1] == "--make":
        make(pathlib.Path(sys.argv[2]))
        return 0
    program = pathlib.Path(sys.argv[1]).resolve()
    rows, wrong = [], []
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        # In a process of its own: a child's most memory begins with that of its parent.
        subprocess.run([sys.executable, "-B", __file__, "--make", folder], check=True)
        for number, name in enumerate((folder / "names").read_text().split("\n")):
            box = folder / str(number)
            began = time.monotonic()
            with open(box / "said", "w") as said:
                process = subprocess.Popen([program, "lesson", "import", "trick.plumbmark", "--library", "library"], cwd=box, stdout=said,
                                           stderr=said, env={**os.environ, "HOME": str(box)},
                                           preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_AS, (1 << 30, 1 << 30)))
                _, status, usage = os.wait4(process.pid, 0)
            took = time.monotonic() - began
            text = (box / "said").read_text(errors="replace").strip()
            there = {p.name for p in box.iterdir()} - {"trick.plumbmark", "said", "library"}
            staged = list((box / "library" / "staging").glob("*/*")) if (box / "library").exists() else []
            if os.waitstatus_to_exitcode(status) not in (1, 2) or not text.startswith("plumbmark: ") or there or staged \
                    or any(folder.parent.glob("*evil*")) or any(folder.glob("*evil*")):
                wrong.append(f"{name}: {os.waitstatus_to_exitcode(status)} {text} {there} {staged}")
            rows.append({"trick": name, "seconds": round(took, 3), "cpu": round(usage.ru_utime + usage.ru_stime, 3),
                         "megabytes": usage.ru_maxrss // 1024, "said": text})
    answer = {"tricks": len(rows), "wrong": len(wrong), "slowest": max(r["seconds"] for r in rows), "most_cpu": max(r["cpu"] for r in rows), "most_megabytes": max(r["megabytes"] for r in rows)}
    if "--json" in sys.argv:
        print(json.dumps(answer))
    else:
        for row in rows:
            print(f"{row['seconds']:6.2f} s {row['cpu']:6.2f} s CPU {row['megabytes']:4} MB  {row['trick']}: {row['said'][:120]}")
        print(answer)
    for line in wrong:
        print(line, file=sys.stderr)
    return 0 if not wrong else 1


if __name__ == "__main__":
    sys.exit(main())
