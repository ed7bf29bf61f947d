/** Common given names that mean nothing else at a bench. */
const PLAIN = `
aaron abigail adam adele adrian agnes aidan alan albert alec alex alexander alexandra alfie alfred alice alicia alison alistair allan allen amanda amber amelia
amy andre andrea andreas andrew andy angela angie angus anita ann anna anne annie anthony antonio anya archie arnold arthur ashley audrey barbara barney
barry beatrice becky belinda ben benjamin benny bernard bernie beth bethany betty beverley bob bobby brad bradley brenda brendan brian bridget bruce
bryan bryn caitlin callum cameron carl carla carlos carmen carol caroline carolyn carrie catherine cathy cecilia charles charlie charlotte cheryl chloe chris christian christina
christine christopher claire clara clare claudia clive colin connor craig cynthia daisy damian dan daniel danielle danny daphne darren dave david dawson dean debbie
deborah debra declan deirdre delia denise dennis derek desmond diana diane diego dominic donald donna doreen doris dorothy doug douglas duncan dylan eddie edgar edith edmund
edward edwin eileen elaine eleanor elena eli elijah elizabeth ella ellen ellie elliot elsie emily emma emmanuel eric erica erin ernest esther ethan eva evan evelyn felix fergus
fiona florence frances francesca francis francisco fred freddie frederick gabriel gareth garry gary gavin geoff geoffrey george georgia georgina gerald geraldine gerard gilbert
gillian gina glenda glenn gloria gordon graham greg gregory greta gwen gwyneth hamish hannah harold harriet harry hazel heather hector helen helena henry herbert
hilary howard hugh hugo ian imogen ingrid irene iris isaac isabel isabella isla ivan ivor jackie jacob jacqueline jake james jamie jan jane janet janice jared jasmine jason
javier jean jeff jeffrey jenna jennifer jenny jeremy jerome jessica jessie jill jim jimmy joan joanna joanne jodie joe joel john johnny jon jonathan jordan jorge jose joseph
josephine josh joshua joyce juan judith judy julia julian julie juliet justin karen karl kate katherine kathleen kathryn kathy katie kay keith kelly ken kenneth kenny kerry kevin kieran
kimberly kirsty kurt kyle lauren laura laurence lawrence leanne lee lenny leo leonard leroy leslie lewis liam lilian lily linda lindsay lisa liz logan lois lorna lorraine louis louisa louise
lucas lucia lucy luis luke lydia lynn lynne mabel madeleine maggie malcolm mandy marcus margaret maria marian marie marilyn marina mario marion marjorie marlene martha martin martina
marvin mary mathew matilda matt matthew maureen maurice max megan mel melanie melissa michael michelle miguel mike mildred millie miranda miriam mohammed moira molly monica morris
muriel nadia nancy naomi natalie natasha nathan neil nellie nicholas nicola nicole nigel nina noah noel nora norma norman oliver olivia oscar owen pablo pamela patricia patrick paul paula pauline pedro
peggy penelope penny percy pete peter philip phillip phoebe phyllis polly priscilla rachel ralph raymond rebecca reggie reginald rhiannon rhys ricardo richard rick ricky rita roberta robert roberto robin roderick rodney
roger roland ron ronald ronnie rory rosemary rosie rowan roy rupert russell ruth ryan sally sam samantha samuel sandra sandy sara sarah sean sebastian seth shannon sharon shaun sheila shelley shirley sian
sidney silvia simon simone sofia sonia sophia sophie stacey stan stanley stella stephanie stephen steve steven stewart stuart susan susie suzanne sylvia tabitha tamara tania tara ted terence teresa terry
thelma theodore theresa thomas tilly tim timothy tina toby todd tom tommy tony tracey tracy trevor trish ursula valerie vanessa vera vernon veronica vicky victor victoria vincent viola violet vivian wallace walter
wanda warren wayne wendy wesley wilfred william winifred yvette yvonne zach zachary zoe
`;

export const GIVEN_NAMES: ReadonlySet<string> = new Set(
  PLAIN.trim()
    .split(/\s+/)
    .filter(
      (name) =>
        ![
          'amber',
          'kay',
          'jean',
          'violet',
          'viola',
          'hazel',
          'penny',
          'max',
          'mel',
          'lee',
          'rowan',
          'robin',
          'sandy',
          'dean',
          'daisy',
          'lily',
          'mike',
          'iris',
          'rick',
          'dawson',
          'jan',
          'carol',
          'heather',
        ].includes(name),
    ),
);

/** Names that are also words: only names after a word for a person, or with a capital within a sentence. */
export const NAMES_THAT_ARE_WORDS: ReadonlySet<string> = new Set([
  'amber',
  'art',
  'bill',
  'carol',
  'chase',
  'chip',
  'chuck',
  'cliff',
  'daisy',
  'dawn',
  'dean',
  'dick',
  'dot',
  'drew',
  'earl',
  'eve',
  'faith',
  'frank',
  'gene',
  'grace',
  'grant',
  'guy',
  'hazel',
  'heather',
  'hope',
  'iris',
  'ivy',
  'jack',
  'jan',
  'jean',
  'joy',
  'kay',
  'kit',
  'lance',
  'lee',
  'lily',
  'mark',
  'max',
  'may',
  'mel',
  'mike',
  'miles',
  'nick',
  'olive',
  'pat',
  'pearl',
  'penny',
  'pip',
  'ray',
  'reed',
  'rich',
  'rick',
  'rob',
  'robin',
  'rod',
  'rose',
  'rowan',
  'ruby',
  'rusty',
  'sandy',
  'skip',
  'sonny',
  'sue',
  'summer',
  'val',
  'viola',
  'violet',
  'wade',
  'ward',
  'will',
  'woody',
  'brown',
  'white',
  'black',
  'green',
  'wood',
  'woods',
  'hall',
  'hill',
  'cook',
  'baker',
  'carter',
  'cooper',
  'fisher',
  'king',
  'long',
  'short',
  'young',
  'page',
  'price',
  'marsh',
  'field',
  'fields',
  'banks',
  'bridge',
  'bridges',
  'neck',
  'stone',
  'west',
  'north',
  'field',
  'little',
  'wells',
  'bell',
  'case',
  'sharp',
  'flatt',
  'power',
  'powers',
  'nut',
  'head',
  'fox',
  'bird',
  'day',
  'key',
]);

/** After one of these comes a name. `[…]` may be left out; see words/phrases.ts. */
export const NAME_CUES: readonly string[] = [
  '(mr|mrs|ms|mister|missus|doctor|dr|professor|sir|lady|reverend)',
  "(his|her|their|name|guy's|lady's) name 's",
  '(his|her|their|whose|the|my) ..1 name (is|was)',
  "(name|names) 's",
  '(belongs|belonging|belonged) to',
  "(guy|bloke|man|lady|woman|chap|fella|feller|fellow|lad|girl|gentleman|gent|customer|client|someone|somebody|player|friend|mate|kid|boy|dude|owner|person|pal|buddy|guitarist|bassist|teacher) (called|named|by|who's) [the] [name] [of] [called|named]",
  '(my|his|her|our|their|old|good) [old|good|best|mate|friend] (mate|friend|pal|buddy|wife|husband|brother|sister|son|daughter|dad|mum|uncle|aunt|cousin|neighbour|partner|bandmate|teacher|colleague|boss|regular)',
  "(customer|client|owner) (is|'s|was) [a] [chap|lady|guy] [called|named]",
  '(the) (customer|client|owner)',
  '(thanks|cheers) [again] [to]',
  '(hello|hi) (to)',
  '(dropped|brought|sent|handed) (off|in|over|round|to|it) [off|in|over|round|to] [me] by',
];

/** Words that never are the name after a cue. */
export const NEVER_A_NAME: ReadonlySet<string> = new Set(
  `a an the my his her their our your its it he she they we you i me him them us this that these those is was were be been has have had do does did who which what when where why how
  and or but so if then than because as of to in on at by for from with about into over under up down off out back away again just only also very really quite not no yes yeah okay ok right
  now here there well like one two three four five six seven eight nine ten some any all both each every other another same old new good bad big little lovely nice great
  said says say told wants wanted asked asking called named came come comes coming got get going gone goes went rang rung plays played bought brought needs will would can could should may might must
  guitar bass amp pedal uke ukulele violin fiddle mandolin banjo instrument pickup pickups neck bridge string strings fret frets case somebody someone nobody everybody people
  mate friend guy bloke man lady woman chap customer client owner wife husband brother sister son daughter dad mum uncle actually obviously apparently probably today yesterday tomorrow
  'em them's local band school college church shop workshop who's that's it's he's she's i'm i've i'll he'd she'd they'd we're there's let's don't didn't doesn't isn't wasn't gave him complaining reckons thinks
  around after before until while during always never usually sometimes here's still already almost`.split(
    /\s+/,
  ),
);
