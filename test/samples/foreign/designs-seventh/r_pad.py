"""A pad records what is drawn on one page: pt, origin top left, y down. Writers play it back in their own way."""

import contextlib
import functools
import json
from pathlib import Path

from PIL import ImageFont

from r_codes import DOT, modules, runs

TTF = Path("/usr/share/fonts/truetype")
FILES = {
    "S": ("liberation/LiberationSans-Regular.ttf", "liberation/LiberationSans-Bold.ttf", "Liberation Sans"),
    "N": ("liberation/LiberationSansNarrow-Regular.ttf", "liberation/LiberationSansNarrow-Bold.ttf", "Liberation Sans Narrow"),
    "F": ("liberation/LiberationSerif-Regular.ttf", "liberation/LiberationSerif-Bold.ttf", "Liberation Serif"),
    "M": ("liberation/LiberationMono-Regular.ttf", "liberation/LiberationMono-Bold.ttf", "Liberation Mono"),
    "L": ("lato/Lato-Regular.ttf", "lato/Lato-Black.ttf", "Lato"),
    "O": ("open-sans/OpenSans-Regular.ttf", "open-sans/OpenSans-Bold.ttf", "Open Sans"),
    "R": ("roboto/unhinted/RobotoTTF/Roboto-Regular.ttf", "roboto/unhinted/RobotoTTF/Roboto-Bold.ttf", "Roboto"),
    "D": ("dejavu/DejaVuSansCondensed.ttf", "dejavu/DejaVuSansCondensed-Bold.ttf", "DejaVu Sans Condensed"),
}
STANDARD = {"H": "S", "T": "F", "C": "M"}
WORDS = json.loads((Path(__file__).parent / "r_words.json").read_text())


def font_file(key):
    """`L` is the plain face, `LB` the bold one; H, T and C are the standard faces that a PDF does not carry."""
    plain, bold, _ = FILES[STANDARD.get(key[0], key[0])]
    return str(TTF / (bold if key.endswith("B") else plain))


@functools.cache
def _font(key):
    return ImageFont.truetype(font_file(key), 1000)


def width(text, key, size):
    return _font(key).getlength(text) * size / 1000


class Pad:
    def __init__(self, kind, size, rotate=0):
        self.kind, self.size, self.rotate = kind, size, rotate
        self.ops, self.parts, self._part, self._at = [], [], None, (0, 0)

    @contextlib.contextmanager
    def part(self, role, edge="ink", turn=0):
        """`turn` is how far the part lies turned clockwise."""
        self.parts.append({"role": role, "edge": edge, "turn": turn, "codes": []})
        self._part = len(self.parts) - 1
        yield self
        self._part = None

    @contextlib.contextmanager
    def turned(self, degrees, x, y, w, h):
        """What follows is drawn on a sheet of w x h that then lies with its corner at x, y, turned clockwise."""
        before = self._at
        if degrees == 0:
            self._at = (before[0] + x, before[1] + y)
        else:
            self._add("push", degrees, before[0] + x, before[1] + y, w, h)
            self._at = (0, 0)
        yield self
        self._at = before
        if degrees:
            self._add("pop")

    def place(self, draw, x, y, w, h, *content, turn=0, role="label", edge="ink", **more):
        """A part that `draw` draws on a sheet of w x h, which then lies at x, y, turned clockwise."""
        with self.part(role, edge, turn), self.turned(turn, x, y, w, h):
            draw(self, w, h, *content, **more)
        return self

    def _add(self, *op):
        self.ops.append([self._part, *op])

    def rect(self, x, y, w, h, fill=None, stroke=None, lw=1, dash=None):
        self._add("rect", x + self._at[0], y + self._at[1], w, h, fill, stroke, lw, dash)

    def box(self, x, y, w, h, lw=1, dash=None, stroke="#000000"):
        """A frame whose outer side is the box."""
        self.rect(x + lw / 2, y + lw / 2, w - lw, h - lw, None, stroke, lw, dash)

    def line(self, x1, y1, x2, y2, lw=1, color="#000000", dash=None):
        dx, dy = self._at
        self._add("line", x1 + dx, y1 + dy, x2 + dx, y2 + dy, lw, color, dash)

    def poly(self, points, fill="#000000"):
        self._add("poly", [(x + self._at[0], y + self._at[1]) for x, y in points], fill)

    def image(self, x, y, w, h, picture):
        self._add("image", x + self._at[0], y + self._at[1], w, h, picture)

    def text(self, x, y, text, font="H", size=8, align="l", color="#000000", fit=None):
        """`y` is the base line; `fit` the widest that the line may be."""
        wide = width(text, font, size)
        if fit and wide > fit:
            size, wide = size * fit / wide, fit
        left = x - {"l": 0, "c": wide / 2, "r": wide}[align]
        self._add("text", left + self._at[0], y + self._at[1], text, font, size, color)
        return wide

    def lines(self, x, y, lines, font="H", size=8, lead=None, **more):
        for each in lines:
            self.text(x, y, each, font, size, **more)
            y += lead or size * 1.15
        return y

    def para(self, x, y, w, text, font="H", size=8, lead=None, **more):
        line = ""
        for word in text.split(" "):
            if line and width(line + " " + word, font, size) > w:
                self.text(x, y, line, font, size, **more)
                y, line = y + (lead or size * 1.2), word
            else:
                line = f"{line} {word}" if line else word
        self.text(x, y, line, font, size, **more)
        return y + (lead or size * 1.2)

    def code(self, x, y, kind, text, h=None, dots=2, align="l", options=(), truth=True, row=3, shown=None):
        """Modules of `dots` dots at the left top corner x, y; bars `h` high. Returns width and height."""
        dark = modules(kind, text, options)
        m = dots * DOT
        tall = h if len(dark) == 1 else m * (row if kind == "pdf417" else 1)
        w = len(dark[0]) * m
        x -= {"l": 0, "c": w / 2, "r": w}[align]
        dx, dy = x + self._at[0], y + self._at[1]
        self._add("cells", [[dx + cx * m, dy + cy * tall, n * m, tall] for cx, cy, n in runs(dark)])
        if truth and self._part is not None:
            self.parts[self._part]["codes"].append({"symbology": kind, "text": shown or text})
        return w, tall * len(dark)
