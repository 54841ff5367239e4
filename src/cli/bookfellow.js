#!/usr/bin/env node
// The command itself: plain JavaScript, because Node 20 does not read TypeScript. It only starts what does.
import { fileURLToPath } from 'node:url';
import { register } from 'tsx/esm/api';

// Else the settings of whatever folder the command is run in would be taken.
register({ tsconfig: fileURLToPath(new URL('../../tsconfig.json', import.meta.url)) });
const { main } = await import('./main.ts');
process.exitCode = await main(process.argv.slice(2));
