"""Layouts j23 to j25, of pdfmake: every page of a document is of one size and nothing is turned."""

from j_build import Page, build
from j_labels_am import brightloop, kestrelway, quillport
from j_labels_eu import zwaluw
from j_labels_fr import dunmere, mirabel, ostreka
from j_none_a import table
from j_sides import GOODS, slip
from j_words import PEOPLE, SHOPS

LETTER, A4 = (612, 792), (595.28, 841.89)
US, DE, CH, NL, FR, GB = (PEOPLE[each] for each in ("us", "de", "ch", "nl", "fr", "gb"))


def column(page, x, w, shop, to, order, lang="en", font="sans"):
    """The shop's own column: name, order, items with prices, no code."""
    a = page.own
    a.text(x, 60, shop[0], font + "b", 13, fit=w)
    a.lines(x, 76, shop[1:], font, 7.6, 9.6)
    title = {"en": "Your order", "de": "Ihre Bestellung", "fr": "Votre commande", "nl": "Je bestelling"}[lang]
    a.text(x, 130, f"{title} {order}", font + "b", 9.4)
    a.lines(x, 146, to, font, 8, 10)
    y = 200
    for name, _code, price in GOODS[lang]:
        a.text(x, y, name, font, 7.6, fit=w - 44)
        a.text(x + w, y, price, font, 7.6, "r")
        a.line(x, y + 4, x + w, y + 4, 0.3, "#999999")
        y += 16


def j23():
    """Letter: the shop's column at the left, the label in the upper right corner."""
    pages = []
    for art, edge, to, order, shop in ((kestrelway(SHOPS["us"], US[5], "WI 537 2-11", "KESTRELWAY SATURDAY", "1K 999 AA1 13 4417 0025", "2 LBS"), "ink", US[5], "10541", "us"),
                                       (quillport(SHOPS["us2"], US[0], "QP000123888811US", "BOI 2", "83702", "TP-5601"), "frame", US[0], "TP-5601", "us2"),
                                       (brightloop(SHOPS["us"], US[2], "G", "BRIGHTLOOP GROUND", "3 lb", "9200190000000000088221", "03301"), "frame", US[2], "10544", "us")):
        page = Page(*LETTER)
        column(page, 40, 210, SHOPS[shop], to, order)
        page.label(art, 302, 28, 0, edge)
        page.own.text(40, 752, "Sample document, not valid for carriage. Page 1 of 1", "sans", 7)
        pages.append(page)
    build("j23-corner-right", 1, "pdfmake", pages)


def j24():
    """A4: label in the upper left, the shop's column at the right, the slip over the foot's width."""
    pages = []
    for art, to, shop, lang, order in ((ostreka(SHOPS["de2"], CH[0], plz="9000", hub="SGL"), CH[0], "de2", "de", "2041-91"), (mirabel(SHOPS["fr"], FR[0], "29 - 007", "LIBRAIRIE DU SPÉCIMEN", "00812399", "29200"), FR[0], "fr", "fr", "C-5530"),
                                       (zwaluw(SHOPS["nl"], NL[2], "3SZWLW0005550177", "2312XX", "33", "Brievenbus"), NL[2], "nl", "nl", "W-88031")):
        page = Page(*A4)
        page.label(art, 24, 24, 0, "ink")
        column(page, 350, 200, SHOPS[shop], to, order, lang, "lato")
        page.with_slip(slip(520, SHOPS[shop], to, lang, order, 3, "lato"), 36, 560)
        pages.append(page)
    build("j24-corner-left-slip-foot", 1, "pdfmake", pages)


def j25():
    """4 x 6 in: label, then a short invoice with amounts, order by order."""
    pages = []
    for art, to, order in ((dunmere(SHOPS["gb"], GB[0], "48", "DM 0000 3301 1GB", ref="TL-2110"), GB[0], "TL-2110"), (dunmere(SHOPS["gb"], GB[2], "2", "DM 0000 3302 5GB", "Class", ref="TL-2111"), GB[2], "TL-2111")):
        pages.append(Page(288, 432).label(art, 0, 0, 0, "page"))
        paper = Page(288, 432, "invoice")
        paper.own.text(16, 34, "Invoice " + order, "sansb", 15)
        paper.own.text(16, 48, "sample - no VAT document", "sans", 7.6)
        paper.own.lines(16, 68, to, "sans", 8.6, 11)
        table(paper.own, 16, 130, [180, 76], [["Item", "GBP"]] + [[n, p] for n, _c, p in GOODS["en"]] + [["Total paid", "91.25"]], "sans", 8.4, 17, (1,))
        pages.append(paper)
    build("j25-roll-with-invoice", 1, "pdfmake", pages)


if __name__ == "__main__":
    j23(), j24(), j25()
