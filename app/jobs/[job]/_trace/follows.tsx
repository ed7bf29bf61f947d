import { filmTimeOf, layOut } from '@/lib/film';
import { takeIdSchema } from '@/shared/ids';
import type { TraceAnalysis, WiringMoment } from '@/shared/wiring';
import { useDesk } from '../_desk/use-record';
import { usePlayer } from '../_film/use-film';
import { BasisWord } from './basis-word';
import styles from './trace.module.css';

/** What contradicts first, then what follows from the readings, each with its reason. */
export function Follows({ analysis }: { analysis: TraceAnalysis }) {
  const { contradictions, conclusions } = analysis;
  return (
    <>
      {contradictions.map((contradiction) => (
        <div key={contradiction.key} className={styles.contradiction} role="alert">
          <p className={styles.contradictionHead}>This cannot all be so</p>
          <p>{contradiction.text}</p>
          <p className={styles.moments}>
            {contradiction.moments.map(({ reading, moment }) => (
              <ToMoment key={reading} moment={moment} />
            ))}
          </p>
        </div>
      ))}
      {conclusions.length === 0 && (
        <p className={styles.fine}>Nothing yet. The first reading between two conductors starts it.</p>
      )}
      <ul className={styles.follows}>
        {conclusions.map(({ key, text, because, basis }) => (
          <li key={key}>
            <p>
              <BasisWord basis={basis} /> {text}
            </p>
            <p className={styles.fine}>{because}</p>
          </li>
        ))}
      </ul>
    </>
  );
}

function ToMoment({ moment }: { moment: WiringMoment }) {
  const player = usePlayer();
  const { record } = useDesk();
  const at = filmTimeOf(layOut(record.takes), { takeId: takeIdSchema.parse(moment.takeId), ms: moment.ms });
  if (!at) return null;
  return (
    <button type="button" className={styles.toMoment} onClick={() => player?.seek(at.filmMs)}>
      See it read
    </button>
  );
}
