"""What lies beside and between the labels of the first lot."""
from s_ink import MM, Ink


def cover():
    k = Ink()
    k.text(50, 70, "Bizzuco – documenti del lotto 118", 20, "HB")
    k.text(50, 92, "Stampato il 3 novembre, 2 ordini, 5 pagine. Conservare con le ricevute.", 10)
    for i, row in enumerate([("Pagina", "Ordine", "Cliente", "Cosa"), ("2", "BZ-77120", "O. Ferrandini", "etichetta"), ("3", "BZ-77120", "O. Ferrandini", "fattura"), ("4", "BZ-77124", "U. Passerotti", "etichetta"), ("5", "BZ-77124", "U. Passerotti", "fattura")]):
        for j, cell in enumerate(row):
            k.text(50 + (0, 60, 160, 320)[j], 140 + 20 * i, cell, 10, "H" if i else "HB")
        k.line(50, 145 + 20 * i, 540, 145 + 20 * i, 0.4)
    k.text(50, 290, "Questo foglio è un esempio e non accompagna alcuna spedizione.", 9, "HI")
    return k


def leaflet(x, y):
    k = Ink()
    k.text(x, y, "Che cosa fare", 14, "TB")
    rows = ["1. Ritagliare l'etichetta a sinistra.", "2. Incollarla sul lato più grande.", "3. Non coprire il codice.", "4. Portare il pacco al punto di ritiro", "    entro le ore 18.", "", "Il punto più vicino: Edicola Campione,", "via del Modello 2, Bologna.", "", "Pagine come questa sono un esempio."]
    k.lines(x, y + 22, rows, 10, "T", 14)
    return k


def advert(x, y, i):
    k = Ink()
    k.rect(x, y, 540, 190, 1.5)
    k.rect(x + 380, y + 14, 140, 160, fill=True, g=0.8)
    k.text(x + 450, y + 108, "-15%", 44, "LB", a="m")
    k.text(x + 20, y + 50, ("Nuovi timbri d'autunno", "Carta a mano, solo a novembre")[i], 22, "LB")
    k.lines(x + 20, y + 80, ["Scopri le botteghe di Bizzuco e scrivi il codice LUMACA15", "nel carrello. Valido fino al 30 novembre su tutti i prodotti.", "", "Non è un'etichetta: foglio pubblicitario di esempio."], 11, "L", 16)
    return k


def bill(who, i):
    k = Ink()
    k.text(50, 80, "FATTURA", 24, "TB")
    k.text(545, 80, f"n. 2026/{311 + i}", 12, "T", a="r")
    k.lines(50, 120, ["Bottega Lumaca", "via dell'Esempio 14", "40121 Bologna BO", "P. IVA 00000000000"], 10, "T", 13)
    k.lines(340, 120, ["Spett.le", who, "(indirizzo come da ordine)"], 11, "T", 14)
    y = 220
    for row in [("Descrizione", "Q.tà", "Prezzo", "Totale"), ("Taccuino cucito a mano", "2", "14,00", "28,00"), ("Timbro foglia", "1", "9,50", "9,50"), ("Spedizione", "1", "5,90", "5,90"), ("Totale IVA inclusa", "", "", "43,40")]:
        for j, cell in enumerate(row):
            k.text((50, 380, 460, 545)[j], y, cell, 11, "TB" if y == 220 else "T", a="r" if j else "l")
        k.line(50, y + 6, 545, y + 6, 0.5)
        y += 24
    k.code("code39", f"2026{311 + i}", 50, 420, 0.3 * MM, 34)
    k.text(50, 466, f"2026{311 + i}", 9, "C")
    k.text(50, 780, "Documento di esempio, senza valore fiscale né di trasporto.", 8, "TI")
    return k


def cuts():
    k = Ink()
    k.line(297.6, 0, 297.6, 841, 0.5, 0.5, (4, 4))
    k.line(0, 421, 595, 421, 0.5, 0.5, (4, 4))
    return k


def scissors():
    k = Ink()
    k.text(370, 60, "Jak nadać paczkę", 15, "TB")
    k.lines(370, 84, ["Wytnij etykietę wzdłuż linii i naklej ją na", "największy bok paczki. Kod kreskowy", "musi pozostać płaski i niezasłonięty.", "", "Paczkę oddaj w punkcie albo zamów", "kuriera do godziny 13:00.", "", "Pomoc: 555-0105, drauvik.example"], 10.5, "T", 15)
    k.line(40, 500, 555, 500, 0.6)
    k.text(40, 524, "Warunki (skrót)", 11, "TB")
    row = "Nadawca odpowiada za opakowanie. Przesyłki nie mogą zawierać rzeczy zakazanych. Reklamację składa się w ciągu 7 dni."
    k.lines(40, 542, [f"{i + 1}. {row}" for i in range(8)], 8.5, "T", 12.5)
    return k


def slip_my(o, i):
    k = Ink()
    k.text(322, 40, "Senarai bungkusan", 15, "HB")
    k.text(322, 56, "Kedai Benang · pesanan " + o["goods"][1][8:], 8.5)
    y = 84
    for n, row in enumerate([("Barang", "Bil", "RM"), ("Beg kain bercorak", "2", "36.00"), ("Tali anyam", "3", "12.00"), ("Kad terima kasih", "1", "0.00")][: 3 + i % 2]):
        k.text(322, y, row[0], 9, "HB" if n == 0 else "H")
        k.text(520, y, row[1], 9, a="r")
        k.text(575, y, row[2], 9, a="r")
        k.line(322, y + 5, 575, y + 5, 0.3)
        y += 19
    k.lines(322, y + 24, ["Terima kasih kerana membeli daripada kedai kecil kami.", "Slip ini contoh sahaja."], 8.5, "HI", 12)
    return k


def receipt(o, i):
    k = Ink()
    k.line(40, 340, 555, 340, 0.8, dash=(6, 4))
    k.text(60, 380, "Reçu de dépôt – à conserver par l'expéditeur", 15, "TB")
    k.lines(60, 404, [f"Reçu n° 4471-{i}", "Déposé au guichet : Essai Plateau", "Somme perçue : 4 250 F", "Ce reçu est un exemple et ne peut servir au transport."], 11, "T", 16)
    k.rect(380, 400, 130, 80, 1.2, g=0.3)
    k.text(445, 436, "GUICHET 4", 15, "HB", a="m", g=0.3)
    k.text(445, 456, "03 NOV", 13, "HB", a="m", g=0.3)
    k.lines(60, 540, ["Conditions : le transporteur ne répond pas des retards dus à la force majeure.", "Les réclamations sont reçues pendant trente jours sur présentation de ce reçu."], 9, "T", 13)
    k.text(60, 640, "Signature : ..............................................", 11, "T")
    return k


def how_to_mx(i):
    k = Ink()
    k.text(40, 60, "Muxarelle: su guía de envío está lista", 18, "HB")
    rows = ["Hola Telar Cenzontle, esta es la página que debe imprimir. Recorte la guía", "de abajo a la derecha y péguela en la caja. No la doble.", "", f"Pedido MUX-223{1 + i} · pagado el 2 de noviembre"]
    k.lines(40, 90, rows, 11, "H", 15)
    for j, s in enumerate(["Imprima en blanco y negro.", "Pese su paquete otra vez.", "Cierre con cinta ancha.", "Entregue antes del 5 de noviembre."]):
        k.rect(40, 345 + 60 * j, 24, 24, 1)
        k.text(52, 362 + 60 * j, str(j + 1), 14, "HB", a="m")
        k.text(74, 361 + 60 * j, s, 10.5)
    k.text(40, 640, "Dudas: ayuda@muxarelle.example", 9)
    return k


def drop_sheet():
    k = Ink()
    k.text(297, 110, "Şubeye bırakma sayfası", 26, "DB", a="m")
    k.text(297, 140, "Etiket yazdırmanıza gerek yok: kodu görevliye gösterin.", 12, "D", a="m")
    k.code("qr", "https://rhezzane.example/b/77120-4418-QQ", 215, 190, 5)
    k.text(297, 390, "77120-4418", 22, "CB", a="m")
    k.rect(80, 430, 435, 150, 0.8)
    k.lines(96, 456, ["1. Paketi kapatın, üstüne adres yazmayın.", "2. En yakın şubeye gidin: Misal Kırtasiye, Örnek Cad. 3.", "3. Görevli kodu okutup etiketi yapıştırır.", "4. Fişi saklayın.", "", "Bu sayfa örnektir, gönderi etiketi değildir."], 12, "D", 19)
    return k


def fold_jp(i):
    k = Ink()
    k.line(20, 452, 575, 452, 0.6, dash=(3, 3))
    k.text(297, 448, "折り線", 8, "J", a="m")
    k.text(60, 500, "発送のしかた", 18, "J")
    k.lines(60, 530, ["一、この線で折り、上の送り状を箱に貼ってください。", "二、コードの上にテープを貼らないでください。", "三、取扱店の窓口へお持ちください。", "", "この用紙は見本です。お問い合わせ 555-0172"], 12, "J", 20)
    k.rect(60, 660, 475, 110, 0.6)
    k.text(72, 682, "控え (お客様用)", 11, "J")
    k.text(72, 706, ("480112993301", "480112993312")[i], 13, "C")
    k.text(72, 730, "受付日   年   月   日", 11, "J")
    return k
