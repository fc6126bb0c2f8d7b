import { reason } from './reasons.js';

const TAKE_OUT = 'take it out of the folder or narrow the channel’s `files`, for example to *.pdf.';

/** Why a document of each of these kinds is refused: what it is, and what to do. */
export const KINDS = {
  empty: reason('intake/empty', 'the file is empty', 'Download it again from the sales channel.'),
  html: reason(
    'intake/html',
    'the file is a web page, often the sign-in page that came instead of the label',
    'Sign in to the sales channel and download the label again; to keep a page that shows a label, print it to PDF.',
  ),
  table: reason('intake/spreadsheet', 'the file is a table of values (CSV), not a label document', `If it is no label, ${TAKE_OUT}`),
  office: reason(
    'intake/office-document',
    'the file is an office document or spreadsheet, not a label document',
    `Save it as PDF if it is a label; else ${TAKE_OUT}`,
  ),
  printerLanguage: reason(
    'intake/printer-language',
    'the file is printer-language text, commands for one make of printer and not a page',
    'Choose PDF or PNG as the label format in the sales channel and download it again.',
  ),
  picture: reason('intake/picture-kind', 'the picture is of a kind that is not read', 'Save it as PNG, JPEG or PDF.'),
  archive: reason('intake/archive-kind', 'the file is an archive that is not read', 'Unpack it and put its files into the folder.'),
  text: reason(
    'intake/text',
    'the file is text, not a label document',
    `Download it again from the sales channel; if it is no label, ${TAKE_OUT}`,
  ),
  unknown: reason(
    'intake/unknown-kind',
    'the file is no PDF, picture or ZIP',
    `Download it again from the sales channel; if it is no label, ${TAKE_OUT}`,
  ),
} as const;
