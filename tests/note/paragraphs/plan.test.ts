import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NO_NAMES } from '../../../core/language/names/known-names.ts';
import { paragraphLines } from '../../../core/note/paragraphs/paragraphs.ts';
import { planParagraphs } from '../../../core/note/paragraphs/plan.ts';
import { passageText } from '../../../core/note/paragraphs/sentences.ts';
import { takeTurn } from '../../../core/turn/take-turn.ts';
import { EMPTY_MEMORY } from '../../../core/turn/turn.ts';
import { EMPTY_VISIT } from '../../../core/visit/empty-visit.ts';
import type { VisitState } from '../../../core/visit/state.ts';
import { createStamp } from '../../support/stamp.ts';
import { facts } from './random-facts.ts';

function visitCarrying(parts: readonly string[], ...sentences: readonly string[]): VisitState {
  const stamp = createStamp();
  const names = { ...NO_NAMES, parts };
  return sentences.reduce(
    ({ state, memory }, words) => takeTurn({ state, memory, words, names, stamp }),
    { state: EMPTY_VISIT, memory: EMPTY_MEMORY },
  ).state;
}

const visit = (...sentences: readonly string[]): VisitState => visitCarrying([], ...sentences);

const customer = (...said: readonly string[]): readonly string[] =>
  paragraphLines('customer', visit(...said), []);
const office = (...said: readonly string[]): readonly string[] =>
  paragraphLines('office', visit(...said), []);

describe('the paragraphs of a note', () => {
  it('tell the customer what a thing is, what it does, and name it once in full', () => {
    expect(
      customer("condenser's plugged", "that's my before", 'i brushed the condenser').join(' '),
    ).toBe(
      'We found that the coil that gets rid of the heat was clogged. When that happens, the heat cannot get out, so ' +
        'the unit runs long, cools poorly and can shut itself off. We brushed that coil.',
    );
  });

  it('say what was agreed before the visit, and that it was done', () => {
    expect(
      customer('came back to replace the contactor', 'cut the old one out', "new one's in").join(
        ' ',
      ),
    ).toBe('We came to replace the relay that switches the power. We replaced that relay.');
    expect(
      office('here to clean the condenser and the evaporator', 'washed the condenser').join(' '),
    ).toContain('Came to clean the condenser and clean the evaporator. Washed the condenser.');
  });

  it('keep the full names of two things of one kind apart', () => {
    const [told] = customer(
      "condenser's dirty",
      'evaporator is iced up',
      "that's my before",
      'i brushed the condenser',
    );
    expect(told).toContain('We brushed the coil that gets rid of the heat.');
  });

  it('quote a complaint word for word, but for who said it to whom', () => {
    const said = ['memo customer says it trips every afternoon'];
    expect(customer(...said)).toEqual(['You called us about "it trips every afternoon".']);
    expect(office(...said)).toEqual(['Called for "customer says it trips every afternoon".']);
  });

  it('keep what is likely likely, and a cause that was told told', () => {
    const overfull = [
      "it's a walk in cooler on four oh four a with a txv",
      'set point thirty eight',
      'ambient seventy five, head two sixty eight, suction seventy four, box forty two',
      'suction line forty three, liquid line eighty seven',
      "that's my before",
    ];
    expect(customer(...overfull).join(' ')).toContain(
      'By what we measured, the most likely cause was too much refrigerant in the unit. If that is so,',
    );
    const told = customer(...overfull, 'the cause was air in the system').join(' ');
    expect(told).toContain('The cause was air in the refrigerant piping. When that happens,');
    expect(told).not.toMatch(/likely/);
  });

  it('name the very part that went in, which the office bills', () => {
    const state = visitCarrying(
      ['Copperline 012 contactor'],
      "contactor's burnt",
      'put in a new copperline zero one two contactor',
    );
    expect(paragraphLines('customer', state, []).join(' ')).toContain(
      'We replaced that relay (Copperline 012 contactor).',
    );
    expect(paragraphLines('office', state, []).join(' ')).toContain(
      'Replaced the contactor (Copperline 012 contactor).',
    );
  });

  it('begin with what must stay off', () => {
    const grounded = ['memo breaker trips', 'common to ground point oh two megohms'];
    expect(customer(...grounded)[0]).toMatch(/^The unit must not be switched on: /);
    expect(office(...grounded)[0]).toMatch(/^Not to be switched on: /);
  });

  it('bill refrigerant by weight, and say when none was recorded', () => {
    const moved = office(
      "it's a walk in cooler on four oh four a with a txv",
      'recovered six pounds two ounces',
      'evacuated the system',
      'added six pounds four ounces of 404a',
    ).join(' ');
    expect(moved).toContain('Recovered 6 lb 2 oz and added 6 lb 4 oz of R-404A.');
    expect(moved).toContain('In it now, by the scale, 6 lb 4 oz;');
    expect(office("condenser's plugged", 'i brushed the condenser').join(' ')).toContain(
      'No refrigerant was recorded in or out.',
    );
  });

  it('say once what the product was at where it stayed', () => {
    const lines = customer('box thirty eight, product forty', 'added four ounces', 'product forty');
    const told = lines.join(' ');
    expect(told.match(/40 °F/g)).toHaveLength(1);
  });

  it('give what is to do its day and its reason', () => {
    expect(office("needs a new contactor, it's pitted").at(-1)).toBe(
      "To do: replace the contactor, because it's pitted.",
    );
    expect(customer('come back in two weeks to check the charge').at(-1)).toMatch(
      /^We will come back on \w+day, [A-Z][a-z]+ \d+, \d{4} to check the charge\.$/,
    );
  });
});

/** Words that say nothing to who owns the unit. */
const JARGON =
  /\b(condens\w+|evaporators?|TXV|cut-?out|subcool\w*|superheat|contactor|solenoid|drier|gasket|suction|discharge|head pressure|liquid line|overload|capillary|crankcase|king valve|schrader|evacuat\w+|psi|micron|ambient|nameplate|restriction|short cycling|hunting|flash gas|non-?condensable\w*|accumulator|receiver)\b/i;

describe('the customer’s paragraphs', () => {
  it('use no word that only the trade knows, whatever the facts', () => {
    fc.assert(
      fc.property(facts, (all) => {
        const text = planParagraphs(all, 'customer').flat().map(passageText).join(' ');
        const own = text.replace(/"[^"]*"/g, '');
        expect(JARGON.exec(own)?.[0] ?? null).toBeNull();
      }),
      { numRuns: 1500, seed: 3 },
    );
  });
});
