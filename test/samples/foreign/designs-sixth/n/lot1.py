"""Lot 1: labels pasted into letters, under invoices, in e-mails, four a sheet, with customs papers, on rolls, scanned, faxed."""
from core import Doc, Label, Page, main
from designs1 import andina, austral, brasil, hellas, iberia, itala, locker, lusa, nusantara, sinica
from ink import Ink
from lot1_none import NONE
from lot1_pages import B02, CSS02, CSS03, I02, MAIL, MARGIN03, P01, bill, letter, mail
from odf import calc, cell_style, draw, image
from producers import chromium, ghostscript, latex, office, pictures, scanned
from render import pixels
from words1 import CL, ET, ID, LT, MX, PEOPLE as WHO

one = lambda kind, ink, edge='ink', turn=0, role='label': Page(kind, [Label(ink.codes, edge, turn, role)])

# n04: four a sheet
L04 = [lusa([name, *WHO['pt'][1:]], f'RX47312{4829 + 13 * i:04d}XX', '0,4') for i, name in enumerate(('Beatriz Nogueira', 'Duarte Sampaio', 'Inês Valadares', 'Rui Tavares'))]
M04 = [brasil(WHO['br'], '01000123', f'OX12345{6789 + i:04d}BX', s, str(4411 + i)) for i, s in enumerate('SPS')]
CROSS = '[4 3] 0 setdash 0.4 setlinewidth newpath 105 mm 0 moveto 105 mm 297 mm lineto 0 148.5 mm moveto 210 mm 148.5 mm lineto stroke [] 0 setdash'
SPOT = [(4, 6), (109, 6), (4, 154.5), (109, 154.5)]

# n05: over a customs form, typeset
FORM = r'''\null\par\vspace*{100mm}\sffamily{\large\bfseries %s}\hfill %s\par\medskip\renewcommand{\arraystretch}{1.35}\small
\begin{tabularx}{\textwidth}{|X|c|r|r|l|}\hline %s\\\hline %s\\\hline %s\\\hline \multicolumn{2}{|l|}{%s} & & & \\\hline\end{tabularx}\par\medskip
\fbox{\parbox{.6\textwidth}{\footnotesize %s\par\vspace{9mm}\hrulefill\par %s}}\hfill\parbox{.33\textwidth}{\footnotesize %s}'''
L05 = [austral(WHO['au'], '3056', 'BQ9912345678901', 'EXPRESS'), andina(WHO['cl'], 'ÑUÑ', 'ZD99812345678', CL), brasil(WHO['br'], '01000123', 'OX987654321BX', 'E', '5120')]
T05 = [('Customs declaration (sample)', 'May be opened officially', 'Contents & Qty & Weight & Value & HS', 'Linen cushion cover & 2 & 0.42 kg & AUD 58.00 & 6304', 'Printed card & 1 & 0.01 kg & AUD 4.00 & 4909', 'Total', 'I certify that the particulars given are correct.', 'Date and sender’s signature', 'Keep this part. SAMPLE – not valid for carriage. Category: \\fbox{X} sale of goods'),
       ('Declaración de aduana (muestra)', 'Puede ser abierto de oficio', 'Contenido & Cant. & Peso & Valor & SA', 'Gorro de lana & 1 & 0,20 kg & USD 24 & 6505', 'Aros de plata & 1 & 0,05 kg & USD 30 & 7113', 'Total', 'Certifico que los datos son exactos.', 'Fecha y firma', 'MUESTRA – no válida para transporte. \\fbox{X} Venta'),
       ('Declaração para alfândega (amostra)', 'Pode ser aberto de ofício', 'Conteúdo & Qtd & Peso & Valor & SH', 'Rede de algodão & 1 & 0,64 kg & USD 40 & 6306', '~ & & & &', 'Total', 'Certifico que as informações são exatas.', 'Data e assinatura', 'AMOSTRA – não válido para transporte.')]

# n06: paper of rolls, as pictures
STUB = Ink(97, 26)
STUB.text(0, 6, 'Simpan bagian ini / keep this part', 9, True).text(0, 12, 'No. resi KT0091239999 · 04-03 · Rp 18.000', 8).text(0, 18, 'kuratek.example/lacak', 8).text(0, 24, 'Terima kasih', 8)
TILL = Ink(72, 60)
TILL.text(36, 8, '存根联', 13, True, 'm').text(0, 18, '单号 LC7301234567999', 9).text(0, 25, '重量 0.6kg   运费 12.00', 9).text(0, 32, '日期 03-04 09:20', 9).text(0, 50, '样本 谢谢惠顾', 9)
ROLL = [((76, 130), [(0, sinica(WHO['cn'], '510-A7 022', 'LC7301234567890'), 0.5, 2)]), ((100, 70), [(0, locker(WHO['lt'], 'KAU-12', 'KX0012345678', LT), 2, 2)]), ((100, 70), [(0, locker(WHO['et'], 'TRT-03', 'KX0012345992', ET), 2, 2)]),
        ((100, 182), [(0, nusantara(WHO['id'], 'SUB-11', 'KT0091239999', 'NON COD', ID), 1.5, 3), (None, STUB, 1.5, 154)]), ((80, 210), [(0, sinica(WHO['cn'], '021-B2 118', 'LC7301234567999'), 2.5, 4), (None, TILL, 4, 142)])]
at8 = lambda parts: [(key, pixels(ink, 203), round(x * 8), round(y * 8)) for key, ink, x, y in parts]

# n07, n08: scanned and faxed
L07 = [iberia(2, WHO['es2'], '46-C1', 'TR4400987654', 'MUESTRARIO', '48 HORAS'), austral(WHO['au2'], '6010', 'BQ9912345679991', 'PARCEL'), lusa(WHO['pt'], 'RX902345675XX', '1,1', 'ENCOMENDA RÁPIDA', True)]
NOTE = '/SB findfont 16 scalefont setfont 60 60 moveto (%s) show /SA findfont 10 scalefont setfont 60 44 moveto (%s) show'
L08 = [itala(WHO['it2'], 'BO 2', '30120455990011'), andina(WHO['mx'], 'MTY', 'CX77012345999', MX)]
FAXLINE = '/MB findfont 9 scalefont setfont 30 826 moveto (04/03/2026  09:5%d   DA: 555-0134   A: 555-0170   P. 1/1) show'
# n09: two lying labels a sheet, drawn
L09 = [itala(WHO['it'], 'TO 11', '30120455123456'), itala(WHO['it2'], 'BO 2', '30120455765432', '€ 12,90'), hellas(WHO['el'], 'ΘΕ-1', 'OB55598765432', '25,00 €')]
CUT = Ink(190, 1)
CUT.line(0, 0, 190, 0, 0.2, grey=130)


def drawn(only):
    keep = lambda n, part: [part] if only is None or only == n else []
    return draw(210, 297, [[*keep(0, (L09[0], 36, 24)), *keep(1, (L09[1], 36, 172)), *keep(None, (CUT, 10, 148))], keep(0, (L09[2], 55, 15))])


# n10: a label of cells
def cells(only):
    code = Ink(70, 18)
    ref = 'EC000045127'
    code.code('code128', ref, 0, 0, 0.375, 16)
    pic = pixels(code, 203)
    ink, pale = '#000000', '#000000' if only is None else '#ffffff'
    edge = lambda *sides: ' '.join(f'fo:border-{s}="{w} solid {ink}"' for s, w in sides)
    full = edge(('top', '0.6pt'), ('left', '0.6pt'), ('right', '0.6pt'), ('bottom', '0.6pt'))
    st = (cell_style('a', edge(('top', '2pt'), ('left', '2pt'), ('right', '2pt')), 20, True, 'center', '#ffffff', '#000000') + cell_style('b', full, 9, valign='top') + cell_style('c', full, 13, True, valign='top')
          + cell_style('d', full, 24, True, 'center') + cell_style('e', full, 11, align='center') + cell_style('n', '', 9, color=pale) + cell_style('t', '', 16, True, color=pale) + cell_style('f', full, 7))
    frame = f'<draw:frame svg:x="22mm" svg:y="5mm" svg:width="{pic.width / 8:.2f}mm" svg:height="{pic.height / 8:.2f}mm">{image(pic, 203)}</draw:frame>'
    rows = [(9, [('t', 'Hoja de envío', 4)]), (6, [('n', 'Pedido 4512 · preparado por M.', 4)]), (6, [('n', '')]), (13, [('a', 'EcoRuta · mensajería en bici', 4)]), (20, [('b', 'Remite:\nTaller Almendra\nC/ Ejemplo 14, Villaejemplo', 2), ('e', 'Zona', 1), ('d', 'C-7', 1)]),
            (34, [('c', 'Para:\nLucía Ferrándiz Soto\nCalle del Ejemplo 31, 4º izq.\n28000 Villaejemplo\nTel. 555-0181', 4)]), (27, [('e', '', 4, frame)]), (8, [('e', ref, 4)]), (8, [('f', 'MUESTRA – no válida para el transporte', 2), ('e', '1 de 1', 1), ('e', '1,2 kg', 1)]),
            (9, [('n', '')]), (6, [('n', 'Entregar antes de las 14:00. Avisar por teléfono.', 4)])]
    return calc(210, 297, 20, [42, 20, 22, 30], [rows], st), [{'symbology': 'code128', 'text': ref}]


DOCS = [
    Doc('n01-letter-pasted-1', 'libreoffice', [one('label', i, 'ink' if e == 'ink' else 'picture') for *_, i, e, _ in P01], office('fodt', letter, 'writer')),
    Doc('n02-invoice-foot-1', 'chromium', [one('label', i, 'frame' if n == 3 else 'ink') for n, i in enumerate(I02)], chromium(CSS02, [bill(b, i, n) for n, (b, i) in enumerate(zip(B02, I02))])),
    Doc('n03-mail-around-1', 'chromium', [one('label', m[4], m[5]) for m in MAIL], chromium(CSS03, [mail(n) for n in range(4)], MARGIN03)),
    Doc('n04-four-a-sheet-1', 'ghostscript', [Page('label', [Label(i.codes) for i in L04]), Page('label', [Label(i.codes) for i in M04])],
        ghostscript([(210, 297, [(n, i, *SPOT[n], 0) for n, i in enumerate(L04)]), (210, 297, [(None, CROSS, 0, 0, 0), *[(n, i, SPOT[s][0] - 1, SPOT[s][1] - 1, 0) for n, (i, s) in enumerate(zip(M04, (0, 1, 3)))]])])),
    Doc('n05-over-customs-1', 'xetex', [one('label', i, 'ink' if n == 2 else 'frame', 270) for n, i in enumerate(L05)], latex([(FORM % t, [(0, i, 33, 10, 90)]) for i, t in zip(L05, T05)])),
    Doc('n06-roll-paper-1', 'img2pdf', [one('label', parts[0][1]) for _, parts in ROLL], pictures([((round(w * 8), round(h * 8)), False, at8(parts)) for (w, h), parts in ROLL], 203.2)),
    Doc('n07-phone-scan-1', 'scan-pillow', [one('label', L07[0]), one('label', L07[1], 'frame'), one('label', L07[2], 'ink', 180)],
        ghostscript([(210, 297, [(0, L07[0], 30, 25, 0), (None, NOTE % ('Taller Almendra', 'Pedido 1187 - entregar en mano'), 0, 0, 0)]), (210, 297, [(0, L07[1], 55, 70, 0), (None, NOTE % ('Packed by R.', 'Order 5531, one carton'), 0, 0, 0)]), (210, 297, [(0, L07[2], 50, 20, 180)])]),
        scanned(150, [1.4, -2.1, 0.7], 40, 3, 0.2)),
    Doc('n08-faxed-1', 'scan-g4', [one('label', i, 'ink' if n == 0 else 'frame') for n, i in enumerate(L08)], ghostscript([(210, 297, [(0, i, 30, 40, 0), (None, FAXLINE % n, 0, 0, 0), (None, NOTE % ('FAX', 'Allegato: lettera di vettura'), 0, 0, 0)]) for n, i in enumerate(L08)]),
        scanned(200, [0, 0.6], fax=True)),
    Doc('n09-two-drawn-1', 'libreoffice', [Page('label', [Label(L09[0].codes), Label(L09[1].codes)]), one('label', L09[2], 'frame')], office('fodg', drawn, 'draw')),
    Doc('n10-cells-1', 'libreoffice', [Page('label', [Label(cells(None)[1], 'frame')])], office('fods', lambda only: cells(only)[0], 'calc')),
    *NONE,
]
if __name__ == '__main__':
    main(DOCS)
