import { readingsPlot } from '@/lib/archive/store';
import type { ReadingsAnswer } from '@/shared/reference';
import styles from '../../_reference/reference.module.css';

/** Drawn for a desk and for a phone, so that its words are as large on both; one of the two is shown. */
const widths = { wide: 900, narrow: 320 } as const;

/** The groups of the table, or those of the chosen place, on one scale. */
export function Plots({ answer: { kind, groups, chosen, standing } }: { answer: ReadingsAnswer }) {
  if (kind === null) return null;
  const here = chosen ? groups.filter(({ place }) => place === chosen.place) : groups;
  const mark = standing ? { value: standing.is.value, said: 'the new reading' } : undefined;
  const of = { kind, groups: here, mark };
  const wide = readingsPlot({ ...of, width: widths.wide, id: 'plot-wide' });
  const narrow = readingsPlot({ ...of, width: widths.narrow, id: 'plot-narrow' });
  if (wide === null || narrow === null) return null;
  return (
    <figure className={styles.plot}>
      <Picture svg={wide} className={styles.wide} />
      <Picture svg={narrow} className={styles.narrow} />
      <figcaption>
        Box: lower to upper quartile, with the median. Thin lines: the least and the most. Circles: single
        readings, where fewer than five are too few to judge.
        {here.length > 12 && ' The twelve groups with the most readings are drawn.'}
      </figcaption>
    </figure>
  );
}

function Picture({ svg, className }: { svg: string; className: string | undefined }) {
  // biome-ignore lint/security/noDangerouslySetInnerHtml: the plot is made on the server by the library, which escapes all words in it.
  return <div className={className} dangerouslySetInnerHTML={{ __html: svg }} />;
}
