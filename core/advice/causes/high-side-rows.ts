import { arrows, CUSTOM, MEMORY, type MatrixRow } from './matrix-row.ts';

const DIRTY = 'achrnews.com/articles/91887, restricted condenser airflow';
const DIRTY_FIXED = `${DIRTY}; with a capillary tube: ${CUSTOM}`;

/** What the condenser, the charge and the liquid line do to the readings. H S SH SC split A discharge TD. */
export const HIGH_SIDE_ROWS: readonly MatrixRow[] = [
  {
    cause: 'undercharge',
    feed: null,
    arrows: arrows('v', 'v', '^', 'v', 'v', 'v', '^', '^'),
    source:
      'achrnews.com, troubleshooting a refrigerant undercharge; achrnews.com/articles/135634, iced evaporator',
  },
  {
    cause: 'overcharge',
    feed: 'valve',
    arrows: arrows('^', '=/^', '=', '^', '^', '^', '^', '=/v'),
    source: 'achrnews.com/articles/133927, the perils of overcharging',
  },
  {
    cause: 'overcharge',
    feed: 'fixed',
    arrows: arrows('^', '^', 'v', '^', '^', '^', '?', 'v'),
    source: `achrnews.com/articles/143822, overcharge symptoms differ due to metering devices; directions ${MEMORY}`,
  },
  {
    cause: 'dirtyCondenser',
    feed: 'valve',
    arrows: arrows('^', '=/^', '=', '=/^', '^', '^', '^', '=/v'),
    source: DIRTY,
  },
  {
    cause: 'dirtyCondenser',
    feed: 'fixed',
    arrows: arrows('^', '^', 'v', '?', '^', '^', '^', 'v'),
    source: DIRTY_FIXED,
  },
  {
    cause: 'condenserFanOut',
    feed: 'valve',
    arrows: arrows('^', '=/^', '=', '=/^', '^', '^', '^', '=/v'),
    source: DIRTY,
  },
  {
    cause: 'condenserFanOut',
    feed: 'fixed',
    arrows: arrows('^', '^', 'v', '?', '^', '^', '^', 'v'),
    source: DIRTY_FIXED,
  },
  {
    cause: 'fanControlStuckOff',
    feed: null,
    arrows: arrows('^', '=/^', '=', '=/^', '^', '^', '^', '=/v'),
    source: CUSTOM,
  },
  {
    // Head is judged by the air at the coil's inlet, where the split is as it should be: that is how it shows.
    cause: 'hotRoom',
    feed: null,
    arrows: arrows('=', '=/^', '=', '=', '=', '^', '^', '=/v'),
    source: CUSTOM,
  },
  {
    // Two sources print its subcooling low and high: it is not keyed on.
    cause: 'nonCondensables',
    feed: null,
    arrows: arrows('^', '?', '=/^', '?', '^', '^', '^', '?'),
    source:
      'iheatcool.com, how to diagnose non-condensables, against behler-young.com, non-condensables: subcooling disputed',
  },
  {
    // One source has its discharge line hot, by numbers that contradict it: not keyed on.
    cause: 'liquidLineRestriction',
    feed: null,
    arrows: arrows('=|v', 'v', '^', '=|^', '=|v', 'v', '?', '^'),
    source: 'achrnews.com/articles/142801, liquid-line restriction against an undercharge',
  },
  {
    cause: 'flashGas',
    feed: null,
    arrows: arrows('=', 'v', '^', '=', 'v', 'v', '^', '^'),
    source: CUSTOM,
  },
  {
    // Head control working holds head up on purpose: see the cold-air rule where readings are judged.
    cause: 'lowAmbient',
    feed: null,
    arrows: arrows('=|v', 'v', '^', '?', '=|v', 'v', '=|v', '^'),
    source: `coloradocomfortair.com, low head pressure; discharge line ${CUSTOM}`,
  },
  {
    // Reads as cold air with no head control does: what the control is told to do tells them apart.
    cause: 'fanControlStuckOn',
    feed: null,
    arrows: arrows('=|v', 'v', '^', '?', '=|v', 'v', '=|v', '^'),
    source: CUSTOM,
  },
];
