"""Flat OpenDocument for LibreOffice: Writer texts, Draw pages, Calc sheets."""
import base64
from html import escape
from producers import png
from PIL import Image

NS = ' '.join(f'xmlns:{k}="urn:oasis:names:tc:opendocument:xmlns:{v}:1.0"' for k, v in {
    'office': 'office', 'style': 'style', 'text': 'text', 'table': 'table', 'draw': 'drawing', 'fo': 'xsl-fo-compatible', 'svg': 'svg-compatible'}.items())
NS += ' xmlns:xlink="http://www.w3.org/1999/xlink"'


def page_layout(w, h, margin):
    return (f'<office:automatic-styles><style:page-layout style:name="P"><style:page-layout-properties fo:page-width="{w}mm" fo:page-height="{h}mm"'
            f' style:print-orientation="{"landscape" if w > h else "portrait"}" fo:margin="{margin}mm"/><style:header-style/><style:footer-style/></style:page-layout>')


def image(img, dpi, black=False):
    data = base64.b64encode(png(Image.new('L', img.size, 0) if black else img, dpi)).decode()
    return f'<draw:image><office:binary-data>{data}</office:binary-data></draw:image>'


def writer(w, h, margin, styles, body):
    """`styles`: paragraph, table and graphic styles as XML; `body`: text XML."""
    return (f'<?xml version="1.0" encoding="UTF-8"?><office:document {NS} office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.text">'
            f'{page_layout(w, h, margin)}{styles}</office:automatic-styles><office:master-styles><style:master-page style:name="Standard" style:page-layout-name="P"/></office:master-styles>'
            f'<office:body><office:text>{body}</office:text></office:body></office:document>')


def para(name, size=10, bold=False, align='start', color='#000000', face='Liberation Sans', extra='', before=0, after=1):
    return (f'<style:style style:name="{name}" style:family="paragraph"><style:paragraph-properties fo:text-align="{align}" fo:margin-top="{before}mm" fo:margin-bottom="{after}mm" {extra}/>'
            f'<style:text-properties fo:font-size="{size}pt" fo:font-family="{face}" fo:color="{color}"{" fo:font-weight=" + chr(34) + "bold" + chr(34) if bold else ""}/></style:style>')


def p(style, words):
    return f'<text:p text:style-name="{style}">' + escape(words).replace('\n', '<text:line-break/>') + '</text:p>'


def shapes(ink, x0, y0, styles):
    """A drawing as Draw shapes; `styles` is a dict that takes the graphic and paragraph styles they need."""
    def style(key, props, text=''):
        return styles.setdefault(key + text, (f'g{len(styles)}', props, text))[0]
    grey = lambda g: f'#{g:02x}{g:02x}{g:02x}'
    out = []
    for kind, *a in ink.ops:
        if kind == 'rect':
            x, y, w, h, line, fill, dash, radius = a
            s = style(f'r{line}{fill}', (f'draw:stroke="solid" svg:stroke-width="{line}mm" svg:stroke-color="#000000" ' if line else 'draw:stroke="none" ')
                      + ('draw:fill="none"' if fill is None else f'draw:fill="solid" draw:fill-color="{grey(fill)}"'))
            out.append(f'<draw:rect draw:style-name="{s}" svg:x="{x0 + x:.3f}mm" svg:y="{y0 + y:.3f}mm" svg:width="{w}mm" svg:height="{h}mm"/>')
        elif kind == 'line':
            x1, y1, x2, y2, w, dash, g = a
            s = style(f'l{w}{g}', f'draw:stroke="solid" svg:stroke-width="{w}mm" svg:stroke-color="{grey(g)}"')
            out.append(f'<draw:line draw:style-name="{s}" svg:x1="{x0 + x1}mm" svg:y1="{y0 + y1}mm" svg:x2="{x0 + x2}mm" svg:y2="{y0 + y2}mm"/>')
        elif kind in ('poly', 'cells'):
            quads = [a[0]] if kind == 'poly' else [[(a[0] + cx, a[1] + cy), (a[0] + cx + w, a[1] + cy), (a[0] + cx + w, a[1] + cy + h), (a[0] + cx, a[1] + cy + h)] for cx, cy, w, h in a[3]]
            s = style(f'f{a[1] if kind == "poly" else 0}', f'draw:stroke="none" draw:fill="solid" draw:fill-color="{grey(a[1]) if kind == "poly" else "#000000"}"')
            xs, ys = [x for q in quads for x, _ in q], [y for q in quads for _, y in q]
            l, t, w, h = min(xs), min(ys), max(xs) - min(xs), max(ys) - min(ys)
            u = lambda v: round(v * 1000)
            d = ' '.join('M' + ' L'.join(f'{u(x - l)} {u(y - t)}' for x, y in q) + ' Z' for q in quads)
            out.append(f'<draw:path draw:style-name="{s}" svg:x="{x0 + l:.3f}mm" svg:y="{y0 + t:.3f}mm" svg:width="{w:.3f}mm" svg:height="{h:.3f}mm" svg:viewBox="0 0 {u(w)} {u(h)}" svg:d="{d}"/>')
        elif kind == 'disc':
            x, y, r, fill, line = a
            s = style(f'd{fill}{line}', ('draw:stroke="solid" ' if line else 'draw:stroke="none" ') + ('draw:fill="none"' if fill is None else f'draw:fill="solid" draw:fill-color="{grey(fill)}"'))
            out.append(f'<draw:ellipse draw:style-name="{s}" svg:x="{x0 + x - r}mm" svg:y="{y0 + y - r}mm" svg:width="{2 * r}mm" svg:height="{2 * r}mm"/>')
        elif kind == 'text':
            x, y, words, size, bold, anchor, g, rot, face = a
            s = style('t', 'draw:stroke="none" draw:fill="none" fo:padding="0mm" draw:textarea-vertical-align="top" draw:auto-grow-height="false" fo:wrap-option="no-wrap"')
            t = style(f'p{size}{bold}{anchor}{g}', '', para('NAME', size, bold, {'l': 'start', 'm': 'center', 'r': 'end'}[anchor], grey(g), after=0))
            left = x - {'l': 0, 'm': 60, 'r': 120}[anchor]
            out.append(f'<draw:frame draw:style-name="{s}" svg:x="{x0 + left:.3f}mm" svg:y="{y0 + y - size * 0.3195:.3f}mm" svg:width="120mm" svg:height="{size * 0.41:.3f}mm"><draw:text-box>'
                       f'<text:p text:style-name="{t}">{escape(words)}</text:p></draw:text-box></draw:frame>')
    return ''.join(out)


def draw(w, h, pages):
    """`pages`: lists of (ink, x, y) or ready XML."""
    styles = {}
    body = ''.join('<draw:page draw:master-page-name="M">' + ''.join(each if isinstance(each, str) else shapes(*each, styles) for each in parts) + '</draw:page>' for parts in pages)
    css = ''.join(text.replace('NAME', name) if text else f'<style:style style:name="{name}" style:family="graphic"><style:graphic-properties {props}/></style:style>' for name, props, text in styles.values())
    return (f'<?xml version="1.0" encoding="UTF-8"?><office:document {NS} office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.graphics">'
            f'{page_layout(w, h, 5)}{css}</office:automatic-styles><office:master-styles><style:master-page style:name="M" style:page-layout-name="P"/></office:master-styles>'
            f'<office:body><office:drawing>{body}</office:drawing></office:body></office:document>')


def cell_style(name, border='', size=10, bold=False, align='start', color='#000000', back='', valign='middle'):
    return (f'<style:style style:name="{name}" style:family="table-cell"><style:table-cell-properties {border} fo:wrap-option="wrap" style:vertical-align="{valign}"{" fo:background-color=" + chr(34) + back + chr(34) if back else ""}/>'
            f'<style:paragraph-properties fo:text-align="{align}"/><style:text-properties fo:font-size="{size}pt" fo:font-family="Liberation Sans" fo:color="{color}"{" fo:font-weight=" + chr(34) + "bold" + chr(34) if bold else ""}/></style:style>')


def calc(w, h, margin, widths, sheets, styles):
    """`sheets`: lists of rows (height mm, [(style, words, columns spanned, extra XML)]), each sheet a page."""
    cols = ''.join(f'<style:style style:name="c{n}" style:family="table-column"><style:table-column-properties style:column-width="{each}mm"/></style:style>' for n, each in enumerate(widths))
    heights = sorted({r[0] for rows in sheets for r in rows})
    rws = ''.join(f'<style:style style:name="r{n}" style:family="table-row"><style:table-row-properties style:row-height="{each}mm" style:use-optimal-row-height="false"/></style:style>' for n, each in enumerate(heights))
    def cell(style, words, span=1, extra=''):
        text = ''.join(f'<text:p>{escape(line)}</text:p>' for line in words.split('\n')) if words else ''
        return f'<table:table-cell table:style-name="{style}" table:number-columns-spanned="{span}" office:value-type="string">{text}{extra}</table:table-cell>' + '<table:covered-table-cell/>' * (span - 1)
    body = ''.join(f'<table:table table:name="S{n}" table:style-name="T">' + ''.join(f'<table:table-column table:style-name="c{c}"/>' for c in range(len(widths)))
                   + ''.join(f'<table:table-row table:style-name="r{heights.index(high)}">' + ''.join(cell(*c) for c in cells) + '</table:table-row>' for high, cells in rows) + '</table:table>' for n, rows in enumerate(sheets))
    return (f'<?xml version="1.0" encoding="UTF-8"?><office:document {NS} office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">'
            f'{page_layout(w, h, margin)}{cols}{rws}<style:style style:name="T" style:family="table" style:master-page-name="M"/>{styles}</office:automatic-styles>'
            f'<office:master-styles><style:master-page style:name="M" style:page-layout-name="P"/></office:master-styles><office:body><office:spreadsheet>{body}</office:spreadsheet></office:body></office:document>')
