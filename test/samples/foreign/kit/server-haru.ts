/** A program for Python that calls libharu: pages with fonts' files as JSON on its input, the PDF's path as its argument. */
export const LIBHARU = `
import ctypes, json, math, sys
from ctypes import c_char_p, c_float as F, c_int, c_uint, c_void_p as P
H = ctypes.CDLL('libhpdf-2.3.0.so')
def call(name, *args, back=P):
    f = getattr(H, name); f.restype = back
    return f(*args)
ERROR = ctypes.CFUNCTYPE(None, ctypes.c_ulong, ctypes.c_ulong, P)
@ERROR
def failed(code, detail, user):
    sys.stderr.write('libharu %x %d\\n' % (code, detail))
data = json.load(sys.stdin)
pdf = P(call('HPDF_New', failed, None))
call('HPDF_SetCompressionMode', pdf, c_uint(15))
call('HPDF_UseUTFEncodings', pdf)
fonts = {}
def font(family, bold):
    file = data['faces'][family][1 if bold else 0]
    if file not in fonts:
        name = call('HPDF_LoadTTFontFromFile', pdf, c_char_p(file.encode()), c_int(1), back=c_char_p)
        fonts[file] = P(call('HPDF_GetFont', pdf, c_char_p(name), c_char_p(b'UTF-8')))
    return fonts[file]
pictures = {}
def hexes(text): return [F(int(text[i:i + 2], 16) / 255) for i in (1, 3, 5)]
for page in data['pages']:
    g = P(call('HPDF_AddPage', pdf))
    call('HPDF_Page_SetWidth', g, F(page['width'])); call('HPDF_Page_SetHeight', g, F(page['height']))
    up = page['height']
    for s in page['shapes']:
        kind = s['kind']
        call('HPDF_Page_GSave', g)
        if 'fill' in s: call('HPDF_Page_SetRGBFill', g, *hexes(s['fill']))
        if 'stroke' in s: call('HPDF_Page_SetRGBStroke', g, *hexes(s['stroke']))
        if s.get('line'): call('HPDF_Page_SetLineWidth', g, F(s['line']))
        if s.get('dash'):
            dash = [max(1, round(each)) for each in s['dash']]
            call('HPDF_Page_SetDash', g, (ctypes.c_uint16 * len(dash))(*dash), c_uint(len(dash)), c_uint(0))
        if kind == 'rect':
            x, y, w, h, r = s['x'], up - s['y'] - s['height'], s['width'], s['height'], s.get('radius') or 0
            if s['line'] > 0 or 'fill' in s:
                if r:
                    k = 0.5523 * r
                    call('HPDF_Page_MoveTo', g, F(x + r), F(y)); call('HPDF_Page_LineTo', g, F(x + w - r), F(y))
                    call('HPDF_Page_CurveTo', g, F(x + w - r + k), F(y), F(x + w), F(y + r - k), F(x + w), F(y + r)); call('HPDF_Page_LineTo', g, F(x + w), F(y + h - r))
                    call('HPDF_Page_CurveTo', g, F(x + w), F(y + h - r + k), F(x + w - r + k), F(y + h), F(x + w - r), F(y + h)); call('HPDF_Page_LineTo', g, F(x + r), F(y + h))
                    call('HPDF_Page_CurveTo', g, F(x + r - k), F(y + h), F(x), F(y + h - r + k), F(x), F(y + h - r)); call('HPDF_Page_LineTo', g, F(x), F(y + r))
                    call('HPDF_Page_CurveTo', g, F(x), F(y + r - k), F(x + r - k), F(y), F(x + r), F(y)); call('HPDF_Page_ClosePath', g)
                else: call('HPDF_Page_Rectangle', g, F(x), F(y), F(w), F(h))
                call('HPDF_Page_FillStroke' if s['line'] > 0 and 'fill' in s else 'HPDF_Page_Fill' if 'fill' in s else 'HPDF_Page_Stroke', g)
        elif kind == 'line':
            call('HPDF_Page_MoveTo', g, F(s['from'][0]), F(up - s['from'][1])); call('HPDF_Page_LineTo', g, F(s['to'][0]), F(up - s['to'][1])); call('HPDF_Page_Stroke', g)
        elif kind == 'poly':
            for k, (x, y) in enumerate(s['points']): call('HPDF_Page_LineTo' if k else 'HPDF_Page_MoveTo', g, F(x), F(up - y))
            call('HPDF_Page_ClosePath', g); call('HPDF_Page_Fill', g)
        elif kind == 'disc':
            call('HPDF_Page_Circle', g, F(s['at'][0]), F(up - s['at'][1]), F(s['radius'])); call('HPDF_Page_Fill', g)
        elif kind == 'text':
            text = c_char_p(s['text'].encode())
            call('HPDF_Page_SetFontAndSize', g, font(s['family'], s['bold']), F(s['size']))
            wide = call('HPDF_Page_TextWidth', g, text, back=F)
            back = {'start': 0, 'middle': wide / 2, 'end': wide}[s['anchor']]
            t = -math.radians(s['turn'] + (s.get('lean') or 0))
            c, i = math.cos(t), math.sin(t)
            call('HPDF_Page_BeginText', g)
            call('HPDF_Page_SetTextMatrix', g, F(c), F(i), F(-i), F(c), F(s['at'][0] - back * c), F(up - s['at'][1] - back * i))
            call('HPDF_Page_ShowText', g, text); call('HPDF_Page_EndText', g)
        else:
            file = s['file']
            if file not in pictures:
                loader = 'HPDF_LoadJpegImageFromFile' if file.endswith('jpg') else 'HPDF_LoadPngImageFromFile'
                pictures[file] = P(call(loader, pdf, c_char_p(file.encode())))
            x, y, w, h, turn = s['x'], up - s['y'] - s['height'], s['width'], s['height'], s['turn']
            m = {0: (w, 0, 0, h, x, y), 90: (0, -h, w, 0, x, y + h), 180: (-w, 0, 0, -h, x + w, y + h), 270: (0, h, -w, 0, x + w, y)}[turn]
            call('HPDF_Page_Concat', g, *[F(each) for each in m]); call('HPDF_Page_ExecuteXObject', g, pictures[file])
        call('HPDF_Page_GRestore', g)
call('HPDF_SaveToFile', pdf, c_char_p(sys.argv[1].encode()))
`;
