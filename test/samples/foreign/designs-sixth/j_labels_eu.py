"""Labels of German, Austrian, Dutch, French and British post and parcel services, upright, sizes as told."""

from j_art import MM, Art
from j_words import NOT


def hafenlicht(shop, to, ident="34212345678", leit="33602118019", sort="33 - 602 - 14", service="PAKET", wide=100, ref="4711-22"):
    """Germany, 100 x 180 mm: logo and sender on top, grey field, two ITF codes, no side rules but thick bars between."""
    a = Art(wide * MM, 180 * MM)
    r = (wide - 4) * MM
    a.circle(11 * MM, 10 * MM, 6 * MM, "#000000")
    a.text(11 * MM, 12 * MM, "H", "latob", 17, "c", "#ffffff")
    a.text(20 * MM, 9 * MM, "HAFENLICHT", "black", 15)
    a.text(20 * MM, 14 * MM, "Paketdienst - Muster", "lato", 8)
    a.text(r, 13 * MM, service, "black", 26, "r", fit=38 * MM)
    a.rect(4 * MM, 18 * MM, r - 4 * MM, 1.2 * MM, "#000000")
    a.text(4 * MM, 23 * MM, "Absender:  " + ", ".join(shop[:3]), "lato", 6.6, fit=88 * MM)
    a.line(4 * MM, 25 * MM, r, 25 * MM, 0.5)
    a.text(4 * MM, 30 * MM, "Empfänger", "lato", 7)
    y = a.lines(9 * MM, 37 * MM, to[:-1], "lato", 13, 16.4)
    a.text(9 * MM, y + 3, to[-1], "latob", 16)
    a.text(9 * MM, y + 15, "Deutschland", "lato", 9)
    a.rect(4 * MM, 66 * MM, r - 4 * MM, 15 * MM, "#d4d4d4")
    a.lines(7 * MM, 71 * MM, ["Abrechnungsnr. 00000000000101", "Gewicht 1,8 kg    Sendungsref. " + ref, "Versandtag 03.06.20XX"], "lato", 7.6, 10.6)
    a.text(r - 3 * MM, 76 * MM, "1/1", "latob", 16, "r")
    a.rect(4 * MM, 82.5 * MM, r - 4 * MM, 1.2 * MM, "#000000")
    a.text(wide / 2 * MM, 95 * MM, sort, "black", 31, "c")
    a.rect(4 * MM, 98 * MM, r - 4 * MM, 1.2 * MM, "#000000")
    a.bars("C25INTER", _mod10(leit + "00"), wide / 2 * MM, 103 * MM, 24 * MM, 3, "c")
    a.text(wide / 2 * MM, 131 * MM, f"Leitcode {leit}.00 (Muster)", "lato", 9, "c")
    a.bars("C25INTER", _mod10(ident), wide / 2 * MM, 137 * MM, 25 * MM, 4, "c")
    a.text(wide / 2 * MM, 166 * MM, "Sendungsnr. " + _mod10(ident), "latob", 10, "c")
    a.line(4 * MM, 169 * MM, r, 169 * MM, 0.5)
    a.text(wide / 2 * MM, 174 * MM, NOT["de"], "latob", 8, "c")
    return a


def _mod10(digits):
    digits = digits if len(digits) % 2 else digits + "0"
    weigh = sum(int(c) * (4 if i % 2 == 0 else 9) for i, c in enumerate(digits))
    return digits + str(-weigh % 10)


def rundweg(shop, to, tour="0163", country="DE", plz="33602", number="01631234567890", service="101", land="D"):
    """100 x 150 mm: depot in huge type between black bands, Aztec, frame of unequal boxes open at the foot."""
    a = Art(100 * MM, 150 * MM)
    w = 100 * MM
    a.rect(0, 0, w, 9 * MM, "#000000")
    a.text(3 * MM, 6.6 * MM, "rundweg", "openb", 15, color="#ffffff")
    a.text(w - 3 * MM, 6.4 * MM, "Classic / Muster", "open", 9, "r", "#ffffff")
    a.line(0.4, 9 * MM, 0.4, 104 * MM, 0.8)
    a.line(w - 0.4, 9 * MM, w - 0.4, 104 * MM, 0.8)
    a.vtext(4 * MM, 46 * MM, "Absender " + shop[0], "open", 6, 270)
    a.line(6 * MM, 9 * MM, 6 * MM, 48 * MM, 0.5)
    y = a.lines(9 * MM, 16 * MM, to[:-1], "open", 11.5, 14.5)
    a.text(9 * MM, y + 4, f"{land}-{to[-1]}", "openb", 14)
    a.text(9 * MM, 45 * MM, "Tel. 0000 555-0144", "open", 6.6)
    a.line(66 * MM, 9 * MM, 66 * MM, 48 * MM, 0.5)
    a.matrix("AZTEC", f"%{number}{service}{country}{plz}{to[0]}|{to[-1]}|MUSTER SAMPLE", 71 * MM, 13 * MM, 5)
    a.line(0, 48 * MM, w, 48 * MM, 0.8)
    a.lines(2 * MM, 52 * MM, ["Ref.1  R-20431", "Ref.2  Etsch Beispiel", "Gew. 2,4 kg", "Packst. 1 von 1"], "open", 6.8, 9)
    a.line(38 * MM, 48 * MM, 38 * MM, 68 * MM, 0.5)
    a.text(41 * MM, 52 * MM, "Service", "open", 6)
    a.text(41 * MM, 65 * MM, f"D    {service}", "openb", 22)
    a.rect(0, 68 * MM, w, 1.5 * MM, "#000000")
    a.text(3 * MM, 88 * MM, f"{country}-{tour}", "openb", 42)
    a.text(w - 3 * MM, 87 * MM, plz, "open", 26, "r", fit=30 * MM)
    a.rect(0, 93 * MM, w, 11 * MM, "#000000")
    a.text(3 * MM, 101.5 * MM, "D-17", "openb", 19, color="#ffffff")
    a.text(w - 3 * MM, 101.5 * MM, "Tour 204", "openb", 19, "r", "#ffffff")
    a.bars("CODE128", f"%00{plz}{number}{service}276", w / 2, 109 * MM, 26 * MM, 2, "c")
    a.text(w / 2, 139 * MM, f"{tour} {number} {service} 276  S", "open", 9, "c")
    a.text(w / 2, 146 * MM, NOT["de"], "openb", 7.6, "c")
    return a


def tamsel(shop, to, number="RX 00 000 012 8DE", price="5,80", kind="Einschreiben"):
    """A registered letter, 100 x 62 mm, designed lying: franking matrix, R in a box, sender in tiny type, no frame."""
    a = Art(100 * MM, 62 * MM)
    a.text(2 * MM, 6 * MM, "TAMSEL POST", "sansb", 12)
    a.text(2 * MM, 10 * MM, "Porto bezahlt - Muster - ungültig", "sans", 6.4)
    a.matrix("DATAMATRIX", f"TP{number.replace(' ', '')}|{price}|20XX0603|MUSTER-UNGUELTIG|0000FF", 80 * MM, 2 * MM, 5)
    a.text(78 * MM, 8 * MM, f"{price} EUR", "sansb", 9, "r")
    a.text(78 * MM, 12 * MM, "03.06.XX   0A 0000 5F", "sans", 6.4, "r")
    a.line(2 * MM, 14 * MM, 76 * MM, 14 * MM, 0.8)
    a.text(2 * MM, 25 * MM, "R", "sansb", 32)
    a.bars("CODE128", number.replace(" ", ""), 14 * MM, 16 * MM, 10 * MM, 2)
    a.text(14 * MM, 29.4 * MM, number + "  " + kind, "sans", 7.6)
    a.text(2 * MM, 36 * MM, " - ".join(shop[:3]), "sans", 5.6)
    a.lines(12 * MM, 43 * MM, to, "sans", 11.4, 14)
    a.text(98 * MM, 60 * MM, NOT["de"], "sans", 5.6, "r")
    return a


def bergpost(shop, to, number="10390000000012345", plz="6370", service="Paket Österreich", sort="6300-2 / 48"):
    """Austria, A5 lying (205 x 142 mm): columns, large number of the sorting centre, ladder code at the right edge."""
    a = Art(205 * MM, 142 * MM)
    a.box(0.5, 0.5, 205 * MM - 1, 142 * MM - 1, 1)
    a.rect(1, 1, 46 * MM, 16 * MM, "#000000")
    a.text(24 * MM, 11.4 * MM, "BERGPOST", "black", 19, "c", "#ffffff")
    a.text(51 * MM, 8 * MM, service, "latob", 15)
    a.text(51 * MM, 13.4 * MM, "Prioritätsstufe 2 - MUSTER", "lato", 8)
    a.text(158 * MM, 12 * MM, "2,15 kg", "latob", 16, "r")
    a.line(0, 16.8 * MM, 163 * MM, 16.8 * MM, 1)
    a.line(163 * MM, 0, 163 * MM, 142 * MM, 1)
    a.line(70 * MM, 16.8 * MM, 70 * MM, 60 * MM, 0.5)
    a.text(3 * MM, 21 * MM, "Absender", "lato", 6.6)
    a.lines(3 * MM, 26 * MM, shop[:3] + ["ÖSTERREICH", "Kundennr. 00012345"], "lato", 8.6, 11)
    a.lines(3 * MM, 50 * MM, ["Referenz  RE 2041-7", "Unzustellbar: zurück"], "lato", 7, 9)
    a.text(73 * MM, 21 * MM, "Empfänger", "lato", 6.6)
    y = a.lines(76 * MM, 31 * MM, to[:-1], "lato", 15, 19)
    a.text(76 * MM, y + 4, to[-1], "latob", 18)
    a.line(0, 60 * MM, 163 * MM, 60 * MM, 2.4)
    a.text(3 * MM, 84 * MM, plz, "black", 64)
    a.text(159 * MM, 82 * MM, sort, "latob", 24, "r")
    a.line(0, 90 * MM, 163 * MM, 90 * MM, 2.4)
    a.bars("C25INTER", number + "0", 81 * MM, 96 * MM, 27 * MM, 3, "c")
    a.text(81 * MM, 129 * MM, number + "0", "latob", 11, "c")
    a.text(81 * MM, 138 * MM, NOT["de"], "latob", 8.4, "c")
    code = Art(120 * MM, 22 * MM)
    code.bars("CODE128", "BP" + number, 0, 0, 20 * MM, 2)
    a.put(code, 173 * MM, 14 * MM, 270)
    a.vtext(200 * MM, 112 * MM, "BP" + number, "lato", 8, 270)
    a.codes.extend([])
    return a


def zwaluw(shop, to, number="3SZWLW0001234567", pc="9711AB", huis="208", extra="Niet bij buren"):
    """Netherlands, 98 x 140 mm: KIX, icons, T1 square; rules only above and below, no sides."""
    a = Art(98 * MM, 140 * MM)
    w = 98 * MM
    a.poly([(0, 10 * MM), (11 * MM, 1 * MM), (9 * MM, 6 * MM), (20 * MM, 5 * MM), (10 * MM, 11 * MM)])
    a.text(22 * MM, 9 * MM, "zwaluw pakket", "openb", 15)
    a.text(w, 9 * MM, "VOORBEELD", "openb", 9, "r")
    a.rect(0, 13 * MM, w, 0.8 * MM, "#000000")
    a.text(0, 18 * MM, "Afz.: " + ", ".join(shop[:3]), "open", 6.8)
    a.text(0, 22 * MM, "Retouradres alleen bij onbestelbaar", "open", 5.8)
    a.lines(8 * MM, 33 * MM, to[:-1], "open", 13, 17)
    a.text(8 * MM, 33 * MM + 17 * (len(to) - 1), to[-1], "openb", 14)
    a.ticks("KIX", pc + huis, 8 * MM, 50 * MM)
    a.box(78 * MM, 24 * MM, 19.6 * MM, 17 * MM, 1.4)
    a.text(87.8 * MM, 38 * MM, "T1", "openb", 34, "c")
    a.text(w, 47 * MM, "A-regio", "openb", 11, "r")
    a.rect(0, 60 * MM, w, 0.8 * MM, "#000000")
    a.text(0, 66 * MM, "Collo 1/1", "open", 8)
    a.text(0, 70.4 * MM, "Gewicht 1,2 kg", "open", 8)
    a.text(0, 74.8 * MM, "Ref. W-88012", "open", 8)
    a.circle(44 * MM, 70 * MM, 5 * MM, "-", "#000000", 1.2)
    a.line(40.6 * MM, 73.4 * MM, 47.4 * MM, 66.6 * MM, 1.2)
    a.text(52 * MM, 71 * MM, extra, "openb", 10)
    a.matrix("DATAMATRIX", f"{number}{pc}{huis}NL VOORBEELD", 87 * MM, 63 * MM, 3)
    a.rect(0, 78 * MM, w, 0.8 * MM, "#000000")
    a.text(w / 2, 86 * MM, f"NL {pc[:4]} {pc[4:]} {huis}", "openb", 19, "c")
    a.bars("CODE128", number, w / 2, 90 * MM, 30 * MM, 3, "c")
    a.text(w / 2, 126 * MM, number, "openb", 12, "c")
    a.rect(0, 129 * MM, w, 0.8 * MM, "#000000")
    a.text(w / 2, 134 * MM, NOT["nl"], "openb", 7.4, "c")
    a.text(w / 2, 138.6 * MM, "Afgedrukt met proefgegevens; geen postwaarde", "open", 6, "c")
    return a
