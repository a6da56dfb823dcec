// Reads { script, cases } from standard input and answers with what the script's weekOf says of each case.
import { readFileSync } from 'node:fs';
import { runInNewContext } from 'node:vm';

const { script, cases } = JSON.parse(readFileSync(0, 'utf8'));
const window = {};
runInNewContext(script, { window, Date, Math, Number, Array });
process.stdout.write(JSON.stringify(cases.map(({ course, rows, chosen, today }) => {
  try {
    const { week, why, most } = window.gradus.weekOf(course, rows, chosen, today);
    return { week, why, most };
  } catch (broken) {
    return { week: 0, why: String(broken), most: 0 };
  }
})));
