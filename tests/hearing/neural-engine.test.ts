import { truncate } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { readAcousticDescription } from '../../core/hearing/acoustic-model.ts';
import { combineGrammars } from '../../core/hearing/jsgf.ts';
import { type AcousticModel, createListener } from '../../core/hearing/listener.ts';
import { createNeuralDecoder, type NeuralDecoder } from '../../core/hearing/neural-decoder.ts';
import { createNeuralHearing } from '../../server/hearing/neural-hearing.ts';
import { openNeuralModel } from '../../server/hearing/neural-model.ts';
import { createScratchFolder } from '../support/scratch-folder.ts';
import { sayPhones, writeTinyEar } from '../support/tiny-ear.ts';

const PRONUNCIATIONS = {
  head: ['HH EH D'],
  box: ['B AA K S'],
  forty: ['F AO R T IY'],
  four: ['F AO R'],
  five: ['F AY V'],
  oh: ['OW'],
};
const grammarOf = (body: string): string =>
  combineGrammars([{ text: `#JSGF V1.0;\ngrammar g;\npublic <g> = ${body};`, weight: 1 }]) ?? '';
const READINGS = grammarOf('(head | box) (forty [four | five] | four)');

let folder: Awaited<ReturnType<typeof createScratchFolder>>;
let model: AcousticModel;
beforeAll(async () => {
  folder = await createScratchFolder();
  await writeTinyEar(folder.path);
  const opened = await openNeuralModel(folder.path);
  if (opened.kind === 'unavailable') throw new Error(opened.message);
  model = opened.model;
});
afterAll(() => folder.discard());

function decoderFor(jsgf: string): NeuralDecoder {
  const decoder = createNeuralDecoder({ model, pronunciations: PRONUNCIATIONS });
  expect(decoder.setGrammar(jsgf)).toEqual({ kind: 'set' });
  return decoder;
}

const joined = (parts: readonly Float32Array[]): Float32Array =>
  Float32Array.from(parts.flatMap((part) => [...part]));
const HEAD_FORTY_FIVE = sayPhones('HH EH D F AO R T IY F AY V');

describe('createListener', () => {
  it('gives a frame for every 20 ms, the same whatever the portions', async () => {
    const listener = createListener(model);
    const hear = async (portion: number): Promise<readonly (readonly number[])[]> => {
      const frames: Float32Array[] = [];
      for (let at = 0; at < HEAD_FORTY_FIVE.length; at += portion) {
        frames.push(...(await listener.accept(HEAD_FORTY_FIVE.slice(at, at + portion))));
      }
      return [...frames, ...(await listener.flush())].map((frame) => [...frame]);
    };
    const whole = await hear(HEAD_FORTY_FIVE.length);
    expect(whole).toHaveLength(Math.ceil(HEAD_FORTY_FIVE.length / 640) * 2);
    for (const portion of [100, 640, 1600]) expect(await hear(portion)).toEqual(whole);
    const best = whole.map((frame) => frame.indexOf(Math.max(...frame)));
    expect(best.slice(0, 6)).toEqual([0, 0, 16, 16, 16, 0]);
  });

  it('forgets what was heard when told to', async () => {
    const listener = createListener(model);
    const fresh = await listener.accept(sayPhones('OW'));
    await listener.accept(HEAD_FORTY_FIVE);
    listener.reset();
    expect(await listener.accept(sayPhones('OW'))).toEqual(fresh);
  });
});

describe('the loudness that a listener knows', () => {
  /** A model that only tells its level: as given, or 60 dB once it heard a sound. */
  function levelEar(): { readonly model: AcousticModel; readonly given: number[] } {
    class Tensor {
      readonly type: string;
      readonly data: Float32Array | BigInt64Array;
      constructor(type: string, data: Float32Array | BigInt64Array) {
        this.type = type;
        this.data = data;
      }
    }
    const given: number[] = [];
    const run = (inputs: Readonly<Record<string, { readonly data: unknown }>>) => {
      const { samples, level } = inputs;
      const [sound, before] = [samples?.data, level?.data];
      if (!(sound instanceof Float32Array && before instanceof Float32Array)) throw new Error('?');
      given.push(before[0] ?? NaN);
      const after = sound.some((sample) => sample !== 0) ? 60 : (before[0] ?? 0);
      return Promise.resolve({
        log_probabilities: new Tensor('float32', new Float32Array(sound.length / 320)),
        level_after: new Tensor('float32', Float32Array.of(after)),
      });
    };
    const sizes = { samplesPerStep: 640, frameSamples: 320, delaySamples: 640 };
    const description = { edition: '', innerSize: 0, phones: [''], ...sizes };
    return {
      model: {
        onnx: { Tensor },
        session: { run },
        description: { ...description, state: { level: [1] } },
      },
      given,
    };
  }
  const loud = new Float32Array(640).fill(0.5);

  it('goes on to the next utterance a little lower, and no further when all is forgotten', async () => {
    const { model: ear, given } = levelEar();
    const listener = createListener(ear);
    await listener.accept(loud);
    await listener.flush();
    await listener.accept(loud);
    listener.forget();
    await listener.accept(loud);
    expect(given).toEqual([0, 60, 54, 0]);
  });
});

describe('createNeuralDecoder', () => {
  const hear = async (decoder: NeuralDecoder, sound: Float32Array, opinion?: string) => {
    decoder.start();
    await decoder.accept(sound);
    return decoder.finish(opinion === undefined ? undefined : { words: opinion, fit: -0.5 });
  };

  it('hears the sentence and times its words', async () => {
    const heard = await hear(decoderFor(READINGS), HEAD_FORTY_FIVE);
    expect(heard.rejected).toBeUndefined();
    const [best] = heard.alternatives;
    expect(best?.words).toBe('head forty five');
    expect(best?.confidence).toBeGreaterThan(0.9);
    // Two frames of rest, three phones of three frames and a rest each, then "forty".
    expect(best?.wordConfidences[1]).toMatchObject({ word: 'forty', startMs: 14 * 20 });
  });

  it('says the words so far, and whether they could be all', async () => {
    const decoder = decoderFor(READINGS);
    decoder.start();
    const told: string[] = [];
    for (const phones of ['HH EH D', 'F AO R', 'T IY', 'F AY V', 'OW']) {
      // What was said comes two steps late.
      await decoder.accept(joined([sayPhones(phones), new Float32Array(1280)]));
      told.push(`${decoder.words()}: ${decoder.standing()}`);
    }
    expect(told.slice(0, 4)).toEqual([
      'head: incomplete',
      'head four: closed',
      'head forty: extendable',
      'head forty five: closed',
    ]);
  });

  it('passes over talk that is not for it, and silence', async () => {
    const decoder = decoderFor(READINGS);
    const talk = await hear(decoder, sayPhones('M AY AH NG K AH L W EH N T F IH SH IH NG'));
    expect(talk.rejected).toBe('notForUs');
    expect((await hear(decoder, new Float32Array(16_000))).rejected).toBe('nothing');
    expect((await hear(decoder, new Float32Array(0))).rejected).toBe('nothing');
  });

  it('takes a new grammar for the next utterance, and the old one again', async () => {
    const decoder = decoderFor(READINGS);
    decoder.setGrammar(grammarOf('forty five'));
    expect((await hear(decoder, sayPhones('F AO R T IY F AY V'))).alternatives[0]?.words).toBe(
      'forty five',
    );
    decoder.setGrammar(READINGS);
    expect((await hear(decoder, HEAD_FORTY_FIVE)).alternatives[0]?.words).toBe('head forty five');
  });

  it('names the words it cannot sound, and what is wrong with a grammar', () => {
    const decoder = createNeuralDecoder({ model, pronunciations: PRONUNCIATIONS });
    expect(decoder.setGrammar(grammarOf('head zorbular'))).toEqual({
      kind: 'unknownWords',
      words: ['zorbular'],
    });
    expect(decoder.setGrammar(grammarOf('head <nowhere>')).kind).toBe('malformed');
  });

  describe('with a second opinion', () => {
    /** Between "five" and "four", a little nearer to "five". */
    const unclear = joined([
      sayPhones('HH EH D F'),
      sayPhones('AY V').map((sample, at) => sample * 0.5 + (sayPhones('AO R')[at] ?? 0) * 0.5),
    ]);

    it('is surer of its words when the other heard the same, less sure when not', async () => {
      const decoder = decoderFor(grammarOf('head (four | five)'));
      const chanceOf = async (words: string, opinion?: string): Promise<number> => {
        const { alternatives } = await hear(decoder, unclear, opinion);
        return alternatives.find((each) => each.words === words)?.confidence ?? 0;
      };
      const own = (await hear(decoder, unclear)).alternatives[0]?.words ?? '';
      const other = own === 'head five' ? 'head four' : 'head five';
      expect(await chanceOf(own, own)).toBeGreaterThan(await chanceOf(own));
      expect(await chanceOf(own, other)).toBeLessThan(await chanceOf(own));
      expect(await chanceOf(own, '')).toBeLessThan(await chanceOf(own));
    });

    it('divides one chance among the wordings', async () => {
      const { alternatives } = await hear(decoderFor(grammarOf('head (four | five)')), unclear);
      const [best, other] = alternatives.map(({ confidence }) => confidence);
      expect(alternatives).toHaveLength(2);
      expect(best).toBeGreaterThanOrEqual(other ?? NaN);
      expect((best ?? 0) + (other ?? 0)).toBeLessThanOrEqual(1);
    });

    it('offers the wordings it found, before it judges them', async () => {
      const decoder = decoderFor(grammarOf('head (four | five)'));
      decoder.start();
      await decoder.accept(unclear);
      const wordings = await decoder.close();
      expect(wordings.toSorted()).toEqual(['head five', 'head four']);
      const { alternatives } = await decoder.finish();
      expect(alternatives.map(({ words }) => words)).toEqual(wordings);
    });

    it('keeps its own words where the opinion is none of them', async () => {
      const heard = await hear(decoderFor(READINGS), HEAD_FORTY_FIVE, 'box four');
      expect(heard.alternatives[0]?.words).toBe('head forty five');
    });

    it('takes the opinion where it fits nearly as well', async () => {
      const decoder = decoderFor(grammarOf('head (four | five)'));
      const alone = await hear(decoder, unclear);
      const own = alone.alternatives[0]?.words;
      const other = own === 'head five' ? 'head four' : 'head five';
      const opined = await hear(decoder, unclear, other);
      expect(opined.alternatives.map(({ words }) => words)).toEqual([other, own]);
    });
  });
});

describe('openNeuralModel', () => {
  it('says which model is damaged', async () => {
    const damaged = await createScratchFolder();
    await writeTinyEar(damaged.path);
    await truncate(join(damaged.path, 'model.onnx'), 300);
    const outcome = await openNeuralModel(damaged.path);
    expect(outcome.kind === 'unavailable' ? outcome.message : '').toContain(damaged.path);
    await damaged.discard();
  });
});

describe('createNeuralHearing', () => {
  it('hears whole recordings with the product dictionary', async () => {
    const grammar = '#JSGF V1.0;\ngrammar g;\npublic <g> = suction fourteen | txv;';
    const pronunciations = { txv: ['T IY EH K S V IY'] };
    const hearing = await createNeuralHearing(model, {
      grammars: [{ text: grammar, weight: 1 }],
      pronunciations,
    });
    const heard = await hearing.hear(sayPhones('T IY EH K S V IY'));
    expect(heard.alternatives[0]?.words).toBe('txv');
  });

  it('says what is wrong with a grammar', async () => {
    const wrong = (body: string) =>
      createNeuralHearing(model, {
        grammars: [{ text: `#JSGF V1.0;\ngrammar g;\npublic <g> = ${body};`, weight: 1 }],
        pronunciations: {},
      });
    await expect(wrong('head zorbular')).rejects.toThrow(/zorbular/);
    await expect(wrong('head <nowhere>')).rejects.toThrow(/nowhere/);
  });
});

describe('readAcousticDescription', () => {
  it('says what is wrong with a description', () => {
    const told = [
      '',
      '{"phones":1}',
      '{"phones":["A"],"state":{"a":[0]}}',
      '{"phones":["A"],"state":{"a":[1]},"samplesPerStep":640}',
    ].map((text) => {
      const outcome = readAcousticDescription(text);
      return outcome.kind === 'unreadable' ? outcome.message : outcome.kind;
    });
    expect(told.map((message) => message.split(': ')[1])).toEqual([
      'it is no JSON object.',
      'phones must be a list of names.',
      'state.a must be a list of sizes.',
      'frameSamples must be a count of samples.',
    ]);
  });
});
