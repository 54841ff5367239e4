/**
 * The one door through which a page of ours turns text into markup, or an address into a program. The pages' policy (`layouts/parts/content-policy.ts`)
 * shuts every other way in browsers that know Trusted Types; in others the same checks are made here. Source: W3C, Trusted Types.
 */
interface Rules {
  createHTML(text: string): string;
  createScriptURL(address: string): string;
}

const rules: Rules = {
  createHTML(text) {
    if (/<script(?![^>]*type="application\/(?:ld\+)?json")/i.test(text)) throw new TypeError('markup with a script');
    return text;
  },
  createScriptURL(address) {
    if (new URL(address, location.href).origin !== location.origin) throw new TypeError('a program from another place');
    return address;
  },
};

/** What the page holds, so that two of its scripts, which are bundled apart, share one maker: the policy lets it be made once. */
interface Holder {
  readonly trustedTypes?: { createPolicy(name: string, by: Rules): Rules };
  [made: symbol]: Rules | undefined;
}
const made = Symbol.for('bookfellow trusted');

/** As the policy names it; made when it is first needed, since a page may do without. */
function trusted(): Rules {
  const holder = globalThis as Holder;
  return (holder[made] ??= holder.trustedTypes?.createPolicy('bookfellow', rules) ?? rules);
}

/** Markup that our own code has written, for a place that takes markup. It is told apart by being another object, so it is made once and kept. */
export function ownMarkup(text: string): string {
  return trusted().createHTML(text);
}

/** The address of a program of this site. */
export function ownProgram(address: string): string {
  return trusted().createScriptURL(address);
}
