"""More labels, of the second lot: lying ones, white on black at the side, words up the side, returns, a relay's thermal look."""

from j_art import MM, Art
from j_words import NOT


def lighthouse(shop, to, number="9300110000000000551207", zip5="03301", f="sans"):
    """US, 6 x 4 in designed lying: thin frame with gaps, a letter in the corner, bars in the lower half."""
    a = Art(432, 288)
    a.text(14, 62, "L", f + "b", 62)
    a.line(60, 10, 60, 70, 2)
    a.lines(70, 22, [each.upper() for each in shop[:3]], f, 7.4, 9)
    a.text(70, 66, "LIGHT PACKAGE MAIL", f + "b", 13)
    a.box(322, 12, 98, 54, 1)
    a.lines(371, 26, ["FEE PAID", "2 OZ SAMPLE", "Mailed 55802", "000000000"], f, 7, 10, "c")
    a.line(10, 72, 422, 72, 2)
    a.text(40, 92, "TO", f + "b", 8)
    a.lines(64, 96, [each.upper() for each in to], f, 13, 16)
    a.text(420, 88, "0003", f + "b", 12, "r")
    a.text(420, 104, "R012", f, 10, "r")
    a.text(420, 146, "RDC 04   EXP 06/05", f, 7, "r")
    a.line(10, 152, 422, 152, 2)
    a.text(216, 164, "TRACKING # EP SAMPLE", f + "b", 8, "c")
    a.bars("GS1_128", f"[420]{zip5}[93]{number[2:]}", 216, 170, 70, 2, "c", f"420{zip5}\x1d{number}")
    a.text(216, 254, " ".join(number[i : i + 4] for i in range(0, 22, 4)), f + "b", 10, "c")
    a.line(10, 262, 422, 262, 2)
    a.text(14, 274, NOT["en"], f + "b", 7)
    a.text(420, 274, "ord 5581 / specimen", f, 7, "r")
    return a


def eastgate(shop, to, sort="NRW-2", round_="C 417", number="H00GBA0000123456", day="STANDARD", f="open"):
    """Britain, 100 x 150 mm: a black band up the left with white words, sort code in huge type, no frame."""
    a = Art(100 * MM, 150 * MM)
    a.rect(0, 0, 13 * MM, 150 * MM, "#000000")
    a.vtext(9.6 * MM, 146 * MM, "EASTGATE  " + day, f + "b", 24, 270, "#ffffff")
    a.text(17 * MM, 17 * MM, sort, f + "b", 46, fit=58 * MM)
    a.text(100 * MM, 9 * MM, round_, f + "b", 17, "r", fit=24 * MM)
    a.text(100 * MM, 17 * MM, "P2", f + "b", 17, "r")
    a.line(17 * MM, 22 * MM, 100 * MM, 22 * MM, 1)
    a.lines(17 * MM, 30 * MM, to, f, 12, 15)
    a.text(17 * MM, 60 * MM, "Delivery note: leave with neighbour", f, 7.6)
    a.line(17 * MM, 63 * MM, 100 * MM, 63 * MM, 1)
    a.bars("CODE128", number, 58 * MM, 68 * MM, 34 * MM, 3, "c")
    a.text(58 * MM, 107 * MM, number, f + "b", 12, "c")
    a.line(17 * MM, 112 * MM, 100 * MM, 112 * MM, 1)
    a.matrix("DATAMATRIX", f"EGT{number}{sort}SAMPLE NOT VALID FOR CARRIAGE{to[-1]}", 78 * MM, 117 * MM, 6)
    a.lines(17 * MM, 120 * MM, ["Client ref 20-5512", "0.74 kg   1 of 1", "Returns:"] + shop[:3], f, 7.4, 9.4)
    a.text(17 * MM, 148 * MM, NOT["en"], f + "b", 7.4)
    return a


def lotse(shop, to, city="BIELEFELD 3", route="24-70", number="H1001230000456789", f="lato"):
    """Germany, 100 x 150 mm, the look of a thermal printer's own faces: words up the right side, city in white on black at the foot."""
    a = Art(100 * MM, 150 * MM)
    a.box(1, 1, 86 * MM, 150 * MM - 2, 2)
    a.text(4 * MM, 11 * MM, "LOTSENPAKET", f + "b", 20)
    a.text(83 * MM, 8 * MM, "S", f + "b", 17, "r")
    a.text(83 * MM, 13 * MM, "Muster", f, 8, "r")
    a.line(1, 15 * MM, 86 * MM, 15 * MM, 2)
    a.matrix("QRCODE", f"LOTSE|{number}|{route}|MUSTER", 4 * MM, 19 * MM, 5, options=("--secure=2",))
    a.text(34 * MM, 34 * MM, route, f + "b", 44, fit=50 * MM)
    a.line(1, 42 * MM, 86 * MM, 42 * MM, 2)
    a.text(4 * MM, 47 * MM, "Empf.", f, 7)
    a.lines(8 * MM, 54 * MM, to, f + "b", 12.4, 16)
    a.text(8 * MM, 76 * MM, "Haustürzustellung / Ablageort: Garage", f, 8)
    a.line(1, 80 * MM, 86 * MM, 80 * MM, 2)
    a.bars("CODE128", number, 43 * MM, 85 * MM, 28 * MM, 3, "c")
    a.text(43 * MM, 119 * MM, number, f + "b", 12, "c")
    a.rect(1, 124 * MM, 85 * MM, 14 * MM, "#000000")
    a.text(43 * MM, 134.4 * MM, city, f + "b", 27, "c", "#ffffff", fit=80 * MM)
    a.text(43 * MM, 145 * MM, NOT["de"], f + "b", 8, "c")
    a.vtext(92 * MM, 147 * MM, "Abs.: " + ", ".join(shop[:3]), f, 7.6, 270)
    a.vtext(97 * MM, 147 * MM, "Lotsenpaket GmbH (erfunden) - Probedruck ohne Wert - Auftrag 55-2041", f, 6.4, 270)
    return a


def alpkurier(shop, to, number="99.00.123456.00000017", kind="ECO", f="sans"):
    """Switzerland, A6 lying (143 x 100 mm) without a frame: prepaid box, short words, bars to the right below."""
    a = Art(143 * MM, 100 * MM)
    a.text(0, 9 * MM, kind, f + "b", 30)
    a.text(0, 14 * MM, "AlpKurier - Muster / Spécimen", f, 7)
    a.box(96 * MM, 0.4, 47 * MM - 0.4, 17 * MM, 1)
    a.line(96 * MM, 7 * MM, 143 * MM, 7 * MM, 0.6)
    a.text(98 * MM, 5.4 * MM, "P.P.   CH-" + shop[2], f + "b", 10)
    a.text(98 * MM, 13 * MM, "AlpKurier AG  Beispiel", f, 8)
    a.text(0, 25 * MM, " / ".join(shop[:3]), f, 6.4)
    a.line(0, 26.4 * MM, 70 * MM, 26.4 * MM, 0.5)
    a.lines(60 * MM, 40 * MM, to, f, 14, 18)
    a.lines(0, 40 * MM, ["0,6 kg", "Ref 8812", "A-Post nein", "SI nein"], f, 8, 11)
    a.bars("CODE128", number.replace(".", ""), 143 * MM, 66 * MM, 22 * MM, 3, "r")
    a.text(143 * MM, 92 * MM, number, f, 10, "r")
    a.text(0, 75 * MM, "GAS", f + "b", 20)
    a.text(0, 82 * MM, "Geschäftsantwort nein", f, 7)
    a.text(0, 99 * MM, NOT["de"], f + "b", 7)
    return a


def prepaid_return(shop, person, number="9202090000000000071834", zip5="55802", f="sans"):
    """US return label, 6 x 4 in lying: bars across at the right edge, the word RETURN in a black field."""
    a = Art(424, 280)
    a.box(1, 1, 422, 278, 1.4)
    a.lines(10, 16, [each.upper() for each in person], f, 7.6, 9.4)
    a.rect(176, 8, 96, 24, "#000000")
    a.text(224, 26, "RETURN", f + "b", 17, "c", "#ffffff")
    a.box(330, 8, 84, 56, 1)
    a.lines(372, 22, ["NO POSTAGE", "NECESSARY IF", "SENT IN THE", "SAMPLE STATES"], f, 7, 10, "c")
    for i in range(9):
        a.rect(396, 74 + i * 13, 18, 7, "#000000")
    a.text(192, 58, "RETURNS PAID MAIL", f + "b", 14, "c")
    a.text(192, 70, "PERMIT NO. 000  DULUTH MN  (SPECIMEN)", f, 7.4, "c")
    a.lines(60, 104, ["POSTAGE DUE UNIT", *[each.upper() for each in shop[:3]]], f, 12, 15)
    a.line(1, 178, 386, 178, 1.4)
    a.line(386, 70, 386, 279, 1.4)
    a.bars("GS1_128", f"[420]{zip5}[92]{number[2:]}", 193, 186, 58, 2, "c", f"420{zip5}\x1d{number}")
    a.text(193, 257, " ".join(number[i : i + 4] for i in range(0, 22, 4)), f + "b", 9, "c")
    a.text(193, 271, NOT["en"], f, 7, "c")
    a.vtext(404, 272, "RMA 2-0418", f + "b", 9, 270)
    return a


def crossmark(shop, to, number="LX000123455US", country="CANADA", f="sans"):
    """US to abroad, 4 x 6 in: the declaration inside as a table, sender and addressee in columns, S10 bars on top."""
    a = Art(288, 432)
    a.box(6, 6, 276, 420, 1)
    a.text(12, 24, "CROSSMARK", f + "b", 15)
    a.text(12, 34, "Packet International - SAMPLE", f, 7)
    a.text(276, 26, "CA" if country == "CANADA" else "GB", f + "b", 22, "r")
    a.line(6, 40, 282, 40, 1)
    a.bars("CODE128", number, 144, 48, 46, 2, "c")
    a.text(144, 104, f"{number[:2]} {number[2:5]} {number[5:8]} {number[8:11]} {number[11:]}", f + "b", 10, "c")
    a.line(6, 110, 282, 110, 1)
    a.line(132, 110, 132, 186, 0.6)
    a.text(10, 119, "FROM", f, 5.6)
    a.lines(10, 129, [each.upper() for each in shop[:3]] + ["UNITED STATES", shop[3]], f, 6.8, 8.6)
    a.text(136, 119, "TO", f, 5.6)
    a.lines(136, 131, [each.upper() for each in to] + [country], f + "b", 8.4, 11, fit=142)
    a.line(6, 186, 282, 186, 1)
    a.text(10, 197, "CUSTOMS DECLARATION  CN 22 (sample)", f + "b", 8)
    a.text(276, 197, "May be opened officially", f, 6, "r")
    for i, words in enumerate((("[x] Sale of goods", "[ ] Gift"), ("[ ] Documents", "[ ] Other"))):
        a.text(10, 209 + i * 10, words[0], f, 6.8)
        a.text(100, 209 + i * 10, words[1], f, 6.8)
    rows = [("Qty  Description", "kg", "USD", "HS"), ("1  Letterpress cards", "0.21", "15.00", "4909"), ("2  Wool coaster", "0.14", "22.00", "6307"), ("Total", "0.35", "37.00", "")]
    for i, row in enumerate(rows):
        y = 226 + i * 15
        a.line(6, y, 282, y, 0.5)
        for x, words in zip((10, 176, 216, 250), row):
            a.text(x, y + 10.4, words, f, 7)
    for x in (172, 212, 246):
        a.line(x, 226, x, 286, 0.5)
    a.line(6, 286, 282, 286, 1)
    a.para(10, 295, 268, "I certify that the particulars given are correct and that this item holds no dangerous article. Sample only.", f, 5.6)
    a.text(10, 324, "Date and signature   06/03/XX   A. Sample", f, 7)
    a.line(6, 330, 282, 330, 2.6)
    a.bars("CODE128", "CX0418" + number[2:11], 18, 340, 44, 2)
    a.text(18, 396, "Hub JFK-2   bag 0418", f, 7.6)
    a.matrix("QRCODE", f"https://crossmark.example/{number}", 226, 338, 3)
    a.text(144, 418, NOT["en"], f + "b", 7.6, "c")
    return a


def stadsbode(shop, to, number="JVGL0000123400056789", f="deja"):
    """Netherlands, 100 x 150 mm: heavy frame, column of symbols at the right, ladder code along the left side."""
    a = Art(100 * MM, 150 * MM)
    a.box(1.5, 1.5, 100 * MM - 3, 150 * MM - 3, 3)
    a.line(27 * MM, 1, 27 * MM, 118 * MM, 1)
    code = Art(112 * MM, 20 * MM)
    code.bars("CODE128", number, 0, 0, 19 * MM, 2)
    a.put(code, 4 * MM, 4 * MM, 90)
    a.text(30 * MM, 10 * MM, "STADSBODE", f + "b", 15)
    a.text(97 * MM, 9 * MM, "EUROPLUS", f, 8, "r")
    a.line(27 * MM, 13 * MM, 100 * MM, 13 * MM, 1)
    a.text(30 * MM, 17 * MM, "Aan", f, 6)
    a.lines(32 * MM, 24 * MM, to, f + "b", 9.6, 13, fit=64 * MM)
    a.line(27 * MM, 46 * MM, 100 * MM, 46 * MM, 1)
    a.text(30 * MM, 50 * MM, "Van", f, 6)
    a.lines(32 * MM, 55 * MM, shop[:3], f, 7, 9.4)
    a.line(27 * MM, 68 * MM, 100 * MM, 68 * MM, 1)
    a.rect(27.4 * MM, 68.4 * MM, 34 * MM, 24 * MM, "#e0e0e0")
    a.text(44 * MM, 84 * MM, "AMS", f + "b", 26, "c")
    a.lines(64 * MM, 74 * MM, ["1 / 1", "1,30 kg", "24-06"], f + "b", 11, 15)
    a.line(27 * MM, 93 * MM, 100 * MM, 93 * MM, 1)
    a.matrix("AZTEC", f"STB|{number}|NL|VOORBEELD|NIET GELDIG", 32 * MM, 96 * MM, 5)
    a.lines(58 * MM, 101 * MM, ["Brievenbus: nee", "Handtekening: ja", "Leeftijd: nee"], f, 7, 12)
    a.line(1, 118 * MM, 99 * MM, 118 * MM, 1)
    a.text(50 * MM, 126 * MM, number, f + "b", 12, "c")
    a.text(50 * MM, 138 * MM, NOT["nl"], f + "b", 8, "c")
    a.text(50 * MM, 144 * MM, "Klant 00055, order W-9911. Proefafdruk.", f, 6.4, "c")
    return a


def lettre(shop, to, number="1L 000 001 2345 6", f="lato"):
    """France, a followed letter's label of 100 x 70 mm: small, no frame, two half rules."""
    a = Art(100 * MM, 70 * MM)
    a.text(0, 6 * MM, "LETTRE NUMÉRO", f + "b", 13)
    a.text(0, 10 * MM, "Poste du Modèle - SPÉCIMEN sans valeur", f, 6.6)
    a.matrix("DATAMATRIX", f"LS{number.replace(' ', '')}|20G|FR|SPECIMEN SANS VALEUR|0603XX", 84 * MM, 0, 5)
    a.line(0, 13 * MM, 60 * MM, 13 * MM, 1)
    a.bars("CODE128", number.replace(" ", ""), 0, 16 * MM, 14 * MM, 2)
    a.text(0, 34 * MM, number, f + "b", 9)
    a.lines(64 * MM, 22 * MM, ["Exp. :", *shop[:3]], f, 6, 7.6, fit=36 * MM)
    a.line(40 * MM, 38 * MM, 100 * MM, 38 * MM, 1)
    a.lines(40 * MM, 45 * MM, to, f, 10.4, 13, fit=59 * MM)
    a.text(0, 69 * MM, NOT["fr"], f, 5.6)
    return a
