import { drawn, electrical, GOT, NO_VOLTS, one } from '../electrical/electrical.ts';
import { fanPlace } from '../words/fans.ts';
import { type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId } from '../slots.ts';
import type { Reading } from '../utterance.ts';

const ofFan: Means = (tags, frame) => ofTheFan(drawn(tags, fanPlace(frame.context), frame));

const fedFan: Means = (tags, frame) => {
  const found = electrical(tags, fanPlace(frame.context), frame);
  return found?.quantity === 'voltage' ? ofTheFan(found) : null;
};

const noVoltsAtFan: Means = (_tags, frame) =>
  ofTheFan(electrical({ number: 0 }, fanPlace(frame.context), frame));

/** What follows may say of "it" that it stands. */
function ofTheFan(found: Reading | null): Meaning | null {
  const meant = one(found);
  return meant === null ? null : { ...meant, names: partId(found?.place ?? undefined) ?? 'fan' };
}

/** A fan without its coil's name. */
const FAN = '(fan|fans|fan motor|fan motors)';

/** What was metered at a fan, nobody said which. */
export const UNNAMED_FAN_RULES: readonly Rule[] = [
  rule(`<the> ${FAN} [is] (pulling|drawing|pulls|draws) <amount>`, ofFan, {
    examples: ['fan is pulling point six amps'],
  }),
  rule(`${GOT} <amount> (at|across|on|to|into|going to|in) <the> ${FAN}`, fedFan, {
    examples: ['one twenty on the fan motor'],
  }),
  rule(`<the> ${FAN} (has|has got|is got|is getting|gets|is seeing|sees) [got] <amount>`, fedFan, {
    examples: ['the fan motor has got one twenty'],
  }),
  rule(
    `${GOT} ${NO_VOLTS} (at|across|on|to|into|going to|getting to|in) <the> ${FAN}`,
    noVoltsAtFan,
    { examples: ['nothing at the fan motor'] },
  ),
];
