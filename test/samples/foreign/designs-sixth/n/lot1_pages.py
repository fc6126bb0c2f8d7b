"""Pages of lot 1 that are letters, invoices and e-mails around a label."""
import base64
from designs1 import andina, balkan, hellas, iberia, itala, lusa, nippon, nusantara
from ink import Ink
from odf import image, p, para, writer
from producers import png
from render import pixels, svg
from words1 import BG, HR, ID, MX, PEOPLE as WHO, SL, VI

uri = lambda img, dpi: 'data:image/png;base64,' + base64.b64encode(png(img, dpi)).decode()

# n01: a picture pasted into a letter
P01 = [('Estimada Lucía:', 'Le adjunto la etiqueta para su envío. Imprímala, recórtela y péguela en la caja. El transportista pasará el jueves por la tarde; no hace falta que esté en casa toda la mañana.', 'Un saludo, Taller Almendra · 555-0128 · hola@almendra.example',
        iberia(1, WHO['es'], '28-B4', 'TR4400123456', 'VILLAEJEMPLO'), 'picture', 'center'),
       ('Hola Fernanda,', 'aquí está tu guía de prepago. Pégala en el paquete con cinta transparente y déjalo en cualquier sucursal antes del viernes.', 'Gracias por comprar en Taller Nopal',
        andina(WHO['mx'], 'GDL', 'CX77012345678', MX), 'ink', 'start'),
       ('Exma. Sra. D.ª Beatriz,', 'conforme combinado, segue abaixo a etiqueta registada. Por favor dobre a folha e cole apenas a parte da etiqueta.', 'Com os melhores cumprimentos, Atelier Sabugueiro',
        lusa(WHO['pt'], 'RX473124829XX', '0,4'), 'picture', 'end')]


def letter(only):
    shade = '#000000' if only is None else '#ffffff'
    styles = para('H', 20, True, color=shade, face='Liberation Serif') + para('N', 11, color=shade, face='Liberation Serif', after=3) + para('B', 11, color=shade, extra='fo:break-before="page"')
    styles += ''.join(para(f'A{a}', 4, align=a, after=3) for a in ('center', 'start', 'end'))
    styles += '<style:style style:name="G" style:family="graphic"><style:graphic-properties style:vertical-pos="top" style:vertical-rel="baseline" fo:border="none" fo:padding="0mm"/></style:style>'
    body = ''
    for n, (dear, words, bye, ink, _, side) in enumerate(P01):
        pic = pixels(ink, 203, margin=3)
        body += p('B' if n else 'N', '') + p('H', ['Taller Almendra', 'Taller Nopal', 'Atelier Sabugueiro'][n]) + p('N', dear) + p('N', words)
        body += (f'<text:p text:style-name="A{side}"><draw:frame draw:style-name="G" text:anchor-type="as-char" svg:width="{pic.width / 8:.2f}mm" svg:height="{pic.height / 8:.2f}mm">'
                 f'{image(pic, 203, isinstance(only, tuple))}</draw:frame></text:p>') + p('N', bye)
    return writer(210, 297, 18, styles, body)


# n02: under an invoice
def bill(words, ink, n):
    rows = ''.join(f'<tr><td>{a}<td>{b}<td class=r>{c}' for a, b, c in words['rows'])
    code = Ink(22, 22)
    code.code('qrcode', f'PAY|{words["no"]}|{words["sum"]}|EUR', 0, 0, 0.7)
    side = f'<aside><b>{words["pay"]}</b>{svg(code)}<p>{words["small"]}</aside>'
    return (f'<div class=sheet><header><h1>{words["shop"]}</h1><div>{words["addr"]}</div></header><h2>{words["title"]} {words["no"]}</h2><p>{words["buyer"]}</p>'
            f'<table>{rows}<tr class=sum><td><td>{words["total"]}<td class=r>{words["sum"]}</table><footer>{(f"<div class=L0>{svg(ink)}</div>" + side) if n % 2 == 0 else side + f"<div class=L0>{svg(ink)}</div>"}</footer></div>')


B02 = [dict(shop='Radionica Lipa', addr='Primjerna ulica 3, 00000 Primjerovac<br>OIB 00000000000 · tel. 555-0160', title='Račun', no='114-1-1', buyer='Kupac: Ivana Kovačević, Ulica primjera 27', rows=[('Keramička šalica', '2 kom', '24,00'), ('Tanjur plavi', '1 kom', '10,00')], total='Ukupno EUR', sum='34,00', pay='Plati skeniranjem', small='Hvala na kupnji. Povrat u roku 14 dana.'),
       dict(shop='Delavnica Brina', addr='Vzorčna cesta 8, 0000 Primerje<br>tel. 555-0175', title='Račun št.', no='2-2026', buyer='Kupec: Maja Zupančič, Vzorčna pot 5', rows=[('Lesena žlica', '4 kos', '18,00'), ('Deska hrast', '1 kos', '27,50')], total='Skupaj EUR', sum='45,50', pay='Plačaj s kodo', small='DDV ni obračunan na podlagi 94. člena.'),
       dict(shop='Ателие Здравец', addr='ул. Примерна 4, 0000 Примерово<br>тел. 555-0109', title='Фактура №', no='0000000412', buyer='Получател: Мария Стоянова, ул. Образцова 16', rows=[('Вълнен шал', '1 бр.', '39,00')], total='Общо', sum='39,00', pay='Плати с код', small='Благодарим за поръчката.'),
       dict(shop='Εργαστήρι Μυρτιά', addr='Οδός Παραδείγματος 5, 00000<br>τηλ. 555-0119', title='Τιμολόγιο', no='Α-77', buyer='Πελάτης: Ελένη Παπαγιαννίδου', rows=[('Σαπούνι ελιάς', '6', '21,00'), ('Κερί', '2', '16,00')], total='Σύνολο', sum='37,00', pay='Πληρωμή με κωδικό', small='Ευχαριστούμε.')]
I02 = [balkan(WHO['hr'], HR, 'ZG', 'VZ10234567890', '34,00 €'), balkan(WHO['sl'], SL, 'LJ 2', 'VZ10234567913', '45,50 €'), balkan(WHO['bg'], BG, 'СФ', 'VZ10234567777', '39,00'), hellas(WHO['el'], 'ΑΘ-4', 'OB55512345678')]
CSS02 = '''body{font:10pt 'Liberation Sans'}.sheet{display:grid;grid-template-rows:auto auto auto 1fr auto;height:268mm}header{display:flex;justify-content:space-between;border-bottom:2px solid #247;padding-bottom:3mm}
h1{margin:0;color:#247;font-size:22pt}h2{font-size:14pt;margin:6mm 0 2mm}table{width:100%;border-collapse:collapse;align-self:start;margin-top:4mm}td{border-bottom:1px solid #ccc;padding:2mm}.r{text-align:right}.sum td{font-weight:700;border-bottom:2px solid #247}
footer{display:flex;gap:14mm;align-items:flex-start}aside{font-size:9pt;max-width:58mm}aside svg{margin:3mm 0}'''

# n03: in the middle of an e-mail
MAIL = [('Corriva <etichette@corriva.example>', 'La tua etichetta di spedizione', 'Ciao, ecco la tua lettera di vettura. Stampala e applicala sul pacco.', svg(itala(WHO['it'], 'MI 07', '30120455667788', '€ 34,50')), itala(WHO['it'], 'MI 07', '30120455667788'), 'ink', 'Non rispondere a questa e-mail. Corriva Esempio S.r.l.'),
        ('Kuratek <resi@kuratek.example>', 'Resi Anda siap dicetak', 'Halo Kriya Melati, cetak label di bawah ini lalu tempelkan pada paket.', None, nusantara(WHO['id'], 'BDO-04', 'KT0091234567', 'COD Rp 145.000', ID), 'picture', 'Anda menerima surel ini karena terdaftar sebagai penjual contoh.'),
        ('配送センター <info@hentaro.example>', '送り状データのお知らせ', 'いつもご利用ありがとうございます。下の送り状を印刷してください。', svg(nippon(WHO['jp'], '123-4567', '412255667788', '3月6日')), nippon(WHO['jp'], '123-4567', '412255667788', '3月6日'), 'ink', 'このメールは送信専用です。'),
        ('Cò Xanh <van-don@coxanh.example>', 'Phiếu gửi hàng của bạn', 'Chào shop, vui lòng in phiếu dưới đây và dán lên gói hàng.', None, nusantara(WHO['vi'], 'HN-12', 'CX8801234567', 'THU HỘ 320.000 đ', VI), 'picture', 'Thư tự động, xin đừng trả lời.')]


def mail(n):
    sender, subject, words, drawn, ink, _, foot = MAIL[n]
    pic = pixels(ink, 203, margin=2)
    label = f'<div class="L0 c" style="width:{ink.w}mm">{drawn}</div>' if drawn else f'<img class="L0 pic c" src="{uri(pic, 203)}" style="width:{pic.width / 8}mm;height:{pic.height / 8}mm">'
    return (f'<div class=bar><b>Posta</b><span>vendite@esempio.example</span></div><h3>{subject}</h3><div class=who><i></i><div><b>{sender.replace("<", "&lt;")}</b><br>vendite@esempio.example</div><time>4/3/2026, 9:1{n}</time></div>'
            f'<p>{words}<p><a>Apri nel browser</a></p>{label}<div class=foot>{foot}<br>1 allegato · 84 KB</div>')


CSS03 = '''body{font:10pt 'Liberation Sans','Droid Sans Fallback'}.bar{display:flex;justify-content:space-between;border-bottom:1px solid #bbb;padding-bottom:2mm;color:#555}h3{font-size:15pt;margin:4mm 0}.who{display:grid;grid-template-columns:12mm 1fr auto;gap:3mm;align-items:center}.who i{width:10mm;height:10mm;border-radius:50%;background:#79c}
a{color:#15c;text-decoration:underline}.c{margin:5mm auto;display:block}.foot{color:#777;font-size:8pt;border-top:1px solid #ddd;padding-top:3mm}'''
MARGIN03 = "@page{@top-left{content:'4/3/26, 09:14';font-size:7pt}@top-right{content:'Posta - messaggio';font-size:7pt}@bottom-left{content:'https://posta.example/u/0/?view=print';font-size:7pt}@bottom-right{content:counter(page) '/4';font-size:7pt}}"
