"""Labels of the third lot that are drawn on a pad, each on a sheet of w x h."""

from r_labels_us import VOID, logo
from r_pad import WORDS

P, S = WORDS["people"], WORDS["senders"]


def carton(pad, w, h, to, n):
    """A trade carton label: from, to, carrier, the shop's order, the content, and the carton's own number at the foot."""
    pad.line(0, 76, w, 76, 1)
    pad.line(0, 150, w, 150, 1)
    pad.line(0, 216, w, 216, 1)
    pad.line(0, 270, w, 270, 1)
    pad.line(w * 0.42, 0, w * 0.42, 150, 1)
    pad.text(2, 10, "SHIP FROM:", "SB", 7)
    pad.lines(2, 24, S["us"], "S", 8, 10.5)
    pad.text(w * 0.42 + 6, 10, "SHIP TO:", "SB", 7)
    pad.lines(w * 0.42 + 6, 25, to, "SB", 9.5, 12, fit=w * 0.56)
    pad.text(2, 87, "SHIP TO POSTAL CODE", "SB", 7)
    zip5 = to[-1].split()[-1][:5]
    pad.text(2, 98, f"(420) {zip5}", "S", 8)
    pad.code(6, 103, "gs1-128", f"[420]{zip5}", 42, 2, shown=f"420{zip5}")
    pad.text(w * 0.42 + 6, 87, "CARRIER:", "SB", 7)
    pad.lines(w * 0.42 + 6, 102, ["Prellavon Freight", f"PRO: 55501{n:04d}", f"B/L: {n}-26"], "S", 9, 13)
    pad.lines(2, 162, [f"PO: 45{n:04d}0142   DEPT: 12", "Stoneware mug, oat, 6 pcs", f"CARTON {n % 9 + 1} OF 12"], "S", 11, 16)
    pad.text(2, 227, "FOR:", "SB", 7)
    pad.text(30, 254, f"STORE {n % 900 + 100}", "SB", 22)
    pad.code(w - 8, 222, "code128", f"91{n % 900 + 100:05d}", 40, 2, "r", truth=False)
    number = f"00{n:04d}5550142{n % 10}0000"
    number = number + "0" * (17 - len(number)) if len(number) < 17 else number[:17]
    check = (10 - sum(int(d) * (3 if i % 2 == 0 else 1) for i, d in enumerate(number)) % 10) % 10
    number += str(check)
    pad.text(2, 281, "SSCC", "SB", 7)
    pad.code(w / 2, 288, "gs1-128", f"[00]{number}", 86, 3, "c", shown=f"00{number}")
    pad.text(w / 2, 388, f"(00) {number[0]} {number[1:8]} {number[8:17]} {number[17]}", "S", 11, "c")
    pad.text(w / 2, h - 4, VOID, "SB", 7, "c")


def calderwend(pad, w, h, to, n):
    """A post, three cells on top, sender and receiver side by side, a slanted banner as a picture, no outer line."""
    pad.box(0, 0, 60, 56, 2)
    pad.text(30, 46, "C", "TB", 50, "c")
    pad.code(70, 2, "datamatrix", f"CALD{n:06d}|POSTAGE 0|SAMPLE|97999", dots=4, truth=False)
    pad.lines(w - 2, 12, ["CALDERWEND", "Postage account 0555", f"Feb {n % 27 + 1}, 2026", f"{n % 12 + 1} oz  zone {n % 7 + 1}"], "T", 9, 12, align="r")
    pad.image(0, 64, w, 22, logo("calder plint", "OB", 60, slant=0.8, invert=True).resize((1200, 96)))
    pad.lines(0, 102, S["us"], "T", 8.5, 10)
    pad.text(w, 102, "no signature needed", "T", 8, "r")
    pad.lines(60, 152, to, "T", 13, 15, fit=w - 62)
    number = f"C{n:05d}5550142US"
    pad.line(0, 236, w, 236, 0.8)
    pad.line(0, 239, w, 239, 0.8)
    pad.text(w / 2, 254, "calderwend number", "T", 10, "c")
    pad.code(w / 2, 262, "code128", number, 74, 3, "c")
    pad.text(w / 2, 352, number, "TB", 12, "c")
    pad.line(0, 360, w, 360, 0.8)
    pad.line(0, 363, w, 363, 0.8)
    pad.text(0, 380, VOID, "TB", 9)


def hyllbrook(pad, w, h, to, n):
    """A Dutch return: the word in huge type, an app code as large as an eye, bars narrow below, thick side rules only."""
    pad.rect(0, 0, 4, h, "#000000")
    pad.rect(w - 4, 0, 4, h, "#000000")
    pad.text(w / 2, 44, "RETOUR", "NB", 50, "c")
    pad.text(w / 2, 60, "Geen postzegel nodig", "N", 11, "c")
    pad.code(18, 72, "qr", f"https://hyllbrook.example/r/{n:05d}55501?v=voorbeeld", dots=6, truth=False)
    pad.lines(140, 84, ["Aan:", "Studio Bleekveld retouren", *S["nl"][1:]], "NB", 12.5, 16, fit=w - 150)
    pad.lines(140, 156, ["Afzender:", *to], "N", 9, 11, fit=w - 150)
    number = f"HYR{n:05d}5550{n % 10}"
    pad.code(w / 2, 214, "code128", number, 60, 3, "c")
    pad.text(w / 2, 286, number, "N", 11, "c")
    pad.text(w / 2, 304, "VOORBEELD – NIET GELDIG VOOR VERZENDING", "NB", 9, "c")


def lunmarvel(pad, w, h, to, n):
    """A French carrier, designed lying: addresses at the left, bars and agency at the right, dots as a rule between."""
    pad.box(0, 0, w, h, 1.4)
    pad.line(w * 0.47, 8, w * 0.47, h - 8, 1, dash=[1, 3])
    pad.text(12, 26, "lunmarvel", "TB", 20)
    pad.text(w * 0.47 - 10, 26, "SPÉCIMEN", "T", 9, "r")
    pad.lines(12, 46, ["Expéditeur", *S["fr"]], "T", 8, 10)
    pad.text(12, 104, "Destinataire", "TB", 8)
    pad.lines(12, 122, to, "T", 13, 16.5, fit=w * 0.42)
    pad.text(12, h - 26, f"{n % 9 + 1},{n % 9}0 kg – colis 1/1 – réf. {n}", "T", 8.5)
    pad.text(12, h - 12, "Non valable pour le transport", "TB", 8)
    number = f"LM{n:05d}55501FR"
    pad.code(w * 0.735, 16, "code128", number, 90, 3, "c")
    pad.text(w * 0.735, 120, number, "T", 10, "c")
    pad.line(w * 0.5, 132, w - 12, 132, 0.7)
    pad.text(w * 0.5, 178, f"{to[-1][:2]}-{n % 70 + 10}", "TB", 44)
    pad.text(w - 14, 168, f"Q{n % 6}", "TB", 24, "r")
    pad.line(w * 0.5, 192, w - 12, 192, 0.7)
    pad.code(w * 0.5 + 6, 202, "datamatrix", f"{number}|{to[-1][:5]}|SPECIMEN", dots=4, truth=False)
    pad.lines(w * 0.5 + 70, 214, ["Point Exemple", "3 place du Modèle", "ouvert 9 h – 19 h"], "T", 8.5, 11)


def snevrild(pad, w, h, to, n, words):
    """A Danish post: the post code as the largest thing, bars standing at the left, thin lines, hardly a word."""
    number = f"SV{n:05d}5550{n % 10}DK"
    with pad.turned(270, 0, 0, h, 76):
        pad.code(h / 2, 0, "code128", number, 58, 3, "c")
        pad.text(h / 2, 72, number, "D", 10, "c")
    pad.text(92, 20, "Snevrild", "DB", 19)
    pad.text(w, 14, words[0], "DB", 6.5, "r")
    pad.text(w, 24, f"{n % 9 + 1},{n % 8}00 kg", "D", 9, "r")
    pad.line(92, 30, w, 30, 0.4)
    pad.text(92, 40, f"{words[1]}: " + ", ".join(S["se"]), "D", 6.2, fit=w - 94)
    pad.line(92, 46, w, 46, 0.4)
    pad.lines(92, 66, to[:-1], "D", 12, 15, fit=w - 94)
    pad.text(92, 142, to[-1].split()[0], "DB", 48)
    pad.text(92, 164, " ".join(to[-1].split()[1:]), "DB", 17)
    pad.line(92, 176, w, 176, 0.4)
    pad.code(92, 186, "datamatrix", f"{number}{to[-1].split()[0]}", dots=4, truth=False)
    pad.text(w, 220, f"{n % 90 + 10}", "DB", 36, "r")
    pad.text(92, h - 4, f"Ref. {n}   1/1", "D", 8)


def birchanter(pad, w, h, to, n, service="2-4 days"):
    """What a thermal printer's language makes: condensed type in few sizes, reversed boxes, everything on a grid."""
    pad.box(0, 0, w, h, 2)
    pad.rect(0, 0, w, 42, "#000000")
    pad.text(10, 30, "BIRCHANTER", "NB", 26, color="#ffffff")
    pad.text(w - 10, 30, service, "NB", 20, "r", color="#ffffff")
    pad.text(10, 58, "TO", "NB", 12)
    pad.lines(40, 60, [each.upper() for each in to], "NB", 14, 16.5, fit=w - 50)
    pad.line(0, 150, w, 150, 2)
    pad.text(10, 200, to[-1].split()[0].upper(), "NB", 48, fit=170)
    pad.box(w - 92, 158, 82, 48, 2)
    pad.text(w - 51, 196, f"{n % 90 + 10}", "NB", 40, "c")
    pad.line(0, 214, w, 214, 2)
    number = f"BIR{n:05d}55501"
    pad.code(w / 2, 226, "code128", number, 100, 3, "c")
    pad.text(w / 2, 344, number, "NB", 16, "c")
    pad.line(0, 354, w, 354, 2)
    pad.lines(10, 368, ["FROM " + ", ".join(S["gb"][:2]).upper(), ", ".join(S["gb"][2:]).upper(), f"REF {n}   WT 1.{n % 9} KG   SAMPLE, NOT VALID FOR CARRIAGE"], "N", 9, 11)


def ostwelk(pad, w, h, to, n):
    """A German carrier: route in a black arrow, two columns of small facts, bars with a check letter, frame open at the bottom."""
    pad.line(0.75, 0, 0.75, h, 1.5)
    pad.line(w - 0.75, 0, w - 0.75, h, 1.5)
    pad.line(0, 0.75, w, 0.75, 1.5)
    pad.poly([(10, 10), (w - 60, 10), (w - 20, 40), (w - 60, 70), (10, 70)])
    pad.text(24, 55, f"{to[-1].split()[0][:3]} {n % 80 + 10}", "RB", 42, color="#ffffff")
    pad.text(10, 86, "Ostwelk Paketdienst (Muster, nicht zur Beförderung gültig)", "RB", 7.5)
    pad.lines(10, 112, to, "RB", 12.5, 15.5, fit=w - 20)
    pad.lines(10, 200, ["Absender", *S["de"]], "R", 7.5, 9.5)
    pad.lines(w / 2, 200, [f"Kunde 555014{n}", f"Gewicht {n % 12 + 1},0 kg", "Paket 1 von 1", f"Datum {n % 27 + 1:02d}.02.26"], "R", 7.5, 9.5)
    number = f"0{n:05d}55501{n % 90 + 10}1"
    pad.code(w / 2, 248, "itf", number if len(number) % 2 == 0 else number + "3", 86, 3, "c")
    pad.text(w / 2, 350, f"{number[:4]} {number[4:9]} {number[9:]} K", "R", 11, "c")
    pad.line(14, 360, w - 14, 360, 0.5)
    pad.text(10, 374, "Zustellung an Nachbarn erlaubt", "R", 8)


def prellavon(pad, w, h, to, n):
    """An express carrier: dense, three rows of bars, a day in a circle-like box, everything in capitals."""
    pad.box(0, 0, w, h, 1)
    for x1, y1, x2, y2 in [(0, 58, w, 58), (0, 150, w, 150), (0, 176, w, 176), (0, 262, w, 262), (0, 336, w, 336), (w * 0.6, 0, w * 0.6, 58), (w * 0.5, 150, w * 0.5, 176)]:
        pad.line(x1, y1, x2, y2, 1)
    pad.lines(5, 11, ["SHIPPER", *[each.upper() for each in S["us"]], "PH 503-555-0142"], "R", 7, 9.4)
    pad.text(w * 0.6 + 6, 26, "PRELLAVON", "RB", 14)
    pad.text(w * 0.6 + 6, 46, "TREMOR 10:30", "RB", 12)
    pad.text(5, 70, "CONSIGNEE", "R", 7)
    pad.lines(14, 84, [each.upper() for each in to] + [f"PH 555-555-01{n % 90 + 10}"], "RB", 10.5, 12.4, fit=w - 20)
    pad.text(5, 168, f"PCS 1/1   WGT {n % 9 + 1} LB", "RB", 10)
    pad.text(w * 0.5 + 5, 168, f"DIM 12X9X{n % 8 + 2}   N{n}", "RB", 10)
    number = f"{n:04d}555014{n % 10}"
    pad.code(w / 2, 184, "code128", number, 58, 3, "c")
    pad.text(w / 2, 255, f"WAYBILL {number[:4]} {number[4:8]} {number[8:]}", "RB", 10, "c")
    pad.code(w / 2, 270, "code128", f"2L{to[-1].split()[-1][:5]}+{n}", 44, 2, "c")
    pad.text(w / 2, 328, f"(2L) {to[-1].split()[-1][:5]} + {n}", "R", 9, "c")
    pad.code(w / 2, 344, "code128", f"J{n:06d}00555014{n % 10}", 44, 2, "c")
    pad.text(w / 2, 402, f"(J) {n:06d} 0055 5014", "R", 9, "c")
    pad.text(w / 2, h - 5, VOID, "RB", 7, "c")


def torquelain(pad, w, h, to, n):
    """An Australian post, on A5 and larger: fields named at the left, values at the right, a chequered strip on top."""
    for k in range(int(w // 8)):
        pad.rect(8 * k, 0 if k % 2 == 0 else 5, 8, 5, "#000000")
    pad.text(0, 34, "Torquelain", "LB", 22)
    pad.text(w, 34, f"Mid-week {n % 3 + 1}", "LB", 14, "r")
    rows = [("To", to, "LB", 12, 14.5), ("Phone", [f"02 5550 01{n % 90 + 10}"], "L", 9, 12), ("From", S["au"], "L", 8, 10), ("Parcel", [f"{n % 5 + 1}.{n % 9} kg, 1 of 1, {n}-26"], "L", 9, 12)]
    y = 56
    for name, values, face, size, lead in rows:
        pad.text(0, y, name, "L", 8, color="#333333")
        y = pad.lines(56, y, values, face, size, lead, fit=w - 58) + 5
    y = max(y, 176)
    pad.line(0, y - 8, w, y - 8, 0.8)
    number = f"TQ{n:05d}5550142"
    pad.code(w / 2, y, "code128", number, 84, 3, "c")
    pad.text(w / 2, y + 98, number, "LB", 11, "c")
    pad.line(0, y + 106, w, y + 106, 0.8)
    pad.text(0, y + 136, f"{to[-1].split()[-2]} {to[-1].split()[-1]}", "LB", 28)
    pad.code(w, y + 114, "qr", f"TQ:{number}:{to[-1][-4:]}", dots=3, align="r", truth=False)
    pad.text(0, y + 152, "Sample, not valid for carriage. No aerosols inside.", "L", 7.5)
    return y + 156


def vannehoek(pad, w, h, to, n):
    """A small Dutch mail label for a letter box parcel: two lines of head, address, code and bars in one row."""
    pad.box(0, 0, w, h, 0.8)
    pad.text(8, 20, "vannehoek", "OB", 16)
    pad.text(w - 8, 13, "Brimpost", "O", 9, "r")
    pad.text(w - 8, 24, "VOORBEELD – NIET GELDIG", "OB", 6.5, "r")
    pad.line(0, 30, w, 30, 0.8)
    pad.lines(14, 52, to, "OB", 12, 15.5, fit=w - 24)
    pad.text(8, 128, "Retour: " + ", ".join(S["nl"]), "O", 6.5)
    pad.line(0, 134, w, 134, 0.8)
    number = f"VH{n:05d}55501"
    pad.code(10, 142, "datamatrix", f"{number}|{to[-1][:7]}|VOORBEELD", dots=4, truth=False)
    pad.code(w - 12, 142, "code128", number, 44, 3, "r")
    pad.text(w - 12, 197, number, "O", 9, "r")
