"""Pages without a label, second lot."""
import sys

from s_build import Page, Part, document, paper
from s_html import html_document, svg
from s_ink import MM, Ink
from s_none1 import one
from s_office import Office
from s_raw import Raw
from s_writers import Ghostscript, Pixels

A4 = (595.28, 841.89)
LETTER = (612, 792)


def thanks():
    """A card on label paper."""
    k = Ink()
    k.text(144, 90, "thank you!", 42, "TI", a="m")
    k.lines(144, 130, ["Two Larks Pottery is two people", "and a very old kiln in Reno."], 12, "T", 17, a="m")
    k.code("qr", "https://twolarks.example/care", 87, 180, 4)
    k.text(144, 320, "scan for care and repair", 11, "T", a="m")
    k.text(144, 400, "This card is a sample and no label.", 8, "T", a="m")
    return k


def small_slip():
    k = Ink()
    k.text(16, 36, "PACKING SLIP", 18, "NB")
    k.text(272, 36, "44-118340", 12, "NB", a="r")
    k.line(16, 44, 272, 44, 2)
    k.lines(16, 62, ["Ship to", "Bea Q. Mockford", "PO Box 555", "Taos NM 87571"], 10, "N", 13)
    for i, (q, s) in enumerate([("2", "Mug, speckled"), ("1", "Butter dish, lid chipped 10% off"), ("6", "Coaster")]):
        k.rect(16, 130 + 30 * i, 16, 16, 0.7)
        k.text(42, 143 + 30 * i, q, 13, "NB")
        k.text(62, 143 + 30 * i, s, 11, "N")
    w, _ = k.code("code128", "44118340", 60, 300, 0.375 * MM, 44)
    k.text(60 + w / 2, 356, "order 44-118340", 10, "N", a="m")
    k.text(16, 410, "Sample. Keep with the goods; not a shipping label.", 8, "N")
    return k


def ticket():
    k = Ink()
    k.rect(30, 60, 400, 170, 1.5)
    k.line(320, 60, 320, 230, 0.8, dash=(3, 3))
    k.text(46, 96, "Feria de Oficios – entrada", 20, "HB")
    k.lines(46, 120, ["Sábado 7 de noviembre, 10 a 20 horas", "Nave Muestra, Calle Ficticia 40", "Expositora: Taller del Azafrán, puesto C-14"], 10.5, "H", 15)
    k.text(46, 214, "Entrada de ejemplo, no es etiqueta de envío.", 8, "HI")
    k.code("code128", "FO26C140118", 340, 74, 0.25 * MM, 40, upright=True)
    k.text(400, 140, "C-14", 15, "HB", a="m")
    return k


def rma():
    k = Ink()
    k.text(50, 70, "Formular de retur (exemplu)", 19, "DB")
    k.rect(50, 90, 495, 110, 1)
    k.lines(60, 110, ["Client: Smaranda Pildă", "Comanda: 2026-4471", "Adresa noastră: Atelierul Salcia, Str. Exemplului 8, 500030 Brașov"], 11, "D", 18)
    bx = ["produs defect", "mărime greșită", "nu îmi place", "altul"]
    for i, s in enumerate(bx):
        k.rect(60, 230 + 26 * i, 14, 14, 0.8)
        k.text(84, 241 + 26 * i, s, 11, "D")
    w, _ = k.code("code128", "RET20264471", 360, 230, 0.375 * MM, 46)
    k.text(360 + w / 2, 290, "RET20264471", 10, "C", a="m")
    k.lines(50, 380, ["Puneți formularul în colet. Eticheta de transport vine separat prin e-mail.", "Semnătura: ....................................."], 11, "D", 28)
    return k


def handover():
    k = Ink()
    k.text(40, 50, "Борд за предаване на пратки", 18, "DB")
    k.text(555, 50, "образец", 10, "D", a="r")
    heads = ["№", "Пратка", "Получател", "кг", "Н. платеж"]
    xs = (40, 70, 230, 420, 480)
    for j, s in enumerate(heads):
        k.text(xs[j], 80, s, 10, "DB")
    for i in range(8):
        y = 100 + 46 * i
        k.line(40, y - 10, 555, y - 10, 0.4)
        t = f"VSH40{7711 + 13 * i}"
        k.text(40, y + 14, str(i + 1), 12, "D")
        k.code("code128", t, 70, y - 4, 0.25 * MM, 26)
        k.text(74, y + 32, t, 8, "C")
        k.lines(230, y + 6, [f"Проба Примерова {i + 1}", f"ул. Образец {3 * i + 2}, София {1000 + 13 * i}"], 9, "D", 12)
        k.text(455, y + 14, f"{0.4 + 0.7 * i:.1f}", 11, "D", a="r")
        k.text(545, y + 14, ("0,00", "38,90")[i % 2], 11, "D", a="r")
    k.line(40, 458, 555, 458, 1)
    k.text(40, 500, "Предал: .......................      Приел: ......................", 11, "D")
    return k


def fair():
    k = Ink()
    k.text(306, 110, "You're at stall 14", 40, "LB", a="m")
    k.lines(306, 150, ["Load in from 6 a.m. at gate B. Bring this page.", "Sample page."], 14, "L", 22, a="m")
    k.code("aztec", "STALL-14-GATE-B-LARKS", 236, 220, 6)
    return k


def gst():
    k = Ink()
    k.rect(36, 36, 540, 500, 0.8)
    k.text(306, 60, "COMMERCIAL INVOICE", 16, "HB", a="m")
    k.line(36, 70, 576, 70)
    k.line(306, 70, 306, 190)
    k.text(42, 84, "Shipper / Exporter", 8, "HB")
    k.lines(42, 100, ["Two Larks Pottery", "118 Example Pkwy", "Reno NV 89501, USA", "555-0101"], 10, "H", 13)
    k.text(312, 84, "Consignee", 8, "HB")
    k.lines(312, 100, ["Fruzsina Mintás", "Példa utca 14", "6720 Szeged", "Hungary"], 10, "H", 13)
    k.line(36, 190, 576, 190)
    for i, row in enumerate([("Qty", "Description of goods", "HS code", "Origin", "Unit", "Total"), ("2", "Stoneware mug, hand thrown", "6912.00", "US", "24.00", "48.00"), ("1", "Packing, no charge", "-", "US", "0.00", "0.00")]):
        for j, s in enumerate(row):
            k.text((42, 80, 330, 400, 460, 520)[j], 206 + 20 * i, s, 9.5, "H" if i else "HB")
    k.code("pdf417", "CI|TWO LARKS|48.00|USD|2 PCS|HU", 42, 400, 0.375 * MM)
    k.text(42, 500, "I declare that this invoice is true. Signature ____________  SAMPLE, not for carriage.", 9)
    return k


def notice():
    k = Ink()
    k.rect(20, 20, 380, 255, 1)
    k.rect(20, 20, 380, 32, fill=True)
    k.text(32, 43, "NOUS SOMMES PASSÉS", 18, "HB", g=1)
    k.lines(36, 80, ["Mme Aïssatou Spécimen", "Villa 9, cité Témoin, Thiès", "", "Votre colis vous attend au guichet Essai, à partir de 14 h.", "Présentez cet avis et une pièce d'identité."], 11, "H", 16)
    w, _ = k.code("code128", "AV2211090", 36, 180, 0.375 * MM, 40)
    k.text(36 + w / 2, 232, "AV2211090", 10, "C", a="m")
    k.text(36, 262, "Avis de passage – exemple, ce n'est pas une étiquette.", 8, "HI")
    return k


def picklist():
    k = Ink()
    k.text(40, 60, "拣货单 (样品)", 20, "J")
    for i, row in enumerate([("库位", "品名", "数量"), ("A-01", "杯垫", "4"), ("A-07", "手帕", "2"), ("B-03", "肥皂", "11"), ("C-02", "明信片", "30")]):
        for j, s in enumerate(row):
            k.text((40, 140, 420)[j], 100 + 28 * i, s, 13, "J")
        k.line(40, 108 + 28 * i, 480, 108 + 28 * i, 0.4)
    k.code("datamatrix", "PICK-2026-11-03-07", 500, 40, 2)
    return k


MAIL = """<div style="margin:12mm;font-family:'Liberation Serif';font-size:11pt;width:150mm"><h2>Order confirmed</h2><p>Hello Tashi, thank you for order OD-118-2213.</p>
<table style="border-collapse:collapse;width:100%%" border="1" cellpadding="6"><tr><td>Wool shawl</td><td>1</td><td>Rs 1,250</td></tr><tr><td colspan="2">To pay on delivery</td><td>Rs 1,250</td></tr></table>
<p>Delivery address</p><p style="margin-left:8mm">Tashi Dpe<br>C/o Example Stores, Main Bazaar<br>Leh, Ladakh 194101</p><p>Show this code when the driver comes:</p>%s<p style="font-size:8pt">Sample message, no label.</p></div>"""
PROFORMA = """<div style="margin:15mm;font-family:'Lato';font-size:10pt;width:150mm"><h1 style="font-size:18pt">Fatura proforma</h1><p>Keçe Evi, Örnek Sok. 4, 35210 İzmir</p><p>Alıcı: Beatrix Muster-Überall, Musterstrasse 118, 8400 Winterthur</p>
<table style="border-collapse:collapse;width:100%%" border="1" cellpadding="5"><tr><th>Ürün</th><th>Adet</th><th>Tutar</th></tr><tr><td>Keçe şapka</td><td>2</td><td>64,00</td></tr></table><div style="margin-top:10mm">%s</div><p>PF-2026-118 – örnek belge</p></div>"""


def s26(folder):
    document(folder, "s26-none-1", "hand-written", lambda: Raw(words="embedded"), [one("other", 288, 432, thanks), one("packing-slip", 288, 432, small_slip, "slip"), one("other", *A4, handover), one("blank", *LETTER, Ink)])
    document(folder, "s26-none-2", "libreoffice", Office, [one("other", *A4, rma), one("pick-list", *A4, picklist)])
    document(folder, "s26-none-3", "ghostscript", Ghostscript, [one("invoice", *LETTER, gst), one("other", 460, 290, ticket)])
    scan = lambda i: (150, (1.2, -0.8)[i], paper(160 + i, noise=3, shade=10, tone=240), 32)
    document(folder, "s26-none-4", "scan-jpeg", lambda: Raw(), [one("other", 419.53, 297.64, notice), one("other", *LETTER, fair)], scan)
    html_document(folder, "s26-none-5", "", [("other", MAIL % svg("qr", "PAY-OD-118-2213", 1), None, None, []), ("invoice", PROFORMA % svg("code128", "PF-2026-118", 0.375, 12), None, None, [])])
    document(folder, "s26-none-6", "img2pdf", lambda: Pixels(150, "L", 35), [one("customs", 595.28, 841.89, lambda: __import__("s_papers2").cn_form({"from": ["Radionica Šljiva", "Probna 4", "Sarajevo"], "to": ["Jernej Vzorčnik", "Pri Primeru 7", "4260 Bled"], "what": "džem", "kg": "0,6 kg", "value": "12 EUR"})), one("advert", *LETTER, lambda: __import__("s_none1").advert())])


if __name__ == "__main__":
    s26(sys.argv[1])
