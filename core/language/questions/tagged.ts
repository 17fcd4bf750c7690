import { type Means, type Rule, rule } from '../rule.ts';
import { aboutIn, ask, MY } from './asking.ts';

const compared: Means = (tags) => {
  const about = aboutIn(tags);
  return about === null ? null : ask({ ask: 'compare', about });
};

/** What was read last, where nothing is named. */
const lastCompared: Means = (_tags, { context: { lastQuantity } }) =>
  lastQuantity === null ? null : ask({ ask: 'compare', about: lastQuantity });

const BIT =
  '[(still|now|just|really|awful|awfully|pretty|kind of|sort of|way|real|too|a (bit|touch|little|hair|tad|little bit))] [too]';
const HIGH_OR_LOW =
  '(high|low|wide|tight|hot|cold|warm|cool|heavy|light|steep|off|out of line|out of range|up there|on the (high|low) side)';
/** What asks for agreement: "is not it" is how a tokeniser writes "isn't it" and "ain't it". */
const TAG =
  '(is not it|has not it|is it not|are not they|innit|huh|eh|do not you think|would not you say|am i right|do you think|right)';

const FINE = '[(ok|good|fine|all right|alright|right|well)]';
const BESIDE_PLATE =
  '(against|under|within|below|inside|over|on|for) (the|its|it is) (rla|rated load [amps]|rated amps|plate|nameplate)';
const STEADIED = '(steadied|settled|leveled|calmed) [(up|out|down)]';

/** "Suction's a bit low, isn't it": told for us to agree or not. */
export const TAGGED_QUESTIONS: readonly Rule[] = [
  rule(
    `${MY} <asked> (is|are|looks|seems|is (running|looking|sitting|still)) ${BIT} ${HIGH_OR_LOW} [for (this|a|that) [<equipment>]] [<pause>] ${TAG}`,
    compared,
    { unheard: true, examples: ['suction is a bit low is not it'] },
  ),
  rule(
    `(that|it) (is|looks|seems) ${BIT} ${HIGH_OR_LOW} [for (this|a|that) [<equipment>]] [<pause>] ${TAG}`,
    lastCompared,
    { unheard: true, apart: true, examples: [] },
  ),
  rule(
    `[(and|so)] ((that|it|she|this) (is|looks) ${FINE} ${BESIDE_PLATE} [<pause>] ${TAG}|is (that|it|she|this) ${FINE} ${BESIDE_PLATE})`,
    () => ask({ ask: 'compare', about: 'current' }),
    { unheard: true, apart: true, examples: ['that is ok against the rla right'] },
  ),
  rule(
    `[(and|so)] ((that|it|she|this) (has|is) [(all|pretty much|about)] ${STEADIED} [(now|nicely)] [<pause>] ${TAG}|(has|is) (that|she|this) [(all|still)] (${STEADIED}|hunting|swinging) [(now|yet|again)]|is it [still] (hunting|swinging) [(now|again)])`,
    () => ask({ ask: 'trend', about: null }),
    { unheard: true, apart: true, examples: ['that has steadied up has not it'] },
  ),
];
