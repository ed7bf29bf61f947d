import type { PhraseEntry } from '../words/phrases';

const phrases = (list: readonly string[]): PhraseEntry[] => list.map((say) => ({ say }));

/** Verbs that say what the meter shows. */
export const ASSERTING = phrases([
  "(is|'s|are|was|were|reads|reading|read|shows|showing|showed|gives|giving|gave|measures|measured|measuring|says|comes|sits)",
  "(that's|it's|there's|getting|got|get|gets|seeing|sees|see|equals|makes|have|has|i've|we've|settles|settling|call|pulls|pulling|draws|drawing|weighs|sitting|coming|hits|hit|puts|made)",
]);

/** What is said of a number that nobody read off a meter. Valid for the whole clause. */
export const EXPECTING = phrases([
  "(should|shouldn't|ought|oughta|supposed|expect|expects|expecting|expected|aim|aiming|target|targets|spec|specs|specification)",
  '(nominal|nominally|rated|typically|typical|usually|normally|ideally|ideal|hoping|supposedly|advertised|tolerance|maximum|minimum)',
  '(schematic|datasheet|manual|catalogue|textbook)',
  '(label|sticker|tag|box|plan|chart|book|drawing|sheet|print|internet|website|packet|listing|forum|diagram) (say|says|said|reckons|claims|calls|has)',
  '(says|written|printed|stamped|marked|stated) ..2 (on|in) (the|a|its|it|his|her) ..1 (label|sticker|box|case|body|side|pot|pots|plan|bag|packet|cap|can|back|bottom|chassis)',
  '(marked|labelled|labeled|stamped|sold|advertised) (as|at)',
  'it says on',
  '(looking|look|going|shooting|gunning) for',
  '(want|wants|wanted|wanting|need|needs|needed|prefer|prefers)',
  "(i'd|he'd|she'd|we'd|you'd|they'd|would|i|we|he|she|they) (like|likes)",
  "(would|could|might|may|will|won't|wouldn't) ..2 (be|read|show|give|measure|get|have)",
  "(it'd|that'd|you'd|it'll|that'll|they'll|you'll|i'd|we'd) ..1 (be|get|see|have|read|want)",
  '(going|gonna|got|has|have|needs) [to] be',
  'gonna be',
  '(anything|go|goes|adjusts|turns|good|works) up to',
  '(if|unless|until|imagine|suppose|guess|guessing|whenever)',
  '(factory|standard|stock|recommended|published|quoted|usual) (setting|spec|value|height|figure|measurement)',
  '(anything|anywhere|somewhere|something) ..2 (under|over|between|above|below|from|around|in|like|up|less|more)',
  '(get|bring|take|drop|lower|raise|set|turn|file|cut|sand) ..3 (down|up) to',
  '(good|healthy|normal|fine|acceptable) ..3 (between|from|would)',
  '(rule|rules) of thumb',
  '(most|other|these|those|vintage|modern) ..3 (are|read|come|measure|run) ..2 (around|about|between|from|in)',
]);

/** Phrases that hold an expecting word but expect nothing. */
export const NOT_EXPECTING = phrases([
  '(see|check|know|checking|wonder) if',
  "as (expected|i'd|you'd|we'd) [expect|expected]",
  '(like|what|as) (i|we|you) expected',
  '(brought|got|taken|lowered|raised|dropped|filed) ..3 (down|up) to',
  '(spec|target) is fine',
]);

/** Right before a number (an "about" may stand between), these make it no reading. */
export const BEFORE_NO_READING = phrases([
  "(not|isn't|wasn't|ain't|aren't|never|without)",
  '(rather|less|more|greater|fewer|other|lower|higher) than',
  'instead of',
  '(under|above|below|within|into|through|per|another|by|between|every|over|exceeding|beyond)',
  'at (least|most)',
  '(close|next) to',
  '(plus|give) or (minus|take)',
  '(added|add|adding|extra|further|remove|removing|shave|shaving|lose|losing)',
  '(take|taking|took|taken) [off] [another]',
  '(range|scale) of',
  '(set|switched|turned|dialled|setting|adjust|dial) [it|the|this|my] [bias|supply|action|meter|relief|iron|height|dial|trimmer|pot] (to|on)',
  '(meter|dial|multimeter) (on|to) [the]',
  '(marked|labelled|labeled|rated|stamped|sold|badged|nominally) [as|at]',
  '(my|his|her|their|your) [old|new|trusty]',
]);

/** Right behind a number and its unit, these make it the name of a part, a setting or a difference. */
export const AFTER_NO_READING = phrases([
  '(pot|pots|potentiometer|potentiometers|resistor|resistors|cap|caps|capacitor|capacitors|battery|batteries|supply|adapter|adaptor)',
  '(range|scale|setting|mode|fuse|fuses|tap|winding|transformer|speaker|speakers|cab|cabinet|load|tube|valve|led|relay|regulator|zener|choke|coil)',
  '(drill|bit|bits|allen|hex|key|spanner|socket|chisel|file|files|nut|screw|screws|bolt|dowel|plug|jack|shim|shims|feeler|gauge|wire|cable|hole)',
  '(audio|linear|log|lin|trim|trimmer|dummy|split|bench|psu|preamp|power|wall|lamp) [taper|pot|resistor|supply|load]',
  '(too|more|less|higher|lower|taller|shorter|wider|narrower|thicker|further|extra|apiece|each) [high|low|wide|tall|deep|much|long|short]',
  '(off|away) [the|at|each|it|from]',
  '(is|was) what ..3 (expect|expected|want|wanted|should|says|like|after|looking|need)',
  "(is|was|would|'s) [be] [the|a|about|pretty|fairly|perfectly] (typical|normal|standard|spec|usual|target|nominal|ideal|maximum|minimum|limit)",
  '(would|should) (be|do|have)',
  '(max|maximum|minimum|tolerance|nominal|spec|rated|rating|tops)',
  '(at|to) (most|least)',
  'on the [bench] (supply|psu|plan|label|box|sticker|drawing|schematic|sheet|diagram|case)',
  '(or|and) (less|more|under|over|above|below|up|higher|lower|thereabouts)',
  '(bone|steel|brass|plastic|stainless|maple|ebony|spruce|copper|drop|shaft|thread|bore)',
  '(label|sticker|labelled|version|model|ones|type)',
]);

/** A later number takes the place of the one before, when one of these stands between them. */
export const CORRECTING = phrases([
  '(sorry|rather|correction|actually|wait|oops|whoops|misread|wrong|scratch|nope|or)',
  "(no|i|make|tell|hang|hold|beg|let) (mean|meant|that|a|on|your|me|sorry|it's|that's|wait|it|i) [lie|pardon|again|correct]",
  '(i|we) should say',
  'no',
]);

/** An approximation may stand between a cue and its number. */
export const ABOUT: ReadonlySet<string> = new Set([
  'me',
  'us',
  'actually',
  'up',
  'out',
  'in',
  'about',
  'around',
  'roughly',
  'approximately',
  'exactly',
  'just',
  'nearly',
  'almost',
  'maybe',
  'perhaps',
  'a',
  'an',
  'the',
  'like',
  'say',
  'bang',
  'on',
  'only',
  'still',
  'now',
  'at',
  'circa',
]);

/** Joining words at which a new statement begins. */
export const STATEMENT_OPENERS: ReadonlySet<string> = new Set([
  'and',
  'but',
  'so',
  'because',
  'cos',
  'now',
  'then',
  'okay',
  'ok',
  'actually',
  'well',
  'right',
  'yeah',
  'yep',
  'no',
  'we',
  "we've",
  'i',
  "i've",
  "i'm",
  "we're",
  'which',
  'while',
  'whereas',
]);

/** What the meter or the repairer says when nothing passes between two points. */
export const OPEN_WORDS = phrases([
  '(ol|infinite|infinity|overload|overrange|overlimit|nada)',
  'o l',
  '(over|out) (limit|load|range|of)',
  '(nothing|nowt|zilch) [at] [all] [there]',
  'no (reading|continuity|connection|contact|circuit) [at] [all]',
  "(doesn't|don't|won't|not|isn't) (read|reading|connect|connected|get|getting|show|showing|register|registering) [anything|nothing|at] [all]",
  "(not|aren't|isn't) connected",
  'open [circuit]',
]);

/** "nothing" and "open" in other senses. */
export const NOT_OPEN = phrases([
  'for nothing',
  'nothing (to|wrong|else|more|much|fancy|special|new|major|serious|like|unusual|but)',
  '(open|opened|opening) (the|it|this|that|up|string|strings|her|his|a|back|tuning|top|gear|d|g|e)',
  '(an|is|cracked|wide|split|the) open (and|e|a|d|g|string|top|back|gear)',
  '(be|come|back|being|were|are|wide) open',
]);
