"""Operations of j_art.py as documents of other programs: Typst and LuaTeX here, the rest by j_skia.txt, j_pdflib.txt, j_pdfmake.txt and j_gofpdf.txt."""

import os
import subprocess

from j_art import FONTS

TYPST = {
    "sans": '"Liberation Sans"',
    "sansb": '"Liberation Sans", weight: 700',
    "narrow": '("Liberation Sans Narrow", "Liberation Sans"), stretch: 75%',
    "narrowb": '("Liberation Sans Narrow", "Liberation Sans"), stretch: 75%, weight: 700',
    "mono": '"Liberation Mono"',
    "monob": '"Liberation Mono", weight: 700',
    "serif": '"Liberation Serif"',
    "serifb": '"Liberation Serif", weight: 700',
    "cond": '("Roboto Condensed", "Roboto"), stretch: 75%',
    "condb": '("Roboto Condensed", "Roboto"), stretch: 75%, weight: 700',
    "lato": '"Lato"',
    "latob": '"Lato", weight: 700',
    "black": '"Lato", weight: 900',
    "open": '"Open Sans"',
    "openb": '"Open Sans", weight: 700',
    "deja": '"DejaVu Sans"',
    "dejab": '"DejaVu Sans", weight: 700',
}


def _tsv(pages):
    rows = ["\t".join(["F", key, path]) for key, path in FONTS.items()]
    for width, height, ops in pages:
        rows += [f"PAGE\t{width}\t{height}", *ops]
    return "\n".join(rows) + "\n"


def _dash(dash):
    return "none" if dash == "-" else "(" + ", ".join(f"{each}pt" for each in dash.split(",")) + ",)"


def _typst_op(op):
    kind, *f = op.split("\t")
    at = f"#place(top + left, dx: {f[0]}pt, dy: {f[1]}pt, " if kind in "RTIG" else "#place(top + left, "
    if kind == "R":
        paint = "none" if f[4] == "-" else f'rgb("{f[4]}")'
        stroke = "none" if f[5] == "-" else f'(paint: rgb("{f[5]}"), thickness: {f[6]}pt, dash: {_dash(f[7])})'
        return at + f"rect(width: {f[2]}pt, height: {f[3]}pt, fill: {paint}, stroke: {stroke}))"
    if kind == "L":
        stroke = f'(paint: rgb("{f[5]}"), thickness: {f[4]}pt, dash: {_dash(f[6])})'
        return at + f"line(start: ({f[0]}pt, {f[1]}pt), end: ({f[2]}pt, {f[3]}pt), stroke: {stroke}))"
    if kind == "T":
        words = f[5].replace("\\", "\\\\").replace('"', '\\"')
        return at + f'text(font: {TYPST[f[3]]}, size: {f[2]}pt, fill: rgb("{f[4]}"), "{words}"))'
    if kind == "C":
        paint = "none" if f[3] == "-" else f'rgb("{f[3]}")'
        stroke = "none" if f[4] == "-" else f'{f[5]}pt + rgb("{f[4]}")'
        x, y, r = float(f[0]), float(f[1]), float(f[2])
        return f"#place(top + left, dx: {x - r}pt, dy: {y - r}pt, circle(radius: {r}pt, fill: {paint}, stroke: {stroke}))"
    if kind == "P":
        points = ", ".join(f"({x}pt, {y}pt)" for x, y in zip(f[1::2], f[2::2]))
        return at + f'polygon(fill: rgb("{f[0]}"), {points}))'
    if kind == "B":
        paths = []
        for x, y, w, h in zip(*[iter([float(each) for each in f[1:]])] * 4):
            corners = [(x, y), (x + w, y), (x + w, y + h), (x, y + h)]
            paths.append("curve.move((%gpt, %gpt))" % corners[0])
            paths += ["curve.line((%gpt, %gpt))" % each for each in corners[1:]] + ["curve.close()"]
        return at + f'curve(fill: rgb("{f[0]}"), {", ".join(paths)}))'
    if kind == "I":
        return at + f'image("{f[4]}", width: {f[2]}pt, height: {f[3]}pt))'
    if kind == "G":
        return at + f"rotate({f[2]}deg, origin: top + left, block(width: 1500pt, height: 0pt)["
    return "]))"


def typst(pages, out, node):
    body = ['#set text(top-edge: "baseline", bottom-edge: "baseline", hyphenate: false)', "#set page(margin: 0pt)"]
    for width, height, ops in pages:
        inside = "\n".join(_typst_op(op) for op in ops)
        body.append(f"#page(width: {width}pt, height: {height}pt, margin: 0pt)[\n{inside}\n]")
    source = out.replace(".pdf", ".typ")
    open(source, "w").write("\n".join(body))
    subprocess.run(["node", os.path.join(node, "typst.cjs"), source, out], check=True, env={**os.environ, "NODE_PATH": node + "/node_modules"})


def _tikz_colour(value):
    return "{rgb,255:red,%d;green,%d;blue,%d}" % tuple(int(value[i : i + 2], 16) for i in (1, 3, 5))


TEX = {"&": "\\&", "%": "\\%", "#": "\\#", "_": "\\_", "$": "\\$", "{": "\\{", "}": "\\}", "~": "\\textasciitilde{}", "^": "\\^{}", "\\": "\\textbackslash{}"}


def _tikz_op(op):
    kind, *f = op.split("\t")
    if kind in "RL":
        at = 4 if kind == "R" else None
        colour, lw, dash = (f[5], f[6], f[7]) if kind == "R" else (f[5], f[4], f[6])
        style = [f"line width={lw}bp"]
        if dash != "-":
            on, off = (dash.split(",") * 2)[:2]
            style.append(f"dash pattern=on {on}bp off {off}bp")
        if at and f[4] != "-":
            style.append(f"fill={_tikz_colour(f[4])}")
        style.append("draw=none" if colour == "-" else f"draw={_tikz_colour(colour)}")
        path = f"({f[0]},-{f[1]}) rectangle ++({f[2]},-{f[3]})" if kind == "R" else f"({f[0]},-{f[1]}) -- ({f[2]},-{f[3]})"
        return f"\\path[{','.join(style)}] {path};".replace("--0.", "-0.") if kind == "R" else f"\\path[{','.join(style)}] {path};"
    if kind == "T":
        words = "".join(TEX.get(c, c) for c in f[5])
        return (
            f"\\node[anchor=base west,inner sep=0pt,outer sep=0pt,transform shape,text={_tikz_colour(f[4])}] at ({f[0]},-{f[1]}) "
            f"{{\\F{f[3]}\\fontsize{{{f[2]}bp}}{{{f[2]}bp}}\\selectfont {words}}};"
        )
    if kind == "C":
        style = (["fill=" + _tikz_colour(f[3])] if f[3] != "-" else []) + ([f"line width={f[5]}bp,draw={_tikz_colour(f[4])}"] if f[4] != "-" else [])
        return f"\\path[{','.join(style)}] ({f[0]},-{f[1]}) circle[radius={f[2]}];"
    if kind == "P":
        return f"\\fill[fill={_tikz_colour(f[0])}] " + " -- ".join(f"({x},-{y})" for x, y in zip(f[1::2], f[2::2])) + " -- cycle;"
    if kind == "B":
        boxes = zip(*[iter(f[1:])] * 4)
        return f"\\fill[fill={_tikz_colour(f[0])}] " + " ".join(f"({x},-{y}) rectangle ++({w},-{h})" for x, y, w, h in boxes) + ";"
    if kind == "I":
        return f"\\node[anchor=north west,inner sep=0pt,transform shape] at ({f[0]},-{f[1]}) {{\\includegraphics[width={f[2]}bp,height={f[3]}bp]{{{f[4]}}}}};"
    if kind == "G":
        return f"\\begin{{scope}}[shift={{({f[0]},-{f[1]})}},rotate=-{f[2]}]"
    return "\\end{scope}"


def luatex(pages, out, _node):
    head = ["\\documentclass{article}", "\\usepackage{fontspec}", "\\usepackage{tikz}", "\\parindent0pt\\hoffset-1in\\voffset-1in"]
    head.append("\\defaultfontfeatures{Renderer=Basic}")
    used = {op.split("\t")[4] for _, _, ops in pages for op in ops if op.startswith("T\t")}
    for key in sorted(used):
        folder, name = os.path.split(FONTS[key])
        head.append(f"\\newfontfamily\\F{key}{{{name}}}[Path={folder}/]")
    body = ["\\begin{document}"]
    for width, height, ops in pages:
        body.append(f"\\pagewidth={width}bp\\pageheight={height}bp\\setbox0\\vbox to{height}bp{{\\hbox to{width}bp{{%")
        body.append("\\begin{tikzpicture}[x=1bp,y=1bp,overlay]")
        body += [_tikz_op(op).replace("--", "@@").replace(",-0.0)", ",0)").replace("@@", "--") for op in ops]
        body.append("\\end{tikzpicture}\\hss}\\vss}\\shipout\\box0")
    body.append("\\end{document}")
    source = out.replace(".pdf", ".tex")
    open(source, "w").write("\n".join(head + body).replace(",--", ",+").replace("(-0,", "(0,"))
    folder = os.path.dirname(source)
    run = subprocess.run(["lualatex", "-interaction=nonstopmode", "-output-directory", folder, source], capture_output=True, text=True)
    if run.returncode != 0:
        raise SystemExit(run.stdout[-3000:])


def node_writer(name):
    def write(pages, out, node):
        source = out.replace(".pdf", ".tsv")
        open(source, "w").write(_tsv(pages))
        env = {**os.environ, "NODE_PATH": node + "/node_modules"}
        subprocess.run(["node", os.path.join(node, name), source, out], check=True, env=env)

    return write


def binary(name):
    def write(pages, out, node):
        source = out.replace(".pdf", ".tsv")
        open(source, "w").write(_tsv(pages))
        subprocess.run([os.path.join(node, name), source, out], check=True)

    return write


WRITERS = {
    "typst": typst,
    "luatex": luatex,
    "skia": node_writer("skia.cjs"),
    "pdf-lib": node_writer("pdflib.cjs"),
    "gofpdf": binary("gofpdf"),
    "pdfmake": node_writer("pdfmake.cjs"),
}
