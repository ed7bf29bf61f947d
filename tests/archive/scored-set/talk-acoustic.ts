/** What else is said in the films of the acoustic, small and bowed instruments, by job. */
export const acousticTalk: Record<string, string> = {
  'bridge-lift-24': `
    0:50 - strings off today or it takes the top with it
    2:10 - blanket under the lamp, hundred degrees, no hotter
    6:00 - there she goes. half the footprint's bare, good
    13:00 - scrape, don't sand, sanding rounds it
    19:00 - wipe the squeeze-out with hot water`,
  'bridge-lift-26': `
    0:40 - cars. always cars
    2:30 - hardly any heat needed, it wanted to come
    7:00 - look at the shine under there
    12:00 - scalpel along the outline, a hair inside
    18:00 - full wood to wood now`,
  'top-crack-winter': `
    1:00 - the wood's shrunk, it isn't broken, it's thirsty
    2:00 - damp sponge in a soap box, day four
    5:00 - look, you can't get a hair in it any more
    7:30 - now quick before it opens again
    11:00 - one cleat, two, three, thin as a coin`,
  'saddle-buzz': `
    0:40 - twang
    1:20 - capo on one. gone. so it isn't frets, it's the nut
    3:00 - could make a new one, but it's five strings fine and one not
    6:00 - dust, glue, wait, file`,
  'piezo-uneven': `
    0:50 - one two three four, loud. five, six... hello?
    3:40 - put it on the flat stone and hold it to the window
    6:30 - forty strokes, check, forty strokes
    8:10 - don't cut the slack off the element, you'll want it`,
  'neck-reset': `
    1:30 - I put a ruler along the frets, hits the bridge halfway up. should clear it
    3:00 - fifteenth fret out, two little holes into the pocket
    5:20 - steam's hot, glove on
    8:00 - and off. look at that old glue, like toffee
    24:00 - sandpaper strip, pull, pull, both sides the same
    36:00 - dry fit. not yet
    48:00 - one clamp and leave it alone`,
  'loose-brace': `
    0:50 - knock, knock, knock... there
    1:30 - not the pickguard, I held that down
    3:20 - my arm doesn't fit. mirror
    6:00 - little jack, wax paper, good`,
  'acoustic-pickup-install': `
    0:50 - preamp and everything in one bag, no instructions
    6:00 - measure the lead three times
    15:00 - it's through. no chips
    19:40 - forgot the washer. out again`,
  'nylon-buzz': `
    0:50 - he hits it like it owes him money
    2:40 - frets are level, nothing wrong there
    6:30 - bone again, blank's a bit short, use the other`,
  'classical-rosette': `
    0:50 - hole the size of a coin and a split a hand long
    3:30 - inch by inch, turn the buckle
    9:00 - linen soaked, laid over
    16:00 - shellac in three colours till it's right`,
  'classical-tuners': `
    0:40 - hear it? like sand
    2:30 - thirty five between, standard, thank you
    5:10 - screws short, holes tight, beeswax on`,
  'classical-bridge-flew': `
    0:40 - steel! on this!
    3:20 - it took the fibres along, but they're all here
    9:00 - clamp from inside, sandbag on top
    15:00 - and I've written NYLON ONLY on a card`,
  'acoustic-fret-sprout': `
    0:30 - feel along there. ouch
    2:00 - twenty nine percent, there's your answer
    8:00 - file at forty five, then the little round one
    13:00 - glove, wipe, done. and a humidifier in the case`,
  'twelve-string': `
    0:50 - standard pitch with mediums, poor thing
    2:40 - mirror says braces are all right
    6:00 - down a tone, twelve of them, my wrist`,
  'uke-bridge-off': `
    0:30 - clean break, nearly
    3:10 - tweezers, one splinter at a time
    6:30 - one clamp and a caul through the hole`,
  'uke-intonation': `
    0:40 - open: sweet. F: eugh
    2:30 - nobody ever filed that thing, it's as it came from the box
    5:00 - card under, stop when it drags
    6:00 - check, check, good`,
  'uke-crack-side': `
    0:40 - I've seen worse. not often
    6:00 - tape as clamps, cheap and good
    12:00 - brace under the top has let go too, do it while it's open
    20:00 - that'll never be pretty`,
  'uke-pickup': `
    0:40 - I've got it on full and it whispers
    2:20 - disc reads like a good one, so
    3:30 - dangling on its tape. well`,
  'mando-bridge': `
    0:40 - somebody's had it off and guessed
    2:00 - little mirror, feet fit the top, nice
    3:40 - slack the strings, nudge, up again`,
  'mando-refret': `
    1:40 - they don't make bar any more, not that I'd want it
    3:00 - pull straight up, no lever
    12:00 - saw on, depth stop on
    28:00 - tiny ones, hammer's the size of a spoon
    33:00 - dress the ends so they don't bite`,
  'mando-neck-joint': `
    0:40 - you can see the lamp through it
    2:00 - slack the strings, see if it closes by hand. it does
    5:00 - hot, thin, flood it, pull`,
  'banjo-head': `
    0:40 - plunk. plunk. no life at all
    2:40 - three eleven, that's a D sharp or so, way low
    5:00 - across, not round, or it goes in lopsided
    7:00 - getting there, G now`,
  'banjo-head-split': `
    0:40 - bang, in the car, he thought somebody shot at him
    4:00 - count the hooks, twenty four
    12:00 - finger tight first, ALL of them
    16:00 - press with both thumbs, listen`,
  'banjo-fifth-peg': `
    0:40 - down again. look. and again
    2:20 - tapered friction peg, polished like glass
    4:20 - reamer, slow, paper under`,
  'banjo-buzz-coordinator': `
    0:30 - I thought head, then tailpiece
    1:10 - take them out one by one, no, it's in the pot
    2:40 - nut turns with two fingers`,
  'violin-post-down': `
    0:40 - hear it roll
    1:20 - strings slack but on, bridge marked
    3:30 - it's a fishing game through a keyhole
    4:40 - mirror through the end hole, upright both ways
    6:40 - tap, tap, four and a half`,
  'violin-pegs-slip': `
    0:30 - new stove in the practice room, dry as a bone
    2:20 - chalk on, dope on, turn, turn
    3:10 - push as you turn, I showed her`,
  'violin-pegs-bush': `
    1:00 - heads nearly touch the cheek
    8:00 - spiral shaving glued in, left overnight
    18:00 - cut flush, colour it
    27:00 - shaver, one turn, try it, one turn`,
  'cello-seam': `
    0:40 - bow the open C, rrrr
    2:10 - strings down a bit first
    4:30 - glue like weak tea, in with the thin knife`,
  'violin-bridge-new': `
    0:40 - you could use it as a banana
    5:00 - chalk on the belly, feet to the chalk
    10:00 - knife, chalk, knife, chalk
    16:00 - E side lower than you think`,
  'bow-rehair': `
    0:40 - wedge is glued. who glues a wedge
    5:00 - hundred and eighty hairs, I don't count, I weigh
    14:00 - comb, water, comb
    18:00 - spread wedge, ribbon flat`,
  'bass-fiddle-crack': `
    0:50 - it went over like a tree
    8:00 - reach in through the end pin? no. top off? no. try the f-hole
    20:00 - eleven clamps and a ladder`,
};
