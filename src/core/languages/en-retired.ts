/** English phrases of the page that is left of a companion that was taken out of the library. */
export const retiredInEnglish = {
  kind: 'No longer in the library',
  title: (title: string) => `${title}, no longer in the library`,
  description: (title: string) => `The companion to “${title}” was taken out of this library. Here is when, why, and where to go now.`,
  since: (date: string) => `This companion was taken out on ${date}.`,
  why: 'Why',
  ask: (owner: string) => `It came from ${owner}. To ask about it:`,
  where: 'Where to go now',
  instead: 'takes its place',
  elsewhere: 'What takes its place is kept at another address',
  stillIn: (language: string) => `is still here: ${language}`,
  find: 'Find another book',
  answers: 'What a child answered here',
  answersThere: 'Answers that were kept on a device are still there.',
  toAnswers: 'See and save them',
  answersOnDevice: 'Answers were kept by the browser, on the device they were given on. Open this page there, with scripts allowed, and it offers them as a file.',
  answersHere: 'These answers are on this device and nowhere else. Save each as a file that any browser opens, and keep the file.',
  noAnswers: 'There are no answers to this book on this device.',
  /** The title of its entry among the news. */
  news: (title: string) => `Taken out: ${title}`,
};

export type RetiredPhrases = typeof retiredInEnglish;
