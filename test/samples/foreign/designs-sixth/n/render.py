"""The same drawing for several producers: SVG, PostScript, TikZ, OpenDocument shapes and pixels."""
import re
from html import escape
from PIL import Image, ImageDraw, ImageFont

FILES = {('sans', 0): 'liberation/LiberationSans-Regular', ('sans', 1): 'liberation/LiberationSans-Bold', ('mono', 0): 'liberation/LiberationMono-Regular',
         ('mono', 1): 'liberation/LiberationMono-Bold', ('serif', 0): 'liberation/LiberationSerif-Regular', ('serif', 1): 'liberation/LiberationSerif-Bold'}
SVG_FACE = {'sans': "'Liberation Sans','Noto Sans Thai','Noto Sans Arabic','Droid Sans Fallback',sans-serif", 'mono': "'Liberation Mono',monospace",
            'serif': "'Liberation Serif','Droid Sans Fallback',serif"}
ANCHOR = {'l': 'start', 'm': 'middle', 'r': 'end'}
GREY = lambda g: f'#{g:02x}{g:02x}{g:02x}'


def svg(ink, extra=''):
    out = [f'<svg xmlns="http://www.w3.org/2000/svg" width="{ink.w}mm" height="{ink.h}mm" viewBox="0 0 {ink.w} {ink.h}" style="display:block;overflow:visible" {extra}>']
    for kind, *a in ink.ops:
        if kind == 'rect':
            x, y, w, h, line, fill, dash, radius = a
            out.append(f'<rect x="{x}" y="{y}" width="{w}" height="{h}" rx="{radius}" fill="{"none" if fill is None else GREY(fill)}"'
                       + (f' stroke="#000" stroke-width="{line}"' if line else '') + (f' stroke-dasharray="{dash}"' if dash else '') + '/>')
        elif kind == 'line':
            x1, y1, x2, y2, w, dash, grey = a
            out.append(f'<line x1="{x1}" y1="{y1}" x2="{x2}" y2="{y2}" stroke="{GREY(grey)}" stroke-width="{w}"' + (f' stroke-dasharray="{dash}"' if dash else '') + '/>')
        elif kind == 'poly':
            out.append(f'<polygon points="{" ".join(f"{x:.3f},{y:.3f}" for x, y in a[0])}" fill="{GREY(a[1])}"/>')
        elif kind == 'disc':
            x, y, r, fill, line = a
            out.append(f'<circle cx="{x}" cy="{y}" r="{r}" fill="{"none" if fill is None else GREY(fill)}"' + (f' stroke="#000" stroke-width="{line}"' if line else '') + '/>')
        elif kind == 'text':
            x, y, words, size, bold, anchor, grey, rot, face = a
            turn = f' transform="rotate({rot} {x} {y})"' if rot else ''
            out.append(f'<text x="{x}" y="{y}" font-size="{size * 0.3528:.3f}" text-anchor="{ANCHOR[anchor]}" fill="{GREY(grey)}"{turn}'
                       f' font-family="{SVG_FACE[face]}"' + (' font-weight="700"' if bold else '') + f'>{escape(words)}</text>')
        elif kind == 'cells':
            x, y, _, cells = a
            d = ''.join(f'M{x + cx:.4f} {y + cy:.4f}h{w:.4f}v{h:.4f}h{-w:.4f}z' for cx, cy, w, h in cells)
            out.append(f'<path shape-rendering="crispEdges" d="{d}"/>')
    return ''.join(out) + '</svg>'


PS_HEAD = r'''%!PS-Adobe-3.0
/mm {2.834646 mul} bind def
/LAT {/n exch def findfont dup length dict begin {1 index /FID ne {def} {pop pop} ifelse} forall /Encoding ISOLatin1Encoding dup length array copy dup 45 /hyphen put def currentdict end n exch definefont pop} bind def
/Helvetica /SA LAT /Helvetica-Bold /SB LAT /Courier /MA LAT /Courier-Bold /MB LAT /Times-Roman /TA LAT /Times-Bold /TB LAT
/L {0 0 moveto show} bind def /M {dup stringwidth pop -2 div 0 moveto show} bind def /R {dup stringwidth pop neg 0 moveto show} bind def
/B {/h exch def /w exch def moveto w 0 rlineto 0 h neg rlineto w neg 0 rlineto closepath} bind def
'''
PS_FACE = {('sans', 0): 'SA', ('sans', 1): 'SB', ('mono', 0): 'MA', ('mono', 1): 'MB', ('serif', 0): 'TA', ('serif', 1): 'TB'}


def ps(ink, x0, y0, page_h, turn=0):
    """PostScript with the drawing's top left at (x0, y0) mm from the page's top left; `turn` clockwise: what lies to the right is then below."""
    out = ['gsave', f'{x0} mm {page_h - y0} mm translate']
    if turn == 90:
        out.append(f'{ink.h} mm 0 translate -90 rotate')
    elif turn == 270:
        out.append(f'0 {-ink.w} mm translate 90 rotate')
    elif turn == 180:
        out.append(f'{ink.w} mm {-ink.h} mm translate 180 rotate')
    out.append('2.834646 dup scale')
    for kind, *a in ink.ops:
        if kind == 'rect':
            x, y, w, h, line, fill, dash, _ = a
            if fill is not None:
                out.append(f'{fill / 255:.3f} setgray newpath {x} {-y} {w} {h} B fill 0 setgray')
            if line:
                out.append(f'[{dash or ""}] 0 setdash {line} setlinewidth newpath {x} {-y} {w} {h} B stroke [] 0 setdash')
        elif kind == 'line':
            x1, y1, x2, y2, w, dash, grey = a
            out.append(f'[{dash or ""}] 0 setdash {grey / 255:.3f} setgray {w} setlinewidth newpath {x1} {-y1} moveto {x2} {-y2} lineto stroke [] 0 setdash 0 setgray')
        elif kind == 'poly':
            out.append(f'{a[1] / 255:.3f} setgray newpath ' + ' '.join(f'{x:.3f} {-y:.3f} {"lineto" if n else "moveto"}' for n, (x, y) in enumerate(a[0])) + ' closepath fill 0 setgray')
        elif kind == 'disc':
            x, y, r, fill, line = a
            out.append(f'{(fill or 0) / 255:.3f} setgray newpath {x} {-y} {r} 0 360 arc ' + ('fill' if fill is not None else f'{line} setlinewidth stroke') + ' 0 setgray')
        elif kind == 'text':
            x, y, words, size, bold, anchor, grey, rot, face = a
            said = words.replace('–', '-').replace('€', 'EUR').replace('’', "'").replace('\\', '\\\\').replace('(', '\\(').replace(')', '\\)')
            out.append(f'gsave {x} {-y} translate {-rot} rotate {grey / 255:.3f} setgray /{PS_FACE[face, int(bold)]} findfont {size * 0.3528:.3f} scalefont setfont ({said}) {anchor.upper()} grestore')
        elif kind == 'cells':
            x, y, _, cells = a
            out.append('newpath ' + ' '.join(f'{x + cx:.3f} {-(y + cy):.3f} {w:.3f} {h:.3f} B' for cx, cy, w, h in cells) + ' fill')
    return '\n'.join(out + ['grestore', ''])


def tikz(ink):
    """TikZ commands with mm as the unit, y up, top left at the origin."""
    esc = lambda s: ''.join({'&': r'\&', '%': r'\%', '#': r'\#', '_': r'\_', '$': r'\$'}.get(c, c) for c in s)
    face = {'sans': r'\sffamily', 'mono': r'\ttfamily', 'serif': r'\rmfamily'}
    out = []
    for kind, *a in ink.ops:
        if kind == 'rect':
            x, y, w, h, line, fill, dash, radius = a
            box = f'({x},{-y}) rectangle ({x + w},{-(y + h)})'
            if fill is not None:
                out.append(rf'\fill[black!{round(100 - fill / 2.55)}!white] {box};')
            if line:
                out.append(rf'\draw[line width={line}mm{",dash pattern=on 1.2mm off 0.9mm" if dash else ""}{f",rounded corners={radius}mm" if radius else ""}] {box};')
        elif kind == 'line':
            x1, y1, x2, y2, w, dash, grey = a
            out.append(rf'\draw[line width={w}mm,black!{round(100 - grey / 2.55)}!white{",dash pattern=on 1.2mm off 0.9mm" if dash else ""}] ({x1},{-y1}) -- ({x2},{-y2});')
        elif kind == 'poly':
            out.append(rf'\fill[black!{round(100 - a[1] / 2.55)}!white] ' + ' -- '.join(f'({x:.3f},{-y:.3f})' for x, y in a[0]) + ' -- cycle;')
        elif kind == 'disc':
            x, y, r, fill, line = a
            out.append((rf'\fill[black!{round(100 - fill / 2.55)}!white]' if fill is not None else rf'\draw[line width={line}mm]') + f' ({x},{-y}) circle[radius={r}mm];')
        elif kind == 'text':
            x, y, words, size, bold, anchor, grey, rot, fam = a
            out.append(rf'\node[anchor=base {({"l": "west", "m": "", "r": "east"}[anchor])},inner sep=0,outer sep=0,rotate={-rot},text=black!{round(100 - grey / 2.55)}!white]'
                       rf' at ({x},{-y}) {{\fontsize{{{size}}}{{{size}}}\selectfont{face[fam]}{chr(92) + "bfseries" if bold else ""} {esc(words)}}};')
        elif kind == 'cells':
            x, y, _, cells = a
            out.append(r'\fill ' + ' '.join(f'({x + cx:.3f},{-(y + cy):.3f}) rectangle ++({w:.3f},{-h:.3f})' for cx, cy, w, h in cells) + ';')
    return '\n'.join(o.replace('anchor=base ,', 'anchor=base,') for o in out)


def font(face, bold, size, words):
    low = [c for c in words if ord(c) > 0x2e7f]
    vietnamese = any(0x1e00 <= ord(c) < 0x1f00 for c in words)
    path = '/usr/share/fonts/truetype/droid/DroidSansFallbackFull.ttf' if low else f'/usr/share/fonts/truetype/dejavu/DejaVuSans{"-Bold" if bold else ""}.ttf' if vietnamese else f'/usr/share/fonts/truetype/{FILES[face, int(bold)]}.ttf'
    return ImageFont.truetype(path, max(6, round(size)))


def pixels(ink, dpi=203, grey=False, margin=0):
    """A picture: 1 bit, or grey. Bars on whole pixels."""
    per = 8.0 if dpi == 203 else dpi / 25.4
    at = lambda v: round((v + margin) * per)
    img = Image.new('L' if grey else '1', (round((ink.w + 2 * margin) * per), round((ink.h + 2 * margin) * per)), 255 if grey else 1)
    d = ImageDraw.Draw(img)
    tone = lambda g: g if grey else (1 if g > 140 else 0)
    if not grey:
        d.fontmode = '1'
    for kind, *a in ink.ops:
        if kind == 'rect':
            x, y, w, h, line, fill, dash, radius = a
            box = (at(x - line / 2), at(y - line / 2), at(x + w + line / 2) - 1, at(y + h + line / 2) - 1)
            if dash:
                for n in range(int((w + h) / 2)):
                    for sx, sy, ex, ey in ((x + n * 2, y, x + n * 2 + 1.2, y), (x + n * 2, y + h, x + n * 2 + 1.2, y + h), (x, y + n * 2, x, y + n * 2 + 1.2), (x + w, y + n * 2, x + w, y + n * 2 + 1.2)):
                        if ex <= x + w + 0.1 and ey <= y + h + 0.1:
                            d.line((at(sx), at(sy), at(ex), at(ey)), fill=tone(0), width=2)
            else:
                d.rectangle(box, fill=None if fill is None else tone(fill), outline=tone(0) if line else None, width=max(1, round(line * per)))
        elif kind == 'line':
            x1, y1, x2, y2, w, dash, g = a
            if x1 == x2 or y1 == y2:
                spots = [(x1, y1, x2, y2)]
                if dash:
                    long = max(abs(x2 - x1), abs(y2 - y1))
                    ux, uy = (x2 - x1) / long, (y2 - y1) / long
                    spots = [(x1 + ux * n * 2, y1 + uy * n * 2, x1 + ux * (n * 2 + 1.2), y1 + uy * (n * 2 + 1.2)) for n in range(int(long / 2))]
                for sx, sy, ex, ey in spots:
                    hx, hy = (w / 2, 0) if x1 == x2 else (0, w / 2)
                    d.rectangle((at(min(sx, ex) - hx), at(min(sy, ey) - hy), max(at(max(sx, ex) + hx) - 1, at(min(sx, ex) - hx)), max(at(max(sy, ey) + hy) - 1, at(min(sy, ey) - hy))), fill=tone(g))
            else:
                d.line((at(x1), at(y1), at(x2), at(y2)), fill=tone(g), width=max(1, round(w * per)))
        elif kind == 'poly':
            d.polygon([(at(x), at(y)) for x, y in a[0]], fill=tone(a[1]))
        elif kind == 'disc':
            x, y, r, fill, line = a
            d.ellipse((at(x - r), at(y - r), at(x + r), at(y + r)), fill=None if fill is None else tone(fill), outline=tone(0) if line else None, width=max(1, round(line * per)))
        elif kind == 'text':
            x, y, words, size, bold, anchor, g, rot, face = a
            parts = [(c, font(face, bold, size * 0.3528 * per, c)) for c in re.findall(r'[\u2e80-\uffff]+|[^\u2e80-\uffff]+', words)]
            long, high = sum(f.getlength(c) for c, f in parts), round(size * 0.3528 * per * 1.6)
            up = round(high * 0.7)
            tile = Image.new(img.mode, (int(long) + 6, high), 0)
            td, tx = ImageDraw.Draw(tile), 3
            td.fontmode = d.fontmode
            for c, f in parts:
                td.text((round(tx), up), c, font=f, fill=255 if grey else 1, anchor='ls')
                tx += f.getlength(c)
            back = {'l': 0, 'm': long / 2, 'r': long}[anchor] + 3
            px, py = {0: (at(x) - back, at(y) - up), 90: (at(x) - (high - up), at(y) - back), 270: (at(x) - up, at(y) + back - tile.width)}[rot]
            tile = tile.rotate(-rot, expand=True)
            img.paste(Image.new(img.mode, tile.size, tone(g)), (round(px), round(py)), tile)
        elif kind == 'cells':
            x, y, m, cells = a
            step = round(m * per)
            for cx, cy, w, h in cells:
                q = lambda v: round(v / m) * step if abs(v / m - round(v / m)) < 0.01 else round(v * per)
                d.rectangle((at(x) + q(cx), at(y) + q(cy), at(x) + q(cx) + max(1, q(w)) - 1, at(y) + q(cy) + max(1, q(h)) - 1), fill=tone(0))
    return img
