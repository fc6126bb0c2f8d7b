"""Writes a document and measures its truth: each part alone on the page, drawn by poppler at 300 dpi."""

import base64
import copy
import json
import os
import re
import subprocess
import sys
import tempfile
from pathlib import Path

import numpy
from PIL import Image

import r_writers
from r_pad import font_file

DPI = 300
OUT = Path(sys.argv[1]) if len(sys.argv) > 1 else Path(__file__).parent.parent / "seventh-sight"
ONLY = sys.argv[2:]
NODE = os.environ.get("FOREIGN_WRITERS", ".")


def by_node(writer):
    def write(pads, path):
        def plain(op):
            if op[1] == "push":
                ox, oy, _, _ = r_writers.placed(*op[2:])
                return [op[0], "push", op[2], ox, oy]
            if op[1] == "image":
                return [*op[:6], base64.b64encode(r_writers.png(op[6])).decode()]
            return [*op, font_file(op[5])] if op[1] == "text" else op

        with tempfile.TemporaryDirectory() as folder:
            program, source = Path(folder) / "play.cjs", Path(folder) / "pads.json"
            program.write_text((Path(__file__).parent / "r_node.txt").read_text())
            source.write_text(json.dumps([{"size": pad.size, "ops": [plain(op) for op in pad.ops]} for pad in pads]))
            env = {**os.environ, "NODE_PATH": str(Path(NODE) / "node_modules")}
            subprocess.run(["node", str(program), writer, str(source), str(path)], check=True, env=env)

    return write


WRITERS = {
    **{each: getattr(r_writers, each) for each in ("reportlab", "fpdf2", "mupdf", "rsvg", "inkscape")},
    "pdfkit": by_node("pdfkit"),
    "jspdf": by_node("jspdf"),
}


def turn_pages(path, rotates):
    turns = [f"--rotate=+{turn}:{page}" for page, turn in enumerate(rotates, 1) if turn]
    if turns:
        subprocess.run(["qpdf", "--deterministic-id", "--replace-input", str(path), *turns], check=True)


def sizes(path):
    info = subprocess.run(["pdfinfo", "-f", "1", "-l", "999", str(path)], check=True, capture_output=True, text=True).stdout
    turns = re.findall(r"Page +\d+ rot: +(\d+)", info)
    both = [(float(w), float(h)) for w, h in re.findall(r"Page +\d+ size: +([\d.]+) x ([\d.]+)", info)]
    return [(h, w) if int(turn) % 180 else (w, h) for (w, h), turn in zip(both, turns)]


def ink(path, page):
    with tempfile.TemporaryDirectory() as folder:
        name = str(Path(folder) / "p")
        subprocess.run(["pdftoppm", "-r", str(DPI), "-gray", "-f", str(page), "-l", str(page), "-singlefile", str(path), name], check=True)
        dark = numpy.array(Image.open(name + ".pgm")) < 250
    if not dark.any():
        return None
    ys, xs = numpy.where(dark.any(axis=1))[0], numpy.where(dark.any(axis=0))[0]
    at = lambda v: round(float(v) * 72 / DPI, 2)
    return {"x": at(xs[0]), "y": at(ys[0]), "width": at(xs[-1] + 1 - xs[0]), "height": at(ys[-1] + 1 - ys[0])}


def alone(pad, part, black=False):
    """The pad with one part only; its pictures black where asked."""
    each = copy.copy(pad)
    each.ops = [op for op in pad.ops if op[0] == part]
    if black:
        each.ops = [[op[0], "rect", *op[2:6], "#000000", None, 1, None] if op[1] == "image" else op for op in each.ops]
    return each


def truth_of(kind, page, size, parts, boxes):
    """`boxes` has for each part the bounds of its ink and of its picture, on the visible page."""
    labels, slip = [], None
    for part, (bounds, picture) in zip(parts, boxes):
        if part["role"] in ("label", "return-label"):
            whole = {"x": 0, "y": 0, "width": size[0], "height": size[1]}
            box = {"page": whole, "picture": picture}.get(part["edge"], bounds)
            more = {"ink": bounds} if part["edge"] in ("page", "picture") else {}
            labels.append({"box": box, "turn": part["turn"], "edge": part["edge"], **more, "role": part["role"], "codes": part["codes"]})
        elif part["role"] == "slip":
            slip = bounds
    return {"page": page, "kind": kind, "width": size[0], "height": size[1], "labels": labels, **({"slip": slip} if slip else {})}


def keep(name, producer, layout, pages):
    """Packed without a loss: the part is to stay small."""
    pack = ["--deterministic-id", "--object-streams=generate", "--recompress-flate", "--compression-level=9", "--replace-input"]
    subprocess.run(["qpdf", *pack, str(OUT / f"{name}.pdf")], check=True)
    truth = {"producer": producer, "layout": layout, "half": "seventh-sight", "pages": pages}
    (OUT / f"{name}.json").write_text(json.dumps(truth, indent=2, ensure_ascii=False) + "\n")
    print(name, len(pages), (OUT / f"{name}.pdf").stat().st_size // 1024, "KB", flush=True)


def document(name, producer, pads, layout=None):
    layout = layout or re.sub(r"-\d+$", "", name)
    if ONLY and not any(name.startswith(each) for each in ONLY):
        return
    write, path = WRITERS[producer], OUT / f"{name}.pdf"
    write(pads, path)
    turn_pages(path, [pad.rotate for pad in pads])
    wanted = [(at, part, black) for at, pad in enumerate(pads) for part in range(len(pad.parts)) for black in (False, True)]
    wanted = [w for w in wanted if not w[2] or pads[w[0]].parts[w[1]]["edge"] == "picture"]
    measured = {}
    with tempfile.TemporaryDirectory() as folder:
        if wanted:
            parts = Path(folder) / "parts.pdf"
            write([alone(pads[at], part, black) for at, part, black in wanted], parts)
            turn_pages(parts, [pads[at].rotate for at, _, _ in wanted])
            measured = {each: ink(parts, page) for page, each in enumerate(wanted, 1)}
    pages = []
    for at, (pad, size) in enumerate(zip(pads, sizes(path))):
        told = [{**part, "turn": (-part["turn"] - pad.rotate) % 360} for part in pad.parts]
        boxes = [(measured[at, n, False], measured.get((at, n, True))) for n in range(len(told))]
        pages.append(truth_of(pad.kind, at + 1, size, told, boxes))
    keep(name, producer, layout, pages)
