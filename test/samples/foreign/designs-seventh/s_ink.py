"""A list of things to draw: pt, origin top left, y down. Writers turn it into pages."""
import os
import subprocess
import tempfile

from fontTools.ttLib import TTFont
from PIL import Image

LIB = "/usr/share/fonts/truetype/liberation/Liberation"
URW = "/usr/share/fonts/opentype/urw-base35/"
FONTS = {
    "H": LIB + "Sans-Regular.ttf",
    "HB": LIB + "Sans-Bold.ttf",
    "HI": LIB + "Sans-Italic.ttf",
    "T": LIB + "Serif-Regular.ttf",
    "TB": LIB + "Serif-Bold.ttf",
    "TI": LIB + "Serif-Italic.ttf",
    "C": LIB + "Mono-Regular.ttf",
    "CB": LIB + "Mono-Bold.ttf",
    "N": LIB + "SansNarrow-Regular.ttf",
    "NB": LIB + "SansNarrow-Bold.ttf",
    "D": "/usr/share/fonts/truetype/dejavu/DejaVuSansCondensed.ttf",
    "DB": "/usr/share/fonts/truetype/dejavu/DejaVuSansCondensed-Bold.ttf",
    "L": "/usr/share/fonts/truetype/lato/Lato-Regular.ttf",
    "LB": "/usr/share/fonts/truetype/lato/Lato-Black.ttf",
    "J": "/usr/share/fonts/truetype/droid/DroidSansFallbackFull.ttf",
    "AR": "/usr/share/fonts/truetype/noto/NotoSansArabic-Regular.ttf",
    "TH": "/usr/share/fonts/truetype/noto/NotoSansThai-Regular.ttf",
    "THB": "/usr/share/fonts/truetype/noto/NotoSansThai-Bold.ttf",
}
STANDARD = {
    "H": "Helvetica", "HB": "Helvetica-Bold", "HI": "Helvetica-Oblique", "T": "Times-Roman", "TB": "Times-Bold", "TI": "Times-Italic",
    "C": "Courier", "CB": "Courier-Bold",
}
MM = 72 / 25.4
_open = {}


def font(key):
    """The font's file with its map of characters."""
    if key not in _open:
        opened = TTFont(FONTS[key])
        _open[key] = (opened, opened.getBestCmap(), opened["hmtx"], opened["head"].unitsPerEm)
    return _open[key]


def width(text, size, key="H"):
    _, cmap, hmtx, em = font(key)
    return sum(hmtx[cmap[ord(c)]][0] if ord(c) in cmap else em * 0.5 for c in text) * size / em


KINDS = {
    "code128": ["-b", "20"], "gs1-128": ["-b", "16"], "itf": ["-b", "3"], "itf-14": ["-b", "89"], "code39": ["-b", "8"], "ean13": ["-b", "13"],
    "datamatrix": ["-b", "71", "--square"], "qr": ["-b", "58", "--secure=2"], "pdf417": ["-b", "55", "--cols=6"], "aztec": ["-b", "92"],
    "maxicode": ["-b", "57", "--mode=4"],
}
FLAT = ("code128", "gs1-128", "itf", "itf-14", "code39", "ean13")


def matrix(kind, data, scale="0.5"):
    """The symbol as a picture of a pixel a module, ink 0."""
    with tempfile.TemporaryDirectory() as folder:
        out = os.path.join(folder, "c.png")
        more = ["--height=1"] if kind in FLAT else []
        subprocess.run(
            ["zint", *KINDS[kind], "--notext", f"--scale={scale}", "-w", "0", "--vwhitesp=0", "--border=0", *more, "-o", out, "-d", data], check=True,
            stderr=subprocess.DEVNULL,
        )
        picture = Image.open(out).convert("L").point(lambda v: 255 if v > 128 else 0).convert("1")
        return picture.crop((0, 0, picture.width, 1)) if kind in FLAT else picture


class Ink:
    def __init__(self):
        self.ops = []
        self.codes = []

    def text(self, x, y, s, size=9, f="H", a="l", g=0, fit=None):
        """One line, `y` its baseline; `a` l, m or r; `g` grey 0 black to 1 white. What a font of the far east lacks is set in another."""
        if f in ("J", "TH", "THB", "AR"):
            runs = []
            for c in s:
                here = f if ord(c) in font(f)[1] and not c.isascii() else "HB" if f == "THB" else "H"
                runs = runs[:-1] + [(here, runs[-1][1] + c)] if runs and runs[-1][0] == here else runs + [(here, c)]
            w = sum(width(part, size, here) for here, part in runs)
            x -= {"l": 0, "m": w / 2, "r": w}[a]
            for here, part in runs:
                self.ops.append(("text", x, y, part, size, here, g))
                x += width(part, size, here)
            return x
        w = width(s, size, f)
        if fit and w > fit:
            size, w = size * fit / w, fit
        x -= {"l": 0, "m": w / 2, "r": w}[a]
        self.ops.append(("text", x, y, s, size, f, g))
        return x + w

    def lines(self, x, y, rows, size=9, f="H", lead=None, **more):
        for row in rows:
            self.text(x, y, row, size, f, **more)
            y += lead or size * 1.18
        return y

    def rect(self, x, y, w, h, line=None, fill=None, g=0, dash=None):
        self.ops.append(("rect", x, y, w, h, line, fill, g, dash))

    def line(self, x1, y1, x2, y2, w=0.7, g=0, dash=None):
        self.ops.append(("line", x1, y1, x2, y2, w, g, dash))

    def poly(self, points, g=0):
        self.ops.append(("poly", points, g))

    def image(self, x, y, w, h, picture):
        self.ops.append(("image", x, y, w, h, picture))

    def code(self, kind, data, x, y, mod, h=None, upright=False, as_image=False, truth=None):
        """Bars or a matrix with modules of `mod` pt; gives width and height. `upright`: bars lie like the rungs of a ladder."""
        grid = matrix(kind, data)
        self.codes.append({"symbology": kind, "text": truth or data})
        if as_image:
            w, tall = grid.width * mod, h if kind in FLAT else grid.height * mod
            self.image(x, y, w, tall, grid.resize((grid.width * 3, 3 if kind in FLAT else grid.height * 3)))
            return w, tall
        for r in range(grid.height):
            c = 0
            while c < grid.width:
                if grid.getpixel((c, r)):
                    c += 1
                    continue
                end = c
                while end < grid.width and not grid.getpixel((end, r)):
                    end += 1
                if kind not in FLAT:
                    self.rect(x + c * mod, y + r * mod, (end - c) * mod, mod * 1.003, fill=True)
                elif upright:
                    self.rect(x, y + c * mod, h, (end - c) * mod, fill=True)
                else:
                    self.rect(x + c * mod, y, (end - c) * mod, h, fill=True)
                c = end
        if kind not in FLAT:
            return grid.width * mod, grid.height * mod
        return (h, grid.width * mod) if upright else (grid.width * mod, h)

    def maxicode(self, x, y, data):
        """At its size by the standard, about 28 by 27 mm."""
        grid = matrix("maxicode", data, "2")
        self.codes.append({"symbology": "maxicode", "text": data})
        w = 27.9 * MM
        self.image(x, y, w, w * grid.height / grid.width, grid)

    def sub(self, ink, x, y, turn=0, w=0, h=0, scale=1):
        """Another drawing of `w` by `h`, turned clockwise, the upper left of its bounds at x, y."""
        s = scale
        m = {0: (s, 0, 0, s, x, y), 90: (0, s, -s, 0, x + h * s, y), 180: (-s, 0, 0, -s, x + w * s, y + h * s), 270: (0, -s, s, 0, x, y + w * s)}
        self.ops.append(("sub", ink, m[turn]))
        return self


def box_of(points):
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return min(xs), min(ys), max(xs) - min(xs), max(ys) - min(ys)


def at(m, x, y):
    a, b, c, d, e, f = m
    return a * x + c * y + e, b * x + d * y + f


def times(m, n):
    """First n, then m."""
    a, b, c, d, e, f = n
    (x, y) = at(m, e, f)
    return (m[0] * a + m[2] * b, m[1] * a + m[3] * b, m[0] * c + m[2] * d, m[1] * c + m[3] * d, x, y)
