import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import type { Pronunciations } from '../../core/hearing/dictionary.ts';
import { parseJsgf } from '../../core/hearing/parse-jsgf.ts';
import { createPhoneSearch, type SearchSettings } from '../../core/hearing/phone-search.ts';
import { type SoundGraph, soundGraph } from '../../core/hearing/sound-graph.ts';
import { bestOfAll } from './exhaustive.ts';

const PHONES = ['', 'A', 'B', 'C', 'D'];
/** Two words that sound alike, one said in two ways, one with the same sound twice. */
const SOUNDS: Pronunciations = {
  ab: ['A B'],
  ba: ['B A'],
  also: ['A B'],
  dd: ['D D'],
  c: ['C', 'D A'],
};
const WORDS = Object.keys(SOUNDS);
const WIDE: SearchSettings = {
  ...{ beam: Infinity, phoneBonus: 0.7, wordings: 200 },
  ...{ tokens: Infinity, paths: Infinity, arcs: Infinity },
};
/** Renews its graph after each frame, and looks at its words after each: nothing of that may be heard. */
const FORGETFUL: SearchSettings = { ...WIDE, arcs: 0 };

function graphOf(rules: string): SoundGraph {
  const grammar = parseJsgf(`#JSGF V1.0;\ngrammar test;\n${rules}`);
  if (grammar.kind !== 'read') throw new Error(grammar.message);
  const outcome = soundGraph(grammar, { pronunciations: SOUNDS, phones: PHONES });
  if (outcome.kind !== 'graph') throw new Error(JSON.stringify(outcome));
  return outcome.graph;
}

/** A frame that says mostly this phone. */
function frameOf(...likely: readonly (readonly [number, number])[]): Float32Array {
  const left = 1 - likely.reduce((sum, [, probability]) => sum + probability, 0);
  const rest = left / (PHONES.length - likely.length);
  const probabilities = PHONES.map((_, phone) => likely.find(([at]) => at === phone)?.[1] ?? rest);
  return Float32Array.from(probabilities.map(Math.log));
}

const framesOf = (...phones: readonly number[]): readonly Float32Array[] =>
  phones.map((phone) => frameOf([phone, 0.9]));

function search(graph: SoundGraph, frames: readonly Float32Array[], settings = WIDE) {
  const found = createPhoneSearch(graph, settings);
  frames.forEach(found.accept);
  return found;
}

const saidBy = (words: readonly { readonly word: string }[]): string =>
  words.map(({ word }) => word).join(' ');

/** Up to three words out of sets that differ from place to place, the second left out at will. */
const places = fc.array(fc.subarray(WORDS, { minLength: 1 }), { minLength: 1, maxLength: 3 });
const randomFrames = fc.array(
  fc
    .array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 5, maxLength: 5 })
    .map((raw) => {
      const sum = raw.reduce((total, each) => total + each, 0);
      return Float32Array.from(raw.map((each) => Math.log(each / sum)));
    }),
  { minLength: 1, maxLength: 9 },
);

function everySentence(sets: readonly (readonly string[])[]) {
  type Sentence = readonly (readonly [string, readonly number[]])[];
  const ways = (word: string): Sentence =>
    (SOUNDS[word] ?? []).map((sound) => [word, sound.split(' ').map((p) => PHONES.indexOf(p))]);
  return sets.reduce<readonly Sentence[]>(
    (sentences, set, at) =>
      sentences.flatMap((sentence) => [
        ...(at === 1 ? [sentence] : []),
        ...set.flatMap(ways).map((way) => [...sentence, way]),
      ]),
    [[]],
  );
}

describe('createPhoneSearch', () => {
  it('finds what trying every sentence finds, best and next best, with their scores', () => {
    type Sets = readonly (readonly string[])[];
    const check = (sets: Sets, frames: readonly Float32Array[], settings: SearchSettings): void => {
      const body = sets
        .map((set, at) => (at === 1 ? `[${set.join(' | ')}]` : `(${set.join(' | ')})`))
        .join(' ');
      const found = search(graphOf(`public <s> = ${body};`), frames, settings).finish();
      const expected = bestOfAll(everySentence(sets), { frames, phoneBonus: WIDE.phoneBonus });
      const possible = expected.filter(({ score }) => score > -Infinity);
      expect(found).toHaveLength(possible.length);
      found.forEach(({ score, words }, at) => {
        expect(score).toBeCloseTo(possible[at]?.score ?? NaN, 4);
        // Words that sound alike score alike: which comes first is open.
        const own = possible.find((each) => each.words === saidBy(words));
        expect(own?.score).toBeCloseTo(score, 4);
      });
    };
    const settings = fc.constantFrom(WIDE, FORGETFUL);
    fc.assert(fc.property(places, randomFrames, settings, check), { numRuns: 400 });
  });

  it('needs a rest between the same sound twice', () => {
    const graph = graphOf('public <s> = dd c;');
    expect(search(graph, framesOf(4, 4, 3)).finish()[0]?.words ?? []).toEqual([]);
    expect(saidBy(search(graph, framesOf(4, 0, 4, 3)).finish()[0]?.words ?? [])).toBe('dd c');
  });

  it('times each word and scores it beside what would have fitted without a grammar', () => {
    const frames = [...framesOf(0, 1, 1, 2, 0), frameOf([2, 0.6], [3, 0.3]), ...framesOf(0)];
    const [best] = search(graphOf('public <s> = ab c;'), frames).finish();
    const [first, second] = best?.words ?? [];
    expect(first).toMatchObject({ word: 'ab', startFrame: 1, endFrame: 5 });
    expect((first?.acoustic ?? NaN) - (first?.free ?? NaN)).toBeCloseTo(0, 5);
    expect(second).toMatchObject({ word: 'c', startFrame: 5, endFrame: 7 });
    expect((second?.acoustic ?? NaN) - (second?.free ?? NaN)).toBeCloseTo(Math.log(0.5), 5);
  });

  it('prefers the likelier of two choices that sound alike', () => {
    const heavier = (ab: number, also: number): string => {
      const graph = graphOf(`public <s> = /${ab}/ ab | /${also}/ also;`);
      return saidBy(search(graph, framesOf(1, 2)).finish()[0]?.words ?? []);
    };
    expect([heavier(2, 1), heavier(1, 2)]).toEqual(['ab', 'also']);
  });

  it('hears a rule that follows itself as often as it is said', () => {
    const graph = graphOf('public <s> = (ab | c) [<s>];');
    const frames = framesOf(1, 2, 0, 3, 0, 3, 1, 2);
    expect(saidBy(search(graph, frames).finish()[0]?.words ?? [])).toBe('ab c c ab');
  });

  it('tells the words so far, and whether a sentence could end there', () => {
    const graph = graphOf('public <s> = ab [c] ba [<s>];');
    const found = createPhoneSearch(graph, WIDE);
    const told = framesOf(1, 2, 0, 3, 2, 1, 0, 1, 2).map((frame) => {
      found.accept(frame);
      return `${saidBy(found.best()?.words ?? [])}: ${found.standing()}`;
    });
    expect(told).toEqual([
      'ab: incomplete',
      'ab: incomplete',
      'ab: incomplete',
      'ab c: incomplete',
      'ab c ba: incomplete',
      'ab c ba: closed',
      'ab c ba: closed',
      // One sound of another sentence may be nothing.
      'ab c ba ab: extendable',
      'ab c ba ab: incomplete',
    ]);
    expect(search(graphOf('public <s> = ab [c];'), framesOf(1, 2)).standing()).toBe('extendable');
  });

  it('tells a sentence closed by a grammar that only wraps it', () => {
    const wrapped = graphOf('public <heard> = /1/ <s> | /0.001/ dd;\n<s> = (ab | c ba) [<s>];');
    expect(search(wrapped, framesOf(1, 2)).standing()).toBe('closed');
    expect(search(wrapped, framesOf(1, 2, 3, 3)).standing()).toBe('incomplete');
  });

  it('tells a sentence over though half of another word fits its end a little better', () => {
    const graph = graphOf('public <s> = c [ba] | c dd;');
    const afterC = (likelier: number): string => {
      const frames = [...framesOf(3), frameOf([4, likelier], [0, 0.9 - likelier])];
      return search(graph, frames).standing();
    };
    expect([afterC(0.5), afterC(0.899)]).toEqual(['extendable', 'incomplete']);
  });

  it('finds nothing where no sentence fits into the frames', () => {
    expect(search(graphOf('public <s> = ab ba;'), framesOf(1, 2)).finish()).toEqual([]);
    expect(search(graphOf('public <s> = ab;'), []).finish()).toEqual([]);
  });

  it('gives up what lies behind the beam', () => {
    const graph = graphOf('public <s> = ab | c;');
    const frames = framesOf(1, 2);
    expect(search(graph, frames).finish()).toHaveLength(2);
    expect(search(graph, frames, { ...WIDE, beam: 1 }).finish()).toHaveLength(1);
  });
});
