// A tap is seen at once; the work it asks for comes after the screen was painted. In: work. Out: the same work, in its order.

const waiting = [];
const channel = new MessageChannel();
let due = false;
channel.port1.onmessage = run;

/** Do `work` after the next painting. */
export function later(work) {
  waiting.push(work);
  plan();
}

function plan() {
  if (due || !waiting.length) return;
  due = true;
  document.documentElement.classList.add('busy');
  requestAnimationFrame(() => channel.port2.postMessage(0));
  // A page that is not in sight is not painted.
  setTimeout(run, 120);
}

/** One piece of work; the next one after another painting. */
function run() {
  if (!due) return;
  due = false;
  try {
    waiting.shift()?.();
  } finally {
    rest();
  }
}

function rest() {
  if (waiting.length) plan();
  else document.documentElement.classList.remove('busy');
}

/** Do now all that waits. */
export function settle() {
  try {
    while (waiting.length) waiting.shift()();
  } finally {
    due = false;
    rest();
  }
}

/** What waits belongs to a visit that is over. */
export function dropWaiting() {
  waiting.length = 0;
  due = false;
  rest();
}

/** A press on `button` is shown, then `work` is done; where it gives what speaks against it, the press is taken back. */
export function pressed(button, work) {
  const before = button.getAttribute('aria-pressed');
  if (before !== null) button.setAttribute('aria-pressed', 'true');
  button.classList.add('down');
  later(() => {
    button.classList.remove('down');
    let problems = [true];
    try {
      problems = work();
    } finally {
      if (before !== null && Array.isArray(problems) && problems.length) button.setAttribute('aria-pressed', before);
    }
  });
}
