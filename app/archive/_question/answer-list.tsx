'use client';

import { useEffect, useRef, useState } from 'react';
import { Button } from '@/app/_parts/button';
import type { Answer, Found } from '@/shared/archive';
import { AnswerCard } from './answer-card';
import styles from './answers.module.css';

interface AnswerListProps {
  answers: readonly Answer[];
  today: string;
  /** What brings more answers; null where there are none. True once they are there. */
  onFurther: (() => Promise<boolean>) | null;
}

/** The answers, the best first. One film plays at a time. */
export function AnswerList({ answers, today, onFurther }: AnswerListProps) {
  const list = useRef<HTMLOListElement>(null);
  const [playing, setPlaying] = useState<Found | null>(null);
  const [isBusy, setBusy] = useState(false);
  const goOnAt = useRef<number | null>(null);
  const further = async () => {
    if (isBusy || !onFurther) return;
    setBusy(true);
    goOnAt.current = answers.length;
    if (!(await onFurther())) goOnAt.current = null;
    setBusy(false);
  };
  // The button has moved down or gone: reading goes on where the new answers begin.
  useEffect(() => {
    const from = goOnAt.current;
    if (from === null || answers.length <= from) return;
    goOnAt.current = null;
    linkOf(list.current, from)?.focus();
  }, [answers]);
  return (
    <>
      <ol ref={list} className={styles.list}>
        {answers.map((answer) => (
          <li key={answer.job.id}>
            <AnswerCard
              answer={answer}
              today={today}
              playing={playing?.jobId === answer.job.id ? playing : null}
              onPlay={setPlaying}
            />
          </li>
        ))}
      </ol>
      {onFurther && (
        <Button className={styles.further} aria-disabled={isBusy} onClick={() => void further()}>
          {isBusy ? 'Looking further …' : 'Further answers'}
        </Button>
      )}
    </>
  );
}

function linkOf(list: HTMLOListElement | null, index: number): HTMLElement | null {
  return list?.children[index]?.querySelector<HTMLElement>('[data-answer]') ?? null;
}
