"""Pages without a label, third lot."""
import sys

from s_build import document, paper
from s_html import html_document, svg
from s_ink import MM, Ink
from s_none1 import one
from s_raw import Raw
from s_writers import Ghostscript, Pixels, Tex

A4 = (595.28, 841.89)
LETTER = (612, 792)


def warranty():
    k = Ink()
    k.rect(16, 16, 256, 400, 1.5)
    k.text(144, 56, "GARANTÍA", 26, "HB", a="m")
    k.line(16, 70, 272, 70, 1)
    k.lines(28, 92, ["Cliente: ______________________", "Dirección: ____________________", "Comprado el: __________________"], 11, "H", 22)
    k.line(16, 160, 272, 160, 1)
    w, _ = k.code("code128", "SER00118442", 60, 176, 0.375 * MM, 50)
    k.text(60 + w / 2, 240, "serie 00118442", 10, "C", a="m")
    k.lines(28, 276, ["El taller responde doce meses por defectos", "de la costura. Guarde esta tarjeta.", "", "Tarjeta de muestra; no es guía de envío."], 10, "H", 14)
    return k


def mail_rule():
    k = Ink()
    k.text(60, 70, "Din ordre er på vei", 20, "HB")
    k.lines(60, 100, ["Hei Solveig,", "", "Vi har sendt pakken din. Den leveres til:", "", "Solveig Prøve", "Eksempelveien 14", "5003 Bergen", "", "Vis koden når du henter:"], 11, "H", 16)
    k.code("qr", "HENT-4471-8820", 60, 256, 3)
    k.text(60, 350, "4471 8820", 14, "CB")
    k.text(60, 380, "Eksempel, ingen etikett.", 9, "HI")
    return k


def scan_form():
    k = Ink()
    k.text(40, 50, "End of day form – scan once", 20, "HB")
    k.code("pdf417", "EOD|TVH|0311|4|11.5|ADIRE THREAD|LAGOS", 40, 80, 0.375 * MM)
    k.code("code128", "EOD0311TVH000447", 40, 130, 0.5 * MM, 60)
    k.text(150, 206, "EOD 0311 TVH 000447", 11, "C", a="m")
    k.lines(40, 250, ["Shipper: Adire & Thread, 3 Example Street, Lagos", "Date: 3 November", "Pieces: 4      Weight: 11.5 kg", "Services: TV 2 (2), TV 5 (2)"], 12, "H", 18)
    k.rect(40, 350, 500, 90, 1)
    k.text(50, 368, "Driver's signature", 9)
    k.text(40, 470, "Sample form. Give it to the driver; it is not a label.", 10, "HI")
    return k


def fiscal():
    k = Ink()
    k.rect(30, 30, 535, 330, 0.8)
    k.text(40, 54, "DOCUMENTO AUXILIAR DA NOTA", 13, "HB")
    k.text(555, 54, "exemplo sem valor", 9, "HI", a="r")
    k.line(30, 64, 565, 64)
    k.code("code128", "35261100000000000000550010000044711000044710", 290, 74, 0.25 * MM, 34)
    k.lines(40, 84, ["Linha & Nó", "Rua Fictícia 70, Curitiba - PR", "NF 000.004.471 série 1"], 10, "H", 13)
    k.line(30, 124, 565, 124)
    k.text(40, 136, "DESTINATÁRIO", 7, "HB")
    k.lines(40, 152, ["Zuleica Marçal", "Rodovia de Teste km 33, Chapecó - SC  89801-973"], 10, "H", 13)
    k.line(30, 180, 565, 180)
    for i, r in enumerate([("Código", "Descrição", "Qtd", "Valor"), ("LN-04", "Xale de lã", "1", "180,00"), ("LN-11", "Novelo", "3", "66,00")]):
        for j, s in enumerate(r):
            k.text(40 + (0, 70, 380, 450)[j], 196 + 18 * i, s, 9.5, "H" if i else "HB")
    k.text(40, 350, "Total 246,00", 11, "HB")
    return k


def badge():
    k = Ink()
    k.rect(0, 0, 252, 50, fill=True, g=0.2)
    k.text(126, 34, "JARMARK", 26, "LB", a="m", g=1)
    k.text(126, 90, "Bożena Świątkiewicz", 18, "LB", a="m")
    k.text(126, 112, "Pracownia Zielny Wór, Kraków", 11, "L", a="m")
    k.code("datamatrix", "JRM:118:WYSTAWCA", 100, 130, 3)
    k.text(126, 205, "identyfikator wystawcy – wzór", 8, "L", a="m")
    return k


REC = """<div style="margin:14mm;width:120mm;font-family:'Liberation Sans';font-size:10pt"><h2>Pesanan Anda sudah dibayar</h2><p>Toko Rotan Kecil, pesanan 2211037KQX</p>
<table border="1" cellpadding="4" style="border-collapse:collapse;width:100%%"><tr><th>Barang</th><th>Jml</th><th>Rp</th></tr><tr><td>Keranjang rotan</td><td>2</td><td>180.000</td></tr></table>
<p>Dikirim ke: Ratna Contoh, Jl. Percobaan No. 7, Surabaya 60111</p>%s<p>INV-2211037KQX – contoh nota, bukan label</p></div>"""


def s34(folder):
    document(folder, "s34-none-1", "hand-written", lambda: Raw(forms=True), [one("other", 288, 432, warranty), one("other", *A4, mail_rule), one("blank", *A4, Ink), one("invoice", *A4, fiscal)])
    document(folder, "s34-none-2", "ghostscript", Ghostscript, [one("other", *LETTER, scan_form)])
    document(folder, "s34-none-3", "luatex", lambda: Tex("lualatex"), [one("other", 252, 216, badge)])
    html_document(folder, "s34-none-4", "", [("invoice", REC % svg("code128", "INV2211037KQX", 0.375, 14), None, None, [])])


if __name__ == "__main__":
    s34(sys.argv[1])
