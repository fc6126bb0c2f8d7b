/** Every wording of the mark that says a sample is not valid for carriage. */
export const SAMPLE_MARKS = [
  'SAMPLE - NOT VALID FOR CARRIAGE',
  'SPECIMEN ONLY - DO NOT MAIL',
  'TEST PRINT, NO POSTAGE PAID',
  'MUSTER – KEIN GÜLTIGER VERSANDSCHEIN',
  'SPÉCIMEN – SANS VALEUR POSTALE',
  'MUESTRA – NO VÁLIDA PARA ENVÍO',
  'WZÓR – NIEWAŻNY W PRZEWOZIE',
  'ΔΕΙΓΜΑ – ΔΕΝ ΙΣΧΥΕΙ ΓΙΑ ΜΕΤΑΦΟΡΑ',
  'ЗРАЗОК – НЕДІЙСНИЙ ДЛЯ ПЕРЕВЕЗЕННЯ',
  'CAMPIONE – NON VALIDO PER IL TRASPORTO',
  'VOORBEELD – NIET GELDIG VOOR VERZENDING',
  'PROVTRYCK – GÄLLER INTE SOM FRAKTSEDEL',
] as const;

export const CARRIERS = {
  tidewick: 'Tidewick Express',
  quillhaul: 'Quillhaul',
  norrvane: 'Norrvane Post',
  kestomar: 'Kestomar',
  bramblerun: 'Bramblerun Parcel',
  pellodan: 'Pellodan',
  zunderpost: 'Zunderpost',
  overmoor: 'Overmoor Mail',
  fernwhistle: 'Fernwhistle',
} as const;

export const STUDIO = 'Wobblethorn Studio';
export const CHANNELS = ['Kilnrow', 'Mugmonger', 'Inkandloam', 'Pressgarth', 'Glazewend', 'Papermarl'] as const;

/** Surnames and given names of no real person, put together by number. */
export const GIVEN = ['Odile', 'Bertil', 'Maro', 'Tindra', 'Jory', 'Peregrin', 'Sanne', 'Ilka', 'Corwin', 'Zsofi'] as const;
export const FAMILY = ['Samplewright', 'Mustermoor', 'Trialby', 'Specimensen', 'Proberton', 'Exempelius', 'Testingham'] as const;
export const TOWNS = ['Sampleton', 'Probeville', 'Trialford', 'Musterfeld', 'Exempelby', 'Specimen Falls'] as const;
export const STREETS = ['Example Street', 'Sample Lane', 'Specimen Avenue', 'Placeholder Road', 'Test Bend'] as const;

/** Every invented name: none may stand in the program or its recipes. */
export const INVENTED_NAMES: readonly string[] = [
  STUDIO,
  ...CHANNELS,
  ...FAMILY,
  ...TOWNS,
  ...STREETS,
  ...Object.values(CARRIERS).flatMap((name) => [name, name.split(' ')[0] ?? name]),
];
