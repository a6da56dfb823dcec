// Saves what is filled in as one file. Nothing is kept: the answers stand in the page alone.
(() => {
  'use strict';

  const form = document.getElementById('sheet');
  const status = document.getElementById('status');
  const { born, year, answered } = form.elements;
  const questions = [...form.querySelectorAll('[data-asked]')];
  const hurts = form.querySelector('[data-hurts]');
  const pain = hurts.closest('[data-asked]');
  const places = [...form.querySelectorAll('[data-place]')].map(box => ({
    box,
    level: box.querySelector('[data-level]'),
    where: box.querySelector('[data-where]'),
    side: box.querySelector('[data-side]'),
  }));

  const NotAsked = 'not asked';
  const isEmpty = place => [place.level, place.where, place.side].every(part => part.value === '');
  const hasSides = place => place.where.value === '' || 'sided' in place.where.selectedOptions[0].dataset;

  /** The first part of a line that is still missing, if any. */
  const gapOf = place => [place.level, place.where, place.side].find(part => part.value === '' && !part.disabled);

  /** "4 left knee"; of both sides none is named. */
  const painAt = ({ level, where, side }) =>
    [level.value, side.value === 'both' ? '' : side.value, where.value].filter(word => word !== '').join(' ');

  const replyTo = question => {
    const chosen = question.querySelector('input:checked');
    if (chosen === null) return NotAsked;
    return chosen === hurts ? `[${places.filter(place => !isEmpty(place)).map(painAt).join(', ')}]` : chosen.value;
  };

  const today = () => {
    const now = new Date();
    return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map(part => String(part).padStart(2, '0')).join('-');
  };

  const birth = () => (born.value === '' ? year.value : born.value);

  const isBirthWrong = () => !born.validity.valid || !year.validity.valid || birth() > answered.value;

  /** What keeps the sheet from being saved: the field to look at and what to say; null where nothing does. */
  const trouble = () => {
    if (!answered.validity.valid || answered.value > today()) return [answered, status.dataset.dayWrong];
    if (isBirthWrong()) return [born.value === '' && year.value !== '' ? year : born, status.dataset.bornWrong];
    if (!hurts.checked) return null;
    const begun = places.filter(place => !isEmpty(place));
    const gap = (begun.length === 0 ? places.slice(0, 1) : begun).map(gapOf).find(part => part !== undefined);
    return gap === undefined ? null : [gap, status.dataset.painWrong];
  };

  const answersFile = () => [
    `answered: ${answered.value}`,
    ...(birth() === '' ? [] : [`born: ${birth()}`]),
    'answers:',
    ...questions.map(question => `  ${question.dataset.asked}: ${replyTo(question)}`),
    '',
  ].join('\n');

  const stillOpen = () => {
    const open = questions.filter(question => replyTo(question) === NotAsked).length;
    return open === 0 ? status.dataset.noneOpen : status.dataset.leftOpen.split('\n')[open - 1];
  };

  const download = text => {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], { type: 'application/yaml' }));
    link.download = form.dataset.file;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  };

  const forgive = () => {
    for (const field of form.querySelectorAll('[aria-invalid]')) {
      field.removeAttribute('aria-invalid');
      field.removeAttribute('aria-describedby');
    }
  };

  const save = () => {
    forgive();
    const found = trouble();
    if (found === null) {
      download(answersFile());
      status.textContent = `${status.dataset.saved} ${stillOpen()}`;
      return;
    }

    const [field, sentence] = found;
    status.textContent = sentence;
    field.setAttribute('aria-invalid', 'true');
    field.setAttribute('aria-describedby', 'status');
    field.focus();
  };

  /** On paper a day that is not given, or that the page alone put there, is left for the pen. */
  const mark = begun => {
    for (const day of [born, answered]) day.classList.toggle('filled', begun && day.value !== '');
  };

  const emptyPlaces = () => {
    for (const select of pain.querySelectorAll('select')) select.value = '';
  };

  /** Brings what can be chosen into line with what has been: a place without sides has none to choose. */
  const settle = () => {
    for (const place of places) {
      place.side.disabled = !hasSides(place);
      if (place.side.disabled) place.side.value = '';
    }
  };

  const clear = () => {
    form.reset();
    forgive();
    answered.value = today();
    mark(false);
    settle();
    status.textContent = status.dataset.cleared;
    born.focus();
  };

  form.addEventListener('change', ({ target }) => {
    mark(true);
    if (target === born && born.value !== '') year.value = '';
    if (target === year && year.value !== '') born.value = '';
    if (target.matches('select') && places.some(place => !isEmpty(place))) hurts.checked = true;
    if (pain.contains(target) && target.matches('input') && target !== hurts) emptyPlaces();
    settle();
  });
  form.addEventListener('submit', event => event.preventDefault());
  document.getElementById('save').addEventListener('click', save);
  document.getElementById('clear').addEventListener('click', clear);

  answered.value = today();
  document.getElementById('no-script').remove();
  document.getElementById('saving').hidden = false;
  document.getElementById('clearing').hidden = false;
})();
