import { afterEach, describe, expect, it, vi } from 'vitest';
import { createDeviceChoices } from '../../client/offline/device-choice.ts';

/** As much of a browser's storage as choices use. */
function storageOf(kept = new Map<string, string>()) {
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
}

const refusing = (): never => {
  throw new Error('no storage');
};

afterEach(() => {
  vi.restoreAllMocks();
});

describe('a choice of this device', () => {
  it('is the first of its list until another is chosen, and outlives the page', () => {
    const storage = storageOf();
    const before = createDeviceChoices(() => storage, refusing);
    const wording = before.of('wording', ['varied', 'plain']);
    expect(wording.read()).toBe('varied');
    wording.choose('plain');
    before.text('parts').choose('blower wheel');
    const after = createDeviceChoices(() => storage, refusing);
    expect(after.of('wording', ['varied', 'plain']).read()).toBe('plain');
    expect(after.text('parts').read()).toBe('blower wheel');
  });

  it('is the first of its list where what is kept is none of it', () => {
    const storage = storageOf(new Map([['gloveside: wording', 'loud']]));
    const choices = createDeviceChoices(() => storage, refusing);
    expect(choices.of('wording', ['varied', 'plain']).read()).toBe('varied');
  });

  it('holds for the page alone where it cannot be stored, and that is told', () => {
    vi.spyOn(console, 'error').mockImplementation(() => undefined);
    let told = 0;
    const choices = createDeviceChoices(refusing, () => (told += 1));
    const wording = choices.of('wording', ['varied', 'plain']);
    const parts = choices.text('parts');
    expect([wording.read(), parts.read(), told]).toEqual(['varied', '', 0]);
    wording.choose('plain');
    parts.choose('blower wheel');
    expect([wording.read(), parts.read(), told]).toEqual(['plain', 'blower wheel', 2]);
  });
});
