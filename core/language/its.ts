import type { QuantityId } from '../terms/quantities.ts';
import type { PartId } from '../terms/names.ts';
import type { Context } from './context.ts';
import type { Meaning } from './rule.ts';
import { partId } from './slots.ts';

/** "Found the condenser plugged, brushed it": what is said of "it" is said of the part named last. */
export function settleIts(
  meanings: readonly Meaning[],
  { lastPart, lastPlace }: Context,
): readonly Meaning[] {
  let inSentence: PartId | null = null;
  let read: QuantityId | null = null;
  const before = lastPart ?? partId(lastPlace ?? undefined);
  return meanings.map((meaning) => {
    const part = inSentence ?? (meaning.ofIt?.inSentence === true ? null : before);
    const that = meaning.ofThat;
    if (that !== undefined) return (read === null ? null : that.means(read)) ?? that.otherwise;
    const settled = meaning.ofIt === undefined ? meaning : settledOf(meaning.ofIt, part);
    read = meaning.speaksOf ?? settled?.readings?.at(-1)?.quantity ?? read;
    inSentence = meaning.names ?? partIn(settled ?? {}) ?? inSentence;
    return settled ?? {};
  });
}

const settledOf = (ofIt: NonNullable<Meaning['ofIt']>, part: PartId | null): Meaning | null =>
  (part === null ? null : ofIt.means(part)) ?? ofIt.otherwise ?? null;

/** The part that a meaning names last, or the one that it was metered at. */
function partIn({ readings = [], findings = [], work = [] }: Meaning): PartId | null {
  const named = findings.at(-1)?.part ?? work.at(-1)?.part ?? readings.at(-1)?.place;
  return partId(named ?? undefined);
}
