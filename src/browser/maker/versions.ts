/** Steps that one can go back. */
export const mostEarlier = 10;

/** The texts of before, the latest last: one a step, where typing on in one field is one step. */
export class Versions {
  #texts: readonly string[];
  /** The field of the last change: more typing in it is the same step. */
  #lastField = '';

  constructor(texts: readonly string[] = []) {
    this.#texts = texts;
  }

  get texts(): readonly string[] {
    return this.#texts;
  }

  /** Keeps the text that a change of `field` leaves behind; a change of no single field, '', is a step of its own. */
  leave(text: string, field: string): void {
    if (field !== this.#lastField || field === '') this.#texts = [...this.#texts, text].slice(-mostEarlier);
    this.#lastField = field;
  }

  /** The text of one step before, which is no step any more; undefined at the first. */
  back(): string | undefined {
    const before = this.#texts.at(-1);
    this.#texts = this.#texts.slice(0, -1);
    if (before !== undefined) this.#lastField = '';
    return before;
  }
}
