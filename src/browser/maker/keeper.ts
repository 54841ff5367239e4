import { keepPack, keepPicture, NotKept, type KeptPack, type KeptPicture } from './storage.ts';

export type Keeping = 'opened' | 'keeping' | 'kept' | 'refused' | 'full';

/** What a pack's record holds beside its name and its count. */
export type ToKeep = Omit<KeptPack, 'id' | 'changed' | 'revision'>;

interface Told {
  /** How it stands with the keeping. */
  keeping(now: Keeping): void;
  /** Another window had changed the same record: this one has an id of its own from now on, and both stay. */
  parted(id: string): void;
}

/**
 * Keeps one open pack on the device, the text first and then its pictures, one write after another and always the latest.
 * What cannot be kept stays in hand and is tried again with the next change.
 */
export class Keeper {
  readonly #told: Told;
  #id: string;
  /** Count of the record as this window knows it; 0 for one that it has not written. */
  #revision: number;
  /** Pictures that are not on the device yet. */
  readonly #pictures = new Map<string, KeptPicture>();
  #all: readonly KeptPicture[] = [];
  #next: ToKeep | undefined;
  #writing = false;

  constructor(id: string, revision: number, told: Told) {
    this.#id = id;
    this.#revision = revision;
    this.#told = told;
  }

  /** A picture that goes onto the device with the next text. */
  add(picture: KeptPicture): void {
    this.#pictures.set(picture.name, picture);
  }

  keep(pack: ToKeep, pictures: readonly KeptPicture[]): void {
    this.#next = pack;
    this.#all = pictures;
    this.#told.keeping('keeping');
    if (!this.#writing) void this.#write();
  }

  async #write(): Promise<void> {
    this.#writing = true;
    let keeping: Keeping = 'kept';
    while (this.#next) {
      const pack = this.#next;
      this.#next = undefined;
      keeping = await this.#writeOne(pack).then(
        () => 'kept' as const,
        (fault: unknown) => (fault instanceof NotKept ? fault.why : 'refused'),
      );
    }
    this.#writing = false;
    this.#told.keeping(keeping);
  }

  async #writeOne(pack: ToKeep): Promise<void> {
    const record = { ...pack, id: this.#id, changed: Date.now() };
    const kept = await keepPack(record, this.#revision);
    if (kept === 'changed elsewhere') {
      this.#id = newId();
      this.#told.parted(this.#id);
      this.#revision = (await keepPack({ ...record, id: this.#id }, 0)) === 'changed elsewhere' ? 0 : 1;
    } else this.#revision = kept.revision;
    // A record that is new has none of the pictures yet.
    if (kept === 'changed elsewhere' || kept.isNew) for (const each of this.#all) this.#pictures.set(each.name, each);
    for (const [name, picture] of this.#pictures) {
      await keepPicture(this.#id, picture);
      if (this.#pictures.get(name) === picture) this.#pictures.delete(name);
    }
  }
}

/** A name for a record that nobody else has. A page that came over plain HTTP has no `randomUUID`. */
export function newId(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
