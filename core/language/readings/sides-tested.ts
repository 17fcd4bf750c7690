import { fixed } from './reading-means.ts';
import { type Rule, rule } from '../rule.ts';

/** "Test pressure two hundred on the high side": what is put on a side to test it is no pressure that it runs at. */
export const SIDE_TEST_RULES: readonly Rule[] = [
  rule(
    '[(the|my)] <tested> <link> <amount> [(of nitrogen|of dry nitrogen|of nitro)] (on|in|for|to) [the] <side:where>',
    fixed('testPressure'),
    { unheard: true, examples: ['test pressure two hundred on the high side'] },
  ),
];
