import type { JSX } from 'preact';
import type { BuiltPicture, PictureSize } from '../../src/outputs/views.ts';
import { toHtml } from '../to-html.ts';

export type LinkTo = (url: string) => string;

interface Props {
  readonly picture: BuiltPicture;
  readonly linkTo: LinkTo;
  /** How wide the picture is shown, in the words of the `sizes` attribute. */
  readonly sizes?: string;
  /** True for the first picture of a page, which is loaded at once. */
  readonly first?: boolean;
}

/** Widest a picture is shown in the text of a page. */
const sizesInText = '(min-width: 44rem) 40rem, 92vw';

/** One picture in the sizes there are of it; the browser takes the one that fits. */
export function Picture({ picture, linkTo, sizes = sizesInText, first = false }: Props): JSX.Element {
  const set = (files: readonly PictureSize[]) => files.map((file) => `${linkTo(file.url)} ${String(file.width)}w`).join(', ');
  const smallest = picture.jpeg[0];
  return (
    <picture>
      <source type="image/webp" srcset={set(picture.webp)} sizes={sizes} />
      <img
        src={linkTo(smallest?.url ?? '')}
        srcset={set(picture.jpeg)}
        sizes={sizes}
        width={picture.width}
        height={picture.height}
        alt={picture.decorative ? '' : picture.alt}
        loading={first ? 'eager' : 'lazy'}
        decoding="async"
      />
    </picture>
  );
}

/** The same, as text, for a picture that a pack's Markdown names. */
export function pictureHtml(picture: BuiltPicture, linkTo: LinkTo): string {
  return toHtml(<Picture picture={picture} linkTo={linkTo} />);
}

/** A picture tipped in: a frame of ink on its own paper, with its credit below. */
export function Plate({ credit, ...props }: Props & { readonly credit?: string | undefined }): JSX.Element {
  return (
    <div class="plate">
      <div class="plate-paper">
        <Picture {...props} />
      </div>
      {credit !== undefined && <p class="credit">{credit}</p>}
    </div>
  );
}
