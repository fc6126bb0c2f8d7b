import { describe, expect } from 'vitest';
import { openSource } from '../../src/batch/open-source.js';
import { foreignFiles } from '../samples/foreign/load.js';
import { outsideCheck, runTool } from './tools.js';

/** A document of each producer that sets type its own way. */
const DOCUMENTS = {
  tuning: ['t01-browser-slip-1', 't02-folded-a4-1', 't03-sender-copy-1', 't04-office-advert-1'],
  fresh: ['f01-note-above-1', 'f02-counter-sheet-2', 'f04-office-middle-2'],
  'second-sight': ['s15-there-and-back-1', 's16-none-shop', 's04-sheets-1'],
} as const;

/** Where each letter is placed by itself, guesses at blanks took words apart: of these pages up to a third of all words. */
describe('words of the text layer', () => {
  for (const half of ['tuning', 'fresh', 'second-sight'] as const) {
    for (const { file, bytes, truth } of foreignFiles(half)) {
      if (!(DOCUMENTS[half] as readonly string[]).includes(file.replace('.pdf', ''))) continue;
      outsideCheck(`${file}: the same as pdftotext takes out`, ['pdftotext'], async () => {
        const document = await openSource(bytes);
        if ('refused' in document) throw new Error(document.refused.message);
        let [all, missing] = [0, 0];
        for (const { page } of truth.pages) {
          const ours = document
            .page(page)
            .words()
            .map(({ text }) => text);
          const theirs = runTool('pdftotext', ['-raw', '-f', `${page}`, '-l', `${page}`, '-', '-'], bytes)
            .toString()
            .split(/[\s\u00a0]+/)
            .filter((word) => word !== '');
          const left = new Map<string, number>();
          for (const word of ours) left.set(word, (left.get(word) ?? 0) + 1);
          for (const word of theirs) {
            const count = left.get(word) ?? 0;
            all += 1;
            if (count > 0) left.set(word, count - 1);
            else missing += 1;
          }
        }
        document.close();
        expect(all).toBeGreaterThan(150);
        expect(missing / all).toBeLessThan(0.01);
      });
    }
  }
});
