export {
  addClient,
  exportClient,
  getClientView,
  listClients,
  mergeClients,
  patchClient,
  removeClient,
} from './client-store';
export { loadOlderJobs } from './demo-older-store';
export { loadDemonstration } from './demo-store';
export { eraseClient, recordingsNaming } from './erase-store';
export { decideProposal, decideProposals } from './heard-store';
export {
  addClaim,
  getInstrumentView,
  listInstruments,
  patchClaim,
  patchInstrument,
  removeClaim,
  serialPatternsOf,
  setSerialPatterns,
} from './instrument-store';
export {
  addPart,
  addWorkItem,
  partsOf,
  patchPart,
  patchWorkItem,
  removePart,
  removeWorkItem,
  workItemsOf,
} from './item-store';
export { addJob, clearOldBin, deleteJob, listBin, patchJob, restoreJob } from './job-store';
export { forgetOldTickets, keepTicketsAtLeisure, rackOf } from './rack-store';
export { getJobRecord, looseEndsOf } from './record-store';
export { jobRow } from './row-store';
export { setWorkshop, workshopOf } from './workshop-store';
