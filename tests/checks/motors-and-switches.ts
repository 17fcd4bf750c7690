/** Motors, capacitors, insulation and switches from outside: makers' manuals, textbooks, trade articles. */
import { checksOf } from './checks-of.ts';
import type { CheckRow } from './check-row.ts';

const BY_HAND = 'arithmetic by hand';

const ohms = (oneTwo: number, oneThree: number, twoThree: number) => ({
  oneTwo: `${oneTwo}ohm`,
  oneThree: `${oneThree}ohm`,
  twoThree: `${twoThree}ohm`,
});

const WINDINGS = [
  ...checksOf('windingTerminals', [
    {
      inputs: ohms(6, 2, 4),
      gives: { value: 0, unit: 'ohm' },
      findings: { common: '3', run: '1', start: '2' },
      within: 0.001,
      source: 'oceanhvaclab.com, How to identify C, S and R',
      standing: 'published',
    },
    {
      inputs: ohms(7, 6, 8),
      gives: { value: 8 - 7 - 6, unit: 'ohm' },
      findings: { common: '1', run: '3', start: '2' },
      within: 0.001,
      source: 'refrigeratordiagrams.com, How to identify unmarked terminals: does not add up',
      standing: 'published',
    },
  ]),
  ...checksOf('windingSum', [
    {
      inputs: { commonStart: '0.5ohm', commonRun: '1.2ohm', runStart: '1.7ohm' },
      gives: { value: 0, unit: 'percent' },
      findings: { state: 'addsUp' },
      within: 0.001,
      source: 'industrialmonitordirect.com, Winding resistance readings: 0.5 + 1.2 = 1.7',
      standing: 'published',
    },
    {
      inputs: { runStart: '15ohm', open: 'commonRunAndCommonStart' },
      gives: { value: 100, unit: 'percent' },
      findings: { state: 'overloadOpen' },
      within: 0.001,
      source: 'an ice machine maker’s manual 80-0111-9, page 176: only S to R reads',
      standing: 'published',
    },
  ]),
];

const CAPACITORS = [
  ...checksOf('runCapacitance', [
    {
      inputs: { current: '8.3A', voltage: '295.4V', frequency: '60' },
      gives: { value: 74.5, unit: 'uF' },
      within: 0.05,
      source: 'hvacrschool.com, Measuring capacitance on a running system',
      standing: 'published',
    },
  ]),
  ...checksOf('capacitorTolerance', [
    {
      inputs: { measured: '74.5uF', rated: '70uF', kind: 'run', marked: '10%' },
      gives: { value: 6.4, unit: 'percent' },
      findings: { verdict: 'within' },
      within: 0.05,
      source: 'hvacrschool.com, Measuring capacitance: within its 10 % rule of thumb',
      standing: 'published',
    },
    {
      inputs: { measured: '74.5uF', rated: '70uF', kind: 'run' },
      gives: { value: 6.4, unit: 'percent' },
      findings: { verdict: 'high' },
      within: 0.05,
      source: 'the same can by its marked ±6 %: a little over',
      standing: 'published',
    },
    {
      inputs: { measured: '7.61uF', rated: '10uF', kind: 'run' },
      gives: { value: -23.9, unit: 'percent' },
      findings: { verdict: 'low' },
      within: 0.05,
      source: 'prestigeairtx.com, Testing a capacitor under load: 7.61 of 10 µF is out of range',
      standing: 'published',
    },
    {
      inputs: { measured: '7.61uF', rated: '7.5uF', kind: 'run' },
      gives: { value: 1.5, unit: 'percent' },
      findings: { verdict: 'within' },
      within: 0.05,
      source: 'prestigeairtx.com, Testing a capacitor under load: 7.61 of 7.5 µF is right',
      standing: 'published',
    },
    {
      inputs: { measured: '100uF', rated: '88uF', kind: 'start' },
      gives: { value: 13.6, unit: 'percent' },
      findings: { verdict: 'within' },
      within: 0.05,
      source: 'an 88 to 106 µF start capacitor: −0/+20 %',
      standing: 'from memory',
    },
  ]),
  ...checksOf('bleedWait', [
    {
      inputs: { capacitance: '400uF' },
      gives: { value: 40, unit: 's' },
      within: 0.001,
      source: `${BY_HAND}: 5 × 20 kΩ × 400 µF`,
      standing: 'computed',
    },
    {
      inputs: { capacitance: '195uF', resistance: '50ohm' },
      gives: { value: 5 * 0.00975, unit: 's' },
      within: 0.0001,
      source:
        'a resistor maker’s discharge sheet (scribd.com/document/347454186): 195 µF and 50 Ω, time constant 0.00975 s',
      standing: 'published',
    },
  ]),
];

const INSULATION = checksOf('insulationFloor', [
  {
    inputs: { measured: '0.4Mohm', voltage: '230V', build: 'scrollOrSemiHermetic' },
    gives: { value: 0.5, unit: 'Mohm' },
    findings: { verdict: 'belowFloor' },
    within: 0.001,
    source: 'a compressor maker’s bulletin AE4-1294: 0.5 MΩ before it is condemned',
    standing: 'published',
  },
  {
    inputs: { measured: '1.9Mohm', voltage: '230V', build: 'smallHermetic' },
    gives: { value: 2, unit: 'Mohm' },
    findings: { verdict: 'belowFloor' },
    within: 0.001,
    source: 'a small hermetic maker’s service handbook, page 49: less than 2 MΩ is a ground fault',
    standing: 'published',
  },
  {
    inputs: { measured: '60Mohm', voltage: '460V', build: 'centrifugal' },
    gives: { value: 50, unit: 'Mohm' },
    findings: { verdict: 'aboveFloor' },
    within: 0.001,
    source: 'a chiller maker’s 17-19EX manual, page 141: at least 50 MΩ',
    standing: 'published',
  },
  {
    inputs: { measured: '90kohm', voltage: '230V', build: 'inverter' },
    gives: { value: 0.1, unit: 'Mohm' },
    findings: { verdict: 'belowFloor' },
    within: 0.001,
    source: 'a maker’s AVZC18 manual, page 11: less than 100 kΩ, replace',
    standing: 'published',
  },
]);

const TPUB = 'constructionmanuals.tpub.com/14259, pages 14-18';

const SWITCHES = [
  ...checksOf('switchAcross', [
    {
      inputs: { supply: '230V', across: '230V' },
      gives: { value: 100, unit: 'percent' },
      findings: { possible: ['open'] },
      within: 0.001,
      source: `${TPUB}: a voltage reading on a path means that it is open`,
      standing: 'published',
    },
    {
      inputs: { supply: '24V', across: '0V' },
      gives: { value: 0, unit: 'percent' },
      findings: { possible: ['closed', 'openElsewhere'] },
      within: 0.001,
      source:
        'ecampusontario.pressbooks.pub, Troubleshooting principles: zero volts may stand across an open switch',
      standing: 'published',
    },
    {
      inputs: { supply: '120V', across: '120V' },
      gives: { value: 100, unit: 'percent' },
      findings: { possible: ['open'] },
      within: 0.001,
      source:
        'opentextbc.ca, Voltage drops in control circuits: opened overload contacts, line voltage',
      standing: 'published',
    },
  ]),
  ...checksOf('switchToGround', [
    {
      inputs: { before: '115V', after: '115V' },
      gives: { value: 0, unit: 'V' },
      findings: { finding: 'closedOrFedBack' },
      within: 0.001,
      source: 'hvacrassets.net, electric troubleshooting page 126: both sides of a dead break',
      standing: 'published',
    },
  ]),
  ...checksOf('hopscotch', [
    {
      inputs: { lineToLine: '115V', p1: '115V', p2: '0V' },
      gives: { value: 115, unit: 'V' },
      findings: { state: 'openBetween', between: ['p1', 'p2'] },
      within: 0.001,
      source: 'achrnews.com, Ice breaker: the hopscotch method: the CR contact is open',
      standing: 'published',
    },
    {
      inputs: { lineToLine: '115V', p1: '115V', p2: '115V', p3: '0V' },
      gives: { value: 115, unit: 'V' },
      findings: { state: 'openBetween', between: ['p2', 'p3'] },
      within: 0.001,
      source:
        'one switch further on, by the rule of achrnews.com, Ice breaker: the hopscotch method',
      standing: 'computed',
    },
    {
      inputs: { lineToLine: '230V', p1: '230V', p2: '230V', p3: '230V' },
      gives: { value: 0, unit: 'V' },
      findings: { state: 'loadSide' },
      within: 0.001,
      source: 'achrnews.com/articles/165272, Dead motors: voltage up to a load that does not run',
      standing: 'published',
    },
    {
      inputs: { lineToLine: '120V', p1: '0V', p2: '0V' },
      gives: { value: 0, unit: 'V' },
      findings: { state: 'referenceOpen' },
      within: 0.001,
      source: 'an open neutral makes the first switch look open',
      standing: 'common practice',
    },
  ]),
  ...checksOf('loadVoltage', [
    {
      inputs: { rated: '230V', measured: '230V', running: 'no' },
      gives: { value: 100, unit: 'percent' },
      findings: { finding: 'loadOrStartGear' },
      within: 0.001,
      source: 'ecampusontario.pressbooks.pub, Troubleshooting principles: the load has failed',
      standing: 'published',
    },
  ]),
];

export const MOTOR_AND_SWITCH_CHECKS: readonly CheckRow[] = [
  ...WINDINGS,
  ...CAPACITORS,
  ...INSULATION,
  ...SWITCHES,
];
