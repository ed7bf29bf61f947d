/** Word forms that suffix stripping does not bring together: the base form first. */
const irregular = `
  wind: wound
  sing: sang sung
  ring: rang rung
  break: broke broken
  bend: bent
  find: found
  wear: wore worn
  tear: tore torn
  blow: blew blown
  run: ran
  fall: fell fallen
  stick: stuck
  shake: shook shaken
  spin: spun
  swell: swollen
  hang: hung
  sink: sank sunk
  shrink: shrank shrunk shrunken
  buy: bought
  bring: brought
  make: made
  tell: told
  keep: kept
  slide: slid
  draw: drew drawn
  drive: drove driven
  freeze: froze frozen
  take: took taken
  give: gave given
  come: came
  go: went gone
  write: wrote written
  speak: spoke spoken
  choose: chose chosen
  rise: rose risen
  grow: grew grown
  throw: threw thrown
  catch: caught
  dig: dug
  lose: lost
  build: built
  sell: sold
  feed: fed
  bleed: bled
  hear: heard
  hold: held
  stand: stood
  sweep: swept
  creep: crept
  bind: bound
  strike: struck
  begin: began begun
  forget: forgot forgotten
  hide: hid hidden
  swing: swung
  foot: feet
  tooth: teeth
  half: halves
  knife: knives
  wolf: wolves
  shelf: shelves
  dry: dried drying dries
  analysis: analyses
  cello: celli
  loose: loosen loosened loosening looser
  crackle: crackly
  buzz: buzzy buzzes
  glue: glueing
  true: truing trueing
  rout: route router
  quiet: quieter quietly
  loud: louder loudly
  weak: weaker weakly
  thin: thinner thinly
  high: higher
  low: lower lowered lowering
  raise: raiser
  tight: tighten tightened tightening tighter
  deep: deepen deepened deeper
  wide: widen widened wider
  flat: flatten flattened
  straight: straighten straightened
  rattle: rattly
  hot: hotter
  cold: colder
  smell: smelt smelly
  burn: burnt burned
  spill: spilt
  waxpotting: potted
`;

/** Spellings of one word: the one that is kept first. */
const spelled = `
  colour: color colored coloring
  grey: gray
  aluminium: aluminum
  mould: mold
  mouldy: moldy
  centre: center
  metre: meter
  fibre: fiber
  millimetre: millimeter
  centimetre: centimeter
  neighbour: neighbor
  odour: odor
  vapour: vapor
  plough: plow
  sulphur: sulfur
  grease: greese
  draught: draft
  disc: disk
  lacquer: laquer lacquar
  gauge: gage guage guages
  cancel: cancelled canceled
  label: labelled labeled
  licence: license
  analogue: analog
  catalogue: catalog
  bevel: bevelled beveled
  level: levelled leveled levelling leveling
  channel: channelled channeled
  swivel: swivelled swiveled
  axe: ax
  vice: vise
  through: thru
  light: lite
  fuse: fuze
  plastic: plasticky
  kerfing: kerfed curfing kirfing
  tremolo: tremelo tremalo tremulo
  vibrato: vibrado vibratto
  piezo: peizo pezo piazo pieso piezzo
  solder: sodder soder soldder sauder
  ukulele: ukelele ukeleles ukuleles
  mandolin: mandoline mandolins mandalin
  violin: voilin violine
  accordion: accordian accordians acordion
  saxophone: saxaphone saxofone
  purfling: purfing perfling
  tenon: tennon tenen
  mortise: mortice
  ferrule: ferule ferral
  rosin: rozin
  vellum: velum
  capacitor: capaciter capasitor
  potentiometer: potentiometre potensiometer
  resistor: resister
  transistor: transister
  rectifier: rectifyer
  speaker: speeker
  pickguard: pickgard pickguards
  fretboard: fretbored
  fingerboard: fingerbored
  intonation: intination entonation intonnation
  headstock: headstick headstocks
  humbucker: humbuker humbucher humbuckers
  shellac: shellack
  varnish: varnich
  bellows: belows
  pallet: palate
`;

/** Each form that people write, with the one that stands for it. */
export const wordForms: ReadonlyMap<string, string> = new Map(
  `${irregular}${spelled}`
    .trim()
    .split('\n')
    .flatMap((line) => {
      const [base = '', forms = ''] = line.trim().split(/:\s*/);
      return forms.split(' ').map((form) => [form, base] as const);
    }),
);
