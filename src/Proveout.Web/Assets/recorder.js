// Hands samples from the audio thread to the page, as they come from the microphone.
registerProcessor("recorder", class extends AudioWorkletProcessor {
  process(inputs) {
    const channel = inputs[0][0];
    if (channel) this.port.postMessage(channel.slice());
    return true;
  }
});
