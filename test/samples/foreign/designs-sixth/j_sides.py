"""What stands beside labels: steps, slips, receipts, terms. Nothing of it is a label."""

from j_art import MM, Art

GOODS = {
    "en": [("Stoneware mug, speckled", "MUG-014", "24.00"), ("Linen tea towel, indigo", "TOW-203", "18.50"), ("Beeswax candle, pair", "CAN-07", "12.00"),
           ("Letterpress card set of 6", "CRD-61", "15.00"), ("Walnut spoon rest", "SPN-9", "21.75")],
    "de": [("Filzuntersetzer, 4 Stück", "FU-104", "16,90"), ("Bienenwachskerze 12 cm", "BK-12", "9,50"), ("Knopfset Horn, 24 mm", "KH-24", "7,80"), ("Leinenschürze natur", "LS-1", "42,00")],
    "fr": [("Photophore verre soufflé", "PH-22", "28,00"), ("Carafe ambrée 75 cl", "CA-75", "46,50"), ("Perles filées, lot de 12", "PF-12", "14,00")],
    "nl": [("Linnen servet, set van 4", "LS-04", "31,95"), ("Aardewerk schaal 22 cm", "AS-22", "27,50"), ("Wenskaart letterpers", "WK-9", "3,95")],
}
HEAD = {
    "en": ["PACKING SLIP", "Order", "Item", "SKU", "Qty", "Ship to", "Thank you for buying from a small studio. SAMPLE PAGE."],
    "de": ["LIEFERSCHEIN", "Bestellung", "Artikel", "Art.-Nr.", "Menge", "Lieferanschrift", "Vielen Dank für Ihren Einkauf. MUSTERSEITE."],
    "fr": ["BON DE LIVRAISON", "Commande", "Article", "Réf.", "Qté", "Adresse de livraison", "Merci de votre achat. PAGE SPÉCIMEN."],
    "nl": ["PAKBON", "Bestelling", "Artikel", "Art.nr.", "Aantal", "Afleveradres", "Bedankt voor je bestelling. VOORBEELDPAGINA."],
}


def slip(w, shop, to, lang="en", order="10492", n=3, font="sans", ruled=True):
    """A packing slip `w` pt wide; as high as its lines."""
    title, number, item, sku, qty, ship, thanks = HEAD[lang]
    a = Art(w, 0)
    a.text(0, 18, title, font + "b", 17)
    a.text(w, 12, f"{number} {order}", font, 9, "r")
    a.text(w, 23, "03.06.20XX" if lang != "en" else "June 3, 20XX", font, 8, "r")
    a.lines(0, 38, shop[:3], font, 7.6, 9.4)
    a.text(w / 2, 38, ship + ":", font + "b", 7.6)
    y = max(a.lines(w / 2, 48, to, font, 8.4, 10.4), 72) + 8
    if ruled:
        a.rect(0, y, w, 13, "#e4e4e4")
    for x, words in ((4, item), (w * 0.66, sku), (w - 4, qty)):
        a.text(x, y + 9.4, words, font + "b", 7.8, "r" if words == qty else "l")
    y += 13
    for i, (name, code, _price) in enumerate((GOODS[lang] * 3)[:n]):
        y += 15
        a.text(4, y - 4, name, font, 8.4, fit=w * 0.62)
        a.text(w * 0.66, y - 4, code, font, 8.4)
        a.text(w - 4, y - 4, str(1 + i % 3), font, 8.4, "r")
        if ruled:
            a.line(0, y, w, y, 0.4, "#888888")
    a.text(0, y + 18, thanks, font, 7.8)
    a.h = y + 24
    return a


STEPS = {
    "en": ["How to use this page", "Print this page on plain paper at actual size. Do not scale.", "Cut out or fold along the line so that the label shows.",
           "Tape the label flat on the largest side; keep tape off the bars.", "Hand the parcel over by the date on the label. A copy of a label is not allowed.",
           "This is a sample page made for tests. Nothing on it can be used for carriage."],
    "de": ["So verwenden Sie diese Seite", "Drucken Sie die Seite in Originalgröße (100 %) auf weißes Papier.", "Schneiden Sie das Versandetikett aus oder falten Sie das Blatt an der Linie.",
           "Kleben Sie es glatt auf die größte Seite; Strichcodes nicht überkleben.", "Entfernen Sie alte Etiketten. Abgabe in jeder Filiale oder beim Zusteller.",
           "Dies ist eine Musterseite für Tests. Kein Teil davon gilt als Versandschein."],
    "fr": ["Comment utiliser cette page", "Imprimez cette page en taille réelle, sans mise à l'échelle.", "Découpez l'étiquette suivant le trait ou pliez la feuille en deux.",
           "Collez-la à plat sur la plus grande face, sans ruban sur les codes.", "Déposez le colis dans un point de retrait avant la date limite.",
           "Page d'essai : rien sur cette page n'est valable pour un envoi."],
    "nl": ["Zo gebruik je deze pagina", "Print deze pagina op ware grootte (100 %).", "Knip het verzendlabel uit of vouw het vel dubbel.",
           "Plak het label vlak op de grootste kant en niet over de rand.", "Lever het pakket in bij een servicepunt en bewaar het ontvangstbewijs.",
           "Dit is een voorbeeldpagina. Niets hierop is geldig voor verzending."],
}


def steps(w, lang="en", font="sans", size=8.6, numbered=True):
    a = Art(w, 0)
    title, *each = STEPS[lang]
    a.text(0, size * 1.4, title, font + "b", size * 1.5)
    y = size * 3.4
    for i, words in enumerate(each):
        if numbered:
            a.text(0, y, f"{i + 1}.", font, size)
        y = a.para(size * 1.6 if numbered else 0, y, w - size * 1.8, words, font, size) + size * 0.35
    a.h = y
    return a


RECEIPT = {
    "en": ["Customer receipt - keep for your records", "Service", "Tracking", "Paid", "Ship date", "To", "From"],
    "de": ["Einlieferungsbeleg - bitte aufbewahren", "Produkt", "Sendungsnr.", "Bezahlt", "Datum", "An", "Von"],
    "fr": ["Preuve de dépôt - à conserver", "Service", "N° de suivi", "Payé", "Date", "Pour", "De"],
    "nl": ["Verzendbewijs - bewaar dit", "Dienst", "Barcode", "Betaald", "Datum", "Aan", "Van"],
}


def receipt(w, number, service, shop, to, lang="en", font="sans", paid="8.74", bars=False):
    title, *names = RECEIPT[lang]
    a = Art(w, 0)
    a.text(0, 12, title, font + "b", 11)
    values = [service, number, paid, "03.06.20XX", ", ".join(to), ", ".join(shop[:3])]
    y = 28
    for name, value in zip(names, values):
        a.text(0, y, name, font, 8)
        a.text(70, y, value, font, 8, fit=w - 74)
        y += 12
    if bars:
        a.bars("CODE128", number.replace(" ", ""), 0, y, 30, 2)
        y += 40
    a.codes = []
    a.h = y
    return a


def scissors(a, x1, x2, y, words="", dash="4,3"):
    a.line(x1, y, x2, y, 0.7, "#000000", dash)
    a.circle(x1 + 8, y - 3, 2.2, "-", "#000000", 0.8)
    a.circle(x1 + 8, y + 3, 2.2, "-", "#000000", 0.8)
    a.line(x1 + 10, y - 2, x1 + 19, y + 2, 0.8)
    a.line(x1 + 10, y + 2, x1 + 19, y - 2, 0.8)
    if words:
        a.text((x1 + x2) / 2, y - 4, words, "sans", 7, "c")
