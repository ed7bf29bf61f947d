export * from './colours';
export * from './jack';
export * from './plans';
export * from './record';
export * from './trace';
