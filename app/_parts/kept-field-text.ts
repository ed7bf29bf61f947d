'use client';

import { useRef, useState } from 'react';
import { clashOf, sayWrong } from './kept-field-clash';

export interface KeptText {
  /** Name of the field in the contract: a clash with another window is told by it. */
  name: string;
  /** What is on the record. */
  value: string;
  /** Keeps what was written; `was` is what the person saw before. Throws what the server refuses. */
  onKeep: (next: string, was: string) => Promise<unknown>;
  maxLength?: number;
  required?: boolean;
  /** What the server says stands there, as it would be written in this field. */
  say?: (now: unknown) => string;
}

interface Shown {
  text: string;
  /** What the person saw when they began to write. */
  seen: string;
  problem: string | null;
  /** What another window wrote meanwhile. */
  clash: string | null;
  busy: boolean;
}

/** The text of a field while it is being written, kept, refused, or told that another window was faster. */
export function useKeptText(field: KeptText) {
  const { name, value, onKeep, say = asWritten } = field;
  const [shown, setShown] = useState<Shown>({
    text: value,
    seen: value,
    problem: null,
    clash: null,
    busy: false,
  });
  const [last, setLast] = useState(value);
  // What was typed while an earlier text was being kept is only known here.
  const now = useRef(shown);
  const newest = useRef(value);
  newest.current = value;
  const underWay = useRef<Promise<boolean> | null>(null);

  const put = (part: Partial<Shown>) => {
    now.current = { ...now.current, ...part };
    setShown(now.current);
  };
  if (value !== last) {
    setLast(value);
    // What comes in from elsewhere shows, unless something else is being written here.
    if (now.current.text === now.current.seen) put({ text: value, seen: value });
  }

  const settle = (next: string) => put({ text: next, seen: next, problem: null, clash: null });
  const send = async (next: string, was: string): Promise<boolean> => {
    const before = newest.current;
    put({ busy: true });
    try {
      await onKeep(next, was);
      // The record may say it in other words than were written: "45" is a price of €45.00.
      const stands = newest.current === before ? next : newest.current;
      if (now.current.text.trim() === next) settle(stands);
      else put({ seen: stands, problem: null, clash: null });
      return true;
    } catch (error) {
      const there = clashOf(error, name);
      put({ problem: sayWrong(error, name), clash: there && say(there.now) });
      return false;
    } finally {
      put({ busy: false });
    }
  };
  /** Whether nothing waits to be kept any more. */
  const keep = async (over?: string): Promise<boolean> => {
    while (underWay.current) await underWay.current;
    const { text, seen, clash } = now.current;
    const next = text.trim();
    if (next === seen && clash === null) {
      settle(seen);
      return true;
    }
    const wrong = wrongWith(next, field);
    put({ problem: wrong });
    if (wrong !== null) return false;
    underWay.current = send(next, over ?? seen).finally(() => {
      underWay.current = null;
    });
    return underWay.current;
  };
  const { text, seen, problem, clash, busy } = shown;
  return {
    text,
    problem,
    clash,
    busy,
    changed: text !== seen || clash !== null,
    write: (next: string) => put({ text: next }),
    tell: (wrong: string) => put({ problem: wrong }),
    keep,
    giveUp: () => settle(clash ?? value),
  };
}

function asWritten(now: unknown): string {
  return now === null || now === undefined ? '' : String(now);
}

/** Words are never cut short in silence: what is too long stays where it was written. */
function wrongWith(text: string, { maxLength, required }: KeptText): string | null {
  if (required && text === '') return 'This cannot be left empty. Escape brings back what stood here.';
  if (maxLength === undefined || text.length <= maxLength) return null;
  const [most, long] = [maxLength, text.length].map((count) => count.toLocaleString('en-GB'));
  return `Not kept: at most ${most} letters fit, and this has ${long}. Your words are still here; shorten them.`;
}
