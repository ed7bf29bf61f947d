import { heldBack } from '../public-words';

const amount = String.raw`\d[\d.,’' ]*(?<![.,’' ])`;
/** "Pounds" is left out: strings are told in it. */
const money = String.raw`(?:\p{Sc}|(?:EUR|GBP|USD|CAD|AUD|NZD|CHF|SEK|NOK|DKK|PLN|CZK|JPY|euros?|dollars?|quid|bucks|pence)(?!\p{L}))`;
const price = new RegExp(
  String.raw`(?<!\p{L})(?:EUR|GBP|USD|CHF)\s?${amount}|\p{Sc}\s?${amount}|(?<![\p{L}\p{N}])${amount}\s?${money}`,
  'giu',
);

/** What something costs is between the client and the workshop. */
export function withoutPrices(text: string): string {
  return text.replace(price, heldBack);
}
