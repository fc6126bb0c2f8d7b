"""Labels of the fourth lot that are drawn on a pad, each on a sheet of w x h."""

from r_labels_us import VOID
from r_pad import WORDS

P, S = WORDS["people"], WORDS["senders"]


def stramvel(pad, w, h, to, n):
    """Two thick bars, the zone in a corner, all type in one face, the address in the middle third."""
    pad.text(0, 22, "STRAMVEL", "HB", 24)
    pad.text(w, 22, f"Z{n % 8 + 1}", "HB", 24, "r")
    pad.rect(0, 30, w, 10, "#000000")
    pad.lines(0, 54, ["Sender:", *S["us"]], "H", 7.5, 9.5)
    pad.lines(w, 54, [f"Mailed 02/{n % 27 + 1:02d}/2026", f"{n % 14 + 1} oz", "Machinable"], "H", 7.5, 9.5, align="r")
    pad.lines(30, 132, to, "HB", 13, 16, fit=w - 40)
    pad.rect(0, 216, w, 10, "#000000")
    number = f"ST{n:05d}55501{n % 90 + 10}US"
    pad.code(w / 2, 240, "code128", number, 88, 3, "c")
    pad.text(w / 2, 342, number, "HB", 12, "c")
    pad.rect(0, 352, w, 2, "#000000")
    pad.code(6, 362, "datamatrix", f"{number}/{to[-1]}", dots=3, truth=False)
    pad.lines(60, 374, [f"Ref {n}-FK", VOID], "H", 8, 12)


def coursevane(pad, w, h, to, n, piece, of):
    """A6, framed: a grid of cells in three rows, the piece's count large, the bars with letters between the stars."""
    pad.box(0, 0, w, h, 1.2)
    for y in (40, 112, 196, 236, 340):
        pad.line(0, y, w, y, 0.8)
    pad.line(w - 70, 0, w - 70, 40, 0.8)
    pad.text(8, 28, "coursevane", "TB", 22)
    pad.text(w - 35, 29, f"{piece}/{of}", "HB", 24, "c")
    pad.lines(8, 53, ["Expéditeur :", *S["fr"], "tél. 01 99 55 01 42"], "H", 8, 11)
    pad.text(8, 124, "Destinataire :", "H", 8)
    pad.lines(14, 141, to, "HB", 11.5, 14.5, fit=w - 22)
    pad.line(w / 2, 196, w / 2, 236, 0.8)
    pad.text(8, 224, f"{to[-1][:5]}", "HB", 24)
    pad.text(w / 2 + 8, 224, f"AG {n % 60 + 10}", "HB", 24)
    number = f"CV{n:05d}5550{piece}"
    pad.code(w / 2, 246, "code128", number, 72, 3, "c")
    pad.text(w / 2, 332, f"* {number} *", "H", 10, "c")
    pad.lines(8, 352, [f"Réf. {n}   poids {n % 9 + 1},{piece} kg", "SPÉCIMEN – NON VALABLE POUR LE TRANSPORT"], "H", 8, 11)


def hubdarrow(pad, w, h, to, n):
    """Square paper: the address above, a code and bars below, a thick frame."""
    pad.box(0, 0, w, h, 2.5)
    pad.text(10, 22, "HUBDARROW", "HB", 15)
    pad.text(w - 10, 22, f"R{n % 40 + 1}", "HB", 18, "r")
    pad.line(0, 30, w, 30, 1)
    pad.lines(10, 42, [", ".join(S["us"])], "H", 7)
    pad.lines(16, 64, to, "HB", 12, 14.5, fit=w - 30)
    pad.line(0, 142, w, 142, 1)
    number = f"HD{n:05d}5550{n % 10}"
    pad.code(10, 150, "qr", f"HD|{number}|{to[-1]}|SAMPLE", dots=4, truth=False)
    pad.code(w - 14, 150, "code128", number, 80, 3, "r")
    pad.text(w - 14, 242, number, "H", 10, "r")
    pad.text(10, h - 8, VOID, "HB", 7)


def fjelbring(pad, w, h, to, n, words):
    """A narrow roll of 62 mm: one column in a frame, bars over the whole width."""
    pad.box(0, 0, w, h, 1)
    pad.text(w / 2, 20, "fjelbring", "HB", 17, "c")
    pad.line(0, 28, w, 28, 1)
    pad.lines(8, 40, [words[0], *S["se"][:1], S["se"][-1]], "H", 7, 8.6)
    pad.line(0, 66, w, 66, 1)
    pad.text(8, 77, words[1], "H", 7)
    pad.lines(8, 92, to, "HB", 10.5, 13, fit=w - 16)
    pad.line(0, 136, w, 136, 1)
    number = f"FB{n:04d}5550"
    pad.code(w / 2, 146, "code128", number, 64, 2, "c")
    pad.text(w / 2, 222, number, "H", 9, "c")
    pad.line(0, 230, w, 230, 1)
    pad.text(8, 252, to[-1].split()[0], "HB", 18)
    pad.text(w - 8, 252, f"{n % 80}", "HB", 18, "r")
    pad.text(w / 2, h - 6, words[2], "HB", 5.6, "c", fit=w - 10)


def marquenby(pad, w, h, to, n):
    """A consolidator: no frame, three parts divided by hairlines, the partner's number and its own, small print at the side."""
    pad.text(0, 16, "marquenby", "LB", 17)
    pad.text(0, 27, "packs by many roads", "L", 7)
    pad.box(w - 96, 0, 96, 46, 0.6)
    pad.lines(w - 48, 12, ["POSTAGE & FEES PAID", "Marquenby sample", f"{n % 15 + 1} OZ   RATE 2", "97999"], "L", 7, 10, align="c")
    pad.lines(0, 44, S["us"], "L", 7, 8.6)
    pad.line(0, 74, w, 74, 0.5)
    pad.text(0, 86, "SHIP TO", "LB", 8)
    pad.lines(20, 104, [each.upper() for each in to], "L", 12, 14.5, fit=w - 24)
    pad.line(0, 186, w, 186, 0.5)
    number = f"9374{n:04d}5550142{n % 10}88"
    pad.text(w / 2, 200, "TRACKING NO.", "L", 8, "c")
    pad.code(w / 2, 206, "code128", f"420{to[-1].split()[-1][:5]}{number}", 80, 3, "c")
    pad.text(w / 2, 300, " ".join(number[i : i + 4] for i in range(0, len(number), 4)), "LB", 10, "c")
    pad.line(0, 308, w, 308, 0.5)
    pad.code(0, 316, "code128", f"MQ{n:06d}", 40, 3)
    pad.text(0, 368, f"MQ{n:06d}", "L", 8)
    pad.text(w, 350, f"{n % 60 + 10}", "LB", 34, "r")
    pad.text(0, 384, VOID, "LB", 7)


def weilgrund(pad, w, h, to, n):
    """A German carrier on half a lying page: wide, all in cells, the codes above each other at the right."""
    pad.box(0, 0, w, h, 1)
    pad.line(w * 0.56, 0, w * 0.56, h, 0.6)
    pad.text(12, 30, "Weilgrund", "OB", 24)
    pad.text(w * 0.56 - 10, 28, f"{n % 12 + 1},5 kg", "O", 13, "r")
    pad.line(0, 44, w * 0.56, 44, 0.6)
    pad.lines(12, 58, ["Von", *S["de"]], "O", 8, 10.5)
    pad.line(0, 104, w * 0.56, 104, 0.6)
    pad.text(12, 118, "An", "O", 8)
    pad.lines(12, 138, to, "OB", 12, 15.5, fit=w * 0.52)
    pad.line(0, 220, w * 0.56, 220, 0.6)
    pad.text(12, 262, to[-1].split()[0], "OB", 34)
    pad.lines(12, h - 24, [f"Auftrag {n}-26, Paket 1/1", "MUSTER – NICHT ZUR BEFÖRDERUNG GÜLTIG"], "O", 7.5, 11)
    number = f"WG{n:05d}55501"
    pad.code(w * 0.78, 14, "code128", number, 90, 2, "c")
    pad.text(w * 0.78, 118, number, "O", 9, "c")
    pad.line(w * 0.56, 132, w, 132, 0.6)
    pad.code(w * 0.78, 146, "qr", f"WG:{number}:{to[-1][:5]}:MUSTER", dots=6, align="c", truth=False)
    pad.text(w * 0.78, h - 20, f"Tor {n % 30 + 1}", "OB", 26, "c")


def osmarrin(pad, w, h, to, n):
    """Out: bars on top, the town under a grey field."""
    number = f"OS{n:05d}55501{n % 10}"
    pad.code(w / 2, 0, "code128", number, 76, 3, "c")
    pad.text(w / 2, 88, number, "R", 10, "c")
    pad.rect(0, 98, w, 34, "#d6d6d6")
    pad.text(8, 123, "OSMARRIN", "RB", 20)
    pad.text(w - 8, 123, f"{n % 30 + 10}-C", "RB", 20, "r")
    pad.lines(8, 150, ["FROM", *S["ca"]], "R", 7.5, 9.5)
    pad.text(8, 210, "TO / À", "R", 8)
    pad.lines(20, 228, to, "RB", 13, 16, fit=w - 24)
    pad.rect(0, 320, w, 34, "#d6d6d6")
    pad.text(8, 344, f"{n % 9}.{n % 9}00 kg", "RB", 16)
    pad.text(w - 8, 344, to[-1][-7:], "RB", 18, "r")
    pad.text(w / 2, 368, "SAMPLE - NOT VALID / SPÉCIMEN - NON VALABLE", "RB", 7.5, "c")


def kelfarne(pad, w, h, to, n):
    """Back: a heavy head, both addresses one under the other, bars at the foot, frame."""
    pad.box(0, 0, w, h, 1.6)
    pad.rect(0, 0, w, 36, "#000000")
    pad.text(w / 2, 27, "RETURN / RETOUR", "RB", 22, "c", color="#ffffff")
    pad.lines(10, 52, ["From / De", *to], "R", 8.5, 11, fit=w - 20)
    pad.line(0, 110, w, 110, 1)
    pad.text(10, 124, "To / À", "R", 8)
    pad.lines(22, 144, ["Returns", *S["ca"]], "RB", 13, 17)
    pad.line(0, 226, w, 226, 1)
    number = f"KF{n:05d}5550{n % 10}R"
    pad.code(w / 2, 238, "code128", number, 84, 3, "c")
    pad.text(w / 2, 336, number, "R", 11, "c")
    pad.text(w / 2, h - 8, "Kelfarne. Sample - not valid for carriage", "R", 8, "c")


def shanveel(pad, w, h, to, n):
    """An Irish and British carrier: a quarter page, plain, one rule, the route's letters at both ends of the bars."""
    pad.text(0, 16, "Shanveel", "TB", 18)
    pad.text(w, 16, f"{n % 9 + 1}.{n % 9} kg", "T", 11, "r")
    pad.lines(0, 32, [", ".join(S["gb"][:2]), ", ".join(S["gb"][2:])], "T", 7.5, 9)
    pad.lines(0, 80, to, "TB", 14, 17, fit=w)
    pad.line(0, 180, w, 180, 1.5)
    number = f"SHV{n:05d}5550"
    pad.code(w / 2, 192, "code128", number, 90, 3, "c")
    pad.text(w / 2, 296, number, "T", 11, "c")
    pad.text(0, 330, f"{chr(65 + n % 20)}{chr(70 + n % 18)}", "TB", 36)
    pad.text(w, 330, f"{n % 80 + 10}", "TB", 36, "r")
    pad.text(w / 2, 346, "Sample, not valid for carriage", "T", 9, "c")
