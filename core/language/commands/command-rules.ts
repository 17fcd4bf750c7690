import { CHANGE_COMMANDS } from './changes.ts';
import { PUT_RIGHT_RULES } from './put-right.ts';
import { DIALOGUE_COMMANDS } from './dialogue.ts';
import { FREE_CHANGES, FREE_COMMANDS, NEXT_UNIT, SEVERAL_UNITS } from './spoken-freely.ts';
import { LOOSE_COMMANDS } from './loosely-told.ts';
import { SAID_TWICE_COMMANDS } from './said-twice.ts';
import { ONE_WORD_COMMANDS } from './one-word.ts';
import { STEP_COMMANDS } from './steps.ts';
import { TIMER_COMMANDS } from './timers.ts';
import { UNIT_HABIT_RULES } from './unit-habit.ts';
import type { Rule } from '../rule.ts';

/** What the product is told to do. */
export const COMMAND_RULES: readonly Rule[] = [
  ...TIMER_COMMANDS,
  ...STEP_COMMANDS,
  ...UNIT_HABIT_RULES,
  ...FREE_CHANGES,
  ...PUT_RIGHT_RULES,
  ...CHANGE_COMMANDS,
  NEXT_UNIT,
  SEVERAL_UNITS,
  ...DIALOGUE_COMMANDS,
  ...LOOSE_COMMANDS,
  ...FREE_COMMANDS,
  ...SAID_TWICE_COMMANDS,
  ...ONE_WORD_COMMANDS,
];
