import { properName } from '../terms/proper-name.ts';
import type { Fact } from '../language/utterance.ts';
import type { CondenserId, CondensingUnitId } from '../terms/names.ts';
import type { UnitFacts } from './state.ts';

/** What a fact changes about the unit: the last word on each thing holds. Of what the visit is for and the time it took the unit knows nothing. */
export function applyFact(unit: UnitFacts, fact: Fact): UnitFacts {
  switch (fact.fact) {
    case 'refrigerant':
      return { ...unit, refrigerant: fact.value, chargeDoubt: settled(unit.chargeDoubt) };
    case 'cause':
      return { ...unit, cause: fact.value };
    case 'valves':
      return { ...unit, valves: fact.value };
    case 'chargeDoubt':
      return { ...unit, chargeDoubt: fact.value };
    case 'metering':
      return { ...unit, metering: fact.value };
    case 'sightGlass':
      return { ...unit, sightGlass: fact.value };
    case 'condenser':
      return withCondenser(unit, fact.value);
    case 'condensingUnit':
      return withCondensingUnit(unit, fact.value);
    case 'headControl':
      return { ...unit, headControl: fact.value };
    case 'equipment':
      return withBox(unit, fact);
    case 'nameplate':
      return {
        ...unit,
        nameplate: { ...unit.nameplate, [fact.item]: { value: fact.value, unit: fact.unit } },
      };
    case 'heaterRating': {
      const { value, unit: of } = fact;
      return { ...unit, heaters: { ...unit.heaters, [fact.heater]: { value, unit: of } } };
    }
    case 'cameTo':
    case 'timeOnSite':
    case 'labor':
    case 'travel':
    case 'hereSince':
      return unit;
    case 'unit':
      return { ...unit, name: fact.value };
    case 'site':
      return { ...unit, site: properName(fact.value) };
  }
}

/** Of another class nothing is known yet; of the same one, what does not say otherwise leaves a freezer a freezer. */
function withBox(unit: UnitFacts, fact: Extract<Fact, { fact: 'equipment' }>): UnitFacts {
  // Logs of before the condensing unit was a fact of its own.
  if (fact.value === 'remoteCondensingUnit') return withCondensingUnit(unit, 'remote');
  const isSame = fact.value === unit.equipment;
  return {
    ...unit,
    equipment: fact.value,
    freezer: fact.freezer ?? (isSame && unit.freezer),
    doors: fact.doors ?? unit.doors,
  };
}

/** What stands in the box has no condenser apart from it, and the other way round: the last word holds. */
function withCondensingUnit(unit: UnitFacts, condensingUnit: CondensingUnitId): UnitFacts {
  const isDenied = condensingUnit === 'selfContained' && unit.condenser === 'remote';
  return { ...unit, condensingUnit, condenser: isDenied ? null : unit.condenser };
}

function withCondenser(unit: UnitFacts, condenser: CondenserId): UnitFacts {
  const isDenied = condenser === 'remote' && unit.condensingUnit === 'selfContained';
  return { ...unit, condenser, condensingUnit: isDenied ? null : unit.condensingUnit };
}

/** A name settles what it is; what was mixed stays mixed. */
function settled(doubt: UnitFacts['chargeDoubt']): UnitFacts['chargeDoubt'] {
  return doubt === 'unknown' ? null : doubt;
}
