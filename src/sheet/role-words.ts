import type { Role } from './sheet.js';

/** What people call a sheet of each role: one, and several. */
export const ROLE_WORDS: Readonly<Record<Role, readonly [one: string, many: string]>> = {
  label: ['label', 'labels'],
  'return-label': ['return label', 'return labels'],
  slip: ['packing slip', 'packing slips'],
  'customs-form': ['customs form', 'customs forms'],
  page: ['page', 'pages'],
  remainder: ['rest of a page', 'rests of pages'],
};

export const roleWord = (role: Role): string => ROLE_WORDS[role][0];
