import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Lexicon } from '../../../prompts/decode/lexicon.ts';
import type { Register } from '../../../prompts/record/phrase-record.ts';
import { loadPipeline } from '../../../server/phraser/load-pipeline.ts';
import { readModelFolder } from '../../../server/phraser/model-folder.ts';
import { createSlotWriter } from '../../../server/phraser/slot-writer.ts';
import { readCorpus } from '../../support/corpus.ts';
import { madeFrom } from './examples.ts';
import {
  foreignNumbers,
  phraseAll,
  type Score,
  type Scored,
  scoreOf,
  type ToScore,
} from './score.ts';
import { signatureOf } from './signature.ts';
import { randomNotes, randomReplies, type Told } from './told.ts';

export interface ModelScores {
  readonly all: Score;
  readonly learnt: Score;
  readonly heldOut: Score;
  readonly notes: Score;
  /** Sentences with a number that is nowhere in what they tell; there is none. */
  readonly foreignNumbers: readonly string[];
  readonly msEach: number;
  readonly scored: readonly Scored[];
}

const SEED = 4099;
/** So many random verdicts for each that is phrased, so that the rare kinds come up too. */
const DRAWN_FOR_ONE = 6;
const ONE_NOTE_FOR = 40;

/** Phrases so many random verdicts, every kind about as often, and a note for some of them. */
export async function scoreModel(folder: string, count: number): Promise<ModelScores> {
  const found = await readModelFolder(folder);
  if (found.kind === 'unusable' || found.lexicon === null) {
    throw new Error(`no model of our own in ${folder}`);
  }
  const { lexicon } = found;
  const write = await createSlotWriter(await loadPipeline(found.path, found.dtype));
  const told = [
    ...evenly(randomReplies(count * DRAWN_FOR_ONE, SEED), count),
    ...randomNotes(Math.ceil(count / ONE_NOTE_FOR), SEED),
  ];
  const heldOut = readFileSync(join(folder, 'held-out.json'), 'utf8');
  const all = told.flatMap((one, index) => toScore(one, { index, lexicon, heldOut }));
  const began = performance.now();
  const scored = await phraseAll(write, lexicon, all);
  const msEach = (performance.now() - began) / all.length;
  const known = knownSentences();
  const score = (isIn: (one: Scored) => boolean): Score => scoreOf(scored.filter(isIn), known);
  return {
    all: score(() => true),
    learnt: score(({ isHeldOut }) => !isHeldOut),
    heldOut: score(({ isHeldOut }) => isHeldOut),
    notes: score(({ told: { record } }) => record.kind.startsWith('note.')),
    foreignNumbers: scored.flatMap(foreignNumbers),
    msEach,
    scored,
  };
}

function evenly(all: readonly Told[], count: number): readonly Told[] {
  const seen = new Map<string, number>();
  const ranked = all.map((told) => {
    const rank = seen.get(told.record.kind) ?? 0;
    seen.set(told.record.kind, rank + 1);
    return { told, rank };
  });
  const first = ranked.toSorted((one, other) => one.rank - other.rank).slice(0, count);
  return first.map(({ told }) => told);
}

interface Given {
  readonly index: number;
  readonly lexicon: Lexicon;
  readonly heldOut: string;
}

function toScore(told: Told, { index, lexicon, heldOut }: Given): readonly ToScore[] {
  const hasWords = (wanted: Register): boolean =>
    lexicon.groups.some(({ kind, register }) => kind === told.record.kind && register === wanted);
  const registers = told.registers.filter(hasWords);
  const register = registers[index % registers.length] ?? told.registers[0];
  const isHeldOut = heldOut.includes(JSON.stringify(signatureOf(told)));
  return register ? [{ told, register, isHeldOut }] : [];
}

function knownSentences() {
  const corpus = [...readCorpus('replies'), ...readCorpus('note')];
  const keyOf = ({ kind, sentence }: { kind: string; sentence: string }) => `${kind} ${sentence}`;
  return {
    corpus: new Set(corpus.map(keyOf)),
    learnt: new Set([...corpus, ...madeFrom(corpus)].map(keyOf)),
  };
}
