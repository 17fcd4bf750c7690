import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';
import { shortForm } from '../corpus/short-form.ts';
import { seeded } from './random.ts';

// Plain clauses of every kind, two or three of them in one breath, however they are joined: each tells what it tells
// alone, and no word of one is taken for the other's.

const CLAUSES: readonly (readonly [said: string, meant: string])[] = [
  ['condenser is dirty', 'finding condenser dirty'],
  ['condenser coil is plugged', 'finding condenser plugged'],
  ['condenser fan is running', 'finding condenserFan running'],
  ['condenser fan is not running', 'finding condenserFan notRunning'],
  ['evaporator is iced up', 'finding evaporator iced'],
  ['evaporator fan motor is noisy', 'finding evaporatorFanMotor noisy'],
  ['compressor is hot', 'finding compressor hot'],
  ['compressor is off', 'finding compressor notRunning'],
  ['high pressure switch is tripped', 'finding highPressureSwitch tripped'],
  ['low pressure switch is open', 'finding lowPressureSwitch open'],
  ['contactor is pitted', 'finding contactor burnt'],
  ['door gasket is torn', 'finding doorGasket failed'],
  ['drain line is plugged', 'finding drainLine plugged'],
  ['drain pan is cracked', 'finding drainPan failed'],
  ['filter drier is wet', 'finding filterDrier wet'],
  ['service valve is leaking', 'finding serviceValve leaking'],
  ['king valve is closed', 'finding kingValve closed'],
  ['breaker is tripped', 'finding breaker tripped'],
  ['fuse is blown', 'finding fuse failed'],
  ['hinge is loose', 'finding hinge loose'],
  ['light is out', 'finding light failed'],
  ['disconnect is off', 'finding disconnect open'],
  ['crankcase heater is cold', 'finding crankcaseHeater cold'],
  ['run capacitor is bad', 'finding runCapacitor failed'],
  ['defrost heater is burnt', 'finding defrostHeater burnt'],
  ['fan blade is bent', 'finding fanBlade failed'],
  ['joint is oily', 'finding joint oily'],
  ['cleaned the condenser', 'work clean condenser'],
  ['replaced the door gasket', 'work replace doorGasket'],
  ['reset the high pressure switch', 'work reset highPressureSwitch'],
  ['tightened the flare joint', 'work tighten joint'],
  ['replaced the run capacitor', 'work replace runCapacitor'],
  ['adjusted the expansion valve', 'work adjust expansionValve'],
  ['brushed the condenser', 'work brush condenser'],
  ['washed the evaporator', 'work wash evaporator'],
  ['defrosted the evaporator', 'work defrost evaporator'],
  ['reset the breaker', 'work reset breaker'],
  ['swapped the contactor', 'work replace contactor'],
  ['leak checked the joints', 'work leakCheck joint'],
  ['repaired the wiring', 'work repair wiring'],
  ['recommend replacing the compressor', 'recommend replace compressor'],
  ['the hinge should be replaced', 'recommend replace hinge'],
  ['they should clean the condenser every month', 'recommend clean condenser every 1 month'],
  ['door gasket needs replacing', 'recommend replace doorGasket'],
  ['needs a new filter drier', 'recommend replace filterDrier'],
  ['head two ten', 'headPressure 210 psi'],
  ['suction twenty two', 'suctionPressure 22 psi'],
  ['box is thirty eight', 'boxTemp 38 degF'],
  ['one eighteen at the contactor', 'voltage 118 V @contactor'],
  ['compressor is drawing eight amps', 'current 8 A @compressor'],
  ['superheat is nine', 'superheat 9 dF'],
  ['common to run two ohms', 'resistance 2 ohm @commonRun'],
  ['ambient ninety four', 'ambientTemp 94 degF'],
  ['sight glass is clear', 'sightGlass clear'],
  ['metering is a txv', 'metering txv'],
  ["it's on four oh four a", 'refrigerant R-404A'],
];
const BETWEEN = [', ', ' and ', ', and ', '. ', ' but ', ' so ', ', then '];
const COUNT = 3000;

const inOrder = (meant: string): string => meant.split(';').toSorted().join(';');

function sentences(): readonly (readonly [said: string, meant: string])[] {
  const random = seeded(7);
  const one = <Each>(all: readonly Each[]): Each => {
    const found = all[Math.floor(random() * all.length)];
    if (found === undefined) throw new Error('there is none to choose from');
    return found;
  };
  return Array.from({ length: COUNT }, () => {
    const told = new Set<(typeof CLAUSES)[number]>();
    const count = random() < 0.7 ? 2 : 3;
    while (told.size < count) told.add(one(CLAUSES));
    const between = one(BETWEEN);
    return [
      [...told].map(([said]) => said).join(between),
      inOrder([...told].map(([, meant]) => meant).join(';')),
    ] as const;
  });
}

describe(`${COUNT} sentences of two or three clauses`, { timeout: 120_000 }, () => {
  it.each(CLAUSES)('%s', (said, meant) => {
    expect(inOrder(shortForm(understand(said, EMPTY_CONTEXT)))).toBe(meant);
  });

  it('mean what their clauses mean', () => {
    const misread = sentences().flatMap(([said, meant]) => {
      const found = inOrder(shortForm(understand(said, EMPTY_CONTEXT)));
      return found === meant ? [] : [`${said}: ${found}`];
    });
    expect(misread).toEqual([]);
  });
});
