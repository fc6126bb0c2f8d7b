"""Fifth lot: papers that are drawn on a pad, and papers without a label."""

import r_labels_5 as five
from r_build import document
from r_lot2a import table
from r_pad import WORDS, Pad

P, S = WORDS["people"], WORDS["senders"]
LETTER, A4, A5, A6, LABEL = (612, 792), (595.28, 841.89), (419.53, 595.28), (297.64, 419.53), (288, 432)


def right_half():
    pads = []
    for n, to in enumerate(P["ca"], 21):
        pad = Pad("label", (792, 612))
        pad.text(40, 60, "Receipt / Reçu", "TB", 16)
        rows = [("TRUNDLE 2", "11.20"), ("Fuel / Carburant", "1.34"), ("HST / TVH", "1.63"), ("Total CAD", "14.17")]
        table(pad, 40, 96, 300, ("Item / Article", "CAD"), rows, "T", 10, 18)
        pad.lines(40, 220, [f"Order {n}-2026, sample", "pallomere.example"], "T", 10, 14)
        pad.place(five.pallomere, 456, 60, 276, 396, to, n)
        pads.append(pad)
    document("r55-right-half-1", "fpdf2", pads)


def note_around():
    pads = []
    for n, to in enumerate(P["de"][:2], 611):
        pad = Pad("label", A4).place(five.kranzig, 300, 30, 270, 344, to, n)
        pad.text(40, 60, "Pottery Moosgrund", "TB", 18)
        pad.text(40, 80, f"Lieferschein {n}-26", "TB", 12)
        pad.lines(40, 110, to, "T", 11, 14)
        table(pad, 40, 440, 515, ("Artikel", "Nr.", "Menge"), [("Becher, sandfarben", "B-12", "4"), ("Schale, tief", "S-03", "1"), ("Vase, klein", "V-01", "2")][: 1 + n % 3], "T", 11, 20)
        pad.text(40, 560, "Vielen Dank für die Bestellung! Muster.", "T", 11)
        pads.append(pad)
    document("r56-note-around-1", "pdfkit", pads)


def back_and_how(n, to):
    label = Pad("return-label", LABEL).place(five.undlowe, 6, 6, 276, 404, to, n, back=True, role="return-label", edge="page")
    how = Pad("instructions", LABEL)
    how.text(20, 40, "How to send it back", "HB", 16)
    y = 66
    for text in ("1. Put everything into the box that it came in.", "2. Stick the return label over the old one.", "3. Drop the box at any undlowe counter by March 1.", "4. Keep the counter's receipt until your money is back.", "Questions: returns@fernwick.example. Sample."):
        y = how.para(20, y, 248, text, "H", 10.5, 14) + 6
    return [label, how]


def over_tax_invoice():
    pads = []
    for n, to in enumerate(P["au"], 310):
        pad = Pad("label", A4).place(five.barrenjo, 84, 30, 428, 280, to, n, edge="frame")
        pad.line(0, 350, 595.28, 350, 0.5, "#888888", [2, 3])
        pad.text(60, 400, "Saltbush Soapery", "TB", 18)
        pad.text(535, 400, f"Tax invoice SB-{n}", "TB", 12, "r")
        pad.lines(60, 430, to, "T", 10, 13)
        table(pad, 60, 510, 475, ("Item", "Qty", "AUD"), [("Lemon myrtle bar 120 g", "5", "49.50"), ("Soap dish, spotted gum", "1", "24.00"), ("Postage", "1", "11.00")], "T", 10, 18)
        pad.text(60, 610, "GST included. ABN 00 555 010 142. Sample.", "T", 9)
        pads.append(pad)
    document("r58-over-tax-invoice-1", "reportlab", pads)


def between_columns():
    """The label at the lower left, care notes in a column at its right, a line of words above."""
    pads = []
    for n, to in enumerate([P["se"][0], P["fi"][0]], 41):
        pad = Pad("label", A4)
        pad.text(40, 70, "Verkstan Lilltorp", "CB", 18)
        pad.para(40, 100, 510, "Tack för din beställning. Klipp ut adresslappen nedan och tejpa fast den på lådan. Resten av sidan är skötselråd: lägg dem i paketet.", "C", 10, 14)
        pad.place(five.tjolven, 40, 420, 280, 344, to, n)
        y = 430
        for text in ("Stengods tål ugn men inte att gå från frys till ugn.", "Handdiska de första gångerna.", "Fläckar av te går bort med bikarbonat.", "Lin krymper lite i första tvätten. Exempelsida."):
            y = pad.para(370, y, 180, text, "C", 9.5, 13) + 10
        pads.append(pad)
    document("r59-between-columns-1", "reportlab", pads)


def quarter_no_lines():
    pads = []
    for n, to in enumerate(P["gb"], 77):
        pad = Pad("label", A4).place(five.quillmarch, 24, 26, 256, 320, to, n)
        pad.lines(330, 60, ["1. Print on plain paper.", "2. Cut, or fold twice.", "3. Tape it on, all four edges.", "4. Off it goes."], "T", 13, 24)
        pad.text(24, 800, "quillmarch.example · this sheet is a sample · order " + f"{n}-26", "T", 8)
        pads.append(pad)
    document("r60-quarter-1", "jspdf", pads)


def half_letter():
    pads = []
    for n, to in enumerate([P["us"][1], P["us"][0], P["us"][2]], 15):
        pad = Pad("label", (396, 612)).place(five.sendrake, 20, 20, 356, 330, to, n, edge="frame")
        with pad.part("slip"):
            pad.text(24, 420, f"Packing slip {n}-FK", "TB", 14)
            table(pad, 24, 450, 348, ("Item", "Qty"), [("Speckled mug, oat", "2"), ("Rim saucer", "4")][: 1 + n % 2], "T", 10, 18)
            pad.text(24, 560, "Thank you! fernwick.example, sample", "T", 10)
        pads.append(pad)
    document("r61-half-letter-1", "mupdf", pads)


def thirds():
    pads = []
    for n, many in ((84, 3), (88, 2)):
        pad = Pad("label", A4)
        for at in range(many):
            pad.place(five.wolmeride, 34, 280.63 * at + 44, 520, 190, (P["nl"] + P["be"])[at], n + at)
        for k in (1, 2):
            pad.line(0, 280.63 * k, 595.28, 280.63 * k, 0.5, "#666666", [4, 4])
        pads.append(pad)
    document("r62-thirds-1", "fpdf2", pads)


def dropped(size, title, lines, symbology, text, end, font="H"):
    """A paper about a parcel that is none of its labels."""
    pad = Pad("instructions", size)
    w = size[0]
    pad.text(30, 50, title, font + "B", 16, fit=w - 60)
    y = pad.lines(30, 80, lines, font, 10, 14, fit=w - 60)
    _, tall = pad.code(30, y + 6, symbology, text, 44, 5 if symbology in ("qr", "datamatrix") else 2)
    pad.text(30, y + tall + 24, text, font + "B", 11, fit=w - 60)
    pad.para(30, y + tall + 50, w - 60, end, font, 9, 12)
    return pad


def none():
    de = dropped(A4, "Code zum Vorzeigen – kein Drucker nötig", ["Zeigen Sie diesen Code in der Filiale. Das Etikett wird dort gedruckt.", "", "Empfänger:", *P["de"][0], "", "Absender:", *S["de"]], "qr", "KZG-61155501-MUSTER", "Muster. Dies ist kein Versandetikett.")
    fr = dropped(A4, "Preuve de dépôt", ["Colis déposé le 3 février 2026 à 16 h 12", "Destinataire :", *P["fr"][0], "Expéditeur :", *S["fr"]], "code128", "CV00031555001", "À conserver jusqu'à la livraison. Spécimen, aucune valeur.", "T")
    gb = dropped(A5, "Certificate of posting", ["Posted at Exbury-on-Test, 3 February 2026", "To:", *P["gb"][0], "Service: Ambrel 2, weight 0.84 kg, paid £4.29"], "code128", "MV002055500GB", "Keep this for claims. Do not stick it on the parcel. Sample.")
    us = dropped(LETTER, "Pickup request confirmed", ["We will come on Wednesday, February 4, between 12 and 5 PM.", "Pickup address:", *S["us"], "3 pieces, 14 lb. Leave them at the side door."], "code128", "PU5550142-0204", "Have your labels on the boxes before the driver comes. Sample.")
    nl = dropped(A6, "Verzendbewijs", ["Aan:", *P["nl"][0], "Wolmeride, 2 kg, EUR 6,95"], "code128", "WR00084555", "Bewaar dit bewijs. Voorbeeld.")
    rma = dropped(LETTER, "Put this slip inside the box", ["RMA 601-26 for order 341-FK", "Returns desk", *S["us"], "", "From", *P["us"][0]], "code128", "RMA601260142", "Not for the outside of the box. Your return label comes by mail. Sample.")
    for pad in (fr, gb, nl, us):
        pad.kind = "other"
    document("r63-none-1", "pdfkit", [fr, rma])
    document("r63-none-2", "fpdf2", [nl, us])
    document("r63-none-3", "reportlab", [de])
    document("r63-none-4", "mupdf", [gb])


if __name__ == "__main__":
    for each in (right_half, note_around, over_tax_invoice, between_columns, quarter_no_lines, half_letter, thirds, none):
        each()
    document("r57-back-and-how-1", "reportlab", [*back_and_how(71, P["us"][3]), *back_and_how(72, P["us"][1])])
