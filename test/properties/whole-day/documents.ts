import type { EndedDocument } from '../../../src/batch/work-through.js';
import type { ItemResult, LabelText } from '../../../src/recipe/outcome.js';
import { item } from '../../batch/fakes.js';
import type { Day } from '../../orders/day/day.js';
import type { DayLabel } from '../../orders/day/maker.js';
import { Random } from '../../orders/day/random.js';

/** This channel's documents bring slips of their own; those of the channels before it are made from orders. */
export const OWN_SLIPS = 3;

/** A day's labels in documents, as workers give them when they are done. */
export interface DayDocuments {
  readonly documents: readonly EndedDocument[];
  /** The label that an item is, by `idOfItem`. */
  readonly labelOf: ReadonlyMap<string, DayLabel>;
  /** Labels that are held or failed before any order is asked. */
  readonly broken: ReadonlyMap<string, 'held' | 'failed'>;
}

const REASON = { message: 'a code can not be read back', remedy: 'Download it again.' } as const;

/**
 * Puts labels into documents: those whose file's name says something alone, others several together, a return label beside its outbound label. With
 * pages that are skipped, slips and customs forms of their own, and some labels that are held or failed.
 * @param breakable labels that may be held or failed by themselves
 */
export function documentsOf(day: Day, seed: number, breakable: ReadonlySet<string>): DayDocuments {
  const random = new Random(seed);
  const groups = new Map<string, DayLabel[]>();
  for (const label of day.labels.filter(({ outbound }) => outbound === undefined)) {
    const isPlain = /^(?:label|parcel|download) \(\d+\)\.pdf$/.test(label.fileName);
    const key = isPlain ? `${label.channel} all ${random.below(3)}` : `${label.channel} ${label.id}`;
    groups.set(key, [...(groups.get(key) ?? []), label]);
  }
  const made = new DocumentMaker(random, breakable);
  const inOrder = [...groups].sort(([a], [b]) => (a < b ? -1 : 1));
  for (const [, labels] of inOrder) made.add(labels.map((label) => [label, ...day.labels.filter(({ outbound }) => outbound === label.id)]));
  return made;
}

class DocumentMaker implements DayDocuments {
  readonly documents: EndedDocument[] = [];
  readonly labelOf = new Map<string, DayLabel>();
  readonly broken = new Map<string, 'held' | 'failed'>();

  constructor(
    private readonly random: Random,
    private readonly breakable: ReadonlySet<string>,
  ) {}

  /** @param parcels each with its labels, the outbound one first */
  add(parcels: readonly (readonly DayLabel[])[]): void {
    const [first] = parcels.flat();
    if (!first) return;
    const items: ItemResult[] = [];
    const texts: LabelText[] = [];
    const page = (parcel: number | undefined, changes: Partial<ItemResult>): string => {
      const id = `p${items.length + 1}`;
      items.push(item(id, { page: items.length + 1, parcel, pressedPage: items.length + 1, ...changes }));
      return id;
    };
    for (const [at, labels] of parcels.entries()) {
      for (const label of labels) {
        const breaks = this.breakable.has(label.id) && this.random.chance(0.15) ? this.random.pick(['held', 'failed'] as const) : undefined;
        const state = breaks ? { kind: breaks, code: 'verify/code-lost' as const, ...REASON } : { kind: 'ready' as const };
        const id = page(at + 1, { role: label.isReturn ? 'return-label' : 'label', state });
        if (breaks) this.broken.set(label.id, breaks);
        // Nothing is known of what a failed page says.
        if (breaks !== 'failed') texts.push({ itemId: id, codes: label.codes, lines: label.lines });
        this.labelOf.set(`${this.documents.length} ${id}`, label);
      }
      if (first.channel === OWN_SLIPS && !labels.every(({ isReturn }) => isReturn)) page(at + 1, { role: 'slip' });
      if (this.random.chance(0.1) && !labels.every(({ isReturn }) => isReturn)) page(at + 1, { role: 'customs-form' });
      if (this.random.chance(0.1)) page(undefined, { role: 'page', state: { kind: 'skipped', code: 'split-pages/skipped', ...REASON } });
    }
    const name = `inbox/${first.channel}/${this.documents.length}/${first.fileName}`;
    this.documents.push({
      work: { channel: first.channel, path: name, entry: undefined, shownName: name, sha256: '', size: 1 },
      ...{ state: 'read', pageCount: items.length, items, diagnostics: [], texts, times: {} },
      ...{ pressed: new Uint8Array(1), pressedElsewhere: new Map(), pictures: new Map() },
      counts: { documentsOpened: 1, sourceRasters: 0, outputRasters: 0, decodes: 0 },
    });
  }
}
