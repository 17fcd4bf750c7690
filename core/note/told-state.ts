import type { Finding } from '../language/utterance.ts';
import { FINDING_STATES } from '../terms/names.ts';
import { coilWord } from '../terms/solenoid-coils.ts';

/** How a failure was put: for the trade, and for whoever owns the unit, behind the part's name. */
interface ToldSo {
  readonly trade: string;
  readonly plain: string;
}

const so = (trade: string, plain = `was ${trade}`): ToldSo => ({ trade, plain });

/** "Torn", "bent" and "weak" are all kept as failed: which of them it was is in the words alone. */
const TOLD: readonly (readonly [RegExp, ToldSo])[] = [
  [/\b(?:torn|tore|ripped|split)\b/, so('torn')],
  [/\b(?:bent|sprung)\b/, so('bent')],
  [/\bwarped\b/, so('warped')],
  [/\bcrack(?:ed)?\b/, so('cracked')],
  [
    /\b(?:(?:does|do|did|would|will)(?: not|n't)|won't|not) (?:close|closing|shut|latch)\b/,
    so('not closing', 'did not close'),
  ],
  [
    /\b(?:(?:does|do|did|would|will)(?: not|n't)|won't|not) seal(?:ing)?\b/,
    so('not sealing', 'did not seal'),
  ],
  [/\bweak\b/, so('weak')],
  [/\b(?:seized|locked up)\b/, so('seized')],
  [/\bworn\b/, so('worn')],
  [/\bshorted\b/, so('shorted', 'had a short circuit')],
  [/\b(?:swollen|swelled|bulging|bulged|puffed)\b/, so('swollen')],
  [/\b(?:rusted|rusty|corroded)\b/, so('corroded')],
  [/\bbrittle\b/, so('brittle')],
  [/\b(?:broken|broke)\b/, so('broken')],
  [/\b(?:blown|blew)\b/, so('blown', 'had blown')],
  [/\bwelded\b/, so('welded closed', 'was stuck closed')],
  [/\bstuck (?:closed|shut|in|on|made|energized)\b/, so('stuck closed')],
  [/\b(?:stuck|sticking|jammed)\b/, so('stuck')],
  [/\bbackwards\b/, so('running backwards', 'ran backwards')],
  [/\bleaking by\b/, so('leaking by', 'did not shut tight')],
];

/** The words for a state that stands for many, where the technician had one of them. */
export function toldState({ state, words }: Pick<Finding, 'state' | 'words'>): ToldSo | null {
  if (state !== 'failed') return null;
  return TOLD.find(([said]) => said.test(words.toLowerCase()))?.[1] ?? null;
}

/** As the technician put it, for the trade. */
export const tradeState = (finding: Pick<Finding, 'part' | 'state' | 'words'>): string =>
  `${coilWord(finding)}${toldState(finding)?.trade ?? FINDING_STATES[finding.state]}`;
