/** Portions of sound as one. */
export function joined(portions: readonly Float32Array[]): Float32Array<ArrayBuffer> {
  const whole = new Float32Array(portions.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const portion of portions) {
    whole.set(portion, at);
    at += portion.length;
  }
  return whole;
}
