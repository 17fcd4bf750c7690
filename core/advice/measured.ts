import {
  split,
  splitFormula,
  temperatureDifference,
  temperatureDifferenceFormula,
} from '../calculations/coil-differences.ts';
import {
  condensingTemperature,
  condensingTemperatureFormula,
  evaporatingTemperature,
  evaporatingTemperatureFormula,
} from '../calculations/coil-temperature.ts';
import { compressionRatio, compressionRatioFormula } from '../calculations/compression-ratio.ts';
import {
  subcooling,
  subcoolingFormula,
  superheat,
  superheatFormula,
} from '../calculations/superheat.ts';
import { isZeotrope } from '../calculations/fluid-cautions.ts';
import type { RefrigerantId } from '../terms/refrigerants.ts';
import type { AnswerableId, DerivedQuantityId, QuantityId } from '../terms/quantities.ts';
import type { Amount } from '../units/amount.ts';
import { fromBase } from '../units/convert.ts';
import type { Temperature } from '../units/quantity-values.ts';
import type { VisitState } from '../visit/state.ts';
import {
  absoluteOf,
  currentReading,
  readAmount,
  refrigerantOf,
  shownUnit,
  temperatureOf,
} from './current.ts';
import { readTogether } from './read-together.ts';
import { both, calculated, andThen, worked, type Found } from './found.ts';

type Measure = (state: VisitState) => Found<number>;
/** Read off a gauge's own scale or an instrument that does the sum, or worked out here. */
type Readable = 'condensingTemp' | 'evaporatingTemp' | 'superheat' | 'subcooling';
type Workable = Readable | DerivedQuantityId;

/** What can be worked out from other readings, in base units. */
const WORKED: Record<Workable, Measure> = {
  condensingTemp: (state) => condensingFromHead(state),
  evaporatingTemp: (state) => evaporatingFromSuction(state),
  superheat: (state) =>
    andThen(
      both(
        refrigerantOf(state),
        readTogether(
          both(absoluteOf(state, 'suctionPressure'), temperatureOf(state, 'suctionLineTemp')),
          ['suctionPressure', 'suctionLineTemp'],
          state,
        ),
      ),
      ([refrigerant, [suction, suctionLine]]) =>
        withBasis(
          refrigerant,
          calculated(superheat({ refrigerant, suction, suctionLine }), superheatFormula, state),
        ),
    ),
  subcooling: (state) =>
    andThen(
      both(
        refrigerantOf(state),
        readTogether(
          both(absoluteOf(state, 'headPressure'), temperatureOf(state, 'liquidLineTemp')),
          ['headPressure', 'liquidLineTemp'],
          state,
        ),
      ),
      ([refrigerant, [head, liquidLine]]) =>
        withBasis(
          refrigerant,
          withoutFlash(
            calculated(subcooling({ refrigerant, head, liquidLine }), subcoolingFormula, state),
            state,
          ),
        ),
    ),
  split: (state) =>
    andThen(both(condensing(state), temperatureOf(state, 'ambientTemp')), ([of, ambient]) =>
      calculated(split({ condensing: of, ambient }), splitFormula, state),
    ),
  temperatureDifference: (state) =>
    andThen(both(evaporating(state), temperatureOf(state, 'boxTemp')), ([of, box]) =>
      calculated(
        temperatureDifference({ evaporating: of, box }),
        temperatureDifferenceFormula,
        state,
      ),
    ),
  compressionRatio: (state) =>
    andThen(
      both(absoluteOf(state, 'headPressure'), absoluteOf(state, 'suctionPressure')),
      ([head, suction]) =>
        calculated(compressionRatio({ head, suction }), compressionRatioFormula, state),
    ),
};

/** A clear glass was looked into: no vapour is in that line, whatever the subcooling. */
function withoutFlash<Value>(found: Found<Value>, { unit }: VisitState): Found<Value> {
  if (found.kind !== 'known' || unit.sightGlass !== 'clear') return found;
  return { ...found, cautions: found.cautions.filter((id) => id !== 'flashGas') };
}

/** A blend's superheat is from dew and its subcooling from bubble: by the other line R-407C is off by 11 °F. */
function withBasis<Value>(refrigerant: RefrigerantId, found: Found<Value>): Found<Value> {
  if (found.kind !== 'known' || !isZeotrope(refrigerant)) return found;
  return { ...found, cautions: [...found.cautions, 'glideBasis'] };
}

function condensingFromHead(state: VisitState): Found<Temperature> {
  return andThen(
    both(refrigerantOf(state), absoluteOf(state, 'headPressure')),
    ([refrigerant, head]) =>
      calculated(condensingTemperature({ refrigerant, head }), condensingTemperatureFormula, state),
  );
}

function evaporatingFromSuction(state: VisitState): Found<Temperature> {
  return andThen(
    both(refrigerantOf(state), absoluteOf(state, 'suctionPressure')),
    ([refrigerant, suction]) =>
      calculated(
        evaporatingTemperature({ refrigerant, suction }),
        evaporatingTemperatureFormula,
        state,
      ),
  );
}

/** The condensing temperature as read off the gauge's own scale, or from the head pressure: the newer. */
export function condensing(state: VisitState): Found<Temperature> {
  return isNewer(state, 'condensingTemp', SOURCES.condensingTemp)
    ? temperatureOf(state, 'condensingTemp')
    : condensingFromHead(state);
}

export function evaporating(state: VisitState): Found<Temperature> {
  return isNewer(state, 'evaporatingTemp', SOURCES.evaporatingTemp)
    ? temperatureOf(state, 'evaporatingTemp')
    : evaporatingFromSuction(state);
}

const SOURCES: Record<Readable, readonly QuantityId[]> = {
  condensingTemp: ['headPressure'],
  evaporatingTemp: ['suctionPressure'],
  superheat: ['suctionPressure', 'suctionLineTemp'],
  subcooling: ['headPressure', 'liquidLineTemp'],
};

/** Whether the quantity itself was read after what it could be worked out from, or without it. */
function isNewer(state: VisitState, quantity: QuantityId, than: readonly QuantityId[]): boolean {
  const own = currentReading(state, quantity);
  if (!own) return false;
  const sources = than.map((source) => currentReading(state, source));
  if (sources.includes(null)) return true;
  const newest = Math.max(...sources.map((entry) => (entry ? state.readings.indexOf(entry) : -1)));
  return state.readings.indexOf(own) > newest;
}

const isWorkable = (about: AnswerableId): about is Workable => about in WORKED;
const isReadable = (about: Workable): about is Readable => about in SOURCES;

/** The value a quantity has now, in the visit's unit: as read, or worked out from what was read. */
export function measured(about: AnswerableId, state: VisitState): Found<Amount> {
  if (!isWorkable(about)) return readAmount(state, about);
  if (isReadable(about) && isNewer(state, about, SOURCES[about])) return readAmount(state, about);
  return inShownUnit(about, WORKED[about](state), state);
}

function inShownUnit(about: AnswerableId, found: Found<number>, state: VisitState): Found<Amount> {
  return andThen(found, (base) => worked(fromBase(base, shownUnit(about, state) ?? 'ratio')));
}
