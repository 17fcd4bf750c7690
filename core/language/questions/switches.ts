import type { AnswerableId, QuantityId } from '../../terms/quantities.ts';
import { heardRule, type Means, type Rule, rule } from '../rule.ts';
import { placeId } from '../slots.ts';
import { aboutIn, ask, MY } from './asking.ts';

/** How near a pressure is to the control that watches it. */
const CUTOUT_OF: Partial<Record<AnswerableId, QuantityId>> = {
  headPressure: 'highCutoutPressure',
  condensingTemp: 'highCutoutPressure',
  suctionPressure: 'lowCutoutPressure',
};

const margin: Means = (tags, frame) => {
  const named = aboutIn(tags) ?? frame.context.lastQuantity ?? 'headPressure';
  return ask({ ask: 'margin', about: CUTOUT_OF[named] ?? named });
};

const switchOpen: Means = (tags) => {
  const place = placeId(tags['place']);
  return place === null ? null : ask({ ask: 'switch', about: place });
};

/** How near a pressure is to the control that watches it, and whether that control is open. */
export const SWITCH_QUESTIONS: readonly Rule[] = [
  heardRule('how close is [(my|the)] <side> to [the] cut out', margin, {
    examples: ['how close is head to the cut out'],
  }),
  rule(
    `how close is ${MY} <asked> to [the] (cut out|~cutting out|~tripping|~switch|~limit|~high limit|~high pressure (cut out|switch|control)|~low pressure (cut out|switch|control)|~trip [point])`,
    margin,
    {
      examples: ['how close is head to tripping'],
    },
  ),
  rule(
    'how (close|near) (am i|are we|is it|is that|i am) [(getting|coming)] to [the] [high] [pressure] (cut out|cutting out|tripping|switch|limit|trip)',
    margin,
    { examples: ['how close am i to the cut out'] },
  ),
  rule(
    `how (far|close) (is|am i|are we) [${MY} <asked>] (from|to|off) [the] [high] [pressure] (cut out|cutting out|tripping|limit)`,
    margin,
    {
      examples: ['how far is head from the cut out'],
    },
  ),
  rule(
    'how much (room|margin) (is there|do i have|is left|have i got) [(to|before|until|on)] [the] [high] [pressure] [(cut out|it trips|tripping|it cuts out|limit)]',
    margin,
    { examples: ['how much room do i have before it trips'] },
  ),
  heardRule(
    'is [the] <place> (open|~closed|~tripped|~open or closed|~making|~stuck open|~made|~bad)',
    switchOpen,
    {
      examples: ['is the high pressure switch open'],
    },
  ),
  rule(
    '(did [the] <place> (open|trip|cut out)|has [the] <place> (opened|tripped)|which way is [the] <place>)',
    switchOpen,
    { examples: ['did the low pressure switch open'] },
  ),
];
