import { ratio, voltage } from '../units/quantity-values.ts';
import type { Ratio, Voltage, VoltageToGround } from '../units/quantity-values.ts';
import { known, refused } from './calculated.ts';
import type { Calculated, Caution } from './calculated.ts';
import { ACROSS_BANDS, NO_VOLTAGE } from './electrical-defaults.ts';
import { symbols } from './formula.ts';
import type { Formula } from './formula.ts';

/** What a switch may be. No reading leaves `closed` alone: an open one elsewhere reads the same. */
export type SwitchPossibility =
  | 'open'
  | 'closed'
  /** This one closed or open alike: another in the same path is open. */
  | 'openElsewhere'
  | 'badContact'
  | 'ghostVoltage'
  /** A second load in the same path takes part of the voltage. */
  | 'loadInSeries'
  | 'noSupply';

export interface SwitchAcross {
  readonly possible: readonly SwitchPossibility[];
  /** Of the supply. */
  readonly share: Ratio;
}

/**
 * What the voltage across a switch leaves possible, in a circuit that is energised and calling. The supply must
 * have been measured: without it every zero means nothing.
 */
export function switchAcross(input: {
  readonly supply: Voltage;
  readonly across: Voltage;
}): Calculated<SwitchAcross> {
  const { supply, across } = input;
  if (!(supply >= 0 && across >= 0)) return refused('notPositive');
  if (supply < NO_VOLTAGE) {
    const possible = ['noSupply', 'open', 'closed', 'openElsewhere'] as const;
    return known({ possible, share: ratio(0) }, 'liveWork', 'zeroProvesNothing', 'notProvenDead');
  }
  const share = ratio(across / supply);
  const { possible, caution } = acrossBand(share);
  return known({ possible, share }, 'liveWork', ...caution);
}

function acrossBand(share: Ratio): {
  readonly possible: readonly SwitchPossibility[];
  readonly caution: readonly Caution[];
} {
  const { none, contact, all } = ACROSS_BANDS.value;
  if (share >= all) return { possible: ['open'], caution: [] };
  if (share < none) {
    return { possible: ['closed', 'openElsewhere'], caution: ['zeroProvesNothing'] };
  }
  const caution = ['ghostVoltage'] as const;
  return share <= contact
    ? { possible: ['badContact', 'ghostVoltage', 'openElsewhere'], caution }
    : { possible: ['open', 'badContact', 'ghostVoltage', 'loadInSeries'], caution };
}

export type GroundFinding =
  /** Voltage before it and none after, with nothing feeding back. */
  | 'open'
  /** The same on both sides: closed, or open and fed back through a load from the other leg. */
  | 'closedOrFedBack'
  /** No voltage on either side: off, or nothing here is referred to ground. Never "dead". */
  | 'offOrFloating'
  | 'fedFromBeyond'
  | 'partial';

/** What two readings to ground, before and after a switch, leave possible. They never prove it dead. */
export function switchToGround(input: {
  readonly before: VoltageToGround;
  readonly after: VoltageToGround;
}): Calculated<GroundFinding> {
  const { before, after } = input;
  if (!(before >= 0 && after >= 0)) return refused('notPositive');
  return known(groundFinding(before, after), 'liveWork', 'notProvenDead');
}

function groundFinding(before: VoltageToGround, after: VoltageToGround): GroundFinding {
  const { none, all } = ACROSS_BANDS.value;
  if (before < NO_VOLTAGE) return after < NO_VOLTAGE ? 'offOrFloating' : 'fedFromBeyond';
  const share = after / before;
  if (share < none) return 'open';
  return share >= all && share <= 1 / all ? 'closedOrFedBack' : 'partial';
}

export type HopscotchState =
  /** Nothing line to line: no switch can be judged. */
  | 'noSupply'
  /** Line to line is there, line to the fixed probe is not: the reference itself is open. */
  | 'referenceOpen'
  | 'openBetween'
  | 'dropBetween'
  /** Voltage all the way: the load, its start gear or its protector. */
  | 'loadSide'
  /** Gone and there again: fed from elsewhere, or a probe slipped. */
  | 'voltageReturns';

export interface Hopscotch {
  readonly state: HopscotchState;
  /** Indices of the readings between which it is lost; null where it is not. */
  readonly between: readonly [before: number, after: number] | null;
  readonly lost: Voltage;
}

/**
 * One probe stays on the far side (L2, neutral or the transformer's common), the other walks from the supply to
 * the load. The first point without voltage is just past what is open. Line to line is proved first, and then
 * the fixed probe: an open neutral would make the first switch look open.
 */
export function hopscotch(input: {
  readonly lineToLine: Voltage;
  /** From the supply on, in the order of the circuit. */
  readonly readings: readonly Voltage[];
}): Calculated<Hopscotch> {
  const { lineToLine, readings } = input;
  if (!(lineToLine >= 0) || readings.some((each) => !(each >= 0))) return refused('notPositive');
  const [first] = readings;
  if (first === undefined || readings.length < 2) return refused('ruleDoesNotApply');
  const none = voltage(0);
  if (lineToLine < NO_VOLTAGE) {
    return found({ state: 'noSupply', between: null, lost: none }, 'notProvenDead');
  }
  const { all } = ACROSS_BANDS.value;
  const isFull = (reading: Voltage): boolean => reading >= all * lineToLine;
  if (!isFull(first)) {
    return found({ state: 'referenceOpen', between: null, lost: none }, 'notProvenDead');
  }
  const after = readings.findIndex((reading) => !isFull(reading));
  if (after === -1) return found({ state: 'loadSide', between: null, lost: none });
  return walked(readings, after, isFull);
}

function walked(
  readings: readonly Voltage[],
  after: number,
  isFull: (reading: Voltage) => boolean,
): Calculated<Hopscotch> {
  const [last, next] = [readings[after - 1] ?? voltage(0), readings[after] ?? voltage(0)];
  const lost = voltage(last - next);
  const between = [after - 1, after] as const;
  if (readings.slice(after).some(isFull)) return found({ state: 'voltageReturns', between, lost });
  return next < ACROSS_BANDS.value.none * last
    ? found({ state: 'openBetween', between, lost })
    : found({ state: 'dropBetween', between, lost }, 'ghostVoltage');
}

const found = (value: Hopscotch, ...cautions: Caution[]): Calculated<Hopscotch> =>
  known(value, 'liveWork', ...cautions);

export type LoadFinding = 'running' | 'loadOrStartGear' | 'controls' | 'lowVoltage';

export interface LoadVoltage {
  readonly finding: LoadFinding;
  readonly share: Ratio;
}

/** Rated voltage at a load that does not run: the load, its start gear or its protector, not the controls. */
export function loadVoltage(input: {
  readonly rated: Voltage;
  readonly measured: Voltage;
  readonly isRunning: boolean;
}): Calculated<LoadVoltage> {
  const { rated, measured, isRunning } = input;
  if (!(rated > 0 && measured >= 0)) return refused('notPositive');
  const share = ratio(measured / rated);
  if (isRunning) return known({ finding: 'running', share }, 'liveWork');
  if (share >= ACROSS_BANDS.value.all) {
    return known({ finding: 'loadOrStartGear', share }, 'liveWork', 'capacitorCharge');
  }
  return share < ACROSS_BANDS.value.none
    ? known({ finding: 'controls', share }, 'liveWork', 'notProvenDead')
    : known({ finding: 'lowVoltage', share }, 'liveWork', 'ghostVoltage');
}

export const switchAcrossFormula: Formula = {
  id: 'switchAcross',
  name: 'voltage across a switch',
  equation: 'share = Vacross / Vsupply; all of it → open; none → closed, or another one open',
  symbols: symbols(
    ['Vacross', 'from one side of the switch to the other', 'V'],
    ['Vsupply', 'of that circuit, measured first', 'V'],
  ),
  range: 'energised and calling, one path through the switch to one load',
  source:
    'constructionmanuals.tpub.com/14259 pages 14-18; machineryequipmentonline.com, the hopscotch method; ecampusontario.pressbooks.pub, Troubleshooting principles',
  standing: 'published',
  example: {
    inputs: { supply: '230V', across: '230V' },
    gives: { value: 100, unit: 'percent' },
    within: 0.001,
    source: 'hvacrassets.net, electric troubleshooting page 126: 230 V across an open switch',
    standing: 'published',
  },
};

export const switchToGroundFormula: Formula = {
  id: 'switchToGround',
  name: 'voltage to ground on both sides of a switch',
  equation: 'the same on both sides → closed, or open and fed back through the load',
  symbols: symbols(
    ['before', 'supply side to ground', 'V to ground'],
    ['after', 'load side to ground', 'V to ground'],
  ),
  range: '120/240 V systems; never a proof that a circuit is dead; shown: the difference',
  source: 'hvacrassets.net, electric troubleshooting page 126',
  standing: 'published',
  example: {
    inputs: { before: '115V', after: '115V' },
    gives: { value: 0, unit: 'V' },
    within: 0.001,
    source:
      'hvacrassets.net, electric troubleshooting page 126: 115 V to ground on both sides of a dead single-leg break',
    standing: 'published',
  },
};

export const hopscotchFormula: Formula = {
  id: 'hopscotch',
  name: 'hopscotch through a control circuit',
  equation: 'the first point that loses the voltage is just past what is open',
  symbols: symbols(
    ['lineToLine', 'supply of the circuit, measured first', 'V'],
    ['p1 … p6', 'points from the supply on, each to the fixed probe', 'V'],
  ),
  range: 'energised and calling; the fixed probe on L2, neutral or common; shown: the voltage lost',
  source: 'achrnews.com, Ice breaker: the hopscotch method; proving the reference: common practice',
  standing: 'published',
  example: {
    inputs: { lineToLine: '115V', p1: '115V', p2: '0V' },
    gives: { value: 115, unit: 'V' },
    within: 0.001,
    source: 'achrnews.com, Ice breaker: 115 V before the contact and 0 V after, it is open',
    standing: 'published',
  },
};

export const loadVoltageFormula: Formula = {
  id: 'loadVoltage',
  name: 'voltage at a load that does not run',
  equation: 'share = V / Vrated; all of it → the load or its start gear; none → the controls',
  symbols: symbols(['V', 'across the load', 'V'], ['Vrated', 'on its plate', 'V']),
  range: 'calling; on single phase the start gear is looked at first',
  source:
    'achrnews.com/articles/165272, Dead motors; ecampusontario.pressbooks.pub, Troubleshooting principles',
  standing: 'published',
  example: {
    inputs: { rated: '230V', measured: '230V', running: 'no' },
    gives: { value: 100, unit: 'percent' },
    within: 0.001,
    source: 'achrnews.com/articles/165272: rated voltage at a motor that does not run',
    standing: 'published',
  },
};
