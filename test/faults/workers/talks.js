// A library that prints to the results' stream.
import { finish, serve } from './canned.js';

serve(() => {
  console.log('a library says hello');
  finish();
});
