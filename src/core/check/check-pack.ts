import type { Finding } from '../finding.ts';
import type { Pack } from '../pack/pack.ts';

declare const checked: unique symbol;
/** A pack that the checks have looked at; only `checkPack` makes one. */
export type CheckedPack = Pack & { readonly [checked]: true };

/** A check: looks at a pack and says what it found. */
export type Rule = (pack: Pack) => Iterable<Finding>;
