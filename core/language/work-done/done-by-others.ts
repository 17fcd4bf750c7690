import { nothing, remark } from '../plain-means.ts';
import { type Means, type Rule, rule } from '../rule.ts';

/** "The last guy jumped out the door switch": what somebody else left so is told to the next one, in those words. */
export const doneByOthers: Means = (tags, frame) =>
  tags['work'] === 'bypass' || tags['work'] === 'disable'
    ? remark(tags, frame)
    : nothing(tags, frame);

export const DONE_BY_OTHERS_RULES: readonly Rule[] = [
  rule(
    '[the] (last|other|another|previous|some) (man|outfit|contractor) [(just|already|had|have|has)] <done> <the> <part>',
    doneByOthers,
    { unheard: true, examples: ['the last man bypassed the low pressure switch'] },
  ),
];
