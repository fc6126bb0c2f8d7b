"""Labels of the second lot."""
from s_ink import MM, Ink

M = 0.125 * MM


def bars(k, data, cx, y, mod, h, kind="code128", text=None, size=10, f="C", gap=None):
    """Bars about `cx`, with what they say below."""
    w = Ink().code(kind, data, 0, 0, mod, h)[0]
    k.code(kind, data, cx - w / 2, y, mod, h, truth=data.replace("[", "").replace("]", ""))
    if text is not False:
        k.text(cx, y + h + (gap or size + 1), text or data, size, f, a="m")


def warehouse(o):
    """4 x 6 in, a fulfilment house's own: boxes to the edges, 288 by 432."""
    k = Ink()
    k.rect(10, 10, 268, 412, 0.5)
    k.rect(10, 10, 58, 58, fill=True)
    k.text(39, 58, o["letter"], 52, "TB", a="m", g=1)
    k.lines(76, 24, o["from"], 8, "N", 9.5)
    k.text(272, 24, o["date"], 8, "N", a="r")
    k.text(272, 62, o["lb"], 12, "NB", a="r")
    k.line(10, 68, 278, 68, 3)
    k.text(144, 84, "OBLIRANDO " + o["svc"], 14, "NB", a="m")
    k.line(10, 90, 278, 90, 3)
    k.text(18, 104, "SHIP TO:", 8, "N")
    k.lines(58, 112, o["to"], 13, "N", 16, fit=214)
    k.line(10, 196, 278, 196, 1)
    bars(k, o["zip"], 90, 206, 3 * M, 44, "gs1-128", o["ziptext"], 9, "N")
    k.text(216, 246, o["zone"], 38, "NB", a="m")
    k.line(10, 268, 278, 268, 3)
    k.text(144, 281, "TRACKING NO.", 9, "NB", a="m")
    bars(k, o["track"], 144, 290, 3 * M, 66, text=o["spaced"], size=12, f="NB")
    k.line(10, 378, 278, 378, 3)
    k.code("datamatrix", o["dm"], 20, 384, 4 * M)
    k.lines(62, 392, ["REF1 " + o["ref"], "REF2 " + o["bin"], "SAMPLE - NOT VALID FOR CARRIAGE"], 8, "N", 10)
    return k


def bilingual(o):
    """Lying on a letter page, 396 by 280."""
    k = Ink()
    k.rect(0.75, 0.75, 394.5, 278.5, 1.5)
    k.text(10, 26, "Zilquema", 22, "TB")
    k.text(10, 38, "colis / parcel", 8, "TI")
    k.line(110, 0, 110, 48, 0.7)
    k.text(116, 12, "FROM / DE", 6, "HB")
    k.lines(116, 21, o["from"], 7, "H", 8.5)
    k.rect(290, 1, 105, 47, fill=True, g=0)
    k.text(342, 36, o["svc"], 30, "HB", a="m", g=1)
    k.line(0, 48, 396, 48, 1.5)
    k.text(8, 60, "TO / À", 7, "HB")
    k.lines(20, 78, o["to"], 13, "H", 16)
    k.maxicode(304, 56, o["maxi"])
    k.line(0, 150, 396, 150, 1.5)
    k.text(12, 182, o["post"], 30, "HB")
    k.text(384, 168, o["kg"], 11, "HB", a="r")
    k.text(384, 182, o["pc"], 9, a="r")
    k.line(0, 190, 396, 190, 0.7)
    bars(k, o["track"], 198, 198, 3 * M, 50, text=o["track"], size=11, f="H")
    k.text(198, 273, "SAMPLE – NOT VALID FOR CARRIAGE / SPÉCIMEN – NON VALIDE", 6.5, a="m")
    return k


def greek(o):
    """A third of a sheet: rules only, 555 by 245."""
    k = Ink()
    k.rect(0, 0, 555, 22, fill=True, g=0.82)
    k.text(6, 16, "Γιαλτέρμο", 14, "DB")
    k.text(180, 15, "ΔΕΙΓΜΑ – δεν ισχύει για μεταφορά", 8.5, "D")
    k.text(549, 15, o["date"], 9, "D", a="r")
    k.text(4, 36, "Αποστολέας", 7.5, "DB")
    k.lines(4, 50, o["from"], 9, "D", 12)
    k.text(4, 108, "Παραλήπτης", 7.5, "DB")
    k.lines(4, 126, o["to"], 14, "DB", 18)
    k.line(300, 28, 300, 200, 0.6)
    k.text(310, 78, o["branch"], 46, "DB")
    k.text(549, 56, o["n"], 16, "DB", a="r")
    bars(k, o["track"], 428, 96, 3 * M, 60, size=12, f="DB")
    k.line(0, 206, 555, 206, 0.6)
    for i, (n, v) in enumerate(o["cells"]):
        k.text(4 + 112 * i, 217, n, 7, "D")
        k.text(4 + 112 * i, 233, v, 12, "DB")
    k.line(0, 243, 555, 243, 2)
    return k


def thai(o):
    """100 x 150 mm, pixels."""
    k = Ink()
    k.rect(8, 8, 267, 409, 1.4)
    k.text(16, 34, "WOPRINGA", 20, "HB")
    k.text(268, 34, o["route"], 22, "HB", a="r")
    k.line(8, 44, 275, 44)
    bars(k, o["track"], 141, 54, 3 * M, 54, size=12, f="HB")
    k.line(8, 126, 275, 126)
    k.text(16, 144, "ผู้รับ", 11, "THB")
    k.lines(56, 146, o["to"], 12, "TH", 18)
    k.line(8, 226, 275, 226)
    k.text(16, 243, "ผู้ส่ง", 9, "THB")
    k.lines(56, 243, o["from"], 9, "TH", 14)
    k.line(8, 278, 275, 278)
    k.text(20, 326, o["zip"], 40, "HB")
    k.text(268, 306, o["cod"], 14, "THB", a="r")
    k.text(268, 326, o["kg"], 12, "TH", a="r")
    k.line(8, 338, 275, 338)
    k.code("qr", o["track"] + o["zip"], 20, 346, 4 * M)
    k.lines(100, 362, ["สินค้า: " + o["what"], "คำสั่งซื้อ " + o["order"], "ตัวอย่าง ใช้ขนส่งไม่ได้"], 10, "TH", 17)
    return k


def spanish_return(o):
    """Return label, dashed in the lower half, 420 by 260."""
    k = Ink()
    k.text(0, 18, "DEVOLUCIÓN", 22, "HB")
    k.text(420, 14, "cushpani · red de puntos", 9, "HI", a="r")
    k.rect(0, 26, 420, 3, fill=True)
    k.text(0, 44, "Entregar en:", 8)
    k.lines(0, 60, o["to"], 13, "HB", 16)
    k.text(240, 44, "Remitente:", 8)
    k.lines(240, 58, o["from"], 9, "H", 12)
    k.rect(0, 128, 420, 1, fill=True)
    bars(k, o["track"], 140, 138, 3 * M, 64, size=11)
    k.text(420, 190, o["code"], 48, "HB", a="r")
    k.rect(0, 222, 420, 1, fill=True)
    k.text(0, 236, "Autorización " + o["rma"], 9)
    k.text(0, 250, "EJEMPLO – sin validez para el transporte", 8, "HB")
    k.text(420, 236, "Portes pagados en destino", 9, a="r")
    return k


def balkan(o):
    """Serbia and around, upright beside a form, 280 by 390."""
    k = Ink()
    k.rect(0.5, 0.5, 279, 389, 1)
    k.text(8, 22, "nadroqui", 20, "LB")
    k.text(272, 20, "UZORAK – ne važi za prevoz", 7.5, "L", a="r")
    k.line(0, 30, 280, 30)
    bars(k, o["track"], 140, 38, 3 * M, 56, size=12, f="CB")
    k.line(0, 114, 280, 114)
    k.rect(0, 114, 18, 92, fill=True, g=0.8)
    k.text(26, 126, "Prima", 7, "L")
    k.lines(26, 144, o["to"], 13, "LB", 17)
    k.line(0, 206, 280, 206)
    k.text(26, 217, "Šalje", 7, "L")
    k.lines(26, 230, o["from"], 9, "L", 12)
    k.line(0, 264, 280, 264)
    k.text(10, 318, o["country"], 50, "LB")
    k.text(272, 296, o["kg"], 15, "LB", a="r")
    k.text(272, 316, "R / A / " + o["opt"], 11, "L", a="r")
    k.line(0, 328, 280, 328)
    k.code("datamatrix", o["dm"], 12, 336, 4 * M)
    k.lines(80, 344, ["Carinska vrednost " + o["value"], "Sadržaj: " + o["what"], "Datum 03.11."], 8.5, "L", 12)
    return k


def indonesian(o):
    """A6 waybill, crowded, 290 by 410."""
    k = Ink()
    k.rect(0.5, 0.5, 289, 409, 1)
    k.rect(6, 6, 84, 24, 0.8)
    k.text(48, 23, "ekwembu", 15, "LB", a="m")
    k.text(100, 16, "Resi", 7, "N")
    k.text(100, 27, o["track"], 11, "NB")
    k.rect(214, 4, 72, 28, fill=True)
    k.text(250, 25, o["svc"], 18, "NB", a="m", g=1)
    k.line(0, 34, 290, 34, 0.6)
    bars(k, o["track"], 145, 40, 3 * M, 46, text=False)
    k.line(0, 92, 290, 92, 0.6)
    for i, s in enumerate(o["sort"]):
        k.text((8, 100, 210)[i], 122, s, 26, "NB", fit=(84, 100, 74)[i])
        if i:
            k.line((8, 96, 204)[i], 92, (8, 96, 204)[i], 130, 0.6)
    k.line(0, 130, 290, 130, 0.6)
    k.text(6, 141, "Penerima: " + o["name"], 9.5, "NB")
    k.lines(6, 153, o["to"], 9, "N", 11)
    k.line(0, 196, 290, 196, 0.6)
    k.text(6, 207, "Pengirim: " + o["from"][0], 8.5, "NB")
    k.lines(6, 218, o["from"][1:], 8, "N", 10)
    k.line(0, 244, 290, 244, 0.6, dash=(2, 2))
    for i, (n, v) in enumerate(o["cells"]):
        k.text(6 + 72 * i, 254, n, 6.5, "N")
        k.text(6 + 72 * i, 267, v, 10, "NB")
    k.line(0, 272, 290, 272, 0.6)
    k.code("qr", o["track"] + "-" + o["sort"][1], 8, 280, 4 * M)
    bars(k, o["order"], 190, 282, 2 * M, 26, text=o["order"], size=8, f="N")
    k.line(84, 322, 290, 322, 0.6)
    k.text(90, 333, "Pesan: " + o["note"], 8.5, "N")
    k.line(0, 350, 290, 350, 0.6)
    k.text(6, 361, "# Barang                    SKU            Jml", 7.5, "NB")
    k.lines(6, 372, o["goods"], 7.5, "N", 9)
    k.text(145, 405, "CONTOH – TIDAK BERLAKU UNTUK PENGIRIMAN", 7, "NB", a="m")
    return k


def square_cn(o):
    """A consolidator's 100 x 100 mm, 283 by 283."""
    k = Ink()
    k.rect(6, 6, 271, 271, 1)
    k.text(14, 24, "Yuqiro Gombrasi", 13, "HB")
    k.text(270, 22, o["ch"], 16, "HB", a="r")
    k.line(6, 30, 277, 30)
    k.text(12, 42, "FROM:", 7, "HB")
    k.lines(44, 42, o["from"], 7, "H", 8.5)
    k.text(12, 72, "SHIP TO:", 8, "HB")
    k.lines(54, 72, o["to"], 10, "H", 12.5)
    k.text(270, 130, o["cc"], 34, "HB", a="r")
    k.line(6, 140, 277, 140)
    bars(k, o["track"], 141, 148, 3 * M, 50, size=10, f="HB")
    k.line(6, 214, 277, 214)
    k.lines(12, 226, ["配货单 " + o["list"], o["items"], "库位 " + o["bin"]], 8.5, "J", 12)
    k.text(12, 270, "样品 不可用于运输  SAMPLE NOT VALID FOR CARRIAGE", 7.5, "J")
    return k


def romanian(o):
    """On A5, frame with cells, 370 by 330."""
    k = Ink()
    k.rect(1, 1, 368, 328, 1.5)
    k.text(10, 28, "JIRRUZA", 24, "DB")
    k.text(10, 40, "MOSTRĂ – nu este valabil pentru transport", 7, "D")
    bars(k, o["track"], 268, 8, 3 * M, 34, size=9, f="DB")
    k.line(1, 58, 369, 58)
    k.line(185, 58, 185, 160)
    k.text(6, 70, "Expeditor", 8, "DB")
    k.lines(6, 86, o["from"], 9.5, "D", 13)
    k.text(191, 70, "Destinatar", 8, "DB")
    k.lines(191, 88, o["to"], 11.5, "DB", 15, fit=172)
    k.line(1, 160, 369, 160)
    for r, row in enumerate(o["cells"]):
        for c, (n, v) in enumerate(row):
            k.text(6 + 92 * c, 171 + 34 * r, n, 6.5, "D")
            k.text(6 + 92 * c, 187 + 34 * r, v, 11, "DB")
            if c:
                k.line(1 + 92 * c, 160 + 34 * r, 1 + 92 * c, 194 + 34 * r, 0.5)
        k.line(1, 194 + 34 * r, 369, 194 + 34 * r, 0.7)
    k.text(12, 282, o["hub"], 46, "DB")
    k.text(230, 250, "Observații: " + o["note"], 8, "D")
    k.line(1, 296, 369, 296)
    k.text(6, 308, "Semnătura expeditor", 7, "D")
    k.text(191, 308, "Semnătura destinatar / data / ora", 7, "D")
    return k


def plain_post(o):
    """Portugal, no decoration at all, 250 by 190."""
    k = Ink()
    k.lines(0, 10, o["from"], 8, "T", 10)
    k.lines(40, 64, o["to"], 14, "T", 17)
    k.text(0, 140, o["mark"], 20, "TB")
    k.text(36, 128, "AMOSTRA sem validade postal", 7, "T")
    k.code("code128", o["track"], 36, 134, 3 * M, 40)
    k.text(36, 187, " ".join([o["track"][:2], o["track"][2:5], o["track"][5:8], o["track"][8:11], o["track"][11:]]), 11, "T")
    return k


def half_sheet(o):
    """Two on a letter sheet, lying in its half, 440 by 290."""
    k = Ink()
    k.rect(1.5, 1.5, 437, 287, 3)
    k.text(14, 44, o["mark"], 40, "HB")
    k.rect(66, 3, 2, 60, fill=True)
    k.lines(76, 18, ["Borvintu Parcels", "postage paid by account 0117", "SAMPLE NOT VALID FOR CARRIAGE"], 8.5, "H", 12)
    k.rect(340, 10, 88, 46, 1)
    k.lines(348, 26, ["$" + o["usd"], "03 NOV", o["lb"]], 10, "HB", 12)
    k.rect(1, 62, 438, 3, fill=True)
    k.lines(12, 80, o["from"], 9, "H", 11)
    k.text(12, 134, "DELIVER TO", 8, "HB")
    k.lines(80, 138, o["to"], 15, "H", 18)
    k.rect(1, 200, 438, 3, fill=True)
    bars(k, o["track"], 200, 212, 3 * M, 50, text=o["spaced"], size=12, f="HB")
    k.rect(360, 216, 60, 46, 1.5)
    k.text(390, 248, o["sort"], 24, "HB", a="m")
    return k
