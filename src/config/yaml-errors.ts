import type { ErrorCode, YAMLError } from 'yaml';
import type { DiagnosticCode } from '../diagnostics/codes.js';

interface Words {
  readonly code: DiagnosticCode;
  readonly message: string;
  readonly remedy: string;
}

export const INDENT: Words = {
  code: 'config/syntax',
  message: 'this line is indented in a way that does not fit the lines above it',
  remedy: 'Put keys of one map, and dashes of one list, exactly below each other; what belongs to a key goes two spaces further in.',
};
const NO_COLON: Words = {
  code: 'config/syntax',
  message: 'a line with a key needs a colon and a space: `key: value`',
  remedy: 'Write `key: value`, or put a dash before an entry of a list: `- value`.',
};
const ENDS_MISSING: Words = {
  code: 'config/syntax',
  message: 'what is opened here is not closed',
  remedy: 'Close every `"`, `\'`, `[` and `{`.',
};

/** Each kind of YAML error in words for somebody who doesn't know YAML. */
const WORDS: Readonly<Partial<Record<ErrorCode, Words>>> = {
  TAB_AS_INDENT: {
    code: 'config/tab',
    message: 'a tab indents this line; YAML allows only spaces',
    remedy: 'Replace the tab by spaces, two for each level.',
  },
  BAD_INDENT: INDENT,
  BLOCK_IN_FLOW: INDENT,
  MULTILINE_IMPLICIT_KEY: NO_COLON,
  MISSING_CHAR: ENDS_MISSING,
  BLOCK_AS_IMPLICIT_KEY: {
    code: 'config/syntax',
    message: 'there is a second `key: value` here that does not fit where it stands',
    remedy: 'Give every key a line of its own, exactly below the first key; put a text that holds `: ` into quotes.',
  },
  BAD_DQ_ESCAPE: {
    code: 'config/syntax',
    message: 'a `\\` between double quotes starts a special character, and this is none',
    remedy: "Write `/` instead of `\\` in file names, or use single quotes: 'text'.",
  },
  BAD_SCALAR_START: {
    code: 'config/needs-quotes',
    message: 'a text may not start with this character unless it is in quotes',
    remedy: "Put the text into quotes: 'text'.",
  },
  UNEXPECTED_TOKEN: {
    code: 'config/syntax',
    message: 'this does not belong here',
    remedy: 'Take it out, or put the whole text into quotes.',
  },
  MULTIPLE_DOCS: {
    code: 'config/several-documents',
    message: 'a second document starts here; a file holds one',
    remedy: 'Take the line `---` out, or put what follows into a file of its own.',
  },
  BAD_DIRECTIVE: {
    code: 'config/directive',
    message: 'lines that start with `%` are not used here',
    remedy: 'Take the line out.',
  },
  KEY_OVER_1024_CHARS: {
    code: 'config/syntax',
    message: 'a key can not be this long',
    remedy: 'Check where the colon stands.',
  },
  RESOURCE_EXHAUSTION: {
    code: 'config/too-deep',
    message: 'lists or maps are nested too deeply here',
    remedy: 'A pipeline or recipe needs no more than six levels.',
  },
};

export function yamlErrorInWords(error: YAMLError): Words {
  if (error.code === 'BAD_INDENT' && /^Flow (sequence|map)/.test(error.message)) return ENDS_MISSING;
  if (/^(?:A block sequence may not|Sequence item without - )/.test(error.message)) return INDENT;
  if (error.code === 'MISSING_CHAR' && error.message.startsWith('Implicit map keys')) return NO_COLON;
  if (error.code === 'MISSING_CHAR' && error.message.startsWith('Missing , ')) {
    return { code: 'config/syntax', message: 'two entries stand side by side with no comma', remedy: 'Put a comma between the entries.' };
  }
  return (
    WORDS[error.code] ?? {
      code: 'config/syntax',
      message: `this is no YAML that can be read (${error.message})`,
      remedy: 'Compare with a recipe that comes with the program.',
    }
  );
}
