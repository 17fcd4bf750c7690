import type { Tags } from '../grammar/nodes.ts';
import { one, readingOf } from './electrical.ts';
import { amountIn } from './measure.ts';
import { reading } from './reading-means.ts';
import { type Means, type Rule, rule } from './rule.ts';
import { numberIn, placeId, tagsIn } from './slots.ts';
import type { Reading } from './utterance.ts';

const RATED = { low: null, high: null, unit: 'uF', hedged: false, overlimit: false } as const;

/** What a can is marked, as far as one was said. */
function ratedIn(tags: Tags, ...[, frame]: Parameters<Means>): Reading | null {
  const value = numberIn(tagsIn(tags['rated'])?.['number']);
  return value === null ? null : reading('ratedCapacitance', { ...RATED, value }, frame);
}

/** "Fifteen microfarad run cap reads twelve": what it is marked, and what a meter reads of it. */
const readsOfRated: Means = (tags, frame) => {
  const rated = ratedIn(tags, tags, frame);
  const read = readingOf('capacitance', amountIn(tags), { place: placeId(tags['place']), frame });
  return rated === null || read === null ? null : { readings: [rated, read] };
};

/** The compressor's side of a dual capacitor is the one that is rated and read; its fan's figure is asked about. */
const dualRated: Means = (tags, frame) => {
  const rated = ratedIn(tags, tags, frame);
  const fan = numberIn(tagsIn(tags['fan'])?.['number']);
  if (rated === null || fan === null) return null;
  return { readings: [rated], unclaimed: [String(fan)] };
};

const onSide: Means = (tags, frame) => {
  const amount = amountIn(tags);
  if (amount.unit !== null && amount.unit !== 'uF') return null;
  return one(readingOf('capacitance', amount, { place: 'runCapacitor', frame }));
};

const UF = '(microfarad|mfd|uf|mike|mic|microfarads)';
const READS =
  '(reads|reading|measures|measured|read|shows|showing|is|checked|checks|tests|tested|came in|comes in|at|down to)';
const GETTING =
  '[(and|but)] [(i am|it is|i|it)] [(getting|reading|reads|got|have|seeing|down to|measured|measures)]';

/** What capacitors are marked and what is read of them. */
export const CAPACITOR_RULES: readonly Rule[] = [
  rule(
    '<the> <place> [is] rated [(at|for)] <number:rated> [(microfarads|mfd|uf)] [(is|it|and|it is|but it is|and it is|i am|i got|but)] (reads|reading|measures|measured|read|shows|is|checked|tests|tested) [(at|only)] <amount>',
    readsOfRated,
    { examples: ['cap rated thirty five reads thirty one'] },
  ),
  rule(
    `[(a|the|that|this)] <number:rated> ${UF} <place> [(is|it is)] [only] [${READS}] [(at|only|out at)] <amount>`,
    readsOfRated,
    {
      examples: ['fifteen microfarad run cap reads twelve'],
    },
  ),
  rule(
    '[the] [(dual|run)] (cap|capacitor) is [(a|rated|marked|stamped)] [(at|for)] <number:rated> (and|over|by|slash|plus) <number:fan>',
    dualRated,
    { examples: ['the dual cap is rated forty five over five'] },
  ),
  rule(
    `${GETTING} <amount> (on|at|to|from) [the] (herm|hermetic|compressor side|h e r m) [(side|terminal|leg|to common)]`,
    onSide,
    { examples: ['getting thirty eight on the herm side'] },
  ),
];
