import type { Page } from './page.js';
import type { Family, Shape } from './shapes.js';
import { fontFile } from './server-fonts.js';

export type JavaProducer = 'itext' | 'itext5' | 'pdfbox';
export const JARS: Readonly<Record<JavaProducer, string>> = {
  itext: '/usr/share/java/itext.jar',
  itext5: '/usr/share/java/itext5.jar',
  pdfbox: ['pdfbox2', 'fontbox2', 'commons-logging'].map((each) => `/usr/share/java/${each}.jar`).join(':'),
};

/** One shape a line, its fields divided by tabs: Java reads no JSON by itself. Lengths in pt, y down. */
export function drawingLines(
  pages: readonly (Pick<Page, 'width' | 'height' | 'crop'> & { shapes: readonly Shape[] })[],
  fonts: Partial<Record<Family, string>>,
): string {
  const out: string[] = [];
  const put = (...fields: (string | number)[]): number => out.push(fields.join('\t'));
  const dashes = (dash: readonly number[] | undefined): string => (dash && dash.length > 0 ? dash.join(',') : '-');
  for (const page of pages) {
    put('page', page.width, page.height, ...(page.crop ? [page.crop.x, page.crop.y, page.crop.width, page.crop.height] : []));
    for (const s of page.shapes) {
      if (s.kind === 'rect') put('rect', s.x, s.y, s.width, s.height, s.line, s.stroke, s.fill ?? '-', s.radius ?? 0, dashes(s.dash));
      else if (s.kind === 'line') put('line', ...s.from, ...s.to, s.line, s.stroke, dashes(s.dash));
      else if (s.kind === 'poly') put('poly', s.fill, s.points.map((point) => point.join(',')).join(' '));
      else if (s.kind === 'disc') put('disc', ...s.at, s.radius, s.fill);
      else if (s.kind === 'text')
        put('text', ...s.at, s.size, fontFile(fonts, s.family, s.bold), s.anchor, s.turn + (s.lean ?? 0), s.fill, s.text);
      else put('pic', s.x, s.y, s.width, s.height, s.turn, s.file);
    }
  }
  return `${out.join('\n')}\n`;
}

/** Reading the lines, the same for both. `h` is the page's height: PDF counts from the bottom. */
const READ = String.raw`
  static double h; static String[] f;
  static double d(int i) { return Double.parseDouble(f[i]); }
  static java.awt.Color c(String hex) { return java.awt.Color.decode(hex); }
  static float[] dash(String s) { if (s.equals("-")) return new float[0]; String[] p = s.split(","); float[] r = new float[p.length]; for (int i = 0; i < p.length; i++) r[i] = Float.parseFloat(p[i]); return r; }
`;
export const ITEXT = String.raw`
import com.lowagie.text.*; import com.lowagie.text.pdf.*; import java.io.*; import java.util.*;
public class Draw {
${READ}
  public static void main(String[] a) throws Exception {
    Document doc = new Document(); PdfWriter w = PdfWriter.getInstance(doc, new FileOutputStream(a[0])); PdfContentByte g = null;
    Map<String, BaseFont> fonts = new HashMap<>();
    BufferedReader in = new BufferedReader(new InputStreamReader(System.in, "UTF-8"));
    for (String l; (l = in.readLine()) != null; ) {
      f = l.split("\t", -1);
      if (f[0].equals("page")) {
        h = d(2); doc.setPageSize(new Rectangle((float) d(1), (float) d(2))); doc.setMargins(0, 0, 0, 0);
        if (g == null) doc.open(); else doc.newPage();
        w.setPageEmpty(false); g = w.getDirectContent(); continue;
      }
      g.saveState();
      if (f[0].equals("rect")) {
        if (d(5) > 0) { g.setLineWidth((float) d(5)); g.setColorStroke(c(f[6])); }
        if (!f[7].equals("-")) g.setColorFill(c(f[7]));
        float[] dash = dash(f[9]); if (dash.length > 0) g.setLineDash(dash, 0);
        if (d(8) > 0) g.roundRectangle((float) d(1), (float) (h - d(2) - d(4)), (float) d(3), (float) d(4), (float) d(8)); else g.rectangle((float) d(1), (float) (h - d(2) - d(4)), (float) d(3), (float) d(4));
        if (d(5) > 0 && !f[7].equals("-")) g.fillStroke(); else if (d(5) > 0) g.stroke(); else if (!f[7].equals("-")) g.fill(); else g.newPath();
      } else if (f[0].equals("line")) {
        g.setLineWidth((float) d(5)); g.setColorStroke(c(f[6])); float[] dash = dash(f[7]); if (dash.length > 0) g.setLineDash(dash, 0);
        g.moveTo((float) d(1), (float) (h - d(2))); g.lineTo((float) d(3), (float) (h - d(4))); g.stroke();
      } else if (f[0].equals("poly")) {
        g.setColorFill(c(f[1])); boolean first = true;
        for (String p : f[2].split(" ")) { String[] q = p.split(","); float x = Float.parseFloat(q[0]), y = (float) h - Float.parseFloat(q[1]); if (first) g.moveTo(x, y); else g.lineTo(x, y); first = false; }
        g.closePath(); g.fill();
      } else if (f[0].equals("disc")) { g.setColorFill(c(f[4])); g.circle((float) d(1), (float) (h - d(2)), (float) d(3)); g.fill(); }
      else if (f[0].equals("text")) {
        BaseFont font = fonts.get(f[4]); if (font == null) { font = BaseFont.createFont(f[4], BaseFont.IDENTITY_H, BaseFont.EMBEDDED); fonts.put(f[4], font); }
        int align = f[5].equals("start") ? Element.ALIGN_LEFT : f[5].equals("middle") ? Element.ALIGN_CENTER : Element.ALIGN_RIGHT;
        g.beginText(); g.setFontAndSize(font, (float) d(3)); g.setColorFill(c(f[7])); g.showTextAligned(align, f[8], (float) d(1), (float) (h - d(2)), (float) -d(6)); g.endText();
      } else {
        Image image = Image.getInstance(f[6]); double x = d(1), y = h - d(2) - d(4), ww = d(3), hh = d(4); int t = (int) d(5);
        if (t == 0) g.addImage(image, (float) ww, 0, 0, (float) hh, (float) x, (float) y);
        else if (t == 90) g.addImage(image, 0, (float) -hh, (float) ww, 0, (float) x, (float) (y + hh));
        else if (t == 180) g.addImage(image, (float) -ww, 0, 0, (float) -hh, (float) (x + ww), (float) (y + hh));
        else g.addImage(image, 0, (float) hh, (float) -ww, 0, (float) (x + ww), (float) y);
      }
      g.restoreState();
    }
    doc.close();
  }
}`;

/** The same for the later iText, whose colours are its own. */
export const ITEXT5 = ITEXT.replaceAll('com.lowagie.text', 'com.itextpdf.text').replace(
  /static java\.awt\.Color c.*/,
  'static BaseColor c(String hex) { int v = Integer.decode(hex); return new BaseColor(v >> 16 & 255, v >> 8 & 255, v & 255); }',
);
export const PDFBOX = String.raw`
import org.apache.pdfbox.pdmodel.*; import org.apache.pdfbox.pdmodel.common.*; import org.apache.pdfbox.pdmodel.font.*; import org.apache.pdfbox.pdmodel.graphics.image.*; import org.apache.pdfbox.util.Matrix; import java.io.*; import java.util.*;
public class Draw {
${READ}
  static PDPageContentStream g;
  static void round(double x, double y, double w, double t, double r) throws IOException {
    double k = r * 0.5523; g.moveTo((float) (x + r), (float) y); g.lineTo((float) (x + w - r), (float) y);
    g.curveTo((float) (x + w - r + k), (float) y, (float) (x + w), (float) (y + r - k), (float) (x + w), (float) (y + r)); g.lineTo((float) (x + w), (float) (y + t - r));
    g.curveTo((float) (x + w), (float) (y + t - r + k), (float) (x + w - r + k), (float) (y + t), (float) (x + w - r), (float) (y + t)); g.lineTo((float) (x + r), (float) (y + t));
    g.curveTo((float) (x + r - k), (float) (y + t), (float) x, (float) (y + t - r + k), (float) x, (float) (y + t - r)); g.lineTo((float) x, (float) (y + r));
    g.curveTo((float) x, (float) (y + r - k), (float) (x + r - k), (float) y, (float) (x + r), (float) y); g.closePath();
  }
  public static void main(String[] a) throws Exception {
    PDDocument doc = new PDDocument(); Map<String, PDFont> fonts = new HashMap<>(); Map<String, PDImageXObject> images = new HashMap<>();
    BufferedReader in = new BufferedReader(new InputStreamReader(System.in, "UTF-8"));
    for (String l; (l = in.readLine()) != null; ) {
      f = l.split("\t", -1);
      if (f[0].equals("page")) {
        if (g != null) g.close(); h = d(2); PDPage page = new PDPage(new PDRectangle((float) d(1), (float) d(2))); doc.addPage(page);
        if (f.length > 3) page.setCropBox(new PDRectangle((float) d(3), (float) (h - d(4) - d(6)), (float) d(5), (float) d(6)));
        g = new PDPageContentStream(doc, page, PDPageContentStream.AppendMode.OVERWRITE, true); continue;
      }
      g.saveGraphicsState();
      if (f[0].equals("rect")) {
        if (d(5) > 0) { g.setLineWidth((float) d(5)); g.setStrokingColor(c(f[6])); }
        if (!f[7].equals("-")) g.setNonStrokingColor(c(f[7]));
        float[] dash = dash(f[9]); if (dash.length > 0) g.setLineDashPattern(dash, 0);
        if (d(5) > 0 || !f[7].equals("-")) {
          if (d(8) > 0) round(d(1), h - d(2) - d(4), d(3), d(4), d(8)); else g.addRect((float) d(1), (float) (h - d(2) - d(4)), (float) d(3), (float) d(4));
          if (d(5) > 0 && !f[7].equals("-")) g.fillAndStroke(); else if (d(5) > 0) g.stroke(); else g.fill();
        }
      } else if (f[0].equals("line")) {
        g.setLineWidth((float) d(5)); g.setStrokingColor(c(f[6])); float[] dash = dash(f[7]); if (dash.length > 0) g.setLineDashPattern(dash, 0);
        g.moveTo((float) d(1), (float) (h - d(2))); g.lineTo((float) d(3), (float) (h - d(4))); g.stroke();
      } else if (f[0].equals("poly")) {
        g.setNonStrokingColor(c(f[1])); boolean first = true;
        for (String p : f[2].split(" ")) { String[] q = p.split(","); float x = Float.parseFloat(q[0]), y = (float) h - Float.parseFloat(q[1]); if (first) g.moveTo(x, y); else g.lineTo(x, y); first = false; }
        g.closePath(); g.fill();
      } else if (f[0].equals("disc")) { g.setNonStrokingColor(c(f[4])); round(d(1) - d(3), h - d(2) - d(3), 2 * d(3), 2 * d(3), d(3)); g.fill(); }
      else if (f[0].equals("text")) {
        PDFont font = fonts.get(f[4]); if (font == null) { font = PDType0Font.load(doc, new File(f[4])); fonts.put(f[4], font); }
        double wide = font.getStringWidth(f[8]) / 1000 * d(3), back = f[5].equals("start") ? 0 : f[5].equals("middle") ? wide / 2 : wide, t = -Math.toRadians(d(6));
        g.beginText(); g.setFont(font, (float) d(3)); g.setNonStrokingColor(c(f[7]));
        g.setTextMatrix(Matrix.getRotateInstance(t, (float) (d(1) - back * Math.cos(t)), (float) (h - d(2) - back * Math.sin(t)))); g.showText(f[8]); g.endText();
      } else {
        PDImageXObject image = images.get(f[6]); if (image == null) { image = PDImageXObject.createFromFile(f[6], doc); images.put(f[6], image); }
        double x = d(1), y = h - d(2) - d(4), ww = d(3), hh = d(4); int t = (int) d(5);
        Matrix m = t == 0 ? new Matrix((float) ww, 0, 0, (float) hh, (float) x, (float) y) : t == 90 ? new Matrix(0, (float) -hh, (float) ww, 0, (float) x, (float) (y + hh)) : t == 180 ? new Matrix((float) -ww, 0, 0, (float) -hh, (float) (x + ww), (float) (y + hh)) : new Matrix(0, (float) hh, (float) -ww, 0, (float) (x + ww), (float) y);
        g.drawImage(image, m);
      }
      g.restoreGraphicsState();
    }
    g.close(); doc.save(a[0]); doc.close();
  }
}`;
