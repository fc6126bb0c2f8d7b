"""Sixth lot: a few papers more, and those about a parcel that are none of its labels."""

import html

import r_markup
from r_build import document
from r_labels_us import VOID
from r_lot2a import table
from r_lot5 import dropped
from r_markup import code, esc, fo_at, fo_code, page
from r_pad import WORDS, Pad

P, S = WORDS["people"], WORDS["senders"]
LETTER, A4, A5, A6, LABEL, CM = (612, 792), (595.28, 841.89), (419.53, 595.28), (297.64, 419.53), (288, 432), (283.46, 425.2)


def gandrove(pad, w, h, to, n):
    """American, unframed: a column of codes at the left, words at the right, thick rules of unequal length."""
    number = f"GD{n:05d}55501{n % 10}"
    pad.code(0, 0, "qr", f"GD|{number}|{to[-1]}|SAMPLE", dots=5, truth=False)
    pad.text(96, 30, "GANDROVE", "TB", 26)
    pad.text(96, 50, f"Ostler class, {n % 30 + 1} oz, box 1/1", "T", 11)
    pad.rect(96, 62, w - 96, 4, "#000000")
    pad.lines(96, 80, S["us"], "T", 9, 11)
    pad.rect(40, 122, w - 40, 4, "#000000")
    pad.lines(60, 148, to, "TB", 14, 17, fit=w - 62)
    pad.rect(0, 240, w, 4, "#000000")
    pad.code(w / 2, 256, "code128", number, 84, 3, "c")
    pad.text(w / 2, 358, number, "TB", 13, "c")
    pad.text(w / 2, 376, VOID, "T", 9, "c")


def larrimold(pad, w, h, to, n):
    """American, for paper with a line of the printing program above it: framed, five cells."""
    pad.box(0, 0, w, h, 1.2)
    for y in (60, 156, 190, 320):
        pad.line(0, y, w, y, 1.2)
    pad.text(10, 40, "larrimold", "CB", 26)
    pad.text(w - 10, 40, f"#{n % 90 + 10}", "CB", 26, "r")
    pad.lines(14, 82, [each.upper() for each in to], "CB", 13, 16, fit=w - 24)
    pad.text(10, 178, f"WT {n % 20 + 1} LB   {to[-1].split()[-1]}", "CB", 13)
    number = f"LRM{n:05d}55501"
    pad.code(w / 2, 200, "code128", number, 90, 3, "c")
    pad.text(w / 2, 308, number, "C", 12, "c")
    pad.lines(10, 338, ["FROM " + S["us"][0].upper(), *[each.upper() for each in S["us"][1:]], "", VOID], "C", 9, 12)


def mistelberg(pad, w, h, to, n):
    """German, on the roll: framed, the receiver on top, the bars last."""
    pad.box(0, 0, w, h, 1)
    pad.text(10, 18, "An", "H", 8)
    pad.lines(10, 38, to, "HB", 14, 17.5, fit=w - 20)
    pad.line(0, 130, w, 130, 1)
    pad.lines(10, 144, ["Von", *S["de"]], "H", 8, 10)
    pad.text(w - 10, 166, "Mistelberg", "TB", 22, "r")
    pad.line(0, 186, w, 186, 1)
    pad.text(10, 232, to[-1].split()[0], "HB", 40)
    pad.text(w - 10, 232, f"{n % 9}{chr(65 + n % 26)}", "HB", 40, "r")
    pad.line(0, 248, w, 248, 1)
    number = f"MB{n:05d}5550{n % 10}"
    pad.code(w / 2, 262, "code128", number, 100, 3, "c")
    pad.text(w / 2, 378, number, "H", 12, "c")
    pad.text(w / 2, h - 12, "MUSTER – NICHT ZUR BEFÖRDERUNG GÜLTIG", "HB", 8, "c")


def beside_long_text():
    pads = []
    words = "Please read this before you print. Use plain paper and a printer that is not low on ink. Lay the sheet flat, cut it along its middle, and put the half with the bars on the box; the other half is for you. "
    for n, to in enumerate([P["us"][1], P["us"][0], P["us"][4]], 61):
        pad = Pad("label", LETTER)
        y = 60
        pad.text(40, y, "Gandrove shipping sheet", "TB", 15)
        for k in range(6):
            y = pad.para(40, y + 26, 210, words if k % 2 == 0 else "Boxes over thirty pounds go to the counter. Nothing with a battery, nothing alive. This is a sample, as everything here is. ", "T", 10, 13)
        pad.place(gandrove, 312, 60, 268, 378, to, n)
        pads.append(pad)
    document("r64-beside-long-text-1", "pdfkit", pads)


def with_page_line():
    pads = []
    for n, to in enumerate([P["us"][2], P["us"][1], P["us"][3]], 31):
        pad = Pad("label", (288, 459))
        pad.text(12, 14, f"Label {n - 30} of 3", "H", 7)
        pad.text(276, 14, "shop.example", "H", 7, "r")
        pad.place(larrimold, 9, 30, 270, 414, to, n, edge="frame")
        pads.append(pad)
    document("r65-with-page-line-1", "reportlab", pads)


def label_then_record():
    """On the roll: the label, then what the sender keeps, with the same bars."""
    pads = []
    for n, to in enumerate(P["de"][:2], 21):
        pads.append(Pad("label", CM).place(mistelberg, 6, 6, 271, 413, to, n, edge="frame"))
        record = Pad("other", CM)
        record.text(20, 36, "Beleg für den Absender", "HB", 15)
        record.lines(20, 60, ["Mistelberg, 3. Februar 2026", "nicht auf das Paket kleben", "", "Empfänger", *to], "H", 10, 13)
        record.code(20, 190, "code128", f"MB{n:05d}5550{n % 10}", 40, 2)
        record.text(20, 246, f"MB{n:05d}5550{n % 10}", "H", 10)
        record.lines(20, 280, ["Preis 5,90 EUR, 2,5 kg", "Muster"], "H", 10, 14)
        pads.append(record)
    document("r66-label-then-record-1", "fpdf2", pads_plain(pads))


def pads_plain(pads):
    """fpdf2's own faces have no dash."""
    for pad in pads:
        pad.ops = [[*op[:4], op[4].replace("–", "-"), *op[5:]] if op[1] == "text" else op for op in pad.ops]
    return pads


def in_a_card():
    """A web page with its heading, buttons and the label in a card, printed as it is."""
    pages = []
    for n, to in enumerate([P["nl"][0], P["be"][0], P["nl"][1]], 910):
        number = f"STK{n:05d}55501"
        label = (
            f'<div class="k"><div class="k1"><b>Stokvanter</b><span>{n % 60 + 10}</span></div><div class="k2">{esc(*to)}</div><div class="k3">{code("code128", number, 80, 3, style="margin:0 auto")}{number}</div>'
            f'<div class="k4">Retour: {html.escape(", ".join(S["nl"]))}<br/>VOORBEELD – NIET GELDIG VOOR VERZENDING</div></div>'
        )
        body = (
            f'<div class="nav"><b>winkel.example</b><span>Bestellingen</span><span>Zendingen</span><span>Instellingen</span></div><div class="crumb">Zendingen / {n}</div><h1>Je zending is klaar</h1><div class="bt"><span>Afdrukken</span><span>Sluiten</span></div>'
            f'<div class="card" data-part="0">{label}</div><p class="tip">Tip: zet de printer op 100 %. Dit is een voorbeeld.</p>'
        )
        pages.append(page("label", A4, body, ("label", "frame", 0, [("code128", number)])))
    css = (
        "body{font:10pt/1.4 'Liberation Sans'}.nav{background:#26324a;color:#fff;padding:12pt 36pt}.nav span{margin-left:22pt}.crumb{padding:12pt 36pt 0;color:#777}h1{margin:4pt 36pt 10pt;font-size:19pt}.bt{margin:0 36pt 16pt}.bt span{border:1pt solid #26324a;border-radius:4pt;padding:4pt 12pt;margin-right:8pt}"
        ".card{margin:0 36pt;width:300pt;border:1pt solid #999;border-radius:6pt;padding:14pt}.k1{display:flex;justify-content:space-between;font-size:20pt}.k2{font:bold 14pt/1.35 'Liberation Sans';min-height:110pt;margin-top:14pt}.k3{text-align:center;border-top:1pt solid #000;border-bottom:1pt solid #000;padding:10pt 0 4pt}.k4{font-size:8pt;margin-top:8pt}.tip{margin:18pt 36pt;color:#555}"
    )
    r_markup.document("r67-in-a-card-1", "chromium", pages, css)


def fauvrelin(to, n):
    number = f"FV{n:05d}55501{n % 10}"
    rows = lambda lines, size: "".join(f'<fo:block font-size="{size}pt">{html.escape(x)}</fo:block>' for x in lines)
    bar = 'border-top="2pt solid black" padding-top="5pt" padding-bottom="5pt"'
    return (
        f'<fo:block font-size="22pt" font-weight="bold">FAUVRELIN</fo:block><fo:block font-size="8pt" space-after="4pt">Expéditeur : {html.escape(", ".join(S["fr"]))}</fo:block><fo:block {bar} font-size="8pt">Destinataire<fo:block font-weight="bold" space-after="12pt">{rows(to, 13)}</fo:block></fo:block>'
        f'<fo:block {bar} font-size="34pt" font-weight="bold">{to[-1][:5]} / {n % 70 + 10}</fo:block><fo:block {bar} text-align="center">{fo_code("code128", number, 90, 3)}</fo:block><fo:block text-align="center" font-size="11pt">{number}</fo:block>'
        f'<fo:block font-size="8pt" space-before="8pt">Poids {n % 9},{n % 8} kg. SPÉCIMEN, non valable pour le transport.</fo:block>'
    ), [("code128", number)]


def order_left():
    pages = []
    for n, to in enumerate(P["fr"], 141):
        label, codes = fauvrelin(to, n)
        left = (
            f'<fo:block font-size="16pt" font-weight="bold">Atelier Grainvert</fo:block><fo:block font-size="10pt" space-before="10pt">Commande {n}-26</fo:block><fo:block font-size="10pt" space-before="14pt">2 bols émaillés gris</fo:block><fo:block font-size="10pt">6 coupelles sel</fo:block>'
            '<fo:block font-size="10pt" space-before="14pt">Total 101,00 EUR, payé. Merci ! Document d&#39;exemple.</fo:block>'
        )
        pages.append(page("label", A4, f"{fo_at(36, 40, 190, 300, left)}<!--part 0-->{fo_at(290, 36, 270, 400, label)}<!--end-->", ("label", "ink", 0, codes)))
    r_markup.document("r68-order-left-1", "fop", pages)


def none():
    booking = dropped(A4, "Your collection is booked", ["Thursday 5 February, 9 to 1", "Collect from:", *S["gb"], "2 parcels, 3.4 kg", "Deliver to:", *P["gb"][2]], "code128", "COL555-014277", "Print your labels from your account and stick them on before we come. Sample.", "T")
    locker = dropped(A6, "Kluiscode", ["Kluis 14, Voorbeeldplein 3", "Afhalen door:", *P["nl"][1]], "qr", "KLUIS-14-5550142", "Neem je telefoon mee. Voorbeeld.")
    refund = dropped(LETTER, "Your refund is on its way", ["Order 341-FK, returned by", *P["us"][0], "Parcel UD00071555011, 3 lb, got here February 9"], "code128", "RF341-5550142", "You need not do anything. Sample mail.", "T")
    roll = dropped(LABEL, "ORDER 2043", [*P["us"][4], "", "1 x Wool scarf, moss", "2 x Darning kit", "Weight 12 oz"], "code128", "ORD-2043-5550", "Pick before noon. Sample ticket, stays in the shop.", "C")
    bill = Pad("invoice", A4)
    bill.text(50, 70, "Pottery Moosgrund", "TB", 20)
    bill.lines(50, 120, ["Rechnungsanschrift", *P["de"][0]], "T", 10, 13)
    bill.lines(320, 120, ["Lieferanschrift", *P["de"][1]], "T", 10, 13)
    table(bill, 50, 230, 495, ("Artikel", "Menge", "EUR"), [("Becher, sandfarben", "4", "112,00"), ("Versand, 2,5 kg", "1", "6,49"), ("Summe", "", "118,49")], "T", 10.5, 18)
    bill.text(50, 330, "Sendungsnummer MB000215550, Paket 1/1", "T", 10)
    bill.code(50, 344, "code128", "MB000215550", 30, 2)
    bill.text(50, 410, "Zahlbar sofort. Muster.", "T", 10)
    for pad, kind in ((booking, "other"), (locker, "instructions"), (refund, "other"), (roll, "pick-list")):
        pad.kind = kind
    document("r69-none-1", "reportlab", [booking, locker])
    document("r69-none-2", "pdfkit", [refund, bill])
    document("r69-none-3", "mupdf", [roll])
    rows = "".join(f"<tr><td>{esc(to[0], to[-1])}</td><td>{n}</td><td>{code('code128', f'LRM{n:05d}55501', 26, 2)}</td></tr>" for n, to in enumerate(P["us"], 31))
    scan = f'<div style="padding:40pt"><h1>Handover sheet</h1><p>larrimold, Feb 3, 2026, 5 pieces</p><table>{rows}</table><p>Driver: ____________ Sample</p></div>'
    r_markup.document("r69-none-4", "weasyprint", [page("other", LETTER, scan)], "body{font:10pt/1.4 'Liberation Sans'}td{padding:6pt 20pt 6pt 0;border-bottom:.5pt solid #999}table{border-spacing:0}")


if __name__ == "__main__":
    for each in (beside_long_text, with_page_line, label_then_record, in_a_card, order_left, none):
        each()
