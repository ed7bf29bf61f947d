/** One address of a network card, as the operating system names it. */
export interface CardAddress {
  address: string;
  family: string;
  /** The machine talking to itself. */
  internal: boolean;
}

export interface HowAsked {
  /** Name and port by which the page was asked for (RFC 9110, Host). */
  host: string;
  protocol: 'http' | 'https';
  /** The address that the server listens on. */
  listensOn: string;
  port: number;
  cards: readonly CardAddress[];
}

export interface BenchAddress {
  /** "http://192.168.0.20:4680" */
  origin: string;
  /** Whether another device can open it: it cannot where the server listens to its own machine only. */
  otherDevices: boolean;
}

const everyAddress: ReadonlySet<string> = new Set(['0.0.0.0', '::', '[::]']);

/**
 * By which address another device finds the bench machine: the one that the page was asked with, unless that is a name
 * for "this machine"; then the one that the server listens on, or that of a network card.
 */
export function benchAddress({ host, protocol, listensOn, port, cards }: HowAsked): BenchAddress {
  const asked = { origin: `${protocol}://${host}`, otherDevices: false };
  if (!isLoopback(nameIn(host))) return { ...asked, otherDevices: true };
  if (isLoopback(listensOn)) return asked;
  const name = everyAddress.has(listensOn) ? bestCard(cards) : listensOn;
  if (name === undefined) return asked;
  return { origin: `http://${inAddress(name)}:${port}`, otherDevices: true };
}

/** Names of "this machine": RFC 6761 section 6.3, RFC 1122 section 3.2.1.3 (g), RFC 4291 section 2.5.3. */
export function isLoopback(name: string): boolean {
  const bare = name.toLowerCase().replace(/^\[|\]$/g, '');
  return (
    bare === 'localhost' ||
    bare.endsWith('.localhost') ||
    /^127(\.\d{1,3}){3}$/.test(bare) ||
    /^(::|(0{1,4}:){7})0{0,3}1$/.test(bare)
  );
}

function nameIn(host: string): string {
  return host.replace(/:\d*$/, '');
}

/** An IPv6 address stands in brackets (RFC 3986 section 3.2.2). */
function inAddress(name: string): string {
  return name.includes(':') && !name.startsWith('[') ? `[${name}]` : name;
}

/**
 * Which address a phone in the same network most likely reaches. Private ones first (RFC 1918, RFC 4193), and of these
 * 172.16/12 last, for bridges of virtual machines like to sit there (common practice, no source). Link-local ones
 * (RFC 3927, RFC 4291) do not do: an address with a zone cannot be written into a code.
 */
const preferred = [
  /^192\.168\./,
  /^10\./,
  /^172\.(1[6-9]|2\d|3[01])\./,
  /^(?!169\.254\.)\d+\./,
  /^f[cd][0-9a-f]{2}:/i,
  /^[23][0-9a-f]{3}:/i,
];

function bestCard(cards: readonly CardAddress[]): string | undefined {
  const outward = cards.filter(({ internal }) => !internal).map(({ address }) => address);
  for (const pattern of preferred) {
    const found = outward.find((address) => pattern.test(address));
    if (found !== undefined) return found;
  }
  return undefined;
}
