import type { Booklet, Bookmark } from '../../core/booklet/booklet.ts';

/**
 * Where booklets are kept on the device: in the browser's database, and where a browser refuses it, in its plain storage.
 * Looking never makes anything: a device on which nobody answered holds nothing.
 */
export interface BookletStorage {
  /** Booklets of one pack in one language on this device. */
  readers(pack: PackKey): Promise<readonly Reader[]>;
  read(key: BookletKey): Promise<KeptBooklet | undefined>;
  /** Keeps a booklet together with what another window kept meanwhile, and gives back what is there now. Throws `NotKept`. */
  save(kept: KeptBooklet): Promise<Booklet>;
  erase(key: BookletKey): Promise<void>;
  /** Every booklet of every pack. */
  eraseAll(): Promise<void>;
}

export interface PackKey {
  readonly slug: string;
  readonly language: string;
}
export interface BookletKey extends PackKey {
  readonly bookmark: Bookmark;
}
export interface Reader {
  readonly bookmark: Bookmark;
  readonly answers: number;
}

/** What a family decided for one booklet on one device; no part of the file. */
export interface Settings {
  /** Answer at each stop, or read or watch to the end first. */
  readonly flow: 'each' | 'end';
  readonly microphone: boolean;
}
export interface KeptBooklet {
  readonly booklet: Booklet;
  readonly settings: Settings;
}

/** Why nothing could be kept: the device is full, or the browser refuses. */
export class NotKept extends Error {
  constructor(readonly why: 'full' | 'blocked') {
    super(why);
  }
}

export function notKept(fault: unknown): NotKept {
  if (fault instanceof NotKept) return fault;
  const name = fault instanceof DOMException ? fault.name : '';
  return new NotKept(name === 'QuotaExceededError' ? 'full' : 'blocked');
}

export const keyOf = ({ pack, bookmark }: Booklet): BookletKey => ({ slug: pack.slug, language: pack.language, bookmark });
/** A key as text. Slugs, language tags and names of bookmarks hold no space. */
export const packText = ({ slug, language }: PackKey): string => `${slug} ${language}`;
export const keyText = (key: BookletKey): string => `${packText(key)} ${key.bookmark.pattern} ${key.bookmark.colour}`;
