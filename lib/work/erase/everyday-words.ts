import { NAMES_THAT_ARE_WORDS } from '@/lib/narration';
import { instrumentTypes } from '@/shared/instruments';
import { jobStates } from '@/shared/jobs';
import { planKinds } from '@/shared/wiring';

/** Words of the bench and of every day that are somebody's name too, and words that the record is made of. */
const more = `
accepted address agreed alone and art ash asked assumed ball band barrel bass beam bean bell bent best bird
bishop block bloom blue board bolt bond bone book bow box branch brass bridge bright bush butcher butler
cable camera can cancelled cannon cap carpenter case certain chance check church clay clear client coil
conductor constant contradiction copy cord cork corner cotton crane cream crook cross crown cutter day deal
declined diagnosis dial dismissed dollar done doubtful dove drake draper drum east elder email ember end
english factory failed farmer fast father field fields film finch fine fish fitted flower flute foot forest
forge found fox free french frost gardener garland gate gates gay glass glover gold golden good gray green
grey ground grove guitar hand hands hard hardy harp harper head heard heart heath hide high hill hook horn
hot house hunter implied inside instrument insulated intake ivory jack joined joiner joint keen kept kettle
key keys knight laid lake lamb lamp land lane law lead leakage lever light likely linked listen lock lord
love low major mallet man maple marker mason master mead meadow measured measurement mill miller mine minor
missing moon moor moss mount music nail name neck negative new no noble north not note nut oak offered ohm
open order original other packer paint painter pair parallel parish park part parts passed peak peg phase
phone pick pickup pictures pike pine plane plant plate player pole pool positive post pot potter pound power
press prince private probe proctor promise promised proposals purple queued quick rail reader reading ready
real record red reduced removed result returned reused ring road role roller root roper row running rush
saddle sage sample sand saw sawyer screw seal series sharp sheet shell shield shore silver singer single
slater slide slot small smart snow sole song sound south split spring square staff star stated steel step
stern stock stone stones stop storm strange street string strings strong subrip swan sweet switch take taken
tanner tap tapped text thick thorn ticket tide timed tone total tower town trace track tree turn twist
unknown valley vice viewing volume wall warm waters way webvtt weeks wells west winder wire wise without
wolf words work worth yard year yellow yes
`;

/** Only a capital tells such a word from the name. */
export const everydayWords: ReadonlySet<string> = new Set(
  [more, ...NAMES_THAT_ARE_WORDS, ...instrumentTypes, ...jobStates, ...planKinds]
    .flatMap((words) => words.split(/[\s-]+/))
    .filter((word) => word.length > 1),
);

/** Parts of a name that name nobody by themselves. */
export const nameParticles: ReadonlySet<string> = new Set(
  'mr mrs ms miss mx dr sir prof the and von van der den de la le di da del dos el al bin ibn ter ten jr sr junior senior'.split(
    ' ',
  ),
);
