import type { Context } from '../context.ts';
import type { Utterance } from '../utterance.ts';

/** What reads a sentence said otherwise. */
export type Reads = (text: string, context: Context) => Utterance;
