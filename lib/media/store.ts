export {
  addFolder,
  forgetFolder,
  liesIn,
  listFolders,
  placeOf,
  recordingsIn,
  setClockOffset,
} from './folder-store';
export { isSpeechModelFile } from './model-store';
export { exactStillOf, peaksFileOf, stripStillOf } from './picture-store';
export {
  filmPathOf,
  folderOfRecording,
  getRecording,
  moveRecording,
  noticeMissingOf,
  pathOfRecording,
  recordingAt,
} from './recording-store';
export { fingerprintOf, lookAgain, lookAtRecording, makeViewingCopy, taskResults } from './task-store';
export {
  clearOldUploads,
  receiveUpload,
  roomForUploads,
  sha256OfFile,
  uploadsFolder,
  uploadsKeptMs,
} from './upload-store';
