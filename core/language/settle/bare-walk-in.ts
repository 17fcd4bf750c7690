import type { Context } from '../context.ts';
import type { Fact } from '../utterance.ts';
import type { DraftUtterance } from './told.ts';

/** "The walk-in" alone does not say that a freezer is a cooler: a freezer stays one until its other name is said. */
export function keepFreezer(all: DraftUtterance, { equipment }: Context): void {
  if (equipment !== 'walkInFreezer' || all.commands.length > 0) return;
  if (all.facts.some(isBare)) {
    all.facts = all.facts.map((fact) =>
      isBare(fact) ? { ...fact, value: 'walkInFreezer' } : fact,
    );
  }
}

const isBare = (fact: Fact): fact is Extract<Fact, { fact: 'equipment' }> =>
  fact.fact === 'equipment' && fact.value === 'walkInCooler' && !NAMES_COOLER.test(fact.words);
const NAMES_COOLER =
  /\b(?:cooler|fridge|refrigerator|cave|keg|chill|chiller|chilled|medium temp|med temp)\b/i;
