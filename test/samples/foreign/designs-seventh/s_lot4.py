"""The fourth lot: python3 s_lot4.py FOLDER [NAME …]"""
import sys

from s_build import Page, Part, document
from s_ink import MM, Ink
from s_labels2 import M, bars
from s_lot1 import lay, put
from s_lot3 import rows
from s_raw import Raw
from s_writers import Ghostscript, Tex

A4 = (595.28, 841.89)
LETTER = (612, 792)


def plainest(o):
    """Letter page, sender, receiver and bars between two thin rules, 280 by 380."""
    k = Ink()
    k.line(0, 0.5, 280, 0.5, 1)
    k.text(0, 16, "PRELLMOND", 12, "CB")
    k.text(280, 16, o["kind"], 12, "CB", a="r")
    k.lines(0, 40, o["from"], 9, "C", 12)
    k.text(0, 112, "TO:", 12, "CB")
    k.lines(30, 130, o["to"], 13, "CB", 17)
    bars(k, o["track"], 140, 236, 3 * M, 84, size=12, f="CB")
    k.text(0, 356, "REF " + o["ref"], 9, "C")
    k.text(0, 370, "SAMPLE NOT VALID FOR CARRIAGE", 9, "C")
    k.line(0, 379.5, 280, 379.5, 1)
    return k


def customs_label(o):
    """Small international packet: label and declaration in one frame, 288 by 432 in all."""
    k = Ink()
    k.rect(8, 8, 272, 416, 1.2)
    k.rect(8, 8, 136, 40, fill=True)
    k.text(16, 34, "OLVETIN", 22, "LB", g=1)
    k.text(272, 24, "échantillon – non valable", 8, "L", a="r")
    k.text(272, 42, o["cc"], 18, "LB", a="r")
    k.line(8, 48, 280, 48)
    k.text(14, 58, "Exp.", 7, "L")
    k.lines(40, 60, o["from"], 8, "L", 10)
    k.line(8, 96, 280, 96)
    k.text(14, 107, "Dest.", 7, "L")
    k.lines(40, 114, o["to"], 12, "LB", 15)
    k.line(8, 190, 280, 190)
    bars(k, o["track"], 144, 198, 3 * M, 54, size=11, f="LB")
    k.line(8, 272, 280, 272, 2)
    k.text(14, 284, "Déclaration en douane – peut être ouvert d'office", 7.5, "LB")
    k.line(8, 290, 280, 290, 0.6)
    for i, r in enumerate([("Contenu", "kg", "Valeur"), *o["goods"]]):
        for j, s in enumerate(r):
            k.text((14, 210, 274)[j], 302 + 16 * i, s, 8.5, "L" if i else "LB", a="r" if j else "l")
    k.line(8, 372, 280, 372, 0.6)
    k.lines(14, 386, ["Je certifie que les renseignements sont exacts.", "Date et signature : 03/11  A. Modèle"], 8, "L", 12)
    k.text(274, 416, o["office"], 10, "LB", a="r")
    return k


def tall(o):
    """10 by 20 cm paper for the upper half, framed apart, 270 by 540."""
    k = Ink()
    k.rect(1, 1, 268, 538, 2)
    k.text(134, 40, "FRUNDAK", 34, "NB", a="m")
    k.text(134, 54, "MUSTER – nicht gültig für die Beförderung", 8, "N", a="m")
    k.line(1, 62, 269, 62, 2)
    k.text(8, 76, "Absender", 8, "N")
    k.lines(8, 92, o["from"], 10, "N", 13)
    k.line(1, 136, 269, 136)
    k.text(8, 150, "Empfänger", 9, "N")
    k.lines(8, 176, o["to"], 17, "NB", 21, fit=250)
    k.line(1, 270, 269, 270, 2)
    k.text(134, 330, o["zone"], 60, "NB", a="m")
    k.line(1, 346, 269, 346)
    for i, (n, v) in enumerate(o["cells"]):
        k.text(8 + 90 * i, 358, n, 7, "N")
        k.text(8 + 90 * i, 376, v, 14, "NB")
    k.line(1, 384, 269, 384, 2)
    bars(k, o["track"], 135, 398, 3 * M, 100, "itf", size=14, f="NB", gap=16)
    return k


def postal(letters, eight, land):
    """A parcel number of the postal kind with its check digit."""
    left = 11 - sum(int(d) * w for d, w in zip(eight, (8, 6, 4, 2, 3, 5, 9, 7))) % 11
    return f"{letters}{eight}{ {10: 0, 11: 5}.get(left, left) }{land}".replace(" ", "")


def s35(folder):
    orders = [
        {"kind": "PKG 2", "from": ["C. Sampleford", "12 Trial Ter", "Ames IA 50010"], "to": ["Dot Exampleman", "4471 Pretend Blvd", "Laredo TX 78040"], "track": "PRM0044718826", "ref": "ETS-118"},
        {"kind": "PKG 1", "from": ["C. Sampleford", "12 Trial Ter", "Ames IA 50010"], "to": ["Specimen Quilts LLC", "Attn Wilma, Rear Door", "900 W Mock St", "Paducah KY 42001"], "track": "PRM0044718834", "ref": "ETS-121"},
        {"kind": "PKG 2", "from": ["C. Sampleford", "12 Trial Ter", "Ames IA 50010"], "to": ["R. Dummy", "PSC 555 Box 1", "APO AE 09001"], "track": "PRM0044718842", "ref": "ETS-125"},
    ]
    note = lambda: rows(60, 500, ["Fold here, put the sheet in a pouch.", "Do not photocopy the label. Questions: 555-0144."], 11, "T", head="How to use this page")
    document(folder, "s35-plainest-1", "hand-written", lambda: Raw(), [Page("label", *LETTER, [Part("label", put(plainest, o, 60 + 120 * i, 50), "ink"), lay(note)]) for i, o in enumerate(orders)])


def s36(folder):
    make = lambda n, cc, to, goods, office: {"cc": cc, "from": ["Savonnerie du Spécimen, 4 rue Modèle", "555-0106"], "to": to, "track": postal("LV", f"1184{n}", "FR"), "goods": goods, "office": office}
    orders = [
        make("4711", "CA", ["Geneviève Témoin", "55, chemin de l'Exemple", "Rimouski QC  G5L 5B1", "CANADA"], [("Savon, 3", "0,300", "21,00"), ("Carte", "0,010", "0,00")], "R-07"),
        make("4725", "NZ", ["Aroha Sample", "14 Specimen Rd", "Nelson 7010", "NEW ZEALAND"], [("Bougie", "0,420", "24,00")], "R-02"),
        make("4739", "CH", ["Urs Muster", "Beispielweg 3", "3005 Bern", "SUISSE"], [("Savon, 12", "1,200", "84,00"), ("Porte-savon", "0,200", "12,00"), ("Carte", "0,010", "0,00")], "R-11"),
    ]
    document(folder, "s36-packet-1", "hand-written", lambda: Raw(words="embedded"), [Page("label", 288, 432, [Part("label", put(customs_label, o, 0, 0), "page")]) for o in orders])


def s37(folder):
    orders = [
        {"from": ["Töpferei Lehmgrube", "Musterhof 3", "17192 Waren"], "to": ["Friederike Beispiel", "Probegasse 18", "Hinterhaus", "04109 Leipzig"], "zone": "L 41", "cells": [("Gewicht", "2,4 kg"), ("Stück", "1/1"), ("Tag", "03.11.")], "track": "40771180022194"},
        {"from": ["Töpferei Lehmgrube", "Musterhof 3", "17192 Waren"], "to": ["Gasthof Zum Muster", "z. Hd. Frau Testa", "Dorfplatz 1", "87561 Oberstdorf"], "zone": "KE 9", "cells": [("Gewicht", "11 kg"), ("Stück", "2/3"), ("Tag", "03.11.")], "track": "40771180022202"},
    ]

    def bill(o):
        k = rows(340, 90, ["Rechnung 2026-118", *o["to"], "", "1 Krug, salzglasiert     48,00", "Versand                       6,90", "Summe                      54,90", "", "Vielen Dank!", "Muster, keine Rechnung."], 11, "T", head="Töpferei Lehmgrube")
        k.line(310, 30, 310, 810, 0.4, 0.5, (4, 4))
        return k

    document(folder, "s37-tall-beside-bill-1", "ghostscript", Ghostscript, [Page("label", *A4, [Part("label", put(tall, o, 24, 40)), lay(lambda o=o: bill(o))]) for o in orders])


def s38(folder):
    """A seller's own crop: the label moved to a page's middle, a browser's lines above and below."""
    from s_labels2 import half_sheet

    make = lambda to, n, sort: {"mark": "B", "usd": "5.85", "lb": "12 oz", "from": ["Salt Fork Soap Co.", "2200 Sample Rd", "Enid OK 73701"], "to": to, "track": f"BVT{n}", "spaced": f"BVT {n[:4]} {n[4:]}", "sort": sort}
    orders = [make(["Perpetua Mocksworth", "9 Pattern Hill", "Sitka AK 99835"], "55118802", "A9"), make(["Uno Trial c/o Camp Example", "Rural Box 44", "Ely MN 55731"], "55118810", "N3")]

    def chrome():
        k = Ink()
        k.text(24, 22, "11/3/26, 6:14 PM", 8, "T")
        k.text(306, 22, "Print label – Borvintu Parcels", 8, "T", a="m")
        k.text(24, 780, "https://borvintu.example/print/118", 8, "T")
        k.text(588, 780, "1/1", 8, "T", a="r")
        return k

    document(folder, "s38-printed-from-page-1", "xetex", lambda: Tex("xelatex"), [Page("label", *LETTER, [lay(chrome), Part("label", put(half_sheet, o, 160, 170, 270, 440, 290), "frame", 90)]) for o in orders])


def hold():
    k = rows(60, 110, ["Parcel PRM0044718826 could not be delivered and is kept for you.", "", "Dot Exampleman", "4471 Pretend Blvd", "Laredo TX 78040", "", "Bring this letter and the code below."], 12, "T", head="Your parcel is waiting")
    w, _ = k.code("code128", "HOLD44718826", 60, 260, 0.375 * MM, 44)
    k.text(60 + w / 2, 316, "HOLD44718826", 10, "C", a="m")
    k.text(60, 350, "Sample letter, no label.", 9, "TI")
    return k


def stock():
    k = Ink()
    k.text(144, 50, "REGAL B-14", 34, "NB", a="m")
    k.text(144, 80, "Krug, salzglasiert", 18, "N", a="m")
    w, _ = k.code("code128", "LG-B14-0118", 60, 110, 0.375 * MM, 60)
    k.text(60 + w / 2, 186, "LG-B14-0118", 11, "C", a="m")
    k.text(144, 205, "Lagerschild, Muster; kein Versandetikett", 9, "N", a="m")
    return k


def s39(folder):
    from s_none1 import one

    document(folder, "s39-none-1", "hand-written", lambda: Raw(), [one("other", *LETTER, hold), one("other", 288, 216, stock), one("blank", 288, 432, Ink)])


if __name__ == "__main__":
    wanted = sys.argv[2:]
    for key, make in list(globals().items()):
        if len(key) == 3 and key[0] == "s" and key[1:].isdigit() and (not wanted or key in wanted):
            make(sys.argv[1])
            print(key)
