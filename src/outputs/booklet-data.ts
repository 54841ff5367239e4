import type { Prompt } from '../core/booklet/booklet-schema.ts';
import { bestOf as aFew, wholeBook } from '../core/booklet/booklet.ts';
import { feelingInPack } from '../core/measure/feeling-words.ts';
import { feelings } from '../core/measure/feelings-lexicon.ts';
import type { PackFields, Stop, Way } from '../core/pack/pack.ts';
import { faceGeometry, penWidths, type FaceOf } from './face.ts';

/** What the booklet's script is told about a pack: plain data in the page itself, so that nothing has to be asked for. */
export interface BookletData {
  readonly slug: string;
  readonly language: string;
  readonly title: string;
  readonly stops: readonly StopData[];
  readonly feelings: readonly FeelingData[];
  /** What is asked at no stop: about the whole book, and among a few. */
  readonly atNoStop: readonly Prompt[];
  readonly rating: { readonly words: readonly string[]; readonly reasons: readonly string[] } | undefined;
  readonly bestOf: PackFields['bestOf'];
}

export interface StopData {
  readonly id: string;
  readonly number: number;
  readonly opening: number;
  readonly ask: string;
  readonly about: 'character' | 'me' | undefined;
  /** The way that the stop asks for, then the equal one. */
  readonly ways: readonly Way[];
  readonly feeling: boolean;
  readonly seated: string | undefined;
  readonly frames: readonly string[];
  readonly words: readonly string[];
  readonly models: readonly string[];
  readonly expand: string | undefined;
}

export interface FeelingData {
  readonly word: string;
  readonly family: string;
  /** The family's name in the page's language. */
  readonly kin: string;
  readonly strength: 1 | 2 | 3;
  readonly situation: string;
  readonly face: readonly FaceStroke[];
}

/** One stroke of a face in a box of 100. Width 0 is a filled shape; a skin hides what lies behind it. */
export interface FaceStroke {
  readonly d: string;
  readonly width: number;
  readonly skin: boolean;
}

/** Words for a number of stars: the ends are always the same, whatever lies between. */
export function starWords(words: readonly string[], most: number): readonly string[] {
  return Array.from({ length: most }, (_, index) => words[Math.round((index * (words.length - 1)) / (most - 1))] ?? '');
}

/** The way that a stop asks for, and the equal one. */
export function waysOf(stop: Stop): readonly Way[] {
  return stop.or === undefined || stop.or === stop.answer ? [stop.answer] : [stop.answer, stop.or];
}

interface Words {
  readonly families: Readonly<Record<string, string>>;
  readonly booklet: { readonly starWords: readonly string[] };
}

export function bookletData(pack: PackFields & { readonly slug: string }, words: Words): BookletData {
  const { rating, bestOf } = pack;
  return {
    slug: pack.slug,
    language: pack.language,
    title: pack.title,
    stops: pack.stops.map((stop, index) => ({
      id: stop.id,
      number: index + 1,
      opening: stop.at.opening,
      ask: stop.ask,
      about: stop.about,
      ways: waysOf(stop),
      feeling: stop.kind === 'feeling',
      seated: stop.seated,
      frames: stop.frames ?? [],
      words: stop.words ?? [],
      models: (stop.models ?? []).map(({ text }) => text),
      expand: stop.expand,
    })),
    feelings: feelingsOf(pack, words),
    atNoStop: [
      ...(rating ? [{ of: wholeBook, number: pack.stops.length + 1, ask: rating.ask } as const] : []),
      ...(bestOf ? [{ of: aFew, number: pack.stops.length + 2, ask: bestOf.ask } as const] : []),
    ],
    rating: rating && { words: starWords(words.booklet.starWords, rating.outOf), reasons: rating.reasons ?? [] },
    bestOf,
  };
}

/** Feelings to offer when a pack names none: a broad word of each early family, and calm. */
const broad: readonly string[] = ['glad', 'happy', 'sad', 'cross', 'afraid', 'surprised', 'calm'];

/** The pack's own feeling words; then words of its stops that our list knows; and if there are none though feelings are asked about, broad ones. */
function feelingsOf(pack: PackFields, words: Words): readonly FeelingData[] {
  const own = (pack.feelings ?? []).map(({ word, family, strength, situation }) => feelingData(word, { family, strength }, situation, pack, words));
  const named = new Set(own.map(({ word }) => word));
  const more = [...new Set(pack.stops.flatMap((stop) => stop.words ?? []))]
    .filter((word) => !named.has(word))
    .flatMap((word) => {
      const known = feelingInPack(word, pack);
      return known ? [feelingData(word, known, '', pack, words)] : [];
    });
  if (own.length + more.length > 0 || !pack.stops.some(({ kind }) => kind === 'feeling')) return [...own, ...more];
  const language = pack.language.startsWith('es') ? 'es' : 'en';
  return feelings.filter(({ name }) => broad.includes(name)).map((feeling) => feelingData(feeling.words[language][0] ?? feeling.name, feeling, '', pack, words));
}

function feelingData(word: string, { family, strength }: Pick<FaceOf, 'family' | 'strength'>, situation: string, pack: PackFields, words: Words): FeelingData {
  const face = faceGeometry(feelingInPack(word, pack) ?? { family, strength }).map(({ pen, d }) => ({ d, width: pen === 'ink' ? 0 : penWidths[pen], skin: pen === 'shape' }));
  return { word, family, kin: words.families[family] ?? family, strength: strength === 1 || strength === 2 ? strength : 3, situation, face };
}
