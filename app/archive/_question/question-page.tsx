'use client';

import { useRef, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { Dialog } from '@/app/_parts/dialog';
import { ProblemNote } from '@/app/_parts/problem-note';
import { counted } from '@/app/_parts/words';
import type { ArchiveAnswer, SavedQuestion } from '@/shared/archive';
import styles from '../archive.module.css';
import { AnswerList } from './answer-list';
import { asksNothing, countNarrowed } from './asked';
import { KeepQuestion, KeptList, useKeptQuestions } from './kept-questions';
import { Narrow } from './narrow';
import { QuestionBox } from './question-box';
import { EmptyArchive, Examples } from './start';
import { Understood } from './understood';
import { type Answered, useAnswers } from './use-answers';
import { useAsked } from './use-asked';

interface QuestionPageProps {
  /** The answer to the question that the page was opened with. */
  first: Answered;
  questions: readonly SavedQuestion[];
  hasJobs: boolean;
  today: string;
}

/** One question box; the answers are moments. */
export function QuestionPage({ first, questions, hasJobs, today }: QuestionPageProps) {
  const { asked, search, typed, type, askTyped, ask } = useAsked();
  const answers = useAnswers(search, first);
  const { answer } = answers.shown;
  const kept = useKeptQuestions(questions);
  const clientName = useClientNames(answer);
  const isPlain = asksNothing(asked);
  return (
    <main className={styles.page}>
      <h1 className="only-read">Ask the archive</h1>
      <QuestionBox typed={typed} onType={type} onAsk={askTyped} />
      <Understood asked={asked} parts={answer.understood} clientName={clientName} onAsk={ask} />
      <Waiting count={answer.waiting} />
      {answers.problem !== null && (
        <ProblemNote error={answers.problem}>
          <Button onClick={answers.askAgain}>Ask again</Button>
        </ProblemNote>
      )}
      {isPlain ? (
        <div className={styles.start}>
          {hasJobs ? <Examples onAsk={ask} /> : <EmptyArchive />}
          {hasJobs && <KeptList kept={kept} onAsk={ask} />}
        </div>
      ) : (
        <div className={styles.asked}>
          <NarrowSide count={countNarrowed(asked)}>
            <Narrow asked={asked} filters={answer.filters} clientName={clientName} onAsk={ask} />
          </NarrowSide>
          <section
            id="answers"
            tabIndex={-1}
            className={styles.answers}
            aria-label="Answers"
            aria-busy={answers.isBehind && answers.problem === null}
          >
            <div className={styles.head}>
              <p role="status" className={styles.count}>
                {answers.isBehind ? sayBehind(answers.problem !== null) : sayCount(answer)}
              </p>
              <KeepQuestion search={search} q={asked.q} kept={kept} />
            </div>
            {answer.none && <NoAnswer hasJobs={hasJobs} hasNearest={answer.nearest.length > 0} />}
            <AnswerList
              answers={answer.none ? answer.nearest : answer.answers}
              today={today}
              onFurther={answer.next === null || answers.isBehind ? null : answers.further}
            />
          </section>
        </div>
      )}
    </main>
  );
}

function sayBehind(isUnheard: boolean): string {
  return isUnheard ? 'The answers to the question before' : 'Looking …';
}

function sayCount({ answers, none, next }: ArchiveAnswer): string {
  if (none) return 'No answer';
  if (next !== null) return `The first ${counted(answers.length, 'answer')}, the best first`;
  return answers.length === 1 ? '1 answer' : `${counted(answers.length, 'answer')}, the best first`;
}

/** Names of clients by their ids, as far as any answer told them. */
function useClientNames({ filters }: ArchiveAnswer): (id: string) => string {
  const known = useRef(new Map<string, string>());
  for (const { id, name } of filters.clients) known.current.set(id, name);
  return (id) => known.current.get(id) ?? 'one client';
}

function Waiting({ count }: { count: number }) {
  if (count === 0) return null;
  return (
    <p role="status" className={styles.waiting}>
      {counted(count, 'job')} {count === 1 ? 'is' : 'are'} still being taken in. The answers follow by
      themselves.
    </p>
  );
}

function NoAnswer({ hasJobs, hasNearest }: { hasJobs: boolean; hasNearest: boolean }) {
  return (
    <div className={styles.none}>
      <h2>Nothing in the archive answers that.</h2>
      {!hasJobs && <p>There is no job in it yet.</p>}
      {hasJobs && <p>Take away a part of the question, narrow it less, or say it in other words.</p>}
      {hasNearest && <p>These come nearest:</p>}
    </div>
  );
}

/** Beside the answers; where there is no room, behind one button. */
function NarrowSide({ count, children }: { count: number; children: React.ReactNode }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <div className={styles.side}>
      <button
        type="button"
        className={styles.past}
        onClick={() => document.getElementById('answers')?.focus()}
      >
        To the answers
      </button>
      <h2 className={styles.sideName}>Narrow</h2>
      <div className={styles.sideOpen}>{children}</div>
      <Button className={styles.sideButton} onClick={() => setOpen(true)}>
        {count === 0 ? 'Narrow' : `Narrow (${count})`}
      </Button>
      <Dialog open={isOpen} onClose={() => setOpen(false)} title="Narrow the answers">
        {children}
      </Dialog>
    </div>
  );
}
