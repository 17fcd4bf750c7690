import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { createNodeHearing, type NodeHearing } from '../../server/hearing/node-hearing.ts';
import { fan, RATE_HZ, speak } from './signals.ts';
import type { Voice } from '../support/flite.ts';

const GRAMMAR = `#JSGF V1.0;
grammar visit;
<digit> = one | two | three | four | five | six | seven | eight | nine;
<ten> = twenty | thirty | forty | fifty | sixty | seventy | eighty | ninety;
<number> = [<digit>] <ten> [<digit>] | <digit> oh <digit> | fourteen | thirteen;
<reading> = (head | suction | box | ambient | superheat) [is] <number>;
<question> = what should (head | suction) be | how far off am i | read me the note;
<finding> = (condenser's | coil's) plugged;
public <visit> = <reading> [<visit>] | <question> | <finding>;`;
const PRONUNCIATIONS = { superheat: ['S UW P ER HH IY T'] };

const VOICES: readonly Voice[] = ['rms', 'slt'];
const OURS = [
  'head one ninety two',
  'suction fourteen',
  'box forty four',
  'ambient eighty eight',
  'superheat thirteen',
  'head two oh five suction fourteen',
  'what should head be',
  'how far off am i',
  'read me the note',
  "condenser's plugged",
];
const STRAY = [
  'my uncle went fishing on saturday',
  'please call me a taxi tomorrow',
  'the game last night was terrible',
  'she said we could borrow the ladder',
  'turn the radio down a little',
  'where is the manager of this place',
];
const each = (sentences: readonly string[]) =>
  VOICES.flatMap((voice) => sentences.map((sentence) => ({ voice, sentence })));

/** Each sentence is synthesised first, by another program. */
const PATIENCE_MS = 60_000;

describe('createNodeHearing', { timeout: PATIENCE_MS }, () => {
  let hearing: NodeHearing;
  beforeAll(async () => {
    hearing = await createNodeHearing({
      grammars: [{ text: GRAMMAR, weight: 1 }],
      pronunciations: PRONUNCIATIONS,
    });
  });
  afterAll(() => hearing.dispose());

  it.each(each(OURS))('hears $voice say "$sentence"', ({ voice, sentence }) => {
    const heard = hearing.hear(speak(sentence, voice));
    expect(heard.rejected).toBeUndefined();
    expect(heard.alternatives[0]?.words).toBe(sentence);
    expect(heard.alternatives[0]?.confidence).toBeGreaterThan(0.4);
  });

  it('lets at most one in twelve stray sentences through', () => {
    const through = each(STRAY).filter(
      ({ voice, sentence }) => hearing.hear(speak(sentence, voice)).rejected === undefined,
    );
    expect(through.length).toBeLessThanOrEqual(1);
  });

  it('makes no reading of silence or of a fan', () => {
    expect(hearing.hear(new Float32Array(RATE_HZ)).rejected).toBe('nothing');
    expect(hearing.hear(new Float32Array(0)).rejected).toBe('nothing');
    for (const seed of [1, 2, 3]) {
      const noise = fan(2, seed).map((sample) => sample * 0.1);
      expect(hearing.hear(noise).rejected).toBeDefined();
    }
  });

  it('names the words it cannot sound, and wants a public rule', async () => {
    const unknown = '#JSGF V1.0;\ngrammar x;\npublic <x> = head zorbular;';
    await expect(
      createNodeHearing({ grammars: [{ text: unknown, weight: 1 }], pronunciations: {} }),
    ).rejects.toThrow(/zorbular/);
    const closed = '#JSGF V1.0;\ngrammar x;\n<x> = head;';
    await expect(
      createNodeHearing({ grammars: [{ text: closed, weight: 1 }], pronunciations: {} }),
    ).rejects.toThrow(/public rule/);
  });
});
