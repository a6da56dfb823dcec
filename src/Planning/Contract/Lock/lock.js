// Opens what is locked in this page (HandingOver/Locking/locked-file.md). It is written in the words of old browsers, so that
// one that cannot open the file still reads this, and leaves the sentence that says so.
(function () {
  "use strict";

  var version = "gradus-locked 1";
  var keyFrom = /^PBKDF2-SHA-256 600000 (\S+)$/;
  var cipher = /^AES-256-GCM (\S+)$/;
  var sum = /^SHA-256 (\S+)$/;

  function bytesOf(base64) {
    var letters = atob(base64);
    // Bits behind the last byte would be read over.
    if (btoa(letters) !== base64) throw new Error("damaged");
    var bytes = new Uint8Array(letters.length);
    for (var at = 0; at < letters.length; at++) bytes[at] = letters.charCodeAt(at);
    return bytes;
  }

  function isSame(one, other) {
    var differs = one.length ^ other.length;
    for (var at = 0; at < one.length; at++) differs |= one[at] ^ other[at];
    return differs === 0;
  }

  // What a phone's keyboard does to words by itself is taken back, as it is when the file is locked.
  function asLocked(written) {
    return written.normalize("NFKC").trim().replace(/\s+/g, " ").replace(/[A-Z]/g, function (letter) {
      return letter.toLowerCase();
    });
  }

  // What the file says, or the name of the sentence that says what is wrong with it.
  function read(text) {
    var lines = text.trim().split("\n");
    if (lines[0] !== version) return version.indexOf(lines[0]) === 0 ? "cut" : "version";
    if (lines.length !== 5) return "cut";
    var said = [keyFrom.exec(lines[1]), cipher.exec(lines[2]), sum.exec(lines[4])];
    if (said.indexOf(null) >= 0) return "damaged";
    try {
      return {
        head: lines.slice(0, 3).join("\n"),
        salt: bytesOf(said[0][1]),
        nonce: bytesOf(said[1][1]),
        data: bytesOf(lines[3]),
        whole: lines.slice(0, 4).join("\n"),
        sum: bytesOf(said[2][1])
      };
    } catch (notBase64) {
      return "damaged";
    }
  }

  function open(file, words) {
    var letters = new TextEncoder();
    return crypto.subtle.digest("SHA-256", letters.encode(file.whole))
      .then(function (sum) {
        if (!isSame(new Uint8Array(sum), file.sum)) throw new Error("damaged");
        return crypto.subtle.importKey("raw", letters.encode(words), "PBKDF2", false, ["deriveKey"]);
      })
      .then(function (secret) {
        var how = { name: "PBKDF2", hash: "SHA-256", salt: file.salt, iterations: 600000 };
        return crypto.subtle.deriveKey(how, secret, { name: "AES-GCM", length: 256 }, false, ["decrypt"]);
      })
      .then(function (key) {
        var how = { name: "AES-GCM", iv: file.nonce, additionalData: letters.encode(file.head), tagLength: 128 };
        return crypto.subtle.decrypt(how, key, file.data);
      })
      .then(function (page) { return new TextDecoder().decode(page); });
  }

  document.addEventListener("DOMContentLoaded", function () {
    var form = document.getElementById("open");
    var field = document.getElementById("words");
    var button = document.getElementById("do");
    var said = document.getElementById("said");
    var locked = document.getElementById("locked");

    function say(sentence) {
      said.textContent = form.getAttribute("data-" + sentence);
    }

    if (!form) return;
    if (!locked) {
      say("cut");
      return;
    }
    if (!window.crypto || !crypto.subtle || !window.TextEncoder || !window.TextDecoder) return;
    var file = read(locked.textContent);
    if (typeof file === "string") {
      say(file);
      return;
    }
    said.textContent = "";
    form.hidden = false;
    field.focus();
    form.addEventListener("submit", function (event) {
      event.preventDefault();
      if (button.disabled) return;
      var words = asLocked(field.value);
      if (words === "") {
        say("empty");
        field.focus();
        return;
      }
      button.disabled = true;
      say("opening");
      open(file, words).then(
        function (page) {
          document.open();
          document.write(page);
          document.close();
        },
        function (trouble) {
          button.disabled = false;
          say(trouble.message === "damaged" ? "damaged" : "wrong");
          field.focus();
        }
      );
    });
  });
})();
