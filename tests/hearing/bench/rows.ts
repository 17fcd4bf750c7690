import { appendFileSync, readFileSync } from 'node:fs';
import { gunzipSync, gzipSync } from 'node:zlib';

import type { Hearing } from '../../../core/hearing/hearing.ts';
import type { Ranking } from '../../../core/hearing/neural-decoder.ts';

/** ours: a sentence of the language. talk: one that is not. noise: nobody speaks. */
export type Kind = 'ours' | 'talk' | 'noise';

/** One utterance as both engines heard it, before anything is judged: so that a judgement can be tried again on it. */
export interface Row {
  readonly kind: Kind;
  /** Sentences have the same number wherever and by whomever they are said. */
  readonly number: number;
  readonly said: string;
  readonly voice: string;
  readonly heldOut: boolean;
  readonly condition: string;
  readonly seconds: number;
  readonly cpuSeconds: {
    readonly neural: number;
    readonly opinion: number;
    readonly embedded: number;
  };
  /** The voice above the room, as the product itself measures it. */
  readonly snrDb: number | null;
  /** The neural engine's wordings, and which of them the embedded one chose. */
  readonly ranking: Ranking;
  /** What that one hears by itself; null where it was not asked. */
  readonly embedded: Hearing | null;
}

/** Scores are kept to a thousandth: six decimals more would be most of the file. */
const brief = (_: string, value: unknown): unknown =>
  typeof value === 'number' ? Math.round(value * 1000) / 1000 : value;

/** Adds to what the file holds, so that a run that is cut short leaves what it heard. */
export function appendRows(file: string, rows: readonly Row[]): void {
  appendFileSync(file, gzipSync(rows.map((row) => `${JSON.stringify(row, brief)}\n`).join('')));
}

/** Rows of files that this benchmark wrote. */
export function readRows(files: readonly string[]): readonly Row[] {
  return files.flatMap((file) => {
    const text = gunzipSync(readFileSync(file)).toString('utf8');
    return text
      .split('\n')
      .filter((line) => line !== '')
      .map(parseRow);
  });
}

function parseRow(line: string): Row {
  const value: unknown = JSON.parse(line);
  if (isRow(value)) return value;
  throw new Error(`This is not a row of the hearing benchmark: ${line.slice(0, 60)}`);
}

const isRow = (value: unknown): value is Row =>
  typeof value === 'object' && value !== null && 'ranking' in value && 'embedded' in value;
