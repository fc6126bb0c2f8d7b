"""Fourth lot: papers that are written as markup."""

import html

import r_labels_us as us
from r_markup import code, document, esc, fo_at, fo_code, page
from r_pad import WORDS

P, S = WORDS["people"], WORDS["senders"]
LETTER, A4 = (612, 792), (595.28, 841.89)


def ellgoth(to, n):
    number = f"EG{n:05d}55501{n % 10}"
    return (
        f'<div class="e"><div class="e1"><span class="nm">Ellgoth</span><span class="sv">LARK</span></div><div class="e2">{esc(*S["us"])}</div><div class="e3">{esc(*to)}</div>'
        f'<div class="e4">{code("code128", number, 66, 3, style="margin:0 auto")}<div>{number}</div></div><div class="e5"><span>{n % 20 + 1} oz</span><span>{to[-1].split()[-1][:5]}</span></div><div class="e6">{us.VOID}</div></div>'
    ), [("code128", number)]


def order_page():
    pages = []
    for n, to in enumerate([us.US[0], us.US[1], us.US[4]], 2041):
        label, codes = ellgoth(to, n)
        rows = "".join(f"<tr><td>{a}</td><td>{b}</td><td>${c}</td></tr>" for a, b, c in [("Wool scarf, moss", 1, "64.00"), ("Darning kit", 2, "18.00"), ("Gift box", 1, "4.00")][: 1 + n % 3])
        body = (
            f'<div class="top"><div class="t1">Order #{n}</div><div>Feb 3, 2026 · paid by card · 1 parcel</div></div><div class="col"><h3>Items</h3><table>{rows}</table><h3>Note from buyer</h3><p>Please leave it on the porch, the dog is friendly.</p>'
            f'<h3>Bill to</h3><p>{esc(*to)}</p><h3>Support</h3><p>help@otterthimble.example<br/>(503) 555-0177</p></div><div class="lab" data-part="0">{label}</div><div class="ft">Otter &amp; Thimble · sample page</div>'
        )
        pages.append(page("label", LETTER, body, ("label", "ink", 0, codes)))
    css = (
        "body{font:9.5pt/1.4 Roboto}.top{position:absolute;left:40pt;top:34pt;right:40pt;border-bottom:.6pt solid #ccc;padding-bottom:10pt}.t1{font:bold 20pt Roboto}.col{position:absolute;left:40pt;top:110pt;width:210pt}h3{font-size:10pt;margin:14pt 0 3pt}table{width:100%;border-spacing:0}td{padding:2pt 0}"
        ".lab{position:absolute;left:304pt;top:330pt;width:270pt}.ft{position:absolute;left:40pt;bottom:20pt;font-size:8pt;color:#777}.e1,.e5{display:flex;justify-content:space-between}.nm{font:bold 24pt Roboto}.sv{font:bold 16pt Roboto;border:1.5pt solid #000;padding:2pt 8pt}.e2{font-size:7.5pt;margin:6pt 0;border-top:1.5pt solid #000;padding-top:4pt}"
        ".e3{font:bold 13pt/1.3 Roboto;margin:14pt 0 14pt 24pt;min-height:88pt}.e4{text-align:center;border-top:1.5pt solid #000;padding-top:9pt}.e5{font:bold 22pt Roboto;border-top:1.5pt solid #000;margin-top:8pt;padding-top:4pt}.e6{font-size:7.5pt;font-weight:bold}"
    )
    document("r45-order-page-1", "weasyprint", pages, css)


def drevisse(to, n):
    number = f"DV{n:05d}55501{n % 10}"
    rows = lambda lines, size: "".join(f'<fo:block font-size="{size}pt">{html.escape(x)}</fo:block>' for x in lines)
    cell = 'border-top="1.5pt solid black" border-bottom="1.5pt solid black" padding="5pt"'
    return (
        '<fo:table table-layout="fixed" width="515pt"><fo:table-column column-width="190pt"/><fo:table-column column-width="225pt"/><fo:table-column column-width="100pt"/><fo:table-body><fo:table-row height="180pt">'
        f'<fo:table-cell {cell}><fo:block font-size="18pt" font-weight="bold" space-after="4pt">drevisse</fo:block><fo:block font-size="7pt">Afzender / Expéditeur</fo:block>{rows(S["nl"], 8)}<fo:block font-size="7pt" space-before="10pt">Bestemmeling / Destinataire</fo:block><fo:block font-weight="bold">{rows(to, 12)}</fo:block></fo:table-cell>'
        f'<fo:table-cell {cell} text-align="center"><fo:block padding-top="8pt">{fo_code("code128", number, 96, 3)}</fo:block><fo:block font-size="11pt">{number}</fo:block><fo:block font-size="7.5pt" font-weight="bold" padding-top="8pt">VOORBEELD / SPÉCIMEN - niet geldig / non valable</fo:block></fo:table-cell>'
        f'<fo:table-cell {cell} text-align="center"><fo:block font-size="36pt" font-weight="bold">{n % 80 + 10}</fo:block><fo:block padding-top="8pt">{fo_code("datamatrix", number + "|" + to[-1][:4] + "|VOORBEELD", dots=4)}</fo:block><fo:block font-size="9pt" padding-top="6pt">{n % 7 + 1},0 kg</fo:block></fo:table-cell>'
        "</fo:table-row></fo:table-body></fo:table>"
    ), [("code128", number), ("datamatrix", number + "|" + to[-1][:4] + "|VOORBEELD")]


def foot_of_letter():
    pages = []
    for n, to in enumerate([P["be"][0], P["nl"][0]], 12):
        label, codes = drevisse(to, n)
        letter = (
            f'<fo:block font-size="17pt" font-family="Times">Studio Bleekveld</fo:block><fo:block font-size="10pt" space-before="24pt">{"<fo:block/>".join(html.escape(x) for x in to)}</fo:block><fo:block font-size="11pt" space-before="30pt">Beste {to[0].split()[0]},</fo:block>'
            '<fo:block font-size="11pt" space-before="8pt">hierbij je bestelling. Het onderste deel van dit blad is het etiket van de doos: wij scheuren het er voor verzending af, en dit deel leggen wij erin. Veel plezier ermee!</fo:block>'
            '<fo:block font-size="11pt" space-before="14pt">Groeten van Sietske. Voorbeeldbrief.</fo:block>'
        )
        body = f'{fo_at(50, 50, 495, 420, letter)}{fo_at(0, 560, 595, 8, "<fo:block border-top=&quot;0.5pt dashed gray&quot;/>".replace("&quot;", chr(34)))}<!--part 0-->{fo_at(40, 606, 515, 200, label)}<!--end-->'
        pages.append(page("label", A4, body, ("label", "ink", 0, codes)))
    document("r53-foot-of-letter-1", "fop", pages)


def none():
    css = "body{font:11pt/1.45 'Open Sans'}.p{padding:46pt}h1{font-size:20pt;margin:0 0 8pt}.b{border:1pt solid #888;padding:14pt;width:300pt}"
    drop = (
        f'<div class="p"><h1>Drop-off code for order 2041</h1><p>Show this at the counter. They weigh it, print the label and stick it on.</p><div class="b"><p>From: {esc(*S["us"])}</p><p>To: {esc(*us.US[0])}</p>{code("code128", "DROP20415550142", 50, 3)}<p>DROP 2041 5550 142</p></div><p>Not a label. Sample.</p></div>'
    )
    proof = (
        f'<div class="p"><h1>Proof of delivery</h1><p>EG02041555011, delivered Feb 6, 2026, 14:02, porch</p><p>{esc(*us.US[0])}</p><p>Signed: D M</p>{code("qr", "POD-EG02041555011-SAMPLE", dots=5)}<p>Ellgoth, sample page</p></div>'
    )
    document("r54-none-4", "chromium", [page("instructions", LETTER, drop), page("other", LETTER, proof)], css)


if __name__ == "__main__":
    for each in (order_page, foot_of_letter, none):
        each()
