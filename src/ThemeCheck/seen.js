/* Finds the lines of the plan on a page, and says of each of their words where it is painted. Run in the page by the check; no
   site has it. */
const gradusSeen = (function () {
  const blocks = "p, li, dt, dd, td, th, h1, h2, h3, h4, h5, h6, caption, figcaption, blockquote, legend, div, section, article, "
    + "aside, header, footer, main, body";
  const letters = /[\p{L}\p{N}]/u;
  const rightToLeft = /[\u0590-\u08ff]/;
  const mark = "data-line-that-is-watched";
  let lines = [];
  let words = [];

  const plain = (text) => text.replace(/\u00ad/g, "").replace(/\s+/g, " ").trim();

  const textsOf = function (root) {
    const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    const found = [];
    while (walker.nextNode()) {
      if (walker.currentNode.data.trim() && !walker.currentNode.parentElement.closest("script, style, dialog")) {
        found.push(walker.currentNode);
      }
    }
    return found;
  };

  const boxOf = (rect) => ({
    left: rect.left + scrollX, top: rect.top + scrollY, right: rect.right + scrollX, bottom: rect.bottom + scrollY,
  });

  /* A word that does not fit on its line is as many as it takes lines. */
  const wordsOf = function (element, line) {
    const found = [];
    for (const text of textsOf(element)) {
      const size = parseFloat(getComputedStyle(text.parentElement).fontSize);
      for (const match of text.data.matchAll(/\S+/g)) {
        if (!letters.test(match[0])) {
          continue;
        }
        const range = document.createRange();
        range.setStart(text, match.index);
        range.setEnd(text, match.index + match[0].length);
        const rects = [...range.getClientRects()].filter((r) => r.width > 0 && r.height > 0);
        if (rects.length === 0) {
          found.push({ line, word: match[0], gone: true, size });
        }
        for (const rect of rects) {
          found.push({ line, word: match[0], text, from: match.index, size, part: rects.length > 1, ...boxOf(rect) });
        }
      }
    }
    return found;
  };

  /* Groups of lines in the order in which they are read. Answers for each line whether the page has it, and its box. */
  const find = function (groups) {
    for (const old of document.querySelectorAll(`[${mark}]`)) {
      old.removeAttribute(mark);
    }
    const all = [...new Set(textsOf(document.body).map((t) => t.parentElement.closest(blocks)))]
      .map((element) => ({ element, text: plain(element.textContent) }));
    lines = [];
    words = [];
    groups.forEach(function (group, number) {
      let next = 0;
      for (const said of group) {
        const at = all.findIndex((block, i) => i >= next && block.text === plain(said));
        const element = at < 0 ? null : all[at].element;
        next = at < 0 ? next : at + 1;
        const own = element ? wordsOf(element, lines.length) : [];
        const first = own.find((w) => !w.gone);
        const reading = element ? getComputedStyle(element).direction : "ltr";
        lines.push({ group: number, text: said, found: at >= 0, box: first ? { ...first, text: null } : null, reading });
        words.push(...own);
        if (element) {
          element.setAttribute(mark, "");
        }
      }
    });
    return lines.map((l) => ({
      group: l.group, text: l.text, found: l.found, reading: l.reading, left: l.box?.left ?? 0, top: l.box?.top ?? 0,
      right: l.box?.right ?? 0, bottom: l.box?.bottom ?? 0, shown: l.box !== null,
    }));
  };

  const named = (element) =>
    `<${element.localName}${element.className && typeof element.className === "string" ? ` class="${element.className}"` : ""}>`;

  const hit = function (word, x, y) {
    const own = word.text.parentElement;
    const at = document.elementFromPoint(x, y);
    if (at === null) {
      return "outside";
    }
    if (own.contains(at)) {
      return "";
    }
    return at.contains(own) ? `cut off or covered by ${named(at)}` : `covered by ${named(at)}`;
  };

  const scroll = (top) => scrollTo({ left: 0, top, behavior: "instant" });

  /* Scrolls to the word of that number and says of it and of those behind it that lie in the middle of the window, how they are
     painted. What the end of the page leaves at an edge of the window is seen there. */
  const measure = function (from) {
    while (from < words.length && words[from].gone) {
      from += 1;
    }
    if (from >= words.length) {
      return { from, next: from, scrolled: scrollY, words: [] };
    }
    const high = innerHeight;
    scroll(words[from].top - high * 0.12);
    const [top, bottom] = [scrollY, document.documentElement.scrollHeight - high - scrollY <= 1];
    const seen = [];
    let next = from;
    for (; next < words.length && seen.length < 600; next += 1) {
      const word = words[next];
      if (word.gone) {
        continue;
      }
      const [above, below] = [word.top - top, word.bottom - top];
      if (next > from && ((above < high * 0.1 && top > 1) || (below > high * 0.9 && !bottom))) {
        break;
      }
      const range = document.createRange();
      range.setStart(word.text, word.from);
      range.setEnd(word.text, word.from + word.word.length);
      const rects = [...range.getClientRects()].filter((r) => r.width > 0 && r.height > 0);
      const rect = rects.length === 1
        ? rects[0]
        : { left: word.left - scrollX, top: above, right: word.right - scrollX, bottom: below };
      const middle = (rect.top + rect.bottom) / 2;
      const [wide, hits] = [rect.right - rect.left, []];

      /* A browser hits whole pixels: in a narrow word of small letters a tenth of it lies on its edge. */
      const inside = Math.min(1.5, wide / 2);
      for (const share of [0.12, 0.5, 0.88]) {
        hits.push(hit(word, Math.min(Math.max(rect.left + wide * share, rect.left + inside), rect.right - inside), middle));
      }
      let turned = false;
      if (word.word.length > 2 && !word.part) {
        const ends = [0, word.word.length - 1].map(function (i) {
          const letter = document.createRange();
          letter.setStart(word.text, word.from + i);
          letter.setEnd(word.text, word.from + i + 1);
          return letter.getBoundingClientRect();
        });
        const against = rightToLeft.test(word.word);
        const plainLetters = /^[\p{L}]$/u.test(word.word[0]) && /^[\p{L}]$/u.test(word.word[word.word.length - 1]);
        turned = plainLetters && (against ? ends[0].right <= ends[1].left + 1 : ends[0].left >= ends[1].right - 1);
      }
      seen.push({
        line: word.line, word: word.word, part: word.part, size: word.size, left: rect.left, top: rect.top, right: rect.right,
        bottom: rect.bottom, hit: hits.find((h) => h !== "") ?? "", turned,
      });
    }
    return { from, next, scrolled: scrollY, words: seen };
  };

  const sheets = {};

  /* A sheet of the check's own, put on and taken off again. */
  const style = function (name, css) {
    if (!sheets[name]) {
      sheets[name] = new CSSStyleSheet();
    }
    sheets[name].replaceSync(css);
    const others = document.adoptedStyleSheets.filter((s) => s !== sheets[name]);
    document.adoptedStyleSheets = css ? [...others, sheets[name]] : others;
  };

  const gone = `[${mark}], [${mark}] *`;

  return {
    find,
    measure,
    scroll,
    gone: () => [...new Set(words.filter((w) => w.gone).map((w) => w.line))],
    wide: () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    paper: (on) => style("paper", on ? "*, *::before, *::after { background: none !important; } html { background: #fff !important; }" : ""),
    letters: (on) => style("letters", on ? "" : `${gone} { -webkit-text-fill-color: transparent !important; `
      + "text-decoration: none !important; text-shadow: none !important; transition: none !important; "
      + "forced-color-adjust: none !important; }"),
    still: () => style("still", "* { transition: none !important; animation-play-state: paused !important; caret-color: transparent; }"),
    text: function (size) {
      const root = document.documentElement;
      root.style.removeProperty("font-size");
      if (size !== 1) {
        root.style.setProperty("font-size", `${size * parseFloat(getComputedStyle(root).fontSize)}px`, "important");
      }
    },
  };
})();
