'use client';

import { useState } from 'react';
import { z } from 'zod';
import { KeptField } from '@/app/_parts/kept-field';
import { KeptChoice } from '@/app/_parts/kept-field-choice';
import { cutSettingsSchema } from '@/shared/cut';
import { DomainError } from '@/shared/problem';
import { CutForecastView } from './cut-forecast';
import { Step } from './section';
import { useHandOver } from './use-hand-over';

const cuttingSchema = cutSettingsSchema.shape.cutting.unwrap();
const formatSchema = cutSettingsSchema.shape.format.unwrap();
const cuttingWords = { 'key-frames': 'copied, on key frames', exact: 'exact' };
const formatWords = { mp4: 'MP4', mkv: 'Matroska' };

/** How the file is made: where it is cut, how loud it is, and in what container. */
export function CutHow() {
  const { view, keepCut } = useHandOver();
  const { cutting, format } = view.cut.settings;
  return (
    <Step id="cut-how" title="How it is made">
      <KeptChoice
        label="Cutting"
        hint="Copied: nothing is lost of the picture and it is quick, but cuts fall on the key frame before. Exact: what stands around the cuts is encoded anew."
        name="cutting"
        schema={cuttingSchema}
        options={cuttingSchema.options}
        words={cuttingWords}
        value={cutting}
        onKeep={(next, was) => keepCut({ cutting: next }, { cutting: was }, `Cut: ${cuttingWords[next]}`)}
      />
      <CutForecastView />
      <Loudness />
      <KeptChoice
        label="File"
        name="format"
        schema={formatSchema}
        options={formatSchema.options}
        words={formatWords}
        value={format}
        onKeep={(next, was) => keepCut({ format: next }, { format: was }, `Written as ${formatWords[next]}`)}
      />
    </Step>
  );
}

const usualLufs = ['off', '-14', '-16', '-23'] as const;
const loudnesses = [...usualLufs, 'own'] as const;
type Loudness = (typeof loudnesses)[number];
const loudnessWords: Partial<Record<Loudness, string>> = {
  off: 'as it is',
  '-14': '−14 LUFS',
  '-16': '−16 LUFS',
  '-23': '−23 LUFS',
  own: 'another',
};
/** As the contract has it, as a choice. */
const loudnessSchema = z.number().nullable().transform(choiceOf);

function choiceOf(lufs: number | null): Loudness {
  return usualLufs.find((choice) => lufsOf(choice) === lufs) ?? 'own';
}

function lufsOf(choice: (typeof usualLufs)[number]): number | null {
  return choice === 'off' ? null : Number(choice);
}

function Loudness() {
  const { view, keepCut } = useHandOver();
  const { lufs } = view.cut.settings;
  const [own, setOwn] = useState(false);
  const kept = choiceOf(lufs);
  const choose = async (next: Loudness) => {
    setOwn(next === 'own');
    if (next === 'own') return;
    const level = lufsOf(next);
    const told = level === null ? 'Loudness left as it is' : `Levelled to ${level} LUFS`;
    await keepCut({ lufs: level }, { lufs }, told);
  };
  return (
    <>
      <KeptChoice
        label="Loudness"
        hint="Measured over the whole cut in two passes, by ITU-R BS.1770."
        name="lufs"
        schema={loudnessSchema}
        options={loudnesses}
        words={loudnessWords}
        value={own ? 'own' : kept}
        onKeep={choose}
      />
      {(own || kept === 'own') && (
        <KeptField
          label="Loudness in LUFS"
          hint="From −40 to −8."
          name="lufs"
          value={lufs === null ? '' : String(lufs)}
          onKeep={async (text) => {
            const level = typedLufs(text);
            await keepCut({ lufs: level }, { lufs }, `Levelled to ${level} LUFS`);
            setOwn(false);
          }}
        />
      )}
    </>
  );
}

function typedLufs(text: string): number {
  const level = Number(text.replace('−', '-').replace(',', '.'));
  if (text !== '' && level >= -40 && level <= -8) return level;
  throw new DomainError('invalid', 'That is no such loudness.', 'Write LUFS from −40 to −8, as in −18.');
}
