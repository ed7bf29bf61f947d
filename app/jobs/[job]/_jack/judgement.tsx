'use client';

import { Button } from '@/app/_parts/button';
import { counted } from '@/app/_parts/words';
import type { JackExplanation, JackJudgement } from '@/shared/jack';
import styles from './jack.module.css';
import type { AskedSetting } from './settings-rows';
import { VerdictMark } from './verdict-mark';
import { sayLikelihood, sayNumbers } from './words';

/** With more explanations than this the rest stay behind a fold. */
const mostInSight = 4;

interface JudgementProps {
  judgement: JackJudgement;
  onAsk: (asked: AskedSetting) => void;
}

/** What all readings together say. */
export function Judgement({ judgement, onAsk }: JudgementProps) {
  const { verdict, text, explanations, notRuledOut, invisible, assumptions, checks } = judgement;
  const inSight = explanations.slice(0, mostInSight);
  const behind = explanations.slice(mostInSight);
  return (
    <section className={styles.section} aria-labelledby="judgement">
      <h2 id="judgement">What follows</h2>
      <div className={styles.check} data-verdict={checks.length ? verdict : 'unread'} aria-live="polite">
        <VerdictMark verdict={checks.length ? verdict : 'unread'} />
        <p>{text}</p>
      </div>
      {inSight.length > 0 && (
        <>
          <h3>What would explain it</h3>
          <ol className={styles.explanations}>
            {inSight.map((one) => (
              <Explanation key={one.key} explanation={one} onAsk={onAsk} />
            ))}
          </ol>
        </>
      )}
      {behind.length > 0 && (
        <details className={styles.fold}>
          <summary>{counted(behind.length, 'more explanation')}</summary>
          <ol className={styles.explanations} start={mostInSight + 1}>
            {behind.map((one) => (
              <Explanation key={one.key} explanation={one} onAsk={onAsk} />
            ))}
          </ol>
        </details>
      )}
      <NotRuledOut notRuledOut={notRuledOut} onAsk={onAsk} />
      <Fold title="What no reading at the jack can show" lines={invisible} />
      <Fold title="Assumed" lines={assumptions} />
    </section>
  );
}

function Explanation({
  explanation,
  onAsk,
}: {
  explanation: JackExplanation;
  onAsk: (asked: AskedSetting) => void;
}) {
  const { title, next, alikeAtJack } = explanation;
  return (
    <li>
      <p className={styles.explanationHead}>
        <strong>{title}</strong>
        <span className={styles.chip}>{sayLikelihood(explanation)}</span>
      </p>
      <p className={styles.fine}>{sayNumbers(explanation)}</p>
      {next && (
        <div className={styles.tellApart}>
          <p>
            <strong>To tell it apart:</strong> {next.where}. It would read {next.expects}
            {next.rulesOut.length > 0 && `; that rules out ${sayFew(next.rulesOut)}`}.
          </p>
          {next.kind === 'jack' && (
            <Button
              onClick={() =>
                onAsk({ setting: next.setting, label: next.where.replace(/^At the jack: /, '') })
              }
            >
              Read it there
            </Button>
          )}
        </div>
      )}
      {alikeAtJack.length > 0 && (
        <p className={styles.fine}>No reading at the jack tells it from {sayFew(alikeAtJack)}.</p>
      )}
    </li>
  );
}

function NotRuledOut({
  notRuledOut,
  onAsk,
}: {
  notRuledOut: JackJudgement['notRuledOut'];
  onAsk: (asked: AskedSetting) => void;
}) {
  if (notRuledOut.length === 0) return null;
  return (
    <details className={styles.fold}>
      <summary>{counted(notRuledOut.length, 'fault')} not ruled out by these readings</summary>
      <ul className={styles.plainList}>
        {notRuledOut.map(({ title, setting, label }) => (
          <li key={title} className={styles.hidden}>
            <span>
              {title}: {label === null ? 'no setting at the jack shows it' : `shows at ${label}`}
            </span>
            {setting && label !== null && (
              <Button aria-label={`Read it there, ${label}`} onClick={() => onAsk({ setting, label })}>
                Read it there
              </Button>
            )}
          </li>
        ))}
      </ul>
    </details>
  );
}

function Fold({ title, lines }: { title: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <details className={styles.fold}>
      <summary>{title}</summary>
      <ul className={styles.plainList}>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  );
}

/** Three by name, the rest by number. */
function sayFew(titles: readonly string[]): string {
  const named = titles.slice(0, 3);
  const more = titles.length - named.length;
  return [...named, ...(more > 0 ? [`${more} more`] : [])].join(', ');
}
