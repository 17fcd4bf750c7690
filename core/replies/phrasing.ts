import type { Verdict } from '../advice/verdict.ts';
import type { Said } from './said.ts';

/** How the answer was asked for: as it is, or with the reason ("why is that"). */
export type Manner = 'short' | 'reason';

/**
 * The port of the phrasing model: a verdict in, a sentence out, or nothing when it has none in time. What it
 * returns is spoken only when the guard lets it through; the template's sentence is spoken otherwise. A phraser
 * that was given the spoken forms of what it filled in gives both forms, any other the written one alone.
 */
export interface Phraser {
  phrase(verdict: Verdict, manner: Manner): Promise<Said | string | null>;
}
