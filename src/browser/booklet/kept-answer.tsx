import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { Star } from '../../../layouts/parts/ornaments.tsx';
import { paper } from '../../core/booklet/booklet-schema.ts';
import type { Entry } from '../../core/booklet/booklet.ts';
import { drawingSvg, paperColour } from '../../core/booklet/drawing.ts';
import type { Phrases } from '../../core/languages/en.ts';
import type { WholeDesk } from './desk.ts';
import { ownMarkup } from '../trusted.ts';
import { Sound } from './sound.tsx';

/** One thing that a child kept, to be looked at. */
export function KeptAnswer({ desk, entry: { value } }: { readonly desk: WholeDesk; readonly entry: Entry }): JSX.Element {
  const say = desk.words.file;
  return (
    <div class={`kept kept-${value.kind}`}>
      <p class="label">{say.kinds[value.kind]}</p>
      <KeptValue say={say} value={value} />
    </div>
  );
}

/** What is in it, without its kind: also for those who look through a stack of booklets. */
export function KeptValue({ say, value }: { readonly say: Phrases['booklet']['file']; readonly value: Entry['value'] }): JSX.Element {
  switch (value.kind) {
    case 'written':
    case 'said':
    case 'acted':
    case 'because':
      return (
        <p class="kept-text" dir="auto">
          {value.text}
        </p>
      );
    case 'feeling':
      return <p class="kept-text">{value.word}</p>;
    case 'cannot-tell':
      return <p class="kept-text">{say.cannotTell}</p>;
    case 'passed':
      return <p class="kept-text">{say.passed}</p>;
    case 'stars':
      return (
        <p class="kept-text kept-stars">
          <span class="stars" aria-hidden="true">
            {Array.from({ length: value.stars }, () => (
              <Star />
            ))}
          </span>
          <span>{say.stars(value.stars, value.of, value.words)}</span>
        </p>
      );
    case 'chosen':
      return (
        <p class="kept-text" dir="auto">
          {say.chosen(value.best, value.last)}
        </p>
      );
    case 'voice':
      return <Sound type={value.type} data={value.data} name={say.seconds(value.seconds)} />;
    case 'photo':
      return (
        <>
          <img src={`data:${value.type};base64,${value.data}`} width={value.width} height={value.height} alt={value.about || say.untitledPhoto} />
          <About about={value.about} />
        </>
      );
    case 'drawing':
      return (
        <>
          <Drawn marks={value.marks} name={value.about || say.untitledDrawing} />
          <About about={value.about} />
        </>
      );
  }
}

function Drawn({ marks, name }: { readonly marks: Parameters<typeof drawingSvg>[0]; readonly name: string }): JSX.Element {
  // Made of the numbers and names that the format allows, and of nothing else.
  const markup = useMemo(() => ownMarkup(`<rect width="${String(paper.width)}" height="${String(paper.height)}" fill="${paperColour}"/>${drawingSvg(marks)}`), [marks]);
  return (
    <svg
      class="kept-paper"
      viewBox={`0 0 ${String(paper.width)} ${String(paper.height)}`}
      role="img"
      aria-label={name}
      stroke-linecap="round"
      stroke-linejoin="round"
      dangerouslySetInnerHTML={{ __html: markup }}
    />
  );
}

function About({ about }: { readonly about: string }): JSX.Element | null {
  return about === '' ? null : (
    <p class="kept-text" dir="auto">
      {about}
    </p>
  );
}
