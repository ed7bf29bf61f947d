'use client';

import { useRef, useState } from 'react';
import { MarkerShape, markerWords } from '@/app/_parts/marker-shape';
import { exactTime, type Film, filmTimeOf, graduations, shortTime } from '@/lib/film';
import type { JobRecord } from '@/shared/jobs';
import type { Marker } from '@/shared/markers';
import type { StripView } from './sound-strip';
import styles from './strip.module.css';

interface ScaleProps {
  film: Film;
  record: JobRecord;
  view: StripView;
  selected: string | null;
  onSelect: (id: string) => void;
  onMove: (id: string, filmMs: number) => void;
}

/** Pixels beyond the view within which things are still drawn: a marker's shape is wider than its point. */
const marginPx = 24;
/** A touch that wanders less than this is a touch, not a drag. */
const dragPx = 4;

/** Graduations, the ends of takes, readings as ticks and markers as shapes; only what is in view. */
export function EngravedScale({ film, record, view, selected, onSelect, onMove }: ScaleProps) {
  if (view.pixelsPerMs === 0) return <div className={styles.scale} />;
  const left = (filmMs: number) => (filmMs - view.fromMs) * view.pixelsPerMs;
  const widthPx = (view.toMs - view.fromMs) * view.pixelsPerMs;
  const inView = (x: number) => x >= -marginPx && x <= widthPx + marginPx;
  const numbers = new Map(record.takes.map((take, index) => [take.id, index + 1]));
  return (
    <div className={styles.scale}>
      {graduations(view.fromMs, Math.min(view.toMs, film.durationMs), view.pixelsPerMs).map(
        ({ ms, long }) => (
          <span key={ms} className={long ? styles.long : styles.short} style={{ left: left(ms) }}>
            {long && <span className={styles.time}>{shortTime(ms)}</span>}
          </span>
        ),
      )}
      {silencesOf(film, record).map(({ key, startMs, endMs }) =>
        inView(left(startMs)) || inView(left(endMs)) ? (
          <span
            key={key}
            className={styles.silence}
            style={{ left: left(startMs), width: (endMs - startMs) * view.pixelsPerMs }}
          />
        ) : null,
      )}
      {viewChangesOf(film, record).map(({ key, filmMs }) =>
        inView(left(filmMs)) ? (
          <span key={key} className={styles.viewChange} style={{ left: left(filmMs) }} />
        ) : null,
      )}
      {film.takes.map((take) =>
        inView(left(take.filmStartMs)) ? (
          <span key={take.takeId} className={styles.seam} style={{ left: left(take.filmStartMs) }}>
            <span className={styles.takeNumber}>take {numbers.get(take.takeId)}</span>
          </span>
        ) : null,
      )}
      {record.readings.map((reading) => {
        const at =
          reading.takeId !== null && reading.ms !== null
            ? filmTimeOf(film, { takeId: reading.takeId, ms: reading.ms })
            : null;
        return at?.shown && inView(left(at.filmMs)) ? (
          <span key={reading.id} className={styles.readingTick} style={{ left: left(at.filmMs) }} />
        ) : null;
      })}
      {record.markers.map((marker) => {
        const at = filmTimeOf(film, marker);
        if (!at?.shown) return null;
        const endMs =
          marker.endMs === null
            ? at.filmMs
            : (filmTimeOf(film, { takeId: marker.takeId, ms: marker.endMs })?.filmMs ?? at.filmMs);
        if (
          endMs < view.fromMs ||
          !inView(Math.min(left(at.filmMs), widthPx + marginPx + (left(endMs) < 0 ? 1 : 0)))
        )
          return null;
        return (
          <ScaleMarker
            key={marker.id}
            marker={marker}
            filmMs={at.filmMs}
            spanPx={(endMs - at.filmMs) * view.pixelsPerMs}
            left={left(at.filmMs)}
            pixelsPerMs={view.pixelsPerMs}
            selected={marker.id === selected}
            onSelect={onSelect}
            onMove={onMove}
          />
        );
      })}
    </div>
  );
}

interface ScaleMarkerProps {
  marker: Marker;
  filmMs: number;
  left: number;
  spanPx: number;
  pixelsPerMs: number;
  selected: boolean;
  onSelect: (id: string) => void;
  onMove: (id: string, filmMs: number) => void;
}

/** A marker's shape on the scale: touch to go there, drag to move it. By keyboard it is moved on the sheet. */
function ScaleMarker({
  marker,
  filmMs,
  left,
  spanPx,
  pixelsPerMs,
  selected,
  onSelect,
  onMove,
}: ScaleMarkerProps) {
  const grabbed = useRef<number | null>(null);
  const [byPx, setByPx] = useState(0);
  const title = `${markerWords[marker.kind]}: ${marker.title}, at ${exactTime(filmMs)}`;
  const drop = () => {
    if (grabbed.current === null) return;
    grabbed.current = null;
    setByPx(0);
    if (Math.abs(byPx) >= dragPx) onMove(marker.id, Math.round(filmMs + byPx / pixelsPerMs));
    else onSelect(marker.id);
  };
  return (
    <>
      {spanPx > 0 && (
        <span className={styles.span} data-kind={marker.kind} style={{ left: left + byPx, width: spanPx }} />
      )}
      <button
        type="button"
        tabIndex={-1}
        className={styles.marker}
        data-selected={selected || undefined}
        style={{ left: left + byPx }}
        title={title}
        aria-label={title}
        onPointerDown={(event) => {
          grabbed.current = event.clientX;
          event.currentTarget.setPointerCapture(event.pointerId);
        }}
        onPointerMove={(event) => grabbed.current !== null && setByPx(event.clientX - grabbed.current)}
        onPointerUp={drop}
        onPointerCancel={() => {
          grabbed.current = null;
          setByPx(0);
        }}
      >
        <MarkerShape kind={marker.kind} size={18} />
      </button>
    </>
  );
}

function silencesOf(film: Film, record: JobRecord) {
  return record.takes.flatMap((take) =>
    (take.hints?.silences ?? []).flatMap(({ startMs, endMs }) => {
      const from = filmTimeOf(film, { takeId: take.id, ms: startMs });
      const to = filmTimeOf(film, { takeId: take.id, ms: endMs });
      return from && to && to.filmMs > from.filmMs
        ? [{ key: `${take.id}-${startMs}`, startMs: from.filmMs, endMs: to.filmMs }]
        : [];
    }),
  );
}

function viewChangesOf(film: Film, record: JobRecord) {
  return record.takes.flatMap((take) =>
    (take.hints?.viewChanges ?? []).flatMap(({ ms }) => {
      const at = filmTimeOf(film, { takeId: take.id, ms });
      return at?.shown ? [{ key: `${take.id}-${ms}`, filmMs: at.filmMs }] : [];
    }),
  );
}
