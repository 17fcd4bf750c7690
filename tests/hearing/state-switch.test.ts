import { readFile } from 'node:fs/promises';
import { expect, it } from 'vitest';
import { z } from 'zod';
import { soundWords } from '../../core/hearing/dictionary.ts';
import { createGrammarGraphs } from '../../core/hearing/grammar-graphs.ts';
import type { Expectation } from '../../core/language/context.ts';
import { recogniserGrammar, vocabulary } from '../../core/language/heard/recogniser-grammar.ts';
import { PRONUNCIATIONS } from '../../core/language/vocabulary/pronunciations.ts';
import { readDictionary } from '../../server/hearing/node-model.ts';
import { NEURAL_MODEL_FOLDER } from '../../server/hearing/neural-model.ts';
import { createBench, grammarList, quiet } from '../recogniser/harness.ts';

const GRAMMARS: Record<Expectation, string> = {
  anything: recogniserGrammar('anything'),
  number: recogniserGrammar('number'),
  yesOrNo: recogniserGrammar('yesOrNo'),
};

/** As a visit goes: readings, a question about one, a prompt for a number, and so on. */
const EXPECTED: readonly Expectation[] = [
  ...(['anything', 'anything', 'yesOrNo', 'anything', 'number', 'anything'] as const),
  ...(['yesOrNo', 'yesOrNo', 'number', 'anything', 'yesOrNo', 'anything'] as const),
];

/** What the page's recogniser gave its engine through such a visit, in order. */
async function given(): Promise<readonly string[]> {
  const bench = createBench({ expected: Object.values(GRAMMARS) });
  for (const expectation of EXPECTED) {
    bench.recognition.grammars = grammarList(GRAMMARS[expectation]);
    bench.recognition.start();
    await bench.settle();
    await bench.sound(quiet(100));
    bench.recognition.abort();
    await bench.settle();
  }
  return bench.engine.calls.filter((call) => /^(setGrammar|warm) /.test(call));
}

it('compiles what the dialogue can expect once, before anything but the first is set', async () => {
  const { pronunciations } = soundWords(vocabulary(), await readDictionary(), PRONUNCIATIONS);
  const model = await readFile(`${NEURAL_MODEL_FOLDER}/model.json`, 'utf8');
  const { phones } = z.object({ phones: z.array(z.string()) }).parse(JSON.parse(model));
  const graphOf = createGrammarGraphs({ pronunciations, phones: ['', ...phones] });
  const built = new Set<unknown>();
  let compiledWhenSet = 0;
  for (const call of await given()) {
    const before = built.size;
    const graph = graphOf(call.slice(call.indexOf(' ') + 1));
    expect(graph.kind).toBe('graph');
    built.add(graph);
    if (call.startsWith('setGrammar')) compiledWhenSet += built.size - before;
  }
  expect([built.size, compiledWhenSet]).toEqual([3, 1]);
});
