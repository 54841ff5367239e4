import type { Raw } from '../../core/pack/front-matter.ts';
import type { Step } from '../../core/pack/pack.ts';
import type { Edit } from '../../core/pack/write-pack.ts';
import type { MakerData } from '../../outputs/maker-data.ts';
import type { Fields } from '../../outputs/maker-fields.ts';
import type { Look, TextToLook } from '../../outputs/maker-look.ts';
import { slugOf } from './folder-name.ts';
import { Keeper, newId, type Keeping } from './keeper.ts';
import { Looking } from './looking.ts';
import type { Opening } from './opening.ts';
import type { KeptPicture } from './storage.ts';
import { sameParts } from './same-parts.ts';
import { Versions } from './versions.ts';
import { idOf, textAt } from './words.ts';
import { workerAt } from './worker-door.ts';

/**
 * The pack under way. Its text is all the state there is: a change goes through `editPack`, and what the form shows is read
 * from the text again. Changes are made one after another; who wants to know is told after each.
 */
export class Desk {
  readonly #worker;
  readonly #listeners = new Set<() => void>();
  #queue: Promise<unknown> = Promise.resolve();
  readonly #looking: Looking;
  readonly #versions: Versions;
  readonly #keeper: Keeper;

  text: string;
  /** Name of its record on the device; another one when two windows have parted. */
  id: string;
  /** Name of this desk as long as it is open. */
  readonly key = newId();
  readonly fileName: string;
  fields: Fields | undefined;
  look: Look | undefined;
  keeping: Keeping;
  /** False until the text has been read for the first time. */
  ready = false;
  /** True where this browser could not start the part that reads. */
  unreadable = false;
  /** True while the same pack is open in another window. */
  elsewhere = false;
  /** True once another window had changed the same record, and this pack became a second one. */
  parted = false;
  /** The text that was last taken away as a file. */
  taken: string | undefined;
  pictures: readonly KeptPicture[];
  passage: string;
  keepPassage: boolean;
  /** True where it was opened with another language beside it. */
  readonly beginsPaired: boolean;
  /** The pack in another language, shown field by field beside this one. */
  beside: { readonly text: string; readonly fields: Fields } | undefined;
  /** Path of a field whose last change the file could not take. */
  refused: string | undefined;
  /** Id of the element that gets the focus after the next rendering. */
  focusNext: string | undefined;
  /** Puts what stands in a field and has not been written yet into the file; each field that is typed in has one here until then. */
  readonly drafts = new Set<() => Promise<void>>();
  /** Said once, for those who do not see the page. */
  said = '';

  constructor(
    readonly data: MakerData,
    opening: Opening,
  ) {
    this.#worker = workerAt(data.worker ?? '');
    this.id = opening.id;
    this.text = opening.text;
    this.fileName = opening.fileName ?? 'pack.md';
    this.#versions = new Versions(opening.earlier);
    this.#looking = new Looking(this.#worker, data, {
      toLook: () => this.toLook(),
      isBusy: () => this.drafts.size > 0,
      found: (look) => {
        this.look = sameParts(this.look, look);
        this.tell();
      },
    });
    this.pictures = opening.pictures ?? [];
    this.passage = opening.passage ?? '';
    this.keepPassage = opening.passage !== undefined;
    this.keeping = opening.revision === undefined ? 'opened' : 'kept';
    this.#keeper = new Keeper(this.id, opening.revision ?? 0, {
      keeping: (now) => this.#kept(now),
      parted: (id) => {
        this.id = id;
        this.parted = true;
        history.replaceState(null, '', `#${id}`);
      },
    });
    this.#queue = this.#worker.fields(this.text).then((fields) => this.#settle(fields));
    this.beginsPaired = opening.beside !== undefined;
    this.#queue.catch(() => (this.unreadable = true));
    if (opening.beside !== undefined) void this.setBeside(opening.beside, opening.revision === undefined);
    const begun = (): void => {
      this.ready = true;
      this.tell();
    };
    this.#queue.then(begun, begun);
  }

  /** The texts of before, to which one can go back. */
  get earlier(): readonly string[] {
    return this.#versions.texts;
  }

  get title(): string {
    return textAt(this.fields?.raw, ['title']) || textAt(this.fields?.raw, ['book', 'title']);
  }

  get slug(): string {
    return slugOf(this.title);
  }

  /** The pictures that the text names. */
  get ownPictures(): readonly KeptPicture[] {
    return this.pictures.filter(({ name }) => this.text.includes(name));
  }

  listen(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Tells everybody that something is different. */
  tell(): void {
    for (const listener of this.#listeners) listener();
  }

  /**
   * Makes changes as one step. `field` is the path they are about; typing on in the same field adds no step. What depends on
   * what is there is a function: it is asked when its turn comes, so that of two quick deeds the second knows of the first.
   */
  change(wanted: readonly Edit[] | ((raw: Raw | undefined) => readonly Edit[]), field: string, then?: { readonly focus?: string; readonly say?: string }): Promise<void> {
    return this.#inTurn(async () => {
      const made = await this.#worker.edit(this.text, typeof wanted === 'function' ? wanted(this.fields?.raw) : wanted, this.data.order);
      this.refused = made ? undefined : field;
      if (then?.focus !== undefined) this.focusNext = then.focus;
      if (then?.say !== undefined) this.said = then.say;
      if (made && made.text !== this.text) {
        this.#versions.leave(this.text, field);
        this.text = made.text;
        this.#keep();
        this.#settle(made.fields);
      } else this.tell();
    });
  }

  /** Puts another text in place of the whole. */
  replace(text: string): Promise<void> {
    return this.#inTurn(async () => {
      if (text === this.text) return;
      this.#versions.leave(this.text, '');
      await this.#put(text);
    });
  }

  /** The text as it would be after some changes, without making them here. */
  async edited(edits: readonly Edit[]): Promise<string | undefined> {
    await this.#queue;
    return (await this.#worker.edit(this.text, edits, this.data.order))?.text;
  }

  goBack(): Promise<void> {
    return this.#inTurn(async () => {
      const before = this.#versions.back();
      if (before === undefined) return;
      this.said = this.data.say.desk.backTo;
      await this.#put(before);
    });
  }

  setPassage(passage: string, keep = this.keepPassage): void {
    const keepsOrDid = keep || this.keepPassage;
    this.passage = passage;
    this.keepPassage = keep;
    if (keepsOrDid) this.#keep();
    this.#looking.soon();
    this.tell();
  }

  /** Puts another language beside this one, or takes it away. */
  setBeside(text: string | undefined, keep = true): Promise<void> {
    return this.#inTurn(async () => {
      this.beside = text === undefined ? undefined : { text, fields: await this.#worker.fields(text) };
      if (keep) this.#keep();
      this.tell();
    });
  }

  addPicture(picture: KeptPicture): void {
    this.pictures = [...this.pictures.filter((each) => each.name !== picture.name), picture];
    this.#keeper.add(picture);
    this.#looking.soon();
    this.tell();
  }

  focus(steps: readonly Step[]): void {
    this.focusNext = idOf(steps);
    this.tell();
  }

  toLook(): TextToLook {
    return {
      text: this.text,
      slug: this.slug,
      ...(this.passage.trim() !== '' && { passage: this.passage }),
      // A picture that the pack no longer names is not part of it.
      pictureFiles: this.ownPictures.map(({ name, width, height, blob }) => ({ name, width, height, format: blob.type === 'image/png' ? 'png' : blob.type === 'image/webp' ? 'webp' : 'jpeg' })),
    };
  }

  /** A page of the pack, made when it is asked for. */
  page: ReturnType<typeof workerAt>['page'] = (input) => this.#worker.page(input);

  /** Waits until everything that was typed or asked for before is in the text. */
  async settled(): Promise<void> {
    for (const write of this.drafts) void write();
    await this.#queue;
  }

  #inTurn(task: () => Promise<void>): Promise<void> {
    const turn = this.#queue.then(task, task).catch(() => this.tell());
    this.#queue = turn;
    return turn;
  }

  /** Has a whole text in place of the one before. */
  async #put(text: string): Promise<void> {
    this.text = text;
    const fields = await this.#worker.fields(text);
    this.#keep();
    this.#settle(fields);
  }

  #settle(fields: Fields): void {
    this.fields = sameParts(this.fields, fields);
    this.#looking.soon();
    this.tell();
  }

  /** Keeps the text on the device; what cannot be kept is said and never lost from the page. */
  #keep(): void {
    const { title, text, earlier, fileName, passage } = this;
    this.#keeper.keep({ title, text, earlier, fileName, ...(this.beside && { beside: this.beside.text }), ...(this.keepPassage && passage !== '' && { passage }) }, this.pictures);
  }

  /** True when the device did not take what stands here, and nobody has taken it away as a file. */
  get isOnlyHere(): boolean {
    return (this.keeping === 'full' || this.keeping === 'refused') && this.taken !== this.text;
  }

  /** True when something would be lost with this page: a change that is not kept and was not taken away either. */
  get isAtRisk(): boolean {
    return this.drafts.size > 0 || this.keeping === 'keeping' || this.isOnlyHere;
  }

  #kept(keeping: Keeping): void {
    this.keeping = keeping;
    this.tell();
  }
}
