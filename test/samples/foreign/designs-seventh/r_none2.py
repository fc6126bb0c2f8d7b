"""Second lot: papers without a label."""

import r_markup
from r_build import document
from r_lot2a import table
from r_markup import code, esc, page
from r_pad import WORDS, Pad

P, S = WORDS["people"], WORDS["senders"]
LETTER, A4, A5, LABEL = (612, 792), (595.28, 841.89), (419.53, 595.28), (288, 432)


def roll_summary():
    """What a station prints on the roll at the end of the day."""
    pad = Pad("other", LABEL)
    pad.text(144, 30, "END OF DAY", "MB", 18, "c")
    pad.lines(144, 52, ["Saltbush Soapery, station 1", "3 Feb 2026 16:40", "SAMPLE LIST"], "M", 9, 13, align="c")
    pad.line(16, 90, 272, 90, 1)
    for at, (name, many) in enumerate([("Tirrawind Road", 9), ("Yarro Swift", 4), ("Yarro Standard", 17), ("Held back", 1)]):
        pad.text(20, 112 + 18 * at, name, "M", 11)
        pad.text(268, 112 + 18 * at, str(many), "MB", 11, "r")
    pad.line(16, 176, 272, 176, 1)
    pad.text(20, 196, "TOTAL", "MB", 13)
    pad.text(268, 196, "31", "MB", 13, "r")
    pad.code(144, 226, "code128", "EOD20260203-1", 60, 2, "c")
    pad.text(144, 300, "EOD20260203-1", "M", 9, "c")
    pad.text(20, 380, "Driver: ______________", "M", 10)
    return pad


def shelf_card():
    pad = Pad("other", LABEL)
    pad.box(12, 12, 264, 408, 6)
    pad.text(144, 130, "B-07", "LB", 92, "c", fit=236)
    pad.text(144, 170, "Lemon myrtle bars, 120 g", "L", 14, "c")
    pad.code(144, 210, "code128", "SHELF-B07", 90, 3, "c")
    pad.text(144, 330, "Refill when fewer than 20", "L", 12, "c")
    pad.text(144, 400, "shelf card, sample", "L", 8, "c")
    return pad


def missed_you():
    pad = Pad("other", (297.64, 419.53))
    pad.rect(0, 0, 297.64, 60, "#222222")
    pad.text(149, 38, "Sorry we missed you", "OB", 20, "c", color="#ffffff")
    pad.lines(20, 92, ["We tried to deliver today at 10:42.", "Your parcel is", "[ ] with a neighbour: ________________", "[ ] in your safe place: _______________", "[x] at the shop named below"], "O", 10, 20)
    pad.lines(20, 220, ["Example Corner Shop", "2 Placeholder Street", "Mockborough QX1 4ZZ"], "OB", 12, 16)
    pad.code(20, 286, "qr", "CARD-5550142-SAMPLE", dots=6)
    pad.lines(110, 306, ["Bring this card and", "something with your name.", "Sample card, hyndrelle.example"], "O", 9, 13)
    return pad


def trade_invoice():
    pad = Pad("invoice", LETTER)
    pad.text(306, 50, "COMMERCIAL INVOICE", "TB", 18, "c")
    pad.box(36, 66, 540, 150, 0.8)
    pad.line(306, 66, 306, 216, 0.8)
    pad.lines(42, 80, ["Exporter", *S["us"], "United States", "(503) 555-0142", "EIN 00-0555014"], "T", 9.5, 12)
    pad.lines(312, 80, ["Consignee", *P["ca"][1], "Canada", "(705) 555-0163"], "T", 9.5, 12)
    pad.lines(42, 180, ["Air waybill 7044 5550 1542", "Terms: DAP"], "TB", 9.5, 12)
    end = table(pad, 36, 240, 540, ("Goods", "Origin", "Qty", "USD"), [("Stoneware mug, HS 6912.00", "US", "2", "68.00"), ("Saucer, HS 6912.00", "US", "4", "50.00"), ("Freight", "", "", "22.10"), ("Total", "", "", "140.10")], "T", 10)
    pad.para(42, end + 20, 520, "I declare that all of this is true and correct. This invoice is a sample; nothing was sold.", "T", 10)
    pad.text(42, end + 70, "Signature ______________________   Date ______________", "T", 10)
    return pad


def form_on_roll(n):
    pad = Pad("customs", LABEL)
    pad.text(10, 18, "CUSTOMS FORM - Zollinhaltserklärung", "SB", 11)
    pad.text(10, 30, "Sample, to be put into the pouch with the label", "S", 7)
    pad.box(8, 36, 272, 384, 0.7)
    for y in (96, 156, 176, 290, 330, 372):
        pad.line(8, y, 280, y, 0.7)
    pad.lines(14, 48, ["Sender", *S["de"], "Germany"], "S", 8, 10.5)
    pad.lines(14, 108, ["Addressee", *P["us"][n], "USA"][:5], "S", 8, 10.5)
    pad.text(14, 169, "[ ] Gift   [ ] Documents   [x] Sale   [ ] Sample   [ ] Other", "S", 8)
    for at, row in enumerate([("Description", "kg", "EUR", "HS"), ("Vase, stoneware", "1.20", "64.00", "6913.90"), ("Bowl, stoneware", "0.45", "22.00", "6912.00")]):
        for x, text in zip((14, 150, 190, 236), row):
            pad.text(x, 190 + 16 * at, text, "SB" if at == 0 else "S", 8)
    pad.lines(14, 304, ["Total  1.65 kg   86.00 EUR", "Invoice no. 510-26"], "SB", 8.5, 14)
    pad.lines(14, 344, ["Importer's reference: none", "Phone (555) 555-0142"], "S", 8, 12)
    pad.text(14, 404, "Date, signature: 03.02.2026  O. Moosgrund", "S", 8)
    return pad


def price_stickers():
    pad = Pad("other", A4)
    for at in range(24):
        x, y = 20 + 187 * (at % 3), 30 + 100 * (at // 3)
        pad.text(x + 4, y + 12, ["Speckled mug", "Berry bowl", "Rim saucer"][at % 3], "RB", 9)
        pad.code(x + 6, y + 18, "ean13", ["401234500015", "401234500022", "401234500039"][at % 3], 40, 2)
        pad.text(x + 150, y + 50, ["34,00", "48,00", "12,50"][at % 3], "RB", 14, "r")
    return pad


def cover(n):
    pad = Pad("other", LETTER)
    pad.text(306, 250, f"Batch {n}", "HB", 60, "c")
    pad.text(306, 300, "14 labels follow", "H", 22, "c")
    pad.code(306, 340, "code39", f"BATCH{n}", 60, 3, "c")
    pad.text(306, 440, "Printed 02/03/2026 by station 2. Sample.", "H", 10, "c")
    return pad


def order_slip(n, to):
    """A5, with address and bars like a label's, but it goes inside."""
    pad = Pad("packing-slip", A5)
    with pad.part("slip"):
        pad.text(30, 50, "Pottery Moosgrund", "FB", 18)
        pad.text(30, 66, "Musterhof 2 · 01999 Probedorf", "F", 8)
        pad.text(390, 50, "Lieferschein", "FB", 14, "r")
        pad.lines(30, 110, to, "F", 11, 14)
        pad.code(390, 100, "code128", f"LS{n}5550", 36, 2, "r")
        table(pad, 30, 210, 360, ("Artikel", "Nr.", "Menge"), [("Becher, sandfarben", "B-12", "4"), ("Schale, tief", "S-03", "1"), ("Butterdose", "D-07", "1")], "F", 10)
        pad.para(30, 320, 360, "Vielen Dank! Bitte prüfen Sie die Ware gleich. Dies ist ein Muster.", "F", 10)
    return pad


def markup():
    css = "body{font:10pt/1.4 'Open Sans'}.p{padding:44pt}h1{font-size:19pt}table{border-collapse:collapse;width:100%}td,th{border-bottom:.4pt solid #bbb;text-align:left;padding:5pt}"
    mail = (
        f'<div class="p"><h1>Thanks, your order 341-FK is confirmed</h1><p>Hi Dorian, we have begun to wrap it. Ship to:</p><p>{esc(*P["us"][0])}</p><table><tr><th>Item</th><th>Qty</th><th>USD</th></tr>'
        "<tr><td>Berry bowl with saucer</td><td>1</td><td>48.00</td></tr><tr><td>Speckled mug, oat</td><td>2</td><td>68.00</td></tr></table><p>Tracking number: 9205 5501 0100 3177 4211 (sample)</p><p>fernwick.example</p></div>"
    )
    pack = (
        '<div class="p"><h1>How to pack fragile things</h1><ol><li>Two fingers of padding on each side.</li><li>Nothing may rattle when you shake the box.</li><li>Tape each seam twice.</li><li>Stick the label on the largest side, never over an edge.</li>'
        "<li>Strike through old bar codes.</li></ol><p>Shipping label, packing slip and customs form are printed on three separate papers. This page is none of them. Sample.</p></div>"
    )
    r_markup.document("r29-none-6", "chromium", [page("other", LETTER, mail), page("instructions", LETTER, pack)], css)
    rows = "".join(
        f"<tr><td>{code('qr', f'PICK-{n}', dots=3)}</td><td>Order {n}</td><td>{esc(to[0], to[-1])}</td><td>{items}</td></tr>"
        for n, to, items in [(601, P["gb"][2], "2 × CC-30L"), (602, P["ie"][0], "1 × CC-BT, 1 × CC-SN"), (603, P["gb"][0], "6 × CC-TF"), (604, P["gb"][1], "1 × CC-30L")]
    )
    bill = (
        f'<div class="p"><h1>Rechnung 510-26</h1><p>{esc(*P["de"][1])}</p><table><tr><th>Artikel</th><th>EUR</th></tr><tr><td>Becher, sandfarben ×4</td><td>112,00</td></tr><tr><td>Versand</td><td>6,49</td></tr><tr><th>Summe inkl. 19 % MwSt.</th><th>118,49</th></tr></table>'
        f"<p>Zahlbar in 14 Tagen. Muster.</p>{code('qr', 'BCD;002;1;SCT;;Pottery Moosgrund;DE00555014200000000000;EUR118.49;;510-26;Muster', dots=5)}</div>"
    )
    r_markup.document("r29-none-7", "weasyprint", [page("pick-list", A4, f'<div class="p"><h1>Picking, cart 3</h1><table>{rows}</table><p>Sample list</p></div>'), page("invoice", A4, bill)], css)


if __name__ == "__main__":
    document("r29-none-1", "reportlab", [roll_summary(), shelf_card()])
    document("r29-none-2", "fpdf2", [missed_you()])
    document("r29-none-3", "pdfkit", [trade_invoice(), cover(77)])
    document("r29-none-4", "mupdf", [form_on_roll(0), form_on_roll(2)])
    document("r29-none-5", "rsvg", [price_stickers(), Pad("blank", A4)])
    document("r29-none-8", "inkscape", [order_slip(510, P["de"][0]), order_slip(511, P["de"][1])])
    markup()
