import type { FrontMatter } from './schema.ts';
import type { Place } from '../finding.ts';
import type { Given, Owner } from './library-sources.ts';

/** `listen for` becomes `listenFor`. */
type Camel<S> = S extends `${infer A} ${infer B}` ? `${A}${Capitalize<Camel<B>>}` : S;
/** The front matter with camel-case names, read-only all the way down. */
export type Fields<T> = T extends readonly (infer Item)[] ? readonly Fields<Item>[] : T extends object ? { readonly [K in keyof T as Camel<K>]: Fields<T[K]> } : T;

export type PackFields = Fields<FrontMatter>;
export type Stop = PackFields['stops'][number];
export type Way = Stop['answer'];
export type Kind = Stop['kind'];
export type Picture = NonNullable<PackFields['pictures']>[number];
export type TaughtWord = NonNullable<PackFields['words']>[number];
export type FeelingWord = NonNullable<PackFields['feelings']>[number];
export type Question = NonNullable<PackFields['questions']>[number];
export type Model = NonNullable<Stop['models']>[number];

/** A step on the way to a value in the front matter: a field's own name as the author writes it, or an index from 0. */
export type Step = string | number;

/** Line and column (from 1) of each value and of each field's name, keyed by its steps joined with a dot: `stops.2.ask`. */
export type Places = Readonly<Record<string, readonly [line: number, column: number]>>;

/** What the pictures folder of a pack holds, told by the reader from the disk. Sizes in pixels, after turning the picture upright. */
export interface PictureFile {
  readonly name: string;
  /** `bad` when it cannot be decoded or is no picture that we take. */
  readonly format: 'png' | 'jpeg' | 'webp' | 'bad' | 'other';
  readonly width: number;
  readonly height: number;
  /** What the file's hidden data tells: where it was taken, or with which camera. */
  readonly metadata?: 'place' | 'camera';
}

/** What the recording folder of a pack holds, told by the reader from the disk. Only captions are read; of a film, its first bytes. */
export interface RecordingFile {
  readonly name: string;
  readonly format: 'webm' | 'mp4' | 'captions' | 'other';
  readonly bytes: number;
  /** The text of captions. */
  readonly text?: string;
}

/** The text of one pack file and what lies beside it, before anything is understood. */
export interface Source {
  /** Folder name, already known to be a safe address. */
  readonly slug: string;
  /** Path relative to the content folder, with forward slashes; it stands in every finding. */
  readonly file: string;
  readonly text: string;
  /** Language in the file's name (`pack.es.md`), or undefined for `pack.md`. */
  readonly languageOfFile: string | undefined;
  readonly pictureFiles: readonly PictureFile[];
  /** Absent when there is no recording folder. */
  readonly recordingFiles?: readonly RecordingFile[];
  /** Private text of the book in this pack's language. It is read only for numbers (`measure/measure-passage.ts`), and a pack never holds it. */
  readonly passage: string | undefined;
  /** The same book's private texts in other languages: nothing of them may be published either. */
  readonly otherPassages?: readonly string[];
  /** Names that no published text may hold, from `private/roster.txt`; `unread` where there is a roster that cannot be read. */
  readonly roster?: readonly string[] | 'unread';
  /** Whose folder it comes from; absent for the library's own. */
  readonly owner?: Owner;
  /** What its owner's packs have where they say nothing. */
  readonly given?: Given;
}

/** A run of prose in the body, told apart by what it is. Lines are the file's own, from 1. */
export interface Block {
  readonly kind: 'paragraph' | 'heading' | 'list item' | 'quote' | 'table';
  readonly text: string;
  readonly line: number;
}

/** A picture that the body shows. */
export interface BodyPicture {
  /** The name as the pack's list has it. */
  readonly file: string;
  /** What stands in the square brackets; empty where the picture's own alt text is meant. */
  readonly alt: string;
  readonly line: number;
  /** True when it is all that a link holds. */
  readonly isWholeLink: boolean;
}

/** The Markdown below the front matter. `firstLine` is the line of the file on which it begins. */
export interface Body {
  readonly markdown: string;
  readonly firstLine: number;
  readonly blocks: readonly Block[];
  readonly pictures: readonly BodyPicture[];
  /** What is published beside the prose: code, alt texts of pictures, addresses and titles of links. Lines as in `blocks`. */
  readonly asides: readonly { readonly text: string; readonly line: number }[];
}

/** One language's companion to one book, read and typed. Each later stage adds to it and changes nothing. */
export interface Pack extends PackFields {
  readonly slug: string;
  readonly file: string;
  readonly body: Body;
  readonly places: Places;
  /** True when fields had to be left out to read the rest; such a pack is never published. */
  readonly partial: boolean;
  readonly pictureFiles: readonly PictureFile[];
  readonly recordingFiles: readonly RecordingFile[];
  /** Whose folder it comes from; absent for the library's own. */
  readonly owner?: Owner;
}

/** The place of a value in a pack's file: of the value itself, or of the nearest thing that holds it. */
export function placeOf(pack: Pick<Pack, 'file' | 'places'>, ...steps: readonly Step[]): Place {
  for (let length = steps.length; length >= 0; length--) {
    const at = pack.places[steps.slice(0, length).join('.')];
    if (at) return { file: pack.file, line: at[0], column: at[1] };
  }
  return { file: pack.file, line: 1, column: 1 };
}

/** The readings a stop belongs to: those it names, or every reading of the pack. */
export function readingsOf(pack: Pick<PackFields, 'readings'>, stop: Pick<Stop, 'readings'>): readonly number[] {
  return stop.readings ?? pack.readings.map((each) => each.reading);
}

/** The stops of one reading, in the order of the book as the pack lists them. */
export function stopsOf<S extends Pick<Stop, 'readings'> = Stop>(pack: Pick<PackFields, 'readings'> & { readonly stops: readonly S[] }, reading: number): readonly S[] {
  return pack.stops.filter((stop) => readingsOf(pack, stop).includes(reading));
}
