'use client';

import Link from 'next/link';
import { useId, useRef, useState } from 'react';
import { z } from 'zod';
import { Button } from '@/app/_parts/button';
import { call } from '@/app/_parts/call';
import { Dialog } from '@/app/_parts/dialog';
import { TextField } from '@/app/_parts/field';
import { useNotices } from '@/app/_parts/notices';
import { ProblemNote } from '@/app/_parts/problem-note';
import { useAttempt } from '@/app/_parts/use-attempt';
import { type NewSavedQuestion, type SavedQuestion, savedQuestionSchema } from '@/shared/archive';
import { type Asked, pageOf, readAsked } from './asked';
import styles from './start.module.css';

const keptSchema = z.object({ question: savedQuestionSchema });
const goneSchema = z.unknown();

export interface KeptQuestions {
  questions: readonly SavedQuestion[];
  keep(wanted: NewSavedQuestion): Promise<SavedQuestion>;
  remove(question: SavedQuestion): Promise<void>;
}

/** Questions that are kept, by their titles. */
export function useKeptQuestions(first: readonly SavedQuestion[]): KeptQuestions {
  const { done, wrong } = useNotices();
  const [questions, setQuestions] = useState(first);
  const keep = async (wanted: NewSavedQuestion) => {
    const { question } = await call('POST', '/api/archive/questions', keptSchema, wanted);
    setQuestions((known) => [...known, question].sort((a, b) => a.title.localeCompare(b.title)));
    return question;
  };
  const remove = async ({ id, title, search }: SavedQuestion) => {
    try {
      await call('DELETE', `/api/archive/questions/${id}`, goneSchema);
      setQuestions((known) => known.filter((question) => question.id !== id));
      done(`“${title}” removed`, () => void keep({ title, search }).catch(wrong));
    } catch (error) {
      wrong(error);
    }
  };
  return { questions, keep, remove };
}

interface KeptListProps {
  kept: KeptQuestions;
  onAsk: (change: (now: Asked) => Asked) => void;
}

/** The kept questions: touched, one is asked. */
export function KeptList({ kept: { questions, remove }, onAsk }: KeptListProps) {
  const id = useId();
  const heading = useRef<HTMLHeadingElement>(null);
  return (
    <section className={styles.sheet} aria-labelledby={id}>
      <h2 id={id} ref={heading} tabIndex={-1}>
        Kept questions
      </h2>
      {questions.length === 0 && (
        <p className={styles.soft}>None yet. What is asked often can be kept under a title.</p>
      )}
      <ul className={styles.kept}>
        {questions.map((question) => (
          <li key={question.id}>
            <Link
              href={pageOf(question.search)}
              prefetch={false}
              onClick={(event) => {
                if (event.ctrlKey || event.metaKey || event.shiftKey) return;
                event.preventDefault();
                onAsk(() => readAsked(question.search));
              }}
            >
              {question.title}
            </Link>
            <Button
              weight="bare"
              aria-label={`Remove ${question.title}`}
              onClick={() => {
                heading.current?.focus();
                void remove(question);
              }}
            >
              Remove
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}

interface KeepQuestionProps {
  search: string;
  q: string;
  kept: KeptQuestions;
}

/** Keeps what is asked now under a title. */
export function KeepQuestion({ search, q, kept }: KeepQuestionProps) {
  const box = useRef<HTMLInputElement>(null);
  const [isOpen, setOpen] = useState(false);
  const [title, setTitle] = useState('');
  const { busy, problem, run } = useAttempt();
  const { done } = useNotices();
  const same = kept.questions.find((question) => question.search === search);
  if (same) return <p className={styles.same}>Kept as “{same.title}”</p>;
  const open = () => {
    setTitle(q.slice(0, 200));
    setOpen(true);
  };
  const submit = (event: React.FormEvent) => {
    event.preventDefault();
    if (title.trim() === '') return box.current?.focus();
    void run(async () => {
      await kept.keep({ title: title.trim(), search });
      setOpen(false);
      done(`Kept as “${title.trim()}”`);
    });
  };
  return (
    <>
      <Button onClick={open}>Keep this question</Button>
      <Dialog open={isOpen} onClose={() => setOpen(false)} title="Keep this question" startAt={box}>
        <form className={styles.form} onSubmit={submit}>
          <TextField
            ref={box}
            label="Title"
            hint="It asks anew each time: “last spring” then follows from the day of asking."
            value={title}
            maxLength={200}
            required
            autoComplete="off"
            onChange={(event) => setTitle(event.currentTarget.value)}
          />
          {problem !== null && <ProblemNote error={problem} />}
          <Button type="submit" weight="main" aria-disabled={busy}>
            {busy ? 'Keeping it …' : 'Keep it'}
          </Button>
        </form>
      </Dialog>
    </>
  );
}
