// Puts this week's numbers into the page: the dose of each exercise, taken from the table of all weeks, and the numbers in its
// steps. What is not done yet is one line, and its signs come with it, unless every week is shown. On paper the numbers of all
// weeks stay.
(function () {
  'use strict';

  const gradus = window.gradus;

  function all(selector, inside) {
    return Array.from(inside.querySelectorAll(selector));
  }

  function weeksOf(element, name) {
    return element.getAttribute(name).split(' ').filter(Boolean).map(Number);
  }

  // "1 2=30 seconds;3=45 seconds"; null where that week has none.
  function figureIn(text, week) {
    const run = text.split(';').find(function (one) { return one.split('=')[0].split(' ').map(Number).indexOf(week) >= 0; });
    return run ? run.slice(run.indexOf('=') + 1) : null;
  }

  function fillFigure(figure, week) {
    const said = figureIn(figure.getAttribute('data-by-week'), week);
    const next = figure.nextElementSibling;
    const isThere = next !== null && next.classList.contains('this-week');
    const shown = isThere ? next : document.createElement('span');
    if (!isThere) {
      shown.className = 'on-screen this-week';
      figure.after(shown);
    }
    shown.textContent = said || '';
    figure.classList.toggle('on-paper', said !== null);
  }

  // Of each row of the table what it says in that column; a cell may be wider than one week.
  function doseIn(rows, column) {
    const said = [];
    for (const row of rows) {
      let at = 0;
      for (const cell of all('td', row)) {
        at += cell.colSpan;
        if (column < at) {
          if (cell.textContent !== '–') said.push([row.querySelector('th').textContent, cell.textContent]);
          break;
        }
      }
    }
    return said;
  }

  function fillDose(dose, root, week) {
    const table = root.querySelector('[data-doses="' + dose.getAttribute('data-dose') + '"]');
    const columns = all('thead th', table.closest('table')).slice(1).map(function (head) { return Number(head.textContent); });
    dose.replaceChildren();
    for (const pair of doseIn(all('tr', table), columns.indexOf(week))) {
      const part = document.createElement('span');
      const figure = document.createElement('b');
      figure.textContent = pair[1];
      part.append(pair[0] + ' ', figure);
      if (dose.childNodes.length > 0) dose.append(' · ');
      dose.append(part);
    }
  }

  // Every exercise of a sign or condition that is not done yet has a letter of its own.
  function showSigns(root, away) {
    const isAway = function (said) {
      const letters = said.split(/[^A-Z]+/).filter(Boolean);
      return letters.length > 0 && letters.every(function (letter) { return away.indexOf(letter) >= 0; });
    };
    for (const condition of all('.cautions .not-with li', root)) {
      const letters = /\(([A-Z, ]+)\)$/.exec(condition.textContent.trim());
      condition.hidden = letters !== null && isAway(letters[1]);
    }
    for (const sign of all('.cautions .caution', root)) {
      const [belongs, conditions] = [sign.querySelector('.belongs'), all('li', sign)];
      sign.hidden = belongs ? isAway(belongs.textContent)
        : conditions.length > 0 && conditions.every(function (condition) { return condition.hidden; });
    }
    for (const kind of all('.cautions .kind', root)) {
      const signs = all('.caution', kind);
      const isNothingElse = Array.from(kind.children).every(function (child) {
        return signs.indexOf(child) >= 0 || /^H[1-6]$/.test(child.tagName);
      });
      kind.hidden = isNothingElse && signs.length > 0 && signs.every(function (sign) { return sign.hidden; });
    }
  }

  // isWhole: whether what is not done in that week is shown too, with its signs.
  gradus.fillWeek = function (week, isWhole) {
    for (const figure of all('[data-by-week]', document)) fillFigure(figure, week);
    for (const root of gradus.pages()) {
      const away = [];
      for (const article of all('article[data-planned]', root)) {
        const weeks = weeksOf(article, 'data-planned');
        const dose = article.querySelector('[data-dose]');
        const letter = dose.getAttribute('data-dose');
        article.hidden = !isWhole && weeks.indexOf(week) < 0;
        if (article.hidden) away.push(letter);
        else fillDose(dose, root, week);
        for (const line of all('[data-later="' + letter + '"]', root)) line.hidden = isWhole || week >= weeks[0];
        const place = '.index [href$="-' + letter.toLowerCase() + '"]';
        for (const link of all(place, root)) link.parentElement.hidden = article.hidden;
      }
      showSigns(root, away);
    }
  };

  // The parts of the document that are one page each.
  gradus.pages = function () {
    const parts = all('[data-page]', document);
    return parts.length > 0 ? parts : all('main', document);
  };
})();
