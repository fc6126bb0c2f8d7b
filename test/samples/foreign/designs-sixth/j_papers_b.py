"""Layouts j13 to j21."""

import os
import subprocess
import tempfile

from PIL import Image

from j_art import MM, Art
from j_build import NODE, Page, build
from j_labels_am import brightloop, kestrelway, laurier, quillport
from j_labels_b import alpkurier, crossmark, eastgate, lettre, lighthouse, lotse, prepaid_return, stadsbode
from j_labels_eu import hafenlicht, zwaluw
from j_labels_fr import colivane, dunmere, ostreka
from j_none_a import table
from j_sides import GOODS, receipt, scissors, slip, steps
from j_words import PEOPLE, SHOPS
from j_writers import WRITERS

LETTER, A4, A5 = (612, 792), (595.28, 841.89), (419.53, 595.28)
US, CA, DE, AT, CH, NL, FR, GB = (PEOPLE[each] for each in ("us", "ca", "de", "at", "ch", "nl", "fr", "gb"))


def picture(art, name, grey=False, dpi=203):
    """The label as a picture of 1 bit or grey, as a label server hands it over; the same place as the label."""
    folder = os.path.join(tempfile.gettempdir(), "j-pictures")
    os.makedirs(folder, exist_ok=True)
    pdf, stem = os.path.join(folder, name + ".pdf"), os.path.join(folder, name)
    WRITERS["skia"]([(art.w, art.h, art.ops)], pdf, NODE)
    subprocess.run(["pdftoppm", "-r", str(dpi * 4), "-gray", "-png", "-singlefile", pdf, stem], check=True)
    # Poppler without smoothing paints every dot that a bar touches, and bars grow: four times the dots, then their mean.
    fine = Image.open(stem + ".png")
    dots = fine.resize((fine.width // 4, fine.height // 4), Image.BOX)
    (dots if grey else dots.point(lambda v: 255 if v > 127 else 0).convert("1")).save(stem + ".png", optimize=True)
    shown = Art(art.w, art.h)
    shown.image(stem + ".png", 0, 0, art.w, art.h)
    shown.codes = list(art.codes)
    return shown


def j13():
    """Half a letter page: the label upright in the middle, a line of the order below."""
    pages = []
    for art, edge, order in ((crossmark(SHOPS["us2"], CA[0]), "frame", "TP-5590"), (brightloop(SHOPS["us"], US[4], "F", "BRIGHTLOOP LIGHT", "5.1 oz", "9200190000000000031338", "72201"), "frame", "10511"),
                             (laurier(SHOPS["ca"], CA[2], "S7K 0X0", "1007 0000 9930 2218"), "frame", "CMD-2301"), (crossmark(SHOPS["us"], GB[0], "LX000777455US", "GREAT BRITAIN"), "frame", "10519")):
        page = Page(396, 612)
        page.label(art, 54, 40, 0, edge)
        page.own.text(198, 520, f"Order {order} - print at 100 percent - sample page", "sans", 8, "c")
        page.own.text(198, 534, "Keep this line for yourself; only the label goes on the parcel.", "sans", 8, "c")
        pages.append(page)
    build("j13-half-letter", 1, "gofpdf", pages)


def j14():
    """4 x 8 in: label above, what is packed on the tab below."""
    pages = []
    for art, edge, to, order in ((brightloop(SHOPS["us"], US[1], "B", number="9200190000000000045611", zip5="74103"), "frame", US[1], "10488"), (crossmark(SHOPS["us"], CA[1], "LX000888455US"), "frame", CA[1], "10490"),
                                 (laurier(SHOPS["ca"], CA[0]), "frame", CA[0], "CMD-2310")):
        page = Page(288, 576)
        page.label(art, 0, 0, 0, edge)
        page.with_slip(slip(256, SHOPS["us"], to, "en", order, 1), 16, 450)
        pages.append(page)
    build("j14-tab-packed", 1, "typst", pages)


def j15():
    """Lying A4: the label as a picture at the left, the invoice at the right."""
    pages = []
    for i, (art, to, lang, shop) in enumerate(((lotse(SHOPS["de"], DE[0]), DE[0], "de", "de"), (eastgate(SHOPS["gb"], GB[2]), GB[2], "en", "gb"), (stadsbode(SHOPS["nl"], NL[0]), NL[0], "nl", "nl"), (colivane(SHOPS["fr"], FR[2]), FR[2], "fr", "fr"))):
        page = Page(841.89, 595.28)
        shown = picture(art, f"j15-{i}", i == 1)
        page.label(shown, 40, 60, 0, "picture", black=(0, 0, art.w, art.h))
        a = page.own
        title = {"de": "Rechnung - Muster", "en": "Invoice - sample", "nl": "Factuur - voorbeeld", "fr": "Facture - spécimen"}[lang]
        a.text(450, 80, title, "openb", 16)
        a.lines(450, 100, SHOPS[shop][:3], "open", 8, 10)
        a.lines(450, 150, to, "open", 10, 12)
        table(a, 450, 220, [210, 60, 70], [["", "", ""]] + [[n, c, p] for n, c, p in GOODS[lang]], "open", 8.6, 18, (2,))
        pages.append(page)
    build("j15-picture-and-invoice", 1, "luatex", pages)


def j16():
    """Letter and A4: a label designed lying on top and nothing turned; the proof or steps below."""
    pages = []
    for art, to, w, h, lang, x in ((lighthouse(SHOPS["us"], US[2]), US[2], *LETTER, "en", 90), (lighthouse(SHOPS["us2"], US[5], "9300110000000000551999", "53703"), US[5], *LETTER, "en", 90),
                                   (alpkurier(SHOPS["ch"], CH[1]), CH[1], *A4, "de", 40), (alpkurier(SHOPS["ch"], CH[0], "99.00.123456.00000028", "PRI"), CH[0], *A4, "de", 40)):
        page = Page(w, h)
        page.label(art, x, 48, 0, "ink")
        page.own.put(steps(420, lang, "sans"), 90, 420)
        page.own.put(receipt(400, "see label", "Light", SHOPS["us" if lang == "en" else "ch"], to, lang), 90, 560)
        pages.append(page)
    build("j16-designed-lying", 1, "typst", pages)


def j17():
    """A return by post: steps above, the return label inside a cut line."""
    pages = []
    for shop, person, zip5 in (("us", US[4], "55802"), ("us2", US[0], "28801"), ("us", US[5], "55802")):
        page = Page(*LETTER, kind="return-label")
        cut = Art(448, 304)
        cut.put(prepaid_return(SHOPS[shop], person, zip5=zip5), 12, 12)
        cut.box(0.5, 0.5, 447, 303, 1, "#000000", "5,4")
        page.own.text(306, 60, "Return your order in three steps (sample)", "sansb", 18, "c")
        page.own.put(steps(460, "en", "sans", 10), 76, 80)
        page.own.text(306, 752, "fernhollow.example - return within 30 days", "sans", 8, "c")
        turn = 90 if person is US[0] else 0
        page.label(cut, 82 if turn == 0 else 150, 420 if turn == 0 else 280, turn, "cut", "return-label")
        pages.append(page)
    build("j17-return-cut-out", 1, "pdf-lib", pages)


def j18():
    """Label paper of 100 x 150 mm, a mixed day, most without a frame."""
    pages = []
    for art in (eastgate(SHOPS["gb"], GB[0]), lotse(SHOPS["de2"], DE[4], "SAARBRÜCKEN 1", "66-11", "H1001230000499911"), eastgate(SHOPS["gb"], GB[1], "WLS-7", "V 011", "H00GBA0000777456", "NEXT DAY"), ostreka(SHOPS["de2"], CH[1], plz="1003", hub="GVA")):
        pages.append(Page(105 * MM, 155 * MM).label(art, 2.5 * MM, 2.5 * MM, 0, "page"))
    build("j18-label-paper", 1, "gofpdf", pages)


def j19():
    """Whole pages as one picture of 203 dpi, some lying by /Rotate."""
    pages = []
    for i, (art, rotate) in enumerate(((kestrelway(SHOPS["us"], US[3], "CA 958 9-02"), 0), (quillport(SHOPS["us"], US[0], "QP000123999811US"), 90), (crossmark(SHOPS["us2"], CA[2], "LX000999455US"), 270), (dunmere(SHOPS["gb"], GB[2]), 180))):
        pages.append(Page(288, 432, rotate=rotate).label(picture(art, f"j19-{i}"), 0, 0, 0, "page"))
    build("j19-one-picture", 1, "luatex", pages)


def j20():
    """Two to a page, lying in the halves, of different carriers; nothing between; the last place may be empty."""
    pages = []
    pairs = (((brightloop(SHOPS["us"], US[0]), "frame"), (kestrelway(SHOPS["us"], US[1], "OK 741 9-01"), "ink")), ((quillport(SHOPS["us2"], US[2]), "frame"), (laurier(SHOPS["ca"], CA[1], "B3H 0Z9"), "frame")), ((brightloop(SHOPS["us"], US[4], "S"), "frame"), None))
    for pair in pairs:
        page = Page(*LETTER)
        for i, each in enumerate(pair):
            if each:
                page.label(each[0], 90, 54 + 396 * i, 270, each[1])
        pages.append(page)
    build("j20-two-halves", 1, "luatex", pages)


def j21():
    """A4 that lies on its head or its side by /Rotate: label in the lower half, steps above; small letters' labels, two a page."""
    pages = []
    for art, edge, rotate, lang in ((stadsbode(SHOPS["nl"], NL[2]), "frame", 180, "nl"), (zwaluw(SHOPS["nl"], NL[0]), "ink", 90, "nl"), (hafenlicht(SHOPS["de"], DE[3], wide=98), "ink", 270, "de")):
        page = Page(*A4, rotate=rotate)
        page.own.put(steps(200, lang, "open"), 340, 60)
        page.label(art, 30, 841.89 - art.h - 24, 0, edge)
        pages.append(page)
    for people in ((FR[0], FR[1]), (FR[2],)):
        page = Page(*A4)
        page.own.text(40, 30, "Vos étiquettes de lettre (spécimen)", "openb", 11)
        for i, to in enumerate(people):
            page.label(lettre(SHOPS["fr"], to, f"1L 000 001 77{i}5 6"), 60, 70 + i * 300, 0, "ink")
        page.own.put(steps(400, "fr", "open"), 60, 660)
        pages.append(page)
    build("j21-turned-and-small", 1, "skia", pages)


if __name__ == "__main__":
    import sys

    for name in sys.argv[1:] or [f"j{i}" for i in range(13, 22)]:
        globals()[name]()
