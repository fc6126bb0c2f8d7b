import { fold } from './fold.js';

/** Words that say what the number behind them is, folded. Several languages; a number on its own says less. */
const ORDER_WORDS: ReadonlySet<string> = new Set(
  `order orders ordernr orderno ordernumber ord ref refs reference po purchase
  bestellung bestell bestellnr bestellnummer auftrag auftrags auftragsnr auftragsnummer referenz
  commande cde référence réf pedido orden referencia encomenda referência ordine rif riferimento
  bestelling bestelnummer bestelnr referentie beställning beställningsnummer ordernummer ordre ordrenr ordrenummer bestilling tilaus
  tilausnumero zamówienie zamówienia objednávka objednávky objednávka rendelés rendelésszám comandă narudžba naročilo užsakymas
  pasūtījums tellimus sipariş заказ заказа замовлення поръчка παραγγελία παραγγελίας 注文 注文番号 ご注文番号 订单 订单号 訂單 訂單編號
  주문 주문번호 طلب الطلب הזמנה คำสั่งซื้อ หมายเลขคำสั่งซื้อ ऑर्डर`
    .split(/\s+/)
    .map(fold),
);

/** What may stand between such a word and its number. */
const BETWEEN: ReadonlySet<string> = new Set(
  'no nr n num number nummer numero numéro número nro č číslo id nº n° № 番号 号 編號 رقم מספר'.split(' ').map(fold),
);

/** Whether the folded words end with one that announces an order number: `your order no`. */
export function announcesOrder(words: readonly string[]): boolean {
  let at = words.length - 1;
  for (let skipped = 0; at >= 0 && skipped < 2 && BETWEEN.has(words[at] ?? ''); skipped++) at--;
  return ORDER_WORDS.has(words[at] ?? '');
}

export const isOrderWord = (word: string): boolean => ORDER_WORDS.has(word);
export const isBetween = (word: string): boolean => BETWEEN.has(word);
