import { type Film, type Moment, momentAt, type PlacedTake } from '@/lib/film';
import type { TakeId } from '@/shared/ids';

/** What the player needs to show a take. */
export interface PlayableTake {
  id: TakeId;
  /** Where the film of this take is served. */
  address: string;
  /** The first shown frame on the file's own clock, in milliseconds. */
  firstFrameMs: number;
}

/** How close to the end of a take counts as its end, in milliseconds: less than a frame. */
const seamMs = 15;

/**
 * Plays takes as one film on two media elements: one shows, the other holds the next take ready.
 * To the sound strip it looks like one media element, in seconds of film time.
 * Events: `timeupdate`, `play`, `pause`, `seeking`, `seeked`, `durationchange`, `ended`, `ratechange`, `problem`.
 */
export class FilmPlayer extends EventTarget {
  #film: Film = { durationMs: 0, takes: [] };
  #takes = new Map<TakeId, PlayableTake>();
  #showing: HTMLVideoElement;
  #standby: HTMLVideoElement;
  #place: PlacedTake | null = null;
  #wantsToPlay = false;
  #frame = 0;
  #released = false;
  readonly #listeners = new AbortController();

  constructor(first: HTMLVideoElement, second: HTMLVideoElement) {
    super();
    this.#showing = first;
    this.#standby = second;
    for (const element of [first, second]) this.#listen(element);
    this.#uncover();
  }

  /** Takes in a new order or with new trims; what is shown stays on its picture. */
  setFilm(film: Film, takes: readonly PlayableTake[]): void {
    const now = this.moment;
    this.#film = film;
    this.#takes = new Map(takes.map((take) => [take.id, take]));
    this.#place = null;
    const place = now && film.takes.find((take) => take.takeId === now.takeId);
    if (place && now.ms >= place.startMs && now.ms <= place.endMs) this.#show(place, now.ms);
    else this.seek(0);
    this.#tell('durationchange');
  }

  get durationMs(): number {
    return this.#film.durationMs;
  }

  get filmMs(): number {
    const place = this.#place;
    if (!place) return 0;
    return Math.min(
      Math.max(place.filmStartMs + this.#takeMs() - place.startMs, place.filmStartMs),
      place.filmEndMs,
    );
  }

  /** The moment that is shown; null on an empty film. */
  get moment(): Moment | null {
    if (!this.#place) return null;
    const ms = Math.round(Math.min(Math.max(this.#takeMs(), this.#place.startMs), this.#place.endMs));
    return { takeId: this.#place.takeId, ms };
  }

  seek(filmMs: number): void {
    const moment = momentAt(this.#film, Math.round(filmMs));
    const place = moment && this.#film.takes.find((take) => take.takeId === moment.takeId);
    if (place) this.#show(place, moment.ms);
  }

  async play(): Promise<void> {
    if (!this.#place) return;
    if (this.filmMs >= this.#film.durationMs - seamMs) this.seek(0);
    this.#wantsToPlay = true;
    this.#tell('play');
    await this.#start();
  }

  pause(): void {
    this.#wantsToPlay = false;
    this.#showing.pause();
    this.#tell('pause');
  }

  toggle(): void {
    if (this.paused) void this.play();
    else this.pause();
  }

  release(): void {
    this.#released = true;
    cancelAnimationFrame(this.#frame);
    this.#listeners.abort();
    for (const element of [this.#showing, this.#standby]) {
      element.pause();
      element.removeAttribute('src');
      element.load();
    }
  }

  // What the sound strip asks of a media element.
  get currentTime(): number {
    return this.filmMs / 1000;
  }
  set currentTime(seconds: number) {
    this.seek(seconds * 1000);
  }
  get duration(): number {
    return this.#film.durationMs / 1000;
  }
  get paused(): boolean {
    return !this.#wantsToPlay;
  }
  get ended(): boolean {
    return this.#film.durationMs > 0 && this.filmMs >= this.#film.durationMs;
  }
  get seeking(): boolean {
    return this.#showing.seeking;
  }
  /** A place on the film can always be sought, loaded or not: HAVE_ENOUGH_DATA. */
  get readyState(): number {
    return this.#place ? 4 : 0;
  }
  get playbackRate(): number {
    return this.#showing.playbackRate;
  }
  set playbackRate(rate: number) {
    for (const element of [this.#showing, this.#standby]) {
      element.defaultPlaybackRate = rate;
      element.playbackRate = rate;
    }
    this.#tell('ratechange');
  }
  get volume(): number {
    return this.#showing.volume;
  }
  set volume(volume: number) {
    this.#showing.volume = volume;
    this.#standby.volume = volume;
  }
  get muted(): boolean {
    return this.#showing.muted;
  }
  set muted(muted: boolean) {
    this.#showing.muted = muted;
    this.#standby.muted = muted;
  }
  /** The strip gets its peaks handed to it: it never loads an address. */
  readonly src = '';
  readonly currentSrc = '';

  #show(place: PlacedTake, ms: number): void {
    const take = this.#takes.get(place.takeId);
    if (!take) return;
    if (this.#standby.dataset.address === take.address && this.#showing.dataset.address !== take.address)
      this.#swap();
    this.#place = place;
    load(this.#showing, take.address);
    this.#tell('seeking');
    this.#showing.currentTime = (ms + take.firstFrameMs) / 1000;
    this.#makeReady();
    this.#tell('timeupdate');
    if (this.#wantsToPlay) void this.#start();
  }

  /** Loads what comes next into the element that waits, at its first kept picture. */
  #makeReady(): void {
    const next = this.#placeAfter();
    const take = next && this.#takes.get(next.takeId);
    if (!next || !take || this.#standby.dataset.address === take.address) return;
    load(this.#standby, take.address);
    this.#standby.currentTime = (next.startMs + take.firstFrameMs) / 1000;
  }

  #placeAfter(): PlacedTake | undefined {
    const index = this.#place ? this.#film.takes.indexOf(this.#place) : -1;
    return this.#film.takes.slice(index + 1).find((take) => take.filmEndMs > take.filmStartMs);
  }

  #swap(): void {
    this.#showing.pause();
    [this.#showing, this.#standby] = [this.#standby, this.#showing];
    this.#uncover();
  }

  #uncover(): void {
    this.#showing.dataset.showing = 'yes';
    this.#standby.dataset.showing = 'no';
  }

  async #start(): Promise<void> {
    try {
      await this.#showing.play();
      this.#follow();
    } catch (error) {
      // A seek or a pause overtook this start: the newer wish stands.
      if (error instanceof DOMException && error.name === 'AbortError') return;
      if (this.#released) return;
      this.pause();
      this.#tell('problem');
    }
  }

  /** Follows the picture frame by frame while it plays, and goes over to the next take at a seam. */
  #follow(): void {
    cancelAnimationFrame(this.#frame);
    const step = () => {
      if (!this.#wantsToPlay || this.#released) return;
      this.#tell('timeupdate');
      this.#crossSeam();
      this.#frame = requestAnimationFrame(step);
    };
    this.#frame = requestAnimationFrame(step);
  }

  #crossSeam(): void {
    const place = this.#place;
    if (!place || (this.#takeMs() < place.endMs - seamMs && !this.#showing.ended)) return;
    const next = this.#placeAfter();
    if (next) {
      this.#show(next, next.startMs);
      return;
    }
    this.#wantsToPlay = false;
    this.#showing.pause();
    this.#tell('pause');
    this.#tell('ended');
  }

  /** The element's own slow clock keeps the film going where frames are not drawn: in a window out of sight. */
  #onTime(): void {
    this.#tell('timeupdate');
    if (this.#wantsToPlay) this.#crossSeam();
  }

  #takeMs(): number {
    const take = this.#place && this.#takes.get(this.#place.takeId);
    return this.#showing.currentTime * 1000 - (take?.firstFrameMs ?? 0);
  }

  #listen(element: HTMLVideoElement): void {
    const { signal } = this.#listeners;
    const whenShowing = (work: () => void) => () => {
      if (element === this.#showing) work();
    };
    element.addEventListener(
      'seeked',
      whenShowing(() => this.#tell('seeked', 'timeupdate')),
      { signal },
    );
    element.addEventListener(
      'timeupdate',
      whenShowing(() => this.#onTime()),
      { signal },
    );
    element.addEventListener(
      'loadeddata',
      whenShowing(() => this.#tell('canplay', 'timeupdate')),
      { signal },
    );
    element.addEventListener(
      'ended',
      whenShowing(() => this.#crossSeam()),
      { signal },
    );
    element.addEventListener(
      'error',
      whenShowing(() => this.#tell('problem')),
      { signal },
    );
  }

  #tell(...events: string[]): void {
    if (!this.#released) for (const event of events) this.dispatchEvent(new Event(event));
  }
}

function load(element: HTMLVideoElement, address: string): void {
  if (element.dataset.address === address) return;
  element.dataset.address = address;
  element.src = address;
}
