import { describe, expect, it } from 'vitest';
import type { CautionId, Known } from '../../core/advice/verdict.ts';
import type { Doubt, Reading } from '../../core/language/utterance.ts';
import { checkable } from '../../core/replies/amounts.ts';
import { designation } from '../../core/replies/designation.ts';
import type { Reply } from '../../core/replies/reply.ts';
import { cautionsSpoken, say, type Outcome } from '../../core/replies/say.ts';
import type { Acknowledgement } from '../../core/visit/acknowledgement.ts';
import { read } from '../advice/visits.ts';

const US = { units: 'us' } as const;
const NOTHING: Outcome = { acknowledgements: [], verdicts: [], nothingHeard: false };

const reply = (part: Partial<Outcome>, settings: { units: 'us' | 'si' } = US): Reply =>
  say({ ...NOTHING, ...part }, settings);
const kept = (...acknowledgements: Acknowledgement[]): Reply => reply({ acknowledgements });
const reading = (one: Reading): Acknowledgement => ({ kind: 'reading', reading: one });
const doubt = (one: Reading, why: Doubt['why']): Acknowledgement => ({
  kind: 'doubt',
  doubt: { ...one, why },
});

describe('what was kept is said back', () => {
  it('in one breath, by name and value', () => {
    const { text, large, earcon } = kept(
      reading(read('headPressure', 192, 'psi')),
      reading(read('suctionPressure', 14, 'psi')),
    );
    expect(text).toBe('Head 192, suction 14.');
    expect(large).toEqual({ name: 'suction', value: '14', unit: 'psi' });
    expect(earcon).toBe('kept');
  });

  const probed = (words: string, value: number): Reading => ({
    ...read('productTemp', value, 'degF'),
    words,
  });

  it('with the food that was probed by its name, kept, put right or asked about', () => {
    const [milk, cheese] = [probed('milk is forty two', 42), probed('cheese forty four', 44)];
    const both = kept(reading(milk), reading(cheese));
    expect([both.text, both.spoken]).toEqual(['Milk 42, cheese 44.', 'Milk 42. Cheese 44.']);
    expect(both.large).toEqual({ name: 'cheese', value: '44', unit: '°F' });
    const to = { ...cheese, value: 45 };
    expect(kept({ kind: 'amended', from: cheese, to }).text).toBe('Cheese 45 now, was 44.');
    expect(kept(doubt(probed('milk is four hundred', 400), 'outOfRange')).text).toMatch(
      /^Milk 400\? /,
    );
    expect(kept(reading(probed('product forty one', 41))).text).toBe('Product 41.');
  });

  it('with its unit where that is not the visit’s own, and its place', () => {
    const bar = reading(read('headPressure', 12.8, 'bar'));
    expect(kept(bar).text).toBe('Head 12.8 bar.');
    expect(reply({ acknowledgements: [bar] }, { units: 'si' }).text).toBe('Head 12.8.');
    const volts: Reading = { ...read('voltage', 208, 'V'), place: 'contactor' };
    expect(kept(reading(volts)).text).toBe('Contactor 208 V.');
  });

  it('with what was said about how it was taken', () => {
    const tripped: Reading = { ...read('headPressure', 380, 'psi'), event: 'tripped' };
    expect(kept(reading(tripped)).text).toBe('Head 380 as it tripped.');
    const range: Reading = {
      quantity: 'headPressure',
      low: 190,
      high: 200,
      unit: 'psi',
      unitFrom: 'implied',
      place: null,
      words: '',
    };
    expect(kept(reading(range)).text).toBe('Head 190 to 200.');
    const added: Reading = { ...read('refrigerantAdded', 8, 'oz'), refrigerant: 'R-134a' };
    expect(kept(reading(added))).toMatchObject({
      text: 'Added 8 oz of R-134a.',
      spoken: 'Added 8 ounces of R one thirty four A.',
    });
    expect(kept(reading(read('refrigerantAdded', 0, 'lb'))).text).toBe('No refrigerant added.');
  });

  it.each([
    ['15', 'one five, 15'],
    ['50', 'five zero, 50'],
    ['116', 'one one six, 116'],
    ['160', 'one six zero, 160'],
    ['12.5', 'one two point five, 12.5'],
    ['-6', 'minus 6'],
    ['-16', 'minus one six, minus 16'],
    ['192', '192'],
    ['20', '20'],
    ['112', '112'],
  ])('%s is said "%s", so that a slip is noticed', (digits, spoken) => {
    expect(checkable(digits)).toBe(spoken);
  });

  it('an amended reading with its old value, what was taken back by name', () => {
    const [from, to] = [read('suctionPressure', 14, 'psi'), read('suctionPressure', 17, 'psi')];
    expect(kept({ kind: 'amended', from, to }).text).toBe('Suction 17 now, was 14.');
    expect(kept({ kind: 'takenBack', what: { of: 'reading', reading: from } }).text).toBe(
      'Taken back: suction 14.',
    );
  });

  it('work before any reading is answered at once with what is lost and what to do', () => {
    const work = { did: 'brush', part: 'condenser', words: '' } as const;
    expect(kept({ kind: 'work', work, beforeBaseline: true }).text).toBe(
      'Condenser brushed. No readings were taken before it: the note will say so. Read the unit now, before going on.',
    );
    expect(kept({ kind: 'work', work, beforeBaseline: false }).text).toBe('Condenser brushed.');
  });

  it('an unqualified fan is asked about', () => {
    const finding = { part: 'fan', state: 'notRunning', unresolved: true, words: '' } as const;
    expect(kept({ kind: 'finding', finding }).text).toMatch(
      /Which fan: condenser, or evaporator\?$/,
    );
  });
});

describe('what is doubted is asked', () => {
  it.each([
    [
      doubt(read('headPressure', 840, 'psi'), 'outOfRange'),
      'Head 840? That is beyond what this refrigerant can show. Say yes to keep it, or say it again.',
    ],
    [
      doubt(read('suctionPressure', 200, 'psi'), 'againstSibling'),
      'Suction 200? That would put suction above head. Say yes to keep it, or say it again.',
    ],
    [
      doubt({ ...read('suctionPressure', -2, 'psi'), unit: null }, 'noUnit'),
      'Suction -2? Is that psi, or inches of vacuum? Say it again with the unit.',
    ],
  ])('%#', (asked, text) => {
    expect(kept(asked)).toMatchObject({ text, earcon: 'again' });
  });

  it('after what was kept in the same breath, numbers without a meaning last', () => {
    const { text } = kept({ kind: 'leftOver', digits: '42' }, reading(read('boxTemp', 36, 'degF')));
    expect(text).toBe('Box 36. 42? Say what that is of.');
  });
});

const HEAD: Known = {
  kind: 'known',
  answer: 'target',
  about: 'headPressure',
  value: 166.21,
  unit: 'psi',
  basis: 'ambientPlusSplit',
  through: { about: 'condensingTemp', value: 118, unit: 'degF' },
  reading: { measured: 192, value: 25.79, unit: 'psi', direction: 'over' },
  formula: 'coilPressure',
  inputs: [],
  source: null,
  cautions: ['flammable'],
};

describe('answers', () => {
  it('come first, then what they mean; cautions before them, once', () => {
    const answered = 'Head should be about 166 psi, condensing at 118 °F. You are 26 psi over.';
    const first = reply({ verdicts: [HEAD] });
    expect(first.text).toMatch(/^Careful: this refrigerant burns\./);
    expect(first.text.endsWith(answered)).toBe(true);
    expect(first.large).toEqual({ name: 'head', value: '166', unit: 'psi' });
    const again = reply({ verdicts: [HEAD], cautionsSaid: ['flammable'] });
    expect(again.text).toBe(answered);
    expect(again.earcon).toBe('answer');
  });

  it('report which cautions they said, those of the state too', () => {
    const cautions: readonly CautionId[] = ['liveWork', 'flammable'];
    const outcome: Outcome = { ...NOTHING, verdicts: [HEAD], cautions, cautionsSaid: ['liveWork'] };
    expect(cautionsSpoken(outcome)).toEqual(['flammable']);
  });

  it('say units and signs in words for the voice', () => {
    const { spoken } = reply({
      verdicts: [
        {
          ...HEAD,
          answer: 'saturation',
          refrigerant: 'R-404A',
          given: { value: -20, unit: 'degF' },
          value: 16,
          phase: 'dew',
        },
      ],
      cautionsSaid: ['flammable'],
    });
    expect(spoken).toMatch(/^R four oh four A at minus 20 degrees: 16 /);
    expect(spoken).not.toMatch(/[°-]/);
  });

  it('needs and refusals end with what to do', () => {
    const need = reply({
      verdicts: [{ kind: 'needs', about: 'headPressure', need: 'ambientTemp' }],
    });
    expect(need.text).toBe('Tell me the ambient at the condenser. I need it for head.');
    const refused = reply({
      verdicts: [
        {
          kind: 'refused',
          about: 'superheat',
          reason: 'belowZeroSuperheat',
          value: -9,
          unit: 'dF',
          cautions: ['wetOrWrongRefrigerant'],
        },
      ],
    });
    expect(refused.text).toMatch(/Check the clamp, the gauge and the refrigerant\.$/);
    expect(refused.text).toMatch(/liquid is coming back/);
  });

  it('nothing heard is asked for again', () => {
    expect(reply({ nothingHeard: true })).toMatchObject({
      text: 'I did not catch that. Say it again.',
      earcon: 'again',
    });
  });
});

describe('designations for the voice', () => {
  it.each([
    ['R-134a', 'R one thirty four A'],
    ['R-404A', 'R four oh four A'],
    ['R-22', 'R twenty two'],
    ['R-410A', 'R four ten A'],
    ['R-600a', 'R six hundred A'],
    ['R-1234yf', 'R twelve thirty four Y F'],
  ] as const)('%s', (id, spoken) => {
    expect(designation(id)).toEqual({ text: id, spoken });
  });
});
