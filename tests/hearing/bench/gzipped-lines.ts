import { appendFileSync, readFileSync } from 'node:fs';
import { gunzipSync, gzipSync } from 'node:zlib';

/** Scores are kept to a thousandth: six decimals more would be most of the file. */
const brief = (_: string, value: unknown): unknown =>
  typeof value === 'number' ? Math.round(value * 1000) / 1000 : value;

/** Adds to what the file holds, so that a run that is cut short leaves what it heard. */
export function appendLines(file: string, values: readonly unknown[]): void {
  const lines = values.map((value) => `${JSON.stringify(value, brief)}\n`);
  appendFileSync(file, gzipSync(lines.join('')));
}

/** What several such files hold; throws at a line that is something else. */
export function readLines<Line>(
  files: readonly string[],
  isLine: (value: unknown) => value is Line,
): readonly Line[] {
  return files.flatMap((file) => {
    const lines = gunzipSync(readFileSync(file)).toString('utf8').split('\n');
    return lines
      .filter((line) => line !== '')
      .map((line) => {
        const value: unknown = JSON.parse(line);
        if (isLine(value)) return value;
        throw new Error(`This is no line of this benchmark: ${line.slice(0, 60)}`);
      });
  });
}
