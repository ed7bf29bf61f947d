'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import type { FinishedUpload } from '@/shared/uploads';
import { Rate } from './rate';
import { type Parcel, Sending } from './upload';

export interface Progress {
  phase: 'sending' | 'paused' | 'waiting' | 'checking';
  /** Sent, or hashed while checking. */
  bytes: number;
  ofBytes: number;
  /** Null until it can be told. */
  bytesPerSecond: number | null;
}

export type SendingState =
  | { phase: 'none' }
  | Progress
  | { phase: 'done'; finished: FinishedUpload }
  | { phase: 'refused'; error: unknown };

const none: SendingState = { phase: 'none' };

/** The recording that is on its way. */
export function useSending() {
  const [state, setState] = useState<SendingState>(none);
  const running = useRef<Sending | null>(null);
  useEffect(() => () => running.current?.leave(), []);
  const underWay = 'bytes' in state;
  useEffect(() => {
    if (!underWay) return;
    const ask = (event: BeforeUnloadEvent) => event.preventDefault();
    window.addEventListener('beforeunload', ask);
    return () => window.removeEventListener('beforeunload', ask);
  }, [underWay]);

  const change = useCallback((patch: Partial<Progress>) => {
    setState((before) => ('bytes' in before ? { ...before, ...patch } : before));
  }, []);

  const start = useCallback(
    (parcel: Parcel) => {
      running.current?.leave();
      let rate = new Rate();
      setState({ phase: 'sending', bytes: 0, ofBytes: parcel.file.size, bytesPerSecond: null });
      const sending = new Sending(parcel, {
        onBytes: (bytes) =>
          change({ phase: 'sending', bytes, bytesPerSecond: rate.add({ atMs: performance.now(), bytes }) }),
        onWaiting: () => {
          rate = new Rate();
          change({ phase: 'waiting', bytesPerSecond: null });
        },
        onChecking: (bytes) => change({ phase: 'checking', bytes, bytesPerSecond: null }),
        onDone: (finished) => setState({ phase: 'done', finished }),
        onRefused: (error) => setState({ phase: 'refused', error }),
      });
      running.current = sending;
      sending.start().catch((error: unknown) => setState({ phase: 'refused', error }));
    },
    [change],
  );
  const pause = useCallback(async () => {
    change({ phase: 'paused', bytesPerSecond: null });
    await running.current?.pause();
  }, [change]);
  const resume = useCallback(() => {
    change({ phase: 'sending' });
    running.current?.resume();
  }, [change]);
  const cancel = useCallback(async () => {
    setState(none);
    const sending = running.current;
    running.current = null;
    await sending?.cancel();
  }, []);
  /** Done with it: nothing is left to end. */
  const putAway = useCallback(() => {
    running.current?.leave();
    running.current = null;
    setState(none);
  }, []);
  return { state, start, pause, resume, cancel, putAway };
}
