export {
  type Chapter,
  type ChapterStart,
  chaptersFrom,
  chaptersOf,
  oneLine,
  withEnds,
} from './chapters';
export {
  type ClockTake,
  type Film,
  filmTimeOf,
  layOut,
  type Moment,
  momentAt,
  type PlacedTake,
  stepFrom,
} from './clock';
export { inFilmOrder, moved } from './order';
export { type Graduation, graduations } from './scale';
export { type FilmSound, levelFor, soundOfFilm } from './sound';
export { exactTime, shortTime, webvttTime } from './timecode';
