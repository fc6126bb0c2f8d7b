// A small file that unpacks to more than any machine has.
import { beginPage, serve } from './canned.js';

serve(() => {
  beginPage(1);
  const hoard = [];
  for (;;) hoard.push(new Array(10_000).fill(hoard.length));
});
