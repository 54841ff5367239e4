#!/usr/bin/env node
// The command itself: plain JavaScript, because Node 20 does not read TypeScript. It only starts what does.
import { register } from 'tsx/esm/api';

register();
const { main } = await import('./main.ts');
process.exitCode = await main(process.argv.slice(2));
