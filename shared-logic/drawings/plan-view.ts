export { planView } from './plan/plan-view'
