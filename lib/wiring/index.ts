export { type Arrangement, arrangements, sketchHarness, unmeasuredPickup } from './arrangements';
export * from './colours';
export * from './jack';
export * from './plans';
export * from './record';
export * from './trace';
