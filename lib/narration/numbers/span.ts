/** A number found in the talk. */
export interface SpokenNumber {
  readonly from: number;
  readonly to: number;
  readonly value: number;
  /** As it would be written, with every digit that was said: "4.080". */
  readonly digits: string;
  /**
   * `integer`, `decimal` ("four point oh eight"), `fraction` ("two and a half"), `over` ("six over sixty-four", value in
   * parts of `denominator`), `row` (three or more single digits, as serials and telephone numbers are said).
   */
  readonly shape: 'integer' | 'decimal' | 'fraction' | 'over' | 'row';
  readonly denominator: number | null;
  readonly signed: boolean;
}

/** A number part while it is being read. */
export interface Part {
  readonly value: number;
  readonly digits: string;
  readonly to: number;
}
