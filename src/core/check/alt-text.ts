import type { Finding } from '../finding.ts';
import { placeOf, type Pack, type Picture } from '../pack/pack.ts';
import type { AltContext, AltProblem } from './alt-text/alt-context.ts';
import { checkAlt } from './alt-text/check-alt.ts';

/**
 * Each alt text of a pack, in the list `pictures` and in the text below, held against the rules of `alt-text/`. One alt text is told about once:
 * the first rule that finds something.
 */
export function* altText(pack: Pack): Iterable<Finding> {
  const known = knownIn(pack);
  for (const [index, picture] of (pack.pictures ?? []).entries()) {
    const shownAsItIs = pack.body.pictures.filter((shown) => shown.file === picture.file && shown.alt.trim() === '');
    const problem = checkAlt({
      ...aboutPicture(pack, picture, known),
      beside: [...besideStop(pack, picture), ...shownAsItIs.flatMap((shown) => besideLine(pack, shown.line))],
      // Of two that are the same, the second is told.
      others: (pack.pictures ?? []).slice(0, index),
    });
    const written = picture.alt?.trim() ?? '';
    if (problem) yield withPlace(problem, written === '' ? placeOf(pack, 'pictures', index) : placeOf(pack, 'pictures', index, 'alt'));
  }
  yield* inBody(pack, known);
}

/** Alt texts that the Markdown gives to a picture of the list, and pictures that are all that a link holds. */
function* inBody(pack: Pack, known: readonly string[]): Iterable<Finding> {
  for (const shown of pack.body.pictures) {
    const picture = pack.pictures?.find((each) => each.file === shown.file);
    const isOwn = shown.alt.trim() !== '';
    // What the list says of a picture is told there, once; a link needs another look at the same words.
    if (!picture || (!isOwn && !shown.isWholeLink)) continue;
    const { use, ...about } = aboutPicture(pack, picture, known);
    const problem = checkAlt({
      ...about,
      alt: isOwn ? shown.alt : picture.alt,
      use: shown.isWholeLink ? 'link' : (use ?? 'illustration'),
      beside: besideLine(pack, shown.line),
      others: (pack.pictures ?? []).filter((each) => each.decorative !== true),
    });
    const isOfLink = problem?.code === 'alt-text/link-without-words' || problem?.code === 'alt-text/not-purpose';
    if (problem && (isOwn || isOfLink)) yield withPlace(problem, { file: pack.file, line: shown.line, column: 1 });
  }
}

function aboutPicture(pack: Pack, picture: Picture, known: readonly string[]): AltContext {
  const stop = pack.stops.find((each) => each.id === picture.stop);
  return {
    file: picture.file,
    alt: picture.alt,
    language: pack.language,
    decorative: picture.decorative,
    use: (pack.words ?? []).some((word) => word.picture === picture.file) ? 'word picture' : 'illustration',
    credit: picture.credit,
    textInPicture: picture.textInPicture,
    stop: stop && { ...stop, pictureHidden: stop.at.picture === 'hidden' },
    known,
    makers: [pack.book.author, pack.book.illustrator ?? ''],
  };
}

/** What a picture is shown with wherever it stands: the titles, and the question of its stop. */
function besideStop(pack: Pack, picture: Picture): readonly string[] {
  const stop = pack.stops.find((each) => each.id === picture.stop);
  return [pack.title, pack.book.title, ...(stop ? [stop.ask] : [])];
}

/** The block of text before a line of the body and the one behind it. */
function besideLine(pack: Pack, line: number): readonly string[] {
  const before = pack.body.blocks.findLast((block) => block.line <= line);
  const behind = pack.body.blocks.find((block) => block.line > line);
  return [before, behind].flatMap((block) => (block ? [block.text] : []));
}

/** Names and words that belong to the book. */
function knownIn(pack: Pack): readonly string[] {
  return [...(pack.allowWords ?? []), ...(pack.words ?? []).map((word) => word.word)];
}

function withPlace(problem: AltProblem, place: Finding['place']): Finding {
  return { ...problem, place };
}
