import { recognizeNumber } from '@microsoft/recognizers-text-suite';
import { type Component, parse } from 'chrono-node';
import compromise from 'compromise';
import { wordsToNumbers } from 'words-to-numbers';
import { understand } from '../../core/language/understand.ts';
import type { CorpusLine } from '../corpus/corpus.ts';
import { numbersMeant } from '../corpus/numbers-meant.ts';
import { shortForm } from '../corpus/short-form.ts';

/** One library's way to find the numbers of a sentence, each as it is documented to be called. */
export interface NumberReader {
  readonly name: string;
  /** What is timed. */
  readonly read: (line: CorpusLine) => unknown;
  /** What it found. */
  readonly numbers: (line: CorpusLine) => readonly number[];
}

const DATE_PARTS: readonly Component[] = ['year', 'month', 'day', 'hour', 'minute', 'second'];

const figuresIn = (text: string): readonly number[] =>
  (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);

/** One number or several; its types say any. */
const figuresOf = (found: unknown): readonly number[] =>
  Array.isArray(found) ? found.map(Number) : [Number(found)];

const recognised = ({ said }: CorpusLine) => recognizeNumber(said, 'en-us');

const spelledOut = ({ said }: CorpusLine): string => String(wordsToNumbers(said));

/** `understand` does the whole of its work; the others are asked for numbers alone. */
export const READERS: readonly NumberReader[] = [
  {
    name: 'understand, everything',
    read: ({ said, context }) => understand(said, context),
    numbers: ({ said, context }) => numbersMeant(shortForm(understand(said, context))),
  },
  {
    name: 'words-to-numbers',
    read: spelledOut,
    numbers: (line) => figuresIn(spelledOut(line)),
  },
  {
    name: 'chrono-node',
    read: ({ said }) => parse(said),
    numbers: ({ said }) =>
      parse(said).flatMap(({ start }) =>
        DATE_PARTS.flatMap((part) => (start.isCertain(part) ? (start.get(part) ?? []) : [])),
      ),
  },
  {
    name: 'compromise',
    read: ({ said }): unknown => compromise(said).numbers().json(),
    numbers: ({ said }) => figuresOf(compromise(said).numbers().get()),
  },
  {
    name: 'recognizers-text-suite',
    read: recognised,
    numbers: (line) => recognised(line).map(({ resolution }) => Number(resolution['value'])),
  },
];
