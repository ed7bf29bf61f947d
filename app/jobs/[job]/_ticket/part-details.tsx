'use client';

import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { KeptField } from '@/app/_parts/kept-field';
import { KeptChoice } from '@/app/_parts/kept-field-choice';
import { bases, basisSchema } from '@/shared/readings';
import { deeds, oldPartFates, type Part, partSources } from '@/shared/work';
import { MomentPin } from './moment-pin';
import styles from './ticket.module.css';
import { useWork } from './use-work';
import { deedWords, fateWords, sourceWords } from './words';

const deedSchema = z.enum(deeds);
const sourceSchema = z.enum(partSources).nullable();
const fateSchema = z.enum(oldPartFates).nullable();
const doubtBasisSchema = basisSchema.nullable();
const again = 'Touch again to take it off.';

export function PartDetails({ part }: { part: Part }) {
  const { patchPart, removePart } = useWork();
  return (
    <>
      <KeptField
        label="What"
        name="what"
        value={part.what}
        onKeep={(what, was) => patchPart(part, { what }, { what: was })}
        wraps
        required
        maxLength={300}
      />
      <KeptChoice
        label="It was"
        name="deed"
        schema={deedSchema}
        options={deeds}
        words={deedWords}
        value={part.deed}
        onKeep={(deed, was) => patchPart(part, { deed }, { deed: was })}
      />
      <KeptChoice
        label="Where it is from"
        hint={again}
        name="source"
        schema={sourceSchema}
        options={partSources}
        words={sourceWords}
        none={null}
        value={part.source}
        onKeep={(source, was) => patchPart(part, { source }, { source: was })}
      />
      <KeptChoice
        label="What became of the old part"
        hint={again}
        name="fate"
        schema={fateSchema}
        options={oldPartFates}
        words={fateWords}
        none={null}
        value={part.fate}
        onKeep={(fate, was) => patchPart(part, { fate }, { fate: was })}
      />
      <DoubtFields part={part} />
      <MomentPin
        name="moment"
        label="Seen"
        of={part.what}
        value={part.moment}
        onKeep={(moment, was) => patchPart(part, { moment }, { moment: was })}
      />
      <Button weight="alarm" className={styles.remove} onClick={() => void removePart(part)}>
        Delete this part
      </Button>
    </>
  );
}

/** What is in doubt about the origin of a part, how that is known, and the words that it rests on. */
function DoubtFields({ part }: { part: Part }) {
  const { patchPart } = useWork();
  return (
    <>
      <KeptField
        label="Doubt about its origin"
        hint="What does not fit: a date code, a solder joint, a thread."
        name="doubt"
        value={part.doubt ?? ''}
        onKeep={(doubt, was) => patchPart(part, { doubt: doubt || null }, { doubt: was || null })}
        wraps
        maxLength={1000}
      />
      {part.doubt !== null && (
        <>
          <KeptChoice
            label="How that is known"
            hint={again}
            name="doubtBasis"
            schema={doubtBasisSchema}
            options={bases}
            none={null}
            value={part.doubtBasis}
            onKeep={(doubtBasis, was) => patchPart(part, { doubtBasis }, { doubtBasis: was })}
          />
          <KeptField
            label="The words it rests on"
            name="evidence"
            value={part.evidence ?? ''}
            onKeep={(evidence, was) =>
              patchPart(part, { evidence: evidence || null }, { evidence: was || null })
            }
            wraps
            maxLength={2000}
          />
        </>
      )}
    </>
  );
}
