"""LibreOffice: a flat drawing, converted."""
import base64
import io
import os
import subprocess
import tempfile
from xml.sax.saxutils import escape

from s_ink import FONTS, at, font, width

FACES = {"H": "Liberation Sans", "T": "Liberation Serif", "C": "Liberation Mono", "N": "Liberation Sans Narrow", "D": "DejaVu Sans Condensed", "L": "Lato", "J": "Droid Sans Fallback"}
NAMES = " ".join(f'xmlns:{k}="urn:oasis:names:tc:opendocument:xmlns:{v}:1.0"' for k, v in {"office": "office", "style": "style", "text": "text", "draw": "drawing", "fo": "xsl-fo-compatible", "svg": "svg-compatible"}.items())


class Office:
    def __init__(self):
        self.pages, self.styles, self.count = [], [], 0

    def style(self, body, text=""):
        self.count += 1
        self.styles.append(f'<style:style style:name="g{self.count}" style:family="graphic"><style:graphic-properties {body} fo:padding="0pt"/>{text}</style:style>')
        return f"g{self.count}"

    def page(self, ink, w, h):
        self.size = (w, h)
        out = []
        self.ops(ink, (1, 0, 0, 1, 0, 0), out)
        self.pages.append("".join(out))

    def ops(self, ink, m, out):
        for op in ink.ops:
            if op[0] == "sub":
                a, b, c, d, e, f = op[2]
                assert b == 0 and a == d == 1
                self.ops(op[1], (1, 0, 0, 1, m[4] + e, m[5] + f), out)
                continue
            if op[0] in ("line", "poly"):
                spots = [(op[1], op[2]), (op[3], op[4])] if op[0] == "line" else op[1]
                spots = [at(m, *p) for p in spots]
            else:
                x, y = at(m, op[1], op[2])
            if op[0] == "text":
                _, _, _, s, size, key, g = op
                name = self.style('draw:stroke="none" draw:fill="none" draw:auto-grow-width="true" draw:auto-grow-height="true" fo:wrap-option="no-wrap"')
                shade = "#" + f"{round(g * 255):02x}" * 3
                weight = ' fo:font-weight="bold"' if key.endswith("B") and len(key) > 1 else ' fo:font-style="italic"' if key.endswith("I") else ""
                self.count += 1
                self.styles.append(f'<style:style style:name="t{self.count}" style:family="text"><style:text-properties style:font-name="{FACES[key[0]]}" fo:font-family="\'{FACES[key[0]]}\'" fo:font-size="{size:.2f}pt" fo:color="{shade}"{weight}/></style:style>')
                opened = font(key)[0]
                up = opened["hhea"].ascent / opened["head"].unitsPerEm * size
                out.append(f'<draw:frame draw:style-name="{name}" svg:x="{x:.2f}pt" svg:y="{y - up:.2f}pt" svg:width="{width(s, size, key) + 2:.2f}pt" svg:height="{size * 1.15:.2f}pt"><draw:text-box><text:p><text:span text:style-name="t{self.count}">{escape(s)}</text:span></text:p></draw:text-box></draw:frame>')
            elif op[0] == "rect":
                _, _, _, w, h, line, fill, g, dash = op
                shade = "#" + f"{round(g * 255):02x}" * 3
                body = f'draw:stroke="none" draw:fill="solid" draw:fill-color="{shade}"' if fill is not None else f'draw:stroke="solid" svg:stroke-width="{line or 0.7}pt" svg:stroke-color="{shade}" draw:fill="none"'
                out.append(f'<draw:rect draw:style-name="{self.style(body)}" svg:x="{x:.2f}pt" svg:y="{y:.2f}pt" svg:width="{w:.2f}pt" svg:height="{h:.2f}pt"/>')
            elif op[0] == "line":
                (x1, y1), (x2, y2) = spots
                name = self.style(f'draw:stroke="solid" svg:stroke-width="{op[5]}pt" svg:stroke-color="#{f"{round(op[6] * 255):02x}" * 3}"')
                out.append(f'<draw:line draw:style-name="{name}" svg:x1="{x1:.2f}pt" svg:y1="{y1:.2f}pt" svg:x2="{x2:.2f}pt" svg:y2="{y2:.2f}pt"/>')
            elif op[0] == "image":
                data = io.BytesIO()
                op[5].save(data, "PNG")
                out.append(f'<draw:frame svg:x="{x:.2f}pt" svg:y="{y:.2f}pt" svg:width="{op[3]:.2f}pt" svg:height="{op[4]:.2f}pt"><draw:image><office:binary-data>{base64.b64encode(data.getvalue()).decode()}</office:binary-data></draw:image></draw:frame>')

    def save(self, path):
        w, h = self.size
        layout = f'<style:page-layout style:name="p"><style:page-layout-properties fo:page-width="{w}pt" fo:page-height="{h}pt" fo:margin="0pt"/></style:page-layout>'
        body = "".join(f'<draw:page draw:name="n{i}" draw:master-page-name="m">{each}</draw:page>' for i, each in enumerate(self.pages))
        xml = f'<?xml version="1.0" encoding="UTF-8"?><office:document {NAMES} office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.graphics">'
        xml += f'<office:automatic-styles>{layout}{"".join(self.styles)}</office:automatic-styles><office:master-styles><style:master-page style:name="m" style:page-layout-name="p"/></office:master-styles>'
        xml += f"<office:body><office:drawing>{body}</office:drawing></office:body></office:document>"
        with tempfile.TemporaryDirectory() as folder:
            with open(os.path.join(folder, "a.fodg"), "w", encoding="utf-8") as file:
                file.write(xml)
            subprocess.run(["soffice", f"-env:UserInstallation=file://{folder}/home", "--headless", "--convert-to", "pdf", "--outdir", folder, os.path.join(folder, "a.fodg")], check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
            os.replace(os.path.join(folder, "a.pdf"), path)
