import { describe, expect, it } from 'vitest';
import { composeNotes, noteSections, notesMetaOf, privateInNotes, writeNotes } from '@/lib/handover/notes';
import { factsOf, fullRecord } from './notes-job';

const facts = factsOf(fullRecord());
const notes = (videoAddress: string | null) => composeNotes(noteSections(facts, { videoAddress }), []);

describe('the notes of a whole record', () => {
  it('as Markdown', () => {
    const made = writeNotes(notes('https://video.example/watch?v=abc'), 'markdown', notesMetaOf(facts));
    expect(made).toBe(markdown);
  });

  it('as plain text: times without addresses, tables in columns, the drawing in letters', () => {
    const made = writeNotes(notes(null), 'text', notesMetaOf(facts));
    expect(made.startsWith('A returning client’s electric guitar: a crackle, and a rewire\n====')).toBe(true);
    for (const section of [measuredText, wiringText, chaptersText]) expect(made).toContain(section);
  });

  it('holds nothing private, no price, no marker that is not public', () => {
    for (const format of ['markdown', 'text', 'html'] as const) {
      const made = writeNotes(notes('https://video.example/watch?v=abc'), format, notesMetaOf(facts));
      expect(made).not.toMatch(
        /Marla|Quillfeather|555-0142|40417283|Larkspur|Penhallow|€|45|second hook|pays late/i,
      );
      expect(made).not.toContain('What the returning client asked for');
    }
    expect(privateInNotes(notes(null), facts.record)).toEqual([]);
  });
});

const markdown = `# A returning client’s electric guitar: a crackle, and a rewire

## What came in

A returning client brought me an electric guitar. This is how to know it: sea-green top and two two-coil pickups. With it came: soft case and strap.

The returning client asked for this:

- Find and mend the crackle ([0:07](https://video.example/watch?v=abc#t=7))
- Rewire the neck pickup for (held back) ([0:10](https://video.example/watch?v=abc#t=10))
- New strings for the returning client

On top of that I offered this:

- Set-up
- String clean

## What was found

This is what I found:

- [0:16](https://video.example/watch?v=abc#t=16) Tap test: the neck pickup crackles. The returning client heard it first on the low strings.
- [0:38](https://video.example/watch?v=abc#t=38) A cracked solder joint

That brought up work that nobody had asked for:

- Loose jack nut
- Worn second fret

This is known of the instrument:

- Factory: the northern works (assumed, not checked, doubtful)

Some of what is said of it cannot all be true, so it stands here side by side:

- Year: 1978 (as I was told, likely, by “it says so on the label”) against 1984 (it follows from what I measured, certain)

## What was measured

These are the values, and how I know each of them.

| What | Value | Basis | Time | Note |
| - | - | - | - | - |
| String height, low E string, fret 12 | 6/64 in (2.38 mm) | stated | [0:05](https://video.example/watch?v=abc#t=5) | |
| Neck pickup, red – white | 4.08 kΩ ± 0.07 kΩ (k = 2) | measured | [1:01](https://video.example/watch?v=abc#t=61) | |
| Neck pickup, green – black | 3.970 kΩ | assumed | [1:06](https://video.example/watch?v=abc#t=66) | Taken over from the bridge pickup |
| Neck pickup, red – green | open | measured | [1:11](https://video.example/watch?v=abc#t=71) | |
| Neck pickup, hot – ground | 8.08 kΩ | measured | | |

Assumed means that I took it over from elsewhere and did not measure it here. Stated means that somebody told me so and I did not check it.

## How it is wired

I joined the neck pickup like this: Series ([1:31](https://video.example/watch?v=abc#t=91)).

| Role | Conductors | Where to | Basis |
| - | - | - | - |
| Hot | red (RD) | the input lug of the volume pot | measured |
| Joined | white (WH), green (GN) | a splice of its own, sleeved | assumed |
| Ground | black (BK), bare shield | the back of the volume pot | assumed |

Here it is as a drawing.

\`\`\`
                    *- RD    +---o
 slug coil, 4.08 kΩ (            |
                    *- WH     ---|--o
                                 |  |
                    *- GN    +---|--o
screw coil, 3.97 kΩ (            |  |
                    *- BK     ---|--|--o
                                 |  |  |
                    *- SHIELD ---|--|--o
                                 |  |  +-- ground: the back of the volume pot (assumed)
                                 |  +----- joined: a splice of its own, sleeved (assumed)
                                 +-------- hot: the input lug of the volume pot (measured)

( coil   + its positive end   o joint; lines without one only cross
\`\`\`

Assumed means that I took it over from elsewhere and did not measure it here. I held the total against the prediction: 8.08 kΩ measured, 8.05 kΩ predicted: 30 Ω apart, 120 Ω allowed. It passes. The same number would also fit “Series, out of phase”.

## What was done

This is what I did:

- Find and mend the crackle ([1:49](https://video.example/watch?v=abc#t=109))
- Rewire the neck pickup for (held back)
- Loose jack nut, which I found on the way

On film the work goes like this:

- [1:21](https://video.example/watch?v=abc#t=81) White to green. Soldered, then sleeved.
- [1:27](https://video.example/watch?v=abc#t=87) Red to hot, black and bare to ground

And this is what came of it:

- [1:51](https://video.example/watch?v=abc#t=111) Sound check

## What was not done

I did not do this:

- Set-up, though I had offered it: no time before Friday
- String clean, though I had offered it, and I wrote no reason down

The returning client declined this:

- New strings for the returning client: she changes them herself

This is still to be done:

- Worn second fret, which I found on the way

## Parts

I fitted this:

- Sleeve, 3 mm, from my stock ([1:25](https://video.example/watch?v=abc#t=85))
- Volume pot, 500 kΩ, supplied by the returning client. I have a doubt about it (stated): The date stamp looks wrong for the year. It rests on “The returning client bought it as old stock”.

I took this out:

- Old volume pot, which went back with the instrument

I put this back in:

- Neck pickup screws

## Tools

I took the readings with: hand-held meter. For the work I used: soldering iron.

## Before you do it yourself

If you do such work yourself, take care:

- Solder fumes, lead and a hot iron: air moving, eyes covered, hands washed, iron in its stand. Local rules for lead and fumes come first.
- Ohms only on a circuit without power: unplugged, batteries out, capacitors discharged by someone qualified. Local codes come first.
- A string under tension can break or whip: eyes covered, slacken before cutting. Local workplace rules come first.

## Chapters

- [0:00](https://video.example/watch?v=abc#t=0) A guitar with no name on it
- [0:16](https://video.example/watch?v=abc#t=16) Tap test: the neck pickup crackles
- [0:38](https://video.example/watch?v=abc#t=38) A cracked solder joint
- [0:52](https://video.example/watch?v=abc#t=52) Two coils by resistance
- [1:21](https://video.example/watch?v=abc#t=81) White to green
- [1:27](https://video.example/watch?v=abc#t=87) Red to hot, black and bare to ground
- [1:51](https://video.example/watch?v=abc#t=111) Sound check
`;

const measuredText = `What was measured
-----------------

These are the values, and how I know each of them.

What                                  Value                      Basis     Time  Note
------------------------------------  -------------------------  --------  ----  ---------------------------------
String height, low E string, fret 12  6/64 in (2.38 mm)          stated    0:05
Neck pickup, red – white              4.08 kΩ ± 0.07 kΩ (k = 2)  measured  1:01
Neck pickup, green – black            3.970 kΩ                   assumed   1:06  Taken over from the bridge pickup
Neck pickup, red – green              open                       measured  1:11
Neck pickup, hot – ground             8.08 kΩ                    measured

Assumed means that I took it over from elsewhere and did not measure it here. Stated means that somebody told me so and I did not check it.`;

const wiringText = `How it is wired
---------------

I joined the neck pickup like this: Series (1:31).

Role    Conductors               Where to                         Basis
------  -----------------------  -------------------------------  --------
Hot     red (RD)                 the input lug of the volume pot  measured
Joined  white (WH), green (GN)   a splice of its own, sleeved     assumed
Ground  black (BK), bare shield  the back of the volume pot       assumed

Here it is as a drawing.

                    *- RD    +---o
 slug coil, 4.08 kΩ (            |
                    *- WH     ---|--o
                                 |  |
                    *- GN    +---|--o
screw coil, 3.97 kΩ (            |  |
                    *- BK     ---|--|--o
                                 |  |  |
                    *- SHIELD ---|--|--o
                                 |  |  +-- ground: the back of the volume pot (assumed)
                                 |  +----- joined: a splice of its own, sleeved (assumed)
                                 +-------- hot: the input lug of the volume pot (measured)

( coil   + its positive end   o joint; lines without one only cross

Assumed means that I took it over from elsewhere and did not measure it here. I held the total against the prediction: 8.08 kΩ measured, 8.05 kΩ predicted: 30 Ω apart, 120 Ω allowed. It passes. The same number would also fit “Series, out of phase”.`;

const chaptersText = `Chapters
--------

0:00 A guitar with no name on it
0:16 Tap test: the neck pickup crackles
0:38 A cracked solder joint
0:52 Two coils by resistance
1:21 White to green
1:27 Red to hot, black and bare to ground
1:51 Sound check
`;
