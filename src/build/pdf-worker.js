import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';

/**
 * The only door to Typst: sets sheets, one after another, on a thread of its own (`pdf.ts` is its only caller).
 * Plain JavaScript, so that a thread can begin with it under any runner.
 *
 * A template may read nothing outside `layouts/print/`; pictures are laid there in memory, for one sheet at a time.
 *
 * @typedef {{ job: number, template: string, data: string, pictures: readonly { name: string, from: string }[] }} Job
 * @typedef {{ job: number, pages: number, pdf: Uint8Array } | { job: number, fault: string }} Done
 */

/** @type {{ workspace: string, fonts: readonly string[] }} */
const { workspace, fonts } = workerData;
const compiler = NodeCompiler.create({ workspace, fontArgs: [{ fontBlobs: fonts.map((font) => readFileSync(font)) }] });

/**
 * Compiles one sheet. A warning is a fault: a font that is not there would only be warned about, and leave pages without text.
 *
 * @param {Job} job
 * @returns {Done}
 */
function setSheet({ job, template, data, pictures }) {
  try {
    for (const { name, from } of pictures) compiler.mapShadow(join(workspace, name), readFileSync(from));
    const compiled = compiler.compile({ mainFilePath: join(workspace, template), inputs: { data } });
    const trouble = compiled.takeError() ?? compiled.takeWarnings();
    if (trouble || !compiled.result) return { job, fault: trouble ? inWords(trouble) : 'nothing was set' };
    // UA-1: the compiler itself refuses a picture without a description, a document without a title, a heading out of order.
    const pdf = compiler.pdf(compiled.result, { pdfStandard: 'ua-1', creationTimestamp: 0 });
    return { job, pages: compiled.result.numOfPages, pdf };
  } catch (error) {
    return { job, fault: error instanceof Error ? error.message : inWords(/** @type {import('@myriaddreamin/typst-ts-node-compiler').NodeError} */ (error)) };
  } finally {
    compiler.resetShadow();
    compiler.evictCache(10);
  }
}

/** @param {import('@myriaddreamin/typst-ts-node-compiler').NodeError} trouble */
function inWords(trouble) {
  try {
    return trouble.shortDiagnostics.map((/** @type {{ message?: string }} */ each) => each.message ?? '').join('; ');
  } catch {
    return String(trouble);
  }
}

parentPort?.on('message', (/** @type {Job} */ job) => {
  parentPort?.postMessage(setSheet(job));
});
parentPort?.postMessage('ready');
