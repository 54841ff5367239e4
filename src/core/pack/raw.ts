import type { Finding } from '../finding.ts';
import type { Places } from './pack.ts';

/** Text as typed, lists and groups: what YAML holds once aliases and tags are refused. */
export type Raw = string | readonly Raw[] | { readonly [field: string]: Raw };

/** What a text of YAML came to. */
export interface ReadYaml {
  /** The fields; none where the text is refused. Groups have no prototype, so that a field called `__proto__` is only a name. */
  readonly raw: Readonly<Record<string, Raw>>;
  readonly places: Places;
  readonly findings: readonly Finding[];
}
