import { read, readings, unitIs, visitOf } from '../../advice/visits.ts';
import type { VisitCase } from './published-case.ts';

/** Which of the product's classes a source's unit is, is ours: a small self-contained box on a valve. */
const R134A = unitIs(
  { fact: 'refrigerant', value: 'R-134a' },
  { fact: 'equipment', value: 'reachIn' },
  { fact: 'metering', value: 'txv' },
);
const R404A_CASE = unitIs(
  { fact: 'refrigerant', value: 'R-404A' },
  { fact: 'equipment', value: 'displayCase' },
  { fact: 'metering', value: 'txv' },
);

export const VISIT_CASES: readonly VisitCase[] = [
  {
    title: 'low-temperature R-134a, split 50, subcooling 30, superheat 10',
    source: 'achrnews.com/articles/133927, the perils of overcharging',
    standing: 'published',
    named: ['overcharge'],
    visit: visitOf([
      R134A,
      readings(
        read('ambientTemp', 70, 'degF'),
        read('headPressure', 172, 'psi'),
        read('suctionPressure', 8.8, 'psi'),
        read('boxTemp', 10, 'degF'),
        read('suctionLineTemp', 15, 'degF'),
        read('liquidLineTemp', 90, 'degF'),
        read('dischargeLineTemp', 240, 'degF'),
      ),
    ]),
  },
  {
    title: 'R-134a with a receiver, split 15, subcooling 15, superheat 40',
    source:
      'achrnews.com/articles/the-professor-systematic-troubleshooting-1, restricted liquid line after the receiver',
    standing: 'published',
    named: ['liquidLineRestriction'],
    visit: visitOf([
      R134A,
      readings(
        read('ambientTemp', 70, 'degF'),
        read('headPressure', 95, 'psi'),
        read('suctionPressure', 1.8, 'psi'),
        read('boxTemp', 30, 'degF'),
        read('suctionLineTemp', 30, 'degF'),
        read('liquidLineTemp', 70, 'degF'),
        read('dischargeLineTemp', 215, 'degF'),
      ),
    ]),
  },
  {
    title: 'the same, its discharge line printed at 125 °F elsewhere',
    source:
      'achrnews.com, BNP_GUID_9-5-2006_A_10000000000000196504, restricted liquid line after the receiver',
    standing: 'published',
    named: ['liquidLineRestriction'],
    visit: visitOf([
      R134A,
      readings(
        read('ambientTemp', 70, 'degF'),
        read('headPressure', 95, 'psi'),
        read('suctionPressure', 1.8, 'psi'),
        read('boxTemp', 30, 'degF'),
        read('suctionLineTemp', 30, 'degF'),
        read('liquidLineTemp', 70, 'degF'),
        read('dischargeLineTemp', 125, 'degF'),
      ),
    ]),
  },
  {
    title: 'ice-cream case on R-404A, split 15, subcooling 8, superheat 1',
    source: 'hvac-blog.acca.org, tech challenge of September 2016 and its answer',
    standing: 'published',
    named: ['icedCoil', 'defrostFailed'],
    visit: visitOf([
      R404A_CASE,
      readings(
        read('ambientTemp', 75, 'degF'),
        read('headPressure', 205, 'psi'),
        read('suctionPressure', 29, 'psi'),
        read('boxTemp', 20, 'degF'),
        read('suctionLineTemp', -3, 'degF'),
        read('liquidLineTemp', 82, 'degF'),
      ),
    ]),
  },
];
