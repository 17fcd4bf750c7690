import type { Tags } from '../../grammar/nodes.ts';
import type { PlaceId } from '../../terms/names.ts';
import { fanPlace } from '../words/fans.ts';
import { amountIn, readingOf } from '../numbers/measure.ts';
import { type Frame, type Means, type Rule, rule } from '../rule.ts';
import { fanAmps } from './metered-so.ts';
import { placeId, tagsIn } from '../slots.ts';
import type { Reading } from '../utterance.ts';

/** By the place that was named, or the fan that is meant where only "fan" was said. */
const placeOf = (tags: Tags, frame: Frame): PlaceId | null =>
  tags['fan'] === true ? fanPlace(frame.context) : placeId(tags['place']);

const ampsOf = (tags: Tags, place: PlaceId | null, frame: Frame): Reading | null => {
  const amount = amountIn(tags);
  return amount.unit === null || amount.unit === 'A'
    ? readingOf('current', amount, { place, frame })
    : null;
};

/** One value, or the one that was and the one that is, the old one first. */
const drawnThere: Means = (tags, frame) => {
  const before = tagsIn(tags['before']);
  if (tags['fan'] === true && before === null) return fanAmps(tags, frame);
  const place = placeOf(tags, frame);
  const told = before === null ? [tags] : [before, tags];
  const readings = told.flatMap((each) => ampsOf(each, place, frame) ?? []);
  return readings.length === told.length ? { readings } : null;
};

const CURRENT =
  '(amps|amp draw|amperage|amperage draw|current|current draw|amps draw|draw|running (amps|amperage|current))';
const ON = '(on|at|of|for|in|through|to)';
const FANS = '(fan|fans|fan motor|fan motors)';
const STANDS =
  '[(is|are|was|were|has|have)] [(only|still|now|just|finally|back|all|steady|holding|holding steady|running|sitting|hovering|reading|showing)] [(only|still|now|just|back)] [(about the same|the same|unchanged|no different|better|good|fine|okay|high|low|up|down|back)]';
const CAME =
  '((came|come|went|gone|dropped|fell|climbed|jumped|shot|crept|rose|moved|spiked|settled|leveled|levelled|evened|pulled) [(up|down|back|in|out|off)] [(back|around)]|finally hit|hit|reached|(is|are) (back|up|down) [(up|down)])';
const FROM_TO = `${CAME} from <amount:before> [all the way] [(up|down|back)] to <amount>`;
const NOW =
  '[(it is|they are|is|are|it is (at|down to|up to|back to|only|running)|they are (at|down to|up to)|i am (at|getting|reading|seeing)|i (have|got)|down to|up to|at)]';
const WAS_NOW = `(was|were|had been|used to be|started [(out|off)]) [(at|up at|down at|running)] <amount:before> [<pause>] ([(and|but|then)] now ${NOW}|[(and|but|then)] (it is|they are|dropped to|went to|came (up|down) to)) [(at|down to|up to)] <amount> [now]`;
const HAVE =
  '[(i have|i got|i have got|i am|i am at|i am reading|i am getting|i am seeing|i see|we have|we have got|we got|we are [at]|we are (getting|seeing|reading)|seeing|reading|showing|got|getting|there is|it is)] [(only|about|just|still)]';

interface Named {
  readonly name: string;
  readonly tags?: Tags;
}

/** "amps on the compressor", "compressor amps", "fan amps" */
const NAMED: readonly Named[] = [
  { name: `([the] ${CURRENT} ${ON} <the> <place>|<the> <place> ${CURRENT})` },
  {
    name: `([the] ${CURRENT} ${ON} <the> ${FANS}|<the> ${FANS} ${CURRENT})`,
    tags: { fan: true },
  },
];

const ofNamed = ({ name, tags = {} }: Named): readonly Rule[] => {
  const unheard = { tags, unheard: true, examples: [] } as const;
  return [
    rule(`${name} ${WAS_NOW}`, drawnThere, unheard),
    rule(`${name} [(has|have)] [just] ${FROM_TO}`, drawnThere, unheard),
    rule(
      `${name} ${STANDS} [(at|to)] <amount> [now] [(up|down)] from <amount:before>`,
      drawnThere,
      unheard,
    ),
    rule(`${name} ${CAME} [(at|to)] <amount>`, drawnThere, unheard),
    rule(`${name} ${STANDS} [(at|to|<pause>)] <amount>`, drawnThere, unheard),
    rule(`${HAVE} <amount> (for|on|at) [the] ${name}`, drawnThere, unheard),
  ];
};

/** What a motor draws and what it drew, and what one is told of it with looser verbs. */
export const DRAWN_OVER_TIME_RULES: readonly Rule[] = [
  ...NAMED.flatMap(ofNamed),
  rule(
    `[the] [(start|starting|inrush|locked rotor|running|compressor)] ${CURRENT} [(has|have|is|are)] [just] ((came|come|went|gone|dropped|fell|settled) [right] [back] [(down|off|out|in)]|(way|right) down) [<pause>] [(and|now|so)] (it is|she is|they are) [now] (running|pulling|drawing|sitting|holding|down|back down) [(at|to)] <amount>`,
    drawnThere,
    { unheard: true, examples: ['start amps dropped right off it is running at three point nine'] },
  ),
  rule(`[the] ${CURRENT} [(has|have)] [just] ${FROM_TO} ${ON} <the> <place>`, drawnThere, {
    unheard: true,
    examples: ['amps went from nine point one to eight point three on the compressor'],
  }),
  rule(`[the] ${CURRENT} ${WAS_NOW} ${ON} <the> <place>`, drawnThere, {
    unheard: true,
    examples: ['amps were nine and now it is eight on the compressor'],
  }),
  rule(
    `<the> <place> (was|were) (drawing|pulling|running|at) <amount:before> [<pause>] ([(and|but|then)] now [(it is|it is [only] (drawing|pulling|at|down to|up to)|is|down to|up to|drawing|pulling)]|[(and|but|then)] it is [(down to|up to|drawing|pulling|at)]) <amount> [now]`,
    (tags, frame) => (MOTORS.has(placeId(tags['place'])) ? drawnThere(tags, frame) : null),
    {
      unheard: true,
      examples: ['compressor was pulling twelve amps now it is eight'],
    },
  ),
];

const MOTORS: ReadonlySet<PlaceId | null> = new Set<PlaceId>([
  ...(['compressor', 'condenserFan', 'evaporatorFan', 'defrostHeater'] as const),
]);
