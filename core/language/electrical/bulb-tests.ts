import { onlyOf } from '../findings/finding-of.ts';
import { type Rule, rule } from '../rule.ts';

const NO_CHANGE =
  '(nothing happened|nothing changed|no change|no response|nothing|it did nothing|suction did not (move|change|budge)|it did not (respond|move|change))';

/** Warming or chilling its bulb tells whether an expansion valve answers. */
export const BULB_RULES: readonly Rule[] = [
  rule(
    `[i] (warmed|heated|warmed up) <the> bulb [up] [in my hand] [(and|but)] ${NO_CHANGE}`,
    onlyOf('expansionValve', 'closed'),
    { examples: ['warmed the bulb and nothing happened'] },
  ),
  rule(
    `[i] (iced|chilled|cooled) <the> bulb [down] [(and|but)] ${NO_CHANGE}`,
    onlyOf('expansionValve', 'open'),
    { examples: ['iced the bulb and nothing happened'] },
  ),
  rule(
    `[i] ((warmed|heated) <the> bulb [up] [(and|but)] (suction|it|the valve|suction pressure) (came up|rose|went up|opened [up]|responded|jumped)|(iced|chilled|cooled) <the> bulb [down] [(and|but)] (suction|it|the valve|suction pressure) (came down|dropped|went down|fell|closed [down]|responded))`,
    onlyOf('expansionValve', 'ok'),
    { examples: ['warmed the bulb and suction came up', 'iced the bulb and it closed down'] },
  ),
];
