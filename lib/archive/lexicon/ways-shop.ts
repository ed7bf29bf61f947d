/**
 * Further ways to tell how a workshop works and deals: booking in, estimates, parts, refusals, warranty, shipping,
 * filming, tools, making; common practice, no source. Written as `synonyms.ts` is; a word that is kept there too gets
 * these ways beside its own.
 */
export const shopLines = `
# Dealing with the owner
bookin = taken in for repair, handed it over, arrived in the shop, came into the shop, job card, job sheet, intake photos, arrival photos, photographed on arrival, condition on arrival, state it arrived in
estimate = sum agreed, quotation, price agreed, agreed a price, agreed on the price, rough price, ballpark, ballpark figure, guide price, fixed price, price given, gave a price, told the price, how much I charged, final bill, total cost, cost of repair, labour charge, hourly rate, hours charged, hours of work, deposit, paid, unpaid, not paid, payment, invoice sent, discount, free of charge, no charge, on the house, didn't charge
approval = go ahead, gave the go ahead, said go ahead, agreed to the work, gave permission, permission, authorised, green light, waiting for the go ahead, waiting for an answer, waiting to hear, awaiting approval, awaiting go ahead, phoned the owner, rang the owner, called the owner, texted the owner, emailed the owner, asked the owner, spoke to the owner
declined = decided against, decided not to, owner decided not, chose not to, did not go ahead, costs too much, more than it's worth, more than the instrument is worth, worth less than the repair, not worth repairing, not worth the money, not worth fixing, write off, beyond repair, past saving, past repair, can't be saved, not repairable, unrepairable, irreparable, could not be fixed, gave up on it, sent it away, sent away unrepaired, sent back unrepaired, returned unrepaired, handed back as it was, gave it back untouched, refused the job, turned the job down, turned away, said I wouldn't, talked out of, advised against, advised not to, told not to bother, not to be touched, original condition kept, passed on to, sent to a specialist, sent to another shop, recommended another, outside my competence
warranty = came back with the same, back a second time, came back a second time, second visit, third time back, returned after a week, returned within, fault came back, fault returned, problem came back, trouble came back, recurred, reoccurred, redid it for free, redone free, my own repair failed, my repair failed, my repair let go, redo, redone, re repair, within a month
spareparts = spare part, spares, parts ordered, ordered new, on order, on backorder, waiting on parts, waiting for the post, waiting for delivery, awaiting parts, parts delayed, parts arrived, part came, wrong part came, wrong part sent, part unobtainable, unobtainable, no longer made, no longer available, discontinued, not made any more, nobody makes, can't get the part, hard to find part, donor, donor part, scavenged, salvaged part, from the scrap box, parts drawer, supplier, made the part myself, part made, made one from, machined a new, turned a new one, turned on the lathe, three d printed, 3d printed, printed part
collected = back to fetch, came to fetch, picked up by owner, collected by the owner, came to collect, ready to collect, waiting to be collected, not collected, never collected, uncollected, abandoned, storage fee, given back, went home, delivered back
shipping < drop = shipping damage, transit damage, damaged in transit, courier, airline, baggage handlers, sent by post, came in the post, came by courier, sent by courier, boxed up, packed, packed for the post, packaging, badly packed, bubble wrap, carton, box crushed, parcel, damaged in the post, broken in the post, broken in transit, damaged on the flight, broken on the flight, airline damage, hold of the plane, baggage, carrier claim
insurance = insurance claim, insurance company, insurance estimate, insurance report, claim form, loss adjuster, valuation, valued, appraisal, condition report, written report, damage report, assessor
urgent = needs it back by, gig tonight, gig on, gig tomorrow, before the gig, before the concert, going on tour, recording session, exam, rush job, rush, quick turnaround, same day, overnight job
agreement = consent, not to be shown, no photos, no pictures, face not shown, faces blurred, doesn't want to be on film, does not want to be filmed, asked not to be filmed, don't publish, private job
legacy = inherited, grandfather's, grandmother's, family heirloom, heirloom, sentimental value, late father's, found in the attic, found in the loft, found in a skip, bought at a car boot, bought at auction, auction, flea market, house clearance, junk shop, charity shop, school instrument, school loan, hire instrument, rental instrument, student instrument, pawn shop, bought second hand, second hand, secondhand, bought online
advice = advised, told the owner, told the customer, warned, warned the owner, care advice, how to look after, recommended, suggestion, explained to the owner, showed the owner
counterfeit = forgery, not what it says, label is false, false label, fake label, not real, not the real thing, wrong serial, doesn't match the serial, knock off, replica, relabelled
modified = home made repair, home repair, amateur repair, amateur job, bad repair, poor repair, last repairer, earlier owner, former owner, previous work, old work, repaired before, repaired badly, been glued before, badly glued, glued badly, epoxied before, butchered, hacked, hack job, cowboy, cowboy job, nailed, screws through, screwed together, wood screws, gaffer tape, duct tape, car filler, body filler, wrong glue, wrong glue used, white glue everywhere, super glue everywhere, glue everywhere, blobs of glue, glue mess
original = never touched, never opened, never been apart, never been repaired, untouched original, as it left the factory, factory original, factory joint, factory solder, first owner

# Diagnosing and testing
diagnose = find out why, find the cause, look for the fault, hunt for the fault, hunted down, narrowed down, process of elimination, ruled out, half split, swapped leads to find, swapped in a known good, known good, traced the fault, fault traced, traced the signal, followed the signal, followed the wire, poked around, prodded, pressed on the board, flexed the board, freeze and heat, divide and conquer
nofault = no fault found, could not find the fault, couldn't find anything wrong, found nothing wrong, nothing wrong with it, couldn't reproduce, wouldn't show the fault, fault would not show, worked fine here, works fine on my bench, behaved, behaves on the bench, can't make it fail, refused to fail
soaktest = soak test, soaked for hours, left running, left on for hours, left it on, ran for an hour, ran all day, long test, tested for an hour, test run, play tested, playtested, played it for an hour, test played, final test, final check, last check, signed off
secondfault = two faults, second fault, another fault, found another fault, two things wrong, turned out to be two
measure = took measurements, measured up, meter on it, read on the meter, meter reading, noted the reading, before and after readings, written down, noted down, calipers, vernier, micrometer, dial gauge, dial indicator, thickness gauge, depth gauge, feeler gauges, feelers, gauge blocks, tape measure, steel rule, scales, kitchen scale
recordsound = recorded the sound, recorded it before, sound before and after, before and after, before and after recording, compared before, comparison, a b test, played before, spectrum, frequency response, impulse, tap test
thermometer = hygrometer, humidity meter, humidity reading, moisture meter, relative humidity

# Handwork
remove = took to bits, took it to pieces, opened up the body, opened the back, opened the case, back taken off, took the back off, took the top off, top taken off, removed the top, removed the back, opened with a knife, knifed open, slid a knife, worked a knife, chassis out, pulled the chassis, took the chassis out, lifted off, eased out, tapped out, knocked out, pressed out, popped out the, screw out
brokenscrew = snapped screw, broken screw, screw snapped, screw broke, screw sheared, sheared screw, screw head snapped off, head sheared off, headless screw, screw stub, screw extractor, extractor, drilled out the screw, hollow drill, plug cutter, screw remnant, left hand drill, broken bolt, snapped bolt, bolt snapped, bolt sheared, sheared bolt
replace = swapped over, fitted new, new fitted, fitted another, fitted a replacement, replacement fitted, put another in, put a new one in, put a different, instead of the old, old one out, out with the old, upgrade
tight = tightened up, tightened down, pulled up tight, screwed up tight, wrench, spanner, nut driver, thread lock, threadlock, thread locker, lock washer, star washer, shakeproof washer, spring washer
grease = oil on the, drop of oil, light oil, machine oil, silicone grease, white grease, lithium grease, key oil
loosenheat = heated the joint, warm the joint, warmed the glue, heat to loosen, loosened with heat, heat lamp, heat pad, soldering iron on the screw, heat on the screw, hot air gun, hot knife under, warm knife, warm spatula, warm palette knife, damp cloth and iron, steam needle, hypodermic, syringe, injected, injected glue, syringed glue, glue with a syringe
glue = glued down, glued on, glued together, glue it back, stuck together, stuck it on, glue and clamp, glued and clamped, left to dry, left to set, cured overnight, clamped overnight, clamped for a day, dry run, dry clamped, squeeze out, squeezed out glue, glue reheated
cleanglue = old glue cleaned, cleaned off the old glue, cleaned out the old glue, cleaned the old glue, scraped the old glue, scraped off the glue, removed old glue, old glue off, vinegar on the glue, warm water and brush, glue residue, glue off the joint
clamp = clamped down, clamp pressure, spring clamps, deep clamp, deep throat clamp, long reach clamp, soundhole clamp, wedges and string, bicycle inner tube, rubber bands, elastic bands, sandbag, shot bag, vacuum clamp, magnets as clamps, weighted down
inspect = torch and mirror, torch inside, lamp inside, light inside, light through the f hole, dental mirror, phone down the soundhole, camera inside, magnifier, loupe, microscope, under the microscope, under the magnifier, ultraviolet, black light, uv lamp, uv light
sand = sanding block, sanding stick, four hundred grit, abrasive, sanded back, sanded smooth, rubbed smooth, steel wool, wire wool, emery
file = filed smooth, filed away, rounded file, mill file, gauged files, diamond file
drill = hand drill, pillar drill, drill press, bored out, countersink, countersunk
shape = trimmed to fit, fitted by hand, chalk fitted, carbon paper fit, fettled, reshaped, rounded over
taperedream = reamed out, end pin reamer
bend = bent out of shape, out of shape, misshapen, distorted part
straighten = bent straight, pressed flat, flattened out, trued up, brought back true
polishup = buffing wheel, buffed up, shined up, metal polish, brass polish, silver polish
machined = lathe, milled, milling machine, cnc, machine shop
template = holding jig, neck jig, cradle, neck rest, bench vice, padded vice
mouldmade = silicone mould, cast a copy, resin cast, casting resin, moulded a new

# Mishaps
drop = dropped on, dropped down the stairs, down the stairs, fell down stairs, fell downstairs, fell off the chair, fell off the hook, fell out of the case, fell from the stand, got knocked, got knocked over, kicked over, tripped over, someone tripped, dog knocked, cat knocked, kid knocked, child dropped, children dropped, tipped over, toppled, toppled over, slipped off the strap, strap slipped, strap broke, banged, got banged, bashed, bumped, hit a door, door slammed, slammed in the door, sat upon, someone sat on it, stepped on, trodden on, leant on, rolled over, backed over, crushed, squashed, fell on it, accidental damage, accident on stage, mic stand fell, stand fell, stand blew over, wind blew it over
heatdamage = in the hot sun, in the car all day, baked, cooked in the sun, close to the fire, near the radiator, next to a radiator, against a radiator, on the radiator, over a radiator, near the stove, near a heater, in the loft all summer, in the attic all summer, underfloor heating, house fire, fire damage, melted by heat
dried = dry room, dry weather, dry house, dry winter air, heating on, heating season, air conditioning, aircon, left by the heating, dried out over winter, over the winter, cold snap, moved abroad, came from the tropics, humidity too low, thirty percent humidity, shrunk with the dry
humidify = humidity raised, raised the humidity, humidity packs, humidifier in the case, case humidifier, sealed in a bag with, humid box, humidity chamber, humidity tent, slowly brought back
damp = got rained on, caught in the rain, roof leaked, leaking roof, water came in, water got in, dropped in water, fell in the river, fell in the sea, canoe, swollen with damp, swollen shut, wet through, soaked through, damp storage, damp room, damp house, damp garage, damp shed, unheated room, unheated church, church cold, boathouse, flood damage, flood water
mould = mouldy case, mouldy smell, mould in the case, mould inside, spores, mildew inside, white fur, smells of mould, grey fur
spill = drink spilled, spilled a drink, knocked a drink, beer spilled, wine over, wine spilled, coffee over, coffee spilled, tea over, tea spilled, cola over, drink went in, drink got in, sticky drink, sugary drink, poured over, liquid inside, liquid got in, liquid damage
animals = mouse, mice, mouse damage, mouse nest inside, gnawed, chewed by the dog, dog chewed, cat scratched, wasps nest, moth, moth damage
wornout = worn away, worn to nothing, falling to bits, falling apart, on its last legs, clapped out, tired out, badly worn, heavily worn
cutsout = playing up now, acting up, has a mind of its own, misbehaves, now works now doesn't
stuckpart = rusted tight, rusted up, rusted together, corroded solid, corroded together, seized up, seized solid, won't come off, won't come undone, won't come loose, won't undo, will not move, impossible to turn, glued solid, cold welded
rattle = something rattles, rattles around, rolls around inside, bits inside, loose bits, something has come loose, thing loose inside, vibrating, buzzes along, buzzes in sympathy, metallic rattle, tinny rattle, clicking inside

# Jobs and conversions
setup = full service, general service, serviced, once over, good going over, going through, overhaul, tune up, mot, made to play better, play better, plays nicely, feels better, strung and set up
leftconversion = converted to left handed, left handed conversion, restrung left handed, strung upside down, strung left handed, strings reversed, nut reversed, nut turned round, turned round for a lefty, set up left handed
stringconversion = converted to nylon, nylon conversion, twelve string conversion, baritone conversion, lower tuning, tuned down, down tuned, open tuning, five string conversion, tenor conversion
pickupinstall = pickup fitted to acoustic, pickup installed, fitted a pickup, pickup fitted, put a pickup in, install pickup, pickup swap, swapped the pickups, changed the pickups, new pickups, pickup upgrade, drop in replacement
buildnew = built from scratch, built a new, new build, own build, commission, kit build, parts guitar, assembled from parts
relicfinish = relic, aged finish, aged to match, distressed
weightloss = chambered, neck dive, neck heavy, head heavy

# Filming
camera = on film, on camera, on tape, recorded on video, video recorded, close up, closeup, second camera, overhead camera, phone camera, out of focus, forgot to film, camera off, camera stopped, card full, memory card full, camera battery died, battery of camera died, film missing, tripod, lights of the bench, microphone off, no sound on the film, sound missing on the film, take two, second take
`;
