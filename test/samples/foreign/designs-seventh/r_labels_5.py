"""Labels of the fifth lot that are drawn on a pad, each on a sheet of w x h."""

from r_labels_us import VOID
from r_pad import WORDS

P, S = WORDS["people"], WORDS["senders"]


def pallomere(pad, w, h, to, n):
    """Canadian: three boxes that do not touch, each with a head set into its upper line."""
    for y, tall, head in [(6, 96, "FROM / DE"), (116, 110, "TO / À"), (240, 140, "TRACKING / REPÉRAGE")]:
        pad.box(0, y, w, tall, 1.2)
        pad.rect(12, y - 4, 8 + 5.6 * len(head), 9, "#ffffff")
        pad.text(16, y + 4, head, "HB", 8)
    pad.lines(10, 24, S["ca"], "H", 8.5, 11)
    pad.text(w - 10, 30, "pallomere", "TB", 18, "r")
    pad.text(w - 10, 46, "TRUNDLE 2", "HB", 11, "r")
    pad.text(w - 10, 90, f"{n % 4 + 1}.{n % 9}00 kg", "H", 10, "r")
    pad.lines(16, 140, to, "HB", 13, 16, fit=w - 26)
    pad.text(w - 10, 218, to[-1][-7:], "HB", 20, "r")
    number = f"PLM{n:05d}55501"
    pad.code(w / 2, 254, "code128", number, 92, 3, "c")
    pad.text(w / 2, 362, number, "H", 12, "c")
    pad.text(w / 2, h - 4, "SAMPLE - NOT VALID / SPÉCIMEN - NON VALABLE", "HB", 7.5, "c")


def kranzig(pad, w, h, to, n):
    """German: a strip of six tiny cells on top, the name of the street as large as the town, bars with white letters under them on black."""
    for k, (head, value) in enumerate([("Prod.", "KZ"), ("Gew.", f"{n % 9},{n % 7}"), ("Teil", "1/1"), ("Datum", f"{n % 27 + 1:02d}.02."), ("Tour", f"{n % 60}"), ("Lad.", "R")]):
        pad.box(k * w / 6, 0, w / 6, 26, 0.6)
        pad.text(k * w / 6 + 3, 8, head, "H", 5.5)
        pad.text((k + 0.5) * w / 6, 22, value, "HB", 11, "c")
    pad.text(0, 48, "KRANZIG", "TB", 17)
    pad.lines(w, 40, S["de"], "T", 7.5, 9, align="r")
    pad.lines(0, 86, to, "T", 15, 18.5, fit=w)
    number = f"{n:05d}5550{n % 90 + 10}"
    number += "0" if len(number) % 2 else ""
    pad.code(w / 2, 196, "itf", number, 96, 3, "c")
    pad.rect(0, 300, w, 24, "#000000")
    pad.text(w / 2, 317, f"{number[:5]} {number[5:]}", "HB", 14, "c", color="#ffffff")
    pad.text(0, 340, "Muster, nicht zur Beförderung gültig", "T", 9)


def undlowe(pad, w, h, to, n, back=False):
    """American: left column of boxes to tick, right column of lines; used out and back."""
    pad.box(0, 0, w, h, 2)
    pad.rect(0, 0, w, 34, "#000000")
    pad.text(10, 25, "undlowe" + (" RETURNS" if back else ""), "HB", 20, color="#ffffff")
    pad.text(w - 10, 24, f"PAID  {n % 20 + 1} LB", "HB", 12, "r", color="#ffffff")
    for k, name in enumerate(["Signature", "Adult", "Dry ice", "Evening"]):
        pad.box(10, 46 + 16 * k, 9, 9, 0.8)
        pad.text(24, 54 + 16 * k, name, "H", 8)
    pad.lines(96, 54, ["FROM", *(to if back else S["us"])], "H", 7.5, 9.5, fit=w - 104)
    pad.line(0, 118, w, 118, 2)
    pad.text(10, 132, "DELIVER TO", "HB", 9)
    pad.lines(24, 152, [each.upper() for each in (S["us"] if back else to)], "HB", 13, 16, fit=w - 34)
    pad.line(0, 236, w, 236, 2)
    number = f"UD{n:05d}55501{n % 10}"
    pad.code(w / 2, 248, "code128", number, 100, 3, "c")
    pad.text(w / 2, 364, number, "HB", 12, "c")
    pad.text(w / 2, h - 10, VOID, "HB", 8, "c")


def barrenjo(pad, w, h, to, n):
    """Australian, wide: receiver at the left, code in the middle, bars standing at the right edge; frame with a heavy foot."""
    pad.box(0, 0, w, h, 1)
    pad.rect(0, h - 26, w, 26, "#000000")
    pad.text(10, h - 8, f"BARRENJO  {to[-1].split()[-2]} {to[-1].split()[-1]}", "HB", 16, color="#ffffff")
    pad.text(w - 10, h - 8, f"RUN {n % 40}", "HB", 16, "r", color="#ffffff")
    pad.text(10, 18, "Receiver", "H", 8)
    pad.lines(10, 38, to, "HB", 13, 17, fit=w * 0.5)
    pad.lines(10, 138, ["Sender", *S["au"], f"Ref {n}   {n % 5 + 1} kg"], "H", 8, 10.5)
    pad.text(10, h - 36, "Sample, not valid for carriage", "HB", 8)
    number = f"BJ{n:05d}5550{n % 10}"
    pad.code(w * 0.56, 20, "datamatrix", f"{number}|{to[-1][-4:]}|SAMPLE", dots=5, truth=False)
    pad.text(w * 0.56, 130, f"{n % 3 + 1}/3", "HB", 30)
    with pad.turned(270, w - 110, 12, h - 50, 96):
        pad.code((h - 50) / 2, 0, "code128", number, 78, 3, "c")
        pad.text((h - 50) / 2, 92, number, "H", 10, "c")


def tjolven(pad, w, h, to, n):
    """Nordic: the number and its bars twice, above and below the address; thin lines from side to side."""
    number = f"TJ{n:05d}5550{n % 10}SE"
    for y in (0, h - 78):
        pad.code(w / 2, y, "code128", number, 56, 3, "c")
        pad.text(w / 2, y + 70, number, "C", 11, "c")
    pad.line(0, 86, w, 86, 0.8)
    pad.text(0, 108, "TJOLVEN", "CB", 18)
    pad.text(w, 108, f"{n % 80 + 10} Ö", "CB", 18, "r")
    pad.line(0, 118, w, 118, 0.8)
    pad.lines(0, 134, ["Till"], "C", 9)
    pad.lines(0, 154, to, "CB", 13, 17, fit=w)
    pad.line(0, 230, w, 230, 0.8)
    pad.lines(0, 244, ["Från " + ", ".join(S["se"]), f"{n % 6 + 1},0 kg  kolli 1/1  PROV, GÄLLER INTE FÖR TRANSPORT"], "C", 8, 11, fit=w)
    pad.line(0, 266, w, 266, 0.8)


def quillmarch(pad, w, h, to, n):
    """British: type only, the sort code in a lozenge, bars in the lower right, a signature strip."""
    pad.text(0, 24, "Quillmarch", "TB", 26)
    pad.poly([(w - 90, 16), (w - 45, 0), (w, 16), (w - 45, 32)], "#000000")
    pad.text(w - 45, 21, f"{n % 90 + 10}", "TB", 16, "c", color="#ffffff")
    pad.lines(0, 56, to, "TB", 14, 17.5, fit=w)
    pad.lines(0, 158, ["If undelivered return to", ", ".join(S["gb"][:2]), ", ".join(S["gb"][2:])], "T", 8, 10)
    number = f"QM{n:05d}5550{n % 10}GB"
    pad.code(w, 194, "code128", number, 80, 3, "r")
    pad.text(w, 286, number, "T", 11, "r")
    pad.line(0, 300, w, 300, 0.6)
    pad.text(0, 314, "Signed: ______________________", "T", 9)
    pad.text(w, 314, "Sample, not valid for carriage", "T", 8, "r")


def sendrake(pad, w, h, to, n):
    """American, for half a sheet: two frames inside each other's corner, codes in a row."""
    pad.box(0, 0, w, h, 1)
    pad.box(w * 0.52, 0, w * 0.48, 76, 1)
    pad.text(10, 26, "sendrake", "HB", 22)
    pad.lines(10, 42, S["us"], "H", 8, 10)
    pad.text(w * 0.76, 34, "DAY 3", "HB", 26, "c")
    pad.text(w * 0.76, 58, f"zone {n % 8 + 1}, {n % 30 + 1} oz", "H", 10, "c")
    pad.lines(40, 112, to, "HB", 14, 17, fit=w - 50)
    pad.line(0, 206, w, 206, 1)
    number = f"SK{n:05d}55501"
    pad.code(14, 216, "datamatrix", f"{number}|{to[-1]}|SAMPLE", dots=5, truth=False)
    pad.code(w - 16, 216, "code128", number, 76, 3, "r")
    pad.text(w - 16, 306, number, "H", 11, "r")
    pad.text(10, h - 8, VOID, "HB", 8)


def wolmeride(pad, w, h, to, n):
    """Dutch and Belgian, a third of A4: everything in one row, no frame."""
    pad.text(0, 22, "wolmeride", "HB", 20)
    pad.lines(0, 38, ["Afz.", *S["nl"]], "H", 7.5, 9.5)
    pad.lines(0, 106, to, "HB", 13, 16.5, fit=w * 0.42)
    pad.text(0, h - 2, "VOORBEELD - NIET GELDIG", "HB", 7.5)
    number = f"WR{n:05d}5550{n % 10}"
    pad.code(w * 0.45, 4, "code128", number, 100, 3)
    pad.text(w * 0.45, 118, number, "H", 11)
    pad.text(w * 0.45, h - 4, f"{n % 9 + 1} kg   {to[-1][:4]}", "HB", 22)
    pad.code(w, 4, "qr", f"WR|{number}|{to[-1][:7]}|VOORBEELD", dots=6, align="r", truth=False)
    pad.text(w, h - 4, f"{n % 50 + 10}", "HB", 34, "r")
