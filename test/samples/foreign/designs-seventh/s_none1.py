"""Pages without a label, first lot."""
import sys

from s_build import Page, Part, document
from s_ink import MM, Ink
from s_raw import Raw
from s_writers import Ghostscript, Pixels, Tex

A4 = (595.28, 841.89)


def customs():
    k = Ink()
    k.rect(40, 50, 515, 560, 1.4)
    k.text(50, 72, "Declaração para a alfândega", 15, "HB")
    k.text(545, 72, "exemplo, sem validade", 9, "HI", a="r")
    for y in (84, 170, 256, 282, 470, 520):
        k.line(40, y, 555, y, 0.8)
    k.line(297, 84, 297, 256, 0.8)
    k.text(46, 96, "1 Remetente", 7.5)
    k.lines(52, 114, ["Linha & Nó", "Rua Fictícia 70", "80010-000 Curitiba - PR", "Brasil"], 10.5, "H", 13)
    k.text(303, 96, "2 Destinatário", 7.5)
    k.lines(309, 114, ["Agnes Musterfeld", "Beispielgasse 4", "1090 Wien", "Áustria"], 10.5, "H", 13)
    k.text(46, 182, "3 Natureza", 7.5)
    for i, s in enumerate(["presente", "amostra", "venda", "devolução", "documentos"]):
        k.rect(52 + (i % 3) * 78, 192 + (i // 3) * 24, 10, 10, 0.8)
        k.text(66 + (i % 3) * 78, 201 + (i // 3) * 24, s, 8.5)
    k.text(128, 201, "X", 10, "HB", a="l")
    k.text(303, 182, "4 Número do objeto", 7.5)
    w, _ = k.code("code128", "PL604112209BZ", 318, 194, 0.375 * MM, 36)
    k.text(318 + w / 2, 244, "PL604112209BZ", 10, "C", a="m")
    for j, s in enumerate(["5 Descrição do conteúdo", "6 Qtd.", "7 Peso", "8 Valor", "9 Código", "10 Origem"]):
        k.text(46 + (0, 200, 260, 320, 385, 450)[j], 272, s, 7)
    for i, row in enumerate([("Manta de lã tecida à mão", "1", "0,820", "44,00", "6301 20", "BR"), ("Cartão", "2", "0,010", "2,00", "4909 00", "BR")]):
        for j, s in enumerate(row):
            k.text(46 + (0, 200, 260, 320, 385, 450)[j], 302 + 18 * i, s, 9.5)
    k.text(46, 490, "Declaro que os dados acima são verdadeiros.", 9)
    k.text(46, 560, "Data e assinatura do remetente", 8)
    return k


def manifest():
    k = Ink()
    k.text(40, 56, "Senarai serahan harian – hab S1", 17, "HB")
    k.text(40, 74, "Kedai Benang, 3 November, 3 bungkusan. Bukan label; contoh sahaja.", 9)
    k.code("code128", "MAN0311S1003", 380, 40, 0.375 * MM, 34)
    for i, (t, n, z) in enumerate([("OKB7730018842", "Petaling Jaya", "0.45"), ("OKB7730018859", "Keningau", "2.10"), ("OKB7730018866", "Singapore", "0.20")]):
        y = 120 + 90 * i
        k.line(40, y - 14, 555, y - 14, 0.5)
        k.text(40, y + 20, str(i + 1), 18, "HB")
        k.code("code128", t, 80, y, 0.25 * MM, 40)
        k.text(80, y + 54, t, 10, "C")
        k.text(330, y + 22, n, 11)
        k.text(540, y + 22, z + " kg", 11, a="r")
    k.line(40, 376, 555, 376, 0.5)
    k.text(40, 430, "Diterima oleh: ________________________   Masa: __________", 11)
    return k


def voucher():
    k = Ink()
    k.rect(14, 14, 392, 270, 2)
    k.rect(20, 20, 380, 258, 0.5)
    k.text(210, 64, "お買物券", 34, "J", a="m")
    k.text(210, 112, "500 円", 40, "J", a="m")
    k.text(210, 140, "木の実工房でお使いください 有効期限 12月31日", 10, "J", a="m")
    w, _ = k.code("code128", "KNM500000778", 0, 0, 0.375 * MM, 1)
    k.ops = [op for op in k.ops if not (op[0] == "rect" and op[4] == 1 and op[6])]
    k.code("code128", "KNM500000778", (420 - w) / 2, 170, 0.375 * MM, 50)
    k.text(210, 234, "KNM500000778", 11, "C", a="m")
    k.text(210, 258, "見本 — 送り状ではありません", 9, "J", a="m")
    return k


def pick():
    k = Ink()
    k.text(40, 60, "Lista kompletacji", 20, "TB")
    k.text(555, 60, "zmiana 1, 3 listopada", 10, "T", a="r")
    for i, (shelf, what, n) in enumerate([("A-04", "Notes szyty, len", 6), ("A-11", "Notes szyty, juta", 2), ("B-02", "Ołówki, komplet", 9), ("C-01", "Papier czerpany A5", 14), ("C-07", "Zakładka", 30)]):
        y = 100 + 34 * i
        k.rect(40, y, 14, 14, 0.8)
        k.text(70, y + 12, shelf, 13, "CB")
        k.text(140, y + 12, what, 12, "T")
        k.text(440, y + 12, str(n), 14, "TB", a="r")
        k.code("datamatrix", f"PICK:{shelf}:{n}", 500, y - 3, 1.2)
        k.line(40, y + 24, 555, y + 24, 0.3)
    k.text(40, 300, "Arkusz przykładowy, nie towarzyszy przesyłce.", 9, "TI")
    return k


def terms():
    k = Ink()
    k.text(60, 80, "Všeobecné podmínky (ukázka)", 18, "TB")
    row = "Zákazník bere na vědomí, že ručně vyráběné zboží se může mírně lišit od vyobrazení a že lhůta dodání je orientační."
    y = 110
    for i in range(1, 17):
        k.text(60, y, f"{i}.", 10, "TB")
        y = k.lines(80, y, [row[:62], row[62:]], 10, "T", 13) + 8
    return k


def slip():
    k = Ink()
    k.text(40, 70, "Lieferschein", 22, "HB")
    k.lines(40, 110, ["Frau", "Walpurga Musterle", "Beispielweg 12", "79100 Freiburg"], 11, "H", 14)
    k.lines(380, 110, ["Bestellung 2026-00418", "Kunde 55120", "Datum 3. November"], 10, "H", 14)
    for i, row in enumerate([("Pos.", "Artikel", "Menge"), ("1", "Filzhut, moosgrün, 57", "1"), ("2", "Wollseife", "2"), ("3", "Versand", "1")]):
        for j, s in enumerate(row):
            k.text((40, 80, 540)[j], 220 + 22 * i, s, 10.5, "H" if i else "HB", a="r" if j == 2 else "l")
        k.line(40, 226 + 22 * i, 555, 226 + 22 * i, 0.4)
    k.code("code128", "2026-00418", 380, 152, 0.25 * MM, 26)
    k.text(40, 360, "Muster. Vielen Dank für Ihre Bestellung!", 10)
    return k


def advert():
    k = Ink()
    k.rect(0, 0, 595.28, 300, fill=True, g=0.15)
    k.text(297, 150, "ЗИМНІЙ ЯРМАРОК", 50, "DB", a="m", g=1)
    k.text(297, 200, "7–9 грудня, площа Прикладна, 1", 22, "D", a="m", g=1)
    k.lines(60, 360, ["Кераміка, вовна, дерево. Вхід вільний.", "Покажіть цей код біля каси й отримайте подарунок:"], 15, "D", 24)
    k.code("qr", "https://yarmarok.example/zyma", 220, 430, 5)
    k.text(297, 640, "Зразок рекламного аркуша", 10, "D", a="m")
    return k


def till():
    """A parcel shop's receipt, 80 mm wide."""
    k = Ink()
    rows = ["EDICOLA CAMPIONE", "via del Modello 2 Bologna", "", "Ricevuta di consegna pacco", "03/11  17:42   op. 3", "", "1 x pacco vurtelo", "codice cliente 77120", "peso dichiarato 0,84", "", "Conservare fino all'arrivo.", "ESEMPIO - non e' un'etichetta"]
    k.lines(12, 24, rows, 9, "C", 12)
    k.code("code128", "RC0311174203", 22, 180, 0.375 * MM, 34)
    k.text(110, 228, "RC0311174203", 9, "C", a="m")
    return k


def email():
    k = Ink()
    k.text(40, 30, "03/11/26 18:02", 7.5)
    k.text(300, 30, "Webmail – Su paquete está en camino", 7.5, a="m")
    k.text(40, 70, "Su paquete está en camino", 17, "HB")
    k.lines(40, 92, ["De: avisos@sottamel.example", "Para: refugio@correo.example"], 9, "H", 13)
    k.line(40, 112, 570, 112, 0.5)
    k.lines(40, 140, ["Hola Refugio:", "", "Telar Cenzontle entregó su paquete el 3 de noviembre. Número: STM9917004410.", "Lo llevaremos a:", "", "   Refugio Xicoténcatl", "   Privada Modelo 17, int. 3", "   76090 Querétaro, Qro.", "", "Siga su paquete en sottamel.example o muestre este código en la sucursal:"], 10.5, "H", 15)
    k.code("aztec", "STM9917004410", 60, 310, 4)
    k.text(40, 440, "Mensaje de ejemplo. No es una guía.", 9, "HI")
    k.text(570, 770, "https://webmail.example/msg/118   1/1", 7.5, a="r")
    return k


def one(kind, w, h, make, role="other"):
    return Page(kind, w, h, [Part(role, make)])


def s13(folder):
    document(folder, "s13-none-1", "hand-written", lambda: Raw(words="embedded", forms=True), [one("customs", *A4, customs), one("advert", *A4, advert), one("blank", *A4, Ink), one("other", 612, 792, email)])
    document(folder, "s13-none-2", "ghostscript", Ghostscript, [one("other", *A4, manifest), one("packing-slip", *A4, slip, "slip"), one("other", 80 * MM, 245, till)])
    document(folder, "s13-none-3", "xetex", lambda: Tex("xelatex"), [one("pick-list", *A4, pick), one("other", *A4, terms)])
    document(folder, "s13-none-4", "img2pdf", lambda: Pixels(203, "1"), [one("other", 419.53, 297.64, voucher)])


if __name__ == "__main__":
    s13(sys.argv[1])
