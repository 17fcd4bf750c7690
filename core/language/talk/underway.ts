import { holdsNumber } from '../words/own-reading.ts';
import { nothing, remark } from '../plain-means.ts';
import { type Means, type Rule, rule } from '../rule.ts';

/** "I said not to load it up till it's down to temp": for them to do, in those words. */
const toldThem: Means = (tags, frame) =>
  holdsNumber(frame.wordsOf(frame.span)) ? null : remark(tags, frame);

const IT = '(it|her|that|this|the (unit|system|thing))';
const GAS = '(gas|refrigerant|freon|charge|liquid|vapor|juice)';
const SOME = '(a (little|bit|tad|touch|splash|little bit|hair) [more] [of]|some [more]|more)';
const I_AM = '[(ok|so|and|now|just|then)] [(i am|we are)] [(still|just|now)]';
const ORDER =
  '(is|are|will|has|have) [(be|all|been|got to)] (ordering|order|ordered|getting|get|sending|send|looking|look|checking|check|pulling|shipping|ship)';
const NTH = '(second|third|fourth|next|last|final)';

/** What is under way while it is told: nothing of it is counted yet, and what the pump did stands as it was said. */
export const UNDERWAY_RULES: readonly Rule[] = [
  rule(
    `${I_AM} (adding|putting [in]|feeding [in]|letting [in]|trickling [in]|dribbling [in]|charging [in]|bumping in) ${SOME} [${GAS}] [(in|in it|in there|to it|now)]`,
    nothing,
    { unheard: true, alone: true, examples: ['adding a bit more'] },
  ),
  rule(
    `${I_AM} (charging|recovering|evacuating|pulling down|filling|weighing it in) [(${IT}|now|away)]`,
    nothing,
    { unheard: true, alone: true, examples: ['charging now'] },
  ),
  rule(
    `${I_AM} (starting|firing|cranking|kicking|lighting) (it|her|this thing|the (unit|compressor|box)) [back] (up|off|on|over) [now]`,
    nothing,
    { unheard: true, alone: true, examples: ['starting it up'] },
  ),
  rule(
    `[(ok|so|and|now)] ([the] [vacuum] pump is [back] [(on|running|going|hooked up)] [(for|on)] [(the|its|my)] ${NTH} [(time|vacuum|evac|evacuation|one|pull|round)]|[(i am|we are)] [(on|pulling|starting|doing)] (the|my) ${NTH} (vacuum|evac|evacuation)|${NTH} (vacuum|evac|evacuation) [(is (on|going|running)|now)])`,
    remark,
    { unheard: true, alone: true, examples: ['pump is on for the third'] },
  ),
  rule(
    '[(ok|so|and|now|but)] (it|she|that|[the] (needle|gage|pressure|vacuum|reading|micron gage)) (is not|has not|has stopped|is stopped|stopped|has quit|quit) [(really|even)] (moving|moved|dropping|dropped|climbing|climbed|rising|risen|falling|fallen|coming down|going (up|down)|budging|budged) [(any more|anymore|at all|any|any further|any lower|any higher|now)]',
    remark,
    { unheard: true, alone: true, examples: ['it is not moving any more'] },
  ),
  rule(
    '[(and|so|but)] [(i|we)] [(just|also)] (said|say) [(again|already)] (not to|do not|never to) (load|fill|open|put|stock|restock|touch|use|turn|shut|move|pack|block|reset|mess|unplug|wash|hose|add) <clause>',
    toldThem,
    { unheard: true, alone: true, examples: ['i said not to load it up till it is down to temp'] },
  ),
  rule(
    `[(and|so|but)] [(i|we)] [(just|also|already)] (called|talked to|texted|checked with|phoned) (the|my|our) (office|shop|supply house|boss|dispatch|parts (house|guy|desk)|dispatcher|warehouse) [<pause>] [and] (they|he|she|it|somebody) ${ORDER} [<clause>]`,
    toldThem,
    { unheard: true, alone: true, examples: ['called the office they are ordering it'] },
  ),
  rule(
    `[(and|so|but)] (the|my|our) (office|shop|supply house|parts (house|guy|desk)) ${ORDER} <clause>`,
    toldThem,
    {
      unheard: true,
      alone: true,
      examples: ['the office is ordering the motor'],
    },
  ),
];
