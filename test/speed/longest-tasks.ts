/** How long a page kept its one thread busy at a stretch, by the clock and in time of the processor, from the browser's own trace. */
import type { Browser } from 'playwright-core';

interface Event {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args: { readonly beginData?: { readonly url?: string } };
}

/** Begins to watch the page at an address; `stop` gives milliseconds of its longest task. */
export async function longestTasks(browser: Browser, address: string): Promise<{ stop(): Promise<{ readonly task: number; readonly work: number }> }> {
  const session = await browser.newBrowserCDPSession();
  const events: Event[] = [];
  session.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as Event[])));
  await session.send('Tracing.start', { transferMode: 'ReportEvents', traceConfig: { includedCategories: ['toplevel', 'devtools.timeline'] } });
  return {
    async stop() {
      const done = new Promise<void>((resolve) => session.once('Tracing.tracingComplete', () => resolve()));
      await session.send('Tracing.end');
      await done;
      await session.detach();
      // The thread that read the page is the page's own.
      const own = events.find(({ name, args }) => name === 'ParseHTML' && args.beginData?.url === address);
      if (!own) throw new Error(`The trace holds no page of ${address}.`);
      const tasks = events.filter(({ name, pid, tid }) => /RunTask$/.test(name) && pid === own.pid && tid === own.tid);
      return { task: Math.max(...tasks.map(({ dur = 0 }) => dur)) / 1000, work: Math.max(...tasks.map(({ tdur = 0 }) => tdur)) / 1000 };
    },
  };
}
