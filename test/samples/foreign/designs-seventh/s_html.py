"""wkhtmltopdf and LibreOffice: markup with what is no label marked by the class `o`, what is no slip by the class `l`."""
import json
import os
import re
import subprocess
import tempfile

from s_build import bounds, grey, sizes, tidy
from s_ink import MM, Ink


def svg(kind, data, module=0.375, tall=14, upright=False):
    """Bars in mm."""
    k = Ink()
    w, h = k.code(kind, data, 0, 0, module, tall, upright)
    rows = "".join(f'<rect x="{x:.3f}" y="{y:.3f}" width="{a:.3f}" height="{b:.3f}"/>' for _, x, y, a, b, *_ in k.ops)
    return f'<svg xmlns="http://www.w3.org/2000/svg" width="{w:.2f}mm" height="{h:.2f}mm" viewBox="0 0 {w:.3f} {h:.3f}" shape-rendering="crispEdges">{rows}</svg>'


def wk(html, path, size):
    with tempfile.TemporaryDirectory() as folder:
        source = os.path.join(folder, "a.html")
        with open(source, "w", encoding="utf-8") as file:
            file.write(html)
        margins = ["-T", "0", "-B", "0", "-L", "0", "-R", "0"]
        command = ["wkhtmltopdf", "-q", "--page-width", f"{size[0]}mm", "--page-height", f"{size[1]}mm", *margins, source, path]
        subprocess.run(command, check=True, stderr=subprocess.DEVNULL, env={**os.environ, "QT_QPA_PLATFORM": "offscreen"})


def html_document(folder, name, head, pages, size=(210, 297)):
    """`pages`: kind, markup, label's role or none, edge, codes, turn; one page each."""
    path = os.path.join(folder, name + ".pdf")
    truths = []
    with tempfile.TemporaryDirectory() as temp:
        files = []
        for number, (kind, body, role, edge, codes) in enumerate(pages, 1):
            files.append(os.path.join(temp, f"{number}.pdf"))
            page = lambda hidden: f'<!DOCTYPE html><html><head><meta charset="utf-8"><style>body{{margin:0;zoom:1.3}}{head}{hidden}</style></head><body>{body}</body></html>'
            wk(page(""), files[-1], size)
            (w, h), *rest = sizes(files[-1])
            assert not rest, f"{name} page {number} runs over"
            truth = {"page": number, "kind": kind, "width": w, "height": h, "labels": []}
            one = os.path.join(temp, "one.pdf")
            if role:
                wk(page(".o,.o *{visibility:hidden!important}"), one, size)
                ink = bounds(grey(one, 1))
                label = {"box": tidy(0, 0, w, h) if edge == "page" else ink, "turn": 0, "edge": edge, "role": role, "codes": codes}
                if edge == "page":
                    label["ink"] = ink
                truth["labels"].append(label)
            if 'class="o slip' in body:
                wk(page("*{visibility:hidden!important}.slip,.slip *{visibility:visible!important}"), one, size)
                truth["slip"] = bounds(grey(one, 1))
            truths.append(truth)
        subprocess.run(["qpdf", "--empty", "--pages", *files, "--", path], check=True)
    with open(os.path.join(folder, name + ".json"), "w", encoding="utf-8") as file:
        json.dump({"producer": "wkhtmltopdf", "layout": re.sub(r"-\d+$", "", name), "half": "seventh-sight", "pages": truths}, file, ensure_ascii=False, indent=1)
        file.write("\n")
