/** A program for Python with ReportLab: pages as JSON on its input, the PDF's path as its argument. */
export const REPORTLAB = `
import json, sys
from reportlab.lib.colors import HexColor
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab import rl_config
from reportlab.pdfgen.canvas import Canvas
rl_config.useA85 = 0
ROOM = '/usr/share/fonts/truetype/'
for name, file in {'sans': 'dejavu/DejaVuSansCondensed', 'serif': 'dejavu/DejaVuSerif', 'mono': 'dejavu/DejaVuSansMono'}.items():
    pdfmetrics.registerFont(TTFont(name, ROOM + file + '.ttf'))
    pdfmetrics.registerFont(TTFont(name + '-Bold', ROOM + file + '-Bold.ttf'))
canvas = Canvas(sys.argv[1], invariant=1, pageCompression=1)
for page in json.load(sys.stdin):
    canvas.setPageSize((page['width'], page['height']))
    canvas.translate(0, page['height'])
    canvas.scale(1, -1)
    for s in page['shapes']:
        kind = s['kind']
        canvas.saveState()
        if 'fill' in s: canvas.setFillColor(HexColor(s['fill']))
        if 'stroke' in s: canvas.setStrokeColor(HexColor(s['stroke']))
        if 'line' in s: canvas.setLineWidth(s['line'])
        if s.get('dash'): canvas.setDash(s['dash'])
        if kind == 'rect':
            canvas.roundRect(s['x'], s['y'], s['width'], s['height'], s.get('radius') or 0, stroke=int(s['line'] > 0), fill=int('fill' in s))
        elif kind == 'line':
            canvas.line(*s['from'], *s['to'])
        elif kind == 'poly':
            path = canvas.beginPath()
            path.moveTo(*s['points'][0])
            for point in s['points'][1:]: path.lineTo(*point)
            path.close()
            canvas.drawPath(path, stroke=0, fill=1)
        elif kind == 'disc':
            canvas.circle(*s['at'], s['radius'], stroke=0, fill=1)
        elif kind == 'text':
            canvas.translate(*s['at'])
            canvas.rotate(s['turn'] + (s.get('lean') or 0))
            canvas.scale(1, -1)
            canvas.setFont(s['family'] + ('-Bold' if s['bold'] else ''), s['size'])
            {'start': canvas.drawString, 'middle': canvas.drawCentredString, 'end': canvas.drawRightString}[s['anchor']](0, 0, s['text'])
        else:
            canvas.translate(s['x'] + s['width'] / 2, s['y'] + s['height'] / 2)
            canvas.rotate(s['turn'])
            canvas.scale(1, -1)
            w, h = (s['width'], s['height']) if s['turn'] % 180 == 0 else (s['height'], s['width'])
            canvas.drawImage(s['file'], -w / 2, -h / 2, w, h)
        canvas.restoreState()
    canvas.showPage()
canvas.save()
`;
