import type { Passage } from '../paragraphs/passage.ts';
import { claimsOf, deniesMore } from './passage-claims.ts';
import { framesOf, type Frames } from './passage-frames.ts';
import { unfilled } from './passage-tokens.ts';
import { wordsOf } from './passage-words.ts';

export type GuardedPassage =
  | { readonly kind: 'passed' }
  | { readonly kind: 'rejected'; readonly why: PassageRejection; readonly at: string };

export type PassageRejection =
  | 'missingSlot'
  | 'strangeCharacter'
  | 'unknownWord'
  | 'outOfPlace'
  | 'unsaid'
  | 'negation'
  | 'emptySentence'
  | 'tooLong';

const PASSED: GuardedPassage = { kind: 'passed' };
const rejected = (why: PassageRejection, at: string): GuardedPassage => ({
  kind: 'rejected',
  why,
  at,
});

/**
 * Whether the words tell what the passage tells and nothing else: every slot once and in its own part, how sure and how
 * strong it is, which way it went, nothing denied, no word beyond those that carry no fact. What is in doubt is
 * rejected: the template's words are always at hand.
 */
export function guardPassage(text: string, passage: Passage): GuardedPassage {
  const found = unfilled(text, passage.slots);
  if (found.kind === 'faulty') return rejected(found.why, found.at);
  const judged = found.readings.map((reading) => judge(reading, passage));
  return judged.find(({ kind }) => kind === 'passed') ?? judged[0] ?? rejected('missingSlot', text);
}

/** Words between the slots; more than that talks round the facts. */
const MOST_WORDS = 12;
const MOST_SPARE = 8;

function judge(reading: string, passage: Passage): GuardedPassage {
  const pieces = reading.split(' ');
  const words = pieces.filter((piece) => /^[a-z]/.test(piece));
  const slots = pieces.filter((piece) => piece.startsWith('{'));
  if (words.length > MOST_SPARE + MOST_WORDS * Math.max(1, slots.length)) {
    return rejected('tooLong', reading);
  }
  return (
    wordFault(words, passage) ??
    markFault(reading) ??
    frameFault(reading, slots, passage) ??
    claimFault(reading, passage) ??
    PASSED
  );
}

function wordFault(words: readonly string[], passage: Passage): GuardedPassage | null {
  const own = wordsOf(passage);
  const unknown = words.find((word) => !own.some((set) => set.has(word)));
  return unknown === undefined ? null : rejected('unknownWord', unknown);
}

/** Small words that a sentence may need twice; any other that comes twice is a sentence that lost its way. */
const AGAIN = new Set(
  'a and as at came charge for from if in is it of on our so that the this to was we what when with you'.split(
    ' ',
  ),
);

/** What no sentence of ours is built like, and what would let it say more than its slots do. */
const ODD = [
  // Two marks, a word doubled, an end without its full stop.
  /(?:^|[,.:;] )[,.:;]/,
  /(?:^| )([a-z]+) \1(?= )/,
  /[^.]$/,
  // "Because we left it, it must stay off": a reason stands in a slot or nowhere.
  /(?:^| )because (?!\{|of |, if )/,
  // "When we looked, and we found": nothing was said yet that "and" could go on from.
  /(?:^|\. )[^{.]* , and /,
  /(?:^| )were (?!called |there )/,
  /(?:looked|got there|unit over|unit itself) , (?!\{found\})/,
  /(?:^| )(?:a|about|and|as|at|because|by|from|if|is|of|our|should|the|was|we|with) \./,
  / inside .* in the box | in the box .* inside /,
  // "It came from dirt on the coil": the note starts so, with nothing said yet that came from anything.
  /^it (?:most likely )?came from /,
];

function markFault(reading: string): GuardedPassage | null {
  const odd = ODD.map((pattern) => pattern.exec(reading)).find((found) => found !== null);
  if (odd) return rejected('strangeCharacter', odd[0]);
  const words = reading.split(' ').filter((word) => /^[a-z]/.test(word) && !AGAIN.has(word));
  const twice = words.find((word, at) => words.indexOf(word) !== at);
  return twice === undefined ? null : rejected('unknownWord', twice);
}

function frameFault(
  reading: string,
  slots: readonly string[],
  passage: Passage,
): GuardedPassage | null {
  const frames = framesOf(passage);
  const stray = slots.find((slot) => !stands(slot.slice(1, -1), reading, { frames, passage }));
  return stray === undefined ? null : rejected('outOfPlace', stray);
}

interface Among {
  readonly frames: Frames;
  readonly passage: Passage;
}

/** Where another role stands this one may not; a refrigerant's name behind its amount is taken for none. */
function stands(role: string, reading: string, { frames, passage }: Among): boolean {
  const byRole = new Map<string, readonly string[]>(Object.entries(frames));
  const own = byRole.get(role) ?? [];
  const others = Object.keys(passage.slots)
    .filter((other) => other !== role && role !== 'kind')
    .flatMap((other) => byRole.get(other) ?? [])
    .filter((frame) => !own.includes(frame));
  const isIn = (frame: string): boolean => says(reading, frame.replace('_', `{${role}}`));
  return own.some(isIn) && !others.some(isIn);
}

/** Whether a wording stands in the sentences: `^` is the start of one, `|` the mark that must follow. */
function says(reading: string, wording: string): boolean {
  const starts = wording.startsWith('^ ');
  const ends = wording.endsWith(' |');
  const words = wording.replace(/^\^ | \|$/g, '');
  for (let at = reading.indexOf(words); at >= 0; at = reading.indexOf(words, at + 1)) {
    const [before, after] = [reading.slice(0, at), reading.slice(at + words.length)];
    const isStart = before === '' || before.endsWith(starts ? '. ' : ' ');
    const isEnd = ends ? /^ [,.:;]/.test(after) : /^( |$)/.test(after);
    if (isStart && isEnd) return true;
  }
  return false;
}

/** An "if" holds for its own sentence, and before what it makes uncertain. */
const IF = /(?:^|[.,] |: )(?:[a-z ]* )?(?:if|where that is so|should that be) [^.]*\{effect\}/;

function claimFault(reading: string, passage: Passage): GuardedPassage | null {
  const claims = claimsOf(passage);
  const isOpen = passage.kind === 'meaning' && passage.fields.includes('likely');
  if (isOpen && !IF.test(reading)) return rejected('unsaid', 'if');
  const unsaid = claims.find((wordings) => !wordings.some((wording) => says(reading, wording)));
  if (unsaid) return rejected('unsaid', unsaid[0] ?? '');
  if (deniesMore(reading, claims)) return rejected('negation', reading);
  const empty = reading
    .split(/ \.(?: |$)/)
    .filter((sentence) => sentence !== '')
    .find(
      (sentence) =>
        !sentence.includes('{') && !claims.flat().some((wording) => says(`${sentence} .`, wording)),
    );
  return empty === undefined ? null : rejected('emptySentence', empty);
}
