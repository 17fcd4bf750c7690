import { describe, expect, it } from 'vitest';
import { noticeWords } from '../../../client/screens/words.ts';
import { stage } from '../scripted.ts';

const WHY = 'place 4 is taken';
const SENT = { kind: 'unsynced', events: 0, leftOut: 0, trouble: null, refused: null } as const;
const notice = { kind: 'refused' } as const;

describe('a server that refuses what was recorded', () => {
  const refuse = (on: ReturnType<typeof stage>, events: number): void =>
    on.runner.send({ ...SENT, events, refused: WHY });

  it('is told once, in its words and with what to do, and stands for as long as it lasts', () => {
    const on = stage();
    refuse(on, 3);
    expect(on.runner.session()).toMatchObject({ unsynced: 3, refused: WHY, notice });
    expect(noticeWords(notice)).toMatch(/Under “visit” stands why, and a press sends it again/);
    on.runner.send({ kind: 'typedTooLong', words: 900, most: 500 });
    refuse(on, 4);
    expect(on.runner.session()).toMatchObject({ unsynced: 4, notice: { kind: 'tooLong' } });
  });

  it('is told anew where it refuses again what was sent again', () => {
    const on = stage();
    refuse(on, 3);
    on.runner.send({ ...SENT, events: 3 });
    expect(on.runner.session().refused).toBeNull();
    on.runner.send({ kind: 'typedTooLong', words: 900, most: 500 });
    refuse(on, 3);
    expect(on.runner.session().notice).toEqual(notice);
  });
});
