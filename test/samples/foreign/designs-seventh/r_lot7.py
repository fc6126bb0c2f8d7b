"""Seventh lot: papers about parcels that are none of their labels, in many forms, and unframed labels in a quarter of a page."""

import r_markup
from r_build import document
from r_markup import code, esc, page
from r_pad import WORDS, Pad

P, S = WORDS["people"], WORDS["senders"]
LETTER, A4, A5, A6, LABEL = (612, 792), (595.28, 841.89), (419.53, 595.28), (297.64, 419.53), (288, 432)


def oltrevan(pad, w, h, to, n):
    """French, unframed, three fields in grey heads, bars with the number above them."""
    number = f"OL{n:05d}55501{n % 10}"
    for y, head in ((0, "OLTREVAN  -  BRUYANT 2"), (92, "À livrer à"), (212, "Numéro du colis")):
        pad.rect(0, y, w, 18, "#d9d9d9")
        pad.text(6, y + 13, head, "HB", 10)
    pad.lines(6, 34, ["Envoyé par", *S["fr"]], "H", 8, 10)
    pad.text(w, 52, f"{n % 80 + 10}", "HB", 34, "r")
    pad.lines(6, 130, to, "HB", 13, 16.5, fit=w - 10)
    pad.text(w / 2, 246, number, "H", 12, "c")
    pad.code(w / 2, 254, "code128", number, 88, 3, "c")
    pad.text(w / 2, 360, "SPÉCIMEN, non valable pour le transport", "HB", 8, "c")


def dunnifer(pad, w, h, to, n):
    """British, unframed: the code first, the address under a single rule, the town again in large letters."""
    number = f"DNF{n:05d}5550"
    pad.code(0, 0, "datamatrix", f"{number}|{to[-1]}|SAMPLE", dots=5, truth=False)
    pad.text(w, 24, "dunnifer", "TB", 26, "r")
    pad.text(w, 44, f"{n % 5 + 1} kg, tracked, 1/1", "T", 11, "r")
    pad.rect(0, 66, w, 2, "#000000")
    pad.lines(0, 88, to, "T", 14, 17, fit=w)
    pad.text(0, 190, to[-1].split()[0], "TB", 34)
    pad.code(w / 2, 206, "code128", number, 90, 3, "c")
    pad.text(w / 2, 312, number, "TB", 12, "c")
    pad.lines(0, 332, ["From " + ", ".join(S["gb"]), "Sample, not valid for carriage"], "T", 8, 10)


def quarters():
    pads = []
    for n, to in enumerate(P["fr"], 31):
        pad = Pad("label", A4).place(oltrevan, 18, 22, 262, 364, to, n)
        if n == 31:
            pad.line(0, 420.9, 595.28, 420.9, 0.5, "#555555", [5, 5])
            pad.line(297.6, 0, 297.6, 841.89, 0.5, "#555555", [5, 5])
        pad.lines(330, 50, ["Comment faire ?", "1. Imprimer la page", "2. Plier en quatre", "3. Coller sur le colis", "4. Déposer au point"], "H", 11, 18)
        if n == 33:
            pad.lines(40, 520, ["Preuve de dépôt", f"OL{n:05d}55501{n % 10}", to[0], to[-1], "Le ____ / ____ / 2026"], "H", 11, 18)
        pads.append(pad)
    document("r70-quarter-french-1", "pdfkit", pads)
    pads = []
    for n, (to, x, y) in enumerate([(P["gb"][0], 320, 30), (P["ie"][0], 24, 460), (P["gb"][2], 320, 460)], 51):
        pad = Pad("label", A4).place(dunnifer, x, y, 252, 346, to, n)
        pad.lines(60, 80, ["Coopersmoor Candles", f"Order {n}-26", "Sample sheet"], "T", 12, 18)
        if y > 100:
            pad.para(60, 160, 470, "Thank you for the order. The label is below; fold the sheet in four so that only it shows, and slip it into the pouch on the box. What is above stays with you.", "T", 12, 16)
        pads.append(pad)
    document("r71-any-corner-1", "mupdf", pads)


def two_columns(size, title, left, right, symbology, text, end, font):
    """Title, two columns in thin boxes, the code under them in the middle."""
    pad = Pad("other", size)
    w = size[0]
    half = (w - 80) / 2
    pad.text(w / 2, 60, title, font + "B", 18, "c", fit=w - 60)
    pad.box(36, 84, half, 120, 0.6)
    pad.box(w - 36 - half, 84, half, 120, 0.6)
    pad.lines(44, 102, left, font, 10, 14, fit=half - 16)
    pad.lines(w - 28 - half, 102, right, font, 10, 14, fit=half - 16)
    pad.code(w / 2, 230, symbology, text, 50, 3 if symbology == "code128" else 5, "c")
    pad.text(w / 2, 340, text, font, 11, "c")
    pad.para(40, 380, w - 80, end, font, 9.5, 13)
    return pad


def fields(size, title, rows, symbology, text, end, font):
    """Names of fields at the left, values at the right, the code on top at the right."""
    pad = Pad("other", size)
    w = size[0]
    pad.text(36, 56, title, font + "B", 15, fit=w - 200)
    pad.code(w - 36, 30, symbology, text, 40, 2 if symbology == "code128" else 4, "r")
    y = 130
    for name, values in rows:
        pad.text(36, y, name, font, 9, color="#555555")
        y = pad.lines(150, y, values, font + "B", 10.5, 14, fit=w - 186) + 8
        pad.line(36, y - 12, w - 36, y - 12, 0.3)
    pad.text(36, y + 12, text, font, 10)
    pad.para(36, y + 36, w - 72, end, font, 9, 12)
    return pad


def none():
    loss = two_columns(LETTER, "Claim for a lost parcel", ["Sender", *S["us"]], ["Receiver", *P["us"][1]], "code128", "CLM5550142-77", "We look for it for ten days. Claim value $48.00, weight 3 lb. Sample form.", "T")
    hold = two_columns(A4, "Abholung in der Filiale", ["Absender", *S["de"]], ["Empfänger", *P["de"][0]], "qr", "ABH-5550142-0210", "Bitte bringen Sie einen Ausweis mit. Paket 2,5 kg, liegt bis 10. Februar. Muster.", "H")
    subs = two_columns(A5, "Abonnement de collecte", ["Client", *S["fr"]], ["Adresse d'enlèvement", *P["fr"][1]], "code128", "ABO55501420", "Passage chaque mardi avant midi, 5 colis au plus. Exemple de contrat.", "T")
    change = two_columns(LETTER, "Address change confirmed", ["Old address", *P["us"][0]], ["New address", *P["us"][3]], "code128", "AC5550142990", "From March 1 all parcels go to the new address. Sample notice.", "H")
    track = fields(A4, "Tracking history", [("Parcel", ["SHV000605550"]), ("From", S["gb"]), ("To", P["gb"][0]), ("3 Feb 09:12", ["Collected, Exbury-on-Test"]), ("4 Feb 02:40", ["Sorted, hub 7"]), ("4 Feb 11:03", ["Delivered, signed D"])], "code128", "SHV000605550", "Page printed from an account. Sample.", "H")
    order = fields(LETTER, "Order 2041 details", [("Buyer", P["us"][0][:1]), ("Ship to", P["us"][0]), ("Ship from", S["us"]), ("Service", ["Ellgoth Lark, 3 oz"]), ("Tracking", ["EG02041555011"])], "code128", "2041555014", "Print the label from the next page. Sample.", "T")
    wash = fields(A5, "Reparaturauftrag 88", [("Kunde", P["de"][1]), ("Werkstatt", S["de"]), ("Teil", ["Vase, Henkel gebrochen, 1,2 kg"])], "datamatrix", "REP-88-5550142", "Bitte diesem Stück beilegen. Muster.", "H")
    loan = fields(A4, "Leenbewijs", [("Van", S["nl"]), ("Aan", P["nl"][1]), ("Stuks", ["2 weefgetouwen, 14 kg"]), ("Terug voor", ["1 maart 2026"])], "code128", "LEEN5550142", "Voorbeeld van een bewijs.", "T")
    gift = fields(LABEL, "Gift order", [("For", P["us"][4]), ("From", ["Dorian"]), ("Wrap", ["yes, blue"])], "code128", "GO-4401", "Kitchen ticket, sample.", "H")
    gift.kind = "pick-list"
    document("r72-none-1", "pdfkit", [loss, hold])
    document("r72-none-2", "reportlab", [subs, change, track])
    document("r72-none-3", "fpdf2", [order, wash])
    document("r72-none-4", "jspdf", [loan])
    document("r72-none-5", "mupdf", [gift])
    css = "body{font:10.5pt/1.45 'Liberation Sans'}.p{padding:44pt}.b{border:.8pt solid #999;padding:12pt;display:inline-block;width:230pt;margin-right:14pt;vertical-align:top}h1{font-size:18pt}"
    ready = (
        f'<div class="p"><h1>Your drop-off is ready</h1><p>1. Pack. 2. Go to the shop. 3. Let them scan this. You do not need to print a label.</p><div class="b"><b>Your parcel</b><p>{esc(*P["gb"][1])}</p><p>2 kg, small</p></div><div class="b"><b>The shop</b><p>{esc("Example Corner", "2 Placeholder Street", "Mockborough QX1 4ZZ")}</p></div>'
        f'{code("qr", "DNF-DROP-5550142", dots=8, style="margin-top:14pt")}<p>DNF-DROP-5550142</p><p>Sample</p></div>'
    )
    retour = (
        f'<div class="p"><h1>Retour ohne Drucker</h1><p>Zeigen Sie den Code im Laden, dort wird gedruckt.</p><div class="b">{code("datamatrix", "GRV-RET-61155501", dots=8)}<p>GRV-RET-61155501</p></div><div class="b"><b>An</b><p>{esc(*S["de"])}</p><b>Von</b><p>{esc(*P["de"][0])}</p></div><p>Gültig bis 28. Februar. Muster.</p></div>'
    )
    remind = f'<div class="p"><h1>Do not forget to ship</h1><p>Order 2043 was paid two days ago.</p><p>{esc(*P["us"][1])}</p><p>Ellgoth Lark, 12 oz, label EG02043555013 bought on Feb 2.</p><p>otterthimble.example, sample mail</p></div>'
    r_markup.document("r72-none-6", "weasyprint", [page("instructions", A4, ready), page("instructions", A4, retour), page("other", LETTER, remind)], css)


if __name__ == "__main__":
    quarters()
    none()
