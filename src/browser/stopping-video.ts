/**
 * A film that waits at each stop: it pauses, says so, shows the question beside it, and goes on when asked.
 * It can be switched off, and whoever moves about in the film is left in peace: only playing into a stop makes it wait.
 */

interface FilmStop {
  readonly at: number;
  readonly told: string;
  readonly box: HTMLElement;
}

/** Seconds that "hear it again" goes back. */
const back = 12;
/** Closer than this to where it waits, in seconds, the film has not been moved. */
const near = 0.05;

for (const film of document.querySelectorAll<HTMLElement>('.film')) begin(film);

function begin(film: HTMLElement): void {
  const video = film.querySelector('video');
  const status = film.querySelector<HTMLElement>('.film-status');
  const choice = film.querySelector<HTMLElement>('.film-switch');
  const waits = choice?.querySelector('input');
  if (!video || !status || !choice || !waits) return;
  const stops = [...film.querySelectorAll<HTMLElement>('.film-stop')].map((box): FilmStop => ({ at: Number(box.dataset['at']), told: box.dataset['told'] ?? '', box })).sort((a, b) => a.at - b.at);
  if (stops.length === 0) return;
  choice.hidden = false;
  /** Where the film was seen last while it played. A jump sets it anew, so that no stop is taken for played into. */
  let last = 0;
  let timer = 0;
  let shown: FilmStop | undefined;

  const look = (): void => {
    window.clearTimeout(timer);
    if (video.paused || video.seeking) return;
    const now = video.currentTime;
    const due = waits.checked ? stops.find((stop) => stop.at > last && stop.at <= now) : undefined;
    if (due) {
      wait(due);
      return;
    }
    last = Math.max(last, now);
    hide();
    // The browser tells the time four times a second; a timer sees to the rest.
    const next = stops.find((stop) => stop.at > now);
    if (next) timer = window.setTimeout(look, Math.max(20, ((next.at - now) * 1000) / video.playbackRate));
  };

  const wait = (stop: FilmStop): void => {
    video.pause();
    hide();
    shown = stop;
    last = stop.at;
    video.currentTime = stop.at;
    // A film that fills the screen would hide the question.
    if (document.fullscreenElement) void document.exitFullscreen();
    stop.box.hidden = false;
    film.classList.add('is-waiting');
    status.textContent = stop.told;
    stop.box.querySelector<HTMLElement>('[data-act="go-on"]')?.focus({ preventScroll: true });
    stop.box.scrollIntoView({ block: 'nearest' });
  };

  const hide = (): void => {
    if (!shown) return;
    // Focus is never lost with the box that closes.
    if (shown.box.contains(document.activeElement)) video.focus({ preventScroll: true });
    shown.box.hidden = true;
    shown = undefined;
    film.classList.remove('is-waiting');
    status.textContent = film.dataset['goesOn'] ?? '';
  };

  film.addEventListener('click', (event) => {
    const act = event.target instanceof HTMLElement ? event.target.dataset['act'] : undefined;
    if (act === undefined || !shown) return;
    const from = act === 'again' ? Math.max(0, shown.at - back) : shown.at;
    hide();
    if (Math.abs(video.currentTime - from) > near) video.currentTime = from;
    last = from;
    void video.play();
  });
  for (const name of ['timeupdate', 'play', 'ratechange']) video.addEventListener(name, look);
  video.addEventListener('seeking', () => {
    window.clearTimeout(timer);
    if (shown && Math.abs(video.currentTime - shown.at) <= near) return;
    last = video.currentTime;
    hide();
  });
  video.addEventListener('seeked', look);
}

export {};
