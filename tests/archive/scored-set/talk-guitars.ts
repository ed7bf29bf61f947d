/** What else is said in the films of the electric guitars and basses, by job. */
export const guitarTalk: Record<string, string> = {
  'four-core-spring-24': `
    1:10 - let me get some light on this
    2:20 - meter on twenty k, leads together, zero point two, that's the leads
    8:00 - okay so where was I. slug coil is red and white. write it on the tape
    12:10 - iron's hot, fan's on
    17:20 - whoops, that's my tea
    20:10 - and the switch got a squirt while I was in there, as I said I would`,
  'four-core-autumn-24': `
    0:50 - yellow, blue, orange, grey. never seen that. doesn't matter
    1:40 - the colours tell you nothing, the meter tells you
    3:20 - three nine one, near enough twins
    6:30 - blue goes up on the screw side... no, orange. ORANGE
    9:50 - where's the little push-pull gone, it was here a second ago
    13:00 - and down again, fat. good`,
  'four-core-spring-26': `
    1:20 - I'm not saving any of this
    2:40 - photo first. always photo first
    9:30 - this is where you'd get caught if you went by colour
    12:00 - new braided stuff throughout
    18:30 - heat shrink, not tape, tape goes gooey
    22:30 - the cavities I'd have liked to line but there's no foil left in the house`,
  'hum-summer-23': `
    0:40 - so whatever you are, you're a missing earth
    1:30 - springs off, plate off
    3:30 - meter says open. thank you
    5:40 - scrape it to bright metal or it won't take
    6:40 - stud back in, mind the thumb
    8:00 - could be the sound of my own fridge now`,
  'hum-spring-25': `
    1:10 - turn round ninety degrees, see, drops, comes back
    2:00 - pickguard off, eleven screws, why always eleven
    4:30 - paint's no good, I tried paint once
    12:00 - every piece has to talk to every other piece
    21:00 - zero point three, that'll do`,
  'hum-autumn-25': `
    0:40 - he said his cousin did it, I'm saying nothing
    3:10 - I'm drawing this before I touch it
    5:00 - look at that blob
    7:20 - one earth wire, star point on the pot, finished`,
  'crackle-vol-24': `
    0:30 - try the tone too, no, that's fine
    2:00 - goggles, the stuff spits
    3:30 - you can try cleaning once. after that you're only selling hope
    6:20 - four nine eight on a five hundred, can't complain
    7:40 - nut finger tight plus a bit`,
  'scratchy-tone-26': `
    0:30 - and the highs hardly change
    1:50 - see the leg, it's just standing next to it
    2:20 - lift one end or you measure the whole harness
    3:20 - twenty one point six on a twenty two. good little thing
    5:10 - flushed and worked, thirty turns`,
  'no-sound-bridge-pickup': `
    1:30 - tap it with a screwdriver, nothing
    3:30 - loupe on
    5:30 - this is why you don't use acid flux
    7:00 - I need three hands for this
    10:10 - tin it quick, one second, off
    11:50 - come on come on come on`,
  'setup-low-action': `
    0:15 - set-up, he likes them low
    3:00 - tens off, tens on, clean the board between
    6:40 - wait for it to settle, make a coffee
    8:00 - now look at it again, point two
    12:00 - low E, chok chok, bit up
    14:00 - nut's okay, leave the nut`,
  'setup-slide': `
    0:50 - bottleneck, so forget everything about low
    1:30 - thirteens with a wound third
    4:30 - nice, like a lap guitar now`,
  'fret-buzz-level': `
    1:00 - relief's fine so it isn't that
    2:50 - mark the tops with the pen
    9:30 - light, let the beam do it
    14:00 - pen's gone everywhere, so we're flat
    17:00 - crown them back up, each one, twenty two times
    24:00 - four hundred, eight hundred, then the wheel`,
  'refret-worn': `
    0:50 - you could plant potatoes in that
    3:00 - score the lacquer first
    8:00 - number nine chipped a bit, drop of glue, keep the splinter
    20:00 - twelve inch block, chalk on the board
    33:00 - tap tap press. tap tap press
    50:00 - file's gone dull, other file`,
  'nut-ping': `
    0:40 - tune up... ping. there
    2:20 - not the tuner, everybody blames the tuner
    4:30 - file at the angle of the head, not flat
    6:20 - point four five, leave it, leave it`,
  'trem-wont-return': `
    0:50 - dive... flat by, what, twenty cents
    3:00 - strings off, springs off, watch your eyes
    7:30 - stone flat, four strokes each
    10:00 - bushing's cracked the wood a little, glue in there
    15:00 - float it level with the body`,
  'jack-loose': `
    0:40 - let me see if it's your cable. no
    2:20 - long nose, bend it back... breaks off. that's that
    4:40 - tip hot, sleeve earth, don't mix it up`,
  'switch-three-way': `
    0:40 - neck fine, bridge fine, middle... hold it... there
    2:30 - black as soot on the leaves
    4:10 - new switch would've been an hour, this was five minutes`,
  'hot-bridge-pickup': `
    1:40 - eight henry nearly. dark as a cellar that'll be
    3:30 - same ring, same screws, for once
    7:20 - further down, it's shouting`,
  'out-of-phase-pair': `
    0:50 - hear that, like a telephone
    2:30 - did somebody flip a magnet? check with the compass. no
    4:40 - one goes up, one goes down, so there you are
    7:40 - swap, heat shrink, done`,
  'neck-8k1': `
    0:15 - no soldering today, only looking
    1:50 - through the jack, everything on ten
    2:50 - pots measured in circuit, so a bit off`,
  'truss-rod-stuck': `
    0:50 - banana
    2:30 - not moving. nope
    6:00 - next morning
    8:00 - three clamps, take the load off the rod first
    11:00 - crack! that was the rust, not the wood. I hope
    12:30 - quarter, and another quarter`,
  'broken-headstock-eg': `
    0:50 - no splinters missing, thank heavens
    3:30 - write down the order of clamps
    5:30 - warm the wood, warm the glue
    9:30 - squeeze-out all along, that's what you want
    11:30 - two days later`,
  'treble-bleed': `
    0:50 - ten... five... hear the blanket going over it
    1:30 - six eighty p and a one fifty k, that's my usual recipe
    3:50 - five again. still there. good`,
  'bass-action-low': `
    0:10 - right, measuring it as it came
    2:30 - neck's nearly straight already
    8:00 - E first, then the others to the curve
    11:00 - play it, play it hard... the seventh fret just says hello
    12:30 - up a hair then`,
  'bass-preamp-dead': `
    0:50 - everyone always changes everything except the battery
    2:40 - new battery in, it plays, but I don't trust it
    5:00 - ring should only touch sleeve with a plug in
    7:30 - stereo jack, tip, ring, sleeve, label them
    9:10 - plug out, zero. lovely`,
  'bass-hum-split': `
    0:40 - solo the neck, hums too
    3:20 - I can line it, I said, don't expect wonders
    8:00 - foil edges are sharp, ask my finger`,
  'bass-fretless-conv': `
    1:30 - last chance to change your mind
    3:00 - warm each one, walk it out
    12:00 - strips are a bit fat, thin them
    33:00 - three coats, sand between
    46:00 - lower than you'd dare on a fretted one`,
  'bass-neck-twist': `
    1:00 - sight down it. oh
    4:00 - I could level the frets to fit but that's cheating
    9:00 - sixty five degrees, no more, it's an old joint
    15:00 - day two
    19:00 - better. not good. better`,
  'bass-five-low-b': `
    0:40 - hit it, it flops about
    2:30 - hundred and twenty eight newton, the E has a hundred and seventy
    5:00 - drill through? no, ferrules are there already, someone just never used them`,
  'bass-pots-scratch': `
    0:40 - neck volume, awful. bridge volume, awful
    1:50 - mask on, spray
    3:10 - second try, no, this one's scored
    4:30 - got a two fifty in the drawer`,
  'bass-pickup-traced': `
    0:50 - big soapbar, fat cable, no sheet
    2:40 - shield to any of them? no
    5:00 - now which end is which. kick it with the steel
    6:40 - red up, green up. those are the tops
    8:20 - parallel, she wants the clear sound
    10:30 - two and three quarters, half of five and a half, right on`,
};
