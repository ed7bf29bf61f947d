/**
 * Words of every day by which an owner or a repairer remembers a job: where, when, with whom, what it looked, felt and
 * smelt like. Written as `synonyms.ts` is; a word that is kept there too gets these ways beside its own.
 */
export const everydayLines = `
# Occasions and places
gig = concert, live show, on stage, onstage, performance, on tour, touring, festival, recital, pub gig, playing out
rehearsal = band practice, practise room, practice room, soundcheck, sound check, jam night
church = chapel, choir, worship, vicar, parish, cathedral, congregation
school = pupil, classroom, college, university, youth orchestra, lesson, music teacher, peripatetic
orchestra = symphony, pit orchestra, ensemble, quartet, string quartet
bandmates = drummer, singer, bass player, bandleader, brass band, dance band, wedding band, ceilidh band
wedding = marriage, reception, party, birthday, christmas, funeral
studio = recording studio, home studio, control room, bedroom studio
travel = holiday, abroad, overseas, flight, aeroplane, airplane, airport, train, ferry
vehicle = van, lorry, estate car, car crash, motorbike
child = toddler, infant, youngster, grandson, granddaughter, son, daughter, nephew, niece, little boy, little girl, grandchild
pet = cat, dog, puppy, kitten, parrot, rabbit, hamster
widow = passed away, deceased, late husband, late wife
beginner = learner, novice, starter, first instrument
pro = professional, session player, session musician, pro player

# How it looks and feels
shiny = gloss, glossy, gleaming, glittery, mirror finish
matt = satin, flat finish, dull finish
sticky = tacky to the touch, gluey, gooey, clammy
slick = silky, slippery, glides
rough = coarse, bumpy, scrapey, uneven to the touch
greasy = oily, slimy, grubby
brown = tan, chestnut, walnut colour, reddish brown
yellowed = ambered, gone yellow, aged yellow, nicotine stained
sunfaded = bleached, sun bleached, sun faded, discoloured
crooked = askew, skew, wonky, cockeyed, off square, not square, not straight, slanted, cock eyed, squint, lopsided bridge
offcentre = off centre, not central, not centred, off to one side, out of line, out of alignment, misaligned, not lined up, alignment
heavyhanded = hard picker, heavy handed, strums hard, thrashes
size = three quarter size, half size, full size, quarter size, small size
tinyparts = fiddly, tiny screw, tiny spring, pinged across the room, flew across the room
rotten = decayed, rot, crumbly, disintegrated, perished, gone to powder, falls to dust, turned to dust, gone hard, gone brittle, brittle plastic, gone soft, sticky foam, foam turned to goo, crumbled foam

# What noises are like
boom = boomy, muddy bass, too much bass, rumble
chafing = scrapes along, scratches along, rubs along, grates
hollowknock = hollow sound when knocked, sounds hollow when tapped, knocks hollow, hollow when tapped

# What happened
burstopen = sprang, sprang apart, pinged open, snapped open, flew open, burst open, let go with a bang, exploded, blew apart
fellout = came adrift, falls out, dropped out of its hole
torn = rip, slit, gash, slashed
punctured = holed, poked through, poked a hole, stabbed
lostparts = part missing, screws missing, missing screws, knob missing, missing knob, came in pieces, in a box of bits, box of parts, bag of bits, bag of parts
stolen = theft, nicked, burgled, recovered by police, police
tobacco = smoker, smoky, cigarette, cigarette burn, ashtray
sweat = sweaty, perspiration, acid sweat
hurry = quick fix, temporary repair, temporary fix, stopgap, get through the night, get home repair, emergency repair, bodge to get through
twosame = better of the two, two alike
surprise = unexpected, turned out to be, not what I expected, odd one
hindsight = learnt, mistake of mine, next time
`;
