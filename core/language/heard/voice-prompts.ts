/**
 * What is read aloud so that a voice is learnt: sentences of the grammar that hold all its sounds but the rarest, and the
 * numbers that are taken for one another most. Drawn by `npm run bench:hearing -- --draw-prompts`; a test holds them to it.
 */
export const VOICE_PROMPTS = [
  'say that again discharge line one thirty five',
  'am i low head pressure is sixty four',
  'yes subcooling was seventy eight',
  'how much can i put in vacuum three sixteen',
  'voltage two forty one point eight',
  'power is back on discharge pressure two fifty one',
  'is that normal product one eighty five point three',
  'gages are off vacuum at ninety seven',
  'high pressure cut out eighteen',
  'high side is thirteen point two',
  'low pressure cut out fifteen',
  'nope condenser leaving air one fourteen',
  'low pressure cut out was seventeen',
  'discharge line one nineteen point eight',
  'resume subcooling at thirty four',
  'say that again discharge pressure at fifty two',
  'yes subcooling was sixty eight',
  'how far off am i voltage is eighty six',
  'how much can i put in capacitance two sixteen',
  'vacuum three forty point eight',
] as const;
