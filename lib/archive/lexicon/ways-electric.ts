/**
 * Further ways to name what is electric: pickups, controls, amplifiers, pedals, cables, keyboards; common practice, no
 * source. Written as `synonyms.ts` is; a word that is kept there too gets these ways beside its own.
 */
export const electricLines = `
# Pickups and cables
fourconductor = four wires, 4c, four strand cable, four colours and bare, four leads and shield, five wire pickup, fifth bare, quad cable
humbucker = hb, humbuckers, buckers, bucker, two coils in one
singlecoil = sc, single coils, single
coilsplit = split switch, splits to single, coil splitting, half coil, split to one coil, tap coils
outofphase = phasey, phasy, fight each other, fighting each other, cancel out, cancel each other, cancelling, cancels out, out of polarity, polarity wrong, pickups cancel, inside out sound, wrong way round magnet
hollow = scooped, like a telephone, cardboard tube, wasp in a jar, no body when both on, gutless together, plasticky sound
bright = shrill, harsh, ice pick, icepick, brittle, piercing, too much treble, glassy, cuts your head off, thin and bright, ear piercing
balance = hardly there on two strings, string hardly there, two strings hardly there, one string hardly there, strings quieter, some strings louder, louder than the rest, quieter than the rest, uneven piezo, uneven strings, uneven response, one string dead, string barely there, strings uneven
treblebleed = muddy at low volume, dull at low volume, dark when rolled off, muddy when rolled off, loses top when rolled off, muddy on low volume, dull on low volume
muffled = mud, no sparkle, lost its sparkle, treble gone, top gone, top end gone, lacks treble, no brightness, bassy, under a blanket, like cardboard, cardboard box, dark tone, wooly, wooly sound, no bite, lost its bite, no snap, lost snap, dull tone, no clarity, blanket over the amp, through a pillow, cloudy sound, veiled
outputlow = half the volume, half as loud, not as loud, lower output, down on power, underpowered, anaemic, quiet pickup, weak pickup, no punch, no oomph, lost its punch, gutless, puny, not much output, hardly any output, barely audible, whisper quiet, can hardly hear, quieter than the other, down in level, lost half its volume, volume has dropped, faint sound, fainter
deadcoil = one coil dead, coil dead, half dead humbucker, reads nothing, infinite reading, coil is open, open reading, coil broken inside, dead winding, no reading across the coil
rewind = wound new coil, 42 gauge, magnet wire, winding machine, winder, turns of wire, rewound by hand, fresh winding, thousand turns, hand wound
magnet = mag, gauss, gaussmeter, recharge magnet, remagnetise, remagnetised, demagnetised, magnet strength, weak magnets
microphonic = picks up vibration, picking up vibration, hears knocks, hears the cabinet, picks up knocks, tap the valve and it rings, tap the tube and it rings, vibration in the valve, rattles inside valve, feeds back at volume, taps heard through pickup, picks up taps, pickup sings, pickup howls, rings when tapped, pings when tapped, ting when tapped, sings along
waxpotting = hot wax, wax bath, wax pot, beeswax, repot, repotted
pickupheight = too close to the strings, pickup too close, pickup too far, pickup too low, pickup too high, set the pickup height, magnets pull on strings, string pull
pickupring = mounting ring, surround, bezel, pickup surround, cracked ring
polepiece = pole pieces raised, pole screws, poles
piezo = ribbon pickup, saddle element, piezo strip, piezo disc, piezo element, bridge sensor, contact mic, soundboard transducer
preamp = battery electronics, active bass circuit, eq unit, side panel electronics, barn door preamp, onboard eq, side preamp, acoustic preamp
shielding = shielded, copper, foil, tin foil, foiled, screened cavity, faraday cage, screening paint, line the cavity, lined the cavity, foil the cavity, copper lined
cable = guitar cable, patch cord, instrument cable, jack lead, speaker cable, speaker lead, coil cord
plug = jack plug, plug tip, connector, moulded plug, right angle plug, quarter inch plug
xlr = mic connector, microphone cable
brokenwire = conductor broke, lead snapped, wire had broken, wire let go, wire dangling, dangling wire, hanging wire, wire adrift, wire hanging off, wire broke off, lead adrift, wire fell off, unsoldered wire, wire unsoldered, wire come away, wire parted, fractured wire, torn wire
shortcircuit = shorts, touching, stray whisker, stray strand, solder bridge, solder blob, hot to ground, grounded out, earthed out, touches the shield, touching the cavity, touching shielding
noearth = earth missing, ground missing, earth broken, ground broken, earth gone, ground gone, no continuity to ground, lifted earth, floating ground, lost ground connection, nothing connected to ground, earth wire adrift
bridgeground = strings not grounded, strings not earthed, wire to the bridge, claw wire, claw earth, claw ground, ground to the claw, bridge wire, tailpiece stud wire, ground under the bridge, stud wire
touchhum = quiet when i touch, quiet with hands on, quiet when touching strings, hum goes when touching, buzz goes when touching, noise stops when i touch, hands on strings
hum = hummy, hums like a fridge, mains noise, low drone, humbug, mains buzz, power hum
whine = whines, whining, high pitched whine, digital noise, clock noise, switching noise, whistling noise, high pitched noise, supply whine, alternator noise
noise = hissy, sizzle, crackly hiss, noise floor, rushing noise, loud hiss, white noise, frying
rfi = taxi, local radio, hears the radio, radio coming through, radio through, phone noise, buzz near dimmer, dimmer noise
groundloop = earth loops, ground loops, two earths, hum between two amps, loop through screen

# Controls and sockets
pot = pots, chicken head, skirted knob, fader, slider, slide pot, trimmer, trim pot, trimpot, preset, attenuator knob
crackle = scratchiness, grit, gritty, rough when turned, crunchy when turned, dirty when turned, static when turned, grinding, crackles when turned, crackly volume, crackly tone, snap crackle, dusty pot, worn pot, noisy pots, noisy volume, noisy tone, noise on the pot, noise from the pot, crackling pot, scrapy, scrapes when turned, dry pot
contactcleaner = spray, sprayed, spray pot, flush, flushed, worked back and forth, exercise the pot, cleaner, wash the contacts, contacts cleaned, clean contacts, burnish, burnished, polish contacts, clean the switch, cleaned the jack, fader lube, deox
taper = sweep, does nothing until, only works at the end, works at the very end, bunched up, jumpy, comes on suddenly, audio pot, log or linear
switch = blade, lever, flick switch, rotary switch, slide switch, mini toggle, changeover, switch tip, kill switch
jack = output, outlet, quarter inch socket, input, jack hole, output hole, headphone socket, jacks
loosejack = plug wobbles, cable won't stay in, lead won't stay in, lead won't click in, won't grip the plug, doesn't grip, jack has come loose, jack gone inside, socket swallowed, jack pushed in, plate pulled out, jack plate torn, cable drops out, lead pops out, cup pulled out, nut fell off jack, cable pops out
dryjoint = bad connection, poor connection, dodgy joint, suspect joint, iffy joint, joint cracked, joint fractured, hairline ring, crystalline joint, solder broken, broken solder, solder joint failed, failed solder, joint gave up, cold blob, fractured solder, dodgy connection, loose connection, loose solder joint, broken joint
solder = remade joint, remade the joint, joint redone, redone the joint, hot iron, tinned, iron on it, fresh joint, touch up the joints, reflow joints, sucked off old solder, new solder
continuity = beeped out, buzzed through, beep out, bleeped out
opencircuit = reads open, open reading on meter, goes nowhere, doesn't go anywhere
corrosion = furry, green stuff, green gunk, crusty, crust, crusted, rust spots, black contacts, blackened contact, oxidized, verdigris, pitted, rotten with rust
battery = 9v battery, coin cell, aa cells, batts
batterydrain = eating batteries, battery eater, battery lasts a day, battery always flat, battery always dead, new battery every, hungry for batteries, batteries last no time, drains overnight, current draw, quiescent draw, battery killer
batteryleak = battery burst, leaky battery, battery leaked inside, battery mess, battery clip rotted, leaked cells, corroded clip
capacitor = caps, condensers, ceramic disc, film cap, electro
resistor = resistors, ohm resistor, carbon comp, carbon film, metal film
diode = diodes, clipping diode, zener, protection diode
trackrepair = jumper wire, pad lifted, torn pad, burnt pad, track broken, track burnt, burnt board, cracked pcb, broken pcb trace, corroded track, eaten track, wire link over the track
transistor = transistors, mosfet, silicon, power transistor
opamp = ics, dual op amp, eight pin chip, power amp chip
solderbucket = tag strip, terminal strip, tag

# Amplifiers
amplifier = head, cabinet amp, stack, practice amp, rig, power amp
cabinet = cab, speaker box, speaker cabinet, enclosure, baffle, grille cloth, grill cloth, covering, vinyl covering, cab covering
valve = valves, bottles, glass bottle, envelope
powervalve = power valves, output bottles, big bottles, el eighty four, el thirty four, kt eighty eight, six v six, six l six, output pair, quad of valves, matched quad, output section valves
preampvalve = first valve, v1, small valve, small bottle, twelve ax seven, ecc eighty three, gain stage valve
valvebase = valve base, valve socket, tube socket, valve holder, socket pins, pin sockets, valve pins, retension the sockets
redplating = plates glow, glowing plates, glow orange, orange glow, red hot plates, plate is red, anodes red, overdissipating, dissipating too much, red hot valve, glow red, one valve glowing, melting down
bias = biased, bias cold, bias hot, too hot bias, cold bias, biased cold, milliamps, dissipation, bias trimmer, bias supply, fixed bias, grid bias, minus volts on the grid
heater = heaters glow, heaters out, filaments, six volt supply, heater winding
filtercap = dried caps, bulging cap, bulging caps, leaking electrolytic, puffed cap, swollen cap, cap job, recapping, smoothers, reservoir caps, old electrolytics, multi section can, dried out cap, high esr, esr, tired electrolytics, electros gone, fresh electrolytics, main caps
couplingcap = leaks dc, dc getting through, dc leaking, positive grid, volts on the grid, leaks dc to the grid
transformer = ot, output tranny, mains tranny, iron core, windings of the transformer, primary winding, secondary winding
fuseblows = popping fuses, eats fuses, goes through fuses, keeps popping fuse, blows the mains fuse, fuse pops, fuse went, trips the main, trips house, trips the board, trip switch, breaker, rcd, blows on switch on, blew the fuse, takes the fuse out, bangs fuse
speaker = woofer, horn driver, tweeter, twelve inch speaker, paper cone, surround of the cone, dust cap
blownspeaker = cone ripped, hole in the cone, paper torn, coil rubs, scraping speaker, speaker scrapes, speaker buzzes, recone, reconed, fried speaker, speaker dead, open voice coil, melted voice coil, cooked voice coil, seized cone, loose dust cap, burnt voice coil, speaker gone, cone damage, voice coil scrapes
reverb = verb, spring tank, reverb pan, tank springs, drip, no verb, splash, springs crash
distort = breaks up, crunchy, crunch, dirty clean channel, sputtery, fuzz, splatty, splat, ratty sound, crackly distortion, bursts, bursting, broken sound, clipping, clips, harsh distortion, dirty when loud, breaks up too early, gated, gating, starved sound, blocking distortion, mushy, mush
volumefade = volume drops after, gets quieter, gets weaker, volume sags, fades out as it warms, dies as it warms, warm up then fades, fine when cold, fine for ten minutes, after half an hour, works cold, quits when hot, goes off when hot, when it gets warm, after warming up
squeal = motorboat, chugging, chug, low frequency oscillation, woof woof, whistles, screams, squeals, squealing, screaming, runaway oscillation, supersonic, parasitic oscillation, wails
popping = pops, pop when switched, loud pop, clicks, ticks, tick, thumps, loud bang, bang when switched, plop, clonk, crack when switched
burningsmell = smelt of burning, smells of burning, smells of smoke, acrid, puff of smoke, went up in smoke, fishy smell, smells like fish, scorched, scorch mark, charred, burnt component, let the smoke out, smell when on, cooked resistor, blackened resistor, toasted
hotchassis = shocks, shocked, gave me a shock, bites, bites my lip, tingly, tingling, live chassis, chassis live, bit by the mic, belt off the strings, leakage to chassis, electrocuted, zapped
mainslead = mains inlet, iec inlet, power inlet, kettle lead, three pin plug, three prong, grounded plug, two prong, two core mains, ungrounded plug, frayed mains, new mains cord, cordset, earthed lead
rectifier = diodes in the supply, bridge rec, valve rectifier, solid state rectifier
discharge = capacitors drained, bled off, bled the caps, drain the caps, drained the filters, safe to touch, caps discharged, discharge the caps
effectsloop = loop jack, return jack, send jack, fx return, loop jacks, loop contacts, patch lead across the loop
standby = standby pop, warm up switch
scope = sine wave, signal tracer, signal generator, signal tracing, waveform, clipping on the scope, trace on the screen
variac = bring it up slowly, brought up slowly, lamp in series, series lamp, series bulb, dim bulb
led = leds, lamp, bulb, pilot bulb, indicator light, status light

# Pedals and keys
effectspedal = stompbox, fuzz pedal, overdrive pedal, distortion pedal, delay pedal, stomper
footswitch = foot button, stomp button, stompswitch, latching switch, bypass button, foot pedal switch, treadle switch, click switch, button on the pedal, switch you stand on, on switch of the pedal
wah = wah wah, wah pedal, rocker pedal, treadle, rack and pinion
powersocket = dc inlet, supply jack, power connector, nine volt jack, power jack loose, socket for the adaptor, dc plug, wobbly power jack
adapter = supply, power brick, daisy chain, shared supply, isolated supply, charger, nine volt supply, wrong supply, wrong adaptor, wrong polarity supply
keyboardcontact = key contact, contact strip, rubber contact, dead key, dead keys, carbon contact, key strip
ribboncable = ribbon, flat cable, ribbon connector, connector reseated, reseat connector, header
firmware = factory reset, software, update
`;
