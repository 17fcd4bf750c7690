import { describe, expect, it } from 'vitest';
import { NO_NAMES } from '../../../../core/language/names/known-names.ts';
import type { Ear, EarOpening, Heard } from '../../../../client/ear/ear.ts';
import { createChosenEar, type EarChoice } from '../../../../client/ear/native/chosen-ear.ts';
import type { NativeEar } from '../../../../client/ear/native/native-ear.ts';
import { settled } from '../../scripted.ts';

const OPEN: EarOpening = { kind: 'open' };

function setUp({ has = true, opening = OPEN } = {}) {
  const calls: string[] = [];
  const heard: Heard[] = [];
  let choice: EarChoice = 'browserAnywhere';
  let fail: () => void = () => undefined;
  let tellOwn: (one: Heard) => void = () => undefined;
  let tellNative: (one: Heard) => void = () => undefined;
  const own: Ear = {
    open: () => {
      calls.push('own open');
      return Promise.resolve(opening);
    },
    listen: (expectation) => void calls.push(`own listen ${expectation}`),
    gate: () => void calls.push('own gate'),
    close: () => void calls.push('own close'),
    onHeard: (report) => {
      tellOwn = report;
    },
    onLevel: () => undefined,
    onProgress: () => undefined,
  };
  const native: NativeEar = {
    open: () => void calls.push('native open'),
    listen: (expectation) => void calls.push(`native listen ${expectation}`),
    gate: () => void calls.push('native gate'),
    close: async () => {
      calls.push('native close');
      await settled();
      calls.push('native closed');
    },
    onHeard: (report) => {
      tellNative = report;
    },
  };
  const ear = createChosenEar({
    own,
    choice: () => choice,
    openNative: (wanted, onUseless) => {
      calls.push(`find ${wanted}`);
      fail = onUseless;
      return Promise.resolve(has ? native : null);
    },
  });
  ear.onHeard((one) => {
    if (one.kind === 'noise') calls.push('noise is not measured');
    else heard.push(one);
  });
  return {
    ear,
    calls,
    heard,
    choose: (next: EarChoice) => {
      choice = next;
    },
    fail: async () => {
      fail();
      for (let turn = 0; turn < 3; turn += 1) await settled();
    },
    tellOwn: (one: Heard) => tellOwn(one),
    tellNative: (one: Heard) => tellNative(one),
  };
}

const OWN_AGAIN = { kind: 'news', news: 'ownAgain' } as const;

describe('the ear that was chosen', () => {
  it('is ours, unless the browser’s was chosen', async () => {
    const on = setUp();
    on.choose('own');
    await on.ear.open();
    on.ear.listen('anything', NO_NAMES);
    expect(on.calls).toEqual(['own open', 'own listen anything']);
  });

  it('has one microphone: ours is closed before the browser’s opens', async () => {
    const on = setUp();
    await on.ear.open();
    on.ear.listen('number', NO_NAMES);
    on.ear.gate();
    expect(on.calls).toEqual([
      'own close',
      'find browserAnywhere',
      'native open',
      'noise is not measured',
      'native listen number',
      'native gate',
    ]);
  });

  it('that fails for good gives way to ours, told, with what was waited for, once it has let go', async () => {
    const on = setUp();
    await on.ear.open();
    on.ear.listen('number', NO_NAMES);
    on.calls.length = 0;
    await on.fail();
    await on.fail();
    expect(on.calls).toEqual(['native close', 'native closed', 'own open', 'own listen number']);
    expect(on.heard).toEqual([OWN_AGAIN]);
    on.tellNative({ kind: 'unclear' });
    on.tellOwn({ kind: 'hearing' });
    expect(on.heard.slice(1)).toEqual([{ kind: 'hearing' }]);
    await on.ear.open();
    expect(on.calls.at(-1)).toBe('own open');
  });

  it('that fails over and over counts as one that failed for good; a refusal is a refusal', async () => {
    const on = setUp();
    await on.ear.open();
    on.tellNative({ kind: 'deaf', why: 'recogniserFailed' });
    for (let turn = 0; turn < 3; turn += 1) await settled();
    expect(on.heard).toEqual([OWN_AGAIN]);
    const refused = setUp();
    await refused.ear.open();
    refused.tellNative({ kind: 'deaf', why: 'refused' });
    expect(refused.heard).toEqual([{ kind: 'deaf', why: 'refused' }]);
  });

  it('that the browser has not is ours from the start, and that is told', async () => {
    const on = setUp({ has: false });
    on.choose('browserOnDevice');
    expect(await on.ear.open()).toEqual({ kind: 'open' });
    expect(on.heard).toEqual([OWN_AGAIN]);
    await on.ear.open();
    expect(on.heard).toHaveLength(1);
  });

  it('and ours, both deaf, says why', async () => {
    const on = setUp({ opening: { kind: 'deaf', why: 'noMicrophone' } });
    await on.ear.open();
    await on.fail();
    expect(on.heard).toEqual([{ kind: 'deaf', why: 'noMicrophone' }]);
  });

  it('may be chosen anew, and then tried again', async () => {
    const on = setUp();
    await on.ear.open();
    await on.fail();
    on.choose('own');
    await on.ear.open();
    on.choose('browserAnywhere');
    on.calls.length = 0;
    await on.ear.open();
    expect(on.calls.slice(0, 3)).toEqual(['own close', 'find browserAnywhere', 'native open']);
  });
});
