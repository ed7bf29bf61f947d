'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import WaveSurfer from 'wavesurfer.js';
import { useNonce } from '@/app/_parts/shell';
import type { FilmSound } from '@/lib/film';
import type { FilmPlayer } from '../_film/film-player';
import styles from './strip.module.css';

/** The part of the film that the strip shows. */
export interface StripView {
  fromMs: number;
  toMs: number;
  pixelsPerMs: number;
}

interface SoundStripProps {
  player: FilmPlayer;
  durationMs: number;
  sound: FilmSound | null;
  /** Times the whole film's width that the strip is drawn out to; 1 shows all. */
  zoom: number;
  onView: (view: StripView) => void;
}

const heightPx = 60;
const flat = { highest: new Float32Array(2), lowest: new Float32Array(2) };

/** The sound of the film, drawn by wavesurfer from our own peaks: nothing is decoded here. */
export function SoundStrip({ player, durationMs, sound, zoom, onView }: SoundStripProps) {
  const holder = useRef<HTMLDivElement>(null);
  const nonce = useNonce();
  const [surfer, setSurfer] = useState<WaveSurfer | null>(null);
  const latest = useRef({ durationMs, sound });
  latest.current = { durationMs, sound };

  const report = useCallback(
    (from: WaveSurfer) => {
      const width = from.getWrapper().clientWidth;
      const pixelsPerMs = width / Math.max(1, latest.current.durationMs);
      const fromMs = from.getScroll() / pixelsPerMs;
      onView({ fromMs, toMs: fromMs + from.getWidth() / pixelsPerMs, pixelsPerMs });
    },
    [onView],
  );

  useEffect(() => {
    if (!holder.current) return;
    const made = WaveSurfer.create({
      container: holder.current,
      // The player offers what wavesurfer touches of a media element, as its own Web Audio player does.
      media: player as unknown as HTMLMediaElement,
      ...asPeaks(latest.current.sound, latest.current.durationMs),
      height: heightPx,
      minPxPerSec: 0,
      dragToSeek: true,
      cursorWidth: 2,
      ...(nonce ? { cspNonce: nonce } : {}),
      ...inks(),
    });
    for (const event of ['ready', 'redraw', 'scroll', 'zoom', 'resize'] as const)
      made.on(event, () => report(made));
    const light = matchMedia('(prefers-color-scheme: dark)');
    const repaint = () => made.setOptions(inks());
    light.addEventListener('change', repaint);
    setSurfer(made);
    return () => {
      light.removeEventListener('change', repaint);
      setSurfer(null);
      made.destroy();
    };
  }, [player, nonce, report]);

  useEffect(() => {
    if (!surfer || !sound) return;
    const { peaks, duration } = asPeaks(sound, durationMs);
    // A newer load takes over from this one: that is no failure.
    surfer.load('', peaks, duration).catch((error: unknown) => {
      if (!(error instanceof DOMException && error.name === 'AbortError')) throw error;
    });
  }, [surfer, sound, durationMs]);

  useEffect(() => {
    if (!surfer?.getDecodedData()) return;
    const wholeWidth = surfer.getWidth() / Math.max(0.001, durationMs / 1000);
    surfer.zoom(zoom === 1 ? 0 : wholeWidth * zoom);
    // Zooming keeps the shown moment in the middle of the strip.
    const at = player.currentTime;
    if (zoom > 1) surfer.setScrollTime(Math.max(0, at - durationMs / 1000 / zoom / 2));
  }, [surfer, zoom, durationMs, player]);

  return <div ref={holder} className={styles.sound} />;
}

function asPeaks(sound: FilmSound | null, durationMs: number) {
  const { highest, lowest } = sound ?? flat;
  return { peaks: [highest, lowest], duration: Math.max(0.001, durationMs / 1000) };
}

function inks() {
  const ink = getComputedStyle(document.documentElement);
  const of = (name: string) => ink.getPropertyValue(name).trim();
  return { waveColor: of('--wave'), progressColor: of('--wave-played'), cursorColor: of('--alarm') };
}
