import { LinkChecker, LinkState } from 'linkinator';

/** A link of the site that leads nowhere, and the page it stands on. */
export interface BrokenLink {
  readonly page: string;
  readonly link: string;
}

/** The only door to linkinator: follows every link of a site that is being served, and none that leads away from it. */
export async function brokenLinks(address: string): Promise<readonly BrokenLink[]> {
  const own = new URL(address).origin;
  const { links } = await new LinkChecker().check({
    path: `${own}/`,
    recurse: true,
    checkFragments: true,
    concurrency: 20,
    linksToSkip: (link) => Promise.resolve(!link.startsWith(own)),
  });
  return links.filter((link) => link.state === LinkState.BROKEN).map((link) => ({ page: link.parent ?? '', link: link.url }));
}
