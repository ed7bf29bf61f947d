/**
 * How work, states and mishaps are told in a workshop, whatever the instrument; common practice, no source.
 * Written as `synonyms.ts` is; a word that is kept there too gets these ways beside its own.
 */
export const talkLines = `
# What is done
tight = snug, snugged, nip up, nipped up, torque, torqued, crank, cranked, cinch, cinched, take up slack, taken up evenly, tension up, screwed down, bring up to tension, wound up tight
slacken = slacked off, back off, backed off, let down, eased off, ease off, detension, detensioned, tension off
remove = took out, taken out, took off, taken off, pulled, unsolder, unsoldered, desolder, desoldered, unbolt, unbolted, prise, prised, pried, pry, lift out, lifted out, strip down, stripped down, whip out, get out, took apart, came apart in my hands, extract, extracted
install = put on, seat, seated, bolt on
replace = swap out, change out, changed out, sub, subbed, new set, brand new, substitute, put new, fresh one, fresh set, in place of old, retire, retired old
setup = tweak, tweaked, nudge, nudged, quarter turn, half turn, eighth turn, fine tune
repair = patch up, patched up, make good, made good, rescue, rescued, restore, restored, bring back to life, brought back to life, save, saved, salvage, salvaged, resurrect
break = bust, busted, wreck, wrecked, ruin, ruined, shear, sheared, gave way, snapped clean, broke clean, smash, smashed, shatter, shattered, in two pieces
inspect = look over, checked over, look inside, mirror and light, inspection mirror, endoscope, borescope, inspection, examine, examined
measure = metered, put meter on, probe, probed
sand = sanded, sandpaper, abrasive paper, wet and dry, grit paper, flatted back, rubbed down, rub down
file = filed, filing, needle file
drill = drilled, bore, drilling, drill bit, drill out, drilled out
ream = reamed, reamer, open up hole, opened up hole, taper reamer
shave = shaved, take a whisker off, scraper, take a hair off, pare, pared, trim down
shape = carve, carved, whittle, profile, reprofile, recarve
bend = kink, kinked, buckle, buckled
straighten = straightened out
heat = heated, warm up, warmed, warming, hair dryer, hairdryer, hot air
grease = oiled, greased
stretch = stretch new strings
wait = overnight, leave overnight, left overnight, glue time

# What state it is in
loose = slack, wobbly, wobble, wobbles, wobbling, floppy, undone, worked loose, come undone, came undone, shaky, turns freely
lifting = lifts, lifted, come up, came up, coming up, peel, peels, peeled, peeling, let go, lets go, letting go, come unglued, unglued, unstuck, come unstuck, came unstuck, adrift, delaminate, delaminated, delamination, came away, coming away, come away, detach, coming off, came off, come off, fell off, fallen off, parted, broke loose, popped off, sprung, open glue line, glue failed, failed glue
leak = leaking, leaks, leaky, leakage, escapes, escaping, seeps, oozes
slot = groove, channel, notch
slips = creep, creeps, creeping, won't hold, doesn't hold, not holding, will not hold, does not stay put, doesn't stay put, turns back, runs back
stuckpart = frozen, siezed, seize, seizing, bound up, gummed up, gummy, won't shift, refuses to move, stiff, hard to turn, binding up, solid with rust, tight to turn, won't come out, won't unscrew, stuck solid
cutsout = flaky, unreliable, temperamental, erratic, hit and miss, sometimes works, works sometimes, works now and then, sporadic, comes in and out, stops and starts, patchy, fickle, glitch, glitchy, glitching, works if pushed, sometimes nothing, sometimes dead, sometimes mutes, loses signal, signal goes, signal drops, lost signal, playing up, unpredictable, when it feels like it, goes and comes, off and on, on off on off, needs a thump, needs a whack, until wiggled, touchy
nosound = not working, doesn't work, won't work, doesn't do anything, gave up, gives up, given up, packed up, conked out, kaput, nothing out, nothing at all, won't pass signal, no joy, silence, went quiet, gone dead, went dead, died on stage, signs of life, no longer works, quit working, out of order, deadness, not a sound, not a sausage, lifeless jack, no audio, won't play, no noise at all, stopped dead
nopower < nosound = no power, won't power up, won't turn on, doesn't turn on, won't switch on, no lights, no light, doesn't come on, won't come on, won't power on, no pilot light, no led, does not light, doesn't light up, won't start, not powering up, no mains, does not switch on, power won't come on
worn = wear, wear and tear, tired, past its best, seen better days, worn through, worn down, eaten away
blocked = clogged, clog, choked up, fluff, lint, debris, sawdust, speck of dirt, bit of fluff, speck, obstruction, obstructed
unconnected = not connected, isn't connected, unattached, goes to nothing, connected to nothing, joined to nothing, tied to nothing, touches nothing, no link to
missing = gone missing, lost part, absent
wrong = incorrect, wrong one, wrong part, wrong size, mistake, mistaken
noisefree = hum gone, noise gone, buzz gone
squeak = creak, creaky, squeaky, groan, creaking, squeaking
rattle = chatter, chatters, jangle, jangles, jingles, clunk, clunks, something inside, shakes, buzz like a kazoo, kazoo, bits rolling, loose inside, rattly
warp = warped, cupped, cupping, banana, bent like a banana, potato chip
spill = beer, cola, coffee, spilled, lemonade, juice
clean = filth, goo, gunky, crud, cruddy, muck, mucky, sticky residue, cleaned up, clean up, scrub, scrubbed, wiped, naphtha, lighter fluid, isopropyl, alcohol, cotton bud, cotton swab, cleaned out, tidy up, elbow grease
drop = tumble, took a tumble, knock, knocked, hit the floor, fell off the wall, stood on, sat on, trod on, run over, stage dive, strap failed, hit the deck, blew over, took a fall, landed on, landed face down
heatdamage < heat = hot car, left in the car, car boot, left in the sun, conservatory, radiator, next to heater, summer heat, attic, heat of the sun, boot of a car, trunk of a car, near the fire, wood stove
damp = rained on, drenched, humid room, cellar, basement, sweat of hands, wet case, garage, shed, waterlogged, puddle, pipe burst, burst pipe, drowned
dried = parched, thirsty, dry as a bone, dried up, bone dry, heated room, heating on all winter, desert, lost moisture
gap = daylight, opening, air gap, thickness of a card, can see light
sharp = pointy, jagged, cuts
high = proud, stands proud, sticks up, stands up, standing up, tall
low = bottoms out
uneven = unequal, lopsided, inconsistent, unlevel
hot = overheats, overheating, overheat, gets hot, too hot to touch, cooks
cheap = budget, entry level, cheapie
old = vintage, antique, elderly, ancient
leftpaw = left handed, lefty, left hand, mirrored
customerquote = owner says

# Around the job
estimate = bill, billed, invoiced, pricing, priced, labour, labor
declined = turned down, said no, didn't want, did not want, not worth it, uneconomic, beyond economic repair, refused, no thanks, leave it alone, left it alone, not approved
warranty = guarantee, came back again, comeback, bounced back, returned with same fault, back with the same, under guarantee, same fault again
customer = punter
camera = battery of the camera, filming, filmed
spareparts = out of stock, part on order, waiting for part, ordered part, backorder, part took weeks
safetyhazard = lethal, dangerous, unsafe, deadly, health hazard, deathtrap
`;
