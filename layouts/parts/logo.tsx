import type { JSX } from 'preact';
import { linkFrom } from '../../src/outputs/addresses.ts';
import type { Page } from '../../src/outputs/views.ts';

/** The library's logo, where it has one: as large as it is shown, so that nothing moves when it comes, and another file by lamplight where it needs one. */
export function Logo({ page: { assets, library, language, url } }: { readonly page: Page }): JSX.Element | null {
  const { logo } = assets;
  if (logo === undefined) return null;
  return (
    <picture>
      {logo.dark !== undefined && <source media="(prefers-color-scheme: dark)" srcset={linkFrom(url, logo.dark)} />}
      <img src={linkFrom(url, logo.light)} width={logo.width} height={logo.height} alt={library.theme?.logo?.alt?.[language] ?? ''} />
    </picture>
  );
}
