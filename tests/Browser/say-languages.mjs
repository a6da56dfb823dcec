// What the CLDR of node's engine says of languages: which form each whole number takes, the decimal mark beside Latin digits, the direction; and full dates and lists.
// In: {languages: [code], numbers: [number], dated: [code], days: [ISO day], listed: [text]} as JSON on standard input.
// Out: {languages: [{code, forms: [name], mark, direction}], dates: [[text]], lists: [text]}.
import { readFileSync } from "node:fs";

const asked = JSON.parse(readFileSync(0, "utf8"));

function languageOf(code) {
  const plurals = new Intl.PluralRules(code);
  const locale = new Intl.Locale(code);
  return {
    code,
    forms: asked.numbers.map((number) => plurals.select(number)),
    mark: new Intl.NumberFormat(`${code}-u-nu-latn`).formatToParts(2.5).find((part) => part.type === "decimal").value,
    direction: (locale.getTextInfo?.() ?? locale.textInfo).direction,
  };
}

const datesOf = (code) => {
  const format = new Intl.DateTimeFormat(code, { dateStyle: "full", timeZone: "UTC" });
  return asked.days.map((day) => format.format(new Date(`${day}T00:00:00Z`)));
};

console.log(JSON.stringify({
  languages: asked.languages.map(languageOf),
  dates: asked.dated.map(datesOf),
  lists: asked.dated.map((code) => new Intl.ListFormat(code).format(asked.listed)),
}));
