"""Programs that make the PDFs."""
import io
import os
import subprocess
import img2pdf
import numpy as np
from PIL import Image
from core import WORK, page_sizes, run, turned_box
from render import PS_HEAD, ps, tikz


def chromium(css, bodies, margin='', fixed='@page{size:A4;margin:14mm}'):
    """`bodies`: one a page, markup in which labels have the class L0, L1 …, a slip S. Pictures of labels have class `pic` beside it."""

    def build(only, path):
        hide = ''
        if only is not None:
            cls = 'S' if only == 'slip' else f'L{only[1] if isinstance(only, tuple) else only}'
            hide = f'*{{visibility:hidden!important}}html,body{{background:#fff!important}}.{cls},.{cls} *{{visibility:visible!important}}'
            if isinstance(only, tuple):
                hide += f'img.{cls}{{filter:brightness(0);background:#000}}'
        head = f'<meta charset="utf-8"><style>{fixed}{"" if only is not None else margin}*{{box-sizing:border-box}}body{{margin:0}}.pg{{break-after:page;position:relative}}.pg:last-child{{break-after:auto}}{css}{hide}</style>'
        html = f'{WORK}/doc.html'
        with open(html, 'w', encoding='utf8') as f:
            f.write('<!doctype html>' + head + ''.join(f'<div class="pg">{b}</div>' for b in bodies))
        run('chromium', '--headless', '--no-sandbox', '--disable-gpu', '--no-pdf-header-footer', f'--print-to-pdf={path}', html)

    return build


def ghostscript(pages):
    """`pages`: (width mm, height mm, [(key, ink or PostScript, x, y, turn)]); key is a label's number, 'slip' or None."""

    def build(only, path):
        out = [PS_HEAD]
        for w, h, parts in pages:
            out.append(f'<</PageSize [{w * 2.834646:.2f} {h * 2.834646:.2f}]>> setpagedevice')
            for key, what, x, y, turn in parts:
                if only is None or key == only:
                    out.append(what if isinstance(what, str) else ps(what, x, y, h, turn))
            out.append('showpage')
        with open(f'{WORK}/doc.ps', 'wb') as f:
            f.write('\n'.join(out).encode('latin-1'))
        run('gs', '-q', '-dNOPAUSE', '-dBATCH', '-dAutoRotatePages=/None', '-sDEVICE=pdfwrite', f'-sOutputFile={path}', f'{WORK}/doc.ps')

    return build


def latex(pages, engine='xelatex', paper='a4paper', setup='', font='Liberation'):
    """`pages`: (text of the page, [(key, ink, x, y, turn)]) with the ink placed on the page, mm from its top left."""

    def build(only, path):
        fonts = rf'\usepackage{{fontspec}}\setmainfont{{{font} Serif}}\setsansfont{{{font} Sans}}\setmonofont{{{font} Mono}}' if engine == 'xelatex' else r'\usepackage[T1]{fontenc}\usepackage[utf8]{inputenc}\usepackage{lmodern}'
        out = [rf'\documentclass[10pt]{{article}}\usepackage[{paper},margin=18mm]{{geometry}}{fonts}\usepackage{{tikz,tabularx,multirow,array}}{setup}\pagestyle{{empty}}\parindent0pt\begin{{document}}']
        for text, parts in pages:
            out.append(r'\begin{tikzpicture}[remember picture,overlay,x=1mm,y=1mm]')
            for key, ink, x, y, turn in parts:
                if only is None or key == only:
                    dx, dy = {0: (0, 0), 90: (ink.h, 0), 180: (ink.w, ink.h), 270: (0, ink.w)}[turn]
                    out.append(rf'\begin{{scope}}[shift={{([xshift={x + dx}mm,yshift=-{y + dy}mm]current page.north west)}},rotate={-turn},transform shape]')
                    out += [tikz(ink), r'\end{scope}']
            out.append(r'\end{tikzpicture}')
            out.append((text if only is None else r'\null') + r'\newpage')
        with open(f'{WORK}/doc.tex', 'w', encoding='utf8') as f:
            f.write('\n'.join(out) + r'\end{document}')
        for _ in range(2):
            run(engine, '-interaction=nonstopmode', '-output-directory', WORK, f'{WORK}/doc.tex')
        os.replace(f'{WORK}/doc.pdf', path)

    return build


def office(suffix, source, kind):
    """`source(only)` gives flat OpenDocument XML; LibreOffice prints it."""

    def build(only, path):
        stem = f'{WORK}/doc'
        with open(f'{stem}.{suffix}', 'w', encoding='utf8') as f:
            f.write(source(only))
        run('soffice', f'-env:UserInstallation=file://{WORK}/lo', '--headless', '--convert-to', f'pdf:{kind}_pdf_Export', '--outdir', WORK, f'{stem}.{suffix}')
        os.replace(f'{stem}.pdf', path)

    return build


def png(img, dpi):
    out = io.BytesIO()
    img.save(out, 'PNG', dpi=(dpi, dpi), optimize=True)
    return out.getvalue()


def pictures(pages, dpi):
    """`pages`: lists of (key, picture, left, top) pasted on a page of (width, height) pixels; each page one picture. Needs (size, grey, parts)."""

    def build(only, path):
        made = []
        for (w, h), grey, parts in pages:
            img = Image.new('L' if grey else '1', (w, h), 255 if grey else 1)
            for key, pic, x, y in parts:
                if only is None or key == (only[1] if isinstance(only, tuple) else only):
                    img.paste(Image.new(img.mode, pic.size, 0) if isinstance(only, tuple) else pic, (x, y))
            made.append(png(img, dpi))
        with open(path, 'wb') as f:
            f.write(img2pdf.convert(made, rotation=img2pdf.Rotation.ifvalid))

    return build


def scanned(dpi, skews, quality=55, noise=6, shade=0.15, fax=False, seed=1):
    """A scan of each page: grey JPEG, or 1 bit as a fax; `skews` in degrees clockwise."""

    def scan(plain, pdf, truth):
        rng = np.random.default_rng(seed)
        made = []
        for n, page in enumerate(truth):
            stem = f'{WORK}/s'
            run('pdftoppm', '-r', str(dpi * 2), '-gray', '-f', str(n + 1), '-l', str(n + 1), '-singlefile', plain, stem)
            img = Image.open(stem + '.pgm')
            w, h = round(page['width'] * dpi / 72), round(page['height'] * dpi / 72)
            skew = skews[n % len(skews)]
            img = img.rotate(-skew, resample=Image.BICUBIC, fillcolor=255).resize((w, h), Image.LANCZOS)
            px = np.asarray(img).astype(float)
            if fax:
                px += rng.normal(0, 14, px.shape)
                bits = Image.fromarray(((px > 150) * 255).astype('uint8')).convert('1')
                out = io.BytesIO()
                bits.save(out, 'TIFF', compression='group4', dpi=(dpi, dpi))
            else:
                yy, xx = np.mgrid[0:h, 0:w]
                light = 1 - shade * np.clip((xx / w * rng.uniform(-1, 1) + yy / h * rng.uniform(-1, 1)) + 0.4, 0, 1)
                px = (25 + px / 255 * 222) * light + rng.normal(0, noise, px.shape)
                out = io.BytesIO()
                Image.fromarray(np.clip(px, 0, 255).astype('uint8')).save(out, 'JPEG', quality=quality, optimize=True, progressive=True, dpi=(dpi, dpi))
            made.append(out.getvalue())
            for label in page['labels']:
                straight = label['box']
                label['box'] = turned_box(straight, page['width'], page['height'], skew)
                if skew:
                    label['skew'] = skew
                    label['straight'] = straight
                label.pop('ink', None)
        return bound(made, pdf, truth)

    return scan


def bound(made, pdf, truth):
    """The pictures as one PDF, and the truth with its pages' sizes."""
    with open(pdf, 'wb') as f:
        f.write(img2pdf.convert(made))
    for page, (w, h) in zip(truth, page_sizes(pdf)):
        page['width'], page['height'] = w, h
    return truth


def shot(dpi, levels=16):
    """A screenshot: the page as it is seen, grey, without a loss."""

    def scan(plain, pdf, truth):
        made = []
        for n in range(len(truth)):
            run('pdftoppm', '-r', str(dpi), '-gray', '-f', str(n + 1), '-l', str(n + 1), '-singlefile', plain, f'{WORK}/s')
            made.append(png(Image.open(f'{WORK}/s.pgm').quantize(levels).convert('L'), dpi))
        return bound(made, pdf, truth)

    return scan
