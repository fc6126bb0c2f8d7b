"""Words of lot 1: invented people at example addresses."""
HR = {'sample': 'UZORAK', 'not': 'ne vrijedi za prijevoz', 'to': 'PRIMATELJ', 'cod': 'OTKUPNINA', 'from': 'POŠILJATELJ', 'sender': 'Radionica Lipa\nPrimjerna ulica 3\n00000 Primjerovac'}
SL = {'sample': 'VZOREC', 'not': 'ne velja za prevoz', 'to': 'PREJEMNIK', 'cod': 'ODKUPNINA', 'from': 'POŠILJATELJ', 'sender': 'Delavnica Brina\nVzorčna cesta 8\n0000 Primerje'}
BG = {'sample': 'ОБРАЗЕЦ', 'not': 'невалиден за превоз', 'to': 'ПОЛУЧАТЕЛ', 'cod': 'НАЛОЖЕН ПЛАТЕЖ', 'from': 'ПОДАТЕЛ', 'sender': 'Ателие Здравец\nул. Примерна 4\n0000 Примерово'}
LT = {'sample': 'PAVYZDYS', 'not': 'negalioja siuntimui', 'at': 'Siuntų paštomatas · Pavyzdžio g. 12', 'from': 'Siuntėjas: Dirbtuvė Kadagys, tel. 555-0148'}
LV = {'sample': 'PARAUGS', 'not': 'nav derīgs sūtīšanai', 'at': 'Pakomāts · Parauga iela 7', 'from': 'Sūtītājs: Darbnīca Pīlādzis, tālr. 555-0117'}
ET = {'sample': 'NÄIDIS', 'not': 'ei kehti saatmiseks', 'at': 'Pakiautomaat · Näite tn 3', 'from': 'Saatja: Töökoda Kadakas, tel 555-0152'}
CL = {'letter': 'E', 'carrier': 'Zondaviento', 'service': 'Encomienda a domicilio', 'from': 'DE: Taller Copihue, Pasaje Ejemplo 21, Ciudad Ejemplo, fono 555-0139\nOrden 7781 / bulto único', 'to': 'PARA', 'sample': 'MUESTRA', 'not': 'no válida para transporte'}
MX = {'letter': 'T', 'carrier': 'Cactura', 'service': 'Terrestre · día siguiente', 'from': 'REMITENTE: Taller Nopal, Calle Ejemplo 33, Col. Ejemplo, 00000  tel. 555-0163\nGuía prepagada', 'to': 'DESTINATARIO', 'sample': 'MUESTRA', 'not': 'guía no válida para envío'}
ID = {'shop': 'Kriya Melati', 'carrier': 'KURATEK', 'service': 'Reguler · 2-3 hari', 'number': 'Resi', 'to': 'PENERIMA', 'from': 'PENGIRIM', 'sender': 'Kriya Melati\nJl. Contoh No. 9\nKota Contoh 00000\n555-0158', 'short': 'KT',
      'weight': 'Berat 0,5 kg · 1 koli', 'date': 'Dikirim 04-03', 'sample': 'CONTOH', 'not': 'tidak berlaku untuk pengiriman', 'foot': 'Video buka paket diperlukan untuk klaim. kuratek.example'}
VI = {'shop': 'Tiệm Gốm Sen', 'carrier': 'CÒ XANH', 'service': 'Giao tiêu chuẩn', 'number': 'Mã vận đơn', 'to': 'NGƯỜI NHẬN', 'from': 'NGƯỜI GỬI', 'sender': 'Tiệm Gốm Sen\n15 đường Ví Dụ\nQuận Mẫu\n555-0126', 'short': 'CX',
      'weight': 'Khối lượng 0,7 kg', 'date': 'Ngày gửi 04-03', 'sample': 'BẢN MẪU', 'not': 'không có giá trị vận chuyển', 'foot': 'Cho xem hàng, không cho thử. coxanh.example'}
PEOPLE = {
    'es': ['Lucía Ferrándiz Soto', 'Calle del Ejemplo 31, 4º izq.', '28000 Villaejemplo', '555-0181'], 'es2': ['Joaquín Beltrán', 'Avda. de la Muestra 112', '46000 Muestrario', '555-0113'],
    'pt': ['Beatriz Nogueira Pinho', 'Travessa da Amostra 18, 3.º Esq.', '4000-000 Porto Exemplo'], 'br': ['Thaís Moreira Lacerda', 'Rua do Exemplo, 1450, ap. 72', 'Bairro Amostra', '01000-123 Cidade Exemplo – EX'],
    'it': ['Ginevra Salvatori', 'Via del Campione 18 int. 4', '20000 Borgo Campione MI'], 'it2': ['Studio Tecnico Valli', 'Piazza Esempio 2', '40000 Esempio BO'],
    'el': ['Ελένη Παπαγιαννίδου', 'Οδός Δείγματος 14', '115 00 Δειγματούπολη', 'τηλ. 555-0136'], 'hr': ['Ivana Kovačević', 'Ulica primjera 27', '10000 Primjerovac'],
    'sl': ['Maja Zupančič', 'Vzorčna pot 5', '1000 Primerje'], 'bg': ['Мария Стоянова', 'ул. Образцова 16, ет. 3', '1000 Примерово'],
    'lt': ['Rūta Kazlauskaitė', 'Pavyzdžio g. 40-7', '44000 Pavyzdžiai', 'tel. 555-0121'], 'lv': ['Inga Bērziņa', 'Parauga iela 9', 'LV-0000 Paraugi'], 'et': ['Liisa Tamm', 'Näite tee 11', '00000 Näidisküla'],
    'cl': ['Catalina Rojas Muñoz', 'Camino Ejemplo 2040, depto 51', 'Ñuñejemplo', '555-0190'], 'mx': ['Fernanda Quiroz Lima', 'Priv. de la Muestra 8', 'Col. Ejemplo, C.P. 00000', 'entre Calle A y Calle B'],
    'cn': ['王小明  555-0123', '示例省示例市样本区', '示例路88号3栋502室'], 'id': ['Putri Anggraini', 'Jl. Contoh Raya 21', 'Kec. Contoh', 'Kota Misal 40000', '555-0142'], 'vi': ['Nguyễn Thu Hà', '48 đường Ví Dụ', 'Phường Mẫu', '555-0177'],
    'au': ['Matilda Grevillea', 'Unit 6, 21 Example Street', 'EXAMPLE HILLS  XX'], 'au2': ['Corey Banksia', '118 Sample Road', 'SAMPLETON  XX'], 'jp': ['見本県例示市中央', '二丁目15-8　例示荘203', '山田　花子'], 'jp2': ['見本府見本市北区', '例町4-1', '佐藤　健'],
}
