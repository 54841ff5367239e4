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

/** As the policy names it; made when it is first needed, since a page may do without. */
let made: Rules | undefined;
function trusted(): Rules {
  const factory = (globalThis as { readonly trustedTypes?: { createPolicy(name: string, by: Rules): Rules } }).trustedTypes;
  return (made ??= factory ? factory.createPolicy('bookfellow', rules) : rules);
}

/** Markup that our own code has written, for a place that takes markup. It is told apart by being another object, so it is made once and kept. */
export function ownMarkup(text: string): string {
  return trusted().createHTML(text);
}

/** The address of a program of this site. */
export function ownProgram(address: string): string {
  return trusted().createScriptURL(address);
}
