import { ONES, TEENS, TENS } from '../terms/number-words.ts';

/** What stands on a plate or a label, and is a fact of the unit. */
const PLATE =
  /^(?:(?:and|so|okay|the|a|an|it is|it's|its|this|that|is|unit|box|compressor|condensing unit|evaporator|condenser|cooler|freezer|case|machine) )*(?:(?:model|serial|lot|date code|manufacturer|maker|make|brand)\b|m\/n|s\/n)/i;
const LABEL =
  /^(?:(?:and|so|the|a|there is|there's|this|that|no) )*(?:(?:name|data|rating|serial|refrigerant|charge|wiring|compressor|maker's|oil|old|new|paper|metal) ?)*(?:plate|tag|label|sticker|decal|nameplate)(?:'s)?\b/i;
const POWER =
  /^(?:(?:and|so|the|a|an|it is|it's|its|this|that|is|unit|box|system|compressor|power|supply|service|here|runs?|running|wired|on|for|as) )*(?:[\w-]+ ){0,4}?(?:(?:single|one|two|three|1|3)[- ]phase|dual[- ]voltage|(?:fifty|sixty|50|60) ?(?:hertz|cycles?|hz))(?: (?:unit|power|supply|service|system|only|machine|compressor))*$/i;
/** "The newer model", "that model is out of production", "told him the model": talk of models, and no plate. */
const TALK =
  /\b(?:told|asked|order(?:ed|ing)?|newer|another|replacement|out of production|discontinued|obsolete|(?:does|do|did)(?:n't| not)|doesn't|don't|didn't|matter)\b/i;
const STATE =
  /\b(?:lost|losing|loss|dropped|missing a|reversed|imbalance\w*|monitor|trip\w*|blown|burn\w*|fail\w*|dead)\b/i;

/** "Nameplate's one point four", behind a fan: a figure, and nothing that tells of what. */
const BARE_FIGURE = new RegExp(
  `^(?:the )?(?:name ?plate|plate|tag|label|sticker|decal)(?:'s| is| says| shows| reads)?(?: (?:[\\d.]+|point|oh|${[...ONES, ...TEENS, ...TENS].join('|')}))+$`,
  'i',
);

/** "Serial ends in 4412", "label says POE oil", "it's three phase": told in words, and for whoever orders a part. */
export function isOfTheUnit(memo: string): boolean {
  const told = memo.trim().replace(/[.!?]+$/, '');
  const isTold = PLATE.test(told) || LABEL.test(told) || POWER.test(told);
  return isTold && !TALK.test(told) && !STATE.test(told) && !BARE_FIGURE.test(told);
}
