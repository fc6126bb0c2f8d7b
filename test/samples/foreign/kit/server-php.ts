/** A program for PHP with FPDF: pages as JSON on its input, the PDF's path as its argument. Its own Helvetica, Times and Courier, so Latin 1 words only. */
export const FPDF = String.raw`
require '/usr/share/php/fpdf/fpdf.php';
class Sheet extends FPDF {
  function put($text) { $this->_out($text); }
  function y($y) { return ($this->h - $y); }
  function dash($dash) { $this->_out(empty($dash) ? '[] 0 d' : '[' . implode(' ', $dash) . '] 0 d'); }
  function round($x, $y, $w, $h, $r, $style) {
    $k = 0.5523 * $r; $y = $this->y($y + $h);
    $f = fn(...$v) => implode(' ', array_map(fn($n) => sprintf('%.2F', $n), $v));
    $this->_out($f($x + $r, $y) . ' m ' . $f($x + $w - $r, $y) . ' l ' . $f($x + $w - $r + $k, $y, $x + $w, $y + $r - $k, $x + $w, $y + $r) . ' c');
    $this->_out($f($x + $w, $y + $h - $r) . ' l ' . $f($x + $w, $y + $h - $r + $k, $x + $w - $r + $k, $y + $h, $x + $w - $r, $y + $h) . ' c');
    $this->_out($f($x + $r, $y + $h) . ' l ' . $f($x + $r - $k, $y + $h, $x, $y + $h - $r + $k, $x, $y + $h - $r) . ' c');
    $this->_out($f($x, $y + $r) . ' l ' . $f($x, $y + $r - $k, $x + $r - $k, $y, $x + $r, $y) . ' c ' . ['F' => 'f', 'D' => 's', 'FD' => 'b'][$style]);
  }
  function turn($degrees, $x, $y) { $t = -deg2rad($degrees); $this->_out(sprintf('q %.5F %.5F %.5F %.5F %.2F %.2F cm', cos($t), sin($t), -sin($t), cos($t), $x, $this->y($y))); }
}
$pages = json_decode(stream_get_contents(STDIN), true); $to = $argv[1];
$faces = ['sans' => 'Helvetica', 'serif' => 'Times', 'mono' => 'Courier'];
$pdf = new Sheet('P', 'pt', 'A4'); $pdf->SetMargins(0, 0, 0); $pdf->SetAutoPageBreak(false);
$rgb = fn($hex) => array_map('hexdec', str_split(substr($hex, 1), 2));
foreach ($pages as $page) {
  $pdf->AddPage($page['width'] > $page['height'] ? 'L' : 'P', [$page['width'], $page['height']]);
  foreach ($page['shapes'] as $s) {
    if (isset($s['fill'])) $pdf->SetFillColor(...$rgb($s['fill']));
    if (isset($s['stroke'])) $pdf->SetDrawColor(...$rgb($s['stroke']));
    if (!empty($s['line'])) { $pdf->SetLineWidth($s['line']); $pdf->dash($s['dash'] ?? []); }
    switch ($s['kind']) {
      case 'rect':
        $style = (isset($s['fill']) ? 'F' : '') . ($s['line'] > 0 ? 'D' : '');
        if ($style === '') break;
        if (!empty($s['radius'])) $pdf->round($s['x'], $s['y'], $s['width'], $s['height'], $s['radius'], $style);
        else $pdf->Rect($s['x'], $s['y'], $s['width'], $s['height'], $style);
        break;
      case 'line': $pdf->Line(...$s['from'], ...$s['to']); break;
      case 'poly':
        foreach ($s['points'] as $k => [$x, $y]) $pdf->put(sprintf('%.3F %.3F %s', $x, $pdf->y($y), $k ? 'l' : 'm'));
        $pdf->put('h f'); break;
      case 'disc': $r = $s['radius']; $pdf->round($s['at'][0] - $r, $s['at'][1] - $r, 2 * $r, 2 * $r, $r, 'F'); break;
      case 'text':
        $pdf->SetFont($faces[$s['family']], $s['bold'] ? 'B' : '', $s['size']);
        $pdf->SetTextColor(...$rgb($s['fill']));
        $text = iconv('UTF-8', 'windows-1252', $s['text']);
        $wide = $pdf->GetStringWidth($text);
        $back = ['start' => 0, 'middle' => $wide / 2, 'end' => $wide][$s['anchor']];
        $turn = $s['turn'] + ($s['lean'] ?? 0);
        if ($turn == 0) { $pdf->Text($s['at'][0] - $back, $s['at'][1], $text); break; }
        $pdf->turn($turn, $s['at'][0], $s['at'][1]);
        $pdf->Text(-$back, $pdf->y(0), $text);
        $pdf->put('Q'); break;
      default:
        if ($s['turn'] === 0) { $pdf->Image($s['file'], $s['x'], $s['y'], $s['width'], $s['height']); break; }
        [$w, $h] = $s['turn'] % 180 === 0 ? [$s['width'], $s['height']] : [$s['height'], $s['width']];
        $pdf->turn($s['turn'], $s['x'] + $s['width'] / 2, $s['y'] + $s['height'] / 2);
        $pdf->Image($s['file'], -$w / 2, $pdf->y($h / 2), $w, $h);
        $pdf->put('Q');
    }
  }
}
$pdf->Output('F', $to);
`;

/** A program for PHP with Dompdf: the same input; absolutely placed boxes of HTML, so nothing turned but pictures that are turned in their pixels. */
export const DOMPDF = String.raw`
require '/usr/share/php/dompdf/autoload.php';
$pages = json_decode(stream_get_contents(STDIN), true); [$to, $sans] = [$argv[1], $argv[2]];
$faces = ['sans' => $sans, 'serif' => 'DejaVu Serif', 'mono' => 'DejaVu Sans Mono'];
$options = new Dompdf\Options(); $options->set('isRemoteEnabled', true); $options->setChroot('/');
$pdf = new Dompdf\Dompdf($options);
$html = ''; $metrics = $pdf->getFontMetrics();
foreach ($pages as $number => $page) {
  $html .= '<div class="page"' . ($number > 0 ? ' style="page-break-before: always"' : '') . '>';
  foreach ($page['shapes'] as $s) {
    $box = fn($x, $y, $w, $h, $more) => sprintf('<div style="left:%.3Fpt;top:%.3Fpt;width:%.3Fpt;height:%.3Fpt;%s"></div>', $x, $y, $w, $h, $more);
    switch ($s['kind']) {
      case 'rect':
        $l = $s['line'];
        $style = isset($s['fill']) ? "background:{$s['fill']};" : '';
        if ($l > 0) $style .= "border:{$l}pt " . (empty($s['dash']) ? 'solid' : 'dashed') . " {$s['stroke']};";
        $html .= $box($s['x'] - $l / 2, $s['y'] - $l / 2, $s['width'] - $l, $s['height'] - $l, $style); break;
      case 'line':
        [[$x1, $y1], [$x2, $y2]] = [$s['from'], $s['to']]; $l = $s['line'];
        if (!empty($s['dash'])) $html .= $y1 == $y2 ? $box(min($x1, $x2), $y1, abs($x2 - $x1), 0, "border-top:{$l}pt dashed {$s['stroke']};") : $box($x1, min($y1, $y2), 0, abs($y2 - $y1), "border-left:{$l}pt dashed {$s['stroke']};");
        else $html .= $y1 == $y2 ? $box(min($x1, $x2), $y1 - $l / 2, abs($x2 - $x1), $l, "background:{$s['stroke']};") : $box($x1 - $l / 2, min($y1, $y2), $l, abs($y2 - $y1), "background:{$s['stroke']};");
        break;
      case 'text':
        $font = $metrics->getFont($faces[$s['family']], $s['bold'] ? 'bold' : 'normal');
        $wide = $metrics->getTextWidth($s['text'], $font, $s['size']);
        $x = $s['at'][0] - ['start' => 0, 'middle' => $wide / 2, 'end' => $wide][$s['anchor']];
        if ($s['turn'] !== 0) throw new Exception('turned words');
        $html .= sprintf('<div style="left:%.3Fpt;top:%.3Fpt;width:%.3Fpt;white-space:nowrap;font:%s %.3Fpt %s;line-height:1;color:%s">%s</div>', $x, $s['at'][1] - 0.9 * $s['size'], $wide + 20, $s['bold'] ? 'bold' : 'normal', $s['size'], $faces[$s['family']], $s['fill'], htmlspecialchars($s['text'])); break;
      case 'picture':
        $html .= sprintf('<img src="%s" style="left:%.3Fpt;top:%.3Fpt;width:%.3Fpt;height:%.3Fpt">', $s['file'], $s['x'], $s['y'], $s['width'], $s['height']); break;
      default: throw new Exception($s['kind']);
    }
  }
  $html .= '</div>';
}
$pdf->loadHtml('<html><head><meta charset="utf-8"><style>@page{margin:0}body{margin:0}.page div,.page img{position:absolute}</style></head><body>' . $html . '</body></html>', 'UTF-8');
$pdf->setPaper([0, 0, $pages[0]['width'], $pages[0]['height']]);
$pdf->render(); file_put_contents($to, $pdf->output());
`;
