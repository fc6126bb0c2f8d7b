/** A program for PHP with TCPDF: pages as JSON on its input, the PDF's path and the sans face as its arguments. */
export const TCPDF = String.raw`
require '/usr/share/php/tcpdf/autoload.php';
$pages = json_decode(stream_get_contents(STDIN), true);
[$to, $sans] = [$argv[1], $argv[2]];
$faces = ['sans' => $sans, 'serif' => 'times', 'mono' => 'courier'];
$pdf = new TCPDF('P', 'pt', 'A4', true, 'UTF-8');
$pdf->setPrintHeader(false); $pdf->setPrintFooter(false); $pdf->SetMargins(0, 0, 0, true); $pdf->SetAutoPageBreak(false); $pdf->SetCellPadding(0);
$pdf->setFontSubsetting(true);
$rgb = fn($hex) => array_map('hexdec', str_split(substr($hex, 1), 2));
foreach ($pages as $page) {
  $pdf->AddPage($page['width'] > $page['height'] ? 'L' : 'P', [$page['width'], $page['height']]);
  foreach ($page['shapes'] as $s) {
    $line = ['width' => $s['line'] ?? 0, 'dash' => empty($s['dash']) ? 0 : implode(',', $s['dash']), 'color' => $rgb($s['stroke'] ?? '#000000'), 'cap' => 'butt', 'join' => 'miter'];
    $fill = isset($s['fill']) ? $rgb($s['fill']) : [];
    switch ($s['kind']) {
      case 'rect':
        $style = ($fill ? 'F' : '') . ($s['line'] > 0 ? 'D' : '');
        if ($style === '') break;
        if ($s['line'] > 0) $pdf->SetLineStyle($line);
        if (!empty($s['radius'])) $pdf->RoundedRect($s['x'], $s['y'], $s['width'], $s['height'], $s['radius'], '1111', $style, [], $fill);
        else $pdf->Rect($s['x'], $s['y'], $s['width'], $s['height'], $style, [], $fill);
        break;
      case 'line': $pdf->Line($s['from'][0], $s['from'][1], $s['to'][0], $s['to'][1], $line); break;
      case 'poly': $pdf->Polygon(array_merge(...$s['points']), 'F', [], $fill); break;
      case 'disc': $pdf->Circle($s['at'][0], $s['at'][1], $s['radius'], 0, 360, 'F', [], $fill); break;
      case 'text':
        $pdf->SetFont($faces[$s['family']], $s['bold'] ? 'B' : '', $s['size']);
        $pdf->SetTextColorArray($fill);
        $wide = $pdf->GetStringWidth($s['text']);
        $x = $s['at'][0] - ['start' => 0, 'middle' => $wide / 2, 'end' => $wide][$s['anchor']];
        $pdf->StartTransform();
        $pdf->Rotate(-($s['turn'] + ($s['lean'] ?? 0)), $s['at'][0], $s['at'][1]);
        $pdf->Text($x, $s['at'][1], $s['text'], 0, false, true, 0, 0, '', false, '', 0, false, 'L');
        $pdf->StopTransform();
        break;
      default:
        [$w, $h] = $s['turn'] % 180 === 0 ? [$s['width'], $s['height']] : [$s['height'], $s['width']];
        [$x, $y] = [$s['x'] + $s['width'] / 2, $s['y'] + $s['height'] / 2];
        $pdf->StartTransform();
        $pdf->Rotate(-$s['turn'], $x, $y);
        $pdf->Image($s['file'], $x - $w / 2, $y - $h / 2, $w, $h);
        $pdf->StopTransform();
    }
  }
}
$pdf->Output($to, 'F');
`;
