export { listenResults, listenTo, modelsFolder, speechModels } from './listen-store';
export {
  correctLine,
  decide,
  decideAll,
  importToFilm,
  importToTake,
  narrationOf,
  narrationStamp,
  proposalsOf,
  removeNarration,
  setSlang,
  shiftTake,
  slangOf,
} from './record-store';
