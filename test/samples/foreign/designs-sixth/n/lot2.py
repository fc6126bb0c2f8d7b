"""Lot 2: labels of CSS grids and Writer tables, screenshots, return sheets, long papers, picture files, bad scans, pouches, small pages."""
import json
import re
import sys
import numpy as np
from PIL import Image
from core import Doc, Label, Page, main
from designs2 import aotea, bharat, carpat, cumbia, island, luzon, pampa, slovak, srpska
from ink import Ink
from lot2_css import GRID, GRIDS, SCREENS, SHOT, THIRD, THREE, declared, window
from lot2_none import NONE
from odf import draw, image, p, para, writer
from producers import chromium, ghostscript, latex, office, scanned, shot
from render import pixels
from words2 import CA, CO, FO, IS, PE, WHO2 as WHO, ZA

one = lambda kind, ink, edge='ink', turn=0, role='label', slip=False: Page(kind, [Label(ink.codes, edge, turn, role)], slip)

# n13: two to a lying sheet
TWO = [[luzon(WHO['ph'], f'HB2026030477{n}', h) for n, h in ((1205, 'NCR-07'), (1206, 'R4A-2'))], [pampa(WHO['ar'], f'4112009{n}', c) for n, c in ((9871, '5000'), (9902, 'X5014'))], [luzon(WHO['ph'], 'HB20260304771299', 'CEB-1')]]
DOTS = '[1 3] 0 setdash 0.5 setlinewidth 421 20 moveto 421 575 lineto stroke [] 0 setdash'

# n14: a label that is a table in a letter
TABLES = [('Sveiki, Inga!', 'Uzlīmi izgrieziet un uzlīmējiet uz kastes.', 'Vilnītis Kurjers', 'SAŅĒMĒJS', 'Inga Bērziņa\nParauga iela 9-14\nLV-0000 Paraugi\ntālr. 555-0101', 'SŪTĪTĀJS', 'Darbnīca Pīlādzis, Parauga iela 7, tālr. 555-0117', 'R-12', 'VK7100991234', 'PARAUGS – nav derīgs sūtīšanai'),
          ('Tere, Liisa!', 'Lõika silt välja ja kleebi pakile.', 'Rändur Kuller', 'SAAJA', 'Liisa Tamm\nNäite tee 11-3\n00000 Näidisküla\ntel 555-0185', 'SAATJA', 'Töökoda Kadakas, Näite tn 3, tel 555-0152', 'TLN 4', 'RK0047719283', 'NÄIDIS – ei kehti saatmiseks'),
          ('Poštovani,', 'adresnicu izrežite i zalijepite na paket. Kurir dolazi u utorak.', 'Galebova dostava', 'PRIMATELJ', 'Petar Babić\nPrimjerna obala 4\n21000 Primjerovac\n555-0150', 'POŠILJATELJ', 'Radionica Lipa, Primjerna ulica 3', 'ST-8', 'GD2200456781', 'UZORAK – ne vrijedi za prijevoz')]


def coded(ref):
    bars, square = Ink(62, 15), Ink(20, 20)
    bars.code('code128', ref, 0, 0, 0.375, 15)
    square.code('datamatrix', ref + '//1', 0, 0, 0.875, more=('--square',))
    return bars, square


def tabled(only):
    ink, pale = '#000000', '#000000' if only is None else '#ffffff'
    st = para('H', 14, True, color=pale, after=3) + para('B', 14, True, color=pale, after=3, extra='fo:break-before="page"') + para('N', 10, color=pale, after=4) + para('s', 7) + para('t', 13, after=0) + para('z', 40, True, 'center') + para('c', 18, True, color='#ffffff') + para('m', 10, align='center', before=1)
    st += ''.join(f'<style:style style:name="{n}" style:family="{f}"><style:{f}-properties {props}/></style:style>' for n, f, props in
                  (('T', 'table', 'style:width="104mm" table:align="left"'), ('C1', 'table-column', 'style:column-width="66mm"'), ('C2', 'table-column', 'style:column-width="38mm"'), ('K', 'table-cell', f'fo:padding="2mm" fo:border="0.75pt solid {ink}"'),
                   ('KB', 'table-cell', f'fo:padding="2mm" fo:border="0.75pt solid {ink}" fo:background-color="#000000"'), ('KC', 'table-cell', f'fo:padding="3mm" fo:border="0.75pt solid {ink}"')))
    st += '<style:style style:name="G" style:family="graphic"><style:graphic-properties style:vertical-pos="top" style:vertical-rel="baseline"/></style:style>'
    cell = lambda style, inner, span=1: f'<table:table-cell table:style-name="{style}" table:number-columns-spanned="{span}" office:value-type="string">{inner}</table:table-cell>' + '<table:covered-table-cell/>' * (span - 1)
    row = lambda *cells: '<table:table-row>' + ''.join(cells) + '</table:table-row>'
    pic = lambda k: f'<text:p text:style-name="m"><draw:frame draw:style-name="G" text:anchor-type="as-char" svg:width="{k.w}mm" svg:height="{k.h}mm">{image(pixels(k, 203), 203)}</draw:frame></text:p>'
    body = ''
    for n, (dear, words, carrier, to, who, sent, sender, zone, ref, sample) in enumerate(TABLES):
        bars, square = coded(ref)
        body += p('B' if n else 'H', dear) + p('N', words)
        body += (f'<table:table table:name="L{n}" table:style-name="T"><table:table-column table:style-name="C1"/><table:table-column table:style-name="C2"/>' + row(cell('KB', p('c', carrier), 2)) + row(cell('K', p('s', to) + p('t', who)), cell('K', p('z', zone)))
                 + row(cell('K', p('s', sent) + p('s', sender), 2)) + row(cell('KC', pic(bars) + p('m', ref)), cell('KC', pic(square))) + row(cell('K', p('s', sample), 2)) + '</table:table>') + p('N', '') + p('N', 'Pildspalva · 1/1 · 555-0117' if n == 0 else '1/1')
    return writer(210, 297, 22, st, body)


# n16: return sheets
RET = r'''\sffamily{\LARGE\bfseries %s}\par\bigskip %s\par\bigskip\begin{enumerate}\item %s\item %s\item %s\end{enumerate}\vfill{\footnotesize %s}'''
BACK = [(cumbia(['Taller Guayacán', 'Devoluciones', 'Cra. Ejemplo 7-21', '555-0149'], 'VA900991122', 'BOG', {**CO, 'service': 'Devolución', 'sender': 'Daniela Restrepo Gil\nCalle Ejemplo 45\nCiudad Ejemplo'}), 40, 130, 0, ('Devolución de su compra', 'Orden 4411', 'Empaque el artículo.', 'Pegue la etiqueta de abajo.', 'Entréguelo en una agencia.', 'Muestra, sin validez.')),
        (cumbia(['Taller Retama', 'Devoluciones', 'Jr. Ejemplo 310', '555-0156'], 'WX770012390', 'LIM', {**PE, 'service': 'Devolución', 'sender': 'Renzo Huamán\nAv. Ejemplo 2231\nDistrito Muestra'}), 60, 120, 90, ('Devolver un producto', 'Pedido 902', 'Imprima esta hoja.', 'Corte y pegue la etiqueta.', 'Guarde su constancia.', 'Muestra, sin validez.')),
        (carpat(['Atelier Brândușa', 'Retururi', 'Str. Exemplului 12, 000000 Exemplu', 'tel. 555-0145'], '4012399001', 'SBZ', '0,00'), 35, 150, 0, ('Etichetă de retur', 'Comanda 3391', 'Puneți produsul în cutie.', 'Lipiți eticheta de mai jos.', 'Predați coletul curierului.', 'Mostră, nevalabilă.'))]

# n17: long papers
STUB = Ink(98, 40)
STUB.line(0, 0, 98, 0, 0.3, '1.2 0.9').text(0, 7, 'PACKING LIST  order 4771205', 10, True).text(0, 14, '1 x  Rattan tray, round', 9).text(0, 19, '2 x  Abaca coaster', 9).text(0, 28, 'Salamat! Likha ni Tala', 9).text(0, 36, 'Keep this slip. Sample.', 7)
RECEIPT = Ink(95, 70)
RECEIPT.line(0, 0, 95, 0, 0.3, '1.2 0.9').text(0, 8, 'Comprobante de despacho', 12, True).text(0, 16, 'Envío 41120099871 - 05/03 09:40', 9).text(0, 22, 'Importe $ 4.350,00', 9).text(0, 28, 'Peso 1,1 kg - Sucursal Ejemplo', 9).text(0, 40, 'Conserve este comprobante. MUESTRA', 8)
LONG = [(110, 270, [(0, pampa(WHO['ar'], '41120099871', '5000'), 5, 4, 0), (None, RECEIPT, 7, 196, 0)]), (101.6, 203.2, [(0, luzon(WHO['ph'], 'HB20260304771205', 'NCR-07'), 1.8, 3, 0), ('slip', STUB, 1.8, 158, 0)]), (105, 210, [(0, slovak(['Núria Casals', 'Carrer de la Mostra 18', '08000 Vilaexemple'], 'RE551203447SX', 'R', CA), 2.5, 3, 0), (None, Ink(100, 34).text(0, 6, 'Resguard per al remitent', 11, True).text(0, 16, 'RE551203447SX  4/3/2026  1,2 kg  3,60 EUR', 9).text(0, 24, 'Mostra. Guardeu aquest resguard.', 8), 2.5, 95, 0)])]

# n20: bad scans of one bit, with punch holes and a fold
HOLES = '0.25 setgray newpath 28 300 8 0 360 arc fill newpath 28 527 8 0 360 arc fill 0.78 setgray 0.6 setlinewidth 0 421 moveto 595 421 lineto stroke 0 setgray'
BAD = [(bharat(WHO['in'], 'SX1400123456789', 'DEL/2', '110000'), 60, 20, 180), (luzon(WHO['ph'], 'HB20260304770012', 'DVO-3'), 90, 25, 0)]

# n21: folded into a pouch
SLIPS = []
for head, rows in (('Dodací list', ('1 × Lyžica orech', '1 × Misa dub')), ('Packing slip / Pakstrokie', ('1 × Beaded bowl', '1 × Card')), ('Följesedel', ('2 × Mössa ull',))):
    k = Ink(88, 60)
    k.text(0, 7, head, 14, True)
    for n, r in enumerate(rows):
        k.text(0, 18 + n * 6, r, 10)
    SLIPS.append(k.text(0, 50, 'Vzor · sample · prov', 8))
POUCH = [(slovak(WHO['sk'], 'RE551203998SX'), 107, 180, 0), (aotea(WHO['za'], 'TP4410071111', ZA), 110, 190, 0), (island(WHO['sv'], 'SK0071123344', '114', FO), 12, 178, 0)]
FOLD = Ink(210, 297)
FOLD.line(0, 148.5, 8, 148.5, 0.3).line(202, 148.5, 210, 148.5, 0.3).line(105, 0, 105, 6, 0.3).line(105, 291, 105, 297, 0.3)

small = lambda n, w, h, ink, x, y, edge='ink': Doc(f'n22-drawn-small-{n}', 'libreoffice', [one('label', ink, edge)], office('fodg', lambda _: draw(w, h, [[(ink, x, y)]]), 'draw'))


def mixed(n, dpi, grey, ink, x, y, width, height, out):
    """A picture file of a 4x6 in label: its truth is counted in its own pixels."""
    per = 8 if dpi == 203 else dpi / 25.4
    inner = pixels(ink, dpi, grey)
    img = Image.new(inner.mode, (round(width * dpi), round(height * dpi)), 255 if grey else 1)
    img.paste(inner, (round(x * per), round(y * per)))
    img.save(f'{out}/n18-png-{n}.png', optimize=True, **({'dpi': (dpi, dpi)} if n % 2 else {}))
    dark = np.asarray(img.convert('L')) < 220
    rows, cols = np.flatnonzero(dark.any(1)), np.flatnonzero(dark.any(0))
    pt = lambda v: round(float(v) * 72 / dpi, 2)
    box = {'x': pt(cols[0]), 'y': pt(rows[0]), 'width': pt(cols[-1] + 1 - cols[0]), 'height': pt(rows[-1] + 1 - rows[0])}
    page = {'page': 1, 'kind': 'label', 'width': width * 72, 'height': height * 72, 'labels': [{'box': {'x': 0, 'y': 0, 'width': width * 72, 'height': height * 72}, 'turn': 0, 'edge': 'page', 'ink': box, 'role': 'label', 'codes': ink.codes}]}
    with open(f'{out}/n18-png-{n}.json', 'w', encoding='utf8') as f:
        json.dump({'producer': 'picture-file', 'layout': 'n18-png', 'half': 'sixth-sight', 'pages': [page]}, f, ensure_ascii=False)


PNGS = [(1, 203, False, luzon(WHO['ph'], 'HB20260304779900', 'ILO-2'), 1.5, 2, 4, 6), (2, 300, True, srpska(WHO['sr'], 'BZ70012345999', 'НИ-1', '2.450'), 2, 5, 4, 6), (3, 203, True, bharat(WHO['in'], 'SX1400123499999', 'MAA/1', '600000'), 3, 3, 4, 6), (4, 203, False, cumbia(WHO['pe'], 'WX770012345', 'CUS', PE), 10, 4, 6, 4)]
DOCS = [
    Doc('n12-css-grid-1', 'chromium', [Page('label', [Label(c, 'cut')]) for _, c in GRIDS], chromium(GRID, [b for b, _ in GRIDS])),
    Doc('n13-two-lying-sheet-1', 'ghostscript', [Page('label', [Label(i.codes, 'frame' if n == 1 else 'ink') for i in pair]) for n, pair in enumerate(TWO)],
        ghostscript([(297, 210, [(None, DOTS, 0, 0, 0), *[(m, i, 24 + m * 149, 31 if n != 1 else 12, 0) for m, i in enumerate(pair)]]) for n, pair in enumerate(TWO)])),
    Doc('n14-table-in-letter-1', 'libreoffice', [Page('label', [Label([*coded(t[8])[0].codes, *coded(t[8])[1].codes], 'frame')]) for t in TABLES], office('fodt', tabled, 'writer')),
    Doc('n15-screenshot-1', 'pixels', [one('label', i, 'frame') for i, _ in SCREENS], chromium(SHOT, [window(i, w) for i, w in SCREENS], fixed=''), shot(203.2)),
    Doc('n16-return-sheet-1', 'pdftex', [one('return-label', i, 'ink', (360 - t) % 360, 'return-label') for i, _, _, t, _ in BACK], latex([(RET % w, [(0, i, x, y, t)]) for i, x, y, t, w in BACK], 'pdflatex', setup=r'\usepackage{combelow}')),
    Doc('n17-long-paper-1', 'ghostscript', [one('label', parts[0][1], 'ink' if n == 1 else 'frame', slip=n == 1) for n, (_, _, parts) in enumerate(LONG)], ghostscript(LONG)),
    Doc('n19-three-columns-1', 'chromium', [one('label', i, 'frame' if n == 2 else 'ink') for n, i in enumerate(THREE)], chromium(THIRD, [declared(i, n) for n, i in enumerate(THREE)], fixed='@page{size:A4 landscape;margin:12mm}')),
    Doc('n20-one-bit-scan-1', 'scan-g4', [one('label', i, 'frame' if n == 0 else 'ink', t) for n, (i, _, _, t) in enumerate(BAD)], ghostscript([(210, 297, [(None, HOLES, 0, 0, 0), (0, i, x, y, t)]) for i, x, y, t in BAD]), scanned(200, [-0.8, 1.6], fax=True, seed=4)),
    Doc('n21-pouch-1', 'xetex', [one('label', i, 'frame' if n == 0 else 'ink', t, slip=True) for n, (i, _, _, t) in enumerate(POUCH)], latex([(r'\null', [(0, i, x, y, t), ('slip', s, 12, 20, 0), (None, FOLD, 0, 0, 0)]) for (i, x, y, t), s in zip(POUCH, SLIPS)])),
    small(1, 105, 148, srpska(WHO['sr'], 'BZ70012345678', 'БГ-3', '2.450'), 4, 3), small(2, 100, 150, bharat(WHO['in'], 'SX1400123411111', 'BLR/4', '560000'), 2.5, 2.5, 'frame'),
    small(3, 210, 148, island(WHO['is'], 'HP0044512789', '600', IS), 12, 12), small(4, 110, 80, slovak(WHO['sk'], 'RE551203111SX'), 5, 5, 'frame'),
    *NONE,
]
if __name__ == '__main__':
    out, names = sys.argv[1], sys.argv[2:]
    if not names or 'n18' in names:
        for each in PNGS:
            mixed(*each, out)
    main([d for d in DOCS if not names or any(re.match(n, d.name) for n in names)])
