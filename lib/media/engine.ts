import { z } from 'zod';
import { cutPlanSpecSchema, cutSpecSchema } from '@/shared/cut-engine';
import { captionedStill, captionedStillSchema } from './engine/captioned-still';
import { cutFacts, inspectCut, writeCut } from './engine/cut';
import { fingerprint } from './engine/fingerprint';
import { listen } from './engine/listen';
import type { Watch } from './engine/pace';
import { probe } from './engine/probe';
import { soundPeaks } from './engine/sound';
import { stillAt, stripStills } from './engine/stills';
import { viewingCopy } from './engine/viewing-copy';

type Runner = (payload: unknown, watch: Watch<unknown>) => Promise<unknown>;

const fileSchema = z.object({ path: z.string() });
const intoFolderSchema = z.object({ path: z.string(), folder: z.string() });
const momentSchema = z.object({ path: z.string(), ms: z.int() });
const listenSchema = z.object({ path: z.string(), model: z.string(), heard: z.string() });
const copySchema = z.object({ path: z.string(), to: z.string() });

/** What the worker process can be asked to do with recordings, by the kind of work. */
export const mediaRunners = {
  probe: async (payload, watch) => {
    const { path } = fileSchema.parse(payload);
    return { probe: await probe(path, watch), fingerprint: await fingerprint(path) };
  },
  sound: (payload, watch) => {
    const { path, folder } = intoFolderSchema.parse(payload);
    return soundPeaks(path, folder, watch);
  },
  pictures: (payload, watch) => {
    const { path, folder } = intoFolderSchema.parse(payload);
    return stripStills(path, folder, watch);
  },
  'viewing-copy': (payload, watch) => {
    const { path, to } = copySchema.parse(payload);
    return viewingCopy(path, to, watch);
  },
  listen: (payload, watch) => {
    const { path, model, heard } = listenSchema.parse(payload);
    return listen(path, model, heard, watch);
  },
  cut: async (payload, watch) => {
    const spec = cutSpecSchema.parse(payload);
    const result = await writeCut(spec, watch);
    const inspection = await inspectCut(spec.output, { signal: watch.signal, report: () => watch.report(1) });
    return { path: spec.output, result, inspection };
  },
  'cut-facts': (payload, watch) => cutFacts(cutPlanSpecSchema.parse(payload), watch),
  still: (payload, watch) => {
    const { path, ms } = momentSchema.parse(payload);
    return stillAt(path, ms, watch);
  },
  'captioned-still': (payload, watch) => captionedStill(captionedStillSchema.parse(payload), watch),
} satisfies Record<string, Runner>;
