import { describe, expect, it } from 'vitest';
import { ledgerLines, type Judge } from '../../../client/screens/sheet-model.ts';
import type { Reading } from '../../../core/language/utterance.ts';
import { applyEvents } from '../../../core/visit/apply.ts';
import { DEFAULT_SETTINGS, type EventBody, type VisitEvent } from '../../../core/visit/events.ts';

const reading = (
  quantity: Reading['quantity'],
  value: number,
  more: Partial<Reading> = {},
): EventBody => ({
  type: 'readingTaken',
  v: 1,
  reading: {
    quantity,
    value,
    unit: 'psi',
    unitFrom: 'implied',
    place: null,
    words: '',
    ...more,
  },
});

const OPENED: EventBody = { type: 'visitOpened', v: 1, settings: DEFAULT_SETTINGS };

function visitOf(...bodies: readonly EventBody[]) {
  const events = [OPENED, ...bodies].map((body, index): VisitEvent => ({
    id: `event ${index}`,
    device: 'device',
    seq: index + 1,
    visit: 'visit',
    at: index,
    ...body,
  }));
  return applyEvents(events);
}

const NOTHING: Judge = () => ({ target: null, off: null });
const lineOf = (id: string, bodies: readonly EventBody[], judge = NOTHING) =>
  ledgerLines(visitOf(...bodies), judge).find((line) => line.id === id);

describe('the ledger', () => {
  it('shows the usual readings blank, with their unit, before anything is read', () => {
    const lines = ledgerLines(visitOf(), NOTHING);
    expect(lines.map(({ name, unit }) => `${name} ${unit}`)).toEqual([
      'ambient °F',
      'box °F',
      'head psi',
      'suction psi',
      'suction line °F',
      'liquid line °F',
    ]);
    expect(lines.every(({ before, after }) => before === null && after === null)).toBe(true);
  });

  it('puts a reading where it belongs, not on top, and marks it as the newest', () => {
    const bodies = [reading('suctionPressure', 14), reading('headPressure', 192)];
    const lines = ledgerLines(visitOf(...bodies), NOTHING);
    expect(lines.map(({ id, newest }) => (newest ? id : null)).filter(Boolean)).toEqual([
      'headPressure',
    ]);
    expect(lines.findIndex(({ id }) => id === 'headPressure')).toBe(2);
  });

  it('keeps before and after apart', () => {
    const line = lineOf('headPressure', [
      reading('headPressure', 192),
      { type: 'beforeMarked', v: 1 },
      reading('headPressure', 158.5),
      { type: 'afterMarked', v: 1 },
    ]);
    expect(line).toMatchObject({ before: '192', after: '158.5', unit: 'psi' });
  });

  it('gives one quantity read in two places two lines', () => {
    const volts = (place: Reading['place']) => reading('voltage', 208, { unit: 'V', place });
    const lines = ledgerLines(visitOf(volts('lineSide'), volts('loadSide')), NOTHING);
    expect(lines.slice(-2).map(({ id, before }) => `${id} ${before ?? ''}`)).toEqual([
      'voltage-lineSide 208',
      'voltage-loadSide 208',
    ]);
  });

  it('shows an over-limit meter, a range and a hedge as what they are', () => {
    const ranged: EventBody = {
      type: 'readingTaken',
      v: 1,
      reading: {
        quantity: 'suctionPressure',
        low: 12,
        high: 16,
        unit: 'psi',
        unitFrom: 'implied',
        place: null,
        words: '',
      },
    };
    expect(lineOf('suctionPressure', [ranged])?.before).toBe('12 to 16');
    expect(lineOf('boxTemp', [reading('boxTemp', 44, { hedged: true })])?.before).toBe('about 44');
    const overlimit = reading('resistance', 0, { unit: 'ohm', overlimit: true });
    expect(lineOf('resistance', [overlimit])?.before).toBe('over limit');
  });

  it('writes the unit in a cell that is in another one', () => {
    const line = lineOf('headPressure', [
      reading('headPressure', 192),
      { type: 'beforeMarked', v: 1 },
      reading('headPressure', 11, { unit: 'bar' }),
    ]);
    expect(line).toMatchObject({ before: '192', after: '11 bar' });
  });

  it('says what it should be and how far off it is', () => {
    const judge: Judge = (about) =>
      about === 'headPressure'
        ? {
            target: { value: 166, unit: 'psi' },
            off: {
              answer: 'compare',
              basis: 'table',
              about,
              measured: 192,
              target: 166,
              measuredUnit: 'psi',
              value: 26,
              unit: 'psi',
              direction: 'over',
            },
          }
        : { target: null, off: null };
    const line = lineOf('headPressure', [reading('headPressure', 192)], judge);
    expect(line).toMatchObject({ target: '166', off: '26 over' });
  });
});
