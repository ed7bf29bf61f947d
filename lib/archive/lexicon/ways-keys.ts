/**
 * Further ways to name what has keys or is struck: piano, electric piano, organ, drums, mallets; common practice, no
 * source. Written as `synonyms.ts` is; a word that is kept there too gets these ways beside its own.
 */
export const keysLines = `
# Piano and what is built like one
piano = upright piano, grand piano, pianoforte, joanna, baby grand, spinet
electricpiano < piano = electric piano, tine piano, reed piano, stage piano, suitcase piano
tine = tine broken, broken tine, tone bar of the piano, tone generator tine, tine replaced, piano reed, snapped tine, tine snapped, tine spring, tuning spring on the tine
pianoaction = action rail, whippen, wippen, repetition lever, repetition spring, butt spring, hammer butt, hammer shank, hammer shank broken, broken shank, shank snapped, jack doesn't return, hammer blocks, hammer stays up, hammer stuck, hammer doesn't come back, key hits but no sound, key goes down but no sound, doesn't repeat, slow to repeat, repetition poor, bridle strap, bridle tape, bridle straps broken, back check, hammer rest, hammer doubles, double strikes, bobbling, blow distance, aftertouch of key, action regulated, regulated the action, lost motion, capstan, set off, flange, tight flange, tight centre, centre pin, sluggish centres, repinned, recentred, bushing of the flange, hammer clicks, key block
hammervoicing = hammers hard, hard hammers, hammers grooved, grooved hammers, hammer needling, needled the hammers, needles in the felt, hammers reshaped, hammers worn, moths in the felt, felt moth eaten, hammer tip, neoprene tip, bright hammers, voiced the hammers
keystick = sticky keys, key slow to come back, key jammed, key doesn't come up, key pin, balance pin, front rail pin, key bushing, key bushing tight, tight bushing, bushing cloth, eased the key, key easing, easing pliers, key bushings swollen, swollen key, keys swollen, key slip, key binds on key slip, something between the keys, coin between the keys, pencil in the keys, rail pin rusty
keytop = key top, ivory, ivory fell off, chipped key, chipped key top, key top came off, yellowed key, key covering, celluloid top, missing ivory, sharp key top, keytop glued, key broke
damperpiano = damper not damping, damper sticks, note rings on, note keeps ringing, rings on after, rings after key is let go, won't stop ringing, damper felt worn, damper felt replaced, damper lever, damper rail, damper spring, sustain pedal, pedal squeaks, squeaky pedal, pedal trapwork, pedal lyre, pedal rod, sustain stuck, sustain doesn't work, una corda, soft pedal, practice pedal
tuningpin = loose tuning pin, tuning pins loose, pin slips, pin won't hold, pins turning back, oversize pin, pin repinned, cracked pin block, cracked wrest plank, pin driven, tap the pins, hammered pins in, harp pins, zither pins, dulcimer pins, tuning lever slips, pin bushing, wrest pins loose, wrest pins slipping, pins slip back, cyano in the pin hole
pianotuning = pitch raise, raised the pitch, half tone flat, semitone flat, tuned to pitch, piano tuned, unison out, unisons, honky tonk, false beats, temperament, tuned the temperament, octave stretch, mute strip, concert pitch
pianostring = bass string dead, tubby bass string, tubby, bass strings tubby, wound string dead, piano wire, music wire, string broke in piano, splice the string, string spliced, tied a knot in the string, copper wound string, agraffe, capo bar, hitch pin
pianoplate = cracked plate, iron frame cracked, cracked frame, soundboard rib, rib unglued, bridge cap crack, bridge pin loose, split bridge of piano, bridge cracked at the pins
casters = castor, fall board, lid hinge, music desk

# Organs, synthesisers, keyboards
organ = electric organ, tonewheel organ, reed organ, pump organ, home organ, drawbar organ, chapel organ, portative
harmonium < organ = american organ, squeeze organ, indian harmonium
tonewheel = tone wheel, tone generator, generator oil, oil the generator, wicks, run motor, start motor, scanner, generator won't start, generator slow to start
drawbar = drawbar dirty, drawbar dead, busbar, key contacts dirty, contact wires, crackly drawbar
rotaryspeaker = rotary speaker, rotating speaker, rotor belt, rotary horn, horn doesn't turn, horn doesn't spin, slow speed, fast speed, speed change, rotor motor, belt slipping, belt perished, perished belt, stuck on one speed, drive belt, new belt
expressionpedal = expression pedal, swell pedal, swell shoe, volume pedal, volume pedal string, pedal cord, pedal string broken
synthesiser = synth, analogue synth, monosynth, polysynth, drum machine, sampler, sequencer
keyboard = midi keyboard, controller keyboard, portable keyboard, home keyboard
keyboardcontact = key doesn't trigger, double triggers, triggers twice, notes at full volume, key at full velocity, key plays too loud, key too loud, no velocity, contacts cleaned with alcohol, rubber strip, conductive rubber, graphite pad, contact board, silent keys, some keys dead, some keys don't sound, every other key dead, group of keys dead, j wire, key contact cleaned, dead octave, several notes not working
keymatrix = key matrix, matrix diode, scan line, every eighth key, every eighth note
voiceboard = oscillator drifts, voice dead, one voice dead, voice out of tune, drifts in pitch when warm, autotune fails, voice card, filter chip, envelope stuck, vco, vcf, vca
memorybattery < battery = memory battery, lost its memory, loses presets, forgets presets, presets gone, forgets its settings, patches lost, backup battery, lithium cell on board, soldered battery, coin cell soldered, ram battery, memory lost, battery low message
display = screen blank, blank screen, lcd, backlight, dim display, display dead, display dim, missing segments, el panel, garbage on the screen, display faint, contrast of display, zebra strip
encoder = data wheel, data entry, encoder jumps, value jumps, wheel jumps, parameter jumps
pitchwheel = pitch wheel, pitch bend, pitch bender, mod wheel, bender off centre, pitch bend stuck, bend off centre
midi = midi socket, midi out, stuck note, hanging notes
tapemachine = tape echo, tape loop, tape heads, capstan motor, pinch roller, tape delay, echo unit, tape cartridge, idler wheel, reel to reel

# Drums and percussion
drum = drum kit, drumkit, kit drum, drum shell, rack tom, gong drum, tabla, bodhran, tambourine, frame drum, timpani, kettle drum, timbale, doumbek, darbuka, tenor drum, marching drum, hand drum
banjohead = pitted head, dented head, coated head, natural skin, skin replaced, goatskin, goat skin, tucked skin, skin lapped, lapped a skin, reskinned, new skin, skin gone slack, slack skin, skin burst, skin split, skin tore, burst skin, hide stretched
drumtuning = drum won't tune, drum tuning, won't tune up, dead sounding drum, drum sounds dead, ringy drum, overtones ring, drum rings too long, tune the drum, uneven tension, seat the head, wrinkle in the head, detunes while playing, lugs detune, tension rods back out, rods loosen, goes slack while playing
bearingedge = edge of the shell, edge recut, recut edges, edge damaged, shell edge, flat spots on edge, bearing edges trued, trued edges, edge chipped on drum
shellround = out of round, shell out of round, egg shaped, oval shell, shell warped, shell delaminated, ply separated, shell ply, plies separated, ply lifting, delaminated ply, reinforcement ring, shell crack, cracked shell, shell split, shell glued
drumwrap = drum wrap, wrap lifting, wrap peeling, wrap bubbled, wrap shrunk, rewrapped, wrap seam, covering coming off shell
snare = snare wires bent, bent snares, snare buzz, snares rattle, snares won't switch off, snare won't throw off, throw off broken, throw off slips, strainer slips, strainer lever, snare cord, snare strap, snare bed, snare bed cut, gut snares, butt plate, butt end, snare rattles when bass plays, sympathetic snare, sympathetic buzz, snares choked, snare wires replaced, snares loose, snare drops off
lugdrum = lug rattle, lug spring, lug spring rattles, lug stripped, stripped lug, lug nut, swivel nut, lug casting, cracked lug, lug packed, wool in the lug, felt in the lug, tension rod stripped, tension rod bent, rod stripped, rod seized in the lug, claw hook, rim bent, bent rim, bent hoop, hoop bent, warped hoop, hoop warped, counter hoop, counterhoop, rim clip, casting cracked
drumhardware = cymbal stand, hi hat stand, hihat stand, hi hat pedal, hihat clutch, hi hat clutch, drum throne, stool sinks, stand collapses, stand sinks, leg won't stay, wing nut, wing bolt, tilter, memory lock, spur, bass drum creeps, bass drum slides, tom mount, tom bracket, tom arm, tom sags, tom droops, l arm, ball socket mount, memory clamp, rubber foot, boom arm, stand clutch, threads of stand stripped
drumpedal = bass drum pedal, kick pedal, kick drum pedal, beater, beater slips, beater loose, beater falls off, beater shaft, pedal chain, chain drive, pedal spring broken, footboard, foot board, pedal strap broken, double pedal, slave pedal, universal joint, pedal bearing, pedal squeaks when played, hinge squeaks, pedal hinge
cymbal = cymbal crack, crack in the cymbal, cymbal split, edge crack, cracked edge of cymbal, crash cymbal, ride cymbal, hi hats, hihats, stop drilled, stop hole, drilled the end of the crack, crack ground out, lathed down, bell hole worn, keyholed, cymbal sleeve, felt washer, gong
mallet = xylophone, marimba, vibraphone, vibes, glockenspiel, metallophone, kalimba, thumb piano, steel pan, steelpan, handpan, tubular bells, bar cord, bar cord broken, bar suspension, resonator tube, pan tuned, rosewood bar, cracked bar
edrum = electronic drum, drum trigger, trigger pad, drum pad, pad doesn't trigger, mesh head, piezo trigger, trigger dead, trigger cone, trigger sensor
# As it is written down at the bench
lugdrum = loses its tuning at one rod, one rod loosens, rod loosens, rod backs out, nylon washer on the rod, lug lock, rod winds out
snare = throw off slips open, lever slips open, snares drop, cam worn, snares fall off, snare won't stay on
keystick = balance hole, balance hole tight, eased the bushing, bushing eased, key mortise, rail pin polished
tuningpin = pin creeps, string drops a tone, pin set deeper, pin shimmed, sandpaper shim
`;
