import type { PartId } from '../../terms/names.ts';
import { remark } from '../plain-means.ts';
import { type Meaning, type Means, type Rule, rule } from '../rule.ts';
import { partId } from '../slots.ts';
import type { Finding } from '../utterance.ts';
import { startsClause } from '../words/clause-start.ts';
import { finding } from './finding-of.ts';
import { HOLDS_GAS } from './leaks-and-valves.ts';

/** At the part that rubs, or that was spoken of; what it rubs against has nothing. */
const foundAt =
  (state: Finding['state']): Means =>
  (tags, frame) => {
    const found = (part: PartId): Meaning =>
      HOLDS_GAS.has(part) ? { findings: [finding(part, state, frame)] } : remarks;
    const remarks = { remarks: [frame.wordsOf(frame.span)] };
    const named = partId(tags['part']);
    if (named !== null) return found(named);
    return { ofIt: { means: found, inSentence: false, otherwise: remarks } };
  };

/** "Cap tube's been rubbing on the suction line": behind it "it" is the cap tube. */
const rubs: Means = (tags, frame) => {
  const part = partId(tags['part']);
  const told = remark(tags, frame);
  return part === null || told === null ? told : { ...told, names: part };
};

const THERE = '[(right|just|all)] (there|here|at that spot)';
const FOUND =
  '[(and|so|yeah|yep|well)] [(i|we)] [(have|have got|got|found|see|there is|it is got|it has [got]|that is|it is|my leak is)]';
const PINHOLE = '[(a|the|my)] [(little|tiny|small|good|bad)] (pinhole|pin hole|leak|hole) [leak]';
const AGAINST =
  '[(on|against|into|up against|across)] [(<the> <part:against>|<the> (frame|base|panel|bracket|cabinet|wall|shroud|clamp|rail|other (line|one)|housing|sheet metal))]';
const RUBS = `(rubs|rubbed|touches|touched|chafes|chafed|hits|hit|crosses|lays|was rubbing|is rubbing|was touching|is touching|(has|had) been rubbing) ${AGAINST}`;
const SPOT = '(rub|rubbed|chafed|worn|rub through|bad) (spot|place|mark)';

/** What rubs on something until it leaks, and is found there by where it rubs. */
export const RUBBED_RULES: readonly Rule[] = [
  rule(
    `${FOUND} ${PINHOLE} [is] [right] (where (it|they|that|<the> <part>) ${RUBS}|(at|in|on) the ${SPOT} [(on|in|of) <the> <part>])`,
    foundAt('leaking'),
    {
      unheard: true,
      only: startsClause,
      examples: ['found a pinhole where the cap tube rubs the suction line'],
    },
  ),
  rule(
    `[(and|so|yeah)] (it|she|that) is leaking [(gas|oil)] [right] where (it|they|<the> <part>) ${RUBS}`,
    foundAt('leaking'),
    {
      unheard: true,
      only: startsClause,
      examples: ['it is leaking right where the cap tube rubs on the suction line'],
    },
  ),
  rule(
    `${FOUND} (a|the) [(little|tiny|small|good|bad)] (hole|pinhole|pin hole) (rubbed|worn|chafed) (in|into|through) (it|that|<the> <part>)`,
    foundAt('leaking'),
    { unheard: true, only: startsClause, examples: ['there is a hole rubbed in the cap tube'] },
  ),
  rule(
    `${FOUND} (a|the) [(little|tiny|small)] (pinhole|pin hole) in (it|that) [(too|also|right there)]`,
    foundAt('leaking'),
    { unheard: true, apart: true, examples: [] },
  ),
  rule(
    `<the> <part> [(is|has|was)] [been] (rubbed|chafed|worn|rubs|rubbed itself) (a (hole|pinhole) [(in|through) (itself|it)]|through) [(on|against|from|by) (<the> <part:against>|<the> (frame|base|panel|bracket|cabinet|wall|shroud|clamp|rail|housing|sheet metal))]`,
    foundAt('leaking'),
    {
      unheard: true,
      only: startsClause,
      examples: ['cap tube is rubbed through on the suction line'],
    },
  ),
  rule(
    `<the> <part> (is|was|has been|had been|is been) (rubbing|chafing|vibrating|laying) [up] (on|against) (<the> <part:against>|<the> (frame|base|panel|bracket|cabinet|wall|shroud|clamp|rail|housing|sheet metal))`,
    rubs,
    {
      unheard: true,
      only: startsClause,
      examples: ['cap tube has been rubbing on the suction line'],
    },
  ),
  rule(
    `(there is|i see|i have got|got|found|with) [(some|a little|a bit of)] oil [(all|right)] (around|over|under|on) (it|that) [(too|also|${THERE})]`,
    foundAt('oily'),
    { unheard: true, examples: [] },
  ),
];
