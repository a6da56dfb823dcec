// Reads from a page what the guided session plays: the steps of this week's list, what each exercise loads, the versions of
// the session and the limits of pain.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};

  // Of the page itself: what the guided session has copied from it does not count.
  function all(selector, inside) {
    return Array.from(inside.querySelectorAll(selector))
      .filter(function (one) { return inside.closest('dialog') || !one.closest('dialog'); });
  }

  // "press E l p50 s1": kind and letter, then what there is of side, percent, felt effort, breaths, set, repetitions and load.
  function partsOf(text) {
    const load = / w(.*)$/.exec(text);
    const said = (load ? text.slice(0, load.index) : text).split(' ');
    const parts = { kind: said[0], letter: said[1], side: '', load: load ? load[1] : '' };
    for (const one of said.slice(2)) {
      if (one === 'l' || one === 'r') parts.side = one === 'l' ? 'left' : 'right';
      else parts[one[0]] = Number(one.slice(1));
    }
    return parts;
  }

  function textOf(element) {
    return element ? element.textContent.replace(/\s+/g, ' ').trim() : '';
  }

  // The part of the document that is one page: all of it, or its section where all pages are one.
  gradus.pageAround = function (element) {
    return element.closest('[data-page]') || document.querySelector('main');
  };

  gradus.articleOf = function (root, exercise) {
    return all('[data-about]', root).find(function (article) { return article.getAttribute('data-about') === exercise; }) || null;
  };

  gradus.titleOf = function (root, exercise) {
    const article = gradus.articleOf(root, exercise) || gradus.articleOf(document.querySelector('main'), exercise);
    return article ? textOf(article.querySelector('h2 a')) : exercise.replace(/-/g, ' ');
  };

  function letterOf(article) {
    return article.querySelector('[data-dose]').getAttribute('data-dose');
  }

  // What it says: the letter and what is done, then how, then the time.
  function stepOf(item, root) {
    const parts = partsOf(item.getAttribute('data-step'));
    const article = all('[data-about]', root).find(function (one) { return letterOf(one) === parts.letter; });
    const time = item.querySelector('time');
    const [whole, work] = [textOf(item).slice(0, -textOf(time).length).trim(), item.querySelector('b')];
    const said = work ? textOf(work) : whole;
    const named = parts.letter + ' ';
    const plain = said.replace(/[\u2068\u2069]/g, '');
    const detail = whole.slice(said.length).trim();
    const title = textOf(article.querySelector('h2 a'));
    const words = plain.indexOf(named) === 0 ? plain.slice(named.length) : plain;
    return {
      kind: parts.kind,
      letter: parts.letter,
      exercise: article.getAttribute('data-about'),
      side: parts.side,
      percent: 'p' in parts ? parts.p : null,
      felt: 'f' in parts ? parts.f : null,
      breaths: parts.b || 0,
      set: parts.s || 0,
      reps: parts.n || 0,
      load: parts.load,
      seconds: Number(/^PT(\d+)S$/.exec(time.getAttribute('datetime'))[1]),
      title: title,
      words: words,
      what: title + ': ' + words,
      detail: [detail, parts.load].filter(Boolean).join(', '),
      loads: (article.getAttribute('data-loads') || '').split(' ').filter(Boolean)
    };
  }

  // The steps of that week; none where nothing is planned in it.
  gradus.stepsOf = function (root, week) {
    const part = all('.weeks[data-weeks]', root)
      .find(function (weeks) { return weeks.getAttribute('data-weeks').split(' ').indexOf(String(week)) >= 0; });
    return part ? all('[data-step]', part).map(function (item) { return stepOf(item, root); }) : [];
  };

  gradus.versionsOf = function (dialog, week) {
    return all('[data-version]', dialog).map(function (item) {
      const length = item.getAttribute('data-lengths').split(' ')
        .map(function (pair) { return pair.split('='); })
        .find(function (pair) { return pair[0] === String(week); });
      return {
        session: Number(item.getAttribute('data-version')),
        kind: item.getAttribute('data-kind'),
        loads: (item.getAttribute('data-loads') || '').split(' ').filter(Boolean).map(function (exercise) {
          return exercise.split('=')[1].split(',').filter(Boolean).map(function (place) { return place.replace(':', ' '); });
        }),
        seconds: length ? Number(length[1]) : null
      };
    });
  };

  gradus.limitsOf = function () {
    const limits = document.querySelector('[data-pain]').getAttribute('data-pain').split(' ').map(Number);
    return { easeOff: limits[0], stop: limits[1] };
  };

  // What stands there in every week, without the numbers that a script put in for this one.
  function writtenIn(element) {
    const copy = element.cloneNode(true);
    for (const one of copy.querySelectorAll('.this-week, [data-dose] *')) one.remove();
    return textOf(copy);
  }

  // A sum of everything that this page tells somebody to do and to mind, and of how long it is good.
  gradus.editionOf = function (root) {
    const end = document.querySelector('[data-good-until]');
    const texts = all('.cautions, .exercise, [data-step]', root).map(writtenIn);
    return gradus.checkSum(texts.concat([end ? end.getAttribute('data-good-until') : '']).join('\n'));
  };

  function isOf(caution, letter) {
    const belongs = caution.querySelector('.belongs');
    return !belongs || belongs.textContent.split(/[^A-Z]+/).indexOf(letter) >= 0;
  }

  // Copies of the cautions of an exercise, kind by kind; one without letters is for all of them.
  gradus.signsOf = function (root, letter) {
    return all('.cautions .kind', root).map(function (kind) {
      const copy = gradus.copyOf(kind);
      for (const caution of all('.caution', copy)) if (!isOf(caution, letter)) caution.remove();
      return copy;
    }).filter(function (copy) { return copy.querySelector('.caution'); });
  };

  // A sum of each caution that is shown: what is not done yet has signs that nobody has read.
  gradus.shownCautions = function (root) {
    return all('.cautions .caution', root)
      .filter(function (one) { return !one.closest('[hidden]'); })
      .map(function (one) { return gradus.checkSum(textOf(one)); });
  };

  function cautionsRead(ui) {
    const read = (gradus.kept('read') || {})[ui.session];
    return read && read.edition === ui.edition && Array.isArray(read.cautions) ? read.cautions : [];
  }

  // Whether everything that the page shows to mind today was read.
  gradus.isRead = function (ui) {
    const read = cautionsRead(ui);
    return gradus.shownCautions(ui.root).every(function (sum) { return read.indexOf(sum) >= 0; });
  };

  // Who presses the button below the cautions has read them.
  gradus.noteRead = function (ui) {
    const read = Object.assign({}, gradus.kept('read'));
    read[ui.session] = { edition: ui.edition, cautions: gradus.shownCautions(ui.root) };
    gradus.keep('read', read);
  };

  gradus.sumOfExercise = function (root, exercise) {
    return gradus.checkSum(writtenIn(gradus.articleOf(root, exercise)));
  };

  // A copy to read: without what names or leads somewhere, since it stands on the page already.
  gradus.copyOf = function (element) {
    const copy = element.cloneNode(true);
    for (const one of [copy].concat(all('[id], [aria-labelledby], [data-weeks]', copy))) {
      for (const name of ['id', 'aria-labelledby', 'data-weeks', 'data-about']) one.removeAttribute(name);
    }
    for (const link of all('a:not([href^="tel:"])', copy)) link.replaceWith.apply(link, Array.from(link.childNodes));
    return copy;
  };

  // Pain there is never trained with, however little it is.
  gradus.isAlarming = function (place, level) {
    return place !== null && place.where === 'chest' && level !== 0;
  };

  // From 0 to 10; null where nothing is chosen.
  gradus.levelIn = function (part) {
    const level = part.querySelector('[data-level]').value;
    return level === '' ? null : Number(level);
  };

  // The first question of a form that is not answered, with the field that answers it; null where none is left. How bad the
  // morning after was may be left open: that it was worse is enough to do less today.
  gradus.missingIn = function (form) {
    for (const part of form.querySelectorAll('fieldset:not([hidden])')) {
      const choices = part.querySelectorAll('input[type="radio"]');
      const isOpen = choices.length > 0 && !part.querySelector('input:checked');
      if (isOpen) return { question: textOf(part.querySelector('legend')), field: choices[0] };
      if (part.hasAttribute('data-worse-where')) continue;
      for (const field of part.querySelectorAll('[data-where], [data-level]')) {
        if (field.value === '') return { question: textOf(field.closest('label').firstChild), field: field };
      }
    }
    return null;
  };

  // "knee, left", in the words of the page.
  gradus.placeWords = function (part) {
    const names = gradus.placeIn(part).side ? ['[data-where]', '[data-side]'] : ['[data-where]'];
    const fields = names.map(function (name) { return part.querySelector(name); });
    return fields.map(function (field) { return textOf(field.selectedOptions[0]); }).join(', ');
  };

  // What is written where somebody says where it hurts; null where nothing is.
  gradus.placeIn = function (part) {
    const where = part.querySelector('[data-where]');
    const side = part.querySelector('[data-side]');
    if (where.value === '') return null;
    const isOneSide = where.selectedOptions[0].hasAttribute('data-sided') && side.value !== 'both';
    return { where: where.value, side: isOneSide ? side.value : '' };
  };
})();
