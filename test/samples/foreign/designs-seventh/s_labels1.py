"""Labels of the first lot. Each gives its ink; sizes beside the names."""
from PIL import Image, ImageDraw, ImageFont

from s_ink import FONTS, MM, Ink, width

M = 0.25 * MM


def vurtelo(o):
    """Italy, no frame, 285 by 405."""
    k = Ink()
    k.rect(0, 0, 285, 46, fill=True)
    k.text(12, 32, "vurtelo", 30, "LB", g=1)
    k.text(150, 19, "CAMPIONE", 9, "HB", g=1)
    k.text(150, 33, "non valido per la spedizione", 8, "H", g=1)
    k.text(278, 40, o["class"], 40, "TB", a="r", g=1)
    k.text(2, 58, "MITT.", 6, "HB")
    k.lines(30, 58, o["from"], 6.5, "H")
    k.line(0, 88, 285, 88, 2)
    k.text(2, 104, "DESTINATARIO", 8, "HB")
    k.lines(2, 124, o["to"], 15, "H", 18.5)
    k.rect(0, 206, 285, 58, fill=True, g=0.86)
    k.text(6, 254, o["sort"], 52, "NB")
    k.lines(200, 220, o["facts"], 8, "H", 11)
    k.line(0, 270, 285, 270, 0.6)
    w = Ink().code("code128", o["track"], 0, 0, 1.5 * M, 70)[0]
    k.code("code128", o["track"], (285 - w) / 2, 284, 1.5 * M, 78)
    k.text(142, 376, " ".join(o["track"][i : i + 4] for i in range(0, len(o["track"]), 4)), 13, "CB", a="m")
    k.text(142, 392, "Assistenza 555-0117 · vurtelo.example", 7, "H", a="m")
    k.text(142, 403, o["ref"], 7, "H", a="m")
    return k


def dotted(o):
    """A pin printer's waybill, all in one type, 100 x 150 mm."""
    k = Ink()
    y = 26
    put = lambda s, dy=13, f="C", size=10: (k.text(14, y, s, size, f), y + dy)[1]
    y = put("=" * 42)
    y = put("GUIA DE REMISION    KELUSMAR CARGA S/N")
    y = put("** MUESTRA ** NO VALIDA PARA TRANSPORTE")
    y = put("-" * 42)
    for row in o["rows"]:
        y = put(row)
    y = put("-" * 42)
    y += 6
    k.text(14, y + 12, o["sort"], 26, "C")
    y += 34
    k.code("code128", o["track"], 24, y, M * 1.5, 62)
    y += 78
    y = put(" " * 6 + o["track"])
    y = put("=" * 42)
    y = put(o["foot"])
    return k


def quarter(o):
    """Brazil: a framed quarter of a sheet, 262 by 375."""
    k = Ink()
    k.rect(0.5, 0.5, 261, 374, 1)
    k.rect(6, 6, 30, 30, fill=True)
    k.poly([(10, 32), (21, 10), (32, 32)], 1)
    k.text(42, 20, "Plemsida", 15, "HB")
    k.text(42, 32, "AMOSTRA - sem validade para transporte", 6.5)
    k.text(255, 24, o["weight"], 9, a="r")
    k.text(255, 34, "NF " + o["nf"], 7, a="r")
    k.code("datamatrix", o["dm"], 8, 44, 2 * M)
    k.text(80, 60, "Contrato: 99000" + o["nf"], 7.5)
    k.text(80, 72, "Serviço: " + o["service"], 7.5)
    k.text(80, 86, "Pedido " + o["order"], 7.5, "HB")
    k.text(255, 84, o["vol"], 16, "HB", a="r")
    k.text(131, 104, o["track"], 14, "HB", a="m")
    w = Ink().code("code128", o["track"], 0, 0, 1.5 * M, 10)[0]
    k.code("code128", o["track"], (262 - w) / 2, 110, 1.5 * M, 58)
    k.text(10, 182, "Recebedor: ______________________", 7)
    k.text(150, 182, "Assinatura: ______________", 7)
    k.line(0, 188, 262, 188, 1)
    k.rect(0, 188, 78, 13, fill=True)
    k.text(5, 198, "DESTINATÁRIO", 8, "HB", g=1)
    y = k.lines(8, 216, o["to"], 10.5, "H", 13.5, fit=245)
    k.code("code128", o["cep"], 10, 272, M * 1.5, 34)
    k.text(140, 292, o["cep"][:5] + "-" + o["cep"][5:], 17, "HB")
    k.line(0, 318, 262, 318, 1)
    k.text(8, 330, "Remetente:", 8, "HB")
    k.lines(58, 330, o["from"], 8, "H", 11)
    return k


def pazra(o):
    """Poland, lying: 400 by 270."""
    k = Ink()
    k.text(0, 26, "Drauvik", 32, "TB")
    k.text(2, 38, "wzór – nieważne jako list przewozowy", 7.5, "TI")
    k.line(140, 0, 140, 78, 0.8)
    k.text(148, 10, "NADAWCA", 6.5, "H")
    k.lines(148, 22, o["from"], 8.5, "H", 10.5)
    k.text(400, 58, o["sort"], 54, "HB", a="r")
    k.line(0, 78, 400, 78, 2.2)
    k.text(0, 92, "ODBIORCA", 7.5, "HB")
    k.lines(0, 110, o["to"], 14, "HB", 17.5)
    for i, (name, value) in enumerate(o["boxes"]):
        k.rect(260, 86 + i * 25, 140, 22, 0.6)
        k.text(264, 94 + i * 25, name, 6, "H")
        k.text(396, 103 + i * 25, value, 11, "HB", a="r")
    k.line(0, 186, 400, 186, 0.8)
    k.code("code128", o["track"], 14, 196, M * 1.5, 52)
    k.text(20, 262, o["track"], 11, "CB")
    k.code("aztec", o["az"], 330, 196, 2 * M)
    return k


def japan(o):
    """Double frame, 290 by 400."""
    k = Ink()
    k.rect(1, 1, 288, 398, 2)
    k.rect(5, 5, 280, 390, 0.5)
    k.rect(5, 5, 34, 120, 0.5)
    for i, c in enumerate("お届け先"):
        k.text(12, 34 + i * 24, c, 20, "J")
    k.text(46, 22, "〒" + o["zip"], 13, "J")
    k.lines(46, 44, o["to"], 13, "J", 18)
    k.text(46, 104, o["name"] + " 様", 19, "J")
    k.text(46, 120, "電話 " + o["tel"], 9, "J")
    k.line(5, 125, 285, 125, 1.4)
    k.text(12, 142, "ご依頼主", 9, "J")
    k.lines(60, 142, o["from"], 9, "J", 12)
    k.line(5, 180, 285, 180, 0.5)
    for i, (n, v) in enumerate(o["cells"]):
        k.line(5 + 70 * i, 180, 5 + 70 * i, 222, 0.5)
        k.text(9 + 70 * i, 191, n, 7, "J")
        k.text(40 + 70 * i, 214, v, 15, "J", a="m")
    k.line(5, 222, 285, 222, 1.4)
    k.text(14, 262, o["depot"], 38, "HB")
    k.code("qr", o["qr"], 214, 230, 2 * M)
    k.text(14, 282, "見本・輸送には使えません", 11, "J")
    k.line(5, 306, 285, 306, 0.5)
    w, _ = k.code("code128", o["track"], 40, 318, 1.5 * M, 48)
    k.text(40 + w / 2, 380, o["track"], 12, "H", a="m")
    return k


def sorted_hub(o):
    """South-east Asia, crowded, 286 by 392."""
    k = Ink()
    k.rect(0.4, 0.4, 285.2, 391.2, 0.8)
    k.text(8, 24, "OKKARIBE", 20, "NB")
    k.text(8, 35, "hubungi 555-0164", 6.5)
    k.rect(112, 4, 82, 34, fill=True)
    k.text(153, 30, o["mode"], 24, "NB", a="m", g=1)
    k.text(280, 16, o["date"], 7.5, a="r")
    k.text(280, 27, o["weight"], 7.5, a="r")
    k.text(280, 38, "1/1", 7.5, a="r")
    k.line(0, 42, 286, 42)
    w, _ = k.code("code128", o["track"], 16, 48, 1.5 * M, 44)
    k.text(16 + w / 2, 104, o["track"], 11, "CB", a="m")
    k.line(0, 110, 222, 110)
    k.text(8, 158, o["sort"], 50, "NB", fit=206)
    k.line(222, 42, 222, 268)
    k.code("code128", o["short"], 236, 60, M * 1.5, 36, upright=True)
    k.line(0, 168, 222, 168)
    k.text(6, 178, "Kepada", 7, "HB")
    y = k.lines(6, 192, o["to"], 10, "H", 12.5, fit=212)
    k.line(0, 242, 222, 242)
    k.text(6, 252, "Daripada", 6.5, "HB")
    k.lines(48, 252, o["from"], 6.5, "H", 8)
    k.line(0, 268, 286, 268)
    for i, (n, v) in enumerate(o["cells"]):
        x, ww = (0, 96, 158, 222)[i], 60
        if i:
            k.line(x, 268, x, 298)
        k.text(x + 4, 277, n, 6)
        k.text(x + 5, 293, v, 13, "HB")
    k.line(0, 298, 286, 298)
    k.code("qr", o["qr"], 8, 305, 2 * M)
    k.lines(84, 312, o["goods"], 7, "H", 9)
    k.line(84, 366, 280, 366, 0.4)
    k.text(84, 374, "Tandatangan penerima", 6)
    k.text(84, 386, "CONTOH SAHAJA – TIDAK SAH UNTUK PENGHANTARAN", 6.5, "HB")
    return k


def swahili(o):
    """East Africa, label paper of 100 x 75 mm, 283 by 213."""
    k = Ink()
    k.text(10, 22, "MIZZOREK", 18, "HB")
    k.text(150, 14, "MFANO – SI HALALI KWA USAFIRISHAJI", 6.5, "HB")
    k.text(150, 23, o["ref"], 7)
    k.line(8, 28, 275, 28, 1.5)
    k.text(10, 38, "Mpokeaji", 7)
    k.lines(10, 52, o["to"], 11, "HB", 13)
    k.text(180, 38, "Mtumaji", 6)
    k.lines(180, 46, o["from"], 6.5, "H", 8)
    k.text(272, 96, o["sort"], 24, "HB", a="r")
    k.line(8, 108, 275, 108, 0.5)
    w, _ = k.code("code128", o["track"], 40, 118, 1.5 * M, 56)
    k.text(40 + w / 2, 188, o["track"], 11, "CB", a="m")
    k.text(140, 202, "Simu 555-0139 - Uzito " + o["kg"], 7, a="m")
    return k


def ouest(o):
    """West Africa, framed, four boxes, 380 by 250."""
    k = Ink()
    k.rect(1, 1, 378, 248, 2)
    k.text(12, 28, "Hulvetra", 24, "TB")
    k.text(12, 40, "ÉCHANTILLON – sans valeur pour le transport", 7, "TI")
    k.line(232, 0, 232, 50, 1)
    k.text(305, 40, o["sort"], 36, "HB", a="m")
    k.line(0, 50, 380, 50, 1)
    k.line(190, 50, 190, 150, 1)
    k.text(6, 62, "Expéditeur", 7.5, "TB")
    k.lines(6, 78, o["from"], 10, "T", 13)
    k.text(196, 62, "Destinataire", 7.5, "TB")
    k.lines(196, 80, o["to"], 12, "TB", 15)
    k.line(0, 150, 380, 150, 1)
    for i, (n, v) in enumerate(o["cells"]):
        k.text(8 + 92 * i, 161, n, 6.5, "T")
        k.text(8 + 92 * i, 175, v, 11, "HB")
        if i:
            k.line(4 + 92 * i, 150, 4 + 92 * i, 180, 0.6)
    k.line(0, 180, 380, 180, 1)
    w, _ = k.code("code128", o["track"], 40, 188, 1.5 * M, 44)
    k.text(40 + w / 2, 244, o["track"], 10, "C", a="m")
    k.rect(310, 188, 56, 52, 1)
    k.text(338, 222, o["class"], 26, "HB", a="m")
    return k


def mexa(o):
    """Letter, thick bars top and bottom and nothing at the sides, 288 by 420."""
    k = Ink()
    k.rect(0, 0, 288, 9, fill=True)
    k.text(4, 36, "Sottamel", 24, "HI")
    k.text(284, 36, o["type"], 26, "HB", a="r")
    k.text(4, 48, "MUESTRA – SIN VALIDEZ PARA ENVÍO", 7, "HB")
    k.line(0, 54, 288, 54, 1)
    k.text(4, 64, "Remite:", 7)
    k.lines(40, 64, o["from"], 7, "H", 9)
    k.line(0, 96, 288, 96, 1)
    k.text(4, 108, "Entregar a:", 8, "HB")
    k.lines(18, 128, o["to"], 14, "H", 17)
    k.line(0, 208, 288, 208, 3)
    k.text(4, 250, o["sort"], 40, "HB")
    k.text(284, 232, o["route"], 18, "HB", a="r")
    k.text(284, 250, o["kg"], 11, a="r")
    k.line(0, 260, 288, 260, 3)
    w, _ = k.code("code128", o["track"], 20, 274, 1.5 * M, 80)
    k.text(20 + w / 2, 370, o["track"], 13, "CB", a="m")
    k.text(4, 388, "Ref. " + o["ref"], 8)
    k.text(4, 400, "Contenido: " + o["goods"], 8)
    k.rect(0, 411, 288, 9, fill=True)
    return k


def turk(o):
    """Rounded look by boxes, pdf417 below, 280 by 400."""
    k = Ink()
    k.rect(1, 1, 278, 398, 1.6)
    k.rect(1, 1, 278, 30, fill=True, g=0.1)
    k.text(10, 23, "RHEZZANE", 18, "DB", g=1)
    k.text(270, 21, "ÖRNEK – taşımada geçersiz", 8, "D", a="r", g=1)
    k.text(8, 44, "Gönderici", 7, "DB")
    k.lines(64, 44, o["from"], 7.5, "D", 10)
    k.line(1, 80, 279, 80)
    k.text(8, 93, "ALICI", 9, "DB")
    k.lines(8, 112, o["to"], 13, "D", 17)
    k.line(1, 186, 279, 186)
    k.text(10, 228, o["sort"], 40, "DB")
    k.line(170, 186, 170, 238)
    k.lines(178, 200, o["facts"], 8.5, "D", 12)
    k.line(1, 238, 279, 238)
    w, _ = k.code("code128", o["track"], 28, 248, 1.5 * M, 52)
    k.text(28 + w / 2, 314, o["track"], 11, "CB", a="m")
    k.line(1, 322, 279, 322)
    k.code("pdf417", o["pdf"], 44, 336, M * 1.5)
    return k
