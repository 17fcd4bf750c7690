import type { Context } from '../context.ts';
import type { Utterance } from '../utterance.ts';

/** What reads a sentence said otherwise. */
export type Reads = (text: string, context: Context) => Utterance;

/** Whether more is told by what was said otherwise, and no more numbers are left over. */
export const isTellingMore = (again: Utterance, said: Utterance): boolean =>
  toldIn(again) > toldIn(said) && again.unclaimed.length <= said.unclaimed.length;

const toldIn = ({ findings, work, readings, recommendations }: Utterance): number =>
  findings.length + work.length + readings.length + recommendations.length;
