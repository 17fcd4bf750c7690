import type { NameplateItem } from '../utterance.ts';

/** What a plate says that has a name of its own there: the rest is told by its unit. */
export const PLATE_ITEM_NAMES = {
  ratedLoadAmps: ['(rla|r l a|rated load [amps]|fla|f l a|full load [amps])'],
  lockedRotorAmps: ['(lra|l r a|locked rotor [amps]|lock rotor amps)'],
  minimumCircuitAmps: ['(mca|m c a|(minimum|minute) circuit (amps|ampacity))'],
  maximumFuse: [
    '(mop|mocp|m o p|m o c p|(max|maximum) (fuse|breaker) [size]|(fuse|breaker) (max|maximum))',
  ],
} as const satisfies Partial<Record<NameplateItem, readonly string[]>>;

/** Where a plate sits tells nothing of what it says. */
export const ON_IT =
  '[~~(on (it|here|there)|(on|inside|off) (the|this) [(back of the|side of the|left|right)] (unit|compressor|box|cabinet|door|machine|condensing unit|case|side|back|inside|evaporator|cooler|freezer|panel))]';
