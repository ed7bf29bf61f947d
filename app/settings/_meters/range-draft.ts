import { type MeterRange, meterRangeSchema, type UnitId } from '@/shared/readings';

/** A range of a meter as it is being typed. */
export interface RangeDraft {
  /** For the page only: lines keep their places while others go. */
  key: number;
  unit: UnitId;
  fullScale: string;
  resolution: string;
  percent: string;
  counts: string;
}

export const figures = [
  { field: 'fullScale', label: 'Reads up to' },
  { field: 'resolution', label: 'Last digit' },
  { field: 'percent', label: '± % of reading' },
  { field: 'counts', label: '± counts' },
] as const;

let lastKey = 0;

export function draftOf(range?: MeterRange): RangeDraft {
  const { unit = 'kΩ', fullScale = '', resolution = '', percent = '', counts = '' } = range ?? {};
  return {
    key: ++lastKey,
    unit,
    fullScale: String(fullScale),
    resolution: String(resolution),
    percent: String(percent),
    counts: String(counts),
  };
}

/** The range that was typed; null where a figure is missing or is none. A comma stands for a point. */
export function rangeOf({ unit, fullScale, resolution, percent, counts }: RangeDraft): MeterRange | null {
  const number = (text: string) => (text.trim() === '' ? Number.NaN : Number(text.trim().replace(',', '.')));
  const range = meterRangeSchema.safeParse({
    unit,
    fullScale: number(fullScale),
    resolution: number(resolution),
    percent: number(percent),
    counts: number(counts),
  });
  return range.success ? range.data : null;
}
