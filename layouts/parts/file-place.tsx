import type { JSX } from 'preact';
import type { Library } from '../../src/core/pack/library.ts';

interface Props {
  readonly library: Pick<Library, 'files'>;
  readonly file: string;
  readonly line: number;
  /** True: the line is told. */
  readonly withLine?: boolean;
}

/** A place in a pack's file: a link where the library says where a visitor can see it, and text where it does not. */
export function FilePlace({ library: { files }, file, line, withLine = false }: Props): JSX.Element {
  const name = withLine ? `${file}:${String(line)}` : file;
  if (files === undefined)
    return (
      <bdi class="place" dir="ltr">
        {name}
      </bdi>
    );
  return (
    <a class="place" href={files.replace('{file}', encodeURI(file)).replace('{line}', String(line))} rel="noreferrer">
      {name}
    </a>
  );
}
