export { listenResults, listenTo, modelsFolder, speechModels } from './listen-store';
export {
  correctLine,
  decide,
  decideAll,
  type HeardRow,
  importToFilm,
  importToTake,
  narrationOf,
  narrationStamp,
  proposalKeyOf,
  proposalsOf,
  removeNarration,
  replaceLines,
  setSlang,
  shiftTake,
  slangOf,
} from './record-store';
