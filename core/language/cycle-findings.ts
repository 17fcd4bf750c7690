import { onlyOf } from './finding-of.ts';
import { type Rule, rule } from './rule.ts';

const UNIT = '(it|unit|the unit|the box|the freezer|the case|the coil|the evaporator)';

/** How it starts, stops and defrosts, which only one part of it does: that part need not be named. */
export const CYCLE_RULES: readonly Rule[] = [
  rule(
    '(it|unit|the unit|the system) (is short cycling|short cycles|keeps short cycling|was short cycling) [on [the] (high|low) pressure [(switch|control)]]',
    onlyOf('compressor', 'shortCycling'),
    { examples: ['it is short cycling'] },
  ),
  rule(
    `(${UNIT}|she|[the] compressor) (tries|keeps trying|is trying|tried) to start [every (<count:every>|couple|few) (minutes|seconds|minute)] (and|then|but) [(it|then)] (clicks|kicks|trips|shuts|cuts|goes) [right] [back] (off|out)`,
    onlyOf('compressor', 'shortCycling'),
    { examples: ['it tries to start and clicks off'] },
  ),
  rule(
    `(${UNIT}|[the] compressor) (keeps|kept|is) (starting and stopping|stopping and starting|coming on and off|starting up and (stopping|shutting off)|kicking on and off)`,
    onlyOf('compressor', 'shortCycling'),
    { examples: ['compressor keeps starting and stopping'] },
  ),
  rule(
    'short cycling [on [the] (high|low) [pressure] [(switch|control|side)]]',
    onlyOf('compressor', 'shortCycling'),
    {
      examples: ['short cycling on the low pressure'],
    },
  ),
  rule(
    `${UNIT} (is|is still|went|just went|has gone) (in|into) [a] defrost [(now|right now|again)]`,
    onlyOf('evaporator', 'defrosting'),
    { examples: ['it is in defrost'] },
  ),
  rule(
    `(${UNIT} (is|came|just came|has come) out of [the] defrost|[the] defrost (is over|is done|has ended|ended|is finished|terminated|just ended))`,
    onlyOf('evaporator', 'defrosted'),
    { examples: ['it is out of defrost', 'defrost terminated'] },
  ),
  rule(
    `(${UNIT} (is|seems|was) (stuck|hung [up]|locked) in [a] defrost|${UNIT} (will not|does not|did not) (come out of|get out of|terminate|end) [the] defrost|[the] defrost (will not|does not|never) (terminate|terminates|end|ends))`,
    onlyOf('evaporator', 'stuckInDefrost'),
    { examples: ['it is stuck in defrost', 'it will not come out of defrost'] },
  ),
  rule(
    '(it|she|the motor) (just|only) (hums|buzzes|sits there and hums|sits there humming)',
    onlyOf('compressor', 'humming'),
    {
      examples: ['it just hums'],
    },
  ),
  rule(
    `(<the> compressor|it|she|the motor|the unit) (hums|buzzes|just sits there (humming|and hums)|just hums|is humming|hums and hums) (and|but|then|and then) [(it|then)] (will not (start|turn|run|turn over)|does not (start|turn|run)|kicking out on [the] overload|kicks out [on [the] overload]|tripping out|trips [out] [(on (the|it is) overload|the overload|off|again)]|never starts|shuts off|goes off on [the] overload|is not (starting|turning|running))`,
    onlyOf('compressor', 'humming'),
    { examples: ['the compressor hums but will not start', 'compressor hums and trips'] },
  ),
];
