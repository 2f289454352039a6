#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""Renders every demo fault, lets the program explain it from the film alone, and writes the table.

tests/accuracy/demo_faults.py --bin build/release --work build/faults [--write docs/reasoning.md]
Takes minutes. Between the marks in the written file everything is replaced.
"""
import argparse
import json
import pathlib
import subprocess

CASES = {
    "sound": ("face-on", []),
    "narrow-drift": ("face-on", ["narrow_stance", "drift_back"]),
    "hip-pushed": ("face-on", ["hip_pushed"]),
    "stalled-pelvis": ("face-on", ["pelvis_square"]),
    "stay-back": ("face-on", ["finish_back"]),
    "ball-forward": ("face-on", ["ball_forward"]),
    "over-turned": ("face-on", ["pelvis_over_turned"]),
    "elbow-collapse": ("face-on", ["elbow_collapsed"]),
    "over-long": ("face-on", ["over_long"]),
    "lost-bend": ("down-the-line", ["stands_up"]),
    "stand-up": ("down-the-line", ["stands_up"]),
}
BEGIN, END = "<!-- demo faults: begin -->", "<!-- demo faults: end -->"


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--bin", type=pathlib.Path, required=True, help="folder of the program")
    parser.add_argument("--renderer", type=pathlib.Path, help="plumbmark-render; else BIN/demo-data/plumbmark-render")
    parser.add_argument("--work", type=pathlib.Path, required=True)
    parser.add_argument("--write", type=pathlib.Path)
    args = parser.parse_args()
    renderer = args.renderer or args.bin / "demo-data" / "plumbmark-render"
    args.work.mkdir(parents=True, exist_ok=True)
    rows = []
    for case, (view, wanted) in CASES.items():
        clip = args.work / f"{case}.mp4"
        if not clip.exists():
            subprocess.run([renderer, "--case", case, "--view", view, "--fps", "120", "--seed", "1", "--name", case,
                            "--out", args.work], check=True, capture_output=True)
        answer = json.loads(subprocess.run([args.bin / "plumbmark", "explain", clip, "--view", view, "--hand", "right",
                                            "--club", "iron-7", "--json", "-"], check=True, capture_output=True).stdout)
        nodes = {n["id"]: n for n in answer["nodes"]}
        first = answer["first"]["node"] if answer["first"] else None
        rivals = [r["node"] for r in answer["rivals"]]
        told = lambda n: f"{nodes[n]['label']} ({round(100 * nodes[n]['probability'])} %)"
        if not wanted:
            found = "none proposed" if first is None else "**a cause is proposed**"
        elif first in wanted:
            found = "first cause"
        elif set(wanted) & set(rivals):
            found = "named rival"
        elif all(nodes[w]["probability"] is None for w in wanted):
            found = "not seen: cannot tell"
        else:
            found = "**missed**"
        rows.append(f"| {case}, {view} | {', '.join(nodes[w]['label'] for w in wanted) or '-'} | {found} | "
                    f"{told(first) if first else answer['verdict']} | {', '.join(map(told, rivals)) or '-'} |")
        print(rows[-1], flush=True)
    table = "\n".join(["| demo swing | built-in fault | answer | proposed first | rivals |", "| --- | --- | --- | --- | --- |",
                       *rows])
    if args.write:
        text = args.write.read_text()
        head, rest = text.split(BEGIN)
        args.write.write_text(head + BEGIN + "\n" + table + "\n" + END + rest.split(END)[1])


if __name__ == "__main__":
    main()
