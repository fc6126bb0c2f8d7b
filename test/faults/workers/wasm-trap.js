// An engine compiled to WebAssembly runs into `unreachable`: a function body of that one instruction.
import { beginPage, serve } from './canned.js';

const trap = new WebAssembly.Module(
  Uint8Array.of(0, 97, 115, 109, 1, 0, 0, 0, 1, 4, 1, 96, 0, 0, 3, 2, 1, 0, 7, 5, 1, 1, 116, 0, 0, 10, 5, 1, 3, 0, 0, 11),
);

serve(() => {
  beginPage(1);
  new WebAssembly.Instance(trap).exports.t();
});
