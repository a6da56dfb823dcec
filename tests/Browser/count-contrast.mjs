// The contrast of pairs of colours with npm wcag-contrast. In: [["#rrggbb", "#rrggbb"]] as JSON on standard input. Out: [number].
import { readFileSync } from "node:fs";
import { hex } from "wcag-contrast";

console.log(JSON.stringify(JSON.parse(readFileSync(0, "utf8")).map(([one, other]) => hex(one, other))));
