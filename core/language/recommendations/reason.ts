import type { Tags } from '../../grammar/nodes.ts';
import { ONES, TEENS, TENS } from '../numbers/number-words.ts';
import type { Frame, Span } from '../rule.ts';
import { spanIn } from '../slots.ts';

/** "Because", "it is" and "to", each with the words behind it. */
const KINDS = ['because', 'itIs', 'to'] as const;
type Kind = (typeof KINDS)[number];

/** A number in a reason would be out of sight: the sentence is understood without the reason instead. */
const NUMBER = new RegExp(
  `\\d|\\b(${[...ONES.slice(1), ...TEENS, ...TENS].join('|')}|hundred)\\b`,
  'i',
);
const STATES =
  /^(it|they|that)( ?['’]s| ?['’]re| is| are| was| were| has| have| keeps| looks| will| does| leaks) /i;
/** Looking, not work: work at a part is recommended itself. */
const CHECKS =
  /^(to|and) (check|recheck|see|verify|look|make sure|test|read(?! (?:me|us|it back|back|that back|(?:the|my) (?:note|notes|write)))|confirm|finish(?! (?:anyway|up|the visit)$)|weigh|measure|listen|go over|(?:do|run|take|get|pull|draw|have) (?:another|a|an|one more|the) (?:\w+ ){0,2}(?:test|sample|check|reading|look))\b/i;

/** "Door heater's had it as well" */
const AS_WELL = /^as (?:well|usual|always|expected|is)\b/i;

/** Why something ought to be done, in the words that it was said in; `null` where they are no reason. */
export function reasonIn(tags: Tags, frame: Frame): string | null {
  for (const kind of KINDS) {
    const span = spanIn(tags[kind]);
    if (span !== null) return reasonOf(kind, span, frame);
  }
  return null;
}

function reasonOf(kind: Kind, { from, to }: Span, frame: Frame): string | null {
  const behind = frame.wordsOf({ from, to });
  const whole = frame.wordsOf({ from: from - 1, to });
  if (NUMBER.test(behind)) return null;
  switch (kind) {
    case 'because':
      return AS_WELL.test(whole) ? null : behind;
    case 'itIs':
      return STATES.test(whole) && !/ and /i.test(whole) ? whole : null;
    case 'to':
      return CHECKS.test(whole) ? whole.replace(/^and /i, 'to ') : null;
  }
}

/** "To put the gasket on": what somebody comes back for; "back to that", "back to normal" and "change the number" are none. */
export const isWorkToDo = (aim: string): boolean => WORK.test(aim) && !OF_OURS.test(aim);
const WORK =
  /^(?:put|install|fit|hang|mount|set|swap|change|replace|fix|repair|finish|do|braze|charge|wire|hook|pull|clean|pick|drop|deliver|start|reset|re\w+) (?!me\b|that\b|up\b|over\b)/i;
const OF_OURS = /\b(?:numbers?|notes?|readings?|memos?|timers?|names?)\b/i;
