"""Third lot: papers that are written as markup."""

import html

import r_labels_3 as three
from r_lot1b import at, drawn, pixels
from r_markup import code, document, esc, fo_at, fo_code, image, page
from r_pad import WORDS

P, S = WORDS["people"], WORDS["senders"]
LETTER, A4, HALF = (612, 792), (595.28, 841.89), (396, 612)


def return_mail():
    pages = []
    for n, to in enumerate([P["nl"][0], P["be"][0]], 330):
        label, codes = drawn(three.hyllbrook, 290, 310, to, n)
        body = (
            f'<div class="m"><h1>Je retour van bestelling {n}</h1><p>Hoi {to[0].split()[0]}, jammer dat het niet past. Zo stuur je het terug:</p><ol><li>Print deze mail.</li><li>Knip het etiket uit en plak het op de doos.</li><li>Breng de doos naar een Hyllbrook-punt bij jou in de buurt.</li></ol></div>'
            f'{at(150, 250, label, 0)}<div class="f">Je krijgt je geld binnen veertien dagen terug. Vragen? hallo@bleekveld.example. Dit is een voorbeeld.</div>'
        )
        pages.append(page("return-label", A4, body, ("return-label", "ink", 0, codes)))
    document("r32-return-mail-1", "chromium", pages, "body{font:11pt/1.5 'Open Sans'}.m{padding:40pt 50pt}.f{position:absolute;left:50pt;top:640pt;width:490pt;font-size:9pt;color:#333}")


def picture_opened():
    """A label picture opened in the browser and printed."""
    pages = []
    for n, (to, service) in enumerate([(P["gb"][1], "2-4 days"), (P["gb"][0], "BIR 1")], 66):
        picture, codes = pixels(three.birchanter, 288, 432, to, n, service, inset=8)
        pages.append(page("label", A4, f'<div data-part="0" style="position:absolute;left:36pt;top:36pt">{image(picture, "display:block;width:288pt;height:432pt")}</div>', ("label", "frame", 0, codes)))
    document("r35-picture-opened-1", "chromium", pages)


def abroad(to, n):
    """A label for another country in FO: declaration and address in one frame, the code on top."""
    number = f"CM{n:06d}555GB"
    cell = 'border="1pt solid black" padding="4pt"'
    head = lambda text: f'<fo:block font-size="6.5pt" color="#333333">{text}</fo:block>'
    rows = lambda lines, size: "".join(f'<fo:block font-size="{size}pt">{html.escape(x)}</fo:block>' for x in lines)
    return (
        '<fo:table table-layout="fixed" width="284pt"><fo:table-column column-width="142pt"/><fo:table-column column-width="142pt"/><fo:table-body>'
        f'<fo:table-row height="104pt"><fo:table-cell {cell} number-columns-spanned="2"><fo:block font-size="13pt" font-weight="bold">murtoven abroad</fo:block><fo:block text-align="center" padding-top="5pt">{fo_code("code128", number, 52, 3)}</fo:block><fo:block text-align="center" font-size="9pt">{number}</fo:block></fo:table-cell></fo:table-row>'
        f'<fo:table-row height="104pt"><fo:table-cell {cell}>{head("From")}{rows([*S["gb"], "UNITED KINGDOM"], 8)}</fo:table-cell><fo:table-cell {cell}>{head("To")}{rows([*to, "USA"], 9.5)}</fo:table-cell></fo:table-row>'
        f'<fo:table-row height="84pt"><fo:table-cell {cell} number-columns-spanned="2">{head("Contents, weight, value (sale of goods)")}{rows(["2 candles, lemon    0.60 kg    28.00 GBP    3406.00", "1 wick trimmer      0.09 kg     9.50 GBP    8205.51", "Total               0.69 kg    37.50 GBP"], 8.5)}</fo:table-cell></fo:table-row>'
        f'<fo:table-row height="60pt"><fo:table-cell {cell}>{head("Signed, sender")}<fo:block font-size="9pt" padding-top="14pt">C. Moor, 3 Feb 2026</fo:block></fo:table-cell><fo:table-cell {cell} text-align="center"><fo:block>{fo_code("datamatrix", number + "|US|SAMPLE", dots=3)}</fo:block></fo:table-cell></fo:table-row>'
        f'<fo:table-row height="20pt"><fo:table-cell {cell} number-columns-spanned="2"><fo:block font-size="7.5pt">Sample, not valid for carriage. Ref {n}-CC.</fo:block></fo:table-cell></fo:table-row></fo:table-body></fo:table>'
    ), [("code128", number), ("datamatrix", number + "|US|SAMPLE")]


def half_letter():
    pages = []
    for n, to in enumerate([P["us"][0], P["us"][1]], 81):
        label, codes = abroad(to, n)
        steps = '<fo:block font-size="11pt" font-weight="bold" space-after="5pt">Before you post it</fo:block><fo:block font-size="9pt">Cut the label out and sign it. Put one copy of your invoice inside the parcel. Hand it in at a counter and ask for a receipt. Things with batteries may not go abroad. Sample page.</fo:block>'
        pages.append(page("label", HALF, f"<!--part 0-->{fo_at(40, 30, 290, 380, label)}<!--end-->{fo_at(40, 480, 316, 100, steps)}", ("label", "frame", 0, codes)))
    document("r40-half-letter-abroad-1", "fop", pages)


def gravolte_parcel(to, n):
    number = f"GRP{n:05d}55501"
    return (
        f'<div class="gp"><div class="hd"><b>gravolte</b><span>Paket {n % 5 + 1} kg</span></div><div class="an"><small>Empfänger</small>{esc(*to)}</div><div class="rt"><div>{to[-1].split()[0]}</div><div>{n % 80 + 10}</div></div>'
        f'<div class="bc">{code("code128", number, 76, 3, style="margin:0 auto")}<span>{number}</span></div><div class="ft"><div>{code("datamatrix", number + "|" + to[-1] + "|MUSTER", dots=3)}</div><div><small>Absender</small>{esc(*S["de"])}<br/><b>MUSTER – nicht zur Beförderung gültig</b></div></div></div>'
    ), [("code128", number), ("datamatrix", number + "|" + to[-1] + "|MUSTER")]


def beside_order():
    pages = []
    for n, to in enumerate(P["de"], 801):
        label, codes = gravolte_parcel(to, n)
        rows = "".join(f"<tr><td>{a}</td><td>{b}</td></tr>" for a, b in [("Becher, sandfarben", 4), ("Schale, tief", 1), ("Butterdose", 1), ("Eierbecher", 6)][: 2 + n % 3])
        body = (
            f'<div class="lb" data-part="0">{label}</div><div class="or" data-part="1"><h2>Lieferschein {n}-26</h2><p>{esc(*to)}</p><table><tr><th>Artikel</th><th>Menge</th></tr>{rows}</table><p>Vielen Dank! Bei Bruch bitte ein Foto an hallo@moosgrund.example. Muster.</p></div>'
        )
        pages.append(page("label", (841.89, 595.28), body, ("label", "ink", 0, codes), ("slip", "ink", 0, [])))
    css = (
        "body{font:10pt/1.4 Lato}.lb{position:absolute;left:28pt;top:30pt;width:286pt}.or{position:absolute;left:440pt;top:44pt;width:360pt}table{width:100%;border-spacing:0}th,td{text-align:left;border-bottom:.5pt solid #999;padding:4pt 0}"
        ".gp>div{border-bottom:1.2pt solid #000;padding:6pt 2pt}.gp>div:last-child{border-bottom:0}.hd{display:flex;justify-content:space-between;font-size:13pt}.hd b{font-size:18pt}.an{font:bold 13pt/1.3 Lato;min-height:104pt}small{display:block;font:7pt Lato}"
        ".rt{display:flex;justify-content:space-between;font:900 36pt/1 Lato}.bc{text-align:center}.ft{display:flex;font-size:8pt;line-height:1.35}.ft>div:last-child{padding-left:16pt}"
    )
    document("r41-beside-order-1", "weasyprint", pages, css)


if __name__ == "__main__":
    for each in (return_mail, picture_opened, half_letter, beside_order):
        each()
