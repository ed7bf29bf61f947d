import type { WorkItem } from '@/shared/work';
import { type Inline, told } from './blocks';
import type { Making, SectionDraft, SectionMaker } from './making';
import { onFilm } from './on-film';
import { capital, withTime } from './say';

const origins: Readonly<Record<WorkItem['origin'], string>> = {
  asked: '',
  offered: ', as I had offered',
  found: ', which I found on the way',
};

const undone = { ...origins, offered: ', though I had offered it' };

export const workDone: SectionMaker = (making) => {
  const items = withOutcome(making, 'done').map(({ what, origin, ended }) =>
    withTime(`${capital(making.say(what))}${origins[origin]}`, making.time(ended)),
  );
  return unlessEmpty([
    ...told('This is what I did:', items),
    ...told('On film the work goes like this:', onFilm(making, 'work', 'all')),
    ...told('And this is what came of it:', onFilm(making, 'result', 'all')),
  ]);
};

export const workNotDone: SectionMaker = (making) => {
  const { alias } = making;
  return unlessEmpty([
    ...told('I did not do this:', leftUndone(making, 'not done')),
    ...told(
      alias === null ? 'This was declined:' : `${capital(alias.again)} declined this:`,
      leftUndone(making, 'declined'),
    ),
    ...told('This is still to be done:', leftUndone(making, 'open')),
  ]);
};

function leftUndone(making: Making, outcome: WorkItem['outcome']): Inline[][] {
  const { say, time } = making;
  return withOutcome(making, outcome).map((item) => {
    return withTime(`${capital(say(item.what))}${undone[item.origin]}${reason(say, item)}`, time(item.ended));
  });
}

/** Open work needs no reason yet. */
function reason(say: Making['say'], { why, outcome }: WorkItem): string {
  if (why !== null && why.trim() !== '') return `: ${say(why)}`;
  return outcome === 'open' ? '' : ', and I wrote no reason down';
}

function withOutcome({ facts }: Making, outcome: WorkItem['outcome']): WorkItem[] {
  return facts.record.work.filter((item) => item.outcome === outcome);
}

function unlessEmpty(blocks: SectionDraft['blocks']): SectionDraft | null {
  return blocks.length === 0 ? null : { blocks };
}
