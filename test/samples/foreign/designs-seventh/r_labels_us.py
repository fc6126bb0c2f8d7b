"""Labels of the first lot: the United States and Canada. Each is drawn on a sheet of w x h."""

from PIL import Image, ImageDraw, ImageFont

from r_codes import maxicode
from r_pad import WORDS, font_file

VOID = "SAMPLE - NOT VALID FOR CARRIAGE"
US, CA = WORDS["people"]["us"], WORDS["people"]["ca"]
FROM = WORDS["senders"]


def logo(text, key="LB", size=90, slant=0.25, invert=False):
    """An invented mark as a picture: the name in a slanted band with a disc."""
    font = ImageFont.truetype(font_file(key), size)
    w = int(font.getlength(text)) + size * 2
    picture = Image.new("1", (w, int(size * 1.5)), 1)
    draw = ImageDraw.Draw(picture)
    if invert:
        draw.polygon([(size * slant, 0), (w, 0), (w - size * slant, size * 1.5), (0, size * 1.5)], fill=0)
    draw.ellipse([size * 0.35, size * 0.3, size * 1.2, size * 1.15], fill=1 if invert else 0)
    draw.pieslice([size * 0.45, size * 0.4, size * 1.1, size * 1.05], 30, 160, fill=0 if invert else 1)
    draw.text((size * 1.45, size * 0.05), text, font=font, fill=1 if invert else 0)
    return picture


def plaxwen(pad, w, h, to, n, service="LIMBRO PARCEL", letter="L", refs=()):
    """A national post: service letter, permit box, banner, bars at the foot between thick rules, frame all around."""
    pad.box(0, 0, w, h, 1.5)
    pad.line(72, 0, 72, 74, 1.5)
    pad.text(36, 62, letter, "HB", 68, "c")
    pad.box(w - 92, 8, 82, 58, 1)
    pad.lines(w - 51, 22, ["POSTAGE AND FEES", "PAID BY SAMPLE", f"FEB {n % 27 + 1:02d} 2026", "MAILED FROM 97999", f"0{n * 7 % 9}2S00{10 * n + 114}"], "H", 6.5, 9, align="c")
    pad.line(0, 74, w, 74, 1.5)
    pad.text(w / 2, 92, f"PLAXWEN {service}", "HB", 15, "c")
    pad.line(0, 99, w, 99, 1.5)
    pad.lines(10, 112, [FROM["us"][0].upper(), FROM["us"][1].upper(), FROM["us"][2].upper()], "H", 7.5, 9)
    pad.lines(w - 10, 112, [f"Expected Delivery Day: 02/{n % 27 + 3:02d}/26", f"{n % 5} lb {n % 15 + 1} oz   Zone {n % 8 + 1}"], "H", 7, 9, align="r")
    pad.box(w - 54, 128, 44, 16, 0.8)
    pad.text(w - 32, 139.5, f"C{n:03d}", "HB", 9, "c")
    pad.text(14, 166, "SHIP", "H", 7)
    pad.text(14, 174, "TO:", "H", 7)
    end = pad.lines(42, 168, [each.upper() for each in to], "H", 11, 13, fit=w - 56)
    if refs:
        pad.lines(42, max(end + 6, 236), refs, "H", 6.5, 8)
    top = h - 172
    pad.rect(0, top, w, 4, "#000000")
    pad.text(w / 2, top + 18, "PLAXWEN TRACKING #", "HB", 10, "c")
    number = f"9205550101{n:04d}77421{n % 10}"
    pad.code(w / 2, top + 26, "gs1-128", f"[420]{to[-1].split()[-1][:5]}[92]{number[2:]}", 66, 3, "c", shown=f"420{to[-1].split()[-1][:5]}{number}")
    pad.text(w / 2, top + 106, " ".join(number[i : i + 4] for i in range(0, len(number), 4)), "HB", 10, "c")
    pad.rect(0, top + 114, w, 4, "#000000")
    pad.image(10, top + 124, 62, 20, logo("plaxwen"))
    pad.text(10, h - 9, VOID, "HB", 8)
    pad.code(w - 12, top + 124, "datamatrix", f"{number}-{n}", dots=3, align="r", truth=False)


def drofelin(pad, w, h, to, n, service="FELLAR", billing="P/P"):
    """A parcel carrier without a frame: tiny sender, symbol with routing in huge type, thick rules, a long plain line of bars."""
    pad.lines(4, 9, [*FROM["us"][:1], "(503) 555-0142", *FROM["us"][1:]], "N", 7, 8)
    pad.text(w * 0.58, 11, f"{n % 17 + 1} LBS", "NB", 11)
    pad.text(w - 4, 11, f"{n % 2 + 1} OF 2", "NB", 10, "r")
    pad.text(w * 0.58, 24, f"DWT: 12,{n % 9 + 3},9", "N", 7)
    pad.text(4, 50, "SHIP TO:", "NB", 10)
    pad.lines(22, 62, [each.upper() for each in to[:-1]], "N", 9.5, 10.5)
    pad.text(22, 64 + 10.5 * (len(to) - 1), to[-1].upper(), "NB", 13, fit=w - 30)
    pad.line(0, 116, w, 116, 1)
    pad.image(4, 121, 79.8, 76.3, maxicode(f"SAMPLE 1Z{n}ROUTE", "996120000840001"))
    pad.line(88, 116, 88, 202, 1)
    pad.text(96, 144, f"OH {430 + n} 9-0{n % 8 + 1}", "NB", 26)
    pad.code(106, 152, "gs1-128", f"[420]{to[-1].split()[-1][:5]}", 44, 3, truth=False)
    pad.rect(0, 202, w, 7, "#000000")
    pad.text(2, 228, f"DROFELIN {service}", "LB", 20)
    pad.text(2, 241, f"TRACKING #: 1D 555 01{n % 90 + 10} 03 {7000 + n} {n * 37 % 10000:04d}", "N", 9.5)
    pad.rect(w - 34, 211, 32, 30, "#000000")
    pad.line(0, 246, w, 246, 1)
    number = f"1D55501{n % 90 + 10}03{7000 + n}{n * 37 % 10000:04d}"
    pad.code(w / 2, 255, "code128", number, 82, 3, "c")
    pad.rect(0, 345, w, 7, "#000000")
    pad.lines(2, 362, [f"BILLING: {billing}", "DESC: CERAMIC GOODS", f"REF 1: {n}-SAMPLE", VOID], "N", 8.5, 9.5)
    pad.text(2, h - 2, f"QXL 26.01.{n % 28 + 1:02d}   ZT45 {n % 80}.0A 02/2026*", "N", 5.5)
    pad.text(w - 4, h - 2, "TM", "N", 5, "r")


def quendrast(pad, w, h, to, n, service="VELTRO 2", sort="XH OHIA"):
    """An express carrier: origin lines in small capitals, a wide stacked code, number and day in heavy type, a ladder at the side."""
    pad.box(0, 0, w, h, 0.75)
    pad.lines(6, 11, ["ORIGIN ID:PDXA  (503) 555-0119", *[each.upper() for each in FROM["us"]], "UNITED STATES US"], "S", 6.8, 7.6)
    pad.line(150, 0, 150, 48, 0.75)
    pad.lines(155, 11, [f"SHIP DATE: {n % 27 + 1:02d}FEB26", f"ACTWGT: {n % 30}.{n % 9}0 LB", f"SYS: {1100 + n}/WSXX3600", f"DIMS: {n % 9 + 8}x9x6 IN", "BILL SENDER"], "S", 6.8, 7.6)
    pad.line(0, 48, w, 48, 0.75)
    pad.text(5, 62, "TO", "S", 7)
    end = pad.lines(22, 66, [each.upper() for each in to], "SB", 11.5, 12.5, fit=w - 44)
    pad.text(24, 132, f"(503) 555-01{n % 90 + 10}", "S", 7)
    pad.text(170, 132, f"REF: {n}-KILN", "S", 7)
    with pad.turned(90, w - 13, 54, 78, 8):
        pad.text(0, 6, f"J{n}3226020301uv", "S", 6)
    pad.line(0, 138, w, 138, 0.75)
    pad.code(14, 146, "pdf417", f"Quendrast sample {n}|{to[0]}|{to[-1]}|not valid for carriage|3226020301", dots=2, options=("--cols=8",), row=3)
    pad.text(w - 34, 166, "Q", "LB", 30, "c")
    pad.text(w - 34, 178, "Express", "S", 8, "c")
    pad.box(w - 46, 184, 24, 22, 1.2)
    pad.text(w - 34, 201, "E", "SB", 18, "c")
    pad.line(0, 232, w, 232, 2)
    pad.text(w - 6, 247, f"{['MON', 'TUE', 'WED', 'THU'][n % 4]} - {n % 27 + 3:02d} FEB 4:30P", "SB", 12, "r")
    pad.text(w - 6, 261, service, "SB", 12, "r")
    pad.text(6, 256, "TRK#", "S", 7)
    pad.box(6, 259, 22, 9, 0.6)
    pad.text(8, 266, "0404", "S", 6.5)
    pad.text(34, 262, f"7{n:03d} 5550 1{n % 90 + 10}2", "SB", 13)
    pad.text(6, 300, sort, "SB", 28)
    pad.text(w - 6, 282, to[-1].split()[-1][:5], "SB", 17, "r")
    pad.text(w - 6, 296, f"{to[-1].split()[-2]}-US", "S", 9, "r")
    pad.text(w - 6, 306, VOID, "SB", 5.5, "r")
    number = f"1001{n:04d}55501{n % 90 + 10}2{n * 13 % 100000:05d}00"
    pad.code(w / 2, 318, "code128", number + number[:8], h - 328, 3, "c")


def tesmarrow(pad, w, h, to, n, service=("Brendal parcel", "Colis brendal")):
    """Bilingual: a black head with white words, thin boxes of unequal size, bars in the middle, a grey strip."""
    pad.rect(0, 0, w, 34, "#000000")
    pad.text(8, 24, "tesmarrow", "RB", 21, color="#ffffff")
    pad.lines(w - 8, 14, service, "RB", 10, 12, align="r", color="#ffffff")
    pad.rect(0, 36, w, 12, "#d8d8d8")
    pad.text(w / 2, 45, "SPECIMEN - NON VALABLE POUR LE TRANSPORT / SAMPLE - NOT VALID FOR CARRIAGE", "RB", 6.2, "c")
    pad.text(2, 58, "FROM / DE", "R", 6)
    pad.lines(2, 67, FROM["ca"], "R", 7.5, 8.6)
    pad.box(w - 96, 52, 96, 40, 0.6)
    pad.lines(w - 92, 62, ["WEIGHT / POIDS", f"{n % 4}.{n % 900:03d} kg", "L x W x H (cm) 23x17x9"], "R", 7, 10)
    pad.line(0, 97, w, 97, 0.6)
    pad.text(2, 106, "TO / À", "R", 6)
    pad.lines(16, 122, to, "RB", 12.5, 14.5, fit=w - 20)
    pad.code(w - 6, 128, "datamatrix", f"{to[-1][-7:]}|{n}|TESMARROW|SAMPLE", dots=3, align="r", truth=False)
    pad.line(0, 184, w, 184, 0.6)
    pad.text(w / 2, 197, "PIN / NIP", "R", 7, "c")
    number = f"7023{n:04d}5550{n % 90 + 10}41"
    pad.code(w / 2, 203, "code128", number, 88, 3, "c")
    pad.text(w / 2, 304, f"{number[:4]} {number[4:8]} {number[8:12]} {number[12:]}", "RB", 11, "c")
    pad.line(0, 312, w, 312, 0.6)
    pad.line(w * 0.6, 312, w * 0.6, h, 0.6)
    pad.lines(2, 324, ["Ref. / Réf.", f"ORD-{n}-2026", "Manifest not required / Manifeste non requis", "Payer : 0007023555"], "R", 7, 10)
    pad.text(w * 0.6 + 8, 346, f"{n % 60 + 20}-{chr(65 + n % 26)}", "RB", 30)
    pad.text(w * 0.6 + 8, 360, "Sort / Tri", "R", 7)
    pad.code(w * 0.8, 372, "code39", f"{n % 60 + 20}{chr(65 + n % 26)}", h - 376, 2, "c", truth=False)
    pad.image(2, h - 34, 76, 18, logo("maplurex", "OB", 60))
