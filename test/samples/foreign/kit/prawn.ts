/** A program for Ruby with Prawn: pages as JSON on its input, the PDF's path as its argument. Its own Helvetica, Times and Courier, so Latin 1 words only. */
export const PRAWN = String.raw`
require 'json'
require 'prawn'
Prawn::Fonts::AFM.hide_m17n_warning = true
FACES = { 'sans' => 'Helvetica', 'serif' => 'Times-Roman', 'mono' => 'Courier' }
pages = JSON.parse($stdin.read.force_encoding('UTF-8'))
pdf = Prawn::Document.new(skip_page_creation: true, margin: 0, compress: true, info: { Creator: 'shop' })
pages.each do |page|
  height = page['height']
  pdf.start_new_page(size: [page['width'], height], margin: 0)
  page['shapes'].each do |s|
    hex = ->(value) { value.delete('#').upcase }
    pdf.save_graphics_state do
      pdf.fill_color(hex.(s['fill'])) if s['fill']
      pdf.stroke_color(hex.(s['stroke'])) if s['stroke']
      pdf.line_width(s['line']) if s['line'] && s['line'] > 0
      pdf.dash(s['dash'].first, space: s['dash'].last) if s['dash'] && !s['dash'].empty?
      case s['kind']
      when 'rect'
        at = [s['x'], height - s['y']]
        round = s['radius'].to_f
        draw = -> { round > 0 ? pdf.rounded_rectangle(at, s['width'], s['height'], round) : pdf.rectangle(at, s['width'], s['height']) }
        if s['fill'] && s['line'] > 0 then pdf.fill_and_stroke { draw.call }
        elsif s['fill'] then pdf.fill { draw.call }
        elsif s['line'] > 0 then pdf.stroke { draw.call }
        end
      when 'line'
        pdf.stroke { pdf.line([s['from'][0], height - s['from'][1]], [s['to'][0], height - s['to'][1]]) }
      when 'poly'
        pdf.fill { pdf.polygon(*s['points'].map { |x, y| [x, height - y] }) }
      when 'disc'
        pdf.fill { pdf.circle([s['at'][0], height - s['at'][1]], s['radius']) }
      when 'text'
        pdf.font(FACES[s['family']], style: s['bold'] ? :bold : :normal)
        x, y = s['at'][0], height - s['at'][1]
        wide = pdf.width_of(s['text'], size: s['size'])
        back = { 'start' => 0, 'middle' => -wide / 2, 'end' => -wide }[s['anchor']]
        pdf.rotate(-(s['turn'] + (s['lean'] || 0)), origin: [x, y]) { pdf.draw_text(s['text'], size: s['size'], at: [x + back, y]) }
      else
        w, h = s['turn'] % 180 == 0 ? [s['width'], s['height']] : [s['height'], s['width']]
        x, y = s['x'] + s['width'] / 2.0, height - s['y'] - s['height'] / 2.0
        pdf.rotate(-s['turn'], origin: [x, y]) { pdf.image(s['file'], at: [x - w / 2, y + h / 2], width: w, height: h) }
      end
      pdf.undash
    end
  end
end
pdf.render_file(ARGV[0])
`;
