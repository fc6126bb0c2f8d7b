"""Labels of the first lot: Britain, Germany, France, the Netherlands, Sweden, Australia. Each is drawn on a sheet of w x h."""

from r_labels_us import logo
from r_pad import WORDS

P, S = WORDS["people"], WORDS["senders"]


def murtoven(pad, w, h, to, n, service="A2", name="Ambrel 2"):
    """A post: black square with the service, the square code beside, the return address standing at the left, no frame."""
    pad.rect(0, 0, 76, 64, "#000000")
    pad.text(38, 50, service, "HB", 46, "c", color="#ffffff")
    pad.text(82, 12, "murtoven", "TB", 15)
    pad.text(82, 24, name, "H", 9)
    pad.text(82, 35, "Postage paid GB", "H", 8)
    pad.text(82, 60, f"{n % 30 + 1:02d}/02/2026", "H", 8)
    pad.code(w, 0, "datamatrix", f"MURTOVEN SAMPLE {n} {to[-1]} NOT VALID 00000{n} ZY2 8ZZ", dots=3, align="r")
    pad.line(0, 76, w, 76, 2.2)
    number = f"MV{n:04d}5550{n % 10}GB"
    pad.code(w / 2, 84, "code128", number, 70, 3, "c")
    pad.text(w / 2, 166, f"{number[:2]} {number[2:6]} {number[6:10]} {number[10:]}", "H", 10, "c")
    pad.line(0, 174, w, 174, 2.2)
    with pad.turned(270, 0, 182, h - 200, 30):
        pad.text(0, 7, "Return address", "HB", 6)
        pad.lines(0, 15, [", ".join(S["gb"][:2]), ", ".join(S["gb"][2:])], "H", 6, 7)
    pad.lines(44, 204, to, "H", 13, 16.5, fit=w - 46)
    pad.text(w, h - 22, f"{n % 90 + 10}{chr(70 + n % 12)}", "HB", 24, "r")
    pad.code(44, h - 36, "four-state", "DAFTTFADDATFADFTAAFDTFDAFTDA", dots=3, truth=False)
    pad.text(0, h - 2, "SAMPLE ONLY. Not valid for carriage.", "HB", 8)


def zelbryk(pad, w, h, to, n, product="Zubrik 5 kg"):
    """A wide German parcel label: routing code left, tracking code right, a grey head, frame of hairlines."""
    pad.box(0, 0, w, h, 0.5)
    pad.rect(0.5, 0.5, w - 1, 30, "#dddddd")
    pad.text(10, 22, "Zelbryk", "OB", 19)
    pad.text(w - 10, 21, product, "OB", 14, "r")
    pad.text(w / 2, 20, "MUSTER – NICHT ZUR BEFÖRDERUNG GÜLTIG", "OB", 7, "c")
    pad.line(0, 31, w, 31, 0.5)
    pad.text(8, 41, "Absender", "O", 5.5)
    pad.lines(8, 50, S["de"], "O", 7, 8.4)
    pad.line(190, 31, 190, 128, 0.5)
    pad.text(196, 41, "Empfänger", "O", 5.5)
    pad.lines(196, 55, to[:-1], "O", 9.5, 12, fit=w - 206)
    pad.text(196, 119, to[-1], "OB", 15, fit=w - 206)
    pad.lines(8, 84, [f"Abrechnungsnr. 5550{n:04d}", f"Referenz: {n}/26", f"Gewicht {n % 4 + 1},{n % 9}00 kg"], "O", 6.5, 9)
    pad.line(0, 128, w, 128, 0.5)
    plz = to[-1].split()[0]
    route = f"{plz}{n:03d}0{n % 90 + 10}"
    route += "0" * (14 - len(route))
    pad.text(16, 140, "Leitcode", "O", 6)
    pad.code(16, 144, "itf", route, 78, 3, truth=False)
    pad.text(70, 232, f"{plz}.{n:03d}.{n % 90 + 10}.000 0", "O", 8, "c")
    number = f"0034{n:04d}5550{n % 90 + 10:02d}"
    pad.text(w - 164, 140, "Sendungsnummer", "O", 6)
    pad.code(w - 12, 144, "itf", number, 78, 3, "r")
    pad.text(w - 80, 232, f"{number[:2]}.{number[2:7]} {number[7:]}", "O", 8, "c")
    pad.line(0, 240, w, 240, 0.5)
    pad.text(10, 254, "Zustellung ohne Unterschrift · Bitte nicht knicken", "O", 6.5)
    pad.text(w - 10, 258, f"G{n % 9}", "OB", 16, "r")


def frolvane(pad, w, h, to, n, product="VELIN 48"):
    """A French carrier: bars standing along the left edge, agency in huge type in a black box, double rules."""
    pad.box(0, 0, w, h, 1)
    number = f"8R{n:05d}55501{n % 90 + 10}"
    pad.line(66, 0, 66, h, 1)
    with pad.turned(270, 6, 70, h - 78, 54):
        pad.code((h - 78) / 2, 0, "code128", number, 42, 3, "c")
        pad.text((h - 78) / 2, 52, " ".join(number[i : i + 3] for i in range(0, len(number), 3)), "DB", 8, "c")
    pad.image(4, 6, 58, 17, logo("frolvane", "DB", 60, invert=True))
    pad.lines(33, 38, ["SPÉCIMEN", "NON VALABLE", "POUR LE", "TRANSPORT"], "DB", 6.5, 7.6, align="c")
    pad.text(72, 12, "EXPÉDITEUR", "D", 6)
    pad.lines(72, 21, S["fr"], "D", 7, 8.2)
    pad.text(72, 56, f"Dépôt le {n % 27 + 1:02d}/02/2026   Poids {n % 5},{n % 9}50 kg   1/1", "D", 6.5)
    pad.line(66, 62, w, 62, 0.5)
    pad.line(66, 64, w, 64, 0.5)
    pad.text(72, 75, "DESTINATAIRE", "D", 6)
    pad.lines(78, 94, to, "DB", 11.5, 15, fit=w - 84)
    pad.line(66, 170, w, 170, 0.5)
    pad.line(66, 172, w, 172, 0.5)
    pad.text(74, 192, product, "DB", 15)
    pad.rect(72, 202, w - 78, 58, "#000000")
    pad.text((66 + w) / 2, 248, f"{to[-1][:2]} {n % 80 + 10}", "DB", 46, "c", color="#ffffff")
    pad.lines(74, 276, [f"Tournée {n % 30 + 1} – casier {n % 12 + 1}", "Instructions : sonner, 2e étage", "Tél. +33 1 99 55 01 42"], "D", 8, 10.5)
    pad.code(w - 10, 314, "aztec", f"{number}|{to[-1]}|SPECIMEN|{product}", dots=4, align="r", truth=False)
    pad.lines(74, 330, ["Réf. client", f"CMD-{n}"], "D", 8, 10)
    pad.text(74, h - 8, "frolvane.example", "D", 7)


def blimtor(pad, w, h, to, n, product="Trommelpak"):
    """A Dutch post on A6: an app code at the top left, letters in an oval of words, rounded nothing, bars near the foot."""
    pad.text(0, 15, "Blimtor", "LB", 18)
    pad.text(0, 26, "VOORBEELD – NIET GELDIG VOOR VERZENDING", "L", 5.6)
    pad.box(w - 62, 0, 62, 40, 1.6)
    pad.text(w - 31, 17, "PORT", "LB", 11, "c")
    pad.text(w - 31, 31, "BETAALD", "LB", 9, "c")
    pad.line(0, 46, w, 46, 1)
    pad.lines(0, 56, ["Afzender: " + S["nl"][0], *S["nl"][1:]], "L", 6.6, 8)
    pad.code(w, 52, "qr", f"BLM:3SBLM{n:05d}55501:{to[-1][:7]}:VOORBEELD", dots=3, align="r", truth=False)
    pad.text(0, 94, "Aan", "L", 7)
    pad.lines(0, 108, to, "L", 11.5, 14.5, fit=w - 76)
    pad.text(0, 184, to[-1][:7], "LB", 22)
    pad.text(w, 184, f"NL-{n % 40 + 1:02d}", "LB", 22, "r")
    pad.line(0, 190, w, 190, 1)
    pad.lines(0, 202, [f"{product} · {n % 9 + 1} kg · ref {n}"], "L", 8, 10)
    number = f"3SBLM{n:05d}555{n % 10}"
    pad.code(w / 2, 214, "code128", number, 96, 3, "c")
    pad.text(w / 2, 322, number, "LB", 12, "c")
    pad.line(0, 330, w, 330, 3)
    pad.text(0, 346, "Niet thuis? Afleveren bij de buren.", "L", 8)
    pad.text(w, 346, "1/1", "LB", 11, "r")


def yarnovex(pad, w, h, to, n, service="YARRO STANDARD"):
    """An Australian post: service in the top strip, deliver-to box, grey signature field, bars wide at the foot, frame with heavy top."""
    pad.rect(0, 0, w, 24, "#333333")
    pad.text(8, 17, service, "SB", 14, color="#ffffff")
    pad.text(w - 8, 17, "yarnovex", "SB", 13, "r", color="#ffffff")
    pad.box(0, 24, w, h - 24, 1)
    pad.text(8, 38, "DELIVER TO", "SB", 7)
    pad.text(w - 8, 38, f"PH: (02) 5550 01{n % 90 + 10}", "S", 7, "r")
    pad.lines(8, 54, to, "S", 11, 13.5, fit=w - 16)
    pad.line(0, 116, w, 116, 1)
    pad.lines(8, 127, ["DELIVERY INSTRUCTIONS", "If no one is home leave in a safe place"], "S", 7, 9)
    pad.rect(w - 110, 121, 102, 22, "#e4e4e4")
    pad.text(w - 59, 135, "AUTHORITY TO LEAVE", "SB", 7.5, "c")
    pad.line(0, 150, w, 150, 1)
    pad.text(8, 160, f"CON NO YVX{n:04d}555  PARCEL 1 OF 1", "S", 7.5)
    pad.text(w - 8, 160, f"{n % 5}.{n % 9}5 kg", "SB", 9, "r")
    number = f"YVX{n:04d}55501{n % 90 + 10}0931"
    pad.code(8, 168, "datamatrix", f"019931265099999891{number}|4200{to[-1][-4:]}|SAMPLE", dots=4, truth=False)
    pad.text(w - 8, 212, to[-1].split()[-2][:3] + f" {n % 60 + 1:02d}", "SB", 34, "r")
    pad.line(0, 250, w, 250, 1)
    pad.text(w / 2, 262, f"ARTICLE ID: {number}", "SB", 8, "c")
    pad.code(w / 2, 268, "code128", number, 80, 2, "c")
    pad.line(0, 354, w, 354, 1)
    pad.lines(8, 364, ["SENDER", *S["au"]], "S", 6.5, 7.6)
    pad.lines(w - 8, 364, ["Aviation security and dangerous goods declaration:", "the sender acknowledges that this is a sample,", "not valid for carriage, and carries nothing."], "S", 6, 7.4, align="r")


def wexmol(pad, w, h, to, n, words=None):
    """A Nordic carrier: hairline boxes only inside, terminal code white on black, two codes of unequal length."""
    words = words or ["Mottagare", "Avsändare", "EXEMPEL – GÄLLER INTE FÖR TRANSPORT", "Kolli", "Vikt", "Tjänst", "Ombud"]
    pad.text(0, 14, "WEXMOL", "RB", 18)
    pad.text(w, 9, words[2], "RB", 6, "r")
    pad.text(w, 18, f"{words[5]}: Q4 · {words[3]} 1/1 · {words[4]} {n % 6},{n % 9} kg", "R", 7, "r")
    pad.line(0, 22, w, 22, 0.4)
    pad.line(w / 2, 22, w / 2, 62, 0.4)
    pad.lines(2, 31, [words[1], *S["se"]], "R", 7, 8.6)
    pad.lines(w / 2 + 5, 31, [words[6] + ":", f"Butik Exempel {n}", "08-555 01 42", "09–20"], "R", 7, 8.6)
    pad.line(0, 62, w, 62, 0.4)
    pad.text(2, 72, words[0], "R", 7)
    pad.lines(10, 88, to, "RB", 12, 14.5, fit=w - 14)
    pad.rect(0, 142, 92, 44, "#000000")
    pad.text(46, 176, f"{n % 90 + 10}-{n % 9}", "RB", 34, "c", color="#ffffff")
    pad.text(100, 158, f"Pallplats {chr(65 + n % 8)}{n % 20}", "R", 9)
    pad.text(100, 180, to[-1].split()[-1][:12], "RB", 16)
    pad.line(0, 190, w, 190, 0.4)
    number = f"00373{n:05d}5550142{n % 1000:03d}"[:18]
    pad.code(0, 198, "code128", f"00{number}", 76, 3)
    pad.text(0, 286, f"(00) {number}", "R", 9)
    pad.line(0, 294, w, 294, 0.4)
    pad.code(0, 302, "code128", f"{n:04d}99", 30, 3, truth=False)
    pad.code(w - 6, 300, "qr", f"wexmol.example/{number}", dots=3, align="r", truth=False)
    pad.text(0, 346, f"Ordernr {n}-2026", "R", 7)
