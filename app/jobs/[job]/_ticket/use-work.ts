'use client';

import { useMemo } from 'react';
import { z } from 'zod';
import type { NewPart, NewWorkItem, Part, PartPatch, WorkItem, WorkItemPatch } from '@/shared/work';
import { useDesk } from '../_desk/use-record';
import { usePlayer } from '../_film/use-film';
import { stayAt } from './use-anchor';
import { useKeep } from './use-keep';

type ItemFields = Omit<WorkItemPatch, 'was'>;
type PartFields = Omit<PartPatch, 'was'>;

/** What can be done to the work items and parts of a job. What is refused is thrown, for the field that asked. */
export function useWork() {
  const { record, change } = useDesk();
  const player = usePlayer();
  const keep = useKeep();
  const job = `/api/jobs/${record.job.id}`;
  return useMemo(() => {
    const here = () => player?.moment ?? null;
    const remove = async (path: string, told: string, line: string, section: string) => {
      const at = document.getElementById(line);
      const next = at?.nextElementSibling ?? at?.previousElementSibling ?? document.getElementById(section);
      if (await change('DELETE', path, undefined, z.looseObject({}), told)) stayAt(next ?? null);
    };
    return {
      here,
      addItem: (item: NewWorkItem) => keep('POST', `${job}/work`, { ...item, begun: here() }),
      patchItem: ({ id }: WorkItem, patch: ItemFields, was: ItemFields) =>
        keep('PATCH', `/api/work/${id}`, { ...patch, was }),
      removeItem: ({ id, what }: WorkItem) =>
        remove(`/api/work/${id}`, `“${shortened(what)}” taken off`, `work-${id}`, 'work'),
      addPart: (part: NewPart) => keep('POST', `${job}/parts`, { ...part, moment: here() }),
      patchPart: ({ id }: Part, patch: PartFields, was: PartFields) =>
        keep('PATCH', `/api/parts/${id}`, { ...patch, was }),
      removePart: ({ id, what }: Part) =>
        remove(`/api/parts/${id}`, `Part “${shortened(what)}” taken off`, `part-${id}`, 'parts'),
    };
  }, [change, job, keep, player]);
}

const mostOfANotice = 60;

function shortened(words: string): string {
  return words.length > mostOfANotice ? `${words.slice(0, mostOfANotice).trimEnd()} …` : words;
}
