import type { DemoJob, DemoReading, DemoTake } from '../demo-types';
import { needleAt, shownAt } from './display';
import type { TakeScript } from './takes/script';

function problemOfReading(reading: DemoReading, script: TakeScript): string | null {
  if (reading.kind === 'resistance') {
    const shown = shownAt(script.displays, reading.ms);
    const same = shown.digits === reading.digits && shown.unit === reading.unit;
    return same
      ? null
      : `the display shows ${shown.digits} ${shown.unit}, not ${reading.digits} ${reading.unit}`;
  }
  const swing = needleAt(script.kicks, reading.ms);
  const sign = swing > 0 ? 'positive' : 'negative';
  const size = Math.abs(swing) > 0.4 ? 'large' : 'small';
  const same = Math.abs(swing) > 0.05 && sign === reading.sign && size === reading.size;
  return same ? null : `the needle stands at ${swing.toFixed(2)}, not ${reading.size} and ${reading.sign}`;
}

function problemsOfTake(take: DemoTake, script: TakeScript): string[] {
  if (take.lengthMs !== script.lengthMs || take.recordedAt !== script.recordedAt) {
    return [`${take.file}: its length or date is not that of its script`];
  }
  const late = take.markers.filter((marker) => (marker.endMs ?? marker.ms) > script.lengthMs);
  const wrong = take.readings.flatMap((reading) => {
    const problem = problemOfReading(reading, script);
    return problem === null ? [] : [`${take.file} at ${reading.ms} ms: ${problem}`];
  });
  return [...late.map((marker) => `${take.file}: "${marker.title}" lies after the end`), ...wrong];
}

/** Where the data of the demonstration job does not agree with what its takes show. Empty when all is well. */
export function problemsOf(job: DemoJob, scripts: TakeScript[]): string[] {
  return scripts.flatMap((script) => {
    const take = job.takes.find((one) => one.file === `${script.name}.mp4`);
    return take ? problemsOfTake(take, script) : [`${script.name} has no data`];
  });
}
