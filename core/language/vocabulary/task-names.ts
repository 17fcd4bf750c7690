import type { ProcedureTaskId } from '../../terms/procedures.ts';

/** Jobs that are told step by step, as it is asked how they are done. */
export const TASK_NAMES: Record<ProcedureTaskId, readonly string[]> = {
  gaugesOn: [
    '(put|putting|hook up|hooking up|get|getting|connect|connecting) [(my|the)] (gages|manifold|hoses) [on] [without [getting] air [in]]',
    '(hook|hooking) [(my|the)] (gages|hoses) up [without [getting] air [in]]',
    '(purge|purging) [(my|the)] (hoses|hose|gages)',
  ],
  gaugesOff: [
    '(get|getting) [(the|my)] (gas|refrigerant|liquid|charge|freon) out of [(the|my)] (hoses|hose|gages) [and back [(in|into) (the unit|the system|it)]]',
    '(take|taking|get|getting|pull|pulling) [(my|the)] (gages|hoses|manifold) off',
    '(empty|emptying|clear|clearing) [(the|my)] (hoses|gages)',
  ],
  pumpDown: [
    '(pump|pumping) (it|this|this thing|that|her|the unit|the system) down',
    '(pump down|pumping down) [(it|the unit|the system)]',
    '(a|the) pump down',
  ],
  valvesAndCaps: [
    '(close|closing|button|buttoning) (it|this|this thing|her|the unit|the system|everything) [back] up',
    'closing up',
    '[the] valves and caps',
    '(put|putting) [all] (the|my) (valves|valves and caps|caps) back',
    '(restore|restoring) the valves',
  ],
  recovery: [
    '(recover|recovering|reclaim) [(it|the charge|the gas|the refrigerant|this|this thing|the freon)]',
    '(a|the) recovery',
    'recovery',
  ],
  evacuation: [
    '(evacuate|evacuating) [(it|the system|the unit|this)]',
    '(pull|pulling) a [deep] vacuum [on (it|the system|this)]',
    '(a|an|the) evacuation',
    'evacuation',
  ],
  pressureTest: [
    '(pressure test|pressure testing|nitrogen test) [(it|the system|the unit|this)] [with nitrogen]',
    '[(do|run|doing|running)] (a|the) [standing] (pressure|nitrogen) test [with nitrogen]',
  ],
};
