"""Label above, tax invoice below, as a browser's engine prints it; English and Hindi."""
import sys

from s_html import html_document, svg

STYLE = """
body{font-family:'Roboto','Noto Sans Devanagari','Noto Serif Devanagari';font-size:8.5pt}
.lab{position:absolute;left:48mm;top:8mm;width:114mm}
.lab table,.o table{width:100%;border-collapse:collapse}.lab td{border:.8pt solid #000;padding:1.2mm;vertical-align:top}
.big{font-size:22pt;font-weight:bold}.s{font-size:7pt}
.o{position:absolute;left:12mm;top:158mm;width:186mm}.o td,.o th{border:.4pt solid #777;padding:.8mm;font-size:7.5pt;text-align:left}
"""


def page(o):
    return f"""<div class="lab"><table>
<tr><td style="width:60%"><b>{o['pay']}</b><br><span class="s">Do not collect more than the amount shown</span></td><td style="text-align:center"><b>SAVRINDO</b><br><span class="s">surface</span></td></tr>
<tr><td rowspan="2"><span class="s">Customer address / पता</span><br><b>{o['name']}</b><br>{o['to']}</td><td style="text-align:center">{svg('qr', o['track'] + ';' + o['sort'], 0.5)}</td></tr>
<tr><td style="text-align:center" class="big">{o['sort']}</td></tr>
<tr><td colspan="2" style="text-align:center;padding:3mm">{svg('code128', o['track'], 0.375, 15)}<br><b>{o['track']}</b></td></tr>
<tr><td class="s">If undelivered, return to:<br>Neem Leaf Crafts, 14 Namuna Marg, Jaipur 302001</td><td class="s">Order {o['order']}<br>HBD 03-11 CPD 06-11<br><b>SAMPLE, not for carriage · नमूना</b></td></tr></table></div>
<div class="o"><div style="border-top:1px dashed #000;margin-bottom:3mm"></div><b style="font-size:12pt">Tax Invoice / कर चालान</b> <span class="s">Original for recipient (sample)</span>
<table><tr><th>Sold by</th><th>Bill to</th><th>Invoice</th></tr><tr><td>Neem Leaf Crafts<br>14 Namuna Marg, Jaipur</td><td>{o['name']}<br>{o['to']}</td><td>NLC/{o['order'][-4:]}<br>03-11-2026</td></tr></table><br>
<table><tr><th>Description</th><th>Qty</th><th>Gross</th><th>Taxable</th><th>Tax</th><th>Total</th></tr>{o['rows']}</table>
<p class="s">This is a computer generated invoice and needs no signature. Help 555-0188.</p></div>"""


ROW = "<tr><td>{}</td><td>{}</td><td>{}</td><td>{}</td><td>{}</td><td>{}</td></tr>"
ORDERS = [
    {"pay": "COD: collect Rs 649", "name": "Anjali Udaharan", "to": "Flat 4B, Namuna Apartments, 2nd Cross<br>Near Old Water Tank, Basavanagudi<br>Bengaluru, Karnataka 560004", "track": "SVR3300418827", "sort": "BLR/S-14", "order": "OD-118-2201", "rows": ROW.format("Block print scarf, indigo", 1, 649, "618.10", "30.90", "649.00")},
    {"pay": "PREPAID", "name": "Fr. Joseph Mathirika", "to": "Mathirika House, Ward 7, Parassala PO<br>Thiruvananthapuram, Kerala 695502", "track": "SVR3300418835", "sort": "TRV/K-02", "order": "OD-118-2204", "rows": ROW.format("Brass bell, small", 2, 900, "803.57", "96.43", "900.00") + ROW.format("Gift wrap", 1, 30, "25.42", "4.58", "30.00")},
    {"pay": "PREPAID", "name": "हर्ष प्रयोग", "to": "गली नमूना 3, मकान 118<br>Hazratganj, Lucknow<br>Uttar Pradesh 226001", "track": "SVR3300418843", "sort": "LKO/N-07", "order": "OD-118-2209", "rows": ROW.format("Jute runner", 1, 480, "457.14", "22.86", "480.00")},
    {"pay": "COD: collect Rs 1,250", "name": "Tashi Dpe", "to": "C/o Example Stores, Main Bazaar<br>Leh, Ladakh 194101<br>Phone 555-0121", "track": "SVR3300418850", "sort": "LEH/X-01", "order": "OD-118-2213", "rows": ROW.format("Wool shawl", 1, 1250, "1190.48", "59.52", "1250.00")},
]


def s20(folder):
    codes = lambda o: [{"symbology": "qr", "text": o["track"] + ";" + o["sort"]}, {"symbology": "code128", "text": o["track"]}]
    html_document(folder, "s20-invoice-below-1", STYLE, [("label", page(o), "label", "frame", codes(o)) for o in ORDERS])


if __name__ == "__main__":
    s20(sys.argv[1])
