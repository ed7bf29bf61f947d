export { checkTotal } from './check';
export { drawPlan, type PlanDrawing } from './drawing';
export { recordOutcome } from './outcome';
export { type PlanOptions, planWiring, type WiringPlans } from './wiring-plans';
