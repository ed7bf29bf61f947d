import { groupClaims } from '@/lib/work';
import type { Claim } from '@/shared/claims';
import type { Basis } from '@/shared/readings';
import { type Inline, told, words } from './blocks';
import type { Making, SectionMaker } from './making';
import { onFilm } from './on-film';
import { capital, withTime } from './say';

export const found: SectionMaker = (making) => {
  const { facts, say, time } = making;
  const more = facts.record.work.filter(({ origin }) => origin === 'found');
  const groups = groupClaims(facts.record.claims);
  const agreed = groups.filter(({ sides }) => sides.length === 1).flatMap(({ sides }) => sides.flat());
  const blocks = [
    ...told('This is what I found:', onFilm(making, 'diagnosis', 'all')),
    ...told(
      'That brought up work that nobody had asked for:',
      more.map(({ what, begun }) => withTime(capital(say(what)), time(begun))),
    ),
    ...told(
      'This is known of the instrument:',
      agreed.map((claim) => [words(`${about(making, claim)}: `), ...claimed(making, claim)]),
    ),
    ...told(
      'Some of what is said of it cannot all be true, so it stands here side by side:',
      groups.filter(({ sides }) => sides.length > 1).map((group) => against(making, group.sides)),
    ),
  ];
  return blocks.length === 0 ? null : { blocks };
};

/** The claims that disagree, in one line: "Year: 1978 (…) against 1984 (…)". */
function against(making: Making, sides: readonly (readonly Claim[])[]): Inline[] {
  const [first] = sides.flat();
  if (!first) return [];
  const joined = sides.flatMap((side, at) => [
    ...(at === 0 ? [] : [words(' against ')]),
    ...side.flatMap((claim, index) => [...(index === 0 ? [] : [words(' and ')]), ...claimed(making, claim)]),
  ]);
  return [words(`${about(making, first)}: `), ...joined];
}

function about({ say }: Making, { kind, subject }: Claim): string {
  const named = subject === null ? '' : say(subject);
  if (kind === 'original part')
    return named === '' ? 'Said to be original' : `${capital(named)}, said to be original`;
  if (kind === 'other') return named === '' ? 'Also said' : capital(named);
  return named === '' ? capital(kind) : `${capital(kind)} of ${named}`;
}

const known: Readonly<Record<Basis, string>> = {
  measured: 'measured',
  implied: 'it follows from what I measured',
  assumed: 'assumed, not checked',
  stated: 'as I was told',
};

/** "1978 (as I was told, likely, by “it says so inside”, 4:05)". */
function claimed({ say, time }: Making, claim: Claim): Inline[] {
  const evidence = claim.evidence === null ? '' : say(claim.evidence);
  const how = [known[claim.basis], claim.sure, evidence === '' ? '' : `by “${evidence}”`].filter(Boolean);
  const at = time(claim.moment);
  const opening = words(`${say(claim.value)} (${how.join(', ')}`);
  return at === null ? [opening, words(')')] : [opening, words(', '), at, words(')')];
}
