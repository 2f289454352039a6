#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""Films a rendered practice session with "plumbmark practise" and compares its answer with the exact truth.

    tests/practice/practice.py --program build/release/plumbmark --render build/release/demo-data/plumbmark-render \\
        --out build/practice --minutes 10 --pace camera --write docs/practice.md
    tests/practice/practice.py ... --order standing,sound,walk --size 640x360 --fps 30 --check

Truth for the verdict: the head holds at the top when it is inside the trail ankle by 0.10 stance widths or more (the
playbook's range), from the renderer's own three-dimensional figure.
"""
import argparse
import json
import os
import pathlib
import subprocess
import sys

HERE = pathlib.Path(__file__).resolve().parent
INSIDE = 0.10  # stance widths, default playbook
SLACK = 0.35   # s between a true hit and where the program saw it


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--program", required=True, type=pathlib.Path)
    parser.add_argument("--render", type=pathlib.Path, default=os.environ.get("PLUMBMARK_RENDERER"))
    parser.add_argument("--out", required=True, type=pathlib.Path)
    parser.add_argument("--minutes", default="10")
    parser.add_argument("--size", default="1280x720")
    parser.add_argument("--fps", default="60")
    parser.add_argument("--seed", default="41")
    parser.add_argument("--order")
    parser.add_argument("--pace", default="fast")
    parser.add_argument("--answer", type=pathlib.Path, help="compare this answer, made before, instead of asking again")
    parser.add_argument("--write", type=pathlib.Path)
    parser.add_argument("--check", action="store_true", help="fail on a missed or false swing or a wrong verdict")
    arguments = parser.parse_args()
    if not arguments.render and not arguments.answer:
        print("PLUMBMARK_RENDERER is not set: no practice session was rendered (skipped)")
        sys.exit(77)
    # A session that was rendered before serves again only when it was asked for in the same words.
    asked = arguments.order.replace(",", "+") if arguments.order else arguments.minutes + "min"
    arguments.out = arguments.out / f"{arguments.size}-{arguments.fps}-{arguments.seed}-{asked}"
    film = [sys.executable, HERE.parent.parent / "demo-data" / "session" / "practice_film.py", "--render",
            arguments.render, "--out", arguments.out, "--minutes", arguments.minutes, "--size", arguments.size,
            "--fps", arguments.fps, "--seed", arguments.seed]
    if arguments.order:
        film += ["--order", arguments.order]
    if not (arguments.out / "session.truth.json").exists():
        subprocess.run([str(c) for c in film], check=True)
    answer_file = arguments.answer or arguments.out / "answer.json"
    done = None if arguments.answer else subprocess.run([arguments.program, "practise", arguments.out / "session.mp4", "--view", "face-on", "--hand",
                           "right", "--club", "iron-7", "--pace", arguments.pace, "--json", answer_file],
                          capture_output=True, text=True)
    if done and done.returncode != 0 and "network" in done.stderr.lower():
        print(f"The pose network is not there: practice was not tried (skipped). {done.stderr.strip()}")
        sys.exit(77)
    if done and done.returncode != 0:
        sys.exit(f"plumbmark practise failed: {done.stderr}")
    answer = json.loads(answer_file.read_text())
    try:
        import jsonschema  # outside check: Debian package python3-jsonschema
        jsonschema.validate(answer, json.loads((HERE.parent.parent / "docs" / "practise.schema.json").read_text()))
    except ImportError:
        print("python3-jsonschema is not installed: the answer's form was not checked")
    truth = json.loads((arguments.out / "session.truth.json").read_text())

    true_swings = [e for e in truth["events"] if e["what"] == "swing"]
    swings = list(answer["swings"])
    found, right, cannot, wrong, errors = 0, 0, 0, [], []
    for true in true_swings:
        near = [s for s in swings if abs(s["hit_s"] - true["impact_s"]) < SLACK]
        if not near:
            continue
        found += 1
        swing = near[0]
        swings.remove(swing)
        holds = true["head_to_trail_ankle"] >= INSIDE
        if swing["verdict"] == "cannot-tell":
            cannot += 1
        elif (swing["verdict"] == "holds") == holds:
            right += 1
        else:
            wrong.append((round(swing["hit_s"], 2), true["piece"], swing["verdict"]))
        if swing["measured"]:
            errors.append((swing["measured"]["value"] - true["head_to_trail_ankle"]) / swing["measured"]["sigma"])
    missed = [(round(t["impact_s"], 2), t["piece"]) for t in true_swings
              if not any(abs(s["hit_s"] - t["impact_s"]) < SLACK for s in answer["swings"])]
    false = [(s["hit_s"], s["noticed_by"]) for s in swings]

    true_holds = [e for e in truth["events"] if e["what"] == "rehearsal"]
    held = [t for t in true_holds if any(r["from_s"] < t["held_s"][1] and r["to_s"] > t["held_s"][0]
                                         for r in answer["rehearsals"])]
    stray = [r for r in answer["rehearsals"] if not any(r["from_s"] < t["to_s"] and r["to_s"] > t["from_s"]
                                                        for t in true_holds)]
    counted_right = sum(1 for r in answer["rehearsals"] if r["counted"] and r not in stray)
    memory = [m["resident_mb"] for m in answer["memory"]]
    settled = memory[3:] or memory
    seconds = sorted(s["seconds_to_verdict"] for s in answer["swings"])
    gaps = [b["impact_s"] - a["impact_s"] for a, b in zip(true_swings, true_swings[1:])]

    rows = [
        ("session", f"{truth['seconds'] / 60:.1f} minutes, {truth['size']}, {truth['fps']} frames/s, "
                    f"{len(truth['events'])} pieces of {truth['distinct']} kinds, seed {truth['seed']}"),
        ("pace", f"{arguments.pace}; frames late by more than 50 ms: {answer['film']['frames_late']} of "
                 f"{answer['film']['frames']}"),
        ("swings found", f"{found} of {len(true_swings)}"),
        ("false swings", f"{len(false)}"),
        ("noticed, but the film showed no swing (not counted)", str(answer["summary"]["noticed_but_no_swing"])),
        ("verdict right", str(right)),
        ("verdict \"cannot tell\"", str(cannot)),
        ("verdict wrong", str(len(wrong))),
        ("rehearsals found", f"{len(held)} of {len(true_holds)}; counted {counted_right}; reported where there was none: "
                             f"{len(stray)}"),
        ("hit to verdict, seconds", f"median {seconds[len(seconds) // 2]:.1f}, longest {seconds[-1]:.1f} "
                                    f"(shortest time to the next swing: {min(gaps):.1f})" if seconds and gaps else "-"),
        ("memory after the first 30 s, MB", f"{min(settled):.0f} to {max(settled):.0f}" if settled else "-"),
    ]
    width = max(len(r[0]) for r in rows)
    for name, value in rows:
        print(f"{name:{width}}  {value}")
    for title, things in (("missed", missed), ("false", false), ("wrong", wrong)):
        if things:
            print(title + ":", things)
    if arguments.write:
        text = arguments.write.read_text() if arguments.write.exists() else ""
        begin, end = "<!-- generated: session -->\n", "<!-- end -->\n"
        table = "| what | result |\n| --- | --- |\n" + "".join(f"| {n} | {v} |\n" for n, v in rows)
        if begin in text and end in text:
            text = text[:text.index(begin) + len(begin)] + table + text[text.index(end):]
        else:
            text += "\n" + begin + table + end
        arguments.write.write_text(text)
    if arguments.check and (missed or false or wrong or not held or stray):
        sys.exit("A swing was missed, invented or judged wrongly, or a rehearsal was not seen.")


if __name__ == "__main__":
    main()
