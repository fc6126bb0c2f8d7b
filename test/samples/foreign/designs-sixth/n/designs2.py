"""Labels of lot 2. Everything on them is invented; each says that it is a sample."""
from ink import Ink, mark


def slovak(to, ref, kind='R', words=('Adresát', 'Odosielateľ: Dielňa Šalvia, Príkladná 6, 000 00 Príkladov', 'VZOR – neplatí na prepravu', 'Výplatné\nuhradené')):
    """100 x 70 mm, round corners, a huge registration letter beside the bars."""
    k = Ink(100, 70)
    k.rect(0.3, 0.3, 99.4, 69.4, 0.5, radius=3)
    k.text(5, 6, words[1], 6).line(4, 9, 72, 9, 0.25)
    k.rect(75, 4, 21, 15, 0.4).text(85.5, 9.5, words[3], 8, anchor='m')
    k.text(5, 15, words[0], 7, grey=90).text(30, 23, '\n'.join(to), 11)
    k.line(0.3, 41, 99.7, 41, 0.4).text(6, 61, kind, 50, True).line(24, 41, 24, 69.7, 0.4)
    k.code('code128', ref, 31, 44, 0.375, 14)
    k.text(60, 62, f'{ref[:2]} {ref[2:5]} {ref[5:8]} {ref[8:11]} {ref[11:]}', 10, True, 'm').text(60, 67, words[2], 6.5, anchor='m')
    return k


def island(to, ref, post, words):
    """185 x 92 mm, a wide consignment note: columns parted by dotted lines, only heads in grey bands."""
    k = Ink(185, 92)
    k.rect(0, 0, 185, 7, fill=205).text(2, 5, words['title'], 11, True).text(183, 5, words['sample'], 8, anchor='r')
    k.line(62, 9, 62, 92, 0.3, '0.6 0.8').line(124, 9, 124, 92, 0.3, '0.6 0.8')
    k.text(2, 13, words['from'], 7, True).text(2, 18, words['sender'], 8).rect(0, 36, 60, 6, fill=205).text(2, 40.3, words['what'], 7.5, True).text(2, 47, words['goods'], 8)
    k.text(2, 70, words['sign'], 7).line(2, 82, 56, 82, 0.25)
    k.text(65, 13, words['to'], 7, True).text(65, 20, '\n'.join(to), 12).rect(64, 45, 58, 6, fill=205).text(66, 49.3, words['pay'], 7.5, True).text(66, 57, words['paid'], 10, True)
    k.text(93, 84, post, 50, True, 'm')
    mark(k, 128, 10, 10, 3)
    k.text(142, 17, words['carrier'], 16, True)
    k.code('code128', ref, 131, 27, 0.375, 24)
    k.text(155, 56, ref, 10, anchor='m')
    k.code('aztec', f'{ref}:{post}:1/1', 130, 63, 0.75)
    k.text(160, 70, '1 / 1', 15, True).text(160, 78, words['kg'], 9)
    return k


def carpat(to, ref, hub, ramburs):
    """140 x 95 mm, lying: a table of dotted cells without outer lines, bars on a slant of two heights."""
    k = Ink(140, 95)
    k.text(0, 8, 'MIPOLUX', 22, True).text(52, 4, 'AWB', 7, grey=80).text(52, 8.5, ref, 12, True).text(140, 5, 'MOSTRĂ', 10, True, 'r').text(140, 9, 'nevalabilă pentru transport', 6.5, anchor='r')
    for y in (12, 34, 48):
        k.line(0, y, 140, y, 0.25, '0.5 0.7')
    k.line(64, 12, 64, 48, 0.25, '0.5 0.7')
    k.text(0, 16, 'Expeditor', 6.5, grey=80).text(0, 21, 'Atelier Brândușa\nStr. Exemplului 12, 000000 Exemplu\nTel. 555-0145', 8)
    k.text(67, 16, 'Destinatar', 6.5, grey=80).text(67, 20.5, '\n'.join(to), 8.5, True)
    k.text(0, 39, 'Ramburs (numerar)', 6.5, grey=80).text(0, 46, ramburs, 15, True).text(67, 39, 'Conținut', 6.5, grey=80).text(67, 45, 'ceramică, fragil · 1,4 kg · deschidere la livrare: NU', 7.5)
    k.text(0, 74, hub, 64, True)
    k.code('code128', ref + '001', 66, 52, 0.375, 22)
    k.text(98, 79, ref + '001', 9, anchor='m')
    k.code('qrcode', f'{ref}/{hub}/1', 4, 77, 0.625)
    k.text(28, 82, 'Colet 1/1', 11, True).text(28, 88, 'Semnătura:', 7).line(42, 88.3, 90, 88.3, 0.2).text(140, 94, 'mipolux.example', 6.5, anchor='r')
    return k


def srpska(to, ref, zone, sum_):
    """96 x 140 mm: ruled above and at the right only; two lines of cells, QR in the corner."""
    k = Ink(96, 140)
    k.line(0, 0.6, 96, 0.6, 1.2).line(95.4, 0, 95.4, 140, 1.2)
    k.text(0, 10, 'Брзица', 24, True, face='serif').text(91, 7, 'УЗОРАК', 10, True, 'r').text(91, 11, 'не важи за превоз', 7, anchor='r')
    k.code('code128', ref, 8, 16, 0.375, 22)
    k.text(40, 43, ref, 11, anchor='m')
    k.line(0, 47, 92, 47, 0.3).text(0, 51, 'ПРИМАЛАЦ', 7, True).text(0, 57, '\n'.join(to), 12)
    k.line(0, 82, 92, 82, 0.3).line(46, 82, 46, 98, 0.3).text(0, 86, 'ОТКУПНИНА', 7).text(0, 95, sum_, 17, True).text(49, 86, 'ОДЛОЖЕНО ПЛАЋАЊЕ', 7).text(49, 95, 'ДА', 17, True).line(0, 98, 92, 98, 0.3)
    k.text(0, 102, 'ПОШИЉАЛАЦ  Радионица Дрен, Пример 9, 00000', 6.5)
    k.text(0, 133, zone, 60, True)
    k.code('qrcode', f'BZ|{ref}|{zone}|{sum_}', 66, 108, 0.875)
    k.text(0, 139.5, 'Маса 0,9 kg   пакет 1/1', 7)
    return k


def bharat(to, ref, route, pin):
    """95 x 145 mm: everything in cells, goods listed inside the label, two bar codes."""
    k = Ink(95, 145)
    k.rect(0.25, 0.25, 94.5, 144.5, 0.5)
    for y in (14, 42, 68, 78, 100, 118):
        k.line(0, y, 95, y, 0.4)
    k.line(58, 42, 58, 68, 0.4).line(50, 68, 50, 78, 0.4)
    k.text(3, 9.5, 'Surahi Express', 15, True).text(92, 6, 'PREPAID', 12, True, 'r').text(92, 11, 'Do not collect cash', 7, anchor='r')
    k.code('code128', ref, 14, 17, 0.375, 17)
    k.text(47, 39, ref, 10, True, 'm')
    k.text(3, 46, 'Ship to', 6.5).text(3, 51, '\n'.join(to), 9, True).text(76.5, 49, 'Routing', 6.5, anchor='m').text(76.5, 57, route, 17, True, 'm').text(76.5, 65, pin, 15, anchor='m')
    k.text(3, 72, 'Seller: Kumud Handlooms, 4 Example Lane', 6).text(3, 76, 'Exampur 000000  GSTIN 00AAAAA0000A0Z0', 6).text(53, 72, 'Ph 555-0133   Wt 0.42 kg', 6.5).text(53, 76, 'Date 04-03   Qty 2', 6.5)
    k.text(3, 82, 'Product', 7, True).text(70, 82, 'Qty', 7, True, 'm').text(92, 82, 'Total', 7, True, 'r').line(3, 83.5, 92, 83.5, 0.2)
    k.text(3, 88, 'Cotton dupatta, indigo', 7).text(70, 88, '1', 7, anchor='m').text(92, 88, 'Rs 540', 7, anchor='r').text(3, 93, 'Block printed runner', 7).text(70, 93, '1', 7, anchor='m').text(92, 93, 'Rs 820', 7, anchor='r').text(92, 98, 'Rs 1360', 8, True, 'r')
    k.code('code128', 'ORD-77120-4', 14, 102.5, 0.375, 10)
    k.text(47, 116.5, 'ORD-77120-4', 7, anchor='m')
    k.text(3, 123, 'If undelivered, return to:', 7, True).text(3, 128, 'Kumud Handlooms, 4 Example Lane, Exampur 000000', 7).text(3, 136, 'SAMPLE – not valid for carriage', 10, True).text(3, 142, 'All disputes are subject to Exampur courts. Goods once sold will only be exchanged.', 5.5)
    return k


def luzon(to, ref, hub, words=('SAMPLE', 'not valid for shipping')):
    """98 x 148 mm, no frame: a black strip with words upwards at the left, a large QR, bars at the foot."""
    k = Ink(98, 148)
    k.rect(0, 0, 13, 148, fill=0).text(9.5, 144, 'HABAGAT PADALA   ·   ' + hub, 20, True, rot=270, grey=255)
    k.text(18, 8, hub, 28, True).text(98, 5, words[0], 9, True, 'r').text(98, 9, words[1], 6.5, anchor='r')
    k.code('qrcode', f'https://habagat.example/t/{ref}', 18, 16, 1.25)
    k.text(62, 20, 'Order', 6.5, grey=90).text(62, 25, ref[-7:], 12, True).text(62, 32, 'Pieces', 6.5, grey=90).text(62, 37, '1 of 1', 12, True).text(62, 44, 'COD', 6.5, grey=90).text(62, 49, 'P 0.00', 12, True)
    k.line(18, 60, 98, 60, 0.5).text(18, 65, 'BUYER', 7, True).text(18, 71, '\n'.join(to), 11).line(18, 92, 98, 92, 0.5).text(18, 97, 'SELLER', 7, True).text(18, 102, 'Likha ni Tala, 27 Halimbawa St, Bgy Halimbawa\nTel 555-0168', 8)
    k.line(18, 112, 98, 112, 0.5)
    k.code('code128', ref, 24, 117, 0.375, 20)
    k.text(58, 142, ref, 10, True, 'm').text(58, 147.5, 'Delivery attempt   1   2   3', 7, anchor='m')
    return k


def store(to, no, ref):
    """98 x 92 mm: pick-up in a shop: number of the shop, three rows of bars, no frame but one line."""
    k = Ink(98, 92)
    k.text(0, 8, '店到店', 20, True).text(98, 8, '範例 – 不可寄送', 10, anchor='r').line(0, 11, 98, 11, 0.6)
    k.text(0, 18, '門市', 8).text(14, 22, no, 26, True).text(56, 19, '範例市樣品店', 12, True).text(56, 25, '取件人 ' + to, 11)
    k.code('code39', ref[:9], 0, 31, 0.25, 12)
    k.text(0, 47, ref[:9], 8)
    k.code('code39', ref[9:], 0, 52, 0.25, 12)
    k.text(0, 68, ref[9:], 8)
    k.code('qrcode', f'B1||{ref}||{no}', 70, 34, 0.875)
    k.text(0, 76, '寄件人 木棉手作 555-0182', 8).text(98, 76, '取件不付款', 12, True, 'r').line(0, 79, 98, 79, 0.3).text(0, 84, '截止日 03/11 23:59   勿遮蓋條碼', 7).text(0, 90, '範例單據 不可寄送', 7)
    return k


def pampa(to, ref, cp):
    """100 x 190 mm, long: label in the upper part, torn edge as dots, proof of delivery to sign that belongs to it."""
    k = Ink(100, 186)
    k.rect(0.4, 0.4, 99.2, 185.2, 0.8)
    k.text(4, 10, 'Chasqui del Litoral', 15, True).text(96, 10, 'S', 26, True, 'r').line(0, 14, 100, 14, 0.8)
    k.code('qrcode', f'{{"id":"{ref}","t":"envio"}}', 4, 19, 1.0)
    k.text(45, 22, 'Envío', 7, grey=90).text(45, 28, ref, 12, True).text(45, 39, 'CP ' + cp, 24, True).text(45, 48, 'Despachar: 05/03', 9)
    k.line(0, 56, 100, 56, 0.4).text(4, 61, 'Destinatario', 7, grey=90).text(4, 67, '\n'.join(to), 12).line(0, 92, 100, 92, 0.4).text(4, 97, 'Remitente: Taller Ceibo, Pje. Ejemplo 5, Ciudad Ejemplo, 555-0124', 7)
    k.line(0, 101, 100, 101, 0.4)
    k.code('code128', ref, 12, 106, 0.5, 24)
    k.text(50, 135, ref, 10, anchor='m').line(0, 140, 100, 140, 0.4, '0.6 1')
    k.text(4, 146, 'Constancia de entrega', 9, True).text(4, 156, 'Firma', 7).line(16, 156.5, 60, 156.5, 0.2).text(4, 166, 'Aclaración', 7).line(22, 166.5, 60, 166.5, 0.2).text(4, 176, 'DNI', 7).line(16, 176.5, 60, 176.5, 0.2)
    k.code('datamatrix', ref, 72, 150, 0.875)
    k.text(96, 182, 'MUESTRA – no válida para envío', 7.5, True, 'r')
    return k


def cumbia(to, ref, city, words):
    """128 x 92 mm, lying: left third grey, huge city, ladder bars at the right edge; no lines at all."""
    k = Ink(128, 92)
    k.rect(0, 0, 38, 92, fill=200)
    mark(k, 4, 5, 13, 0)
    k.text(4, 26, words['carrier'], 14, True).text(4, 33, words['service'], 8).text(4, 45, words['from'], 6.5, True).text(4, 49, words['sender'], 6.5).text(4, 76, words['sample'], 10, True).text(4, 80, words['not'], 6).text(4, 88, '0,8 kg  1/1', 9)
    k.text(43, 7, words['to'], 7, True).text(43, 14, '\n'.join(to), 12).text(43, 62, city, 40, True)
    k.code('datamatrix', f'{ref}/{city}', 43, 70, 0.875)
    k.text(66, 76, words['guide'], 7).text(66, 82, ref, 12, True)
    k.code('code128', ref, 110, 6, 0.375, 16, turned=True)
    return k


def aotea(to, ref, words):
    """92 x 62 mm: a parcel ticket: white on black number, one code, address by rule."""
    k = Ink(92, 62)
    k.rect(0, 0, 92, 12, fill=0).text(3, 8.6, words['carrier'], 17, True, grey=255).text(89, 8.4, words['zone'], 15, True, 'r', grey=255)
    k.text(0, 17, words['to'], 6.5, grey=80).text(0, 22.5, '\n'.join(to), 10.5, True)
    k.code('code128', ref, 4, 39, 0.375, 15)
    k.text(0, 60.5, ref, 8).text(92, 60.5, words['sample'], 7, True, 'r')
    k.text(92, 17, words['sender'].split('\n')[0], 6, anchor='r').text(92, 20, words['sender'].split('\n')[1], 6, anchor='r')
    return k
