import type { Tags } from '../../grammar/nodes.ts';
import { command } from '../commands/command.ts';
import { minutesIn } from '../numbers/durations.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { numberIn, signedIn, tagsIn } from '../slots.ts';
import { isTimeOfDay } from '../words/time-of-day.ts';
import { remark } from '../plain-means.ts';

/** Driving is no time on the job, and what is added to the hours on site is not all of them; labor adds up by itself. */
const NOT_ALL =
  /\b(?:drive|travel|windshield|there|each way|both ways|one way|round trip)\b|^(?:add|plus)\b(?!.*\blabor\b)/i;

const MINUTES_IN_HOUR = 60;

/** Hours, and the minutes told behind them. */
function heldIn(tags: Tags): number | null {
  const minutes = minutesIn(tags);
  const rest = numberIn(tagsIn(tags['rest'])?.['number']);
  if (minutes === null || minutes < 1) return null;
  if (rest === null) return Math.round(minutes);
  const isRest = Number.isInteger(rest) && rest > 0 && rest < MINUTES_IN_HOUR;
  return isRest && minutes % MINUTES_IN_HOUR === 0 ? minutes + rest : null;
}

/** "Two hours on site", "an hour and a half labor": for the office; what is not all of it is kept as it was said. */
export const timeTold: Means = (tags, frame) => {
  const words = frame.wordsOf(frame.span);
  const value = heldIn(tags);
  if (value === null || NOT_ALL.test(words)) return { remarks: [words] };
  return { facts: [{ fact: /\blabor\b/i.test(words) ? 'labor' : 'timeOnSite', value, words }] };
};

/** "Make that three hours": of the last time that was told; the visit knows which that was. */
const amendTime: Means = (tags) => {
  const value = heldIn(tags);
  return value === null ? null : command({ do: 'amend', quantity: null, value, unit: 'min' });
};

/** "Nine", "nine thirty" */
const since: Means = (tags, frame) => {
  const said = signedIn(tags);
  if (said === null || !isTimeOfDay(tags)) return null;
  const [hour, minute] = said < 100 ? [said, 0] : [Math.trunc(said / 100), said % 100];
  const value = `${String(hour)}:${String(minute).padStart(2, '0')}`;
  return { facts: [{ fact: 'hereSince', value, words: frame.wordsOf(frame.span) }] };
};

/** Whether the road is within the hours nobody told: kept as it was said. */
const timeAndRoad = remark;

const ABOUT = '[(about|around|like|right at|just over|just under|almost)]';
const HOURS = `${ABOUT} <duration> [and] <number:rest> (minutes|minute)`;
const IN_ALL = '[(total|in total|all told|all together|today)]';

/** What the office bills by, where the technician says it: the clock of the visit knows only when it was first spoken to. */
export const TIME_TOLD_RULES: readonly Rule[] = [
  rule(
    `[(i|we)] (was|were|have been|been) (here|on site|on the job) [for] ${HOURS} ${IN_ALL}`,
    timeTold,
    {
      unheard: true,
      examples: ['i was here two hours and forty minutes'],
    },
  ),
  rule(
    `[(it was|that is|call it|put me down for|bill)] ${HOURS} [of] (on site|on the job|labor) ${IN_ALL}`,
    timeTold,
    {
      unheard: true,
      examples: ['two hours and forty minutes on site'],
    },
  ),
  rule(
    `[(it|this|that|this one|the (job|call)|whole thing)] took (me|us) ${ABOUT} <duration> [[and] <number:rest> (minutes|minute)] ${IN_ALL}`,
    timeTold,
    { unheard: true, alone: true, examples: ['took me three and a half hours'] },
  ),
  rule(
    `[(it was|call it|put me down for)] <duration> [(all told|in all|altogether|total)] <pause> [and] <duration:road> [of (it|that)] (driving|drive|drive time|travel|traveling|travelling|travel time|on the road)`,
    timeAndRoad,
    {
      unheard: true,
      alone: true,
      examples: [],
    },
  ),
  rule(
    `[(my|add|plus|put down|put|log|bill|charge)] labor [(is|was|comes to)] ${ABOUT} <duration> [[and] <number:rest> (minutes|minute)]`,
    timeTold,
    {
      unheard: true,
      examples: ['labor is two hours'],
    },
  ),
  rule(
    `[(no|sorry|wait|oops|actually)] (make (it|that)|change (it|that) to|that should be|it should be|should be|i meant|correction) <duration> [[and] <number:rest> (minutes|minute)] [[of] labor]`,
    amendTime,
    { unheard: true, apart: true, examples: ['make that three hours'] },
  ),
  rule(
    `[(i have|we have|i|we)] (been here since|got here at) ${ABOUT} <number> [(this morning|this afternoon|o clock)]`,
    since,
    { unheard: true, apart: true, examples: ['i have been here since nine'] },
  ),
];
