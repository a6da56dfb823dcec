// Run in a page whose guided session waits for its first step. Plays it to its end in made time: the clock stands still but for the seconds that it is put forward, one after the other.
// Answers with everything that was drawn: each step once as it begins, what was waited for, and what the end says.
() => {
  const dialog = document.querySelector('dialog[open]');
  const picture = dialog.querySelector('[data-picture]');
  const panel = name => dialog.querySelector(`[data-panel="${name}"]`);
  const part = name => dialog.querySelector(`[data-fill="${name}"]`);
  const seen = name => part(name).checkVisibility() ? part(name).textContent.replace(/\s+/g, ' ').trim() : '';
  const guide = () => Object.values(window.gradus.guides).find(one => one.dialog === dialog).guide;
  const isPlaying = () => !panel('play').hidden;

  const putForward = () => {
    window.putForward(1000);

    // A page that comes back into sight looks at once.
    document.dispatchEvent(new Event('visibilitychange'));
  };

  const look = () => ({
    what: seen('what'), side: seen('side'), at: picture.dataset.at, kind: picture.dataset.kind, digits: seen('digits'),
    level: part('effort').checkVisibility() ? Number(part('effort').dataset.level) : 0,
    stairs: part('effort').checkVisibility() ? part('effort').querySelectorAll('rect.on').length : 0,
    breaths: [], isTold: seen('keep-breathing') !== '', detail: seen('detail'), next: seen('next'), place: seen('place'), told: seen('told'), lasts: 0
  });

  const [drawn, waits] = [[], []];
  for (let times = 0; times < 2000 && isPlaying(); times++) {
    if (picture.dataset.phase === 'waiting') {
      waits.push(seen('place'));
      dialog.querySelector('[data-act="in-place"]').click();
    }
    const step = look();
    const { at } = guide().state;
    drawn.push(step);
    while (isPlaying() && guide().state.at === at && picture.dataset.phase === 'running' && step.lasts < 4000) {
      const breath = seen('breath');
      if (breath !== '' && breath !== step.breaths[step.breaths.length - 1]) step.breaths.push(breath);
      putForward();
      step.lasts++;
    }
  }
  const log = window.gradus.log.rows().filter(row => row.session === Number(dialog.dataset.guide));
  return JSON.stringify({ drawn, waits, over: dialog.querySelector('[data-panel]:not([hidden]) h2').textContent, did: seen('did'), kept: seen('kept'), log });
}
