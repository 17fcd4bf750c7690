import { GOOD_OR_BAD_QUESTIONS } from './questions/good-or-bad.ts';
import { JUDGED_QUESTIONS } from './questions/judged.ts';
import { LIMIT_QUESTIONS } from './questions/limits.ts';
import { MAKERS_FIGURES } from './questions/makers-figures.ts';
import { METERED_QUESTIONS } from './questions/metered.ts';
import { TOLD_AND_ASKED } from './questions/told-and-asked.ts';
import { PASSING_QUESTIONS } from './questions/in-passing.ts';
import { REASON_QUESTIONS } from './questions/reasons.ts';
import { RECALLED_QUESTIONS } from './questions/recalled.ts';
import { RECORD_QUESTIONS } from './questions/record.ts';
import { SAFE_TO_QUESTIONS } from './questions/safe-to.ts';
import { SATURATION_QUESTIONS } from './questions/saturation.ts';
import { STEP_QUESTIONS } from './questions/steps.ts';
import { NAMED_FIRST_QUESTIONS } from './questions/named-first.ts';
import { SUPPOSED_TARGETS } from './questions/supposed.ts';
import { FREE_QUESTIONS } from './questions/asked-freely.ts';
import { SWITCH_POINT_QUESTIONS } from './questions/switch-points.ts';
import { SWITCH_QUESTIONS } from './questions/switches.ts';
import { TAGGED_QUESTIONS } from './questions/tagged.ts';
import { VALUE_QUESTIONS } from './questions/values.ts';
import { WAITING_QUESTIONS } from './questions/waiting.ts';
import type { Rule } from './rule.ts';

/** What is asked. */
export const QUESTION_RULES: readonly Rule[] = [
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
  ...RECORD_QUESTIONS,
  ...MAKERS_FIGURES,
  ...METERED_QUESTIONS,
  ...FREE_QUESTIONS,
];
