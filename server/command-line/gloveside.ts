import process from 'node:process';
import { createNodeTerminal } from './node-terminal.ts';
import { runGloveside } from './run-gloveside.ts';

// The status is set and the process left to end by itself: process.exit() would cut off what a slow reader
// of the pipe has not taken yet.
process.exitCode = await runGloveside(process.argv.slice(2), createNodeTerminal());
