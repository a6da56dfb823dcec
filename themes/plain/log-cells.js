// Lines of cells, as a spreadsheet writes and reads them (CSV, RFC 4180), and the sum of a text. It knows no log.
//
// A cell that a spreadsheet would take for a formula has an apostrophe before it.
(function () {
  'use strict';

  const gradus = window.gradus = window.gradus || {};
  const formula = /^'*[=+\-@\t\r]/;

  gradus.cell = function (value) {
    const text = value === undefined || value === null ? '' : String(value);
    const safe = formula.test(text) ? "'" + text : text;
    return /[",\r\n]/.test(safe) || safe !== text ? '"' + safe.replace(/"/g, '""') + '"' : safe;
  };

  // What a cell says without the apostrophe that was put before it.
  function bare(text) {
    return text[0] === "'" && formula.test(text) ? text.slice(1) : text;
  }

  // The cells of each line.
  gradus.cellsOf = function (text, separator) {
    const lines = [];
    let line = [];
    let at = text.charCodeAt(0) === 0xfeff ? 1 : 0;
    while (at < text.length) {
      let value = '';
      if (text[at] === '"') {
        for (at++; at < text.length && !(text[at] === '"' && text[at + 1] !== '"'); at++) {
          if (text[at] === '"') at++;
          value += text[at];
        }
        at++;
      }
      while (at < text.length && text[at] !== separator && text[at] !== '\r' && text[at] !== '\n') value += text[at++];
      line.push(bare(value));
      if (text[at] === separator) {
        at++;
        if (at === text.length || text[at] === '\r' || text[at] === '\n') line.push('');
        if (at < text.length && text[at] !== '\r' && text[at] !== '\n') continue;
      }
      while (text[at] === '\r' || text[at] === '\n') at++;
      lines.push(line);
      line = [];
    }
    return lines;
  };

  // CRC-32 (ISO 3309, as in zip files) of the text in UTF-8, eight hexadecimal digits. The sum of "123456789" is cbf43926.
  gradus.checkSum = function (text) {
    let sum = 0xffffffff;
    for (const byte of unescape(encodeURIComponent(text))) {
      sum ^= byte.charCodeAt(0);
      for (let bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
    }
    return ((sum ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
  };
})();
