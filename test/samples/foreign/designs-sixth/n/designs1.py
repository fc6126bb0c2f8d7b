"""Labels of lot 1. Everything on them is invented; each says that it is a sample."""
from ink import Ink, mark


def iberia(n, to, zone, ref, city, service='24 HORAS'):
    """100 x 140 mm, no frame: black band, huge zone, bars down the right side."""
    k = Ink(100, 140)
    k.rect(0, 0, 100, 13, fill=0)
    k.text(3, 9.3, 'TAURELO', 20, True, grey=255).text(97, 9, service, 15, True, 'r', grey=255)
    k.text(0, 18, 'Remite:', 6).text(0, 21, 'Taller Almendra · C/ Ejemplo 14, 2º B · 28000 Villaejemplo · Tel. 555-0128', 6)
    k.line(0, 24, 78, 24, 0.6)
    k.text(0, 30, 'ENTREGAR A', 7, grey=90).text(0, 36.5, '\n'.join(to[:1]), 13, True).text(0, 43, '\n'.join(to[1:]), 11)
    k.rect(0, 58, 78, 27, fill=215)
    k.text(39, 80, zone, 62, True, 'm')
    k.text(0, 92, city, 20, True).text(78, 92, f'Bulto {n}/1', 9, anchor='r')
    k.line(0, 95, 78, 95, 0.3).text(0, 99.5, 'Observaciones: dejar en conserjería', 7).text(0, 103, 'Kilos 1,2   Portes PAGADOS   Reembolso 0,00 €', 7)
    k.code('code128', ref, 84, 22, 0.375, 13, turned=True)
    k.text(81.5, 60, ref, 7, rot=90, anchor='m')
    k.code('datamatrix', f'{ref}|{zone}|{n}', 0, 109, 0.75)
    k.text(26, 113, 'MUESTRA', 15, True).text(26, 118, 'no válida para el transporte', 8).text(26, 124, f'Ref. pedido {ref[-6:]}', 8)
    k.text(0, 138.5, 'Impreso 04/03 · v3.1 · Condiciones en taurelo.example', 5.5)
    return k


def lusa(to, ref, kg, service='REGISTO SIMPLES', intl=False):
    """105 x 148 mm, rules from side to side, postage box and postal number; no frame."""
    k = Ink(97, 136)
    mark(k, 0, 0, 11, 2)
    k.text(20, 6, 'Pelúdia', 17, True).text(20, 10.5, 'correio e encomendas', 7)
    k.rect(66, 0.3, 30.7, 17, 0.5).text(81.3, 5, 'PORTE PAGO', 8, True, 'm').text(81.3, 9.5, 'CONTRATO 00551', 7, anchor='m').text(81.3, 14, 'AMOSTRA', 9, True, 'm')
    k.line(0, 20, 97, 20, 0.8).text(0, 26, service, 14, True).text(97, 26, 'EM MÃO' if not intl else 'PRIORITÁRIO', 9, anchor='r').line(0, 29, 97, 29, 0.3)
    k.text(0, 34, 'Destinatário', 7, grey=100).text(4, 41, '\n'.join(to), 12)
    k.line(0, 66, 97, 66, 0.3).text(0, 70, 'Remetente', 6.5, grey=100).text(0, 74, 'Atelier Sabugueiro, Rua do Exemplo 7, 1000-000 Vila Exemplo', 7).text(0, 78, 'Tel. 555-0171   Peso ' + kg + ' kg', 7)
    k.line(0, 81, 97, 81, 0.8)
    wide, _ = k.code('code128', ref, 10, 86, 0.375, 24)
    k.text(48, 116, f'{ref[:2]} {ref[2:5]} {ref[5:8]} {ref[8:11]} {ref[11:]}', 13, True, 'm')
    k.line(0, 120, 97, 120, 0.3).text(0, 125, 'AMOSTRA: não válido para transporte. Se não for entregue, devolver ao remetente.', 6.5)
    k.text(0, 129, 'Não dobrar sobre o código de barras.', 6.5).line(0, 136, 97, 136, 0.8)
    return k


def itala(to, depot, ref, cod=None):
    """138 x 95 mm, designed lying: only the left and the lower side are ruled."""
    k = Ink(138, 95)
    k.line(0.5, 0, 0.5, 95, 1).line(0, 94.5, 138, 94.5, 1)
    k.text(4, 9, 'Corriva', 24, True, face='serif').text(4, 13, 'CAMPIONE – non valido per la spedizione', 7)
    k.text(138, 28, depot, 78, True, 'r')
    k.text(4, 20, 'MITTENTE', 5.5, grey=90).text(4, 23.5, 'Bottega Ginestra\nVia Esempio 3, 00000 Borgo Esempio', 7)
    k.line(4, 31, 70, 31, 0.3).text(4, 36, 'DESTINATARIO', 6).text(4, 42, '\n'.join(to), 12, True)
    if cod:
        k.rect(95, 34, 43, 14, 0.7).text(116.5, 39, 'CONTRASSEGNO', 8, True, 'm').text(116.5, 45.5, cod, 14, True, 'm')
    else:
        k.text(138, 42, 'PORTO FRANCO', 11, True, 'r')
    k.text(138, 55, 'Colli 1 / 1    kg 0,8', 9, anchor='r')
    k.code('itf', ref, 10, 63, 0.375, 22)
    k.text(10, 90, ref, 10)
    k.code('datamatrix', f'{ref}{depot}', 112, 62, 0.875)
    return k


def hellas(to, area, ref, cod='ΟΧΙ'):
    """100 x 100 mm: boxes of unequal size inside a thick frame with a gap in the upper side."""
    k = Ink(100, 100)
    for a in ((0.4, 0, 0.4, 100), (99.6, 0, 99.6, 100), (0, 99.6, 100, 99.6), (0, 0.4, 28, 0.4), (62, 0.4, 100, 0.4)):
        k.line(*a, 0.8)
    k.text(45, 4.5, 'ONDRABEL', 13, True, 'm').text(4, 9, 'ΔΕΙΓΜΑ – δεν ισχύει για αποστολή', 7)
    k.line(0, 12, 100, 12, 0.4).line(60, 12, 60, 46, 0.4).line(60, 29, 100, 29, 0.4)
    k.text(3, 17, 'ΠΑΡΑΛΗΠΤΗΣ', 6.5, grey=80).text(3, 23, '\n'.join(to), 10, True)
    k.text(80, 25, area, 30, True, 'm').text(62, 33, 'ΑΝΤΙΚΑΤΑΒΟΛΗ', 6.5).text(80, 42, cod, 18, True, 'm')
    k.line(0, 46, 100, 46, 0.4).text(3, 50, 'ΑΠΟΣΤΟΛΕΑΣ: Εργαστήρι Μυρτιά, Οδός Παραδείγματος 5, 00000  τηλ. 555-0119', 6)
    k.line(0, 53, 100, 53, 0.4)
    k.code('code128', ref, 12, 57, 0.375, 22)
    k.text(50, 83, ref, 11, anchor='m').line(0, 86, 100, 86, 0.4).line(34, 86, 34, 100, 0.4).line(67, 86, 67, 100, 0.4)
    k.text(3, 90, 'ΤΕΜΑΧΙΑ', 6).text(17, 97, '1/1', 12, True, 'm').text(37, 90, 'ΒΑΡΟΣ', 6).text(51, 97, '1,5 kg', 12, True, 'm').text(70, 90, 'ΗΜΕΡΟΜΗΝΙΑ', 6).text(84, 97, '04/03', 12, True, 'm')
    return k


def balkan(to, words, city, ref, cod):
    """98 x 98 mm: no frame, thick bars above and below, a box with the money to collect."""
    k = Ink(98, 98)
    k.rect(0, 0, 98, 2.2, fill=0).rect(0, 95.8, 98, 2.2, fill=0)
    mark(k, 0, 5, 8, 4)
    k.text(14, 11.5, 'VEZMIO', 19, True).text(98, 9, words['sample'], 7.5, True, 'r').text(98, 12.5, words['not'], 6, anchor='r')
    k.text(0, 19, words['to'], 6, grey=90).text(0, 25, '\n'.join(to), 11, True)
    k.rect(66, 18, 31.8, 22, 0.4).text(81.9, 23, words['cod'], 8, anchor='m').text(81.9, 32, cod, 17, True, 'm').text(81.9, 37.5, 'IBAN XX00 0000', 6, anchor='m')
    k.rect(0, 43, 40, 14, fill=0).text(20, 53.5, city, 27, True, 'm', grey=255)
    k.text(44, 48, words['from'], 6, grey=90).text(44, 51.5, words['sender'], 6.5)
    k.code('code128', ref, 4, 61, 0.375, 26)
    k.text(40, 91.5, ref, 10, anchor='m')
    k.code('datamatrix', f'{ref};{city};{cod}', 78, 66, 0.75)
    return k


def locker(to, spot, ref, words):
    """96 x 66 mm, small and lying: parcel locker, one huge code word, QR."""
    k = Ink(96, 66)
    k.text(0, 7, 'kulldax', 21, True).text(96, 4, words['sample'], 6.5, True, 'r').text(96, 7, words['not'], 5.5, anchor='r')
    k.line(0, 9.5, 96, 9.5, 0.5)
    k.text(0, 24, spot, 42, True).text(0, 29, words['at'], 8)
    k.text(0, 35, '\n'.join(to), 8)
    k.code('qrcode', f'KX:{ref}:{spot}', 74, 13, 0.75)
    k.code('code128', ref, 4, 47, 0.25, 13)
    k.text(4, 64.5, ref, 8).text(96, 64.5, words['from'], 6, anchor='r')
    return k


def brasil(to, cep, ref, service, sig, words=('Recebedor:', 'Assinatura:', 'Documento:')):
    """105 x 148 mm: matrix code, service disc, postcode's own bars, lines to sign."""
    k = Ink(99, 138)
    k.code('datamatrix', f'{cep}00000{cep}0000151{ref}00000000000040000000-00.000000-00.000000', 0, 0, 0.625)
    k.disc(84, 12, 12, fill=0).text(84, 16.5, service, 26, True, 'm', grey=255)
    mark(k, 44, 2, 12, 1)
    k.text(50, 19, 'ZORRILO', 11, True, 'm').text(36, 23, f'NF: 1204   Pedido: {sig}', 6.5).text(36, 26, 'Volume 1/1   Peso: 640 g', 6.5)
    k.text(49, 32, f'{ref[:2]} {ref[2:5]} {ref[5:8]} {ref[8:11]} {ref[11:]}', 11, True, 'm')
    k.code('code128', ref, 10, 34, 0.375, 19)
    for n, w in enumerate(words):
        k.text(0, 59 + n * 5, w, 7).line(18, 59.3 + n * 5, 99, 59.3 + n * 5, 0.2)
    k.rect(0.25, 73, 98.5, 43, 0.5).rect(0.25, 73, 30, 6, fill=0).text(3, 77.4, 'DESTINATÁRIO', 9, True, grey=255)
    k.text(3, 84, '\n'.join(to), 9.5)
    k.code('code128', cep, 6, 101, 0.375, 12)
    k.text(60, 112, 'AMOSTRA – sem valor postal', 7, True)
    k.text(0, 121, 'Remetente: Ateliê Jacarandá – Rua Exemplo, 80 – 00000-000 Cidade Exemplo – Tel 555-0166', 6)
    k.text(0, 125, 'AMOSTRA: não válido para transporte', 6).line(0, 128, 99, 128, 0.2, '1 1')
    k.text(0, 132, 'Obs.:', 6).text(0, 137.5, 'Zorrilo Logística Exemplo', 6)
    return k


def andina(to, comuna, ref, words):
    """4 x 6 in. inside: sort code in huge type at the foot, PDF417 in the middle."""
    k = Ink(95, 145)
    k.rect(0.4, 0.4, 94.2, 144.2, 0.8)
    k.rect(0.4, 0.4, 32, 18, fill=0).text(16.5, 13, words['letter'], 36, True, 'm', grey=255)
    k.text(36, 8, words['carrier'], 16, True).text(36, 14, words['service'], 10)
    k.line(0, 18.4, 95, 18.4, 0.8)
    k.text(3, 23, words['from'], 6).line(0, 33, 95, 33, 0.3)
    k.text(3, 38, words['to'], 7, True).text(3, 44, '\n'.join(to), 11)
    k.line(0, 66, 95, 66, 0.8)
    k.code('pdf417', f'{ref}|{comuna}|{to[0]}|1/1|1200', 8, 69.5, 0.25, more=('--cols=8',))
    k.line(0, 92, 95, 92, 0.3)
    k.code('code128', ref, 14, 95.5, 0.375, 20)
    k.text(47.5, 120, ref, 10, anchor='m').line(0, 123, 95, 123, 0.8)
    k.text(3, 140, comuna, 40, True).text(92, 128, words['sample'], 7, True, 'r').text(92, 131.5, words['not'], 6, anchor='r').text(92, 140, '1/1', 18, True, 'r')
    return k


def sinica(to, seg, ref):
    """75 x 125 mm: three-part code in huge type, bars across and down the side; grey discs."""
    k = Ink(75, 125)
    k.line(0, 14, 75, 14, 0.3).text(0, 10, '翎川快运', 20, True).text(75, 6, '样本', 12, True, 'r').text(75, 11, '不可用于寄递', 6, anchor='r')
    k.text(37.5, 26, seg, 34, True, 'm').line(0, 30, 75, 30, 0.3)
    k.disc(5, 38, 4, fill=0).text(5, 39.6, '收', 11, True, 'm', grey=255).text(11, 37, to[0], 11).text(11, 43, '\n'.join(to[1:]), 9)
    k.line(0, 54, 60, 54, 0.3).disc(5, 60, 3, fill=None, line=0.3).text(5, 61.2, '寄', 8, anchor='m').text(10, 59, '木棉手作  555-0182', 6.5).text(10, 62.5, '示例市示例路8号', 6.5)
    k.line(0, 66, 60, 66, 0.3)
    k.code('code128', ref, 2, 71, 0.375, 16)
    k.text(28, 91, ref, 9, anchor='m').line(0, 94, 75, 94, 0.3)
    k.code('code128', ref[-8:], 66, 36, 0.375, 8, turned=True)
    k.text(0, 99, '签收人：', 8).text(40, 99, '时间：', 8).text(0, 106, '已验视', 12, True).text(0, 113, '标准快递  重量 0.6kg', 7)
    k.code('qrcode', f'LC{ref}', 53, 99, 0.75)
    k.text(0, 123.5, '样本 – 不可用于寄递 – 服务热线 555-0199', 6)
    return k


def nusantara(to, city, ref, cod, words):
    """97 x 145 mm: bars at the head, band with the money to collect, QR of the order, dashed lines."""
    k = Ink(97, 145)
    k.text(0, 9, words['shop'], 12, True).text(97, 9, words['carrier'], 18, True, 'r').text(97, 13, words['service'], 8, anchor='r')
    k.code('code128', ref, 12, 17, 0.375, 17)
    k.text(48, 39, f'{words["number"]} {ref}', 10, True, 'm')
    k.line(0, 43, 97, 43, 0.3, '1.2 0.9')
    k.rect(0, 46, 97, 11, fill=0).text(48.5, 54, cod, 20, True, 'm', grey=255)
    k.text(0, 63, words['to'], 7, grey=80).text(0, 68.5, '\n'.join(to), 10)
    k.text(62, 63, words['from'], 7, grey=80).text(62, 67.5, words['sender'], 7)
    k.line(0, 90, 97, 90, 0.3, '1.2 0.9').text(48.5, 104, city, 34, True, 'm').line(0, 109, 97, 109, 0.3, '1.2 0.9')
    k.code('qrcode', f'{words["short"]}-{ref}', 4, 114, 0.875)
    k.text(33, 117, words['weight'], 8).text(33, 122, words['date'], 8).text(33, 130, words['sample'], 10, True).text(33, 134.5, words['not'], 7)
    k.text(0, 144.3, words['foot'], 6)
    return k


def austral(to, post, ref, service):
    """95 x 142 mm, two frames one above the other that touch; bars and matrix code side by side."""
    k = Ink(95, 142)
    k.rect(0.25, 0.25, 94.5, 30, 0.5, radius=2).text(4, 12, 'BILLAQUOLL', 20, True).text(4, 18, 'parcels', 11)
    k.rect(60, 4, 31, 12, fill=0).text(75.5, 12.5, service, 18, True, 'm', grey=255).text(91, 22, 'SAMPLE – not valid for carriage', 6.5, anchor='r').text(4, 27, 'POSTAGE PAID  ACCOUNT 00417', 7)
    k.rect(0.25, 30.25, 94.5, 111.5, 0.5)
    k.text(4, 36, 'DELIVER TO', 7, True).text(91, 36, 'Ph 555-0107', 7, anchor='r').text(4, 43, '\n'.join(to), 12).text(91, 62, post, 28, True, 'r')
    k.line(0, 66, 95, 66, 0.5).text(4, 70, 'Signature on delivery not required.  Dead weight 0.75 kg', 7).line(0, 73, 95, 73, 0.5)
    k.code('datamatrix', f'019931265099999891{ref}|4200{post}', 5, 78, 0.75)
    k.text(30, 82, 'AP Article Id:', 7).text(30, 87, ref, 10, True)
    k.code('code128', ref, 12, 104, 0.375, 21)
    k.text(47.5, 129, ref, 9, anchor='m').line(0, 131.5, 95, 131.5, 0.3)
    k.text(4, 135, 'SENDER  Saltbush Workshop, 4 Example Pde, Exampleton', 6).text(4, 139, 'The contents are not dangerous goods. Sample label.', 6)
    return k


def nippon(to, post, ref, day):
    """140 x 88 mm, designed lying: cells of a waybill, vertical heads in black, no outer frame at the right."""
    k = Ink(140, 88)
    k.rect(0.2, 0.2, 6.5, 42, fill=0).text(5, 21, 'お届け先', 9, True, 'm', grey=255, rot=270)
    k.rect(0.2, 43, 6.5, 22, fill=0).text(5, 54, 'ご依頼主', 8, True, 'm', grey=255, rot=270)
    k.line(0, 0.2, 95, 0.2, 0.4).line(0, 42.6, 95, 42.6, 0.4).line(0, 65, 95, 65, 0.4).line(95, 0, 95, 65.2, 0.4)
    k.text(9, 7, '〒' + post, 12, True).text(9, 16, '\n'.join(to[:-1]), 11).text(12, 37, to[-1] + '　様', 16, True)
    k.text(9, 48, '〒000-0000', 7).text(9, 53, '見本県例示市一丁目2-3', 7.5).text(9, 58, '工房すみれ　電話 555-0134', 7.5).text(9, 63, '見本 – 発送には使えません', 7, True)
    k.text(99, 10, 'ヘンタロ運送', 14, True).text(99, 16, '元払い', 11).rect(99, 19, 40.8, 10, 0.4).text(101, 25.8, 'お届け日', 7).text(138, 26, day, 12, True, 'r')
    k.text(99, 35, '品名　陶器', 8).text(99, 41, '取扱注意', 13, True)
    k.code('qrcode', f'HT{ref}', 104, 44, 0.75)
    k.code('itf', ref, 8, 69, 0.375, 13)
    k.text(8, 86.8, f'{ref[:4]}-{ref[4:8]}-{ref[8:]}', 10).text(139, 86.8, '見本', 10, True, 'r')
    return k
