/** Who may import whom, which file is the door to which outside library, and that nothing goes in a circle. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));

/** The parts of the house and the parts that each may import. A part may always import itself. */
const mayImport: Readonly<Record<string, readonly string[]>> = {
  'src/core': [],
  'src/core/languages': ['src/core'],
  'src/core/pack': ['src/core'],
  'src/core/check': ['src/core', 'src/core/pack'],
  // From the checks only the mark that they leave on a pack (`CheckedPack`): see `onlyTypes`.
  'src/core/measure': ['src/core', 'src/core/pack', 'src/core/check'],
  'src/core/plan': ['src/core', 'src/core/pack', 'src/core/measure'],
  'src/core/booklet': ['src/core', 'src/core/pack'],
  'src/core/find': ['src/core', 'src/core/pack'],
  'src/outputs': ['src/core/*'],
  layouts: ['src/core/*', 'src/outputs'],
  // A child's work cannot reach the site: nothing that builds it knows the classroom.
  'src/build': ['src/core/*', 'src/outputs', 'layouts'],
  'src/classroom': ['src/core/*'],
  'src/browser': ['src/core/*', 'src/classroom', 'src/outputs', 'layouts'],
  'src/cli': ['src/core/*', 'src/build', 'src/classroom'],
};

/** Pairs of parts between which only types may pass: the compiler takes them out again. */
const onlyTypes = [['src/core/measure', 'src/core/check']] as const;

/** Parts that run anywhere: no module of Node's own in them. */
const pure = ['src/core', 'src/outputs', 'layouts'];

/** The doors: an outside library, and the only files or folders that may open it. One door, one place to make it safe or to exchange it. */
const doors: Readonly<Record<string, readonly string[]>> = {
  'gray-matter': ['src/core/pack/front-matter.ts'],
  yaml: ['src/core/pack/careful-yaml.ts', 'src/core/pack/write-pack.ts'],
  'js-yaml': ['src/core/pack/fast-yaml.ts'],
  'markdown-it': ['src/core/pack/markdown.ts'],
  // What text is allowed where is said in valibot's terms wherever a saved format is read.
  valibot: ['src/core/pack/', 'src/core/booklet/', 'src/classroom/'],
  '@valibot/to-json-schema': ['src/core/pack/json-schema.ts'],
  syllable: ['src/core/measure/syllables-en.ts'],
  'dale-chall': ['src/core/measure/familiar-words.ts'],
  spache: ['src/core/measure/familiar-words.ts'],
  // The language that layouts are written in; the compiler adds its own import to each .tsx file.
  preact: ['layouts/', 'src/browser/'],
  'preact-render-to-string': ['layouts/to-html.ts'],
  sharp: ['src/build/pictures.ts'],
  '@11ty/eleventy': ['src/build/eleventy.ts'],
  esbuild: ['src/build/bundle.ts'],
  linkinator: ['src/build/check-links.ts'],
  chokidar: ['src/build/preview.ts'],
  '@myriaddreamin/typst-ts-node-compiler': ['src/build/pdf-worker.js'],
  fflate: ['src/outputs/zip.ts'],
  uqr: ['layouts/parts/qr-code.tsx', 'src/outputs/qr-code.ts'],
  minisearch: ['src/outputs/search-index.ts', 'src/browser/search.ts'],
  tsx: ['src/cli/bookfellow.js'],
};

interface Import {
  readonly from: string;
  /** The file imported, relative to the root; or the name as written, for a library. */
  readonly to: string;
  readonly library: string | undefined;
  readonly typeOnly: boolean;
}

const files = ['src', 'layouts'].flatMap((folder) => sourcesIn(folder));
const imports = files.flatMap((file) => importsOf(file));
const between = imports.filter((each) => each.library === undefined);

function sourcesIn(folder: string): readonly string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((file) => `${folder}/${file.split(sep).join('/')}`)
    .filter((file) => /\.(?:ts|tsx|js)$/.test(file) && !file.endsWith('.d.ts'));
}

function importsOf(file: string): readonly Import[] {
  const found: Import[] = [];
  const add = (specifier: ts.Node | undefined, typeOnly: boolean): void => {
    if (!specifier || !ts.isStringLiteralLike(specifier)) return;
    const name = specifier.text;
    const inside = name.startsWith('.');
    const library = inside ? undefined : name.startsWith('node:') ? name : name.split('/', name.startsWith('@') ? 2 : 1).join('/');
    found.push({
      from: file,
      to: inside
        ? relative(root, join(root, dirname(file), name))
            .split(sep)
            .join('/')
        : name,
      library,
      typeOnly,
    });
  };
  const walk = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) add(node.moduleSpecifier, node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword);
    else if (ts.isExportDeclaration(node)) add(node.moduleSpecifier, node.isTypeOnly);
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) add(node.arguments[0], false);
    else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) add(node.argument.literal, true);
    ts.forEachChild(node, walk);
  };
  walk(ts.createSourceFile(file, readFileSync(join(root, file), 'utf8'), ts.ScriptTarget.Latest, true));
  return found;
}

/** The part of the house that a file belongs to: the longest name in the table that its path begins with. */
function partOf(file: string): string | undefined {
  return Object.keys(mayImport)
    .filter((part) => file.startsWith(`${part}/`))
    .sort((a, b) => b.length - a.length)[0];
}

function isAllowed(from: string, to: string): boolean {
  return from === to || (mayImport[from] ?? []).some((part) => (part.endsWith('/*') ? to === part.slice(0, -2) || to.startsWith(part.slice(0, -1)) : part === to));
}

test('every source file belongs to a part of the house', () => {
  expect(files.length).toBeGreaterThan(50);
  expect(files.filter((file) => partOf(file) === undefined)).toEqual([]);
});

test('a part imports only the parts that the table allows it', () => {
  const wrong = between.flatMap(({ from, to }) => {
    const [here = '', there = '(no part of the house)'] = [partOf(from), partOf(to)];
    return isAllowed(here, there) ? [] : [`${here} may not import ${there}: ${from} -> ${to}`];
  });
  expect(wrong).toEqual([]);
});

test('where only types may pass, only types pass', () => {
  const wrong = between.filter(({ from, to, typeOnly }) => !typeOnly && onlyTypes.some(([here, there]) => partOf(from) === here && partOf(to) === there));
  expect(wrong.map(({ from, to }) => `${from} -> ${to}`)).toEqual([]);
});

test('the pure parts import no module of Node', () => {
  const wrong = imports.filter(({ from, library }) => library?.startsWith('node:') === true && pure.some((part) => from.startsWith(`${part}/`)));
  expect(wrong.map(({ from, to }) => `${from} -> ${to}`)).toEqual([]);
});

test('each outside library has its door, and is used through no other file', () => {
  const wrong = imports.flatMap(({ from, library }) => {
    if (library === undefined || library.startsWith('node:')) return [];
    const allowed = Object.hasOwn(doors, library) ? (doors[library] ?? []) : undefined;
    if (!allowed) return [`"${library}" has no door in the table: ${from}`];
    return allowed.some((door) => (door.endsWith('/') ? from.startsWith(door) : from === door)) ? [] : [`"${library}" may only be imported by ${allowed.join(', ')}: ${from}`];
  });
  expect(wrong).toEqual([]);
});

test('no two files import each other, not round any corner and not even for a type', () => {
  const to = new Map<string, string[]>();
  for (const each of between) to.set(each.from, [...(to.get(each.from) ?? []), each.to]);
  const done = new Set<string>();
  const circles: string[] = [];
  const visit = (file: string, way: readonly string[]): void => {
    const seen = way.indexOf(file);
    if (seen !== -1) circles.push([...way.slice(seen), file].join(' -> '));
    if (seen !== -1 || done.has(file)) return;
    for (const next of to.get(file) ?? []) visit(next, [...way, file]);
    done.add(file);
  };
  for (const file of files) visit(file, []);
  expect(circles).toEqual([]);
});

test("a child's work cannot reach the site: no way through any files leads from build, outputs or layouts to the classroom", () => {
  const reached = (begin: readonly string[]): ReadonlySet<string> => {
    const seen = new Set(begin);
    for (const file of seen) for (const each of between) if (each.from === file) seen.add(each.to);
    return seen;
  };
  const here = (part: string) => files.filter((file) => file.startsWith(`${part}/`));
  const builds = ['src/build', 'src/outputs', 'layouts', 'src/core'].flatMap(here);
  expect([...reached(builds)].filter((file) => /^src\/(?:classroom|browser|cli)\//.test(file))).toEqual([]);
  // The same search does find the way that there is: from the page of the stack, which the build bundles by its path.
  expect([...reached(['src/browser/stack.tsx'])]).toContain('src/classroom/stack.ts');
  expect(here('src/build').length).toBeGreaterThan(10);
});
