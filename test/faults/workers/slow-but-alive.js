// A long document: every page takes its time, but each is a sign of life.
import { beginPage, finish, serve } from './canned.js';

serve(() => {
  let page = 0;
  const timer = setInterval(() => {
    page += 1;
    beginPage(page);
    if (page < 9) return;
    clearInterval(timer);
    finish();
  }, 400);
});
