"""First lot: papers that are written as markup."""

import html
import subprocess
import tempfile
from pathlib import Path

from PIL import Image, ImageDraw

import r_labels_eu as eu
import r_labels_us as us
from r_codes import DOT
from r_markup import code, document, esc, fo_at, fo_code, image, page
from r_pad import WORDS, Pad
from r_writers import reportlab, svg

P, S = WORDS["people"], WORDS["senders"]
LETTER, A4, A5 = (612, 792), (595.28, 841.89), (419.53, 595.28)


def drawn(draw, w, h, *content, **more):
    """A label as an inline drawing of the page, and its codes."""
    pad = Pad("label", (w, h)).place(draw, 0, 0, w, h, *content, **more)
    return svg(pad), [(each["symbology"], each["text"]) for each in pad.parts[0]["codes"]]


def pixels(draw, w, h, *content, dots=1, grey=False, inset=0):
    """A label as a picture of 8 dots a millimetre (or `dots` times that) with its codes on whole pixels, and its codes."""
    pad = Pad("label", (w, h)).place(draw, inset, inset, w - 2 * inset, h - 2 * inset, *content)
    codes = [op[2] for op in pad.ops if op[1] == "cells"]
    pad.ops = [op for op in pad.ops if op[1] != "cells"]
    with tempfile.TemporaryDirectory() as folder:
        pdf, name = Path(folder) / "l.pdf", str(Path(folder) / "l")
        reportlab([pad], pdf)
        subprocess.run(["pdftoppm", "-r", str(203.2 * dots), "-gray", "-singlefile", str(pdf), name], check=True)
        picture = Image.open(f"{name}.pgm").copy()
    paint, px = ImageDraw.Draw(picture), DOT / dots
    for cells in codes:
        left, top = cells[0][0], cells[0][1]
        for x, y, wide, tall in cells:
            x, y = round(left / px) + round((x - left) / px), round(top / px) + round((y - top) / px)
            paint.rectangle([x, y, x + round(wide / px) - 1, y + round(tall / px) - 1], fill=0)
    picture = picture if grey else picture.point(lambda v: 255 * (v > 150)).convert("1", dither=Image.Dither.NONE)
    return picture, [(each["symbology"], each["text"]) for each in pad.parts[0]["codes"]]


def at(x, y, inner, k=None, more=""):
    part = "" if k is None else f' data-part="{k}"'
    return f'<div{part} style="position:absolute;left:{x}pt;top:{y}pt;{more}">{inner}</div>'


def fold_here():
    steps = [
        "<b>Take every old label off the box, or strike its bars through.</b> Then print this page at its true size; do not let the printer shrink it.",
        "<b>Fold the sheet along the line, so that only the label shows.</b> Lay it on the largest side of the box and tape it down all around, flat and without creases.",
        "<b>Hand the box to a Drofelin driver or at a drop point.</b> Points near you: drofelin.example/points. This page is a sample.",
    ]
    pages = []
    for n, to in enumerate([us.US[0], us.US[1], us.US[4]], 3):
        label, codes = drawn(us.drofelin, 276, 408, to, n, ["FELLAR", "BRISKEN 2", "TARRY"][n % 3])
        body = (
            f'<div class="top"><h1>Your shipping label</h1><ol>{"".join(f"<li>{s}</li>" for s in steps)}</ol></div>'
            f'{at(36, 318, "FOLD HERE", None, "width:540pt;border-top:1pt dashed #444;font-size:8pt;letter-spacing:1pt")}{at(42, 348, label, 0)}'
        )
        pages.append(page("label", LETTER, body, ("label", "ink", 0, codes)))
    document("r02-fold-here-1", "chromium", pages, "body{font-family:Roboto,sans-serif}.top{padding:34pt 42pt}h1{font-size:15pt}li{font-size:9.5pt;line-height:1.35;margin-bottom:7pt}")


def four_quarters():
    pages = []
    for n, (to, service, name) in enumerate([(P["gb"][0], "A2", "Ambrel 2"), (P["gb"][2], "A1", "Ambrel 1 signed"), (P["ie"][0], "AE", "Ambrel Europe")], 20):
        label, codes = drawn(eu.murtoven, 254, 380, to, n, service, name)
        rows = "".join(f"<tr><td>{a}</td><td>{b}</td></tr>" for a, b in [("Reference", f"CC-{n}-26"), ("Weight", "0.84 kg"), ("Service", name), ("Price paid", "£4.29"), ("Date of posting", "____ / ____ / ______")])
        body = (
            at(20, 20, label, 0)
            + at(318, 28, "<h2>How to post your parcel</h2><ol><li>Print this page on A4 paper.</li><li>Cut along the dotted line.</li><li>Stick the label flat on the largest side; don’t cover the barcode with tape.</li><li>Take it to a counter or drop box. Keep the proof of posting below.</li></ol>", None, "width:240pt")
            + at(297.6, 0, "", None, "height:841pt;border-left:.6pt dotted #666")
            + at(0, 420.9, "", None, "width:595pt;border-top:.6pt dotted #666")
            + at(318, 450, f"<h2>Certificate of posting</h2><table>{rows}</table><p>{esc(to[0], to[-1])}</p><div class=stamp>Office stamp</div>", None, "width:240pt")
            + at(28, 450, f"<h2>Drop at a locker?</h2><p>Scan this at the screen.</p>{code('qr', f'LOCK{n}55501', dots=6)}<p>Sample only, not valid for carriage.</p>", None, "width:240pt")
        )
        pages.append(page("label", A4, body, ("label", "ink", 0, codes)))
    document("r04-four-quarters-1", "weasyprint", pages, "body{font-family:'Liberation Sans';font-size:9pt}h2{font-size:12pt}td{border-bottom:.4pt solid #999;padding:3pt 8pt 3pt 0}.stamp{margin-top:12pt;width:110pt;height:80pt;border:.6pt solid #666;padding:4pt;color:#666}li{margin-bottom:5pt}")


def ockwith(to, n):
    """An integrated label in FO: a table of cells with rules, bars in the middle cell, the sort code on black."""
    number = f"OCK{n:05d}55501{n % 90 + 10}"
    address = "".join(f'<fo:block font-size="11pt" font-weight="{"bold" if line == to[-1] else "normal"}">{html.escape(line)}</fo:block>' for line in to)
    sender = "".join(f"<fo:block>{html.escape(line)}</fo:block>" for line in S["us"])
    cell = 'border="1.2pt solid black" padding="4pt"'
    return (
        '<fo:table table-layout="fixed" width="270pt" border="1.2pt solid black"><fo:table-column column-width="180pt"/><fo:table-column column-width="90pt"/><fo:table-body>'
        f'<fo:table-row height="44pt"><fo:table-cell {cell} font-size="7pt"><fo:block font-weight="bold">FROM</fo:block>{sender}</fo:table-cell>'
        f'<fo:table-cell {cell} font-size="8pt" text-align="center"><fo:block font-weight="bold" font-size="13pt">OCKWITH</fo:block><fo:block>HOBDAY 2</fo:block></fo:table-cell></fo:table-row>'
        f'<fo:table-row height="92pt"><fo:table-cell {cell} number-columns-spanned="2"><fo:block font-size="7pt" font-weight="bold">DELIVER TO</fo:block>{address}</fo:table-cell></fo:table-row>'
        f'<fo:table-row height="112pt"><fo:table-cell {cell} number-columns-spanned="2" text-align="center"><fo:block padding-top="8pt">{fo_code("code128", number, 70, 3)}</fo:block><fo:block font-size="9pt">{number}</fo:block></fo:table-cell></fo:table-row>'
        f'<fo:table-row height="64pt"><fo:table-cell border="1.2pt solid black" background-color="black" color="white" text-align="center" font-weight="bold" font-size="38pt"><fo:block padding-top="8pt">{to[-1].split()[-1][:3]}-{n % 9}</fo:block></fo:table-cell>'
        f'<fo:table-cell {cell} text-align="center"><fo:block padding-top="2pt">{fo_code("datamatrix", number + "|SAMPLE|" + to[-1], dots=3)}</fo:block></fo:table-cell></fo:table-row>'
        f'<fo:table-row height="20pt"><fo:table-cell {cell} number-columns-spanned="2" font-size="7pt"><fo:block>SAMPLE - NOT VALID FOR CARRIAGE. Ref {n}-FK</fo:block></fo:table-cell></fo:table-row>'
        "</fo:table-body></fo:table>"
    ), [("code128", number), ("datamatrix", number + "|SAMPLE|" + to[-1])]


def integrated():
    pages = []
    for n, to in enumerate([us.US[3], us.US[1], us.US[0]], 401):
        label, codes = ockwith(to, n)
        rows = "".join(
            f'<fo:table-row><fo:table-cell padding="3pt"><fo:block>{many}</fo:block></fo:table-cell><fo:table-cell padding="3pt"><fo:block>{name}</fo:block></fo:table-cell><fo:table-cell padding="3pt"><fo:block>{sku}</fo:block></fo:table-cell></fo:table-row>'
            for many, name, sku in [(2, "Speckled mug, oat", "FK-1107"), (1, "Berry bowl with saucer", "FK-0770"), (4, "Rim saucer", "FK-0420")][: n % 3 + 1]
        )
        slip = (
            f'<fo:block font-size="20pt" font-family="Times">Fernwick Kilnworks</fo:block><fo:block font-size="9pt" space-after="10pt">PACKING SLIP &#8211; order {n}-FK &#8211; 02/03/2026 &#8211; example only</fo:block>'
            f'<fo:block font-size="10pt" space-after="10pt">{"<fo:block/>".join(html.escape(line) for line in to)}</fo:block>'
            f'<fo:table table-layout="fixed" width="530pt" font-size="9pt" border-top=".5pt solid gray" border-bottom=".5pt solid gray"><fo:table-column column-width="50pt"/><fo:table-column column-width="340pt"/><fo:table-column column-width="140pt"/><fo:table-body>{rows}</fo:table-body></fo:table>'
        )
        note = '<fo:block font-size="9pt">Every piece is thrown and glazed by hand, so yours will differ a little from the pictures. If something arrived broken, write to hello@fernwick.example within 14 days. Peel the label on the right.</fo:block>'
        body = f"<!--part 1-->{fo_at(40, 44, 530, 220, slip)}<!--end-->{fo_at(40, 500, 200, 120, note)}<!--part 0-->{fo_at(318, 420, 272, 352, label)}<!--end-->"
        pages.append(page("label", LETTER, body, ("label", "frame", 0, codes), ("slip", "ink", 0, [])))
    document("r09-integrated-1", "fop", pages)


def varndelo(pad, w, h, to, n):
    """A return label by a picture: RETURN in huge type, thick bars above and below the code, sender and receiver in two columns."""
    pad.rect(0, 0, w, 30, "#000000")
    pad.text(w / 2, 22, "RETURN SERVICE", "OB", 18, "c", color="#ffffff")
    pad.lines(2, 44, ["FROM:", *to], "O", 7, 8.6, fit=w / 2 - 6)
    pad.text(w / 2 + 6, 44, "NO POSTAGE NECESSARY", "OB", 7)
    pad.text(w / 2 + 6, 54, "IF MAILED IN THE UNITED STATES", "O", 6)
    for k in range(7):
        pad.rect(w - 60, 60 + 6 * k, 58, 3, "#000000")
    pad.text(2, 122, "TO:", "OB", 9)
    pad.lines(30, 132, ["RETURNS DESK", *[each.upper() for each in S["us"]]], "OB", 12.5, 15.5)
    pad.rect(0, 208, w, 8, "#000000")
    number = f"VR{n:05d}5550142{n % 10}US"
    pad.code(w / 2, 226, "code128", number, 96, 3, "c")
    pad.text(w / 2, 336, number, "OB", 12, "c")
    pad.rect(0, 346, w, 8, "#000000")
    pad.image(2, 362, 92, 22, us.logo("varndelo", "OB", 70))
    pad.code(w - 4, 362, "qr", f"varndelo.example/r/{number}", dots=3, align="r", truth=False)
    pad.lines(2, 400, [f"RMA {n}-26", us.VOID], "O", 7, 9)


def mailed_return():
    pages = []
    for n, to in enumerate([us.US[0], us.US[2], us.US[1]], 91):
        picture, codes = pixels(varndelo, 288, 432, to, n, inset=10)
        head = f'<div class="bar"><span>2/{n % 27 + 1}/26, 9:4{n % 9} AM</span><span>Mail - Your return label (order {n}-26)</span></div>'
        text = (
            f'<h3>Your return label (order {n}-26)</h3><p class=meta><b>Fernwick Kilnworks</b> &lt;returns@fernwick.example&gt;<br/>Tue, Feb {n % 27 + 1}, 2026 at 9:02 AM<br/>To: customer@mail.example</p>'
            "<p>Hi there,</p><p>sorry that it did not work out. Please print this mail, cut out the label below and put it on the box. Drop it at any counter before the end of the month. "
            "We send your money back as soon as the box is here. This is a sample.</p>"
        )
        foot = f'<div class="foot"><span>https://mail.example/u/0/print?msg={n}55501</span><span>1/1</span></div>'
        body = head + f'<div class="mail">{text}<div data-part="0" class="pic">{image(picture, "width:288pt;height:432pt;display:block")}</div><p>Fernwick Kilnworks, 412 Example Mill Rd</p></div>' + foot
        pages.append(page("return-label", LETTER, body, ("return-label", "picture", 0, codes)))
    document("r11-mailed-return-1", "chromium", pages, "body{font-family:'Open Sans'}.bar,.foot{position:absolute;left:24pt;right:24pt;display:flex;justify-content:space-between;font:8pt 'Liberation Sans'}.bar{top:16pt}.foot{bottom:12pt}.mail{padding:44pt 40pt;font-size:9.5pt}h3{font-size:14pt;border-bottom:.7pt solid #bbb;padding-bottom:6pt;margin:0}.meta{color:#444;font-size:8.5pt}.pic{width:288pt;margin:10pt 0}")


def receipt_below():
    danish = ["Modtager", "Afsender", "EKSEMPEL – IKKE GYLDIG FOR FORSENDELSE", "Kolli", "Vægt", "Service", "Pakkeshop"]
    pages = []
    for n, (to, words, receipt) in enumerate([(P["se"][0], None, "Kvitto"), (P["dk"][0], danish, "Kvittering"), (P["se"][1], None, "Kvitto")], 55):
        label, codes = drawn(eu.wexmol, 300, 350, to, n, words)
        body = (
            at(30, 34, label, 0)
            + at(0, 420, "", None, "width:419pt;border-top:.5pt dashed #777")
            + at(30, 440, f"<b>{receipt}</b><br/>{esc(*to)}<br/>Wexmol {n}55501 &nbsp; 79,00 kr<br/><br/>wexmol.example", None, "font-size:9pt;line-height:1.4")
            + at(280, 440, code("qr", f"wexmol.example/k/{n}", dots=4))
        )
        pages.append(page("label", A5, body, ("label", "ink", 0, codes)))
    document("r13-receipt-below-1", "weasyprint", pages, "body{font-family:Roboto}")


if __name__ == "__main__":
    for each in (fold_here, four_quarters, integrated, mailed_return, receipt_below):
        each()
