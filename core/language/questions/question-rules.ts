import { BOTH_ASKED } from './both-asked.ts';
import { GOOD_OR_BAD_QUESTIONS } from './good-or-bad.ts';
import { JUDGED_QUESTIONS } from './judged.ts';
import { LED_QUESTIONS } from './led.ts';
import { LOADING_QUESTIONS } from './may-be-loaded.ts';
import { LIMIT_QUESTIONS } from './limits.ts';
import { MAKERS_FIGURES } from './makers-figures.ts';
import { METERED_QUESTIONS } from './metered.ts';
import { TOLD_AND_ASKED } from './told-and-asked.ts';
import { PASSING_QUESTIONS } from './in-passing.ts';
import { ONE_WORD_QUESTIONS } from './one-word.ts';
import { REASON_QUESTIONS } from './reasons.ts';
import { RECALLED_QUESTIONS } from './recalled.ts';
import { RECORD_QUESTIONS } from './record.ts';
import { SAFE_TO_QUESTIONS } from './safe-to.ts';
import { SATURATION_QUESTIONS } from './saturation.ts';
import { STEP_QUESTIONS } from './steps.ts';
import { NAMED_FIRST_QUESTIONS } from './named-first.ts';
import { SUPPOSED_TARGETS } from './supposed.ts';
import { FREE_QUESTIONS } from './asked-freely.ts';
import { SWITCH_POINT_QUESTIONS } from './switch-points.ts';
import { SWITCH_QUESTIONS } from './switches.ts';
import { TAGGED_QUESTIONS } from './tagged.ts';
import { VALUE_QUESTIONS } from './values.ts';
import { WAITING_QUESTIONS } from './waiting.ts';
import type { Rule } from '../rule.ts';

/** What is asked. */
export const QUESTION_RULES: readonly Rule[] = [
  ...LED_QUESTIONS,
  ...JUDGED_QUESTIONS,
  ...GOOD_OR_BAD_QUESTIONS,
  ...RECALLED_QUESTIONS,
  ...SUPPOSED_TARGETS,
  ...VALUE_QUESTIONS,
  ...NAMED_FIRST_QUESTIONS,
  ...SATURATION_QUESTIONS,
  ...SWITCH_QUESTIONS,
  ...SWITCH_POINT_QUESTIONS,
  ...TAGGED_QUESTIONS,
  ...STEP_QUESTIONS,
  ...TOLD_AND_ASKED,
  ...REASON_QUESTIONS,
  ...LIMIT_QUESTIONS,
  ...SAFE_TO_QUESTIONS,
  ...PASSING_QUESTIONS,
  ...WAITING_QUESTIONS,
  ...LOADING_QUESTIONS,
  ...RECORD_QUESTIONS,
  ...MAKERS_FIGURES,
  ...METERED_QUESTIONS,
  ...FREE_QUESTIONS,
  ...ONE_WORD_QUESTIONS,
  ...BOTH_ASKED,
];
