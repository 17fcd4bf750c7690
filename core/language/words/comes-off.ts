import { wordBehind } from './clause-start.ts';
import { holdsNumber } from './own-reading.ts';
import type { Frame } from '../rule.ts';

/** "Foam and a hose, came off like mud", "at the coil, coming off it one eighteen": what came off was no part. */
export const cameOffElse = (frame: Frame): boolean => {
  const words = frame.wordsOf(frame.span);
  if (!/\b(?:came|coming) off$/i.test(words)) return false;
  const { to } = frame.span;
  const isAir = holdsNumber(frame.wordsOf({ from: to, to: to + 2 }));
  return /[,;] came off$/i.test(words) || isAir || COMES_OFF.test(wordBehind(frame));
};
const COMES_OFF = /^(?:it|like|nice|nicely|easy|clean|that)$/;
