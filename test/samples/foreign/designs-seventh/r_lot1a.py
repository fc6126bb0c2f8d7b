"""First lot: papers that are drawn on a pad."""

import r_labels_eu as eu
import r_labels_us as us
from r_build import document
from r_pad import WORDS, Pad

P, S = WORDS["people"], WORDS["senders"]
LETTER, A4, LABEL, CM = (612, 792), (595.28, 841.89), (288, 432), (283.46, 425.2)
GOODS = {
    "us": [("Speckled mug, oat", "FK-1107", 2, "34.00"), ("Rim saucer", "FK-0420", 4, "12.50"), ("Glaze test tile, blue 7", "FK-9931", 1, "6.00")],
    "fr": [("Bol émaillé gris", "AG-210", 2, "28,00"), ("Coupelle sel", "AG-077", 6, "7,50")],
    "au": [("Lemon myrtle bar 120 g", "SB-12", 5, "9.90"), ("Soap dish, spotted gum", "SB-80", 1, "24.00"), ("Gift wrap", "SB-00", 1, "3.50")],
}


def label_alone():
    pads = []
    for n, (to, service, letter, refs) in enumerate(
        [(us.US[0], "LIMBRO PARCEL", "L", ()), (us.US[1], "GROVANT", "G", ("Order 100-5550142", "SKU FK-1107 x2")), (us.US[4], "SEDDLE", "S", ("Order 100-5550177",))], 31
    ):
        pads.append(Pad("label", LABEL).place(us.plaxwen, 7, 6, 274, 420, to, n, service, letter, refs, edge="page"))
    document("r01-label-alone-1", "reportlab", pads)


def steps_below_fold():
    pads = []
    for n, (to, turn) in enumerate([(us.US[1], 90), (us.US[0], 90), (us.US[2], 270)], 44):
        pad = Pad("label", LETTER).place(us.quendrast, 88, 40, 282, 426 - 0, to, n, ["VELTRO 2", "HOMSTA 5", "STANDEN AM"][n % 3], turn=turn)
        pad.rect(28, 380, 556, 0.6, "#000000")
        pad.text(36, 404, "After printing this label:", "SB", 10)
        y = 418
        for text in (
            "1. Print one copy on a plain sheet, at 100 percent.",
            "2. Fold the sheet in half where the line is.",
            "3. Slide it into a clear pouch on top of the box with the label outside, so that all of the bars can be seen and scanned.",
        ):
            y = pad.para(36, y, 530, text, "S", 8.5)
        warning = "One label is good for one box. Copies of it are not; whoever uses one may be charged again, and the account may be closed. This page is a sample and good for nothing at all."
        y = pad.para(36, y + 8, 540, warning, "SB", 8.5)
        small = (
            "With the label goes our agreement of carriage, which you find at quendrast.example in its newest wording. For loss, damage, delay, or delivery to a wrong place we pay what you can show to have lost, and never more than one hundred "
            "dollars for a box, unless you told us a higher value when you made the label and paid for it. We do not pay for income that you did not have, for interest, for the fees of lawyers, or for anything else that follows from it. "
            "Some things we do not take at all: cash, animals, perishable goods, and whatever the list of forbidden goods names. Claims must reach us within twenty-one days. "
        )
        pad.para(36, y + 6, 540, small, "S", 6.6, 7.9)
        pads.append(pad)
    document("r03-steps-below-fold-1", "pdfkit", pads)


def posting_record():
    pads = []
    for n, to in enumerate(P["de"], 12):
        pad = Pad("label", A4).place(eu.zelbryk, 42, 48, 410, 268, to, n, ["Zubrik 5 kg", "Kleinzub", "Zubrik 2 kg"][n % 3], edge="frame")
        pad.line(0, 400, 595, 400, 0.5, "#888888", [3, 3])
        pad.text(42, 440, "Einlieferungsbeleg / Quittung", "OB", 13)
        pad.text(42, 456, "Bitte in der Filiale abstempeln lassen und sorgfältig aufbewahren.", "O", 8)
        pad.box(42, 470, 300, 120, 0.5, stroke="#666666")
        pad.lines(50, 486, ["Empfänger:", *to], "O", 8.5, 11)
        pad.lines(50, 560, [f"Sendungsnummer 0034{n:04d}5550{n % 90 + 10}", "Preis: 6,49 EUR (Muster)"], "O", 8.5, 11)
        pad.box(352, 470, 100, 120, 0.5, stroke="#666666")
        pad.text(402, 584, "Datumsstempel", "O", 6, "c")
        pad.para(42, 620, 500, "Es gelten die allgemeinen Bedingungen der Zelbryk Probe GmbH. Haftung bis 500 EUR. Dies ist ein Muster, nicht zur Beförderung gültig. Die Sendungsverfolgung finden Sie unter zelbryk.example.", "O", 7)
        pads.append(pad)
    document("r05-posting-record-1", "rsvg", pads)


def small_slip(pad, w, h, title, to, rows, note, lines):
    pad.text(0, 14, title, "DB", 13)
    pad.lines(0, 30, lines, "D", 7.5, 9.5)
    pad.lines(0, 62, to, "D", 8.5, 10.5)
    y = 124
    pad.line(0, y - 10, w, y - 10, 0.7)
    for name, sku, many, price in rows:
        pad.text(0, y, f"{many} ×", "DB", 8)
        pad.text(24, y, name, "D", 8)
        pad.text(24, y + 9, sku, "D", 6.5, color="#555555")
        pad.text(w, y, price, "D", 8, "r")
        y += 22
    pad.line(0, y - 8, w, y - 8, 0.7)
    pad.para(0, y + 8, w, note, "D", 7.5)


def label_and_note():
    pads = []
    for n, to in enumerate(P["fr"][:2], 61):
        pads.append(Pad("label", CM).place(eu.frolvane, 5, 5, 273, 415, to, n, ["VELIN 48", "RELVO 72"][n % 2], edge="frame"))
        lines = [f"Commande CMD-{n} du 0{n % 9 + 1}/02/2026", "Atelier Grainvert – exemple"]
        note = "Merci pour votre commande ! Un défaut ? Écrivez à bonjour@grainvert.example sous 14 jours. Document d'exemple."
        pads.append(Pad("packing-slip", CM).place(small_slip, 20, 22, 240, 380, "BON DE LIVRAISON", to, GOODS["fr"], note, lines, role="slip"))
    document("r06-label-then-note-1", "mupdf", pads)


def two_on_lying_page():
    pads = []
    for n, pair in enumerate([(P["nl"][0], P["be"][0]), (P["nl"][1], P["nl"][0]), (P["be"][0],)], 70):
        pad = Pad("label", (841.89, 595.28))
        for at, to in enumerate(pair):
            pad.place(eu.blimtor, 70 + 421 * at, 96, 270, 352, to, n * 10 + at, ["Trommelpak", "Smalpak"][at])
        pad.line(420.9, 0, 420.9, 595, 0.4, "#999999", [2, 4])
        pads.append(pad)
    document("r07-two-on-lying-page-1", "jspdf", pads)


def under_invoice():
    pads = []
    for n, to in enumerate(P["au"], 80):
        pad = Pad("label", A4)
        pad.text(40, 60, "Saltbush Soapery", "TB", 24)
        pad.lines(40, 76, ["18 Specimen Rd, Trial Bay QLD 4999", "ABN 00 555 010 142 (example)"], "T", 9, 11)
        pad.text(555, 58, "TAX INVOICE", "TB", 15, "r")
        pad.lines(555, 74, [f"Invoice SB-{n}55", f"Date {n % 27 + 1} Feb 2026"], "T", 9, 11, align="r")
        pad.lines(40, 118, ["Bill to", *to], "T", 10, 12)
        y = 205
        pad.rect(40, y - 12, 515, 16, "#eeeeee")
        pad.text(46, y, "Item", "TB", 9)
        pad.text(470, y, "Qty", "TB", 9, "r")
        pad.text(549, y, "Amount", "TB", 9, "r")
        for name, sku, many, price in GOODS["au"][: 1 + n % 3]:
            y += 17
            pad.text(46, y, f"{name} ({sku})", "T", 10)
            pad.text(470, y, str(many), "T", 10, "r")
            pad.text(549, y, f"${price}", "T", 10, "r")
            pad.line(40, y + 5, 555, y + 5, 0.3, "#aaaaaa")
        pad.text(549, y + 24, "Total incl. GST  $78.40", "TB", 11, "r")
        pad.para(360, 470, 190, "Thank you! Your parcel leaves our shed within one business day. Peel the label on the left off this sheet and keep the upper part for your records. Everything on this page is a sample.", "T", 10, 13)
        pad.place(eu.yarnovex, 40, 408, 284, 404, to, n, ["YARRO STANDARD", "YARRO SWIFT", "YARRO + SIGNATURE"][n % 3], edge="frame")
        pads.append(pad)
    document("r08-under-tax-invoice-1", "fpdf2", pads)


def bilingual_pair():
    pads = []
    for n, to in enumerate(P["ca"][:2], 25):
        pads.append(Pad("label", LABEL).place(us.tesmarrow, 6, 8, 276, 416, to, n, edge="page"))
    lines = ["Order / Commande 26-2026", "Pinecone Letterpress, example"]
    rows = [("Thank-you cards, set of 8", "PL-08", 3, "18.00"), ("Cartes de vœux", "PL-11", 1, "4.50"), ("Gift tags", "PL-40", 2, "6.00")]
    note = "Packed by hand. Questions: hello@pinecone.example or (902) 555-0108. Sample document / Document d'exemple."
    pads.append(Pad("packing-slip", LABEL).place(small_slip, 16, 18, 256, 400, "Packing slip / Bordereau", P["ca"][1], rows, note, lines, role="slip"))
    document("r10-bilingual-1", "inkscape", pads)


def idrovane(pad, w, h, to, n, service="Lomben Economy"):
    """A consolidator: two carriers' heads, a permit box, bars with a tall title, an inner box for the parcel's own number, no frame."""
    pad.text(0, 14, "idrovane", "RB", 17)
    pad.text(0, 25, "handed on to Plaxwen", "R", 7.5)
    pad.box(w - 88, 0, 88, 48, 0.8)
    pad.lines(w - 44, 11, ["LOMBEN LIGHT", "POSTAGE PAID", "IDROVANE SAMPLE", "PERMIT 555"], "R", 6.8, 9.6, align="c")
    pad.lines(0, 40, [S["us"][0], f"RETURN SERVICE REQUESTED", "c/o Hub 7, Sampleton OR 97998"], "R", 7, 8.4)
    pad.line(0, 68, w, 68, 0.8)
    pad.code(4, 76, "datamatrix", f"IDV{n:06d}|{to[-1]}|SAMPLE NOT VALID", dots=4, truth=False)
    end = pad.lines(78, 88, [each.upper() for each in to], "R", 10.5, 12.5, fit=w - 82)
    pad.text(78, max(end + 8, 158), f"{n % 900 + 100} - {chr(65 + n % 26)}{n % 7}", "RB", 14)
    pad.line(0, 172, w, 172, 4)
    pad.text(w / 2, 186, "PLAXWEN TRACKING #", "RB", 9, "c")
    number = f"9261290{n:04d}5550{n % 90 + 10}3"
    pad.code(w / 2, 192, "gs1-128", f"[420]{to[-1].split()[-1][:5]}[92]{number[2:]}", 70, 3, "c", shown=f"420{to[-1].split()[-1][:5]}{number}")
    pad.text(w / 2, 275, " ".join(number[i : i + 4] for i in range(0, len(number), 4)), "RB", 9, "c")
    pad.line(0, 282, w, 282, 4)
    pad.box(0, 292, w, 70, 0.8)
    pad.text(8, 304, f"Idrovane package ID   {service}", "R", 7)
    pad.code(12, 310, "code128", f"IDV{n:06d}55501", 34, 3, truth=True)
    pad.text(8, 356, f"IDV{n:06d}55501   Wt {n % 15 + 1} oz", "R", 8)
    pad.text(w - 8, 344, f"{n % 5 + 1}", "RB", 30, "r")
    pad.text(0, 378, us.VOID, "RB", 7.5)


def label_and_costs():
    pads = []
    for n, to in enumerate([us.US[2], us.US[1], us.US[3]], 205):
        pad = Pad("label", LETTER).place(idrovane, 36, 40, 270, 380, to, n)
        pad.text(360, 60, "Postage receipt", "RB", 12)
        rows = [("Label ID", f"{n}-555-0142"), ("Date", f"02/{n % 27 + 1:02d}/2026"), ("Service", "Lomben Economy"), ("Weight", f"{n % 15 + 1} oz"), ("Zone", str(n % 8 + 1)), ("Postage", f"$4.{n % 90 + 10}"), ("Insurance", "$0.00"), ("Total", f"$4.{n % 90 + 10}")]
        for at, (name, value) in enumerate(rows):
            pad.text(360, 82 + 15 * at, name, "R", 9, color="#555555")
            pad.text(540, 82 + 15 * at, value, "R", 9, "r")
        pad.para(360, 220, 190, "Attach the label on the left to your package. Do not tape over the bar codes. Mail it within 24 hours of the date shown. Sample only.", "R", 8.5)
        pads.append(pad)
    document("r12-beside-costs-1", "reportlab", pads)


for each in (label_alone, steps_below_fold, posting_record, label_and_note, two_on_lying_page, under_invoice, bilingual_pair, label_and_costs):
    each()
