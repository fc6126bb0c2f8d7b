"""Pages of parts → PDF and truth. Each label's box is the ink of the same page with only that label on it, by poppler at 300 dpi."""
import json
import math
import os
import re
import subprocess
import tempfile

import numpy as np
from PIL import Image, ImageFilter

from s_ink import Ink

DPI = 300
Image.MAX_IMAGE_PIXELS = None


def grey(pdf, page, dpi=DPI):
    with tempfile.TemporaryDirectory() as folder:
        out = os.path.join(folder, "p")
        subprocess.run(["pdftoppm", "-r", str(dpi), "-gray", "-cropbox", "-f", str(page), "-l", str(page), "-singlefile", pdf, out], check=True)
        return np.asarray(Image.open(out + ".pgm")).copy()


def bounds(pixels, dpi=DPI, level=240):
    ys, xs = np.where(pixels < level)
    if not len(ys):
        raise ValueError("nothing is drawn")
    k = 72 / dpi
    left, top = xs.min() * k, ys.min() * k
    return tidy(left, top, (xs.max() + 1) * k - left, (ys.max() + 1) * k - top)


def tidy(x, y, w, h):
    return {"x": round(float(x), 2), "y": round(float(y), 2), "width": round(float(w), 2), "height": round(float(h), 2)}


def sizes(pdf):
    said = subprocess.run(["pdfinfo", "-f", "1", "-l", "999", pdf], check=True, capture_output=True, text=True).stdout
    boxes = re.findall(r"Page +\d+ size: +([\d.]+) x ([\d.]+)", said)
    turns = re.findall(r"Page +\d+ rot: +(\d+)", said)
    return [(float(h), float(w)) if int(t) % 180 else (float(w), float(h)) for (w, h), t in zip(boxes, turns)]


class Part:
    """`draw` gives the part's ink. `turn`: clockwise turn that makes it upright."""

    def __init__(self, role, draw, edge="frame", turn=0):
        self.role, self.draw, self.edge, self.turn = role, draw, edge, turn


class Page:
    def __init__(self, kind, w, h, parts, **more):
        self.kind, self.w, self.h, self.parts, self.more = kind, w, h, parts, more


def whole(parts, chosen=None):
    ink = Ink()
    for i, part in enumerate(parts):
        if chosen is None or i == chosen:
            made = part.draw()
            ink.ops += made.ops
            ink.codes += made.codes
    return ink


def document(folder, name, producer, writer, pages, scan=None):
    """`writer()` gives a fresh writer. With `scan` the pages are drawn, printed to pictures and put through its effect."""
    path = os.path.join(folder, name + ".pdf")
    made = writer()
    for each in pages:
        made.page(whole(each.parts), each.w, each.h, **each.more)
    made.save(path)
    truths = []
    shown = sizes(path)
    with tempfile.TemporaryDirectory() as temp:
        for number, each in enumerate(pages, 1):
            w, h = shown[number - 1]
            truth = {"page": number, "kind": each.kind, "width": w, "height": h, "labels": []}
            for i, part in enumerate(each.parts):
                if part.role == "other":
                    continue
                alone = writer()
                alone.page(whole(each.parts, i), each.w, each.h, **each.more)
                file = os.path.join(temp, "a.pdf")
                alone.save(file)
                lossy = getattr(alone, "quality", None) is not None
                ink = bounds(grey(file, 1), level=160 if lossy else 240)
                if part.role == "slip":
                    truth["slip"] = ink
                    continue
                label = {"box": tidy(0, 0, w, h) if part.edge == "page" else ink, "turn": part.turn, "edge": part.edge, "role": part.role, "codes": part.draw().codes}
                if part.edge in ("page", "picture"):
                    label["ink"] = ink
                truth["labels"].append(label)
            truths.append(truth)
    if scan:
        scanned(path, truths, scan)
    with open(os.path.join(folder, name + ".json"), "w", encoding="utf-8") as file:
        layout = re.sub(r"-\d+$", "", name)
        json.dump({"producer": producer, "layout": layout, "half": "seventh-sight", "pages": truths}, file, ensure_ascii=False, indent=1)
        file.write("\n")


def spun(box, w, h, degrees):
    a = math.radians(degrees)
    corners = [(box["x"] + dx * box["width"] - w / 2, box["y"] + dy * box["height"] - h / 2) for dx in (0, 1) for dy in (0, 1)]
    turned = [(x * math.cos(a) - y * math.sin(a) + w / 2, x * math.sin(a) + y * math.cos(a) + h / 2) for x, y in corners]
    xs, ys = [p[0] for p in turned], [p[1] for p in turned]
    return tidy(min(xs), min(ys), max(xs) - min(xs), max(ys) - min(ys))


def scanned(path, truths, scan):
    """`scan(page index)` gives dpi, degrees clockwise, an effect on the grey pixels, and how they are stored."""
    import img2pdf

    with tempfile.TemporaryDirectory() as folder:
        parts = []
        for i, truth in enumerate(truths):
            dpi, degrees, effect, store = scan(i)
            w, h = truth["width"], truth["height"]
            picture = Image.fromarray(grey(path, i + 1, dpi)).rotate(-degrees, resample=Image.BICUBIC, fillcolor=255)
            picture = effect(picture)
            file = os.path.join(folder, f"{i}.{'tif' if store == 'g4' else 'jpg'}")
            if store == "g4":
                picture.point(lambda v: 255 if v > 140 else 0).convert("1").save(file, compression="group4", dpi=(dpi, dpi))
            else:
                picture.save(file, quality=store, optimize=True, progressive=True, dpi=(dpi, dpi))
            parts.append(file + ".pdf")
            with open(parts[-1], "wb") as out:
                out.write(img2pdf.convert(file, layout_fun=img2pdf.get_layout_fun((w, h))))
            for label in truth["labels"]:
                if degrees and label["edge"] != "page":
                    label.update(straight=label["box"], skew=degrees, box=spun(label["box"], w, h, degrees))
                if "ink" in label and degrees:
                    label["ink"] = spun(label["ink"], w, h, degrees)
            if "slip" in truth and degrees:
                truth["slip"] = spun(truth["slip"], w, h, degrees)
        subprocess.run(["qpdf", "--empty", "--pages", *parts, "--", path], check=True)
    for truth, (w, h) in zip(truths, sizes(path)):
        truth["width"], truth["height"] = w, h


def paper(seed, noise=6, shade=0, blur=0.6, edge=0, folds=(), tone=244, phone=False):
    """Grain, light that falls off to one side, pale folds, a scanner's black edge, a phone's shadow."""

    def effect(picture):
        rng = np.random.default_rng(seed)
        a = np.asarray(picture.filter(ImageFilter.GaussianBlur(blur))).astype(np.float32)
        h, w = a.shape
        a = 28 + a * (tone - 28) / 255
        yy, xx = np.mgrid[0:h, 0:w].astype(np.float32)
        a -= shade * (xx / w * 0.7 + yy / h * 0.3)
        if phone:
            a -= 45 * np.exp(-(((xx - 0.95 * w) / (0.5 * w)) ** 2 + ((yy - 0.9 * h) / (0.45 * h)) ** 2))
        for spot in folds:
            a += -18 * np.exp(-(((yy - spot * h) / 2.5) ** 2)) + 9 * np.exp(-(((yy - spot * h - 6) / 3) ** 2))
        a += rng.normal(0, noise, a.shape)
        if edge:
            a[:, : int(edge * w)] = rng.normal(25, 8, (h, int(edge * w)))
        return Image.fromarray(np.clip(a, 0, 255).astype(np.uint8))

    return effect
