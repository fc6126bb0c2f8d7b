"""Lot 1's pages without a label that look a little like one."""
from core import Doc, Page
from ink import Ink, mark
from odf import calc, cell_style, p, para, writer
from producers import chromium, ghostscript, latex, office
from render import svg

NAMES = ['Lucía Ferrándiz', 'Joaquín Beltrán', 'Nerea Ugalde', 'Tomás Requena', 'Ainhoa Lasa', 'Berta Colomer', 'Iker Zabaleta', 'Sonia Prados', 'Mateo Lago', 'Carmen Oliva', 'Raúl Benet', 'Elisa Moya']


def bars(text, module=0.25, high=8):
    k = Ink(60, high)
    k.code('code128', text, 0, 0, module, high)
    return svg(k)


def square(text, module=0.75, size=25):
    k = Ink(size, size)
    k.code('qrcode', text, 0, 0, module)
    return svg(k)


pick = '<h1>Lista de preparación · jueves 5</h1><table>' + ''.join(f'<tr><td class=k>☐<td>{bars(f"PK{3300 + n}")}<td><b>{name}</b><br>Calle del Ejemplo {n * 7 + 3}, 28000 Villaejemplo<td>Taza azul × {n % 3 + 1}<td>Estante {chr(65 + n % 5)}{n}' for n, name in enumerate(NAMES[:9])) + '</table>'
back = ('<h1>Come restituire un articolo</h1><ol><li>Inquadra il codice qui sotto con il telefono.<li>Scegli il punto di ritiro e prenota.<li>Consegna il pacco: l’etichetta la stampa il punto di ritiro.</ol>' + f'<div class=code>{square("https://resi.ginestra.example/r/55120")}</div>'
        + '<p><b>Indirizzo dei resi:</b><br>Bottega Ginestra – Resi<br>Via Esempio 3<br>00000 Borgo Esempio</p><p>Questa pagina non è un’etichetta di spedizione. CAMPIONE.</p>')
ticket = ('<div class=tk><div class=left><small>ENTRADA · MUESTRA, no válida</small><h2>Noche de cerámica viva</h2><p>Sábado 14 de marzo, 20:30<br>Sala Ejemplo, Calle de la Muestra 9</p><div class=g><span>Fila<b>7</b></span><span>Asiento<b>22</b></span><span>Puerta<b>B</b></span></div><p>Titular: Nerea Ugalde</p></div>'
          + f'<div class=right>{square("ENT-2026-0007722-B", 0.875, 26)}<br>{bars("ENT00077221", 0.375, 14)}<small>ENT00077221</small></div></div>')
note = ('<div class=m><h2>Votre colis est en route</h2><p>Bonjour, le colis 7T00 4521 9981 0 sera livré demain entre 9 h et 13 h.</p><div class=card><b>Livraison à</b><br>Mme Odile Garance<br>12 rue de l’Exemple<br>00000 Villexemple</div>' + bars('7T0045219980', 0.375, 12) + '<p>Message automatique. SPÉCIMEN. Ce message n’est pas une étiquette.</p></div>')
CSS = '''body{font:10pt 'Liberation Sans'}table{border-collapse:collapse;width:100%}td{border:1px solid #999;padding:2mm}td svg{width:44mm}.k{font-size:16pt}.code{border:2px solid #000;width:40mm;padding:7mm;margin:6mm 0}
.tk{display:grid;grid-template-columns:1fr 62mm;border:2px solid #000;border-radius:4mm;margin-top:20mm}.left{padding:6mm;border-right:2px dashed #000}.right{padding:6mm 4mm}.g{display:flex;gap:10mm}.g b{display:block;font-size:20pt}h2{font-size:20pt;margin:2mm 0}
.m{max-width:130mm;margin:auto}.card{border:1px solid #bbb;border-radius:3mm;padding:4mm;margin:4mm 0}'''


def stickers(_):
    styles = para('a', 10, after=0) + para('z', 2) + ''.join(
        f'<style:style style:name="{n}" style:family="{f}"><style:{f}-properties {props}/></style:style>' for n, f, props in
        (('T', 'table', 'style:width="180mm" table:align="left"'), ('C', 'table-column', 'style:column-width="60mm"'), ('R', 'table-row', 'style:min-row-height="33mm"'), ('K', 'table-cell', 'fo:padding="4mm" fo:border="none"')))
    cell = lambda n: f'<table:table-cell table:style-name="K" office:value-type="string">{p("a", f"{NAMES[n % 12]}")}{p("a", f"Calle de la Muestra {n * 3 + 1}, 2º")}{p("a", f"{28000 + n * 11} Villaejemplo")}{p("a", "ESPAÑA (muestra)")}</table:table-cell>'
    rows = ''.join('<table:table-row table:style-name="R">' + ''.join(cell(r * 3 + c) for c in range(3)) + '</table:table-row>' for r in range(7))
    return writer(210, 297, 12, styles, f'<table:table table:name="A" table:style-name="T"><table:table-column table:style-name="C" table:number-columns-repeated="3"/>{rows}</table:table>' + p('z', ''))


def manifest(_):
    edge = 'fo:border="0.5pt solid #000000"'
    st = cell_style('h', edge, 10, True, back='#dddddd') + cell_style('c', edge, 9) + cell_style('t', '', 16, True) + cell_style('n', '', 9)
    rows = [(10, [('t', 'Relação de objetos do dia', 4)]), (7, [('n', 'Ateliê Jacarandá · contrato 00551 · 04/03/2026 · AMOSTRA', 4)]), (8, [('h', 'Objeto'), ('h', 'Destinatário'), ('h', 'CEP'), ('h', 'Peso')])]
    rows += [(7, [('c', f'OX12345{6700 + n * 11:04d}BX'), ('c', NAMES[n % 12]), ('c', f'0{1000 + n * 7}-000'), ('c', f'0,{3 + n % 6}00')]) for n in range(18)]
    rows += [(7, [('n', '')]), (14, [('c', 'Total: 18 objetos', 2), ('c', 'Assinatura do coletor:\n', 2)])]
    return calc(210, 297, 18, [46, 66, 30, 26], [rows], st)


TILL = Ink(72, 180)
TILL.text(36, 8, 'FERRETERIA EJEMPLO', 13, True, 'm').text(36, 13, 'C/ Ejemplo 2 - Villaejemplo - 555-0144', 7, anchor='m').text(0, 22, '04/03/2026 10:12   Caja 2', 8, face='mono').line(0, 25, 72, 25, 0.3, '1 1')
for row, (what, price) in enumerate((('Cinta embalar 48mm', '2,90'), ('Caja 30x20x15 x10', '8,50'), ('Papel kraft', '4,20'), ('Bolsa', '0,10'))):
    TILL.text(0, 31 + row * 5, what, 8, face='mono').text(72, 31 + row * 5, price, 8, anchor='r', face='mono')
TILL.line(0, 50, 72, 50, 0.3, '1 1').text(0, 57, 'TOTAL', 14, True).text(72, 57, '15,70', 14, True, 'r').text(0, 64, 'Tarjeta ****0000', 8, face='mono').text(36, 72, 'GRACIAS - MUESTRA, sin valor', 8, True, 'm')
TILL.code('code128', 'T2026030410120002', 4, 80, 0.375, 16)
TILL.text(36, 101, 'T2026030410120002', 8, anchor='m', face='mono').text(36, 110, 'Cambios en 30 dias con este ticket', 8, anchor='m')
CARD = Ink(86, 54)
CARD.rect(0.3, 0.3, 85.4, 53.4, 0.4, radius=3).rect(0.3, 0.3, 85.4, 13, fill=40).text(5, 9, 'Club Sabugueiro', 14, True, grey=255).text(5, 21, 'Beatriz Nogueira Pinho', 11, True).text(5, 26, 'Socio n. 004417 - desde 2021', 8)
CARD.code('code128', '0044170009', 14, 30, 0.375, 13)
CARD.text(43, 48, '0044170009', 9, anchor='m').text(81, 51.5, 'AMOSTRA', 6, anchor='r')
mark(CARD, 70, 16, 10, 1)
RX = r'''\sffamily{\LARGE\bfseries Receta médica (muestra)}\hfill Dra. Aurora Lindes\par N.º col. 00000 · Centro Ejemplo, Calle de la Muestra 40\par\medskip\hrule\medskip
\textbf{Paciente:} Mateo Lago Rey\hfill \textbf{Fecha:} 4/3/2026\par Calle del Ejemplo 66, 3.º A, 28000 Villaejemplo\par\vspace{38mm}\begin{tabularx}{\textwidth}{|X|l|l|}\hline Medicamento & Pauta & Envases\\\hline Pomada de árnica 50 g & 2 al día & 1\\\hline Jarabe de tomillo & 5 ml cada 8 h & 1\\\hline\end{tabularx}\par\vspace{15mm}Firma: \rule{50mm}{.3pt}\par\bigskip\footnotesize Documento de muestra, sin validez.'''
RXCODE = Ink(80, 20)
RXCODE.code('code128', 'RX550012349871', 0, 0, 0.375, 14)
RXCODE.text(33, 18, 'RX550012349871', 8, anchor='m')
SHARE = r'''\sffamily{\Large\bfseries Vale de regalo}\par\bigskip Para: Carmen · De: Elisa\par\bigskip{\Huge\bfseries 40 €}\par\bigskip Canjeable en Taller Almendra, C/ Ejemplo 14, Villaejemplo. MUESTRA, sin valor.\par\vspace{60mm}Válido hasta el 31/12. Código: REG-7714-0042'''
SHARECODE = Ink(80, 30)
SHARECODE.code('qrcode', 'REG-7714-0042', 0, 0, 0.875)
NONE = [
    Doc('n11-papers-none-1', 'chromium', [Page('pick-list'), Page('instructions'), Page('other'), Page('other')], chromium(CSS, [pick, back, ticket, note])),
    Doc('n11-papers-none-2', 'libreoffice', [Page('other')], office('fodt', stickers, 'writer')),
    Doc('n11-papers-none-3', 'libreoffice', [Page('other')], office('fods', manifest, 'calc')),
    Doc('n11-papers-none-4', 'ghostscript', [Page('other'), Page('other')], ghostscript([(80, 120, [(None, TILL, 4, 2, 0)]), (210, 297, [(None, CARD, 62, 40, 0)])])),
    Doc('n11-papers-none-5', 'xetex', [Page('other'), Page('advert')], latex([(RX, [(None, RXCODE, 18, 55, 0)]), (SHARE, [(None, SHARECODE, 18, 70, 0)])])),
]
