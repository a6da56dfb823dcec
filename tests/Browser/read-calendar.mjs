// Reads calendars with ical.js and says what it found, one array of events for each file, as JSON. Instants are in UTC; a whole day is its date.
import { readFileSync } from "node:fs";
import ICAL from "ical.js";

ICAL.design.strict = true;

function said(found) {
  const event = new ICAL.Event(found);
  const start = event.startDate.isDate ? event.startDate.toString() : event.startDate.toJSDate().toISOString();
  return { uid: event.uid, start, seconds: event.duration.toSeconds(), title: event.summary, note: event.description };
}

const files = process.argv.slice(2).map((path) => new ICAL.Component(ICAL.parse(readFileSync(path, "utf8"))).getAllSubcomponents("vevent").map(said));
console.log(JSON.stringify(files));
