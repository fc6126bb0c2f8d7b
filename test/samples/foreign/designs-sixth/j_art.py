"""A drawing as plain operations. Units are pt, origin top left, y down; turns are clockwise quarter turns."""

import functools
import re
import subprocess

from fontTools.ttLib import TTFont

MM = 72 / 25.4
DOT = MM / 8
_T = "/usr/share/fonts/truetype/"
FONTS = {
    "sans": _T + "liberation/LiberationSans-Regular.ttf",
    "sansb": _T + "liberation/LiberationSans-Bold.ttf",
    "narrow": _T + "liberation/LiberationSansNarrow-Regular.ttf",
    "narrowb": _T + "liberation/LiberationSansNarrow-Bold.ttf",
    "mono": _T + "liberation/LiberationMono-Regular.ttf",
    "monob": _T + "liberation/LiberationMono-Bold.ttf",
    "serif": _T + "liberation/LiberationSerif-Regular.ttf",
    "serifb": _T + "liberation/LiberationSerif-Bold.ttf",
    "cond": _T + "roboto/unhinted/RobotoCondensed-Regular.ttf",
    "condb": _T + "roboto/unhinted/RobotoCondensed-Bold.ttf",
    "lato": _T + "lato/Lato-Regular.ttf",
    "latob": _T + "lato/Lato-Bold.ttf",
    "black": _T + "lato/Lato-Black.ttf",
    "open": _T + "open-sans/OpenSans-Regular.ttf",
    "openb": _T + "open-sans/OpenSans-Bold.ttf",
    "deja": _T + "dejavu/DejaVuSans.ttf",
    "dejab": _T + "dejavu/DejaVuSans-Bold.ttf",
}


@functools.cache
def _metrics(font):
    face = TTFont(FONTS[font], lazy=True)
    return face.getBestCmap(), face["hmtx"].metrics, face["head"].unitsPerEm


def width_of(text, font, size):
    cmap, metrics, em = _metrics(font)
    return sum(metrics[cmap[ord(each)]][0] for each in text) * size / em


@functools.cache
def modules(kind, data, *options):
    """Rows of 0 and 1 as zint makes them."""
    command = ["zint", "-b", kind, "-d", data, "--dump", *options]
    rows = subprocess.run(command, check=True, capture_output=True, text=True).stdout.split("\n")
    return ["".join(f"{int(c, 16):04b}" for c in row.replace(" ", "")) for row in rows if row.strip()]


@functools.cache
def _maxicode(data, *options):
    command = ["zint", "-b", "MAXICODE", "-d", data, "--filetype=svg", "--direct", *options]
    return subprocess.run(command, check=True, capture_output=True, text=True).stdout


def _n(value):
    return f"{value:.3f}".rstrip("0").rstrip(".") if isinstance(value, float) else str(value)


class Art:
    def __init__(self, w, h):
        self.w, self.h, self.ops, self.codes = w, h, [], []

    def op(self, *fields):
        self.ops.append("\t".join(_n(each) for each in fields))

    def rect(self, x, y, w, h, fill="-", stroke="-", lw=0.7, dash="-"):
        self.op("R", x, y, w, h, fill, stroke, lw, dash)

    def box(self, x, y, w, h, lw=0.7, stroke="#000000", dash="-"):
        self.rect(x, y, w, h, "-", stroke, lw, dash)

    def line(self, x1, y1, x2, y2, lw=0.7, color="#000000", dash="-"):
        self.op("L", x1, y1, x2, y2, lw, color, dash)

    def circle(self, x, y, r, fill="-", stroke="-", lw=0.7):
        self.op("C", x, y, r, fill, stroke, lw)

    def poly(self, points, fill="#000000"):
        self.op("P", fill, *[float(v) for point in points for v in point])

    def text(self, x, y, words, font="sans", size=8, anchor="l", color="#000000", fit=None):
        """`y` is the baseline; `fit` shrinks the type until the words are no wider."""
        wide = width_of(words, font, size)
        if fit and wide > fit:
            size, wide = size * fit / wide, fit
        x -= {"l": 0, "c": wide / 2, "r": wide}[anchor]
        self.op("T", float(x), float(y), float(size), font, color, words)
        return wide

    def lines(self, x, y, each, font="sans", size=8, lead=None, anchor="l", color="#000000", fit=None):
        for words in each:
            self.text(x, y, words, font, size, anchor, color, fit)
            y += lead or size * 1.18
        return y

    def para(self, x, y, w, words, font="sans", size=8, lead=None, color="#000000"):
        line = ""
        for word in words.split():
            more = f"{line} {word}".strip()
            if line and width_of(more, font, size) > w:
                self.text(x, y, line, font, size, "l", color)
                y, more = y + (lead or size * 1.25), word
            line = more
        self.text(x, y, line, font, size, "l", color)
        return y + (lead or size * 1.25)

    def image(self, path, x, y, w, h):
        self.op("I", x, y, w, h, path)

    def put(self, art, x, y, turn=0):
        """`x`, `y` is the corner of the space that the turned art takes."""
        ox = x + {0: 0, 90: art.h, 180: art.w, 270: 0}[turn]
        oy = y + {0: 0, 90: 0, 180: art.h, 270: art.w}[turn]
        self.op("G", ox, oy, turn)
        self.ops.extend(art.ops)
        self.op("E")
        self.codes.extend(art.codes)

    def vtext(self, x, y, words, font="sans", size=8, turn=90, color="#000000"):
        """Words that run down (90) or up (270) from x, y on the baseline."""
        self.op("G", x, y, turn)
        self.text(0, 0, words, font, size, "l", color)
        self.op("E")

    def _bits(self, rows, x, y, module, heights):
        boxes = []
        for row, height in zip(rows, heights):
            for run in re.finditer("1+", row):
                boxes += [x + run.start() * module, y, len(run.group()) * module, height]
            y += height
        self.op("B", "#000000", *[float(each) for each in boxes])

    def bars(self, kind, data, x, y, h, module=2, anchor="l", say=None, options=()):
        """Linear symbol, module in dots of 1/8 mm. Gives its width in pt."""
        row = modules(kind, data, *options)[0].rstrip("0")
        wide = len(row) * module * DOT
        x -= {"l": 0, "c": wide / 2, "r": wide}[anchor]
        self._bits([row], x, y, module * DOT, [h])
        name = {"CODE128": "code128", "GS1_128": "gs1-128", "C25INTER": "itf", "CODE39": "code39", "ITF14": "itf-14"}
        self.codes.append({"symbology": name[kind], "text": say or data})
        return wide

    def matrix(self, kind, data, x, y, module, say=None, options=(), tall=1):
        """2-D symbol, module in dots. Gives width and height in pt."""
        rows = modules(kind, data, *options)
        last = max(row.rindex("1") for row in rows) + 1
        self._bits([row[:last] for row in rows], x, y, module * DOT, [module * tall * DOT] * len(rows))
        name = {"QRCODE": "qr", "DATAMATRIX": "datamatrix", "AZTEC": "aztec", "PDF417": "pdf417"}[kind]
        self.codes.append({"symbology": name, "text": say or data})
        return last * module * DOT, len(rows) * module * tall * DOT

    def ticks(self, kind, data, x, y, module=0.51 * MM, height=5.2 * MM):
        """4-state bars, read by nobody here: no code is noted."""
        rows = modules(kind, data)
        self._bits(rows, x, y, module, [height * 0.37, height * 0.26, height * 0.37])

    def maxicode(self, data, x, y, say=None, options=("--mode=4",)):
        svg, unit = _maxicode(data, *options), 26.9 * MM / 58
        for path in re.findall(r'<path d="([^"]+)"', svg):
            numbers = [float(each) for each in re.findall(r"[\d.]+", path)]
            if len(numbers) == 12:
                self.op("P", "#000000", *[(x if i % 2 == 0 else y) + v * unit for i, v in enumerate(numbers)])
        for cx, cy, r, ring in re.findall(r'<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)" stroke="#000000" stroke-width="([\d.]+)"', svg):
            self.circle(x + float(cx) * unit, y + float(cy) * unit, float(r) * unit, "-", "#000000", float(ring) * unit)
        self.codes.append({"symbology": "maxicode", "text": say or data})
