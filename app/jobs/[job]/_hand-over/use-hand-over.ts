'use client';

import { createContext, useCallback, useContext, useMemo, useRef } from 'react';
import { z } from 'zod';
import { CallError, call } from '@/app/_parts/call';
import { clashOf } from '@/app/_parts/kept-field-clash';
import { useNotices } from '@/app/_parts/notices';
import {
  type Cover,
  type CutPatch,
  coverSchema,
  cutChangedSchema,
  type Finding,
  findingsSchema,
  type TakeSpan,
  takeSpanSchema,
} from '@/shared/cut';
import {
  type HandOverView,
  handOverChangedSchema,
  handOverViewSchema,
  type NotesPatch,
  type SummaryPatch,
} from '@/shared/hand-over';
import { type ChangeId, changeIdSchema, type JobId } from '@/shared/ids';
import { useFollowing } from '../_desk/use-following';
import { useDesk } from '../_desk/use-record';

type CutFields = Omit<CutPatch, 'was'>;
type NotesFields = Omit<NotesPatch, 'was'>;
type SummaryFields = Omit<SummaryPatch, 'was'>;

/** Makes a list of spans from the one that stands there. */
type Amend<T> = (there: readonly T[]) => T[];

export interface HandOverDesk {
  view: HandOverView;
  /** Keeps what was chosen; `was` is what the person saw, `told` what the notice says. Throws what is refused. */
  keepNotes(patch: NotesFields, was: NotesFields, told: string): Promise<void>;
  keepSummary(patch: SummaryFields, was: SummaryFields, told: string): Promise<void>;
  keepCut(patch: CutFields, was: CutFields, told: string): Promise<void>;
  /** Changes a list of the cut. What another window put on it meanwhile stays. */
  amendSpans(list: 'cutAway' | 'muted', amend: Amend<TakeSpan>, told: string): Promise<void>;
  amendCovers(amend: Amend<Cover>, told: string): Promise<void>;
  decide(finding: Finding, decision: Finding['decision'], told: string): Promise<void>;
}

const HandOverContext = createContext<HandOverDesk | null>(null);
export const HandOverProvider = HandOverContext.Provider;

export function useHandOver(): HandOverDesk {
  const desk = useContext(HandOverContext);
  if (!desk) throw new Error('useHandOver stands inside a HandOverProvider.');
  return desk;
}

const decidedSchema = findingsSchema.extend({ change: changeIdSchema });

/** The four documents as this page sees them, and the one way to change them. */
export function useHandOverDesk(jobId: JobId, first: HandOverView): HandOverDesk {
  const job = `/api/jobs/${jobId}`;
  const [view, setView] = useFollowing(`${job}/hand-over`, handOverViewSchema, first);
  const latest = useRef(view);
  latest.current = view;
  const keep = useKeeping();

  return useMemo(() => {
    const show = (part: Partial<HandOverView>) => setView({ ...latest.current, ...part });
    const keepCut = (patch: CutFields, was: CutFields, told: string) =>
      keep(told, async () => {
        const { change, cut } = await call('PATCH', `${job}/cut`, cutChangedSchema, { ...patch, was });
        show({ cut });
        return change;
      });
    const keepDocument = (path: 'notes' | 'summary', body: unknown, told: string) =>
      keep(told, async () => {
        const { change, handOver } = await call('PATCH', `${job}/${path}`, handOverChangedSchema, body);
        show(handOver);
        return change;
      });
    return {
      view,
      keepCut,
      keepNotes: (patch, was, told) => keepDocument('notes', { ...patch, was }, told),
      keepSummary: (patch, was, told) => keepDocument('summary', { ...patch, was }, told),
      amendSpans: (list, amend, told) =>
        amending(list, z.array(takeSpanSchema), latest.current.cut.settings[list], (there) =>
          keepCut({ [list]: amend(there) }, { [list]: [...there] }, told),
        ),
      amendCovers: (amend, told) =>
        amending('covers', z.array(coverSchema), latest.current.cut.settings.covers, (there) =>
          keepCut({ covers: amend(there) }, { covers: [...there] }, told),
        ),
      decide: ({ id }, decision, told) =>
        keep(told, async () => {
          const { change, findings } = await call('POST', `${job}/findings`, decidedSchema, { id, decision });
          show({ cut: { ...latest.current.cut, findings } });
          return change;
        }),
    };
  }, [job, keep, setView, view]);
}

/** Adding to a list and taking off it go together with what another window did: it is done once more on that. */
async function amending<T>(
  name: string,
  schema: z.ZodType<T[]>,
  there: readonly T[],
  keep: (there: readonly T[]) => Promise<void>,
): Promise<void> {
  try {
    await keep(there);
  } catch (error) {
    const now = schema.safeParse(clashOf(error, name)?.now);
    if (!now.success) throw error;
    await keep(now.data);
  }
}

/** Makes a change, offers the way back, and shows the record as it then is. Throws what the server refuses. */
function useKeeping(): (told: string, work: () => Promise<ChangeId>) => Promise<void> {
  const { refresh, change } = useDesk();
  const { done, wrong } = useNotices();
  return useCallback(
    async (told, work) => {
      try {
        const id = await work();
        done(told, () => void change('POST', `/api/changes/${id}/undo`, undefined, z.unknown()));
      } catch (error) {
        // A refusal often means that something else stands there now: it must be seen before choosing again.
        if (error instanceof CallError && error.status !== 0) await refresh().catch(wrong);
        throw error;
      }
      await refresh().catch(wrong);
    },
    [change, done, refresh, wrong],
  );
}
