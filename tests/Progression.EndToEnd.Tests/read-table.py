#!/usr/bin/env python3
"""Reads a table with Python's own csv reader, strictly, and writes it back as JSON; or writes JSON rows as a table in one of the dialects it knows."""
import csv
import json
import sys

if sys.argv[1] == "read":
    with open(sys.argv[2], newline="", encoding="utf-8") as file:
        json.dump(list(csv.reader(file, strict=True)), sys.stdout)
else:
    options = {"excel": {}, "excel-tab": {}, "unix": {}, "semicolon": {"delimiter": ";"}}[sys.argv[1]]
    with open(sys.argv[2], "w", newline="", encoding="utf-8") as file:
        csv.writer(file, "excel" if sys.argv[1] == "semicolon" else sys.argv[1], **options).writerows(json.load(sys.stdin))
