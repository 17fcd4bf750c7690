/** As often as hearing in it costs nothing worth naming, and the end of a sentence is not told late. */
const PORTION_SAMPLES = 1600;

/** Gathers sound to portions of a tenth of a second, each with where it begins. */
export function inPortions(
  post: (fromSample: number, samples: Float32Array) => void,
): (samples: Float32Array) => void {
  let fromSample = 0;
  let portion = new Float32Array(0);
  return (samples) => {
    const joined = new Float32Array(portion.length + samples.length);
    joined.set(portion);
    joined.set(samples, portion.length);
    portion = joined;
    if (portion.length < PORTION_SAMPLES) return;
    post(fromSample, portion);
    fromSample += portion.length;
    portion = new Float32Array(0);
  };
}
