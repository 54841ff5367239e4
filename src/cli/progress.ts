/** Tells how far long work has come: a bar on a terminal, a plain line now and then elsewhere. */
export function progressOn(stream: NodeJS.WriteStream, what: string): (done: number, all: number) => void {
  let lastTold = 0;
  return (done, all) => {
    if (stream.isTTY) {
      const width = 24;
      const filled = Math.round((done / all) * width);
      stream.write(`\r${what} ${'█'.repeat(filled)}${'·'.repeat(width - filled)} ${String(done)} of ${String(all)}${done === all ? '\n' : ''}`);
    } else if (all >= 200 && done - lastTold >= all / 5) {
      lastTold = done;
      stream.write(`${what} ${String(done)} of ${String(all)}\n`);
    }
  };
}
