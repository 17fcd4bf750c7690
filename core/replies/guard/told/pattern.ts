/**
 * A closed set of wordings, written as one line: `[reads|is|] {value} , good`. Square brackets hold a choice, an
 * empty one of which may be left out; a bar outside them parts whole wordings; a comma may be written or not; a
 * name in braces is a slot of the verdict.
 */
export type Pattern = readonly Sequence[];
type Sequence = readonly Piece[];
type Piece =
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'comma' }
  | { readonly kind: 'slot'; readonly role: string }
  | { readonly kind: 'choice'; readonly of: Pattern };

const COMPILED = new Map<string, Pattern>();

/** Compiled once: the patterns are constants of the code. */
export function patternOf(written: string): Pattern {
  const known = COMPILED.get(written);
  if (known) return known;
  const pattern = choices(written).map(sequence);
  COMPILED.set(written, pattern);
  return pattern;
}

/** The parts between bars that stand in no bracket. */
function choices(written: string): readonly string[] {
  let depth = 0;
  const parts: string[] = [''];
  for (const character of written) {
    if (character === '[') depth += 1;
    if (character === ']') depth -= 1;
    if (character === '|' && depth === 0) parts.push('');
    else parts[parts.length - 1] = `${parts.at(-1) ?? ''}${character}`;
  }
  return parts;
}

function sequence(written: string): Sequence {
  const pieces: Piece[] = [];
  let rest = written.trim();
  while (rest !== '') {
    const end = rest.startsWith('[') ? closing(rest) : rest.search(/[\s[]|$/);
    pieces.push(piece(rest.slice(0, end)));
    rest = rest.slice(end).trimStart();
  }
  return pieces;
}

function closing(written: string): number {
  let depth = 0;
  const at = Array.from(written).findIndex((character) => {
    if (character === '[') depth += 1;
    if (character === ']') depth -= 1;
    return depth === 0;
  });
  return at + 1;
}

function piece(written: string): Piece {
  if (written.startsWith('[')) return { kind: 'choice', of: patternOf(written.slice(1, -1)) };
  if (written === ',') return { kind: 'comma' };
  const role = /^\{(\w+)\}$/.exec(written)?.[1];
  return role === undefined ? { kind: 'word', word: written } : { kind: 'slot', role };
}

export type SlotForms = Readonly<Record<string, readonly Sequence[]>>;

/** What may stand where a slot does: its words, a comma among them written or not. */
export function slotForm(written: string): Sequence {
  return words(written).map((word) =>
    word === ',' || word === ';' ? { kind: 'comma' } : { kind: 'word', word },
  );
}

/** A sentence as words and marks, each mark a word of its own; a straight apostrophe for a curled one. */
export function words(sentence: string): readonly string[] {
  return sentence
    .replaceAll('’', "'")
    .split(/\s+/)
    .flatMap(marksApart)
    .filter((word) => word !== '');
}

/** "38%." is a number, its unit and a full stop; the point of "3.4:1" is not a mark. */
function marksApart(word: string): readonly string[] {
  const [, body = '', marks = ''] = /^(.*?)([.,;:?!]*)$/.exec(word) ?? [];
  const number = /^(-?\d+(?:\.\d+)?)(.*)$/.exec(body);
  const parts = number ? [number[1] ?? '', number[2] ?? ''] : [body];
  return [...parts, ...Array.from(marks)];
}

/** Where a pattern can end in a sentence when it starts at `from`; empty where it does not fit. */
export function endsOf(pattern: Pattern, from: number, within: Within): readonly number[] {
  return [...new Set(pattern.flatMap((one) => sequenceEnds(one, from, within)))];
}

interface Within {
  readonly sentence: readonly string[];
  readonly slots: SlotForms;
}

function sequenceEnds(one: Sequence, from: number, within: Within): readonly number[] {
  return one.reduce<readonly number[]>(
    (starts, next) => [...new Set(starts.flatMap((start) => pieceEnds(next, start, within)))],
    [from],
  );
}

function pieceEnds(next: Piece, at: number, within: Within): readonly number[] {
  const { sentence, slots } = within;
  switch (next.kind) {
    case 'comma':
      return sentence[at] === ',' || sentence[at] === ';' ? [at, at + 1] : [at];
    case 'word':
      return isSameWord(sentence[at], next.word) ? [at + 1] : [];
    case 'choice':
      return endsOf(next.of, at, within);
    case 'slot':
      return (slots[next.role] ?? []).flatMap((form) => sequenceEnds(form, at, within));
  }
}

/** As it stands, or with the capital that starts a sentence; a unit keeps its own: "K" is not "k". */
function isSameWord(word: string | undefined, own: string): boolean {
  return word === own || word === own.charAt(0).toUpperCase() + own.slice(1);
}

/** The slots that every wording of a pattern has: whoever says it says them. */
export function rolesAlways(pattern: Pattern): readonly string[] {
  const each = pattern.map((one) =>
    one.flatMap((next) => {
      if (next.kind === 'slot') return [next.role];
      return next.kind === 'choice' ? rolesAlways(next.of) : [];
    }),
  );
  const [first = [], ...others] = each;
  return first.filter((role) => others.every((roles) => roles.includes(role)));
}
