"""Words of lot 2: invented people at example addresses."""
IS = {'title': 'Fylgibréf – innanlands', 'sample': 'SÝNISHORN – gildir ekki til flutnings', 'from': 'SENDANDI', 'sender': 'Smiðjan Lyng\nDæmisgata 4\n000 Dæmi\nsími 555-0118', 'what': 'INNIHALD', 'goods': 'Leirvörur, brothætt', 'sign': 'Undirskrift', 'to': 'VIÐTAKANDI', 'pay': 'GREIÐSLA', 'paid': 'Greitt af sendanda', 'carrier': 'Hraunpóstur', 'kg': '1,3 kg'}
FO = {'title': 'Fraktbrev · paket', 'sample': 'PROV – gäller inte för transport', 'from': 'AVSÄNDARE', 'sender': 'Verkstad Ljung\nExempelvägen 4\n000 00 Exempelby\n555-0161', 'what': 'INNEHÅLL', 'goods': 'Stickat, 2 st', 'sign': 'Underskrift', 'to': 'MOTTAGARE', 'pay': 'BETALNING', 'paid': 'Betalt av avsändaren', 'carrier': 'Skärfrakt', 'kg': '0,6 kg'}
CO = {'carrier': 'Vallenta', 'service': 'Mercancía', 'from': 'REMITENTE', 'sender': 'Taller Guayacán\nCra. Ejemplo 7-21\nCiudad Ejemplo\n555-0149', 'to': 'DESTINATARIO', 'sample': 'MUESTRA', 'not': 'no válida para envío', 'guide': 'GUÍA N.º'}
PE = {'carrier': 'Wayrax', 'service': 'Agencia', 'from': 'REMITENTE', 'sender': 'Taller Retama\nJr. Ejemplo 310\nCiudad Ejemplo\n555-0156', 'to': 'CONSIGNADO A', 'sample': 'MUESTRA', 'not': 'no válida para envío', 'guide': 'GUÍA N.º'}
NZ = {'carrier': 'Takapost', 'zone': 'RURAL', 'to': 'To', 'sample': 'SAMPLE – not valid for carriage', 'sender': 'From Flax Studio\n9 Example Rd, Exampleton'}
ZA = {'carrier': 'Springhaas', 'zone': 'ROAD', 'to': 'Consignee / Ontvanger', 'sample': 'SAMPLE – not valid / VOORBEELD', 'sender': 'From Fynbos Crafts\n3 Example Ave'}
CA = ('Destinatari', 'Remitent: Taller Farigola, Carrer Exemple 6, 08000 Vilaexemple', 'MOSTRA – no vàlida per a l’enviament', 'Franqueig\npagat')
WHO2 = {
    'sk': ['Zuzana Hronská', 'Vzorová 18/4', '010 00 Vzorovo'], 'is': ['Sigrún Dagsdóttir', 'Dæmisvegur 22', '600 Dæmi'], 'sv': ['Elin Norrskog', 'Provgatan 11 B', '000 00 Provby'], 'ro': ['Ioana Mureșan', 'Str. Mostrei 45, bl. C2, ap. 9', '000000 Exemplu', 'tel. 555-0137'],
    'sr': ['Милица Јовановић', 'Узорна улица 31', '11000 Пример', 'тел. 555-0104'], 'in': ['Ananya Deshmukh', 'Flat 12, Sample Residency', 'Example Road, Ward 4', 'Samplepur 400000'], 'ph': ['Jomar Dela Peña', 'Blk 4 Lot 9 Halimbawa Subd.', 'Brgy. Sampol, Lungsod 1000', '555-0193'],
    'ar': ['Martina Quiroga', 'Av. de la Muestra 1810, 3° B', 'X5000 Ciudad Ejemplo', 'Tel. 555-0188'], 'co': ['Daniela Restrepo Gil', 'Calle Ejemplo 45 # 12-30', 'Apto 502, Barrio Muestra', '555-0165'], 'pe': ['Renzo Huamán Poma', 'Av. Ejemplo 2231', 'Distrito Muestra', 'DNI 00000000'],
    'nz': ['Aroha Kererū', '14 Sample Terrace', 'RD 2, Sampleville 0000'], 'za': ['Thandeka Mokoena', '27 Voorbeeld Street', 'Exampleville 0000'],
}
