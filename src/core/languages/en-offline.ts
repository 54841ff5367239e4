/** What pages say about the copy of a book on the device, in English. */
export const offlineInEnglish = {
  kept: (size: string) => `This book is saved on this device (${size} MB), so its pages open without a network.`,
  remove: 'Take the copy away',
  removed: 'No copy of this book is kept on this device.',
  keep: 'Keep one, to use without a network',
  newer: 'There is a newer version of this book, saved and ready. What you wrote stays.',
  show: 'Use it now',
  noRoom: 'There is no room left on this device for a copy of this book. It works as long as there is a network.',
  /** The folder to take along. */
  folder: {
    heading: 'Take it along',
    inside: 'One file holds this page, the booklet, the lesson, their printed sheets and the pictures.',
    insideWithoutSheets: 'One file holds this page, the booklet, the lesson and the pictures.',
    open: 'Unpack it, and open “index.html” with a double click: it works without a network, from a stick or on a computer in the room.',
    noFilm: 'The recording is not in it.',
    answers: 'What a child answers there stays in the browser that opened it. Where a browser keeps nothing for pages from a disk, the booklet says so and offers paper and a file.',
    get: (size: string) => `Fetch the folder (zip, ${size} MB)`,
  },
  title: 'This page is not saved on this device',
  text: 'There is no network just now. Books that you have opened on this device are saved and work. This page will work again when there is a network.',
  back: 'Back to the library',
  description: 'There is no network, and this page is not saved on this device. Books that were opened before still work.',
};
