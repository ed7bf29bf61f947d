import type { TakeScript } from './script';
import { take1 } from './take-1';
import { take2 } from './take-2';
import { take3 } from './take-3';

export const takes: TakeScript[] = [take1, take2, take3];
