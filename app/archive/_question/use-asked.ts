'use client';

import { useSearchParams } from 'next/navigation';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { type Asked, pageOf, readAsked, searchOf } from './asked';
import { withWords } from './taken-away';

/** A person who types on has not asked yet. */
const pauseMs = 250;

export interface Asking {
  asked: Asked;
  /** What stands behind the question mark of the address. */
  search: string;
  /** The words in the box, which may be ahead of those that are asked. */
  typed: string;
  type(words: string): void;
  /** Asks what is typed at once. */
  askTyped(): void;
  /** Asks another question, made of what is asked and typed now; Back leads to the one before. */
  ask(change: (now: Asked) => Asked): void;
}

/**
 * The question is the address of the page. What is typed in one go is one step of the history, however often it is
 * asked meanwhile; every other change is a step of its own.
 */
export function useAsked(): Asking {
  const address = useSearchParams().toString();
  const search = useMemo(() => searchOf(readAsked(address)), [address]);
  const asked = useMemo(() => readAsked(search), [search]);
  const [typed, setTyped] = useState(asked.q);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const typing = useRef({ isUnderWay: false, written: search });

  const write = useCallback((next: Asked, isTyped: boolean) => {
    clearTimeout(timer.current);
    const { isUnderWay, written } = typing.current;
    const wanted = searchOf(next);
    typing.current = { isUnderWay: isTyped && (isUnderWay || wanted !== written), written: wanted };
    if (wanted === written) return;
    // Typed on, it is the same question; with words taken out or others in their place, it is another.
    if (isTyped && isUnderWay && next.q.startsWith(readAsked(written).q))
      window.history.replaceState(null, '', pageOf(wanted));
    else window.history.pushState(null, '', pageOf(wanted));
  }, []);

  // Back, Forward or a link: the box follows the address.
  useEffect(() => {
    if (search === typing.current.written) return;
    clearTimeout(timer.current);
    typing.current = { isUnderWay: false, written: search };
    setTyped(asked.q);
  }, [search, asked]);
  useEffect(() => () => clearTimeout(timer.current), []);

  const type = (words: string) => {
    setTyped(words);
    clearTimeout(timer.current);
    timer.current = setTimeout(() => write(withWords(asked, words.trim()), true), pauseMs);
  };
  const askTyped = () => {
    write(withWords(asked, typed.trim()), true);
    typing.current.isUnderWay = false;
  };
  const ask = (change: (now: Asked) => Asked) => {
    const next = change(withWords(asked, typed.trim()));
    if (next.q !== typed.trim()) setTyped(next.q);
    write(next, false);
  };
  return { asked, search, typed, type, askTyped, ask };
}
