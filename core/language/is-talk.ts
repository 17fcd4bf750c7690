import type { Context } from './context.ts';
import { parse } from './parse.ts';
import { FILLERS } from './talk.ts';
import { tokenise } from './tokenise.ts';

/**
 * Whether a sentence that meant nothing was not for us: most of its words are declared talk, or carry nothing. Of
 * "crates stood against every housing until it holds" only the end is talk: that was not understood, and is asked for again.
 */
export function isTalk(text: string, context: Context): boolean {
  const { items, unclaimed } = parse(text, context);
  const words = tokenise(text).map((token, at) => ({ token, at }));
  const passed = words.filter(
    ({ token, at }) =>
      FILLERS.has(token.text) || items.some(({ start, end }) => start <= at && at < end),
  );
  return unclaimed.length === 0 && passed.length > words.length / 2;
}
