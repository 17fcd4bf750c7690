import { readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';

import { soundWords } from '../../core/hearing/dictionary.ts';
import { createGrammarGraphs } from '../../core/hearing/grammar-graphs.ts';
import { SEARCH_SETTINGS } from '../../core/hearing/neural-decoder.ts';
import { parseJsgf } from '../../core/hearing/parse-jsgf.ts';
import { createPhoneSearch, type SearchSettings } from '../../core/hearing/phone-search.ts';
import { type SoundGraph, soundGraph } from '../../core/hearing/sound-graph.ts';
import { recogniserGrammar, vocabulary } from '../../core/language/heard/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { readDictionary } from '../../server/hearing/node-model.ts';
import { NEURAL_MODEL_FOLDER } from '../../server/hearing/neural-model.ts';
import { seeded } from '../language/random.ts';

const PHONES = ['', 'A', 'B', 'C', 'D'];
const SOUNDS = { ab: ['A B', 'B'], ba: ['B A'], also: ['A B'], dd: ['D D'], c: ['C', 'D A'] };
const WORD = '(ab | ba | also | dd | c)';
/** Every word after every other, in rules that call each other, again and again. */
const ANY_WORDS = `<pair> = ${WORD} [${WORD}];
<both> = <pair> <pair> | c <pair> dd;
public <s> = (<both> | <pair> c <both>) [<s>];`;

const NO_BOUND = { tokens: Infinity, paths: Infinity, arcs: Infinity };
const NARROW: SearchSettings = {
  ...{ beam: 12, phoneBonus: 2, wordings: 8 },
  ...{ tokens: 60, paths: 400, arcs: 150 },
};

function graphOf(rules: string, mostArcs?: number): SoundGraph {
  const grammar = parseJsgf(`#JSGF V1.0;\ngrammar test;\n${rules}`);
  if (grammar.kind !== 'read') throw new Error(grammar.message);
  const outcome = soundGraph(grammar, { pronunciations: SOUNDS, phones: PHONES }, mostArcs);
  if (outcome.kind !== 'graph') throw new Error(JSON.stringify(outcome));
  return outcome.graph;
}

interface Babble {
  readonly phones: number;
  readonly utterances: number;
  readonly frames: number;
  readonly settings: SearchSettings;
}

/** The most that was held between any two frames of sounds that mean nothing, none much likelier than others. */
function mostHeld(graph: SoundGraph, { phones, utterances, frames, settings }: Babble) {
  const random = seeded(11);
  const most = { tokens: 0, paths: 0, arcs: 0, found: 0 };
  for (let utterance = 0; utterance < utterances; utterance += 1) {
    const search = createPhoneSearch(graph, settings);
    for (let frame = 0; frame < frames; frame += 1) {
      const raw = Array.from({ length: phones }, () => 4 * random());
      const all = Math.log(raw.reduce((sum, each) => sum + Math.exp(each), 0));
      search.accept(Float32Array.from(raw.map((each) => each - all)));
      const { tokens, paths } = search.held();
      most.tokens = Math.max(most.tokens, tokens);
      most.paths = Math.max(most.paths, paths);
      most.arcs = Math.max(most.arcs, graph.arcPhone.length);
    }
    if (search.finish().length > 0) most.found += 1;
  }
  return most;
}

describe('what a search holds in memory', () => {
  const babble = { phones: PHONES.length, utterances: 10, frames: 150 };

  it('passes none of its bounds, whatever is heard, and still hears something', () => {
    const most = mostHeld(graphOf(ANY_WORDS), { ...babble, settings: NARROW });
    expect(most.tokens).toBe(NARROW.tokens);
    expect(most.paths).toBeLessThanOrEqual(NARROW.paths / 2);
    expect(most.arcs).toBeLessThanOrEqual(NARROW.arcs);
    expect(most.found).toBe(babble.utterances);
    const unbounded = mostHeld(graphOf(ANY_WORDS), {
      ...babble,
      ...{ utterances: 1, settings: { ...NARROW, ...NO_BOUND } },
    });
    expect(unbounded.tokens).toBeGreaterThan(4 * NARROW.tokens);
    expect(unbounded.paths).toBeGreaterThan(20 * NARROW.paths);
    expect(unbounded.arcs).toBeGreaterThan(2 * NARROW.arcs);
  });

  it('gives up tokens where their words alone are too many', () => {
    const settings = { ...NARROW, tokens: Infinity, paths: 500 };
    const most = mostHeld(graphOf(ANY_WORDS), { ...babble, settings });
    expect(most.paths).toBeLessThanOrEqual(250);
    expect(most.found).toBe(babble.utterances);
  });

  it('grows a full graph no further within a frame', () => {
    const settings = { ...NARROW, arcs: Infinity };
    const most = mostHeld(graphOf(ANY_WORDS, 100), { ...babble, utterances: 1, settings });
    // What grows last may pass it by the sounds that follow one node.
    expect(most.arcs).toBeLessThan(100 + 4 * 5);
  });

  it('keeps to them by the whole grammar', async () => {
    const { pronunciations } = soundWords(vocabulary(), await readDictionary(), PRONUNCIATIONS);
    const model = await readFile(`${NEURAL_MODEL_FOLDER}/model.json`, 'utf8');
    const phones = [
      '',
      ...z.object({ phones: z.array(z.string()) }).parse(JSON.parse(model)).phones,
    ];
    const outcome = createGrammarGraphs({ pronunciations, phones })(recogniserGrammar('anything'));
    if (outcome.kind !== 'graph') throw new Error(JSON.stringify(outcome));
    const settings = SEARCH_SETTINGS;
    const whole = { phones: phones.length, utterances: 2, frames: 60, settings };
    const most = mostHeld(outcome.graph, whole);
    expect(most.tokens).toBe(settings.tokens);
    expect(most.paths).toBeLessThanOrEqual(settings.paths / 2);
    expect(most.arcs).toBeLessThanOrEqual(settings.arcs);
  });
});
