"""A PDF writer by hand, with what is legal and seldom seen."""
import io
import zlib

from fontTools import subset
from fontTools.pens.basePen import BasePen
from fontTools.ttLib import TTFont
from PIL import Image, ImageDraw, ImageFont

from s_ink import FONTS, STANDARD, font

n = lambda v: f"{v:.3f}".rstrip("0").rstrip(".") or "0"


class Pen(BasePen):
    def __init__(self, glyphs):
        super().__init__(glyphs)
        self.out = []

    def _moveTo(self, p):
        self.out.append(f"{n(p[0])} {n(p[1])} m")

    def _lineTo(self, p):
        self.out.append(f"{n(p[0])} {n(p[1])} l")

    def _curveToOne(self, a, b, c):
        self.out.append(" ".join(n(v) for p in (a, b, c) for v in p) + " c")

    def _closePath(self):
        self.out.append("h")


class Raw:
    """`forms`: inner drawings as form XObjects. `words`: 'standard', 'embedded', 'outlines' or 'dots' (Type 3). `strips`: height of strips of pictures."""

    def __init__(self, words="standard", forms=False, pack=True, strips=None, named=True, legend=False):
        self.words, self.forms, self.pack, self.strips, self.named = words, forms, pack, strips, named
        self.objects, self.pages, self.used, self.fonts, self.legend = [None, None], [], {}, {}, legend

    def add(self, body):
        self.objects.append(body)
        return len(self.objects)

    def stream(self, head, data):
        if isinstance(data, str):
            data = data.encode("latin-1")
        if self.pack:
            data, head = zlib.compress(data, 9), head + " /Filter /FlateDecode"
        return self.add(f"<< {head} /Length {len(data)} >>\nstream\n".encode() + data + b"\nendstream")

    def page(self, ink, w, h, rotate=0, offset=(0, 0), crop=None):
        """`crop`: pt cut away all around by a CropBox inside a larger MediaBox."""
        ox, oy = offset
        base = {0: (1, 0, 0, -1, ox, oy + h), 90: (0, 1, 1, 0, ox, oy), 180: (-1, 0, 0, 1, ox + w, oy), 270: (0, -1, -1, 0, ox + h, oy + w)}[rotate]
        resources = {"Font": {}, "XObject": {}}
        body = "q " + " ".join(n(v) for v in base) + " cm\n" + self.ops(ink, resources) + "Q\n"
        mw, mh = (w, h) if rotate % 180 == 0 else (h, w)
        boxes = f"[{n(ox)} {n(oy)} {n(ox + mw)} {n(oy + mh)}]"
        if crop:
            boxes = f"[{n(ox - crop)} {n(oy - crop)} {n(ox + mw + crop)} {n(oy + mh + crop)}] /CropBox {boxes}"
        self.pages.append((boxes, rotate, resources, self.stream("", body)))

    def ops(self, ink, res):
        out = []
        for op in ink.ops:
            kind = op[0]
            if kind == "text":
                out.append(self.text(op, res))
            elif kind == "rect":
                _, x, y, w, h, line, fill, g, dash = op
                out.append(f"q {n(g)} g {n(g)} G {n(x)} {n(y)} {n(w)} {n(h)} re")
                if fill is not None:
                    out.append("f Q" if line is None else "B Q")
                else:
                    out.insert(len(out) - 1, f"q {n(line or 0.7)} w {'[%s] 0 d' % ' '.join(n(v) for v in dash) if dash else ''}")
                    out.append("S Q Q")
            elif kind == "line":
                _, x1, y1, x2, y2, w, g, dash = op
                dashed = f"[{' '.join(n(v) for v in dash)}] 0 d" if dash else ""
                out.append(f"q {n(g)} G {n(w)} w {dashed} {n(x1)} {n(y1)} m {n(x2)} {n(y2)} l S Q")
            elif kind == "poly":
                path = " ".join(f"{n(x)} {n(y)} {'l' if i else 'm'}" for i, (x, y) in enumerate(op[1]))
                out.append(f"q {n(op[2])} g {path} f Q")
            elif kind == "image":
                out.append(self.image(op, res))
            else:
                m = " ".join(n(v) for v in op[2])
                if self.forms:
                    inner = {"Font": {}, "XObject": {}}
                    body = self.ops(op[1], inner)
                    number = ("form", self.stream_later(body, inner, m))
                    name = f"F{len(res['XObject'])}"
                    res["XObject"][name] = number
                    out.append(f"q /{name} Do Q")
                else:
                    out.append(f"q {m} cm\n{self.ops(op[1], res)}Q")
        return "\n".join(out) + "\n"

    def stream_later(self, body, res, m):
        self.objects.append(("form", body, res, m))
        return len(self.objects)

    def image(self, op, res):
        _, x, y, w, h, picture = op
        out, step = [], self.strips or picture.height
        for top in range(0, picture.height, step):
            part = picture.crop((0, top, picture.width, min(picture.height, top + step)))
            space, bits = ("/DeviceGray", 1) if part.mode == "1" else ("/DeviceGray", 8) if part.mode == "L" else ("/DeviceRGB", 8)
            head = f"/Type /XObject /Subtype /Image /Width {part.width} /Height {part.height} /ColorSpace {space} /BitsPerComponent {bits}"
            if part.mode == "1":
                number = self.stream(head, part.tobytes())
            else:
                jpeg = io.BytesIO()
                part.save(jpeg, "JPEG", quality=80)
                number = self.add(f"<< {head} /Filter /DCTDecode /Length {len(jpeg.getvalue())} >>\nstream\n".encode() + jpeg.getvalue() + b"\nendstream")
            name = f"I{len(res['XObject'])}"
            res["XObject"][name] = number
            y0, tall = y + h * top / picture.height, h * part.height / picture.height
            out.append(f"q {n(w)} 0 0 {n(-tall)} {n(x)} {n(y0 + tall)} cm /{name} Do Q")
        return "\n".join(out)

    def text(self, op, res):
        _, x, y, s, size, key, g = op
        if self.words == "outlines":
            opened, cmap, hmtx, em = font(key)
            glyphs, out = opened.getGlyphSet(), []
            for c in s:
                name = cmap.get(ord(c), ".notdef")
                pen = Pen(glyphs)
                glyphs[name].draw(pen)
                if pen.out:
                    out.append(f"q {n(size / em)} 0 0 {n(-size / em)} {n(x)} {n(y)} cm {' '.join(pen.out)} f Q".replace(n(size / em), f"{size / em:.6f}"))
                x += hmtx[name][0] * size / em
            return f"q {n(g)} g\n" + "\n".join(out) + "\nQ"
        standard = self.words == "standard" and key in STANDARD and all(ord(c) < 256 for c in s)
        mode = "standard" if standard else "dots" if self.words == "dots" else "embedded"
        self.used.setdefault((mode, key), [])
        chars = self.used[(mode, key)]
        name = f"{mode[0].upper()}{key}"
        res["Font"][name] = (mode, key)
        if mode == "standard":
            shown = "<" + s.encode("latin-1").hex() + ">"
        elif mode == "dots":
            for c in s:
                if c not in chars:
                    chars.append(c)
            shown = "<" + "".join(f"{chars.index(c) + 1:02x}" for c in s) + ">"
        else:
            for c in s:
                if c not in chars:
                    chars.append(c)
            shown = "<" + "".join(f"{chars.index(c) + 1:04x}" for c in s) + ">"
        return f"BT {n(g)} g /{name} {n(size)} Tf 1 0 0 -1 {n(x)} {n(y)} Tm {shown} Tj ET"

    def make_font(self, mode, key):
        chars = self.used[(mode, key)]
        if mode == "standard":
            return self.add(f"<< /Type /Font /Subtype /Type1 /BaseFont /{STANDARD[key]} /Encoding /WinAnsiEncoding >>")
        digits = 2 if mode == "dots" else 4
        pairs = "\n".join(f"<{i + 1:0{digits}x}> <{ord(c):04x}>" for i, c in enumerate(chars[:100]))
        more = "\n".join(f"<{i + 101:0{digits}x}> <{ord(c):04x}>" for i, c in enumerate(chars[100:]))
        cmap = f"/CIDInit /ProcSet findresource begin 12 dict begin begincmap /CMapName /X def /CMapType 2 def 1 begincodespacerange <{'0' * digits}> <{'f' * digits}> endcodespacerange\n"
        cmap += f"{min(100, len(chars))} beginbfchar\n{pairs}\nendbfchar\n" + (f"{len(chars) - 100} beginbfchar\n{more}\nendbfchar\n" if more else "")
        cmap += "endcmap CMapName currentdict /CMap defineresource pop end end"
        unicode = f"/ToUnicode {self.stream('', cmap)} 0 R" if self.named else ""
        return self.type3(key, chars, unicode) if mode == "dots" else self.truetype(key, chars, unicode)

    def type3(self, key, chars, unicode):
        """Each character as small squares, as pins strike it."""
        face = ImageFont.truetype(FONTS[key], 13)
        step, procs, differences = 77, [], []
        for i, c in enumerate(chars):
            cell = Image.new("L", (8, 17), 255)
            ImageDraw.Draw(cell).text((0, 0), c, font=face, fill=0)
            dots = [(px, py) for py in range(17) for px in range(8) if cell.getpixel((px, py)) < 150]
            body = "600 0 d0\n" + "\n".join(f"{px * step} {(12 - py) * step} 66 66 re f" for px, py in dots)
            procs.append(f"/g{i + 1} {self.stream('', body)} 0 R")
            differences.append(f"/g{i + 1}")
        widths = " ".join(["600"] * len(chars))
        return self.add(
            f"<< /Type /Font /Subtype /Type3 /FontBBox [0 -400 650 1000] /FontMatrix [0.001 0 0 0.001 0 0] /FirstChar 1 /LastChar {len(chars)} /Widths [{widths}] "
            f"/CharProcs << {' '.join(procs)} >> /Encoding << /Type /Encoding /Differences [1 {' '.join(differences)}] >> /Resources << >> {unicode} >>"
        )

    def truetype(self, key, chars, unicode):
        opened, cmap, hmtx, em = font(key)
        cut = TTFont(FONTS[key])
        options = subset.Options()
        options.retain_gids, options.notdef_outline, options.layout_features, options.drop_tables = True, True, [], ["GSUB", "GPOS", "GDEF", "post", "name", "DSIG"]
        worker = subset.Subsetter(options)
        worker.populate(unicodes=[ord(c) for c in chars])
        worker.subset(cut)
        data = io.BytesIO()
        cut.save(data)
        gids = b"\0\0" + b"".join(opened.getGlyphID(cmap.get(ord(c), ".notdef")).to_bytes(2, "big") for c in chars)
        widths = " ".join(str(round(hmtx[cmap.get(ord(c), ".notdef")][0] * 1000 / em)) for c in chars)
        file = self.stream(f"/Length1 {len(data.getvalue())}", data.getvalue().decode("latin-1"))
        base = f"ABCDEF+S{key}"
        descriptor = self.add(
            f"<< /Type /FontDescriptor /FontName /{base} /Flags 4 /FontBBox [-500 -300 1500 1100] /ItalicAngle 0 /Ascent 900 /Descent -200 /CapHeight 700 /StemV 80 /FontFile2 {file} 0 R >>"
        )
        map_ = self.stream("", gids.decode("latin-1"))
        child = self.add(
            f"<< /Type /Font /Subtype /CIDFontType2 /BaseFont /{base} /CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >> /FontDescriptor {descriptor} 0 R /DW 500 /W [1 [{widths}]] /CIDToGIDMap {map_} 0 R >>"
        )
        return self.add(f"<< /Type /Font /Subtype /Type0 /BaseFont /{base} /Encoding /Identity-H /DescendantFonts [{child} 0 R] {unicode} >>")

    def resources(self, res):
        fonts = " ".join(f"/{name} {self.fonts[key]} 0 R" for name, key in res["Font"].items())
        objects = " ".join(f"/{name} {v[1] if isinstance(v, tuple) else v} 0 R" for name, v in res["XObject"].items())
        return f"<< /Font << {fonts} >> /XObject << {objects} >> >>"

    def save(self, path):
        for key in self.used:
            self.fonts[key] = self.make_font(*key)
        for i, each in enumerate(self.objects):
            if isinstance(each, tuple):
                _, body, res, m = each
                data = body.encode("latin-1")
                packed = zlib.compress(data, 9)
                head = f"<< /Type /XObject /Subtype /Form /BBox [-2000 -2000 2000 2000] /Matrix [{m}] /Resources {self.resources(res)} /Filter /FlateDecode /Length {len(packed)} >>"
                self.objects[i] = head.encode() + b"\nstream\n" + packed + b"\nendstream"
        kids = []
        for boxes, rotate, res, content in self.pages:
            turn = f"/Rotate {rotate} " if rotate else ""
            kids.append(self.add(f"<< /Type /Page /Parent 2 0 R /MediaBox {boxes} {turn}/Resources {self.resources(res)} /Contents {content} 0 R >>"))
        self.objects[0] = "<< /Type /Catalog /Pages 2 0 R >>"
        self.objects[1] = f"<< /Type /Pages /Count {len(kids)} /Kids [{' '.join(f'{k} 0 R' for k in kids)}] >>"
        out, places = bytearray(b"%PDF-1.4\n%\xe2\xe3\xcf\xd3\n"), []
        for i, each in enumerate(self.objects):
            places.append(len(out))
            out += f"{i + 1} 0 obj\n".encode() + (each if isinstance(each, bytes) else each.encode("latin-1")) + b"\nendobj\n"
        start = len(out)
        out += f"xref\n0 {len(places) + 1}\n0000000000 65535 f \n".encode() + b"".join(f"{p:010d} 00000 n \n".encode() for p in places)
        out += f"trailer << /Size {len(places) + 1} /Root 1 0 R >>\nstartxref\n{start}\n%%EOF\n".encode()
        with open(path, "wb") as file:
            file.write(out)
