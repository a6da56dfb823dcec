// Reads a calendar with ical.js and says what it found, one line an event: name, instant in UTC, seconds, title.
import { readFileSync } from "node:fs";
import ICAL from "ical.js";

for (const path of process.argv.slice(2)) {
  const calendar = new ICAL.Component(ICAL.parse(readFileSync(path, "utf8")));
  for (const found of calendar.getAllSubcomponents("vevent")) {
    const event = new ICAL.Event(found);
    console.log([event.uid, event.startDate.toJSDate().toISOString(), event.duration.toSeconds(), event.summary].join("\t"));
  }
}
