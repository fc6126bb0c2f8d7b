"""What lies beside the labels of the second lot."""
from s_ink import MM, Ink


def slip_small(o, i):
    k = Ink()
    k.text(20, 40, "Two Larks Pottery", 18, "TB")
    k.text(20, 56, "packing slip for order " + o["ref"], 9, "T")
    k.text(268, 40, o["bin"], 9, "CB", a="r")
    k.lines(20, 84, ["For", *o["to"]], 10, "T", 13)
    y = 160
    for n, what in [(1, "Tumbler, ash glaze"), (2, "Spoon rest"), (1, "Bud vase, tall"), (4, "Tile, 4 in")][: 2 + i]:
        k.text(20, y, str(n), 11, "TB")
        k.text(44, y, what, 11, "T")
        k.line(20, y + 6, 268, y + 6, 0.3)
        y += 22
    k.code("code128", o["ref"], 20, 330, 0.25 * MM, 26)
    k.text(20, 372, "Packed by ______   Sample slip, no label.", 9, "T")
    return k


def receipt_ca(o):
    k = Ink()
    k.text(40, 60, "Your shipment is paid / Votre envoi est payé", 17, "TB")
    k.text(40, 80, "Keep the left part. Conservez la partie gauche.", 10, "TI")
    rows = [("Date", "2026-11-03"), ("Tracking / Suivi", o["track"]), ("Weight / Poids", o["kg"]), ("Base", "$11.40"), ("Fuel / Carburant", "$1.22"), ("Tax / Taxe", "$1.64"), ("Total", "$14.26")]
    for i, (a, b) in enumerate(rows):
        k.text(40, 120 + 20 * i, a, 10, "T")
        k.text(260, 120 + 20 * i, b, 10, "TB", a="r")
        k.line(40, 126 + 20 * i, 260, 126 + 20 * i, 0.3)
    k.lines(320, 120, ["How to use the label", "1  Cut it out at the frame.", "2  Tape all four sides, not the bars.", "3  Leave it at a counter by Thursday.", "", "Mode d'emploi", "1  Découpez le cadre.", "2  Collez les quatre côtés.", "3  Déposez avant jeudi."], 10, "T", 14)
    k.line(40, 340, 572, 340, 0.5, dash=(1, 3))
    k.lines(40, 400, ["Sample receipt. Reçu spécimen.", "zilquema.example  555-0148"], 9, "T", 13)
    return k


def third_cuts():
    k = Ink()
    for y in (280.6, 561.2):
        k.line(0, y, 595, y, 0.5, 0.3, (6, 4))
    return k


def return_letter(o):
    k = Ink()
    k.text(86, 90, "Su devolución " + o["rma"], 20, "HB")
    rows = ["Estimada clienta, estimado cliente:", "", "Hemos recibido su petición. Para devolver el artículo siga estos pasos:", "", "  •  Recorte la etiqueta de abajo y péguela sobre la antigua.", "  •  Entregue el paquete en cualquier punto de la red antes de 14 días.", "  •  Pida un resguardo con el número " + o["track"] + ".", "", "El reembolso llega dentro de los cinco días hábiles siguientes a la recepción.", "", "Atentamente,", o["to"][0]]
    k.lines(86, 130, rows, 11, "H", 17)
    k.text(86, 440, "Dudas: 555-0155 · devoluciones@cushpani.example", 9, "HI")
    return k


def cn_form(o):
    k = Ink()
    k.rect(40, 60, 400, 470, 1)
    k.text(50, 82, "Carinska prijava", 17, "LB")
    k.text(430, 80, "uzorak", 9, "L", a="r")
    y = 96
    for title, rows in [("1. Pošiljalac", o["from"]), ("2. Primalac", o["to"]), ("3. Vrsta sadržaja", ["☐ poklon   ☒ roba   ☐ uzorak   ☐ isprave".replace("☐", "[ ]").replace("☒", "[x]")])]:
        k.line(40, y, 440, y, 0.6)
        k.text(48, y + 12, title, 8, "LB")
        k.lines(150, y + 16, rows, 9.5, "L", 13)
        y += 30 + 13 * len(rows)
    k.line(40, y, 440, y, 0.6)
    for j, s in enumerate(["4. Opis", "5. Kol.", "6. Masa", "7. Vrednost"]):
        k.text(48 + (0, 190, 250, 320)[j], y + 14, s, 8, "LB")
    for j, s in enumerate([o["what"], "1", o["kg"], o["value"]]):
        k.text(48 + (0, 190, 250, 320)[j], y + 36, s, 10, "L")
    k.line(40, y + 80, 440, y + 80, 0.6)
    k.lines(48, y + 98, ["Potvrđujem da su podaci tačni i da pošiljka ne sadrži opasne predmete.", "", "Datum i potpis: ..........................................."], 9, "L", 16)
    return k


def post_help():
    k = Ink()
    k.line(40, 300, 555, 300, 0.4)
    k.text(60, 340, "Como enviar", 16, "TB")
    k.lines(60, 366, ["Recorte o endereço acima e cole-o na frente do envelope ou da caixa.", "Entregue no balcão até às 17 horas. O registo é impresso no talão.", "Guarde o talão até à entrega.", "", "Esta página é uma amostra."], 11, "T", 16)
    k.text(60, 500, "Preço pago: 4,35 euros. Contacto 555-0102.", 11, "T")
    return k
