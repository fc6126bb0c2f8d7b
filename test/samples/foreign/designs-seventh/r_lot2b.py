"""Second lot: papers that are written as markup."""

import html

import r_labels_us as us
from r_codes import picture
from r_markup import code, document, esc, fo_at, fo_code, image, page
from r_pad import WORDS

P, S = WORDS["people"], WORDS["senders"]
LETTER, A4 = (612, 792), (595.28, 841.89)


def gravolte(to, n):
    """A German return label as a table: cells with thick left rules, the code to scan first, bars in the last row."""
    number = f"GRV{n:05d}55501R{n % 10}"
    return (
        f'<table class="g"><tr><td class="k" rowspan="2">{code("datamatrix", number + "|RETOURE|MUSTER", dots=4)}</td><td class="b">gravolte</td><td class="r">Retoure</td></tr>'
        f'<tr><td colspan="2" class="s">Absender<br/>{esc(*to)}</td></tr><tr><td colspan="3" class="to"><small>An</small><br/>{esc("Retourenlager", *S["de"])}</td></tr>'
        f'<tr><td colspan="3" class="c">{code("code128", number, 72, 3, style="margin:8pt auto 3pt")}{number}</td></tr>'
        f'<tr><td colspan="2" class="s">MUSTER – nicht zur Beförderung gültig</td><td class="r">{n % 90 + 10}</td></tr></table>'
    ), [("datamatrix", number + "|RETOURE|MUSTER"), ("code128", number)]


def return_letter():
    pages = []
    for n, to in enumerate(P["de"], 510):
        label, codes = gravolte(to, n)
        reasons = "".join(f"<tr><td>&#9744; {a}</td><td>&#9744; {b}</td></tr>" for a, b in [("Größe passt nicht", "Artikel beschädigt"), ("Falscher Artikel", "Zu spät geliefert"), ("Gefällt nicht", "Sonstiges: ____________")])
        body = (
            f'<div class="top"><h1>Rücksendung</h1><p>Bestellung {n}-26 · Pottery Moosgrund · rueck@moosgrund.example</p><p>Bitte legen Sie den oberen Teil in das Paket und schneiden Sie das Etikett unten aus.</p><table class="why">{reasons}</table></div>'
            f'<div class="cut" data-part="0">{label}</div><div class="side">✂ Etikett ausschneiden und gut sichtbar aufkleben. Alte Etiketten bitte entfernen.<br/><br/>Abgabe in jedem Gravolte-Laden. Der Einlieferungsbeleg gilt als Nachweis. Dies ist ein Muster.</div>'
        )
        pages.append(page("return-label", A4, body, ("return-label", "cut", 0, codes)))
    css = (
        "body{font-family:'Open Sans';font-size:9pt}.top{position:absolute;left:42pt;top:36pt;width:510pt}h1{font-size:18pt;margin:0 0 6pt}.why td{padding:4pt 30pt 4pt 0}"
        ".cut{position:absolute;left:42pt;top:424pt;width:290pt;border:.8pt dashed #333;padding:10pt}.side{position:absolute;left:360pt;top:440pt;width:190pt;line-height:1.5}"
        ".g{border-collapse:collapse;width:268pt}.g td{border-top:.6pt solid #000;border-left:3pt solid #000;padding:5pt 6pt;vertical-align:top}.g .b{font:bold 17pt 'Open Sans'}.g .r{font:bold 13pt 'Open Sans';text-align:right}.g .s{font-size:7pt}"
        ".g .to{font:bold 13pt/1.3 'Open Sans';height:92pt}.g small{font-size:7pt}.g .c{text-align:center}"
    )
    document("r16-return-letter-1", "weasyprint", pages, css)


def hyndrelle(to, n):
    number = f"HYN{n:05d}55501"
    return (
        f'<div class="h"><div class="row"><span class="n">hyndrelle</span><span class="v">{n % 2 + 1}<small>day</small></span></div><div class="row two"><div>{code("qr", f"HYN|{number}|{to[-1]}|SAMPLE", dots=5)}</div>'
        f'<div class="ad">{esc(*to)}</div></div><div class="route"><span>{to[-1].split()[0]}</span><span>{n % 90 + 10}/{n % 7}</span></div>'
        f'<div class="bars">{code("code128", number, 62, 3)}</div><div class="num">{number}</div><div class="fine">Return to: {html.escape(", ".join(S["gb"]))}<br/>Sample, not valid for carriage. 0.{n % 9}5 kg</div></div>'
    ), [("qr", f"HYN|{number}|{to[-1]}|SAMPLE"), ("code128", number)]


def browser_page():
    pages = []
    for n, to in enumerate([P["gb"][2], P["ie"][0], P["gb"][0]], 601):
        label, codes = hyndrelle(to, n)
        body = (
            f'<div class="bar" style="top:14pt"><span>03/02/2026, 11:{n % 50 + 10}</span><span>Order {n}-26 | Label</span></div><div class="left"><h2>Order {n}-26 is ready to go</h2><p>Print your label, or show the code in the shop.</p><ul><li>Cut along the dashes</li><li>Tape on every edge</li><li>Keep the receipt that you get</li></ul>'
            f'<h2>Questions</h2><p><b>Can I use a smaller box?</b> Yes, as long as the label lies flat.</p><p><b>When do you collect?</b> Monday to Saturday.</p><p><b>What may not go?</b> Anything on the list at hyndrelle.example/list.</p></div>'
            f'<div class="box" data-part="0">{label}</div><div class="bar" style="bottom:12pt"><span>https://shop.example/orders/{n}/label</span><span>1/1</span></div>'
        )
        pages.append(page("label", A4, body, ("label", "cut", 0, codes)))
    css = (
        "body{font:9.5pt/1.4 Lato}.bar{position:absolute;left:24pt;right:24pt;display:flex;justify-content:space-between;font:7.5pt Lato}.left{position:absolute;left:36pt;top:50pt;width:200pt}.box{position:absolute;left:262pt;top:50pt;border:1.2pt dashed #000;padding:12pt;width:300pt}"
        ".row{display:flex;justify-content:space-between}.n{font:900 22pt Lato}.v{font:900 34pt/1 Lato}.v small{font-size:10pt}.two{gap:12pt;margin-top:8pt}.ad{flex:1;font:12.5pt/1.3 Lato}.route{display:flex;justify-content:space-between;font:900 30pt Lato;border-top:2pt solid;border-bottom:2pt solid;margin:10pt 0}"
        ".bars svg{margin:0 auto}.num{text-align:center;font:900 11pt Lato}.fine{font-size:7pt;margin-top:10pt}h2{font-size:13pt}"
    )
    document("r25-browser-page-1", "chromium", pages, css)


def arlumpet(to, n):
    """In FO, lying on the page: three columns, the middle one with the bars, heads on grey."""
    number = f"ARL{n:05d}5550{n % 10}"
    lines = lambda rows, size: "".join(f'<fo:block font-size="{size}pt">{html.escape(row)}</fo:block>' for row in rows)
    head = lambda text: f'<fo:block background-color="#d0d0d0" font-size="7pt" font-weight="bold" padding="2pt">{text}</fo:block>'
    cell = 'border="0.8pt solid black" padding="0pt"'
    return (
        '<fo:table table-layout="fixed" width="400pt"><fo:table-column column-width="120pt"/><fo:table-column column-width="200pt"/><fo:table-column column-width="80pt"/><fo:table-body>'
        f'<fo:table-row height="110pt"><fo:table-cell {cell}>{head("SHIPPED BY")}<fo:block margin="3pt">{lines(S["us"], 7.5)}</fo:block></fo:table-cell><fo:table-cell {cell}>{head("SHIPPED TO")}<fo:block margin="4pt" font-weight="bold">{lines(to, 10.5)}</fo:block></fo:table-cell>'
        f'<fo:table-cell {cell}>{head("ARLUMPET")}<fo:block text-align="center" font-size="40pt" font-weight="bold" padding-top="10pt">{n % 90 + 10}</fo:block></fo:table-cell></fo:table-row>'
        f'<fo:table-row height="116pt"><fo:table-cell {cell} number-columns-spanned="2">{head("TRACKING")}<fo:block text-align="center" padding-top="9pt">{fo_code("code128", number, 66, 3)}</fo:block><fo:block text-align="center" font-size="9pt">{number}</fo:block></fo:table-cell>'
        f'<fo:table-cell {cell}>{head("ROUTE")}<fo:block text-align="center" padding-top="14pt">{fo_code("aztec", number + "/" + to[-1][-5:], dots=4)}</fo:block></fo:table-cell></fo:table-row>'
        f'<fo:table-row height="22pt"><fo:table-cell {cell} number-columns-spanned="3"><fo:block font-size="7.5pt" margin="4pt">{us.VOID}. Weight {n % 9 + 1} lb. Ref {n}-FK.</fo:block></fo:table-cell></fo:table-row></fo:table-body></fo:table>'
    ), [("code128", number), ("aztec", number + "/" + to[-1][-5:])]


def below_invoice():
    pages = []
    for n, (to, turn) in enumerate([(us.US[0], 0), (us.US[1], 180), (us.US[4], 0)], 341):
        label, codes = arlumpet(to, n)
        rows = [("Berry bowl with saucer", "1", "48.00"), ("Speckled mug, oat", "2", "68.00"), ("Shipping", "1", "8.40")]
        cells = "".join("<fo:table-row>" + "".join(f'<fo:table-cell padding="3pt" border-bottom=".3pt solid gray"><fo:block>{c}</fo:block></fo:table-cell>' for c in row) + "</fo:table-row>" for row in rows[: 2 + n % 2])
        top = (
            f'<fo:block font-family="Times" font-size="24pt">Fernwick Kilnworks</fo:block><fo:block font-size="9pt" space-after="12pt">Invoice {n}-FK, February 3, 2026. Paid. Sample.</fo:block><fo:block font-size="10pt" space-after="12pt">{"<fo:block/>".join(html.escape(x) for x in to)}</fo:block>'
            f'<fo:table table-layout="fixed" width="520pt" font-size="10pt"><fo:table-column column-width="360pt"/><fo:table-column column-width="60pt"/><fo:table-column column-width="100pt"/><fo:table-body>{cells}</fo:table-body></fo:table>'
        )
        rule = '<fo:block border-top="0.6pt dashed black" font-size="7pt" text-align="right" padding-top="2pt">fold and tear here</fo:block>'
        body = f"{fo_at(46, 40, 520, 340, top)}{fo_at(0, 452, 612, 14, rule)}<!--part 0-->{fo_at(106, 496, 402, 256, label, turn)}<!--end-->"
        pages.append(page("label", LETTER, body, ("label", "frame", turn, codes)))
    document("r26-below-invoice-1", "fop", pages)


def nordvissel(to, n):
    number = f"NVS{n:05d}55501"
    bars = image(picture("code128", number, dots=3, height=96), "display:block;width:{:.2f}pt;height:{:.2f}pt".format(picture("code128", number).width * 3 * 72 / 203.2, 96 * 72 / 203.2))
    return (
        f'<table class="nv"><tr><td rowspan="3" class="st"><svg xmlns="http://www.w3.org/2000/svg" width="36pt" height="190pt" viewBox="0 0 36 190"><text transform="translate(26 180) rotate(-90)" font-family="Liberation Sans" font-weight="bold" font-size="22" fill="#fff">NORDVISSEL</text></svg></td><td class="a">Från {esc(S["se"][0], S["se"][-1])}</td></tr><tr><td class="t">{esc(*to)}</td></tr>'
        f'<tr><td class="bb">{bars}<div>{number} &nbsp; {n % 5},{n % 9} kg</div><div class="z">PROV – GÄLLER INTE FÖR TRANSPORT</div></td></tr></table>'
    ), [("code128", number)]


def order_mail():
    pages = []
    for n, to in enumerate([P["se"][0], P["dk"][0], P["no"][0]], 701):
        label, codes = nordvissel(to, n)
        rows = "".join(f"<tr><td>{a}</td><td>{b}</td><td>{c}</td></tr>" for a, b, c in [("Mugg, sandgrå", 2, "480,00"), ("Skål, liten", 1, "190,00"), ("Linneduk", 1, "350,00")][: 1 + n % 3])
        body = f'<div class="w"><h2>Ny order {n}: skriv ut och skicka</h2><div data-part="0" class="lb">{label}</div><div data-part="1" class="sl"><h3>Följesedel {n}-26</h3><p>{esc(*to)}</p><table class="o"><tr><th>Vara</th><th>Antal</th><th>Kr</th></tr>{rows}</table><p>Tack! Verkstan Lilltorp, exempel.</p></div></div>'
        pages.append(page("label", A4, body, ("label", "frame", 0, codes), ("slip", "ink", 0, [])))
    css = (
        "body{font:10pt/1.35 'Liberation Sans'}.w{padding:30pt 40pt}h2{margin:0 0 14pt;font-size:15pt}.lb{width:330pt}.nv{border:2pt solid #000;border-collapse:collapse;width:330pt}.nv td{border-bottom:.6pt solid #000;padding:6pt}"
        ".nv .st{width:44pt;background:#000;padding:4pt;vertical-align:bottom}.a{font-size:7.5pt}.nv .t{font:bold 13pt/1.35 'Liberation Sans';height:96pt;vertical-align:top}"
        ".z{font-weight:bold;font-size:8pt;margin-top:6pt}.bb{font-size:9pt}.sl{margin-top:40pt}.o{border-collapse:separate;border-spacing:0;width:420pt}.o th,.o td{border-bottom:.5pt solid #888;text-align:left;padding:4pt}"
    )
    document("r28-order-mail-1", "weasyprint", pages, css)


if __name__ == "__main__":
    for each in (return_letter, browser_page, below_invoice, order_mail):
        each()
