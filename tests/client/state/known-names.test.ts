import { describe, expect, it } from 'vitest';
import { knownNames } from '../../../client/state/known-names.ts';
import { NO_NAMES } from '../../../core/language/names/known-names.ts';
import { takeTurn } from '../../../core/turn/take-turn.ts';
import { listening, settled, type Stage } from '../scripted.ts';

async function type(on: Stage, words: string): Promise<void> {
  on.runner.send({ kind: 'typed', words });
  await settled();
  on.voice.finish();
  await settled();
  on.clock.advance(1_000);
  await settled();
}

describe('the names of earlier visits', () => {
  it('come from this device’s log, newest first, each once', async () => {
    const on = await listening({ takeTurn });
    expect(await knownNames(on.log, ['Copperline 012 contactor'])).toEqual({
      ...NO_NAMES,
      parts: ['Copperline 012 contactor'],
    });
    await type(on, 'site is Harbor Street Deli');
    await type(on, 'unit is called walk-in by the dock');
    await type(on, 'next unit is called the cellar box');
    await type(on, 'unit is called cellar box two');
    expect(await knownNames(on.log, [])).toEqual({
      sites: ['Harbor Street Deli'],
      units: ['cellar box two', 'cellar box', 'walk-in by the dock'],
      parts: [],
    });
  });

  it('are understood as soon as the page has read them', async () => {
    const on = await listening({ takeTurn });
    // Once something was read a name that nobody knows is no site.
    await type(on, 'box is at forty one');
    await type(on, 'at the blue heron');
    expect(on.runner.session().visit.unit.site).toBeNull();
    on.runner.send({
      kind: 'namesKnown',
      names: { sites: ['The Blue Heron'], units: [], parts: [] },
    });
    await type(on, 'at the blue heron');
    expect(on.runner.session().visit.unit.site).toBe('The Blue Heron');
  });

  it('hold those of the visit that ended; the next unit is named in its own visit, at the same site', async () => {
    const on = await listening({ takeTurn });
    await type(on, 'site is Harbor Street Deli');
    await type(on, 'unit is called walk-in by the dock');
    await type(on, 'next unit, prep table two');
    const { visit, names, memory } = on.runner.session();
    expect(names).toEqual({
      sites: ['Harbor Street Deli'],
      units: ['walk-in by the dock'],
      parts: [],
    });
    expect(visit.unit).toMatchObject({ name: 'prep table two', site: 'Harbor Street Deli' });
    expect(memory.lastReply?.text).toBe(
      'New visit. Site: Harbor Street Deli. Unit: prep table two.',
    );
    const [newest, before] = await on.log.visits();
    const events = async (id = '') => (await on.log.readVisit(id)).events.map(({ type: of }) => of);
    expect(await events(newest?.visit)).toEqual(['visitOpened', 'factStated', 'factStated']);
    expect(await events(before?.visit)).toEqual(['visitOpened', 'factStated', 'factStated']);
    await type(on, 'next unit, walk in by the dock');
    expect(on.runner.session().visit.unit.name).toBe('walk-in by the dock');
  });
});
