import type { PhraseRecord } from '../record/phrase-record.ts';
import { gumbel } from './dice.ts';
import { type Lexicon, wordsFor } from './lexicon.ts';
import { type Asked, SPECIAL } from './prompt-tokens.ts';
import { isMark, roleOf } from './sentence-tokens.ts';

/** Leaves only what may come next possible: `written` are the sentence's tokens so far, `scores` are changed. */
export type Constraint = (written: readonly number[], scores: Float32Array) => void;

export interface Draw {
  /** 0 takes the likeliest; 1 draws as the model was trained. */
  readonly temperature: number;
  readonly roll: () => number;
}

/** In tokens, marks among them; two spoken sentences are seldom 30. */
export const LONGEST = 44;
const MOST_SENTENCES = 4;
/** To a sentence that begins as the last one did: in odds about one to twenty. */
const BEGINS_ALIKE = 3;

/**
 * What the verdict lets a sentence hold: words of lines that hold of it, each slot at most once, the end not
 * before every required slot is said and only after a full stop; and no step from word to word that no sentence
 * takes, since "should be and reads" would pass a guard that knows no grammar. The guard judges the rest.
 */
export function createConstraint(asked: Asked, lexicon: Lexicon, draw: Draw): Constraint {
  const allowed = allowedTokens(asked, lexicon);
  const { record, lastOpening } = asked;
  const say = lexicon.tokens.indexOf(SPECIAL.say);
  const end = lexicon.tokens.indexOf(SPECIAL.end);
  return (written, scores) => {
    const before = scores.slice();
    scores.fill(-Infinity);
    const told = written.map((id) => lexicon.tokens[id] ?? '');
    const next = new Set(lexicon.follows[written.at(-1) ?? say]);
    const open = allowed.filter(({ id, token }) => next.has(id) && mayFollow(token, told, record));
    for (const { id, token } of open) {
      const alike = told.length === 0 && token === lastOpening ? BEGINS_ALIKE : 0;
      scores[id] = (before[id] ?? 0) - alike + draw.temperature * gumbel(draw.roll);
    }
    // A sentence that cannot go on ends there, and is no sentence: the next try has the time.
    if (open.length === 0) scores[end] = 0;
  };
}

interface Allowed {
  readonly id: number;
  readonly token: string;
}

function allowedTokens({ record, register }: Asked, lexicon: Lexicon): readonly Allowed[] {
  const words = new Set(wordsFor(lexicon, record, register));
  return lexicon.tokens.flatMap((token, id) => {
    const role = roleOf(token);
    const isOwn = role === null ? words.has(id) || token === SPECIAL.end : role in record.slots;
    return isOwn ? [{ id, token }] : [];
  });
}

function mayFollow(token: string, told: readonly string[], record: PhraseRecord): boolean {
  const last = told.at(-1) ?? '##.';
  if (token === SPECIAL.end) return last === '##.' && told.length > 0 && isComplete(told, record);
  if (mustEnd(told, record)) return false;
  if (repeats(token, told)) return false;
  if (isMark(token)) return !isMark(last);
  return token !== last && (roleOf(token) === null || !told.includes(token));
}

/** The same three words twice, "reading on the reading on the reading", where a model has lost its way. */
function repeats(token: string, told: readonly string[]): boolean {
  const [first, second] = told.slice(-2);
  return told.some(
    (one, at) => at > 1 && one === token && told[at - 1] === second && told[at - 2] === first,
  );
}

/** Nobody would listen on. */
function mustEnd(told: readonly string[], record: PhraseRecord): boolean {
  const sentences = told.filter((token) => token === '##.').length;
  return sentences >= MOST_SENTENCES && told.at(-1) === '##.' && isComplete(told, record);
}

function isComplete(told: readonly string[], { slots }: PhraseRecord): boolean {
  return Object.entries(slots).every(
    ([role, { required }]) => !required || told.includes(`{${role}}`),
  );
}
