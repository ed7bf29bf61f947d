'use client';

import { useState } from 'react';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { shortTime } from '@/lib/film';
import { type CutForecast, type CutSettings, cutForecastSchema } from '@/shared/cut';
import { useDesk } from '../_desk/use-record';
import styles from './cut.module.css';
import { useHandOver } from './use-hand-over';

const pictureWords: Record<CutForecast['picture'], string> = {
  none: 'There is no picture.',
  copied: 'All of the picture is copied as it is.',
  mixed: 'The picture is copied where it can be; the rest is encoded anew.',
  encoded: 'All of the picture is encoded anew, which takes time.',
};
const soundWords: Record<CutForecast['sound'], string> = {
  none: 'There is no sound.',
  copied: 'The sound is copied.',
  encoded: 'The sound is encoded anew.',
};

/** How the cuts would fall, worked out from the recordings when it is asked for. */
export function CutForecastView() {
  const { record } = useDesk();
  const { settings } = useHandOver().view.cut;
  const { busy, problem, run } = useAttempt();
  const [known, setKnown] = useState<{ of: CutSettings; forecast: CutForecast } | null>(null);
  const look = () =>
    run(async () => {
      const path = `/api/jobs/${record.job.id}/cut/forecast`;
      setKnown({ of: settings, forecast: await call('GET', path, cutForecastSchema) });
    });
  // What was found out for other settings says nothing about these.
  const forecast = known && JSON.stringify(known.of) === JSON.stringify(settings) ? known.forecast : null;
  return (
    <div className={styles.forecast}>
      <Button aria-disabled={busy} onClick={() => void look()}>
        {busy ? 'Looking into the recordings …' : 'Show how the cuts would fall'}
      </Button>
      <div aria-live="polite">{forecast && <Forecast forecast={forecast} />}</div>
      {problem !== null && <ProblemNote error={problem} />}
    </div>
  );
}

function Forecast({ forecast: { pieces, durationMs, picture, sound } }: { forecast: CutForecast }) {
  const { takes } = useDesk().record;
  const nameOf = (takeId: string) => takes.find(({ id }) => id === takeId)?.name ?? 'a take that is gone';
  return (
    <>
      <p>
        {shortTime(durationMs)} long. {pictureWords[picture]} {soundWords[sound]}
      </p>
      <table className={styles.pieces}>
        <caption className="only-read">Pieces of the cut</caption>
        <thead>
          <tr>
            <th scope="col">In the cut</th>
            <th scope="col">Take</th>
            <th scope="col">Start</th>
            <th scope="col">End</th>
            <th scope="col">Picture</th>
          </tr>
        </thead>
        <tbody>
          {pieces.map((piece) => (
            <tr key={piece.outMs}>
              <td className="figures">{shortTime(piece.outMs)}</td>
              <td>{nameOf(piece.takeId)}</td>
              <td>{movedInWords(piece.startMovedMs)}</td>
              <td>{movedInWords(piece.endMovedMs)}</td>
              <td>{piece.how}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

/** How much earlier than asked for a cut falls. */
function movedInWords(ms: number): string {
  if (ms === 0) return 'as marked';
  return `${(Math.abs(ms) / 1000).toFixed(2)} s ${ms > 0 ? 'earlier' : 'later'}`;
}
