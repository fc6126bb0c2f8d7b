/** A program for Perl with PDF::API2: pages as JSON on its input, the PDF's path as its argument. Fonts are embedded TrueType files. */
export const PDF_API2 = String.raw`
use strict; use warnings; use utf8;
use JSON::PP; use PDF::API2; use List::Util qw(max);
my $room = '/usr/share/fonts/truetype/liberation/Liberation';
my %face = (sans => 'SansNarrow', serif => 'Serif', mono => 'Mono');
my ($to, $faces) = @ARGV;
%face = (%face, %{ decode_json($faces) });
local $/; my $pages = decode_json(<STDIN>);
my $pdf = PDF::API2->new();
my %fonts;
sub font { my ($family, $bold) = @_; return $fonts{"$family$bold"} ||= $pdf->ttfont("$room$face{$family}-" . ($bold ? 'Bold' : 'Regular') . '.ttf'); }
for my $page (@$pages) {
  my $sheet = $pdf->page(); my $height = $page->{height};
  $sheet->mediabox($page->{width}, $height);
  my ($gfx, $words);
  for my $s (@{ $page->{shapes} }) {
    my $kind = $s->{kind};
    if ($kind eq 'text') {
      # Words are drawn where they come, so that white words stand on what was filled before.
      undef $gfx; $words ||= $sheet->text();
      my $size = $s->{size}; my $font = font($s->{family}, $s->{bold} ? 1 : 0);
      $words->font($font, $size); $words->fillcolor($s->{fill});
      $words->transform(-translate => [$s->{at}[0], $height - $s->{at}[1]], -rotate => -($s->{turn} + ($s->{lean} // 0)));
      if ($s->{anchor} eq 'middle') { $words->text_center($s->{text}) } elsif ($s->{anchor} eq 'end') { $words->text_right($s->{text}) } else { $words->text($s->{text}) }
      next;
    }
    undef $words; $gfx ||= $sheet->gfx();
    $gfx->save();
    $gfx->fillcolor($s->{fill}) if defined $s->{fill};
    $gfx->strokecolor($s->{stroke}) if defined $s->{stroke};
    $gfx->linewidth($s->{line}) if $s->{line};
    $gfx->linedash(@{ $s->{dash} }) if $s->{dash} && @{ $s->{dash} };
    if ($kind eq 'rect') {
      my ($x, $y, $w, $h, $r) = ($s->{x}, $height - $s->{y} - $s->{height}, $s->{width}, $s->{height}, $s->{radius} // 0);
      if ($r > 0) {
        my $k = 0.5523 * $r;
        $gfx->move($x + $r, $y); $gfx->line($x + $w - $r, $y); $gfx->curve($x + $w - $r + $k, $y, $x + $w, $y + $r - $k, $x + $w, $y + $r);
        $gfx->line($x + $w, $y + $h - $r); $gfx->curve($x + $w, $y + $h - $r + $k, $x + $w - $r + $k, $y + $h, $x + $w - $r, $y + $h);
        $gfx->line($x + $r, $y + $h); $gfx->curve($x + $r - $k, $y + $h, $x, $y + $h - $r + $k, $x, $y + $h - $r);
        $gfx->line($x, $y + $r); $gfx->curve($x, $y + $r - $k, $x + $r - $k, $y, $x + $r, $y); $gfx->close();
      } else { $gfx->rect($x, $y, $w, $h) }
      if (defined $s->{fill} && $s->{line} > 0) { $gfx->fillstroke() } elsif (defined $s->{fill}) { $gfx->fill() } elsif ($s->{line} > 0) { $gfx->stroke() } else { $gfx->endpath() }
    } elsif ($kind eq 'line') {
      $gfx->move($s->{from}[0], $height - $s->{from}[1]); $gfx->line($s->{to}[0], $height - $s->{to}[1]); $gfx->stroke();
    } elsif ($kind eq 'poly') {
      $gfx->poly(map { ($_->[0], $height - $_->[1]) } @{ $s->{points} }); $gfx->close(); $gfx->fill();
    } elsif ($kind eq 'disc') {
      $gfx->circle($s->{at}[0], $height - $s->{at}[1], $s->{radius}); $gfx->fill();
    } else {
      my $image = $s->{file} =~ /jpg$/ ? $pdf->image_jpeg($s->{file}) : $pdf->image_png($s->{file});
      my ($w, $h) = $s->{turn} % 180 == 0 ? ($s->{width}, $s->{height}) : ($s->{height}, $s->{width});
      $gfx->transform(-translate => [$s->{x} + $s->{width} / 2, $height - $s->{y} - $s->{height} / 2], -rotate => -$s->{turn});
      $gfx->image($image, -$w / 2, -$h / 2, $w, $h);
    }
    $gfx->restore();
  }
}
$pdf->saveas($to);
`;
