#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""The long proofs, and docs/reliability.md from what was really run.

    tests/reliability/reliability.py --bin build/release                        all sections, as long as it takes
    tests/reliability/reliability.py --bin build/release --run kills --minutes 30     one section, at most so long
    tests/reliability/reliability.py --page                                     only the page, from the kept results

Each section's result is kept in tests/reliability/results.json with its day, the version of the program and the time
it took; running a section replaces its result and leaves the others alone. docs/reliability.md is written from these
results and from nothing else.

--bin: a build folder with tests (no sanitizers, for speed). --sanitized: one with address and undefined-behaviour
sanitizers, for "damaged". --guided: one made with clang, for "guided":

    cmake -S . -B build/guided -G Ninja -DCMAKE_C_COMPILER=clang -DCMAKE_CXX_COMPILER=clang++ -DPLUMBMARK_APP=OFF \\
        -DPLUMBMARK_GUIDED=ON -DCMAKE_BUILD_TYPE=RelWithDebInfo -DCMAKE_CXX_FLAGS="-fsanitize=fuzzer-no-link,address,undefined \\
        -fno-sanitize-recover=undefined -fprofile-instr-generate -fcoverage-mapping"
    ninja -C build/guided reliability_guided

What the fuzzer finds worth keeping is written to --corpus; what stands in tests/reliability/corpus is a small choice of
it that every test run reads again.
"""
import argparse
import datetime
import json
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import time

HERE = pathlib.Path(__file__).resolve().parent
SOURCE = HERE.parent.parent
RESULTS = HERE / "results.json"
PAGE = SOURCE / "docs" / "reliability.md"
MEMORY = {"TMPDIR": "/dev/shm"} if pathlib.Path("/dev/shm").is_dir() else {}
TARGETS = ("record", "row", "ticket", "playbook", "clip", "file", "inside")


def run(command, environment=None, limit=None):
    began = time.monotonic()
    result = subprocess.run(list(map(str, command)), capture_output=True, text=True, timeout=limit,
                            env={**os.environ, **(environment or {})})
    return result, time.monotonic() - began


def faults(options, mode, every=1, times=1):
    """Several programs side by side: of kills each does its share of the rounds, of failures each its share of the
    calls."""
    program = options.bin / "tests/reliability/reliability_faults"
    jobs = max(1, min(options.jobs, times) if mode == "kill" else options.jobs)
    started = []
    for job in range(jobs):
        share = (["--times", times // jobs + (1 if job < times % jobs else 0)] if mode == "kill"
                 else ["--every", every * jobs, "--from", 1 + job * every])
        command = [program, mode, "--json", "--minutes", options.minutes, *share]
        started.append(subprocess.Popen(list(map(str, command)), stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True,
                                        env={**os.environ, **MEMORY}))
    answer = None
    for process in started:
        out, err = process.communicate()
        if not out.strip():
            sys.exit(f"reliability_faults {mode}: {err}")
        for sentence in err.strip().splitlines()[:20]:
            print(sentence, file=sys.stderr)
        part = json.loads(out)
        if answer is None:
            answer = part
            continue
        answer["wrong"] += part["wrong"]
        for row, more in zip(answer["works"], part["works"]):
            row["calls"] = max(row["calls"], more["calls"])
            row["rounds"] = row["rounds"] + more["rounds"] if mode == "kill" else min(row["rounds"], more["rounds"])
            for key in ("runs", "reported", "crashes"):
                row[key] += more[key]
    answer["every"] = every
    answer["passed"] = answer["wrong"] == 0
    return answer


# The sections: each gives what is kept -------------------------------------------------------------------------------

def kills(options):
    return {**faults(options, "kill", times=options.times), "asked": options.times}


def moments(options):
    """SIGKILL from outside at random moments of a long writing."""
    result, _ = run([options.bin / "tests/test_store", "--gtest_filter=Kill.*"],
                    {**MEMORY, "PLUMBMARK_KILLS": str(options.kills)})
    return {"kills": options.kills, "passed": result.returncode == 0}


def fails(options):
    return faults(options, "fail", every=options.every)


def memory(options):
    return faults(options, "memory", every=options.memory_every)


def merging(options):
    result, _ = run([options.bin / "tests/test_records", "--gtest_filter=Merge.*"],
                    {"PLUMBMARK_MERGE_SCHEDULES": str(options.schedules)})
    return {"schedules": options.schedules, "passed": result.returncode == 0}


def lessonfile(options):
    result, _ = run([options.bin / "tests/test_lessonfile", "--gtest_filter=-Crc32*"])
    return {"tests": len(re.findall(r"\[       OK \] \S+", result.stdout)), "passed": result.returncode == 0}


def tricks(options):
    result, _ = run([HERE / "tricks.py", options.bin / "plumbmark", "--json"], MEMORY)
    return {**json.loads(result.stdout), "passed": result.returncode == 0}


def network(options):
    """Rounds of sending between network namespaces, each with random cuts."""
    rounds, end, total = 0, time.monotonic() + (options.minutes or 10) * 60, {}
    reason = ""
    while time.monotonic() < end and rounds < options.rounds and not reason:
        result, _ = run([HERE / "network_test.py", options.bin / "plumbmark", 6, 600000, "--json"])
        if result.returncode != 0:
            reason = (result.stdout + result.stderr).strip().splitlines()[-1]
            break
        for key, value in json.loads(result.stdout).items():
            total[key] = total.get(key, 0) + value
        rounds += 1
    return {"rounds": rounds, "passed": rounds > 0 and not reason, "reason": reason, **total}


def damaged(options):
    folder = options.sanitized or options.bin
    result, _ = run([folder / "tests/reliability/reliability_fuzz", (options.minutes or 10) * 60, time.time_ns() % 2**32],
                    MEMORY)
    totals = json.loads(result.stdout) if result.stdout.strip() else {"wrong": 0}
    return {"passed": result.returncode == 0, "sanitized": options.sanitized is not None, **totals}


def guided(options):
    """libFuzzer on every reader of foreign bytes, the same time for each; then what of our code it reached."""
    if options.guided is None:
        sys.exit("guided: name the build folder made with clang (--guided)")
    program = options.guided / "tests/reliability/reliability_guided"
    corpus = options.corpus or options.guided / "corpus"
    seconds = max(10, int((options.minutes or 70) * 60 / len(TARGETS)))
    rows = []
    for target in TARGETS:
        own = corpus / target
        own.mkdir(parents=True, exist_ok=True)
        given = HERE / "corpus" / target
        profile = options.guided / f"{target}.profraw"
        longest = {"clip": 65536, "file": 16384}.get(target, 4096)
        began = time.monotonic()
        result, _ = run([program, f"-max_total_time={seconds}", f"-max_len={longest}", "-timeout=20", "-rss_limit_mb=2048",
                         "-print_final_stats=1", f"-artifact_prefix={corpus}/{target}-", own, *([given] if given.is_dir() else [])],
                        {"PLUMBMARK_FUZZ": target, "LLVM_PROFILE_FILE": str(profile), "ASAN_OPTIONS": "allocator_may_return_null=1"})
        took = time.monotonic() - began
        executed = re.search(r"stat::number_of_executed_units:\s*(\d+)", result.stderr)
        edges = re.findall(r"cov: (\d+)", result.stderr)
        crashed = result.returncode != 0
        if crashed:
            print(result.stderr[-3000:], file=sys.stderr)
        rows.append({"target": target, "seconds": round(took), "inputs": int(executed[1]) if executed else 0,
                     "edges": int(edges[-1]) if edges else 0, "kept": len(list(own.iterdir())), "crashed": crashed,
                     "lines": reached(options, program, target, own, given)})
    return {"targets": rows, "passed": not any(row["crashed"] for row in rows)}


READERS = {"record": ["core/records/fact.cpp", "core/records/value.cpp"],
           "row": ["core/records/kinds.cpp", "core/records/coaching_kinds.cpp", "core/records/review.cpp",
                   "core/records/consent.cpp"],
           "ticket": ["core/transfer/direct.cpp"], "playbook": ["core/coaching/playbook.cpp"],
           "clip": ["core/video/detail/demuxer.cpp", "core/video/detail/track_index.cpp", "core/video/detail/timing.cpp"],
           "file": ["core/lessonfile/detail/zip.cpp"], "inside": ["core/lessonfile/lessonfile.cpp"]}


def reached(options, program, target, *corpora):
    """Share of the lines of the readers that the corpus reaches, by clang's own source coverage."""
    with tempfile.TemporaryDirectory() as folder:
        raw, data = pathlib.Path(folder) / "raw", pathlib.Path(folder) / "data"
        # Each input once, nothing invented: what the kept corpus reaches.
        run([program, "-runs=0", *(c for c in corpora if c.is_dir())],
            {"PLUMBMARK_FUZZ": target, "LLVM_PROFILE_FILE": str(raw), "ASAN_OPTIONS": "detect_leaks=0"})
        profdata = next((p for p in ("llvm-profdata", "llvm-profdata-14") if shutil.which(p)), None)
        cov = next((p for p in ("llvm-cov", "llvm-cov-14") if shutil.which(p)), None)
        if not raw.exists() or profdata is None or cov is None:
            return {}
        run([profdata, "merge", "-sparse", raw, "-o", data])
        files = [SOURCE / name for name in READERS[target]]
        result, _ = run([cov, "export", "-summary-only", f"-instr-profile={data}", program, *files])
        if not result.stdout.strip():
            return {}
        answer = {}
        for file in json.loads(result.stdout)["data"][0]["files"]:
            name = str(pathlib.Path(file["filename"]).resolve())
            for wanted in READERS[target]:
                if name.endswith(wanted):
                    answer[wanted] = round(file["summary"]["lines"]["percent"])
        return answer


# The page -------------------------------------------------------------------------------------------------------------

def table(answer, last, key):
    rows = [f"| work | calls that change the disk | runs | {last} |", "| --- | --- | --- | --- |"]
    return rows + [f"| {w['work']} | {w['calls'] or 'more than were reached'} | {w['runs']} | {w[key]} |" for w in answer["works"]]


def total(answer):
    return sum(work["runs"] for work in answer["works"])


def when(answer):
    return f"{answer['day']}, {answer['version']}, {answer['took'] / 60:.1f} minutes"


def say_kills(a):
    least = min(work["rounds"] for work in a["works"])
    return ["## Killed at every step", "",
            "SIGKILL just before each system call that changes the disk (open for writing, write, sync, rename, link, unlink, "
            f"truncate, mkdir; also SQLite's own): **{total(a):,} kills, {a['wrong']} wrong**; every step of every work was hit "
            f"at least {'once' if least == 1 else f'{least} times'} ({when(a)}). After each: the library opens, integrity, foreign keys, records, lists and "
            "films check clean; what was acknowledged is there; the work is there whole or not at all; done again it goes "
            "through. The files lie in memory: this is about killed programs, not about power cuts.", "",
            *table(a, "ended by another signal", "crashes"), ""]


def say_moments(a):
    return ["## Killed at random moments", "",
            f"{a['kills']:,} SIGKILLs from outside while records are written one after the other: "
            f"**{'nothing acknowledged was lost, nothing was half there' if a['passed'] else 'FAILED'}** ({when(a)}).", ""]


def say_fails(a):
    which = "Each" if a["every"] == 1 else f"Every {a['every']}th"
    complete = all(work["rounds"] == 4 for work in a["works"])
    return ["## The n-th call fails", "",
            f"{which} of these calls in turn gives EIO or ENOSPC (disk full), once or from then on: **{total(a):,} runs, "
            f"{a['wrong']} wrong** ({when(a)}){'' if complete else '; the time ended before all of them were done'}. Some "
            "failures are survived (a folder that cannot be synced after all is done, a daily backup); all others are told.",
            "", *table(a, "ended with an error told", "reported"), ""]


def say_memory(a):
    complete = all(work["rounds"] == 2 for work in a["works"])
    which = "Each" if a["every"] == 1 else f"Every {a['every']}th"
    return ["## The n-th allocation fails", "",
            f"{which} allocation in turn gives nothing, once or from then on, in the same eight works ({sum(w['calls'] for w in a['works']):,} "
            f"allocations): **{total(a):,} runs, {a['wrong']} wrong**, {sum(w['crashes'] for w in a['works'])} ended by a signal ({when(a)})"
            f"{'' if complete else '; the time ended before all of them were done'}. Each must come out as an error value (nothing thrown), "
            "never be taken for damage, leave nothing unfinished behind, and what was acknowledged must be there.", ""]


def say_merging(a):
    return ["## Merging", "",
            f"{a['schedules']:,} random schedules of 2 to 4 devices with skewed clocks, partial and repeated exchange: "
            f"**{'all end in the same place with nothing lost' if a['passed'] else 'FAILED'}** ({when(a)}).", ""]


def say_lessonfile(a):
    return ["## The lesson file", "",
            f"{a['tests']} tests, {'all passed' if a['passed'] else 'FAILED'} ({when(a)}), among them: every single bit of a small "
            "file flipped is found; every truncation and addition; tricks (foreign paths, links, overlaps, doubles, bombs, "
            "encryption, wrong sizes) are refused and nothing is written; other readers (Info-ZIP, libzip, Python, "
            "`tests/verify_lesson.py`) agree.", ""]


def say_tricks(a):
    return ["## Archive bombs and path tricks", "",
            f"{a['tricks']} archives (compressed gigabytes, archives in archives, thousands of names for the same bytes, lying sizes, paths out of "
            f"the folder, links, names of our own files ...), made by `tests/reliability/tricks.py` without the program's own writer: **{a['wrong']} "
            f"did anything but being refused with a sentence**; at most {a['most_cpu']:.2f} s of CPU and {a['most_megabytes']} MB of memory each, start of the "
            f"program and a fresh library included ({when(a)}).", ""]


def say_network(a):
    if not a["rounds"]:
        return ["## From device to device", "", f"Not run: {a['reason']} ({when(a)}).", ""]
    return ["## From device to device", "",
            f"Two programs in two network namespaces, a bridge between them on which every packet is captured, a stranger on the "
            f"same net: **{a['rounds']} lessons sent, {'all arrived whole' if a['passed'] else 'FAILED: ' + a['reason']}** ({when(a)}), over "
            f"{a['line_cuts']} cuts of the line and {a['receiver_kills']} SIGKILLs of the receiver. In {a['captured_bytes']:,} captured bytes of "
            f"payload there were {a['readable_words']} readable words of the lesson and {a['film_pieces_found']} of some 2,000 looked-for "
            "pieces of each film. The stranger without the key got nothing; wrong keys ended each sending, and the right key did not "
            "open it afterwards. Before the person starts and after the sending no packet passes and no port is open.", ""]


def say_damaged(a):
    counts = ", ".join(f"{a[key]:,} {key.replace('_', ' ')}" for key in ("records", "tickets", "lesson_files", "sealed_files") if key in a)
    return ["## Damaged input, changed at random", "",
            f"Random changes of good input{' under address and undefined-behaviour sanitizers' if a['sanitized'] else ''}: {counts} "
            f"({when(a)}). **{'No crash, no report' if a['passed'] else 'FAILED'}, {a['wrong']} read as something they are not.**", ""]


def say_guided(a):
    lines = ["## Damaged input, guided by coverage", "",
             "clang's libFuzzer under address and undefined-behaviour sanitizers on every reader of foreign bytes; `inside` puts "
             "manifest and records into an archive whose hashes fit, `row` gives a record of the library to the readers of all kinds, "
             f"`clip` opens a film and decodes its last frame: **{'no crash, no report' if a['passed'] else 'CRASHES'}** ({when(a)}). "
             "Lines reached are those of our own readers, by clang's source coverage over the kept inputs; FFmpeg's own code is not counted.",
             "", "| reader | minutes | inputs | edges | lines reached |", "| --- | --- | --- | --- | --- |"]
    for row in a["targets"]:
        reached_ = ", ".join(f"`{name.split('core/')[1]}` {share} %" for name, share in row["lines"].items()) or "not measured"
        lines.append(f"| {row['target']} | {row['seconds'] / 60:.1f} | {row['inputs']:,} | {row['edges']:,} | {reached_} |")
    return lines + [""]


SECTIONS = {"kills": (kills, say_kills), "moments": (moments, say_moments), "fails": (fails, say_fails),
            "memory": (memory, say_memory), "merging": (merging, say_merging), "lessonfile": (lessonfile, say_lessonfile), "tricks": (tricks, say_tricks),
            "network": (network, say_network), "damaged": (damaged, say_damaged), "guided": (guided, say_guided)}


def write_page(results):
    lines = ["# Reliability: what was run", "",
             "Written by `tests/reliability/reliability.py` from `tests/reliability/results.json` alone; each section tells the day, "
             "the version and the time of its run. Short forms of all of it but the guided fuzzing run in CI. What is promised stands "
             "in [library.md](library.md) and [lesson-file.md](lesson-file.md).", ""]
    for name, (_, say) in SECTIONS.items():
        if name in results:
            lines += say(results[name])
    lines += (HERE / "remarks.md").read_text().splitlines() if (HERE / "remarks.md").exists() else []
    PAGE.write_text("\n".join(lines).rstrip() + "\n")


def version():
    result = subprocess.run(["git", "-C", str(SOURCE), "rev-parse", "--short", "HEAD"], capture_output=True, text=True)
    return f"version {result.stdout.strip()}" if result.returncode == 0 else "version unknown"


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--bin", type=pathlib.Path)
    parser.add_argument("--sanitized", type=pathlib.Path)
    parser.add_argument("--guided", type=pathlib.Path)
    parser.add_argument("--corpus", type=pathlib.Path)
    parser.add_argument("--run", nargs="*", choices=list(SECTIONS), default=None, help="without it: all")
    parser.add_argument("--page", action="store_true", help="write the page from the kept results, run nothing")
    parser.add_argument("--minutes", type=float, default=0, help="a section ends then and tells what was done; 0: no limit")
    parser.add_argument("--times", type=int, default=20, help="how often each step of each work is hit")
    parser.add_argument("--jobs", type=int, default=2, help="programs side by side in kills, fails and memory")
    parser.add_argument("--kills", type=int, default=10_000, help="kills at random moments")
    parser.add_argument("--every", type=int, default=1, help="every n-th call fails in turn")
    parser.add_argument("--memory-every", type=int, default=11, help="every n-th allocation fails in turn")
    parser.add_argument("--schedules", type=int, default=1_000_000)
    parser.add_argument("--rounds", type=int, default=50, help="lessons sent from device to device")
    options = parser.parse_args()
    results = json.loads(RESULTS.read_text()) if RESULTS.exists() else {}
    good = True
    if not options.page:
        if options.bin is None:
            parser.error("name a build folder (--bin)")
        names = options.run or [n for n in SECTIONS if n != "guided" or options.guided]
        for name in names:
            began = time.monotonic()
            answer = SECTIONS[name][0](options)
            answer.update(day=str(datetime.date.today()), version=version(), took=round(time.monotonic() - began))
            # Another section may have ended meanwhile.
            results = json.loads(RESULTS.read_text()) if RESULTS.exists() else {}
            results[name] = answer
            RESULTS.write_text(json.dumps(results, indent=1, sort_keys=True) + "\n")
            good = good and answer["passed"]
            print(f"{name}: {'passed' if answer['passed'] else 'FAILED'}, {answer['took']} s", flush=True)
    write_page(results)
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
