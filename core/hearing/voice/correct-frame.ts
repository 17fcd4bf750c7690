/** Weights of a correction in one row: for each sound those of the inner values, then its constant. */
export interface Correction {
  readonly weights: Float32Array | Float64Array;
  readonly sounds: number;
  readonly inner: number;
}

/**
 * Log posteriors corrected by what the network's last inner layer held: as if its last layer had other weights. What a
 * softmax takes is known but for a constant, so its logarithm may be added to.
 */
export function correctFrame(
  { weights, sounds, inner: size }: Correction,
  frame: Float32Array,
  inner: Float32Array,
): Float32Array {
  const corrected = new Float32Array(sounds);
  let most = -Infinity;
  for (let sound = 0; sound < sounds; sound += 1) {
    const row = sound * (size + 1);
    let sum = (frame[sound] ?? -Infinity) + (weights[row + size] ?? 0);
    for (let at = 0; at < size; at += 1) sum += (weights[row + at] ?? 0) * (inner[at] ?? 0);
    corrected[sound] = sum;
    if (sum > most) most = sum;
  }
  let total = 0;
  for (const each of corrected) total += Math.exp(each - most);
  const norm = most + Math.log(total);
  for (let sound = 0; sound < sounds; sound += 1) {
    corrected[sound] = (corrected[sound] ?? 0) - norm;
  }
  return corrected;
}

/** Rows of a profile as one array. */
export function toCorrection(rows: readonly (readonly number[])[]): Correction {
  return {
    weights: Float32Array.from(rows.flat()),
    sounds: rows.length,
    inner: (rows[0]?.length ?? 1) - 1,
  };
}
