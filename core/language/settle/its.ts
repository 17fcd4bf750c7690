import type { QuantityId } from '../../terms/quantities.ts';
import type { PartId, PlaceId } from '../../terms/names.ts';
import type { Context } from '../context.ts';
import { doesToIt } from './done-to-unnamed.ts';
import { coilBehind, isUnnamedCoil, ofEvaporator } from '../findings/finding-of.ts';
import type { Meaning } from '../rule.ts';
import { partId } from '../slots.ts';
import { HAS_CAP, isScrewedOn } from '../words/caps.ts';
import { stateAt } from '../words/state-at.ts';
import { spokenOfLast } from './spoken-last.ts';
import { withShortNames } from './short-names.ts';
import type { Work } from '../utterance.ts';

/** "Found the condenser plugged, brushed it": what is said of "it" is said of the part named last. */
export function settleIts(meanings: readonly Meaning[], context: Context): readonly Meaning[] {
  let inSentence: PartId | null = null;
  let read: Read | null = null;
  let told: Meaning = {};
  const { lastPart, lastPlace } = context;
  const before = spokenOfLast(context);
  return meanings.map((each) => {
    const meaning = each.also === undefined ? each : toldAlso(told, each.also);
    const part = inSentence ?? (meaning.ofIt?.inSentence === true ? null : before);
    const named = withShortNames(settledOf(meaning, { part, read }), [
      inSentence,
      lastPart,
      lastPlace,
    ]);
    const settled = withCap(withCoil(named, inSentence), inSentence ?? before);
    read = readIn(settled) ?? read;
    told = settled;
    inSentence = meaning.names ?? partIn(settled, inSentence) ?? inSentence;
    return settled;
  });
}

/** "Evaporator's iced up and so is the condenser": of what was told just before it, and of nothing further back. */
function toldAlso(told: Meaning, { part, words }: NonNullable<Meaning['also']>): Meaning {
  const [found] = told.findings?.slice(-1) ?? [];
  const [done] = told.work?.slice(-1) ?? [];
  const [advised] = told.recommendations?.slice(-1) ?? [];
  const state = found === undefined ? null : stateAt(part, found.state);
  if (state !== null) return { findings: [{ part, state, words }] };
  if (done !== undefined) return { work: [{ did: done.did, part, words }] };
  if (advised !== undefined) return { recommendations: [{ ...advised, part, words }] };
  return { remarks: [words], names: part };
}

/** "Washed her down with the hose": what was done to something, or ought to be, and nothing tells to what. */
export function doneToNothing(
  meanings: readonly Meaning[],
  context: Context,
): ReadonlySet<Meaning> {
  if (!meanings.some(doesToIt)) return NONE;
  const settled = settleIts(meanings, context);
  return new Set(meanings.filter((each, at) => doesToIt(each) && isEmpty(settled[at])));
}
const NONE: ReadonlySet<Meaning> = new Set();

const isEmpty = (meaning: Meaning = {}): boolean => Object.keys(meaning).length === 0;

/** "Both evap fans are spinning, coil's clean": the evaporator is. */
function withCoil(meaning: Meaning, before: PartId | null): Meaning {
  const { findings, recommendations } = meaning;
  if (before === null || (findings === undefined && recommendations === undefined)) return meaning;
  return {
    ...meaning,
    ...(findings && {
      findings: findings.map((each) => ({ ...each, part: coilBehind(before, each) })),
    }),
    // "Leak's at the evaporator, I recommend replacing the coil"
    ...(recommendations && {
      recommendations: recommendations.map((each) => ({
        ...each,
        part:
          isUnnamedCoil(each.part, each.words) && ofEvaporator(before) ? 'evaporator' : each.part,
      })),
    }),
  };
}

/** "New core, new cap on it": the core's. */
function withCap(meaning: Meaning, last: PartId | null): Meaning {
  const { findings, work, recommendations } = meaning;
  if (!HAS_CAP.has(last) || (findings ?? work ?? recommendations) === undefined) return meaning;
  return {
    ...meaning,
    ...(findings && { findings: findings.map(capOf) }),
    ...(work && { work: work.map(capOf) }),
    ...(recommendations && { recommendations: recommendations.map(capOf) }),
  };
}
const capOf = <Told extends { readonly part: PartId | null; readonly words: string }>(
  told: Told,
): Told => (isScrewedOn(told.part, told.words) ? { ...told, part: 'caps' } : told);

interface Read {
  readonly quantity: QuantityId;
  readonly place: PlaceId | null;
}

/** What was read last goes before the part that was named last. */
function settledOf(
  meaning: Meaning,
  { part, read }: { readonly part: PartId | null; readonly read: Read | null },
): Meaning {
  const { ofThat, ofIt } = meaning;
  if (ofThat === undefined && ofIt === undefined) return meaning;
  const ofRead = read === null ? undefined : ofThat?.means(read.quantity, read.place);
  const ofPart = part === null ? undefined : ofIt?.means(part);
  return ofRead ?? ofPart ?? ofThat?.otherwise ?? ofIt?.otherwise ?? {};
}

function readIn({ speaksOf, speaksAt = null, readings = [] }: Meaning): Read | null {
  if (speaksOf !== undefined) return { quantity: speaksOf, place: speaksAt };
  const last = readings.at(-1);
  return last === undefined ? null : { quantity: last.quantity, place: last.place };
}

/** What is defrosted is the evaporator, named or not. */
const doneTo = (last: Work | undefined, before: PartId | null): PartId | null | undefined =>
  last?.did === 'defrost'
    ? (last.part ?? (DRAINS.has(before) ? before : 'evaporator'))
    : last?.part;
/** "Drain line's froze up so I thawed it and cleaned it out" */
const DRAINS: ReadonlySet<PartId | null> = new Set<PartId | null>(['drainLine', 'drainPan']);

/** The part that a meaning names last, or the one that it was metered at. */
function partIn(meaning: Meaning, before: PartId | null): PartId | null {
  const { readings = [], findings = [], work = [], recommendations = [] } = meaning;
  const told = findings.at(-1)?.part ?? doneTo(work.at(-1), before) ?? recommendations.at(-1)?.part;
  const named = told ?? readings.at(-1)?.place;
  return partId(named ?? undefined);
}
