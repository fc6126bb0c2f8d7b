"""The first lot: python3 s_lot1.py FOLDER [NAME …]"""
import sys

from s_build import Page, Part, document, paper
from s_groff import Groff
from s_ink import MM, Ink
from s_labels1 import dotted, japan, mexa, ouest, pazra, quarter, sorted_hub, swahili, turk, vurtelo
from s_papers1 import advert, bill, cover, cuts, drop_sheet, fold_jp, leaflet, receipt, slip_my, scissors
from s_raw import Raw
from s_writers import Ghostscript, Pixels, Tex

A4 = (595.28, 841.89)
LETTER = (612, 792)


def put(make, content, x, y, turn=0, w=0, h=0):
    def draw():
        inner = make(content)
        out = Ink().sub(inner, x, y, turn, w, h)
        out.codes += inner.codes
        return out

    return draw


def lay(make, *args):
    return Part("other", lambda: make(*args))


IT = [
    {
        "class": "R", "from": ["Bottega Lumaca – via dell'Esempio 14", "40121 Bologna BO", "Tel. 555-0117"],
        "to": ["Ottavia Ferrandini", "Piazza Campione 3, scala B int. 12", "presso Studio Tralcio", "10123 Torino TO"],
        "sort": "TO-2 14", "facts": ["Colli 1 / 1", "Peso 0,84 kg", "Data 03/11", "Zona 2 NORD"], "track": "VU4410093827", "ref": "Rif. ordine BZ-77120",
    },
    {
        "class": "E", "from": ["Bottega Lumaca – via dell'Esempio 14", "40121 Bologna BO"],
        "to": ["Ugo Passerotti", "Località Modello Alto 118", "90013 Castelbuono PA"],
        "sort": "PA-9 03", "facts": ["Colli 1 / 2", "Peso 4,20 kg", "Data 03/11"], "track": "VU4410093835", "ref": "Rif. ordine BZ-77124",
    },
]


def s01(folder):
    pages = [Page("other", *A4, [lay(cover)])]
    for i, o in enumerate(IT):
        pages.append(Page("label", *A4, [Part("label", put(vurtelo, o, 28, 30), "ink"), lay(leaflet, 345, 40), lay(advert, 28, 500, i)]))
        pages.append(Page("invoice", *A4, [lay(bill, o["to"][0], i)]))
    document(folder, "s01-merged-market-1", "hand-written", lambda: Raw(forms=True), pages)


PE = [
    {
        "rows": ["REMITE : TALLER PURUMAYO / JR. EJEMPLO 441", "         AREQUIPA  FONO 555-0122", "", "DESTINO: EULALIA HUAMANCHUMO", "         AV. MODELO 1290 DPTO 302", "         TRUJILLO - LA LIBERTAD", "         FONO 555-0180", "", "BULTOS 01/01  PESO 1.250  CREDITO"],
        "sort": "TRU  07  B", "track": "KLM000482217", "foot": "AG. 114   OPER. RQ   03-11   14:22",
    },
    {
        "rows": ["REMITE : TALLER PURUMAYO / JR. EJEMPLO 441", "         AREQUIPA  FONO 555-0122", "", "DESTINO: WILMER CCOPA", "         CASERIO MUESTRA S/N KM 14", "         CALCA - CUSCO", "", "BULTOS 01/03  PESO 12.800 CONTADO"],
        "sort": "CUZ  31  A", "track": "KLM000482225", "foot": "AG. 114   OPER. RQ   03-11   14:25",
    },
    {
        "rows": ["REMITE : TALLER PURUMAYO / JR. EJEMPLO 441", "         AREQUIPA", "", "DESTINO: BOTICA LAS TRES FUENTES EIRL", "         AT. SRA. MILAGROS ZEVALLOS", "         CALLE PRUEBA 77 INT. 4", "         TACNA - TACNA", "         FONO 555-0151", "BULTOS 02/03  PESO 9.100  CONTADO"],
        "sort": "TCQ  02  C", "track": "KLM000482233", "foot": "AG. 114   OPER. RQ   03-11   14:31",
    },
]


def s02(folder):
    size = (100 * MM, 150 * MM)
    for i, named in ((1, True), (2, False)):
        some = PE[:2] if i == 1 else PE[2:]
        document(folder, f"s02-pin-printer-{i}", "hand-written", lambda: Raw(words="dots", named=named), [Page("label", *size, [Part("label", put(dotted, o, 0, 0), "page")]) for o in some])


def br(i):
    people = [
        ["Jussara Tamandaré Filha", "Rua do Exemplo, 1180 - Casa 2", "Vila Modelo", "Ribeirão Preto - SP"],
        ["Caetano B. Quitério", "Avenida Amostra, 45 apto 1203", "Boa Vista", "Recife - PE"],
        ["Ateliê Pássaro Cinza ME", "Travessa da Prova, 9", "Centro", "Ouro Preto - MG"],
        ["Zuleica Marçal", "Rodovia de Teste km 33, Sítio das Pedras", "Zona Rural - perto da escola", "Chapecó - SC"],
    ]
    ceps = ["14025310", "52030150", "35400000", "89801973"]
    nf = f"{4471 + i}"
    return {
        "weight": f"{310 + 85 * i} g", "nf": nf, "dm": f"{ceps[i % 4]}000009000051PLM{nf}99", "service": "Ulmo 3", "order": f"1-{88210 + i}", "vol": "1/1",
        "track": f"PL{60411120 + 7 * i}9BZ", "to": people[i % 4], "cep": ceps[i % 4], "from": ["Linha & Nó - Rua Fictícia 70", "80010-000 Curitiba - PR"],
    }


def s03(folder):
    pages = []
    for n, count in ((0, 4), (4, 3)):
        spots = [(18 + (i % 2) * 298, 22 + (i // 2) * 421) for i in range(count)]
        parts = [lay(cuts)] + [Part("label", put(quarter, br(n + i), x, y)) for i, (x, y) in enumerate(spots)]
        pages.append(Page("label", *A4, parts, rotate=90, offset=(100, 60), crop=24))
    document(folder, "s03-four-quarters-1", "hand-written", lambda: Raw(strips=12), pages)


PL = [
    {
        "from": ["Pracownia Zielny Wór", "ul. Przykładowa 5/2", "31-021 Kraków", "tel. 555-0105"], "sort": "W-41", "to": ["Bożena Świątkiewicz", "ul. Wzorcowa 118 m. 30", "02-776 Warszawa"],
        "boxes": [("Masa", "1,3 kg"), ("Pobranie", "0,00"), ("Data", "03.11"), ("Sztuka", "1 z 1")], "track": "00459007738211", "az": "DRV*W41*02776*00459007738211",
    },
    {
        "from": ["Pracownia Zielny Wór", "ul. Przykładowa 5/2", "31-021 Kraków"], "sort": "GD-7", "to": ["Łucja Żołądź-Wrzesińska", "Osada Próbna 2, leśniczówka", "83-400 Kościerzyna"],
        "boxes": [("Masa", "6,0 kg"), ("Pobranie", "149,90"), ("Data", "03.11"), ("Sztuka", "2 z 2")], "track": "00459007738229", "az": "DRV*GD7*83400*00459007738229",
    },
]


def s04(folder):
    pages = []
    for o in PL:
        def cut(o=o):
            k = Ink()
            inner = pazra(o)
            k.sub(inner, 62, 46, 90, 400, 270)
            k.codes += inner.codes
            k.rect(50, 34, 294, 424, 0.8, dash=(5, 3))
            return k

        pages.append(Page("label", *A4, [Part("label", cut, "cut", 270), lay(scissors)]))
    document(folder, "s04-cut-here-1", "xetex", lambda: Tex("xelatex"), pages)


JP = [
    {
        "zip": "600-8001", "to": ["京都府京都市下京区見本町一丁目", "三番地の五 サンプル荘二〇一"], "name": "柊木 綾女", "tel": "555-0143", "from": ["〒380-0901 長野県長野市例示町7-2", "木の実工房  555-0172"],
        "cells": [("個数", "1"), ("重さ", "2 kg"), ("指定日", "11/05"), ("時間帯", "午前")], "depot": "26-118", "qr": "YUM:6008001:26118:480112993301", "track": "480112993301",
    },
    {
        "zip": "900-0006", "to": ["沖縄県那覇市例町 4-18-2", "テストビル 9階 904号室"], "name": "金城商会 御中", "tel": "555-0190", "from": ["〒380-0901 長野県長野市例示町7-2", "木の実工房  555-0172"],
        "cells": [("個数", "3"), ("重さ", "9 kg"), ("指定日", "なし"), ("時間帯", "夜")], "depot": "47-902", "qr": "YUM:9000006:47902:480112993312", "track": "480112993312",
    },
]


def s05(folder):
    pages = [Page("label", *A4, [Part("label", put(japan, o, 150 if i else 26, 30)), lay(fold_jp, i)]) for i, o in enumerate(JP)]
    document(folder, "s05-whole-page-pixels-1", "img2pdf", lambda: Pixels(203, "1"), pages)


MY = [
    {
        "mode": "BX", "date": "03-11 09:14", "weight": "0.45 kg", "track": "OKB7730018842", "sort": "KUL-S14-B03", "short": "KS14B03", "to": ["Nur Aisyah binti Contoh", "No. 12, Jalan Teladan 4/9", "Taman Percubaan", "47301 Petaling Jaya, Selangor"],
        "from": ["Kedai Benang, 8 Lorong Misal, 10200 Pulau Pinang", "555-0164"], "cells": [("Kod laluan", "S14"), ("Hab", "B03"), ("Bil", "118"), ("Cod", "RM 0")], "qr": "OKB7730018842|KULS14B03", "goods": ["Barang: beg kain, 2 unit", "Pesanan 240511-77KX", "Pemulangan: ikut hab asal"],
    },
    {
        "mode": "ST", "date": "03-11 09:15", "weight": "2.10 kg", "track": "OKB7730018859", "sort": "BKI-E02-A1", "short": "BE02A1", "to": ["Jeremy Anak Uji", "Lot 5, Batu 3, Jalan Andaian,", "Kampung Contoh, sebelah surau lama", "89000 Keningau, Sabah"],
        "from": ["Kedai Benang, 8 Lorong Misal, 10200 Pulau Pinang", "555-0164"], "cells": [("Kod laluan", "E02"), ("Hab", "A1"), ("Bil", "119"), ("Cod", "RM 65")], "qr": "OKB7730018859|BKIE02A1", "goods": ["Barang: tikar, 1 unit; tali, 3 unit", "Pesanan 240511-78AA", "Jangan lipat"],
    },
    {
        "mode": "BX", "date": "03-11 09:17", "weight": "0.20 kg", "track": "OKB7730018866", "sort": "SIN-09", "short": "SIN09", "to": ["Tan Wei Example", "Blk 555 Sample Street 11 #04-01", "Singapore 555011"],
        "from": ["Kedai Benang, 8 Lorong Misal, 10200 Pulau Pinang", "555-0164"], "cells": [("Kod laluan", "09"), ("Hab", "S1"), ("Bil", "120"), ("Cod", "-")], "qr": "OKB7730018866|SIN09", "goods": ["Barang: kad ucapan", "Pesanan 240511-80QB"],
    },
]


def s07(folder):
    pages = [Page("label", 595.28, 419.53, [Part("label", put(sorted_hub, o, 10, 13)), Part("slip", lambda o=o, i=i: slip_my(o, i))]) for i, o in enumerate(MY)]
    document(folder, "s07-hub-and-slip-1", "ghostscript", Ghostscript, pages)


KE = [
    {"ref": "Agizo 5521-A", "to": ["Wanjiru Mfano", "Sanduku 555, Mtaa wa Jaribio", "Nyeri 10100"], "from": ["Duka la Ushanga", "Mombasa 80100"], "sort": "NYR 4", "track": "MZK55210093", "kg": "0.7 kg"},
    {"ref": "Agizo 5524-C", "to": ["Juma Kielelezo", "Plot 14, Barabara ya Sampuli", "Dodoma, Tanzania"], "from": ["Duka la Ushanga", "Mombasa 80100"], "sort": "TZ DOD", "track": "MZK55240117", "kg": "3 kg"},
    {"ref": "Agizo 5530-B", "to": ["Achieng' Mfano-Otieno", "Kisumu 40100"], "from": ["Duka la Ushanga", "Mombasa 80100"], "sort": "KSM 1", "track": "MZK55300124", "kg": "1.1 kg"},
]


def s09(folder):
    pages = [Page("label", 283.46, 212.6, [Part("label", put(swahili, o, 0, 0), "page")]) for o in KE]
    document(folder, "s09-small-paper-1", "groff", lambda: Groff(283.46, 212.6), pages)


SN = [
    {"from": ["Atelier Kora Bleue", "12, rue de l'Exemple", "Dakar", "Tél. 555-0128"], "to": ["M. Ousseynou Modèle", "Quartier Essai, lot 44", "Ziguinchor", "Tél. 555-0161"], "sort": "ZG 2", "cells": [("Poids", "3,400 kg"), ("Colis", "1/1"), ("Valeur", "18 000"), ("Date", "03/11")], "track": "HVT220914475", "class": "C"},
    {"from": ["Atelier Kora Bleue", "12, rue de l'Exemple", "Dakar", "Tél. 555-0128"], "to": ["Pharmacie de l'Essai", "à l'attention de Mme Seynabou", "BP 555", "Bamako, Mali"], "sort": "ML 1", "cells": [("Poids", "0,900 kg"), ("Colis", "1/2"), ("Valeur", "7 500"), ("Date", "03/11")], "track": "HVT220914483", "class": "A"},
    {"from": ["Atelier Kora Bleue", "12, rue de l'Exemple", "Dakar"], "to": ["Aïssatou Spécimen", "Villa 9, cité Témoin", "Thiès"], "sort": "TH 5", "cells": [("Poids", "1,200 kg"), ("Colis", "1/1"), ("Valeur", "-"), ("Date", "04/11")], "track": "HVT220914491", "class": "C"},
]


def s10(folder):
    pages = [Page("label", *A4, [Part("label", put(ouest, o, 105, 60)), lay(receipt, o, i)]) for i, o in enumerate(SN)]
    scan = lambda i: (150, (1.6, -2.4, 0.7)[i], paper(40 + i, noise=2.5, shade=22 * i, edge=0.012 if i == 1 else 0, folds=(0.5,) if i else ()), 30)
    document(folder, "s10-counter-scan-1", "scan-jpeg", lambda: Raw(words="outlines"), pages, scan)


MX = [
    {"type": "T3", "from": ["Telar Cenzontle, Calle Ejemplo 88, Col. Muestra", "68000 Oaxaca, Oax.  Tel. 555-0133"], "to": ["Refugio Xicoténcatl", "Privada Modelo 17, int. 3", "Col. Ensayo", "76090 Querétaro, Qro."], "sort": "QRO 76", "route": "R-12", "kg": "2.4 kg", "track": "STM9917004410", "ref": "MUX-2231", "goods": "rebozo, 1 pza"},
    {"type": "T1", "from": ["Telar Cenzontle, Calle Ejemplo 88, Col. Muestra", "68000 Oaxaca, Oax."], "to": ["Ing. Baltazar Prueba Olmos", "Carretera de Ejemplo km 7.5", "Rancho El Supuesto", "97930 Peto, Yucatán"], "sort": "MID 97", "route": "R-40", "kg": "0.8 kg", "track": "STM9917004428", "ref": "MUX-2232", "goods": "mantel"},
]


def s11(folder):
    from s_papers1 import how_to_mx

    pages = [Page("label", *LETTER, [Part("label", put(mexa, o, 290, 330, 90 * 0, 288, 420), "ink"), lay(how_to_mx, i)]) for i, o in enumerate(MX)]
    scan = lambda i: (200, (-1.3, 2.1)[i], paper(70 + i, noise=14, blur=0.5), "g4")
    document(folder, "s11-fax-look-1", "scan-g4", lambda: Raw(), pages, scan)


TR = [
    {"from": ["Keçe Evi, Örnek Sok. 4", "35210 İzmir", "555-0108"], "to": ["Gülşen Deneme", "Numune Mah. Misal Cad. No: 27 D: 8", "34710 Kadıköy / İstanbul"], "sort": "34-K2", "facts": ["Desi 3", "Parça 1/1", "Ödeme: gönderici", "03.11"], "track": "RZ88410023317", "pdf": "RZ88410023317;34710;GD;3"},
    {"from": ["Keçe Evi, Örnek Sok. 4", "35210 İzmir"], "to": ["Şükrü Örnekoğlu", "Deneme Köyü, okul yanı", "Merkez", "65100 Van"], "sort": "65-01", "facts": ["Desi 11", "Parça 2/2", "Ödeme: alıcı"], "track": "RZ88410023325", "pdf": "RZ88410023325;65100;SO;11"},
]


def s12(folder):
    pages = [Page("other", *A4, [lay(drop_sheet)])] + [Page("label", *A4, [Part("label", put(turk, o, 40 + 200 * i, 60))]) for i, o in enumerate(TR)]
    scan = lambda i: (150, (0, 1.1, -2.8)[i], paper(90 + i, noise=2, phone=True, tone=232, blur=0.8), 32)
    document(folder, "s12-phone-shade-1", "scan-shade", lambda: Raw(words="embedded"), pages, scan)


if __name__ == "__main__":
    wanted = sys.argv[2:]
    for key, make in list(globals().items()):
        if len(key) == 3 and key[0] == "s" and key[1:].isdigit() and (not wanted or key in wanted):
            make(sys.argv[1])
            print(key)
