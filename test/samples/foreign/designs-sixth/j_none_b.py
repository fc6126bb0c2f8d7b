"""Layout j22: more pages without a label, some on label paper."""

from j_art import MM, Art
from j_build import Page, build
from j_none_a import invoice, table
from j_sides import GOODS, receipt, slip, steps
from j_words import PEOPLE, SHOPS

LETTER, A4, A5, ROLL = (612, 792), (595.28, 841.89), (419.53, 595.28), (288, 432)


def bare(page):
    page.own.codes = []
    return page


def ticket():
    page = Page(*A5, kind="other")
    a = page.own
    a.box(24, 24, 372, 200, 2)
    a.text(40, 60, "CRAFT FAIR - ADMIT ONE", "sansb", 20)
    a.lines(40, 84, ["Sample ticket, no entry", "Example Hall, 5 Placeholder Ave, Madison WI 53703", "June 14, 20XX  10:00   Row 4 Seat 12"], "sans", 10, 14)
    a.bars("CODE128", "TCK0000551207", 40, 140, 50, 2)
    a.text(40, 204, "TCK 0000 551207", "sans", 9)
    return bare(page)


def form():
    """A return form to put into the parcel: reasons to tick, the order's bars, the shop's address; no label."""
    page = Page(*LETTER, kind="other")
    a = page.own
    a.text(48, 60, "RETURN FORM - put inside the parcel", "sansb", 16)
    a.text(48, 78, "This is no shipping label. Sample.", "sans", 9)
    a.bars("CODE128", "RMA20418", 420, 44, 36, 2)
    a.text(420, 92, "RMA 2-0418", "sans", 9)
    a.lines(48, 110, ["Customer", *PEOPLE["us"][4]], "sans", 9, 12)
    a.lines(320, 130, ["Send back to", *SHOPS["us"][:3]], "sans", 9, 12)
    y = table(a, 48, 200, [250, 90, 60, 110], [["Item", "SKU", "Qty", "Reason code"]] + [[n, c, "1", "____"] for n, c, _ in GOODS["en"]], right=(2,))
    for i, words in enumerate(("1 wrong size", "2 damaged", "3 not as shown", "4 changed my mind", "5 arrived late")):
        a.box(48 + i * 104, y + 24, 9, 9, 0.7)
        a.text(62 + i * 104, y + 32, words, "sans", 8.6)
    return bare(page)


def counter(lang, shop, to, number):
    """A counter's receipt on label paper: number with bars, addresses, paid; keep it."""
    page = Page(*ROLL, kind="other")
    page.own.put(receipt(256, number, "Paket bis 2 kg" if lang == "de" else "Parcel", shop, to, lang, "sans", "5,49 EUR", True), 16, 20)
    page.own.text(16, 250, "Beleg - kein Versandetikett. Muster." if lang == "de" else "Receipt - not a label. Sample.", "sansb", 9)
    page.own.lines(16, 270, ["Filiale 0000", "03.06.20XX 16:42", "Bon 4471  Kasse 2"], "sans", 9, 12)
    return bare(page)


def missed():
    """A card for a parcel that could not be delivered."""
    page = Page(297.64, 419.53, "other")
    a = page.own
    a.rect(0, 0, 298, 44, "#000000")
    a.text(16, 29, "Sorry we missed you", "sansb", 18, color="#ffffff")
    a.lines(16, 70, ["Eastgate - sample card", "Name: Mr C Aldridge", "Flat 2b, 16 Sample Terrace", "NORWICH NR1 9ZZ"], "sans", 10, 14)
    for i, words in enumerate(("left with neighbour at no. 18", "in your safe place", "at the parcel shop, bring this card")):
        a.box(16, 140 + i * 24, 11, 11, 0.8)
        a.text(34, 149 + i * 24, words, "sans", 10)
    a.bars("CODE128", "CARD000551207", 149, 230, 44, 2, "c")
    a.text(149, 290, "CARD 000551207", "sans", 9, "c")
    return bare(page)


def j22():
    us, de, fr, gb, ch = (PEOPLE[each] for each in ("us", "de", "fr", "gb", "ch"))
    slip_on_roll = Page(*ROLL, kind="packing-slip").with_slip(slip(256, SHOPS["us"], us[5], "en", "10533", 5, "sans"), 16, 14)
    gift = Page(*ROLL, kind="other")
    gift.own.text(144, 90, "A gift for you", "serifb", 24, "c")
    gift.own.para(40, 130, 208, "Happy birthday, Noor! We hope the blue mug finds a good shelf. Love from all of us at the lake. (sample message)", "serif", 12)
    bin_ = Page(*ROLL, kind="other")
    a = bin_.own
    a.box(10, 10, 268, 412, 1.5)
    a.text(144, 80, "BIN A-14", "sansb", 50, "c")
    a.text(144, 120, "Stoneware mug, speckled", "sans", 16, "c")
    a.bars("CODE128", "MUG-014", 144, 160, 90, 3, "c")
    a.text(144, 270, "MUG-014", "sansb", 20, "c")
    a.text(144, 400, "shelf tag - not for carriage - sample", "sans", 9, "c")
    drop = Page(*ROLL, kind="instructions")
    a = drop.own
    a.text(144, 40, "No label? No printer?", "sansb", 18, "c")
    a.text(144, 60, "Show this code at the counter (sample)", "sans", 10, "c")
    a.matrix("QRCODE", "https://lighthouse.example/drop/SAMPLE-551207", 62, 84, 11)
    a.text(144, 290, "DROP 551 207", "sansb", 20, "c")
    a.lines(30, 320, ["1. Pack and close the box.", "2. Show the code.", "3. The clerk prints the label."], "sans", 10, 15)
    build("j22-none", 1, "pdf-lib", [slip_on_roll, gift, bare(bin_), bare(drop), counter("de", SHOPS["de"], de[0], "342123456780"), counter("en", SHOPS["gb"], gb[0], "DM 0000 2093 3GB"), missed(), ticket()])

    trade = invoice(*A4, "fr", SHOPS["fr"], ch[1] + ["SUISSE"], ["FACTURE COMMERCIALE (spécimen)", "N° FC-118", "03/06/20XX", "Incoterm DAP", "Désignation", "SH", "Qté", "EUR", "Origine FR", "Poids net 0,94 kg", "TOTAL 88,50 EUR"], "LX000123455FR", "sans")
    pick = Page(*A5, kind="pick-list")
    pick.own.text(30, 46, "Pickliste 03.06.20XX (Muster)", "sansb", 14)
    table(pick.own, 30, 60, [50, 190, 70, 40], [["Fach", "Artikel", "Art.-Nr.", "Anz."]] + [[f"B-{i}", n, c, "2"] for i, (n, c, _) in enumerate(GOODS["de"] * 4)], right=(3,))
    pickup = Page(*LETTER, kind="other")
    a = pickup.own
    a.text(48, 60, "Pickup confirmed - sample", "sansb", 18)
    a.lines(48, 90, ["Confirmation WTC 000 551 207", "Tuesday, June 9, 20XX, between 9 am and 5 pm", "Where: side door", "", "Pickup address", *SHOPS["us"][:3]], "sans", 11, 15)
    table(a, 48, 240, [200, 80], [["Service", "Parcels"], ["Everyday", "11"], ["Two Day", "3"], ["Returns", "1"]], right=(1,))
    how = Page(*A4, kind="instructions")
    how.own.put(steps(480, "de", "sans", 11), 56, 70)
    how.own.put(steps(480, "fr", "sans", 11), 56, 300)
    promo = Page(*ROLL, kind="advert")
    promo.own.rect(0, 0, 288, 432, "#f2e3c9")
    promo.own.text(144, 180, "Open studio", "serifb", 34, "c")
    promo.own.lines(144, 220, ["June 20, 10 to 4", "1420 Example Mill Rd, Unit 6", "a sample card"], "serif", 13, 18, "c")
    slip_de = Page(*A5, kind="packing-slip").with_slip(slip(350, SHOPS["de2"], de[4], "de", "2041-8", 4, "sans"), 34, 40)
    build("j22-none", 2, "gofpdf", [bare(trade), form(), pick, pickup, how, promo, slip_de, Page(*ROLL, kind="blank")])

    sheet = Page(*LETTER, kind="other")
    a = sheet.own
    a.text(40, 50, "Stock count, sample sheet", "sansb", 15)
    for i, (n, c, _) in enumerate(GOODS["en"]):
        a.text(40, 96 + i * 62, n, "sans", 10)
        a.bars("CODE128", c, 300, 76 + i * 62, 30, 2)
        a.text(300, 116 + i * 62, c, "sans", 8)
        a.line(480, 100 + i * 62, 560, 100 + i * 62, 0.6)
    thanks = Page(*LETTER, kind="other")
    a = thanks.own
    a.text(48, 70, "Order confirmed - sample", "sansb", 18)
    a.lines(48, 100, ["Order TP-5601", "We ship within two days. You will get a message with the number then.", "", "Ship to", *us[0]], "sans", 10, 14)
    table(a, 48, 220, [300, 100], [["Item", "USD"]] + [[n, p] for n, _c, p in GOODS["en"]], right=(1,))
    build("j22-none", 3, "pdfmake", [bare(sheet), thanks])


if __name__ == "__main__":
    j22()
