/** Programs for Python: pages with fonts' files as JSON on their input, the PDF's path as their argument. */
const READ = `
import json, math, sys
data = json.load(sys.stdin); to = sys.argv[1]
def hexes(text): return [int(text[i:i + 2], 16) for i in (1, 3, 5)]
`;

/** fpdf2 with embedded faces; PYTHONPATH names its folder. */
export const FPDF2 = `${READ}
from datetime import datetime, timezone
from fpdf import FPDF
pdf = FPDF(unit='pt'); pdf.set_auto_page_break(False); pdf.set_margins(0, 0, 0); pdf.set_creation_date(datetime(2020, 1, 1, tzinfo=timezone.utc))
for family, files in data['faces'].items():
    for style, file in zip(('', 'B'), files): pdf.add_font(family, style, file)
for page in data['pages']:
    pdf.add_page(format=(page['width'], page['height']))
    for s in page['shapes']:
        kind = s['kind']
        if s.get('fill'): pdf.set_fill_color(*hexes(s['fill']))
        if s.get('stroke'): pdf.set_draw_color(*hexes(s['stroke']))
        if s.get('line'): pdf.set_line_width(s['line'])
        dash = s.get('dash')
        if s.get('line'): pdf.set_dash_pattern(dash=dash[0], gap=dash[1]) if dash else pdf.set_dash_pattern()
        if kind == 'rect':
            style = ('D' if s['line'] > 0 else '') + ('F' if s.get('fill') else '')
            if style: pdf.rect(s['x'], s['y'], s['width'], s['height'], style=style, round_corners=bool(s.get('radius')), corner_radius=s.get('radius') or 0)
        elif kind == 'line': pdf.line(*s['from'], *s['to'])
        elif kind == 'poly': pdf.polygon([tuple(p) for p in s['points']], style='F')
        elif kind == 'disc': pdf.circle(s['at'][0], s['at'][1], s['radius'], style='F')
        elif kind == 'text':
            pdf.set_font(s['family'], 'B' if s['bold'] else '', s['size']); pdf.set_text_color(*hexes(s['fill']))
            wide = pdf.get_string_width(s['text']); back = {'start': 0, 'middle': wide / 2, 'end': wide}[s['anchor']]
            x, y = s['at']; turn = s['turn'] + (s.get('lean') or 0)
            if turn:
                with pdf.rotation(-turn, x, y): pdf.text(x - back, y, s['text'])
            else: pdf.text(x - back, y, s['text'])
        else:
            w, h = (s['width'], s['height']) if s['turn'] % 180 == 0 else (s['height'], s['width'])
            cx, cy = s['x'] + s['width'] / 2, s['y'] + s['height'] / 2
            with pdf.rotation(-s['turn'], cx, cy): pdf.image(s['file'], cx - w / 2, cy - h / 2, w, h)
pdf.output(to)
`;

/** Qt's own writer of PDF, by PyQt5; page sizes in whole points. */
export const QT = `${READ}
from PyQt5.QtCore import QMarginsF, QPointF, QRectF, QSizeF, Qt
from PyQt5.QtGui import QBrush, QColor, QFont, QFontDatabase, QFontMetricsF, QGuiApplication, QImage, QPageSize, QPainter, QPdfWriter, QPen, QPolygonF
app = QGuiApplication(['draw', '-platform', 'offscreen'])
names = {}
for family, files in data['faces'].items():
    for file in files: names[family] = QFontDatabase.applicationFontFamilies(QFontDatabase.addApplicationFont(file))[0]
K = 1200 / 72
out = QPdfWriter(to); out.setResolution(1200)
painter = None
for page in data['pages']:
    out.setPageSize(QPageSize(QSizeF(page['width'], page['height']), QPageSize.Point, '', QPageSize.ExactMatch)); out.setPageMargins(QMarginsF(0, 0, 0, 0))
    if painter is None: painter = QPainter(out)
    else: out.newPage()
    for s in page['shapes']:
        kind = s['kind']
        painter.save(); painter.setPen(Qt.NoPen); painter.setBrush(Qt.NoBrush)
        if s.get('fill') and kind != 'text': painter.setBrush(QBrush(QColor(s['fill'])))
        if s.get('line'):
            pen = QPen(QColor(s['stroke']), s['line'] * K, Qt.SolidLine, Qt.FlatCap, Qt.MiterJoin)
            if s.get('dash'): pen.setDashPattern([each / s['line'] for each in s['dash']])
            painter.setPen(pen)
        if kind == 'rect':
            box = QRectF(s['x'] * K, s['y'] * K, s['width'] * K, s['height'] * K); r = (s.get('radius') or 0) * K
            painter.drawRoundedRect(box, r, r) if r else painter.drawRect(box)
        elif kind == 'line': painter.drawLine(QPointF(s['from'][0] * K, s['from'][1] * K), QPointF(s['to'][0] * K, s['to'][1] * K))
        elif kind == 'poly': painter.drawPolygon(QPolygonF([QPointF(x * K, y * K) for x, y in s['points']]))
        elif kind == 'disc': painter.drawEllipse(QPointF(s['at'][0] * K, s['at'][1] * K), s['radius'] * K, s['radius'] * K)
        elif kind == 'text':
            font = QFont(names[s['family']]); font.setPointSizeF(s['size']); font.setBold(s['bold']); painter.setFont(font); painter.setPen(QColor(s['fill']))
            wide = QFontMetricsF(font, out).horizontalAdvance(s['text']); back = {'start': 0, 'middle': wide / 2, 'end': wide}[s['anchor']]
            painter.translate(s['at'][0] * K, s['at'][1] * K); painter.rotate(s['turn'] + (s.get('lean') or 0)); painter.drawText(QPointF(-back, 0), s['text'])
        else:
            w, h = (s['width'], s['height']) if s['turn'] % 180 == 0 else (s['height'], s['width'])
            painter.translate((s['x'] + s['width'] / 2) * K, (s['y'] + s['height'] / 2) * K); painter.rotate(s['turn'])
            painter.drawImage(QRectF(-w / 2 * K, -h / 2 * K, w * K, h * K), QImage(s['file']))
        painter.restore()
painter.end()
`;

/** MuPDF by its binding; its own Helvetica, Times and Courier, so Latin 1 words only. */
export const MUPDF = `${READ}
import fitz
FACES = {'sans': ('helv', 'hebo'), 'serif': ('tiro', 'tibo'), 'mono': ('cour', 'cobo')}
doc = fitz.open()
def rgb(text): return tuple(each / 255 for each in hexes(text))
for number, page in enumerate(data['pages']):
    p = doc.new_page(width=page['width'], height=page['height'])
    shape = p.new_shape(); words = False
    def flush():
        global shape
        shape.commit(); shape = p.new_shape()
    for s in page['shapes']:
        kind = s['kind']
        if (kind == 'text') != words or kind == 'picture': flush()
        words = kind == 'text'
        pen = {'color': rgb(s['stroke']) if s.get('line') else None, 'width': s.get('line') or 0, 'fill': rgb(s['fill']) if s.get('fill') and kind != 'text' else None, 'closePath': False}
        if s.get('dash'): pen['dashes'] = '[' + ' '.join(str(each) for each in s['dash']) + '] 0'
        if kind == 'rect':
            x, y, w, h, r = s['x'], s['y'], s['width'], s['height'], s.get('radius') or 0
            if pen['color'] is None and pen['fill'] is None: continue
            if r:
                k = 0.4477 * r; P = fitz.Point
                shape.draw_line(P(x + r, y), P(x + w - r, y)); shape.draw_bezier(P(x + w - r, y), P(x + w - k, y), P(x + w, y + k), P(x + w, y + r))
                shape.draw_line(P(x + w, y + r), P(x + w, y + h - r)); shape.draw_bezier(P(x + w, y + h - r), P(x + w, y + h - k), P(x + w - k, y + h), P(x + w - r, y + h))
                shape.draw_line(P(x + w - r, y + h), P(x + r, y + h)); shape.draw_bezier(P(x + r, y + h), P(x + k, y + h), P(x, y + h - k), P(x, y + h - r))
                shape.draw_line(P(x, y + h - r), P(x, y + r)); shape.draw_bezier(P(x, y + r), P(x, y + k), P(x + k, y), P(x + r, y))
            else: shape.draw_rect(fitz.Rect(x, y, x + w, y + h))
            shape.finish(**pen)
        elif kind == 'line': shape.draw_line(fitz.Point(s['from']), fitz.Point(s['to'])); shape.finish(**pen)
        elif kind == 'poly': shape.draw_polyline([fitz.Point(each) for each in s['points']]); shape.finish(**pen)
        elif kind == 'disc': shape.draw_circle(fitz.Point(s['at']), s['radius']); shape.finish(**pen)
        elif kind == 'text':
            if s.get('lean'): raise ValueError('leaning words')
            name = FACES[s['family']][1 if s['bold'] else 0]
            wide = fitz.get_text_length(s['text'], fontname=name, fontsize=s['size']); back = {'start': 0, 'middle': wide / 2, 'end': wide}[s['anchor']]
            t = math.radians(s['turn'])
            shape.insert_text(fitz.Point(s['at'][0] - back * math.cos(t), s['at'][1] - back * math.sin(t)), s['text'], fontname=name, fontsize=s['size'], color=rgb(s['fill']), rotate=(360 - s['turn']) % 360)
        else: p.insert_image(fitz.Rect(s['x'], s['y'], s['x'] + s['width'], s['y'] + s['height']), filename=s['file'], rotate=(360 - s['turn']) % 360)
    flush()
doc.save(to, garbage=3, deflate=True, no_new_id=True)
`;

/** Pillow: pages that are one picture each. */
export const PILLOW = `${READ}
import time
from PIL import Image
pictures = [Image.open(file) for file in data['files']]
pictures[0].save(to, 'PDF', resolution=data['dpi'], save_all=True, append_images=pictures[1:], creationDate=time.gmtime(1577836800), modDate=time.gmtime(1577836800))
`;
