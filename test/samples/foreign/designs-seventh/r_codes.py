"""Bar codes as rows of modules, drawn by zint. A dot is 0.125 mm, in pt."""

import functools
import subprocess
import tempfile
from pathlib import Path

import numpy
from PIL import Image

DOT = 0.125 * 72 / 25.4
ZINT = {
    "code128": ["-b", "CODE128"],
    "gs1-128": ["-b", "GS1_128"],
    "itf": ["-b", "C25INTER"],
    "code39": ["-b", "CODE39"],
    "datamatrix": ["-b", "DATAMATRIX", "--square"],
    "qr": ["-b", "QRCODE", "--secure=2"],
    "aztec": ["-b", "AZTEC"],
    "pdf417": ["-b", "PDF417"],
    "four-state": ["-b", "DAFT"],
    "ean13": ["-b", "EANX"],
}


def zint(args, text, scale):
    with tempfile.TemporaryDirectory() as folder:
        out = Path(folder) / "code.png"
        subprocess.run(["zint", *args, "-d", text, f"--scale={scale}", "--notext", "-o", str(out)], check=True)
        return Image.open(out).convert("L").copy()


@functools.cache
def modules(kind, text, options=()):
    """Rows of dark modules; one row where the bars are all alike."""
    dark = numpy.array(zint([*ZINT[kind], *options], text, 1)) < 128
    ys, xs = numpy.where(dark.any(axis=1))[0], numpy.where(dark.any(axis=0))[0]
    dark = dark[ys[0] : ys[-1] + 1 : 2, xs[0] : xs[-1] + 1 : 2]
    if kind in ("code128", "gs1-128", "itf", "code39"):
        return dark[len(dark) // 2 :][:1]
    if kind == "ean13":
        return dark[3:4]
    if kind == "pdf417":
        rows = [dark[0]]
        for row in dark[1:]:
            if (row != rows[-1]).any():
                rows.append(row)
        return numpy.array(rows)
    return dark


def runs(dark):
    """Dark runs of each row: (column, row, length)."""
    for y, row in enumerate(dark):
        x = 0
        while x < len(row):
            end = x
            while end < len(row) and row[end]:
                end += 1
            if end > x:
                yield x, y, end - x
            x = end + 1


def maxicode(text, primary):
    """A picture of the symbol, 28.14 mm wide in print."""
    return zint(["-b", "MAXICODE", "--mode=2", f"--primary={primary}"], text, 4).convert("1")


def picture(kind, text, options=(), dots=1, height=0):
    """The code as a 1-bit picture of `dots` pixels a module; linear codes `height` pixels high."""
    dark = modules(kind, text, options)
    dark = numpy.repeat(dark, dots, axis=1)
    dark = numpy.repeat(dark, height if len(dark) == 1 else dots * (3 if kind == "pdf417" else 1), axis=0)
    return Image.fromarray(~dark)
