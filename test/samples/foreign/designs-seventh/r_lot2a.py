"""Second lot: papers that are drawn on a pad."""

import r_labels_2 as two
from r_build import document
from r_pad import WORDS, Pad

P, S = WORDS["people"], WORDS["senders"]
LETTER, A4, A5, LABEL = (612, 792), (595.28, 841.89), (419.53, 595.28), (288, 432)
NORDIC = {
    "no": ("NB", "Avsender", "Mottaker", "PRØVE – IKKE GYLDIG FOR TRANSPORT", "Vekt", "Bondra"),
    "dk": ("DB", "Afsender", "Modtager", "PRØVE – IKKE GYLDIG TIL FORSENDELSE", "Vægt", "Hjemvel"),
    "se": ("SB", "Avsändare", "Mottagare", "PROV – GÄLLER INTE FÖR TRANSPORT", "Vikt", "Hemvind"),
}


def table(pad, x, y, w, head, rows, font="S", size=8.5, lead=15):
    pad.line(x, y - lead + 4, x + w, y - lead + 4, 0.7)
    for at, row in enumerate([head, *rows]):
        face = font + "B" if at == 0 else font
        pad.text(x + 2, y + lead * at, row[0], face, size)
        for k, cell in enumerate(row[1:]):
            pad.text(x + w - 2 - 62 * (len(row) - 2 - k), y + lead * at, cell, face, size, "r")
        pad.line(x, y + lead * at + 4, x + w, y + lead * at + 4, 0.3)
    return y + lead * (len(rows) + 1)


def two_peel_offs():
    """A dispatch note above, the label out and the label back below: two peel-off places of the sheet."""
    pads = []
    for n, to in enumerate([P["gb"][0], P["gb"][1], P["gb"][2]], 61):
        pad = Pad("label", A4)
        with pad.part("slip"):
            pad.text(40, 62, "Coopersmoor Candles", "F", 22)
            pad.text(555, 62, f"Dispatch note {n}-26", "FB", 12, "r")
            pad.lines(40, 92, ["For", *to], "F", 10, 13)
            rows = [("Lemon candle, 30 h", "CC-30L", "2"), ("Beeswax tapers, pair", "CC-BT", "1"), ("Tin candle, fig", "CC-TF", "6"), ("Snuffer, brass", "CC-SN", "1")]
            end = table(pad, 40, 200, 515, ("Item", "Code", "Qty"), rows[: 1 + n % 4], "F", 10)
            pad.para(40, end + 14, 515, "To send something back, tick the reason: ( ) too late ( ) damaged ( ) not as pictured ( ) other, and stick the right-hand label over the old one. This page is a sample.", "F", 9)
        pad.place(two.pemmiskar, 16, 448, 272, 356, to, n)
        pad.place(two.pemmiskar, 308, 448, 272, 356, S["gb"], n + 500, back=True, role="return-label")
        pads.append(pad)
    document("r15-two-peel-offs-1", "pdfkit", pads)


def envelope_paper():
    pads = [Pad("label", (432, 288)).place(two.stranfelk, 12, 14, 408, 262, to, n, edge="page") for n, to in enumerate([P["us"][1], P["us"][4], P["us"][2]], 71)]
    document("r17-lying-paper-1", "mupdf", pads)


def small_letter_labels():
    """Eight places of a sheet, some used, marks at the corners of each; a note at the foot."""
    pads = []
    for n, many in ((90, (0,)), (93, (0, 1, 4))):
        pad = Pad("label", A4)
        for at in many:
            pad.place(two.bosquarne, 12 + 297.64 * (at % 2), 20 + 190 * (at // 2), 272, 150, P["fr"][at % 3], n + at)
        pad.para(30, 786, 535, "Découpez chaque étiquette et collez-la sur votre enveloppe. Exemple sans valeur d'affranchissement – bosquarne.example", "O", 8)
        pads.append(pad)
    document("r18-letter-labels-1", "fpdf2", pads)


def turned_a6():
    pads = []
    for n, (to, lang, rotate) in enumerate([(P["be"][0], "nl", 90), (P["fr"][2], "fr", 270), (P["nl"][1], "nl", 90)], 33):
        pad = Pad("label", A4, rotate).place(two.kwinterop, 14, 20, 272, 372, to, n, lang)
        pad.lines(320, 60, ["Plak dit etiket op uw pakket." if lang == "nl" else "Collez cette étiquette sur le colis.", "Kwinterop punt / point: Voorbeeldplein 3", "9099 Voorbeeldgem"], "R", 9, 13)
        pad.lines(320, 130, ["1. Printen / imprimer", "2. Vouwen / plier", "3. Afgeven / déposer"], "R", 9, 16)
        pads.append(pad)
    document("r19-quarter-fed-turned-1", "reportlab", pads)


def half_sheets():
    """Two adhesive halves of a letter sheet, a label lying on each, of different carriers; the last sheet half used."""
    pads = []
    for n, pair in enumerate([(0, 1), (1, 2), (3,)], 40):
        pad = Pad("label", LETTER)
        draws = [(two.cravistow, 262, 376), (two.jolprin, 276, 404)]
        for at, person in enumerate(pair):
            draw, w, h = draws[(at + n) % 2]
            pad.place(draw, (612 - h) / 2, 396 * at + (396 - w) / 2, w, h, P["us"][person], n * 10 + at, turn=90 if n < 42 else 270)
        pads.append(pad)
    document("r20-half-sheets-1", "pdfkit", pads)


def long_paper():
    pads = []
    for n, (to, words) in enumerate([(P["no"][0], "no"), (P["dk"][0], "dk"), (P["se"][1], "se")], 23):
        pads.append(Pad("label", (303.31, 541.42)).place(two.skolbrun, 18, 22, 267, 480, to, n, NORDIC[words], edge="page"))
    document("r21-long-paper-1", "rsvg", pads)


def lying_a5():
    pads = []
    for n, to in enumerate([P["fi"][0], P["se"][0]], 81):
        pad = Pad("label", (595.28, 419.53)).place(two.ulvretan, 14, 22, 276, 370, to, n, edge="frame")
        pad.text(330, 60, "Näin lähetät paketin", "DB", 13)
        y = 82
        for text in ("1. Tulosta sivu ja leikkaa tarra irti.", "2. Kiinnitä tarra paketin suurimmalle sivulle.", "3. Vie paketti automaattiin ja näppäile lähetyskoodi:"):
            y = pad.para(330, y, 230, text, "D", 9) + 4
        pad.text(330, y + 26, f"{n}55-0142", "DB", 24)
        pad.para(330, y + 60, 230, "Säilytä tämä osa. Esimerkki, ei kelpaa kuljetukseen.", "D", 8)
        pads.append(pad)
    document("r22-lying-a5-1", "inkscape", pads)


def declaration(pad, w, h, to, n):
    pad.box(0, 0, w, h, 0.8)
    pad.text(8, 16, "Customs declaration / Déclaration en douane", "SB", 11)
    pad.text(w - 8, 16, f"Sender's copy {n}", "S", 8, "r")
    pad.line(0, 22, w, 22, 0.8)
    pad.lines(8, 34, ["From / Exp.", *S["ca"], "Canada"], "S", 8, 10)
    pad.lines(w / 2, 34, ["To / Dest.", *to, "United States"], "S", 8, 10)
    pad.line(0, 100, w, 100, 0.8)
    table(pad, 8, 116, w - 16, ("Description", "Qty", "kg", "CAD"), [("Letterpress cards", "8", "0.240", "36.00"), ("Gift tags", "2", "0.080", "6.00"), ("Total", "10", "0.320", "42.00")])
    pad.code(20, 200, "code128", f"CD{n:05d}555CA", 36, 2, truth=False)
    pad.lines(w - 220, 210, ["Signature and date", "", "____________________  2026-02-03"], "S", 8, 12)
    pad.text(8, h - 8, "Sample, not valid for carriage / Spécimen", "S", 7)


def with_declaration():
    """Above the fold the label, lying; below it the declaration that goes into the pouch too."""
    pads = []
    for n, to in enumerate([P["us"][0], P["us"][1], P["us"][3]], 62):
        pad = Pad("label", LETTER)
        pad.place(two.maplurex, 100, 40, 276, 394, to, n, turn=270)
        pad.line(20, 396, 592, 396, 0.5, "#555555", [6, 4])
        with pad.turned(0, 40, 440, 532, 300):
            declaration(pad, 532, 300, to, n)
        pads.append(pad)
    document("r23-with-declaration-1", "mupdf", pads)


def four_places():
    pads = []
    for n, many in ((50, (0, 1, 2)), (54, (1, 3))):
        pad = Pad("label", A4)
        for at in many:
            pad.place(two.tirrawind, 17 + 297.64 * (at % 2), 42 + 420.94 * (at // 2), 264, 342, P["au"][at % 3], n + at)
        pads.append(pad)
    document("r24-four-places-1", "fpdf2", pads)


def paper_with_tab():
    pads = []
    for n, to in enumerate([P["us"][0], P["us"][2], P["us"][1]], 27):
        pad = Pad("label", (288, 576)).place(two.ebbrindel, 8, 10, 272, 404, to, n, edge="frame")
        pad.line(0, 432, 288, 432, 0.5, "#666666", [2, 2])
        with pad.part("slip"):
            pad.text(10, 450, f"Packed for {to[0]}", "RB", 9, fit=268)
            for at, row in enumerate(["2 x Speckled mug, oat", "4 x Rim saucer", "1 x Glaze test tile"][: 1 + n % 3]):
                pad.text(10, 466 + 13 * at, row, "R", 9)
            pad.text(10, 562, f"Order {n}-FK, fernwick.example, sample", "R", 7.5)
        pads.append(pad)
    document("r27-paper-with-tab-1", "reportlab", pads)


if __name__ == "__main__":
    for each in (two_peel_offs, envelope_paper, small_letter_labels, turned_a6, half_sheets, long_paper, lying_a5, with_declaration, four_places, paper_with_tab):
        each()
