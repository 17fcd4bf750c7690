/** The same numbers with room for one at that place: at least twice as long, as more will follow. */
export function longer(numbers: Int32Array, place: number): Int32Array<ArrayBuffer> {
  const all = new Int32Array(Math.max(place + 1, numbers.length * 2));
  all.set(numbers);
  return all;
}
