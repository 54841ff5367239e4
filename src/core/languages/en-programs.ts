/** English text of the page for whoever collects packs with a program of their own. */
export const programsInEnglish = {
  title: 'For other programs',
  description: 'Every file of this library that a program can read: what is in it, which standard it follows, and what stays as it is.',
  lead: 'This library can be collected by a catalog, a search engine or a school’s own system. Nothing here needs a key, and nobody is counted.',
  filesHeading: 'The files',
  file: 'File',
  holds: 'What it holds',
  standard: 'Standard',
  own: 'our own, described here',
  onlyWithAddress:
    'This library does not say at which address it lives (address in library.yaml), so the files that need whole addresses are not made: feeds, the list of pages, the description of the search.',
  files: {
    list: 'All packs: title, language, summary, the book, grades, minutes, licence, when it was last looked over, and the addresses of its pages and files.',
    pack: 'One pack’s front matter, every field under its own name. Its JSON Schema is named in it.',
    arrivals: 'When the page of each pack came into this site, by its address. A pack that was there from the first has an empty text.',
    schema: 'The shape of such a file.',
    text: 'The pack itself as a file that another library can publish: the front matter and the text. Remarks of the author are not in it.',
    page: 'On each family page: what the companion is, for whom, which book it is based on, which aims it serves, and what was checked about access. A feature is named when the build has checked it, or not at all.',
    atom: 'What was looked over last, up to fifty packs, one feed for each language.',
    feed: 'The same for readers of JSON.',
    sitemap: 'Every page, with its other languages.',
    search: 'How a browser can search here.',
    robots: 'That everybody may read everything.',
    stops: 'Of a pack with a recording: its stops as chapters.',
    folder: 'A pack’s pages, sheets and pictures as one folder.',
  },
  fieldsHeading: 'The list, field by field',
  fields: [
    ['library, schema', 'The name of the library; where the shape of a pack’s file is, relative to the list.'],
    ['title, language, summary', 'Text; a language tag after BCP 47; text.'],
    ['book', 'Title, author and rights of the book: in copyright, public domain, licensed, our own. Its kinds and its ISBN where the author gave them.'],
    ['grades, minutes', 'A list of PreK, K, 1, 2, 3, 4; whole minutes of the class’s first reading.'],
    ['licence, reviewed, version, based on', 'As the author wrote them. The day is a date after ISO 8601.'],
    ['parent, forks', 'Pages of the companion it was made from, and of those made from it, where they are in this list.'],
    ['retired', 'A list of its own: companions that were taken out, since when, why, and the page of what takes their place. Their addresses stay and say the same.'],
    ['provider', 'In a library of several schools: whose folder the pack came from, and how to reach them.'],
    ['aims', 'Skills in words, and where an author named a standard: its framework, code, web address and identifier (a UUID, as in CASE of 1EdTech).'],
    ['pages, files', 'Addresses relative to the list.'],
  ] as readonly (readonly [string, string])[],
  promisesHeading: 'What you can rely on',
  promises: [
    'An address of a pack stays as long as its folder keeps its name. Languages other than the library’s own have their tag before it.',
    'Fields may be added. A field that is there keeps its name and its meaning.',
    'Files are plain and static. Ask with If-None-Match or If-Modified-Since, as your server allows, and once a day is enough.',
    'No file holds anything about a child, a class or a visitor, and none holds the text of a book.',
  ] as readonly string[],
  rightsHeading: 'What you may do',
  rights:
    'Each pack names its own licence, in the list and in its file. It covers the companion and never the book. Keep the name of its maker with it. A grade in a pack is what its author meant it for; it places no child.',
};

export type ProgramsPhrases = typeof programsInEnglish;
