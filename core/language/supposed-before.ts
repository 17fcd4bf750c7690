import type { Token } from '../grammar/tokens.ts';
import { WordSet } from './word-set.ts';

const BE = new WordSet('be been');
const MAY = new WordSet('may might could would should');

/** Whether what begins there is only supposed: "there may have been a crack in the coil", "could be a bad relay". */
export function isSupposedBefore(tokens: readonly Token[], start: number): boolean {
  const be = tokens[start - 1];
  if (be === undefined || !BE.has(be) || tokens[start]?.pause === true) return false;
  return MAY.hasAny(tokens, Math.max(0, start - 4), start - 1);
}

/** "The defrost clock was off by six hours" is not off. */
export function isOffBy(tokens: readonly Token[], end: number): boolean {
  const by = tokens[end];
  return by?.text === 'by' && !by.pause && tokens[end - 1]?.text === 'off';
}
