#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""Makes the film of a practice session at home with its exact truth: swings with and without faults,
rehearsals held at the top, waggles, walking out of the picture and back, standing about.

Every piece is rendered once by plumbmark-render; the session strings pieces together with FFmpeg, in an order
drawn by a seed. A longer session repeats pieces, and its truth says so ("distinct").

    practice_film.py --render build/release/demo-data/plumbmark-render --out DIR --minutes 10
"""
import argparse
import json
import pathlib
import random
import subprocess
import sys

SWINGS = ["sound", "narrow-drift", "over-long", "stay-back", "stalled-pelvis", "early-set"]
BETWEEN = ["standing", "waggle", "rehearsal", "walk"]


def run(*command):
    done = subprocess.run([str(c) for c in command], capture_output=True, text=True)
    if done.returncode != 0:
        sys.exit(f"{command[0]} failed: {done.stderr.strip()[-400:]}")
    return done.stdout


def piece(arguments, folder, name):
    """One rendered piece: (clip, truth); made only where it is not there yet."""
    stem = f"{name}-{arguments.seed}-{arguments.size}-{arguments.fps}"
    clip, truth = folder / f"{stem}.mp4", folder / f"{stem}.truth.json"
    if not truth.exists():
        what = ["--interlude", name, "--case", "sound"] if name in BETWEEN else ["--case", name]
        run(arguments.render, *what, "--view", "face-on", "--fps", arguments.fps, "--size", arguments.size,
            "--seed", arguments.seed, "--name", stem, "--out", folder)
    return clip, json.loads(truth.read_text())


def plan(minutes, seed, swings):
    """Names of pieces until the time is full: about every third piece is a swing."""
    draw = random.Random(seed)
    order, pool = ["standing"], []
    length = 2.0
    while length < 60 * minutes - 4:
        if not pool:
            pool = list(swings)
            draw.shuffle(pool)
        between = draw.choice([["waggle"], ["standing", "waggle"], ["walk"], ["rehearsal"], ["standing"],
                               ["walk", "standing"], ["rehearsal", "waggle"]])
        for name in [*between, pool.pop()]:
            order.append(name)
            length += {"standing": 2.0, "waggle": 2.4, "rehearsal": 7.0, "walk": 7.0}.get(name, 3.4)
    return order


def value(truth, name, moment):
    for row in truth["measurements"]:
        if row["id"] == name and row["moment"] == moment:
            return row["value"]
    return None


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--render", required=True, type=pathlib.Path)
    parser.add_argument("--out", required=True, type=pathlib.Path)
    parser.add_argument("--minutes", type=float, default=10)
    parser.add_argument("--seed", type=int, default=41, help="player and place; under 1000")
    parser.add_argument("--fps", type=int, default=60)
    parser.add_argument("--size", default="1280x720")
    parser.add_argument("--pieces", type=pathlib.Path, help="where rendered pieces are kept (OUT/pieces)")
    parser.add_argument("--order", help="pieces by name, with commas, instead of a drawn order")
    arguments = parser.parse_args()
    pieces = arguments.pieces or arguments.out / "pieces"
    pieces.mkdir(parents=True, exist_ok=True)
    arguments.out.mkdir(parents=True, exist_ok=True)
    order = arguments.order.split(",") if arguments.order else plan(arguments.minutes, arguments.seed, SWINGS)

    begins, events, listing = 0.0, [], []
    for name in order:
        clip, truth = piece(arguments, pieces, name)
        seconds = truth["clip"]["frames"] / truth["clip"]["playback_fps"]
        listing.append(f"file '{clip.resolve()}'\nduration {seconds:.9f}\n")
        event = {"what": truth.get("interlude", "swing"), "piece": name, "from_s": begins, "to_s": begins + seconds}
        if event["what"] == "swing":
            event |= {m["name"] + "_s": begins + m["time_s"] for m in truth["moments"] if m["name"] in ("top", "impact")}
        if event["what"] == "rehearsal":
            event["held_s"] = [begins + t for t in truth["held_s"]]
        if event["what"] in ("swing", "rehearsal"):
            event["head_to_trail_ankle"] = value(truth, "head_to_trail_ankle", "top")
        events.append(event)
        begins += seconds
    film = arguments.out / "session.mp4"
    names = arguments.out / "session.txt"
    names.write_text("".join(listing))
    # Joined through decoding: pieces end with sound that is longer than their pictures by a part of a block.
    distinct = set(order)
    video = ["-f", "concat", "-safe", "0", "-i", names]
    run("ffmpeg", "-v", "error", "-y", *video, "-vf", f"fps={arguments.fps}", "-af", "aresample=async=1:first_pts=0",
        "-c:v", "libx264", "-preset", "veryfast", "-crf", "20", "-g", "30", "-bf", "0", "-c:a", "aac", "-b:a", "128k",
        film)
    truth = {"seconds": begins, "fps": arguments.fps, "size": arguments.size, "seed": arguments.seed,
             "distinct": len(distinct), "events": events}
    (arguments.out / "session.truth.json").write_text(json.dumps(truth, indent=1) + "\n")
    swings = sum(e["what"] == "swing" for e in events)
    print(f"{film}: {begins:.1f} s, {swings} swings, {len(order)} pieces of {len(distinct)} kinds")


if __name__ == "__main__":
    main()
