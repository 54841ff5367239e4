/** The peer of the reports on building: Hugo (Debian's package) making three plain pages of each pack from the same files. */
import { cpSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const config = `baseURL = "https://speed.example/"
languageCode = "en"
title = "The speed shelf"
disableKinds = ["taxonomy", "term", "RSS", "sitemap"]
[outputFormats.booklet]
mediaType = "text/html"
path = "booklet"
baseName = "index"
isHTML = true
permalinkable = false
[outputFormats.lesson]
mediaType = "text/html"
path = "lesson"
baseName = "index"
isHTML = true
permalinkable = false
[outputs]
page = ["HTML", "booklet", "lesson"]
section = ["HTML"]
home = ["HTML"]
`;

const head = (what: string) => `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>{{ .Title }}</title></head><body><h1>{{ .Title }}, ${what}</h1><p>{{ .Params.summary }}</p>\n`;
const stops = `<ol>{{ range .Params.stops }}<li id="{{ .id }}"><h3>{{ .ask }}</h3><p>{{ .at.cue }}, opening {{ .at.opening }}, {{ .kind }}, depth {{ .depth }}, {{ .answer }} or {{ .or }}</p>
<ul>{{ range .frames }}<li>{{ . }}</li>{{ end }}</ul>{{ range .models }}<blockquote>{{ .text }}</blockquote>{{ end }}<p>{{ index . "listen for" }}</p><p>{{ index . "if quiet" }}</p></li>{{ end }}</ol>\n`;
const words = `<dl>{{ range .Params.words }}<dt>{{ .word }}</dt><dd>{{ .meaning }} {{ .situation }}</dd>{{ end }}</dl><ul>{{ range .Params.home.prompts }}<li>{{ . }}</li>{{ end }}</ul>\n`;
const end = '</body></html>\n';

/** A Hugo site at `place` over copies of the packs of a content folder. Call `hugo --quiet --source place`. */
export function writeHugoSite(place: string, content: string): void {
  for (const folder of ['layouts/_default', 'content/packs']) mkdirSync(join(place, folder), { recursive: true });
  writeFileSync(join(place, 'config.toml'), config);
  const layout = (name: string, text: string) => {
    writeFileSync(join(place, 'layouts/_default', name), text);
  };
  layout('single.html', `${head('for home')}${words}{{ .Content }}${end}`);
  layout('single.booklet.html', `${head('the booklet')}${stops}${end}`);
  layout('single.lesson.html', `${head('the lesson')}${stops}${words}{{ .Content }}${end}`);
  layout(
    'list.html',
    `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>{{ .Title }}</title></head><body><ul>{{ range .RegularPages }}<li><a href="{{ .RelPermalink }}">{{ .Title }}</a></li>{{ end }}</ul>${end}`,
  );
  for (const pack of readdirSync(join(content, 'packs'))) cpSync(join(content, 'packs', pack, 'pack.md'), join(place, 'content/packs', `${pack}.md`));
}
