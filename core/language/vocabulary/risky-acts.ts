import type { SafetyTopic } from '../utterance.ts';

const THE = '[(the|this|that|my|these)]';
const CAN = '(capacitor|cap|run capacitor|start capacitor|capacitors)';

/** What is asked about before it is done, by what may go wrong. */
export const RISKY_ACTS: Partial<Record<SafetyTopic, readonly string[]>> = {
  brazing: [
    '((torch|(use|light) [(a|the|my)] torch|(put|use) (heat|fire|flame)) [(on|in|at|to)] [(it|this|here|now|that)]|(braze|solder|weld|unsweat|sweat) [(on|in|at)] (this|here|now|that|it))',
  ],
  opening: [
    '(open [up] (it|the system|this|the valve|the service valve|up)|cut into (it|the system)|open up|break into (it|the system)|break the vacuum)',
  ],
  charging: [
    '(add [(gas|refrigerant|charge|some gas|some refrigerant|liquid)]|charge [(it|liquid|this|the system)]|top it off|put more in|charge liquid into the suction)',
  ],
  venting: [
    '(vent|release|let go|dump|blow off|purge) [(it|the refrigerant|the gas|this|the charge|refrigerant|this gas)]',
  ],
  resetting: [
    'reset [(it|the switch|the high pressure switch|the control|the breaker|the overload|this)]',
  ],
  energising: [
    '(turn it (on|back on)|energize [it]|power it [(up|on|back up)]|start it [up]|turn the power [back] on|put power to it|run it)',
  ],
  nitrogen: [
    '(use (nitrogen|oxygen|air|shop air|compressed air|acetylene)|(pressurize|test|purge|pressure test) it with (nitrogen|oxygen|air|shop air)) [(to (test|purge|pressurize|leak test) (it|with)|on (it|this)|in (it|this))]',
  ],
  capacitor: [`(touch|short|discharge|short out|check|test) ${THE} ${CAN}`],
  terminals: [
    `(take ${THE} terminal cover off|take off ${THE} terminal cover|open ${THE} terminal (box|cover)|(check|touch|test) ${THE} [compressor] terminals)`,
  ],
  cylinder: [`(heat|warm|warm up|torch) ${THE} (cylinder|tank|bottle|drum|jug|receiver) [up]`],
  air: [
    '(work|be|breathe|stay|go) (in here|in there|in this room|in the walk in|in the cooler|in the box)',
  ],
  touching: [
    `(touch|grab|hold|feel) ${THE} (line|pipe|discharge line|compressor|suction line|liquid line|hot gas line|shell)`,
  ],
  handling: ['(handle|work (on|with)) (this|the) (gas|refrigerant|freon)'],
};
