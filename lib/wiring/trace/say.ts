/** "4.08 kΩ": four digits at most. */
export function sayOhms(ohms: number): string {
  const size = Math.abs(ohms);
  if (size >= 999_950) return `${digits(ohms / 1e6)} MΩ`;
  if (size >= 999.5) return `${digits(ohms / 1000)} kΩ`;
  return `${digits(ohms)} Ω`;
}

function digits(value: number): string {
  return String(Number(value.toPrecision(4)));
}

export function sayValue(ohms: number | null): string {
  return ohms === null ? 'open' : sayOhms(ohms);
}

/** "red, white and green" */
export function sayList(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}

/** "the shield", "red" */
export function sayEnd(name: string): string {
  return name === 'shield' || name === 'frame' ? `the ${name}` : name;
}

export function sayPair(a: string, b: string): string {
  return `${sayEnd(a)} to ${sayEnd(b)}`;
}

export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
