// A library that thinks it owns the process and leaves.
import { beginPage, serve } from './canned.js';

serve(() => {
  beginPage(1);
  process.exit(7);
});
