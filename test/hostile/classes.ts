/** The classes of faults that lie in packs, in the order of the list. What comes with builds, secrets and browsers has tests of its own (DEVELOPERS.md). */
import { attributes } from './attributes.ts';
import { codeInFront } from './code-in-front.ts';
import { encodings } from './encodings.ts';
import { files } from './files.ts';
import { frontMatterStrings } from './front-matter-strings.ts';
import type { HostileClass } from './hostile-case.ts';
import { htmlInMarkdown } from './html-in-markdown.ts';
import { links } from './links.ts';
import { paths } from './paths.ts';
import { pictures } from './pictures.ts';
import { sizeAndDepth } from './size-and-depth.ts';
import { templateCode } from './template-code.ts';
import { yaml } from './yaml.ts';

export const classes: readonly HostileClass[] = [htmlInMarkdown, links, attributes, frontMatterStrings, templateCode, codeInFront, yaml, paths, pictures, sizeAndDepth, encodings, files];
