import type { AsItIs, CodeOnPage, ExplainedPage, LabelOnPage, OnPage, PrintedCode, PrintedLabel, WouldBe } from '../explain/explained.js';
import { formatSize } from '../geometry/length.js';
import { ROLL } from '../geometry/printer.js';
import { TURN_WORDS } from './explain-words.js';
import { count, painter, roleWord, type Style } from './words.js';

export interface ExplainTextOptions {
  readonly colour: boolean;
  /** The file with the page's picture as people should see it, where one was written. */
  readonly picture: string | undefined;
}

/** Characters of a line of the verdict. */
const WIDEST = 90;

type Paint = (style: Style, text: string) => string;
type Row = readonly [name: string, ...lines: string[]];

/** A page for people: what is on it, what comes of it as it is, what Slipyard would do instead. */
export function explainText(page: ExplainedPage, { colour, picture }: ExplainTextOptions): string {
  const paint = painter(colour);
  const { document, pages, size, unfit, onPage, asItIs, slipyard } = page;
  const which = pages === 1 ? document : `${document}, page ${page.page} of ${pages}`;
  const sizes = `${formatSize(size.width, size.height)}${size.name === undefined ? '' : ` (${size.name}${lying(size)})`}`;
  const sections = [
    [paint('bold', `${which}: ${sizes}`)],
    ...(unfit
      ? [
          section('On the page', paint, [
            ['not known', unfit.message],
            ['do', unfit.remedy],
          ]),
        ]
      : []),
    ...(onPage ? [section('On the page', paint, [...onPageRows(onPage), ...pictureRow(onPage, picture)])] : []),
    ...(asItIs && onPage
      ? [section(`Sent to a ${asItIs.media} printer as it is, fit to page, ${asItIs.grid}`, paint, asItIsRows(asItIs, onPage, paint))]
      : []),
    section(
      whatItWouldDo(slipyard),
      paint,
      slipyard.items.map((item) => itemRow(item, paint)),
    ),
  ];
  return `${sections.map((lines) => lines.join('\n')).join('\n\n')}\n`;
}

const lying = ({ width, height }: { readonly width: number; readonly height: number }): string => (width > height ? ', lying' : '');

/** Names in a column, and further lines of a row below the first. */
function section(title: string, paint: Paint, rows: readonly Row[]): readonly string[] {
  const widest = Math.max(...rows.map(([name]) => name.length));
  return [
    paint('bold', title),
    ...rows.flatMap(([name, ...lines]) => lines.map((line, index) => `  ${(index === 0 ? name : '').padEnd(widest)}  ${line}`)),
  ];
}

function onPageRows(onPage: OnPage): Row[] {
  const { labels, candidates, codes, unreadRows, frames, pictures, words, crooked } = onPage;
  const text = words === 0 ? 'no text layer' : `a text layer of ${count(words, 'word')}`;
  return [
    ['it is', kindWords(onPage)],
    ...labels.map((label): Row => [`[${label.mark}] ${roleWord(label.role)}`, ...labelLines(label)]),
    ...candidates.map(({ mark, box }): Row => [`[${mark}] perhaps`, `a label of ${formatSize(box.width, box.height)}`]),
    ...codes.map((code): Row => [`[${code.mark}] code`, codeWords(code, labels.length > 0)]),
    ...(codes.length === 0 ? [['codes', 'none that can be read'] as const] : []),
    ...(unreadRows > 0 ? [['bars', `${count(unreadRows, 'row')} of bars in which no code can be read`] as const] : []),
    ['also', `${count(frames, 'frame')}, ${count(pictures, 'picture')}, ${text}`],
    ...(Math.abs(crooked) >= 0.15 ? [['crooked', `by ${Math.abs(crooked).toFixed(1)}°, and printed so when sent as it is`] as const] : []),
  ];
}

function kindWords({ kind, about, labels }: OnPage): string {
  const more = about === undefined ? '' : `, ${about}`;
  switch (kind) {
    case 'label':
      return `${labels.length === 1 ? 'a page with a label' : `a page with ${labels.length} labels`}${more}`;
    case 'return-label':
      return `${labels.length === 1 ? 'a page with a return label' : `a page with ${labels.length} return labels`}${more}`;
    case 'doubtful':
      return `perhaps a page with a label: ${about ?? 'that is not sure'}`;
    case 'named':
      return `no label, by its own words: ${about ?? ''}`;
    case 'unnamed':
      return 'a page with codes, but nothing on it is like a label';
    case 'no-codes':
      return 'no label: nothing on it reads like a barcode';
    case 'blank':
      return 'blank';
  }
}

function labelLines({ box, evidence, turn }: LabelOnPage): readonly string[] {
  const turned = turn === undefined ? 'which way up is not sure' : turn === 0 ? 'as it should lie' : `to be turned ${TURN_WORDS[turn]}`;
  return [`${formatSize(box.width, box.height)}, ${turned}`, ...evidence.map((each) => `because: ${each}`)];
}

function codeWords({ symbology, tail, label, moduleMm }: CodeOnPage, hasLabels: boolean): string {
  const where = !hasLabels ? '' : label === undefined ? ', beside the label' : `, on [${label}]`;
  const bars =
    moduleMm === undefined
      ? 'its module can not be measured'
      : `bars ${((moduleMm / 25.4) * 1000).toFixed(1)} mil (${moduleMm.toFixed(3)} mm)`;
  return `${symbology}, ends in ${tail === '' ? 'signs that can not be shown' : tail}${where}; ${bars}`;
}

function pictureRow({ labels, candidates, codes }: OnPage, picture: string | undefined): Row[] {
  if (picture === undefined) return [];
  const legend = [
    ...(labels.length > 0 ? ['long dashes: label'] : []),
    ...(candidates.length > 0 ? ['short dashes: perhaps a label'] : []),
    ...(codes.length > 0 ? ['dots: code'] : []),
  ];
  return [['picture', picture, ...(legend.length > 0 ? [`${legend.join('; ')}; the numbers are those above`] : [])]];
}

function asItIsRows({ factor, pageTurned, factorUnturned, labels, codes, verdict }: AsItIs, onPage: OnPage, paint: Paint): Row[] {
  const unturned = factorUnturned === undefined ? '' : `, where the dialog does not turn it ${factorUnturned.toFixed(4)}`;
  return [
    ['factor', `${factor.toFixed(4)}${pageTurned ? `, the page turned by a quarter${unturned}` : ''}`],
    ...labels.map((label): Row => [
      `[${label.mark}] ${roleWord(onPage.labels.find(({ mark }) => mark === label.mark)?.role ?? 'label')}`,
      printedLabel(label),
    ]),
    ...codes.map((code): Row => [`[${code.mark}] code`, ...printedCode(code)]),
    ['verdict', ...wrapped(verdict.sentence).map((line) => paint(verdict.kind === 'fit' ? 'green' : 'yellow', line))],
  ];
}

/** Lines of at most `WIDEST` characters, broken between words. */
function wrapped(text: string): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const line = lines.at(-1);
    if (line !== undefined && line.length + 1 + word.length <= WIDEST) lines[lines.length - 1] = `${line} ${word}`;
    else lines.push(word);
  }
  return lines;
}

function printedLabel({ width, height, share, lies, turnNeeded }: PrintedLabel): string {
  const turn = turnNeeded === undefined || turnNeeded === 0 ? '' : `, would need a turn of ${TURN_WORDS[turnNeeded]}`;
  return `${formatSize(width, height)}, ${Math.round(share * 100)} % of the print; ${LIES[lies]}${turn}`;
}

const LIES: Readonly<Record<PrintedLabel['lies'], string>> = {
  upright: 'upright',
  'on-its-side': 'on its side',
  'upside-down': 'upside down',
  along: 'upright or upside down, as the dialog turns the page',
  'not-sure': 'which way up is not sure',
};

function printedCode({ moduleDots, moduleMil, standing, range, readBack }: PrintedCode): readonly string[] {
  const read = readBack ? 'can be read from flawless dots' : 'can not be read even from flawless dots';
  if (moduleDots === undefined || moduleMil === undefined || !range) return [`bars can not be measured; ${read}`];
  const { leastMil, mostMil, source } = range;
  const published = mostMil === undefined ? `${leastMil.toFixed(1)} mil and more` : `${leastMil.toFixed(1)} to ${mostMil.toFixed(1)} mil`;
  return [
    `bars ${moduleDots.toFixed(2)} dots, ${moduleMil.toFixed(2)} mil: ${STANDS[standing]}; ${read}`,
    `published: ${published}, ${source}`,
  ];
}

const STANDS: Readonly<Record<PrintedCode['standing'], string>> = {
  'too-fine': 'too fine',
  'under-range': 'under what is published',
  'in-range': 'within what is published',
  'over-range': 'over what is published',
  'not-measured': 'not measured',
};

const STATES: Readonly<Record<WouldBe['state'], Style>> = { ready: 'green', held: 'yellow', skipped: 'dim', failed: 'red' };

/** Of a page with a pipeline also: as what channel's, and where to. */
function whatItWouldDo({ recipe, pipeline, channel, output }: ExplainedPage['slipyard']): string {
  if (pipeline === undefined || !output) return `What Slipyard would do, recipe ${recipe}`;
  const whose = channel === undefined ? `in no channel of ${pipeline}` : `channel ${channel} of ${pipeline}`;
  const where = `${output.laidOnSheets ? 'laid on sheets for' : 'for'} ${outputWord(output.name)} (${output.media}, ${output.grid})`;
  return `What Slipyard would do, ${whose}, recipe ${recipe}, ${where}`;
}

const outputWord = (name: string): string => (name === ROLL ? 'the roll' : name);

function itemRow({ role, state, reason, output, turn, scale, moduleDots, moduleMil, codesProved }: WouldBe, paint: Paint): Row {
  const name = roleWord(role);
  if (state !== 'ready') {
    const { message = '', code = '', remedy = '' } = reason ?? {};
    return [name, `${paint(STATES[state], state)}: ${message} [${code}]`, ...(state === 'held' ? `do: ${remedy}`.split('\n') : [])];
  }
  const proved = codesProved === 0 ? 'without a code' : `${count(codesProved, 'code')} read back`;
  const bars =
    moduleDots === undefined || moduleMil === undefined
      ? codesProved === 0
        ? ''
        : ', bars can not be measured'
      : `, bars ${moduleDots.toFixed(2)} dots, ${moduleMil.toFixed(2)} mil`;
  const turned = turn === 0 ? 'not turned' : `turned ${TURN_WORDS[turn]}`;
  const elsewhere = output === undefined ? '' : `, for ${outputWord(output)}`;
  return [name, `${paint('green', 'ready')}: at ${(scale * 100).toFixed(1)} % of its size, ${turned}, ${proved}${bars}${elsewhere}`];
}
