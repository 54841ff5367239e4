import { isEmpty, isNamed, newBooklet, put, sortedPrompts, takeAway, type Booklet, type Bookmark, type Entry, type Kind, type Name, type Prompt, type Value } from '../../core/booklet/booklet.ts';
import { mergeBooklets } from '../../core/booklet/merge-booklets.ts';
import { keyOf, keyText, notKept, type BookletKey, type PackKey, type Settings } from './kept-booklet.ts';
import { askToStay } from './lasting.ts';
import { storage } from './storage.ts';

/**
 * Keeps what a child does: in memory at once, on the device at the next pause, and together with what
 * another window of the same booklet keeps. Everything on the page reads from here.
 */

/** What there is to say about keeping. Silent while somebody works. */
export type Keeping = 'silent' | 'kept' | 'full' | 'blocked';

/** Milliseconds of pause after which a text is kept and a person is told, and the longest that work without a pause waits. source: common practice, no source. */
const pause = { short: 600, most: 2500 } as const;

/** An entry in its place on the page: a place stays the same while its text changes. */
export interface Placed<E extends Entry = Entry> {
  readonly place: number;
  readonly entry: E;
}

export class Keeper {
  booklet: Booklet | undefined;
  settings: Settings = { flow: 'each', microphone: false };
  keeping: Keeping = 'silent';
  /** Set when another window erased the booklet that was open here. */
  erasedElsewhere = false;

  /** This opening of the page, in the booklet's terms. */
  private readonly writer = randomLetters(12);
  private readonly places = new Map<string, number>();
  private readonly listeners = new Set<() => void>();
  private readonly channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel('bookfellow booklets') : undefined;
  private lastPlace = 0;
  private unsaved = false;
  private since = 0;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private telling: ReturnType<typeof setTimeout> | undefined;
  private saving: Promise<void> | undefined;

  constructor(
    private readonly pack: PackKey & { readonly title: string },
    private readonly prompts: readonly Prompt[],
  ) {
    this.channel?.addEventListener('message', (event: MessageEvent<unknown>) => void this.heard(event.data));
    const now = () => void this.saveNow();
    document.addEventListener('visibilitychange', () => document.visibilityState === 'hidden' && now());
    addEventListener('pagehide', now);
  }

  /** Calls back after each change; gives back how to stop it. */
  listen(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** Opens the booklet of a bookmark, or begins it. Nothing is on the device before `saveNow` or an answer. */
  async open(bookmark: Bookmark, settings?: Settings): Promise<void> {
    await this.saveNow();
    const key: BookletKey = { ...this.pack, bookmark };
    const kept = await storage.read(key);
    const { slug, language, title } = this.pack;
    const booklet = kept?.booklet ?? newBooklet(randomLetters(20), { slug, language, title }, bookmark, this.prompts);
    this.booklet = { ...booklet, prompts: sortedPrompts([...booklet.prompts, ...this.prompts]) };
    this.settings = settings ?? kept?.settings ?? this.settings;
    this.keeping = 'silent';
    this.erasedElsewhere = false;
    this.tell();
  }

  /** A page that was opened again in the same window goes on where it was. */
  change(settings: Partial<Settings>): void {
    this.settings = { ...this.settings, ...settings };
    this.changed();
  }

  /** Entries of some kinds for a stop, each in its place. */
  placed<K extends Kind>(to: string, ...kinds: readonly K[]): readonly Placed<Entry & { value: Extract<Value, { kind: K }> }>[] {
    const entries = this.booklet?.entries.filter((each): each is Entry & { value: Extract<Value, { kind: K }> } => each.to === to && (kinds as readonly Kind[]).includes(each.value.kind)) ?? [];
    return entries.map((entry) => ({ place: this.placeOf(entry), entry })).sort((a, b) => a.place - b.place);
  }

  /** Puts a value at a place: instead of what is there, or as the first. An empty value takes away what is there. */
  put(to: string, value: Value, place?: number): number {
    const { booklet } = this;
    if (!booklet) return 0;
    const old = place === undefined ? undefined : booklet.entries.find((each) => each.to === to && this.places.get(nameText(each)) === place);
    const at = place ?? ++this.lastPlace;
    if (isEmpty(value)) {
      if (old) this.booklet = takeAway(booklet, old);
    } else {
      const next = put(booklet, this.writer, to, value, old);
      const made = next.entries.find((each) => !booklet.entries.includes(each));
      if (made) this.places.set(nameText(made), at);
      this.booklet = next;
    }
    this.changed(!isTyped(value, old?.value));
    return at;
  }

  /** Puts the one value of a kind for a stop, instead of all that stand for the same thing: a feeling word, stars, a pass. */
  putOnly(to: string, value: Value | undefined, ...kinds: readonly Kind[]): void {
    for (const { entry } of this.placed(to, ...kinds)) if (this.booklet) this.booklet = takeAway(this.booklet, entry);
    if (value) this.put(to, value);
    else this.changed(true);
  }

  remove(name: Name): void {
    if (!this.booklet?.entries.some((each) => isNamed(each, name))) return;
    this.booklet = takeAway(this.booklet, name);
    this.changed(true);
  }

  /** A number for an editor that holds nothing yet. */
  newPlace(): number {
    return ++this.lastPlace;
  }

  /** Puts a copy of this booklet, or another reader's whole booklet, in the open one's place. */
  take(booklet: Booklet): void {
    this.booklet = booklet;
    this.changed(true);
  }

  /** The writer that stands for this opening of the page. */
  get writing(): string {
    return this.writer;
  }

  /** Keeps at once what is not kept yet. */
  async saveNow(): Promise<void> {
    clearTimeout(this.timer);
    while (this.unsaved && this.keepable) {
      this.saving ??= this.save().finally(() => (this.saving = undefined));
      await this.saving;
      if (this.keeping === 'full' || this.keeping === 'blocked') return;
    }
  }

  async erase(): Promise<void> {
    if (!this.booklet) return;
    const key = keyOf(this.booklet);
    await this.letGo();
    await storage.erase(key);
    this.channel?.postMessage({ erased: keyText(key) });
  }

  async eraseAll(): Promise<void> {
    await this.letGo();
    await storage.eraseAll();
    this.channel?.postMessage({ erased: 'all' });
  }

  readers(): ReturnType<typeof storage.readers> {
    return storage.readers(this.pack);
  }

  /** Closes the booklet so that nothing of it can be kept any more. */
  async letGo(): Promise<void> {
    clearTimeout(this.timer);
    clearTimeout(this.telling);
    this.unsaved = false;
    await this.saving;
    this.unsaved = false;
    this.booklet = undefined;
    this.keeping = 'silent';
    this.tell();
  }

  private get keepable(): boolean {
    return this.booklet !== undefined;
  }

  private changed(atOnce = false): void {
    this.unsaved = true;
    if (this.keeping === 'kept') this.keeping = 'silent';
    const now = Date.now();
    if (this.timer === undefined) this.since = now;
    clearTimeout(this.timer);
    clearTimeout(this.telling);
    this.timer = setTimeout(() => void this.saveNow(), atOnce ? 0 : Math.max(0, Math.min(pause.short, this.since + pause.most - now)));
    this.tell();
  }

  /** Says that all is kept once nothing was changed for a pause: at most once a pause, however often something was kept. */
  private sayKept(): void {
    clearTimeout(this.telling);
    this.telling = setTimeout(() => {
      if (!this.booklet || this.unsaved) return;
      this.keeping = 'kept';
      this.tell();
    }, pause.short);
  }

  private async save(): Promise<void> {
    const { booklet, settings } = this;
    if (!booklet) return;
    this.unsaved = false;
    this.timer = undefined;
    try {
      const kept = await storage.save({ booklet, settings });
      if (!this.booklet || this.booklet.id !== booklet.id) return;
      this.keeping = 'silent';
      this.sayKept();
      if (booklet.entries.length > 0) askToStay();
      this.adopt(this.booklet === booklet ? kept : mergeBooklets(this.booklet, kept));
      this.channel?.postMessage({ kept: keyText(keyOf(booklet)) });
    } catch (fault) {
      this.unsaved = true;
      this.keeping = notKept(fault).why;
    }
    this.tell();
  }

  private async heard(data: unknown): Promise<void> {
    const { booklet } = this;
    if (!booklet || typeof data !== 'object' || data === null) return;
    const mine = keyText(keyOf(booklet));
    if ('erased' in data && (data.erased === mine || data.erased === 'all')) {
      await this.letGo();
      this.erasedElsewhere = true;
      this.tell();
    } else if ('kept' in data && data.kept === mine) {
      const there = await storage.read(keyOf(booklet));
      if (!there || this.booklet?.id !== booklet.id) return;
      this.adopt(mergeBooklets(this.booklet, there.booklet));
      this.tell();
    }
  }

  /** Takes a merged booklet; what took the place of an entry takes its place on the page. */
  private adopt(next: Booklet): void {
    const before = this.booklet?.entries ?? [];
    const gone = before.filter((entry) => !next.entries.some((each) => isNamed(each, entry)));
    for (const entry of next.entries) {
      if (this.places.has(nameText(entry))) continue;
      const left = gone.findIndex((each) => each.to === entry.to && each.value.kind === entry.value.kind);
      const [replaced] = left === -1 ? [] : gone.splice(left, 1);
      if (replaced) this.places.set(nameText(entry), this.placeOf(replaced));
    }
    this.booklet = next;
  }

  private placeOf(name: Name): number {
    const known = this.places.get(nameText(name));
    if (known !== undefined) return known;
    this.lastPlace += 1;
    this.places.set(nameText(name), this.lastPlace);
    return this.lastPlace;
  }

  private tell(): void {
    for (const listener of this.listeners) listener();
  }
}

/** What grows letter by letter waits for a pause; all else is kept as soon as it is done. */
function isTyped(value: Value, old: Value | undefined): boolean {
  if ('text' in value) return true;
  return 'about' in value && value.about !== (old && 'about' in old ? old.about : '');
}

const nameText = ({ writer, count }: Name): string => `${writer} ${String(count)}`;

/** Random letters and digits; they say nothing about anybody. */
export function randomLetters(length: number): string {
  return [...crypto.getRandomValues(new Uint8Array(length))].map((byte) => (byte % 36).toString(36)).join('');
}
