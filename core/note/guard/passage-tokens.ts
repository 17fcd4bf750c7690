import type { PassageSlots } from '../paragraphs/passage.ts';
import { upperFirst } from '../paragraphs/passage.ts';

/**
 * A text with its slots put back by role, small letters, marks a space apart: `we found that {found} .` Null where a
 * slot's words do not stand in it once each, or something stands in it that no sentence of ours has.
 */
export type Unfilled =
  | { readonly kind: 'unfilled'; readonly readings: readonly string[] }
  | {
      readonly kind: 'faulty';
      readonly why: 'missingSlot' | 'strangeCharacter';
      readonly at: string;
    };

/** Stands for a slot while the rest is searched: in no sentence, as it is no letter, digit or mark. */
const HELD = '\u0000';

export function unfilled(text: string, slots: PassageSlots): Unfilled {
  const byWords = rolesByWords(slots);
  let rest = text;
  const held: (readonly string[])[] = [];
  for (const [words, roles] of byWords) {
    const found = occurrences(rest, words);
    if (found.length !== roles.length) return { kind: 'faulty', why: 'missingSlot', at: words };
    rest = found.reduceRight((so, at) => {
      held.push(roles);
      return `${so.slice(0, at)}${HELD}${String(held.length - 1)}${HELD}${so.slice(at + words.length)}`;
    }, rest);
  }
  return read(rest, held);
}

/** Longest first, so that "38 °F" is not looked for within a longer slot; the same words may stand for two roles. */
function rolesByWords(slots: PassageSlots): readonly (readonly [string, readonly string[]])[] {
  const byWords = new Map<string, string[]>();
  for (const [role, words] of Object.entries(slots)) {
    byWords.set(words, [...(byWords.get(words) ?? []), role]);
  }
  return [...byWords].toSorted(([one], [other]) => other.length - one.length);
}

/** Where the words stand by themselves: "8 °F" stands neither in "38 °F" nor in "-8 °F". */
function occurrences(text: string, words: string): readonly number[] {
  const found: number[] = [];
  for (let at = 0; at <= text.length - words.length; at += 1) {
    if (isHere(text, words, at)) found.push(at);
  }
  return found;
}

function isHere(text: string, words: string, at: number): boolean {
  const [before, after] = [text.slice(0, at), text.slice(at + words.length)];
  const here = text.slice(at, at + words.length);
  const starts = before === '' || before.endsWith('. ');
  const same = here === words || (starts && here === upperFirst(words));
  const stands = starts || before.endsWith(' ');
  return same && stands && /^($|[ ,.:;])/.test(after) && !/^[.:,]\d/.test(after);
}

/** Letters and marks of ours, and slots: a digit, an accent or a look-alike belongs to no sentence. */
const ORDINARY = /^(?:[A-Za-z ,.:;'-]|\u0000\d+\u0000)*$/;

function read(rest: string, held: readonly (readonly string[])[]): Unfilled {
  if (!ORDINARY.test(rest)) return { kind: 'faulty', why: 'strangeCharacter', at: rest };
  const capital = Array.from(rest.matchAll(/[A-Z]/g)).find(
    ({ index }) => index > 0 && !rest.slice(0, index).endsWith('. '),
  );
  if (capital) return { kind: 'faulty', why: 'strangeCharacter', at: capital[0] };
  const spaced = rest
    .toLowerCase()
    .replace(/[,.:;]/g, ' $& ')
    .replace(/\s+/g, ' ')
    .trim();
  return { kind: 'unfilled', readings: assigned(spaced, held) };
}

/** Every way that roles of the same words can be told apart: 3 lb out and 3 lb in. */
function assigned(spaced: string, held: readonly (readonly string[])[]): readonly string[] {
  return held.reduce<readonly string[]>(
    (readings, roles, at) =>
      readings.flatMap((reading) =>
        roles
          .filter((role) => !reading.includes(`{${role}}`))
          .map((role) => reading.replace(`${HELD}${String(at)}${HELD}`, `{${role}}`)),
      ),
    [spaced],
  );
}
