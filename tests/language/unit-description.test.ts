import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';
import { REFRIGERANTS, type RefrigerantId } from '../../core/terms/refrigerants.ts';
import { shortForm } from '../corpus/short-form.ts';

/** As technicians say the designation, written here by hand: the language's own names are not asked. */
const SPOKEN: Record<RefrigerantId, string> = {
  'R-12': 'twelve',
  'R-22': 'twenty two',
  'R-32': 'thirty two',
  'R-125': 'one twenty five',
  'R-134a': 'one thirty four a',
  'R-143a': 'one forty three a',
  'R-152a': 'one fifty two a',
  'R-290': 'two ninety',
  'R-404A': 'four oh four a',
  'R-407A': 'four oh seven a',
  'R-407C': 'four oh seven c',
  'R-407F': 'four oh seven f',
  'R-410A': 'four ten a',
  'R-422D': 'four twenty two d',
  'R-448A': 'four forty eight a',
  'R-449A': 'four forty nine a',
  'R-450A': 'four fifty a',
  'R-452A': 'four fifty two a',
  'R-454A': 'four fifty four a',
  'R-454B': 'four fifty four b',
  'R-454C': 'four fifty four c',
  'R-455A': 'four fifty five a',
  'R-507A': 'five oh seven a',
  'R-513A': 'five thirteen a',
  'R-600a': 'six hundred a',
  'R-717': 'ammonia',
  'R-744': 'c o two',
  'R-1234yf': 'twelve thirty four y f',
  'R-1234zeE': 'twelve thirty four z e',
  'R-1270': 'propylene',
};

const EQUIPMENT = [
  ['reach in', 'reachIn'],
  ['walk in cooler', 'walkInCooler'],
  ['walk in freezer', 'walkInFreezer'],
  ['prep table', 'prepTable'],
  ['display case', 'displayCase'],
  ['ice machine', 'iceMachine'],
  ['condensing unit', null],
] as const;

const UNITS = REFRIGERANTS.flatMap((refrigerant) =>
  EQUIPMENT.map(([name, equipment]) => ({ name, equipment, refrigerant })),
);

/** A condensing unit has no doors, and leaves the class of its box open. */
const meantBy = (equipment: (typeof EQUIPMENT)[number][1], doors = ''): string =>
  equipment === null ? 'condensingUnit remote' : `equipment ${equipment}${doors}`;

describe('a unit described in one breath', () => {
  it.each([
    ['on', (name: string, spoken: string) => `${name} on ${spoken}`],
    ['on, after a comma', (name: string, spoken: string) => `${name}, on ${spoken}`],
    [
      'on, with its doors',
      (name: string, spoken: string) => `it's a two door ${name} on ${spoken}`,
    ],
  ])('keeps every equipment with every refrigerant: %s', (_, say) => {
    const lost = UNITS.filter(({ name, equipment, refrigerant }) => {
      const said = say(name, SPOKEN[refrigerant]);
      const doors = said.includes('door') ? ' doors=2' : '';
      const meant = `${meantBy(equipment, doors)};refrigerant ${refrigerant}`;
      return shortForm(understand(said, EMPTY_CONTEXT)) !== meant;
    });
    expect(lost).toEqual([]);
  });

  it.each([
    (name: string, spoken: string) => `${name} on ${spoken} with a cap tube`,
    (name: string, spoken: string) => `${name} on ${spoken}, cap tube`,
    (name: string, spoken: string) => `${name}, ${spoken}, cap tube`,
    (name: string, spoken: string) => `${name} ${spoken} cap tube`,
    (name: string, spoken: string) => `${name} with a cap tube on ${spoken}`,
  ])('keeps the metering device besides: %s', (say) => {
    const lost = UNITS.map(({ name, equipment, refrigerant }) => ({
      said: say(name, SPOKEN[refrigerant]),
      meant: `${meantBy(equipment)};refrigerant ${refrigerant};metering capTube`,
    })).filter(({ said, meant }) => shortForm(understand(said, EMPTY_CONTEXT)) !== meant);
    expect(lost).toEqual([]);
  });
});
