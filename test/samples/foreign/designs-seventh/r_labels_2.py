"""Labels of the second lot that are drawn on a pad, each on a sheet of w x h."""

from r_labels_us import VOID, logo
from r_pad import WORDS

P, S = WORDS["people"], WORDS["senders"]


def pemmiskar(pad, w, h, to, n, back=False):
    """A British courier: depot code in a thick box, the way's three cells, bars low with their number above, half a frame: left and foot."""
    pad.rect(0, 0, 2.5, h, "#000000")
    pad.rect(0, h - 2.5, w, 2.5, "#000000")
    pad.text(10, 20, "PEMMISKAR", "NB", 20)
    pad.text(w, 14, "RETURN" if back else "BRINDER ONE", "NB", 12, "r")
    pad.text(w, 24, f"Consignment {n:05d}/55501", "N", 7.5, "r")
    for k, (head, value) in enumerate([("Parcel", "1 of 1"), ("Weight", f"{n % 8 + 1}.{n % 9}kg"), ("Route", f"{n % 50 + 10}")]):
        pad.box(10 + 62 * k, 30, 60, 26, 0.5)
        pad.text(14 + 62 * k, 38, head, "N", 6)
        pad.text(40 + 62 * k, 51, value, "NB", 11, "c")
    pad.box(w - 78, 32, 78, 54, 3)
    pad.text(w - 39, 72, f"{to[-1][:2]}{n % 90 + 10}", "NB", 34, "c", fit=66)
    pad.text(10, 70, "Deliver to", "N", 7)
    pad.lines(10, 84, to, "NB", 12, 14, fit=w - 100)
    pad.text(10, 166, "Instructions: leave with neighbour if out" if not back else "Returns desk, goods in", "N", 8)
    pad.line(10, 172, w, 172, 0.5)
    number = f"15501{n:05d}55501{n % 90 + 10}"
    pad.text(w / 2, 188, number, "NB", 13, "c")
    pad.code(w / 2 + 4, 196, "itf", number if len(number) % 2 == 0 else number + "0", 84, 3, "c")
    pad.line(10, 290, w, 290, 0.5)
    pad.lines(10, 300, ["From: " + ", ".join(S["gb"][:2]), ", ".join(S["gb"][2:])], "N", 7, 8.5)
    pad.text(w, 312, "Sample - not valid for carriage", "NB", 7.5, "r")
    pad.code(w, 320, "datamatrix", f"PMK{number}|{to[-1]}|SAMPLE", dots=3, align="r", truth=False)
    pad.text(10, 340, f"Your ref {n}/CC", "N", 8)


def stranfelk(pad, w, h, to, n):
    """Letter-like, designed lying: postage with a square code top right, the address in the middle, bars at the foot, no frame."""
    pad.lines(0, 10, S["us"], "C", 7.5, 9)
    pad.code(w - 100, 0, "qr", f"STRF{n:06d}|{to[-1]}|00.00 SAMPLE POSTAGE|NOT VALID", dots=3, align="r", truth=False)
    pad.lines(w - 94, 10, ["STRANFELK", "POSTAGE SAMPLE", f"$04.{n % 90 + 10}0", f"02/{n % 27 + 1:02d}/26  97999"], "CB", 8, 11)
    pad.text(0, 62, "ORLO VANTRIL", "HB", 14)
    pad.line(0, 70, w, 70, 0.8)
    pad.lines(120, 98, [each.upper() for each in to], "C", 12, 15, fit=w - 124)
    pad.code(120, 168, "four-state", "DAFTTFADDATFADFTAAFDTFDAFTDAFTTADFADTFATDFDATFATD", dots=3, truth=False)
    number = f"82{n:04d}555014{n % 90 + 10}7731"
    pad.code(w / 2, 186, "code128", number, 56, 3, "c")
    pad.text(w / 2, 254, f"{number[:4]} {number[4:8]} {number[8:12]} {number[12:]}   {VOID}", "H", 8.5, "c")


def bosquarne(pad, w, h, to, n):
    """A small letter label: a picture of a bird-like mark, the square code, the number over narrow bars, thin frame with cut corners."""
    for x, y, sx, sy in ((0, 0, 1, 1), (w, 0, -1, 1), (0, h, 1, -1), (w, h, -1, -1)):
        pad.line(x, y, x + 14 * sx, y, 0.6)
        pad.line(x, y, x, y + 14 * sy, 0.6)
    pad.image(8, 8, 70, 20, logo("bosquarne", "OB", 60, invert=True))
    pad.lines(8, 40, ["LETTRE LIMPIDE 20 g", "FRANCE"], "OB", 8, 10)
    pad.code(8, 58, "datamatrix", f"BSQ{n:05d}55501|{to[-1]}|SPECIMEN", dots=4)
    pad.text(w - 8, 16, "SPÉCIMEN – non valable pour l'envoi", "O", 6, "r")
    number = f"1L{n:05d}55501{n % 10}"
    pad.code(w - 12, 22, "code128", number, 30, 2, "r")
    pad.text(w - 12, 61, f"N° {number[:2]} {number[2:5]} {number[5:8]} {number[8:]}", "O", 7.5, "r")
    pad.lines(96, 88, to, "O", 10.5, 13.5, fit=w - 110)
    pad.text(8, h - 8, "Exp. " + ", ".join(S["fr"]), "O", 6)


def kwinterop(pad, w, h, to, n, lang="nl"):
    """A Belgian carrier: a black band standing at the left with white words, a long sort line, an app code and bars side by side."""
    words = {
        "nl": ("VOORBEELD – NIET GELDIG VOOR VERZENDING", "Bestemmeling", "Afzender", "Gewicht"),
        "fr": ("SPÉCIMEN – NON VALABLE POUR LE TRANSPORT", "Destinataire", "Expéditeur", "Poids"),
    }[lang]
    pad.rect(0, 0, 26, h, "#000000")
    with pad.turned(270, 2, 10, h - 20, 22):
        pad.text(6, 16, f"KWINTEROP  ·  {words[0]}", "RB", 10.5, color="#ffffff", fit=h - 30)
    pad.text(36, 26, f"{n % 900 + 100}-BE-{to[-1][:4]}", "RB", 28)
    pad.line(32, 34, w, 34, 1.4)
    pad.text(36, 45, words[1], "R", 7)
    pad.lines(36, 60, to, "RB", 12, 15, fit=w - 42)
    pad.line(32, 128, w, 128, 0.5)
    pad.text(36, 138, words[2], "R", 6.5)
    pad.lines(36, 148, S["nl"], "R", 7.5, 9)
    pad.text(w - 4, 148, f"{words[3]} {n % 9},{n % 7}0 kg", "R", 8, "r")
    pad.line(32, 174, w, 174, 1.4)
    pad.rect(36, 182, 60, 30, "#cccccc")
    pad.text(66, 204, f"B{n % 9}", "RB", 22, "c")
    pad.text(104, 203, "Kwint 101", "R", 10)
    number = f"{n:05d}5550142{n % 90 + 10}"
    pad.code(w - 4, 178, "aztec", f"%000{to[-1][:4]}{number}101056|VOORBEELD", dots=3, align="r", truth=False)
    pad.code((w + 30) / 2, 250, "code128", f"%000{to[-1][:4]}{number}101056", 100, 2, "c")
    pad.text((w + 30) / 2, 364, f"000 {to[-1][:4]} {number} 101 056 K", "R", 9.5, "c")


def cravistow(pad, w, h, to, n):
    """A regional: everything centred, lines of stars, the bars at the top, the town in the largest type."""
    number = f"CRV{n:05d}55501"
    pad.code(w / 2, 0, "code128", number, 80, 3, "c")
    pad.text(w / 2, 94, f"* {number} *", "MB", 13, "c")
    pad.text(w / 2, 112, "-" * 46, "M", 9, "c")
    pad.text(w / 2, 128, "CRAVISTOW SAME-STATE", "MB", 14, "c")
    pad.lines(w / 2, 150, ["SHIP FROM", *S["us"]], "M", 7.5, 9, align="c")
    pad.text(w / 2, 192, "-" * 46, "M", 9, "c")
    pad.text(w / 2, 206, "SHIP TO", "M", 8, "c")
    pad.lines(w / 2, 224, [each.upper() for each in to[:-1]], "MB", 11.5, 14, align="c", fit=w)
    pad.text(w / 2, 300, to[-1].split()[0].upper(), "MB", 30, "c", fit=w)
    pad.text(w / 2, 326, " ".join(to[-1].split()[1:]).upper(), "MB", 18, "c", fit=w)
    pad.text(w / 2, 344, "-" * 46, "M", 9, "c")
    pad.text(w / 2, 360, f"DRIVER STOP {n % 60 + 1}   BOX 1/1   {n % 20 + 1} LB", "M", 9, "c")
    pad.text(w / 2, 374, VOID, "MB", 8, "c")


def jolprin(pad, w, h, to, n):
    """A regional: a grid of thin boxes to the left, the bars standing at the right."""
    pad.box(0, 0, w, h, 1)
    pad.line(w - 86, 0, w - 86, h, 1)
    number = f"J{n:05d}55501{n % 90 + 10}KX"
    with pad.turned(90, w - 80, 24, h - 48, 72):
        pad.code((h - 48) / 2, 0, "code128", number, 56, 3, "c")
        pad.text((h - 48) / 2, 69, number, "L", 10, "c")
    pad.rect(1, 1, w - 87, 40, "#dcdcdc")
    pad.text(10, 30, "jolprin", "LB", 26)
    pad.text(w - 94, 30, "DELIVERY", "L", 10, "r")
    pad.line(0, 41, w - 86, 41, 1)
    pad.text(8, 53, "Recipient", "L", 7)
    pad.lines(8, 70, to, "LB", 12, 15, fit=w - 104)
    pad.line(0, 150, w - 86, 150, 1)
    pad.line((w - 86) / 2, 150, (w - 86) / 2, 240, 1)
    pad.lines(8, 162, ["Sender", *S["us"], "(503) 555-0190"], "L", 7.2, 10)
    pad.text((w - 86) * 0.75, 212, f"{to[-1].split()[-1][:3]}", "LB", 40, "c")
    pad.line(0, 240, w - 86, 240, 1)
    pad.lines(8, 256, [f"Order {n}-26    Box 1 of 1", "Leave at the door. Photo wanted.", f"Weight {n % 14 + 1} lb"], "L", 9, 13)
    pad.line(0, 300, w - 86, 300, 1)
    pad.code(12, 308, "qr", f"jolprin.example/d/{number}", dots=4, truth=False)
    pad.lines(110, 330, ["Drivers:", "scan the long code,", "never this one."], "L", 8, 11)
    pad.text(8, h - 6, VOID, "LB", 7)


def skolbrun(pad, w, h, to, n, words):
    """A Nordic post on long paper: sparse, a heavy line over each field, the number in groups, no frame."""
    name, sender, receiver, void, weight, service = words
    pad.text(0, 20, "skolbrun", "OB", 22)
    pad.text(w, 20, service, "OB", 16, "r")
    pad.rect(0, 30, w, 3, "#000000")
    pad.text(0, 44, sender, "O", 7)
    pad.lines(0, 56, S["se"], "O", 8, 10)
    pad.lines(w, 56, [f"{weight} {n % 9 + 1},{n % 9}5 kg", f"{n % 27 + 1}.2.2026"], "O", 8, 10, align="r")
    pad.rect(0, 92, w, 3, "#000000")
    pad.text(0, 106, receiver, "O", 7)
    pad.lines(0, 126, to, "O", 14, 18, fit=w)
    pad.rect(0, 206, w, 3, "#000000")
    pad.text(0, 248, f"{to[-1].split()[0]}", "OB", 36)
    pad.text(w, 248, f"{n % 40 + 10} {chr(65 + n % 20)}", "OB", 36, "r")
    pad.rect(0, 262, w, 3, "#000000")
    number = f"{name}{n:04d}5550{n % 10}XX"
    pad.code(w / 2, 280, "code128", number, 100, 3, "c")
    pad.text(w / 2, 396, f"{number[:2]} {number[2:5]} {number[5:8]} {number[8:]}", "O", 11, "c")
    pad.rect(0, 408, w, 3, "#000000")
    pad.text(0, 424, void, "OB", 7.5)
    pad.code(0, 436, "datamatrix", f"{number};{n};sample", dots=4, truth=False)
    pad.lines(w, 448, [f"Ref. {n}", "skolbrun.example"], "O", 8, 11, align="r")


def ulvretan(pad, w, h, to, n):
    """A Finnish carrier in two languages: a double frame, grey heads over cells, the locker's code in type as high as the cell."""
    pad.box(0, 0, w, h, 1.6)
    pad.box(4, 4, w - 8, h - 8, 0.5)
    y = 4
    for fi, sv, tall in [("Lähettäjä", "Avsändare", 52), ("Vastaanottaja", "Mottagare", 92), ("Noutopiste", "Utlämningsställe", 60), ("Lähetystunnus", "Försändelse-ID", 130)]:
        pad.rect(4, y, w - 8, 11, "#e0e0e0")
        pad.text(8, y + 8.5, f"{fi} / {sv}", "D", 6.5)
        pad.line(4, y + tall, w - 4, y + tall, 0.5)
        y += tall
    pad.lines(8, 25, S["se"], "D", 7.5, 9)
    pad.text(w - 10, 42, "Ulvretan", "DB", 15, "r")
    pad.lines(12, 84, to, "DB", 11.5, 15, fit=w - 24)
    pad.text(12, 194, f"Esimerkki-automaatti {n}", "D", 9)
    pad.text(w - 12, 200, f"{n % 900 + 100}", "DB", 34, "r")
    number = f"ULFI{n:05d}5550{n % 90 + 10}"
    pad.code(w / 2, 226, "code128", number, 82, 3, "c")
    pad.text(w / 2, 322, number, "DB", 10, "c")
    pad.text(12, h - 20, "ESIMERKKI – EI KELPAA KULJETUKSEEN", "DB", 7.5)
    pad.text(12, h - 10, "EXEMPEL – GÄLLER INTE FÖR TRANSPORT", "D", 6.5)
    pad.text(w - 12, h - 12, f"{n % 8 + 1},0 kg  1/1", "D", 9, "r")


def maplurex(pad, w, h, to, n):
    """To another country: a head with the destination's letters, customs number, bars with letters, contents in a small table on the label."""
    pad.box(0, 0, w, h, 1)
    pad.image(6, 6, 90, 22, logo("maplurex", "OB", 70))
    pad.rect(w - 64, 1, 63, 40, "#000000")
    pad.text(w - 32, 32, "USA", "SB", 24, "c", color="#ffffff")
    pad.text(104, 16, "Trelby Parcel - USA", "SB", 9.5)
    pad.text(104, 28, "Colis Trelby - É.-U.", "S", 8)
    pad.line(0, 42, w, 42, 1)
    pad.text(6, 52, "From / Exp.", "S", 6)
    pad.lines(6, 61, S["ca"] + ["CANADA  (902) 555-0108"], "S", 7.2, 8.6)
    pad.line(0, 98, w, 98, 1)
    pad.text(6, 107, "To / Dest.", "S", 6)
    pad.lines(16, 122, [each.upper() for each in to] + ["UNITED STATES"], "SB", 11, 13, fit=w - 24)
    pad.line(0, 196, w, 196, 1)
    number = f"LX{n:04d}5550{n % 10}CA"
    pad.code(w / 2, 206, "code128", number, 72, 3, "c")
    pad.text(w / 2, 290, f"{number[:2]} {number[2:5]} {number[5:8]} {number[8:]}", "SB", 11, "c")
    pad.line(0, 298, w, 298, 1)
    for k, row in enumerate([("Contents / Contenu", "HS / SH", "kg", "CAD"), ("Letterpress cards", "4909.00", "0.240", "36.00"), ("Gift tags", "4821.10", "0.080", "6.00")]):
        for x, text in zip((6, 150, 198, 240), row):
            pad.text(x, 310 + 13 * k, text, "SB" if k == 0 else "S", 7.5)
        pad.line(0, 314 + 13 * k, w, 314 + 13 * k, 0.4)
    pad.text(6, 354, "I certify that this sample holds nothing forbidden. Signature: P. Cone", "S", 7)
    pad.text(6, 366, f"Ref {n}-2026   0.{n % 900 + 100} kg", "S", 8)
    pad.text(w - 6, 366, f"{n % 80 + 10}-{n % 7}", "SB", 20, "r")
    pad.line(0, 374, w, 374, 1)
    pad.text(w / 2, h - 6, "SAMPLE - NOT VALID FOR CARRIAGE / SPÉCIMEN - NON VALABLE", "SB", 7.5, "c")


def tirrawind(pad, w, h, to, n):
    """An Australian courier: orange-less and plain, two columns over a broad foot, the suburb in a thick rounded-off box."""
    pad.text(0, 16, "TIRRAWIND", "LB", 17)
    pad.text(w, 16, f"ROAD {n % 3 + 1}", "LB", 17, "r")
    pad.line(0, 22, w, 22, 2)
    pad.lines(0, 34, ["Sender", *S["au"]], "L", 6.8, 8.4)
    pad.lines(w / 2 + 4, 34, ["Connote", f"TWD{n:05d}555", f"Date {n % 27 + 1}/02/26", "Items 1/1"], "L", 6.8, 8.4)
    pad.line(0, 72, w, 72, 2)
    pad.lines(0, 90, to[:-1], "L", 11.5, 14, fit=w)
    pad.box(0, 134, w, 40, 3)
    pad.text(8, 162, to[-1], "LB", 17, fit=w - 16)
    number = f"TWD{n:05d}55501{n % 90 + 10}"
    pad.code(4, 186, "code128", number, 92, 2)
    pad.text(4, 290, number, "L", 9)
    pad.code(w - 4, 190, "qr", f"TWD|{number}|{to[-1][-4:]}|SAMPLE", dots=4, align="r", truth=False)
    pad.line(0, 298, w, 298, 2)
    pad.text(0, 310, f"{n % 9 + 1}.0 kg  No DG. ATL: yes. Sample, not valid for carriage.", "L", 8)
    pad.text(0, 336, f"{to[-1].split()[-2]}-{n % 60 + 10}", "LB", 22)


def ebbrindel(pad, w, h, to, n):
    """Label paper with a tab: a thick frame cut by the service's name, a lane of arrows, two rows of bars."""
    pad.box(0, 0, w, h, 3)
    pad.rect(20, 0, 130, 14, "#ffffff")
    pad.text(85, 11, "EBBRINDEL", "RB", 15, "c")
    pad.lines(12, 30, S["us"], "R", 7.5, 9)
    pad.text(w - 12, 38, f"HUB {n % 9}", "RB", 22, "r")
    for k in range(8):
        pad.poly([(14 + 31 * k, 62), (30 + 31 * k, 70), (14 + 31 * k, 78)])
    pad.lines(24, 104, to, "RB", 13, 16, fit=w - 40)
    pad.line(12, 186, w - 12, 186, 0.8)
    number = f"EB{n:05d}55501{n % 10}"
    pad.code(w / 2, 196, "code128", number, 60, 3, "c")
    pad.text(w / 2, 268, number, "R", 10, "c")
    pad.line(12, 278, w - 12, 278, 0.8)
    pad.code(w / 2, 290, "code128", to[-1].split()[-1][:5] + f"{n % 1000:03d}", 46, 3, "c", truth=True)
    pad.text(w / 2, 348, f"ZIP {to[-1].split()[-1]}", "R", 9, "c")
    pad.lines(14, 372, [f"{n % 30 + 1} LB   Ref {n}-FK   Signature not needed", VOID], "R", 8, 11)
