'use client';

import { useEffect, useRef, useState } from 'react';
import { Button } from '@/app/_parts/button';
import { TextField } from '@/app/_parts/field';
import { exactTime } from '@/lib/film';
import { type Part, readTypedTime, wrongWith } from './part';
import styles from './send.module.css';

interface PartChoiceProps {
  file: File;
  part: Part;
  durationMs: number | null;
  disabled: boolean;
  onPart: (part: Part) => void;
  onDuration: (durationMs: number | null) => void;
}

/** The recording as this browser plays it, and the part of it that matters. */
export function PartChoice({ file, part, durationMs, disabled, onPart, onDuration }: PartChoiceProps) {
  const video = useRef<HTMLVideoElement>(null);
  const address = useAddressOf(file);
  const [playable, setPlayable] = useState(true);
  const here = () => Math.round((video.current?.currentTime ?? 0) * 1000);
  return (
    <>
      {playable && address && (
        // biome-ignore lint/a11y/useMediaCaption: nobody has written down yet what is said in it.
        <video
          ref={video}
          className={styles.video}
          src={address}
          controls
          playsInline
          preload="metadata"
          aria-label={`Preview of ${file.name}`}
          onLoadedMetadata={(event) => onDuration(wholeMs(event.currentTarget.duration))}
          onError={() => {
            setPlayable(false);
            onDuration(null);
          }}
        />
      )}
      {!playable && (
        <p>
          This browser does not play the recording. It can still be sent; times of a part have to be typed.
        </p>
      )}
      <div className={styles.ends}>
        <End
          label="From"
          empty="0:00"
          ms={part.startMs === 0 ? null : part.startMs}
          hereWord={playable ? 'Start here' : null}
          here={here}
          disabled={disabled}
          onMs={(ms) => onPart({ ...part, startMs: ms ?? 0 })}
        />
        <End
          label="To"
          empty={durationMs === null ? 'the end' : exactTime(durationMs)}
          ms={part.endMs}
          hereWord={playable ? 'End here' : null}
          here={here}
          disabled={disabled}
          onMs={(ms) => onPart({ ...part, endMs: ms })}
        />
      </div>
      <p className={styles.wrong} role="alert">
        {wrongWith(part, durationMs)}
      </p>
    </>
  );
}

interface EndProps {
  label: string;
  /** What stands there while nothing is chosen. */
  empty: string;
  ms: number | null;
  /** Null where there is no player to ask. */
  hereWord: string | null;
  here: () => number;
  disabled: boolean;
  onMs: (ms: number | null) => void;
}

/** One end of the part: typed, or taken from where the player stands. */
function End({ label, empty, ms, hereWord, here, disabled, onMs }: EndProps) {
  const [text, setText] = useState('');
  const wrong = text.trim() !== '' && readTypedTime(text) === null;
  useEffect(() => {
    // What the player or a new recording says replaces what was typed, unless that says the same.
    setText((typed) => (readTypedTime(typed) === ms ? typed : ms === null ? '' : exactTime(ms)));
  }, [ms]);
  const type = (typed: string) => {
    setText(typed);
    if (typed.trim() === '') return onMs(null);
    const read = readTypedTime(typed);
    if (read !== null) onMs(read);
  };
  return (
    <div className={styles.end}>
      <TextField
        label={label}
        placeholder={empty}
        value={text}
        disabled={disabled}
        inputMode="text"
        autoComplete="off"
        wrong={wrong ? 'Type a time, for example 1:23.5' : null}
        onChange={(event) => type(event.target.value)}
      />
      {hereWord && (
        <Button disabled={disabled} onClick={() => onMs(here())}>
          {hereWord}
        </Button>
      )}
    </div>
  );
}

/** An address by which this page alone can play the file. */
function useAddressOf(file: File): string | null {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    const made = URL.createObjectURL(file);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [file]);
  return address;
}

/** A browser says Infinity of a recording whose length it has not found. */
function wholeMs(seconds: number): number | null {
  return Number.isFinite(seconds) ? Math.round(seconds * 1000) : null;
}
