/** XML held against a schema by libxml2, which comes as a package and needs nothing installed. */
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { RelaxNGValidator, XmlDocument, XmlLibError, XsdValidator } from 'libxml2-wasm';
import { xmlRegisterFsInputProviders } from 'libxml2-wasm/lib/nodejs.mjs';

/** What is wrong with a text: nothing, or a line for each fault. `schema` is a file in `schemas/`, RELAX NG or XSD by its ending. */
export async function xmlFaults(text: string, schema: 'atom.rng' | 'sitemap.xsd'): Promise<readonly string[]> {
  // One schema reads another that lies beside it.
  xmlRegisterFsInputProviders();
  const url = fileURLToPath(new URL(`./schemas/${schema}`, import.meta.url));
  using rules = XmlDocument.fromBuffer(await readFile(url), { url });
  using validator = schema.endsWith('.rng') ? RelaxNGValidator.fromDoc(rules) : XsdValidator.fromDoc(rules);
  try {
    using document = XmlDocument.fromString(text);
    validator.validate(document);
    return [];
  } catch (error) {
    if (!(error instanceof XmlLibError)) throw error;
    return error.details.map(({ line, message }) => `${String(line)}: ${message.trim()}`);
  }
}
