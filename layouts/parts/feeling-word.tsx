import type { JSX } from 'preact';
import { feelingInPack } from '../../src/core/measure/feeling-words.ts';
import type { PackFields } from '../../src/core/pack/pack.ts';
import { Face } from './face.tsx';

/** A word, and its face when it names a feeling. */
export function FeelingWord({ word, pack }: { readonly word: string; readonly pack: PackFields }): JSX.Element {
  const feeling = feelingInPack(word, pack);
  if (!feeling) return <>{word}</>;
  return (
    <span class="with-face">
      <Face feeling={feeling} /> {word}
    </span>
  );
}
