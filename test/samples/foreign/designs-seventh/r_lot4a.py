"""Fourth lot: papers that are drawn on a pad."""

import r_labels_4 as four
from r_build import document
from r_lot2a import table
from r_pad import WORDS, Pad

P, S = WORDS["people"], WORDS["senders"]
LETTER, A4, A6 = (612, 792), (595.28, 841.89), (297.64, 419.53)


def several_pieces():
    pads = []
    for n, to in ((31, P["fr"][1]), (32, P["fr"][0])):
        pads += [Pad("label", A6).place(four.coursevane, 14, 16, 270, 372, to, n, piece, 2, edge="frame") for piece in (1, 2)]
    document("r46-several-pieces-1", "mupdf", pads)


def square_paper():
    pads = [Pad("label", (288, 288)).place(four.hubdarrow, 8, 8, 272, 272, to, n, edge="frame") for n, to in ((57, P["us"][1]), (58, P["us"][4]))]
    document("r47-square-paper-1", "fpdf2", pads)


def narrow_roll():
    words = {"dk": ("Afsender", "Modtager", "PRØVE – IKKE GYLDIG TIL FORSENDELSE"), "se": ("Avsändare", "Mottagare", "PROV – GÄLLER INTE FÖR TRANSPORT")}
    pads = [Pad("label", (175.75, 283.46)).place(four.fjelbring, 6, 6, 163.75, 271, to, n, words[k], edge="frame") for n, to, k in ((14, P["dk"][0], "dk"), (15, P["se"][0], "se"))]
    document("r48-narrow-roll-1", "rsvg", pads)


def over_advert():
    pads = []
    for n, to in enumerate([P["us"][2], P["us"][1], P["us"][0]], 71):
        pad = Pad("label", LETTER).place(four.marquenby, 30, 30, 272, 390, to, n)
        pad.rect(30, 470, 552, 280, "#ffe9c4")
        pad.text(306, 560, "Ship ten, the eleventh is on us", "LB", 30, "c")
        pad.text(306, 600, "Only in February, only for small shops. marquenby.example/eleven", "L", 13, "c")
        pad.code(306, 630, "qr", "marquenby.example/eleven?s=sample", dots=8, align="c", truth=False)
        pads.append(pad)
    document("r49-over-advert-1", "pdfkit", pads)


def with_own_record():
    """Half a lying page for the box, half to keep, the number in bars on both."""
    pads = []
    for n, to in enumerate(P["de"], 91):
        pad = Pad("label", (841.89, 595.28)).place(four.weilgrund, 24, 40, 388, 300, to, n, edge="frame")
        pad.line(430, 20, 430, 575, 0.6, "#000000", [6, 4])
        pad.text(456, 60, "Beleg für den Absender", "OB", 14)
        pad.text(456, 78, "Bitte aufbewahren – nicht auf das Paket kleben", "O", 9)
        pad.lines(456, 110, ["Empfänger", *to], "O", 9, 12)
        pad.code(456, 200, "code128", f"WG{n:05d}55501", 36, 2)
        pad.lines(456, 256, [f"Sendung WG{n:05d}55501", f"Preis 6,90 EUR, {n % 12 + 1},5 kg", "Abgabe am: ____________", "Muster"], "O", 9, 14)
        pads.append(pad)
    document("r50-with-own-record-1", "reportlab", pads)


def out_and_back():
    pads = []
    for n, to in ((18, P["ca"][0]), (19, P["ca"][1])):
        pad = Pad("label", LETTER)
        pad.text(40, 30, "1. Outbound label / Étiquette d'envoi", "RB", 10)
        pad.place(four.osmarrin, 116, 58, 262, 372, to, n, turn=90)
        pad.line(0, 396, 612, 396, 0.6, "#000000", [5, 4])
        pad.text(40, 424, "2. Return label, put it into the box / Étiquette de retour", "RB", 10)
        pad.place(four.kelfarne, 116, 462, 270, 380, to, n, turn=90, role="return-label", edge="frame")
        pads.append(pad)
    document("r51-out-and-back-1", "inkscape", pads)


def quarters():
    pads = []
    for n, who in ((60, (P["gb"][0], P["ie"][0], P["gb"][1], P["gb"][2])), (64, (P["ie"][0], P["gb"][2]))):
        pad = Pad("label", A4)
        for at, to in enumerate(who):
            pad.place(four.shanveel, 24 + 297.64 * (at % 2), 34 + 420.94 * (at // 2), 250, 350, to, n + at)
        pad.line(297.64, 0, 297.64, 841.89, 0.4, "#000000")
        pad.line(0, 420.94, 595.28, 420.94, 0.4, "#000000")
        pads.append(pad)
    document("r52-quarters-1", "jspdf", pads)


def shrunk():
    """A label page as a printer's 'fit' makes it, 94 percent, stored again."""
    pads = []
    for n, to in ((81, P["us"][1]), (82, P["us"][3])):
        pads.append(Pad("label", LETTER).place(four.stramvel, 34, 40, 270, 392, to, n))
    for pad in pads:
        pad.ops = [scaled(op, 0.94) for op in pad.ops]
    document("r44-shrunk-1", "reportlab", pads)


def scaled(op, by):
    """Everything of one drawing step smaller, around the page's corner."""
    part, name, *a = op
    if name == "cells":
        return [part, name, [[v * by for v in cell] for cell in a[0]]]
    if name == "text":
        return [part, name, a[0] * by, a[1] * by, a[2], a[3], a[4] * by, a[5]]
    if name == "rect":
        return [part, name, *[v * by for v in a[:4]], a[4], a[5], a[6] * by, a[7]]
    raise ValueError(name)


def bill_of_lading(n, to):
    pad = Pad("other", LETTER)
    pad.text(306, 48, "STRAIGHT BILL OF LADING - SHORT FORM", "HB", 14, "c")
    pad.code(570, 60, "code128", f"BOL{n}5550142", 36, 2, "r")
    pad.text(42, 84, f"Bill number {n}-5550142, not negotiable, sample", "H", 8)
    pad.box(36, 110, 540, 110, 0.8)
    pad.line(306, 110, 306, 220, 0.8)
    pad.lines(44, 124, ["SHIP FROM", *S["us"], "(503) 555-0142"], "H", 9.5, 13)
    pad.lines(314, 124, ["SHIP TO", *to], "H", 9.5, 13)
    table(pad, 36, 250, 540, ("Commodity", "Pieces", "Weight", "Class"), [("Stoneware, packed", "12", "410 lb", "70"), ("Pallet", "1", "40 lb", "")], "H", 10, 18)
    pad.para(36, 340, 540, "Received, in apparent good order, the goods described above. The carrier signs for the count only. Freight charges: prepaid. This is a sample.", "H", 9)
    pad.text(36, 400, "Shipper ____________________     Driver ____________________     Date __________", "H", 9)
    return pad


def counter_receipt():
    pad = Pad("other", (226.77, 566.93))
    pad.lines(113, 30, ["MURTOVEN COUNTER 14", "Exbury-on-Test"], "CB", 11, 14, align="c")
    for at, (name, price) in enumerate([("Ambrel 2, 0.84 kg", "4.29"), ("to ZE9 9XY", ""), ("Ambrel Europe", "12.40"), ("to D99 X0X0", ""), ("TOTAL GBP", "16.69")]):
        pad.text(14, 80 + 18 * at, name, "C", 10)
        pad.text(212, 80 + 18 * at, price, "C", 10, "r")
    for at, number in enumerate(["MV002055500GB", "MV002255502GB"]):
        pad.code(113, 200 + 80 * at, "code128", number, 36, 2, "c")
        pad.text(113, 248 + 80 * at, number, "C", 10, "c")
    pad.lines(113, 400, ["Keep this receipt.", "Sample, nothing was posted."], "C", 9, 13, align="c")
    return pad


def address_stickers():
    pad = Pad("other", LETTER)
    for at in range(30):
        to = (P["us"] + P["ca"])[at % 8]
        pad.lines(24 + 198 * (at % 3), 58 + 72 * (at // 3), to, "H", 9, 11, fit=170)
    return pad


def insurance():
    pad = Pad("other", A4)
    pad.box(40, 40, 515, 330, 2)
    pad.text(298, 86, "Certificate of parcel cover", "TB", 22, "c")
    pad.lines(70, 130, ["Parcel: CV00031555001", f"From: {', '.join(S['fr'])}", f"To: {', '.join(P['fr'][0])}", "Value: 120,00 EUR", "Cover from 3 Feb 2026 to 3 Mar 2026"], "T", 12, 20, fit=470)
    pad.code(70, 250, "pdf417", "CERT-5550142|CV00031555001|120.00|SAMPLE", dots=3)
    pad.text(70, 340, "Specimen certificate, no cover is given", "T", 10)
    return pad


if __name__ == "__main__":
    for each in (shrunk, several_pieces, square_paper, narrow_roll, over_advert, with_own_record, out_and_back, quarters):
        each()
    document("r54-none-1", "pdfkit", [bill_of_lading(31, P["us"][1]), bill_of_lading(32, P["ca"][2])])
    document("r54-none-2", "fpdf2", [counter_receipt(), address_stickers()])
    document("r54-none-3", "mupdf", [insurance()])
