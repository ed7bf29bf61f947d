export { type Arrangement, arrangements, sketchHarness, unmeasuredPickup } from './arrangements';
export * from './colours';
export { conductorInks } from './inks';
export * from './jack';
export * from './plans';
export * from './record';
export * from './trace';
