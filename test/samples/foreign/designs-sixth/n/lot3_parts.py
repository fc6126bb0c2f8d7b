"""Forms and papers that stand beside labels in lot 3, and its pages without a label."""
from core import Doc, Page
from ink import Ink, mark
from producers import chromium, ghostscript, pictures
from render import pixels, svg
from odf import p, para, writer
from producers import office


def transfer(name, sum_, ref, words):
    """The order to pay that hangs below a label: boxes, an account, bars of its own."""
    k = Ink(186, 92)
    k.rect(0.3, 0.3, 185.4, 91.4, 0.5).line(62, 0, 62, 92, 0.4, '1.2 0.9').text(4, 7, words[0], 10, True).text(66, 7, words[1], 11, True).text(182, 7, words[6], 7, anchor='r')
    k.text(4, 16, words[2], 7).text(4, 21, name[0], 9).text(4, 26, sum_, 11, True).text(4, 84, words[3], 7)
    for n, (label, value) in enumerate(((words[2], ', '.join(name[:3])), (words[4], 'XX00 0000 0000 0000 0000 0'), (words[5], sum_))):
        k.text(66, 17 + n * 14, label, 7).rect(66, 19 + n * 14, 114, 7, 0.3).text(68, 24 + n * 14, value, 9)
    k.code('code128', ref, 72, 66, 0.375, 13)
    k.text(72, 84, ref, 8)
    return k


def card(words, code):
    """A name and address with bars on a card: none of it for carriage."""
    k = Ink(86, 54)
    k.rect(0.3, 0.3, 85.4, 53.4, 0.5, radius=4).text(6, 10, words[0], 14, True).text(6, 18, words[1], 10).text(6, 23, words[2], 8).text(6, 28, words[3], 8)
    k.code('code39', code, 8, 33, 0.25, 11)
    k.text(80, 51, words[4], 6.5, anchor='r')
    return k


TAG = Ink(60, 110)
TAG.rect(0.4, 0.4, 59.2, 109.2, 0.8, radius=6).disc(30, 10, 4, fill=None, line=0.5).text(30, 30, 'EQUIPAJE', 16, True, 'm').text(6, 45, 'Nombre', 7).line(6, 51, 54, 51, 0.3).text(6, 60, 'Calle', 7).line(6, 66, 54, 66, 0.3).text(6, 75, 'Ciudad', 7).line(6, 81, 54, 81, 0.3).text(30, 102, 'Muestra', 7, anchor='m')
VIAL = Ink(50, 24)
VIAL.code('datamatrix', 'LAB-0044172-A', 2, 3, 0.75, more=('--square',))
VIAL.text(18, 7, 'Prøve 0044172-A', 9, True).text(18, 12, '04.03.2026  07:40', 7).text(18, 17, 'Serum · 2-8 °C', 7).text(18, 22, 'Laboratorium Eksempel', 6)
PARK = Ink(76, 120)
PARK.text(38, 12, 'PARKERING', 20, True, 'm').text(38, 22, 'Eksempel torg, felt B', 9, anchor='m').text(38, 44, '14:35', 44, True, 'm').text(38, 56, '04.03.2026', 12, anchor='m').text(38, 66, 'kr 42,00 · PRØVE', 9, anchor='m')
PARK.code('code128', 'P0042114355', 10, 74, 0.375, 20)
PARK.text(38, 100, 'P0042114355', 8, anchor='m').text(38, 110, 'Legg billetten synlig i frontruta', 8, anchor='m')
ROWS = [('TW44100991', 'Amina Odhiambo', 'NBO'), ('TW44100992', 'Peter Mwangi', 'MSA'), ('TW44101004', 'Grace Wanjiru', 'KSM'), ('TW44101017', 'Otieno Were', 'NKR'), ('TW44101020', 'Halima Yusuf', 'ELD'), ('TW44101033', 'Brian Kiptoo', 'THK'), ('TW44101046', 'Faith Njeri', 'NBO')]
DAY = Ink(180, 250)
DAY.text(0, 8, 'Daily collection sheet', 18, True).text(0, 15, 'Kikapu Studio, Plot 8 Example Road - 04/03/2026 - SAMPLE', 9).line(0, 19, 180, 19, 0.5)
for n, (ref, name, town) in enumerate(ROWS):
    DAY.code('code128', ref, 6, 24 + n * 26, 0.375, 13)
    DAY.text(6, 42 + n * 26, ref, 8).text(78, 30 + n * 26, name, 10, True).text(78, 36 + n * 26, f'{n * 7 + 3} Sample Street, Exampleton', 9).text(150, 33 + n * 26, town, 16, True).line(0, 46 + n * 26, 180, 46 + n * 26, 0.2)
DAY.text(0, 214, 'Parcels: 7    Driver: ____________________   Time: ________', 10)
CHEQUE = Ink(178, 72)
CHEQUE.rect(0.3, 0.3, 177.4, 71.4, 0.4).text(6, 12, 'Banco del Ejemplo', 16, True).text(172, 12, 'N.º 0000417', 11, anchor='r').text(6, 26, 'Páguese a: Taller Ceibo', 11).rect(130, 19, 42, 10, 0.4).text(151, 26, '$ 4.350,00', 12, True, 'm').text(6, 36, 'La suma de cuatro mil trescientos cincuenta pesos', 10).line(110, 56, 172, 56, 0.3).text(6, 56, 'Ciudad Ejemplo, 4 de marzo', 9).text(6, 66, '00000417 0000 0000000 00', 12, face='mono').text(172, 66, 'MUESTRA, sin valor', 8, anchor='r')
WINE = Ink(90, 110)
WINE.rect(0.3, 0.3, 89.4, 109.4, 0.4).rect(3, 3, 84, 104, 0.9).text(45, 26, 'Ribera', 30, True, 'm', face='serif').text(45, 36, 'del Ejemplo', 16, anchor='m', face='serif').text(45, 50, '2024', 20, anchor='m', face='serif').text(45, 60, 'Bodega Muestra, Camino Ejemplo 3, 00000 Villaejemplo', 6.5, anchor='m').text(45, 66, '75 cl   13,5 % vol', 8, anchor='m')
WINE.code('ean13', '200551200010', 27, 72, 0.375, 22)
WINE.text(45, 103, 'Muestra', 7, anchor='m')
STEPS = '/SB findfont 20 scalefont setfont 50 770 moveto (Hvordan pakke) show /SA findfont 11 scalefont setfont ' + ' '.join(f'50 {730 - n * 18} moveto ({w}) show' for n, w in enumerate(('1. Legg varen i esken.', '2. Tett med papir.', '3. Teip alle kanter.', '4. Fest etiketten flatt.', 'PRØVE'))) + ' 50 380 220 150 rectstroke 70 400 180 110 rectstroke 300 380 180 150 rectstroke'
WARRANTY = '<div style="border:3px double #000;padding:8mm"><h1>Záruční list</h1><p>Výrobce: Dílna Šalvěj, Vzorová 6, 000 00 Vzorov · tel. 555-0178</p><p>Zákazník: ______________________<br><br>Adresa: ______________________</p>%s<p>Výrobní číslo SN-2026-00417. Vzor, bez platnosti.</p></div>'
LIST = '<h1>Zamówienia do wysłania – 4 marca</h1>' + ''.join(f'<section><b>{i + 1}. {n}</b><span>ul. Przykładowa {i * 9 + 4}, 00-000 Przykładowo</span><em>{q} szt. · półka {chr(65 + i)}{i}</em></section>' for i, (n, q) in enumerate((('Zofia Lipska', 2), ('Jan Bukowy', 1), ('Hanna Wierzba', 4), ('Piotr Klon', 1), ('Ewa Jodła', 3)))) + '<p>WZÓR</p>'
CSS = "body{font:11pt 'Liberation Sans'}section{border:.4mm solid #000;margin:5mm 0;padding:4mm;display:grid;grid-template-columns:1fr 1fr auto;width:170mm}h1{font-size:18pt}"
bars = Ink(60, 12)
bars.code('code128', 'SN-2026-00417', 0, 0, 0.375, 12)
on8 = lambda ink, w, h, x, y: ((w * 8, h * 8), False, [(None, pixels(ink, 203), x * 8, y * 8)])
BOX = para('H', 15, True, after=4) + para('N', 11, after=3)
GIFT = p('H', 'Carta di garanzia e saluti') + p('N', 'Cara Ginevra, ecco il tuo regalo da parte di Studio Tecnico Valli. Per il cambio scrivi a cambi@ginestra.example indicando il numero 55120.') + p('N', 'Bottega Ginestra, Via Esempio 3, 00000 Borgo Esempio. CAMPIONE.')
NONE = [
    Doc('n36-last-none-1', 'ghostscript', [Page(k) for k in ('other', 'other', 'other', 'instructions', 'blank', 'other')],
        ghostscript([(210, 297, [(None, transfer(['Ana Berisha', 'Rr. Mostra 14', '1000 Shembull'], '1.200 L', 'PAG00417123', ('Kupon', 'Urdhër pagese (mostër)', 'Paguesi', 'Nënshkrimi', 'IBAN', 'Shuma', 'nuk është etiketë')), 12, 180, 0)]), (210, 297, [(None, DAY, 15, 18, 0)]), (210, 297, [(None, CHEQUE, 16, 30, 0)]), (210, 297, [(None, STEPS, 0, 0, 0)]), (210, 297, []),
                     (210, 297, [(None, card(('Biblioteca Ejemplo', 'Daniela Restrepo Gil', 'Calle Ejemplo 45 # 12-30', 'Ciudad Ejemplo', 'Carné de muestra'), 'BIB00417'), 20, 20, 0), (None, card(('Biblioteca Ejemplo', 'Renzo Huamán Poma', 'Av. Ejemplo 2231', 'Distrito Muestra', 'Carné de muestra'), 'BIB00991'), 112, 20, 0)])])),
    Doc('n36-last-none-2', 'img2pdf', [Page('other')] * 4, pictures([on8(TAG, 70, 120, 5, 5), on8(VIAL, 54, 28, 2, 2), on8(PARK, 80, 125, 2, 2), on8(WINE, 100, 120, 5, 5)], 203.2)),
    Doc('n36-last-none-3', 'chromium', [Page('other'), Page('pick-list')], chromium(CSS, [WARRANTY % svg(bars), LIST])),
    Doc('n36-last-none-4', 'libreoffice', [Page('other')], office('fodt', lambda _: writer(148, 210, 15, BOX, GIFT), 'writer')),
]
