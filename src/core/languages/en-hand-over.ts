/** English text of the page on how a pack made with the form reaches a library. */
export const handOverInEnglish = {
  title: 'How to hand it over',
  description: 'How the file of a companion gets from your device into a library, and what happens to it there.',
  lead: 'A companion is one file, and a folder of pictures if it has any. Nobody gets it until you hand it over.',
  steps: [
    ['Read the last chapter.', '“Before you share” says what is still needed. A library publishes a companion as soon as nothing there is marked as needed.'],
    ['Save the file.', 'With pictures, save the zip. Without, pack.md is enough. Your browser puts it where it puts all downloads.'],
    ['Send it to whoever runs the library.', 'By mail or in a shared folder, as you would send any file. Their address is at the foot of this page.'],
    ['They put it into the library.', 'They unpack the zip into the folder “packs”, or make a folder there and put pack.md into it. Then they look at it and publish.'],
  ] as readonly (readonly [string, string])[],
  beforeHeading: 'Before you send it',
  before: [
    'Is there a child’s name in it, a class list, a room, a telephone number? Take it out. The check looks for these, but it does not know the names of your class.',
    'Are the pictures yours, or does a licence allow them? A photo of a page of the book is a copy of the book.',
    'Does it quote more of the book than the few words after which you stop? Say it in your own words.',
    'Your school may want to see it first. Its rules come before anything written here.',
  ] as readonly string[],
  laterHeading: 'Changing it later',
  later: 'Open the same file here again, change it, and send it once more. Give it a new version and the day you looked it over, so that everybody knows which one is the latest.',
  runnerHeading: 'For the one who runs the library',
  runner:
    'The file goes to packs/<folder>/pack.md in the content folder, pictures to packs/<folder>/pictures/. “bookfellow check” says the same as the form did. With “npm start” the form on your own machine can save straight into that folder; a copy of what was there is kept.',
};

export type HandOverPhrases = typeof handOverInEnglish;
