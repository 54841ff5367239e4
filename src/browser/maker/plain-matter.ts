/**
 * What `front-matter.ts` uses of gray-matter, for the browser: the text between the lines of dashes, handed to the YAML
 * engine it was given. The bundler puts it in gray-matter's place. `front-matter.ts` has refused everything but a bare `---` before.
 */
interface Options {
  readonly engines: { readonly yaml: { parse(text: string): object } };
}

export default function plainMatter(text: string, { engines }: Options): { readonly data: object } {
  const end = text.indexOf('\n---', 3);
  const yaml = text.slice(3, end === -1 ? undefined : end);
  // Nothing but remarks is no front matter to read.
  const bare = yaml.replace(/^\s*#[^\n]+/gm, '').trim();
  return { data: bare === '' ? {} : engines.yaml.parse(yaml) };
}
