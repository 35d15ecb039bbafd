"""How long a large caseload takes to open, and to find a case in."""
import os
import pathlib
import statistics
import subprocess

import terminals

ROOT = pathlib.Path(__file__).resolve().parents[2]
GENERATOR = ["dotnet", "run", "-c", "Release", "--project", str(ROOT / "tests/Progression.Benchmarks"), "--", "make-caseload"]


def report(program, folder, sizes, runs):
    """Prints a table of sizes and times; the cases are invented by the benchmarks' generator."""
    if not sizes:
        return
    print("| cases | index made, ms | open to painted, median ms | key in the list, median ms | key, p95 ms | memory, MiB |")
    print("|---:|---:|---:|---:|---:|---:|")
    for size in sizes:
        store = os.path.join(folder, f"store-{size}")
        subprocess.run([*GENERATOR, str(size), store], check=True, capture_output=True)
        print(f"| {size:,} | " + " | ".join(f"{value:.0f}" for value in measure(program, folder, store, size, runs)) + " |", flush=True)
    print()


def measure(program, folder, store, size, runs):
    index = os.path.join(store, "plans.db")
    if os.path.exists(index):
        os.remove(index)
    made, _, _ = opened(program, folder, store, size)
    times = []
    for _ in range(runs):
        painted, strokes, memory = opened(program, folder, store, size, keys=4)
        times.append(painted)
    _, strokes, memory = opened(program, folder, store, size, keys=60)
    return made, statistics.median(times), statistics.median(strokes.times), terminals.percentile(strokes.times, 95), memory


def opened(program, folder, store, size, keys=0):
    """Time until the list shows how many cases there are, then what keys cost, then the memory."""
    with terminals.Session([program, "--store", store], (80, 24), folder, f"{size:,}|{size}", patience=300) as session:
        session.wait_until_painted()
        strokes = terminals.type_together([session], ["down"], keys, 0) if keys else None
        return session.painted_ms, strokes, session.resident_mib()
