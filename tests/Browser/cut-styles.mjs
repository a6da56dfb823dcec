// The tokens of stylesheets by npm css-tree. In: [string] as JSON on standard input. Out: for each [[kind, from, until]].
import { readFileSync } from "node:fs";
import { tokenize, tokenNames } from "css-tree";

const sheets = JSON.parse(readFileSync(0, "utf8"));
console.log(
  JSON.stringify(
    sheets.map((css) => {
      const tokens = [];
      tokenize(css, (kind, from, until) => tokens.push([tokenNames[kind], from, until]));
      return tokens;
    }),
  ),
);
