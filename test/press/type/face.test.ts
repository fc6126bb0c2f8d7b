import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import * as hb from 'harfbuzzjs';
import { describe, expect, it } from 'vitest';
import { faceFor } from '../../../src/press/type/faces.js';
import { ANY_HAN } from '../../../src/press/type/han.js';
import type { Face } from '../../../src/press/type/face.js';

const require = createRequire(import.meta.url);

/** Words with everything that a script asks of a shaper: joining, stacked marks, conjuncts, vowels before their consonant. */
const CORPUS = {
  '@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf':
    'Žluťoučký kůň Łódź fi q\u0308\u0301 Ωμέγα ά Привет Й Tiếng Việt AVATAR “Ty” 1/2 №',
  '@expo-google-fonts/noto-sans-arabic/400Regular/NotoSansArabic_400Regular.ttf':
    'السلام عليكم شكراً لطلبك دفتر ملاحظات صغير لا إله كِتَابٌ لآلئ پنجره گربه چای ٹوپی ۱۲۳ ٤٥٦ ہے میں الأول بالإضافة',
  '@expo-google-fonts/noto-sans-hebrew/400Regular/NotoSansHebrew_400Regular.ttf': 'שלום עולם תודה מחברת נייר־כוכב לחיים צָהֳרַיִם',
  '@expo-google-fonts/noto-sans-thai/400Regular/NotoSansThai_400Regular.ttf':
    'สวัสดีครับ ขอบคุณ ที่นี่ ผู้ใหญ่ น้ำ กำลัง ปู่ย่า ญี่ปุ่น ฐานะ ฎีกา ป้า ฟ้า ก๊วยเตี๋ยว ๑๒๓ เปิ้ล ป้ำ',
};

/** Where each glyph is, whatever it is drawn together with: `id x y`, x from the run's left edge. */
function placesOf(face: Face, text: string, rtl: boolean): readonly string[] {
  let pen = 0;
  return face
    .shape(text, rtl)
    .flatMap(({ parts, advance }) => {
      const places = parts.map(({ id, x, y }) => `${id} ${pen + x} ${y}`);
      pen += advance;
      return places;
    })
    .sort();
}

function harfbuzzPlaces(font: hb.Font, text: string, rtl: boolean): readonly string[] {
  const buffer = new hb.Buffer();
  buffer.addText(text);
  buffer.guessSegmentProperties();
  // Digits run to the right in every script.
  buffer.setDirection(rtl ? hb.Direction.RTL : hb.Direction.LTR);
  hb.shape(font, buffer);
  const positions = buffer.getGlyphPositions();
  let pen = 0;
  return buffer
    .getGlyphInfos()
    .map(({ codepoint }, at) => {
      const { xOffset = 0, yOffset = 0, xAdvance = 0 } = positions[at] ?? {};
      const place = `${codepoint} ${pen + xOffset} ${yOffset}`;
      pen += xAdvance;
      return place;
    })
    .sort();
}

describe('shaping', () => {
  // HarfBuzz (harfbuzzjs, by its own project) is the shaper that most programs print with.
  it.each(Object.entries(CORPUS))('puts every glyph where HarfBuzz puts it: %s', (file, text) => {
    const font = new hb.Font(new hb.Face(new hb.Blob(readFileSync(require.resolve(file))), 0));
    for (const word of text.normalize('NFC').split(' ')) {
      const face = faceFor(Array.from(word)[0] ?? '', 'regular', ANY_HAN);
      if (!face) throw new Error(`no face for ${word}`);
      const rtl = /[\u0590-\u065f\u066e-\u06ef\u06fa-\u08ff]/.test(word);
      expect(placesOf(face, word, rtl), word).toEqual(harfbuzzPlaces(font, word, rtl));
    }
  });

  it('gives the text again, in the order in which it is seen', () => {
    for (const [file, text] of Object.entries(CORPUS)) {
      const rtl = /arabic|hebrew/.test(file);
      for (const word of text.normalize('NFC').split(' ')) {
        const clusters = faceFor(Array.from(word)[0] ?? '', 'regular', ANY_HAN)?.shape(word, rtl) ?? [];
        const seen = clusters.map((each) => each.text).join('');
        expect(rtl ? Array.from(seen).reverse().join('') : seen).toBe(word);
      }
    }
  });

  it('joins Arabic letters: together they are other glyphs than alone', () => {
    const face = faceFor('ب', 'regular', ANY_HAN);
    const glyphs = (text: string) => face?.shape(text, true).flatMap(({ parts }) => parts.map(({ id }) => id)) ?? [];
    const alone = [...glyphs('ي'), ...glyphs('ب'), ...glyphs('ب')];
    expect(glyphs('ببي')).not.toEqual(alone);
  });

  it('does not depend on what was shaped before', () => {
    const face = faceFor('e', 'regular', ANY_HAN);
    const arabic = faceFor('ت', 'regular', ANY_HAN);
    const [first, word] = [face?.shape('e\u0301\u0323', false), arabic?.shape('تبت', true)];
    // Drawing é makes the library keep e as a part, without a character.
    face?.contours(face.shape('é', false)[0]?.parts[0]?.id ?? 0);
    arabic?.shape('ٮ', true);
    expect(face?.shape('e\u0301\u0323', false)).toEqual(first);
    expect(arabic?.shape('تبت', true)).toEqual(word);
  });

  it('gives a variable face in the weight asked for', () => {
    const ink = (weight: 'regular' | 'bold'): number => {
      const face = faceFor('一', weight, ['jp']);
      const ys = face?.contours(face.shape('一', false)[0]?.parts[0]?.id ?? 0).flatMap((contour) => contour.map(({ y }) => y)) ?? [];
      return Math.max(...ys) - Math.min(...ys);
    };
    expect(ink('bold')).toBeGreaterThan(1.3 * ink('regular'));
  });
});
