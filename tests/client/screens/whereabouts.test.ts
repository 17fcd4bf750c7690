import { describe, expect, it } from 'vitest';
import {
  leftOutWords,
  notDrawn,
  sendTroubleWords,
  unstoredStanding,
  unsyncedWords,
} from '../../../client/screens/words.ts';
import { type Session, sleepingSession } from '../../../client/state/session.ts';
import { EMPTY_VISIT } from '../../../core/visit/empty-visit.ts';

/** A session with so many entries that the server lacks; `null`, with no visit at all. */
function withUnsent(unsynced: number | null, more: Partial<Session> = {}): Session {
  const visit = unsynced === null ? null : '01KAXV0000000000000000000A';
  const session = sleepingSession({ ...EMPTY_VISIT, visit });
  return { ...session, unsynced: unsynced ?? 0, ...more };
}

describe('where the entries are', () => {
  it.each([
    [null, 'everything is on the server'],
    [0, 'everything is on the server'],
    [1, '1 entry on this device only'],
    [7, '7 entries on this device only'],
  ])('stored, with %s unsent', (unsent, words) => {
    expect(unsyncedWords(withUnsent(unsent))).toBe(words);
  });

  it('counts what is damaged for what it is: not on the server, and never to be', () => {
    const session = withUnsent(0, { leftOut: 1 });
    expect(unsyncedWords(session)).toBe(
      'everything that can be read of this device is on the server',
    );
    expect(leftOutWords(0)).toBeNull();
    expect(leftOutWords(1)).toMatch(/^1 damaged entry on this device is not on the server\. Save/);
    expect(leftOutWords(3)).toMatch(/^3 damaged entries on this device are not on the server/);
  });

  it.each([
    ['noAnswer', /no answer from the server\. Is there a signal\?/],
    ['tooSlow', /the signal is too thin/],
    ['serverTrouble', /the server has trouble of its own/],
    ['otherAnswer', /something else answers.*sign-in\?/],
    ['logUnread', /the storage of this device did not answer/],
  ] as const)('says why what is not sent yet is not: %s', (trouble, words) => {
    expect(sendTroubleWords(trouble)).toMatch(words);
    expect(sendTroubleWords(trouble)).toMatch(/^Not sent yet: .* I keep it here and try again\.$/);
  });

  it.each([
    [null, 'not stored: do not close', 'nothing is stored on this device'],
    [2, 'not stored: do not close', '2 entries in this page alone: keep it open until'],
    [0, 'on the server only', 'everything is on the server, and nothing is stored'],
  ])('in memory alone, with %s unsent', (unsent, standing, words) => {
    const session = withUnsent(unsent, { unstored: 'off' });
    expect(unstoredStanding(session)).toBe(standing);
    expect(unsyncedWords(session)).toContain(words);
  });
});

describe('a screen that broke', () => {
  it.each([
    ['kept', withUnsent(2), /What you recorded is kept\. Press here to reload and go on/],
    ['not kept yet', withUnsent(2, { unkept: 2 }), /Not all is kept yet: wait until/],
    ['in this page alone', withUnsent(2, { unstored: 'full' }), /in this page alone: wait until/],
    [
      'on the server',
      withUnsent(0, { unstored: 'full' }),
      /The server has .*reload and begin anew/,
    ],
  ] as const)('says what a reload costs where all is %s', (_, session, words) => {
    expect(notDrawn(session).sentence).toMatch(words);
  });
});
