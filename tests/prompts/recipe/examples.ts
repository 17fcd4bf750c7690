import { type CorpusLine, suits } from '../../../prompts/corpus/corpus-line.ts';
import { recombined } from '../../../prompts/corpus/recombine.ts';
import { reworded } from '../../../prompts/corpus/synonyms.ts';
import { promptTokens } from '../../../prompts/decode/prompt-tokens.ts';
import { toTokens } from '../../../prompts/decode/sentence-tokens.ts';
import { createDice } from '../../../prompts/decode/dice.ts';
import { fill } from '../../../prompts/record/fill.ts';
import { bySignature, heldOutOf } from './signature.ts';
import type { Told } from './told.ts';

/** A sentence that may be said of a record: `own` is the corpus's, `made` was put together from it. */
export interface Example {
  readonly origin: 'own' | 'made';
  /** Without its end, "[NOT] … [SAY]": what was said last differs each time it is learnt from. */
  readonly prompt: readonly string[];
  readonly sentence: readonly string[];
  readonly line: CorpusLine;
}

export interface Examples {
  readonly all: readonly Example[];
  readonly signatures: readonly string[];
  readonly heldOut: readonly string[];
}

/** More than this of one signature would drown the others, and each must be held against the guard. */
const MOST_MADE = 500;
const HELD_AGAINST = 4;

export function examplesOf(corpus: readonly CorpusLine[], told: readonly Told[]): Examples {
  const signatures = bySignature(told, HELD_AGAINST);
  const own = byKind(corpus);
  const made = byKind(madeFrom(corpus));
  const suiting = new Map(
    [...signatures].map(([signature, [first]]) => [signature, first ? suitedBy(first, own) : []]),
  );
  const heldOut = heldOutOf(suiting);
  const all = [...signatures].flatMap(([signature, alike]) => {
    const kind = alike[0]?.record.kind ?? '';
    if (heldOut.includes(signature)) return [];
    return [
      ...toldIn('own', own.get(kind) ?? [], alike),
      ...toldIn('made', made.get(kind) ?? [], alike),
    ];
  });
  return { all, signatures: [...signatures.keys()], heldOut };
}

function suitedBy(
  { record, registers }: Told,
  own: ReadonlyMap<string, readonly CorpusLine[]>,
): readonly CorpusLine[] {
  const ofKind = own.get(record.kind) ?? [];
  return ofKind.filter((line) => registers.includes(line.register) && suits(line, record));
}

function byKind(lines: readonly CorpusLine[]): ReadonlyMap<string, readonly CorpusLine[]> {
  const kinds = [...new Set(lines.map(({ kind }) => kind))];
  return new Map(kinds.map((kind) => [kind, lines.filter((line) => line.kind === kind)]));
}

/** In an order of its own, so that the first hundreds of a signature are of all sorts. */
export function madeFrom(corpus: readonly CorpusLine[]): readonly CorpusLine[] {
  const roll = createDice(1);
  const known = new Set(corpus.map(({ kind, sentence }) => `${kind} ${sentence}`));
  const once = corpus.flatMap(reworded);
  const both = recombined(corpus);
  const made = [...once, ...both, ...both.flatMap(reworded)].filter(
    ({ kind, sentence }) => !known.has(`${kind} ${sentence}`),
  );
  return made
    .map((line) => ({ line, place: roll() }))
    .sort((one, other) => one.place - other.place)
    .map(({ line }) => line);
}

function toldIn(
  origin: Example['origin'],
  lines: readonly CorpusLine[],
  alike: readonly Told[],
): readonly Example[] {
  const [first] = alike;
  if (!first) return [];
  const found: Example[] = [];
  for (const line of lines) {
    if (origin === 'made' && found.length >= MOST_MADE) break;
    if (!first.registers.includes(line.register) || !suits(line, first.record)) continue;
    const isRight = ({ record, passes }: Told) => passes(fill(line.sentence, record)?.text ?? '');
    if (!alike.every(isRight)) continue;
    const asked = { record: first.record, register: line.register, lastOpening: null };
    const prompt = promptTokens(asked).slice(0, -3);
    found.push({ origin, prompt, sentence: toTokens(line.sentence), line });
  }
  return found;
}
