"""Labels of the third lot."""
from s_ink import MM, Ink
from s_labels2 import M, bars


def corner(o):
    """West Africa in English: a thick corner at the upper left, nothing else around, 380 by 420."""
    k = Ink()
    k.rect(0, 0, 380, 5, fill=True)
    k.rect(0, 0, 5, 420, fill=True)
    k.text(18, 36, "Tunvoro Haulage", 24, "TB")
    k.text(18, 50, "SAMPLE WAYBILL – NOT VALID FOR CARRIAGE", 8, "T")
    k.text(374, 40, o["svc"], 20, "TB", a="r")
    k.text(18, 78, "Consignee", 9, "TI")
    k.lines(18, 98, o["to"], 15, "T", 19)
    k.line(18, 180, 378, 180, 0.6)
    k.text(18, 194, "Consignor", 9, "TI")
    k.lines(90, 194, o["from"], 9.5, "T", 12)
    k.line(18, 228, 378, 228, 0.6)
    k.text(18, 276, o["depot"], 44, "HB")
    k.lines(260, 246, o["facts"], 10, "T", 14)
    bars(k, o["track"], 190, 296, 4 * M, 78, size=14, f="CB")
    k.text(18, 416, o["note"], 8.5, "TI")
    return k


def viet(o):
    """4 x 6 in to the edge, dark bands."""
    k = Ink()
    k.rect(0, 0, 288, 40, fill=True, g=0.1)
    k.text(12, 28, "CHULMEVA", 22, "DB", g=1)
    k.text(276, 27, o["line"], 18, "DB", a="r", g=1)
    bars(k, o["track"], 144, 52, 3 * M, 58, size=12, f="DB", gap=14)
    k.rect(0, 134, 288, 16, fill=True, g=0.85)
    k.text(12, 146, "NGƯỜI NHẬN", 9, "DB")
    k.lines(12, 166, o["to"], 12, "D", 15.5, fit=264)
    k.rect(0, 232, 288, 14, fill=True, g=0.85)
    k.text(12, 243, "NGƯỜI GỬI", 8, "DB")
    k.lines(12, 259, o["from"], 9, "D", 12)
    k.rect(0, 288, 288, 4, fill=True, g=0.1)
    k.text(12, 344, o["hub"], 46, "DB", fit=180)
    k.code("qr", o["track"] + o["hub"], 206, 300, 4 * M)
    k.lines(12, 366, ["Thu hộ: " + o["cod"], "Khối lượng: " + o["kg"] + "   Đơn: " + o["order"], "Nội dung: " + o["what"]], 9, "D", 13)
    k.text(144, 422, "MẪU – KHÔNG CÓ GIÁ TRỊ VẬN CHUYỂN", 8.5, "DB", a="m")
    return k


def chile(o):
    """Half a letter page, three columns, 500 by 300."""
    k = Ink()
    k.rect(1, 1, 498, 298, 2)
    k.line(330, 1, 330, 299, 2)
    k.line(1, 60, 330, 60, 1)
    k.text(12, 42, "quimbarro", 32, "LB")
    k.text(320, 24, "EJEMPLAR DE MUESTRA", 8, "L", a="r")
    k.text(320, 36, "sin validez para transporte", 8, "L", a="r")
    k.text(10, 76, "Destinatario", 9, "L")
    k.lines(10, 98, o["to"], 15, "L", 19)
    k.line(1, 200, 330, 200, 1)
    k.text(10, 214, "Remitente", 8, "L")
    k.lines(10, 228, o["from"], 9, "L", 12)
    k.line(1, 262, 330, 262, 1)
    k.text(10, 285, o["ref"], 11, "L")
    k.text(320, 287, o["kg"], 16, "LB", a="r")
    w = Ink().code("code128", o["track"], 0, 0, 3 * M, 1)[0]
    k.code("code128", o["track"], 352, 20, 3 * M, 64, upright=True)
    k.text(415, 20 + w + 16, o["track"], 11, "CB", a="m")
    k.text(462, 70, o["zone"], 34, "LB", a="m")
    k.text(462, 92, "zona", 8, "L", a="m")
    k.code("aztec", o["track"] + "/" + o["zone"], 440, 120, 4 * M)
    return k


def magyar(o):
    """Grey pixels, cells above, 300 by 380."""
    k = Ink()
    k.rect(1, 1, 298, 378, 1.5)
    for i, (n, v) in enumerate(o["cells"]):
        k.text(6 + 99 * i, 12, n, 6.5)
        k.text(6 + 99 * i, 30, v, 15, "HB")
        if i:
            k.line(1 + 99 * i, 1, 1 + 99 * i, 38)
    k.line(1, 38, 299, 38)
    k.text(8, 54, "Címzett", 9, "HB")
    k.lines(8, 74, o["to"], 14, "H", 17.5)
    k.line(1, 150, 299, 150)
    k.text(8, 163, "Feladó", 8, "HB")
    k.lines(60, 163, o["from"], 8.5, "H", 11)
    k.line(1, 194, 299, 194)
    bars(k, o["track"], 150, 206, 3 * M, 70, size=13, f="HB")
    k.line(1, 300, 299, 300)
    k.rect(1, 300, 120, 79, fill=True, g=0.12)
    k.text(61, 354, o["zone"], 42, "NB", a="m", g=1)
    k.lines(130, 320, ["Blenkovar futár", "MINTA – szállításra nem érvényes", "Telefon 555-0159", o["ref"]], 9, "H", 15)
    return k


def island(o):
    """Caribbean, no frame, rules of unequal length, 340 by 300."""
    k = Ink()
    k.text(0, 26, "Wendolak Inter-Island", 20, "TB")
    k.text(0, 40, "Sample, not valid for carriage", 9, "TI")
    k.text(340, 28, o["n"], 22, "HB", a="r")
    k.line(0, 48, 340, 48, 2)
    k.text(0, 62, "To", 9, "TI")
    k.lines(30, 66, o["to"], 14, "TB", 17)
    k.line(0, 144, 340, 144, 0.8)
    k.text(0, 157, "From", 8, "TI")
    k.lines(30, 157, o["from"], 9, "T", 12)
    k.text(340, 182, o["port"], 34, "HB", a="r")
    k.line(0, 194, 340, 194, 2)
    bars(k, o["track"], 170, 206, 4 * M, 64, size=12, f="CB")
    k.text(0, 299, o["note"], 8.5, "T")
    return k


def kyiv(o):
    """100 x 100 mm, no frame: cross of rules."""
    k = Ink()
    k.text(10, 32, o["city"], 24, "DB")
    k.text(273, 30, o["branch"], 22, "DB", a="r")
    k.line(8, 42, 275, 42, 1.2)
    k.line(141, 42, 141, 140, 1.2)
    k.text(12, 54, "Відправник", 7.5, "DB")
    k.lines(12, 68, o["from"], 9, "D", 12, fit=124)
    k.text(147, 54, "Одержувач", 7.5, "DB")
    k.lines(147, 70, o["to"], 11, "DB", 14, fit=124)
    k.line(8, 140, 275, 140, 1.2)
    k.lines(12, 154, [o["facts"], "Опис: " + o["what"]], 9, "D", 12)
    bars(k, o["track"], 141, 178, 3 * M, 58, size=13, f="DB", gap=14)
    k.text(141, 268, "дроптівка · ЗРАЗОК, не дійсний для перевезення", 8, "D", a="m")
    return k


def czech_back(o):
    """Return label with a grey side, 300 by 260."""
    k = Ink()
    k.rect(0.5, 0.5, 299, 259, 1)
    k.rect(1, 1, 50, 258, fill=True, g=0.82)
    k.text(26, 50, "Z", 30, "HB", a="m")
    k.text(26, 66, "zpět", 10, "H", a="m")
    k.text(60, 22, "Vratka – zásilka zpět", 15, "HB")
    k.text(60, 36, "skarmelo · VZOR, neplatí pro přepravu", 8)
    k.line(51, 44, 299, 44)
    k.text(60, 56, "Příjemce", 7.5)
    k.lines(60, 74, o["to"], 13, "HB", 16)
    k.line(51, 124, 299, 124)
    k.text(60, 136, "Odesílatel", 7.5)
    k.lines(120, 136, o["from"], 8.5, "H", 11)
    k.line(51, 172, 299, 172)
    bars(k, o["track"], 175, 178, 3 * M, 46, size=11)
    k.text(60, 251, o["ref"], 7)
    return k
