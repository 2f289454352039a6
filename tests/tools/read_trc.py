#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""A second reader of marker files (TRC), written from the published description of the format and not from our writer.

Source: OpenSim documentation, "Marker (.trc) Files": line 1 "PathFileType <version> (X/Y/Z) <name>", line 2 the keys
DataRate CameraRate NumFrames NumMarkers Units OrigDataRate OrigDataStartFrame OrigNumFrames, line 3 their values, line 4
"Frame#", "Time" and each marker's name followed by two empty columns, line 5 X1 Y1 Z1 X2 ..., then one line per frame:
number, time in seconds, three coordinates per marker; a missing marker is blank. All separated by tabs.
"""
import math
import sys

KEYS = ["DataRate", "CameraRate", "NumFrames", "NumMarkers", "Units", "OrigDataRate", "OrigDataStartFrame",
        "OrigNumFrames"]


def read(text):
    """-> (header dict, [marker names], [(time, {name: (x, y, z) or None})]); ValueError says what is wrong."""
    lines = text.split("\n")
    first = lines[0].split("\t")
    if len(first) < 4 or first[0] != "PathFileType" or first[2] != "(X/Y/Z)":
        raise ValueError("first line")
    if lines[1].split("\t") != KEYS:
        raise ValueError("keys")
    values = lines[2].split("\t")
    header = {key: (value if key == "Units" else float(value)) for key, value in zip(KEYS, values, strict=True)}
    if header["Units"] not in ("m", "mm"):
        raise ValueError("units")
    names = lines[3].split("\t")
    if names[:2] != ["Frame#", "Time"]:
        raise ValueError("names")
    markers = names[2::3]
    if any(names[3::3]) or any(names[4::3]) or len(markers) != int(header["NumMarkers"]):
        raise ValueError("marker names")
    axes = lines[4].split("\t")[2:]
    if axes != [f"{axis}{i + 1}" for i in range(len(markers)) for axis in "XYZ"]:
        raise ValueError("axes")
    frames = []
    for line in lines[5:]:
        if not line.strip():
            continue
        cells = line.split("\t")
        if len(cells) != 2 + 3 * len(markers) or int(cells[0]) != len(frames) + 1:
            raise ValueError(f"frame {len(frames) + 1}")
        points = {}
        for i, name in enumerate(markers):
            xyz = cells[2 + 3 * i : 5 + 3 * i]
            points[name] = None if xyz == ["", "", ""] else tuple(map(float, xyz))
            if points[name] and not all(map(math.isfinite, points[name])):
                raise ValueError(f"frame {len(frames) + 1}")
        time = float(cells[1])
        if frames and time <= frames[-1][0]:
            raise ValueError("times must rise")
        frames.append((time, points))
    if len(frames) != int(header["NumFrames"]):
        raise ValueError("number of frames")
    return header, markers, frames


if __name__ == "__main__":
    with open(sys.argv[1], encoding="utf-8", newline="") as file:
        head, names, rows = read(file.read())
    print(f"{len(rows)} frames, {len(names)} markers, {head['DataRate']} a second, {head['Units']}")
