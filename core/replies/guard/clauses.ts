import type { AnswerableId } from '../../terms/quantities.ts';
import type { PlaceId } from '../../terms/names.ts';
import { SHORT_NAMES } from '../names.ts';
import { PLACES } from '../../terms/names.ts';
import type { Token } from './tokens.ts';
import { cueOf, directionOf, type Cue, type DirectionWord } from './words.ts';

/** A number in a sentence with what the words around it make of it. */
export interface Mention {
  readonly digits: string;
  readonly units: (Token & { readonly kind: 'number' })['units'];
  readonly cue: Cue;
  readonly direction: DirectionWord | null;
  readonly about: AnswerableId | null;
  readonly place: PlaceId | null;
}

/** A stretch between two marks. Names carry over a comma or colon, not over the end of a sentence. */
export interface Clause {
  readonly tokens: readonly Token[];
  readonly startsSentence: boolean;
}

export function clauses(all: readonly Token[]): readonly Clause[] {
  const stops = all.flatMap((token, index) => (token.kind === 'stop' ? [index] : []));
  const starts = [0, ...stops.map((index) => index + 1)];
  return starts.map((start, nth) => {
    const mark = all[start - 1];
    return {
      tokens: all.slice(start, stops[nth] ?? all.length),
      startsSentence: mark?.kind !== 'stop' || !/[,:;]/.test(mark.mark),
    };
  });
}

export interface Subject {
  readonly about: AnswerableId | null;
  readonly place: PlaceId | null;
}
const NOBODY: Subject = { about: null, place: null };

/** Every number of the sentence, in order. */
export function mentions(all: readonly Token[]): readonly Mention[] {
  let subject = NOBODY;
  return clauses(all).flatMap((clause) => {
    const before = clause.startsSentence ? NOBODY : subject;
    subject = subjectAfter(clause.tokens, before);
    return clause.tokens.flatMap((token, index) =>
      token.kind === 'number' ? [mention({ clause, index, before }, token)] : [],
    );
  });
}

interface Position {
  readonly clause: Clause;
  readonly index: number;
  readonly before: Subject;
}

function mention(at: Position, token: Token & { readonly kind: 'number' }): Mention {
  const { clause, index, before } = at;
  const [direction = null] = directionsIn(clause.tokens);
  return {
    digits: token.digits,
    units: token.units,
    cue: direction === null ? cueAt(clause.tokens, index) : 'difference',
    direction,
    ...subjectAfter(clause.tokens.slice(0, index), before),
  };
}

/** A quantity names the numbers after it; a place stands before the quantity it belongs to. */
function subjectAfter(these: readonly Token[], before: Subject): Subject {
  return these.reduce<Subject>((subject, token, index) => {
    if (token.kind !== 'name') return subject;
    const about = quantityOf(token);
    const place = placeOf(token);
    if (about === null) return place === null ? subject : { about: subject.about, place };
    const previous = these[index - 1];
    const placed = previous?.kind === 'name' ? placeOf(previous) : null;
    return { about, place: placed };
  }, before);
}

/** The quantities of a sentence with the place that stands before each. */
export function namedIn(
  these: readonly Token[],
): readonly { readonly named: Subject; readonly index: number }[] {
  return these.flatMap((token, index) => {
    if (token.kind !== 'name' || quantityOf(token) === null) return [];
    return [{ named: subjectAfter(these.slice(0, index + 1), NOBODY), index }];
  });
}

export function quantityOf(token: Token & { readonly kind: 'name' }): AnswerableId | null {
  return token.meanings.map(({ id }) => id).find(isAnswerable) ?? null;
}

function placeOf(token: Token & { readonly kind: 'name' }): PlaceId | null {
  return token.meanings.map(({ id }) => id).find(isPlace) ?? null;
}

const isAnswerable = (id: string): id is AnswerableId => id in SHORT_NAMES;
const isPlace = (id: string): id is PlaceId => id in PLACES;

const wordOf = (token: Token | undefined): string => (token?.kind === 'word' ? token.word : '');

/** The different ways named in a clause. */
export function directionsIn(these: readonly Token[]): readonly DirectionWord[] {
  const ways = these.map((token) => directionOf(wordOf(token)));
  return [...new Set(ways.filter((way) => way !== undefined))];
}

/** What the words of its clause make of a number: the nearest cue before it, or "before" and "after" behind it. */
function cueAt(these: readonly Token[], index: number): Cue {
  const next = wordOf(these[index + 1]);
  if (next === 'before' || next === 'after') return next;
  const previous = wordOf(these[index - 1]);
  if (previous === 'from') return 'low';
  if (previous === 'to') return 'high';
  return nearestCue(these.slice(0, index).map((token) => cueOf(wordOf(token))));
}

/**
 * A cue that stands right behind another only carries it on: "dew is at 240" is a dew. What "should" stand "at" a
 * number is a target however many words are between.
 */
function nearestCue(cues: readonly (Cue | undefined)[]): Cue {
  const last = cues.findLastIndex((cue) => cue !== undefined);
  const cue = cues[last];
  if (cue === undefined) return 'bare';
  const isCarrying = cue === 'at' || cue === 'measured';
  if (isCarrying && cues[last - 1] !== undefined) return nearestCue(cues.slice(0, last));
  return cue === 'at' && cues.includes('target') ? 'target' : cue;
}
