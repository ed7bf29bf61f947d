import { z } from 'zod';

/** Instrument types that every workshop starts with; a repairer's own types come beside them. */
export const instrumentTypes = [
  'electric guitar',
  'bass guitar',
  'acoustic guitar',
  'classical guitar',
  'ukulele',
  'mandolin',
  'banjo',
  'violin family',
  'valve amplifier',
  'solid-state amplifier',
  'effects pedal',
  'loose pickup',
  'other',
] as const;

export type KnownInstrumentType = (typeof instrumentTypes)[number];

/** Types with frets. What is not in the list may have them too. */
export const frettedTypes = [
  'electric guitar',
  'bass guitar',
  'acoustic guitar',
  'classical guitar',
  'ukulele',
  'mandolin',
  'banjo',
  'other',
] as const satisfies readonly KnownInstrumentType[];

/** Types that are played with a bow. */
export const bowedTypes = ['violin family'] as const satisfies readonly KnownInstrumentType[];

/** Types with strings. */
export const strungTypes = [...frettedTypes, ...bowedTypes] as const;

/** A type is a short free word, so that a workshop can add its own ("hurdy-gurdy"). */
export const instrumentTypeSchema = z.string().trim().min(1).max(60);
