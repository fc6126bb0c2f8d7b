"""Documents written as markup: HTML by Chromium and WeasyPrint, XSL-FO by FOP. A part is the element with `data-part`."""

import base64
import html
import re
import subprocess
import tempfile
from pathlib import Path

import r_build
import r_writers
from r_codes import DOT, modules, runs

PT = 72 / 25.4


def code(kind, text, high=50, dots=3, options=(), row=3, style=""):
    """The code as an inline drawing: `high` in pt for linear ones, modules of `dots` dots."""
    dark = modules(kind, text, options)
    m = dots * DOT
    tall = high if len(dark) == 1 else m * (row if kind == "pdf417" else 1)
    w, h = len(dark[0]) * m, len(dark) * tall
    path = "".join(f"M{x * m:.3f} {y * tall:.3f}h{n * m:.3f}v{tall:.3f}h{-n * m:.3f}z" for x, y, n in runs(dark))
    size = f'width="{w:.3f}pt" height="{h:.3f}pt" viewBox="0 0 {w:.3f} {h:.3f}"'
    return f'<svg xmlns="http://www.w3.org/2000/svg" {size} style="display:block;{style}"><path d="{path}"/></svg>'


def image(picture, style):
    return f'<img style="{style}" src="data:image/png;base64,{base64.b64encode(r_writers.png(picture)).decode()}"/>'


def esc(*lines):
    return "<br/>".join(html.escape(each) for each in lines)


def chromium(source, path):
    call = ["chromium", "--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer", f"--print-to-pdf={path}", str(source)]
    subprocess.run(call, check=True, capture_output=True)


def weasyprint(source, path):
    subprocess.run(["weasyprint", str(source), str(path)], check=True, capture_output=True)


def fop(source, path):
    subprocess.run(["fop", "-fo", str(source), "-pdf", str(path)], check=True, capture_output=True)


WRITERS = {"chromium": chromium, "weasyprint": weasyprint, "fop": fop}
ALONE = """* {{ visibility: hidden !important }} [data-part="{k}"], [data-part="{k}"] * {{ visibility: visible !important }}"""
BLACK = """[data-part="{k}"] img {{ object-position: -99999px 0; background: #000 }}"""


def page(kind, size, body, *parts, rotate=0):
    """`parts` are (role, edge, turn clockwise, codes) in the order of their `data-part`."""
    told = [{"role": role, "edge": edge, "turn": turn, "codes": [{"symbology": s, "text": t} for s, t in codes]} for role, edge, turn, codes in parts]
    return {"kind": kind, "size": size, "body": body, "parts": told, "rotate": rotate}


def whole(pages, css, more):
    sizes = {each["size"] for each in pages}
    named = {size: f"p{n}" for n, size in enumerate(sorted(sizes))}
    rules = "".join(f"@page {name} {{ size: {w}pt {h}pt; margin: 0 }} .{name} {{ page: {name}; width: {w}pt; height: {h - 0.3}pt }}" for (w, h), name in named.items())
    first = max(sizes)
    bodies = "".join(f'<div class="sheet {named[each["size"]]}">{each["body"]}</div>' for each in pages)
    return (
        f'<!DOCTYPE html><html><head><meta charset="utf-8"/><style>@page {{ size: {first[0]}pt {first[1]}pt; margin: 0 }} {rules} '
        "* { box-sizing: border-box } html, body { margin: 0; padding: 0 } "
        ".sheet { position: relative; overflow: hidden; break-after: page } .sheet:last-child { break-after: auto } "
        f"{css} {more}</style></head><body>{bodies}</body></html>"
    )


def fo_whole(pages, _, only):
    """FO: a part not wanted is taken away; what stands outside of the parts too, where one is asked for."""
    masters, flows = [], []
    for n, each in enumerate(pages):
        w, h = each["size"]
        masters.append(f'<fo:simple-page-master master-name="m{n}" page-width="{w}pt" page-height="{h}pt"><fo:region-body/></fo:simple-page-master>')
        body = each["body"]
        if only is not None:
            blocks = re.findall(r"<!--part (\d+)-->(.*?)<!--end-->", body, flags=re.S)
            body = "".join(text for k, text in blocks if int(k) == only) or "<fo:block/>"
        flows.append(f'<fo:page-sequence master-reference="m{n}"><fo:flow flow-name="xsl-region-body">{body}</fo:flow></fo:page-sequence>')
    return (
        '<?xml version="1.0" encoding="utf-8"?><fo:root xmlns:fo="http://www.w3.org/1999/XSL/Format" font-family="Helvetica">'
        f"<fo:layout-master-set>{''.join(masters)}</fo:layout-master-set>{''.join(flows)}</fo:root>"
    )


def fo_at(x, y, w, h, inner, turn=0, more=""):
    """A block at a place of the page; `turn` clockwise, as FOP counts it the other way round."""
    turned = f' reference-orientation="{-turn % 360}"' if turn else ""
    return (
        f'<fo:block-container absolute-position="fixed" left="{x:.2f}pt" top="{y:.2f}pt" width="{w:.2f}pt" height="{h:.2f}pt"{turned} {more}>'
        f"<fo:block>{inner}</fo:block></fo:block-container>"
    )


def fo_code(*args, **more):
    return f"<fo:instream-foreign-object>{code(*args, **more)}</fo:instream-foreign-object>"


def document(name, producer, pages, css="", layout=None):
    layout = layout or re.sub(r"-\d+$", "", name)
    if r_build.ONLY and not any(name.startswith(each) for each in r_build.ONLY):
        return
    path = r_build.OUT / f"{name}.pdf"
    build = fo_whole if producer == "fop" else whole
    turns = [each["rotate"] for each in pages]
    with tempfile.TemporaryDirectory() as folder:

        def write(to, more):
            source = Path(folder) / ("in.fo" if producer == "fop" else "in.html")
            source.write_text(build(pages, css, more))
            WRITERS[producer](source, to)
            r_build.turn_pages(to, turns)
            return to

        write(path, None if producer == "fop" else "")
        boxes = {}
        for k in range(max(len(each["parts"]) for each in pages)):
            shown = write(Path(folder) / f"{k}.pdf", k if producer == "fop" else ALONE.format(k=k))
            black = None
            if any(len(each["parts"]) > k and each["parts"][k]["edge"] == "picture" for each in pages):
                black = write(Path(folder) / f"{k}b.pdf", (ALONE + BLACK).format(k=k))
            for n, each in enumerate(pages, 1):
                if len(each["parts"]) > k:
                    boxes[n, k] = (r_build.ink(shown, n), black and r_build.ink(black, n))
    pages_told = []
    for n, (each, size) in enumerate(zip(pages, r_build.sizes(path)), 1):
        told = [{**part, "turn": (-part["turn"] - each["rotate"]) % 360} for part in each["parts"]]
        pages_told.append(r_build.truth_of(each["kind"], n, size, told, [boxes[n, k] for k in range(len(told))]))
    r_build.keep(name, producer, layout, pages_told)
