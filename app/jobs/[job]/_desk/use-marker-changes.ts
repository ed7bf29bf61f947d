'use client';

import { useMemo } from 'react';
import { z } from 'zod';
import type { Moment } from '@/lib/film';
import { changeIdSchema, type MarkerId, type TakeId } from '@/shared/ids';
import {
  type Marker,
  type MarkerKind,
  type MarkerPatch,
  markerKindSchema,
  markerSchema,
} from '@/shared/markers';
import { useDesk } from './use-record';

const answerSchema = z.object({ change: changeIdSchema, marker: markerSchema });
const goneSchema = z.object({ change: changeIdSchema });

/** What can be done to markers, each step with its way back. */
export function useMarkerChanges() {
  const { record, change } = useDesk();
  return useMemo(() => {
    const patch = (id: MarkerId, body: MarkerPatch, told?: string) =>
      change('PATCH', `/api/markers/${id}`, body, answerSchema, told);
    const lengthOf = (takeId: TakeId) => record.takes.find((take) => take.id === takeId)?.durationMs ?? 0;
    return {
      drop: async (kind: MarkerKind, moment: Moment) =>
        (
          await change(
            'POST',
            `/api/jobs/${record.job.id}/markers`,
            { kind, takeId: moment.takeId, ms: moment.ms },
            answerSchema,
          )
        )?.marker ?? null,
      rename: (id: MarkerId, title: string) => patch(id, { title }),
      setKind: (id: MarkerId, kind: string) => patch(id, { kind: markerKindSchema.parse(kind) }),
      setPublic: (id: MarkerId, isPublic: boolean) => patch(id, { public: isPublic }),
      setEnd: (id: MarkerId, endMs: number | null) => patch(id, { endMs }),
      /** Moves a point or a whole span along its take, not over its ends. */
      nudge: (marker: Marker, byMs: number) => {
        const last = lengthOf(marker.takeId);
        const ms = Math.min(
          Math.max(0, marker.ms + byMs),
          marker.endMs === null ? last : last - (marker.endMs - marker.ms),
        );
        const endMs = marker.endMs === null ? null : marker.endMs + ms - marker.ms;
        return patch(marker.id, { ms, endMs });
      },
      /** Moves a marker to another moment; a span becomes a point where it would leave its take. */
      moveTo: (id: MarkerId, moment: Moment | null) => {
        const marker = record.markers.find((candidate) => candidate.id === id);
        if (!moment || !marker) return;
        const endMs = marker.endMs === null ? null : moment.ms + marker.endMs - marker.ms;
        const fits = endMs !== null && endMs <= lengthOf(moment.takeId);
        void patch(id, { takeId: moment.takeId, ms: moment.ms, endMs: fits ? endMs : null }, 'Marker moved');
      },
      remove: (marker: Marker) =>
        change(
          'DELETE',
          `/api/markers/${marker.id}`,
          undefined,
          goneSchema,
          `Marker “${marker.title}” deleted`,
        ),
    };
  }, [record, change]);
}
