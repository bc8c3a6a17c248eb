// Records a plucked belt with the microphone and puts it into the form as a WAV file. The form works without.
const seconds = 4;

const newsOf = (button) => document.querySelector(`[data-record-news="${button.dataset.record}"]`);

const say = (button, sentence) => (newsOf(button).textContent = sentence);

const cannot = {
  NotAllowedError: "The browser was not allowed to use the microphone. Allow it for this page, or choose a WAV file.",
  NotFoundError: "No microphone was found. Connect one, or choose a WAV file that another device recorded.",
  NotReadableError: "The microphone is in use by something else. Close that, or choose a WAV file.",
};

// 16-bit WAV, one channel.
const wav = (blocks, rate) => {
  const count = blocks.reduce((sum, block) => sum + block.length, 0);
  const view = new DataView(new ArrayBuffer(44 + 2 * count));
  const text = (place, word) => [...word].forEach((letter, index) => view.setUint8(place + index, letter.charCodeAt(0)));
  text(0, "RIFF");
  view.setUint32(4, 36 + 2 * count, true);
  text(8, "WAVEfmt ");
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, 2 * rate, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  text(36, "data");
  view.setUint32(40, 2 * count, true);
  let place = 44;
  for (const block of blocks)
    for (const sample of block) {
      view.setInt16(place, Math.max(-32768, Math.min(32767, Math.round(32768 * sample))), true);
      place += 2;
    }
  return new File([view.buffer], "recorded.wav", { type: "audio/wav" });
};

// What cleans up speech would take a belt's ring away.
const plain = { audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false, channelCount: 1 } };

const listen = async (button) => {
  const stream = await navigator.mediaDevices.getUserMedia(plain);
  const context = new AudioContext();
  try {
    await context.audioWorklet.addModule(button.dataset.worklet);
    const recorder = new AudioWorkletNode(context, "recorder");
    const blocks = [];
    recorder.port.onmessage = (event) => blocks.push(event.data);
    context.createMediaStreamSource(stream).connect(recorder);
    say(button, `Recording for ${seconds} s: pluck now, once or twice.`);
    await new Promise((done) => setTimeout(done, 1000 * seconds));
    return wav(blocks, context.sampleRate);
  } finally {
    stream.getTracks().forEach((track) => track.stop());
    await context.close();
  }
};

const record = async (button) => {
  button.disabled = true;
  try {
    const files = new DataTransfer();
    files.items.add(await listen(button));
    document.getElementById(button.dataset.record).files = files.files;
    say(button, "Recorded. Send the form to read it, or record again.");
  } catch (error) {
    say(button, cannot[error.name] ?? "This browser could not record here. Choose a WAV file instead.");
  } finally {
    button.disabled = false;
  }
};

for (const button of document.querySelectorAll("button[data-record]")) {
  if (!navigator.mediaDevices?.getUserMedia || !window.AudioWorkletNode) {
    say(button, "This browser gives pages no microphone here. Record with any device and choose the WAV file.");
    continue;
  }
  button.hidden = false;
  button.addEventListener("click", () => record(button));
}
