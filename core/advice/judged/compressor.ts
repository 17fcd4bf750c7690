import { insulationFloor, insulationFloorFormula } from '../../calculations/insulation.ts';
import type { CompressorBuild } from '../../calculations/electrical-defaults.ts';
import { windingSum, windingSumFormula, type WindingReading } from '../../calculations/windings.ts';
import type { EquipmentId, PlaceId } from '../../terms/names.ts';
import { toResistance } from '../../units/branding.ts';
import { fromBase } from '../../units/convert.ts';
import { resistance, voltage, type Voltage } from '../../units/quantity-values.ts';
import { amountOf } from '../../visit/views.ts';
import type { VisitState } from '../../visit/state.ts';
import { equipmentOf } from '../current.ts';
import { andThen, both, calculated, worked, type Found } from '../found.ts';
import { ratedVolts } from './electrical.ts';
import type { JudgedOf } from './judged-verdict.ts';
import { inputOf, needAt, readingAt } from './read-at.ts';

/** Between two terminals: ohms, or no path at all. */
function winding(state: VisitState, place: PlaceId): Found<WindingReading> {
  const entry = readingAt(state, 'resistance', [place]);
  if (entry === null) return needAt('resistance', [place]);
  const amount = amountOf(entry.reading);
  if (amount === null) return worked('open');
  const ohms = toResistance(amount);
  return ohms === null
    ? needAt('resistance', [place])
    : worked(ohms, { inputs: [inputOf(entry, amount)] });
}

export function windings(state: VisitState): Found<JudgedOf<'windings'>> {
  const readings = both(
    winding(state, 'commonRun'),
    both(winding(state, 'commonStart'), winding(state, 'runStart')),
  );
  return andThen(readings, ([commonRun, [commonStart, runStart]]) =>
    andThen(
      calculated(windingSum({ commonRun, commonStart, runStart }), windingSumFormula, state),
      (sum) =>
        worked({
          answer: 'judged',
          about: 'windings',
          finding: sum.state,
          value: fromBase(sum.unaccounted, 'percent').value,
          unit: 'percent',
          limit: null,
        }),
    ),
  );
}

/** Whose floor holds: a plug-in box has a small hermetic, the rest a scroll or semi-hermetic (common practice). */
const BUILDS: Record<EquipmentId, CompressorBuild> = {
  reachIn: 'smallHermetic',
  prepTable: 'smallHermetic',
  displayCase: 'smallHermetic',
  iceMachine: 'smallHermetic',
  walkInCooler: 'scrollOrSemiHermetic',
  walkInFreezer: 'scrollOrSemiHermetic',
  remoteCondensingUnit: 'scrollOrSemiHermetic',
};

const TO_GROUND: readonly (PlaceId | null)[] = ['commonGround', 'startGround', 'runGround', null];

/** A small hermetic's floor is one figure, whatever its plate says. */
const ANY_VOLTAGE = voltage(230);

const voltsFor = (build: CompressorBuild, state: VisitState): Found<Voltage> =>
  build === 'smallHermetic' ? worked(ANY_VOLTAGE) : ratedVolts(state);

export function insulation(state: VisitState): Found<JudgedOf<'insulation'>> {
  const entry = readingAt(state, 'insulationResistance', TO_GROUND);
  if (entry === null) return needAt('insulationResistance', ['commonGround']);
  const amount = amountOf(entry.reading);
  const measured = amount === null ? resistance(Infinity) : toResistance(amount);
  if (measured === null) return needAt('insulationResistance', ['commonGround']);
  return andThen(equipmentOf(state), (equipment) => {
    const isApart = state.unit.condensingUnit === 'remote';
    const build = BUILDS[isApart ? 'remoteCondensingUnit' : equipment];
    return andThen(voltsFor(build, state), (rated) =>
      andThen(
        calculated(insulationFloor({ measured, rated, build }), insulationFloorFormula, state),
        ({ verdict: finding, floor, from }) =>
          worked(
            {
              answer: 'judged',
              about: 'insulation',
              finding,
              value: amount === null ? null : fromBase(measured, 'Mohm').value,
              unit: 'Mohm',
              limit: fromBase(floor, 'Mohm'),
            },
            { inputs: amount === null ? [] : [inputOf(entry, amount)], sources: [from.source] },
          ),
      ),
    );
  });
}
