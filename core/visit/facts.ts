import type { Fact } from '../language/utterance.ts';
import type { UnitFacts } from './state.ts';

/** What a fact changes about the unit: the last word on each thing holds. Of the time it took the unit knows nothing. */
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
      return { ...unit, condenser: fact.value };
    case 'headControl':
      return { ...unit, headControl: fact.value };
    case 'equipment':
      return {
        ...unit,
        equipment: fact.value,
        freezer: fact.freezer ?? false,
        doors: fact.doors ?? unit.doors,
      };
    case 'nameplate':
      return {
        ...unit,
        nameplate: { ...unit.nameplate, [fact.item]: { value: fact.value, unit: fact.unit } },
      };
    case 'timeOnSite':
    case 'labor':
    case 'hereSince':
      return unit;
    case 'unit':
      return { ...unit, name: fact.value };
    case 'site':
      return { ...unit, site: fact.value };
  }
}

/** A name settles what it is; what was mixed stays mixed. */
function settled(doubt: UnitFacts['chargeDoubt']): UnitFacts['chargeDoubt'] {
  return doubt === 'unknown' ? null : doubt;
}
