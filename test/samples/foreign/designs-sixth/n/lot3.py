"""Lot 3: orders to pay below, three a sheet, corner marks, turned pages, forwarded mails, two parcels on one roll paper."""
from core import Doc, Label, Page, main
from designs3 import caribe, euskal, hanger, melayu, norge, oriental, safari, shqip, strip, volcan
from ink import Ink
from lot3_parts import NONE, transfer
from producers import chromium, ghostscript, office, pictures, scanned
from odf import draw, image, p, para, writer
from render import pixels, svg
import base64
import os
import subprocess
from PIL import Image
from producers import png

one = lambda ink, edge='ink', turn=0, role='label', slip=False, kind='label': Page(kind, [Label(ink.codes, edge, turn, role)], slip)
W = {'al': ['Drita Hoxhallari', 'Rruga e Mostrës 14, ap. 6', '1000 Shembull', '555-0122'], 'no': ['Ingeborg Fjellvang', 'Prøveveien 22 C', '0000 Eksempel'], 'my': ['Nur Aisyah binti Razak', '17 Lorong Contoh 3', 'Taman Contoh, 50000 Contoh', '555-0138'],
     'ke': ['Amina Odhiambo', 'Sample House, 3rd floor', '27 Sample Street', 'Exampleton 00100'], 'uy': ['Florencia Etcheverry', 'Bvar. Ejemplo 1774 bis', '11000 Ciudad Ejemplo'], 'ec': ['Mishel Toapanta', 'Av. de la Muestra N34-12', 'y Calle Ejemplo, casa 5', 'Ciudad Ejemplo'],
     'eu': ['Ane Etxebeste', 'Adibide plaza 9, 2. ezk.', '20000 Adibideta'], 'do': ['Yokasta Peralta', 'C/ Ejemplo 12, Ens. Muestra', '10100 Ciudad Ejemplo'], 'is': ['Hrafnkell Sýnisson', 'Dæmistún 7', '600 Dæmi'], 'fo': ['Turið Heygadal', 'Dømisgøta 12', '000 Dømi'], 'mt': ['Ġanni Eżempju'], 'cy': ['Andreas Example', '12 Sample Avenue', '1000 Exampleton']}
STRIPS = [dict(carrier='Sleipnir Frakt', sender='Frá: Smiðjan Lyng, Dæmisgata 4, 000 Dæmi, 555-0118', service='HEIM AÐ DYRUM', sample='SÝNISHORN - gildir ekki til flutnings', kg='1/1  1,3 kg'), dict(carrier='Sleipnir Frakt', sender='Frá: Smiðjan Lyng, Dæmisgata 4, 000 Dæmi, 555-0118', service='PÓSTBOX', sample='SÝNISHORN - gildir ekki til flutnings', kg='1/1  0,4 kg'), dict(carrier='Sleipnir Frakt', sender='Frá: Smiðjan Lyng, Dæmisgata 4, 000 Dæmi, 555-0118', service='HEIM AÐ DYRUM', sample='SÝNISHORN - gildir ekki til flutnings', kg='1/2  5,0 kg')]
H = {'carrier': 'Marfil', 'service': 'Messageries de l’Exemple', 'sample': 'SPÉCIMEN', 'not': 'non valable pour le transport', 'no': 'N° de colis', 'to': 'DESTINATAIRE', 'from': 'Exp. : Atelier Frangipane, 5 rue Exemple, Villexemple, 555-0120', 'kg': '0,8 kg'}
HP = {'carrier': 'Bacalar', 'service': 'Paquetería de muestra', 'sample': 'MUESTRA', 'not': 'no válida para envío', 'no': 'N.º de rastreo', 'to': 'PARA', 'from': 'De: Taller Nopal, Calle Ejemplo 33, 555-0163', 'kg': '1,0 kg'}

# n24: the order to pay below the label
PAY = [(shqip(W['al'], 'SH550199201', 'TR', '1.200 L'), transfer(W['al'], '1.200 L', 'PAG00417123', ('Kupon', 'Urdhër pagese (mostër)', 'Paguesi', 'Nënshkrimi', 'IBAN', 'Shuma', 'nuk është etiketë'))),
       (safari(W['ke'], 'TW44100991', 'NBO'), transfer(W['ke'], '3,400.00', 'INV0041788', ('Counterfoil', 'Payment slip (sample)', 'Payer', 'Signature', 'Account', 'Amount', 'not a label'))),
       (euskal(W['eu'], 'BG008120033', 'DN2'), transfer(W['eu'], '38,00 EUR', 'ORD0041755', ('Txartela', 'Ordainagindua (lagina)', 'Ordaintzailea', 'Sinadura', 'Kontua', 'Zenbatekoa', 'ez da etiketa')))]
# n25: three strips a sheet
N25 = [[strip(W['is'], 'SF00881447712', '600', STRIPS[0]), strip(W['fo'], 'SF00881447725', '101', STRIPS[1]), strip(W['is'], 'SF00881447738', '220', STRIPS[2])], [strip(W['fo'], 'SF00881447741', '900', STRIPS[2]), strip(W['is'], 'SF00881447754', '170', STRIPS[0])]]
TEAR = '[2 2] 0 setdash 0.3 setlinewidth 0 99 mm moveto 210 mm 99 mm lineto 0 198 mm moveto 210 mm 198 mm lineto stroke [] 0 setdash'
# n26: corner marks to cut along


def cornered(ink, gap=4):
    """The label between corner marks, which are what is cut along."""
    k = Ink(ink.w + 2 * gap, ink.h + 2 * gap)
    for x in (0, k.w):
        for y in (0, k.h):
            k.line(x, y, x + (6 if x == 0 else -6), y, 0.25).line(x, y, x, y + (6 if y == 0 else -6), 0.25)
    return k.put(ink, gap, gap)


CORNERS = [cornered(norge(W['no'], '370123456789012345', '0021-4')), cornered(volcan(W['ec'], 'QC880012447', 'U7')), cornered(hanger(W['do'], 'BC44100123', HP))]
HEAD = '/SB findfont 15 scalefont setfont 340 760 moveto (%s) show /SA findfont 10 scalefont setfont 340 742 moveto (%s) show 340 726 moveto (%s) show 340 710 moveto (%s) show'
HEADS = [('Klipp ut etiketten', 'Ordre 2026-118', 'Ullsokker grå, 2 par', 'Takk for handelen!'), ('Recorte la guía', 'Pedido 3307', 'Sombrero de paja', 'Gracias.'), ('Recorta tu guía', 'Pedido 5120', 'Hamaca tejida', 'Gracias por tu compra')]


# n27: a forwarded mail, the label on its side
def mail(ink, words, drawn):
    w, h = ink.w, ink.h
    inner = f'<div class=turn style="width:{h}mm;height:{w}mm"><div class=L0 style="width:{w}mm;height:{h}mm;transform:translate({h}mm,0) rotate(90deg);transform-origin:0 0">{svg(ink)}</div></div>' if drawn else f'<img class="L0 pic" src="data:image/png;base64,{base64.b64encode(png(pixels(ink, 203, margin=2).rotate(90, expand=True), 203)).decode()}" style="width:{h + 4}mm;height:{w + 4}mm;display:block">'
    return f'<p class=h><b>{words[0]}</b><br>{words[1]}</p><p>{words[2]}</p><blockquote><p class=h>{words[3]}</p>{inner}<p>{words[4]}</p></blockquote><p>-- <br>{words[5]}</p>'


MAILS = [(melayu(W['my'], 'EG8810244719', 'KUL-3'), ('FW: Label anda', 'Daripada: kaunter@kraf.example · Kepada: bengkel@kraf.example', 'Tolong cetak yang ini, terima kasih.', '> Daripada: Enggang &lt;label@enggang.example&gt;<br>> Tarikh: 4 Mac', 'Sekian, pasukan Enggang.', 'Kraf Cempaka · 555-0146'), True),
         (hanger(W['do'], 'BC44100991', HP), ('RV: guía', 'De: caja@nopal.example · Para: taller@nopal.example', 'Va la guía de mañana.', '> De: Bacalar &lt;guias@bacalar.example&gt;<br>> Fecha: 4 de marzo', 'Atentamente, Bacalar.', 'Taller Nopal · 555-0163'), False)]
MAILCSS = "body{font:10pt 'Liberation Sans'}blockquote{border-left:.8mm solid #88a;margin:4mm 0 4mm 4mm;padding-left:6mm}.h{color:#444;font-size:9pt}.turn{position:relative}"
# n28: two parcels on one long paper, and small papers, as pictures
ROLLS = [((100, 150), [(0, oriental(W['uy'], '44100991204418', 'MVD'), 1, 4), (1, oriental(W['uy'], '44100991204425', 'MVD'), 1, 79)]), ((100, 300), [(0, norge(W['no'], '370123456789018888', '7030-1'), 2, 5), (1, norge(W['no'], '370123456789018895', '7030-1'), 2, 155)]), ((150, 90), [(0, euskal(W['eu'], 'BG008120990', 'GI1'), 9, 2)]), ((100, 140), [(0, volcan(W['ec'], 'QC880019120', 'G3'), 3, 6)])]
at8 = lambda parts: [(key, pixels(ink, 203), round(x * 8), round(y * 8)) for key, ink, x, y in parts]
# n29: a fax of a label on its side
FAXES = [(safari(W['ke'], 'TW44102233', 'MSA'), 90), (caribe(W['do'], 'CP123456785XX'), 0)]
# n31: pages that carry /Rotate
SPUN = [(caribe(W['do'], 'CP551203447XX'), 90, 'frame'), (norge(W['no'], '370123456789017777', '5003-2'), 270, 'ink'), (melayu(W['my'], 'EG8810255520', 'PEN-1'), 180, 'ink')]


def spun(only, path):
    """Each label lies so on the page that it is upright for a viewer who turns the page by /Rotate."""
    ghostscript([(210, 297, [(0, ink, 40, 60, (360 - t) % 360)]) for ink, t, _ in SPUN])(only, path + '.flat')
    subprocess.run(['qpdf', path + '.flat', path, *[f'--rotate=+{t}:{n + 1}' for n, (_, t, _) in enumerate(SPUN)]], check=True)
    os.remove(path + '.flat')


# n32: label, then its papers
PACK = Ink(174, 120)
PACK.text(0, 8, 'Guía de contenido / Packing list', 16, True).text(0, 16, 'Pedido 5120 - Yokasta Peralta', 10)
for n, (what, q) in enumerate((('Hamaca tejida', '1'), ('Bolso de rafia', '1'), ('Tarjeta', '1'))):
    PACK.line(0, 24 + n * 9, 174, 24 + n * 9, 0.2).text(2, 30 + n * 9, what, 10).text(170, 30 + n * 9, q, 10, anchor='r')
PACK.text(0, 70, 'Gracias. Muestra.', 9)
BOOK = [(210, 297, [(0, hanger(W['do'], 'BC44107777', HP), 8, 8, 0)]), (210, 297, [('slip', PACK, 18, 20, 0)]), (210, 297, []), (210, 297, [(0, caribe(W['do'], 'CP998877665XX'), 104, 146, 0)])]
# n33: in the margin of a typed order
ORDER = '/MA findfont 10 scalefont setfont ' + ' '.join(f'30 {790 - n * 14} moveto ({w}) show' for n, w in enumerate(('ORDER 4418', '----------------', 'Basket, large   1', 'Basket, small   1', 'Total 3,400', '', 'Pay on pickup: no', 'Picked by: ____', 'SAMPLE')))
MARGINAL = [(shqip(W['al'], 'SH550177003', 'DR', '900 L'), 100, 20), (oriental(W['uy'], '44100998877661', 'SAL'), 102, 110), (volcan(W['cy'], 'QC880077123', 'L2'), 104, 60)]


def pasted(only):
    """Two labels as pictures in one Writer page, side by side, a title above and a line below."""
    shade = '#000000' if only is None else '#ffffff'
    st = para('H', 16, True, color=shade) + para('N', 10, color=shade, before=3) + para('A', 4) + '<style:style style:name="G" style:family="graphic"><style:graphic-properties style:vertical-pos="top" style:vertical-rel="baseline"/></style:style>'
    want = only[1] if isinstance(only, tuple) else only
    frames = ''
    for n, ink in enumerate(PASTED):
        pic = pixels(ink, 203, margin=3)
        shown = pic if want in (None, n) else Image.new('L', pic.size, 255)
        frames += f'<draw:frame draw:style-name="G" text:anchor-type="as-char" svg:width="{pic.width / 8}mm" svg:height="{pic.height / 8}mm">{image(shown, 203, isinstance(only, tuple) and want == n)}</draw:frame>'
    return writer(297, 210, 14, st, p('H', 'Envíos de hoy') + f'<text:p text:style-name="A">{frames}</text:p>' + p('N', 'Recortar y pegar. Taller Ombú, 555-0111'))


PASTED = [hanger(W['do'], 'BC44106611', HP), volcan(W['ec'], 'QC880066112', 'A9')]
DOCS = [
    Doc('n24-order-to-pay-1', 'ghostscript', [one(a, 'frame' if n == 1 else 'ink') for n, (a, _) in enumerate(PAY)], ghostscript([(210, 297, [(0, a, 35, 25, 0), (None, b, 12, 185, 0)]) for a, b in PAY])),
    Doc('n25-three-strips-1', 'ghostscript', [Page('label', [Label(i.codes) for i in each]) for each in N25], ghostscript([(210, 297, [(None, TEAR, 0, 0, 0), *[(n, i, 32, 9 + n * 99, 0) for n, i in enumerate(each)]]) for each in N25])),
    Doc('n26-corner-marks-1', 'ghostscript', [one(i, 'cut') for i in CORNERS], ghostscript([(210, 297, [(0, i, 8, 10, 0), (None, HEAD % h, 0, 0, 0)]) for i, h in zip(CORNERS, HEADS)])),
    Doc('n27-forwarded-1', 'chromium', [one(i, 'ink' if d else 'picture', 270 if d else 90) for i, _, d in MAILS], chromium(MAILCSS, [mail(*m) for m in MAILS])),
    Doc('n28-roll-pictures-1', 'img2pdf', [Page('label', [Label(i.codes) for _, i, _, _ in parts]) for _, parts in ROLLS], pictures([((w * 8, h * 8), False, at8(parts)) for (w, h), parts in ROLLS], 203.2)),
    Doc('n29-fax-on-side-1', 'scan-g4', [one(i, 'frame', (360 - t) % 360) for i, t in FAXES], ghostscript([(210, 297, [(0, i, 45, 60, t), (None, '/MB findfont 9 scalefont setfont 30 824 moveto (04-03-26 10:0%d  FROM 555-0132  TO 555-0190  PAGE 01) show' % n, 0, 0, 0)]) for n, (i, t) in enumerate(FAXES)]), scanned(200, [0.5, -1.2], fax=True, seed=7)),
    Doc('n30-side-by-side-1', 'libreoffice', [Page('label', [Label(i.codes, 'picture') for i in PASTED])], office('fodt', pasted, 'writer')),
    Doc('n31-turned-pages-1', 'ghostscript', [one(i, e) for i, _, e in SPUN], spun),
    Doc('n32-label-then-papers-1', 'ghostscript', [one(BOOK[0][2][0][1]), Page('packing-slip', slip=True), Page('blank'), one(BOOK[3][2][0][1], 'frame')], ghostscript(BOOK)),
    Doc('n33-beside-typed-order-1', 'ghostscript', [one(i) for i, _, _ in MARGINAL], ghostscript([(210, 297, [(None, ORDER, 0, 0, 0), (0, i, x, y, 0)]) for i, x, y in MARGINAL])),
    Doc('n34-half-a4-1', 'libreoffice', [one(safari(W['ke'], 'TW44105566', 'KSM'), 'frame'), one(hanger(W['cy'], 'MF44100123', H), 'ink')], office('fodg', lambda _: draw(210, 148.5, [[(safari(W['ke'], 'TW44105566', 'KSM'), 34, 26)], [(hanger(W['cy'], 'MF44100123', H), 60, 8)]]), 'draw')),
    Doc('n35-small-scan-1', 'scan-pillow', [one(euskal(W['eu'], 'BG008120771', 'BI4')), one(shqip(W['al'], 'SH550111222', 'VL', '450 L'))], ghostscript([(148, 105, [(0, euskal(W['eu'], 'BG008120771', 'BI4'), 8, 9, 0)]), (148, 148, [(0, shqip(W['al'], 'SH550111222', 'VL', '450 L'), 24, 25, 0)])]), scanned(150, [-1.7, 2.6], 38, 3, 0.25, seed=9)),
    *NONE,
]
if __name__ == '__main__':
    main(DOCS)
