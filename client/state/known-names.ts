import type { KnownNames } from '../../core/language/names/known-names.ts';
import type { Fact } from '../../core/language/utterance.ts';
import type { UnitFacts } from '../../core/visit/state.ts';
import type { EventLog } from '../offline/event-log.ts';

/** Ours: half a year of two calls a week; reading more would only delay the names that are likely. */
const MOST_VISITS = 50;

/** The sites and units of this device's earlier visits, newest first, beside the parts that are listed on it. */
export async function knownNames(
  log: Pick<EventLog, 'visits' | 'readVisit'>,
  parts: readonly string[],
): Promise<KnownNames> {
  const visits = (await log.visits()).slice(0, MOST_VISITS);
  const facts: Fact[] = [];
  for (const { visit } of visits) {
    const { events } = await log.readVisit(visit);
    // Within a visit the last name given is the one that it was corrected to.
    facts.push(
      ...events.flatMap((event) => (event.type === 'factStated' ? [event.fact] : [])).reverse(),
    );
  }
  const named = (kind: 'site' | 'unit'): readonly string[] => [
    ...new Set(facts.flatMap((fact) => (fact.fact === kind ? [fact.value] : []))),
  ];
  return { sites: named('site'), units: named('unit'), parts };
}

/** With what the visit that ends now was called. */
export function withNamesOf(names: KnownNames, { site, name }: UnitFacts): KnownNames {
  const sites = inFront(names.sites, site);
  const units = inFront(names.units, name);
  return sites === names.sites && units === names.units ? names : { ...names, sites, units };
}

function inFront(known: readonly string[], name: string | null): readonly string[] {
  if (name === null || known[0] === name) return known;
  return [name, ...known.filter((other) => other !== name)];
}
