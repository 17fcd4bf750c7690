import { remark } from '../plain-means.ts';
import { startsClause } from '../words/clause-start.ts';
import { type Rule, rule } from '../rule.ts';

const ALARM =
  '[the] [(high|low|hi)] [(temp|temperature|box|product|door|pressure)] alarm [(limit|point|setpoint|set point|setting|delay|temp|temperature)]';
const MOVED =
  '(i|we) (brought|set|put|dropped|raised|lowered|moved|turned|changed|bumped|took) it [(back|down|up)] [(to|at|for)] <amount:now> [with <clause>]';

/** What an alarm is set for is no set point, and the box stands by none of it: kept as it was said. */
export const ALARM_RULES: readonly Rule[] = [
  rule(
    `${ALARM} (is|was|has been|had been|comes on|goes off|trips) [(set|left|sitting|cranked|turned)] [(up|down)] [(at|to|for|on)] <amount> [[<pause>] [(and|so|but)] ${MOVED}]`,
    remark,
    { unheard: true, examples: ['high temp alarm was set at sixty'] },
  ),
  rule(
    `[(the|that|its|their)] [(high|low|hi)] [(temp|temperature|box|product|door|pressure)] alarm [(has|had)] (cleared|reset|came back|came on|went away|quit|stopped|kept coming back|kept going off) [<clause>]`,
    remark,
    { unheard: true, only: startsClause, examples: ['alarm cleared itself once'] },
  ),
  rule(
    `[(i|we|and)] (set|put|moved|changed|reset|brought|lowered|raised|dropped) ${ALARM} [(back|down|up)] [(to|at|for)] <amount> [with <clause>]`,
    remark,
    { unheard: true, examples: ['i set the high temp alarm to forty five'] },
  ),
];
