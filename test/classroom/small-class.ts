/** A small book and a class of six, made up for the tests of the classroom. */
import { bookmarkColours, bookmarkPatterns, newBooklet, put, wholeBook, type Booklet, type Value } from '../../src/core/booklet/booklet.ts';
import type { StackPack } from '../../src/core/pack/stack-pack.ts';
import { emptyStack, putBooklet, putPack, type Stack } from '../../src/classroom/stack.ts';

export const hen: StackPack = {
  slug: 'hen',
  title: 'The Hen and the White Yard',
  language: 'en',
  stops: [
    {
      id: 'step',
      at: { opening: 4, cue: 'one foot out', picture: 'shown' },
      ask: 'How does the hen feel on the step? How do you know?',
      kind: 'feeling',
      depth: 2,
      about: 'character',
      answer: 'write',
      or: 'say',
      frames: ['She feels ___.', 'She feels ___ because ___.'],
      words: ['worried', 'scared'],
      models: [{ text: 'She feels worried because the yard is gone.', shows: ['gives a reason'] }],
    },
    { id: 'snow', at: { opening: 7, cue: 'it melted on her beak', picture: 'shown' }, ask: 'What is the white stuff?', kind: 'reason', depth: 3, answer: 'say' },
    { id: 'you', at: { opening: 9, cue: 'all by herself', picture: 'shown' }, ask: 'When were you scared of something new? Or pass.', kind: 'own life', depth: 2, about: 'me', answer: 'draw' },
  ],
  feelings: [
    { word: 'worried', family: 'afraid', strength: 1, situation: 'The dog is not home yet.' },
    { word: 'scared', family: 'afraid', strength: 2, situation: 'A door bangs in the dark.' },
  ],
  rubric: [
    { trait: 'whole sentence', meets: 'Says a whole thought.', notYet: 'One word.' },
    { trait: 'gives a reason', meets: 'Says why.', notYet: 'Says what.', example: 'She feels worried because the yard is gone.' },
  ],
  rating: { ask: 'Would you read it again?', outOf: 5, reasons: undefined },
};

/** The nth child's booklet, with these answers. */
export function booklet(child: number, answers: readonly (readonly [to: string, value: Value])[]): Booklet {
  const bookmark = { pattern: bookmarkPatterns[child % 5] ?? 'waves', colour: bookmarkColours[Math.floor(child / 5) % 5] ?? 'red' };
  const prompts = hen.stops.map(({ id, at, ask, about }, index) => ({ of: id, number: index + 1, opening: at.opening, ask, ...(about === undefined ? {} : { about }) }));
  const empty = newBooklet(`child${String(child).padStart(4, '0')}`, { slug: hen.slug, language: hen.language, title: hen.title }, bookmark, prompts);
  return answers.reduce((sofar, [to, value]) => put(sofar, `writer${String(child).padStart(4, '0')}`, to, value), empty);
}

export function stackOf(booklets: readonly Booklet[]): Stack {
  return booklets.reduce<Stack>((stack, each) => putBooklet(stack, each, `${each.id}.booklet.html`).stack, putPack(emptyStack, hen));
}

const written = (text: string): Value => ({ kind: 'written', text, frames: [] });
const stars = (n: number): Value => ({ kind: 'stars', stars: n, of: 5, words: n === 5 ? 'again and again' : 'all right' });

export const aClass = (): Stack =>
  stackOf([
    booklet(0, [
      ['step', written('She feels scared, so scared.')],
      [wholeBook, stars(5)],
    ]),
    booklet(1, [
      ['step', written('She feels scared because it is new.')],
      ['step', { kind: 'feeling', word: 'scared', family: 'afraid', strength: 2 }],
      ['snow', { kind: 'said', text: 'It is snow.' }],
      [wholeBook, stars(5)],
      [wholeBook, { kind: 'because', text: 'of the snow' }],
    ]),
    booklet(2, [
      ['step', written('Not scared at all!')],
      ['snow', { kind: 'passed' }],
      [wholeBook, stars(3)],
    ]),
    booklet(3, [['step', { kind: 'feeling', word: 'worried', family: 'afraid', strength: 1 }]]),
    booklet(4, [
      ['step', { kind: 'cannot-tell' }],
      [wholeBook, stars(5)],
    ]),
    booklet(5, [['you', written('I was scared of the dog.')]]),
  ]);
