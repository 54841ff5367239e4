import type { Phrases } from '../../core/languages/en.ts';
import type { PackFields } from '../../core/pack/pack.ts';
import { faceSvg } from '../face.ts';

/** A face as SVG text, with its description. */
export interface SheetFace {
  readonly svg: string;
  readonly alt: string;
}

/** The face of a word, where the pack lists it as a feeling. */
export function faceOf(word: string, pack: Pick<PackFields, 'feelings' | 'language'>, say: Phrases): SheetFace | undefined {
  const same = (other: string) => other.toLocaleLowerCase(pack.language) === word.toLocaleLowerCase(pack.language);
  const feeling = pack.feelings?.find((each) => same(each.word));
  return feeling && { svg: faceSvg(feeling, '20mm'), alt: say.paper.cards.face(word) };
}
