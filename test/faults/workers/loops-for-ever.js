// A damaged page tree that points back to itself: the second page never ends, and nothing else runs in that thread.
import { beginPage, serve } from './canned.js';

serve(() => {
  beginPage(1);
  beginPage(2);
  for (;;);
});
