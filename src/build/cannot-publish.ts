/** Thrown for what a person can mend before a site is written: the words are for them. */
export class CannotPublish extends Error {
  override readonly name = 'CannotPublish';
}
