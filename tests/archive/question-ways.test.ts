import { describe, expect, it } from 'vitest';
import { relatedTo } from '@/lib/archive/lexicon/trade';
import { readQuestion } from '@/lib/archive/question';
import { prepareWords } from '@/lib/archive/words';

/** What owners say, and what a repairer would write of it, by the concept's word; common practice, no source. */
const heard: readonly (readonly [string, readonly string[]])[] = [
  [
    'onepickup',
    [
      'no sound from the bridge pickup',
      'nothing in the neck position',
      'the front pickup is dead',
      'the back one has gone silent',
    ],
  ],
  ['deadcoil', ['one coil is open', 'the winding has broken', 'reads open circuit on one coil']],
  ['touchhum', ['it hums until I touch the strings', 'the buzz stops when I hold the strings']],
  ['crackle', ['it crackles when I turn the knob', 'the volume is scratchy', 'sounds like bacon frying']],
  ['loosejack', ['the lead keeps falling out', "the plug won't stay in", 'the socket spins round']],
  [
    'cutsout',
    ['keeps cutting in and out', 'I have to wiggle the lead', 'goes off and on when I move the cable'],
  ],
  ['batterydrain', ['it eats batteries', 'the battery is flat by the next day']],
  ['hollow', ['thin with both pickups on', 'sounds like a tin can in the middle position']],
  ['microphonic', ['squeals when I stand near the amp', 'I can shout into the pickup']],
  ['redplating', ['one of the valves glows bright red', 'a tube is glowing orange']],
  ['fuseblows', ['blows the fuse as soon as I switch it on', 'trips the breaker in the house']],
  ['volumefade', ['gets quieter after half an hour', 'dies when it gets warm', 'fine until it warms up']],
  ['burningsmell', ['there was smoke coming out of the back', 'smells of burning']],
  ['hotchassis', ['I get a tingle from the strings', 'it gave me a shock', 'it bites my lips on the mic']],
  ['blownspeaker', ['there is a rip in the cone', 'the speaker sounds torn', 'voice coil rubs']],
  ['reverb', ['the reverb has stopped', 'no echo from the spring']],
  ['nopower', ['no lights and no sound', "it won't switch on", 'completely dead, no lamp']],
  ['footswitch', ['have to stamp on it twice', "the pedal won't click in"]],
  ['powersocket', ['only works off a battery', 'the power lead wobbles in its socket']],
  [
    'stringheight',
    ['the strings are too far from the board', 'it hurts my fingers to press', 'the action is sky high'],
  ],
  ['relief', ['the neck is bent like a banana', 'the neck has bowed']],
  ['stuckrod', ["the rod won't turn", 'the allen socket is rounded off']],
  ['fretbuzz', ['strings rattle on the frets', 'notes choke when I bend', 'buzzes when I play hard']],
  ['frethigh', ['one fret has popped up', 'a fret is sticking up']],
  ['fretsprout', ['the fret ends cut my hand', 'sharp bits along the edge of the neck']],
  ['fretwear', ['grooves under the strings in the frets', 'the frets have dents in them']],
  ['nutbind', ['string pings when I tune', 'the string sticks in the nut']],
  ['nutlow', ['open string buzzes on the first fret', 'the slot is worn too deep']],
  ['nuthigh', ['an F chord is hard', 'chords sound sharp at the first fret']],
  ['intonation', ['out of tune up the neck', "the octave doesn't match"]],
  ['tuningdrift', ["won't stay in tune", 'I have to retune after every song']],
  ['tunerslip', ['the tuner turns but nothing happens', 'one machine head spins freely']],
  ['brokenhead', ['fell over and the head snapped off', 'crack behind the nut']],
  ['bridgelift', ['the bridge is coming off the top', 'I can slide a card under the bridge']],
  ['bellying', ['the top bulges behind the bridge']],
  ['sunken', ['the top has sunk by the soundhole']],
  ['loosebrace', ['something is loose inside', 'buzzes when I tap the top']],
  ['topcrack', ['a split in the front', 'the spruce has cracked']],
  [
    'seamopen',
    ['the edge is coming undone', 'the back has come unglued', 'gap between the top and the side'],
  ],
  ['fingerboardoff', ['the fretboard is coming away', 'gap under the fingerboard']],
  ['strapoff', ['the strap button pulled out']],
  ['stripped', ['the screw just spins', "the screw won't bite"]],
  ['soundpostdown', ['a little stick is rolling about inside', 'the post fell over']],
  ['pegslip', ["pegs won't stay put", 'the peg unwinds itself overnight', 'pegs are stuck fast']],
  ['rehair', ['the bow has lost half its hair', "the bow won't grip the string"]],
  ['wolf', ['one note growls', 'a note stutters on the cello']],
  ['bridgewarp', ['the bridge is leaning forward']],
  ['headslack', ['the skin has gone slack']],
  ['padleak', ["low notes won't come out", "it won't play below low D"]],
  ['stickypad', ['the pads stick', 'G sharp key sticks shut']],
  ['tenoncork', ['the joints are too loose', 'the cork has crumbled']],
  ['keyspring', ["the key doesn't come back up"]],
  ['bentkey', ['a key got knocked out of line']],
  ['stuckvalve', ['second valve comes up slowly', 'a piston sticks']],
  ['slidestuck', ["the tuning slide won't budge"]],
  ['mouthpiecestuck', ['mouthpiece is jammed in']],
  ['waterkey', ['it gurgles', 'the spit valve dribbles']],
  ['deadnote', ["one note won't sound when I pull", 'a note only plays one way']],
  ['ciphering', ['a note sounds all the time', "one note won't stop"]],
  ['bellows', ['the bellows leak', 'it drops open on its own weight']],
  ['keystick', ['the keys stick', "a key doesn't come up"]],
  ['damperpiano', ['notes ring on after I let go']],
  ['snare', ['the snares buzz when the bass plays', "the strainer won't hold"]],
  ['lugdrum', ['the lugs rattle', 'the rim is bent']],
  ['warranty', ['came back with the same fault', 'the trouble came back within a month']],
  ['declined', ['not worth repairing', 'they decided against it', 'I turned the job down']],
  ['spareparts', ['waiting for a part', 'the part is no longer made']],
  ['estimate', ['what did I charge', 'how much did I quote']],
  ['shipping', ['broken in the post', 'damaged in transit']],
  ['nofault', ['found nothing wrong with it', 'could not find the fault']],
  ['modified', ['someone had botched it before', 'bad repair by a previous owner']],
];

describe('what owners say', () => {
  it.each(heard)('%s', (word, ways) => {
    const missed = ways.filter((said) => {
      const words = prepareWords(said).split(' ');
      return !words.includes(word) && !words.some((each) => relatedTo(each).includes(word));
    });
    expect(missed).toEqual([]);
  });
});

/** A thing and its state, far apart in a question, and what they mean together; common practice, no source. */
const apart: readonly (readonly [string, string])[] = [
  ['rehair', 'that bow which had gone quite bald'],
  ['tunerslip', 'the peg just keeps on spinning'],
  ['loosejack', 'cable slides right out of the socket'],
  ['bellows', 'air escapes somewhere from the folds'],
  ['bridgewarp', 'bridge slowly bending towards the scroll'],
  ['volumefade', 'conks out after some twenty minutes'],
];

describe('a thing here and its state there', () => {
  const termsOf = (q: string) =>
    readQuestion(q, {
      ...{ today: '2026-03-02', hemisphere: 'north', firstDayOfWeek: 1 },
      ...{ instrumentTypes: [], clients: [], ownSynonyms: [], knows: () => true, near: () => null },
    }).terms;

  it.each(apart)('mean %s: %s', (word, q) => {
    const both = termsOf(q).filter(({ any, close }) => any.slice(0, close).includes(word));
    expect(both.length).toBeGreaterThanOrEqual(2);
  });

  it('mean nothing alone', () => {
    for (const q of ['bow', 'bald', 'folds'])
      expect(
        termsOf(q).flatMap(({ any, close }) => any.slice(0, close)),
        q,
      ).not.toContain('rehair');
  });
});
