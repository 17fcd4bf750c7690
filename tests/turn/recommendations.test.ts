import { describe, expect, it } from 'vitest';
import { draftNote } from '../../core/note/draft-note.ts';
import { takeTurn } from '../../core/turn/take-turn.ts';
import { EMPTY_MEMORY, type Stamp, type Turn } from '../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../core/visit/empty-visit.ts';
import type { EventBody } from '../../core/visit/events.ts';

/** Wednesday 25 November 2026, half past six in the evening in Denver: Thursday in UTC. */
const AT = Date.UTC(2026, 10, 26, 1, 30);
const DENVER = -7 * 60;

function stampAt(at: number, utcOffset?: number): Stamp {
  let seq = 0;
  return (body: EventBody) => {
    seq += 1;
    const id = `01KAXVS${String(seq).padStart(19, '0')}`;
    const visit = '01KAXVS1T00000000000000000';
    const local = utcOffset === undefined ? {} : { utcOffset };
    return { ...body, id, device: visit, seq, visit, at, ...local };
  };
}

const say = (words: string, stamp: Stamp = stampAt(AT, DENVER)): Turn =>
  takeTurn({ state: EMPTY_VISIT, memory: EMPTY_MEMORY, words, stamp });

const toldTheOffice = ({ state }: Turn): readonly string[] =>
  draftNote(state).sections.find(({ id }) => id === 'office')?.lines ?? [];

const noted = ({ state }: Turn): readonly string[] =>
  draftNote(state).sections.find(({ id }) => id === 'recommendations')?.lines ?? [];

/** Days by a calendar: November 2026 begins on a Sunday, December on a Tuesday. */
const CASES: readonly (readonly [string, string, string, string])[] = [
  [
    'come back in two weeks to check the charge',
    'Come back Wednesday, December 9, to check the charge.',
    'Come back Wednesday, December 9, 2026, to check the charge.',
    'Return visit on Wednesday, December 9, 2026 to check the charge.',
  ],
  [
    'replace the condenser fan motor within a month',
    'To recommend: replace the condenser fan motor by Friday, December 25.',
    'Replace the condenser fan motor by Friday, December 25, 2026.',
    'To do: replace the condenser fan motor by Friday, December 25, 2026.',
  ],
  [
    'come back tomorrow',
    'Come back Thursday, November 26.',
    'Come back Thursday, November 26, 2026.',
    'Return visit on Thursday, November 26, 2026.',
  ],
  [
    'come back next tuesday to check the charge',
    'Come back Tuesday, December 1, to check the charge.',
    'Come back Tuesday, December 1, 2026, to check the charge.',
    'Return visit on Tuesday, December 1, 2026 to check the charge.',
  ],
  [
    'order a door gasket by friday',
    'To recommend: order the door gasket by Friday, November 27.',
    'Order the door gasket by Friday, November 27, 2026.',
    'To do: order the door gasket by Friday, November 27, 2026.',
  ],
  [
    'come back on wednesday',
    'Come back Wednesday, December 2.',
    'Come back Wednesday, December 2, 2026.',
    'Return visit on Wednesday, December 2, 2026.',
  ],
  [
    'come back on the fifteenth',
    'Come back Tuesday, December 15.',
    'Come back Tuesday, December 15, 2026.',
    'Return visit on Tuesday, December 15, 2026.',
  ],
  [
    'they should replace the compressor by december first',
    'To recommend: replace the compressor by Tuesday, December 1.',
    'Replace the compressor by Tuesday, December 1, 2026.',
    'To do: replace the compressor by Tuesday, December 1, 2026.',
  ],
  [
    'clean the condenser every three months',
    'To recommend: clean the condenser every 3 months, first by February 25, 2027.',
    'Clean the condenser every 3 months, first by February 25, 2027.',
    'To do: clean the condenser every 3 months, first by February 25, 2027.',
  ],
  [
    "needs a new contactor, it's pitted",
    "To recommend: replace the contactor, it's pitted.",
    "Replace the contactor, it's pitted.",
    "To do: replace the contactor, because it's pitted.",
  ],
  [
    'they should replace the gasket before summer',
    'To recommend: replace the door gasket before summer.',
    'Replace the door gasket before summer.',
    'To do: replace the door gasket before summer.',
  ],
  [
    'they should replace the door gasket',
    'To recommend: replace the door gasket.',
    'Replace the door gasket.',
    'To do: replace the door gasket.',
  ],
];

describe('a recommendation', () => {
  it.each(CASES)('is said back with its day and stands in the note: %s', (...row) => {
    const [said, reply, line, office] = row;
    const turn = say(said);
    expect(turn.reply.text).toBe(reply);
    expect(turn.reply.spoken).toBe(reply);
    expect(noted(turn)).toEqual([line]);
    expect(toldTheOffice(turn)).toContain(office);
  });

  it('is counted from the day it is where it was said, by UTC where that was not kept', () => {
    const said = 'come back tomorrow';
    expect(say(said, stampAt(AT)).reply.text).toBe('Come back Friday, November 27.');
    expect(say(said, stampAt(AT, 13 * 60)).reply.text).toBe('Come back Friday, November 27.');
    expect(say(said, stampAt(AT, DENVER)).reply.text).toBe('Come back Thursday, November 26.');
  });

  it('for the thirty-first of a month that has none is for the next that has', () => {
    expect(say('come back on the thirty first').reply.text).toBe(
      'Come back Thursday, December 31.',
    );
    const june = stampAt(Date.UTC(2027, 5, 3), 0);
    expect(say('come back on the thirty first', june).reply.text).toBe(
      'Come back Saturday, July 31.',
    );
  });

  it('for a month after the last of January is for the last of February', () => {
    const january = stampAt(Date.UTC(2028, 0, 31, 12), 0);
    expect(say('come back in a month', january).reply.text).toBe('Come back Tuesday, February 29.');
  });
});
