"""Layout j12: pages without a label."""

from j_art import MM, Art
from j_build import Page, build
from j_sides import GOODS, STEPS, receipt, slip, steps
from j_words import PEOPLE, SHOPS

LETTER, A4, A5 = (612, 792), (595.28, 841.89), (419.53, 595.28)


def table(a, x, y, widths, rows, font="sans", size=8.4, lead=15, right=()):
    for i, row in enumerate(rows):
        at = x
        for j, (wide, words) in enumerate(zip(widths, row)):
            a.text(at + wide - 4 if j in right else at + 3, y + lead * i + lead * 0.68, words, font + ("b" if i == 0 else ""), size, "r" if j in right else "l", fit=wide - 6)
            at += wide
        a.line(x, y + lead * (i + 1), x + sum(widths), y + lead * (i + 1), 1.1 if i == 0 else 0.4)
    return y + lead * len(rows)


def invoice(w, h, lang, shop, to, words, code=None, font="sans"):
    page = Page(w, h, "invoice")
    a = page.own
    a.text(48, 60, shop[0], font + "b", 18)
    a.lines(w - 48, 50, shop[1:], font, 8, 10, "r")
    a.text(48, 130, words[0], font + "b", 14)
    a.lines(48, 150, to, font, 10, 12.4)
    a.lines(w - 48, 150, words[1:4], font, 9, 12, "r")
    rows = [words[4:8]] + [[n, c, "1", p] for n, c, p in GOODS[lang]]
    y = table(a, 48, 220, [w - 296, 90, 40, 70], rows, font, 9, 17, (2, 3))
    a.lines(w - 48 - 0, y + 20, words[8:], font + "b", 10, 15, "r")
    if code:
        a.bars("CODE128", code, 48, y + 24, 34, 2)
        a.text(48, y + 68, code, font, 8)
    a.codes = []
    return page


def j12():
    us, de, fr, nl, gb = (PEOPLE[each] for each in ("us", "de", "fr", "nl", "gb"))
    pages = [
        invoice(*LETTER, "en", SHOPS["us"], us[0], ["INVOICE (sample)", "No. 2041-118", "June 3, 20XX", "Terms: paid", "Description", "SKU", "Qty", "Amount", "Subtotal 91.25", "Shipping 8.74", "TOTAL USD 99.99"], "INV2041118"),
        invoice(*A4, "de", SHOPS["de"], de[1], ["Rechnung (Muster)", "Nr. RE-2041-77", "03.06.20XX", "USt-IdNr. DE000000000", "Bezeichnung", "Art.-Nr.", "Anz.", "EUR", "Versand 5,49", "Gesamt 81,69 EUR", "inkl. 19 % USt"]),
    ]
    pick = Page(*LETTER, kind="pick-list")
    pick.own.text(40, 50, "PICK LIST  June 3, 20XX  -  sample", "sansb", 15)
    rows = [["Bin", "Item", "SKU", "Qty", "Orders"]] + [[f"{chr(65 + i % 6)}-{10 + i}", n, c, str(1 + i % 4), f"A-77{31 + i}, A-77{40 + i}"] for i, (n, c, _) in enumerate(GOODS["en"] * 5)]
    table(pick.own, 40, 70, [50, 200, 90, 40, 150], rows, right=(3,))
    form = Page(*A4, kind="customs")
    a = form.own
    a.box(40, 60, 515, 330, 1.2)
    a.text(48, 78, "CUSTOMS DECLARATION / DÉCLARATION EN DOUANE", "sansb", 11)
    a.text(547, 78, "SAMPLE CN 23", "sansb", 11, "r")
    for y in (88, 160, 232, 330):
        a.line(40, y, 555, y, 0.7)
    a.line(300, 88, 300, 232, 0.7)
    a.lines(48, 100, ["From / De", *SHOPS["de2"]], "sans", 9, 12)
    a.lines(48, 172, ["To / À", *PEOPLE["ch"][0], "SWITZERLAND"], "sans", 9, 12)
    a.lines(308, 100, ["Sender's reference  OS 118", "Commercial sale / Vente", "HS tariff 6912 00", "Invoice RE-2041-77"], "sans", 9, 13)
    a.bars("CODE128", "CP000012348DE", 312, 172, 34, 2)
    a.text(312, 218, "CP 000 012 348 DE", "sans", 9)
    table(a, 40, 234, [255, 60, 90, 110], [["Contents / Contenu", "Qty", "Net kg", "Value EUR"], ["Ceramic mug", "2", "0.74", "38.00"], ["Printed cards", "1", "0.10", "9.50"]], right=(1, 2, 3))
    a.lines(48, 344, ["I certify that the particulars given are correct. Sample form, no real declaration.", "Date and signature: ........................................"], "sans", 8, 22)
    a.codes = []
    mail = Page(*LETTER, kind="other")
    a = mail.own
    a.text(30, 22, "6/3/XX, 9:41 AM", "sans", 7)
    a.text(306, 22, "Your order is on its way - webmail.example", "sans", 7, "c")
    a.line(30, 60, 582, 60, 0.6, "#999999")
    a.text(30, 50, "Your order is on its way (sample message)", "sansb", 15)
    a.lines(30, 78, ["From: notices@quillport.example", "To: marlene@mail.example"], "sans", 9, 12, color="#444444")
    a.rect(30, 110, 552, 70, "#eef2f6")
    a.text(50, 138, "Tracking number QP000123456811US", "sansb", 12)
    a.text(50, 160, "Expected Tuesday by 8 pm. 1 parcel, 0.84 lb.", "sans", 10)
    a.lines(30, 210, ["Ship to", *us[0]], "sans", 10, 13)
    a.rect(30, 280, 130, 26, "#333333")
    a.text(95, 297, "Track parcel", "sansb", 10, "c", "#ffffff")
    a.text(30, 770, "https://webmail.example/u/0/msg/1882?print=1", "sans", 7)
    a.text(582, 770, "1/1", "sans", 7, "r")
    man = Page(*A4, kind="other")
    a = man.own
    a.text(40, 56, "Abholliste / Manifest - Muster, kein Versandschein", "sansb", 14)
    a.lines(40, 76, [*SHOPS["de"][:3], "Abholung 03.06.20XX   Tour 204"], "sans", 9, 12)
    a.line(40, 130, 555, 130, 1)
    for i, each in enumerate(de + PEOPLE["at"]):
        y = 136 + 62 * i
        a.bars("CODE128", f"0163000{i}4477{i}", 44, y + 6, 32, 2)
        a.text(44, y + 48, f"0163 000{i} 4477{i}", "sans", 8)
        a.lines(250, y + 16, each, "sans", 8.6, 11)
        a.text(545, y + 16, f"{i + 1},{i}5 kg", "sans", 9, "r")
        a.line(40, y + 58, 555, y + 58, 0.4)
    a.codes = []
    build("j12-none", 1, "gofpdf", pages + [pick, form, mail, man])

    gift = Page(*A5, kind="packing-slip")
    gift.with_slip(slip(350, SHOPS["gb"], gb[0], "en", "TL-2093", 2, "lato", False), 34, 40)
    drop = Page(*A4, kind="instructions")
    a = drop.own
    a.text(297, 90, "Toon deze code bij het servicepunt", "latob", 20, "c")
    a.text(297, 116, "Je hebt geen label nodig. Het punt print het label voor je. VOORBEELD", "lato", 11, "c")
    a.matrix("QRCODE", "https://zwaluw.example/dropoff/VOORBEELD-0001", 198, 150, 18)
    a.text(297, 400, "VB-0001-7731", "latob", 24, "c")
    a.put(steps(400, "nl", "lato", 10), 97, 440)
    a.codes = []
    terms = Page(*LETTER, kind="other")
    terms.own.text(48, 60, "Terms of carriage (sample text)", "latob", 14)
    for column in (48, 318):
        y = 84
        for i in range(9):
            y = terms.own.para(column, y, 246, f"{i + 1}. " + " ".join(STEPS["en"][1:]), "lato", 7.6) + 5
    advert = Page(*A5, kind="advert")
    a = advert.own
    a.rect(20, 20, 380, 220, "#1f4d3a")
    a.text(210, 120, "15 % off", "black", 60, "c", "#ffffff")
    a.text(210, 160, "your next order with code SAMPLE15", "lato", 15, "c", "#ffffff")
    a.para(40, 280, 340, "Thank you for supporting a two-person studio. This voucher is a sample and has no value. Not to be combined with other offers.", "lato", 11)
    a.matrix("QRCODE", "https://thistleloom.example/v/SAMPLE15", 160, 380, 8)
    a.codes = []
    fr_slip = Page(*A4, kind="packing-slip")
    fr_slip.with_slip(slip(500, SHOPS["fr"], fr[0], "fr", "C-5512", 3, "lato"), 48, 60)
    keep = Page(*LETTER, kind="instructions")
    keep.own.put(steps(500, "en", "lato", 12), 50, 60)
    keep.own.put(receipt(300, "9200 1900 0000 0000 1234 5", "Everyday", SHOPS["us"], us[0], "en", "lato", bars=True), 50, 420)
    keep.own.codes = []
    build("j12-none", 2, "skia", [gift, drop, terms, advert, fr_slip, keep, Page(*LETTER, kind="blank")])


if __name__ == "__main__":
    j12()
