"""Labels of French, Swiss and British services, upright, sizes as told."""

from j_art import MM, Art
from j_words import NOT


def colivane(shop, to, number="6C 00000 12345 4", cp="29200", dept="BRE", weight="0,850 kg", mode="DOMICILE SANS SIGNATURE"):
    """France, 100 x 142 mm: sender and addressee side by side, two symbols, fields to fill in, dotted lines."""
    a = Art(100 * MM, 142 * MM)
    a.box(0.4, 0.4, 100 * MM - 0.8, 142 * MM - 0.8, 0.8)
    a.poly([(3 * MM, 3 * MM), (13 * MM, 3 * MM), (10 * MM, 11 * MM), (3 * MM, 11 * MM)])
    a.text(15 * MM, 10 * MM, "colivane", "black", 18)
    a.text(97 * MM, 6.4 * MM, "Compte 000123", "lato", 6.4, "r")
    a.text(97 * MM, 11 * MM, "SPÉCIMEN", "latob", 10, "r")
    a.line(0, 14 * MM, 100 * MM, 14 * MM, 0.8)
    a.line(38 * MM, 14 * MM, 38 * MM, 50 * MM, 0.5)
    a.text(2 * MM, 18 * MM, "Expéditeur", "latob", 6.4)
    a.lines(2 * MM, 22.4 * MM, shop[:3] + ["FRANCE"], "lato", 6.8, 8.6)
    a.lines(2 * MM, 40 * MM, ["Réf. client : C-5512", f"Poids : {weight}", "Déposé le 03/06/20XX"], "lato", 6.4, 8.4)
    a.text(40 * MM, 18 * MM, "Destinataire", "latob", 6.4)
    a.lines(42 * MM, 25 * MM, to[:-1], "lato", 9.6, 12.4, fit=55 * MM)
    a.text(42 * MM, 25 * MM + 12.4 * (len(to) - 1) + 2, to[-1], "latob", 12, fit=55 * MM)
    a.text(42 * MM, 47 * MM, "Tél. 00 00 55 01 55    Code porte : 55A", "lato", 6.4)
    a.line(0, 50 * MM, 100 * MM, 50 * MM, 0.8)
    a.rect(0.8, 50.4 * MM, 22 * MM, 20 * MM, "#000000")
    a.text(11.4 * MM, 66 * MM, "F", "black", 44, "c", "#ffffff")
    a.text(27 * MM, 64 * MM, f"{cp}  {dept}", "black", 30, fit=70 * MM)
    a.text(27 * MM, 69 * MM, mode, "latob", 8)
    a.line(0, 70.6 * MM, 100 * MM, 70.6 * MM, 0.8)
    a.text(3 * MM, 75 * MM, "N° de colis : " + number, "latob", 8.4)
    a.bars("CODE128", number.replace(" ", ""), 50 * MM, 77 * MM, 22 * MM, 3, "c")
    a.line(0, 102 * MM, 100 * MM, 102 * MM, 0.5)
    a.bars("CODE128", f"{cp}250{number.replace(' ', '')}", 6 * MM, 105 * MM, 15 * MM, 2)
    a.text(6 * MM, 124 * MM, f"Routage {cp} 250 SPÉCIMEN", "lato", 7)
    a.matrix("DATAMATRIX", f"%{cp}{number.replace(' ', '')}250FR SPECIMEN NON VALABLE", 83 * MM, 106 * MM, 4)
    a.line(0, 127 * MM, 100 * MM, 127 * MM, 0.5)
    a.text(3 * MM, 132 * MM, "Remis contre signature le  ......./......./.......     Signature :", "lato", 7)
    a.text(50 * MM, 138.6 * MM, NOT["fr"], "latob", 7.6, "c")
    return a


def mirabel(shop, to, agency="07 - 118", relais="TABAC DU MODÈLE", number="00812345", cp="63000", box="M2"):
    """A relay shop's label, 100 x 150 mm: agency in huge type, grey column, circled letter, no outer frame."""
    a = Art(100 * MM, 150 * MM)
    a.text(0, 8 * MM, "Mirabel", "black", 22)
    a.text(31 * MM, 8 * MM, "RELAIS", "lato", 22)
    a.circle(94 * MM, 6 * MM, 5.4 * MM, "-", "#000000", 2)
    a.text(94 * MM, 9 * MM, "R", "black", 20, "c")
    a.rect(0, 13 * MM, 100 * MM, 22 * MM, "#000000")
    a.text(50 * MM, 30.4 * MM, agency, "black", 52, "c", "#ffffff")
    a.rect(0, 37 * MM, 27 * MM, 52 * MM, "#dddddd")
    a.lines(2 * MM, 42 * MM, ["Colis 1/1", "Poids 940 g", "Enseigne SPÉ", "Tournée 14", "Casier " + box, "Ref 55120", "03/06/20XX"], "lato", 8, 15)
    a.text(30 * MM, 42 * MM, "Point relais", "latob", 8)
    a.lines(30 * MM, 48 * MM, [relais, "9 place de l'Exemple", f"{cp} {to[-1].split(' ', 1)[1]}"], "latob", 12, 15, fit=68 * MM)
    a.line(30 * MM, 65 * MM, 100 * MM, 65 * MM, 0.5)
    a.text(30 * MM, 69 * MM, "Destinataire", "latob", 8)
    a.lines(30 * MM, 75 * MM, to, "lato", 10, 12.4, fit=68 * MM)
    a.line(0, 92 * MM, 100 * MM, 92 * MM, 1.4)
    a.bars("CODE128", f"{number}{cp}07118MR01", 50 * MM, 96 * MM, 24 * MM, 2, "c")
    a.text(50 * MM, 124.6 * MM, f"{number} {cp} 07118 MR 01", "lato", 9, "c")
    a.line(0, 128 * MM, 100 * MM, 128 * MM, 1.4)
    a.lines(0, 133 * MM, ["Expéditeur", *shop[:3]], "lato", 6.8, 8.6)
    a.matrix("QRCODE", f"https://mirabel.example/c/{number}", 86 * MM, 131 * MM, 4)
    a.text(0, 148 * MM, NOT["fr"], "latob", 7.6)
    return a


def dunmere(shop, to, kind="48", number="DM 0000 1234 5GB", name="Tracked", price="POSTAGE PAID GB", ref="TL-2093"):
    """Britain, 4 x 6 in without a frame: the 2-D mark beside a big service number, reference, return address small at the foot."""
    a = Art(288, 432)
    a.text(14, 44, "Dunmere", "serifb", 26)
    a.text(14, 60, "Mail   sample indicia", "serif", 11)
    a.box(184, 14, 90, 52, 1.4)
    a.text(229, 36, name, "sansb", 15, "c")
    a.text(229, 61, kind, "sansb", 26, "c")
    a.lines(229, 76, [price, "SPECIMEN"], "sans", 7, 8.6, "c")
    a.matrix("DATAMATRIX", f"DMGB{number.replace(' ', '')}0411270621SAMPLE NOT VALID {to[-1]} 1SN", 16, 84, 5)
    a.text(92, 102, "Delivered By", "sans", 6)
    a.text(92, 118, "No signature", "sansb", 12)
    a.text(92, 132, "Safeplace: porch", "sans", 9)
    a.line(14, 166, 274, 166, 0.8)
    a.bars("CODE128", number.replace(" ", ""), 144, 174, 70, 3, "c")
    a.text(144, 256, number, "sansb", 11, "c")
    a.line(14, 264, 274, 264, 0.8)
    a.lines(22, 286, to, "sans", 14, 17)
    a.text(14, 374, "Customer reference: " + ref, "sans", 8)
    a.text(274, 374, "1 of 1    610g", "sans", 8, "r")
    a.line(14, 382, 274, 382, 0.8)
    a.text(14, 394, "Return Address", "sansb", 6.6)
    a.text(14, 403, ", ".join(shop[:3]), "sans", 6.6)
    a.text(14, 418, NOT["en"], "sansb", 7)
    return a


def ostreka(shop, to, iso="CH", number="00340000161234567895", hub="ZRH", plz="3011", ref="OS 118", terms="DAP"):
    """Across borders, 100 x 150 mm: SSCC, boxes inside and none around, country in a black square, QR for customs."""
    a = Art(100 * MM, 150 * MM)
    a.text(0, 9 * MM, "ostreka", "latob", 25)
    a.text(0, 14 * MM, "cross-border parcel - MUSTER / SAMPLE", "lato", 7)
    a.rect(78 * MM, 0, 22 * MM, 16 * MM, "#000000")
    a.text(89 * MM, 12.6 * MM, iso, "black", 34, "c", "#ffffff")
    a.box(0.4, 19 * MM, 46 * MM, 26 * MM, 0.8)
    a.text(2 * MM, 23 * MM, "Shipper / Absender", "lato", 6)
    a.lines(2 * MM, 27.4 * MM, shop, "lato", 7.6, 10)
    a.box(50 * MM, 19 * MM, 50 * MM - 0.4, 26 * MM, 0.8)
    a.text(52 * MM, 23 * MM, "Ref. / Zollnr.", "lato", 6)
    a.lines(52 * MM, 28 * MM, [ref, f"Incoterm {terms}", "2 x Keramik 38.00 EUR", "0.94 kg"], "lato", 8, 11)
    a.text(0, 51 * MM, "Consignee / Empfänger", "lato", 7)
    a.lines(5 * MM, 58 * MM, to[:-1], "latob", 13, 16)
    a.text(5 * MM, 58 * MM + 16 * (len(to) - 1) + 2, f"{iso}-{to[-1]}", "latob", 15)
    a.matrix("QRCODE", f"OSTREKA|{number}|{iso}|{plz}|SAMPLE NOT VALID", 84 * MM, 49 * MM, 4)
    a.rect(0, 78 * MM, 100 * MM, 2 * MM, "#000000")
    a.text(0, 95 * MM, hub, "black", 46)
    a.text(50 * MM, 94 * MM, plz, "lato", 34)
    a.box(84 * MM, 83 * MM, 16 * MM - 0.4, 12 * MM, 1.2)
    a.text(92 * MM, 92 * MM, "N4", "latob", 20, "c")
    a.rect(0, 98 * MM, 100 * MM, 2 * MM, "#000000")
    a.bars("GS1_128", f"[00]{number[2:]}", 50 * MM, 104 * MM, 31 * MM, 3, "c", number)
    a.text(50 * MM, 139.4 * MM, f"(00) {number[2:]}", "lato", 10, "c")
    a.text(0, 148 * MM, "SAMPLE - NOT VALID FOR CARRIAGE / MUSTER - NICHT GÜLTIG", "latob", 6.8)
    return a
