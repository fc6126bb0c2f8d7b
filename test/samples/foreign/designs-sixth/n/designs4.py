"""Labels of lot 4. Everything on them is invented; each says that it is a sample."""
from ink import Ink, mark


def quetzal(to, ref, zone, words):
    """96 x 126 mm: framed, a band of slanting strokes under the head, code in the middle, two short cells at the foot."""
    k = Ink(96, 126)
    k.rect(0.5, 0.5, 95, 125, 1)
    k.text(5, 11, words['carrier'], 18, True).text(91, 8, words['sample'], 8, True, 'r').text(91, 12, words['not'], 6, anchor='r')
    for n in range(14):
        k.poly([(5 + n * 6, 19), (8 + n * 6, 19), (11 + n * 6, 15), (8 + n * 6, 15)])
    k.text(5, 25, words['from'], 6.5).line(5, 28, 91, 28, 0.3).text(5, 33, words['to'], 7, True).text(5, 40, '\n'.join(to), 12.5)
    k.text(91, 70, zone, 30, True, 'r').line(5, 73, 91, 73, 0.3)
    k.code('code128', ref, 14, 78, 0.375, 20)
    k.text(48, 103, ref, 10, anchor='m').line(0.5, 108, 95.5, 108, 0.5).line(48, 108, 48, 125.5, 0.5)
    return k.text(5, 119, words['pay'], 14, True).text(52, 119, '1,1 kg  1/1', 12)


def azores(to, ref, words):
    """94 x 142 mm, no frame: a postmark of rings and waves in place of postage, number twice."""
    k = Ink(94, 142)
    k.text(0, 8, words['carrier'], 19, True, face='serif').text(0, 13, words['service'], 8)
    k.disc(66, 12, 11, fill=None, line=0.4).disc(66, 12, 7.5, fill=None, line=0.3).text(66, 13.2, '04.03', 8, True, 'm')
    for n in range(4):
        k.line(78, 6 + n * 4, 94, 6 + n * 4, 0.4)
    k.text(0, 30, words['from'], 7).text(0, 42, words['to'], 8, True).text(6, 50, '\n'.join(to), 13)
    k.line(0, 80, 94, 80, 0.6).text(0, 92, words['kind'], 32, True).text(94, 88, words['sample'], 8, True, 'r').text(94, 92, words['not'], 6, anchor='r')
    k.code('code128', ref, 8, 98, 0.375, 26)
    k.text(47, 129, ref, 12, True, 'm')
    return k.line(0, 133, 94, 133, 0.6).text(0, 139, words['foot'], 7).text(94, 139, '0,9 kg', 9, anchor='r')


def merlion(to, ref, zone, words):
    """98 x 98 mm: only the address stands in a box with round corners; all else is open."""
    k = Ink(98, 98)
    mark(k, 0, 0, 10, 1)
    k.text(14, 8, words['carrier'], 18, True).text(98, 5, words['sample'], 8, True, 'r').text(98, 9, words['not'], 6, anchor='r')
    k.rect(0.3, 14, 97.4, 32, 0.5, radius=3).text(4, 19, words['to'], 7).text(4, 26, '\n'.join(to), 11, True)
    k.text(0, 62, zone, 40, True).text(0, 68, words['from'], 6.5)
    k.code('qrcode', f'{ref},{zone}', 74, 50, 0.875)
    k.code('code128', ref, 6, 74, 0.375, 16)
    return k.text(6, 95, ref, 9).text(98, 95, '1/1   0.7 kg', 9, anchor='r')


def volta(to, ref, where, words):
    """140 x 96 mm, lying: a black band at the left with the place in white, rules from it to the right edge."""
    k = Ink(140, 96)
    k.rect(0, 0, 26, 96, fill=0).text(17, 90, where, 32, True, rot=270, grey=255)
    k.text(31, 9, words['carrier'], 18, True).text(140, 6, words['sample'], 8, True, 'r').text(140, 10, words['not'], 6, anchor='r').line(26, 14, 140, 14, 0.4)
    k.text(31, 19, words['from'], 7).line(26, 22, 140, 22, 0.4).text(31, 27, words['to'], 7, True).text(31, 34, '\n'.join(to), 13).line(26, 60, 140, 60, 0.4)
    k.code('code128', ref, 36, 64, 0.375, 22)
    k.text(36, 91, ref, 9)
    k.code('datamatrix', f'{ref}/{where}', 116, 66, 1.0, more=('--square',))
    return k
