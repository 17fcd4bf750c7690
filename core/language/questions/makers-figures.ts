import { type Means, type Rule, rule } from '../rule.ts';
import { partId } from '../slots.ts';
import { ask, MY, plain, TELL } from './asking.ts';

const FLOW =
  '(gallons|gpm|liters|cfm|cubic feet|feet|foot pounds|inch pounds|btu|btus|rpm|rpms|turns|horsepower|tons|cubes|airflow|air|water)';
const PER = '[[of] (water|air|ice|line|pipe|tubing|torque)] [(a|per|an) (minute|hour|day|second)]';
const CODE = '(p|e|er|f|a|l|h|al|err|error|code|alarm|fault) <number>';
const SIZE =
  '(size|gage|length|torque|rpm|speed|horsepower|airflow|air flow|water flow|flow|flow rate|btu|tonnage|capacity|rotation)';
const IT = `(it|this|this one|this thing|i|we|she|<equipment>|${MY} (unit|box|machine|system|pump|<part>|<equipment>))`;
const HAVE = '(have|be|move|take|need|flow|use|run|get|make|put out|go|give it|spin|turn)';

/** "Is a hundred and forty ohms right for a drain heater": of what nothing here judges only the maker knows. */
const rightFor: Means = (tags) => {
  const part = partId(tags['part']);
  const judged = JUDGED_PARTS.find((each) => each === part);
  if (part === null) return null;
  return ask(judged === undefined ? { ask: 'makersFigure' } : { ask: 'judge', about: judged });
};
const JUDGED_PARTS = ['defrostHeater', 'doorHeater', 'runCapacitor', 'startCapacitor'] as const;

/** What only the maker can tell, and no table here: it is said so. */
export const MAKERS_FIGURES: readonly Rule[] = [
  rule(
    `((is|are) <amount>|would <amount> be) (any good|good|right|ok|okay|normal|about right|high|low|too high|too low) (for|on) (a|an|the|that|this|my|one of these|those) [(new|good)] <part>`,
    rightFor,
    { unheard: true, examples: ['is a hundred and forty ohms right for a drain heater'] },
  ),
  rule(
    `[${TELL}] what (should|would) ${MY} [defrost] (failsafe|fail safe|termination [(temp|temperature)]|fan delay|drip time|differential) be [set] [(at|to|for|on)] [((on|for|in) (a|an|the|this|that) [<equipment>])]`,
    plain('makersFigure'),
    { unheard: true, examples: ['what should the failsafe be on this freezer'] },
  ),
  rule(
    `[${TELL}] what (does|do|is|would) [(a|the|that|this|an)] [(error|alarm|fault)] [code] ${CODE} [even] mean`,
    plain('makersFigure'),
    { unheard: true, examples: ['what does p one mean'] },
  ),
  rule(
    `[${TELL}] what should (a|an|the|that|this|my) [(good|new)] <part> (ohm [out] [(at|to)]|measure [in ohms]|read in ohms)`,
    rightFor,
    { unheard: true, examples: ['what should a drain heater ohm out at'] },
  ),
  rule(
    `[${TELL}] what (is|would be) (a|the|my) [(normal|typical|usual|good|right)] (pull|draw|amp draw|amperage|amps|current) (on|for|of|with) (a|an|this|that|one of these|the) (half|third|quarter|three quarter|one|two|three|five|ten|small|big|little|fractional) (horse|horsepower|hp|ton) [<clause>]`,
    () => ask({ ask: 'target', about: 'current' }),
    { unheard: true, examples: ['what is a normal pull on a half horse one fifteen'] },
  ),
  rule(
    `[${TELL}] how (many|much) ${FLOW} ${PER} ((should|does|do|would|must|can) ${IT} ${HAVE}|(is|am|are) ${IT} supposed to ${HAVE}|for ${IT})`,
    plain('makersFigure'),
    { examples: ['how many gallons a minute should it have'] },
  ),
  rule(
    `[${TELL}] (what|which) ${SIZE} [of] [a] [<part>] ((should|does|do|would|must) ${IT} ${HAVE}|(is|am|are) ${IT} supposed to ${HAVE}|goes (on|in) [(here|it|this)])`,
    plain('makersFigure'),
    { examples: ['what size drier should it have'] },
  ),
  rule(
    `[${TELL}] (what|which) ${SIZE} [of] [a] [<part>] (does|do|did|would) (the (maker|manufacturer|factory|plate|tag|book)|they) (call for|want|say|recommend|spec)`,
    plain('makersFigure'),
    { unheard: true, examples: ['what size breaker does the maker call for'] },
  ),
  rule(
    `[${TELL}] what (is|are) ${MY} (torque|gage|length|rpm|horsepower|flow rate) (on|of|for|in) ${MY} (<part>|(packing|gland|hub|head|mounting) (nut|nuts|bolts|screws)|it|this)`,
    plain('makersFigure'),
    { unheard: true, examples: ['what is the torque on these flare nuts'] },
  ),
  rule(
    `[${TELL}] what (is|should) ${MY} ${SIZE} [of ${IT}] (supposed to be|be)`,
    plain('makersFigure'),
    { examples: ['what should the airflow be'] },
  ),
];
