"""Lot 2's pages without a label."""
from core import Doc, Page
from ink import Ink, mark
from odf import draw, p, para, writer
from producers import chromium, ghostscript, latex, office, pictures, scanned
from render import pixels, svg


def strip(kind, text, module=0.375, height=12, w=80):
    k = Ink(w, height)
    k.code(kind, text, 0, 0, module, height)
    return svg(k)


CSS = '''body{font:10pt 'Liberation Sans'}h1{font-size:17pt}.addr{border:.5mm solid #000;padding:5mm;width:90mm;margin:6mm 0;font-size:12pt}table{border-collapse:collapse;width:100%}td,th{border:.25mm solid #666;padding:1.6mm;text-align:left}.box{display:grid;grid-template-columns:1fr 1fr;gap:6mm}.c{border:.3mm solid #333;border-radius:2mm;padding:4mm}.c svg{margin-top:3mm}.big{font-size:26pt;font-weight:700}'''
PAGES = [
    ('instructions', '<h1>Naviraciones y devoluciones</h1><p>1. Escriba a hola@almendra.example. 2. Meta el artículo en su caja. 3. Envíelo con la empresa que prefiera a esta dirección:</p><div class=addr>Taller Almendra – Devoluciones<br>Calle del Ejemplo 14, 2.º B<br>28000 Villaejemplo</div><p>Escriba el número de pedido 4512 en la caja. Esta hoja no es una etiqueta. MUESTRA.</p>'.replace('Naviraciones', 'Cambios')),
    ('pick-list', '<h1>Popis za pakiranje · 4. 3.</h1><div class=box>' + ''.join(f'<div class=c><b>{n}</b><br>Primjerna {i * 5 + 2}<br>10000 Primjerovac<br>Šalica × {i + 1}{strip("code128", f"NAR{880 + i}", 0.25, 7, 50)}</div>' for i, n in enumerate(('Ivana Kovačević', 'Petar Babić', 'Lana Horvatić', 'Marko Jurić', 'Nika Perić', 'Dino Radić'))) + '</div>'),
    ('other', '<h1>Boarding pass – UZORAK</h1><div class=c><div class=box><div><p>Putnik / Passenger<br><b>HORVATIĆ / LANA</b><p class=big>ZAD → BRI</p><p>Vrata 4 · Sjedalo 12C · 06:40</div><div>' + strip('pdf417', 'M1HORVATIC/LANA      EXAMPLE ZADBRI 0440 063Y012C0044 100', 0.25, 20, 70) + '<p>Uzorak, ne vrijedi za ukrcaj</div></div></div>'),
    ('other', '<h1>Prijava pošiljke – potvrda</h1><p>Vaša pošiljka VZ10234567890 zaprimljena je 4. 3. u 10:12 u poslovnici Primjerovac.</p><table><tr><th>Primatelj<td>Ivana Kovačević, Ulica primjera 27, 10000 Primjerovac<tr><th>Masa<td>1,2 kg<tr><th>Plaćeno<td>5,60 €</table><p>Ovo je potvrda za pošiljatelja i nije naljepnica. UZORAK.</p>'),
    ('other', '<h1>Membership card</h1><div class=c style="width:86mm"><b class=big>Flax Club</b><p>Aroha Kererū<br>14 Sample Terrace, Sampleville</p>' + strip('code39', 'FLAX00417', 0.25, 10, 60) + '<p>SAMPLE. Not transferable.</div><p>Cut out and keep in your wallet.'),
    ('invoice', '<h1>Tax invoice 77120-4</h1><p>Kumud Handlooms, 4 Example Lane, Exampur</p><p>Bill to / Ship to:<br><b>Ananya Deshmukh</b><br>Flat 12, Sample Residency<br>Samplepur 400000</p>' + strip('code128', 'INV7712044', 0.25, 9, 50) + '<table><tr><th>Item<th>Qty<th>Rs<tr><td>Cotton dupatta<td>1<td>540<tr><td>Runner<td>1<td>820<tr><th>Total<th>2<th>1360</table><p>SAMPLE invoice.'),
]
SLIP = '<div class=S><h1>Delivery note</h1><p>Flax Studio · order 2217</p><p>Aroha Kererū<br>14 Sample Terrace<br>Sampleville 0000</p><table><tr><th>Item<th>Qty<tr><td>Flax basket, small<td>1<tr><td>Card<td>2</table><p>Thank you! SAMPLE.</div>'

RAFFLE = Ink(100, 62)
RAFFLE.rect(0.3, 0.3, 99.4, 61.4, 0.5, dash='1.2 0.9').text(5, 11, 'RIFA BENÉFICA', 18, True).text(5, 18, 'Sorteo el 30 de mayo · Plaza Ejemplo', 9).text(5, 38, '004417', 40, True).text(5, 50, 'Nombre ______________  Tel. ____________', 8).text(5, 58, 'MUESTRA – sin valor', 7)
RAFFLE.code('datamatrix', 'RIFA-004417', 80, 22, 0.875)
COUPON = Ink(95, 140)
COUPON.rect(0.5, 0.5, 94, 139, 1).text(47, 22, '-20 %', 56, True, 'm').text(47, 34, 'em toda a cerâmica', 14, anchor='m').text(47, 44, 'Apresente este cupão na loja.', 9, anchor='m').text(47, 118, 'Válido até 30/06 · AMOSTRA, sem valor', 8, anchor='m').text(47, 126, 'Atelier Sabugueiro, Rua do Exemplo 7, 1000-000 Vila Exemplo', 7, anchor='m')
COUPON.code('ean13', '200441700015', 24, 60, 0.5, 34)
SEED = Ink(76, 50)
SEED.text(4, 9, 'Sementes de alecrim', 13, True).text(4, 16, 'Lote 44-B · semear de março a maio', 8).text(4, 21, 'Atelier Sabugueiro', 8)
SEED.code('ean13', '200551200003', 6, 26, 0.375, 16)
SEED.text(4, 48, 'Amostra, não é para venda', 6)
BADGE = Ink(98, 68)
BADGE.rect(0.3, 0.3, 97.4, 67.4, 0.4, radius=4).rect(0.3, 0.3, 97.4, 14, fill=0).text(49, 10.5, 'FERIA DE OFICIOS', 18, True, 'm', grey=255).text(49, 31, 'Renzo Huamán', 24, True, 'm').text(49, 40, 'Taller Retama · Ciudad Ejemplo', 10, anchor='m').text(6, 62, 'EXPOSITOR · MUESTRA', 9, True)
BADGE.code('qrcode', 'FERIA26/EXP/0192', 72, 43, 0.875)
mark(BADGE, 6, 46, 9, 0)
CHART = ''.join(f'{40 + n * 34} 300 24 {v} rectfill ' for n, v in enumerate((40, 90, 70, 150, 120, 60, 180, 140, 95, 30, 75, 110))) + '/SB findfont 18 scalefont setfont 40 760 moveto (Ventas por mes - muestra) show /SA findfont 10 scalefont setfont 40 270 moveto (ene feb mar abr may jun jul ago sep oct nov dic) show'


def labels_for_jars(_):
    jar = lambda n: Ink(58, 40).rect(0.2, 0.2, 57.6, 39.6, 0.4, radius=4).text(29, 12, 'Miel de romero', 14, True, 'm').text(29, 19, '250 g · cosecha 2026', 8, anchor='m').text(29, 28, 'Taller Almendra', 9, anchor='m').text(29, 35, f'Lote {n:03d} · muestra', 7, anchor='m')
    return draw(210, 297, [[(jar(r * 3 + c), 12 + c * 64, 14 + r * 46) for r in range(5) for c in range(3)]])


def letter(_):
    st = para('H', 16, True) + para('N', 11, after=4) + para('A', 12, after=0)
    return writer(210, 297, 25, st, p('A', 'Studio Tecnico Valli') + p('A', 'Piazza Esempio 2') + p('A', '40000 Esempio BO') + p('N', '') + p('H', 'Oggetto: ritardo nella consegna') + p('N', 'Gentile cliente, il pacco n. 30120455990011 è fermo in deposito. Sarà riconsegnato il 6 marzo tra le 9 e le 13 in Piazza Esempio 2. Se non può essere presente risponda a questa lettera. CAMPIONE.') + p('N', 'Cordiali saluti, Corriva Esempio'))


RETURN = r'''\sffamily{\Large\bfseries Vrácení zboží}\par\bigskip Vyplňte a přiložte do balíku. Toto není přepravní štítek. VZOR.\par\bigskip\renewcommand{\arraystretch}{1.6}\begin{tabularx}{\textwidth}{|X|c|c|}\hline Zboží & Vracím & Důvod\\\hline Hrnek modrý & \fbox{~} & 1 2 3\\\hline Talíř & \fbox{~} & 1 2 3\\\hline\end{tabularx}\par\bigskip Jméno: \rule{70mm}{.2pt}\par\medskip Účet: \rule{70mm}{.2pt}\par\vspace{30mm} Adresa: Dílna Šalvěj, Vzorová 6, 000 00 Vzorov'''
RETCODE = Ink(70, 14)
RETCODE.code('code128', 'RET-2026-441', 0, 0, 0.375, 12)
NONE = [
    Doc('n23-more-none-1', 'chromium', [*(Page(k) for k, _ in PAGES), Page('packing-slip', slip=True)], chromium(CSS, [b for _, b in PAGES] + [SLIP])),
    Doc('n23-more-none-2', 'ghostscript', [Page('other'), Page('advert'), Page('other')], ghostscript([(110, 72, [(None, RAFFLE, 5, 5, 0)]), (101.6, 152.4, [(None, COUPON, 3.3, 6, 0)]), (210, 297, [(None, CHART, 0, 0, 0)])])),
    Doc('n23-more-none-3', 'img2pdf', [Page('other'), Page('other')], pictures([((640, 440), False, [(None, pixels(SEED, 203), 16, 16)]), ((812, 576), False, [(None, pixels(BADGE, 203), 10, 14)])], 203.2)),
    Doc('n23-more-none-4', 'libreoffice', [Page('other')], office('fodg', labels_for_jars, 'draw')),
    Doc('n23-more-none-5', 'libreoffice', [Page('other')], office('fodt', letter, 'writer')),
    Doc('n23-more-none-6', 'scan-pillow', [Page('instructions')], latex([(RETURN, [(None, RETCODE, 18, 150, 0)])]), scanned(120, [1.1], 35, 3, 0.15)),
]
