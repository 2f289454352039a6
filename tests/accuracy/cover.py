#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""How well covered films cover, against the exact truth of rendered swings.

    tests/accuracy/cover.py --bin build/release CLIP.mp4...        beside each clip: CLIP.truth.json

Each clip is brought into a library of its own and covered as for sharing ("lesson cover"); then the film that would go
out is decoded (by ffmpeg) and held against the truth. The whole true head of a frame is the disc about its centre that
reaches to the farthest of crown, front, back, nose and ears; the second number asks for a tenth more, for cap and hair. A
frame counts as covered when every pixel of that disc has the cover's grey (40), as far as coding explains (26 levels: twice the
program's own limit, since single pixels are looked at here)."""
import argparse
import json
import pathlib
import subprocess
import sys
import tempfile

HEAD = ("nose", "head_crown", "head_front", "head_back", "lead_ear", "trail_ear")
GREY, CODING = 40, 26


def discs(truth):
    """Centre and radius of each frame's head; None where the truth has none."""
    names = truth["landmarks"]["names"]
    for frame in truth["landmarks"]["frames"]:
        points = {name: frame["points"][names.index(name)] for name in HEAD + ("head_centre",) if name in names}
        centre = points.pop("head_centre", None)
        reach = [((p[0] - centre[0]) ** 2 + (p[1] - centre[1]) ** 2) ** 0.5 for p in points.values() if p and centre]
        yield (centre[0], centre[1], max(reach)) if reach else None


def is_open(picture, width, height, disc):
    x, y, r = disc
    for row in range(max(0, int(y - r)), min(height, int(y + r) + 1)):
        half = (r * r - (row + 0.5 - y) ** 2) ** 0.5 if abs(row + 0.5 - y) < r else 0.0
        left, right = max(0, int(x - half)), min(width, int(x + half) + 1)
        if right > left:
            line = picture[row * width + left:row * width + right]
            if max(line) > GREY + CODING or min(line) < GREY - CODING:
                return True
    return False


def run(command):
    return subprocess.run(list(map(str, command)), capture_output=True, text=True)


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--bin", type=pathlib.Path, required=True)
    parser.add_argument("clips", nargs="+", type=pathlib.Path)
    options = parser.parse_args()
    program = options.bin / "plumbmark"
    total = opened = capped = 0
    print("| clip | frames | head wholly covered | and a tenth more | shown as doubtful | covered share of the picture |\n"
          "| --- | ---: | ---: | ---: | ---: | ---: |")
    for clip in options.clips:
        truth = json.loads(clip.with_suffix(".truth.json").read_text())
        with tempfile.TemporaryDirectory() as folder:
            library = pathlib.Path(folder) / "library"
            added = run([program, "lesson", "add", clip, "--view", truth["view"], "--hand", truth["hand"], "--player", "P",
                         "--library", library])
            made = run([program, "lesson", "cover", "latest", "--strip", pathlib.Path(folder) / "strip.png", "--library", library])
            films = list((library / "cache").glob("*-head-covered"))
            if not films:
                print(f"{clip.name}: {(added.stderr + made.stderr).strip().splitlines()[-1]}", file=sys.stderr)
                continue
            width, height = truth["clip"]["width"], truth["clip"]["height"]
            raw = subprocess.run(["ffmpeg", "-v", "error", "-i", films[0], "-f", "rawvideo", "-pix_fmt", "gray", "-"],
                                 capture_output=True, check=True).stdout
        width += width % 2
        height += height % 2
        size = width * height
        frames = open_ = cap = 0
        area = []
        for index, disc in enumerate(discs(truth)):
            picture = memoryview(raw)[index * size:(index + 1) * size]
            if disc is None or len(picture) < size:
                continue
            frames += 1
            open_ += is_open(picture, width, height, disc)
            cap += is_open(picture, width, height, (disc[0], disc[1], 1.1 * disc[2]))
            if index % 20 == 0:
                sample = bytes(picture[::7])
                area.append(sum(sample.count(g) for g in range(GREY - 2, GREY + 3)) / len(sample))
        doubtful = next((word for line in made.stdout.splitlines() if "uncertain" in line for word in line.split()[-1:]), "?")
        print(f"| {clip.stem} | {frames} | {100 * (1 - open_ / frames):.1f} % | {100 * (1 - cap / frames):.1f} % | {doubtful} | {100 * sorted(area)[len(area) // 2]:.0f} % |",
              flush=True)
        total += frames
        opened += open_
        capped += cap
    if total:
        print(f"| all | {total} | {100 * (1 - opened / total):.2f} % | {100 * (1 - capped / total):.2f} % | | |")
    return 0 if total else 1


if __name__ == "__main__":
    sys.exit(main())
