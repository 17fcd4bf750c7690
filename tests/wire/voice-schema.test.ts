import { describe, expect, it } from 'vitest';
import { readVoice } from '../../core/wire/voice-schema.ts';

const VOICE = { version: 1, edition: 'tiny', correction: [[0.25, -0.5]] };

describe('readVoice', () => {
  it('reads what was kept', () => {
    expect(readVoice(JSON.stringify(VOICE))).toEqual({ kind: 'voice', voice: VOICE });
  });

  it.each([
    ['torn text', '{"version":1,"edi', ''],
    ['another version', JSON.stringify({ ...VOICE, version: 2 }), 'version'],
    ['no name of a model', JSON.stringify({ ...VOICE, edition: '' }), 'edition'],
    [
      'a weight that is none',
      JSON.stringify({ ...VOICE, correction: [[0, null]] }),
      'correction.0.1',
    ],
    [
      'a weight that drowns all',
      JSON.stringify({ ...VOICE, correction: [[1e3]] }),
      'correction.0.0',
    ],
    ['a sound recorded beside it', JSON.stringify({ ...VOICE, samples: [0] }), ''],
  ])('refuses %s and names the place', (_what, text, path) => {
    expect(readVoice(text)).toEqual({ kind: 'damaged', path });
  });
});
