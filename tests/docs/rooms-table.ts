import { z } from 'zod';

const arrowsSchema = z.record(
  z.string(),
  z.object({ values: z.array(z.string()), types: z.array(z.string()) }),
);
export type Arrows = z.infer<typeof arrowsSchema>;

/** A row of DEVELOPERS' table of rooms: the room, and its last column. */
const ROW = /^\| `core\/(?<room>[a-z]+)` .*\| *(?<imports>[^|]*?) *\|$/;

/** Who may import whom in core, as the linter holds it. */
export async function roomArrows(): Promise<Arrows> {
  const config: unknown = await import(new URL('../../eslint.config.js', import.meta.url).href);
  const { core: _everyone, ...arrows } = z.object({ ARROWS: arrowsSchema }).parse(config).ARROWS;
  return arrows;
}

/** What the table's last column says of a room. */
export const importsSaid = ({ values, types }: Arrows[string]): string =>
  [values.join(', '), types.length > 0 ? `types of ${types.join(', ')}` : '']
    .filter((said) => said !== '')
    .join('; ') || 'nothing';

/** What the table says of each room it has. */
export const printedRooms = (text: string): Record<string, string> =>
  Object.fromEntries(
    text.split('\n').flatMap((line) => {
      const { room, imports } = ROW.exec(line)?.groups ?? {};
      return room === undefined || imports === undefined ? [] : [[room, imports]];
    }),
  );

/** The text with a table that says what the linter holds, its columns not yet aligned. */
export const withRooms = (text: string, arrows: Arrows): string =>
  text
    .split('\n')
    .map((line) => {
      const of = arrows[ROW.exec(line)?.groups?.['room'] ?? ''];
      return of === undefined ? line : line.replace(/[^|]*\|$/, ` ${importsSaid(of)} |`);
    })
    .join('\n');
