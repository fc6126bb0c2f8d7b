"""Labels as lists of simple shapes, in mm from the label's top left, y down; text sizes in pt; bars in whole steps of 1/8 mm."""
import subprocess
from functools import lru_cache

ZINT = {'code128': 'CODE128', 'itf': 'INTERLEAVED2OF5', 'datamatrix': 'DATAMATRIX', 'qrcode': 'QRCODE', 'pdf417': 'PDF417',
        'aztec': 'AZTEC', 'code39': 'CODE39', 'ean13': 'EANX'}


@lru_cache(None)
def modules(kind, text, *more):
    """Rows of modules, '1' is dark."""
    name = ZINT[kind]
    out = subprocess.run(['zint', '--dump', '-b', name, *more, '-d', text], capture_output=True, text=True, check=True).stdout
    rows = [''.join(f'{int(c, 16):04b}' for c in line.replace(' ', '')) for line in out.strip().split('\n')]
    wide = max(len(r.rstrip('0')) for r in rows)
    return [r.ljust(wide, '0')[:wide] for r in rows]


def runs(row):
    """Dark runs of a row: (start, length)."""
    at = 0
    while at < len(row):
        if row[at] == '1':
            end = at
            while end < len(row) and row[end] == '1':
                end += 1
            yield at, end - at
            at = end
        else:
            at += 1


class Ink:
    def __init__(self, width, height):
        self.w, self.h, self.ops, self.codes = width, height, [], []

    def rect(self, x, y, w, h, line=0.0, fill=None, dash=None, radius=0):
        self.ops.append(('rect', x, y, w, h, line, fill, dash, radius))
        return self

    def line(self, x1, y1, x2, y2, w=0.3, dash=None, grey=0):
        self.ops.append(('line', x1, y1, x2, y2, w, dash, grey))
        return self

    def poly(self, points, fill=0):
        self.ops.append(('poly', points, fill))
        return self

    def disc(self, x, y, r, fill=0, line=0):
        self.ops.append(('disc', x, y, r, fill, line))
        return self

    def text(self, x, y, words, size=8, bold=False, anchor='l', grey=0, rot=0, face='sans'):
        """Baseline at y; `rot` is clockwise about (x, y); several lines part by newline. `grey` 0 black to 255 white."""
        for n, each in enumerate(str(words).split('\n')):
            step = n * size * 0.353 * 1.18
            dx, dy = {0: (0, step), 90: (-step, 0), 270: (step, 0)}[rot]
            self.ops.append(('text', x + dx, y + dy, each, size, bold, anchor, grey, rot, face))
        return self

    def code(self, kind, text, x, y, module=0.375, height=20.0, turned=False, tell=True, more=()):
        """Top left of the dark ink at x, y. `turned`: ladder bars (linear ones), read downwards. Returns (width, height) of it."""
        rows = modules(kind, text, *more)
        linear = len(rows) == 1
        tall = 3 if kind == 'pdf417' else 1
        wide = len(rows[0]) * module
        high = height if linear else len(rows) * module * tall
        cells = []
        for n, row in enumerate(rows):
            for at, length in runs(row):
                cell = (at * module, 0 if linear else n * module * tall, length * module, high if linear else module * tall)
                cells.append((cell[1], cell[0], cell[3], cell[2]) if turned else cell)
        self.ops.append(('cells', x, y, module, cells))
        if tell:
            self.codes.append({'symbology': kind, 'text': text})
        return (high, wide) if turned else (wide, high)

    def put(self, other, x, y):
        """Another drawing inside this one, upright."""
        for op in other.ops:
            kind, *rest = op
            if kind == 'poly':
                self.ops.append(('poly', [(px + x, py + y) for px, py in rest[0]], rest[1]))
            elif kind == 'line':
                self.ops.append(('line', rest[0] + x, rest[1] + y, rest[2] + x, rest[3] + y, *rest[4:]))
            else:
                self.ops.append((kind, rest[0] + x, rest[1] + y, *rest[2:]))
        self.codes += other.codes
        return self


def mark(ink, x, y, size, which):
    """Invented marks that stand where a carrier's would."""
    s = size
    if which == 0:
        ink.poly([(x, y + s), (x + s * 0.5, y), (x + s, y + s), (x + s * 0.5, y + s * 0.65)])
    elif which == 1:
        ink.disc(x + s / 2, y + s / 2, s / 2).disc(x + s * 0.6, y + s * 0.4, s * 0.28, fill=255)
    elif which == 2:
        for n in range(3):
            ink.poly([(x + n * s * 0.4, y + s), (x + n * s * 0.4 + s * 0.25, y + s), (x + n * s * 0.4 + s * 0.55, y), (x + n * s * 0.4 + s * 0.3, y)])
    elif which == 3:
        ink.rect(x, y, s, s, fill=0).poly([(x + s * 0.2, y + s * 0.8), (x + s * 0.5, y + s * 0.2), (x + s * 0.8, y + s * 0.8)], fill=255)
    else:
        ink.poly([(x, y), (x + s * 1.4, y + s * 0.5), (x, y + s), (x + s * 0.3, y + s * 0.5)])
    return ink
