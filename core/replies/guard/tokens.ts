import { UNITS, unitRow, type UnitId } from '../../units/units.ts';
import { NAMES_LONGEST_FIRST, type Meaning } from './lexicon.ts';

export type Token =
  | { readonly kind: 'number'; readonly digits: string; readonly units: readonly UnitId[] | null }
  | { readonly kind: 'name'; readonly words: string; readonly meanings: readonly Meaning[] }
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'stop'; readonly mark: string }
  | { readonly kind: 'strange'; readonly what: string };

const UNIT_IDS = Object.keys(UNITS).filter((id): id is UnitId => id in UNITS);

/** Every written form of a unit, and the units it may stand for: "°F" is a point or a difference. */
const UNIT_FORMS = unitForms();

function unitForms(): readonly (readonly [string, readonly UnitId[]])[] {
  const forms = new Map<string, UnitId[]>();
  for (const id of UNIT_IDS) {
    const { symbol, spoken } = unitRow(id);
    for (const form of new Set([symbol, spoken.one, spoken.many])) {
      forms.set(form, [...(forms.get(form) ?? []), id]);
    }
  }
  return [...forms].sort(([a], [b]) => b.length - a.length);
}

const SYMBOL_CHARACTERS = UNIT_IDS.map((id) => unitRow(id).symbol).join('');

/** Plain English letters and marks, and the characters of our own unit symbols: a look-alike is neither. */
export function isOrdinary(character: string): boolean {
  return /^[A-Za-z0-9 .,;:?!'%-]$/.test(character) || SYMBOL_CHARACTERS.includes(character);
}

/** The sentence in pieces that can be judged: names before numbers, so that "R-134a" holds no 134. */
export function tokens(sentence: string): readonly Token[] {
  const odd = Array.from(sentence).find((character) => !isOrdinary(character));
  if (odd !== undefined) return [{ kind: 'strange', what: odd }];
  const found: Token[] = [];
  let rest = sentence.trim();
  while (rest !== '') {
    const { token, length } = nextToken(rest);
    found.push(token);
    rest = rest.slice(length).trimStart();
  }
  return found;
}

interface Step {
  readonly token: Token;
  readonly length: number;
}

function nextToken(rest: string): Step {
  return nameAt(rest) ?? numberAt(rest) ?? wordAt(rest) ?? stopAt(rest) ?? strangeAt(rest);
}

function nameAt(rest: string): Step | null {
  const lower = rest.toLowerCase();
  const name = NAMES_LONGEST_FIRST.find(
    ({ words }) => lower.startsWith(words) && !/^[a-z0-9-]/.test(lower.slice(words.length)),
  );
  return name ? { token: { kind: 'name', ...name }, length: name.words.length } : null;
}

function numberAt(rest: string): Step | null {
  const digits = /^-?\d+(?:\.\d+)?/.exec(rest)?.[0];
  if (digits === undefined) return null;
  const after = rest.slice(digits.length);
  const unit = UNIT_FORMS.find(([form]) => unitFollows(after, form));
  const spaces = after.length - after.trimStart().length;
  if (unit) {
    const [form, units] = unit;
    return {
      token: { kind: 'number', digits, units },
      length: digits.length + spaces + form.length,
    };
  }
  if (/^[A-Za-z0-9%°-]/.test(after) || /^[,.:]\d/.test(after)) return strangeAt(rest);
  return { token: { kind: 'number', digits, units: null }, length: digits.length };
}

function unitFollows(after: string, form: string): boolean {
  const trimmed = after.trimStart();
  return trimmed.startsWith(form) && !/^[A-Za-z0-9]/.test(trimmed.slice(form.length));
}

function wordAt(rest: string): Step | null {
  const word = /^[A-Za-z]+(?:['-][A-Za-z]+)*(?![A-Za-z0-9])/.exec(rest)?.[0];
  return word === undefined
    ? null
    : { token: { kind: 'word', word: word.toLowerCase() }, length: word.length };
}

function stopAt(rest: string): Step | null {
  const mark = /^[.,;:?!]/.exec(rest)?.[0];
  return mark === undefined ? null : { token: { kind: 'stop', mark }, length: 1 };
}

function strangeAt(rest: string): Step {
  const what = /^\S+/.exec(rest)?.[0] ?? rest;
  return { token: { kind: 'strange', what }, length: what.length };
}
