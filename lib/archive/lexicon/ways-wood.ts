/**
 * Further ways to name what is of wood, strings and hardware, and what blows, beats and squeezes; common practice, no
 * source. Written as `synonyms.ts` is; a word that is kept there too gets these ways beside its own.
 */
export const woodLines = `
# Neck and frets
stringheight = action is high, action high, action low, lower the action, lowered action, raise the action, too high to play, high up the neck, like climbing, strings high off the neck, bring the strings down, strings down, mile high, finger killer, easier to play, plays hard, unplayable above, strings sit high, high strings, hard on left hand, string clearance at twelfth, height at the twelfth, stiff feeling
relief = straight neck, neck straight, neck too straight, curve in neck, bow in the neck, bent neck, neck pulled up by strings, gap at seventh fret, gap at the eighth fret, hollow in the middle, upward bow, dip in the neck, neck has a dip
backbow = bowed backwards, neck bent backwards, neck too far back, hump in the middle, arched back, bends back
trussrod = rod, tweak the rod, truss adjustment, rod turned, turn of the rod, adjusting rod, allen key in neck
stuckrod = rod frozen, rod jammed, frozen rod, rod spins, rod maxed, bottomed out rod, nut rounded off, stripped allen, rod does nothing, rod has no effect, broken rod, rod snapped, rounded nut on the rod
necktwist = twist in the neck, twisted, propeller, corkscrew, corkscrewed, twists
fretbuzz = buzzy frets, rattle on open, fretting out, frets out on bends, bends choke, note chokes, chokes when bent, strings slap, string slap, buzz on the low, buzz up high, buzz at the fifth, buzzes open, fizzes, notes fizz, rattles against frets, clanks, dead frets buzz, buzz above the twelfth
frethigh = popped frets, fret has lifted, lifted frets, fret came up, fret end up, fret end lifted, fret rocks, rocking fret, fret loose in slot, proud frets, high spot, fret sprung, one high fret, tall fret
fretlevel = levelled, level and crown, leveled frets, sanding beam, levelling beam, levelled and crowned, crowned, recrowned, fret file, crowning file, dressed, stoned, fret polish, polish frets, skim the frets, fret leveling, frets stoned, levelled the frets, rub frets down, mill frets
refret = new wire, new fretwire, frets replaced, frets out and new, stainless frets, jumbo frets, first five frets, rewire neck
fretwear = worn fret, dips in the frets, ruts, rutted, frets pitted, frets low, low frets, frets down to nothing, worn out frets, flat spots on the frets, trenches, cut grooves, string marks in the frets
fretsprout = fret ends, ends sharp, sharp ends, sprout, sprouted, ends stick out, catch my hand, ends poking, rough edge of neck, edge like a saw, ends catching, snags hand, frets scratch, fret tang
fretpull < fret = pulled frets, pull frets, fret pull, fret pullers, frets pulled, pulling frets, heat the frets out
fretless = defret, defretted, defretting, fretless conversion, no frets, frets removed for good, fret slots filled, filled fret slots, unfretted, lined fretless, made fretless, take all frets out, veneer in the slots
fallaway = drop off, rise at the body, rising at the body, kick up, tongue kicks up, ramp at the end, hump over the body, body end hump
deadspot = one note dead, note decays fast, note fades fast, no sustain on, note won't ring, dies quickly, notes die, loses sustain, decays quickly, plonk, thunk, thunky
intonation = intonate, intonated, out at the twelfth, doesn't play in tune, does not play in tune, not in tune up the neck, fretted notes sharp, sharp higher up, sharp up high, flat up high, flat higher up, out of tune with itself, chords out, sounds out up the neck, octaves wrong, twelfth fret doesn't match, notes sharp further up, tunes open but not fretted, in tune open, sharp above
nut = bone at headstock, zero fret
nutslot = slots cut, slot cut, slot widened, deepened slot, slots filed, cut slots, regulate nut
nutlow = nut slot worn, slot worn down, buzz on open string, open string rattles, open buzz, worn through at the nut, string sits too low in nut, slot gone deep, open note buzzes
nuthigh = high first fret, stiff first position, hard at the first fret, f chord hard, hard f chord, first fret chords sharp, barre at first fret, hard to barre, high action at nut, pushes sharp at first, first fret too high
nutbind = groove too tight, slot too tight, slot too narrow, groove too narrow, string jams in slot, string stuck in slot, string wedged in slot, pings at the nut, sticks at the nut, string hangs, hang up, catching, catches at the nut, grabs, tink, pling, tuning jumps, jumps in pitch, jumps when tuning, string creaks, sticky nut, pinched in the slot, tight nut
newnut = blank for nut, carved a nut, shaped a nut, cut from bone, made new nut, nut made from bone, replaced the nut, unbleached bone
nutloose = nut missing, nut dropped off, nut slid out, nut glued back, reglue nut
slotfill = build up slot, built up slot, fill the slot, filled the slot, glue and dust, fill low slot

# Tuning, strings, hardware
tuningdrift = won't return, doesn't return, won't come back, doesn't come back to zero, doesn't zero, won't stay in pitch, tuning won't hold, tuning goes off, drops in pitch, pitch drifts, drops flat, goes out, out of tune by second song, constantly retuning, always tuning, unstable tuning, drift in tuning, wanders, wandering pitch, comes back out of tune, tuning off after, does not come back to pitch, doesn't return to pitch, won't return to pitch, returns flat, tuning all over the place, loses its tuning, slips in pitch
tuner = tuning machines, machine heads, tuner set, tuning gear, geared tuner, three on a plate, enclosed tuner, open gear tuner
tunerslip = worn machine, tuner stiff to turn, grinding tuner, tuner grinds, tuners grind, gear worn, worm gear, tuner stripped, tuner broken, broken tuner, tuner post bent, tuner backlash, backlash, tuner crunches, tuner rough, tuner turns without, cog, broken cog, tooth missing, teeth missing, snapped shaft, tuner does nothing
tunerbutton = button crumbled, crumbling button, tuner button, plastic button, buttons crumbled, melted buttons, broken button, button fell apart
tunerbushing = bushing, bushings, ferrule, press fit bushing, grommet
string = strung up, restrung, strings on, old strings, rusty strings, string set
stringbreak = breaks e strings, string always breaks, breaks at the bridge, strings keep going, eats strings, pops strings, popping strings, broken string, string keeps breaking, snapped string
saddle = saddles, bridge saddle, string saddle, barrel saddle
saddlelow = sand the bottom of the saddle, bottom of saddle, saddle shaved, took the saddle down, saddle taken lower, lowered the saddle, file saddle bottom
newsaddle < saddle = new saddle, saddle made, made a saddle, bone saddle made, replacement saddle, cut a saddle, fitted a new saddle
saddleworn = notch in saddle, notched saddle, saddle notches, saddle grooved, saddle sharp, saddle edge sharp
bridge = bridges, string anchor
tremolo = trem, whammy, vibrato unit, wiggle stick, dive, dive bomb, dives, tremolo unit, six screw trem
floating = float, floats, knife edged, balanced trem, level the trem, trem tilted, tremolo tilted, tips up, leaning forward trem, trem sits too high
springclaw = claw, springs in the back, trem springs, back springs, added a spring, tremolo block springs
tailpiece = bushing stud, tailpiece stud, studs pulling out, stud lean, leaning stud
strapbutton = strap buttons, strap screw, buttons for the strap, strap peg hole
strapoff = strap screw pulled, button fell out, button came out, button loose, strap pulls out, strap pops off, strap slips off, strap keeps coming off, screw hole for the strap, loose strap pin
stripped = screw won't grip, wont bite, screw just turns, screw turns and turns, thread gone, threads gone, hole too big, screw holes worn, chewed hole, rounded screw, screw head chewed, mangled head, cross threaded
plugfill = matchsticks, plug and drill, plugged hole, dowels, glued in a dowel, hardwood plug, toothpicks, plugged the holes, filled holes, redrilled, fill and redrill, wooden plug
pickguard = guard, tap plate, golpeador
pickguardlift < pickguard = curling pickguard, pickguard curls, pickguard lifting, pickguard coming off, warped pickguard, pickguard shrunk, curled scratchplate, pickguard peeling, guard curling
case = hard case, gig bag, case latch, case hinge, case handle, flight case

# Bodies, glue, cracks
crack = cracks, split open, splits, fissures, opened crack, crack opened, cleft, fracture in wood, opened up, opens up
topcrack = crack in the top, top has cracked, crack below the bridge, crack behind the bridge, front cracked, crack by soundhole, soundhole crack, table crack, spruce split, top is split, split in the top, crack in the table, crack in the belly, split front, cracks in the spruce, soundboard split, crack beside the fingerboard, crack from the f hole, f hole crack, wing crack
sidecrack = side split, side caved in, punched in side, hole in side, hole in the side, dent in the side, cracked rib, impact crack
backcrack = back split, crack down the back, split in the back, back has cracked, crack in the back, soundpost crack in back
patch = hole patched, patched hole, inlaid patch, let in a piece, wood patch
cleat = cleats, studs, reinforced crack, spruce patches, cross grain patches, little diamonds, linen strip
brace = braces, bars inside, ladder brace, back brace, lattice brace
loosebrace = brace has come loose, brace came unstuck, bracing loose, braces loose, brace failed, brace end loose, tap and it buzzes, buzz when tapped, ladder brace loose, loose braces, brace ends lifted, brace has lifted, brace letting go, bars came off, back brace off, brace fell off, reglued brace, reglue brace, brace reglued, brace glued back, glue brace back, glued the brace
seamopen = seam come open, back come unglued, back came off, top came off, joint opened, joint open, lower bout open, open at the bout, rib joint open, sides coming away, edge lifting, gap at the seam, gap along the edge, back edge open, seam has gone, buzz at the edge, edges open, lining joint, open bout, open lower bout, upper bout open, glue line open, seam unglued, seam come apart, back separating, top separating, separating, split seam
kerfing = lining, linings, kerfed lining, kerf
bellying = belly up, bellied up, pulled up top, top pulling up, top has risen, risen top, dome in the top, domed, bulged, bulge behind bridge, top rising, bulge below bridge, deformed top, distorted top, top like a hill, bump behind the bridge, swollen belly
sunken = dip by the soundhole, sunk, sunken belly, belly sunk, collapsing, collapse, collapsed, top dropped, dished top, soundhole dip, top has dropped, hollow by soundhole
bridgelift = bridge up at the back, bridge lifting at the back, back edge of the bridge, bridge come up, bridge has lifted, bridge started to lift, bridge pinged off, bridge ripped, bridge popped off, bridge flying off, bridge torn off, bridge fell off, bridge has come off, reglued bridge, reglueing the bridge, bridge glued, glued the bridge, bridge back on, glue the bridge down, bridge reglued, daylight under bridge, card under the bridge, bridge adrift, bridge let go, bridge came unstuck, bridge unstuck
newbridge = carve a bridge, carved bridge, bridge made, made a bridge, bridge from blank, bridge carving, bridge blank fitted, replacement for the bridge, feet fitted, fitting bridge feet
bridgeplate = pad inside, plate under the bridge, pin holes worn, worn pin holes, string balls, ball ends chew, ball ends pulling through, chewed up holes, plate patched, plate cap
bridgepin = pins, pins won't seat, pin pops, pins pop, unslotted pins, slotted pins, pin holes, pins lift
neckreset = reset, neck steamed off, steamed the neck, neck removed and, reset neck angle, steam the joint, dovetail steamed, shave the heel, heel shaved, heel trimmed, took the neck off, neck refit, neck refitted, neck out and back
looseneck = neck joint open, neck joint loose, heel gap opened, gap under heel, heel lifting, heel has opened, neck pulling away, neck rocks, neck rocking, neck has moved, neck came out, neck came off, neck shifted, neck shifted sideways, wobbly neck, neck pocket loose, crack at the heel, heel crack, heel loose, heel came away, neck came loose, neck come loose
brokenhead = headstock hanging, head snapped, peghead snapped, peghead cracked, peghead broke, smashed headstock, decapitated, snapped off behind the nut, crack behind nut, scroll snapped, scroll came off, peghead came off, head hanging by, neck snapped at the headstock, clean break at the headstock, pegbox cracked, smile crack, headless, head fell over
splice = spline, splined, splines, grafted, new piece of wood, new wood, overlay, carbon carbon rod
glue = gluing, glued up, stuck back, glued back, reglued, regluing, adhesive bond
hideglue = hot glue, hide, scotch glue, hoof glue, gelatine, gelatin, hide glued, hot hide
superglue = ca, cyano, thin super, instant glue
epoxy = two pack, five minute epoxy, epoxied
clamp = clamps, clamped up, cramped, squeezed, go bar, go bars, jack inside, turnbuckle, spool clamp, band clamp, weights on it, tourniquet, rubber tube wrapped, surgical tubing, caul clamped
steam = steamed, steamed off, steamer, espresso machine, heated knife, hot spatula, palette knife, separating knife, soften glue, softened glue, iron to soften
fingerboardoff < fingerboard = fingerboard loose, fingerboard lifting, board lifting, board came off, fingerboard came off, fingerboard unglued, fretboard lifting, fretboard coming off, fretboard unglued, fingerboard come unstuck, board unglued, fingerboard separating, fingerboard extension loose, fingerboard off, gap under fingerboard, reglue the fingerboard, fingerboard reglued
planed = board planed, trued the board, shoot board, board shot, true up board, resurfaced board, resurface fingerboard, scoop in the board, scooped board, ruts in the board, grooves in the board, worn fingerboard, board dressed, fingerboard worn, board worn, fingerboard resurfaced
binding = bindings, purfled, edging
bindingloose = binding has come away, binding lifted, binding pulling away, binding popped, binding gone, waist binding, gap at the waist, rotten binding, binding crumbled, binding gassing, binding turned to dust, binding glued back, binding reglued, binding adrift
inlay = inlays, dots, side dots, dot fell out, inlay fell out, missing inlay, pearl, shell, marker fell out
finish = finished, clearcoat, polyester, polyurethane, poly, oil varnish, spirit varnish, topcoat, clear lacquer
finishdamage = chips, chipped, dings, dents, dinged, gouge, gouged, scuffs, belt rash, buckle rash, cracked lacquer, lacquer checking, checked lacquer, crazed, craze, flaking, flakes, blister, blistered, blush, white patch, blooming, haze, hazy, worn finish, finish worn through, sticky neck, tacky, tacky finish, gummy finish, stand burn, stand marks, strap ate finish, melted lacquer, varnish worn, varnish chipped, varnish damage, varnish crackle
touchup = drop filling, filled chip, fill the chip, colour matched, colour match, levelled and buffed, polished out, buffed out, rubbed out, cut back and polished, lacquer burn in, dent steamed, dent raised, raise dent, retouching, retouched, retouch varnish, airbrush
stain = stained, dye, dyed, tint, tinted
mould = fungus, smelly case, mildewed, musty smell, mothballs
woodworm = bug holes, powder post, insect, flight holes, frass

# Bowed
soundpost = ame, sound stick, post position
soundpostdown = post is down, post has gone, fallen post, post rattling around, post rolling about, post lying inside, stick rolling about, stick inside came loose, dowel rolling, dowel inside fell, post tipped over, post collapsed
postset = post refit, post refitted, post recut, refitted post, refit post, stood it back up, stood back up, post reset, reset post, nudge the post, tapped the post, post cut, cut new post, made a post, fit a post, fitted a post, moved the post, move the post, post put up, s shaped setter, new post
bassbar = bar under the bass side, new bass bar, bar crack
bow = bow stick, stick of the bow, bowstick, arco
rehair = rehairing, hair replaced, haired, hank, hank of hair, hank of horsehair, new horsehair, hair worn out, bow needs hair, hair shedding, sheds hair
bowdamage < bow = broken bow, bow broke, bow snapped, bow tip broken, head of the bow broke, warped bow, bent bow, bow warped, bow tip cracked, bow camber, recamber, lost camber, bow straightened
bowgrip < bow = thumb leather, bow lapping, bow winding, bow wrap, bow leather, grip leather, whalebone, silver wire wrap
frog = bow nut, frog slide, eyelet, frog ferrule, bow screw stuck, frog wobbles, pearl slide, screw button
pegslip = pegs won't stay, pegs won't hold, pegs pop, pegs unwinding, peg won't stay, peg lets go, pegs let go, pegs jump, peg creaks, peg jumps, peg squeaks, peg won't turn, pegs too tight, pegs tight, pegs jammed, pegs stiff, stiff pegs, pegs seized, swollen pegs, sticking pegs
pegbush = pegs fitted, fit pegs, new peg, bushed pegbox, bushing pegs, pegs reamed, peg hole worn, oval peg hole, pegs refitted, shave pegs, peg shaper, peg shaved, pegs shaped
pegbox = peg box, cheek crack
bridgewarp = bridge bending, bridge curled, bridge tilted, bridge pulled forward, tilted bridge, bridge bowed, bridge slid, bridge fell down, bridge collapsed, bridge leans, leans forward
tailgut = tail nylon, gut broke, tailpiece let go, tail adjuster, tailgut snapped, tailgut broke, tailpiece flew off, tailpiece wire
tailpiece = tail piece, tail hinge, tailpiece hinge
endpin = endpin slips, spike slips, spike sinks, pin slides, endpin slides, spike rubber, endpin rattles
chinrest = chinrest buzz, chin rest loose, chinrest cork
fineadjuster = fine tuners, screw adjuster, e adjuster
wolf = howling note, wolf killer, wolfy, note wobbles, wavering note, note breaks, note won't speak, wolf eliminator tube, pulsating note, beating note, note jumps an octave
responsepoor = slow to speak, won't speak, slow response, chokes under the bow, doesn't respond, hard to start notes, tight sound, closed sound, pinched sound

# Banjo, ukulele, harp and their kin
banjohead = frosted head, calfskin, calf skin, plastic head, drum head, head torn, new head, head replaced, split skin, torn skin, burst head, head split
headslack < banjohead = slack head, head slack, loose head, head loose, head tension, drum dial, tension the head, head tightened, head tighter, tighten the head, head tuned, head not tight
tensionhook = hooks and nuts, bracket band, bracket nut, bracket shoe, tension hoop, hoop, j hook, stripped hook
coordinatorrod = coordinator, dowel stick, rim rod, neck rod of the banjo
tonering = tone ring, flathead ring, rim
fifthpeg = fifth string peg, 5th peg, fifth tuner, short string peg
resonator = resonator cone, biscuit, biscuit bridge, spider bridge, spider cone, cone buzz
harp = lever harp, sharping lever, harp lever
zither = autoharp, chord bar, hammered dulcimer
hurdygurdy = hurdy gurdy, wheel and crank, trompette, chien

# Wind, brass, reeds
clarinet < woodwind = clarinets
flute < woodwind = flutes, piccolo, fife, whistle flute
saxophone < woodwind, horn = sax, saxes, alto sax, tenor sax
oboe < woodwind = oboes, bassoon, cor anglais
recorder < woodwind = treble recorder, descant recorder
trumpet < brass, horn = cornet, flugelhorn
trombone < brass, horn = sackbut
frenchhorn < brass, horn = french horn
tuba < brass, horn = euphonium, sousaphone
woodwind = wood wind, wind instrument, reed instrument
brass = brass instrument, brasswind
horn = horns
snaredrum < drum = snare drum
drum = tom, bass drum, kick drum, floor tom, drums, percussion, conga, bongo, djembe, cajon
dulcimer = mountain dulcimer, lap dulcimer
pad = pads, key pad, leaking pad, repad, repadded, pad seat, pad seated, floated pad, skin pad
tenoncork = tenon cork, recork, recorked, neck cork, key cork, cork replaced, joint cork, cork too tight
airleak = wheeze, wheezes, wheezy, air escaping, air escapes, falls open by itself, drops open by itself, hissing air, air leak, leak light, won't seal, not sealing, leaks air, doesn't seal, feeler paper, cigarette paper test
keywork = mechanism, key mechanism, keys out of line, linkage, stack rod, hinge rod, hinge tube, bent key, key bent, rod and post, key rod, key clank, clanky keys, swedge, swedged, key spring, needle spring
stuckvalve = valve sticks, sticky valve, piston sticks, piston, rotor sticks, valve oil, lapped piston
slidestuck = tuning slide stuck, pull slide, slide pulled, hand slide, slide alignment
mouthpiecestuck = stuck mouthpiece, mouthpiece stuck, mouthpiece puller
dentout = dent rolled, dent removed, dent balls, rolled out, burnish dent, bell crease, creased bell
solderbrace = brace soft soldered, soft soldered
reed = reeds, reed plate, reed tongue, reed valves, reed leather, reed tuned, reed waxed, reed wax
bellows = belows, bellow folds, bellows folds, bellow, bellows tape, bellows leak, gusset, leaky bellows, bellows corner
accordion = accordian, accordions, piano accordion, squeezebox, concertina, melodeon, button box, squeeze box
buttonstuck = stuck button, button sticks, button stays down, key stays down, sticking key, stuck key, key sticks
harmonica = mouth organ, harp reed

# Percussion and keys
banjohead = batter head, resonant head
snare = snares, snare wires, throw off, strainer, snare strainer
bearingedge = bearing edge, bearing edges
lugdrum = drum lug, lug insert
cymbal = cymbals, keyhole crack
pianoaction = hammers, damper, damper felt, let off, key dip, hammer felt, jack spring, piano action
tuningpin = tuning pin, loose pin, pin block, wrest pin, wrest plank

# Making
buildneck = neck blank, carve neck, carve the neck, neck carving, neck profile, neck shaped
bendsides = bending iron, bent sides, side bending, bend the sides
thicknessed = thickness, thicknesser, planer, graduated, graduation, tap tone, tap tuning, thinned
mould = building form
template = templates, jig, fixture
joinboards = bookmatch, bookmatched, plates joined, jointed plates
rosette = soundhole ring
`;
