/** What `--help` says, whole and for each command. */
export function help(command: string): string {
  return texts[command] ?? overview;
}

const overview = `bookfellow: companion packs for reading picture books aloud

  bookfellow build    [--content DIR] [--site DIR] [--strict]   build the library site
  bookfellow check    [--content DIR] [PATH…] [--since REV]     say what is wrong, and where
  bookfellow measure  FILE… [--language es] [--json]            count a text: words, sentences, readability
  bookfellow plan     PACK [--minutes N] [--start 9:05] [--json]  a lesson in minutes
  bookfellow lesson   PACK --local FILE [--out FILE]            a substitute's sheet with the details of your room
  bookfellow stack    FOLDER [--json|--csv]                     count the booklets that came back
  bookfellow new      SLUG [--content DIR]                      begin a new pack
  bookfellow preview  [--content DIR] [--port N]                build, show and rebuild on each change

"bookfellow COMMAND --help" says more about one of them.
Exit codes: 0 fine, 1 findings that stop a pack, 2 wrong use.`;

const texts: Readonly<Record<string, string>> = {
  build: `bookfellow build: makes the library site from the content folder

  --content DIR   the folder with library.yaml, packs/ and pages/ (content)
  --site DIR      where the site goes (site); it changes whole or not at all
  --strict        one finding that stops keeps the whole library from being published
  --no-pdf        leaves the sheets for printing out, for a quick build

Without --strict, a pack with a finding that stops is left out and told about; the rest is published.

Examples
  bookfellow build
  bookfellow build --content ../our-school --site /var/www/library --strict`,
  check: `bookfellow check: reads packs and says what is wrong, where, and what to write instead

  --content DIR   the content folder (content)
  PATH…           only these packs: a pack.md, or a folder of packs/
  --json          an array of {code, level, file, line, column, message}
  --since REV     only what was changed since a revision of the git history: packs of
                  which any file was; all of them when library.yaml was
  --sarif         a log in SARIF 2.1.0, which code hosts show beside the lines

Examples
  bookfellow check
  bookfellow check --since origin/main --sarif > findings.sarif
  bookfellow check content/packs/seven-buttons
  bookfellow check --json > findings.json`,
  measure: `bookfellow measure: counts a text and says what may be said about it

  FILE…           Markdown or plain text; a folder stands for the .md and .txt files in it
  --language es   the language of the text, where its front matter does not say (en)
  --json          the raw counts and scores, for scripts

A pack.md comes with what is counted in its private/passage.txt: words of each
opening, taught words, words that might be taught, and how much is quoted.

A figure is an estimate from the length of words and sentences. It places no child and no book.

Examples
  bookfellow measure letter-home.md
  bookfellow measure --language es carta.md --json`,
  plan: `bookfellow plan: a pack's lesson in minutes

  PACK            the pack's folder name, or its pack.md
  --content DIR   the content folder (content)
  --minutes N     the minutes there are (the pack's own)
  --start H:MM    when the lesson begins (9:00)
  --reading N     which reading of the week (1)
  --with WHOM     class, group, child or recording (class)
  --pace N        words a minute (the pack's own, or the library's, or 130)
  --week          every reading: its stops, its one question, what moved
  --json          the plan as data

Examples
  bookfellow plan seven-buttons --start 9:05
  bookfellow plan seven-buttons --minutes 12 --with group
  bookfellow plan seven-buttons --week`,
  lesson: `bookfellow lesson: a substitute's sheet (PDF) with what must not be published

  PACK            the pack's folder name, or its pack.md
  --local FILE    a plain text with the details of your room
  --out FILE      where the sheet goes (the pack's folder, private/substitute.pdf)
  --language es   the pack's language, where it has more than one
  --content DIR   the content folder (content)

The text has a line for each thing, "Label: words", and may go on below:

  It is kept: on the shelf behind the piano
  Where they sit: on the rug, in the rows of yesterday
  Signal for quiet: two claps
  Who helps: next door, room 4
  Going home: the list hangs inside the cupboard

The first three fill the blanks of the first page; all others go on a second one. Keep
the text out of what you share. The sheet is refused inside a published site, and is
written so that only you can read it. The site never has any of this.

Example
  bookfellow lesson seven-buttons --local ~/my-room.txt`,
  stack: `bookfellow stack: the booklets that came back as files, counted

  FOLDER          a folder with “.booklet.html” files, and folders in it
  --content DIR   the content folder, for rubrics and model answers (content)
  --json          the counts as data; no words of a child are in it
  --csv           every answer as a table; keep it where your school keeps such things

Two copies of one booklet count once. A damaged file is named and set aside. Files of
scores, saved from the page /stack/, may lie in the folder too: then it tells what the
answers had, and how far two people agree. Nothing is written and nothing is sent.

Examples
  bookfellow stack ~/handed-in
  bookfellow stack ~/handed-in --csv > answers.csv`,
  new: `bookfellow new: begins a pack, with a remark at every field

  SLUG            the folder's name and web address: small letters, digits and dashes
  --content DIR   the content folder (content)

Example
  bookfellow new the-paper-boat`,
  preview: `bookfellow preview: builds the library, shows it in the browser, and rebuilds on each change

  --content DIR   the content folder (content)
  --site DIR      where the site goes (site)
  --port N        the port on this machine (4321, or PORT)
  --no-pdf        leaves the sheets for printing out

Only this machine can see it. Stop it with Ctrl+C.`,
};
