/**
 * What shows, what is behind it, what cures it, one trouble a line; common practice, no source. A question for
 * one of them looks for the others too, for less: what is asked as "it hums" was often noted as its cause.
 *
 *   signs | causes | cures
 */
export const troubleLines = `
# Noise and silence
hum, buzz, touchhum, noise | noearth, bridgeground, brokenwire | bridgeground, new ground wire, solder
hum, buzz | groundloop | groundloop, lift one end, star ground
hum, buzz, noise, rfi | shielding, unshielded, no shielding, singlecoil | shielding, copper foil
hum, buzz | filtercap, ripple, dried electrolytic | filtercap
hum | heater, unbalanced heater, hum balance pot, hum pot | heater centre tap, twisted heater wire, artificial centre tap
hum | bias, unmatched valve, powervalve | bias, matched pair
rfi, noise | noearth, shielding, unshielded cable | shielding, grid stopper
touchhum, hum | noearth, bridgeground | bridgeground
crackle, noise | pot, worn track, dc on pot, dirty wiper | contactcleaner, new pot
crackle | couplingcap, dc on pot | couplingcap
crackle, cutsout | jack, jack contact, bent contact, loosejack | bend contact, retension contact, new jack
crackle, noise | dryjoint, plate resistor, anode load resistor | solder, plate resistor
crackle, cutsout | valve base, valve socket, valve pin, socket pin | retension pin, clean pins, tighten socket
noise | transistor, plate resistor, preampvalve | plate resistor, preampvalve
cutsout, nosound | dryjoint, brokenwire, loosejack, jack contact | solder, new jack
cutsout, nosound | switch, switch contact, dirty switch | contactcleaner
cutsout | cable, broken cable, plug | new plug, resolder plug
cutsout, popping | switch, loose switch | contactcleaner, new switch
popping | pull down resistor, couplingcap, leaky capacitor | pull down resistor
nosound, outputlow | deadcoil, opencircuit | rewind
nosound | shortcircuit, stray strand, jack tip touches shield, hot touches ground | trim strand, heat shrink, insulated
nosound | batterydrain, battery clip, batteryleak | battery clip, new battery
nosound | fuseblows, rectifier, transformer | rectifier, transformer
nosound | effectsloop, return jack, switched contact | contactcleaner, clean return jack
nosound | reverb, reverb tank, broken tank wire, footswitch | reverb tank
nosound | blownspeaker, speaker wire | blownspeaker, recone
nosound | opamp, output transistor, trackrepair | opamp, socketed chip
nosound | powersocket, adapter, polarity | powersocket, protection diode
batterydrain | jack, stereo jack, battery switch, ring contact, left plugged in | stereo jack
batterydrain | leakage, shortcircuit, capacitor | capacitor
outputlow, weak | shortcircuit, shorted turns, coilsplit, deadcoil | rewind
outputlow, weak | magnet, weak magnet, pickupheight | remagnetise, pickupheight
outputlow, weak, distort | powervalve, tired valve, worn out valve, screen resistor | powervalve
outputlow, weak | opencircuit, cathode bypass, cathode capacitor | cathode bypass capacitor
outputlow, muffled | pot, wrong value, wrong pot | new pot, 500k
muffled | tonecap, pot, wrong value | tonecap, treblebleed
muffled | shortcircuit, pickup phase, cable | treblebleed
treblebleed | volumepot | treblebleed
hollow, outputlow, weak | outofphase, polarity | outofphase, swap wires, swap leads, swapped over, reverse leads, flip magnet, reverse magnet, reversed wires
hum | outofphase, polarity, coil direction, not hum cancelling | reverse wound
balance | polepiece, pickupheight, saddle, piezo | polepiece, saddle, reseat saddle
balance | piezo, saddle slot, uneven saddle, slot floor | flatten slot, square saddle
taper | pot, linear, wrong pot | taper
microphonic, squeal | waxpotting, loose coil, loose cover | waxpotting
microphonic, squeal, popping | valve, preampvalve | preampvalve, valve swap
squeal | lead dress, grid stopper, oscillation | lead dress, grid stopper
deadcoil | brokenwire, corrosion, start of coil, knocked | rewind, solder
shortcircuit | screw touches, bent lug, braid touches | insulated, tape, heat shrink
coilsplit | pushpull, switch | fourconductor
fourconductor, colourcode | trace, pinout, unlabelled, no label, unmarked | trace
trace, pinout | fourconductor, colourcode | continuity

onepickup | deadcoil, brokenwire, switch, shortcircuit, dryjoint | rewind, solder, contactcleaner
backwards | lugs swapped, volumepot, wired for left hand | swap outer lugs
crosstalk | coupled volumes, independent wiring | independent wiring, lugs swapped
# Amplifiers and pedals
redplating, burningsmell | bias, couplingcap, no bias, bias supply, grid leak | bias, couplingcap, bias resistor
redplating | powervalve, mismatched | powervalve, matched pair
fuseblows | rectifier, transformer, filtercap, powervalve, shorted valve | rectifier, filtercap, powervalve
fuseblows | shortcircuit, output transistor | output transistor
burningsmell | resistor, burnt resistor, transformer, screen resistor | screen resistor
distort | bias, couplingcap, powervalve, speaker, crossover | bias, couplingcap
distort, rattle | blownspeaker, voice coil | recone, blownspeaker
distort | battery, piezo, low battery | new battery
volumefade | valve, cathode, transformer, heat, thermal, capacitor | freeze spray, valve
volumefade, cutsout | dryjoint, heater | solder
hotchassis | noearth, two pin plug, death cap, leakage | mainslead, three core mains, safety earth
popping | standby, capacitor | standby
motorboating, squeal | filtercap, decoupling capacitor | filtercap
powersocket | dryjoint, trackrepair | powersocket, solder
rattle | loose screw, transformer bolt, valve retainer, speaker bolt, cabinet | tighten bolts
reverb | broken spring, reverb transducer, reverb plug | reverb tank

# Action, neck, frets
stringheight | relief, trussrod, neckangle, saddle, nuthigh, bellying | saddlelow, neckreset, shim, trussrod
stringheight | damp, dried, top moved | humidify, saddlelow
stringheight | bridgelift, neckangle | neckreset, bridgelift
fretbuzz | frethigh, backbow, relief, stringheight, nutlow, fretwear | fretlevel, trussrod, slotfill, newnut
fretbuzz | saddleworn, saddlelow, saddlerattle | saddle, shim
fretbuzz, rattle | saddlerattle, loose nut, loose tuner bushing, tunerslip | thread lock, tighten bushing
fretbuzz | dried, sunken | humidify
fretbuzz | fallaway, frethigh | fallaway, fretlevel, seat fret
deadspot | frethigh, fretwear, neck resonance, loose fret | fretlevel, glue fret, headstock mass, headstock clamp
deadspot, wolf | soundpost, body resonance, bassbar | wolf, postset
wolf | soundpost, tailgut, afterlength | wolf eliminator, postset, afterlength
nuthigh, intonation | nuthigh | nutslot, nut file
nutlow | nutlow | slotfill, newnut, shim under nut
nutbind, tuningdrift | nutbind | nutslot, graphite, widen slot
tuningdrift | tunerslip, nutbind, string winds, string slip, floating, springclaw, knife edge | graphite, tuner, springclaw
tuningdrift | pegslip, pegdope, pegbush | pegdope, pegbush
tuningdrift | looseneck, neckjoint, string tree, new strings not stretched, stretch | neck bolts, stretch strings
tuningdrift | floating, knife edge, worn knife edge, post thread | sharpen knife edge, new post, spring
intonation | stringheight, relief, saddle, fretwear, old strings, nuthigh | compensation, move saddle, new strings, saddle back
intonation | saddle, bridge position, bridge in wrong place, saddle slot | compensation, relocate saddle, bridge moved
stringbreak | saddleworn, nutslot, sharp edge, tuner, tuner hole | file edge, polish saddle, smooth edge
relief, backbow | trussrod, stringgauge, humidify | trussrod
relief | stuckrod | heatset, compression frets, planed
stuckrod | corrosion, stripped, over tightened | penetrating oil, washer, new nut, spacer washer
necktwist | heatset, damp | heatset, planed, refret
fretsprout | dried | file fret ends, humidify, bevel
fretwear | fretwear | fretlevel, refret
frethigh | frethigh, loose fret | seat fret, press fret, hammer fret, superglue, fretlevel
looseneck | neckjoint, stripped, hideglue | neck bolts, reglue, plugfill
neckangle | looseneck, bellying | neckreset, shim
brokenhead | drop | glue, splice, clamp
rattle | loosebrace, trussrod, loose rod, loose washer, knobloose, pickguard, battery, string end | loosebrace, tighten, felt, damped

stringedge | looseneck, neck shifted, nut spacing, saddle position, bridge position | newnut, straighten neck, neck bolts
nutloose, fretbuzz | nutloose, old glue | newnut, glue
saddlebroken | saddlelean | new saddle
strapoff | stripped | plugfill, longer screw
dampening | soundpost, seamopen, stringgauge, loosebrace | postset
stuckpart | corrosion | penetrating oil, heat
# Wood and bowed
crack, topcrack, sidecrack, backcrack | dried, drop, shrinkage | cleat, humidify, hideglue, clamp
topcrack | pickguardcrack, dried | cleat, pickguard
loosebrace, bellying | hideglue, drop, heat, hot car | glue, clamp, brace jack
loosebrace | rattle, buzz | glue, clamp
bellying, sunken | loosebrace, bridgeplate, stringgauge, humidity | loosebrace, bridge doctor bar, lighter strings
sunken, fretbuzz | dried | humidify
bridgelift | heat, hot car, hideglue, bellying, finish under bridge | clean off old glue, caul, clamp, glue
bridgeplate | ball end, bridgepin | bridgeplate, plugfill
bridgewarp | tuning pulls bridge, bridge feet | newbridge, steam, straighten
seamopen, buzz, rattle | hideglue, dried, shrinkage | hideglue, clamp, spool clamp
seamopen | weak, nosound | hideglue
soundpostdown, weak, rattle | soundpost, drop, strings all off | postset
soundpost, muffled | postset, post too tight, post too short | postset
pegslip | pegbush, dried, humidity | pegdope, pegbush
pegslip | damp, humidity | pegdope
tailgut | frayed, broken gut | tailgut
endpin | spike slips, worn collar | endpin
rehair | loose hair, broken hair, bow mite, worn hair | rehair
frog | worn eyelet, stripped | eyelet
strapbutton | stripped, drop | plugfill, longer screw
stripped | stripped | plugfill
bindingloose | shrinkage, rot | glue, tape, binding
finishdamage | drop, heat, rubber, damp | touchup
tunerslip | worn gear, stripped | new tuner
loosejack | bent contact, jack contact, tip contact, weak spring, lost its bend, spring contact | bend contact, bent in, retension contact
loosejack | stripped, nut loose, washer missing | lock washer, star washer, tighten nut
damp, mould | damp | dry slowly, clean
corrosion | batteryleak, sweat, sweaty hands, damp | clean, battery clip, vinegar
airleak | pad, tenoncork, bellows, key bent | pad, tenoncork, keywork
reed | blocked, corrosion | reed
stuckvalve | corrosion | stuckvalve
buttonstuck | blocked, spill | buttonstuck
tuningdrift, snare | drumhead, lugdrum | lugdrum
nosound, cutsout | keyboardcontact, ribboncable, spill | keyboardcontact, ribboncable
nopower, nosound | fuseblows, powersocket, mainslead, adapter, switch | fuseblows, powersocket, mainslead
whine | groundloop, adapter, supply | adapter, filtercap
microphonic, squeal, rattle | preampvalve, valve | preampvalve, replace valve
fingerboardoff | hideglue, dried, heatdamage | glue, clamp
newsaddle | saddleworn, saddlelow | newsaddle
headslack, muffled | banjohead, tensionhook | tensionhook
bowdamage | drop | splice, glue
responsepoor | soundpost, bridge | postset
bright | pot, wrong value | tonecap
pickguardlift | shrinkage | pickguard, glue
heatdamage | glue failed | glue, clamp
banjohead | split head, slack head, stringheight, muffled | banjohead, tensionhook
knobloose | split shaft, shaft, grub screw | spread shaft, tighten grub screw
counterfeit | serial, date, original | serial
# Pickups, controls and cables, further
onepickup, nosound | brokenwire, dryjoint, deadcoil, opencircuit | solder, rewind
opencircuit | deadcoil, brokenwire, dryjoint | rewind
onepickup, cutsout | switch, switch contact, dirty switch | contactcleaner, switch
deadcoil | corrosion, screw through the winding, knocked | rewind, solder
outputlow, muffled, bright | shortedturns | rewind
outputlow, hollow | coilsplit, brokenwire, deadcoil | solder
outputlow | preamp, battery, batterydrain | battery
outputlow, nosound | treblebleed, volumepot, pot | pot
taper, nosound, cutsout | pot, worn track, cracked track | new pot, pot
nosound, cutsout | jacktip, plug, cable | plug
jacktip | cable | jack
balance, cutsout, outputlow | piezo, saddle bottom not flat, dirt under the saddle | flatten slot, square saddle, piezo
touchhum, buzz | brokenwire | solder, bridgeground
batterydrain, batteryleak | batteryclip | batteryclip
crosstalk, backwards | wiringplan | wiringplan
# Amplifiers, pedals and keyboards, further
nosound, outputlow | preampvalve, loadresistor, dryjoint | preampvalve, loadresistor
nosound, hum | dcoffset, outputtransistor | outputtransistor
fuseblows, burningsmell | outputtransistor, rectifier, transformer | outputtransistor, rectifier
nosound, cutsout | outputtransistor, speaker relay, dryjoint | solder, relay
distort, outputlow | filtercap, loadresistor, preampvalve | filtercap, loadresistor
distort, outputlow | opamp, transistor, negative rail | opamp
redplating, fuseblows | couplingcap, filtercap | couplingcap
reverb | reverb, dryjoint, tank wire broken, preampvalve | reverb, solder
reverb, hum | phono lead, groundloop | phono lead
tremoloamp | optocoupler, capacitor, preampvalve | optocoupler
crackle, popping | loadresistor, valvebase, preampvalve | loadresistor, valvebase
volumefade, cutsout | dryjoint, outputtransistor, fan | solder, fan
warmsup | filtercap, dryjoint, valvebase | filtercap, solder
cutsout, nosound | effectsloop | contactcleaner
ampchannel | relay, footswitch, switching fet | relay, footswitch
rattle, buzz | cabrattle, speaker bolt | tighten bolts, cabrattle
bypassfault, nosound | opamp, transistor, dryjoint, trackrepair | opamp, transistor
bypassfault, footswitch | footswitch | footswitch
nopower | powersocket, adapter, protectiondiode, trackrepair | powersocket, protectiondiode
burningsmell, nosound | adapter, protectiondiode | protectiondiode
whine, hum | adapter, isolated supply | adapter
keyboardcontact | spill, ribboncable, corrosion | contactcleaner, clean
memorybattery | memorybattery, battery | battery
rotaryspeaker | belt perished, rotor motor | new belt
voicemic, cutsout, nosound | xlr, cable, dryjoint | solder, xlr
voicemic, muffled | dented grille, moisture, spill | clean
# Strings, wood and bow, further
stringheight | fallaway, frethigh, sunken, neckangle | fretlevel, neckreset, saddlelow
fretbuzz | frethigh, humidity, damp | frethigh, fretlevel
fretbuzz | nutlow, saddlelow | newnut, slotfill
deadspot | nutlow, saddleworn, frethigh | frethigh
balance, deadspot | stringgauge, old strings | new strings
rodrattle, buzz | trussrod | trussrod
rattle, fretbuzz | tunerbushing, tunerbutton, loosebrace, seamopen | tighten bushing
springnoise | springclaw, springs | foam in the springs
tuningdrift | stringwinding, slipping string, too many winds | restring, lock the winds
tuningdrift, strapoff | ukestrings | ukestrings
tunerslip, tuningdrift | tunerbutton, tunerbushing | newtuner
tunerbutton | gassing, crumbling | newtuner, new button
nuthigh, stringheight, intonation | newnut | nutslot
nutloose, tuningdrift | nutloose | glue
bridgecrack | bridgepin, dried | newbridge, glue
bridgeplate, bridgepin, stringbreak | bridgeplate | bridgeplate, bridgepin
crack | heatdamage, dried | cleat, crackglue
topcrack, sidecrack, backcrack | drop, shipping | cleat, crackglue, patch
sidecrack | drop | patch, splice, clamp
seamopen | drop, damp, heatdamage | hideglue, clamp
fingerboardoff | heatdamage, damp | hideglue, clamp
brokenhead | shipping, drop | glue, splice, hideglue
edgebroken, finishdamage | drop | splice, touchup
neckangle | bellying, neckjoint | neckreset, newbridge
soundpostdown | drop, stringchange, all strings off | postset
nosound, weak, responsepoor | soundpostdown, seamopen, soundpost | postset, hideglue
bridgewarp | stringtension, leaning | newbridge, straighten
pegslip, tuningdrift | dried, humidity | pegdope, pegbush
rehair, bowdamage | bowmite, bugs | rehair
frog, rehair | eyelet worn, bow screw | eyelet
bowdamage | drop, heatdamage | splice, bowdamage
fineadjuster, buzz, rattle | fineadjuster, chinrest | tighten
headslack, stringheight | damp, banjohead | tensionhook
resonator, buzz, rattle | resonator, biscuit | resonator
# What is blown, squeezed, struck
padleak, airleak | pad, keyregulation, bentkey, tonehole, jointcrack | pad, keyregulation, straighten
padleak | tenoncork, octavekey | tenoncork
stickypad | pad, spill | clean
keyspring, bentkey | drop | keyspring, straighten
bumpercork | felt, glue | bumpercork
swedgeplay | worn | swedgeplay
jointcrack | dried, heatdamage | superglue, pinned crack
tenonbroken | drop | splice, tenonbroken
octavekey | blocked, bentkey | clean, straighten
stuckvalve | lime deposit | chemclean, lapping compound
valveleak | worn | valveleak
valvealign | felt | valvealign
slidestuck | corrosion, lime deposit | heat, penetrating oil
handslide | brassdent, drop | straighten, dentout
mouthpiecestuck | drop | mouthpiecestuck
brassdent | drop, shipping | dentout
solderbrace | drop | solder
waterkey, airleak | waterkey | waterkey
redrot | corrosion | solder, patch
deadnote | reed, reedvalve, blocked, bassmachine | reed, clean
deadnote, reedtuning | reedwax | reedwax
reedtuning | corrosion, blocked | reedtuning
ciphering | pallet, keyspring, blocked, bentkey | pallet, clean
bellows, airleak | bellows gasket, bellows corner | bellows
buttonstuck | keystick, stickypad | key easing
buttonstuck, bassmachine | blocked, bent lever, drop | straighten, clean
pianoaction, keystick | damp, tight centre, spill | key easing, repinned
damperpiano | damper felt, bent damper | damper felt
tuningpin, tuningdrift | tuningpin, dried | oversize pin, cyano in the pin hole
snare, buzz | snare wires | snare
drumtuning | bearingedge, lugdrum, banjohead | bearingedge, banjohead
shellround | damp, heatdamage | glue, clamp
cymbal | drop | cymbal
drumpedal, drumhardware | stripped, worn | grease, tighten
# Around the job
warranty | glue failed, dryjoint | reglue, solder
modified | wrong glue, hideglue | cleanglue, hideglue
modified | wiringplan, dryjoint | wiringplan, solder
brokenscrew | corrosion | plugfill, screw extractor
nofault, cutsout | soaktest | soaktest
animals | woodworm | clean
`;

/**
 * Things, and ways of working, that many troubles have a part in: who asks for one of them asks for it alone, unless
 * it is itself what shows.
 */
export const plainThings = `
volumepot, tonepot, pot, jack, switch, cable, battery, capacitor, tonecap, conductor, singlecoil, humbucker, pickup, magnet, solder, valve,
powervalve, preampvalve, bias, heater, rectifier, transformer, filtercap, couplingcap, speaker, opamp, transistor, screw,
ground, string, stringgauge, saddle, nut, nutslot, fret, trussrod, bridge, bridgepin, pickguard, tuner, peg, soundpost, bassbar, glue,
hideglue, clamp, steam, humidify, humidity, drop, heat, plug, measure, continuity, original, serial, date, binding, splice,
waxpotting, wah, finish, standby, resistor, tape, insulated, footswitch, piezo, polepiece, pickupheight
`;

/** What has a part in so many troubles that it tells of none: nobody who asks for a trouble is shown these instead. */
export const commonThings = `
solder, clean, drop, glue, clamp, straighten, tighten, grease, heat, damp, humidity, corrosion, spill, blocked,
shipping, worn, felt, stripped, tape, insulated, cable, battery, pot, transformer, valve, pad
`;
