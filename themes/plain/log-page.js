// The log as a file: saved, opened again, wiped, and the text to paste into a message.
(function () {
  'use strict';

  const gradus = window.gradus;
  const part = document.querySelector('[data-log-page]');

  function rowsFor(button) {
    const dialog = button.closest('dialog');
    const kept = gradus.log.all();
    const own = dialog && gradus.guides ? gradus.guides[dialog.getAttribute('data-guide')] : null;
    return kept.length === 0 && own && own.row ? [own.row] : kept;
  }

  function download(text) {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([text], { type: 'text/csv;charset=utf-8' }));
    link.download = 'log-' + gradus.today() + '.csv';
    link.click();
    window.setTimeout(function () { URL.revokeObjectURL(link.href); }, 60000);
  }

  function say(what) {
    const line = part && part.querySelector('[data-log-said]');
    if (line) line.textContent = what ? line.getAttribute('data-' + what) : '';
  }

  function show() {
    if (!part) return;
    const rows = gradus.log.all();
    part.hidden = false;
    part.querySelector('[data-log-count]').textContent = String(rows.length);
    part.querySelector('[data-log-tools]').hidden = rows.length === 0;
  }

  async function open(field) {
    const file = field.files[0];
    if (!file) return;
    let read;
    try {
      read = file.size > 4000000 ? null : gradus.readLog(await file.text());
    } catch {
      read = null;
    }
    field.value = '';
    if (!read) {
      say('no-log');
      return;
    }
    const isKept = gradus.log.replace(gradus.joinLogs(gradus.log.all(), read.rows));
    say(!isKept ? 'not-kept' : read.unread > 0 ? 'unread' : 'opened');
    show();
    if (gradus.showWeek) gradus.showWeek();
  }

  const actions = {
    save: function (button) {
      download(gradus.writeLog(rowsFor(button)));
      say('saved');
    },
    message: function (button) {
      const rows = rowsFor(button);
      const tools = button.closest('[data-log-tools]');
      const text = tools.querySelector('[data-log-text]');
      text.value = rows.length > 0 ? gradus.messageOf(rows, tools.dataset) : '';
      tools.querySelector('[data-log-message]').hidden = false;
      text.focus();
      text.select();
      text.scrollTop = 0;
    },
    wipe: function () {
      const really = part.querySelector('[data-log="wipe-really"]');
      really.hidden = false;
      really.focus();
    },
    'wipe-really': function (button) {
      button.hidden = true;
      say(gradus.log.wipe() ? 'wiped' : 'not-kept');
      part.querySelector('[data-log-message]').hidden = true;
      show();
      if (gradus.showWeek) gradus.showWeek();
      part.querySelector('[data-log="wipe"]').focus();
    }
  };

  document.addEventListener('click', function (event) {
    const button = event.target.closest('button[data-log]');
    if (button) actions[button.getAttribute('data-log')](button);
  });
  document.addEventListener('change', function (event) {
    if (event.target.matches('input[data-log="open"]')) open(event.target);
  });
  show();
})();
