export * from './colours';
export * from './plans';
export * from './trace';
export * from './record';
