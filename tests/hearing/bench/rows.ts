import type { Hearing } from '../../../core/hearing/hearing.ts';
import type { Ranking } from '../../../core/hearing/neural-decoder.ts';
import { appendLines, readLines } from './gzipped-lines.ts';

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

export const appendRows: (file: string, rows: readonly Row[]) => void = appendLines;

/** Rows of files that this benchmark wrote. */
export const readRows = (files: readonly string[]): readonly Row[] => readLines(files, isRow);

const isRow = (value: unknown): value is Row =>
  typeof value === 'object' && value !== null && 'ranking' in value && 'embedded' in value;
