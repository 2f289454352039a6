#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""Runs the finished program and looks at what anybody can see: exit code, terminal, files.

Usage: cli_test.py PROGRAM SOURCE_DIR GROUP
Exit codes: 0 done, 1 a failure of the program or the machine, 2 something given can't be used.
"""
import json
import os
import pathlib
import shutil
import signal
import subprocess
import sys
import tempfile
import time
import unittest

import jsonschema  # outside check: Debian package python3-jsonschema

PROGRAM = pathlib.Path(sys.argv[1]).resolve()
SOURCE = pathlib.Path(sys.argv[2]).resolve()
GROUP = sys.argv[3]
SWING = ["--view", "face-on", "--hand", "right"]
FFMPEG = ["ffmpeg", "-v", "error", "-y"]


def ffmpeg(*arguments):
    subprocess.run([*FFMPEG, *map(str, arguments)], check=True)


class Case(unittest.TestCase):
    def setUp(self):
        self.folder = pathlib.Path(tempfile.mkdtemp(prefix="plumbmark-cli-"))
        self.addCleanup(shutil.rmtree, self.folder, ignore_errors=True)
        self.out = self.folder / "out"
        self.out.mkdir()
        home = self.folder / "home"
        home.mkdir()
        # Nothing of the tester's own machine: no library, no pose network, no display, one locale.
        self.environment = {"PATH": os.environ["PATH"], "HOME": str(home), "LC_ALL": "C.UTF-8"}
        for name in ("ASAN_OPTIONS", "UBSAN_OPTIONS", "LSAN_OPTIONS"):
            if name in os.environ:
                self.environment[name] = os.environ[name]

    def run_program(self, *arguments, **more):
        return subprocess.run([str(PROGRAM), *map(os.fspath, arguments)], env=self.environment, capture_output=True,
                              timeout=300, **more)

    def refused(self, *arguments, code=2, says=""):
        """One plain sentence on the error output, nothing on the other, nothing left in the output folder."""
        before = sorted(self.out.rglob("*"))
        result = self.run_program(*arguments)
        error = result.stderr.decode("utf-8", "replace")
        what = f"{arguments}: {result.returncode} {error!r}"
        self.assertEqual(result.returncode, code, what)
        self.assertEqual(result.stdout, b"", what)
        self.assertTrue(error.startswith("plumbmark: ") and error.endswith((".\n", "?\n")), what)
        self.assertEqual(error.count("\n"), 1, what)
        self.assertIn(says, error, what)
        for word in ("exception", "Traceback", "errno", "std::", "terminate", "Assertion", "AVERROR"):
            self.assertNotIn(word, error, what)
        self.assertEqual(sorted(self.out.rglob("*")), before, "something was left behind")
        return error

    def done(self, *arguments, **more):
        result = self.run_program(*arguments, **more)
        self.assertEqual(result.returncode, 0, f"{arguments}: {result.stderr.decode('utf-8', 'replace')}")
        return result.stdout.decode()

    def clip(self, name="clip.mp4", size="320x240", seconds=1, rate=30, *more):
        path = self.folder / name
        ffmpeg("-f", "lavfi", "-i", f"testsrc=size={size}:rate={rate}:duration={seconds}", "-pix_fmt", "yuv420p",
               "-preset", "ultrafast", *more, path)
        return path

    def valid(self, text):
        answer = json.loads(text, parse_constant=lambda c: self.fail(f"{c} is no JSON number"))
        schema = json.loads((SOURCE / "docs" / "measure.schema.json").read_text())
        jsonschema.Draft202012Validator.check_schema(schema)
        jsonschema.Draft202012Validator(schema).validate(answer)
        return answer


class Arguments(Case):
    def test_help_and_version(self):
        self.assertRegex(self.done("--version"), r"^plumbmark \d+\.\d+\.\d+\n$")
        general = self.done("--help")
        for command in ("measure", "compare", "explain", "plan", "demo", "lesson list", "lesson show", "lesson export", "lesson import",
                        "lesson merge", "lesson cover", "lesson verify", "play", "consent", "backup", "restore", "check", "sync", "settle", "tidy", "send",
                        "receive",
                        "review inbox", "review note", "review record", "review render", "review request", "review sheet",
                        "review tables"):
            self.assertIn(command, general)
            text = self.done(*command.split(), "--help")
            self.assertIn("Examples", text)
            self.assertIn(f"plumbmark {command}", text)
        self.assertIn("Examples", general)
        for option in ("--view", "--hand", "--club", "--shot", "--stature", "--distance", "--roll", "--plumb",
                       "--capture-fps", "--mirrored", "--marks", "--swing", "--json", "--sheet", "--landmarks"):
            self.assertIn(option, self.done("measure", "--help"))

    def test_without_a_command_it_tells_how(self):
        result = self.run_program()
        self.assertEqual(result.returncode, 2)
        self.assertIn(b"plumbmark measure", result.stderr)

    def test_wrong_words_are_told_in_one_sentence(self):
        clip = self.clip()
        measure = ["measure", clip, *SWING]
        self.refused("mesure", says="mesure")
        self.refused("lesson", says="list")
        self.refused("lesson", "burn", says="list")
        self.refused("measure", says="CLIP")
        self.refused("measure", clip, says="--view")
        self.refused("measure", clip, "--view", "face-on", says="--hand")
        self.refused("measure", clip, "--view", "behind", "--hand", "right", says="down-the-line")
        self.refused("measure", clip, "--view", "face-on", "--hand", "both", says="both")
        self.refused("measure", clip, "--view", "--hand", "right", says="--view needs a value")
        self.refused(*measure, "--jsn", "x", says="Did you mean --json?")
        self.refused(*measure, "--swing", "0", says="--swing")
        self.refused(*measure, "--swing", "1.5", says="whole number")
        self.refused(*measure, "--swing", "1", says="No swing")
        self.refused(*measure, "--hand", "left", says="twice")
        self.refused(*measure, "--mirrored=yes", says="switch")
        self.refused(*measure, "again.mp4", says="too many")
        for club in ("stick", "iron-0", "iron-x", "wedge-", "-7", "iron 7"):
            self.refused(*measure, f"--club={club}", says="iron-7")
        self.refused(*measure, "--shot", "drive", says="bunker")
        for option, values in {
            "--stature": ("49", "251", "x", "nan", "inf", "1e999", "178cm", "1,78", ""),
            "--distance": ("0.4", "51", "-4"),
            "--roll": ("46", "-46", "0x1p1"),
            "--capture-fps": ("0", "-240", "10001", "fast"),
        }.items():
            for value in values:
                self.refused(*measure, f"{option}={value}", says=option)
        for plumb in ("1,2,3", "1,2,3,4,5", "1,2,3,x", "10,10,12,12", "10,100,300,110", "1,1,1,100000"):
            self.refused(*measure, "--plumb", plumb, says="--plumb")
        self.refused(*measure, "--plumb", "100,10,100,200", "--roll", "1", says="--roll and --plumb")
        self.refused(*measure, "--landmarks", says="--json")
        self.refused(*measure, "--sheet", self.out / "sheet.gif", says=".png")

    def test_a_terminal_is_never_sent_what_others_typed(self):
        for name in (b"no\x1b[2J\x07such.mp4", b"no-\xff\xfe.mp4", b"a\nb.mp4"):
            result = self.run_program("measure", name, *SWING)
            self.assertEqual(result.returncode, 2)
            self.assertNotIn(b"\x1b", result.stderr)
            self.assertEqual(result.stderr.count(b"\n"), 1)

    def test_play_without_a_screen_says_so(self):
        result = self.run_program("play")
        self.assertEqual(result.returncode, 2)
        self.assertEqual(result.stderr.count(b"\n"), 1, result.stderr)


class Clips(Case):
    def measure(self, path, **more):
        return self.refused("measure", path, *SWING, "--json", self.out / "m.json", **more)

    def test_what_is_no_clip(self):
        self.measure(self.folder / "missing.mp4")
        self.measure(self.folder)
        empty = self.folder / "empty.mp4"
        empty.touch()
        self.measure(empty)
        text = self.folder / "text.mp4"
        text.write_text("This is no film.\n" * 100)
        self.measure(text)
        noise = self.folder / "noise.mp4"
        noise.write_bytes(os.urandom(100_000))
        self.measure(noise)
        picture = self.folder / "song.m4a"
        ffmpeg("-f", "lavfi", "-i", "sine=duration=1", picture)
        self.measure(picture)
        self.measure("/dev/null")

    def test_truncated_beyond_use(self):
        whole = self.clip().read_bytes()  # ffmpeg writes the index last: cutting loses it
        for share in (0.01, 0.5, 0.95):
            cut = self.folder / "cut.mp4"
            cut.write_bytes(whole[: int(len(whole) * share)])
            self.measure(cut)

    def test_truncated_with_its_index_gives_what_is_there_and_warns(self):
        whole = self.clip("front.mp4", "320x240", 2, 30, "-movflags", "+faststart", "-g", "10").read_bytes()
        cut = self.folder / "cut.mp4"
        cut.write_bytes(whole[: int(len(whole) * 0.7)])
        answer = self.valid(self.done("measure", cut, *SWING, "--json", "-"))
        self.assertLess(answer["clip"]["frames"], 60)
        self.assertGreater(answer["clip"]["frames"], 10)
        self.assertTrue(answer["warnings"])

    def test_huge_dimensions(self):
        self.measure(self.clip("wide.mp4", "9000x64", 0.1))
        # A header that claims more than any memory holds, in a film that is small (both places where MP4 says it).
        lie = bytearray(self.clip("lie.mp4", "320x240", 0.1).read_bytes())
        at = lie.find(b"avc1")
        lie[at + 28 : at + 32] = b"\xff\xff\xff\xff"
        claim = self.folder / "claim.mp4"
        claim.write_bytes(lie)
        result = self.run_program("measure", claim, *SWING, "--json", self.out / "m.json")
        self.assertIn(result.returncode, (0, 2), result.stderr)

    def test_unreadable(self):
        # Reading this file fails for everybody, root too, with an input/output error.
        self.measure("/proc/self/mem")
        if os.geteuid() != 0:
            clip = self.clip()
            clip.chmod(0)
            self.measure(clip)

    def test_a_single_frame_is_a_clip_of_which_little_can_be_told(self):
        one = self.clip("one.mp4", "320x240", 1, 30, "-frames:v", "1")
        answer = self.valid(self.done("measure", one, *SWING, "--json", "-"))
        self.assertEqual(answer["clip"]["frames"], 1)


class Outputs(Case):
    def test_places_that_cannot_be_written_are_found_first(self):
        clip = self.clip("long.mp4", "640x360", 60)
        began = time.monotonic()
        for json_path in (self.out / "no" / "m.json", self.out, "/proc/m.json", clip, self.out / ("n" * 300)):
            self.refused("measure", clip, *SWING, "--json", json_path)
        whole = clip.stat().st_size
        self.assertGreater(whole, 0)
        # Not one of the five may have measured a minute of film. (A bound on order, not on speed.)
        self.assertLess(time.monotonic() - began, 120)

    def test_the_two_outputs_must_differ(self):
        error = self.run_program("measure", self.clip(), *SWING, "--json", self.out / "a.png", "--sheet",
                                 self.out / "a.png")
        self.assertEqual(error.returncode, 2)
        self.assertEqual(list(self.out.iterdir()), [])

    def test_an_old_answer_is_replaced_whole(self):
        path = self.out / "m.json"
        path.write_text("x" * 1_000_000)
        self.done("measure", self.clip(), *SWING, "--json", path)
        self.valid(path.read_text())
        self.assertEqual(list(self.out.iterdir()), [path])

    def test_a_full_disk_is_a_failure_and_not_an_input_error(self):
        clip = self.clip()
        self.refused("measure", clip, *SWING, "--json", "/dev/full", code=1)
        with open("/dev/full", "wb") as full:
            result = subprocess.run([str(PROGRAM), "measure", str(clip), *SWING, "--json", "-"], stdout=full,
                                    stderr=subprocess.PIPE, env=self.environment, timeout=300)
        self.assertEqual(result.returncode, 1)

    def test_stopping_leaves_nothing(self):
        clip = self.clip("long.mp4", "1280x720", 120)
        for how in (signal.SIGINT, signal.SIGTERM):
            process = subprocess.Popen([str(PROGRAM), "measure", str(clip), *SWING, "--json", str(self.out / "m.json")],
                                       stdout=subprocess.PIPE, stderr=subprocess.PIPE, env=self.environment)
            time.sleep(1.5)
            self.assertIsNone(process.poll(), "over before it could be stopped")
            process.send_signal(how)
            _, error = process.communicate(timeout=60)
            self.assertNotEqual(process.returncode, 0)
            self.assertEqual(list(self.out.iterdir()), [])
            if process.returncode > 0:  # not ended by the signal itself
                self.assertEqual(error, b"plumbmark: Stopped before the end; nothing was written.\n")

    def test_a_sheet_is_drawn_where_there_is_a_painter(self):
        clip = self.clip()
        for name, magic in (("sheet.png", b"\x89PNG\r\n\x1a\n"), ("sheet.pdf", b"%PDF-")):
            path = self.out / name
            result = self.run_program("measure", clip, *SWING, "--sheet", path)
            if b"no painter" in result.stderr:
                self.assertEqual(result.returncode, 2)
                self.assertEqual(list(self.out.iterdir()), [])
                continue
            self.assertEqual(result.returncode, 0, result.stderr)
            self.assertTrue(path.read_bytes().startswith(magic))
            self.assertEqual(result.stderr, b"", "Qt must not talk to the person")


class Marks(Case):
    NAMES = ["lead_ankle", "trail_ankle"]

    def form(self, points, at=0.5, names=None):
        path = self.folder / "marks.json"
        path.write_text(json.dumps({"names": names or self.NAMES, "frames": [{"time_s": at, "points": points}]}))
        return path

    def test_bad_files(self):
        clip = self.clip()

        def bad(path, says):
            self.refused("measure", clip, *SWING, "--json", self.out / "m.json", "--marks", path, says=says)

        bad(self.folder / "none.json", "no file")
        bad(self.folder, "folder")
        broken = self.folder / "broken.json"
        broken.write_text('{"names": [\n')
        bad(broken, "not JSON")
        broken.write_text("")
        bad(broken, "not JSON")
        broken.write_bytes(clip.read_bytes())
        bad(broken, "not JSON")
        bad(self.form([[1, 2, 1, "hand"], None], names=["left_ankle", "ball"]), "left_ankle")
        bad(self.form([[1, 2, 1, "hand"]]), "1 points for 2 names")
        bad(self.form([[1, 2, -1, "hand"], None]), "sigma")
        bad(self.form([[1, 2, 1, "guess"], None]), "guess")
        bad(self.form([[1, "2"], None]), "two numbers")
        bad(self.form([[1, 2], None], at=77), "77")
        bad(self.form([[1, 99999], None]), "outside")
        self.refused("measure", clip, *SWING, "--json", self.form([None, None]), "--marks", self.folder / "marks.json",
                     says="overwrite")

    def test_hand_marks_come_back_where_they_were_put(self):
        marks = self.form([[200.5, 180.25, 1.5, "hand"], [100, 181]])
        answer = self.valid(self.done("measure", self.clip(), *SWING, "--marks", marks, "--json", "-", "--landmarks"))
        frames = answer["landmarks"]["frames"]
        self.assertEqual(len(frames), answer["clip"]["frames"])
        column = {name: i for i, name in enumerate(answer["landmarks"]["names"])}
        frame = min(frames, key=lambda f: abs(f["time_s"] - 0.5))
        self.assertEqual(frame["points"][column["lead_ankle"]], [200.5, 180.25, 1.5, "hand"])
        self.assertEqual(frame["points"][column["trail_ankle"]][:2], [100, 181])
        self.assertEqual(frame["points"][column["trail_ankle"]][3], "hand")
        for f in frames:
            self.assertEqual(len(f["points"]), len(column))

        # The written answer is itself a marks file: its hand marks go in again and come out the same.
        again = self.folder / "again.json"
        again.write_text(json.dumps(answer["landmarks"]))
        second = self.valid(self.done("measure", self.clip(), *SWING, "--marks", again, "--json", "-", "--landmarks"))
        self.assertEqual([f["points"] for f in second["landmarks"]["frames"]], [f["points"] for f in frames])


class Answers(Case):
    def test_json_and_table(self):
        clip = self.clip("turned.mp4", "320x240", 1, 30, "-metadata:s:v", "rotate=90")
        path = self.out / "m.json"
        text = self.done("measure", clip, *SWING, "--club", "iron-7", "--stature", "178", "--json", path)
        self.assertIn("Face-on, right-handed, 7-iron, full swing", text)
        self.assertIn("Checkpoints", text)
        answer = self.valid(path.read_text())
        self.assertNotIn("landmarks", answer)
        # Outside check: ffprobe of Debian's ffmpeg counts the frames.
        probe = subprocess.run(["ffprobe", "-v", "error", "-count_frames", "-select_streams", "v", "-show_entries",
                                "stream=nb_read_frames", "-of", "csv=p=0", clip], capture_output=True, text=True,
                               check=True)
        self.assertEqual(answer["clip"]["frames"], int(probe.stdout.strip().strip(",")))
        self.assertAlmostEqual(answer["clip"]["playback_fps"], 30, places=3)
        for measurement in answer["measurements"]:
            self.assertNotEqual("value" in measurement, "reason" in measurement)

    def test_of_two_clips_the_second_has_its_own_swing(self):
        clip = self.clip()
        self.refused("compare", clip, clip, *SWING, "--other-swing", "2", says="No swing could be told apart")
        self.refused("compare", clip, clip, *SWING, "--swing", "1.5", says="whole number")

    def test_ascii_terminals_get_ascii(self):
        self.environment["LC_ALL"] = "C"
        text = self.done("measure", self.clip(), *SWING)
        self.assertTrue(text.isascii(), text)

    def test_what_is_upright_can_be_told(self):
        clip = self.clip()
        told = self.valid(self.done("measure", clip, *SWING, "--roll", "-3", "--json", "-"))["vertical"]
        self.assertEqual(told["source"], "told")
        self.assertAlmostEqual(abs(told["angle_deg"]), 3, places=6)
        plumb = self.valid(self.done("measure", clip, *SWING, "--plumb", "100,200,100,20", "--json", "-"))["vertical"]
        self.assertEqual(plumb["source"], "plumb")
        self.assertAlmostEqual(plumb["angle_deg"], 0, places=6)

    def test_the_capture_rate_stretches_real_time(self):
        clip = self.clip()
        answer = self.valid(self.done("measure", clip, *SWING, "--capture-fps", "240", "--json", "-"))
        self.assertAlmostEqual(answer["clip"]["capture_fps"], 240, places=3)

    def test_a_rendered_swing(self):
        """Needs the demo renderer: PLUMBMARK_RENDERER, set by platform/linux/test.sh."""
        renderer = os.environ.get("PLUMBMARK_RENDERER")
        if not renderer:
            self.skipTest("PLUMBMARK_RENDERER is not set: no rendered swing was measured")
        subprocess.run([renderer, "--case", "sound", "--seed", "7", "--fps", "60", "--size", "640x360", "--out",
                        str(self.folder)], check=True, capture_output=True)
        clip = next(self.folder.glob("*.mp4"))
        if network := os.environ.get("PLUMBMARK_NETWORK_DIR"):
            self.environment["PLUMBMARK_NETWORK_DIR"] = network
        answer = self.valid(self.done("measure", clip, *SWING, "--club", "iron-7", "--json", "-", "--landmarks"))
        self.assertTrue(answer["measurements"])


class Lessons(Case):
    def setUp(self):
        super().setUp()
        self.library = ["--library", self.folder / "library"]

    def test_what_cannot_be_used(self):
        self.refused("lesson", "show", "latest", *self.library, says="no lesson")
        self.refused("lesson", "show", "zzzz", *self.library, says="lesson list")
        self.refused("lesson", "show", "abcd1234", *self.library, says="abcd1234")
        self.refused("lesson", "export", "latest", self.out / "no" / "x.plumbmark", *self.library, says="folder")
        for name, content in (("missing", None), ("empty", b""), ("noise", os.urandom(5000)), ("zip", b"PK\x03\x04xx")):
            path = self.folder / f"{name}.plumbmark"
            if content is not None:
                path.write_bytes(content)
            self.refused("lesson", "verify", path)
            self.refused("lesson", "import", path, *self.library)
        self.refused("lesson", "verify", self.folder)
        self.refused("lesson", "list", "--library", "/proc/nowhere")
        self.refused("lesson", "add", self.folder / "none.mp4", *SWING, *self.library)
        self.assertIn("no lesson yet", self.done("lesson", "list", *self.library))

    def test_a_lesson_travels(self):
        clip = self.clip()
        text = self.done("lesson", "add", clip, *SWING, "--club", "wedge-56", "--shot", "pitch", "--player",
                         "Trial <b>Player</b>", *self.library)
        short = text.strip().rsplit(" ", 1)[1].rstrip(".")
        listed = self.done("lesson", "list", *self.library)
        self.assertIn(short, listed)
        self.assertIn("Trial <b>Player</b>", listed)
        shown = self.done("lesson", "show", short, *self.library)
        self.assertIn("56-degree wedge, pitch", shown)
        self.assertIn("320 x 240", shown)
        file = self.out / "lesson.plumbmark"
        # Nothing goes out without a consent to share.
        self.refused("lesson", "export", "latest", file, *self.library, says="consent")
        self.assertIn("No consent", self.done("consent", "Trial <b>Player</b>", *self.library))
        self.refused("consent", "Trial <b>Player</b>", "--scope", "everything", *self.library, says="everything")
        self.assertIn("may be shared", self.done("consent", "Trial <b>Player</b>", "--scope", "film,share", *self.library))
        self.done("lesson", "export", "latest", file, *self.library)
        self.assertEqual(list(self.out.iterdir()), [file])
        # Outside check: ffprobe finds no tag of the film's maker in what went out, and the same coded pictures.
        subprocess.run(["unzip", "-qq", file, "films/*", "-d", self.folder / "unzipped"], check=True)
        film = next((self.folder / "unzipped" / "films").iterdir())
        probe = ["ffprobe", "-v", "error", "-show_entries", "packet=data_hash", "-show_data_hash", "sha256", "-of", "csv"]
        self.assertEqual(subprocess.run([*probe, film], capture_output=True, check=True).stdout,
                         subprocess.run([*probe, clip], capture_output=True, check=True).stdout)
        self.assertIn(b"Lavf", clip.read_bytes())
        self.assertNotIn(b"Lavf", film.read_bytes())
        self.done("lesson", "verify", file)
        # Heads covered: nothing goes before a strip was looked through, and without a head there is none.
        covered = self.out / "covered.plumbmark"
        self.refused("lesson", "export", "latest", covered, "--cover-heads", *self.library, says="lesson cover")
        self.refused("lesson", "cover", "latest", *self.library, says="--strip")
        self.refused("lesson", "cover", "latest", "--release", *self.library, says="first")
        self.refused("lesson", "cover", "latest", "--strip", self.out / "strip.png", *self.library, says="head")
        self.assertIn("Nothing to settle", self.done("settle", *self.library))
        self.assertIn("Nothing is kept past its time", self.done("tidy", *self.library))
        self.refused("tidy", "--erase", "12345678", *self.library, says="names no clip")
        self.refused("settle", "12345678", *self.library, says="names no version")
        # Outside check: Info-ZIP's unzip tests every part.
        subprocess.run(["unzip", "-tqq", file], check=True)
        other = ["--library", self.folder / "other"]
        self.assertIn("new", self.done("lesson", "import", file, *other))
        again = self.done("lesson", "import", file, *other)
        self.assertIn("0 new", again)
        merged = self.done("lesson", "merge", file, file, *other)
        self.assertEqual(merged.count("0 new"), 2)
        self.refused("lesson", "merge", file, clip, *other, says="not a lesson file")
        self.refused("receive", "--picture", clip, *other, says="No code of a sending")
        self.refused("receive", *other, says="one of the two")
        self.assertIn("56-degree wedge, pitch", self.done("lesson", "show", short, *other))
        damaged = self.folder / "damaged.plumbmark"
        content = bytearray(file.read_bytes())
        content[len(content) // 2] ^= 1
        damaged.write_bytes(content)
        self.refused("lesson", "verify", damaged)
        self.refused("lesson", "import", damaged, *other)
        # A second swing goes to the same lesson.
        self.done("lesson", "add", clip, *SWING, "--lesson", "latest", *self.library)
        self.assertIn("2 shots, 2 clips", self.done("lesson", "list", *self.library))

        # Sealed: a passphrase from a file opens it, another one does not.
        right, wrong = self.folder / "right", self.folder / "wrong"
        right.write_text("bagu dola miru pesa\n")
        wrong.write_text("something else\n")
        sealed = self.folder / "sealed.plumbmark"
        self.done("lesson", "export", "latest", sealed, "--seal", "--passphrase-file", right, *self.library)
        self.assertNotIn(b"PLUMBMARK-LESSON", sealed.read_bytes())
        self.refused("lesson", "import", sealed, "--passphrase-file", wrong, *other, says="passphrase")
        self.assertIn("sender unknown", self.done("lesson", "import", sealed, "--passphrase-file", right, *other))
        self.assertIn("from Trial tablet", self.done("lesson", "import", sealed, "--passphrase-file", right,
                                                     "--remember", "Trial tablet", *other))
        self.assertIn("signed with key", self.done("lesson", "verify", sealed, "--passphrase-file", right))

        # A backup, a loss, a restore.
        self.assertIn("1 lesson", self.done("backup", *self.library))
        stick = self.folder / "stick"
        stick.mkdir()
        self.assertIn("checked", self.done("backup", stick, "--films", *self.library))
        self.refused("backup", self.folder / "nowhere", *self.library, says="folder")
        self.assertIn("All is well", self.done("check", "--films", *self.library))
        (self.folder / "library" / "library.db").write_bytes(b"not a database any more")
        self.refused("lesson", "list", *self.library, code=1, says="restore")
        self.assertIn("by hand", self.done("restore", *self.library))
        self.refused("restore", "no-such-backup", *self.library, says="no backup")
        self.assertIn("1 lesson", self.done("restore", "latest", *self.library))
        self.assertIn("2 shots, 2 clips", self.done("lesson", "list", *self.library))

        # Through a folder, and one beside the other.
        shared, third = self.folder / "shared", ["--library", self.folder / "third"]
        self.assertIn("not there now", self.done("sync", shared, *self.library))
        shared.mkdir()
        self.assertIn("Sent: 1 file", self.done("sync", shared, *self.library))
        self.assertIn("Taken in: 1 file", self.done("sync", shared, *third))
        self.assertIn("2 shots, 2 clips", self.done("lesson", "list", *third))
        fourth = ["--library", self.folder / "fourth"]
        sender = subprocess.Popen([str(PROGRAM), "send", "latest", "--address", "127.0.0.1", "--wait", "60",
                                   *map(str, self.library)], stdout=subprocess.PIPE, text=True,
                                  env=self.environment)
        ticket = sender.stdout.readline().split("plumbmark receive ")[1].strip()
        self.refused("receive", ticket[:-1], *fourth, says="ticket")
        self.assertIn("Lesson " + short, self.done("receive", ticket, *fourth))
        self.assertIn("Sent and received", sender.communicate(timeout=60)[0])
        self.assertEqual(sender.returncode, 0)
        self.assertIn("2 shots, 2 clips", self.done("lesson", "list", *fourth))

    def test_a_clip_that_fails_leaves_no_lesson(self):
        text = self.folder / "text.mp4"
        text.write_text("no film")
        self.refused("lesson", "add", text, *SWING, *self.library)
        self.assertIn("no lesson yet", self.done("lesson", "list", *self.library))


class Compare(Case):
    def setUp(self):
        super().setUp()
        self.library = ["--library", self.folder / "library"]

    def check(self, text, name="compare.schema.json"):
        answer = json.loads(text, parse_constant=lambda c: self.fail(f"{c} is no JSON number"))
        schema = json.loads((SOURCE / "docs" / name).read_text())
        jsonschema.Draft202012Validator.check_schema(schema)
        jsonschema.Draft202012Validator(schema).validate(answer)
        return answer

    def test_what_cannot_be_compared_is_told_in_one_sentence(self):
        clip = self.clip()
        self.refused("compare", clip, clip, "--hand", "right", says="--view")
        self.refused("compare", clip, self.folder / "nothing.mp4", *SWING, says="nothing.mp4")
        self.refused("compare", clip, clip, *SWING, "--by", "colour", says="hands, shaft, time or body")
        self.refused("compare", clip, clip, *SWING, "--other-hand", "both", says="right or left")
        self.refused("compare", clip, clip, *SWING, "--json", self.out / "no" / "such" / "f.json", says="no")
        self.refused("compare", clip, clip, *SWING, says="key moments")
        self.refused("compare", "abcdef", clip, *SWING, *self.library, says="abcdef")

    def test_two_lessons_are_compared_without_their_films(self):
        clip = self.clip()
        for _ in range(2):
            self.done("lesson", "add", clip, *SWING, "--club", "iron-7", *self.library)
        ids = [line.split()[0] for line in self.done("lesson", "list", *self.library).splitlines()]
        answer = self.check(self.done("compare", *ids, "--lessons", "--json", "-", *self.library))
        self.assertEqual((answer["kind"], answer["club"], answer["rows"]), ("sets", "iron-7", []))
        self.assertIn("7-iron", self.done("compare", *ids, "--lessons", *self.library))
        self.refused("compare", ids[0], "eeeeeeee", "--lessons", *self.library, says="eeeeeeee")

    def test_reasoning_says_what_it_cannot_tell(self):
        clip = self.clip()
        self.done("lesson", "add", clip, *SWING, "--club", "iron-7", *self.library)
        answer = self.check(self.done("explain", "--lesson", "latest", "--json", "-", *self.library),
                            "explain.schema.json")
        self.assertEqual((answer["verdict"], answer["first"]), ("cannot tell", None))
        plan = self.check(self.done("plan", "latest", "--json", "-", *self.library), "plan.schema.json")
        self.assertEqual(plan["priorities"], [])
        self.assertIn("Not measured yet", self.done("explain", "--lesson", "latest", *self.library))
        # One swing on each side proves nothing, and says so; sets that are missing or no numbers are refused.
        self.assertIn("Undecided", self.done("explain", "--lesson", "latest", "--try", "narrow_stance", "--before", "1",
                                             "--tried", "1", *self.library))
        self.refused("explain", "--lesson", "latest", "--try", "narrow_stance", "--before", "1", *self.library,
                     says="--tried")
        self.refused("explain", "--lesson", "latest", "--try", "narrow_stance", "--before", "x", "--tried", "1",
                     *self.library, says="1,2,3")
        self.refused("explain", "--lesson", "latest", "--try", "no_such", "--before", "1", "--tried", "1", *self.library,
                     says="--all")
        self.assertIn("40 balls", self.done("plan", "latest", "--log-balls", "40", *self.library))
        self.refused("plan", "latest", "--log-pain", "soul=3", *self.library, says="lower_back")
        self.refused("explain", says="--lesson")
        book = self.folder / "book.json"
        book.write_text('{"version": 2,\n "checkpoints": [],\n "nodes": [{"id": "a"}]}')
        self.refused("explain", "--all", "--playbook", book, says="line 3")
        self.assertIn("narrow_stance", self.done("explain", "--all"))


if __name__ == "__main__":
    groups = {"arguments": Arguments, "clips": Clips, "outputs": Outputs, "marks": Marks, "answers": Answers,
              "lessons": Lessons, "compare": Compare}
    suite = unittest.defaultTestLoader.loadTestsFromTestCase(groups[GROUP])
    sys.exit(0 if unittest.TextTestRunner(verbosity=2).run(suite).wasSuccessful() else 1)
