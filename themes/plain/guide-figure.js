// Turns the figures of an exercise to the side at work: the mirror image, with its letter upright in it.
(function () {
  'use strict';

  const gradus = window.gradus;

  // side: left or right; empty where no side is at work, and the figures stay as the page has them.
  gradus.turnFigures = function (root, side) {
    for (const figure of Array.from(root.querySelectorAll('svg[data-letters]'))) {
      const shape = figure.querySelector('use');
      const letter = figure.querySelector('text');
      const isLeft = side === 'left';
      if (!side || !shape || !letter || isLeft === shape.hasAttribute('transform')) continue;
      const paper = figure.viewBox.baseVal;
      const across = tenths(2 * paper.x + paper.width);
      if (isLeft) shape.setAttribute('transform', 'matrix(-1 0 0 1 ' + across + ' 0)');
      else shape.removeAttribute('transform');
      letter.setAttribute('x', String(tenths(across - Number(letter.getAttribute('x')))));
      letter.textContent = figure.dataset.letters.split(' ')[isLeft ? 0 : 1];
    }
  };

  function tenths(number) { return Math.round(number * 10) / 10; }
}());
