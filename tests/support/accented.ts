import { sayPhones } from './tiny-ear.ts';

/** A language of a few words for the tiny ear, and somebody who says one of its sounds otherwise. */
export const ACCENTED_WORDS = {
  head: ['HH EH D'],
  box: ['B AA K S'],
  forty: ['F AO R T IY'],
  two: ['T UW'],
  three: ['TH R IY'],
  five: ['F AY V'],
};
export const ACCENTED_GRAMMAR =
  '#JSGF V1.0;\ngrammar g;\npublic <g> = (head | box) [forty] (two | three | five);';

/** "Boksh": to the ear a sound that it is sure of, and that is not in the word. */
export const ACCENT: Readonly<Record<string, string>> = { S: 'SH' };

export function sayAccented(
  sentence: string,
  accent: Readonly<Record<string, string>> = {},
): Float32Array {
  const sounds = new Map(Object.entries(ACCENTED_WORDS));
  const phones = sentence.split(' ').flatMap((word) => (sounds.get(word)?.[0] ?? '').split(' '));
  return sayPhones(phones.map((phone) => accent[phone] ?? phone).join(' '));
}

/** Each four times: as many as a voice's sounds are in twenty sentences. */
export const ACCENTED_LESSONS: readonly string[] = Array.from({ length: 4 }, () =>
  ['head', 'box'].flatMap((what) =>
    ['two', 'three', 'five'].map((digit) => `${what} forty ${digit}`),
  ),
).flat();
