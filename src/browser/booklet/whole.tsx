import type { JSX } from 'preact';
import { bestOf } from '../../core/booklet/booklet.ts';
import { BestOf } from './best-of.tsx';
import type { WholeDesk } from './desk.ts';
import { Rating } from './rating.tsx';

/** What is asked at no stop: stars for the whole book, and which of a few books. */
export function Whole({ desk, to }: { readonly desk: WholeDesk; readonly to: string }): JSX.Element | null {
  const { data } = desk;
  if (to === bestOf) return data.bestOf ? <BestOf desk={desk} asked={data.bestOf} /> : null;
  return data.rating ? <Rating desk={desk} rating={data.rating} /> : null;
}
