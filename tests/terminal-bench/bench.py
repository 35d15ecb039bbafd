#!/usr/bin/env python3
"""Measures the published program and some programs of Debian on a pseudo terminal, in one run, and prints Markdown tables.

    tests/terminal-bench/bench.py                      publishes the native build, then measures (about five minutes)
    tests/terminal-bench/bench.py --program FOLDER/progression     measures a build that is there
    tests/terminal-bench/bench.py --smoke --program ...            a few seconds: does it paint, answer a key and rest

Others measured when installed: less, nano, vim.tiny, sc, htop. Needs Python's standard library and Linux, nothing else.

Painted: the last byte before the first silence of 60 ms, once the text that marks the picture has come. A key: from writing it
to the last byte before the same silence. CPU: of all threads, from the kernel's schedstat. Memory: resident, as the kernel says.
The terminal answers the usual questions (device attributes, cursor position), as real ones do.
"""
import argparse
import datetime
import os
import pathlib
import platform
import shutil
import statistics
import subprocess
import sys
import tempfile

import caseload
import terminals
from terminals import Session, type_together

ROOT = pathlib.Path(__file__).resolve().parents[2]
SMALL, LARGE = (80, 24), (200, 60)
# The aims of the product, in the units of the table.
AIMS = [("start to painted, ms", 60), ("key, median ms", 16), ("key, p95 ms", 33), ("bytes a key, median", 320),
        ("bytes of the first picture", 10_000), ("idle bytes", 0), ("idle CPU, % of a core", 1), ("memory, MiB", 80)]


class Subject:
    """A program to measure: how it is started, what shows that it has painted, which keys are typed."""

    def __init__(self, name, command, marker, keys, size=SMALL, program=None):
        self.name, self.command, self.marker, self.keys, self.size = name, command, marker, keys, size
        self.is_ours = program is not None

    def start(self, folder):
        return Session(self.command, self.size, folder, self.marker)


def subjects(program, folder, crowd_only=False):
    """Ours first, then what is installed of the others."""
    text = os.path.join(folder, "text")
    with open(text, "w", encoding="utf-8") as file:
        file.writelines(f"{line:4} the quick brown fox jumps over the lazy dog, again and again\n" for line in range(1, 501))
    sheet = os.path.join(folder, "sheet.sc")
    with open(sheet, "w", encoding="utf-8") as file:
        file.writelines(f"let {chr(65 + column)}{row} = {row * column}\n" for row in range(40) for column in range(8))
    walk = ["right", "right", "down", "left", "down", "up", "left", "up"]
    grid = [program, "open", "LARK-03", "--store", os.path.join(folder, "progression-demo")]
    cases = [program, "--store", os.path.join(folder, "progression-demo")]
    ours = [Subject(f"grid {c}x{r}", grid, "LARK-03", walk, (c, r), program) for c, r in (SMALL, LARGE)]
    ours += [Subject(f"case list {c}x{r}", cases, "LARK-03", ["down", "down", "up", "up"], (c, r), program) for c, r in (SMALL, LARGE)]
    if crowd_only:
        return ours[:1]
    others = [("less", [text], "lazy dog", ["down"]), ("nano", ["--ignorercfiles", text], "500", ["down"]), ("vim.tiny", ["-u", "NONE", text], "lazy dog", ["down"]),
              ("sc", [sheet], "80.00", ["right", "down", "left", "up"]), ("htop", [], "PID", ["down"])]
    return ours + [Subject(f"{name} 80x24", [name, *rest], marker, keys) for name, rest, marker, keys in others if shutil.which(name)]


def measure(subject, folder, runs, keys, idle_seconds):
    """One row: a dict of the measured figures."""
    painted, first_bytes = [], []
    for _ in range(runs):
        with subject.start(folder) as session:
            session.wait_until_painted()
            painted.append(session.painted_ms)
            first_bytes.append(session.bytes)
    with subject.start(folder) as session:
        session.wait_until_painted()
        session.rest(4)
        strokes = type_together([session], subject.keys, keys, 0)
        session.rest(1.5)
        before, cpu = session.bytes, session.cpu_seconds()
        session.rest(idle_seconds)
        return {
            "start to painted, ms": statistics.median(painted),
            "key, median ms": statistics.median(strokes.times),
            "key, p95 ms": terminals.percentile(strokes.times, 95),
            "bytes a key, median": statistics.median(strokes.sizes),
            "bytes of the first picture": statistics.median(first_bytes),
            "idle bytes": session.bytes - before,
            "idle CPU, % of a core": 100 * (session.cpu_seconds() - cpu) / idle_seconds,
            "memory, MiB": session.resident_mib(),
        }


def crowd(subject, folder, count, keys, idle_seconds):
    """Many sessions side by side, each typing four keys a second; then all at rest."""
    sessions = [subject.start(folder) for _ in range(count)]
    try:
        for session in sessions:
            session.wait_until_painted()
        terminals.rest(sessions, 4)
        strokes = type_together(sessions, subject.keys, keys, 0.25)
        terminals.rest(sessions, 1.5)
        before, cpu = sum(s.bytes for s in sessions), sum(s.cpu_seconds() for s in sessions)
        terminals.rest(sessions, idle_seconds)
        return {
            "key, median ms": statistics.median(strokes.times),
            "key, p95 ms": terminals.percentile(strokes.times, 95),
            "idle bytes": sum(s.bytes for s in sessions) - before,
            "idle CPU, % of a core": 100 * (sum(s.cpu_seconds() for s in sessions) - cpu) / idle_seconds / count,
            "memory, MiB": statistics.mean(s.resident_mib() for s in sessions),
        }
    finally:
        for session in sessions:
            session.close()


def shown(value):
    return "" if value is None else f"{value:.0f}" if value >= 100 or value == int(value) else f"{value:.2g}" if value < 1 else f"{value:.1f}"


def table(rows):
    names = [name for name, _ in AIMS]
    print("| | " + " | ".join(names) + " |")
    print("|---|" + "---:|" * len(names))
    print("| *aim* | " + " | ".join(f"*{aim}*" for _, aim in AIMS) + " |")
    for name, row in rows:
        print(f"| {name} | " + " | ".join(shown(row.get(column)) for column in names) + " |")
    print()


def processor():
    with open("/proc/cpuinfo", encoding="ascii", errors="replace") as info:
        return next((line.split(":", 1)[1].strip() for line in info if line.startswith("model name")), platform.machine())


def system():
    with open("/etc/os-release", encoding="utf-8") as release:
        return next((line.split("=", 1)[1].strip().strip('"') for line in release if line.startswith("PRETTY_NAME")), "Linux")


def publish(build):
    subprocess.run([ROOT / "src/Progression.App/Publishing/publish", build], check=True, stdout=sys.stderr)
    return str(ROOT / f"artifacts/publishing/{build}/progression/progression")


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--program", help="a published program; left out: it is published first")
    parser.add_argument("--build", default="native", choices=["native", "ready-to-run"], help="what to publish")
    parser.add_argument("--idle", type=float, default=60, help="seconds of rest that are watched")
    parser.add_argument("--runs", type=int, default=15, help="starts of each program")
    parser.add_argument("--keys", type=int, default=160, help="keys typed into each program")
    parser.add_argument("--crowd", type=int, default=20, help="sessions side by side")
    parser.add_argument("--cases", default="10000,100000", help="sizes of the caseloads; empty for none")
    parser.add_argument("--smoke", action="store_true", help="a few seconds, ours only; fails when a picture, a key or the rest is not as it should be")
    given = parser.parse_args()
    program = str(pathlib.Path(given.program or publish(given.build)).resolve())
    with tempfile.TemporaryDirectory(prefix="terminal-bench-") as folder:
        subprocess.run([program, "demo"], env=terminals.environment(folder), stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, check=True)
        if given.smoke:
            return smoke(program, folder)
        load = os.getloadavg()[0]
        print(f"{datetime.date.today()}, {system()}, {processor()}, {os.cpu_count()} cores; load before the run {load:.1f}.")
        print(f"{subprocess.run([program, '--version'], capture_output=True, text=True, check=True).stdout.strip()}, "
              f"{os.path.getsize(program) / 2**20:.0f} MiB. Rest watched for {given.idle:.0f} s; {given.keys} keys; median of {given.runs} starts.\n")
        rows = [(s.name, measure(s, folder, given.runs, given.keys, given.idle)) for s in subjects(program, folder)]
        one = subjects(program, folder, crowd_only=True)[0]
        rows.append((f"grid 80x24, {given.crowd} sessions, each", crowd(one, folder, given.crowd, 24, min(given.idle, 20))))
        table(rows)
        caseload.report(program, folder, [int(size) for size in given.cases.split(",") if size], given.runs)
    return 0


def smoke(program, folder):
    row = measure(subjects(program, folder, crowd_only=True)[0], folder, 1, 8, 2)
    table([("grid 80x24", row)])
    good = row["idle bytes"] == 0 and 0 < row["bytes a key, median"] < 2000
    print("smoke: " + ("it paints, answers and rests" if good else "NOT as it should be"))
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
