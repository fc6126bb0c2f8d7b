"""Writers of PDF files that play a pad back: ReportLab, fpdf2, MuPDF and, by SVG, librsvg and Inkscape. Each takes pads and a path."""

import base64
import datetime
import html
import io
import math
import os
import subprocess
import tempfile
from pathlib import Path

from r_pad import FILES, STANDARD, font_file

BASE = {"H": "Helvetica", "HB": "Helvetica-Bold", "T": "Times-Roman", "TB": "Times-Bold", "C": "Courier", "CB": "Courier-Bold"}

FACES = [key + bold for key in FILES for bold in ("", "B")]


def rgb(color):
    return tuple(int(color[i : i + 2], 16) / 255 for i in (1, 3, 5)) if color else None


def placed(degrees, x, y, w, h):
    """Where the origin of a sheet lies that was turned clockwise into the corner x, y; cosine and sine."""
    ox, oy = {0: (x, y), 90: (x + h, y), 180: (x + w, y + h), 270: (x, y + w)}[degrees]
    return ox, oy, round(math.cos(math.radians(degrees))), round(math.sin(math.radians(degrees)))


def upward(height, degrees, x, y, w, h):
    """The same as a PDF matrix for pages of this height."""
    ox, oy, c, s = placed(degrees, x, y, w, h)
    return c, -s, s, c, ox - s * height, height - oy - c * height


def png(picture):
    out = io.BytesIO()
    picture.save(out, "PNG", optimize=True)
    return out.getvalue()


def reportlab(pads, path):
    from reportlab.lib.utils import ImageReader
    from reportlab.pdfbase import pdfmetrics
    from reportlab.pdfbase.ttfonts import TTFont
    from reportlab.pdfgen.canvas import Canvas

    page = Canvas(str(path), pageCompression=1, invariant=1)
    for pad in pads:
        h = pad.size[1]
        page.setPageSize(pad.size)
        for _, op, *a in pad.ops:
            if op == "push":
                page.saveState()
                page.transform(*upward(h, *a))
            elif op == "pop":
                page.restoreState()
            elif op == "rect":
                x, y, w, t, fill, stroke, lw, dash = a
                page.setLineWidth(lw)
                page.setDash(dash or [])
                page.setFillColorRGB(*(rgb(fill) or (0, 0, 0)))
                page.setStrokeColorRGB(*(rgb(stroke) or (0, 0, 0)))
                page.rect(x, h - y - t, w, t, stroke=1 if stroke else 0, fill=1 if fill else 0)
            elif op == "line":
                x1, y1, x2, y2, lw, color, dash = a
                page.setLineWidth(lw)
                page.setDash(dash or [])
                page.setStrokeColorRGB(*rgb(color))
                page.line(x1, h - y1, x2, h - y2)
            elif op == "poly":
                shape = page.beginPath()
                shape.moveTo(a[0][0][0], h - a[0][0][1])
                for x, y in a[0][1:]:
                    shape.lineTo(x, h - y)
                shape.close()
                page.setFillColorRGB(*rgb(a[1]))
                page.drawPath(shape, stroke=0, fill=1)
            elif op == "cells":
                page.setFillColorRGB(0, 0, 0)
                for x, y, w, t in a[0]:
                    page.rect(x, h - y - t, w, t, stroke=0, fill=1)
            elif op == "image":
                x, y, w, t, picture = a
                page.drawImage(ImageReader(picture), x, h - y - t, w, t)
            else:
                x, y, text, font, size, color = a
                if font not in BASE and font not in pdfmetrics.getRegisteredFontNames():
                    pdfmetrics.registerFont(TTFont(font, font_file(font)))
                page.setFont(BASE.get(font, font), size)
                page.setFillColorRGB(*rgb(color))
                page.drawString(x, h - y, text)
        page.showPage()
    page.save()


def fpdf2(pads, path):
    from fpdf import FPDF

    pdf = FPDF(unit="pt")
    pdf.set_auto_page_break(False)
    pdf.set_creation_date(datetime.datetime(2026, 2, 3, tzinfo=datetime.timezone.utc))
    for pad in pads:
        h = pad.size[1]
        pdf.add_page(format=pad.size)
        for _, op, *a in pad.ops:
            if op == "push":
                pdf._out("q %s cm" % " ".join(f"{v:.4f}" for v in upward(h, *a)))
            elif op == "pop":
                pdf._out("Q")
            elif op == "rect":
                x, y, w, t, fill, stroke, lw, dash = a
                pdf.set_line_width(lw)
                pdf.set_dash_pattern(*([dash[0], dash[1]] if dash else []))
                pdf.set_fill_color(*[255 * v for v in rgb(fill) or (0, 0, 0)])
                pdf.set_draw_color(*[255 * v for v in rgb(stroke) or (0, 0, 0)])
                pdf.rect(x, y, w, t, style=("D" if stroke else "") + ("F" if fill else ""))
            elif op == "line":
                x1, y1, x2, y2, lw, color, dash = a
                pdf.set_line_width(lw)
                pdf.set_dash_pattern(*([dash[0], dash[1]] if dash else []))
                pdf.set_draw_color(*[255 * v for v in rgb(color)])
                pdf.line(x1, y1, x2, y2)
            elif op == "poly":
                pdf.set_fill_color(*[255 * v for v in rgb(a[1])])
                pdf.polygon(a[0], style="F")
            elif op == "cells":
                pdf.set_fill_color(0, 0, 0)
                for x, y, w, t in a[0]:
                    pdf._out(f"{x:.3f} {h - y - t:.3f} {w:.3f} {t:.3f} re f")
            elif op == "image":
                x, y, w, t, picture = a
                pdf.image(picture.convert("L") if picture.mode == "1" else picture, x, y, w, t)
            else:
                x, y, text, font, size, color = a
                pdf.font_family = ""
                if font in BASE:
                    pdf.set_font(BASE[font].split("-")[0], "B" if font.endswith("B") else "", size)
                else:
                    if font.lower() not in pdf.fonts:
                        pdf.add_font(font, "", font_file(font))
                    pdf.set_font(font, "", size)
                pdf.set_text_color(*[255 * v for v in rgb(color)])
                pdf.text(x, y, text)
    pdf.output(str(path))


def mupdf(pads, path):
    """What lies turned is a page of its own, placed as a form."""
    import fitz

    names = {"H": "helv", "HB": "hebo", "T": "tiro", "TB": "tibo", "C": "cour", "CB": "cobo"}
    own = lambda font: {"fontname": names.get(font, f"own{FACES.index(font)}" if font in FACES else font), "fontfile": None if font in names else font_file(font)}

    def sheet(pdf, w, h, fonts):
        """Its faces are named first: later those of a form inside would be taken for the page's own."""
        page = pdf.new_page(width=w, height=h)
        for font in fonts:
            page.insert_font(**own(font))
        return page

    doc = fitz.open()
    for pad in pads:
        fonts = sorted({op[5] for op in pad.ops if op[1] == "text"})
        stack = [(doc, sheet(doc, *pad.size, fonts), None)]
        for _, op, *a in pad.ops:
            page = stack[-1][1]
            if op == "push":
                inner = fitz.open()
                stack.append((inner, sheet(inner, a[3], a[4], fonts), a))
            elif op == "pop":
                inner, _, (degrees, x, y, w, h) = stack.pop()
                wide, tall = (w, h) if degrees % 180 == 0 else (h, w)
                stack[-1][1].show_pdf_page(fitz.Rect(x, y, x + wide, y + tall), inner, 0, rotate=-degrees)
            elif op == "rect":
                x, y, w, t, fill, stroke, lw, dash = a
                dashes = f"[{dash[0]} {dash[1]}] 0" if dash else None
                page.draw_rect(fitz.Rect(x, y, x + w, y + t), color=rgb(stroke), fill=rgb(fill), width=lw if stroke else 0, dashes=dashes)
            elif op == "line":
                x1, y1, x2, y2, lw, color, dash = a
                page.draw_line((x1, y1), (x2, y2), color=rgb(color), width=lw, dashes=f"[{dash[0]} {dash[1]}] 0" if dash else None)
            elif op == "poly":
                page.draw_polyline([*a[0], a[0][0]], color=None, fill=rgb(a[1]), width=0, closePath=True)
            elif op == "cells":
                shape = page.new_shape()
                for x, y, w, t in a[0]:
                    shape.draw_rect(fitz.Rect(x, y, x + w, y + t))
                shape.finish(color=None, fill=(0, 0, 0), width=0)
                shape.commit()
            elif op == "image":
                x, y, w, t, picture = a
                page.insert_image(fitz.Rect(x, y, x + w, y + t), stream=png(picture), keep_proportion=False)
            else:
                x, y, text, font, size, color = a
                page.insert_text((x, y), text, fontsize=size, color=rgb(color), **own(font))
    doc.subset_fonts()
    doc.save(str(path), garbage=4, deflate=True, no_new_id=True)


def svg(pad):
    w, h = pad.size
    out = [f'<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="{w}pt" height="{h}pt" viewBox="0 0 {w} {h}">']
    for _, op, *a in pad.ops:
        if op == "push":
            ox, oy, _, _ = placed(*a)
            out.append(f'<g transform="translate({ox:.3f} {oy:.3f}) rotate({a[0]})">')
        elif op == "pop":
            out.append("</g>")
        elif op == "rect":
            x, y, w, t, fill, stroke, lw, dash = a
            dashes = f' stroke-dasharray="{dash[0]} {dash[1]}"' if dash else ""
            line = f' stroke="{stroke}" stroke-width="{lw}"{dashes}' if stroke else ""
            out.append(f'<rect x="{x:.3f}" y="{y:.3f}" width="{w:.3f}" height="{t:.3f}" fill="{fill or "none"}"{line}/>')
        elif op == "line":
            x1, y1, x2, y2, lw, color, dash = a
            dashes = f' stroke-dasharray="{dash[0]} {dash[1]}"' if dash else ""
            out.append(f'<line x1="{x1:.3f}" y1="{y1:.3f}" x2="{x2:.3f}" y2="{y2:.3f}" stroke="{color}" stroke-width="{lw}"{dashes}/>')
        elif op == "poly":
            out.append(f'<polygon points="{" ".join(f"{x:.2f},{y:.2f}" for x, y in a[0])}" fill="{a[1]}"/>')
        elif op == "cells":
            out.append(f'<path d="{"".join(f"M{x:.3f} {y:.3f}h{w:.3f}v{t:.3f}h{-w:.3f}z" for x, y, w, t in a[0])}"/>')
        elif op == "image":
            x, y, w, t, picture = a
            data = base64.b64encode(png(picture)).decode()
            out.append(
                f'<image x="{x:.3f}" y="{y:.3f}" width="{w:.3f}" height="{t:.3f}" preserveAspectRatio="none" '
                f'image-rendering="optimizeSpeed" xlink:href="data:image/png;base64,{data}"/>'
            )
        else:
            x, y, text, font, size, color = a
            family = FILES[STANDARD.get(font[0], font[0])][2]
            weight = ("900" if family == "Lato" else "bold") if font.endswith("B") else "normal"
            out.append(
                f'<text x="{x:.3f}" y="{y:.3f}" font-family="{family}" font-size="{size:.3f}" font-weight="{weight}" '
                f'fill="{color}" xml:space="preserve">{html.escape(text)}</text>'
            )
    return "".join([*out, "</svg>"])


def by_svg(pads, path, draw):
    """One drawing a page, the pages then put together by qpdf."""
    with tempfile.TemporaryDirectory() as folder:
        pages = []
        for at, pad in enumerate(pads):
            source = Path(folder) / f"{at}.svg"
            source.write_text(svg(pad))
            pages.append(str(source.with_suffix(".pdf")))
            draw(str(source), pages[-1])
        subprocess.run(["qpdf", "--deterministic-id", "--empty", "--pages", *pages, "--", str(path)], check=True)


def rsvg(pads, path):
    by_svg(pads, path, lambda source, page: subprocess.run(["rsvg-convert", "-f", "pdf", "-o", page, source], check=True))


def inkscape(pads, path):
    quiet = {**os.environ, "SELF_CALL": "1"}
    run = lambda source, page: subprocess.run(["inkscape", source, f"--export-filename={page}"], check=True, env=quiet, capture_output=True)
    by_svg(pads, path, run)
