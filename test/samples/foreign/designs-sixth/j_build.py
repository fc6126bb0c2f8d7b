"""Documents with their truth: boxes are measured on the same page with only that label on it, drawn by poppler at 300 dpi."""

import json
import os
import re
import shutil
import subprocess
import sys
import tempfile

import numpy

from j_art import Art
from j_writers import WRITERS

OUT = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "sixth-sight")
NODE = os.environ.get("FOREIGN_WRITERS", ".")


class Page:
    """`own` is drawn first, then the labels and the slip. A page of the label's own paper says `paper`."""

    def __init__(self, w, h, kind="label", rotate=0):
        self.w, self.h, self.kind, self.rotate = w, h, kind, rotate
        self.own, self.labels, self.slip = Art(w, h), [], None

    def label(self, art, x, y, turn=0, edge="ink", role="label", shown=None, black=None):
        """`shown` is the turn as a viewer sees it, if another; `black` a picture's place, to be measured as a black area."""
        self.labels.append((art, x, y, turn, edge, role, turn if shown is None else shown, black))
        return self

    def with_slip(self, art, x, y):
        self.slip = (art, x, y)
        return self

    def whole(self):
        all_ = Art(self.w, self.h)
        all_.put(self.own, 0, 0)
        for art, x, y, turn, *_ in self.labels:
            all_.put(art, x, y, turn)
        if self.slip:
            all_.put(*self.slip)
        return (self.w, self.h, all_.ops)

    def alone(self, art, x, y, turn=0):
        only = Art(self.w, self.h)
        only.put(art, x, y, turn)
        return (self.w, self.h, only.ops)


def _write(producer, pages, rotations, out, folder):
    plain = os.path.join(folder, "plain.pdf")
    WRITERS[producer](pages, plain, NODE)
    turned = {angle: [str(i + 1) for i, each in enumerate(rotations) if each == angle] for angle in set(rotations) if angle}
    options = [f"--rotate=+{angle}:{','.join(numbers)}" for angle, numbers in turned.items()]
    if options:
        subprocess.run(["qpdf", *options, plain, out], check=True)
    else:
        shutil.copy(plain, out)
    packed = os.path.join(folder, "packed.pdf")
    subprocess.run(["qpdf", "--recompress-flate", "--compression-level=9", "--object-streams=generate", out, packed], check=True)
    if os.path.getsize(packed) < 0.95 * os.path.getsize(out):
        shutil.copy(packed, out)


def ink_of(path, page):
    raw = subprocess.run(["pdftoppm", "-r", "300", "-gray", "-f", str(page), "-l", str(page), path], check=True, capture_output=True).stdout
    head, size, _top, rest = raw.split(b"\n", 3)
    w, h = (int(each) for each in size.split())
    dark = numpy.frombuffer(rest, numpy.uint8, w * h).reshape(h, w) < 236
    xs, ys = numpy.nonzero(dark.any(0))[0], numpy.nonzero(dark.any(1))[0]
    if not len(xs):
        raise SystemExit(f"{path} page {page} is empty")
    unit = 72 / 300
    return {"x": xs[0] * unit, "y": ys[0] * unit, "width": (xs[-1] + 1 - xs[0]) * unit, "height": (ys[-1] + 1 - ys[0]) * unit}


def sizes_of(path):
    """Page sizes as a viewer sees them, as pdfinfo tells them: some writers know whole points only."""
    told = subprocess.run(["pdfinfo", "-f", "1", "-l", "999", path], check=True, capture_output=True, text=True).stdout
    pages = re.findall(r"^Page +\d+ size: +([\d.]+) x ([\d.]+).*\nPage +\d+ rot: +(\d+)", told, re.M)
    return [(float(h), float(w)) if int(turn) % 180 else (float(w), float(h)) for w, h, turn in pages]


def _round(box):
    return {key: round(float(value), 2) for key, value in box.items()}


def build(layout, number, producer, pages):
    name = f"{layout}-{number}"
    with tempfile.TemporaryDirectory() as folder:
        out = os.path.join(OUT, name + ".pdf")
        _write(producer, [page.whole() for page in pages], [page.rotate for page in pages], out, folder)
        alone, turns = [], []
        for page in pages:
            for art, x, y, turn, *_rest, black in page.labels:
                alone.append(page.alone(art, x, y, turn))
                turns.append(page.rotate)
                if black:
                    area = Art(art.w, art.h)
                    area.rect(*black, "#000000")
                    alone.append(page.alone(area, x, y, turn))
                    turns.append(page.rotate)
            if page.slip:
                alone.append(page.alone(*page.slip))
                turns.append(page.rotate)
        measured = os.path.join(folder, "alone.pdf")
        if alone:
            _write(producer, alone, turns, measured, folder)
        at, told = 0, []

        def next_box():
            nonlocal at
            at += 1
            return ink_of(measured, at)

        for index, (page, (w, h)) in enumerate(zip(pages, sizes_of(out), strict=True)):
            labels = []
            for art, _x, _y, _turn, edge, role, shown, black in page.labels:
                ink = next_box()
                box = {"x": 0, "y": 0, "width": w, "height": h} if edge == "page" else next_box() if black else ink
                each = {"box": _round(box), "turn": -(shown + page.rotate) % 360, "edge": edge}
                if edge in ("page", "picture"):
                    each["ink"] = _round(ink)
                labels.append({**each, "role": role, "codes": art.codes})
            truth = {"page": index + 1, "kind": page.kind, "width": w, "height": h, "labels": labels}
            told.append({**truth, "slip": _round(next_box())} if page.slip else truth)
        result = {"producer": producer, "layout": layout, "half": "sixth-sight", "pages": told}
        open(os.path.join(OUT, name + ".json"), "w").write(json.dumps(result, indent=2, ensure_ascii=False) + "\n")
    print(name, os.path.getsize(out), len(pages), file=sys.stderr)
