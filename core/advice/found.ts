import type { Calculated } from '../calculations/calculated.ts';
import type { Formula } from '../calculations/formula.ts';
import { toGaugeReading } from '../units/branding.ts';
import { fromBase } from '../units/convert.ts';
import { absolutePressure } from '../units/quantity-values.ts';
import { dialAmount, SHOWN_UNITS } from '../units/shown-unit.ts';
import { unitRow } from '../units/units.ts';
import type { Amount } from '../units/amount.ts';
import type { VisitState } from '../visit/state.ts';
import type { CautionId, Input, Needs, Refused } from './verdict.ts';
import { localAir } from './local-air.ts';

/** A value on the way to an answer, with everything that went into it. */
export interface Worked<Value> {
  readonly kind: 'known';
  readonly value: Value;
  readonly inputs: readonly Input[];
  readonly cautions: readonly CautionId[];
  /** The last calculation that made it; null where it was read. */
  readonly formula: Formula | null;
  /** Where else it stands on: a table's row. */
  readonly sources: readonly string[];
  /** When it was read; null where it was worked out or stated. */
  readonly at: number | null;
}

export type Found<Value> = Worked<Value> | Needs | Refused;

export function worked<Value>(value: Value, part: Partial<Worked<Value>> = {}): Worked<Value> {
  return {
    inputs: [],
    cautions: [],
    formula: null,
    sources: [],
    at: null,
    ...part,
    kind: 'known',
    value,
  };
}

export function needing(need: Needs['need']): Needs {
  return { kind: 'needs', about: null, need };
}

/** Goes on with the value; what went into it comes along, and a need or a refusal passes through. */
export function andThen<From, To>(from: Found<From>, next: (value: From) => Found<To>): Found<To> {
  if (from.kind !== 'known') return from;
  const to = next(from.value);
  if (to.kind !== 'known') return to;
  return {
    ...to,
    inputs: withoutRepeats([...from.inputs, ...to.inputs]),
    cautions: [...new Set([...from.cautions, ...to.cautions])],
    formula: to.formula ?? from.formula,
    sources: [...new Set([...from.sources, ...overtaken(from, to), ...to.sources])],
  };
}

/** The source of an earlier calculation stays when a later one gives the answer its formula. */
function overtaken(from: Worked<unknown>, to: Worked<unknown>): readonly string[] {
  const isOvertaken = from.formula !== null && to.formula !== null && from.formula !== to.formula;
  return isOvertaken ? [from.formula.source] : [];
}

/** A refrigerant that both halves of an answer needed is one input. */
function withoutRepeats(inputs: readonly Input[]): readonly Input[] {
  return inputs.filter(
    ({ name, value }, index) =>
      inputs.findIndex((other) => other.name === name && other.value === value) === index,
  );
}

/** Both values, or what the first of them lacks: the order is the order in which they are asked for. */
export function both<A, B>(a: Found<A>, b: Found<B>): Found<readonly [A, B]> {
  return andThen(a, (first) => andThen(b, (second) => worked([first, second] as const)));
}

/** A calculation's outcome, its refusal with its numbers in the visit's units. */
export function calculated<Value>(
  outcome: Calculated<Value>,
  formula: Formula,
  state: VisitState,
): Found<Value> {
  if (outcome.kind === 'known') {
    return worked(outcome.value, { cautions: outcome.cautions, formula });
  }
  switch (outcome.reason) {
    case 'aboveCritical':
    case 'belowTriple':
    case 'aboveRange':
    case 'belowRange':
      return {
        about: null,
        ...outcome,
        ...shownLimit({ value: outcome.limit, unit: outcome.unit }, state),
      };
    case 'belowZeroSuperheat':
    case 'belowZeroSubcooling': {
      const { value, unit } = outcome;
      const shown = fromBase(value, SHOWN_UNITS[state.settings.units].temperatureDifference);
      const cautions = outcome.reason === 'belowZeroSuperheat' ? WET : ABOVE_BUBBLE;
      return {
        kind: 'refused',
        about: null,
        reason: outcome.reason,
        ...(unit === 'dC' ? shown : { value, unit }),
        cautions,
      };
    }
    case 'impossibleVacuum':
      return { about: null, ...outcome };
    case 'suctionAboveHead':
      return { kind: 'refused', about: null, reason: 'suctionAboveHead' };
    case 'noTargetKnown':
    case 'belowLimit':
    case 'aboveLimit':
    case 'tooFewReadings':
    case 'readingsDoNotFit':
    case 'ruleDoesNotApply':
    case 'notPositive':
      return { kind: 'refused', about: null, reason: 'noTargetKnown' };
  }
}

const WET: readonly CautionId[] = ['wetOrWrongRefrigerant'];
const ABOVE_BUBBLE: readonly CautionId[] = ['liquidAboveBubble'];

function shownLimit(
  { value, unit }: Amount,
  state: VisitState,
): { limit: number; unit: Amount['unit'] } {
  const { units } = state.settings;
  if (unitRow(unit).dimension === 'temperature') {
    const shown = fromBase(value, SHOWN_UNITS[units].temperature);
    return { limit: shown.value, unit: shown.unit };
  }
  const shown = dialAmount(toGaugeReading(absolutePressure(value), localAir(state)), units);
  return { limit: shown.value, unit: shown.unit };
}
