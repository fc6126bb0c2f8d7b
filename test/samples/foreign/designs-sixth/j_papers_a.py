"""Layouts j01 to j11."""

from j_art import MM, Art
from j_build import Page, build
from j_labels_am import brightloop, kestrelway, laurier, norvane, quillport
from j_labels_eu import bergpost, hafenlicht, rundweg, tamsel, zwaluw
from j_labels_fr import colivane, dunmere, mirabel, ostreka
from j_sides import receipt, scissors, slip, steps
from j_words import NOT, PEOPLE, SHOPS

LETTER, A4 = (612, 792), (595.28, 841.89)
US, CA, DE, AT, CH, NL, FR, GB = (PEOPLE[each] for each in ("us", "ca", "de", "at", "ch", "nl", "fr", "gb"))


def j01():
    pages = []
    for art, edge, turn, x in (
        (brightloop(SHOPS["us"], US[0]), "frame", 270, 90),
        (laurier(SHOPS["ca"], CA[1], "B3H 0Z9", "1007 0000 5520 1143"), "frame", 90, 90),
        (quillport(SHOPS["us2"], US[2]), "frame", 270, 126),
    ):
        page = Page(*LETTER)
        page.label(art, x, 36, turn, edge)
        page.own.line(0, 396, 612, 396, 0.5, "#666666", "2,2")
        page.own.put(steps(250, "en", "sans"), 40, 420)
        page.own.put(receipt(250, "9200 1900 0000 0000 1234 5", "Everyday, 0-1 lb", SHOPS["us"], US[0], "en", "sans"), 326, 420)
        page.own.box(318, 412, 262, 150, 0.5)
        page.own.text(40, 760, "Sample sheet, fernhollow.example - page 1 of 1", "sans", 7)
        pages.append(page)
    build("j01-record-below", 1, "pdf-lib", pages)


def j02():
    pages = []
    for number, (art, edge) in enumerate(
        ((kestrelway(SHOPS["us"], US[1]), "ink"), (norvane(SHOPS["us2"], US[4]), "ink"), (kestrelway(SHOPS["us2"], US[5], "WI 537 0-01", "KESTRELWAY 3 DAY", lbs="11 LBS"), "ink"))
    ):
        page = Page(*LETTER)
        page.own.text(306, 34, "View/Print Label (sample)", "serifb", 15, "c")
        y = 56
        for words in (
            "1. Ensure that there are no other tracking labels attached to your package.",
            "2. Fold the printed label at the solid line below. Place the label in a pouch. If you have no pouch, affix the folded label using clear shipping tape over the entire label.",
            "3. GETTING YOUR SHIPMENT TO KESTRELWAY: customers without a daily pickup take the package to any counter that accepts samples. Nothing here is a real service.",
            "Notice: this sheet is a specimen made for tests and must not be used for carriage of goods.",
        ):
            y = page.own.para(36, y, 540, words, "serif", 10) + 5
        page.own.line(36, 300, 576, 300, 1)
        page.own.text(306, 296, "FOLD HERE", "serif", 9, "c")
        page.label(art, 80, 340, 90, edge)
        pages.append(page)
    build("j02-steps-fold-label", 1, "gofpdf", pages)


def j03():
    """A day's stack on label paper: each label with its slip, and the list for the driver last."""
    pages = []
    for art, to, order in (
        (quillport(SHOPS["us"], US[2], "QP000123456811US"), US[2], "A-7731"),
        (brightloop(SHOPS["us"], US[5], "E", "BRIGHTLOOP NEXT MORNING", "2 lb 3 oz", "9200190000000000077310", "53703", "#A-7732"), US[5], "A-7732"),
        (norvane(SHOPS["us"], US[3], "WED - 10 JUN 10:30A", "OVERNIGHT", "NC SACA", "95814", "CA-US", "SMF", "7489 0000 1177"), US[3], "A-7733"),
        (kestrelway(SHOPS["us"], US[0]), US[0], "A-7734"),
    ):
        pages.append(Page(288, 432).label(art, 0, 0, 0, "page"))
        paper = Page(288, 432, "packing-slip")
        pages.append(paper.with_slip(slip(256, SHOPS["us"], to, "en", order, 4, "open"), 16, 16))
    last = Page(288, 432, "other")
    last.own.text(144, 26, "END OF DAY SCAN SHEET", "openb", 14, "c")
    last.own.text(144, 40, "4 parcels handed over - SAMPLE, no label", "open", 8, "c")
    last.own.bars("CODE128", "SCAN0603000004", 144, 54, 54, 2, "c")
    last.own.text(144, 120, "SCAN 0603 000004", "open", 9, "c")
    for i, (order, name) in enumerate((("A-7731", "quillport"), ("A-7732", "brightloop"), ("A-7733", "norvane"), ("A-7734", "kestrelway"))):
        last.own.text(24, 150 + 16 * i, order, "open", 9)
        last.own.text(110, 150 + 16 * i, name, "open", 9)
        last.own.text(264, 150 + 16 * i, "1 pc", "open", 9, "r")
        last.own.line(20, 154 + 16 * i, 268, 154 + 16 * i, 0.4)
    last.own.text(24, 250, "Driver's signature", "open", 8)
    last.own.line(110, 250, 264, 250, 0.6)
    pages.append(last)
    build("j03-roll-with-slips", 1, "typst", pages)


def j04():
    """Paper with a label to peel off at the foot; the slip on the rest."""
    pages = []
    for art, to, order, x, shop in (
        (kestrelway(SHOPS["us2"], US[3], "CA 958 9-02", "KESTRELWAY 2ND DAY"), US[3], "TP-5561", 18, "us2"),
        (dunmere(SHOPS["gb"], GB[1], "24", "DM 0000 7777 1GB"), GB[1], "TL-2101", 290, "gb"),
        (brightloop(SHOPS["us2"], US[1], "P", "BRIGHTLOOP TWO DAY", "1 lb 1 oz", "9200190000000000099117", "74103", "TP-5570"), US[1], "TP-5570", 18, "us2"),
    ):
        w, h = A4 if shop == "gb" else LETTER
        page = Page(w, h)
        page.with_slip(slip(w - 80, SHOPS[shop], to, "en", order, 5, "serif"), 40, 40)
        page.label(art, x, h - 456, 0, "frame" if art.ops[0].startswith("R\t7\t7") else "ink")
        side = Art(200, 60)
        side.para(0, 10, 200, "Peel the label off at the perforation. Returns within 30 days; write to us first. Sample page.", "serif", 9)
        page.own.put(side, 340 if x < 100 else 40, h - 200)
        pages.append(page)
    build("j04-peel-off-foot", 1, "luatex", pages)


def j05():
    pages = []
    for art, x, y in (
        (hafenlicht(SHOPS["de"], DE[1]), 8 * MM, 10 * MM),
        (hafenlicht(SHOPS["de2"], DE[4], "34299900011", "66111202007", "66 - 111 - 20", "PÄCKCHEN"), 8 * MM, 10 * MM),
        (rundweg(SHOPS["de"], DE[2], "0124", "DE", "24103", "01249900112233"), 6 * MM, 8 * MM),
    ):
        page = Page(*A4)
        page.label(art, x, y, 0, "ink")
        page.own.put(steps(66 * MM, "de", "open", 9), 130 * MM, 20 * MM)
        page.own.text(130 * MM, 280 * MM, "Knopf und Faden - Musterseite", "open", 7)
        pages.append(page)
    build("j05-left-with-column", 1, "skia", pages)


def j06():
    pages = [Page(595.28, 419.53).label(bergpost(SHOPS["at"], AT[1]), 2.5 * MM, 3 * MM, 0, "frame")]
    for to, number, plz, sort in ((AT[0], "10390000000054321", "1070", "1000-5 / 07"), (AT[1], "10390000000077777", "6370", "6300-2 / 48")):
        page = Page(*A4)
        page.label(bergpost(SHOPS["at"], to, number, plz, "EMS Österreich", sort), 2.5 * MM, 2.5 * MM, 0, "frame")
        scissors(page.own, 10, 585, 150 * MM)
        page.own.put(receipt(300, number, "Paket Österreich", SHOPS["at"], to, "de", "lato", "6,70"), 40, 160 * MM)
        page.own.put(steps(400, "de", "lato"), 40, 205 * MM)
        pages.append(page)
    build("j06-a5-lying", 1, "typst", pages)


def j07():
    pages = []
    for to, x, y in ((DE[3], 20 * MM, 22 * MM), (DE[0], 90 * MM, 118 * MM)):
        page = Page(*A4)
        page.label(tamsel(SHOPS["de"], to), x, y, 0, "ink")
        page.own.put(steps(160 * MM, "de", "deja", 8), 20 * MM, 210 * MM)
        page.own.text(20 * MM, 12 * MM, "Ihre Briefmarke zum Ausdrucken (Muster)", "dejab", 9)
        pages.append(page)
    pages.append(Page(104 * MM, 66 * MM).label(tamsel(SHOPS["de2"], DE[2], "RX 00 000 044 2DE", "3,70", "Einwurf"), 2 * MM, 2 * MM, 0, "page"))
    build("j07-registered-letter", 1, "luatex", pages)


def j08():
    pages = []
    for to, number, pc, huis, n in ((NL[0], "3SZWLW0001234567", "9711AB", "208", 3), (NL[1], "3SZWLW0009988776", "5611ZZ", "7", 6), (NL[2], "3SZWLW0005550101", "2312XX", "33", 2)):
        page = Page(*A4)
        page.with_slip(slip(170 * MM, SHOPS["nl"], to, "nl", "W-88012", n, "open"), 20 * MM, 12 * MM)
        page.label(zwaluw(SHOPS["nl"], to, number, pc, huis), 6 * MM, 152 * MM, 0, "ink")
        page.own.put(steps(80 * MM, "nl", "open", 8), 118 * MM, 165 * MM)
        pages.append(page)
    build("j08-foot-left", 1, "pdf-lib", pages)


def j09():
    pages = []
    for to, number, cp, dept in ((FR[0], "6C 00000 12345 4", "29200", "BRE"), (FR[2], "6C 00000 77001 9", "13001", "MRS"), (FR[1], "6C 00000 88002 3", "63000", "CFE")):
        page = Page(*A4)
        page.label(colivane(SHOPS["fr"], to, number, cp, dept), 5 * MM, 5 * MM, 0, "frame")
        page.own.put(steps(82 * MM, "fr", "lato", 8.6), 118 * MM, 14 * MM)
        scissors(page.own, 10, 585, 152 * MM, "plier ou découper ici")
        page.own.put(receipt(170 * MM, number, "Colivane domicile", SHOPS["fr"], to, "fr", "lato", "7,59 EUR", True), 14 * MM, 160 * MM)
        page.own.text(14 * MM, 285 * MM, "Document d'essai, sans valeur. petiteverrerie.example", "lato", 7)
        pages.append(page)
    build("j09-quarter-and-proof", 1, "gofpdf", pages)


def j10():
    """Label sheets of four A6; places may be empty."""
    sheets = []
    labels = [dunmere(SHOPS["gb"], to, kind, f"DM 0000 {n} 3GB", name, ref=f"TL-{n}") for to, kind, n, name in
              ((GB[0], "48", 2093, "Tracked"), (GB[1], "24", 2094, "Tracked"), (GB[2], "2", 2095, "Class"), (GB[0], "48", 2096, "Signed"), (GB[2], "24", 2097, "Tracked"))]
    for own in (labels[:4], labels[4:]):
        page = Page(*A4)
        for i, art in enumerate(own):
            page.label(art, (4 if i % 2 == 0 else 301), (-4 if i < 2 else 419), 0, "ink")
        sheets.append(page)
    build("j10-four-places", 1, "skia", sheets)


def j11():
    pages = []
    for art, lang, words, shop, where in (
        (mirabel(FR[1] + ["FRANCE"], SHOPS["fr"][:3], "44 - 002", "BUREAU TEST", "00899001", "44000"), "fr", "Étiquette de retour", "fr", 40 * MM),
        (zwaluw(NL[1] + [""], SHOPS["nl"][:3], "3SZWLW0RET000012", "3511AA", "51", "Retour"), "nl", "Retourlabel", "nl", 12 * MM),
        (rundweg(DE[0] + [""], SHOPS["de2"][:3], "0179", "DE", "79098", "01790000556677", "332"), "de", "Ihr Rücksendeetikett", "de2", 55 * MM),
    ):
        page = Page(*A4, kind="return-label")
        page.own.text(15 * MM, 20 * MM, words, "serifb", 22)
        page.own.put(steps(180 * MM, lang, "serif", 9.6), 15 * MM, 26 * MM)
        page.label(art, where, 116 * MM, 0, "ink", "return-label")
        page.own.text(15 * MM, 286 * MM, f"{SHOPS[shop][0]} - {words} - " + NOT[lang].lower(), "serif", 7)
        pages.append(page)
    build("j11-return-below", 1, "luatex", pages)


if __name__ == "__main__":
    import sys

    for name in sys.argv[1:] or [f"j{i:02}" for i in range(1, 12)]:
        globals()[name]()
