import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { recognizeNumber } from '@microsoft/recognizers-text-suite';
import { type Component, parse } from 'chrono-node';
import compromise from 'compromise';
import { wordsToNumbers } from 'words-to-numbers';
import type { understand } from '../../core/language/understand.ts';
import type { CorpusLine } from '../corpus/corpus.ts';
import { numbersMeant } from '../corpus/numbers-meant.ts';
import { minified } from './bundle.ts';
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

/** It does the whole of its work; the others are asked for numbers alone. */
const reading = (understandIt: typeof understand): NumberReader => ({
  name: 'understand, everything',
  read: ({ said, context }) => understandIt(said, context),
  numbers: ({ said, context }) => numbersMeant(shortForm(understandIt(said, context))),
});

/** `understand`, as it is built for the page, first: the libraries are built, too. */
export const readers = async (): Promise<readonly NumberReader[]> => [
  reading(await builtUnderstand()),
  ...LIBRARIES,
];

const isUnderstand = (found: unknown): found is typeof understand => typeof found === 'function';

async function builtUnderstand(): Promise<typeof understand> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'));
  const file = join(folder, 'understand.mjs');
  writeFileSync(file, await minified(['language/understand.ts']));
  const built: unknown = await import(pathToFileURL(file).href);
  rmSync(folder, { recursive: true });
  const found: unknown = Object.entries(built ?? {}).find(([name]) => name === 'understand')?.[1];
  if (!isUnderstand(found)) throw new Error('the build exports no understand');
  return found;
}

const LIBRARIES: readonly NumberReader[] = [
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
