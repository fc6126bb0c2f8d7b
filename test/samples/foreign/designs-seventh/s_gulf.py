"""Arabic and English side by side, as a browser's engine prints it."""
import sys

from s_html import html_document, svg

STYLE = """
body{line-height:1.25;font-family:'Noto Sans Arabic','Liberation Sans';font-size:10pt}
.lab{position:absolute;left:30mm;top:12mm;width:100mm;border:1.6pt solid #000;box-sizing:border-box}
.lab table{width:100%;border-collapse:collapse}.lab td{border:.6pt solid #000;padding:1mm;vertical-align:top}
.s{font-size:7pt}.b{font-weight:bold}.z{font-size:32pt;font-weight:bold;text-align:center;line-height:1}.r{direction:rtl;text-align:right}
.o{position:absolute;left:20mm;top:186mm;width:170mm}
"""


def label(o):
    return f"""<div class="lab"><table><tr><td class="b" style="font-size:17pt">TEFFALUNE<div class="s">800-555-0110</div></td><td class="z" colspan="2">{o['sort']}</td></tr>
<tr><td colspan="3" style="text-align:center;padding:3mm 1mm 1mm">{svg('code128', o['track'], 0.375, 16)}<br><span class="b">{o['track']}</span></td></tr>
<tr><td class="s">From / <span>من</span></td><td colspan="2" class="s">{o['from']}</td></tr>
<tr><td colspan="3" style="height:26mm"><div class="s">To / إلى</div><div class="b" style="font-size:13pt">{o['to']}</div><div class="r" style="font-size:13pt">{o['ar']}</div></td></tr>
<tr><td><div class="s">Pieces القطع</div><b>{o['n']}</b></td><td><div class="s">Weight الوزن</div><b>{o['kg']}</b></td><td><div class="s">Collect التحصيل</div><b>{o['cod']}</b></td></tr>
<tr><td>{svg('qr', o['track'] + '/' + o['sort'], 0.5)}</td><td colspan="2" class="s">{o['goods']}<br>Ref {o['ref']}<br><br><b>SAMPLE – NOT VALID FOR CARRIAGE</b><br><b>نموذج غير صالح للشحن</b></td></tr></table></div>
<div class="o"><hr style="border:0;border-top:1px dashed #888"><p class="b">Before the driver comes</p><ol><li>Cut along the frame and glue the label to the largest side.</li><li>Keep this lower part.</li><li>Do not write on the bars.</li></ol>
<p class="r">يرجى قص الملصق ولصقه على الطرد قبل وصول السائق</p><p class="s">Bizzuco Souk – order {o['ref']} – this page is a sample.</p></div>"""


ORDERS = [
    {"sort": "RUH-3", "track": "TFL600418227", "from": "Sidr Workshop, Example Road 12, Muscat", "to": "Latifa Al-Mithal<br>Villa 9, Street 44<br>Al Namouthaj, Riyadh", "ar": "لطيفة المثال<br>فيلا تسعة حي النموذج<br>الرياض", "n": "1/1", "kg": "1.2 kg", "cod": "0.00", "goods": "Candles, 3", "ref": "SK-3301"},
    {"sort": "DXB-K", "track": "TFL600418235", "from": "Sidr Workshop, Example Road 12, Muscat", "to": "Sample Trading LLC, attn. Mr Haroon<br>Office 1404, Specimen Tower<br>Dubai", "ar": "شركة عينة للتجارة<br>برج العينة الدور الرابع<br>دبي", "n": "2/3", "kg": "8.0 kg", "cod": "AED 310", "goods": "Incense burners, 6", "ref": "SK-3302"},
    {"sort": "AMM", "track": "TFL600418243", "from": "Sidr Workshop, Example Road 12, Muscat", "to": "Rania Ikhtibar<br>Amman", "ar": "رانيا اختبار<br>عمّان", "n": "1/1", "kg": "0.4 kg", "cod": "0.00", "goods": "Soap", "ref": "SK-3303"},
]


def s06(folder):
    codes = lambda o: [{"symbology": "code128", "text": o["track"]}, {"symbology": "qr", "text": o["track"] + "/" + o["sort"]}]
    html_document(folder, "s06-two-scripts-1", STYLE, [("label", label(o), "label", "frame", codes(o)) for o in ORDERS])


if __name__ == "__main__":
    s06(sys.argv[1])
