"""Labels laid out by CSS: Arabic, Thai, Georgian and Hindi ones in a line to cut along, customs papers beside, a screenshot."""
from designs2 import aotea, bharat, slovak
from ink import Ink
from render import svg
from words2 import NZ, WHO2 as WHO, ZA


def code(kind, text, module, height=10, width=70):
    k = Ink(width, height)
    w, h = k.code(kind, text, 0, 0, module, height)
    k.w, k.h = round(w, 3), round(h, 3)
    return svg(k), k.codes[0]


GRID = '''body{font:9pt 'Liberation Sans','Noto Sans Arabic','Noto Sans Thai','Noto Sans Georgian','Noto Sans Devanagari'}.cut{border:.5mm dashed #000;padding:4mm}.lab{display:grid;grid-template-columns:repeat(6,1fr);gap:0;height:150mm;grid-template-rows:16mm 34mm auto 20mm 42mm 12mm}
.lab>div{border-bottom:.4mm solid #000;padding:1.5mm 2mm;overflow:hidden}.f{grid-column:1/-1}.h{grid-column:span 3}.q{grid-column:span 2}.w{grid-column:span 4;border-inline-end:.4mm solid #000}.big{font-size:34pt;font-weight:700;line-height:1;text-align:center;padding-top:4mm!important}.inv{background:#000;color:#fff;display:flex;justify-content:space-between;align-items:center;font-size:17pt;font-weight:700}
.bc{display:grid;place-items:center;gap:1mm;padding:4mm!important;font-size:10pt}.s{font-size:7pt;color:#333}.to{font-size:13pt;line-height:1.35}.tips{margin-top:8mm;columns:2;font-size:9pt;color:#444}.wrap{position:relative;width:112mm}.sc{position:absolute;top:-3.4mm;left:9mm;background:#fff;font-size:11pt;padding:0 1mm}h1{font-size:16pt;margin:0 0 6mm}'''


def grid(words):
    bars, told = code('code128', words['ref'], 0.375, 22)
    square, told2 = code('qrcode', words['ref'] + '|' + words['zone'], 0.75)
    lab = (f'<div class="lab" dir="{words.get("dir", "ltr")}"><div class="f inv"><span>{words["carrier"]}</span><span>{words["service"]}</span></div><div class="w"><span class=s>{words["from"]}</span><br>{words["sender"]}</div><div class=q style="display:grid;place-items:center">{square}</div>'
           f'<div class="f to"><span class=s>{words["to"]}</span><br><b>{words["name"]}</b><br>{words["street"]}</div><div class="h big" style="border-inline-end:.4mm solid #000">{words["zone"]}</div><div class=h>{words["pay"]}</div><div class="f bc">{bars}<span>{words["ref"]}</span></div><div class="f s" style="border:0"><b>{words["sample"]}</b></div></div>')
    return f'<h1>{words["head"]}</h1><div class=wrap><div class="cut L0">{lab}</div><span class=sc>✂</span></div><div class=tips>{words["tips"]}</div>', [told2, told]


GRIDS = [grid(w) for w in (
    {'dir': 'rtl', 'head': 'Print your label / اطبع الملصق', 'carrier': 'نورسان', 'service': 'توصيل', 'from': 'المرسل', 'sender': 'ورشة الياسمين<br>شارع المثال 7<br>555-0173', 'to': 'المستلم', 'name': 'ليلى الحسن', 'street': 'شارع النموذج 21، شقة 4<br>مدينة المثال', 'zone': 'DXB4', 'pay': 'الدفع عند الاستلام<br><b style="font-size:16pt">0.00</b>', 'ref': 'NS7711002345', 'sample': 'نموذج – غير صالح للشحن · SAMPLE, not valid for carriage', 'tips': 'قص على الخط المتقطع والصق الملصق على الطرد. Cut along the dashed line and stick it on the parcel. Do not cover the bar code.'},
    {'head': 'ใบปะหน้าพัสดุ', 'carrier': 'นกกระเต็นส่งไว', 'service': 'EMS-ก', 'from': 'ผู้ส่ง', 'sender': 'ร้านดินเผาลีลา<br>9 ถนนตัวอย่าง<br>555-0129', 'to': 'ผู้รับ', 'name': 'สุภาวดี ใจงาม', 'street': '88/12 ซอยตัวอย่าง 3<br>แขวงสมมติ 10000', 'zone': 'BKK-2', 'pay': 'เก็บเงินปลายทาง<br><b style="font-size:16pt">฿ 350</b>', 'ref': 'NK0098123477', 'sample': 'ตัวอย่าง – ใช้ส่งไม่ได้', 'tips': 'ตัดตามเส้นประ แล้วติดบนกล่องให้เรียบ อย่าปิดทับบาร์โค้ด'},
    {'head': 'ამანათის ეტიკეტი', 'carrier': 'მერცხალა', 'service': 'კარამდე', 'from': 'გამგზავნი', 'sender': 'სახელოსნო ნუში<br>მაგალითის ქ. 5<br>555-0114', 'to': 'მიმღები', 'name': 'ნინო მაგალაძე', 'street': 'ნიმუშის გამზ. 17, ბინა 30<br>0100 სანიმუშო', 'zone': 'TB-11', 'pay': 'გადახდილია<br><b style="font-size:16pt">1/1</b>', 'ref': 'MR550117823', 'sample': 'ნიმუში – არ გამოიყენება გადაზიდვისთვის', 'tips': 'გაჭერით წყვეტილ ხაზზე და დააკარით ამანათს.'},
    {'head': 'शिपिंग लेबल', 'carrier': 'पवनदूत', 'service': 'SURFACE', 'from': 'प्रेषक', 'sender': 'माटी शिल्प<br>4 उदाहरण मार्ग<br>555-0151', 'to': 'प्राप्तकर्ता', 'name': 'आरती नमूनेकर', 'street': '12 नमूना नगर, तीसरी मंज़िल<br>उदाहरणपुर 400000', 'zone': 'PNQ/3', 'pay': 'COD<br><b style="font-size:16pt">₹ 899</b>', 'ref': 'PD4400812377', 'sample': 'नमूना – परिवहन के लिए मान्य नहीं', 'tips': 'बिंदीदार रेखा पर काटें और पैकेट पर चिपकाएँ।'})]

# n19: lying A4 in three columns, the label in the first
THIRD = '''body{font:8.5pt 'Liberation Sans'}.tri{display:grid;grid-template-columns:106mm 1fr 62mm;gap:9mm;height:180mm}.cn{border:.4mm solid #000;align-self:start}.cn table{width:100%;border-collapse:collapse}.cn td,.cn th{border:.25mm solid #000;padding:1.2mm;text-align:left}.cn h4{margin:2mm}.cn p{margin:2mm}.rc{border-left:.3mm dotted #555;padding-left:6mm}.L0{padding:2mm 0 0 4mm}'''


def declared(ink, n):
    head, cols, rows, sign, receipt = [
        ('CUSTOMS DECLARATION · sample', 'Detailed contents|kg|Value', ['Flax basket|0,60|NZD 85', 'Card|0,01|NZD 4'], 'I, the sender, certify that this item holds nothing dangerous. Signature: ____________', 'Sender’s receipt|Ticket TP4410099812|Rural delivery|Paid NZD 12.40|Keep until delivered'),
        ('DOUANEVERKLARING / CUSTOMS · sample', 'Contents / Inhoud|kg|Value', ['Beaded bowl|0,90|ZAR 640'], 'Signature / Handtekening ____________', 'Counter copy|TP4410077345|Road freight|Paid ZAR 99'),
        ('COLNÉ VYHLÁSENIE · vzor', 'Obsah|kg|Hodnota', ['Vyrezávaná lyžica|0,20|EUR 14', 'Misa|0,70|EUR 38'], 'Podpis odosielateľa ____________', 'Potvrdenie o podaji|RE551203447SX|Zásielka 1. triedy|3,60 €')][n]
    table = '<table><tr>' + ''.join(f'<th>{c}' for c in cols.split('|')) + ''.join('<tr>' + ''.join(f'<td>{c}' for c in r.split('|')) for r in rows) + '</table>'
    return f'<div class=tri><div><div class=L0 style="width:{ink.w + 4}mm">{svg(ink)}</div></div><div class=cn><h4>{head}</h4>{table}<p>{sign}</div><div class=rc>' + ''.join(f'<p>{r}' for r in receipt.split('|')) + '</div></div>'


THREE = [aotea(WHO['nz'], 'TP4410099812', NZ), aotea(WHO['za'], 'TP4410077345', ZA), slovak(WHO['sk'], 'RE551203447SX')]

# n15: a screenshot of a browser with the label in a grey preview
SHOT = '''@page{size:260mm 190mm;margin:0}body{font:10pt 'Liberation Sans';background:#fff}.win{height:189mm;display:grid;grid-template:9mm 11mm 1fr/52mm 1fr}.tab{grid-column:1/-1;background:#ddd;padding:2mm 4mm}.url{grid-column:1/-1;background:#eee;padding:2.5mm 10mm;border-bottom:1px solid #ccc}.side{padding:6mm;border-right:1px solid #ccc}.side button{display:block;margin:4mm 0;padding:2mm 6mm;border:0;background:#3a6;color:#fff;font:inherit}.view{background:#777;display:grid;place-items:center}.L0{background:#fff;padding:3mm}'''


def window(ink, words):
    return f'<div class=win><div class=tab>{words[0]} ×</div><div class=url>https://{words[1]}/print?id=44120</div><div class=side><b>{words[2]}</b><button>{words[3]}</button><p>{words[4]}</div><div class=view><div class=L0>{svg(ink)}</div></div></div>'


SCREENS = [(bharat(WHO['in'], 'SX1400123456789', 'BOM/7', '400000'), ('Label preview', 'seller.surahi.example', 'Print', 'Print', '1 sheet of paper<br>Destination: printer<br>Pages: All')),
           (slovak(WHO['sk'], 'RE551203555SX'), ('Lístok', 'moja.posta.example', 'Tlačiť', 'Tlačiť', 'Kópie 1<br>Okraje: predvolené'))]
