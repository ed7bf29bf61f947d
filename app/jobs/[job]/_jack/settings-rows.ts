import type { JackCheck, JackJudgement, JackSetting } from '@/shared/jack';
import type { JackView } from '@/shared/jack-check';
import { sayExpected, settingKey } from './words';

/** A setting that an explanation wants read next; a new value each time that it is asked for. */
export interface AskedSetting {
  setting: JackSetting;
  label: string;
}

export interface SettingRow {
  key: string;
  setting: JackSetting;
  label: string;
  /** What a sound harness shows; null where only a faulty one is told by it. */
  expected: string[] | null;
  explanation: string | null;
  check: JackCheck | null;
}

export interface SettingRows {
  up: SettingRow[];
  down: SettingRow[];
}

/** One row for each setting worth reading, and for any other that was read or is asked for. */
export function rowsOf(view: JackView, judgement: JackJudgement, asked: AskedSetting | null): SettingRows {
  const checkOf = new Map(judgement.checks.map((check) => [settingKey(check.setting), check]));
  const listed = view.expected.map((one) => {
    const key = settingKey(one.setting);
    const row: SettingRow = {
      key,
      setting: one.setting,
      label: one.label,
      expected: sayExpected(one),
      explanation: one.explanation,
      check: checkOf.get(key) ?? null,
    };
    return { row, isUp: one.pots === 'all up' };
  });
  const known = new Set(listed.map(({ row }) => row.key));
  const others = judgement.checks.map(otherRow).filter(({ key }) => !known.has(key));
  for (const { key } of others) known.add(key);
  const wanted = asked && !known.has(settingKey(asked.setting)) ? [askedRow(asked)] : [];
  return {
    up: listed.flatMap(({ row, isUp }) => (isUp ? [row] : [])),
    down: [...listed.flatMap(({ row, isUp }) => (isUp ? [] : [row])), ...others, ...wanted],
  };
}

function otherRow(check: JackCheck): SettingRow {
  const { setting, label, expected } = check;
  return {
    key: settingKey(setting),
    setting,
    label,
    expected: sayExpected(expected),
    explanation: null,
    check,
  };
}

function askedRow({ setting, label }: AskedSetting): SettingRow {
  return { key: settingKey(setting), setting, label, expected: null, explanation: null, check: null };
}
