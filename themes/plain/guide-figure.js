// Turns the figures of an exercise to the side at work: the mirror image, with its letter upright in it.
(function () {
  'use strict';

  // side: left or right; empty where no side is at work, and the figures stay as the page has them.
  window.gradus.turnFigures = function (root, side) {
    for (const figure of root.querySelectorAll('[data-letters]')) {
      const shape = figure.querySelector('use');
      const letter = figure.querySelector('text');
      const isLeft = side === 'left';
      if (!side || isLeft === shape.hasAttribute('transform')) continue;
      const paper = figure.viewBox.baseVal;
      const across = 2 * paper.x + paper.width;
      if (isLeft) shape.setAttribute('transform', 'matrix(-1 0 0 1 ' + across + ' 0)');
      else shape.removeAttribute('transform');
      letter.setAttribute('x', across - letter.getAttribute('x'));
      letter.textContent = figure.dataset.letters.split(' ')[isLeft ? 0 : 1];
    }
  };

  // Of what is to be done only what tells of this kind of step, under its own number; all of it where nothing does. Whether
  // something does.
  window.gradus.tellOne = function (doing, kind) {
    const items = Array.from(doing.querySelectorAll('li'));
    const isOf = function (item) { return (item.dataset.asks || '').split(' ').indexOf(kind) >= 0; };
    const isAny = items.some(isOf);
    items.forEach(function (item, i) {
      item.hidden = isAny && !isOf(item);
      if (item.parentElement.localName === 'ol') item.value = i + 1;
    });
    return isAny;
  };
}());
