export { loadDemonstration } from './demo-store';
export {
  addJob,
  clearOldBin,
  deleteJob,
  getJobRecord,
  jobRow,
  listBin,
  listTickets,
  patchJob,
  restoreJob,
} from './job-store';
