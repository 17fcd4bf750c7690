// Passes the first channel on in portions of about 20 ms. Plain JavaScript, as worklet modules are
// served as they are written.
const PORTION_SECONDS = 0.02;

class Tap extends AudioWorkletProcessor {
  portion = new Float32Array(Math.ceil(sampleRate * PORTION_SECONDS));
  filled = 0;

  process([input]) {
    for (const sample of input?.[0] ?? []) {
      this.portion[this.filled] = sample;
      this.filled += 1;
      if (this.filled === this.portion.length) this.send();
    }
    return true;
  }

  send() {
    this.port.postMessage(this.portion, [this.portion.buffer]);
    this.portion = new Float32Array(Math.ceil(sampleRate * PORTION_SECONDS));
    this.filled = 0;
  }
}

registerProcessor('tap', Tap);
