import type { SlipContent, SlipItem, SlipLook } from '../../../src/sheet/slip-content.js';

export const media = { name: '4x6in', width: 288, height: 432 };

export const look: SlipLook = { prices: false, gift: false, code: 'code128', readable: 6, margin: 12 };

export const item = (quantity: number, description: string, variant = '', sku = '', price = ''): SlipItem => ({
  quantity,
  description,
  variant,
  sku,
  price,
});

/** An order of the invented studio. */
export const order: SlipContent = {
  studio: 'Quietfold Paper Studio',
  contact: ['12 Example Street, Fenwick', '555-0134', 'hello@quietfold.example'],
  orderNumber: 'LK-20417-731',
  date: '12 March 2025',
  shipTo: ['Marguerite Okonkwo-Lindqvist', '48 Sample Lane, Apt 3', 'Otterbridge 00000'],
  items: [
    item(1, 'Hand-bound notebook, linen cover, 96 dotted pages', 'Sea green / A5', 'NB-A5-SG', '18.00'),
    item(3, 'Paper star garland', 'Ivory, 2 m', 'ST-IV-2', '9.50'),
    item(12, 'Gift tag', 'Kraft', 'TG-KR', '0.60'),
  ],
  parcel: { number: 1, of: 2 },
  giftMessage: 'Happy birthday, dear Maren!\n\nWith love, Tomas',
  notes: 'Please leave with the neighbour.',
  together: ['LK-20417-733'],
};

/** Nothing to say at all. */
export const empty: SlipContent = {
  studio: '',
  contact: [],
  orderNumber: '',
  date: '',
  shipTo: [],
  items: [],
  parcel: { number: 1, of: 1 },
  giftMessage: '',
  notes: '',
  together: [],
};

/** One sentence of each script that slips are printed in. */
export const SCRIPTS: Readonly<Record<string, string>> = {
  Latin: 'Žluťoučký zápisník, Łódź',
  Greek: 'Χειροποίητο τετράδιο',
  Cyrillic: 'Тетрадь ручной работы',
  Japanese: '手作りノート、リネンの表紙',
  'Simplified Chinese': '手工装订笔记本',
  'Traditional Chinese': '手工裝訂筆記本',
  Korean: '손으로 묶은 공책',
  Arabic: 'دفتر ملاحظات صغير',
  Hebrew: 'מחברת קטנה בכריכת בד',
  Thai: 'สมุดบันทึกเล่มเล็กที่ทำด้วยมือ',
  Devanagari: 'छोटी नोटबुक राष्ट्रीय विद्यार्थी',
};
