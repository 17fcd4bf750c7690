import { fixed } from '../readings/reading-means.ts';
import { nothing, remark } from '../plain-means.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { isNotDone } from '../words/not-done.ts';
import type { Reading } from '../utterance.ts';

/** "Weighed it in right by the plate": as much as the plate says, unless it was told how much. */
const byThePlate: Means = (tags, frame) => {
  const { plateCharge, movedLast } = frame.context;
  if (isNotDone(frame)) return null;
  if (plateCharge === null || movedLast?.quantity === 'refrigerantAdded')
    return remark(tags, frame);
  const words = frame.wordsOf(frame.span);
  const charge: Reading = {
    quantity: 'refrigerantAdded',
    ...plateCharge,
    unitFrom: 'implied',
    place: null,
    words,
  };
  return { readings: [charge] };
};

const I = '<byUs>';
const WEIGHED =
  '(weighed|charged|put|recharged|filled|refilled|dumped|weighed in|charged in|put in|weighed back in)';
const IT = '(it|her|the (charge|gas|propane|refrigerant|freon))';
const IN = '[(all|back)] [(in|up|back in|all in)]';
const PLATE = '(plate|nameplate|name plate|data plate|tag|label|sticker|data tag)';
const CHARGE = '(charge|weight|amount)';

/** The charge by what the plate says, without its figure. */
export const BY_THE_PLATE_RULES: readonly Rule[] = [
  rule(
    `${I} ${WEIGHED} ([${IT}] ${IN} [(right|exactly|dead|just|straight)] (by|to|per|off|off of|according to) the ${PLATE} [${CHARGE}]|[${IN}] (the|a) (plate|nameplate|factory|full|full nameplate|full plate|full factory) ${CHARGE} [(by|off|on|per) the (${PLATE}|scale)]|[(right|exactly|just)] what (the ${PLATE}|it) (says|calls for|said|called for|takes))`,
    byThePlate,
    { unheard: true, apart: true, examples: ['weighed it in right by the plate'] },
  ),
  rule(
    '[(and|ok)] [(the|my)] scale is (zeroed|tared) [out] [<pause>] [(and|then)] [(i|we)] (weighed in|charged in|charged|put in|added) <amount> [of <refrigerant>]',
    fixed('refrigerantAdded'),
    { unheard: true, examples: [] },
  ),
  rule('[(and|ok)] [(the|my)] scale is (zeroed|tared) [out]', nothing, {
    unheard: true,
    examples: ['scale is zeroed'],
  }),
];
