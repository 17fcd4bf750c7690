import type { Claims } from './claims.ts';
import { clauses, directionsIn, namedIn, type Subject } from './clauses.ts';
import { rejected, type Guarded } from './guarded.ts';
import type { Token } from './tokens.ts';

/** Words that say something only beside a number or a name: directions, columns, and what leads up to a number. */
export function looseWordFault(all: readonly Token[], claims: Claims): Guarded | null {
  for (const { tokens: these } of clauses(all)) {
    const fault = directionFault(these, claims) ?? strayColumnFault(these, claims);
    if (fault) return fault;
  }
  return danglingFault(all) ?? blankFault(all, claims);
}

/** A direction that belongs to no number, or two directions at once. */
function directionFault(these: readonly Token[], { slots }: Claims): Guarded | null {
  const ways = directionsIn(these);
  const [way] = ways;
  const isLone = these.every((token) => token.kind !== 'number');
  const unfit = isLone && !slots.every(({ direction }) => direction === way);
  return way !== undefined && (ways.length > 1 || unfit) ? rejected('wrongDirection', way) : null;
}

/** "Before" and "after" that belong to no number. */
function strayColumnFault(these: readonly Token[], { ownWords }: Claims): Guarded | null {
  const stray = these.find(
    (token, index) =>
      isColumn(token) && these[index - 1]?.kind !== 'number' && !ownWords.includes(token.word),
  );
  return stray?.kind === 'word' ? rejected('unknownWord', stray.word) : null;
}

const isColumn = (token: Token): token is Token & { readonly kind: 'word' } =>
  token.kind === 'word' && (token.word === 'before' || token.word === 'after');

const LEADS_UP = new Set(
  'is reads read sits runs shows stands at from to be about around should ought a the'.split(' '),
);
const LEADS_RIGHT_UP = new Set('is reads read sits runs shows stands from to be'.split(' '));
const JOINS = new Set(['and', 'but', 'so', 'to']);

/** "It reads, so you are over": a number was lost on the way. */
function danglingFault(all: readonly Token[]): Guarded | null {
  const lost = all.find((_, index) => isLost(all, index));
  return lost ? rejected('missingNumber', lost.kind === 'word' ? lost.word : '') : null;
}

function isLost(all: readonly Token[], index: number): boolean {
  const [token, next, second] = all.slice(index);
  if (token?.kind === 'stop') return next?.kind === 'stop';
  if (token?.kind !== 'word' || !LEADS_UP.has(token.word)) return false;
  if (next?.kind === 'word') return LEADS_RIGHT_UP.has(token.word) && JOINS.has(next.word);
  if (next !== undefined && next.kind !== 'stop') return false;
  // "Here it is: head 192" and "that is where head should be" are whole.
  const isHeading = token.word === 'is' && next?.mark === ':' && second?.kind === 'name';
  return !isHeading && !(token.word === 'be' && all[index - 2]?.kind === 'name');
}

/** What is blank is named with the column it is blank in: before it, or behind the only one of its sentence. */
function blankFault(all: readonly Token[], { blank }: Claims): Guarded | null {
  for (const sentence of sentencesOf(all).filter(isAboutBlanks)) {
    const columns = sentence.filter(isColumn);
    const [only] = columns;
    for (const { named, index } of namedIn(sentence)) {
      const above = sentence.slice(0, index).findLast(isColumn);
      const column = columns.length === 1 ? only : above;
      const own = column?.word === 'before' ? blank.before : blank.after;
      if (!column || !own.some((each) => isSame(each, named))) {
        return rejected('foreignName', named.about ?? '');
      }
    }
  }
  return null;
}

const isSame = (one: Subject, other: Subject): boolean =>
  one.about === other.about && one.place === other.place;

const isAboutBlanks = (sentence: readonly Token[]): boolean =>
  sentence.some((token) => token.kind === 'word' && token.word === 'blank');

function sentencesOf(all: readonly Token[]): readonly (readonly Token[])[] {
  const ends = all.flatMap((token, index) =>
    token.kind === 'stop' && token.mark === '.' ? [index] : [],
  );
  const starts = [0, ...ends.map((index) => index + 1)];
  return starts.map((start, nth) => all.slice(start, ends[nth] ?? all.length));
}
