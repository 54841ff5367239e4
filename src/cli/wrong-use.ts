/** Thrown when a command is called with words that it does not know; the message says what would be right. */
export class WrongUse extends Error {
  override readonly name = 'WrongUse';
}
