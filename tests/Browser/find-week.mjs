// Reads { script, cases } in each line of standard input and answers in one line with what the script's weekOf says of each case.
import { createInterface } from 'node:readline';
import { runInNewContext } from 'node:vm';

function answersTo({ script, cases }) {
  const window = {};
  runInNewContext(script, { window, Date, Math, Number, Array });
  return cases.map(({ course, rows, chosen, today }) => {
    try {
      const { week, why, most } = window.gradus.weekOf(course, rows, chosen, today);
      return { week, why, most };
    } catch (broken) {
      return { week: 0, why: String(broken), most: 0 };
    }
  });
}

for await (const line of createInterface({ input: process.stdin })) process.stdout.write(JSON.stringify(answersTo(JSON.parse(line))) + '\n');
