// A self-test: three numbers a side, asked at the end of a session. They are kept in the log and judged by nobody here, but
// three that lie far apart are measured again.
(function () {
  'use strict';

  const gradus = window.gradus;
  const farApart = 1.5;

  function numbersIn(fields) {
    return Array.from(fields.querySelectorAll('[data-try]'))
      .filter(function (field) { return field.value !== '' && field.validity.valid; })
      .map(function (field) { return Number(field.value); });
  }

  function again(event) {
    const fields = event.target.closest('[data-measured]');
    if (!fields) return;
    const numbers = numbersIn(fields);
    fields.querySelector('[data-again]').hidden = numbers.length < 3 || Math.max(...numbers) - Math.min(...numbers) <= farApart;
  }

  // A group of fields for each exercise of the row that measures something, and each side.
  gradus.fillMeasures = function (ui, form, row) {
    const [first, ...others] = form.querySelectorAll('[data-measured]');
    for (const old of others) old.remove();
    if (!first) return;
    for (const one of row.exercises.slice().reverse()) {
      const article = gradus.articleOf(ui.root, one.exercise);
      if (!article || !article.hasAttribute('data-measure')) continue;
      const fields = first.cloneNode(true);
      fields.hidden = false;
      fields.setAttribute('data-measured', one.exercise + ' ' + one.side);
      fields.querySelector('legend').textContent = gradus.nameOfPart(ui, one) + ' (' + article.getAttribute('data-measure') + ')';
      fields.addEventListener('input', again);
      first.after(fields);
    }
  };

  gradus.measuredIn = function (form, one) {
    const fields = form.querySelector('[data-measured="' + one.exercise + ' ' + one.side + '"]');
    return fields ? numbersIn(fields) : [];
  };
})();
