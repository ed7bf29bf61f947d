/** How work is asked for, offered, found, done, left or declined. Names of people were made `client` before. */
export interface WorkCue {
  readonly say: string;
  readonly sort:
    | 'asked'
    | 'more'
    | 'offered'
    | 'found'
    | 'agreed'
    | 'done-after'
    | 'done-before'
    | 'not-done'
    | 'declined'
    | 'plan';
}

const WHO = '(he|she|they|who|client|customer|owner|lady|guy|bloke|chap|fella|gentleman|band|player)';
const WHO_HAS = "(he's|she's|they've|who's|they're|he'd|she'd|they'd|who'd|client's)";
const SMALL = "[just|also|only|really|mainly|basically|has|'s|have|said|then|now|obviously|'d|would]";
const SMALL2 = '[just|also|only|really|mainly|basically|then|even|sort|kindly]';

const list = (sort: WorkCue['sort'], says: readonly string[]): WorkCue[] =>
  says.map((say) => ({ say, sort }));

export const WORK_CUES: readonly WorkCue[] = [
  ...list('asked', [
    `${WHO} ${SMALL} ${SMALL2} (wants|wanted|want|needs|needed|requested|requests|fancies)`,
    `${WHO} would [also|really|just|rather] like`,
    `${WHO} ${SMALL} ${SMALL2} asked [me|us] (for|to)`,
    `${WHO} ${SMALL} ${SMALL2} asked [me|us] (if|whether) (i|we) (could|can|would|might)`,
    `${WHO} ${SMALL} ${SMALL2} asked [me|us] (if|whether) (i'd|i'll|we'd|we'll|i)`,
    `${WHO} ${SMALL} (asking|looking|hoping|after) [for|to|me] [to]`,
    `${WHO} is (asking|looking|hoping|after) [for|to|me] [to]`,
    `${WHO_HAS} ${SMALL2} (like|love|asked|wanting|after|looking|hoping|prefer) [me|us] [for|to]`,
    `${WHO_HAS} ${SMALL2} asked [me|us] (for|to|if) [i|we] [could|can|would]`,
    `${WHO_HAS} asked (if|whether) (i|i'd|we) [could|can]`,
    `what ${WHO} ${SMALL} (wants|asked|needs|wanted|like|likes) [for] [me] [to] (is|'s|was)`,
    `what ${WHO_HAS} (asked|after|wanting|like) [for] (is|'s|was)`,
    '(brief|request|plan) [here|today] (is|was) to',
    "(the|my|our) job [today|here|then|this] [time] (is|'s) [just|basically|simply] [to|a]",
    '(in|here) for',
    'brought (it|this|her|him|them|that) [in|over|round|along] (for|to)',
    'brought in (for|to)',
    '(been|was) asked (to|for)',
    'with a note asking [me] (to|for|if) [i] [could]',
    'a note ..3 (saying|says|asking) [please|can|could] [you|for] [to]',
    '(booked|checked) in for',
  ]),
  ...list('more', [
    'and [also|maybe|possibly] to (have|get)',
    'and for',
    'and to',
    '(plus|also) (a|an|new|some|the)',
  ]),
  ...list('offered', [
    "(i|we|i've|i'd|we've) [also|have] (said|told|offered|promised|agreed) [to] [him|her|them|client|that] [that|i'd|i'll|i|to|we'd|we'll] [i'd|i'll|i|would|to|we'd] [also|to] [would]",
    '(throw|throwing|chuck|chucking|thrown) in',
    '(throw|chuck) (him|her|them) in',
  ]),
  ...list('found', [
    "(i|i've|we've|we|i'd) [have|also|just|did|then] (noticed|notice|found|find|spotted|spot|discovered|clocked|see)",
    "(i've|i) [just|also] come across",
    'turns out',
  ]),
  ...list('agreed', [
    '(happy|okay|fine|good) for me to',
    '(says|said|told) [me] (to|go|yes|okay) [ahead] [and|with|to]',
    '(given|gave) me the (go|okay|nod) [ahead] [to|for] [do|on]',
  ]),
  ...list('done-after', [
    "(i've|i|we've|we|i'd|she's|he's) [now|also|just|have|already|finally|all|gone|got] [and|it|them] (done|fixed|replaced|cleaned|fitted|glued|repaired|cured|sorted|finished|changed|swapped|polished|levelled|leveled|dressed|rewired|restrung|soldered|resoldered|straightened|installed|adjusted|oiled|gave|put|pressed|tightened|recut|filled|crowned|shielded|lubricated|reset|made|cut|rehaired|reglued|serviced|biased|tidied|fit)",
    '(takes|taken|took) care of [the|that|those]',
    '(finished|done|completed) (the|with|with the|that|those)',
    'new (set|pair|one)',
  ]),
  ...list('done-before', [
    "[is|are|'s|'re|now|all|been|has|have|that's|gets] [all|now|been|finally|nicely|both|well|just] (done|sorted|fixed|finished|fitted|replaced|cleaned|glued|complete|completed|repaired|cured|installed|levelled|leveled|polished|crowned|straightened|gone|rewired|restrung|soldered|cleated|working|swapped|changed|mended|reflowed|reglued|resoldered|rebuilt|dressed|reset|oiled|serviced|biased|shielded|playing|going|recut)",
    "(is|are|'s|'re) [now|all|back|nicely|both] (in|on|up|gone|out)",
    '(on|in) (and|now)',
    'works [again|now|perfectly|fine|properly]',
    '(back|up) (and|in) (running|action|working)',
    'taken care of',
  ]),
  ...list('not-done', [
    "(i|i've|we|we've|i'd) (didn't|haven't|never|not|couldn't|hadn't|don't) [actually|even|really|yet|quite] (get|got|had|have|manage|managed|find|found|do|done|touched|touch|started|start|bothered|been|done|fit|fitted) [round|around|time|the|a|any|able] [to|chance|time] [to|for]",
    "(didn't|haven't|never) [actually|even] (get|got|gotten) (round|around|to|near|onto|as) [to|far] [as]",
    '(ran|run|running) out of time [for|on|to]',
    '(no|not|not enough|without|little) time (for|to) [do]',
    '(not|never) (done|been done|happened|happening|doing|going) [to] [happen]',
    "(will|'ll|going|that'll|they'll|it'll|'s|it's|they're|gonna|can) [just] [to] [have|to] [to] wait",
    '(leaving|leave|left|leaving) (the|that|those|this|it) ..3 (next|another|later|time|undone|now|time)',
    '(owe|owes) (him|her|them|client) (that|this|the|a|one)',
    "(didn't|couldn't|never) (manage|managed|do|fit|finish|start) [to] [the]",
    '(still|yet) to (do|be|fit)',
    "(didn't|won't|not) [going] [to|gonna] (happen|happening|get done)",
    '(skipped|skipping|skip|forgot|forgotten) [to|the|about]',
    "i (didn't|haven't) (do|done|touch|touched)",
    '(out|short) of (time)',
    "(isn't|aren't|wasn't|weren't|hasn't been|not been) (done|finished)",
    '(save|saving|leave|do) [it|that|them|the] for (next|another)',
  ]),
  ...list('declined', [
    `${WHO} ${SMALL} (didn't|doesn't|don't|did not|does not|won't) (want|need|fancy|like|care|fussed)`,
    `${WHO} ${SMALL} [says|said|told] ..2 (not to|no to|no thanks|leave it|leave that|don't bother|don't|skip)`,
    `${WHO} [he|she|they|'s|said|told|says] [me|he'd|she'd|they'd] (not|rather) [to|not|i] [bother|do|have|worry|didn't]`,
    `(told|asked) me (not|to leave)`,
    '(says|said) (not to|no to|no thanks|leave)',
    '(changed|change) (his|her|their) mind',
    '(turned|turning) (it|that|this|me|the) ..2 down',
    '(decided|deciding) (against|not)',
    'gone off (the|that) idea',
    '(happy|going|prefer|prefers|rather|fine) [to] (leave|live|keep) ..3',
    "(isn't|wasn't|not) (fussed|bothered|worried|interested) [about|in|with]",
    "(doesn't|didn't) want",
    '(passed|pass) on',
    '(said|says) (no|nope|nah)',
  ]),
  ...list('plan', [
    "(i'm|we're) [also] (going|gonna) [to]",
    "(i'll|we'll) [also] be",
    "i'm gonna",
    "(i've|we've|i) (got|need|have) to",
    "(i'll|we'll) [also|just|then]",
  ]),
];

/** Said in the same breath, it makes the work free. */
export const FREE_CUES: readonly string[] = [
  'for (free|nothing)',
  'free of charge',
  '(no|without) [extra|any] (charge|cost)',
  'at no [extra] (charge|cost)',
  'on the house',
  'as a (freebie|favour|favor|gift|present|bonus|thank)',
  'gratis',
  '(my|our) treat',
  'on me',
  "(not|won't) (charging|charge) [him|her|them|client] for (it|that|this)",
  'no extra',
  "(while|whilst|as) (i'm|i've|we're|i) [am] (in|at|here|got|on|there) [there|it|here|at]",
  'thrown in',
  'complimentary',
  "(won't|doesn't|not going to) cost (him|her|them|client)",
  'as a (returning|regular|loyal) customer',
  '(freebie|gratis)',
];

/** Things worked on. A found fault needs one; a done step counts as work only with one, or with a promise. */
export const WORK_PARTS: ReadonlySet<string> = new Set(
  `nut saddle bridge brace bracing fret frets string strings pot pots potentiometer jack socket switch selector battery pickup pickups tuner tuners machine heads head pegs peg soundpost post tailpiece
  cap caps capacitor capacitors valve valves tube tubes transformer speaker cone lead plug knob knobs covering cover grille handle binding neck fingerboard fretboard crack cracks fretwork electrics buzz crackle hum noise footswitch
  button buttons pickguard scratchplate endpin tailgut ring hooks hook bracket cable wiring joint joints rod finish fuse fuses crown setup bias recap ferrule bolt bolts screw screws bush bushing clip belt spring springs
  trem tremolo bridge plate pins pin label case lining seam seams edge purfling veneer inlay logo shim pocket action intonation shielding earth ground screen resistor resistors diode transistor transistors board trace chip relay fan bulb lamp
  pedal enclosure volume tone blend mute foot feet vellum armrest coordinator resonator bell scroll chinrest bow hair lower upper bout top back side sides rosette ladder strut struts cleat cleats kerfing tape tolex cloth castors wheel wheels chassis`.split(
    /\s+/,
  ),
);

/** Work as a customer would order it. */
export const SERVICES: ReadonlySet<string> = new Set(
  `setup rewire refret restring restringing level levelling leveling crown crowning dress dressing polish clean cleaning service servicing recap retube bias biasing repair repairs shield shielding regraft
  reset refinish overhaul rehair intonation swap upgrade replacement conversion rebuild`.split(/\s+/),
);

/** Who speaks of their own work, and words that put it into the time to come. */
export const FIRST_PERSON: ReadonlySet<string> = new Set([
  "i'll",
  "i'm",
  "i've",
  'i',
  "we'll",
  "i'd",
  "we're",
]);

export const FUTURE: ReadonlySet<string> = new Set([
  "i'll",
  "we'll",
  "i'd",
  "i'm",
  "we're",
  'will',
  'need',
  'needs',
  'gonna',
  'going',
]);

/** Before "done", these make it a wish or a condition. */
export const NOT_YET: ReadonlySet<string> = new Set([
  'once',
  'when',
  'if',
  'until',
  'before',
  'after',
  'get',
  "i'll",
  'will',
  'wants',
  'want',
  'like',
  'be',
  'need',
  'needs',
  'to',
  'not',
  "isn't",
  "haven't",
  "aren't",
  "didn't",
  'having',
  'gonna',
  'going',
]);
