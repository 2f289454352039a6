#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""The long proofs, and docs/reliability.md from what was really run.

    tests/reliability/reliability.py --bin build/fast --write docs/reliability.md

--bin: a build folder with tests (no sanitizers, for speed); --sanitized: one with them, for the damaged input. Every
number in the page comes from this run; what was not run is not in it.
"""
import argparse
import datetime
import json
import os
import pathlib
import re
import subprocess
import sys
import time


def run(command, environment=None, limit=None):
    began = time.monotonic()
    result = subprocess.run(list(map(str, command)), capture_output=True, text=True, timeout=limit,
                            env={**os.environ, **(environment or {})})
    return result, time.monotonic() - began


def faults(folder, mode, memory, *more):
    result, seconds = run([folder / "tests/reliability/reliability_faults", mode, "--json", *more], memory)
    if not result.stdout.strip():
        sys.exit(f"reliability_faults {mode}: {result.stderr}")
    answer = json.loads(result.stdout)
    answer["seconds"] = seconds
    answer["told"] = result.stderr.strip().splitlines()
    return answer


def table(answer, last):
    rows = [f"| work | calls that change the disk | runs | {last} |", "| --- | --- | --- | --- |"]
    for work in answer["works"]:
        value = work["reported"] if "told" in last else work["crashes"]
        rows.append(f"| {work['work']} | {work['calls']} | {work['runs']} | {value} |")
    return rows


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--bin", type=pathlib.Path, required=True)
    parser.add_argument("--sanitized", type=pathlib.Path)
    parser.add_argument("--write", type=pathlib.Path)
    parser.add_argument("--kills-each", type=int, default=20, help="how often each step of each work is hit")
    parser.add_argument("--fail-every", type=int, default=1, help="every n-th call fails in turn")
    parser.add_argument("--schedules", type=int, default=1_000_000)
    parser.add_argument("--fuzz-minutes", type=float, default=10)
    parser.add_argument("--memory-every", type=int, default=37, help="every n-th allocation fails in turn")
    options = parser.parse_args()
    memory = {"TMPDIR": "/dev/shm"} if pathlib.Path("/dev/shm").is_dir() else {}
    lines = ["# Reliability: what was run", "",
             f"Made by `tests/reliability/reliability.py` on {datetime.date.today()}. Short forms of all of it run in CI. "
             "What is promised stands in [library.md](library.md) and [lesson-file.md](lesson-file.md).", ""]
    bad = 0

    kills = faults(options.bin, "kill", memory, "--times", options.kills_each)
    total = sum(w["runs"] for w in kills["works"])
    bad += kills["wrong"]
    lines += ["## Killed at every step", "",
              f"SIGKILL just before each system call that changes the disk (open for writing, write, sync, rename, link, "
              f"unlink, truncate, mkdir; also SQLite's own), each one {options.kills_each} times: **{total} kills, "
              f"{kills['wrong']} wrong** ({kills['seconds'] / 60:.1f} minutes). After each: the library opens, integrity, "
              "foreign keys, records, lists and films check clean; what was acknowledged is there; the work is there whole "
              "or not at all; done again it goes through. The files lie in memory: this is about killed programs, not about "
              "power cuts.", ""]
    lines += table(kills, "ended by another signal") + [""]

    fails = faults(options.bin, "fail", memory, "--every", options.fail_every)
    total = sum(w["runs"] for w in fails["works"])
    bad += fails["wrong"]
    lines += ["## The n-th call fails", "",
              f"{'Each' if options.fail_every == 1 else f'Every {options.fail_every}th'} of these calls in turn gives EIO or ENOSPC (disk full), once or from then on: **{total} runs, "
              f"{fails['wrong']} wrong** ({fails['seconds'] / 60:.1f} minutes). Some failures are survived (a folder that "
              "cannot be synced after all is done, a daily backup); all others are told.", ""]
    lines += table(fails, "ended with an error told") + [""]

    oom = faults(options.bin, "memory", memory, "--every", options.memory_every)
    total = sum(w["runs"] for w in oom["works"])
    bad += oom["wrong"]
    lines += ["## The n-th allocation fails", "",
              f"Every {options.memory_every}th allocation in turn gives nothing: **{total} runs, {oom['wrong']} wrong** "
              f"({oom['seconds'] / 60:.1f} minutes), {sum(w['crashes'] for w in oom['works'])} ended by a signal.", ""]

    result, seconds = run([options.bin / "tests/test_records", "--gtest_filter=Merge.*"],
                          {"PLUMBMARK_MERGE_SCHEDULES": str(options.schedules)})
    passed = result.returncode == 0
    bad += not passed
    lines += ["## Merging", "",
              f"{options.schedules:,} random schedules of 2 to 4 devices with skewed clocks, partial and repeated exchange: "
              f"**{'all end in the same place with nothing lost' if passed else 'FAILED'}** ({seconds / 60:.1f} minutes).", ""]

    result, seconds = run([options.bin / "tests/test_lessonfile", "--gtest_filter=-Crc32*"])
    names = re.findall(r"\[       OK \] (\S+)", result.stdout)
    bad += result.returncode != 0
    lines += ["## The lesson file", "",
              f"{len(names)} tests, {'all passed' if result.returncode == 0 else 'FAILED'} ({seconds:.0f} s), among them: every "
              "single bit of a small file flipped is found; every truncation and addition; tricks (foreign paths, links, "
              "overlaps, doubles, bombs, encryption, wrong sizes) are refused and nothing is written; other readers (Info-ZIP, "
              "libzip, Python, `tests/verify_lesson.py`) agree.", ""]

    fuzzed = options.sanitized or options.bin
    totals, ran, wrong = {}, 0.0, 0
    result, seconds = run([fuzzed / "tests/reliability/reliability_fuzz", options.fuzz_minutes * 60, time.time_ns() % 2**32], memory)
    if result.stdout.strip():
        totals = json.loads(result.stdout)
        wrong = totals.pop("wrong")
    crashed = result.returncode != 0
    bad += crashed
    ran = seconds / 60
    lines += ["## Damaged input", "",
              f"Random changes of good input{' under address and undefined-behaviour sanitizers' if options.sanitized else ''}, "
              f"{ran:.1f} minutes: " + ", ".join(f"{v:,} {k.replace('_', ' ')}" for k, v in totals.items()) +
              f". **{'No crash, no report' if not crashed else 'FAILED'}, {wrong} read as something they are not.** This is a "
              "simple mutator, not guided by coverage; no coverage was measured.", ""]
    lines += ["## Not shown here", "",
              "- Power cuts: calls that were not synced are not dropped or reordered.",
              "- Other devices than this one; other file systems than its own.", ""]
    for answer in (kills, fails, oom):
        for sentence in answer["told"][:20]:
            print(sentence, file=sys.stderr)
    if options.write:
        options.write.write_text("\n".join(lines))
    else:
        print("\n".join(lines))
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
