// Sound, speech, vibration, a screen that stays awake, and a tick when the page is hidden. A browser may have none of it, and
// nothing waits for any of it.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};

  // For each sound its tones: hertz, when it begins and how long it is, in seconds.
  const tones = {
    work: [[660, 0, 0.22]],
    'work left': [[660, 0, 0.22]],
    'work right': [[660, 0, 0.14], [660, 0.2, 0.14]],
    rest: [[330, 0, 0.4]],
    switch: [[440, 0, 0.14], [660, 0.16, 0.14], [440, 0.32, 0.2]],
    wait: [[392, 0, 0.15], [392, 0.25, 0.15]],
    count: [[880, 0, 0.08]],
    end: [[523, 0, 0.2], [659, 0.22, 0.2], [784, 0.44, 0.5]]
  };
  const shakes = { work: [200], rest: [80], switch: [80, 80, 80, 80, 80], wait: [80, 120, 80], end: [300, 120, 300] };

  // Two clocks never go quite alike. Further apart than this, in seconds, what was planned on the one is planned again.
  const apart = 0.02;

  // No loudspeaker is later than this, in seconds.
  const likely = 0.5;

  let audio = null;
  let gate = null;
  let changed = null;
  let between = 0;

  // Only after a click; whether sound can ever come.
  function wake() {
    if (audio) return true;
    const Audio = window.AudioContext || window.webkitAudioContext;
    if (!Audio) return false;
    try {
      audio = new Audio();
      audio.onstatechange = function () { if (changed) changed(); };
    } catch {
      audio = null;
      return false;
    }
    return true;
  }

  // The answer may never come, so nobody waits for it.
  function stir() {
    if (audio && audio.state !== 'running' && audio.resume) {
      const coming = audio.resume();
      if (coming && coming.catch) coming.catch(function () { });
    }
  }

  // How far the clock of the sound that is heard now is ahead of the page's, in seconds. A browser that cannot say which one
  // is heard gives the one that it works at.
  function lead() {
    const worked = audio.currentTime - window.performance.now() / 1000;
    const mark = audio.getOutputTimestamp ? audio.getOutputTimestamp() : null;
    if (!mark || !(mark.performanceTime > 0)) return worked;
    const heard = mark.contextTime - mark.performanceTime / 1000;
    return Math.abs(heard - worked) < likely ? heard : worked;
  }

  function cut() {
    if (gate) gate.disconnect();
    gate = null;
  }

  function tone(hertz, at, length, pan) {
    const source = audio.createOscillator();
    const swell = audio.createGain();
    source.frequency.value = hertz;
    swell.gain.setValueAtTime(0, at);
    swell.gain.linearRampToValueAtTime(1, at + 0.01);
    swell.gain.setValueAtTime(1, Math.max(at + length - 0.02, at + 0.01));
    swell.gain.linearRampToValueAtTime(0, at + length);
    source.connect(swell);
    if (pan !== 0 && audio.createStereoPanner) {
      const panner = audio.createStereoPanner();
      panner.pan.value = pan;
      swell.connect(panner).connect(gate);
    } else swell.connect(gate);
    source.start(at);
    source.stop(at + length + 0.02);
  }

  // sounds: what, how many milliseconds off, on which side. They go by the clock of the sound from here on, until they are cut.
  function schedule(sounds, volume) {
    if (!audio) return;
    cut();
    gate = audio.createGain();
    gate.gain.value = volume;
    gate.connect(audio.destination);
    between = lead();
    const now = window.performance.now() / 1000 + between;
    for (const sound of sounds) {
      const own = tones[sound.sound + ' ' + sound.side] || tones[sound.sound];
      const pan = sound.side === 'left' ? -0.8 : sound.side === 'right' ? 0.8 : 0;
      for (const part of own) tone(part[0], Math.max(now + sound.in / 1000 + part[1], audio.currentTime), part[2], pan);
    }
  }

  gradus.sound = {
    wake: function () {
      const can = wake();
      stir();
      return can;
    },
    isRunning: function () { return audio !== null && audio.state === 'running'; },
    hasDrifted: function () { return gate !== null && gradus.sound.isRunning() && Math.abs(lead() - between) > apart; },
    whenChanged: function (then) { changed = then; },
    schedule: function (sounds, volume) {
      try {
        schedule(sounds, volume);
      } catch {
        cut();
      }
    },
    volume: function (volume) { if (gate) gate.gain.value = volume; },
    cut: cut,
    test: function (volume) {
      const order = ['work', 'rest', 'switch', 'count', 'count', 'count', 'end'];
      gradus.sound.schedule(order.map(function (sound, i) { return { sound: sound, in: 100 + i * 900, side: '' }; }), volume);
    }
  };

  gradus.speech = {
    isThere: function () { return Boolean(window.speechSynthesis) && typeof window.SpeechSynthesisUtterance === 'function'; },
    say: function (text) {
      if (!gradus.speech.isThere()) return;
      try {
        const words = new window.SpeechSynthesisUtterance(text);
        words.lang = document.documentElement.lang;
        window.speechSynthesis.cancel();
        window.speechSynthesis.speak(words);
      } catch { /* It stays silent. */ }
    },
    hush: function () {
      try {
        if (gradus.speech.isThere()) window.speechSynthesis.cancel();
      } catch { /* It was silent. */ }
    }
  };

  gradus.vibration = {
    isThere: function () { return typeof window.navigator.vibrate === 'function'; },
    shake: function (sound) {
      try {
        if (gradus.vibration.isThere() && shakes[sound]) window.navigator.vibrate(shakes[sound]);
      } catch { /* It lies still. */ }
    }
  };

  gradus.touch = {
    isThere: function () { return window.matchMedia('(pointer: coarse)').matches; }
  };

  let isAwake = false;
  let lock = null;

  function askForLight() {
    if (!isAwake || lock || document.hidden || !gradus.awake.isThere()) return;
    window.navigator.wakeLock.request('screen').then(function (given) {
      lock = given;
      given.addEventListener('release', function () { lock = null; });
      if (!isAwake) given.release();
    }).catch(function () { });
  }

  gradus.awake = {
    isThere: function () { return Boolean(window.navigator.wakeLock); },
    keep: function () {
      isAwake = true;
      askForLight();
    },
    release: function () {
      isAwake = false;
      if (lock) lock.release().catch(function () { });
    }
  };

  // A hidden page's own timers come once a second, then once a minute; those of a worker go on.
  const longest = 100;
  let tick = null;
  let slow = 0;
  let worker = null;

  // Asks, and asks again when there is something new to see, or a little sooner.
  function ask() {
    if (tick) slow = window.setTimeout(ask, Math.min(tick(), longest));
  }

  function tickHidden() {
    if (worker || !tick || typeof window.Worker !== 'function') return;
    try {
      const text = 'setInterval(function () { postMessage(0); }, 250);';
      const address = URL.createObjectURL(new Blob([text], { type: 'text/javascript' }));
      worker = new Worker(address);
      worker.onmessage = function () { if (tick) tick(); };
      URL.revokeObjectURL(address);
    } catch {
      worker = null;
    }
  }

  function seen() {
    if (document.hidden) tickHidden();
    else {
      if (worker) worker.terminate();
      worker = null;
      askForLight();
      stir();
      if (tick) tick();
    }
  }

  document.addEventListener('visibilitychange', seen);

  gradus.ticker = {
    // then: gives the milliseconds until it wants to be asked again.
    start: function (then) {
      tick = then;
      window.clearTimeout(slow);
      ask();
      if (document.hidden) tickHidden();
    },
    stop: function () {
      tick = null;
      window.clearTimeout(slow);
      if (worker) worker.terminate();
      worker = null;
    }
  };
})();
