"""Lot 4: notes scribbled about the label, two carriers on a page, half letter with terms, oficio paper, stubs, pages fed the wrong way round."""
import math
from core import Doc, Label, Page, main
from designs4 import azores, merlion, quetzal, volta
from ink import Ink
from lot4_none import NONE
from producers import ghostscript, pictures
from render import pixels

GT = {'carrier': 'Quetzalina', 'sample': 'MUESTRA', 'not': 'no válida para envío', 'from': 'De: Taller Ixchel, 4a calle Ejemplo 7-12 zona 1, 555-0107', 'to': 'PARA', 'pay': 'PAGADO'}
HN = {**GT, 'carrier': 'Colibrí Expreso', 'from': 'De: Taller Lenca, Col. Ejemplo, bloque 4, 555-0116', 'pay': 'COBRAR 350'}
PT = {'carrier': 'Correio da Ilha', 'service': 'Encomenda nacional', 'from': 'Rem.: Loja Hortênsia, Rua Exemplo 9, 9500-000 Exemplo, tel. 555-0147', 'to': 'DESTINATÁRIO', 'kind': 'EN', 'sample': 'AMOSTRA', 'not': 'não válida para transporte', 'foot': 'Se não for entregue, devolver ao remetente'}
BACK = {**PT, 'service': 'Devolução', 'kind': 'DEV', 'from': 'Rem.: Inês Valadares, Travessa da Amostra 2, 4000-000 Porto Exemplo', 'foot': 'Etiqueta de devolução'}
SG = {'carrier': 'Rimba Parcel', 'sample': 'SAMPLE', 'not': 'not valid for carriage', 'to': 'Deliver to', 'from': 'From Orchid Works, Blk 8 Example Ave #01-02, 000000, 555-0181'}
GH = {'carrier': 'Volta Dispatch', 'sample': 'SAMPLE', 'not': 'not valid for carriage', 'from': 'From: Baobab Beads, Example Junction, Exampleton, 555-0140', 'to': 'DELIVER TO'}
TO = {'gt': ['Ixmucané Tzoc', '12 avenida Ejemplo 3-45 zona 10', 'Ciudad Ejemplo 01010', '555-0122'], 'hn': ['Melvin Zelaya', 'Barrio Muestra, calle principal', 'frente al parque, casa azul', 'Ciudad Ejemplo'], 'pt': ['Inês Valadares', 'Travessa da Amostra 2, 1.º', '4000-000 Porto Exemplo'], 'shop': ['Loja Hortênsia - Devoluções', 'Rua Exemplo 9', '9500-000 Exemplo'],
      'sg': ['Tan Mei Sample', 'Blk 123 Example Street 4 #08-11', 'Sampletown 000000'], 'gh': ['Efua Mensah', 'Hse 14, Sample Close', 'Exampleton, GX-000-1234', '555-0195']}
REFS = iter(range(410, 900, 13))
q = lambda words=GT, to='gt', zone='GUA 3': quetzal(TO[to], f'QZ7700{next(REFS)}218', zone, words)
a = lambda words=PT, to='pt': azores(TO[to], f'EN551{next(REFS)}447XX', words)
m = lambda zone='E-08': merlion(TO['sg'], f'RP2026{next(REFS)}0417', zone, SG)
v = lambda where='ACCRA E': volta(TO['gh'], f'VD00{next(REFS)}9912', where, GH)


def scribble(x, y, long, words):
    """What a pen leaves: a ring that does not close, a line that waves, a word."""
    path = ' '.join(f'{x + t * long / 30:.1f} {y + 6 * math.sin(t * 1.3) + 2 * math.sin(t * 0.37):.1f} {"lineto" if t else "moveto"}' for t in range(31))
    return f'0.35 setgray 1.2 setlinewidth newpath {path} stroke newpath {x + long / 2} {y + 40} 26 20 330 arc stroke /TA findfont 22 scalefont setfont gsave {x + 20} {y + 70} translate 7 rotate 0 0 moveto ({words}) show grestore 0 setgray'


TERMS = '/SA findfont 6.5 scalefont setfont ' + ' '.join(f'{50 + c * 265} {330 - n * 9} moveto ({n + 1 + c * 28}. El remitente declara que el contenido no es peligroso y acepta las condiciones.) show' for c in (0, 1) for n in range(28)) + ' [3 3] 0 setdash 0.4 setlinewidth 0 396 moveto 612 396 lineto stroke [] 0 setdash'
DEED = '/TA findfont 11 scalefont setfont ' + ' '.join(f'60 {900 - n * 16} moveto ({w}) show' for n, w in enumerate(('CONTRATO DE TRANSPORTE (muestra)', '', 'Entre Quetzalina y el remitente se acuerda lo siguiente:', 'Primero. El remitente entrega un paquete cerrado y pagado.', 'Segundo. La empresa lo lleva a la dirección de la guía.', 'Tercero. La guía va pegada en el paquete, no en este papel.', '', 'Firmas: ______________________     ______________________')))
titled = lambda y, words: f'/SB findfont 12 scalefont setfont 40 {y} moveto ({words}) show'
SCRAWLED = [(q(), 20, 140, scribble(360, 260, 180, 'hoy sin falta')), (m(), 90, 30, scribble(60, 700, 150, 'to Rani')), (v(), 15, 30, scribble(200, 380, 260, 'call first'))]
PAIRS = [(a(), a(BACK, 'shop')), (a(), a(BACK, 'shop'))]
HALF = [q(zone='PET 1'), q(HN, 'hn', 'SPS'), q(HN, 'hn', 'TGU')]
OFICIO = [q(zone='XEL 2'), q(HN, 'hn', 'CBA')]
STUB = Ink(95, 44)
STUB.line(0, 0, 95, 0, 0.3, '1.2 0.9').text(0, 8, 'Talão do remetente', 11, True).text(0, 16, 'Encomenda nacional, 0,9 kg, 5,60 EUR', 9).text(0, 23, 'Data 04/03/2026  Loja Exemplo', 9).text(0, 38, 'Guardar até à entrega. AMOSTRA', 8)
on8 = lambda parts: [(key, pixels(ink, 203), round(x * 8), round(y * 8)) for key, ink, x, y in parts]
STUBBED = [a(), a()]
FED = [(m('W-14'), 0), (m('N-02'), 180), (m('C-21'), 0)]


def fed():
    pages = []
    for ink, turn in FED:
        pic = pixels(ink, 203).rotate(-turn, expand=True)
        pages.append(((812, 1218), False, [(0, pic, 14, 60 if turn != 180 else 1218 - 60 - pic.height)]))
    return pictures(pages, 203)


V = [(v('KUMASI'), 0, 30, 20), (v('TEMA'), 270, 100, 120), (v('HO'), 180, 38, 165)]
one = lambda ink, edge='ink', turn=0, role='label', kind='label': Page(kind, [Label(ink.codes, edge, turn, role)])
DOCS = [
    Doc('n37-scribbled-1', 'ghostscript', [one(i, 'frame' if n == 0 else 'ink') for n, (i, *_) in enumerate(SCRAWLED)], ghostscript([(210, 297, [(0, i, x, y, 0), (None, s, 0, 0, 0)]) for i, x, y, s in SCRAWLED])),
    Doc('n38-out-and-back-1', 'ghostscript', [Page('label', [Label(x.codes), Label(y.codes, role='return-label')]) for x, y in PAIRS],
        ghostscript([(210, 297, [(0, PAIRS[0][0], 8, 20, 0), (1, PAIRS[0][1], 110, 148, 0), (None, titled(800, 'Para colar na caixa'), 0, 0, 0), (None, '/SB findfont 12 scalefont setfont 312 440 moveto (Para a devolução) show', 0, 0, 0)]), (297, 210, [(0, PAIRS[1][0], 24, 40, 0), (1, PAIRS[1][1], 170, 40, 0), (None, titled(545, 'Envio'), 0, 0, 0), (None, '/SB findfont 12 scalefont setfont 480 545 moveto (Devolução) show', 0, 0, 0)])])),
    Doc('n39-half-letter-terms-1', 'ghostscript', [one(i, 'frame', 90) for i in HALF], ghostscript([(215.9, 279.4, [(0, i, 45, 20, 270), (None, TERMS, 0, 0, 0)]) for i in HALF])),
    Doc('n41-oficio-deed-1', 'ghostscript', [one(i, 'frame') for i in OFICIO], ghostscript([(215.9, 340, [(0, i, 20 + n * 85, 195, 0), (None, DEED, 0, 0, 0)]) for n, i in enumerate(OFICIO)])),
    Doc('n42-stub-below-1', 'img2pdf', [one(i) for i in STUBBED], pictures([((812, 1624), False, on8([(0, i, 3, 4), (None, STUB, 3, 153)])) for i in STUBBED], 203)),
    Doc('n43-fed-any-way-1', 'img2pdf', [one(i, 'page', (360 - t) % 360) for i, t in FED], fed()),
    Doc('n44-lying-on-letter-1', 'ghostscript', [one(i, 'ink', (360 - t) % 360) for i, t, _, _ in V], ghostscript([(215.9, 279.4, [(0, i, x, y, t)]) for i, t, x, y in V])),
    *NONE,
]
if __name__ == '__main__':
    main(DOCS)
