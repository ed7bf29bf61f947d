export { findNumbers, readNumberAt } from './read-number';
export type { SpokenNumber } from './span';
