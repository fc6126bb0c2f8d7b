import type { OrderState } from './order.js';
import { plainWord } from './plain-word.js';

/** Words that sales channels use for the state of an order, in several languages, in the form that `plainWord` gives. Common practice. */
const WORDS: Readonly<Record<OrderState, readonly string[]>> = {
  'to-ship': [
    'to ship|ready to ship|awaiting shipment|awaiting fulfillment|awaiting fulfilment|unshipped|not shipped|unfulfilled|open|new|paid',
    'processing|in progress|confirmed|accepted|pending shipment|partially shipped|partially fulfilled|partially refunded|partially cancelled',
    'on hold|shipping|ship|delivery|standard|express|standard shipping|express shipping|physical',
    'offen|neu|bezahlt|in bearbeitung|versandbereit|nicht versandt|zu versenden|versand|teilweise versandt|teilweise erstattet',
    'a expedier|en attente d expedition|payee|paye|en cours|en cours de traitement|en preparation|non expediee|non expedie|nouvelle',
    'por enviar|pendiente de envio|pagado|pagada|en proceso|no enviado|nuevo|abierto',
    'da spedire|in attesa di spedizione|pagato|in lavorazione|non spedito|nuovo|aperto',
    'te verzenden|betaald|in behandeling|niet verzonden|nieuw',
  ],
  cancelled: [
    'cancelled|canceled|cancellation|void|voided|rejected|declined|expired',
    'storniert|abgebrochen|annulliert|annullee|annule|annulee|cancelado|cancelada|anulado|annullato|annullata|geannuleerd|anulowane|avbruten',
  ],
  refunded: [
    'refunded|fully refunded|refund|returned|charged back|chargeback',
    'erstattet|ruckerstattet|zuruckerstattet|remboursee|rembourse|reembolsado|reembolsada|rimborsato|rimborsata|terugbetaald|zwrocone|aterbetald',
  ],
  shipped: [
    'shipped|fulfilled|dispatched|sent|in transit|delivered|completed|complete|closed|fully shipped',
    'versandt|verschickt|versendet|zugestellt|geliefert|abgeschlossen|expediee|expedie|envoyee|livree|terminee|enviado|enviada|entregado',
    'completado|spedito|spedita|consegnato|completato|verzonden|geleverd|afgerond|wyslane|skickad',
  ],
  'pick-up': [
    'pick up|pickup|local pickup|local pick up|in store pickup|collection|collect|click and collect|ready for pickup',
    'abholung|selbstabholung|zur abholung|retrait|retrait en magasin|a retirer|recogida|recogida en tienda|ritiro|ritiro in negozio|afhalen',
  ],
  digital: [
    'digital|download|digital download|digital delivery|e mail delivery|no shipping|no shipping required|gift card',
    'telechargement|numerique|descarga|scaricabile|digitaal|geen verzending|kein versand',
  ],
};

const STATES = new Map(
  Object.entries(WORDS).flatMap(([state, lists]) =>
    lists.flatMap((list) => list.split('|')).map((word) => [word, state as OrderState] as const),
  ),
);

/** The state that a word of a status column means; undefined where it isn't known. `own` counts first. */
export function stateOf(word: string, own: Readonly<Record<string, OrderState>>): OrderState | undefined {
  const plain = plainWord(word);
  return (Object.hasOwn(own, plain) ? own[plain] : undefined) ?? STATES.get(plain);
}

/** Of the states that status and fulfilment give: what speaks most against a label. */
export function mostFinal(states: readonly OrderState[]): OrderState {
  const order: readonly OrderState[] = ['cancelled', 'refunded', 'shipped', 'pick-up', 'digital'];
  return order.find((state) => states.includes(state)) ?? 'to-ship';
}

const YES = new Set(['yes', 'y', 'true', '1', 'x', 'ja', 'oui', 'si', 'sim', 'tak', 'gift', 'geschenk', 'cadeau', 'regalo', 'on', 'wahr']);
const NO = new Set(['', 'no', 'n', 'false', '0', 'nein', 'non', 'nee', 'nej', 'nao', 'nie', 'none', 'off', 'falsch']);

/** Whether a word says yes; undefined for one that says neither. An empty one says no. */
export function yesOrNo(text: string): boolean | undefined {
  const word = plainWord(text);
  return YES.has(word) ? true : NO.has(word) ? false : undefined;
}
