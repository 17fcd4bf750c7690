import { type Means, type Rule, rule } from '../rule.ts';
import { named } from './done-to-part.ts';

const I = '<byMe>';
/** No box is kept at the end of its control's scale. */
const controlAway: Means = (tags, frame) =>
  frame.endsAtPause &&
  (tags['part'] === 'temperatureControl' || tags['part'] === 'lowPressureSwitch')
    ? named('setForTest')(tags, frame)
    : null;

const FOR_TEST =
  '(for (the|a|this|my) test|for testing|to test [it]|to make it (run|cycle)|to keep it running|to get it (running|to run)|so it (runs|stays on|keeps running|will run))';
const WAY = '(up|down|all the way (down|up)|cold|low|all the way)';

/** What was set away for a test, and set back. */
export const AWAY_RULES: readonly Rule[] = [
  rule(
    `${I} (turned|cranked|set|ran|rolled|dropped|put) <the> <part> [${WAY}] ${FOR_TEST}`,
    named('setForTest'),
    {
      examples: ['turned the thermostat down for the test'],
    },
  ),
  rule(`${I} (turned|cranked|set|rolled) (up|down) <the> <part> ${FOR_TEST}`, named('setForTest')),
  rule(`<the> <part> is (set|turned|cranked|rolled) [${WAY}] ${FOR_TEST}`, named('setForTest')),
  rule(`${I} (turned|cranked|ran|rolled|set) <the> <part> all the way (up|down)`, controlAway, {
    examples: ['turned the thermostat all the way down'],
  }),
  rule(
    `${I} (set|put|turned) <the> <part> back [(where it was|to where it was|to normal|up|down|the way it was)]`,
    named('restore'),
    { examples: ['put the thermostat back where it was'] },
  ),
  rule(
    '<the> <part> is back [to] (where it was|normal|where it belongs|the way it was)',
    named('restore'),
  ),
];
