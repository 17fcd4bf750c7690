import type { Context } from '../context.ts';
import type { Command, Utterance } from '../utterance.ts';
import { both, join, nothingSaid } from './told.ts';
import type { Reads } from './reads.ts';

const BREAK = String.raw`[\s,;:.!—–-]`;
const SOFTLY = '(?:no|nope|nah|wait|actually|sorry|oops|ok|oh|hang on|hold on)';
/** What lets anything be as if it had not been said. */
const UNSAYS = '(?:never ?mind(?: (?:that|it))?|forget (?:it|that)|forget i said (?:that|it))';
/** And what keeps an order from being carried out: a reading is not taken back by waiting. */
const WAITS =
  "(?:not yet|(?:do not|don't)(?: do (?:it|that)| yet)?|(?:no|nope|wait|hang on|hold on|cancel that|scratch that)(?: (?:a|one|just a) (?:second|sec|minute|moment|bit))?|i am not (?:done|ready)(?: yet)?|i'm not (?:done|ready)(?: yet)?)";

/** "I replaced the relay, no I didn't" */
const DENIES =
  "(?:no|nope|wait|actually|sorry)[^a-z]+(?:(?:i|we|they) (?:did(?:n't| not)|have(?:n't| not)|do(?:n't| not)|should(?:n't| not))|don't|do not)";
const DENIED = new RegExp(`${BREAK}+${DENIES}${BREAK}*$`, 'i');
const UNSAID = new RegExp(`${BREAK}+(?:${SOFTLY}${BREAK}+)*${UNSAYS}(?:${BREAK}+|$)`, 'i');
const WAITED = new RegExp(`${BREAK}+(?:${SOFTLY}${BREAK}+)*${WAITS}${BREAK}*$`, 'i');

/** "No wait, I didn't, I left that one": of what was told before this sentence. */
const DENIES_BEFORE = new RegExp(
  `^${BREAK}*(?:(?:well|uh|um|oh|yeah|so)${BREAK}+)*(?:(?:no|nope|nah|wait|actually|sorry|oops|hang on|hold on)${BREAK}+)+(?:i|we) (?:did(?:n't| not)|have(?:n't| not))(?: (?:do|get to|touch|change|replace) (?:that one|it|that|them|those))?(?:${BREAK}+|$)`,
  'i',
);
const ONLY_SOFTLY = new RegExp(`^(?:${BREAK}*(?:well|uh|um|oh|${SOFTLY}))*${BREAK}*$`, 'i');

/**
 * "That's my before, no, hang on", "they should replace the gasket, never mind": what was ordered or told is let be in the
 * same breath, and what is told behind that is told.
 */
export function retracted(said: Utterance, context: Context, reads: Reads): Utterance | null {
  return (
    deniedBefore(said, context, reads) ??
    unsaid(said, context, reads) ??
    waited(said, context, reads)
  );
}

/** Work that was told last, and nothing else: a reading is not denied by not having done it. */
function deniedBefore(said: Utterance, context: Context, reads: Reads): Utterance | null {
  const found = DENIES_BEFORE.exec(said.text);
  const last = context.told.slice(0, MOST_TOLD_WITH).find((each) => each !== null);
  if (found === null || context.asksYes || last?.told.of !== 'work') return null;
  const rest = said.text.slice(found[0].length);
  const behind = rest === '' ? nothingSaid('') : reads(rest, context);
  const commands = both<Command>([{ do: 'undo', earlier: true }], behind.commands);
  return { ...behind, commands, text: said.text };
}
/** The work, and the words that are kept with it. */
const MOST_TOLD_WITH = 2;

function unsaid(said: Utterance, context: Context, reads: Reads): Utterance | null {
  const { text } = said;
  const found = UNSAID.exec(text) ?? DENIED.exec(text);
  if (found === null || ONLY_SOFTLY.test(text.slice(0, found.index))) return null;
  const before = text.slice(0, found.index);
  const kept = withoutLast(before, reads(before, context), (words) => reads(words, context));
  const behind = reads(text.slice(found.index + found[0].length), context);
  const goesOn = behind.text !== '' && countTold(behind) === 0;
  if (kept === null || goesOn) return null;
  const all = { ...kept, text };
  join(all, { ...behind, commands: both<Command>([{ do: 'leaveOut' }], behind.commands) });
  return all;
}

/** Of several things only the last one, which a pause parts from the others; `null` where nothing can be let be. */
function withoutLast(
  words: string,
  said: Utterance,
  reads: (words: string) => Utterance,
): Utterance | null {
  // "That was the other unit, forget it" takes back what was told before.
  if (said.commands.some((command) => command.do === 'undo')) return null;
  const count = countTold(said);
  if (count < 2) return count === 1 && said.memos.length === 0 ? nothingSaid(words) : null;
  const pause = Math.max(...[',', ';', '.'].map((mark) => words.lastIndexOf(mark)));
  if (pause < 0) return null;
  const others = reads(words.slice(0, pause));
  return countTold(others) < count ? others : null;
}

const countTold = ({ text: _text, remarks: _remarks, ...said }: Utterance): number =>
  Object.values(said).reduce((sum, list) => sum + list.length, 0);

const ORDERS: ReadonlySet<Command['do']> = new Set<Command['do']>([
  ...(['markBefore', 'markAfter', 'finish', 'finishAnyway', 'newVisit'] as const),
]);

/** The orders at its end; what else the sentence tells stays told. */
function waited(said: Utterance, context: Context, reads: Reads): Utterance | null {
  const { text } = said;
  const found = WAITED.exec(text);
  if (found === null || found.index === 0) return null;
  const before = reads(text.slice(0, found.index), context);
  const others = before.commands.filter((command) => !ORDERS.has(command.do));
  if (others.length === before.commands.length) return null;
  return { ...before, commands: both(others, [{ do: 'leaveOut' }]), text };
}
