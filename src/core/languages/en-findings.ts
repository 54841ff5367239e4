import type { Code, FactsOf } from '../finding.ts';
import { passageFindingsInEnglish, privacyFindingsInEnglish } from './en-findings-private.ts';
import { altTextInEnglish } from './en-findings-alt-text.ts';
import { libraryFindingsInEnglish } from './en-findings-library.ts';
import { lookFindingsInEnglish } from './en-findings-look.ts';
import { balanceInEnglish } from './en-findings-balance.ts';
import { listsIn } from './formats.ts';

/** A sentence for each finding: what is wrong, and what to write instead. */
export type FindingSentences = { readonly [C in Code]: (facts: FactsOf[C]) => string };

const kinds = { text: 'text', number: 'a number', 'whole number': 'a whole number', list: 'a list (lines that begin with "- ")', group: 'a group of fields', 'yes or no': 'true or false' };
const within = (place: string) => (place === '' ? '' : ` in "${place}"`);
const meant = (suggestion: string | undefined) => (suggestion === undefined ? '' : ` Did you mean "${suggestion}"?`);
const found = (text: string) => (text === '[list]' ? 'a list' : text === '[group]' ? 'a group of fields' : text === '' ? 'nothing' : `"${text}"`);

/** What the YAML parser stumbled over, in words. */
const gradesFromTo = (low: number, high: number) => (low === high ? `grade ${String(low)}` : `grades ${String(low)} to ${String(high)}`);
const linesThatCost = (lines: readonly number[]) => (lines.length === 0 ? '' : `Begin with ${lines.length === 1 ? 'line' : 'lines'} ${listsIn('en').format(lines.map(String))}.`);

const yamlProblems: Readonly<Record<string, string>> = {
  BAD_INDENT: 'The lines are not lined up here. Give the fields that belong together the same number of spaces in front.',
  BLOCK_AS_IMPLICIT_KEY: 'There is a second ": " in this line. Put the whole text in double quotes.',
  MULTILINE_IMPLICIT_KEY: 'A field name runs over more than one line here. Check for a missing colon or quotation mark above.',
  MISSING_CHAR: 'A sign is missing here: often a colon behind a field name, or a closing quotation mark or bracket.',
  TAB_AS_INDENT: 'A tab stands at the beginning of this line. Use spaces instead.',
  UNEXPECTED_TOKEN: 'Something here was not expected. If it is text, put it in double quotes.',
  BAD_SCALAR_START: 'A text cannot begin with this sign. Put it in double quotes.',
  BAD_DQ_ESCAPE: 'A backslash inside double quotes has a special meaning. Use single quotes around the text.',
};

export const findingsInEnglish: FindingSentences = {
  ...balanceInEnglish,
  ...libraryFindingsInEnglish,
  'file/unreadable': (f) => `This file cannot be opened (${f.reason}). Check that it exists and that you may read it.`,
  'file/empty': () => 'This file is empty. Begin with "bookfellow new" or copy a pack that works.',
  'file/too-big': (f) => `This file is ${String(f.kilobytes)} kB; a pack may have ${String(f.most)} kB. Is the text of the book in it? That belongs into private/passage.txt.`,
  'file/encoding': (f) => `This file is not saved as UTF-8 (found: ${f.found}). Save it again with the encoding UTF-8.`,
  'file/control-character': (f) => `There is an invisible character (${f.character}) here that can break pages. Delete it and type the word again.`,
  'file/link': (f) => `"${f.name}" is a link to another place on the disk. Put the file itself here; links are not followed.`,
  'file/not-a-file': (f) => `"${f.name}" is not an ordinary file. A pack is a text file called pack.md.`,
  'folder/name': (f) => `The folder name "${f.folder}" cannot become a web address. Rename it to "${f.suggestion}".`,
  'folder/no-pack': (f) => `The folder "${f.folder}" holds no pack.md. Add one, or move the folder away.`,
  'front-matter/missing': () => 'The front matter is missing: the file must begin with a line "---", then fields such as "title: …", then a line "---".',
  'front-matter/unclosed': () => 'The front matter has no end. Add a line "---" after the last field.',
  'front-matter/not-yaml': (f) => `The line of dashes must hold nothing but "---"; "${f.found}" stands there. Only plain YAML is read, and nothing is run.`,
  'yaml/syntax': (f) => yamlProblems[f.problem] ?? 'The front matter cannot be read from here on. Look for a missing quotation mark or a line that is not lined up.',
  'yaml/duplicate': (f) => `The field "${f.field}" stands here a second time. Keep one of the two.`,
  'yaml/alias': (f) => `"*${f.name}" repeats another part of the file by reference, which packs do not use. Write the text out.`,
  'yaml/tag': (f) => `"${f.tag}" is a type mark, which packs do not use. Put the text in double quotes, or delete the mark.`,
  'yaml/too-deep': (f) => `Lists and groups stand inside one another more than ${String(f.most)} deep here. A pack needs six levels at most.`,
  'yaml/too-many': (f) =>
    `The part between the lines of hyphens holds more than ${String(f.most)} fields and items. A full pack has some four hundred, so please look whether something was copied many times.`,
  'pack/unknown-field': (f) => `"${f.field}"${within(f.within)} is not a field of a pack. It is passed over; delete it or check its spelling.`,
  'pack/misspelt-field': (f) => `"${f.field}"${within(f.within)} is not a field of a pack.${meant(f.suggestion)}`,
  'pack/missing-field': (f) => `The field "${f.field}"${within(f.within)} is missing. Add a line "${f.field}: …".`,
  'pack/empty-field': (f) => `The field "${f.field}" is empty. Fill it in, or delete the line.`,
  'pack/wrong-type': (f) => `"${f.field}" must be ${kinds[f.expected]}, and ${found(f.found)} stands there.`,
  'pack/not-a-choice': (f) => `"${f.field}" cannot be "${f.found}".${meant(f.suggestion)} It may be: ${f.choices.join(', ')}.`,
  'pack/out-of-range': (f) => (f.least !== undefined ? `"${f.field}" must be ${String(f.least)} or more; it is ${f.found}.` : `"${f.field}" must be ${String(f.most)} or less; it is ${f.found}.`),
  'pack/too-long': (f) => `"${f.field}" is too long: ${String(f.length)}, and the most is ${String(f.most)}. Shorten it.`,
  'pack/bad-format': (f) => `"${f.field}" is "${f.found}", which is not in the form that is needed. Write it like this: ${f.example}`,
  'pack/language-of-file': (f) => `The name of this file says "${f.file}", but its language is "${f.language}". Make the two agree.`,
  'pack/unknown-language': (f) => `The library has no pages in "${f.language}". Add it to "languages" in library.yaml, or check the tag.`,
  'pack/two-of-a-language': (f) => `This pack and ${f.other} are both in "${f.language}". Keep one of the two.`,
  'pack/blank': (f) => (f.field === '' ? 'This part of the text is still a blank.' : `"${f.field}" is still a blank.`) + ' Write your own text in place of « … », or delete it.',
  'more/of-the-same': (f) => `… and ${String(f.more)} more of the same kind (${f.code}).`,
  'body/too-long': (f) =>
    `The text below the front matter has ${String(f.found)} characters; a pack may have ${String(f.most)}, and a usual one has 1000. What is this long may be a mistake in pasting. Shorten it.`,
  'body/too-deep': (f) => `Lists or quotes stand inside one another more than ${String(f.most)} deep. Use fewer levels.`,
  'body/comment': () => 'This remark (<!-- … -->) is left out of the pages.',
  'body/comment-unclosed': () => 'A remark begins here with "<!--" and never ends. Add "-->" where it ends.',
  'body/link-refused': (f) => `The link "${f.link}" is shown as text only. Links may begin with https:, http:, mailto: or tel:, or lead to a page of this site.`,
  'body/picture-not-listed': (f) => `The picture "${f.picture}" in the text is not in the list "pictures". Add it there with its alt text.`,
  ...altTextInEnglish,
  'picture/missing-file': (f) => `There is no picture "${f.picture}" in the folder pictures/.${meant(f.suggestion)}`,
  'picture/not-named': (f) => `The picture "${f.picture}" lies in the folder, but no field names it, so it is not published. Add it to "pictures", or delete it.`,
  'picture/format': (f) => `"${f.picture}" is not a PNG, JPEG or WebP picture. Save it as one of these.`,
  'picture/too-large': (f) => `"${f.picture}" is ${String(f.width)} × ${String(f.height)} pixels; neither side may be over ${String(f.most)}. Make it smaller.`,
  'picture/unreadable': (f) => `"${f.picture}" cannot be opened as a picture; it may be damaged. Save it again.`,
  'picture/unknown-stop': (f) => `The picture "${f.picture}" belongs to the stop "${f.stop}", which is not in this pack.`,
  'recording/none': () => 'This stop has a time in a recording, and the pack names no recording. Add "recording" with its file or its link, or delete the time.',
  'recording/nothing-to-play': () => 'The recording has neither a "file" in the folder recording/ nor a "link" to where it is kept. Add one of the two.',
  'recording/missing-file': (f) => `There is no file "${f.file}" in the folder recording/.${meant(f.suggestion)}`,
  'recording/format': (f) => `"${f.file}" is not a WebM or MP4 film. Save it as one of these.`,
  'recording/too-large': (f) =>
    `"${f.file}" is ${String(f.megabytes)} MB; the most is ${String(f.most)} MB. Make the picture smaller, or keep the film where the school keeps its films and give its "link".`,
  'recording/no-captions': (f) => `"${f.file}" has no captions, so a child who cannot hear it is left out. Add a WebVTT file and name it in "captions".`,
  'recording/captions-unreadable': (f) =>
    `The captions "${f.file}" cannot be read at line ${String(f.line)}: ${
      {
        'no header': 'the first line must be "WEBVTT"',
        times: 'times are written 00:01:05.000 --> 00:01:08.000, and the second is later',
        order: 'a caption begins before the one above it',
        empty: 'there is no text',
      }[f.why]
    }.`,
  'recording/captions-too-fast': (f) =>
    `${f.count === 1 ? 'One caption is' : `${String(f.count)} captions are`} hard to read in time, the first at line ${String(f.line)} of "${f.file}". Give each two seconds, and no more than ${String(f.most)} words a minute.`,
  'recording/out-of-order': (f) => `In the recording the stop "${f.stop}" comes at ${f.time}, before the stop that stands above it. Check the times.`,
  'stop/duplicate-id': (f) => `The id "${f.id}" is already used by the stop in line ${String(f.firstLine)}. Give each stop its own.`,
  'stop/unknown-reference': (f) => `"${f.field}" names the stop "${f.id}", which is not in this pack.${meant(f.suggestion)}`,
  'stop/after-itself': (f) => `The stop "${f.id}" would have to come after itself. Change one of the "after" lines.`,
  'stop/opening-past-the-end': (f) => `The stop "${f.id}" is at opening ${String(f.opening)}, but the book has ${String(f.openings)}.`,
  'reading/unknown': (f) => `Reading ${String(f.reading)} is not in the list "readings". Add it there with its purpose.`,
  'frames/missing': (f) => `Children write at the stop "${f.stop}", and it has no sentence frames. Two or three help those who do not know how to begin.`,
  'models/missing': (f) => `The stop "${f.stop}" has ${f.found === 0 ? 'no model answer' : 'only one model answer'}. Give two, one of them short, so that answers are judged alike.`,
  'best-of/how-many': (f) => `"best of" offers ${String(f.found)} ${f.found === 1 ? 'book' : 'books'}. A child can choose from ${String(f.least)} to ${String(f.most)}.`,
  ...lookFindingsInEnglish,
  'best-of/twice': (f) => `"best of" names "${f.book}" twice, and nobody could tell which of the two was chosen. Name each book once.`,
  'home/too-many-prompts': (f) => `There are ${String(f.found)} prompts for home. Choose the best ${String(f.most)}; a family has ten minutes.`,
  ...passageFindingsInEnglish,
  ...privacyFindingsInEnglish,
  'text/too-hard': (f) =>
    `The text for families reads like ${gradesFromTo(f.low, f.high)}, by estimate. Aim for grade 6: shorter sentences, everyday words. ${linesThatCost(f.lines)} Then ask a parent to read it.`,
  'text/low-ease': (f) =>
    `The text for families is "${f.band}" on the INFLESZ scale, by estimate. Aim for "bastante fácil": shorter sentences, everyday words. ${linesThatCost(f.lines)} Then ask a parent to read it.`,
  'paper/no-program': (f) =>
    `The sheets for printing (PDF) were not made: the program that makes them does not run on this kind of machine (${f.machine}). The site is whole without them, and its pages can be printed from the browser.`,
  'paper/not-made': (f) => `The sheet "${f.sheet}" could not be made as PDF (${f.reason}). The page can be printed from the browser. Please tell whoever looks after this program.`,
  'paper/letters': (f) => `The fonts of the printed sheets have no letter for: ${f.characters}. They are left out on paper; the pages show them.`,
  'plan/over-minutes': (f) => `The first reading with all its stops takes about ${String(f.planned)} minutes, and "minutes" says ${String(f.minutes)}. Mark fewer stops for it, or give it more time.`,
};
