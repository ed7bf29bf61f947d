/**
 * What dictation makes of the trade's words, two or three words at a time; common practice, no source. Written as
 * `synonyms.ts` is; a word that is kept there too gets these beside its own. Single words that are only spelled
 * otherwise stand in `word-forms.ts`.
 */
export const misheardLines = `
trussrod = trust rod, trust road, truss road, rust rod
fingerboard = fret bored, finger bored, finger bord
soundpost = sound poster, sound posed, sound boast
dryjoint = dry joined, soldier joint, dry giant, cold soldier joint, bad soldier joint
solder = soldiered, soldiering iron, re soldier
brokenhead = broken head stop, head stop broken, broken head stuck, head stock snapped
headstock = head stop, head sock
humbucker = hum booker, home bucker, hum bucket, hum burger
piezo = pie eso, p a zo, piazza pickup, pizza pickup
bias = buyers voltage
capacitor = capacity leaking, cap acid
tailgut = tail gutter, tailgate, tale gut
bridgeplate = bridge played, bridge plait
bridgepin = bridge pen
seamopen = seem open, open seem
binding = buying ding
bassbar = base bar
deadspot = dead pot
tunerslip = tuna slips, tuna loose
tuner = tuna, machine ed
nut = top not
saddlelow = sadly low, saddle slow
wolf = woolf, wolf knot
rehair = re hare, ray hair, rehire the bow
frog = bow fog
refret = re threat, re fred, read fret
fretlevel = fret lever, threat level
fretbuzz = fret bus, threat buzz, fret buds
relief = neck re leaf
cleat = cleet
hideglue = high glue, hyde glue, hi glue
clamp = calls and clamps
superglue = see a glue
footswitch = food switch
loosejack = lose jack
jack = jack suck it, out put jack
effectsloop = effects loupe, affects loop
reverb = re verb, river tank, reverb tang
redplating = read plating, red playing, red plaiting
tremolo = tremlo
wah = war pedal, wa wa, wow pedal
reed = read block, read tongue, reed blog
reedwax = read wax
bellows = below's, bell owes
tenoncork = tenant cork, tendon cork
pad = key pat
banjohead = valium head, vellum head
tailpiece = tale piece, tell piece

shim = shin in the pocket, shim stock
`;
