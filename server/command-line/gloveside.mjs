#!/usr/bin/env node
// TypeScript runs as it is written: tsx compiles each file as it is loaded, so a clone needs no build step here.
import { register } from 'tsx/esm/api';

register();
await import('./gloveside.ts');
