import { holdsReading } from '../words/own-reading.ts';

/** "Is that good. High side reads ninety three": talk ends where its sentence does. */
export function readsBehindStop(words: string): boolean {
  const stop = words.search(/[.?!]\s/);
  return stop !== -1 && holdsReading(words.slice(stop + 1));
}
