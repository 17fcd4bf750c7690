import fc from 'fast-check';
import { faultsOf } from '../../core/advice/circuit/circuit.ts';
import { CIRCUITS } from '../../core/advice/circuit/circuits.ts';
import type { LeadsAt } from '../../core/advice/circuit/circuit-verdict.ts';
import type { Known } from '../../core/advice/verdict.ts';
import { PLACES, type PlaceId } from '../../core/terms/names.ts';

const isPlace = (id: string): id is PlaceId => id in PLACES;
const place = fc.constantFrom(...Object.keys(PLACES).filter(isPlace));
const volts = fc.double({ min: 0, max: 480, noNaN: true });
const working = { kind: 'known' as const, formula: null, inputs: [], source: null, cautions: [] };

const leads: fc.Arbitrary<LeadsAt> = fc.record({
  how: fc.constantFrom('across', 'at', 'runs'),
  place,
});

const switchAnswer: fc.Arbitrary<Known> = fc
  .record({
    place,
    state: fc.constantFrom(
      'open',
      'passing',
      'undetermined',
      'partial',
      'noSupply',
      'fed',
      'notFed',
      'noPath',
      'path',
      'ohmsRead',
    ),
    across: volts,
    supply: volts,
    ohms: volts,
    next: fc.option(leads),
  })
  .map((of) => ({ ...working, answer: 'switch', unit: 'V', ...of }));

const nextPlace: fc.Arbitrary<Known> = fc
  .record({
    found: fc.constantFrom('searching', 'suspects', 'sound', 'contradiction'),
    suspects: fc.subarray(CIRCUITS.flatMap(faultsOf), { minLength: 1, maxLength: 5 }),
    together: fc.boolean(),
    next: fc.option(leads),
  })
  .map((of) => ({ ...working, answer: 'nextPlace', ...of }));

export const circuitAnswer: fc.Arbitrary<Known> = fc.oneof(switchAnswer, nextPlace);
