/** What is told whole to whoever needs to be led: a few sentences of our own each. */
export const GUIDES = [
  'makeSafe',
  'openWithoutRecovery',
  'vacuumDepth',
  'settleWait',
  'noMeter',
  'faultItself',
  'lookTellsNothing',
  'coilOhms',
  'highHead',
  'lowSuction',
  'lowChargeShows',
  'overchargeShows',
  'gaugesOrNot',
  'drierDrop',
] as const;
export type GuideId = (typeof GUIDES)[number];

/** What a check would need and is not to be had: gauges that are not on, a meter, a way to get at it. */
export const LACKED = ['gauges', 'meter', 'reach'] as const;
export type LackedId = (typeof LACKED)[number];
