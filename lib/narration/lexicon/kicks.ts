export interface KickEntry {
  readonly say: string;
  readonly sign: 'positive' | 'negative';
}

const UP = '(positive|plus|up|upwards|forwards|forward|right)';
const DOWN = '(negative|minus|down|downwards|backwards|backward|left)';
const VERBS = [
  '(kick|kicks|kicked|kicking|swing|swings|swung|swinging|jump|jumps|jumped|jumping|flick|flicks|flicked|twitch|twitches|deflects|deflected|moves|moved|shoots)',
  "(goes|went|going|reads|reading|get|getting|got|it's|gives|see|shows)",
];
const NOUNS = '(kick|swing|jump|deflection|flick|blip|pulse|spike|twitch)';

/** How a polarity kick is told. Only counted where the poles are being touched. */
export const KICKS: readonly KickEntry[] = [
  ...VERBS.map((verb): KickEntry => ({ say: `${verb} ..3 ${UP}`, sign: 'positive' })),
  ...VERBS.map((verb): KickEntry => ({ say: `${verb} ..3 ${DOWN}`, sign: 'negative' })),
  { say: `(it|that) 's [a] ${UP}`, sign: 'positive' },
  { say: `(it|that) 's [a] ${DOWN}`, sign: 'negative' },
  { say: `(positive|plus|upward) ${NOUNS}`, sign: 'positive' },
  { say: `(negative|minus|downward|backward) ${NOUNS}`, sign: 'negative' },
  {
    say: '(goes|went|kicks|swings|jumps|kicked|swung|jumped) the (wrong|other|opposite) way',
    sign: 'negative',
  },
  { say: '(goes|went|kicks|swings|jumps|kicked|swung|jumped) the right way', sign: 'positive' },
];

/** What is said while the poles are being touched with steel. */
export const KICK_SCENE: readonly string[] = [
  '(touch|touches|touching|touched|tap|taps|tapping|tapped|dab|dabbing) ..5 (slug|slugs|screw|screws|pole|poles|top|polepieces|screwdriver|steel|coil|down|magnet|on|it)',
  '(screwdriver|steel|magnet|needle) ..5 (slug|slugs|screw|screws|pole|poles|top|polepieces|coil|jumps|kicks|swings|goes|moves|deflects|side)',
  '(polarity|tap) (test|check|now|next|kick)',
  'now polarity',
  '(which|what) way ..3 (kicks|swings|goes|moves|jumps|kick|swing|go)',
  '(kick|kicks|kicked|needle|deflection)',
];
