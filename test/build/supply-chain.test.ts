/** What comes from outside is exactly what was looked at: exact versions, a sum for each package, no script at installation, known licences, and a list for others in CycloneDX. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Ajv, type AnySchemaObject } from 'ajv';
import { fullFormats } from 'ajv-formats/dist/formats.js';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const json = (path: string) => JSON.parse(readFileSync(path, 'utf8')) as unknown;

interface Wanted {
  readonly name: string;
  readonly version: string;
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
}
interface Locked {
  readonly version?: string;
  readonly integrity?: string;
  readonly license?: string;
  readonly resolved?: string;
  readonly link?: boolean;
  readonly hasInstallScript?: boolean;
}
const wanted = json(join(root, 'package.json')) as Wanted;
const { packages } = json(join(root, 'package-lock.json')) as { readonly packages: Readonly<Record<string, Locked & Partial<Wanted>>> };
/** What is wanted: where it lies, what it is called by its makers, and its version. One of two versions of the compiler lies under another name. */
const all = Object.entries({ ...wanted.dependencies, ...wanted.devDependencies }).map(([folder, text]) => {
  const [, name = folder, version = text] = /^npm:(.+)@([^@]+)$/.exec(text) ?? [];
  return { folder, name, version };
});
const locked = Object.entries(packages).filter(([path]) => path !== '');

test('every version is exact, and the lockfile has the same', () => {
  expect(all.filter(({ version }) => !/^\d+\.\d+\.\d+(?:-[\w.]+)?$/.test(version))).toEqual([]);
  expect(packages['']).toMatchObject({ dependencies: wanted.dependencies, devDependencies: wanted.devDependencies });
  expect(all.filter(({ folder, version }) => packages[`node_modules/${folder}`]?.version !== version)).toEqual([]);
});

test('every package of the lockfile has a sum of its bytes and comes from the registry: none from a folder, from git or from another address', () => {
  expect(locked.length).toBeGreaterThan(300);
  expect(locked.filter(([, { integrity }]) => !/^sha512-[\w+/]{86}==$/.test(integrity ?? '')).map(([path]) => path)).toEqual([]);
  expect(locked.filter(([, { resolved, link }]) => link === true || (resolved !== undefined && !/^https:\/\/[^/]+\/.*\.tgz$/.test(resolved))).map(([path]) => path)).toEqual([]);
});

test('no package runs anything when it is installed: the one that would works without, as this very run shows', () => {
  expect(readFileSync(join(root, '.npmrc'), 'utf8')).toContain('ignore-scripts=true\n');
  // esbuild's script only exchanges its start for the program itself, to save some milliseconds.
  expect(locked.filter(([, { hasInstallScript }]) => hasInstallScript === true).map(([path]) => path)).toEqual(['node_modules/esbuild']);
});

/** Licences, by their SPDX names, that what builds and tests may have. None of them asks anything of the packs or of a site; what reaches a browser has a shorter list in src/build/licences.ts. */
const allowed = ['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD', 'Apache-2.0', 'BlueOak-1.0.0', 'OFL-1.1', 'CC0-1.0', 'Python-2.0', 'PSF-2.0', 'Unlicense'];
/** These ask that their own changed source be given along; we change and hand on none of it. */
const unchanged: Readonly<Record<string, RegExp>> = {
  'MPL-2.0': /^(?:axe-core$|lightningcss|ical\.js$)/,
  'LGPL-3.0-or-later': /^@img\/sharp-/,
};

test('everything that builds and tests has a licence that was looked at', () => {
  const odd = locked.flatMap(([path, { license = 'none named' }]) => {
    const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
    const parts = license.replace(/[()]/g, '').split(/ AND /);
    return parts.every((part) => allowed.includes(part) || unchanged[part]?.test(name) === true) ? [] : [`${name}: ${license}`];
  });
  expect(odd).toEqual([]);
});

test('`npm run sbom` lists every package, in CycloneDX as its own schema has it', () => {
  const { stdout, stderr, status } = spawnSync('npm', ['run', '--silent', 'sbom'], { cwd: root, encoding: 'utf8', maxBuffer: 50_000_000, shell: process.platform === 'win32' });
  expect([status, stderr]).toEqual([0, '']);
  const bom = JSON.parse(stdout) as { readonly specVersion: string; readonly components: readonly { readonly name: string; readonly version: string }[] };
  const schemas = join(dirname(createRequire(import.meta.url).resolve('@cyclonedx/cyclonedx-library/package.json')), 'res/schema');
  const schema = (name: string) => json(join(schemas, `${name}.SNAPSHOT.schema.json`)) as AnySchemaObject;
  // The two formats are of the schema's draft and not among those of the checker.
  const ajv = new Ajv({ strict: false, formats: { ...fullFormats, 'iri-reference': true, 'idn-email': true } });
  for (const name of ['spdx', 'jsf-0.82']) ajv.addSchema(schema(name), `http://cyclonedx.org/schema/${name}.SNAPSHOT.schema.json`);
  const isCycloneDx = ajv.compile<object>(schema(`bom-${bom.specVersion}`));
  expect([isCycloneDx(bom), isCycloneDx.errors ?? []]).toEqual([true, []]);
  expect(isCycloneDx({ ...bom, components: [{ type: 'no such kind', name: 'x' }] }), 'the schema refuses what is wrong').toBe(false);
  const listed = new Set(bom.components.map(({ name, version }) => `${name} ${version}`));
  expect(all.filter(({ name, folder, version }) => !listed.has(`${name} ${version}`) && !listed.has(`${folder} ${version}`))).toEqual([]);
});
