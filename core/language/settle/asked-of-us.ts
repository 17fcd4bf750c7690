import type { Token } from '../../grammar/tokens.ts';
import type { Item } from '../parse/parse.ts';
import type { Meaning } from '../rule.ts';
import type { Sentence } from '../parse/sentence.ts';

// What is asked, told or advised in words that the rules read, behind words that say that somebody else was.

const OTHERS =
  '(?:he|she|they|who|everybody|everyone|somebody|someone|nobody|anybody|customers?|managers?|owners?|boss|helper|guys?|tech|cook|chef|staff|dispatch|dispatcher|people|partner|apprentice|kid|wife|landlord|him|her|them)';
const OF_OTHERS = new RegExp(` ${OTHERS} `);
/** Behind these a question is told of: "he asked", "it doesn't matter". */
const TELLS_OF_ASKING =
  / (?:let you know|tell you|ask|asks|asked|asking|told|tell|tells|telling|show|showed|said|says|goes|went|knows?|knew|care|cares|matters?|wrote|forgot|remembered|depends|wondered|find out|found out|figured out) | let $/;
/** But not behind these: "I asked you", "I need to know", "what I said was". */
const ASKS_US =
  / (?:(?:tell|show|remind|give|ask|asked|asking) (?:me|us)|(?:ask|asked|asking|told) you|you know|to know|let me ask|(?:i|we) (?:just |already )?(?:said|asked|ask)) /;

/** "I'll let you know what head is" asks as little. */
const OURS_TO_TELL = / (?:let|tell) you(?: know)? /;

/** Behind these nothing is ordered, but told of, denied or asked about. */
const TELLS_OF_ORDER =
  / (?:(?:do|does|did|can|could|should|would|will) not|not (?:going|want|need|have) to|never|always|almost|nobody|used to|had to|forgot to|supposed to|tried to|(?:do|did|should|can|could|would|may|must|am|if|when|before|after) (?:i|we|he|she|they)(?: have to| need to| get to)?|(?:ask|asked|told|tell|want|wants|wanted|expects?|said|says)(?: \w+){0,3} to|he|she|they|who|customer|manager) $/;
const OF_US = / (?:want|wants|need|like|told|asked) you to $/;

/** Behind these nothing was found or done: it is asked whether it was. */
const ASKED_WHETHER =
  /^ (?:(?:so|and|but|ok|well) )*(?:(?:do|does|did|is|would|could) (?:it|you|that|this) (?:\w+ ){0,3}|(?:you|you would) (?:think|say|reckon) |is there any way )$/;

/** Behind these nothing is advised: it is asked about, doubted, or was thought. */
const TELLS_OF_ADVICE =
  /^ (?:(?:so|and|but|ok|well) )*(?:do|does|did|is it|are you|would you|could you|you think|you reckon|who|why|how come|what if) | (?:used to think|thought|doubt|wonder|not think|not sure|wish|not believe|was thinking|hope) | (?:not|never|no|might|may|could|maybe) $/;

const TOLD_OF: readonly (readonly [keyof Meaning, (before: string) => boolean])[] = [
  [
    'questions',
    (before) =>
      TELLS_OF_ASKING.test(before) &&
      (OF_OTHERS.test(before) || !ASKS_US.test(before.replace(OURS_TO_TELL, ' '))),
  ],
  ['commands', (before) => TELLS_OF_ORDER.test(before) && !OF_US.test(before)],
  ['findings', (before) => ASKED_WHETHER.test(before)],
  ['work', (before) => ASKED_WHETHER.test(before)],
  ['recommendations', (before) => TELLS_OF_ADVICE.test(before)],
];

/** "He asked what the head should be" asks us nothing, and "I almost had to scratch that" takes nothing back. */
export function toUsOnly({ tokens }: Sentence, items: readonly Item[]): readonly Item[] {
  let ours: Item[] | null = null;
  for (let index = 0; index < items.length; index += 1) {
    const item = items[index];
    const meaning = item && toldOf(tokens, item, items[index - 1]);
    if (item === undefined || meaning == null) continue;
    ours ??= [...items];
    ours[index] = { ...item, meaning };
  }
  return ours ?? items;
}

/** "Contactor okay?" found nothing: what was only asked is left to be told by its words. */
export function toldOnly({ text, tokens }: Sentence, items: readonly Item[]): readonly Item[] {
  if (!text.endsWith('?')) return items;
  const last = items.at(-1);
  const isTold = last !== undefined && last.end === tokens.length && tells(last.meaning);
  return isTold ? items.slice(0, -1) : items;
}

const tells = ({ findings, work, recommendations, questions }: Meaning): boolean =>
  questions === undefined &&
  (findings !== undefined || work !== undefined || recommendations !== undefined);

/** What is left of it; `null` where all of it is said to us. */
function toldOf(tokens: readonly Token[], item: Item, previous: Item | undefined): Meaning | null {
  if (item.start === 0 || tokens[item.start]?.pause === true) return null;
  for (const [part, isToldOf] of TOLD_OF) {
    if (item.meaning[part] === undefined) continue;
    const before = wordsBefore(tokens, item, previous);
    return before !== '' && isToldOf(before) ? without(item.meaning, part) : null;
  }
  return null;
}

function without(meaning: Meaning, part: keyof Meaning): Meaning {
  const { [part]: _gone, ...rest } = meaning;
  return rest;
}

/** The words of its clause before it, up to what means something itself: each between two spaces. */
function wordsBefore(
  tokens: readonly Token[],
  { start }: Item,
  previous: Item | undefined,
): string {
  const least =
    previous !== undefined && Object.keys(previous.meaning).length > 0 ? previous.end : 0;
  let from = start;
  while (from > least && tokens[from]?.pause !== true) from -= 1;
  const words = tokens.slice(from, start).map(({ text }) => text);
  return words.length === 0 ? '' : ` ${words.join(' ')} `;
}
