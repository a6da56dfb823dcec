// Reads { scripts, cases } in each line of standard input and leads through each case in made time; answers in one line with what was told and where it ended.
import { createInterface } from 'node:readline';
import { runInNewContext } from 'node:vm';

/** The scripts that the answers are asked of; other ones with each line. */
let gradus = {};

/** Asks at each of the times in `ticks`, and does what is to be done when its time has come. */
function led({ steps, wait, learnt, ticks, actions, out: leftOut }) {
  let now = 0;
  const guide = gradus.guideOf(steps, () => now, { wait, learnt: learnt === null ? undefined : exercise => learnt.includes(exercise) });
  guide.leaveOut(leftOut ?? []);
  const told = [];
  const sayings = [];
  let cut = 0;
  const phrases = { half: 'half', end: 'end', longer: 'longer', slept: 'slept', hurts: 'hurts', softer: '{effort}', softerPlain: 'softer', effort1: '1', language: 'en', secondsOther: '{n}', minutesOther: '{n}', minutesAndSecondsOther: '{minutes} {seconds}' };
  const hear = () => {
    const events = guide.take();
    if (guide.state.phase === 'waiting' && guide.leftNow() !== guide.lengthNow()) cut++;
    for (const event of events) told.push(`${now} ${event.type} ${event.at}`);
    if (events.length > 0 && gradus.sayingOf(events, guide, phrases) !== '') sayings.push(now);
  };
  const acts = {
    start: () => guide.start(), pause: () => guide.pause(), go: () => guide.go(), back: () => guide.back(), forward: () => guide.forward(), longer: () => guide.longer(), softer: () => guide.softer(),
    ease: () => { guide.hurts(); guide.easeOff(null, null); }, stop: () => { guide.hurts(); guide.endExercise(null, null); }, 'stop-at': place => { guide.hurts(); guide.endExercise(place, null); }, end: () => guide.endSession(null, null),
  };
  const marks = [...ticks.map(at => ({ at })), ...actions].sort((a, b) => a.at - b.at || (a.do ? 1 : 0) - (b.do ? 1 : 0));
  for (const mark of marks) {
    now = mark.at;
    if (mark.do) acts[mark.do](mark.place ?? null);
    else guide.tick();
    hear();
  }
  const { phase, at, out, did, softer } = guide.state;
  return { phase, at, left: guide.leftNow(), ahead: guide.msLeft(), out, did: Object.keys(did).map(Number), softer: Object.entries(softer).map(([exercise, n]) => `${exercise} ${n}`), told, sayings: sayings.length, cut };
}

const kinds = {
  led,
  sounds: ({ steps, wait }) => {
    const guide = gradus.guideOf(steps, () => 0, { wait });
    guide.start();
    return gradus.soundsOf(guide.ahead(), steps, true).map(s => `${s.in} ${s.sound} ${s.side}`.trim());
  },
  effort: ({ step, softer }) => gradus.effortOf(step, softer),
  breath: ({ step, at }) => { const b = gradus.breathAt(step, at); return b === null ? 'none' : `${b.way} ${b.number} of ${b.of}`; },
  version: ({ answers, versions, here, limits }) => { const v = gradus.versionFor(answers, versions, here, limits); return `${v.session} ${v.why}`; },
  write: ({ rows }) => gradus.writeLog(rows),
  again: ({ rows }) => { const text = gradus.writeLog(rows); const read = gradus.readLog(text); return `${read.unread} ${gradus.writeLog(read.rows) === text}`; },
  read: ({ text }) => { const read = gradus.readLog(text); return read === null ? 'none' : `${read.rows.length} ${read.unread}`; },
  save: ({ text, more }) => {
    const { rows } = gradus.readLog(text);
    return gradus.writeLog([...rows.slice(0, -1), { ...rows.at(-1), ...more }]);
  },
  join: ({ text, other }) => gradus.writeLog(gradus.joinLogs(gradus.readLog(text).rows, gradus.readLog(other).rows)),
  sum: ({ text }) => gradus.checkSum(text),
  message: ({ row, phrases }) => gradus.messageOf(Array.isArray(row) ? row : [row], phrases),
  // still: [whether nothing runs, at which minute] again and again; then the minute of the end.
  watch: ({ kept, still, end }) => {
    const watch = gradus.watchOf(kept, 0);
    for (const [isStill, at] of still) watch.be(isStill, at * 60000);
    return watch.minutes(end * 60000);
  },
  fresh: ({ kept, now, hours }) => String(gradus.isFresh(kept, now, hours)),
};
function answersTo({ scripts, cases }) {
  const window = {};
  for (const script of scripts) runInNewContext(script, { window, unescape, encodeURIComponent });
  gradus = window.gradus;
  return cases.map(one => {
    try {
      return kinds[one.kind](one);
    } catch (broken) {
      return one.kind === 'led' ? { phase: String(broken), at: -1, left: -1, ahead: -1, out: [], did: [], softer: [], told: [], sayings: -1, cut: -1 } : String(broken);
    }
  });
}

for await (const line of createInterface({ input: process.stdin })) process.stdout.write(JSON.stringify(answersTo(JSON.parse(line))) + '\n');
