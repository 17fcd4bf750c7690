import { FOOD } from '../words/food-words.ts';
import { type Means, type Rule, rule } from '../rule.ts';
import { quantityId } from '../slots.ts';
import { ask } from './asking.ts';

const WHO =
  '(they|he|she|[the] (customer|owner|manager|chef|cook|cooks|staff|kitchen|crew)|somebody)';
const BOX = '(it|this|the (box|cooler|freezer|case|walk in|reach in|unit))';
const ALL_OF_IT = `[all] [(the|their|her|his|my|our|that|this)] ${FOOD}`;
const LOAD = `((load|stock|restock|reload) [(it|this|the (box|cooler|freezer|case)|${ALL_OF_IT})] [(back up|up|again|back)]|(put|move|bring|load) ${ALL_OF_IT} [back] (back|in|in there|in ${BOX})|(put|move|bring|load) (it|them|everything|that|stuff) [all] [back] (in|in there|in ${BOX}))`;
const NOW = '[(yet|now|tonight|today|again)]';

const SAFE = '(ok|all right|fine|good|safe|cold enough|ready|too (early|soon|warm))';

/** "Is that okay for beer": the box, whatever was said last. */
const ofWhatIsKept: Means = (tags) => {
  return quantityId(tags['quantity']) === 'productTemp'
    ? ask({ ask: 'compare', about: 'boxTemp' })
    : null;
};

/** Whether the box is cold enough for what belongs in it, and when it will be: the food's own state is another question. */
export const LOADING_QUESTIONS: readonly Rule[] = [
  rule(
    `[(and|so|ok|is it ok if)] (can|could|should|may) ${WHO} [(start to|go ahead and|safely)] ${LOAD} ${NOW}`,
    () => ask({ ask: 'compare', about: 'boxTemp' }),
    { unheard: true, examples: ['can she put the milk back', 'can they load it'] },
  ),
  rule(
    `[(and|so)] is (it|${BOX}) ${SAFE} [for ${WHO}] to ${LOAD} ${NOW}`,
    () => ask({ ask: 'compare', about: 'boxTemp' }),
    { unheard: true, examples: ['is it ok to load it'] },
  ),
  rule(
    `[(and|so)] is (it|that|this|${BOX}) ${SAFE} for [(the|their|this|some)] <quantity> ${NOW}`,
    ofWhatIsKept,
    { unheard: true, apart: true, examples: ['is that ok for milk'] },
  ),
  rule(
    `[(and|so)] is ${BOX} [(back|down)] ((at|to|up to|down to) (temp|temperature|set point)|cold enough) ${NOW}`,
    () => ask({ ask: 'compare', about: 'boxTemp' }),
    { unheard: true, examples: ['is the box at temp'] },
  ),
  rule(
    `[(and|so|${WHO} (wants|want|wanted|needs) to know|${WHO} [(is|are|was)] (asking|asked|asks))] (when|how soon|what time) (can|could|should|may|will) ${WHO} [be able to] ${LOAD} ${NOW}`,
    () => ask({ ask: 'eta', about: 'boxTemp' }),
    { unheard: true, examples: ['when can they load it'] },
  ),
  rule(
    `[(and|so|${WHO} (wants|want|wanted|needs) to know)] (how long|how much longer) (till|until|before) (${WHO} [can]|(i|we) can (tell|let|have) (${WHO}|him|her|them) [(to|start to)]) ${LOAD} ${NOW}`,
    () => ask({ ask: 'eta', about: 'boxTemp' }),
    { unheard: true, examples: ['how long till they can load it'] },
  ),
];
