/** Films in which a lot is said beside the matter: other jobs, the weather, tea. By job. */
export const longTalk: Record<string, string> = {
  'refret-worn': `
    1:40 - somebody on the phone about a banjo head, call back at four
    2:20 - where was I. heat
    6:40 - first one's the worst, then they come like teeth
    10:30 - smells like the old school workshop
    13:00 - bridge is fine, tuners are fine, it's only the metal
    15:30 - last one out. twenty two little bananas
    22:00 - chalk's gone even, so the board's true
    23:40 - slot's a bit shallow at seven, saw it deeper
    29:00 - cut them all to length first, line them up on tape
    31:00 - over-bend a hair so the ends bite
    36:30 - thin glue along the side, wipe, wipe
    41:00 - nibble the ends, keep the nippers flat
    47:00 - thirty five degrees, eye says fine
    53:00 - next one on the bench after this is that hum I still haven't found
    56:00 - polish, take the tape off, always the best bit`,
  'pickup-rewind': `
    0:40 - radio off, I have to count
    1:00 - lead to lead open, start to plate open, all open
    3:00 - no crackle from these, they just go quiet one day
    7:30 - spool on, felt pad, tension by finger
    11:00 - two hundred, four hundred, it's like knitting
    16:40 - it scatters a bit, that's all right, they did in the old days
    18:00 - doorbell. ignore it
    24:00 - six and a half thousand
    26:00 - last time I did a humbucker this way my eyes were gone for a week
    30:00 - tin the ends, meter on
    34:00 - two point three henry. good number
    40:00 - twenty minutes, lid on, no bubbles left`,
  'neck-reset': `
    0:50 - the action's so high you could park under it
    2:00 - old boy's had it since he was twenty
    6:30 - water everywhere, towel
    10:00 - never hurry this or you tear the top
    14:00 - clean the pocket, tooth brush
    17:00 - angle, angle, half a degree is a lot
    22:00 - other side
    28:00 - string of thread down the middle, see whether it runs true
    32:00 - a mandolin neck's easier than this, I'd say
    39:00 - now it rocks, so one more strip at the tip
    45:00 - glue. go go go
    52:00 - next day, clamps off`,
  'amp-filter-caps': `
    5:30 - could be a ground loop, people always say ground loop, but it isn't
    6:40 - zero point four, safe to touch
    10:00 - old ones say sixty nine on them, owed us nothing
    11:30 - heat sink on the leg
    13:00 - trim the leads, no loops for hum to get in
    18:00 - bias after this, always look at the bias after`,
  'setup-low-action': `
    1:20 - frets look good, a bit of wear at the second
    3:50 - oil on the board, wipe it off again
    5:40 - it creaks a bit, normal
    7:10 - last week's bass was the same story
    10:20 - hex key, the tiny one, where
    13:10 - no buzz up to ten`,
  'bass-action-mid': `
    0:40 - thumb slaps, pops, all of it
    1:40 - old set off, sticky, ugh
    2:40 - wipe it, new set on
    3:20 - tune, stretch, tune
    5:00 - leave it a day, look again`,
  'pickguard-curl': `
    0:40 - looks like a crisp
    3:20 - hair dryer on low, card under it
    7:20 - two days in the press
    8:30 - line it up with the old shadow`,
  'french-polish': `
    1:00 - clean first, with almost nothing
    5:00 - thin, thinner than you think
    12:00 - pull a bit of oil
    20:00 - let it rest, come back tomorrow
    26:00 - spirit off the oil`,
  'classical-nut-new': `
    0:40 - knock it from the side, out it comes
    4:00 - flat on the bottom first
    8:00 - mark the outer ones, divide between
    12:00 - a hair of air over the first
    14:30 - polish, up to four thousand`,
  'uke-tuner-friction': `
    0:40 - you can watch it unwind
    1:40 - new washers, the fibre ones
    2:20 - firm but not mean`,
  'mando-tailpiece': `
    0:30 - chop, zing
    2:10 - take the cover off and it stops, so
    3:20 - a strip from an old hat`,
  'mando-action': `
    0:30 - two point two, no wonder her hand aches
    1:20 - slack first, don't wind it under load
    2:40 - both sides the same number of clicks`,
  'mando-magnetic': `
    0:40 - tiny thing, hisses
    2:00 - three point four k, not a lot of wire there
    3:10 - touch the strings and it gets worse, if anything
    5:00 - scraped, soldered, tugged`,
  'cello-wolf': `
    0:40 - wow-wow-wow, there
    2:10 - sits between F and F sharp depending on the weather
    4:40 - tight, too far, back a bit
    6:00 - softer now, a growl not a bark`,
  'viola-fingerboard': `
    1:40 - straight edge, light under, that's a ditch
    3:20 - nut off, board stays on
    10:00 - plane set so fine you can read through the shaving
    17:00 - scraper, then paper round a block`,
  'strap-button': `
    0:30 - hole's like a well
    2:10 - glue dry? nearly. coffee
    3:10 - candle wax on the screw`,
  'intonation-saddles': `
    1:20 - new strings on or you're measuring rust
    4:20 - back, tune, look. back, tune, look
    8:30 - screw's at its end, so turn the saddle round
    10:10 - good. good. good. G's always a liar`,
  'tuner-slips': `
    0:40 - give it a bend, flat
    2:20 - screw's tight, so it's in the teeth
    6:10 - ream from the front, tape on the lacquer
    8:00 - line them up by eye, then by ruler`,
  'neck-6k-single': `
    0:40 - plays, but like somebody shut a door
    2:20 - same height, same strings
    4:10 - paper clip hangs on this one and falls off that one
    6:40 - clack, careful, fingers`,
  'wiring-no-ground-assumed': `
    1:10 - pretty plate, no paper with it
    4:40 - white's hot, says the sticker. we'll see
    8:00 - don't cook the pot, three seconds
    11:10 - when the other two come I'll do it properly`,
  'bass-headless-tuner': `
    0:40 - pliers have been here before me
    2:40 - oil first, wait, heat it a bit
    5:40 - brush, rag, brush
    7:30 - proper grease, not the bike stuff`,
  dulcimer: `
    0:40 - looks like a hammock
    3:00 - light inside, one brace has walked
    8:00 - push it up with a dowel while the glue grabs
    12:00 - that's come up nicely`,
  'cigar-box': `
    0:40 - lid still smells of it
    2:40 - disc wants to be near the bridge, not under it
    4:40 - drill slow, it's plywood`,
};
