"""First lot: papers without a label."""

import r_markup
from r_build import document
from r_markup import code, esc, page
from r_pad import WORDS, Pad

P, S = WORDS["people"], WORDS["senders"]
LETTER, A4, LABEL = (612, 792), (595.28, 841.89), (288, 432)


def scan_sheet():
    """What the driver scans at the end of the day: one long code for all parcels, a table, a line to sign on."""
    pad = Pad("other", LETTER)
    pad.text(40, 54, "Day sheet for the driver", "SB", 17)
    pad.text(40, 70, "Sample form, not valid for acceptance", "S", 8)
    pad.box(40, 84, 532, 96, 0.8)
    pad.lines(48, 98, ["Shipment date: 02/03/2026", *S["us"]], "S", 9, 12)
    pad.text(306, 200, "9275 0901 5550 1420 0000 1234 56", "SB", 11, "c")
    pad.code(306, 208, "code128", "92750901555014200000123456", 76, 3, "c")
    pad.line(40, 300, 572, 300, 2)
    for at, (name, many) in enumerate([("Plaxwen Limbro", 14), ("Plaxwen Grovant", 31), ("Plaxwen Seddle", 6), ("International", 2), ("Total", 53)]):
        pad.text(48, 322 + 22 * at, name, "SB" if name == "Total" else "S", 10)
        pad.text(400, 322 + 22 * at, str(many), "SB", 10, "r")
        pad.line(40, 329 + 22 * at, 572, 329 + 22 * at, 0.4)
    pad.lines(48, 500, ["Carrier employee: scan the code above. It covers every piece listed.", "Signature: ______________________     Time: __________"], "S", 9, 30)
    return pad


def end_of_day(carrier):
    """A list of the day's numbers, A4, each with short bars."""
    pad = Pad("other", A4)
    pad.rect(0, 0, 595.28, 46, "#333333")
    pad.text(30, 30, f"{carrier} – Tageslieferschein / day manifest", "OB", 14, color="#ffffff")
    pad.lines(30, 66, S["de"], "O", 8, 10)
    pad.text(565, 66, "03.02.2026   MUSTER", "O", 8, "r")
    for at, to in enumerate(P["de"] + P["nl"] + P["se"]):
        y = 112 + 66 * at
        pad.line(30, y, 565, y, 0.3)
        pad.lines(36, y + 16, [to[0], to[-1]], "O", 9, 12)
        pad.code(330, y + 8, "code128", f"0034{at:04d}5550{at + 10}", 40, 2)
        pad.text(540, y + 32, f"{at % 4 + 1},{at}00 kg", "O", 8, "r")
    pad.text(30, 640, "Übernommen: ______________________   Fahrer-Nr.: __________", "O", 9)
    return pad


def gift():
    pad = Pad("packing-slip", LABEL)
    with pad.part("slip"):
        pad.text(144, 40, "A gift for you", "TB", 22, "c")
        pad.lines(144, 62, ["from Dorian", "“Happy housewarming, you two!”"], "T", 11, 15, align="c")
        pad.line(30, 98, 258, 98, 0.5)
        pad.lines(30, 116, ["1 × Speckled mug, oat", "1 × Rim saucer"], "T", 10, 14)
        pad.code(144, 160, "code128", "GIFT55501421", 40, 2, "c")
        pad.text(144, 212, "Gift receipt 5550-1421, exchange until 04/30", "T", 8, "c")
        pad.text(144, 400, "Fernwick Kilnworks · fernwick.example · sample", "T", 8, "c")
    return pad


def roll_slip(n, to):
    pad = Pad("packing-slip", LABEL)
    with pad.part("slip"):
        pad.text(14, 28, f"Order #{n}", "HB", 18)
        pad.code(274, 12, "code128", f"{n}", 24, 2, "r")
        pad.lines(14, 48, ["Ship to", *to], "H", 8.5, 10.5)
        pad.rect(10, 118, 268, 14, "#000000")
        pad.text(14, 128, "QTY   ITEM", "HB", 8, color="#ffffff")
        for at, (name, sku) in enumerate([("Lemon candle, 30 h", "CC-30L"), ("Wick trimmer", "CC-TR"), ("Matches, long", "CC-M")]):
            pad.text(16, 150 + 30 * at, str(at + 1), "HB", 12)
            pad.lines(44, 146 + 30 * at, [name, sku], "H", 9, 11)
            pad.line(10, 162 + 30 * at, 278, 162 + 30 * at, 0.3)
        pad.lines(14, 270, ["Thank you for ordering from a small shop!", "Sample slip. coopersmoor.example"], "H", 8, 11)
    return pad


def invoice():
    pad = Pad("invoice", A4)
    pad.text(50, 70, "Studio Bleekveld", "LB", 20)
    pad.text(545, 70, "FACTUUR", "LB", 20, "r")
    pad.lines(50, 100, ["Proefstraat 77, 9998 ZA Monsterveen", "BTW NL000000000B00 (voorbeeld)"], "L", 9, 12)
    pad.lines(50, 160, P["nl"][1], "L", 11, 14)
    pad.code(545, 150, "code128", "2026-0555-0142", 34, 2, "r")
    for at, (name, price) in enumerate([("Theedoek, ongebleekt linnen", "18,50"), ("Kussenhoes streep 50×50", "44,00"), ("Verzendkosten", "6,95")]):
        pad.text(50, 270 + 22 * at, name, "L", 10)
        pad.text(545, 270 + 22 * at, f"€ {price}", "L", 10, "r")
        pad.line(50, 277 + 22 * at, 545, 277 + 22 * at, 0.4)
    pad.text(545, 350, "Totaal incl. btw  € 69,45", "LB", 12, "r")
    pad.code(50, 400, "qr", "BCD;002;1;SCT;XXXX;Studio Bleekveld;NL00XXXX0555014200;EUR69.45;voorbeeld", dots=6)
    pad.lines(180, 420, ["Betaal binnen 14 dagen.", "Scan de code met uw bank-app (voorbeeld)."], "L", 9, 13)
    return pad


def customs():
    """A declaration to go into a pouch: boxes, a list of goods, a signature."""
    pad = Pad("customs", (420, 297.6))
    pad.box(12, 12, 396, 274, 1)
    pad.text(20, 30, "CUSTOMS DECLARATION", "HB", 12)
    pad.text(400, 30, "May be opened officially - SAMPLE", "H", 7, "r")
    pad.line(12, 38, 408, 38, 1)
    pad.line(210, 38, 210, 108, 0.6)
    pad.lines(18, 50, ["From", *S["au"], "Australia"], "H", 8, 10)
    pad.lines(216, 50, ["To", *P["de"][0], "Germany"], "H", 8, 10)
    pad.line(12, 108, 408, 108, 0.6)
    for at, mark in enumerate(["Gift", "Documents", "Sale of goods", "Returned goods"]):
        pad.box(20 + 95 * at, 114, 9, 9, 0.6)
        pad.text(33 + 95 * at, 122, mark, "H", 8)
    pad.line(115 + 95, 114, 115 + 104, 123, 1)
    pad.line(12, 130, 408, 130, 0.6)
    heads = [("Quantity and detailed description", 18), ("Net weight", 220), ("Value AUD", 275), ("HS tariff no.", 340)]
    for text, x in heads:
        pad.text(x, 140, text, "HB", 7)
    for at, row in enumerate([("5 soap bars", "0.60", "49.50", "3401.11"), ("1 soap dish, wood", "0.20", "24.00", "4419.90")]):
        for (_, x), text in zip(heads, row):
            pad.text(x, 156 + 14 * at, text, "H", 8)
    pad.line(12, 205, 408, 205, 0.6)
    pad.code(24, 214, "code128", "CP555014200AU", 34, 2)
    pad.lines(250, 226, ["Date and sender's signature", "", "03/02/2026  ______________"], "H", 8, 14)
    return pad


def advert():
    pad = Pad("advert", LETTER)
    pad.rect(60, 90, 492, 300, "#f2e6d0", "#000000", 2)
    pad.text(306, 160, "15 % off your next order", "TB", 34, "c")
    pad.text(306, 200, "Fernwick Kilnworks says thank you", "T", 16, "c")
    pad.code(306, 240, "code128", "THANKS15", 60, 3, "c")
    pad.text(306, 316, "THANKS15", "TB", 14, "c")
    pad.text(306, 360, "Valid until 06/30 at fernwick.example. Sample voucher.", "T", 10, "c")
    return pad


def markup():
    drop = (
        '<div style="padding:40pt"><h1>Take this page to the counter</h1><p>No printer, no label needed: the shop prints the label when it scans the code.</p>'
        f'<div style="margin:20pt 0">{code("qr", "HYN55501420:DROP:SAMPLE", dots=12)}</div><p><b>HYN55501420</b> · valid until 10 Feb 2026</p>'
        f"<p>{esc('Parcel shop Example Corner', '2 Placeholder Street, Mockborough QX1 4ZZ', 'Mon–Sat 8–20')}</p><p>Sample. This is not a shipping label.</p></div>"
    )
    ticket = (
        '<div style="margin:40pt;border:1.5pt solid #000;border-radius:8pt;display:flex"><div style="flex:1;padding:16pt"><h1 style="margin:0">Makers’ Night Market</h1>'
        "<p>Saturday, 14 February 2026, doors 18:00<br/>Example Hall, 5 Sample Quay, Mockborough</p><p>Admit one · Ms Philippa Tranmere-Holt · £6.00</p><p>Specimen ticket</p></div>"
        f'<div style="border-left:1pt dashed #000;padding:16pt">{code("qr", "TICKET-5550142-SPECIMEN", dots=8)}<div style="font-size:8pt">5550-142</div></div></div>'
    )
    css = "body{font-family:Roboto;font-size:11pt}h1{font-size:20pt}td,th{border-bottom:.4pt solid #aaa;padding:4pt 6pt;text-align:left}table{border-collapse:collapse;width:100%}"
    r_markup.document("r14-none-6", "chromium", [page("instructions", A4, drop), page("other", A4, ticket)], css)
    rows = "".join(
        f"<tr><td>&#9744;</td><td>{shelf}</td><td>{name}</td><td>{many}</td><td>{code('code128', sku, 18, 2)}</td></tr>"
        for shelf, name, many, sku in [("A1-3", "Speckled mug, oat", 6, "FK-1107"), ("A1-4", "Rim saucer", 11, "FK-0420"), ("B2-1", "Berry bowl", 2, "FK-0770"), ("C0-9", "Test tile blue 7", 3, "FK-9931")]
    )
    picks = f'<div style="padding:36pt"><h1>Pick list 3 Feb 2026, wave 2</h1><p>22 pieces for 14 orders. Example.</p><table><tr><th></th><th>Shelf</th><th>Item</th><th>Pieces</th><th>SKU</th></tr>{rows}</table></div>'
    r_markup.document("r14-none-7", "weasyprint", [page("pick-list", A4, picks)], css)
    terms = "".join(f'<fo:block font-size="9pt" space-after="8pt">{n}. {text}</fo:block>' for n, text in enumerate(["You may send back what you bought within fourteen days, no questions asked.", "The days count from when you, or the person that you named, hold the last parcel.", "We pay you back within fourteen days, by the means with which you paid.", "Made-to-order pieces can not be sent back unless they arrived broken.", "This is an example of terms; no such shop exists."] * 3, 1))
    text = r_markup.fo_at(60, 60, 480, 600, f'<fo:block font-size="16pt" font-weight="bold" space-after="14pt">Terms and right of withdrawal</fo:block>{terms}')
    r_markup.document("r14-none-8", "fop", [page("other", A4, text)])


document("r14-none-1", "rsvg", [scan_sheet(), end_of_day("Zelbryk")])
document("r14-none-2", "reportlab", [gift(), Pad("blank", LABEL)])
document("r14-none-3", "pdfkit", [roll_slip(10142, P["gb"][2]), roll_slip(10177, P["gb"][0])])
document("r14-none-4", "fpdf2", [invoice(), customs()])
document("r14-none-5", "jspdf", [advert()])
markup()
