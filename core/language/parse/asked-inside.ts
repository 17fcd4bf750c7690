import { changed, type Token } from '../../grammar/tokens.ts';
import { WordSet } from '../words/word-set.ts';

/** What stands before its subject where a question is asked outright, and behind it inside "tell me what the head is". */
const VERBS = new WordSet('is are am was were should would will can could did does');
const ASKS_WHETHER = new WordSet('if whether');
const ASKS_WHAT = new WordSet('what where how why which when');
/** "Tell me when it is at forty" wants a call, "when it will be at forty" a time. */
const OF_A_TIME = new WordSet('will did was were should');
/** "How far off the head is": what stays behind its "how". */
const HOW = new WordSet(
  'far off high low bad good much close cold warm hot long full near many over under',
);
const SUBJECTS = new WordSet('i we you it they that this');
/** What a subject begins with; without one of these "what pressure is twenty degrees" asks outright already. */
const BEGINS_SUBJECT = new WordSet('the my our your this that these those it they i we you');
/** Behind "what head is": nothing, or what tells no more. */
const ENDS_SOON = new WordSet('at be now again here supposed right on');
/** Further on stands the verb of another clause. */
const LONGEST_SUBJECT = 7;

/** "If the head is okay" and "what the head is", asked outright: "is the head okay"; `null` where it cannot be. */
export function askedOutright(
  tokens: readonly Token[],
  from: number,
  isOpinion: boolean,
): readonly Token[] | null {
  const first = tokens[from];
  if (first === undefined) return null;
  if (ASKS_WHETHER.has(first)) return withVerbFirst(tokens, from + 1, []);
  if (isOpinion) return withVerbFirst(tokens, from, []);
  if (!ASKS_WHAT.has(first)) return null;
  let subject = from + 1;
  while (first.text === 'how' && HOW.has(tokens[subject] ?? first)) subject += 1;
  return withVerbFirst(tokens, subject, tokens.slice(from, subject));
}

/** The verb put before its subject, behind what asks; `null` where no verb follows, or where it stands first as it is. */
function withVerbFirst(
  tokens: readonly Token[],
  subject: number,
  asking: readonly Token[],
): readonly Token[] | null {
  for (let at = subject; at < tokens.length && at < subject + LONGEST_SUBJECT; at += 1) {
    const token = tokens[at];
    if (token === undefined || (token.pause && at > subject)) return null;
    // A number is a value of it, and no subject.
    if (token.value !== null) return null;
    if (!VERBS.has(token)) continue;
    if (at === subject) return null;
    const before = tokens[at - 1];
    if (asking[0]?.text === 'when' && !OF_A_TIME.has(token)) return null;
    if (asking.length > 0 && !isInside(tokens, subject, at)) return null;
    // "What superheat i should have"
    const start = before !== undefined && SUBJECTS.has(before) ? at - 1 : subject;
    return together([
      ...asking,
      ...tokens.slice(subject, start),
      token,
      ...tokens.slice(start, at),
      ...tokens.slice(at + 1),
    ]);
  }
  return null;
}

/** Whether what stands between what asks and its verb is a subject: "what the head is", "what head is at". */
function isInside(tokens: readonly Token[], subject: number, verb: number): boolean {
  const [first, before, next] = [tokens[subject], tokens[verb - 1], tokens[verb + 1]];
  if (first === undefined || before === undefined || first.text === 'come') return false;
  if (next !== undefined && SUBJECTS.has(next)) return false;
  if (BEGINS_SUBJECT.has(first) || SUBJECTS.has(before)) return true;
  if (tokens[subject - 1]?.text === 'when') return true;
  return next === undefined || ENDS_SOON.has(next);
}

const together = ([first, ...more]: readonly Token[]): readonly Token[] =>
  first === undefined ? [] : [changed(first, { pause: false }), ...more];
