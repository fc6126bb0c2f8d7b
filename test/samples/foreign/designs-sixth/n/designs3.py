"""Labels of lot 3. Everything on them is invented; each says that it is a sample."""
from ink import Ink, mark


def shqip(to, ref, city, sum_):
    """100 x 98 mm: ruled on three sides, open at the right; city in a black field, money below it."""
    k = Ink(100, 98)
    k.line(0, 0.5, 100, 0.5, 1).line(0.5, 0, 0.5, 98, 1).line(0, 97.5, 100, 97.5, 1)
    k.text(4, 9, 'Shqiponja Post', 16, True).text(100, 6, 'MOSTËR', 10, True, 'r').text(100, 10, 'nuk vlen për transport', 6.5, anchor='r').line(1, 13, 92, 13, 0.3)
    k.rect(4, 17, 34, 20, fill=0).text(21, 32, city, 34, True, 'm', grey=255).text(4, 43, 'Pagesë në dorëzim', 7).text(4, 50, sum_, 15, True)
    k.text(44, 20, 'Marrësi', 7, grey=80).text(44, 26, '\n'.join(to), 11).text(44, 49, 'Dërguesi: Punishte Dafina, Rr. Shembull 8, 555-0127', 5.5)
    k.line(1, 54, 92, 54, 0.3)
    k.code('code128', ref, 12, 59, 0.5, 22)
    k.text(55, 86, ref, 11, anchor='m').text(4, 94, 'Pako 1/1 · 0,9 kg · e brishtë', 8)
    return k


def norge(to, ref, route):
    """96 x 140 mm, no frame: letter in a box, route, serial shipping number; short rules that touch nothing."""
    k = Ink(96, 140)
    k.rect(0.4, 0.4, 20, 20, 0.8).text(10.4, 16, 'B', 42, True, 'm').text(26, 8, 'Fjordpakke', 20, True).text(26, 14, 'Hentes på utleveringssted', 9).text(26, 19, 'PRØVE – gjelder ikke for transport', 7)
    k.line(6, 25, 90, 25, 0.3).text(0, 31, 'Til', 7, grey=90).text(0, 38, '\n'.join(to), 13).text(96, 61, route, 26, True, 'r')
    k.line(6, 65, 90, 65, 0.3).text(0, 70, 'Fra  Verksted Røsslyng, Eksempelveien 3, 0000 Eksempel, tlf 555-0189', 6.5).text(0, 75, 'Kolli 1/1    Vekt 1,1 kg    Ref 2026-118', 8)
    k.code('qrcode', f'FP{ref}', 0, 80, 0.625)
    k.text(22, 84, 'Sendingsnr.', 7, grey=90).text(22, 90, ref[-10:], 14, True)
    k.code('code128', '00' + ref, 10, 101, 0.375, 30)
    k.text(48, 138, f'(00) {ref}', 10, anchor='m')
    return k


def melayu(to, ref, zone):
    """98 x 138 mm: ladder bars down both sides, a large matrix code between them, address below."""
    k = Ink(98, 138)
    k.text(49, 8, 'ENGGANG EKSPRES', 17, True, 'm').text(49, 13, 'CONTOH - tidak sah untuk penghantaran', 7, anchor='m').line(0, 16, 98, 16, 0.5)
    k.code('code128', ref, 2, 22, 0.375, 14, turned=True)
    k.code('code128', ref, 82, 22, 0.375, 14, turned=True)
    k.code('datamatrix', f'{ref}|{zone}|MY|1/1|0.65|ENGGANG', 36, 24, 1.25, more=('--square',))
    k.text(49, 72, zone, 32, True, 'm').line(0, 80, 98, 80, 0.5)
    k.text(0, 85, 'KEPADA', 7, True).text(0, 91, '\n'.join(to), 11).line(0, 113, 98, 113, 0.3).text(0, 117, 'DARIPADA', 7, True).text(0, 122, 'Kraf Cempaka, 6 Jalan Contoh, 00000 Contoh', 8).text(0, 126, 'Tel 555-0146', 8).line(0, 129, 98, 129, 0.5).text(0, 135, 'No. ' + ref, 10, True).text(98, 135, '0.65 kg', 10, anchor='r')
    return k


def safari(to, ref, town, kinds='[X] Parcel   [ ] Document   [ ] Fragile'):
    """142 x 94 mm, lying waybill in a heavy frame, many cells."""
    k = Ink(142, 94)
    k.rect(0.6, 0.6, 140.8, 92.8, 1.2).line(0, 15, 142, 15, 0.4).line(71, 15, 71, 60, 0.4).line(0, 34, 71, 34, 0.4).line(0, 60, 142, 60, 0.4).line(98, 60, 98, 94, 0.4).line(98, 77, 142, 77, 0.4)
    mark(k, 4, 3, 9, 3)
    k.text(17, 10.5, 'TWIGA COURIER', 18, True).text(138, 7, 'WAYBILL', 10, True, 'r').text(138, 12, 'SAMPLE - not valid for carriage', 7, anchor='r')
    k.text(4, 19, 'SENDER / MTUMAJI', 6).text(4, 24, 'Kikapu Studio, Plot 8 Example Road', 8).text(4, 28.5, 'Exampleton  555-0132', 8).text(4, 38, 'CONTENTS', 6).text(4, 44, kinds, 8).text(4, 50, 'Woven baskets, 2 pcs, 1.8 kg', 8).text(4, 56, 'Declared value 3,400', 8)
    k.text(75, 19, 'RECEIVER / MPOKEAJI', 6).text(75, 26, '\n'.join(to), 12).text(138, 57, town, 22, True, 'r')
    k.code('code128', ref, 12, 64, 0.5, 20)
    k.text(48, 90, ref, 10, anchor='m').text(101, 64, 'RECEIVED BY', 6).text(101, 81, 'DATE AND TIME', 6)
    return k


def oriental(to, ref, dep):
    """98 x 66 mm: two lines, one ITF code, no frame."""
    k = Ink(98, 66)
    k.text(0, 8, 'RÍO POSTAL', 17, True, face='serif').text(98, 8, dep, 20, True, 'r').line(0, 11, 98, 11, 0.4)
    k.text(0, 18, '\n'.join(to), 11, True).text(98, 18, 'Rte: Taller Ombú', 7, anchor='r').text(98, 22, 'Ejemplo 990, tel. 555-0111', 7, anchor='r').line(0, 38, 98, 38, 0.4)
    k.code('itf', ref, 8, 42, 0.375, 16)
    k.text(8, 64.5, ref, 9).text(98, 58, '1/1', 12, True, 'r').text(98, 64.5, 'MUESTRA - no válida para envío', 6.5, anchor='r')
    return k


def volcan(to, ref, zone):
    """94 x 128 mm, no frame and no bars: a disc, one Aztec code, words."""
    k = Ink(94, 128)
    k.disc(16, 16, 16, fill=0).text(16, 22, zone, 30, True, 'm', grey=255).text(38, 9, 'Quindecargo', 20, True).text(38, 15, 'a domicilio · 48 h', 10).text(38, 24, 'MUESTRA', 12, True).text(38, 29, 'no válida para transporte', 7)
    k.text(0, 42, 'Destinatario', 8, grey=90).text(0, 50, '\n'.join(to), 13)
    k.code('aztec', f'{ref};{zone};{to[0]};1/1;0,7', 0, 78, 1.25)
    k.text(44, 82, 'Guía', 8, grey=90).text(44, 89, ref, 14, True).text(44, 97, 'Remitente', 8, grey=90).text(44, 102, 'Taller Capulí\nPasaje Ejemplo 12\nCiudad Ejemplo\n555-0174', 8).text(44, 124, '0,7 kg', 10)
    return k


def euskal(to, ref, zone):
    """132 x 86 mm, lying: grey head, all else white; matrix code and long bars."""
    k = Ink(132, 86)
    k.rect(0, 0, 132, 12, fill=195).text(3, 8.6, 'Belatz Garraioa', 16, True).text(129, 8.6, 'LAGINA - ez du garraiorako balio', 8, True, 'r')
    k.text(0, 18, 'Hartzailea', 7, grey=90).text(0, 25, '\n'.join(to), 12, True).text(132, 36, zone, 52, True, 'r')
    k.text(0, 50, 'Bidaltzailea: Haritz Tailerra, Adibide kalea 5, 20000 Adibideta · 555-0154', 7)
    k.code('datamatrix', ref + zone, 0, 57, 1.0, more=('--square',))
    k.code('code128', ref, 30, 57, 0.375, 20)
    k.text(30, 82, ref, 10).text(132, 82, '1/1 pakete', 9, anchor='r')
    return k


def caribe(to, ref):
    """98 x 144 mm, framed; the paper for the customs is its lower half."""
    k = Ink(98, 144)
    k.rect(0.3, 0.3, 97.4, 143.4, 0.6).text(4, 10, 'Alcatraz Postal', 16, True).text(94, 7, 'MUESTRA', 9, True, 'r').text(94, 11, 'no válida para envío', 6.5, anchor='r').line(0, 14, 98, 14, 0.4)
    k.text(4, 18, 'De: Taller Flamboyán, Calle Ejemplo 77, Ejemplo  555-0159', 6.5).line(0, 21, 98, 21, 0.4).text(4, 26, 'A:', 8).text(12, 27, '\n'.join(to), 12).line(0, 54, 98, 54, 0.4)
    k.code('code128', ref, 16, 58, 0.375, 18)
    k.text(49, 82, ref, 10, True, 'm').line(0, 86, 98, 86, 0.8)
    k.text(4, 91, 'DECLARACIÓN DE ADUANA', 8, True).text(94, 91, 'CN', 9, True, 'r').text(4, 96, '[X] Venta   [ ] Regalo   [ ] Muestra   [ ] Otro', 7)
    for y in (99, 106, 113, 120):
        k.line(4, y, 94, y, 0.25)
    k.text(5, 104, 'Descripción', 7, True).text(70, 104, 'kg', 7, True).text(93, 104, 'USD', 7, True, 'r').text(5, 111, 'Hamaca tejida', 7).text(70, 111, '0,9', 7).text(93, 111, '48,00', 7, anchor='r').text(5, 118, 'Bolso de rafia', 7).text(70, 118, '0,3', 7).text(93, 118, '22,00', 7, anchor='r')
    k.text(4, 126, 'Total 1,2 kg / USD 70,00', 8, True).text(4, 139, 'Firma ______________________  04/03/2026', 7)
    return k


def strip(to, ref, post, words):
    """145 x 80 mm, wide and open: address at the left, everything coded at the right, one upright rule."""
    k = Ink(145, 80)
    mark(k, 0, 0, 9, 4)
    k.text(16, 8, words['carrier'], 18, True).text(0, 17, words['sender'], 7).text(0, 30, '\n'.join(to), 13).text(0, 76, post, 40, True)
    k.line(82, 0, 82, 80, 0.4)
    k.text(86, 6, words['service'], 11, True).text(86, 11, words['sample'], 6.5)
    k.code('code128', ref, 90, 18, 0.375, 26)
    k.text(86, 49, ref, 9)
    k.code('datamatrix', f'{ref} {post}', 90, 54, 1.0)
    k.text(145, 76, words['kg'], 9, anchor='r')
    return k


def hanger(to, ref, words):
    """92 x 132 mm: an outer double rule above and below only, checkered mark, ISO-like title in mixed case."""
    k = Ink(92, 132)
    for y in (0.4, 2.0, 130, 131.6):
        k.line(0, y, 92, y, 0.6)
    for n in range(12):
        k.rect(80 + n % 4 * 3, 6 + n // 4 * 3, 1.5, 3, fill=0)
    k.text(0, 13, words['carrier'], 22, True).text(0, 19, words['service'], 9)
    k.code('qrcode', ref, 0, 25, 1.0)
    k.text(30, 30, words['sample'], 8, True).text(30, 35, words['not'], 6.5).text(30, 44, words['no'], 7).text(30, 50, ref, 12, True)
    k.text(0, 60, words['to'], 7, True).text(0, 67, '\n'.join(to), 13).text(0, 96, words['from'], 7)
    k.code('code39', ref[:10], 4, 102, 0.25, 16)
    k.text(4, 122, ref[:10], 8).text(92, 126, words['kg'], 9, anchor='r')
    return k
