import { type Endpointing, sentencesIn } from '../../../../server/hearing/sentences-in.ts';
import { collect } from '../../../support/collect.ts';
import { RATE_HZ } from '../../signals.ts';
import type { Ears } from '../ears.ts';
import { appendLines, readLines } from '../gzipped-lines.ts';
import type { Row } from '../rows.ts';
import type { Stretch } from './stretches.ts';

/** What was taken for sentences in a stretch of sound, each as the engines heard it. */
export interface Overheard {
  readonly kind: Stretch['kind'];
  readonly number: number;
  readonly bed: string;
  readonly seconds: number;
  /** Of finding sentences alone: the detector's, and the grammar's while one lasts. */
  readonly findingCpuSeconds: number;
  readonly sentences: readonly Row[];
}

export async function overhear(
  { kind, number, bed, sound }: Stretch,
  ears: Ears,
  endpointing: Endpointing,
): Promise<Overheard> {
  const samples = sound();
  const before = process.cpuUsage();
  const found = await collect(sentencesIn(samples, endpointing));
  const { user, system } = process.cpuUsage(before);
  const sentences: Row[] = [];
  for (const { fromMs, toMs } of found) {
    const [from, to] = [fromMs, toMs].map((ms) => (ms * RATE_HZ) / 1000);
    const who = { said: '', voice: bed, heldOut: true, condition: 'as the page cuts it' };
    sentences.push(await ears.hear({ kind, number, ...who, sound: () => samples.slice(from, to) }));
  }
  return {
    ...{ kind, number, bed, sentences },
    seconds: samples.length / RATE_HZ,
    findingCpuSeconds: (user + system) / 1e6,
  };
}

export const appendOverheard: (file: string, overheard: readonly Overheard[]) => void = appendLines;

export const readOverheard = (files: readonly string[]): readonly Overheard[] =>
  readLines(files, isOverheard);

const isOverheard = (value: unknown): value is Overheard =>
  typeof value === 'object' && value !== null && 'bed' in value && 'sentences' in value;
