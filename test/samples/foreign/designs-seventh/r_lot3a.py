"""Third lot: papers that are drawn on a pad."""

import r_labels_3 as three
from r_build import document
from r_lot2a import table
from r_pad import WORDS, Pad

P, S = WORDS["people"], WORDS["senders"]
LETTER, A4, A5, LABEL = (612, 792), (595.28, 841.89), (419.53, 595.28), (288, 432)


def carton_paper():
    pads = [Pad("label", LABEL).place(three.carton, 9, 10, 270, 412, P["us"][k], n, edge="page") for n, k in ((61, 1), (62, 3))]
    document("r30-carton-paper-1", "reportlab", pads)


def slip_below():
    pads = []
    for n, to in enumerate([P["us"][0], P["us"][1], P["us"][4]], 211):
        pad = Pad("label", LETTER).place(three.calderwend, 114, 44, 270, 384, to, n, turn=90)
        with pad.part("slip"):
            pad.text(44, 440, "Fernwick Kilnworks", "LB", 17)
            pad.text(568, 440, f"Packing slip   {n}-FK", "L", 11, "r")
            pad.lines(44, 466, ["Ship to", *to], "L", 9, 12)
            rows = [("Speckled mug, oat", "FK-1107", "2"), ("Berry bowl with saucer", "FK-0770", "1"), ("Rim saucer", "FK-0420", "4")]
            end = table(pad, 44, 566, 524, ("Item", "SKU", "Qty"), rows[: 1 + n % 3], "L", 9.5, 17)
            pad.para(44, end + 16, 524, "A mug for every mood. Anything wrong? hello@fernwick.example, (503) 555-0142. Sample paper.", "L", 9)
        pads.append(pad)
    document("r31-slip-below-1", "pdfkit", pads)


def steps_under_lying():
    pads = []
    for n, to in enumerate(P["fr"], 151):
        pad = Pad("label", A5).place(three.lunmarvel, 12, 14, 395, 268, to, n, edge="frame")
        pad.text(24, 340, "Et maintenant ?", "TB", 16)
        y = 364
        for text in ("1. Imprimez cette page sans la réduire.", "2. Découpez l'étiquette et collez-la à plat sur le colis.", "3. Déposez le colis au Point Exemple avant samedi ; gardez le reçu que l'on vous remet."):
            y = pad.para(24, y, 370, text, "T", 11, 14) + 4
        pad.para(24, y + 14, 370, "Suivi et questions : lunmarvel.example. Ce document est un spécimen.", "T", 9)
        pads.append(pad)
    document("r33-steps-under-lying-1", "mupdf", pads)


def danish_corner():
    pads = []
    for n, to in enumerate([P["dk"][0], P["no"][0]], 17):
        words = ("PRØVE – IKKE GYLDIG", "Afs." if n == 17 else "Avs.")
        pad = Pad("label", A4).place(three.snevrild, 280, 24, 292, 250, to, n, words)
        pad.text(50, 80, "Verkstan Lilltorp", "DB", 16)
        pad.text(50, 330, f"Kære {to[0].split()[0]}," if n == 17 else f"Kjære {to[0].split()[0]},", "D", 11)
        text = (
            "tak for din ordre! Her kommer to krus og en skål. Vask dem i hånden de første gange, så holder glasuren længst. Er noget gået i stykker, så send os et billede inden fjorten dage."
            if n == 17
            else "takk for bestillingen! Her kommer to krus og en skål. Vask dem for hånd de første gangene, så holder glasuren lengst. Er noe gått i stykker, send oss et bilde innen fjorten dager."
        )
        y = pad.para(50, 354, 490, text, "D", 11, 15)
        pad.lines(50, y + 20, ["Hilsen Sixten", f"Ordre {n}-26, prøve"], "D", 11, 16)
        pads.append(pad)
    document("r34-letter-with-corner-1", "rsvg", pads)


def roll_slip(pad, w, h, to, n):
    pad.text(0, 18, f"{n}-FK", "RB", 22)
    pad.text(w, 18, "packing slip", "R", 11, "r")
    pad.lines(0, 40, to, "R", 10, 12)
    table(pad, 0, 124, w, ("Item", "Qty"), [("Speckled mug, oat", "2"), ("Rim saucer", "4"), ("Glaze test tile", "1")][: 1 + n % 3], "R", 10, 16)
    pad.text(0, h - 6, "Thank you. fernwick.example. Sample.", "R", 9)


def batch():
    """All of a morning in one file: label, slip, label, slip and, last, the list for the driver."""
    pads = []
    for n, to in enumerate([P["us"][0], P["us"][1], P["us"][2]], 315):
        pads.append(Pad("label", LABEL).place(three.prellavon, 4, 6, 280, 420, to, n, edge="page"))
        pads.append(Pad("packing-slip", LABEL).place(roll_slip, 18, 20, 252, 392, to, n, role="slip"))
    last = Pad("other", LABEL)
    last.text(144, 34, "PRELLAVON PICKUP LIST", "RB", 14, "c")
    for at, to in enumerate([P["us"][0], P["us"][1], P["us"][2]]):
        last.lines(18, 74 + 60 * at, [f"{315 + at:04d}555014{(315 + at) % 10}", to[0], to[-1]], "R", 9, 12)
        last.line(18, 104 + 60 * at, 270, 104 + 60 * at, 0.4)
    last.lines(18, 280, ["3 pieces, 14 LB", "Picked up by: ______________", "02/03/2026  ____:____", "Sample list"], "R", 10, 22)
    document("r36-morning-in-one-1", "pdfkit", [*pads, last])


def customer_copy():
    """The label at the left, its receipt for the sender at the right."""
    pads = []
    for n, to in enumerate(P["de"], 715):
        pad = Pad("label", A4).place(three.ostwelk, 22, 26, 276, 378, to, n)
        pad.text(348, 48, "Kundenbeleg", "RB", 15)
        pad.lines(348, 72, ["Ostwelk Paketdienst (Muster)", f"Auftrag 555014{n}", f"vom {n % 27 + 1:02d}.02.2026", "", "an", *to], "R", 9.5, 13)
        pad.lines(348, 240, ["Preis 5,20 EUR", "bezahlt am Automaten"], "R", 9.5, 13)
        pad.para(348, 280, 200, "Bitte aufbewahren, bis das Paket angekommen ist. Haftung bis 500 EUR.", "R", 8.5)
        pads.append(pad)
    document("r37-customer-copy-1", "fpdf2", pads)


def a5_with_receipt():
    pads = []
    for n, to in enumerate(P["au"], 44):
        pad = Pad("label", A5).place(three.torquelain, 30, 26, 300, 350, to, n)
        pad.line(0, 440, 419.53, 440, 0.6, "#000000", [5, 4])
        pad.text(30, 466, "Your receipt", "LB", 12)
        pad.lines(30, 486, [f"To {to[0]}", f"Paid $11.{n}", f"{n % 27 + 1} Feb 2026, online", "torquelain.example, sample"], "L", 9, 13)
        pads.append(pad)
    document("r38-a5-with-receipt-1", "reportlab", pads)


def letter_box_parcel():
    pads = []
    for n, to in enumerate([P["nl"][1], P["nl"][0]], 91):
        pad = Pad("label", A4)
        pad.text(56, 70, "Studio Bleekveld", "OB", 17)
        pad.para(56, 100, 480, "Dank je wel voor je bestelling! De theedoeken zijn ongebleekt en krimpen bij de eerste was een klein beetje. Haal het etiket hieronder los en plak het op het doosje; het past zo door de brievenbus. Dit is een voorbeeld.", "O", 10.5, 15)
        pad.place(three.vannehoek, 156, 240, 283.46, 204.1, to, n, edge="frame")
        pad.text(298, 520, "bleekveld.example · Proefstraat 77 · 9998 ZA Monsterveen", "O", 8, "c")
        pads.append(pad)
    document("r39-letter-box-parcel-1", "inkscape", pads)


def fed_lying():
    pads = []
    for n, (to, service) in enumerate([(P["gb"][0], "2-4 days"), (P["gb"][2], "SIGNED"), (P["ie"][0], "EUROPE")], 22):
        pads.append(Pad("label", (432, 288), 90).place(three.birchanter, 6, 6, 276, 420, to, n, service, turn=270, edge="page"))
    document("r42-fed-lying-1", "reportlab", pads)


if __name__ == "__main__":
    for each in (carton_paper, slip_below, steps_under_lying, danish_corner, batch, customer_copy, a5_with_receipt, letter_box_parcel, fed_lying):
        each()
