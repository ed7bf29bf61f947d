import { describe, expect, it } from 'vitest';
import { withoutOthers } from '@/lib/archive/pages/others';

const names = ['Marla Quillfeather', 'Ørsted, Åse', 'Jean-Luc van der Wren', 'Ott', 'Ann O’Wick', ''];
const clear = withoutOthers({ names, serials: ['QF40417283', '1234', 'ABCDEF', 'W/77-31.9'] });

describe('names and serials of others', () => {
  it.each([
    ['like Marla Quillfeather’s bass', 'like (held back)’s bass'],
    ['MARLA  quillfeather, twice: Quillfeather, Marla.', '(held back), twice: (held back).'],
    ['for ase ørsted', 'for (held back)'],
    ['as Jean-Luc van der Wren said', 'as (held back) said'],
    ['Ann O’Wick and Ann O’Wick', '(held back) and (held back)'],
    ['the one with qf-40417283 in it', 'the one with (held back) in it'],
    ['W77319 and W/77-31.9', '(held back) and (held back)'],
  ])('goes from %j', (text, expected) => expect(clear(text)).toBe(expected));

  it.each([
    'Ott alone is any word',
    'Marla the cat, and a Quillfeather pen',
    'Marla Quillfeatherstone',
    '1234 ohms, ABCDEF',
    'Ωμέγα 🎸 \u202e',
    '',
  ])('stay in %j what they are not', (text) => expect(clear(text)).toBe(text));

  it('stay where they are the own ones', () => {
    const own = ['Marla Quillfeather', 'QF40417283'];
    expect(clear('Marla Quillfeather, QF40417283, Åse Ørsted', own)).toBe(
      'Marla Quillfeather, QF40417283, (held back)',
    );
  });
});
