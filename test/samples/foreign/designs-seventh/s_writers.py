"""Ghostscript, Pillow with img2pdf, TeX: the same list of things by other producers."""
import os
import subprocess
import tempfile

import img2pdf
from fontTools.agl import UV2AGL
from PIL import Image, ImageDraw, ImageFont

from s_ink import FONTS, at, times

PS = {
    "H": "NimbusSans-Regular", "HB": "NimbusSans-Bold", "HI": "NimbusSans-Italic", "T": "NimbusRoman-Regular", "TB": "NimbusRoman-Bold",
    "TI": "NimbusRoman-Italic", "C": "NimbusMonoPS-Regular", "CB": "NimbusMonoPS-Bold", "N": "NimbusSansNarrow-Regular", "NB": "NimbusSansNarrow-Bold",
}


def run(command, folder=None):
    done = subprocess.run(command, cwd=folder, stdout=subprocess.PIPE, stderr=subprocess.STDOUT)
    if done.returncode:
        raise RuntimeError(done.stdout.decode(errors="replace")[-1500:])


class Ghostscript:
    def __init__(self):
        self.out, self.encodings, self.size = [], {}, None

    def page(self, ink, w, h):
        self.out.append(f"<< /PageSize [{w} {h}] >> setpagedevice\n[1 0 0 -1 0 {h}] concat")
        self.ops(ink)
        self.out.append("showpage")

    def ops(self, ink):
        o = self.out.append
        for op in ink.ops:
            if op[0] == "text":
                _, x, y, s, size, key, g = op
                codes = ""
                for c in s:
                    chars = self.encodings.setdefault(key, [])
                    if c not in chars:
                        chars.append(c)
                    codes += f"{chars.index(c) + 1:02x}"
                o(f"gsave {g} setgray {x:.3f} {y:.3f} translate 1 -1 scale /E{key} {size:.3f} selectfont 0 0 moveto <{codes}> show grestore")
            elif op[0] == "rect":
                _, x, y, w, h, line, fill, g, dash = op
                o(f"gsave {g} setgray {x:.3f} {y:.3f} {w:.3f} {h:.3f} ")
                if fill is not None:
                    o("rectfill grestore")
                else:
                    o(f"{line or 0.7} setlinewidth [{' '.join(map(str, dash or []))}] 0 setdash rectstroke grestore")
            elif op[0] == "line":
                _, x1, y1, x2, y2, w, g, dash = op
                o(f"gsave {g} setgray {w} setlinewidth [{' '.join(map(str, dash or []))}] 0 setdash {x1:.3f} {y1:.3f} moveto {x2:.3f} {y2:.3f} lineto stroke grestore")
            elif op[0] == "poly":
                path = " ".join(f"{x:.3f} {y:.3f} {'lineto' if i else 'moveto'}" for i, (x, y) in enumerate(op[1]))
                o(f"gsave {op[2]} setgray {path} fill grestore")
            elif op[0] == "image":
                _, x, y, w, h, picture = op
                grey = picture.convert("L") if picture.mode != "1" else picture
                bits = 1 if grey.mode == "1" else 8
                o(f"gsave {x:.3f} {y:.3f} translate {w:.3f} {h:.3f} scale {grey.width} {grey.height} {bits} [{grey.width} 0 0 {grey.height} 0 0]")
                o(f"currentfile /ASCIIHexDecode filter image\n{grey.tobytes().hex()}>\ngrestore")
            else:
                o(f"gsave [{' '.join(f'{v:.5f}' for v in op[2])}] concat")
                self.ops(op[1])
                o("grestore")

    def save(self, path):
        head = ["%!PS"]
        for key, chars in self.encodings.items():
            names = " ".join("/" + {"\u00a0": "space"}.get(c, UV2AGL.get(ord(c), f"uni{ord(c):04X}")) for c in chars)
            head.append(f"/E{key} /{PS[key]} findfont dup length dict begin {{ 1 index /FID ne {{ def }} {{ pop pop }} ifelse }} forall")
            head.append(f"/Encoding 256 array 0 1 255 {{ 1 index exch /.notdef put }} for def [{names}] 0 1 2 index length 1 sub")
            head.append("{ dup 2 index exch get exch 1 add exch Encoding 3 1 roll put } for pop currentdict end definefont pop")
        with tempfile.TemporaryDirectory() as folder:
            source = os.path.join(folder, "a.ps")
            with open(source, "w", encoding="latin-1") as file:
                file.write("\n".join(head + self.out))
            run(["gs", "-q", "-dNOPAUSE", "-dBATCH", "-sDEVICE=pdfwrite", "-dAutoRotatePages=/None", f"-sOutputFile={path}", source])


class Pixels:
    """Pages as pictures; `mode` 1 or L."""

    def __init__(self, dpi=203, mode="1", quality=None):
        self.dpi, self.mode, self.pages = dpi, mode, []
        self.quality = quality

    def page(self, ink, w, h):
        k = self.dpi / 72
        self.picture = Image.new("L", (round(w * k), round(h * k)), 255)
        self.pen = ImageDraw.Draw(self.picture)
        if self.mode == "1":
            self.pen.fontmode = "1"
        self.ops(ink, (k, 0, 0, k, 0, 0))
        self.pages.append(((w, h), self.picture.convert("1", dither=0) if self.mode == "1" else self.picture))
        return self

    def ops(self, ink, m):
        k = (m[0] ** 2 + m[1] ** 2) ** 0.5
        for op in ink.ops:
            if op[0] == "text":
                self.words(op, m, k)
            elif op[0] == "rect":
                _, x, y, w, h, line, fill, g, dash = op
                if fill is None:
                    for p, q in (((x, y), (x + w, y)), ((x + w, y), (x + w, y + h)), ((x + w, y + h), (x, y + h)), ((x, y + h), (x, y))):
                        self.stroke(at(m, *p), at(m, *q), max(1, round((line or 0.7) * k)), g, dash, k)
                    continue
                (a, b), (c, d) = at(m, x, y), at(m, x + w, y + h)
                x0, x1, y0, y1 = round(min(a, c)), round(max(a, c)), round(min(b, d)), round(max(b, d))
                if x1 > x0 and y1 > y0:
                    self.pen.rectangle((x0, y0, x1 - 1, y1 - 1), fill=int(g * 255))
            elif op[0] == "line":
                _, x1, y1, x2, y2, w, g, dash = op
                self.stroke(at(m, x1, y1), at(m, x2, y2), max(1, round(w * k)), g, dash, k)
            elif op[0] == "poly":
                self.pen.polygon([at(m, *p) for p in op[1]], fill=int(op[2] * 255))
            elif op[0] == "image":
                _, x, y, w, h, picture = op
                size = (max(1, round(w * k)), max(1, round(h * k)))
                part = picture.convert("L").resize(size, Image.NEAREST if picture.mode == "1" else Image.LANCZOS).rotate(-self.turn(m), expand=True)
                (a, b), (c, d) = at(m, x, y), at(m, x + w, y + h)
                self.picture.paste(part, (round(min(a, c)), round(min(b, d))))
            else:
                self.ops(op[1], times(m, op[2]))

    def turn(self, m):
        if abs(m[0]) > abs(m[1]):
            return 0 if m[0] > 0 else 180
        return 90 if m[1] > 0 else 270

    def stroke(self, p, q, w, g, dash, k):
        (x1, y1), (x2, y2) = p, q
        length = ((x2 - x1) ** 2 + (y2 - y1) ** 2) ** 0.5
        if not length:
            return
        spots = [(0, length)]
        if dash:
            spots, s, pattern = [], 0, [d * k for d in dash] if len(dash) > 1 else [dash[0] * k] * 2
            while s < length:
                spots.append((s, min(length, s + pattern[0])))
                s += sum(pattern)
        for s, e in spots:
            ax, ay = x1 + (x2 - x1) * s / length, y1 + (y2 - y1) * s / length
            bx, by = x1 + (x2 - x1) * e / length, y1 + (y2 - y1) * e / length
            if abs(ax - bx) < 0.5 or abs(ay - by) < 0.5:
                half = w / 2
                lo_x, hi_x, lo_y, hi_y = min(ax, bx), max(ax, bx), min(ay, by), max(ay, by)
                if abs(y2 - y1) < abs(x2 - x1):
                    lo_y, hi_y = lo_y - half, hi_y + half
                else:
                    lo_x, hi_x = lo_x - half, hi_x + half
                self.pen.rectangle((round(lo_x), round(lo_y), max(round(lo_x), round(hi_x) - 1), max(round(lo_y), round(hi_y) - 1)), fill=int(g * 255))
            else:
                self.pen.line((ax, ay, bx, by), fill=int(g * 255), width=w)

    def words(self, op, m, k):
        _, x, y, s, size, key, g = op
        face = ImageFont.truetype(FONTS[key], max(4, round(size * k)))
        turn, (px, py) = self.turn(m), at(m, x, y)
        if turn == 0:
            self.pen.text((px, py), s, font=face, fill=int(g * 255), anchor="ls")
            return
        left, top, right, bottom = face.getbbox(s, anchor="ls")
        pad = 2
        tile = Image.new("L", (right - left + 2 * pad, bottom - top + 2 * pad), 0)
        pen = ImageDraw.Draw(tile)
        if self.mode == "1":
            pen.fontmode = "1"
        pen.text((pad - left, pad - top), s, font=face, fill=255, anchor="ls")
        ox, oy = pad - left, pad - top
        tile = tile.rotate(-turn, expand=True)
        w, h = right - left + 2 * pad, bottom - top + 2 * pad
        ax, ay = {90: (h - oy, ox), 180: (w - ox, h - oy), 270: (oy, w - ox)}[turn]
        self.picture.paste(Image.new("L", tile.size, int(g * 255)), (round(px - ax), round(py - ay)), tile)

    def save(self, path):
        with tempfile.TemporaryDirectory() as folder:
            files = []
            for i, (_, picture) in enumerate(self.pages):
                jpeg = self.quality is not None
                files.append(os.path.join(folder, f"{i}.{'jpg' if jpeg else 'png'}"))
                picture.save(files[-1], **({"quality": self.quality, "optimize": True, "progressive": True} if jpeg else {}))
            sizes = [size for size, _ in self.pages]
            made = []
            for file, (w, h) in zip(files, sizes):
                made.append(file + ".pdf")
                with open(made[-1], "wb") as out:
                    out.write(img2pdf.convert(file, layout_fun=img2pdf.get_layout_fun((w, h))))
            if len(made) == 1:
                os.replace(made[0], path)
            else:
                run(["qpdf", "--empty", "--pages", *made, "--", path])


class Tex:
    """XeTeX or LuaTeX with TikZ; fonts by file."""

    def __init__(self, engine="xelatex"):
        self.engine, self.out, self.fonts, self.images, self.first = engine, [], {}, [], None

    def page(self, ink, w, h):
        self.first = self.first or (w, h)
        self.out.append(f"\\pdfpagewidth={w}bp\\pdfpageheight={h}bp\\paperwidth={w}bp\\paperheight={h}bp" if self.engine == "xelatex" else "")
        self.out.append(f"\\null\\begin{{tikzpicture}}[remember picture,overlay,x=1bp,y=-1bp,shift={{(current page.north west)}},line cap=butt]")
        self.ops(ink)
        self.out.append("\\end{tikzpicture}\\clearpage")

    def ops(self, ink):
        o = self.out.append
        for op in ink.ops:
            if op[0] == "text":
                _, x, y, s, size, key, g = op
                name = "f" + "".join(chr(97 + ord(c) % 26) for c in key)
                self.fonts[name] = FONTS[key]
                safe = "".join({"\\": "\\textbackslash{}", "~": "\\textasciitilde{}", "^": "\\textasciicircum{}"}.get(c, "\\" + c if c in "#$%&_{}" else c) for c in s)
                o(f"\\node[inner sep=0,outer sep=0,anchor=base west,transform shape,text={{black!{round((1 - g) * 100)}}}] at ({x:.3f},{y:.3f}) {{\\{name}\\fontsize{{{size:.2f}bp}}{{{size:.2f}bp}}\\selectfont {safe}}};")
            elif op[0] == "rect":
                _, x, y, w, h, line, fill, g, dash = op
                shade = f"black!{round((1 - g) * 100)}"
                style = f"fill={shade}" if fill is not None else f"draw={shade},line width={line or 0.7}bp" + self.dashes(dash)
                o(f"\\path[{style}] ({x:.3f},{y:.3f}) rectangle ({x + w:.3f},{y + h:.3f});")
            elif op[0] == "line":
                _, x1, y1, x2, y2, w, g, dash = op
                o(f"\\draw[black!{round((1 - g) * 100)},line width={w}bp{self.dashes(dash)}] ({x1:.3f},{y1:.3f})--({x2:.3f},{y2:.3f});")
            elif op[0] == "poly":
                o(f"\\fill[black!{round((1 - op[2]) * 100)}] " + "--".join(f"({x:.3f},{y:.3f})" for x, y in op[1]) + "--cycle;")
            elif op[0] == "image":
                _, x, y, w, h, picture = op
                self.images.append(picture)
                o(f"\\node[inner sep=0,outer sep=0,anchor=north west,transform shape] at ({x:.3f},{y:.3f}) {{\\includegraphics[width={w:.3f}bp,height={h:.3f}bp]{{i{len(self.images) - 1}.png}}}};")
            else:
                a, b, c, d, e, f = op[2]
                o(f"\\begin{{scope}}[cm={{{a:.5f},{-b:.5f},{-c:.5f},{d:.5f},({e:.3f},{f:.3f})}}]" if False else self.scope(op[2]))
                self.ops(op[1])
                o("\\end{scope}")

    def scope(self, m):
        a, b, _, _, e, f = m
        size = (a * a + b * b) ** 0.5
        turn = {(1, 0): 0, (0, 1): -90, (-1, 0): 180, (0, -1): 90}[(round(a / size), round(b / size))]
        return f"\\begin{{scope}}[shift={{({e:.3f},{f:.3f})}},rotate={turn},scale={size:.5f}]"

    def dashes(self, dash):
        if not dash:
            return ""
        on, off = (dash[0], dash[0]) if len(dash) == 1 else dash[:2]
        return f",dash pattern=on {on}bp off {off}bp"

    def save(self, path):
        w, h = self.first
        head = ["\\documentclass{article}", f"\\usepackage[paperwidth={w}bp,paperheight={h}bp,margin=0pt]{{geometry}}", "\\usepackage{fontspec,tikz,graphicx}"]
        head += [f"\\newfontfamily\\{name}[Path={os.path.dirname(file)}/]{{{os.path.basename(file)}}}" for name, file in self.fonts.items()]
        body = head + ["\\parindent0pt\\pagestyle{empty}\\begin{document}", *self.out, "\\end{document}"]
        with tempfile.TemporaryDirectory() as folder:
            for i, picture in enumerate(self.images):
                picture.save(os.path.join(folder, f"i{i}.png"))
            with open(os.path.join(folder, "a.tex"), "w", encoding="utf-8") as file:
                file.write("\n".join(body))
            for _ in range(2):
                run([self.engine, "-interaction=nonstopmode", "-halt-on-error", "a.tex"], folder)
            os.replace(os.path.join(folder, "a.pdf"), path)
