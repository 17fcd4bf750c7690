import { arrows, CUSTOM, MEMORY, type MatrixRow } from './matrix-row.ts';

const NO_AIR = 'achrnews.com/articles/135634, iced evaporator; /84466, restricted airflow';

/** What the feed, the evaporator, the compressor and the load do to them. H S SH SC split A discharge TD. */
export const LOW_SIDE_ROWS: readonly MatrixRow[] = [
  {
    cause: 'valveStarving',
    feed: 'valve',
    arrows: arrows('=|v', 'v', '^', '=|^', 'v', 'v', '?', '^'),
    source: `achrnews.com/articles/134216, the symptoms of a restricted TXV; ${CUSTOM}`,
  },
  {
    cause: 'valveFlooding',
    feed: 'valve',
    arrows: arrows('=/^', '^', 'v', '=/v', '=', '^', 'v', 'v'),
    source: MEMORY,
  },
  {
    // Sources conflict on its head: not keyed on.
    cause: 'capillaryBlocked',
    feed: 'fixed',
    arrows: arrows('?', 'v', '^', '^', '?', 'v', '?', '^'),
    source: CUSTOM,
  },
  {
    cause: 'icedCoil',
    feed: null,
    arrows: arrows('v', 'v', 'v', '=', 'v', 'v', 'v', '^'),
    source: NO_AIR,
  },
  {
    cause: 'evaporatorFanOut',
    feed: null,
    arrows: arrows('v', 'v', 'v', '=', 'v', 'v', 'v', '^'),
    source: CUSTOM,
  },
  {
    cause: 'defrostFailed',
    feed: null,
    arrows: arrows('v', 'v', 'v', '=', 'v', 'v', 'v', '^'),
    source: CUSTOM,
  },
  {
    cause: 'leakyValves',
    feed: null,
    arrows: arrows('v', '^', '=/^', '?', 'v', 'v', '=/^', 'v'),
    source: 'achrnews.com/articles/124501 and /135635, inefficient compressor',
  },
  {
    // Its superheat is wherever the pressure was tapped: only the pressures speak.
    cause: 'suctionRestriction',
    feed: null,
    arrows: arrows('v', 'v', '?', '=/^', 'v', 'v', '?', '?'),
    source: 'macmediamagazine.com, troubleshooting air conditioning systems, part 2',
  },
  {
    cause: 'heavyLoad',
    feed: null,
    arrows: arrows('^', '^', '^', '=/v', '^', '^', '=', '?'),
    source: MEMORY,
  },
  {
    cause: 'openBox',
    feed: null,
    arrows: arrows('^', '^', '=/^', '=', '^', '^', '=', '?'),
    source: CUSTOM,
  },
  {
    // Reads as leaky valves do: the maker's unloader test tells them apart.
    cause: 'stuckUnloaded',
    feed: null,
    arrows: arrows('v', '^', '=/^', '?', 'v', 'v', '=', 'v'),
    source: CUSTOM,
  },
  {
    // Read the volts while it starts: standing still they may be right.
    cause: 'badSupply',
    feed: null,
    arrows: arrows('=', '=', '=', '=', '=', '^', '=', '='),
    source: CUSTOM,
  },
  {
    cause: 'nothingWrong',
    feed: null,
    arrows: arrows('=', '=', '=', '=', '=', '=', '=', '='),
    source: 'by definition: every reading at its target',
  },
];
