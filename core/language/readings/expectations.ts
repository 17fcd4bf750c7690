import { electrical, one } from '../electrical/electrical.ts';
import { isElectrical } from '../vocabulary/electrical-quantities.ts';
import { amountIn, withMore } from '../numbers/measure.ts';
import { reading } from './reading-means.ts';
import { aboutIn, ask } from '../questions/asking.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { placeId, quantityId, tagsIn } from '../slots.ts';
import { nothing } from '../plain-means.ts';
import type { PlaceId } from '../../terms/names.ts';

/**
 * "Suction should be fifteen" puts right what was misheard as fifty, or tells what to hope for of a suction of nine: a
 * value that nobody read must not become one, so it is asked. "About one seventy" is a hope.
 */
const expected: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  const amount = amountIn(tags);
  if (quantity === null) return null;
  if (amount.hedged) return {};
  const found = reading(quantity, amount, frame);
  return found === null ? null : { doubts: [withMore(found, { why: 'expected' })] };
};

/** "Compression's gotta be nine to one, what's it actually": asked for, and what it should be nobody read. */
const wishedAndAsked: Means = (tags) =>
  ask({ ask: 'value', about: aboutIn(tags) ?? 'compressionRatio' });

/** What should be and what is, in either order: only the second was read. */
const readBeside: Means = (tags, frame) => {
  const quantity = quantityId(tags['quantity']);
  if (quantity === null || isElectrical(quantity)) return null;
  const found = reading(quantity, amountIn(tagsIn(tags['read']) ?? {}), frame);
  return found === null ? null : { readings: [found] };
};

/** The same of what is metered at a place. */
const meteredBeside: Means = (tags, frame) => {
  const read = tagsIn(tags['read']);
  const place = placeId(tags['place']);
  // "Capacitor's supposed to be thirty five": nobody says so of volts.
  const isCapacity = CAPACITORS.includes(place) && read !== null && amountIn(read).unit === null;
  const told = isCapacity ? { ...read, unit: 'uF' } : read;
  const meant = told === null ? null : one(electrical(told, place, frame));
  const [found] = meant?.readings ?? [];
  if (found?.quantity !== 'capacitance') return meant;
  // What a capacitor should have is marked on it.
  const rated = reading('ratedCapacitance', { ...amountIn(tags), unit: 'uF' }, frame);
  return rated === null ? meant : { readings: [{ ...rated, place }, found] };
};

const CAPACITORS: readonly (PlaceId | null)[] = ['runCapacitor', 'startCapacitor'];

const AT = '[(at|down at|up at|down|up)]';
const SHOULD = `should [(really|probably|ideally|actually|only|all)] (be|run|read|sit) ${AT}`;
/** What somebody wants of it, and never what he said before. */
const OUGHT = `((ought to|needs to|has to|wants to|is supposed to|was supposed to) (be|run|get|read|sit)|is meant to be) ${AT}`;
const WISHED = `(${SHOULD}|${OUGHT})`;
/** When or where it should: it changes nothing. */
const HERE =
  '[(today|here|right now|on this (one|unit|box|guy)|for this (box|unit|one)|in this (heat|weather))]';
const BUT = '[(and|but|<pause> [(and|but)])]';
const IS =
  '((it|she|mine) is|it (reads|shows)|i am (getting|reading|seeing|at|only getting|only seeing|only at)|i (have|have got|got|see|only have|only got)|we are at|we have|here it is|now it is|is) [(at|only|only at|just|sitting at|running|reading|showing|up at|down at|way up at|way down at|more like|actually|really)]';

/** What a quantity should be is no reading of it. */
export const EXPECTATION_RULES: readonly Rule[] = [
  rule(`[the] <quantity> ${WISHED} <amount> ${HERE} ${BUT} ${IS} <amount:read>`, readBeside, {
    examples: ['suction should be fifteen but i have got nine'],
  }),
  rule(`[the] <quantity> <link> <amount:read> ${BUT} [(it|that)] ${WISHED} <amount>`, readBeside, {
    examples: ['head is two forty and it should be about one eighty'],
  }),
  rule(
    `you said [the] <quantity> ${WISHED} <amount> ${HERE} ${BUT} ${IS} <amount:read>`,
    readBeside,
    {
      examples: ['you said superheat should be eight i am at nineteen'],
    },
  ),
  rule(
    `<the> <place> ${WISHED} [(over|under|above|below|at least|better than)] (<amount>|a (meg|megohm)) ${HERE} ${BUT} ${IS} <amount:read>`,
    meteredBeside,
    {
      unheard: true,
      examples: ['common to ground should be over a meg and i am reading two ohms'],
    },
  ),
  rule(
    '[(it|that|she)] should (be|settle [(out|in)]|end up|come [(out|down|up|back)]|land|run|sit|read|wind up|drop|climb) [(down|up|back|out)] [(at|to|around|about|right around|somewhere around|close to)] <amount> (once|when|after|by the time|as soon as) <clause>',
    nothing,
    { unheard: true, examples: ['should be around one seventy once it settles down'] },
  ),
  rule(
    `[the] (<asked>|compression) ((should|ought to|needs to|has to|has got to|is got to|must|is supposed to) be) [(at|about|around|like)] <number> [(to one|degrees|pounds|psi)] [(on|for|with) (this|that|the|a) (thing|unit|one|box|compressor|guy|job|system)] [<pause>] [(so|and|but)] (what|where) is (it|she|that) [(actually|really|at|now|actually at|running|sitting|right now)]`,
    wishedAndAsked,
    { unheard: true, examples: ['compression ratio should be nine to one what is it actually'] },
  ),
  rule(`[the] <quantity> ${SHOULD} <amount> ${HERE}`, expected, {
    examples: ['suction should be fifteen'],
  }),
  rule(`[the] <quantity> ${OUGHT} <amount> ${HERE}`, nothing, {
    examples: ['head ought to be one eighty'],
  }),
];
