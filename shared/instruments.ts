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

/** A type is a short free word, so that a workshop can add its own ("hurdy-gurdy"). */
export const instrumentTypeSchema = z.string().trim().min(1).max(60);
