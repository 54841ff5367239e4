import type { MakerData } from '../../outputs/maker-data.ts';
import type { Look, TextToLook } from '../../outputs/maker-look.ts';
import type { Work } from './work.ts';
import { today } from './words.ts';

/** Milliseconds of quiet before the text is checked anew. */
const quiet = 350;

interface Asks {
  /** The text as it is now. */
  toLook(): TextToLook;
  /** True while somebody types: nothing new is said then, and the processor is theirs. */
  isBusy(): boolean;
  /** Takes what was found. */
  found(look: Look): void;
}

/** Has the text checked after each pause, and hands on only what was found about the latest one. */
export class Looking {
  #timer: ReturnType<typeof setTimeout> | undefined;
  #number = 0;

  constructor(
    readonly worker: Pick<Work, 'look'>,
    readonly data: MakerData,
    readonly asks: Asks,
  ) {}

  soon(): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => (this.asks.isBusy() ? this.soon() : void this.#now()), quiet);
  }

  async #now(): Promise<void> {
    const { library, language } = this.data;
    const mine = ++this.#number;
    const look = await this.worker.look(this.asks.toLook(), library, language, today()).catch(() => undefined);
    // A later text may have been asked about meanwhile.
    if (mine === this.#number && look) this.asks.found(look);
  }
}
