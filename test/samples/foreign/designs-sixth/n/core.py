"""Builds documents, measures their labels and writes their truth. Run by `python3 lot1.py OUT [NAME…]`."""
import json
import os
import re
import subprocess
import sys
import tempfile
import numpy as np
from PIL import Image

WORK = os.environ.get('SCRATCH') or tempfile.mkdtemp()


def run(*args, **more):
    subprocess.run(args, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, **more)


def page_sizes(pdf):
    said = subprocess.run(['pdfinfo', '-l', '99', pdf], capture_output=True, text=True, check=True).stdout
    sizes = [(float(a), float(b)) for a, b in re.findall(r'Page\s+\d+ size:\s+([\d.]+) x ([\d.]+)', said)]
    turns = [int(a) for a in re.findall(r'Page\s+\d+ rot:\s+(\d+)', said)]
    return [(h, w) if t % 180 else (w, h) for (w, h), t in zip(sizes, turns)]


def shown(pdf, page, dpi=300):
    """The page as grey pixels, as poppler draws it."""
    stem = f'{WORK}/m'
    run('pdftoppm', '-r', str(dpi), '-gray', '-f', str(page), '-l', str(page), '-singlefile', pdf, stem)
    return np.asarray(Image.open(stem + '.pgm'))


def ink_box(pdf, page):
    dark = shown(pdf, page) < 220
    rows, cols = np.flatnonzero(dark.any(1)), np.flatnonzero(dark.any(0))
    if not len(rows):
        return None
    per = 72 / 300
    x, y = cols[0] * per, rows[0] * per
    return {'x': round(x, 2), 'y': round(y, 2), 'width': round((cols[-1] + 1) * per - x, 2), 'height': round((rows[-1] + 1) * per - y, 2)}


def packed(pdf):
    """The same document in fewer bytes, that the set stays small."""
    run('qpdf', '--recompress-flate', '--compression-level=9', '--object-streams=generate', pdf, f'{WORK}/packed.pdf')
    if os.path.getsize(f'{WORK}/packed.pdf') < os.path.getsize(pdf):
        os.replace(f'{WORK}/packed.pdf', pdf)


class Label:
    """`black` is for pictures: the box is the picture's edge, measured as a black area."""

    def __init__(self, codes, edge='ink', turn=0, role='label'):
        self.codes, self.edge, self.turn, self.role = codes, edge, turn, role


class Page:
    def __init__(self, kind, labels=(), slip=False):
        self.kind, self.labels, self.slip = kind, list(labels), slip


class Doc:
    """`build(only, path)` makes the PDF: whole for None, or only each page's label number `only`, a picture as a black area where it is
    ('black', number); 'slip' for the slip alone."""

    def __init__(self, name, producer, pages, build, scan=None):
        self.name, self.producer, self.pages, self.build, self.scan = name, producer, pages, build, scan


def turned_box(box, width, height, degrees):
    """Bounds of a box after the page was turned clockwise about its centre."""
    a = np.radians(degrees)
    cx, cy = width / 2, height / 2
    xs, ys = [], []
    for x in (box['x'], box['x'] + box['width']):
        for y in (box['y'], box['y'] + box['height']):
            xs.append(cx + (x - cx) * np.cos(a) - (y - cy) * np.sin(a))
            ys.append(cy + (x - cx) * np.sin(a) + (y - cy) * np.cos(a))
    return {'x': round(min(xs), 2), 'y': round(min(ys), 2), 'width': round(max(xs) - min(xs), 2), 'height': round(max(ys) - min(ys), 2)}


def make(doc, out):
    pdf, part = f'{out}/{doc.name}.pdf', f'{WORK}/part.pdf'
    plain = f'{WORK}/plain.pdf' if doc.scan else pdf
    doc.build(None, plain)
    sizes = page_sizes(plain)
    assert len(sizes) == len(doc.pages), (doc.name, len(sizes), len(doc.pages))
    truth = [{'page': n + 1, 'kind': p.kind, 'width': w, 'height': h, 'labels': []} for n, (p, (w, h)) in enumerate(zip(doc.pages, sizes))]
    whole = [shown(plain, n + 1) for n in range(len(sizes))]
    most = max(len(p.labels) for p in doc.pages)
    for j in range(most):
        doc.build(j, part)
        inks = [ink_box(part, n + 1) if len(p.labels) > j else None for n, p in enumerate(doc.pages)]
        for n, p in enumerate(doc.pages):
            if len(p.labels) > j:
                alone = shown(part, n + 1)
                gone = (alone < 128) & (whole[n] > 160)
                assert gone.sum() < 40 + 0.01 * (alone < 128).sum(), (doc.name, n + 1, j, 'lies elsewhere in the whole page', int(gone.sum()))
        black = None
        if any(len(p.labels) > j and p.labels[j].edge == 'picture' for p in doc.pages):
            doc.build(('black', j), part)
            black = [ink_box(part, n + 1) if len(p.labels) > j else None for n, p in enumerate(doc.pages)]
        for n, p in enumerate(doc.pages):
            if len(p.labels) <= j:
                continue
            label, (w, h) = p.labels[j], sizes[n]
            assert inks[n], (doc.name, n + 1, j, 'no ink')
            box = {'picture': black and black[n], 'page': {'x': 0, 'y': 0, 'width': w, 'height': h}}.get(label.edge, inks[n])
            told = {'box': box, 'turn': label.turn, 'edge': label.edge}
            if label.edge in ('picture', 'page'):
                told['ink'] = inks[n]
            truth[n]['labels'].append({**told, 'role': label.role, 'codes': label.codes})
    if any(p.slip for p in doc.pages):
        doc.build('slip', part)
        for n, p in enumerate(doc.pages):
            if p.slip:
                truth[n]['slip'] = ink_box(part, n + 1)
    if doc.scan:
        truth = doc.scan(plain, pdf, truth)
    if doc.producer in ('chromium', 'libreoffice', 'xetex'):
        packed(pdf)
    said = {'producer': doc.producer, 'layout': re.sub(r'-\d+$', '', doc.name), 'half': 'sixth-sight', 'pages': truth}
    with open(f'{out}/{doc.name}.json', 'w', encoding='utf8') as f:
        json.dump(said, f, ensure_ascii=False)
    print(doc.name, len(sizes), 'pages', sum(len(p.labels) for p in doc.pages), 'labels', os.path.getsize(pdf) // 1024, 'KB', flush=True)


def main(docs):
    out, names = sys.argv[1], sys.argv[2:]
    for doc in docs:
        if not names or any(doc.name.startswith(each) for each in names):
            make(doc, out)
