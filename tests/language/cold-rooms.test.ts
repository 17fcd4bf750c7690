import { describe, expect, it } from 'vitest';
import { EMPTY_CONTEXT, type Context } from '../../core/language/context.ts';
import { understand } from '../../core/language/understand.ts';
import { shortForm } from '../corpus/short-form.ts';

const meant = (said: string, context: Partial<Context>): string =>
  shortForm(understand(said, { ...EMPTY_CONTEXT, ...context }));

describe('a room', () => {
  const walkIns = ['walkInCooler', 'walkInFreezer'] as const;

  it.each(walkIns)('is the box of a %s, where it can be so cold', (equipment) => {
    const at = { equipment } as const;
    expect(meant("room's at thirty eight", at)).toBe('boxTemp 38 degF');
    expect(meant('room temp minus four', at)).toBe('boxTemp -4 degF');
    expect(meant("room's at six, head nine point eight bar", { ...at, units: 'si' })).toBe(
      'boxTemp 6 degC;headPressure 9.8 bar',
    );
    expect(meant('room is at eleven degrees celsius, should be three', at)).toBe(
      'boxTemp 11 degC;setpointTemp 3 degC',
    );
  });

  it('is asked about in a walk-in where no box is so warm, and where the unit is not known', () => {
    expect(meant("room's ninety", { equipment: 'walkInCooler' })).toBe('UNCLAIMED 90');
    expect(meant("room's at forty", {})).toBe('UNCLAIMED 40');
    expect(meant("room's at eleven", { units: 'si' })).toBe('UNCLAIMED 11');
  });

  it('is the air that a reach-in breathes, and any condenser where it was asked for', () => {
    expect(meant("room's at sixty", { equipment: 'reachIn' })).toBe('ambientTemp 60 degF');
    expect(meant("room's ninety", {})).toBe('ambientTemp 90 degF');
    expect(meant("room's thirty one", { units: 'si' })).toBe('ambientTemp 31 degC');
    expect(meant("room's at sixty", { equipment: 'walkInCooler', asked: 'ambientTemp' })).toBe(
      'ambientTemp 60 degF',
    );
    expect(meant('room ambient fifty', { equipment: 'walkInCooler' })).toContain('ambientTemp 50');
  });
});
