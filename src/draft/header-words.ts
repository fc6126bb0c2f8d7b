import type { OrderField } from '../orders/order-map.js';
import { plainWord } from '../orders/plain-word.js';

/**
 * What columns of order files are called in several languages, in the form that `plainWord` gives, the likeliest first. Common practice; not
 * taken from any channel's files.
 */
const NAMES: Readonly<Record<OrderField, string>> = {
  order:
    'order number|order no|order id|order|order nr|order ref|order reference|purchase number|name of order|' +
    'bestellnummer|bestell nr|bestellung|auftragsnummer|auftrag|numero de commande|n de commande|commande|numero de pedido|pedido|id de pedido|' +
    'numero ordine|ordine|id ordine|bestelnummer|ordrenummer|ordernummer|tilausnumero|numer zamowienia|number|id',
  state:
    'order status|status|state of order|order state|payment status|bestellstatus|zustand|statut|statut de la commande|estado|' +
    'estado del pedido|stato|stato ordine|tila',
  fulfilment:
    'fulfilment status|shipping status|shipment status|delivery status|fulfilment|fulfillment|shipping method|delivery method|' +
    'ship method|versandstatus|versandart|lieferart|mode de livraison|metodo de envio|metodo di spedizione|verzendmethode',
  'ordered-on':
    'order date|date of order|ordered on|ordered at|ordered|purchase date|created at|created|created on|placed at|placed on|paid at|date paid|date|' +
    'bestelldatum|bestellt am|datum|auftragsdatum|kaufdatum|date de commande|date de la commande|fecha|fecha de pedido|fecha del pedido|data ordine|data|besteldatum',
  'ship-by':
    'ship by|ship by date|ship before|latest ship date|dispatch by|expected ship date|due date|versand bis|versenden bis|versandfrist|' +
    'a expedier avant|expedier avant le|enviar antes de|spedire entro|verzenden voor',
  buyer:
    'recipient name|recipient|ship name|full name|name|buyer name|buyer|customer name|customer|to name|ship to name|contact name|empfanger|empfangername|kunde|kundenname|' +
    'kaufer|nom|nom complet|destinataire|client|nombre|nombre completo|destinatario|cliente|nome|naam|klant|ontvanger|namn|navn|nimi',
  address:
    'address 1|address line 1|address1|address line1|street 1|street1|street|street address|line1|line 1|address|' +
    'address 2|address line 2|address2|address line2|street 2|street2|line2|line 2|apartment|unit|address 3|address line 3|address3|' +
    'city|town|locality|state|province|region|county|state code|province code|state province|' +
    'strasse|strasse und hausnummer|hausnummer|adresse|adresszusatz|adresse 1|adresse 2|ort|stadt|bundesland|rue|complement d adresse|ville|' +
    'calle|direccion|direccion 1|direccion 2|ciudad|localidad|provincia|via|indirizzo|indirizzo 1|indirizzo 2|citta|comune|straat|huisnummer|adres|plaats|stad|woonplaats',
  postcode:
    'zip|zip code|zipcode|postal code|postcode|post code|zip postal code|postalcode|plz|postleitzahl|code postal|codigo postal|cp|cap|' +
    'codice postale|postnummer|postinumero|kod pocztowy',
  country:
    'country|country code|countrycode|country name|country region|land|landercode|landercode iso|pays|code pays|pais|codigo de pais|paese|nazione|maa|kraj',
  sku: 'sku|item sku|product sku|item number|item no|product code|article number|artikelnummer|artikel nr|art nr|reference|reference article|referencia|codice articolo|codice|artikelnr',
  description:
    'item name|item title|title|item|product name|product|product title|description|item description|article|' +
    'artikel|artikelname|artikelbezeichnung|bezeichnung|produkt|produktname|beschreibung|produit|nom du produit|designation|' +
    'producto|nombre del producto|articulo|descripcion|prodotto|articolo|descrizione|omschrijving|productnaam',
  variant:
    'variant|variation|variations|variant title|item variation|options|option|product options|color|colour|size|variante|ausfuhrung|farbe|grosse|couleur|taille|' +
    'color y talla|talla|colore|taglia|kleur|maat',
  quantity:
    'quantity|qty|item quantity|count|pieces|units|menge|anzahl|stuck|stuckzahl|quantite|qte|cantidad|unidades|' +
    'quantita|pezzi|aantal|antal|maara|ilosc',
  bin: 'bin|bin location|shelf|warehouse location|storage location|location|lagerplatz|lagerort|fach|regal|emplacement|ubicacion|scaffale|locatie',
  price: 'item price|price|unit price|preis|einzelpreis|prix|prix unitaire|precio|precio unitario|prezzo|prezzo unitario|prijs',
  gift: 'gift|is gift|is a gift|marked as gift|gift order|geschenk|cadeau|est un cadeau|regalo|es regalo|e un regalo',
  'gift-message':
    'gift message|gift note|gift text|geschenknachricht|geschenktext|grussbotschaft|message cadeau|mensaje de regalo|messaggio regalo|cadeaubericht',
  tracking:
    'tracking number|tracking no|tracking|tracking numbers|tracking id|tracking code|shipment tracking|sendungsnummer|sendungsverfolgungsnummer|trackingnummer|paketnummer|' +
    'numero de suivi|suivi|numero de seguimiento|seguimiento|numero di tracciamento|tracciamento|track and trace|trackingcode',
  parcels:
    'parcels|number of parcels|parcel count|packages|number of packages|package count|pakete|anzahl pakete|colis|nombre de colis|bultos|paquetes|colli|pacchi',
  together:
    'ship with|ships with|combined with|together with|combined orders|zusammen mit|sammelsendung|groupe avec|enviar con|spedire con',
  notes:
    'notes|note|buyer note|buyer notes|customer note|customer notes|order notes|note from buyer|message from buyer|comments|remarks|anmerkung|anmerkungen|bemerkung|notiz|' +
    'nachricht|kundennotiz|remarque|remarques|commentaire|notas|nota|comentarios|osservazioni|opmerkingen|opmerking',
};

export const NAMES_OF_FIELDS: ReadonlyMap<OrderField, readonly string[]> = new Map(
  Object.entries(NAMES).map(([field, names]) => [field as OrderField, names.split('|')]),
);

/** Words in front of or behind the name of a column that say that it is of the parcel, or of the bill. */
const OF_PARCEL =
  /\b(?:ship to|shipping|shipto|ship|delivery|deliver to|recipient|lieferung|liefer|versand|livraison|envio|entrega|spedizione|consegna|verzend|bezorg)\b/;
const OF_BILL =
  /\b(?:bill to|billing|billto|bill|invoice|payer|rechnung|rechnungs|facturation|facture|facturacion|factura|fatturazione|factuur)\b/;

/** A column's name, taken apart. `side`: whose it is when it says so. */
export interface ColumnName {
  readonly plain: string;
  /** Without the words that say whose it is. */
  readonly core: string;
  readonly side: 'parcel' | 'bill' | undefined;
}

/** `shipToName` is three words, too. */
const apart = (name: string): string => name.replaceAll(/(\p{Ll})(\p{Lu})/gu, '$1 $2');

export function columnName(name: string): ColumnName {
  const plain = plainWord(apart(name)).replaceAll(/\b(liefer|rechnungs)(?=\p{L}{3})/gu, '$1 ');
  const side = OF_BILL.test(plain) ? 'bill' : OF_PARCEL.test(plain) ? 'parcel' : undefined;
  const core = plain
    .replace(side === 'bill' ? OF_BILL : OF_PARCEL, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim();
  return { plain, core: core === '' ? plain : core, side };
}
