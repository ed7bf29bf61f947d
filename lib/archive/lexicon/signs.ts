/**
 * What a question means where a thing and a state are named in it, however far apart: "the peg just keeps on
 * spinning"; common practice, no source.
 *
 *   kept: thing, thing + state, state
 */
export const signLines = `
touchhum: hand, hands, finger, fingers, touch, grab, hold + hum, buzz, noise, noisy, silent, quiet
loosejack: cable, lead, plug, jack + slides, falls, drops, pops, held, taped, wobbles, loose, angle
cutsout: sound, signal + disappears, flickers, vanishes, bump, bumped, jiggle, wiggle
crackle: knob, volume, tone, fader, slider, control + static, sandpaper, scratches, gritty, rough, noisy
taper: knob, volume, pot + sudden, suddenly, jumps, abrupt, blast
outputlow: pickup, string, amp, sound, volume, channel + softer, quieter, weaker, faint, feeble, crank, cranked
microphonic: pickup, speaker, amp + shrieks, squeals, howls, screams
batterydrain: battery, batteries, volt, 9v + week, weekly, overnight, eats, flat, drained, empty
batteryleak: battery, batteries, terminals, clip + green, gunge, gunk, leaked, acid, crust, furry, corroded
stringheight: string, strings, chords, fingers + tall, struggle, hard, hurt, high, press, stiff
relief: neck + hollow, curve, curved, bent, bows, dip, concave, banana
backbow: neck, fingerboard + arches, backwards, hump, convex, reverse
stuckrod: rod, adjuster, truss rod + frozen, stuck, seized, rounded, stripped, spins
fretbuzz: string, strings, frets + slap, rattle, buzz, sizzle, choke, sitar, fizz
fretsprout: neck, frets, fret, edge + scratched, scratches, sharp, catches, snags, cuts
fretwear: frets, fret, metal + dips, dents, grooves, worn, ruts, notches
frethigh: fret, frets + lifted, popped, proud, loose, sprung, high
nutbind: nut, tuning, string + tink, ping, sticks, catches, creaks, jumps
tuningdrift: tune, pitch, tuning, arm, tremolo + never, retune, retuning, drifts, drops, flat, sharp, wanders
tunerslip: tuner, peg, machine head + spinning, spins, slips, stripped, grinds, stiff
tunerbutton: tuner, tuners, button, knobs + crumbled, crumbling, crumble, perished
brokenhead: headstock, neck, peghead, scroll + snapped, broke, broken, flapping, hanging
looseneck: neck, heel + wobbles, wobbly, loose, moves, shifts, gap, flops
bridgelift: bridge + popped, lifting, peeling, off, gap, unglued, unstuck, flew
bridgepin: pins, pin + jump, jumping, pop, popping, loose
bellying: front, top, soundboard, table + bulge, bulging, pillow, domed, hump, humped
sunken: front, top, soundboard, belly + sunk, sinking, caved, collapsed, dip, dished
loosebrace: inside, top, back + rattles, rattle, loose, buzzes, knock, vibrates
topcrack: front, top, table, soundboard, face, spruce, cedar + split, crack, cracked, line
backcrack: back + split, crack, cracked
sidecrack: side, rib, ribs + split, crack, knee, hole, kicked, punched, foot
seamopen: edge, seam, back, body, joint, rib, belly + apart, open, gap, unglued, unstuck, undone, parting
bindingloose: binding, edging, purfling, trim + peeling, loose, lifting, off, shrunk, gap
fingerboardoff: fingerboard, fretboard + loose, lifting, off, unglued, away, gap
strapoff: strap + fell, off, loose, pulled, screw, out
soundpostdown: inside, violin, cello, fiddle + rolling, stick, dowel, wooden, fallen
pegslip: peg, pegs + unwind, slips, slip, hold, jammed, stuck, stiff, creaks, budge
tailgut: tailpiece, tailgut + snapped, cord, flew, broke, loose
endpin: spike, endpin + sinks, sinking, slips, slides, loose, drops
rehair: bow + bald, hair, shedding, hairs, hairless
bowdamage: bow + snapped, broken, broke, tip, cracked, crooked, bent
wolf: note, cello + howl, growl, stutter, wobble, judder, pulse
bridgewarp: bridge + bending, leaning, tilting, warped, bent, fallen, leans
newbridge: bridge + feet, carve, carved, blank
headslack: skin, head, vellum + slack, soft, loose, saggy, sagging
banjohead: skin, head, vellum + burst, torn, split, ripped, hole
redplating: valve, tube, tubes, valves, bottles, plate + red, glows, glowing, cooking, cherry, orange
fuseblows: fuse, fuses, breaker + pops, blows, blew, trips, every
volumefade: minutes, hour, warm, warms, hot + conks, weaker, quieter, dies, fades, stops, cuts
distort: sound, sounds, amp, channel + farty, ragged, fuzzy, torn, gritty, rough
blownspeaker: speaker, cone + torn, paper, ripped, hole, rubs, scrapes, flaps
reverb: reverb, spring, echo + vanished, dead, stopped, weak
hotchassis: microphone, mic, lips, strings, chassis + shock, shocks, tingle, bite, bites, zap
squeal: amp, gain, channel + whistles, squeals, shrieks, motorboat
popping: switch, switching, pedal, standby + bang, pop, thump, click
footswitch: stomp, stomps, pedal, footswitch + twice, two, latch, press, stick, sticks
bypassfault: effect, bypass, engaged + mute, silent, dead, clean, dry
powersocket: adaptor, adapter, power, supply + angle, wobbles, held, loose, socket
adapter: plugged, supply, adaptor + mistake, wrong, reversed, 18v, 12v
keyboardcontact: keys, key, notes + six, several, dead, nothing, triggers, contacts
memorybattery: memory, presets, patches, sounds, settings + forgets, forgot, lost, loses
encoder: wheel, encoder, dial + skips, jumps, jumpy
padleak: notes, note, low, bottom, register + stuffy, below, speak, gurgle, burble, squeak
stickypad: key, pad, pads + sticky, smack, shut
bentkey: key, keys, rod + squashed, bent, knocked, crushed
tenoncork: joint, tenon, barrel, cork + wobbles, loose, crumbled, wobbly
keyspring: key, spring, needle + hook, unhooked, weak, floppy, return
stuckvalve: piston, rotor, first valve, second valve, third valve + sluggish, slow, sticks, stuck, jammed
slidestuck: slide + solid, stuck, seized, frozen, jammed, budge
brassdent: bell, bow, tubing, leadpipe + sat, dent, crushed, creased, stood, squashed
solderbrace: stay, brace, ferrule + bell, soldered, unsoldered
deadnote: note, button, reed + draw, nothing, silent, push, pull
ciphering: note, drone + stops, constantly, itself, continuously
bellows: bellows, folds + escapes, leaks, leak, hole, air, wind
reedwax: reed, reeds + wax, block, falling, fell
reedtuning: reed, reeds + flat, sharp, sour, tune, tuned
buttonstuck: button, buttons + stuck, sticks, down
keystick: key, keys, middle c + stays, sticks, down, stuck, slow
damperpiano: note, notes, damper, dampers + release, ringing, rings, sounding, released
pianoaction: hammer, hammers + back, falls, sticks, repeat, stuck
tuningpin: pins, pin, wrest + turn, turning, slip, creep
snare: snare, snares, drum + rattle, buzz, strainer, lever, wires
drumpedal: kick, pedal + squeaks, beater, chain
drumhardware: stand, tom, leg, throne + slides, sinks, collapses, droops
cymbal: crash, ride, cymbal, hats + split, crack, cracked, rim
declined: cost, price, worth, repair + more, refused, alone, bother, uneconomic
warranty: back, fault + again, fortnight, returned
spareparts: part, parts, pot, switch, tuner + wait, waited, waiting, weeks, order, ordered
shipping: box, post, parcel, courier + smashed, arrived, damaged, broken
nofault: fault + never, showed, reproduce
spill: beer, wine, coffee, tea, pint, drink + over, into, sticky
drop: stand, stairs, floor, wall + fell, came off, fallen, knocked
urgent: show, gig, concert + friday, saturday, tonight, tomorrow, weekend
brokenscrew: screw, bolt + twisted, sheared, snapped
heatdamage: radiator, car, sun, fire, stove + left, hot, melted
`;
