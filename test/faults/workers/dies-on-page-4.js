// A bug in an engine: an error nobody catches, in the middle of the fourth page.
import { beginPage, serve } from './canned.js';

serve(() => {
  for (let page = 1; page <= 4; page += 1) beginPage(page);
  setImmediate(() => {
    throw new RangeError('offset is out of bounds');
  });
});
