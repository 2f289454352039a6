#!/usr/bin/env python3
# Copyright 2026 The Plumbmark authors
# SPDX-License-Identifier: Apache-2.0
"""Two devices on a network of their own, a stranger beside them, and somebody who writes down every packet.

    network_test.py PROGRAM [CUTS] [BYTES_A_SECOND] [--json]

Four network namespaces: a hub (a bridge, on which all traffic is captured), a sender, a receiver and a stranger.
`plumbmark send` and `plumbmark receive` run as separate programs. The line of the receiver is taken away at random
moments, and now and then the receiver itself is killed and started again; in the end the lesson must be whole and
nothing of it may be readable in what was captured. The stranger, who has the address but not the key, gets nothing,
and three wrong keys end the sending. Needs root for the namespaces; says why and ends with 77 where that is missing.
"""
import base64
import json
import os
import pathlib
import random
import shutil
import signal
import socket
import struct
import subprocess
import sys
import tempfile
import threading
import time

PROGRAM = pathlib.Path(sys.argv[1]).resolve()
NUMBERS = [a for a in sys.argv[2:] if not a.startswith("--")]
CUTS = int(NUMBERS[0]) if NUMBERS else 4
SPEED = NUMBERS[1] if len(NUMBERS) > 1 else "600000"
TAG = f"pm{os.getpid() % 10000}"
HUB, SENDER, RECEIVER, STRANGER = (f"{TAG}{letter}" for letter in "hsrt")
ADDRESS = {SENDER: "10.99.7.1", RECEIVER: "10.99.7.2", STRANGER: "10.99.7.3"}


def run(*command, check=True, **more):
    return subprocess.run(list(map(str, command)), check=check, capture_output=True, text=True, **more)


def skip(reason):
    print(f"skipped: {reason}")
    sys.exit(77)


class Tap(threading.Thread):
    """Everything that passes the hub, both ways."""

    def __init__(self):
        super().__init__(daemon=True)
        self.packets, self.payload, self.stop = 0, bytearray(), False
        # A socket belongs to the namespace its thread is in when it is made.
        libc = __import__("ctypes").CDLL(None, use_errno=True)
        own = os.open("/proc/thread-self/ns/net", os.O_RDONLY)
        hub = os.open(f"/run/netns/{HUB}", os.O_RDONLY)
        if libc.setns(hub, 0) != 0:
            raise OSError("setns")
        self.socket = socket.socket(socket.AF_PACKET, socket.SOCK_RAW, socket.htons(3))
        self.socket.setsockopt(socket.SOL_SOCKET, 33, 64 << 20)  # SO_RCVBUFFORCE: a busy machine must lose no packet
        self.socket.bind(("hub", 0))
        self.socket.settimeout(0.2)
        libc.setns(own, 0)
        os.close(own)
        os.close(hub)

    def run(self):
        while not self.stop:
            try:
                frame = self.socket.recv(65536)
            except TimeoutError:
                continue
            except OSError:
                continue
            if struct.unpack("!H", frame[12:14])[0] == 0x0800 and frame[23] == 6:  # IPv4, TCP
                header = (frame[14] & 15) * 4
                tcp = 14 + header
                offset = (frame[tcp + 12] >> 4) * 4
                self.packets += 1
                self.payload += frame[tcp + offset:]


def build():
    run("ip", "netns", "add", HUB)
    run("ip", "-n", HUB, "link", "add", "hub", "type", "bridge")
    run("ip", "-n", HUB, "link", "set", "hub", "up")
    run("ip", "-n", HUB, "link", "set", "hub", "promisc", "on")
    for name, address in ADDRESS.items():
        run("ip", "netns", "add", name)
        run("ip", "-n", HUB, "link", "add", f"to{name[-1]}", "type", "veth", "peer", "name", "line", "netns", name)
        run("ip", "-n", HUB, "link", "set", f"to{name[-1]}", "master", "hub", "up")
        run("ip", "-n", name, "address", "add", f"{address}/24", "dev", "line")
        run("ip", "-n", name, "link", "set", "line", "up")
        run("ip", "-n", name, "link", "set", "lo", "up")
    # A bridge that has learnt a port passes a packet there only; the tap wants all of them.
    run("ip", "-n", HUB, "link", "set", "hub", "type", "bridge", "ageing_time", "0", check=False)


def clear():
    for name in (SENDER, RECEIVER, STRANGER, HUB):
        run("ip", "netns", "del", name, check=False)


def inside(name, *command):
    return ["ip", "netns", "exec", name, str(PROGRAM), *map(str, command)]


def send(library, environment, speed):
    process = subprocess.Popen(inside(SENDER, "send", "latest", "--own-device", "--address", ADDRESS[SENDER], "--wait", "120",
                                      "--most-speed", speed, "--library", library),
                               stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, env=environment)
    line = process.stdout.readline()
    if "plumbmark receive " not in line:
        raise AssertionError(f"no ticket: {line!r} {process.stderr.read()}")
    return process, line.split("plumbmark receive ")[1].strip()


def main():
    if os.geteuid() != 0:
        skip("network namespaces need root")
    if shutil.which("ip") is None or shutil.which("ffmpeg") is None:
        skip("the programs ip and ffmpeg are needed")
    try:
        build()
    except subprocess.CalledProcessError as error:
        clear()
        skip(f"network namespaces are not possible here: {error.stderr.strip()}")
    folder = pathlib.Path(tempfile.mkdtemp(prefix="plumbmark-net-"))
    processes = []
    try:
        answer = prove(folder, processes)
    finally:
        for process in processes:
            if process.poll() is None:
                process.kill()
        clear()
        shutil.rmtree(folder, ignore_errors=True)
    if "--json" in sys.argv:
        print(json.dumps(answer))
    else:
        print(", ".join(f"{key.replace('_', ' ')}: {value}" for key, value in answer.items()))


def prove(folder, processes):
    chance = random.Random(int(os.environ.get("SEED", "0")) or None)
    environment = {"PATH": os.environ["PATH"], "HOME": str(folder), "LC_ALL": "C.UTF-8",
                   **{k: v for k, v in os.environ.items() if k.endswith("SAN_OPTIONS")}}
    here, there, third = folder / "here", folder / "there", folder / "third"
    clip = folder / "clip.mp4"
    # Noise cannot be made small: some megabytes in a second.
    run("ffmpeg", "-v", "error", "-f", "lavfi", "-i", "nullsrc=s=320x240:r=30:d=1,geq=random(1)*255:128:128", "-pix_fmt",
        "yuv420p", "-crf", "8", "-preset", "ultrafast", clip)
    film = clip.read_bytes()
    run(PROGRAM, "lesson", "add", clip, "--view", "face-on", "--hand", "right", "--player", "CANARY-player", "--title",
        "CANARY-title", "--library", here, env=environment)
    wanted = run(PROGRAM, "lesson", "show", "latest", "--library", here, env=environment).stdout

    tap = Tap()
    tap.start()
    # Before anybody sends there is silence.
    time.sleep(0.5)
    assert tap.packets == 0, "something is said before the person starts"

    sender, ticket = send(here, environment, SPEED)
    processes.append(sender)
    cuts = kills = 0
    receive = inside(RECEIVER, "receive", ticket, "--wait", "60", "--library", there)

    def start():
        process = subprocess.Popen(receive, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, env=environment)
        processes.append(process)
        return process

    receiver = start()
    while receiver.poll() is None and cuts + kills < CUTS:
        time.sleep(chance.uniform(0.15, 0.6))
        if receiver.poll() is not None:
            break
        if chance.random() < 0.4:
            receiver.send_signal(signal.SIGKILL)
            receiver.wait()
            kills += 1
            receiver = start()
        else:
            # The cable is pulled and the connection dies with it: the address goes too.
            run("ip", "-n", RECEIVER, "link", "set", "line", "down")
            run("ip", "-n", RECEIVER, "address", "flush", "dev", "line")
            time.sleep(chance.uniform(0.05, 0.4))
            run("ip", "-n", RECEIVER, "address", "add", f"{ADDRESS[RECEIVER]}/24", "dev", "line")
            run("ip", "-n", RECEIVER, "link", "set", "line", "up")
            cuts += 1
    said, error = receiver.communicate(timeout=300)
    assert receiver.returncode == 0, f"receiving failed: {error}"
    sent, error = sender.communicate(timeout=120)
    assert sender.returncode == 0, f"sending failed: {error}"
    assert "Lesson" in said and "Sent and received" in sent, (said, sent)
    assert run(PROGRAM, "lesson", "show", "latest", "--library", there, env=environment).stdout == wanted
    assert "All is well" in run(PROGRAM, "check", "--films", "--library", there, env=environment).stdout
    captured = bytes(tap.payload)
    assert len(captured) >= len(film), f"the tap saw only {len(captured)} bytes of {len(film)}"
    readable = [word for word in (b"CANARY", b"PLUMBMARK", b"manifest", b"records.jsonl", b"ftyp", b"face-on")
                if word in captured]
    # Pieces of the film itself, from everywhere in it.
    pieces = sum(film[at:at + 16] in captured for at in range(0, len(film) - 16, max(16, len(film) // 2000)))
    assert not readable and pieces == 0, (readable, pieces)

    # A stranger with the address but another key, three times: the ticket is void, for the right one too.
    sender, ticket = send(here, environment, SPEED)
    processes.append(sender)
    head, key = ticket.rsplit(":", 1)
    wrong = 0
    for i in range(3):
        other = base64.urlsafe_b64encode(chance.randbytes(32)).rstrip(b"=").decode()
        assert len(other) == len(key), "the form of a ticket has changed"
        got = run(*inside(STRANGER, "receive", f"{head}:{other}", "--wait", "3", "--library", third), check=False,
                  env=environment)
        assert got.returncode != 0, "a stranger was served"
        wrong += 1
        if sender.poll() is not None:
            break
    _, error = sender.communicate(timeout=60)
    assert sender.returncode != 0, "wrong keys did not end the sending"
    late = run(*inside(RECEIVER, "receive", ticket, "--wait", "2", "--library", folder / "late"), check=False, env=environment)
    assert late.returncode != 0, "a void ticket still works"
    lessons = run(PROGRAM, "lesson", "list", "--library", third, env=environment).stdout
    assert "no lesson yet" in lessons, lessons
    left = [p for p in (third / "receiving").rglob("*") if p.is_file() and p.stat().st_size > 0]
    assert not left, f"the stranger holds {left}"
    # When nothing is sent, nothing listens.
    listening = run("ip", "netns", "exec", SENDER, "ss", "-Hltn", check=False).stdout if shutil.which("ss") else ""
    assert listening.strip() == "", listening
    tap.stop = True
    tap.join()
    return {"film_bytes": len(film), "line_cuts": cuts, "receiver_kills": kills, "captured_bytes": len(captured),
            "readable_words": len(readable), "film_pieces_found": pieces, "wrong_keys_that_ended_it": wrong}


if __name__ == "__main__":
    main()
