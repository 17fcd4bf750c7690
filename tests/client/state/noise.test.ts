import { describe, expect, it } from 'vitest';
import type { RoomNoise } from '../../../core/hearing/earshot.ts';
import { earshotWords, sayEarNews } from '../../../client/screens/words.ts';
import { listening, offered, settled, type Stage } from '../scripted.ts';

const AT_DB = -40;
const SAID = 'the ear is tooLoud.';

/** A sentence ends, and its words come. */
function speak(on: Stage, snrDb: number | null, words: string): void {
  hearNoise(on, { noiseDb: AT_DB, snrDb, sentence: true });
  on.ear.hear(offered(words));
}

function hearNoise(on: Stage, noise: RoomNoise | null): void {
  on.ear.hear({ kind: 'noise', noise });
}

const room = (on: Stage, noiseDb: number, seconds: number): void => {
  for (let second = 0; second < seconds; second += 1) {
    hearNoise(on, { noiseDb, snrDb: null, sentence: false });
  }
};

/** The voice is done and the ear open again. */
async function spoken(on: Stage): Promise<void> {
  await settled();
  on.voice.finish();
  await settled();
  on.clock.advance(1_000);
  await settled();
}

async function saidOf(on: Stage, snrDb: number | null, words: string): Promise<string | undefined> {
  speak(on, snrDb, words);
  await settled();
  const said = on.voice.said.at(-1);
  await spoken(on);
  return said;
}

describe('noise that a voice hardly stands out of', () => {
  it('is told once, before the reply to the sentence that showed it', async () => {
    const on = await listening();
    expect(await saidOf(on, 15, '140')).toBe('spoken 140');
    expect(await saidOf(on, 4, '141')).toBe(`${SAID} spoken 141`);
    expect(await saidOf(on, 3, '142')).toBe('spoken 142');
    expect(await saidOf(on, 6, '143')).toBe('spoken 143');
    expect(on.runner.session().visit.readings).toHaveLength(4);
  });

  it('is told again when it comes again', async () => {
    const on = await listening();
    await saidOf(on, 4, '140');
    expect(await saidOf(on, 15, '141')).toBe('spoken 141');
    expect(await saidOf(on, 4, '142')).toBe(`${SAID} spoken 142`);
  });

  it('is told between two sentences when it begins while nobody speaks, and the page listens on', async () => {
    const on = await listening();
    await saidOf(on, 20, '140');
    room(on, AT_DB + 19, 2);
    await settled();
    expect(on.voice.said).toEqual(['spoken 140']);
    room(on, AT_DB + 19, 1);
    await settled();
    expect([on.voice.said.at(-1), on.ear.calls.at(-1)]).toEqual([SAID, 'gate']);
    await spoken(on);
    expect(on.ear.calls.at(-1)).toBe('listen anything');
    room(on, AT_DB + 19, 20);
    await settled();
    expect(on.voice.said.filter((said) => said === SAID)).toHaveLength(1);
  });

  it('waits for the end of an answer', async () => {
    const on = await listening();
    await saidOf(on, 20, '140');
    on.ear.hear(offered('question'));
    await settled();
    room(on, AT_DB + 19, 5);
    await settled();
    expect([on.runner.session().mode.kind, on.voice.said]).toEqual([
      'speaking',
      ['spoken 140', 'spoken question'],
    ]);
    await spoken(on);
    room(on, AT_DB + 19, 1);
    await settled();
    expect(on.voice.said.at(-1)).toBe(SAID);
  });

  it('is told in place of the tone where nothing was understood', async () => {
    const on = await listening();
    await saidOf(on, 20, '140');
    on.runner.send({ kind: 'pressed' });
    room(on, AT_DB + 19, 5);
    on.runner.send({ kind: 'pressed' });
    await settled();
    const tones = on.tones.length;
    on.ear.hear({ kind: 'unclear' });
    await settled();
    expect([on.voice.said.at(-1), on.tones.slice(tones)]).toEqual([SAID, []]);
  });

  it('is not told to whoever has the keys in front of him', async () => {
    const on = await listening();
    on.runner.send({ kind: 'tabChosen', tab: 'keys' });
    expect(await saidOf(on, 4, '140')).toBe('spoken 140');
    expect(await saidOf(on, 4, '141')).toBe('spoken 141');
  });

  it('says nothing of itself once the fan is off', async () => {
    const on = await listening();
    await saidOf(on, 4, '140');
    room(on, AT_DB - 20, 3);
    expect(earshotWords(on.runner.session().earshot)).toBe('voice 24 dB over noise: clear');
  });

  it('is forgotten with the ear that measured it', async () => {
    const on = await listening();
    await saidOf(on, 4, '140');
    hearNoise(on, null);
    expect(earshotWords(on.runner.session().earshot)).toBeNull();
  });
});

describe('what was heard in it', () => {
  it('reaches the turn less sure than the engine was', async () => {
    const on = await listening();
    const heard: unknown[] = [];
    const asked = await listening({
      takeTurn: (input) => {
        heard.push(input.words);
        return on.turnOf('question', on.runner.session());
      },
    });
    speak(asked, 4, 'head one ninety two');
    await settled();
    expect(heard).toEqual([[{ words: 'head one ninety two', confidence: 0.8 }]]);
  });
});

describe('its words', () => {
  it('say what to do', () => {
    expect(sayEarNews('tooLoud')).toMatch(/closer.*keys/);
  });

  it('tell where the voice is', async () => {
    const on = await listening();
    expect(earshotWords(on.runner.session().earshot)).toBeNull();
    room(on, AT_DB, 1);
    expect(earshotWords(on.runner.session().earshot)).toMatch(/^noise: talk/);
    await saidOf(on, 8, '140');
    expect(earshotWords(on.runner.session().earshot)).toBe('voice 8 dB over noise: come closer');
    room(on, AT_DB + 12, 3);
    expect(earshotWords(on.runner.session().earshot)).toBe('voice 4 dB under noise: too loud');
    await spoken(on);
    await saidOf(on, null, '140');
    expect(earshotWords(on.runner.session().earshot)).toBe('voice lost in the noise: too loud');
  });
});

describe('the keys', () => {
  it('give the field its room back when they are put away', async () => {
    const on = await listening();
    on.runner.send({ kind: 'tabChosen', tab: 'keys' });
    expect([on.runner.session().tab, on.runner.session().tall]).toEqual(['keys', true]);
    on.runner.send({ kind: 'typed', words: '140' });
    await settled();
    expect(on.runner.session().tab).toBe('keys');
    on.runner.send({ kind: 'tabChosen', tab: 'sheet' });
    expect([on.runner.session().tab, on.runner.session().tall]).toEqual(['sheet', false]);
  });
});
