import type { Verdict } from '../advice/verdict.ts';

/**
 * The port of the phrasing model: a verdict in, one sentence out, or nothing when it has none in time. What
 * it returns is spoken only when the guard lets it through; the template's sentence is spoken otherwise.
 */
export interface Phraser {
  phrase(verdict: Verdict): Promise<string | null>;
}
