"""Third lot: papers without a label."""

import r_markup
from r_build import document
from r_lot2a import table
from r_markup import code, esc, page
from r_pad import WORDS, Pad

P, S = WORDS["people"], WORDS["senders"]
LETTER, A4, A5, LABEL = (612, 792), (595.28, 841.89), (419.53, 595.28), (288, 432)


def this_way_up():
    pad = Pad("other", LABEL)
    pad.box(10, 10, 268, 412, 5)
    for x in (94, 194):
        pad.poly([(x, 60), (x + 46, 130), (x + 18, 130), (x + 18, 260), (x - 18, 260), (x - 18, 130), (x - 46, 130)])
    pad.rect(40, 276, 208, 8, "#000000")
    pad.text(144, 330, "THIS WAY UP", "NB", 36, "c")
    pad.text(144, 366, "Handle with care: stoneware inside", "N", 13, "c")
    pad.text(144, 404, "Fernwick Kilnworks, sample sticker", "N", 8, "c")
    return pad


def thanks_card():
    pad = Pad("advert", (432, 288))
    pad.text(216, 80, "You made our day.", "TB", 34, "c")
    pad.text(216, 112, "Show us where your mug lives and get 10 % off the next one.", "T", 13, "c")
    pad.code(216, 134, "qr", "https://fernwick.example/share?c=SAMPLE10", dots=9, align="c")
    pad.text(216, 274, "fernwick.example · sample card", "T", 9, "c")
    return pad


def slip_with_addresses(n, to):
    """As near to a label as slips come: both addresses and the order in bars."""
    pad = Pad("packing-slip", LETTER)
    with pad.part("slip"):
        pad.text(50, 64, "Packing Slip", "OB", 24)
        pad.code(562, 40, "code128", f"ORD-{n}-FK", 40, 2, "r")
        pad.lines(50, 110, ["Ship from", *S["us"]], "O", 10, 14)
        pad.lines(320, 110, ["Ship to", *to], "OB", 10, 14)
        end = table(pad, 50, 230, 512, ("Item", "SKU", "Ordered", "Packed"), [("Speckled mug, oat", "FK-1107", "2", "2"), ("Rim saucer", "FK-0420", "4", "4"), ("Berry bowl with saucer", "FK-0770", "1", "1")], "O", 10, 20)
        pad.para(50, end + 20, 512, "Shipped by Plaxwen Limbro. This is not a bill. Sample.", "O", 10)
    return pad


def bill_with_stub():
    """An invoice whose lower third is a stub to pay with: boxes, bars, a line to tear along."""
    pad = Pad("invoice", A4)
    pad.text(50, 70, "Verkstan Lilltorp", "FB", 20)
    pad.text(545, 70, "FAKTURA 701", "FB", 16, "r")
    pad.lines(50, 130, P["se"][1], "F", 11, 14)
    table(pad, 50, 230, 495, ("Vara", "Antal", "Kr"), [("Mugg, sandgrå", "2", "480,00"), ("Linneduk", "1", "350,00"), ("Frakt", "1", "79,00")], "F", 10.5, 18)
    pad.text(545, 340, "Att betala  909,00 kr", "FB", 13, "r")
    pad.line(0, 560, 595.28, 560, 0.6, "#000000", [6, 3])
    pad.text(50, 584, "INBETALNING (exempel)", "FB", 11)
    for x, y, w, h, head, value in [(50, 596, 240, 60, "Betalningsmottagare", "Verkstan Lilltorp"), (290, 596, 255, 60, "Avsändare", P["se"][1][0]), (50, 656, 240, 40, "Belopp", "909,00"), (290, 656, 255, 40, "Meddelande", "7015550142")]:
        pad.box(x, y, w, h, 0.7)
        pad.text(x + 4, y + 9, head, "F", 7)
        pad.text(x + 8, y + 28, value, "F", 11)
    pad.code(298, 716, "code128", "7015550142000909004", 44, 3, "c")
    pad.text(298, 776, "#  7015550142 #  909 00  4 >", "M", 10, "c")
    return pad


def carrier_bill():
    pad = Pad("other", LETTER)
    pad.text(50, 60, "Drofelin weekly statement", "RB", 18)
    pad.lines(50, 84, ["Account 55501, week 6 of 2026", *S["us"], "Sample"], "R", 9, 12)
    rows = [(f"1D 555 01{k + 40} 03 70{k:02d}", P["us"][k % 5][-1][:18], f"{k + 1} lb", f"{7 + k}.40") for k in range(16)]
    table(pad, 50, 170, 512, ("Tracking", "To", "Weight", "USD"), rows, "R", 9, 20)
    pad.text(562, 540, "Due 02/28/2026   $238.40", "RB", 13, "r")
    return pad


def markup():
    css = "body{font:10pt/1.45 Lato}.p{padding:46pt}h1{font-size:20pt}table{border-spacing:0;width:100%}td,th{border-bottom:.5pt solid #aaa;text-align:left;padding:5pt}.c{border:1pt solid #000;padding:12pt;width:260pt}"
    form = (
        f'<div class="p"><h1>Return form</h1><p>Order 601-26, {esc(P["gb"][2][0])}. Put this form into the parcel. The label comes by a separate mail.</p>{code("code128", "RMA60126", 40, 3)}<p>RMA60126</p>'
        "<table><tr><th>Item</th><th>Back?</th><th>Why</th></tr><tr><td>Lemon candle, 30 h</td><td>&#9744;</td><td></td></tr><tr><td>Wick trimmer</td><td>&#9744;</td><td></td></tr></table><p>Coopersmoor Candles, Unit 5, Sample Yard, Exbury-on-Test ZY2 8ZZ. Sample.</p></div>"
    )
    r_markup.document("r43-none-5", "chromium", [page("instructions", A4, form)], css)
    voucher = f'<div class="p"><div class="c"><h1>Bon cadeau 25 €</h1><p>Valable un an chez Atelier Grainvert, 8 chemin du Modèle, 98990 Exemplac.</p>{code("code128", "BON25GRV0142", 44, 3)}<p>BON25GRV0142 – spécimen</p></div></div>'
    ticket = f'<div class="p"><h1>Pick ticket 12</h1><p>Bin C-04, before 11:00</p>{code("datamatrix", "PICK-12-C04", dots=10)}<table><tr><th>Qty</th><th>What</th></tr><tr><td>5</td><td>Lemon myrtle bar</td></tr><tr><td>1</td><td>Soap dish</td></tr></table><p>Sample ticket</p></div>'
    r_markup.document("r43-none-6", "weasyprint", [page("advert", A4, voucher), page("pick-list", A5, ticket)], css)


if __name__ == "__main__":
    document("r43-none-1", "reportlab", [this_way_up()])
    document("r43-none-2", "fpdf2", [thanks_card()])
    document("r43-none-3", "pdfkit", [slip_with_addresses(901, P["us"][0]), slip_with_addresses(902, P["us"][1]), carrier_bill()])
    document("r43-none-4", "rsvg", [bill_with_stub()])
    markup()
