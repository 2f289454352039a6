#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""What a lesson gives to take home, looked at from outside like everything in cli_test.py.

Usage: review_test.py PROGRAM SOURCE_DIR reviews
"""
import csv
import html.parser
import json
import subprocess
import sys
import unittest
import zipfile

from cli_test import SOURCE, SWING, Case, ffmpeg


class Reviews(Case):
    def setUp(self):
        super().setUp()
        self.library = ["--library", self.folder / "library"]

    def lesson(self, **more):
        """A small clip whose ankles, hips and shoulders are marked by hand at two moments."""
        clip = self.clip()
        names = ["lead_ankle", "trail_ankle", "lead_hip", "trail_hip", "lead_shoulder", "trail_shoulder", "nose",
                 "head_centre"]
        points = [[200, 220, 2], [120, 220, 2], [180, 140, 2], [140, 140, 2], [190, 80, 2], [130, 80, 2],
                  [162, 52, 2], [160, 50, 2]]
        marks = self.folder / "marks.json"
        marks.write_text(json.dumps({"names": names, "frames": [{"time_s": 0, "points": points},
                                                                {"time_s": 0.5, "points": points}]}))
        self.done("lesson", "add", clip, *SWING, "--club", "iron-7", "--stature", "178", "--capture-fps", "240",
                  "--marks", marks, "--player", more.get("player", "Kim"), "--title", more.get("title", "First"),
                  *self.library)
        return clip

    def test_the_lesson_file_holds_a_page_for_everybody(self):
        hostile = "<script>document.title='hit'</script><img src=http://127.0.0.1:1/x>&\""
        self.lesson(player=hostile, title=hostile)
        file = self.out / "lesson.plumbmark"
        self.done("lesson", "export", "latest", file, "--own-device", *self.library)
        page = zipfile.ZipFile(file).read("lesson.html").decode("utf-8", "strict")

        class Reader(html.parser.HTMLParser):  # outside check: Python's own reader of HTML
            tags, links, words, language = [], [], "", None

            def handle_starttag(self, tag, attributes):
                self.tags.append(tag)
                found = dict(attributes)
                self.language = found.get("lang") or self.language
                self.links += [value for name, value in attributes if name in ("src", "href", "action", "poster")]
                self.links += [value for name, value in attributes if name.startswith("on")]

            def handle_data(self, data):
                self.words += data

        reader = Reader()
        reader.feed(page)
        self.assertEqual(reader.language, "en")
        for tag in ("script", "img", "iframe", "object", "link", "form"):
            self.assertNotIn(tag, reader.tags)
        self.assertTrue(reader.links)
        for link in reader.links:
            self.assertTrue(link.startswith("data:image/jpeg;base64,"), link[:60])
        self.assertEqual(reader.words.count(hostile), 4)  # title and heading hold player and title
        self.assertIn("licensed physiotherapist", reader.words)
        other = ["--library", self.folder / "other"]
        self.assertNotIn("Not used", self.done("lesson", "import", file, *other))
        # Outside check: the second reader of lesson files.
        subprocess.run([sys.executable, "-B", SOURCE / "tests" / "verify_lesson.py", file], check=True,
                       stdout=subprocess.DEVNULL)

    def test_a_sheet_is_drawn_where_there_is_a_painter(self):
        self.lesson()
        sheet = self.out / "sheet.pdf"
        result = self.run_program("review", "sheet", "latest", sheet, *self.library)
        if b"painter" in result.stderr:
            self.assertEqual(result.returncode, 2)
            self.assertFalse(sheet.exists())
            return
        self.assertEqual(result.returncode, 0, result.stderr)
        text = subprocess.run(["pdftotext", sheet, "-"], capture_output=True, check=True).stdout.decode()
        for words in ("First", "Kim", "Swing 1: Face-on, right-handed, 7-iron", "licensed physiotherapist"):
            self.assertIn(words, text)
        self.done("review", "sheet", "latest", self.out / "keys.pdf", "--keys", *self.library)
        keys = subprocess.run(["pdftotext", self.out / "keys.pdf", "-"], capture_output=True, check=True)
        self.assertIn("Kim, 20", keys.stdout.decode())
        self.done("review", "sheet", "latest", self.out / "phone.png", "--format", "phone", *self.library)
        self.refused("review", "sheet", "latest", self.out / "a.pdf", "--format", "a3", *self.library, says="a4")
        self.refused("review", "sheet", "latest", self.out / "a.doc", *self.library, says=".pdf or .png")

    def test_three_lines_go_into_the_page(self):
        self.lesson()
        self.refused("review", "note", "latest", *self.library, says="--saw")
        self.done("review", "note", "latest", "--saw", "narrow <stance>", *self.library)
        self.done("review", "note", "latest", "--next", "in two weeks", *self.library)
        file = self.out / "lesson.plumbmark"
        self.done("lesson", "export", "latest", file, "--own-device", *self.library)
        page = zipfile.ZipFile(file).read("lesson.html").decode()
        self.assertIn("narrow &lt;stance&gt;", page)
        self.assertIn("in two weeks", page)

    def test_the_request_card(self):
        card = self.out / "card.html"
        self.done("review", "request", card, "--player", "<b>Kim</b>", "--question", "Driver & 'iron'?")
        text = card.read_text()
        self.assertIn("&lt;b&gt;Kim&lt;/b&gt;", text)
        self.assertNotIn("<b>Kim", text)
        self.assertIn("Content-Security-Policy", text)
        self.refused("review", "request", self.out / "card.txt", says=".html or .pdf")
        self.refused("review", "request", self.out / "c.html", "--player", "x" * 600, says="500")

    def test_the_inbox(self):
        self.lesson()
        self.assertIn("Nobody", self.done("review", "inbox", *self.library))
        self.done("review", "inbox", "--wait", "latest", "--due", "2020-01-02", *self.library)
        self.assertRegex(self.done("review", "inbox", *self.library), r"waits for you.*overdue by \d+ days.*Kim, First")
        told = self.done("review", "inbox", "--again", "latest", *self.library)
        self.assertTrue(told.startswith("Please film it again:\n- "), told)
        self.assertIn("target line", told)  # no stick lies on it in this clip
        self.assertIn("films again", self.done("review", "inbox", *self.library))
        answer = self.out / "answer.plumbmark"
        self.refused("review", "inbox", "--answered", "latest", "--file", answer, *self.library, says="consent")
        self.assertFalse(answer.exists())
        self.assertIn("films again", self.done("review", "inbox", *self.library))
        self.done("consent", "Kim", "--scope", "film,analyse,keep,share", *self.library)
        self.done("review", "inbox", "--answered", "latest", "--file", answer, *self.library)
        self.assertRegex(self.done("review", "inbox", *self.library), r"Nobody.*\n.*answered 20.*not known to be opened")
        student = ["--library", self.folder / "student"]
        self.done("lesson", "import", answer, *student)
        self.done("lesson", "show", "latest", *student)
        back = self.out / "back.plumbmark"
        self.done("lesson", "export", "latest", back, *student)
        self.done("lesson", "import", back, *self.library)
        self.assertRegex(self.done("review", "inbox", *self.library), r"answered 20[-\d]*, opened 20")
        self.refused("review", "inbox", "--wait", "latest", "--due", "soon", *self.library, says="2026-11-25")
        self.refused("review", "inbox", "--wait", "latest", "--answered", "latest", *self.library, says="one of")
        self.refused("review", "inbox", "--due", "2026-11-28", *self.library, says="--wait")
        self.refused("review", "inbox", "--wait", "ffffffff", *self.library, says="ffffffff")

    TIMELINE = {"length_ms": 1500, "saw": "narrow stance", "acts": [
        {"at_ms": 0, "act": "go", "shot": 1, "time_s": 0.1}, {"at_ms": 500, "act": "play", "speed": 0.5},
        {"at_ms": 1000, "act": "draw", "points": [[10, 10], [100, 100]]}],
        "captions": [{"from_ms": 0, "to_ms": 1500, "text": "Stand <wider>"}]}

    def test_a_spoken_review_is_kept_and_rendered(self):
        self.lesson()
        timeline = self.folder / "timeline.json"

        def refused(says, **change):
            timeline.write_text(json.dumps({**self.TIMELINE, **change}))
            self.refused("review", "record", "latest", timeline, *self.library, says=says)

        timeline.write_text("no json")
        self.refused("review", "record", "latest", timeline, *self.library, says="no JSON")
        acts = self.TIMELINE["acts"]
        refused("Act 1", acts=[{"at_ms": 0, "act": "sing"}])
        refused("shot", acts=[{"at_ms": 0, "act": "go", "shot": 9}])
        refused("begins with a go", acts=acts[1:])
        refused("Act 3", acts=[acts[0], acts[2], acts[1]])
        refused("wrong kind", acts=[acts[0], {"at_ms": 1, "act": "zoom", "box": [1, 2]}])
        refused("30 minutes", length_ms=10**9)
        timeline.write_text(json.dumps(self.TIMELINE))
        self.refused("review", "record", "latest", timeline, "--voice", timeline, *self.library, says="No sound")
        voice = self.folder / "voice.wav"
        ffmpeg("-f", "lavfi", "-i", "sine=440:duration=1.2", voice)
        self.done("review", "record", "latest", timeline, "--voice", voice, *self.library)
        self.edits(timeline)
        film = self.out / "film.mp4"
        captions = self.out / "film.vtt"
        result = self.run_program("review", "render", "latest", film, "--captions", captions, *self.library)
        if b"painter" in result.stderr:
            self.assertEqual(result.returncode, 2)
            self.assertFalse(film.exists())
            return
        self.assertEqual(result.returncode, 0, result.stderr)
        told = json.loads(subprocess.run(["ffprobe", "-v", "error", "-of", "json", "-show_streams", "-show_format", film],
                                         capture_output=True, check=True).stdout)
        self.assertEqual([stream["codec_name"] for stream in told["streams"]], ["h264", "aac"])
        self.assertAlmostEqual(float(told["format"]["duration"]), 1.5, delta=0.05)
        self.assertEqual(captions.read_text(), "WEBVTT\n\n00:00:00.000 --> 00:00:01.500\nStand &lt;wider&gt;\n")
        self.covered()
        self.refused("review", "render", "latest", self.out / "film.avi", *self.library, says=".mp4")
        self.refused("review", "render", "latest", self.out / "f.mp4", "--beside", "4", *self.library, says="--beside")

    def edits(self, timeline):
        def edit(*words):
            return self.done("review", "edit", "latest", *words, *self.library)

        def length():
            return json.loads(self.done("review", "show", "latest", "--json", *self.library))["length_ms"]

        def refused(says, *words):
            self.refused("review", "edit", "latest", *words, *self.library, says=says)

        first = self.done("review", "show", "latest", "--json", *self.library)
        edit("--trim", "0.2-1.4")
        self.assertEqual(length(), 1200)
        edit("--cut", "0.5-0.75")
        self.assertEqual(length(), 950)
        edit("--pause", "0.5", "--for", "2")
        self.assertEqual(length(), 2950)
        edit("--again", "0-1", "--timeline", timeline)
        self.assertEqual(length(), 3450)
        edit("--caption", "0-1", "--text", "say \x1b[31m this")
        self.assertIn("say ?[31m this", self.done("review", "show", "latest", *self.library))
        for _ in range(5):
            edit("--undo")
        self.assertEqual(self.done("review", "show", "latest", "--json", *self.library), first)
        refused("nothing before", "--undo")
        refused("one of", "--trim", "0-1", "--cut", "1-2")
        refused("2.5-4", "--cut", "soon")
        refused("2.5-4", "--cut", "1-0.5")
        refused("would be left", "--cut", "0-1.5")
        refused("not in the review", "--cut", "1-99")
        refused("--pause", "--pause", "1")
        self.assertEqual(self.done("review", "show", "latest", "--json", *self.library), first)

    def covered(self):
        """A minor whose guardian did not agree to the face: the film comes with an opaque box, and a strip."""
        self.done("consent", "Kim", "--scope", "film,analyse,keep,share", "--guardian", "Lee", *self.library)
        film, strip = self.out / "covered.mp4", self.out / "strip.png"
        self.refused("review", "render", "latest", film, *self.library, says="--strip")
        self.assertFalse(film.exists())
        self.assertIn("every still", self.done("review", "render", "latest", film, "--strip", strip, *self.library))
        self.assertTrue(strip.read_bytes().startswith(b"\x89PNG"))
        # Outside check: ffmpeg decodes the film; the head (at 160, 50 of 320 x 240) is one grey in every frame.
        scale = 1280 // 320
        head = subprocess.run(["ffmpeg", "-v", "error", "-i", film, "-vf",
                               f"crop={12 * scale}:{12 * scale}:{154 * scale}:{44 * scale}", "-pix_fmt", "gray",
                               "-f", "rawvideo", "-"], capture_output=True, check=True).stdout
        self.assertEqual(len(head) % (12 * scale) ** 2, 0)
        self.assertGreater(len(head) // (12 * scale) ** 2, 20)
        self.assertLess(max(head) - min(head), 12)

    def test_the_body_card_and_the_coachs_own_film(self):
        clip = self.lesson()
        card = self.done("body", "Kim", "--born", "1964", "--pain-before", "lower_back,lead_hip", "--pregnant", "no",
                         *self.library)
        for words in ("1964", "lower_back, lead_hip", "Pregnant: no", "licensed physiotherapist"):
            self.assertIn(words, card)
        self.done("body", "Kim", "--pain-before", "none", "--most-balls", "60", *self.library)
        card = self.done("body", "Kim", *self.library)
        self.assertNotIn("lower_back", card)
        self.assertIn("60", card)
        self.refused("body", "Kim", "--limited", "left_toe", *self.library, says="left_toe")
        self.refused("body", "Kim", "--pregnant", "maybe", *self.library, says="yes and no")
        self.refused("body", "Nobody", *self.library, says="Nobody")
        self.refused("plan", "latest", "--demonstrate", "1", "--film", clip, *self.library, says="keep a plan")
        self.refused("plan", "latest", "--film", clip, *self.library, says="--demonstrate")

    def test_what_cannot_be_used(self):
        self.refused("review", says="review tables")
        self.refused("review", "burn", says="review tables")
        self.refused("review", "tables", self.out / "a.xls", *self.library, says=".csv, .json or .trc")
        self.refused("review", "tables", self.out / "no" / "a.csv", *self.library, says="does not exist")
        self.refused("review", "tables", self.out / "a.trc", *self.library, says="--lesson")
        self.refused("review", "tables", self.out / "a.csv", "--player", "Nobody", *self.library, says="Nobody")
        self.lesson()
        here = ["--lesson", "latest", *self.library]
        self.refused("review", "tables", self.out / "a.json", "--landmarks", *here, says=".trc")
        self.refused("review", "tables", self.out / "a.trc", "--shot", "7", *here, says="no such clip")
        self.refused("review", "tables", self.out / "a.trc", "--view", "behind", *here, says="down-the-line")

    def test_tables_are_read_by_others(self):
        hostile = '=HYPERLINK("http://x"),\n"<b>\u202e'
        self.lesson(player=hostile, title="-2+3")
        table = self.out / "numbers.csv"
        self.done("review", "tables", table, *self.library)
        # Outside check: Python's csv module, strict.
        with open(table, encoding="utf-8", newline="") as file:
            rows = list(csv.reader(file, strict=True))
        self.assertEqual(len(rows), 2)
        self.assertEqual(len(rows[0]), len(rows[1]))
        row = dict(zip(rows[0], rows[1]))
        self.assertEqual(row["player"], "'" + hostile.replace("\n", " "))
        self.assertEqual(row["lesson"], "'-2+3")
        self.assertEqual(row["stature [m]"], "1.78")
        for name, cell in list(row.items())[11:]:
            self.assertRegex(name, r"^\w+( at \w+)? \(method \d+\)( sigma)? \[\w+\]$")
            if cell:
                float(cell)
        answer = self.out / "numbers.json"
        self.done("review", "tables", answer, "--lesson", "latest", *self.library)
        self.assertEqual(json.loads(answer.read_text())["rows"][0]["player"], hostile)

    def test_landmarks_over_time_are_read_by_others(self):
        self.lesson()
        markers = self.out / "markers.trc"
        self.done("review", "tables", markers, "--lesson", "latest", *self.library)
        sys.path.insert(0, str(SOURCE / "tests" / "tools"))
        import read_trc  # our own second reader, from the format's published description
        header, names, frames = read_trc.read(markers.read_text())
        self.assertEqual((header["NumFrames"], header["Units"], header["DataRate"]), (30, "mm", 240))
        self.assertIn("lead_ankle", names)
        time, points = frames[15]
        self.assertAlmostEqual(time, 0.5 / 8, places=5)  # captured at 240, shown at 30
        lead, trail = points["lead_ankle"], points["trail_ankle"]
        self.assertAlmostEqual(lead[0] + trail[0], 0, places=2)
        # True vertical is read from the picture's edges, to a tenth of a degree.
        self.assertAlmostEqual(lead[1] / lead[0], 0, delta=0.002)
        self.assertGreater(lead[0], 0)
        table = self.out / "landmarks.csv"
        self.done("review", "tables", table, "--landmarks", "--lesson", "latest", *self.library)
        with open(table, encoding="utf-8", newline="") as file:
            rows = list(csv.DictReader(file, strict=True))
        self.assertEqual(len(rows), 30)
        self.assertEqual(float(rows[15]["lead_ankle x [px]"]), 200)
        self.assertEqual(rows[15]["lead_ankle origin"], "hand")


if __name__ == "__main__":
    suite = unittest.defaultTestLoader.loadTestsFromTestCase(Reviews)
    sys.exit(0 if unittest.TextTestRunner(verbosity=2).run(suite).wasSuccessful() else 1)
