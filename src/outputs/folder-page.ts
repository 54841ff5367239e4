/**
 * A page of the site as a page of a folder that is opened from a disk. From there a browser runs no modules and knows no first pages of
 * folders, so links name files, scripts are plain ones, and what is not in the folder is not linked to.
 */
export interface FolderPage {
  /** The page's HTML as the site has it, and its address there. */
  readonly html: string;
  readonly url: string;
  /** Where a page or file of the site lies in the folder, by its address from the site's root; undefined for what is not in it. */
  readonly placeOf: (url: string) => string | undefined;
  /** The library's address on the network, where it has one: what is not in the folder is linked to there. */
  readonly address: string | undefined;
  /** Plain scripts of the page and styles to add, by their place in the folder. */
  readonly scripts: readonly string[];
  readonly styles: readonly string[];
}

/** The page for the folder. The attributes of our own pages stand in double quotes, and no text of a page can hold a bare one. */
export function folderPage({ html, url, placeOf, address, scripts, styles }: FolderPage): string {
  const root = 'http://site.invalid/';
  const placed = (link: string): string | undefined => {
    if (/^(?:#|data:|mailto:|tel:|https?:)/.test(link)) return link;
    const to = new URL(link.replaceAll('&amp;', '&'), root + url);
    const path = decodeURI(to.pathname.slice(1)).replace(/(^|\/)index\.html$/, '$1');
    const place = placeOf(path);
    if (place !== undefined) return place + to.hash;
    return address === undefined ? undefined : address.replace(/\/*$/, '/') + path + to.hash;
  };
  return html
    .replace(/<link rel="(?:modulepreload|alternate|canonical)"[^>]*>/g, '')
    .replace(/<script type="module" src="[^"]*"><\/script>/g, '')
    .replace(/(<meta http-equiv="Content-Security-Policy" content=")([^"]*)/, (_, begin: string, policy: string) => begin + fromDisk(policy))
    .replace(/ srcset="([^"]*)"/g, (_, set: string) => {
      // One width of each picture is in the folder.
      const found = set.split(', ').flatMap((each) => placed(each.split(' ', 1)[0] ?? '') ?? []);
      return found[0] === undefined ? '' : ` srcset="${found[0]}"`;
    })
    .replace(/ (href|src)="([^"]*)"/g, (_, name: string, link: string) => {
      const found = placed(link);
      return found === undefined ? '' : ` ${name}="${found}"`;
    })
    .replace('</head>', `${styles.map((each) => `<link rel="stylesheet" href="${each}">`).join('')}${scripts.map((each) => `<script defer src="${each}"></script>`).join('')}</head>`);
}

/** Some browsers do not take a file beside the page for its own. */
function fromDisk(policy: string): string {
  return policy.replaceAll("'self'", "'self' file:").replace(/ worker-src [^;]*;/, '');
}
